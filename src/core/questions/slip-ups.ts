/**
 * Slip-ups: named wrong rules. A wrong answer counts as one only when it equals what that rule gives on the
 * same data; two rules that give the same answer are both logged. src/words holds the sentence for each
 * ("slip-up.<id>"). Ids are stable for ever: attempts name them.
 */
export const SLIP_UPS = {
  // reading the chart
  'neighbour-range': 'takes the row above or below',
  'subset-range': 'takes a row that shares some of the elements',
  'one-way-left-out': 'counts only what oil applies',
  'once-on-stays-on': 'fills the gap between first and last use',
  'neighbour-element': 'takes the column beside it',
  'reverse-left-out': 'leaves the reverse ranges out',
  'one-range-for-all': 'takes one range for all that use the element',
  'asked-the-other-way': 'answers the question turned round',
  // shifts
  'release-apply-swapped': 'takes released for applied',
  'held-through-counted': 'counts an element that stays on as changing',
  'applied-only': 'counts only what comes on',
  'steps-added': 'adds up the shifts in between',
  'first-step-only': 'sees only the first step on the way',
  'every-shift-timed': 'takes every shift for a timed exchange',
  'catching-means-letting-go': 'takes a one-way that catches for one that lets go',
  'every-upshift-overruns': 'takes a one-way to let go in every shift up',
  'last-step-only': 'sees only the last range before the new one',
  'pair-from-chart': 'takes elements that a range drives on',
  'extra-element-harmless': 'takes one element more in a range for harmless',
  'uncharted-tied-up': 'takes every combination that no range uses for a tie-up',
  'held-output-counted': 'takes a held output for a tie-up',
  'neutral-needs-nothing': 'thinks neutral has every element off',
  'settled-means-drives': 'takes a held output or a tie-up for drive',
  'every-element-drives': 'takes any element added to neutral to make it drive',
  // gears
  'inverse-ratio': 'divides output by input',
  'sign-lost': 'leaves out which way it turns',
  'sun-ring-swapped': 'takes the sun for the ring',
  'carrier-forgotten': 'uses ring over sun where the carrier turns too',
  'pinion-pair-missed': 'works a double-pinion set as a simple one',
  'first-set-only': 'works out one gearset and stops',
  'assumed-still': 'takes a shaft that turns for held',
  'turns-with-input': 'takes every shaft to turn with the input',
  'output-for-shaft': 'takes the speed of the output for that of the shaft',
  'more-elements-lower': 'orders by how the chart happens to list them',
  // solenoids
  'current-means-pressure': 'takes every solenoid to give pressure when powered',
  'current-cuts-pressure': 'takes every solenoid to give pressure when unplugged',
  'solenoid-turned-round': 'takes one solenoid to work the other way round',
  'polarity-turned-round': 'takes every solenoid the other way round',
  'all-off-nothing-on': 'takes a dead unit to have no range at all',
  'top-range-when-dead': 'takes the dead unit to fall to the top range',
  'lowest-range-when-dead': 'takes the dead unit to fall to its lowest range',
  'other-lever-position': 'takes what the dead unit does in another lever position',
  'valve-forgotten': 'forgets that the manual valve cuts feeds',
  // faults
  'first-use-only': 'names only the first range that needs it',
  'one-way-cover-forgotten': 'forgets that a one-way can hold in its place',
  'unneeded-counted': 'takes a range that does not need it for lost',
  'all-ranges-lost': 'thinks nothing drives any more',
  'other-ratio-kept': 'counts a range that drives at another ratio as still there',
  'uses-it-ranges-only': 'thinks only ranges that use it are touched',
  'stuck-like-failed': 'treats stuck on as if it failed to apply',
  'unused-means-tied-up': 'thinks every other range ties up',
  'extra-is-harmless': 'thinks one element more changes nothing',
  // speeds and slip
  'slip-over-expected': 'divides slip by the expected speed',
  'commanded-not-actual': 'trusts the commanded range over the speeds',
  'range-before-assumed': 'takes it to have stayed in the range before the commanded one',
  'output-times-nothing': 'compares input and output without the ratio',
} as const;
export type SlipUp = keyof typeof SLIP_UPS;
