/**
 * `npm run bench`: every suite, one table. Fails when a subject is not as many times faster than a baseline
 * as the suite says. To add a suite, export it from a *.bench.ts and name it here. With `-- --write` the table goes
 * to docs/benchmarks.md as well.
 */
import { writeFileSync } from 'node:fs';
import { Bench } from 'tinybench';
import { deck } from './deck.bench.ts';
import { MOST_TIMES, measureOpening } from './first-question.ts';
import { folding } from './fold.bench.ts';
import { familyRates, generation } from './generation.bench.ts';
import { group } from './group.bench.ts';
import { plan } from './plan.bench.ts';
import { solver } from './solver.bench.ts';
import { store } from './store.bench.ts';
import type { Suite } from './suite.ts';
import { transfer } from './transfer.bench.ts';

const SUITES: readonly Suite[] = [
  ...plan,
  ...solver,
  ...deck,
  ...generation,
  ...folding,
  ...group,
  ...transfer,
  ...store,
];

interface Line {
  readonly name: string;
  readonly micros: string;
  readonly times: string;
  readonly verdict: string;
}

const formatMicros = (micros: number) => (micros < 10 ? micros.toFixed(2) : micros.toFixed(1));

/** How many times ours another takes: below a tenth as a fraction, which reads as how much longer ours takes. */
const formatTimes = (times: number) => (times < 0.1 ? `1/${Math.round(1 / times)}` : times.toFixed(2));

/** Medians, in microseconds for one unit of work. */
async function measure(suite: Suite): Promise<Map<string, number>> {
  const bench = new Bench({ time: 800, warmupTime: 300 });
  const contenders = [suite.subject, ...suite.baselines];
  for (const { name, run } of contenders) bench.add(name, run);
  const tasks = await bench.run();
  return new Map(
    tasks.map(({ name, result }) => {
      if (!('latency' in result)) throw new Error(`${suite.title}, ${name}: ${result.state}`);
      const { count = suite.count } = contenders.find((contender) => contender.name === name)!;
      return [name, (result.latency.p50 * 1000) / count];
    }),
  );
}

const lines: Line[] = [];
let slow = 0;
for (const suite of SUITES) {
  suite.agree();
  const medians = await measure(suite);
  const ours = medians.get(suite.subject.name)!;
  lines.push({ name: suite.title, micros: `µs/${suite.unit}`, times: 'takes', verdict: '' });
  lines.push({ name: `  ${suite.subject.name}`, micros: formatMicros(ours), times: '1', verdict: '' });
  for (const { name, atLeast } of suite.baselines) {
    const times = medians.get(name)! / ours;
    const met = atLeast === undefined || times >= atLeast;
    if (!met) slow++;
    lines.push({
      name: `  ${name}`,
      micros: formatMicros(medians.get(name)!),
      times: `${formatTimes(times)} times ours`,
      verdict: atLeast === undefined ? '' : `${met ? 'met' : 'NOT MET'}: at least ${formatTimes(atLeast)}`,
    });
  }
}

const opening = await measureOpening();
const { share } = opening;
const isQuick = share >= 1 / MOST_TIMES;
if (!isQuick) slow++;
lines.push(
  {
    name: 'First question on the screen, processor slowed 4 times',
    micros: 'µs/page',
    times: 'takes',
    verdict: '',
  },
  {
    name: '  from the address, drill stored',
    micros: formatMicros(1000 * opening.question),
    times: '1',
    verdict: '',
  },
  {
    name: '  a page of React that shows one line',
    micros: formatMicros(1000 * opening.empty),
    times: `${formatTimes(share)} times ours`,
    verdict: `${isQuick ? 'met' : 'NOT MET'}: at least ${formatTimes(1 / MOST_TIMES)}`,
  },
);

const width = (key: keyof Line) => Math.max(...lines.map((line) => line[key].length));
const [names, micros, times] = [width('name'), width('micros'), width('times')];
for (const line of lines)
  console.log(
    [line.name.padEnd(names), line.micros.padStart(micros), line.times.padStart(times), line.verdict]
      .join('  ')
      .trimEnd(),
  );

const rates = await familyRates();
const shown = ({ family, perSecond }: (typeof rates)[number]) => `${family} ${Math.round(perSecond)}`;
console.log(`Questions a second, the slowest families: ${rates.slice(0, 5).map(shown).join(', ')}.`);

const row = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
if (process.argv.includes('--write'))
  writeFileSync(
    new URL('../../docs/benchmarks.md', import.meta.url),
    [
      '# Benchmarks',
      '',
      'Written by `npm run bench -- --write`. Times are medians and come and go with the machine; only the ratios, each',
      'within one run, are claimed. Above one, the other takes longer than ours.',
      '',
      row(['what', 'µs', 'ratio', 'asked']),
      row(['---', '--:', '--:', '---']),
      ...lines.map(({ name, micros, times, verdict }) =>
        row(
          name.startsWith(' ') ? [name.trim(), micros, times, verdict] : [`**${name}**`, micros, times, ''],
        ),
      ),
      '',
      '## Questions a second, family by family',
      '',
      'Made on one core from a shipped deck, the slowest first.',
      '',
      row(['family', 'questions a second']),
      row(['---', '--:']),
      ...rates.map(({ family, perSecond }) => row([`\`${family}\``, `${Math.round(perSecond)}`])),
      '',
    ].join('\n'),
  );
if (slow > 0) {
  console.error(`${slow} comparisons fell short.`);
  process.exitCode = 1;
}
