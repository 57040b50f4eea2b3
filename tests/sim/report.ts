/** Makes docs/simulation.md from what was measured. */
import type { Done, MixedMeasured, Table } from './jobs.ts';
import { beatenBy, type Estimate, type Measured } from './measure.ts';

const share = ({ mean }: Estimate) => mean.toFixed(4);
const withError = ({ mean, error }: Estimate) => `${mean.toFixed(4)} ± ${error.toFixed(4)}`;
const row = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
const table = (head: readonly string[], rows: readonly (readonly string[])[]) =>
  [row(head), row(head.map(() => '---')), ...rows.map(row)].join('\n');

const nameOf = ({ cell }: { cell: Measured['cell'] }) =>
  `${cell.facts} / ${cell.days} / ${cell.minutes}${cell.attendance < 1 ? ` / ${Math.round(cell.attendance * 100)} %` : ''}`;

function sharesTable(cells: readonly Measured[]): string {
  const policies = cells[0]!.rows.map(({ policy }) => policy);
  return table(
    ['facts / days / minutes', 'runs', 'bound', 'ours', 'ours / bound', ...policies.slice(1)],
    cells.map((measured) => {
      const [own, ...others] = measured.rows;
      return [
        nameOf(measured),
        String(measured.runs),
        share(measured.bound),
        share(own!.share),
        `**${own!.ratio.mean.toFixed(4)}** ± ${own!.ratio.error.toFixed(4)}`,
        ...others.map(({ share: of, behind }) => `${share(of)} (${withError(behind)})`),
      ];
    }),
  );
}

function mixedTable(cells: readonly MixedMeasured[]): string {
  return table(
    [
      'facts / days / minutes',
      'credit',
      'policy',
      'recalled at class',
      'ours is better by',
      'belief less truth',
    ],
    cells.flatMap((measured) =>
      measured.rows.map(({ credit, policy, share: of, behind, bias }) => [
        nameOf(measured),
        credit === 'told' ? 'told what was known' : 'right or wrong',
        policy,
        withError(of),
        policy === 'ours' ? '' : withError(behind),
        bias.toFixed(3),
      ]),
    ),
  );
}

/** The rows of one table. */
export function makeTable(of: Table, done: readonly Done[]): string {
  if (of === 'mixed')
    return mixedTable(done.flatMap((entry) => (entry.table === 'mixed' ? [entry.measured] : [])));
  return sharesTable(
    done.flatMap((entry) => (entry.table !== 'mixed' && entry.table === of ? [entry.measured] : [])),
  );
}

function summary(of: Table, done: readonly Done[], target: number): string {
  const cells = done.flatMap((entry) =>
    entry.table !== 'mixed' && entry.table === of ? [entry.measured] : [],
  );
  const least = cells.reduce((a, b) => (a.rows[0]!.ratio.mean <= b.rows[0]!.ratio.mean ? a : b));
  const short = cells.filter(({ rows }) => rows[0]!.ratio.mean < target);
  const beaten = cells.flatMap((cell) => beatenBy(cell).map((policy) => `${policy} (${nameOf(cell)})`));
  return [
    `Lowest share of the bound: **${least.rows[0]!.ratio.mean.toFixed(4)}** (${nameOf(least)}).`,
    short.length === 0
      ? `Every cell reaches the goal of ${target}.`
      : `Short of the goal of ${target}: ${short.map(nameOf).join(', ')}.`,
    beaten.length === 0
      ? 'No baseline is better by more than two standard errors in any cell.'
      : `Better than ours by more than two standard errors: ${beaten.join(', ')}.`,
  ].join(' ');
}

function mixedSummary(done: readonly Done[]): string {
  const rows = done.flatMap((entry) =>
    entry.table === 'mixed'
      ? entry.measured.rows.map((each) => ({ ...each, name: nameOf(entry.measured) }))
      : [],
  );
  const better = rows.filter(({ behind }) => behind.mean < -2 * behind.error - 1e-6);
  return better.length === 0
    ? 'No baseline is better by more than two standard errors.'
    : `Better than ours by more than two standard errors: ${better.map(({ policy, name }) => `${policy} (${name})`).join(', ')}.`;
}

export function makeReport(done: readonly Done[]): string {
  return `# Simulation of the plan

Made by \`npm run -s sim\` (tests/sim, some minutes on two idle cores); do not edit by hand.

Simulated learners practise every day until the day before class. Score: mean true recall of all facts on the class
day; a fact never asked counts 0. At the first ask a fact is known with chance 0.3. Memory follows the FSRS-6 model.
At most one ask of a fact a day; 12 s a question where nothing else is said. All policies meet the same luck.

The **bound** is the Lagrangian bound (docs/spec/plan.md P4): no policy has a higher expected score. Scores are freed
of luck by a control variate, the bound's own value function, which leaves their means as they are; a ratio may
still pass 1 by its error. In brackets: by how much ours is better, paired, with standard error.

Policies: **ours** (src/core/plan); **due at 0.9, filled**: unseen facts first, then what has fallen to recall 0.9,
longest overdue first, spare time to the lowest recall; **due first, filled**: the same with due facts before unseen
ones; **lowest recall** first, unseen ones before all; **greedy gain**: highest gain in recall at class per second, as
if it were the last ask; **random**.

What it does not show: that the model of memory is right. It is taken as true here, with other numbers at most.

## Learners whose numbers are known

${summary('known', done, 0.995)}

${makeTable('known', done)}

## Learners whose numbers the scheduler does not know

Each learner has own parameters: first stabilities times a common factor (standard deviation of its logarithm 0.4),
eleven other parameters each by a factor (0.12 to 0.25), the chance of knowing a fact at the first ask (0.5 in
log-odds); each fact's first stability differs by 0.45 to 2.2 times and its difficulty by up to 1.2. The scheduler
uses the default parameters throughout and sees right or wrong. The bound is for somebody who knows the learner's
parameters, and from the first answer on what sort of fact it is.

${summary('unknown', done, 0.985)}

${makeTable('unknown', done)}

## Wrong answers take longer: 10 s when right, 22 s when wrong

${summary('seconds', done, 0.995)}

The hardest cell is 300 / 21 / 5, with hardly more than one ask a fact: each day ends within a question. That costs about a
quarter of a percent (the same cell with even questions of 18.4 s: 0.997); where the rest goes has not been found.

${makeTable('seconds', done)}

## Missed days

Each day after the first takes place with the chance stated. Ours expects that; "expecting every day" does not. The
bound lets seconds be moved between courses with many and with few missed days, which nobody can do: it is loose. In
the short courses with time for one ask a fact at most, ours and the rules that take unseen facts first come to the same.

${summary('missed', done, 0.99)}

${makeTable('missed', done)}

## Questions as they are: several facts, guessing

Questions drawn from the shipped decks and their families, some needing several facts, some open to guessing. The
learner knows each fact by its own chance; the scheduler sees right or wrong and credits it by the mixture rule, or for
comparison is told which facts were known. No bound is known for this world.

${mixedSummary(done)}

${makeTable('mixed', done)}
`;
}
