/**
 * Groups for the bench by weak spot. Everybody's weakness in an area is the share he missed, drawn towards one
 * half where he answered little ((missed + 1) / (tried + 2)), less the group's mean there: what is hard for
 * all is no one's own weak spot. The areas get groups by how many have their weak spot there; people are placed
 * where it counts most, until no two of them could change places for the better. No chance is in it, and the
 * order of names makes no difference. Who has answered nothing is not placed: nothing is known of him.
 */
import type { Area } from '../self-check/areas.ts';

/** One person's first tries by area; areas of the assignment only. */
export interface Weakness {
  readonly learner: string;
  readonly areas: ReadonlyMap<Area, { readonly tried: number; readonly missed: number }>;
}

export interface BenchGroup {
  /** The weak spot the group shares. */
  readonly area: Area;
  /** Weakest in it first. */
  readonly learners: readonly string[];
  /** Share its people missed in the area, and everybody's; the answers behind the first. */
  readonly missedShare: number;
  readonly missedByAll: number;
  readonly tried: number;
}

export interface BenchGroups {
  readonly groups: readonly BenchGroup[];
  readonly unplaced: readonly string[];
}

interface Person {
  readonly learner: string;
  /** Own weakness by area, in the order of the areas. */
  readonly own: readonly number[];
  readonly raw: Weakness;
}

const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

const scoreOf = (weakness: Weakness, area: Area): number => {
  const { tried, missed } = weakness.areas.get(area) ?? { tried: 0, missed: 0 };
  return (missed + 1) / (tried + 2);
};

function peopleOf(placed: readonly Weakness[], areas: readonly Area[]): Person[] {
  const means = areas.map((area) => sum(placed.map((weakness) => scoreOf(weakness, area))) / placed.length);
  return placed.map((raw) => ({
    learner: raw.learner,
    own: areas.map((area, place) => scoreOf(raw, area) - means[place]!),
    raw,
  }));
}

const weakest = (own: readonly number[]) => own.indexOf(Math.max(...own));

/** How many groups each area gets: by votes, the largest remainders rounded up, earlier areas first. */
function seatsFor(votes: readonly number[], count: number): number[] {
  const total = sum(votes);
  const shares = votes.map((vote) => (vote * count) / total);
  const seats = shares.map(Math.floor);
  const rest = shares
    .map((share, place) => ({ place, left: share - Math.floor(share) }))
    .sort((a, b) => b.left - a.left || a.place - b.place);
  for (const { place } of rest.slice(0, count - sum(seats))) seats[place]!++;
  return seats;
}

/** The area of each group, by votes; with its size, as even as can be. */
function plannedGroups(people: readonly Person[], areas: readonly Area[], size: number) {
  // Three people in pairs are one group of three: nobody works alone.
  const count = Math.max(1, Math.min(Math.ceil(people.length / size), Math.floor(people.length / 2)));
  const votes = areas.map((_, place) => people.filter(({ own }) => weakest(own) === place).length);
  const places = seatsFor(votes, count).flatMap((seats, place) => new Array<number>(seats).fill(place));
  const [floor, larger] = [Math.floor(people.length / count), people.length % count];
  return places.map((place, index) => ({ place, size: index < larger ? floor + 1 : floor }));
}

/** Places everybody in an area with room: first those who lose most by going elsewhere. */
function place(people: readonly Person[], room: number[]): number[] {
  const loss = ({ own }: Person) => {
    const [first = 0, second = 0] = own.filter((_, at) => room[at]! > 0).sort((a, b) => b - a);
    return first - second;
  };
  const order = people
    .map((person, index) => ({ index, loss: loss(person) }))
    .sort((a, b) => b.loss - a.loss || a.index - b.index);
  const at = new Array<number>(people.length).fill(0);
  for (const { index } of order) {
    const open = people[index]!.own.map((weak, area) => (room[area]! > 0 ? weak : Number.NEGATIVE_INFINITY));
    at[index] = weakest(open);
    room[at[index]]!--;
  }
  return at;
}

/** Swaps two people of different areas as long as that puts more of their weakness where they are placed. */
function improve(people: readonly Person[], at: number[]): void {
  const LEAST = 1e-9;
  for (let better = true; better; ) {
    better = false;
    for (let a = 0; a < people.length; a++)
      for (let b = a + 1; b < people.length; b++) {
        const [here, there] = [at[a]!, at[b]!];
        if (here === there) continue;
        const gain =
          people[a]!.own[there]! + people[b]!.own[here]! - people[a]!.own[here]! - people[b]!.own[there]!;
        if (gain <= LEAST) continue;
        [at[a], at[b]] = [there, here];
        better = true;
      }
  }
}

/** Groups of about `size` (2 or more; as even as can be). Areas without a weak spot get no group. */
export function benchGroups(
  everybody: readonly Weakness[],
  areas: readonly Area[],
  size: number,
): BenchGroups {
  if (!Number.isInteger(size) || size < 2) throw new RangeError(`a group of ${size}`);
  const sorted = [...everybody].sort((a, b) => byText(a.learner, b.learner));
  const answered = (weakness: Weakness) => areas.some((area) => (weakness.areas.get(area)?.tried ?? 0) > 0);
  const placed = sorted.filter(answered);
  const unplaced = sorted.filter((weakness) => !answered(weakness)).map(({ learner }) => learner);
  if (placed.length === 0) return { groups: [], unplaced };

  const people = peopleOf(placed, areas);
  const planned = plannedGroups(people, areas, size);
  const room = areas.map((_, area) =>
    sum(planned.filter((group) => group.place === area).map((g) => g.size)),
  );
  const at = place(people, [...room]);
  improve(people, at);

  const counted = (some: readonly Weakness[], area: Area) => {
    const tries = some.map((weakness) => weakness.areas.get(area) ?? { tried: 0, missed: 0 });
    const tried = sum(tries.map((own) => own.tried));
    return { tried, share: tried === 0 ? 0 : sum(tries.map((own) => own.missed)) / tried };
  };
  const queues = areas.map((_, area) =>
    people
      .filter((_, index) => at[index] === area)
      .sort((a, b) => b.own[area]! - a.own[area]! || byText(a.learner, b.learner)),
  );
  const groups = planned.map(({ place: area, size: own }): BenchGroup => {
    const members = queues[area]!.splice(0, own);
    const { tried, share } = counted(
      members.map(({ raw }) => raw),
      areas[area]!,
    );
    return {
      area: areas[area]!,
      learners: members.map(({ learner }) => learner),
      missedShare: share,
      missedByAll: counted(placed, areas[area]!).share,
      tried,
    };
  });
  return { groups, unplaced };
}
