/** What is looked up before work: fluid, torques, weights; and trouble codes with what they watch here. */
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import type { Amount } from '../../core/unit/record.ts';
import type { Ref, Unit } from '../../core/unit/unit.ts';
import type { UnitSymbol } from '../../core/units/units.ts';
import type { Say } from '../../words/words.ts';
import { calledAs } from './called.ts';
import { Listing } from './Listing.tsx';

interface Props {
  readonly unit: Unit;
  readonly say: Say;
}

const shown = ({ value, unit }: Amount<UnitSymbol>): string => `${value.replace('-', '−')} ${unit}`;

export function ServiceSection({ unit, say }: Props) {
  const { fluids = [], torques = [], weights = [] } = unit.deck;
  const entries = [
    ...fluids.map((fluid) => ({
      ref: `fluid:${fluid.id}` as const,
      head: say(thing('fluid', fluid.id)),
      text: [
        fluid.type,
        ...(fluid.dryFill ? [say(phrase('unit.dry-fill', { volume: shown(fluid.dryFill) }))] : []),
        ...(fluid.refill ? [say(phrase('unit.refill', { volume: shown(fluid.refill) }))] : []),
        ...(fluid.levelAt
          ? [say(phrase('unit.level-at', { low: shown(fluid.levelAt.low), high: shown(fluid.levelAt.high) }))]
          : []),
      ].join('; '),
      of: fluid,
    })),
    ...torques.map((torque) => ({
      ref: `torque:${torque.id}` as const,
      head: say(thing('torque', torque.id)),
      text: say(phrase('unit.torque', { torque: shown(torque.torque), count: torque.count ?? 0 })),
      of: torque,
    })),
    ...weights.map((weight) => ({
      ref: `weight:${weight.id}` as const,
      head: say(thing('weight', weight.id)),
      text: shown(weight.mass),
      of: weight,
    })),
  ];
  return <Listing entries={entries} unit={unit} say={say} />;
}

export function Codes({ unit, say }: Props) {
  const entries = (unit.deck.codes ?? []).map((code) => ({
    ref: `code:${code.id}` as const,
    head: code.id,
    text: (
      <>
        {code.meaning}{' '}
        {say(phrase('unit.watches', { what: code.watches.map((ref) => calledAs(ref as Ref, ref)) }))}
      </>
    ),
    of: code,
  }));
  return <Listing entries={entries} unit={unit} say={say} />;
}
