/**
 * References: the names by which questions, cautions and aliases point at one value of a deck. They are stable
 * for ever. A value is unsure when it is marked so, when what holds it is, or when something it is made of is.
 */
import type { Deck, DeckRow } from './deck.ts';
import type { Named } from './record.ts';

export const REF_KINDS = [
  'range',
  'neutral',
  'cell',
  'element',
  'capacity',
  'gearset',
  'solenoid',
  'valve-body',
  'position',
  'interlock',
  'sensor',
  'part',
  'seat',
  'stack',
  'plate',
  'fit',
  'reading',
  'sequence',
  'step',
  'check',
  'supply',
  'winding',
  'pickup',
  'thermistor',
  'connector',
  'pin',
  'fluid',
  'torque',
  'weight',
  'code',
] as const;
export type RefKind = (typeof REF_KINDS)[number];

/**
 * "range:4", "element:C1", "winding:S2" (by its solenoid), "pickup:input-speed" (by its sensor). What stands
 * within another record is named by both: "cell:4/C1", "plate:C1/steel-2", "reading:end-play/bench",
 * "step:strip/pump-off", "check:strip/end-play", "pin:case/7". The one valve body is "valve-body:face".
 */
export type Ref = `${RefKind}:${string}`;

/** Every value of a deck that can be pointed at, and whether it is unsure. */
function* noted(deck: Deck): Generator<readonly [Ref, boolean]> {
  type Record = { readonly unsure?: true | undefined };
  const all = function* <T extends Named & Record>(kind: RefKind, records: readonly T[] = []) {
    for (const record of records) yield [`${kind}:${record.id}`, record.unsure === true] as [Ref, boolean];
  };
  const within = function* <T extends { readonly id: string } & Record>(
    kind: RefKind,
    holder: Named & Record,
    records: readonly T[] = [],
  ) {
    for (const { id, unsure } of records)
      yield [`${kind}:${holder.id}/${id}`, (unsure ?? holder.unsure) === true] as [Ref, boolean];
  };
  /** A record with parts of its own: unsure too when one of them is. */
  const whole = (kind: RefKind, holder: Named & Record, parts: readonly Record[]): [Ref, boolean] => [
    `${kind}:${holder.id}`,
    holder.unsure === true || parts.some(({ unsure }) => unsure === true),
  ];

  yield* all('gearset', deck.train.gearsets);
  yield* all('element', deck.train.elements);
  for (const { id, capacity } of deck.train.elements)
    if (capacity) yield [`capacity:${id}`, capacity.unsure === true];
  const rows = function* (kind: 'range' | 'neutral', list: readonly DeckRow[] = []) {
    for (const row of list) {
      const cells = row.unsureCells ?? [];
      yield [`${kind}:${row.id}`, row.unsure === true || cells.length > 0] as [Ref, boolean];
      for (const { id } of deck.train.elements)
        yield [`cell:${row.id}/${id}`, cells.includes(id)] as [Ref, boolean];
    }
  };
  yield* rows('range', deck.chart.ranges);
  yield* rows('neutral', deck.chart.neutral);
  yield* all('solenoid', deck.solenoids);
  if (deck.valveBody) yield ['valve-body:face', deck.valveBody.unsure === true];
  yield* all('position', deck.lever?.positions);
  yield* all('interlock', deck.interlocks);
  yield* all('sensor', deck.sensors);
  yield* all('part', deck.shaftLine);
  yield* all('seat', deck.seats);
  for (const stack of deck.stacks ?? []) {
    yield whole('stack', stack, stack.items);
    yield* within('plate', stack, stack.items);
  }
  for (const fit of deck.fits ?? []) {
    yield [`fit:${fit.id}`, fit.unsure === true];
    yield* within('reading', fit, fit.readings);
  }
  for (const sequence of deck.sequences ?? []) {
    yield [`sequence:${sequence.id}`, sequence.unsure === true];
    yield* within('step', sequence, sequence.steps);
    yield* within('step', sequence, sequence.assembly?.added);
    yield* within('check', sequence, sequence.checks);
  }
  const { supplies, windings, pickups, thermistors, connectors } = deck.electrical ?? {};
  yield* all('supply', supplies);
  for (const { solenoid, unsure } of windings ?? []) yield [`winding:${solenoid}`, unsure === true];
  for (const { sensor, unsure } of pickups ?? []) yield [`pickup:${sensor}`, unsure === true];
  yield* all('thermistor', thermistors);
  for (const connector of connectors ?? []) {
    yield whole('connector', connector, connector.pins);
    yield* within('pin', connector, connector.pins);
  }
  yield* all('fluid', deck.fluids);
  yield* all('torque', deck.torques);
  yield* all('weight', deck.weights);
  yield* all('code', deck.codes);
}

/** Everything in the deck that can be pointed at. */
export const refsOf = (deck: Deck): Set<Ref> => new Set([...noted(deck)].map(([ref]) => ref));

/** What is not verified and must not be asked. */
export const unsureRefsOf = (deck: Deck): Set<Ref> =>
  new Set([...noted(deck)].filter(([, unsure]) => unsure).map(([ref]) => ref));
