import type { Rule } from './rule.ts';

/** A coil has a resistance and needs no supply; a hall sensor has a supply and no winding to measure. */
export const pickupKind: Rule = {
  id: 'pickup-kind',
  severity: 'error',
  check: (deck) =>
    (deck.electrical?.pickups ?? []).flatMap(({ kind, at20, supply }, index) => {
      const at = ['electrical', 'pickups', index];
      const [needed, other] = kind === 'coil' ? ([at20, supply] as const) : ([supply, at20] as const);
      const field = kind === 'coil' ? 'supply' : 'at20';
      return [
        ...(needed === undefined ? [{ at, case: kind }] : []),
        ...(other === undefined ? [] : [{ at: [...at, field], case: 'extra', values: { kind, field } }]),
      ];
    }),
};
