/**
 * The way to the class date, as the planner tells it part by part. The drill waits for it two seconds at most;
 * then a simple rule serves (src/core/memory/agenda.ts). What the next plan can start from is kept in the store.
 */
import { useEffect, useMemo, useState } from 'react';
import { type Assignment, areaOf, weightsOf } from '../core/assign/assignment.ts';
import { secondsOnDay } from '../core/ledger/days.ts';
import type { Ledger } from '../core/ledger/ledger.ts';
import { dayOfDate } from '../core/memory/day.ts';
import { paceOfTimes } from '../core/memory/pace.ts';
import { WEIGHTS } from '../core/memory/recall.ts';
import { planFactsOf } from '../core/plan/facts.ts';
import { keepAlive } from '../core/plan/keep-alive.ts';
import type { OutlookPart, OutlookRequest } from '../core/plan/outlook.ts';
import { weightsAt } from '../core/plan/personal.ts';
import type { Fact } from '../core/questions/facts.ts';
import { FAMILIES } from '../core/questions/families/index.ts';
import type { FactId } from '../core/questions/question.ts';
import { seedOf } from '../core/random.ts';
import { pass } from '../core/result.ts';
import type { Unit } from '../core/unit/unit.ts';
import type { Practice, StoredPlan } from '../storage/rows.ts';
import { countedAttempts } from './counted-attempts.ts';
import { useServices } from './services.ts';

/** A drill is planned in this time, or by the simple rule. */
const PATIENCE_MS = 2000;

/**
 * Up to so many answers the personal scale is estimated anew each day. Beyond, a day's answers change nothing about
 * it any more, and replaying all of them takes long: then only the page on progress does it.
 */
const MOST_FOR_DAILY_SCALE = 20_000;

/** The latest plan that was asked for. One that ended because this one took over asks for nothing more. */
let latest = 0;

type PartOf<K extends OutlookPart['kind']> = Extract<OutlookPart, { kind: K }>;

export interface Outlook {
  /** Facts to ask in this order; null: by the simple rule; undefined: still to come. */
  readonly order: readonly FactId[] | null | undefined;
  /** What is still to come stays null. */
  readonly forecast: PartOf<'forecast'> | null;
  readonly ceilings: PartOf<'ceilings'>['each'] | null;
  readonly scale: PartOf<'scale'>['personal'] | null;
  /** The planner has nothing more to tell. */
  readonly ended: boolean;
}

const NOTHING_YET: Outlook = {
  order: undefined,
  forecast: null,
  ceilings: null,
  scale: null,
  ended: false,
};

interface OutlookOf {
  readonly unit: Unit;
  /** Those that are practised. */
  readonly facts: readonly Fact[];
  /** Says what counts more and what less. */
  readonly assignment: Assignment | undefined;
  readonly ledger: Ledger;
  readonly practice: Practice;
  readonly day: number;
}

/** Minutes whose most is told: those a day has, and twice as many. */
const ceilingMinutes = (minutes: number) => [minutes, 2 * minutes];

function withPart(outlook: Outlook, part: OutlookPart): Outlook {
  switch (part.kind) {
    case 'drill':
      return { ...outlook, order: part.order };
    case 'forecast':
      return { ...outlook, forecast: part };
    case 'ceilings':
      return { ...outlook, ceilings: part.each };
    case 'scale':
      return { ...outlook, scale: part.personal };
  }
}

function keptAfter(kept: StoredPlan, part: OutlookPart, madeFor: string, day: number): StoredPlan {
  switch (part.kind) {
    case 'drill':
      return { ...kept, prices: [...part.prices] };
    case 'ceilings':
      return { ...kept, ceilings: { madeFor, each: part.each } };
    case 'scale':
      return { ...kept, scale: { day, adopted: part.personal.adopted ? part.personal.scale : null } };
    default:
      return kept;
  }
}

export const planSeed = (unit: Unit, { latest, answers }: Ledger): number =>
  seedOf(unit.deck.id, latest?.drill ?? 'first', answers);

/** With `scaled` the personal scale is estimated even when it was today already, or no class is ahead. */
export function useOutlook(asked: OutlookOf, scaled = false): Outlook {
  const { unit, facts, assignment, ledger, practice, day } = asked;
  const weights = useMemo(() => weightsOf(assignment ?? {}, facts), [assignment, facts]);
  const { store, planFor } = useServices();
  const { classDate, minutes, daysAWeek } = practice;
  const classDay = classDate === null ? null : dayOfDate(classDate);
  const ahead = classDay !== null && classDay >= day;
  const { id: deck, revision } = unit.deck;
  const counts = JSON.stringify(assignment?.counting ?? {});
  const madeFor = [revision, facts.length, counts, day, classDay, minutes, daysAWeek].join(' ');
  const key = [deck, madeFor, ledger.answers, ledger.latest?.id].join(' ');
  const [told, setTold] = useState<{ readonly key: string; readonly outlook: Outlook }>();

  // biome-ignore lint/correctness/useExhaustiveDependencies: the key says when there is something else to plan
  useEffect(() => {
    if (!ahead && !scaled) return;
    let shown = true;
    const change = (how: (before: Outlook) => Outlook) => {
      if (shown)
        setTold((before) => ({ key, outlook: how(before?.key === key ? before.outlook : NOTHING_YET) }));
    };
    const bySimpleRule = () =>
      change((before) => ({ ...before, order: before.order === undefined ? null : before.order }));
    const patience = setTimeout(bySimpleRule, PATIENCE_MS);

    const plan = async () => {
      const found = await store.planOf(deck);
      const stored = found.ok ? found.value : undefined;
      const w = stored?.scale?.adopted ? weightsAt(stored.scale.adopted) : WEIGHTS;
      const start = ahead && stored?.classDay === classDay && stored.prices.length > 0 ? stored.prices : null;
      const ceilings = stored?.ceilings?.madeFor === madeFor ? stored.ceilings : null;
      if (ceilings) change((before) => ({ ...before, ceilings: ceilings.each }));
      let kept: StoredPlan = {
        classDay: classDay ?? day,
        prices: start ?? [],
        ceilings,
        scale: stored?.scale ?? null,
      };
      const own = w === WEIGHTS ? pass(ledger) : await store.ledgerOf(deck, w);
      const { memory, observations } = own.ok ? own.value : ledger;
      const request: OutlookRequest = {
        w,
        today: day,
        classDay: ahead ? classDay : null,
        minutes,
        attendance: daysAWeek / 7,
        spentSeconds: secondsOnDay(ledger.days, day),
        facts: planFactsOf({
          facts,
          families: FAMILIES,
          memory,
          secondsPerForm: paceOfTimes(ledger.times),
          weights,
        }),
        topicOf: facts.map((fact) => areaOf(fact) ?? ''),
        observations,
        attempts: [],
        voids: new Set<string>(),
        seed: planSeed(unit, ledger),
        ...(start && { prices: new Map(start) }),
        ceilings: ceilings ? [] : ceilingMinutes(minutes),
        scale: false,
      };
      const daily = ledger.answers <= MOST_FOR_DAILY_SCALE && stored?.scale?.day !== day;
      const withScale = scaled || (ledger.answers > 0 && daily);
      const mine = ++latest;
      const course = `${deck} ${classDay}`;
      const end = () => {
        bySimpleRule();
        change((before) => ({ ...before, ended: true }));
      };
      const tell = (part: OutlookPart) => {
        change((before) => withPart(before, part));
        const after = keptAfter(kept, part, madeFor, day);
        if (after !== kept) void store.keepPlan(deck, after);
        kept = after;
      };
      // The scale alone needs every answer: it is asked for when all else is told.
      const tellScale = async () => {
        const log = await countedAttempts(store, deck);
        if (!log.ok || mine !== latest) return end();
        const { observations: _, ...rest } = request;
        const alone = { ...rest, classDay: null, attempts: log.value, scale: true };
        planFor(course, alone, (part) => (part ? tell(part) : end()));
      };
      const goOn = () => (withScale && mine === latest ? void tellScale() : end());
      if (ahead) planFor(course, request, (part) => (part ? tell(part) : goOn()));
      else goOn();
    };
    void plan();
    return () => {
      // The plan goes on: what it finds is kept for the next one.
      shown = false;
      clearTimeout(patience);
    };
  }, [key, scaled]);

  const order = useMemo(() => {
    if (ahead || classDay === null) return null;
    const planFacts = planFactsOf({
      facts,
      families: FAMILIES,
      memory: ledger.memory,
      secondsPerForm: paceOfTimes(ledger.times),
      weights,
    });
    const wanted = keepAlive({ w: WEIGHTS, today: day, seconds: minutes * 60, facts: planFacts });
    return wanted.map(({ fact }) => fact);
  }, [ahead, classDay, day, ledger, facts, minutes, weights]);

  const outlook = told?.key === key ? told.outlook : NOTHING_YET;
  return ahead ? outlook : { ...outlook, order };
}
