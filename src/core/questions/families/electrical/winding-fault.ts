/**
 * Readings on a group of windings: which of these single faults fit them all? With only some of the readings
 * taken, more than one may. Every reading is at 20 °C, the leads' own resistance taken off.
 */
import { everyFault, faultsThatFit, GROUND, type HarnessFault } from '../../../electrical/harness.ts';
import type { Random } from '../../../random.ts';
import { makeDecimal } from '../../../rational.ts';
import type { Unit } from '../../../unit/unit.ts';
import { type Phrase, say } from '../../phrase.ts';
import type { Answer, Family, Lure } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import { perUnit } from '../per-unit.ts';
import { type Condition, explainsByFormula, readHarness } from './faulty-harness.ts';
import { type AskedHarness, askedHarnesses, pinInWords } from './harness-parts.ts';
import { ohmsText } from './winding-parts.ts';

const FACT = 'skill:winding-fault';
const OPTIONS = 6;

/** Groups whose common wire has a pin, and whether that wire is a feed: only then is the case another place. */
const harnesses = perUnit((unit: Unit): (AskedHarness & { readonly fed: boolean })[] =>
  askedHarnesses(unit)
    .filter(({ common }) => common !== GROUND)
    .map((harness) => ({
      ...harness,
      fed: unit.deck.electrical!.windings!.every(
        ({ supply, switched }) => supply !== harness.supply || switched === 'low',
      ),
    })),
);

/** No fault, and each that can be told from the common wire: with a ground wire none that touches the case. */
function conditionsOf(harness: AskedHarness & { readonly fed: boolean }): Condition[] {
  const faults = everyFault(harness);
  const touches = ({ kind }: HarnessFault) => kind === 'to-ground' || kind === 'common-to-ground';
  return [null, ...(harness.fed ? faults : faults.filter((fault) => !touches(fault)))];
}

const idOf = (fault: Condition): string =>
  fault === null
    ? 'sound'
    : [fault.kind, ...('pin' in fault ? [fault.pin] : []), ...('other' in fault ? [fault.other] : [])].join(
        '-',
      );

function inWords(harness: AskedHarness, fault: Condition): Phrase {
  if (fault === null) return say('winding-fault.sound');
  return say(`winding-fault.${fault.kind}`, {
    ...('pin' in fault ? { one: pinInWords(harness, fault.pin) } : {}),
    ...('other' in fault ? { other: pinInWords(harness, fault.other) } : {}),
    common: harness.common,
  });
}

/** The real fault, what fits as well, and others: the same on another pin, another on the same pin, any. */
function drawOptions(
  every: readonly Condition[],
  real: Condition,
  fit: readonly Condition[],
  random: Random,
): Condition[] {
  const pin = real !== null && 'pin' in real ? real.pin : null;
  const alike = every.filter(
    (fault) =>
      fault !== null && real !== null && (fault.kind === real.kind || ('pin' in fault && fault.pin === pin)),
  );
  const chosen = new Map<string, Condition>();
  for (const fault of [
    real,
    ...random.sample(fit, 2),
    null,
    ...random.sample(alike, 3),
    ...random.shuffle(every),
  ])
    if (chosen.size < OPTIONS) chosen.set(idOf(fault), fault);
  return every.filter((fault) => chosen.has(idOf(fault)));
}

/** Faults that take an open circuit for a bridged one, or the other way round. */
const OPPOSITE: Partial<Record<HarnessFault['kind'], HarnessFault['kind']>> = {
  open: 'shorted',
  shorted: 'open',
  'high-resistance': 'turns-shorted',
  'turns-shorted': 'high-resistance',
};

export const windingFault: Family = {
  id: 'winding-fault',
  level: 'reason',
  form: 'set',
  facts: (unit) => (harnesses(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const among = harnesses(unit);
    if (fact !== FACT || among.length === 0) return undefined;
    const harness = random.pick(among);
    const every = conditionsOf(harness);
    // Each kind of fault as often as any other, whatever the number of pins.
    const kind = random.pick([...new Set(every.map((fault) => fault?.kind ?? 'sound'))]);
    const real = random.pick(every.filter((fault) => (fault?.kind ?? 'sound') === kind));
    const toCase = harness.fed && random.int(0, 2) > 0;
    const readings = readHarness(harness, real, toCase, random);
    const fit = faultsThatFit(harness, readings).filter((fault) =>
      every.some((one) => idOf(one) === idOf(fault)),
    );
    if (!fit.some((fault) => idOf(fault) === idOf(real))) return undefined;
    const options = drawOptions(every, real, fit, random);
    const fits = (fault: Condition) => fit.some((one) => idOf(one) === idOf(fault));
    const picks = (rule: (fault: Condition) => boolean): Answer => ({
      form: 'set',
      picks: options.filter(rule).map(idOf),
    });
    const opposite = real && OPPOSITE[real.kind];
    const odd = readings.find(({ between: [pin, to], ohms }) =>
      to === harness.common
        ? !explainsByFormula(harness, null, [{ between: [pin, to], ohms }])
        : ohms !== null,
    );
    const wrong: Lure[] = [
      ...(opposite && real && 'pin' in real
        ? [
            {
              slipUp: 'open-short-swapped' as const,
              answer: picks((fault) => fault?.kind === opposite && 'pin' in fault && fault.pin === real.pin),
            },
          ]
        : []),
      ...(odd
        ? [
            {
              slipUp: 'first-reading-only' as const,
              answer: picks((fault) => explainsByFormula(harness, fault, [odd])),
            },
          ]
        : []),
      ...(real && 'pin' in real
        ? [
            {
              slipUp: 'neighbour-pin' as const,
              answer: picks((fault) => fault?.kind === real.kind && 'pin' in fault && fault.pin !== real.pin),
            },
          ]
        : []),
      { slipUp: 'in-band-means-sound', answer: picks((fault) => fault === null) },
    ];
    const lures = wrong.filter(({ answer }) => answer.form === 'set' && answer.picks.length > 0);

    const pins = harness.windings.map(({ pin }) => pin);
    const shown = (from: string, to: string): Phrase => {
      const reading = readings.find(({ between }) => between[0] === from && between[1] === to)!;
      return reading.ohms === null
        ? say('electrical.open')
        : say('electrical.ohms', { ohms: ohmsText(reading.ohms) });
    };
    return {
      facts: [FACT],
      uses: harness.uses,
      prompt: say('winding-fault.prompt', {
        common: harness.common,
        case: !harness.fed ? 'none' : toCase ? 'read' : 'unread',
      }),
      drawing: {
        kind: 'table',
        columns: [
          say('winding-fault.band'),
          say('winding-fault.to-common', { common: harness.common }),
          ...(toCase ? [say('winding-fault.to-case')] : []),
        ],
        rows: harness.windings.map(({ pin, ohms }) => ({
          head: pinInWords(harness, pin),
          cells: [
            say('electrical.band', { low: makeDecimal(ohms.low, 1), high: makeDecimal(ohms.high, 1) }),
            shown(pin, harness.common),
            ...(toCase ? [shown(pin, GROUND)] : []),
          ],
        })),
      },
      space: {
        form: 'set',
        options: options.map((fault) => ({ id: idOf(fault), label: inWords(harness, fault) })),
      },
      answers: [picks(fits)],
      lures: distinctLures(lures.map((lure) => ({ ...lure, fact }))),
      explanation: {
        row: say('winding-fault.row'),
        reason: say(
          toCase
            ? 'winding-fault.reason-case'
            : harness.fed
              ? 'winding-fault.reason-no-case'
              : 'winding-fault.reason-ground',
        ),
        more: options.map((fault) =>
          say(fits(fault) ? 'winding-fault.fits' : 'winding-fault.does-not-fit', {
            fault: inWords(harness, fault),
            would: say(`winding-fault.would-${fault?.kind ?? 'sound'}`, {
              count: pins.length,
              common: harness.common,
            }),
          }),
        ),
      },
      isRight: (answer) =>
        answer.form === 'set' &&
        options.every(
          (fault) => answer.picks.includes(idOf(fault)) === explainsByFormula(harness, fault, readings),
        ),
    };
  },
};
