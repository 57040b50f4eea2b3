/**
 * Answers as xAPI statements, version 1.0.3: a JSON array, one "answered" statement an attempt, and a "voided" one
 * for each that a correction took out (both stay, so that a record store can be told what to disregard). Nobody's
 * name goes out: the actor is an account with the learner's random id. Question texts are left out too; the
 * activity is the question by its deck, family, fact and seed, from which it can be opened again.
 */
import type { LearnerLog } from '../core/assign/merge-reports.ts';
import type { Attempt } from '../core/memory/attempt.ts';
import type { Answer, Form } from '../core/questions/question.ts';
import { utf8 } from './bytes.ts';

const VERSION = '1.0.3';
const ANSWERED = { id: 'http://adlnet.gov/expapi/verbs/answered', display: { en: 'answered' } } as const;
const VOIDED = { id: 'http://adlnet.gov/expapi/verbs/voided', display: { en: 'voided' } } as const;
const INTERACTION = 'http://adlnet.gov/expapi/activities/cmi.interaction';
/** Between the entries of a response, and between the two halves of a pair. */
const [NEXT, PAIR] = ['[,]', '[.]'];

/** How each form of answer is called there. */
const TYPES: Readonly<Record<Form, string>> = {
  one: 'choice',
  set: 'choice',
  place: 'choice',
  order: 'sequencing',
  number: 'numeric',
  pair: 'matching',
  fill: 'matching',
};

export interface Statement {
  readonly id: string;
  readonly version: typeof VERSION;
  readonly actor: {
    readonly objectType: 'Agent';
    readonly account: { readonly homePage: string; readonly name: string };
  };
  readonly verb: typeof ANSWERED | typeof VOIDED;
  readonly object: object;
  readonly result?: object;
  readonly context?: object;
  readonly timestamp: string;
}

const pairs = (record: Readonly<Record<string, string>>) =>
  Object.entries(record)
    .map(([left, right]) => `${left}${PAIR}${right}`)
    .join(NEXT);

/** The answer as a response of its interaction type: "B1[,]C1", "B1[.]on[,]C1[.]off". */
export function responseOf(answer: Answer): string {
  switch (answer.form) {
    case 'one':
      return answer.pick;
    case 'place':
      return answer.spot;
    case 'number':
      return decimalOf(answer.value);
    case 'set':
      return answer.picks.join(NEXT);
    case 'order':
      return answer.order.join(NEXT);
    case 'pair':
      return pairs(answer.pairs);
    case 'fill':
      return pairs(answer.cells);
  }
}

/** A fraction as a decimal figure, as near as a float comes; a decimal as it is. */
function decimalOf(value: string): string {
  const [top, bottom] = value.split('/').map(Number);
  return bottom === undefined || !Number.isFinite(top! / bottom) ? value : String(top! / bottom);
}

/** An id made of a text: the same text, the same id (RFC 9562, version 8, from SHA-256). */
async function uuidFrom(text: string): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', utf8(text))).slice(0, 16);
  hash[6] = (hash[6]! & 0x0f) | 0x80;
  hash[8] = (hash[8]! & 0x3f) | 0x80;
  const digits = [...hash].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [8, 12, 16, 20, 32].map((end, part) => digits.slice([0, 8, 12, 16, 20][part], end)).join('-');
}

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/i;

/** Seconds as an ISO 8601 duration: 8.4 → "PT8.4S". */
const durationOf = (seconds: number) => `PT${Math.round(seconds * 100) / 100}S`;

export interface StatementsRequest {
  readonly logs: readonly LearnerLog[];
  readonly voids: ReadonlySet<string>;
  /** An address the shop owns, with nothing personal in it: the home page of accounts, and where activity ids start. */
  readonly home: string;
  /** When the voiding statements are made: milliseconds since 1970. */
  readonly madeAt: number;
}

/**
 * The statements, in the order of their times within each learner. Exported twice they have the same ids, so
 * that a record store takes each once. Throws on a `home` that is no absolute http address.
 */
export async function makeStatements({ logs, voids, home, madeAt }: StatementsRequest): Promise<Statement[]> {
  const { protocol, href } = new URL(home);
  if (protocol !== 'https:' && protocol !== 'http:') throw new RangeError(`no address of a page: ${home}`);
  const base = href.endsWith('/') ? href : `${href}/`;
  const statements: Statement[] = [];
  for (const { learner, attempts } of logs) {
    const actor: Statement['actor'] = { objectType: 'Agent', account: { homePage: base, name: learner } };
    for (const attempt of [...attempts].sort((a, b) => a.at - b.at || a.sequence - b.sequence)) {
      const id = UUID.test(attempt.id) ? attempt.id.toLowerCase() : await uuidFrom(`answered ${attempt.id}`);
      statements.push(answered(id, attempt, actor, base));
      if (voids.has(attempt.id))
        statements.push({
          id: await uuidFrom(`voided ${id}`),
          version: VERSION,
          actor,
          verb: VOIDED,
          object: { objectType: 'StatementRef', id },
          timestamp: new Date(madeAt).toISOString(),
        });
    }
  }
  return statements;
}

function answered(id: string, attempt: Attempt, actor: Statement['actor'], base: string): Statement {
  const question = [attempt.deck, `r${attempt.revision}`, attempt.family, attempt.fact, `${attempt.seed}`];
  const extension = (name: string) => `${base}xapi/${name}`;
  return {
    id,
    version: VERSION,
    actor,
    verb: ANSWERED,
    object: {
      objectType: 'Activity',
      id: `${base}question/${question.map(encodeURIComponent).join('/')}`,
      definition: { type: INTERACTION, interactionType: TYPES[attempt.form] },
    },
    result: {
      success: attempt.right,
      completion: true,
      score: { scaled: attempt.right ? 1 : 0 },
      response: responseOf(attempt.answer),
      duration: durationOf(attempt.seconds),
    },
    context: {
      extensions: {
        [extension('family')]: attempt.family,
        [extension('facts')]: attempt.facts,
        [extension('seed')]: attempt.seed,
        [extension('deck-revision')]: attempt.revision,
        [extension('slip-ups')]: attempt.slipUps,
        [extension('interrupted')]: attempt.interrupted,
        [extension('guess-rate')]: attempt.guessRate,
        [extension('local-day')]: attempt.day,
        [extension('time-zone')]: attempt.zone,
      },
    },
    timestamp: new Date(attempt.at).toISOString(),
  };
}
