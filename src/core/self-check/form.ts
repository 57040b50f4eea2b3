/**
 * Draws one form of a self-check. How many questions each area and each family gets depends on the blueprint
 * and the unit alone, never on the seed: two forms of one blueprint differ in facts and numbers, not in kind,
 * which keeps them equally hard. Facts come once where
 * there are enough of them, and those asked lately come last.
 */
import { ask } from '../questions/ask.ts';
import type { FactId, Family, Question } from '../questions/question.ts';
import { type Random, randomFrom, seedOf } from '../random.ts';
import type { Unit } from '../unit/unit.ts';
import { AREA_OF, AREAS, type Area, familiesOf } from './areas.ts';
import { type Blueprint, shareOut } from './blueprint.ts';

export interface FormItem {
  readonly area: Area;
  /** The seed of a unit never studied; null for the deck's own unit. */
  readonly unseen: number | null;
  readonly family: string;
  readonly fact: FactId;
  readonly seed: number;
}

export interface FormRequest {
  readonly blueprint: Blueprint;
  readonly unit: Unit;
  readonly families: readonly Family[];
  /** Makes the unit never studied for a seed; undefined when that seed gives none. */
  readonly unseenUnit: (seed: number) => Unit | undefined;
  /** Facts asked in recent checks: taken only when nothing else is left. */
  readonly recent: ReadonlySet<FactId>;
  readonly seed: number;
}

/** Units never studied in one form: few, so that a chart once read serves several questions. */
const UNSEEN_UNITS = 3;

/** Tried before a family is passed over. */
const TRIES = 12;

/** Families that reason from a chart that is shown; the others would ask for memory of an unknown unit. */
const suitsUnseen = (family: Family) => family.level === 'reason' && AREA_OF[family.id] !== 'safety';

/** How often each family of an area is asked, in list order: evenly, what is left over to the first ones. */
export function spread(families: readonly Family[], count: number): Map<Family, number> {
  return new Map(
    families.map((family, place) => [
      family,
      Math.floor(count / families.length) + (place < count % families.length ? 1 : 0),
    ]),
  );
}

interface Source {
  readonly unit: Unit;
  readonly unseen: number | null;
}

function drawOne(
  family: Family,
  source: Source,
  taken: Set<string>,
  recent: ReadonlySet<FactId>,
  random: Random,
) {
  const own = (fact: FactId) => `${source.unseen ?? ''} ${fact}`;
  const facts = random.shuffle(family.facts(source.unit)).filter((fact) => !taken.has(own(fact)));
  const fresh = source.unseen === null ? facts.filter((fact) => !recent.has(fact)) : facts;
  const ordered = [...fresh, ...facts.filter((fact) => !fresh.includes(fact))];
  for (const fact of ordered.slice(0, TRIES)) {
    const seed = random.int(1, 2 ** 30);
    if (!ask(source.unit, family, seed, fact)) continue;
    taken.add(own(fact));
    return { family: family.id, fact, seed, unseen: source.unseen };
  }
  return undefined;
}

/**
 * The items of a form, areas in order; fewer than asked for only when the deck runs out of facts. The same
 * request gives the same form.
 */
export function drawForm(request: FormRequest): FormItem[] {
  const { blueprint, unit, families, seed, recent } = request;
  const random = randomFrom(seedOf('self-check', unit.deck.id, seed));
  const able = new Map(
    AREAS.map((area) => [area, familiesOf(families, area).filter((family) => family.facts(unit).length > 0)]),
  );
  const shares = shareOut(blueprint, new Set(AREAS.filter((area) => able.get(area)!.length > 0)));
  const unseen: Source[] = [];
  for (let tried = 0; blueprint.unseenShare > 0 && unseen.length < UNSEEN_UNITS && tried < TRIES; tried++) {
    const unseenSeed = random.int(1, 2 ** 30);
    const made = request.unseenUnit(unseenSeed);
    if (made) unseen.push({ unit: made, unseen: unseenSeed });
  }
  const taken = new Set<string>();
  const items: FormItem[] = [];
  for (const [area, count] of shares) {
    const planned = [...spread(able.get(area)!, count)];
    const reasoning = planned.filter(([family]) => suitsUnseen(family));
    const wantUnseen = unseen.length > 0 ? Math.round(count * blueprint.unseenShare) : 0;
    let unseenLeft = Math.min(
      wantUnseen,
      reasoning.reduce((sum, [, times]) => sum + times, 0),
    );
    let missing = 0;
    for (const [family, times] of planned) {
      for (let time = 0; time < times; time++) {
        const away = unseenLeft > 0 && suitsUnseen(family) ? unseen[unseenLeft % unseen.length] : undefined;
        const drawn =
          (away && drawOne(family, away, taken, recent, random)) ??
          drawOne(family, { unit, unseen: null }, taken, recent, random);
        if (drawn?.unseen != null) unseenLeft--;
        if (drawn) items.push({ area, ...drawn });
        else missing++;
      }
    }
    // What a family could not give, the area's others do; then a skill is asked again with other numbers.
    for (const [family] of planned)
      while (missing > 0) {
        const drawn = drawOne(family, { unit, unseen: null }, taken, recent, random);
        if (!drawn) break;
        items.push({ area, ...drawn });
        missing--;
      }
    for (let time = 0; missing > 0 && time < count; time++) {
      const family = planned[time % planned.length]![0];
      const drawn = drawOne(family, { unit, unseen: null }, new Set(), recent, random);
      if (!drawn) continue;
      items.push({ area, ...drawn });
      missing--;
    }
  }
  return random.shuffle(items);
}

/** The item's question and the unit it is about; undefined when it cannot be made again. */
export function openItem(
  request: Pick<FormRequest, 'unit' | 'families' | 'unseenUnit'>,
  item: FormItem,
): { readonly question: Question; readonly unit: Unit } | undefined {
  const unit = item.unseen === null ? request.unit : request.unseenUnit(item.unseen);
  const family = request.families.find(({ id }) => id === item.family);
  const question = unit && family && ask(unit, family, item.seed, item.fact);
  return unit && question && { question, unit };
}
