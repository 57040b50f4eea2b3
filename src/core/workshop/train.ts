/**
 * The gear train of a draft as far as it stands: what can be drawn, and what can be solved. A set can be drawn when
 * it has a kind, an element when both its shafts are said; a gear that sits nowhere yet gets a shaft of its own, so
 * that the drawing grows with every field. Only a train whose every gear is counted is solved.
 */
import { CASE, ELEMENT_KINDS, GEARSET_KINDS, type Gearset, MEMBERS, type Train } from '../gears/train.ts';
import type { Deck, DeckElement } from '../unit/deck.ts';
import type { Unit } from '../unit/unit.ts';
import { type DeckDraft, freshId, type Loose } from './draft.ts';

export const INPUT = 'input';
export const OUTPUT = 'output';

type DraftTrain = NonNullable<DeckDraft['train']>;
type DraftSet = NonNullable<DraftTrain['gearsets']>[number];
type DraftElement = NonNullable<DraftTrain['elements']>[number];

const said = (text: string | undefined): text is string => text !== undefined && text.trim() !== '';

/** A count as it was typed; null when it is none. */
export function countOf(typed: string | number | undefined): number | null {
  const text = String(typed ?? '').trim();
  return /^[1-9]\d{0,2}$/.test(text) ? Number(text) : null;
}

/** Every shaft that something sits on, by first mention, input and output first, the case left out. */
export function shaftsOfDraft(draft: DeckDraft): string[] {
  const { input, output, gearsets = [], elements = [] } = draft.train ?? {};
  const named = [
    input,
    output,
    ...gearsets.flatMap((set) => MEMBERS.map((member) => set[member]?.shaft)),
    ...elements.flatMap((element) => element.between ?? []),
  ];
  return [...new Set(named.filter(said))].filter((shaft) => shaft !== CASE);
}

/** A shaft that nothing sits on yet: "s1", "s2"… */
export const freshShaft = (draft: DeckDraft): string =>
  freshId('s', [...shaftsOfDraft(draft), ...(draft.train?.shafts ?? []).map(({ id }) => id)]);

function drawnSet(set: DraftSet, index: number): Gearset | null {
  const kind = GEARSET_KINDS.find((known) => known === set.kind);
  if (!kind) return null;
  const id = said(set.id) ? set.id : `P${index + 1}`;
  const shaftOf = (member: (typeof MEMBERS)[number]) =>
    said(set[member]?.shaft) ? set[member].shaft : `${id} ${member}`;
  const [sun, ring, carrier] = MEMBERS.map(shaftOf) as [string, string, string];
  // One shaft twice in a set is told by the checks, and cannot be drawn.
  if (new Set([sun, ring, carrier]).size < 3) return null;
  return {
    id,
    kind,
    sun: { shaft: sun, teeth: countOf(set.sun?.teeth) ?? 0 },
    ring: { shaft: ring, teeth: countOf(set.ring?.teeth) ?? 0 },
    carrier: { shaft: carrier },
  };
}

function drawnElement({ id, name, kind, between, overruns }: DraftElement): DeckElement | null {
  const known = ELEMENT_KINDS.find((word) => word === kind);
  const [first, second] = between ?? [];
  if (!known || !said(id) || !said(first) || !said(second) || first === second) return null;
  if ((known === 'brake') !== [first, second].includes(CASE) && known !== 'one-way') return null;
  return {
    id,
    kind: known,
    between: [first, second],
    ...(said(name) && { name }),
    ...(overruns === 'backward' && { overruns }),
  };
}

/** What can be drawn; null while there is no set. Uncounted gears have 0 teeth. */
export function drawnTrain(draft: DeckDraft): Train | null {
  const { input = INPUT, output = OUTPUT, gearsets = [], elements = [] } = draft.train ?? {};
  const sets = gearsets.map(drawnSet).filter((set) => set !== null);
  if (sets.length === 0 || new Set(sets.map(({ id }) => id)).size < sets.length) return null;
  const drawn = elements.map(drawnElement).filter((element) => element !== null);
  const ids = new Set(drawn.map(({ id }) => id));
  if (ids.size < drawn.length || input === output || input === CASE || output === CASE) return null;
  return { input, output, gearsets: sets, elements: drawn };
}

/** The train as it stands, when every set is whole and counted; null until then. */
export function solvableTrain(draft: DeckDraft): Train | null {
  const train = drawnTrain(draft);
  const { gearsets = [], input, output } = draft.train ?? {};
  if (!train || !said(input) || !said(output) || train.gearsets.length < gearsets.length) return null;
  const whole = gearsets.every((set) => MEMBERS.every((member) => said(set[member]?.shaft)));
  const counted = train.gearsets.every(({ sun, ring }) => sun.teeth > 0 && ring.teeth > 0);
  return whole && counted ? train : null;
}

/** A unit that drawings of the draft can be made from: it has no rows, and nothing of it is asked. */
export function unitToDraw(draft: DeckDraft, parts: Partial<Deck>): Unit {
  const deck: Deck = {
    detentDeck: 1,
    id: 'draft',
    title: draft.title ?? '',
    unit: draft.unit ?? '',
    revision: Number(draft.revision ?? 1),
    train: { input: INPUT, output: OUTPUT, gearsets: [], elements: [] },
    chart: { ranges: [] },
    ...parts,
  };
  return { deck, ranges: [], neutrals: [], sure: () => true };
}

/** Names that shafts were given, for drawings and lists. */
export const shaftNames = (draft: DeckDraft): readonly { readonly id: string; readonly name: string }[] =>
  (draft.train?.shafts ?? []).flatMap(({ id, name }: Loose<{ id: string; name: string }>) =>
    said(id) && said(name) ? [{ id, name }] : [],
  );

/** The gears that sit on a shaft: [{ set: 'P1', member: 'ring' }]. */
export function membersOn(draft: DeckDraft, shaft: string) {
  return (draft.train?.gearsets ?? []).flatMap((set, index) =>
    MEMBERS.filter((member) => set[member]?.shaft === shaft).map((member) => ({
      set: said(set.id) ? set.id : `P${index + 1}`,
      index,
      member,
    })),
  );
}
