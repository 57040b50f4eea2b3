/**
 * The way to the class date, as the planner tells it part by part. The drill waits for it two seconds at most;
 * then a simple rule serves (src/core/memory/agenda.ts). What the next plan can start from is kept in the store.
 */
import { useEffect, useMemo, useState } from 'react';
import { areaOf } from '../core/assign/assignment.ts';
import type { Attempt } from '../core/memory/attempt.ts';
import { dayOfDate } from '../core/memory/day.ts';
import { foldAttempts } from '../core/memory/fold.ts';
import { paceOf, secondsOn } from '../core/memory/pace.ts';
import { WEIGHTS } from '../core/memory/recall.ts';
import { planFactsOf } from '../core/plan/facts.ts';
import { keepAlive } from '../core/plan/keep-alive.ts';
import type { OutlookPart } from '../core/plan/outlook.ts';
import { weightsAt } from '../core/plan/personal.ts';
import type { Fact } from '../core/questions/facts.ts';
import { FAMILIES } from '../core/questions/families/index.ts';
import type { FactId } from '../core/questions/question.ts';
import { seedOf } from '../core/random.ts';
import type { Unit } from '../core/unit/unit.ts';
import type { Practice, StoredPlan } from '../storage/rows.ts';
import { useServices } from './services.ts';

/** A drill is planned in this time, or by the simple rule. */
const PATIENCE_MS = 2000;

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
  readonly attempts: readonly Attempt[];
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

export const planSeed = (unit: Unit, attempts: readonly Attempt[]): number =>
  seedOf(unit.deck.id, attempts.at(-1)?.drill ?? 'first', attempts.length);

/** With `scaled` the personal scale is estimated even when it was today already, or no class is ahead. */
export function useOutlook({ unit, facts, attempts, practice, day }: OutlookOf, scaled = false): Outlook {
  const { store, planFor } = useServices();
  const { classDate, minutes, daysAWeek } = practice;
  const classDay = classDate === null ? null : dayOfDate(classDate);
  const ahead = classDay !== null && classDay >= day;
  const { id: deck, revision } = unit.deck;
  const madeFor = [revision, facts.length, day, classDay, minutes, daysAWeek].join(' ');
  const key = [deck, madeFor, attempts.length, attempts.at(-1)?.id].join(' ');
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
      const request = {
        w,
        today: day,
        classDay: ahead ? classDay : null,
        minutes,
        attendance: daysAWeek / 7,
        spentSeconds: secondsOn(day, attempts),
        facts: planFactsOf({
          facts,
          families: FAMILIES,
          memory: foldAttempts(attempts, new Set(), { weights: w }),
          secondsPerForm: paceOf(attempts),
        }),
        topicOf: facts.map((fact) => areaOf(fact) ?? ''),
        attempts,
        voids: new Set<string>(),
        seed: planSeed(unit, attempts),
        ...(start && { prices: new Map(start) }),
        ceilings: ceilings ? [] : ceilingMinutes(minutes),
        scale: scaled || (attempts.length > 0 && stored?.scale?.day !== day),
      };
      planFor(`${deck} ${classDay}`, request, (part) => {
        if (!part) {
          bySimpleRule();
          change((before) => ({ ...before, ended: true }));
          return;
        }
        change((before) => withPart(before, part));
        const after = keptAfter(kept, part, madeFor, day);
        if (after !== kept) void store.keepPlan(deck, after);
        kept = after;
      });
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
    const memory = foldAttempts(attempts);
    const planFacts = planFactsOf({ facts, families: FAMILIES, memory, secondsPerForm: paceOf(attempts) });
    const asked = keepAlive({ w: WEIGHTS, today: day, seconds: minutes * 60, facts: planFacts });
    return asked.map(({ fact }) => fact);
  }, [ahead, classDay, day, attempts, facts, minutes]);

  const outlook = told?.key === key ? told.outlook : NOTHING_YET;
  return ahead ? outlook : { ...outlook, order };
}
