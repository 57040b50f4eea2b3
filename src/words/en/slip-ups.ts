/** What went wrong, said to the person who answered: one sentence for each slip-up. */
import type { SlipUp } from '../../core/questions/slip-ups.ts';

export const SLIP_UP_WORDS: Readonly<Record<`slip-up.${SlipUp}`, string>> = {
  'slip-up.neighbour-range': 'That is the row next to it.',
  'slip-up.subset-range': 'That row shares some of these elements, but not all of them.',
  'slip-up.one-way-left-out': 'You counted what oil applies. The one-way holds here too.',
  'slip-up.once-on-stays-on': 'It does not stay on all the way between its first and last range.',
  'slip-up.release-apply-swapped': 'Turned round: what you took as coming on comes off.',
  'slip-up.held-through-counted': 'An element that stays on does not change.',
  'slip-up.applied-only': 'You counted what comes on. What comes off counts as well.',
  'slip-up.pair-from-chart': 'A range uses that pair, so it cannot tie the train up.',
  'slip-up.neutral-needs-nothing': 'Neutral does not mean that every element is off.',
  'slip-up.inverse-ratio': 'Turned over: ratio is input speed divided by output speed.',
  'slip-up.sign-lost': 'The size is right, but it turns the other way.',
  'slip-up.sun-ring-swapped': 'Sun and ring teeth are swapped.',
  'slip-up.carrier-forgotten': 'Ring over sun holds only while the carrier stands still.',
  'slip-up.first-set-only': 'That is one gearset alone; the others join in.',
  'slip-up.assumed-still': 'That shaft is not held here. It turns.',
  'slip-up.turns-with-input': 'That shaft does not turn at input speed here.',
  'slip-up.more-elements-lower': 'The order of the chart is not the order of the ratios.',
  'slip-up.current-means-pressure':
    'You took current to mean pressure. Some of these give pressure with the current off.',
  'slip-up.current-cuts-pressure':
    'You took current to cut pressure. Some of these give pressure only with current on.',
  'slip-up.all-off-nothing-on': 'A dead unit can still drive: some solenoids give pressure when unplugged.',
  'slip-up.top-range-when-dead': 'That may be true of another unit. Here the unplugged solenoids decide.',
  'slip-up.first-use-only': 'It is used in more than one range.',
  'slip-up.one-way-cover-forgotten': 'A one-way can hold in its place here.',
  'slip-up.all-ranges-lost': 'Ranges that do not need it still drive.',
  'slip-up.uses-it-ranges-only': 'It can touch ranges that never call for it.',
  'slip-up.stuck-like-failed': 'Stuck on is not the same as failing to apply.',
  'slip-up.unused-means-tied-up': 'Not every range that leaves it off ties up when it stays on.',
  'slip-up.slip-over-expected': 'You divided by the expected speed; this shop divides by the input speed.',
  'slip-up.commanded-not-actual': 'The speeds show another range than the one commanded.',
  'slip-up.output-times-nothing': 'The output speed has to be multiplied by the ratio first.',
};
