/** An order under way: what stands in it, from the first place on and without gaps. */

/** The order with the item at this place, moved there or put in; the others keep their order. */
export const putAt = (order: readonly string[], id: string, place: number): string[] =>
  order.filter((other) => other !== id).toSpliced(place, 0, id);

export const without = (order: readonly string[], id: string): string[] =>
  order.filter((other) => other !== id);
