/** Names of never-seen units: plants of the wayside, so that nobody takes one for a maker's model. */
import type { Random } from '../random.ts';

const PLANTS = [
  'Betony', 'Bistort', 'Borage', 'Bracken', 'Burnet', 'Campion', 'Clary', 'Comfrey', 'Fescue', 'Hawkbit',
  'Hyssop', 'Lovage', 'Mallow', 'Nettle', 'Orache', 'Pignut', 'Ragwort', 'Samphire', 'Sedge', 'Selfheal',
  'Sorrel', 'Speedwell', 'Stonecrop', 'Tansy', 'Teasel', 'Vetch', 'Woodruff', 'Yarrow',
]; // biome-ignore format: names in a block

/** "Teasel 5": a plant and the number of forward ranges. */
export const unitName = (random: Random, forward: number): string => `${random.pick(PLANTS)} ${forward}`;
