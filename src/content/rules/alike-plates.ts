/** Which plates of a stack nothing tells apart. */
import { exactIn, type Length } from '../../core/unit/record.ts';
import type { DeckStackItem } from '../../core/unit/stacks.ts';

/** What must agree for two plates to be able to change places. */
export const PROPERTIES = ['kind', 'name', 'thickness', 'free', 'looks'] as const;
type Property = (typeof PROPERTIES)[number];

const size = (length: Length | undefined) => length && exactIn(length, 'mm').toFraction();

const valuesOf = (item: DeckStackItem): Record<Property, string | undefined> => ({
  kind: item.kind,
  name: item.name,
  thickness: size(item.thickness),
  free: size(item.free),
  looks: item.looks && `${item.looks.feature} ${item.looks.towards}`,
});

/** The first property in which two plates differ; undefined when they are alike. */
export function differenceOf(one: DeckStackItem, other: DeckStackItem): Property | undefined {
  const [a, b] = [valuesOf(one), valuesOf(other)];
  return PROPERTIES.find((property) => a[property] !== b[property]);
}
