import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runDeck } from '../../src/cli/run.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import { baseDeck, type Loose } from '../content/base.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'deck-'));
  write('good.json', JSON.stringify(baseDeck(), null, 2));
  write('text.json', 'fourth gear: C2 B1\n');
  write('binary.json', Buffer.from([0x7b, 0x00, 0xff]));
  write('latin.json', Buffer.from([0x22, 0xe9, 0x22]));
  write('empty.json', '');
  write('list.json', '[]');
  write('newer.json', JSON.stringify({ ...baseDeck(), detentDeck: 2 }));
  const broken = baseDeck();
  broken.chart.ranges[4].applied = ['C2', 'B2'];
  broken.chart.ranges[2].ratio = '1.569';
  broken.chart.ranges[5].ratio = '-2.30';
  broken.chart.ranges[5].applied = ['C3', 'B2'];
  write('broken.json', JSON.stringify(broken, null, 2));
});
afterAll(() => rmSync(folder, { recursive: true }));

const write = (name: string, content: string | Buffer) => writeFileSync(join(folder, name), content);
const at = (name: string) => join(folder, name);

/** The line of broken.json on which this text starts. */
const lineOf = (text: string) => readFileSync(at('broken.json'), 'utf8').split(text)[0]!.split('\n').length;

/** A command line; words that end in .json are files in the test's folder. */
function run(line: string) {
  const args = line.split(' ').filter(Boolean);
  const files = args.map((arg) => (arg.endsWith('.json') ? at(arg) : arg));
  const [out, err]: [string[], string[]] = [[], []];
  const code = runDeck(files, { out: (text) => out.push(text), err: (text) => err.push(text) });
  const plain = (lines: string[]) => lines.join('\n').replaceAll(`${folder}/`, '');
  return { code, out: plain(out), err: plain(err), data: (): Loose => JSON.parse(out.join('\n')) };
}

describe('what cannot be used is told in one line, with the remedy', () => {
  test.each([
    ['', 2, 'No command given. Use one of check, solve, ask, and families, or --help.'],
    ['chekc good.json', 2, 'There is no command "chekc". Use one of check, solve, ask, and families.'],
    ['check', 2, 'The command check needs a deck file: npm run -s deck -- check decks/kestrel-7.json'],
    ['check none.json', 2, 'There is no file none.json. Check the path.'],
    ['check good.json/x.json', 2, 'There is no file good.json/x.json. Check the path.'],
    ['solve .', 2, 'The path . is a folder. Name a deck file in it.'],
    ['check /dev/zero', 2, 'The path /dev/zero is not a file. Name a deck file.'],
    ['check binary.json', 2, 'The file binary.json is not text. Give a deck: JSON text in UTF-8.'],
    ['check latin.json', 2, 'The file latin.json is not text. Give a deck: JSON text in UTF-8.'],
    ['solve text.json', 1, 'The file text.json is not JSON (line 1, column 1). Run check on it to see why.'],
    [
      'solve empty.json',
      1,
      'The file empty.json is not JSON (line 1, column 1). Run check on it to see why.',
    ],
    [
      'ask list.json',
      1,
      'The file list.json has not the shape of a deck (one finding). Run check on it to see them.',
    ],
    [
      'ask newer.json',
      1,
      'The file newer.json has not the shape of a deck (one finding). Run check on it to see them.',
    ],
    [
      'ask broken.json',
      1,
      'The deck broken.json has 2 errors, so nothing is asked from it. Run check on it and put that right first.',
    ],
    ['solve good.json list.json', 2, 'The command solve takes one deck file. Leave out "list.json".'],
    ['families good.json', 2, 'The command families takes no file. Leave it out.'],
    ['check good.json --jsno', 2, 'The command check has no option --jsno. Use --json and --help.'],
    ['solve good.json --seed 3', 2, 'The command solve has no option --seed. Use --json and --help.'],
    ['check -j good.json', 2, 'The command check has no option -j. Use --json and --help.'],
    [
      'check --json=yes good.json',
      2,
      'The option --json takes no value. Leave out what follows the equals sign.',
    ],
    ['ask good.json --seed', 2, 'The option --seed needs a value after it.'],
    ['ask good.json --family --json', 2, 'The option --family needs a value after it.'],
    ['ask good.json --seed 1 --seed 2', 2, 'The option --seed is given twice. Leave one out.'],
    ['ask good.json --seed two', 2, 'The option --seed is "two". Give a whole number from 0 to 4294967295.'],
    ['ask good.json --seed=-1', 2, 'The option --seed is "-1". Give a whole number from 0 to 4294967295.'],
    ['ask good.json --seed 1.5', 2, 'The option --seed is "1.5". Give a whole number from 0 to 4294967295.'],
    [
      'ask good.json --seed 99999999999',
      2,
      'The option --seed is "99999999999". Give a whole number from 0 to 4294967295.',
    ],
    ['ask good.json --count 0', 2, 'The option --count is "0". Give a whole number from 1 to 1000.'],
    [
      'ask good.json --family range-element',
      2,
      /^There is no family "range-element". Use one of range-elements, /,
    ],
    [
      'ask good.json --fact range:9/elements',
      2,
      /^No question here is about "range:9\/elements". Use one of range:1/,
    ],
  ])('%s', (line, code, words) => {
    const result = run(line);
    expect([result.code, result.out]).toEqual([code, '']);
    expect(result.err.split('\n')).toHaveLength(1);
    const said = result.err.replace(/^deck: /, '');
    if (typeof words === 'string') expect(said).toBe(words);
    else expect(said).toMatch(words);
  });

  test('help is no failure', () => {
    for (const line of ['--help', 'help', 'check --help', 'ask good.json -h']) {
      const { code, out, err } = run(line);
      expect([code, err]).toEqual([0, '']);
      expect(out).toContain('solve FILE');
    }
  });
});

describe('check', () => {
  test('a deck in order', () => {
    expect(run('check good.json')).toMatchObject({ code: 0, out: 'good.json: in order', err: '' });
  });

  test('findings by place, with line, what was found and what was expected', () => {
    expect(run('check broken.json')).toMatchObject({
      code: 1,
      out: [
        'broken.json: 2 errors',
        '',
        `  ERROR    range "2", ratio (line ${lineOf('"1.569"')})  [ratio-agrees]`,
        '    found     a stated ratio of 1.569',
        '    expected  1.568, which C1 and B1 give in this train (solved: 1.568182)',
        '',
        `  ERROR    range "4", applied (line ${lineOf('"id": "4"') + 1})  [range-drives]`,
        '    found     a row that ties up: with C2 and B2 on, the input cannot turn',
        '    expected  elements that leave the output one speed, other than 0. The stated 0.697 comes with C2',
        '              and B1',
      ].join('\n'),
      err: '',
    });
  });

  test('warnings alone do not fail', () => {
    const deck = baseDeck();
    deck.chart.ranges[4].ratio = '0.696';
    write('cut.json', JSON.stringify(deck));
    const { code, out } = run('check cut.json');
    expect(code).toBe(0);
    expect(out).toMatch(
      /^cut\.json: one warning\n\n {2}warning {2}range "4", ratio \(line 1\) {2}\[ratio-cut\]/,
    );
  });

  test('text that is not JSON, and a newer deck, are findings', () => {
    expect(run('check text.json').out).toMatch(
      /^text\.json: one error\n\n {2}ERROR {4}deck \(line 1\) {2}\[json\]/,
    );
    const newer = run('check newer.json');
    expect(newer.code).toBe(1);
    expect(newer.out.replace(/\s+/g, ' ')).toContain(
      'this deck was made for a newer Detent. Nothing has been changed',
    );
  });

  test('several files: all are told, and the worst gives the exit code', () => {
    const both = run('check good.json broken.json');
    expect(both.code).toBe(1);
    expect(both.out).toMatch(/^good\.json: in order\n\nbroken\.json: 2 errors/);
    const missing = run('check good.json none.json broken.json');
    expect([missing.code, missing.err]).toEqual([2, 'deck: There is no file none.json. Check the path.']);
    expect(missing.out).toContain('broken.json: 2 errors');
  });

  test('--json gives the findings as data', () => {
    const { code, data } = run('check broken.json --json');
    const { ok, errors, warnings, findings } = data();
    expect([code, ok, errors, warnings]).toEqual([1, false, 2, 0]);
    expect(findings[1]).toEqual({
      file: at('broken.json'),
      severity: 'error',
      rule: 'range-drives',
      where: 'range "4", applied',
      place: {
        pointer: '/chart/ranges/4/applied',
        kind: 'range',
        id: '4',
        number: 5,
        field: 'applied',
        entry: null,
        line: lineOf('"id": "4"') + 1,
        column: 9,
      },
      found: 'a row that ties up: with C2 and B2 on, the input cannot turn',
      expected:
        'elements that leave the output one speed, other than 0. The stated 0.697 comes with C2 and B1',
    });
    expect(run('check good.json --json').data()).toEqual({ ok: true, errors: 0, warnings: 0, findings: [] });
  });
});

describe('solve', () => {
  test('published ratios of the Ravigneaux four-speed as exact fractions', () => {
    const { code, data } = run('solve good.json --json');
    expect(code).toBe(0);
    expect(
      data().ranges.map((row: Loose) => [row.id, row.state, row.ratio.numerator, row.ratio.denominator]),
    ).toEqual([
      ['1', 'drives', 23, 8],
      ['1m', 'drives', 23, 8],
      ['2', 'drives', 69, 44],
      ['3', 'drives', 1, 1],
      ['4', 'drives', 23, 33],
      ['R', 'drives', -23, 10],
    ]);
    expect(data().ranges[2].ratio.decimal).toBeCloseTo(69 / 44, 12);
    // carrier held: 69 × ring − 24 × s1 = 0, and the ring turns at −10/23
    expect(data().ranges[5].speeds.s1).toMatchObject({ numerator: -5, denominator: 4 });
    expect(data().neutral).toMatchObject([
      { id: 'N', state: 'free', ratio: null, open: expect.arrayContaining(['out']) },
    ]);
  });

  /** One simple set 30/70, sun in, ring held: torques 1 : 7/3 : −10/3 (sun : ring : carrier). By hand. */
  const oneSet = (extra: Loose = {}) => ({
    detentDeck: 1,
    id: 'one-set',
    title: 'One set',
    unit: 'One set',
    revision: 1,
    train: {
      input: 'sun',
      output: 'carrier',
      gearsets: [
        {
          id: 'P',
          kind: 'simple',
          sun: { shaft: 'sun', teeth: 30 },
          ring: { shaft: 'ring', teeth: 70 },
          carrier: { shaft: 'carrier' },
        },
      ],
      elements: [
        { id: 'B', kind: 'brake', between: ['case', 'ring'] },
        { id: 'B2', kind: 'brake', between: ['ring', 'case'] },
        { id: 'C', kind: 'clutch', between: ['sun', 'ring'] },
        { id: 'K', kind: 'brake', between: ['carrier', 'case'] },
      ],
    },
    chart: { ranges: [{ id: 'low', applied: ['B'] }], ...extra },
  });

  test('torques per 1 N·m in, told for the shaft that turns, indeterminate ones named', () => {
    write(
      'set.json',
      JSON.stringify(
        oneSet({
          ranges: [
            { id: 'low', applied: ['B'] },
            { id: 'both', applied: ['B', 'B2'] },
          ],
        }),
      ),
    );
    const [low, both] = run('solve set.json --json').data().ranges;
    expect(low).toMatchObject({
      ratio: { numerator: 10, denominator: 3 },
      speeds: { sun: { decimal: 1 }, ring: { decimal: 0 }, carrier: { numerator: 3, denominator: 10 } },
      torques: {
        elements: { B: { numerator: 7, denominator: 3 } },
        on: { B: 'ring' },
        indeterminate: [],
        output: { numerator: -10, denominator: 3 },
        case: { numerator: 7, denominator: 3 },
      },
    });
    expect(both.torques).toMatchObject({ elements: { B: null, B2: null }, indeterminate: ['B', 'B2'] });
    expect(run('solve set.json').out).toMatch(/both +\? +\? +· +· +-3\.333 +2\.333\n\n\? is indeterminate/);
  });

  test('a deck with errors is solved as far as it goes, every state told apart', () => {
    const rows = { drives: ['B'], free: [], 'output-held': ['K'], 'tied-up': ['B', 'C'], unsolved: ['X'] };
    write(
      'states.json',
      JSON.stringify(oneSet({ ranges: Object.entries(rows).map(([id, applied]) => ({ id, applied })) })),
    );
    const { code, err, data } = run('solve states.json --json');
    expect(code).toBe(0);
    expect(err).toMatch(/^deck: The deck states\.json has \d+ errors\. Run check on it to see them\.$/);
    const { ranges } = data();
    expect(ranges.map((row: Loose) => row.state)).toEqual(Object.keys(rows));
    expect(ranges.map((row: Loose) => row.ratio === null)).toEqual([false, true, true, true, true]);
    expect(ranges[1].open).toEqual(['carrier', 'ring']);
    const text = run('solve states.json').out;
    for (const words of ['drives', 'free', 'output held', 'tied up', 'cannot be solved'])
      expect(text).toContain(words);
  });

  test('in text: states, exact ratios, speeds and torques in columns', () => {
    const { out } = run('solve good.json');
    expect(out).toMatch(
      /^Ravigneaux four-speed, overdrive top \(ravigneaux-4-a, revision 1\)\n\nrow +on +state +ratio +exact/,
    );
    expect(out).toMatch(/\n2 +C1 B1 +drives +1\.568 +69\/44\n/);
    expect(out).toMatch(/\nR +C3 B2 +drives +-2\.300 +-23\/10\n/);
    expect(out).toMatch(/\n {2}row +in +out +s1 +c +s2\n/);
  });

  test('a neutral row that drives through its one-way says which holds', () => {
    const deck = baseDeck();
    deck.chart.neutral[0].applied = ['C1'];
    write('creeps.json', JSON.stringify(deck));
    expect(run('solve creeps.json').out).toContain('one-way F2 holds');
    expect(run('solve creeps.json --json').data().neutral[0]).toMatchObject({
      state: 'drives',
      holding: ['F2'],
    });
  });
});

describe('ask', () => {
  test('whole questions as data: prompt, space, answer, slip-ups, explanation, guess rate', () => {
    const [question] = run('ask good.json --family range-elements --fact range:2/elements --json').data();
    expect(question).toMatchObject({
      family: 'range-elements',
      fact: 'range:2/elements',
      seed: 1,
      answers: [{ form: 'set', picks: ['C1', 'B1'] }],
      words: { answers: ['C1, B1'] },
    });
    expect(question.guessRate).toBeCloseTo(1 / 64, 12);
    expect(question.words.prompt).not.toBe('');
    expect(question.words.explanation.length).toBeGreaterThanOrEqual(2);
    const slipUps = question.words.slipUps;
    expect(slipUps).toContainEqual(expect.objectContaining({ slipUp: 'neighbour-range', answer: 'C1, C2' }));
    for (const { meaning } of slipUps) expect(meaning).toMatch(/\.$/);
  });

  test('equal seeds give equal questions, other seeds other ones', () => {
    const line = 'ask good.json --family shaft-speed --count 5 --json';
    expect(run(`${line} --seed 9`).out).toBe(run(`${line} --seed 9`).out);
    expect(run(`${line} --seed 9`).out).not.toBe(run(`${line} --seed 900`).out);
  });

  test('without a family they take turns, and each question is brought back by family, fact and seed', () => {
    const questions = run('ask good.json --count 12 --seed 3 --json').data();
    expect(questions).toHaveLength(12);
    expect(new Set(questions.map((question: Loose) => question.family)).size).toBeGreaterThan(8);
    for (const question of questions) {
      const { family, fact, seed } = question;
      const [again] = run(`ask good.json --family ${family} --fact ${fact} --seed ${seed} --json`).data();
      expect({ ...again, fact: undefined }).toEqual({ ...question, fact: undefined });
    }
  });

  test('every family has its text, with caution, answer and guess rate', () => {
    const deck = baseDeck();
    deck.cautions[0].attachedTo = deck.train.elements.map((element: Loose) => `element:${element.id}`);
    write('careful.json', JSON.stringify(deck));
    for (const family of FAMILIES) {
      const { code, out } = run(`ask careful.json --family ${family.id}`);
      if (code === 1) continue;
      expect(out).toMatch(/\n {2}answer +\S/);
      expect(out).toMatch(/\n {2}guessing +\d+\.\d%/);
      expect(out).toMatch(/\n {2}why +\S/);
      expect(out).not.toMatch(/undefined|\[object/);
      for (const each of out.split('\n')) expect(each.length).toBeLessThanOrEqual(110);
    }
    expect(run('ask careful.json --family row-ratio').out).toMatch(/\n {2}CAUTION +Let it cool\.\n/);
  });
});

test('families: a line each', () => {
  const lines = run('families').out.split('\n');
  expect(lines).toHaveLength(FAMILIES.length);
  for (const [index, family] of FAMILIES.entries())
    expect(lines[index]).toMatch(new RegExp(`^${family.id} +${family.level} +${family.form} +\\S`));
  expect(run('families --json').data()).toHaveLength(FAMILIES.length);
});
