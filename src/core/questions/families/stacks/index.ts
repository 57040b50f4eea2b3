/** Families on packs of plates. */
import type { Family } from '../../question.ts';
import { plateFaces } from './plate-faces.ts';
import { plateNeighbours } from './plate-neighbours.ts';
import { stackCount } from './stack-count.ts';
import { stackGap } from './stack-gap.ts';
import { stackHeightFamily } from './stack-height.ts';
import { stackOrder } from './stack-order.ts';
import { stackSlip } from './stack-slip.ts';
import { stackStranger } from './stack-stranger.ts';

export const PACKS: readonly Family[] = [
  stackOrder,
  plateNeighbours,
  plateFaces,
  stackGap,
  stackStranger,
  stackCount,
  stackHeightFamily,
  stackSlip,
];
