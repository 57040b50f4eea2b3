import { describe, expect, test } from 'vitest';
import { loadDeck, parseDeck } from '../../src/content/load.ts';
import { checkRules, RULES } from '../../src/content/rules/index.ts';
import { checkShape } from '../../src/content/shape.ts';
import type { Deck } from '../../src/core/unit/deck.ts';
import { HAND_RULE_WORDS } from '../../src/words/en/hand-rules.ts';
import { RULE_WORDS } from '../../src/words/en/rules.ts';
import { baseDeck, type Loose, sentence, told } from './base.ts';
import { HAND_CASES } from './hand-cases.ts';

/**
 * What is broken, how, and all that must be found. The states follow from the published set by hand: with s2
 * and the carrier held the ring is held (row "B1 B2"); with the input on the carrier and the carrier held the
 * input is held ("C2 B2"); the carrier turns forward in 2, 3 and 4 and is pushed backward in 1.
 */
const CASES: [string, (deck: Loose) => void, string[]][] = [
  ['nothing', () => {}, []],
  [
    'two elements of one id',
    (d) => (d.train.elements[4].id = 'B1'),
    [
      'error ids-unique /train/elements/4/id',
      'error elements-exist /chart/ranges/1/applied/1',
      'error elements-exist /chart/ranges/5/applied/1',
      'error elements-exist /solenoids/4/feeds/0',
      'error elements-exist /lever/positions/0/opens/1',
      'error elements-exist /lever/positions/2/opens/1',
    ],
  ],
  [
    'a neutral row with the id of a range',
    (d) => (d.chart.neutral[0].id = '1'),
    ['error ids-unique /chart/neutral/0/id', 'error rows-exist /lever/positions/1/rows/0'],
  ],
  [
    'element called case',
    (d) => (d.train.elements[3].id = 'case'),
    [
      'error names-reserved /train/elements/3/id',
      'error elements-exist /chart/ranges/2/applied/1',
      'error elements-exist /chart/ranges/4/applied/1',
      'error elements-exist /solenoids/3/feeds/0',
      'error elements-exist /lever/positions/0/opens/2',
      'error elements-used /train/elements/3',
      'warning feeds-recorded /train/elements/3',
    ],
  ],
  [
    'interlock that a row defies',
    (d) =>
      (d.interlocks = [
        { id: 'X', whenApplied: ['C1', 'C2'], blocks: ['B2', 'C3'] },
        { id: 'Y', whenApplied: ['C1'], blocks: ['B1'] },
      ]),
    ['error interlocks-allow /interlocks/1/blocks'],
  ],
  [
    'interlocks in a circle',
    (d) =>
      (d.interlocks = [
        { id: 'X', whenApplied: ['C2'], blocks: ['B2'] },
        { id: 'Y', whenApplied: ['B2'], blocks: ['C3'] },
        { id: 'Z', whenApplied: ['C3'], blocks: ['C2'] },
      ]),
    [
      'error interlocks-allow /interlocks/1/blocks',
      'error interlocks-settle /interlocks/0/blocks',
      'error interlocks-settle /interlocks/1/blocks',
      'error interlocks-settle /interlocks/2/blocks',
    ],
  ],
  [
    'interlock that names a one-way, a stranger and one element twice',
    (d) => (d.interlocks = [{ id: 'X', whenApplied: ['F2', 'C2'], blocks: ['B9', 'B2', 'B2'] }]),
    [
      'error listed-once /interlocks/0/blocks/2',
      'error elements-exist /interlocks/0/blocks/0',
      'error one-ways-unfed /interlocks/0/whenApplied/0',
    ],
  ],
  [
    'two interlocks of one id',
    (d) =>
      (d.interlocks = [
        { id: 'X', whenApplied: ['C2'], blocks: ['B2'] },
        { id: 'X', whenApplied: ['C3'], blocks: ['C1'] },
      ]),
    ['error ids-unique /interlocks/1/id'],
  ],
  [
    'element twice in a row',
    (d) => d.chart.ranges[2].applied.push('B1'),
    ['error listed-once /chart/ranges/2/applied/2'],
  ],
  [
    'unknown source',
    (d) => (d.train.gearsets[0].source = 'plate'),
    ['error sources-exist /train/gearsets/0/source'],
  ],
  [
    'no sources at all',
    (d) => {
      d.sources = [];
      d.chart.ranges[0].source = 'plate';
    },
    ['error sources-exist /chart/ranges/0/source'],
  ],
  ['output misspelled', (d) => (d.train.output = 'uot'), ['error shafts-exist /train/output']],
  ['sensor on the case', (d) => (d.sensors[0].reads = 'case'), ['error shafts-exist /sensors/0/reads']],
  [
    'name for no shaft',
    (d) => (d.train.shafts = [{ id: 'tail', name: 'tail shaft' }]),
    ['error shafts-exist /train/shafts/0/id'],
  ],
  [
    'unknown element in chart, solenoid and lever',
    (d) => {
      d.chart.ranges[3].applied[1] = 'C22';
      d.chart.neutral[0].unsureCells = ['X'];
      d.solenoids[0].feeds = ['K1'];
      d.lever.positions[0].opens.push('K2');
      d.lever.positions[1].feeds = ['K3'];
    },
    [
      'error elements-exist /chart/ranges/3/applied/1',
      'error elements-exist /chart/neutral/0/unsureCells/0',
      'error elements-exist /solenoids/0/feeds/0',
      'error elements-exist /lever/positions/0/opens/4',
      'error elements-exist /lever/positions/1/feeds/0',
      'warning feeds-recorded /train/elements/0',
    ],
  ],
  ['unknown row', (d) => d.lever.positions[0].rows.push('5'), ['error rows-exist /lever/positions/0/rows/5']],
  [
    'unknown step',
    (d) => (d.sequences[0].steps[1].after[0].step = 'drian'),
    ['error steps-exist /sequences/0/steps/1/after/0/step'],
  ],
  [
    'caution on nothing',
    (d) => (d.cautions[0].attachedTo = ['element:C9', 'cell:1/C9', 'shaft:in', 'step:strip/drain']),
    [
      'error cautions-attached /cautions/0/attachedTo/0',
      'error cautions-attached /cautions/0/attachedTo/1',
      'error cautions-attached /cautions/0/attachedTo/2',
    ],
  ],
  ['input is the case', (d) => (d.train.input = 'case'), ['error shafts-exist /train/input']],
  ['output is the input', (d) => (d.train.output = 'in'), ['error input-output /train/output']],
  [
    'sun and ring on one shaft',
    (d) => (d.train.gearsets[1].sun.shaft = 'out'),
    [
      'error gearset-members /train/gearsets/1/ring/shaft',
      'error range-drives /chart/ranges/0/applied',
      'error range-drives /chart/ranges/1/applied',
      'error range-drives /chart/ranges/5/applied',
      'error ratio-agrees /chart/ranges/2/ratio',
      'error ratio-agrees /chart/ranges/4/ratio',
      'warning ratios-distinct /chart/ranges/3/applied',
      'warning ratios-distinct /chart/ranges/4/applied',
    ],
  ],
  [
    'brake between shafts',
    (d) => (d.train.elements[3].between = ['s2', 'c']),
    [
      'error element-joins /train/elements/3/between',
      'error ratio-agrees /chart/ranges/2/ratio',
      'error ratio-agrees /chart/ranges/4/ratio',
      'warning ratios-distinct /chart/ranges/3/applied',
      'warning ratios-distinct /chart/ranges/4/applied',
    ],
  ],
  [
    'clutch to the case',
    (d) => (d.train.elements[2].between = ['in', 'case']),
    ['error element-joins /train/elements/2/between', 'error range-drives /chart/ranges/5/applied'],
  ],
  [
    'brake to itself',
    (d) => (d.train.elements[3].between = ['case', 'case']),
    [
      'error element-joins /train/elements/3/between',
      'error range-drives /chart/ranges/2/applied',
      'error range-drives /chart/ranges/4/applied',
    ],
  ],
  [
    'free sense on a brake',
    (d) => (d.train.elements[3].overruns = 'forward'),
    ['error element-joins /train/elements/3/overruns'],
  ],
  [
    'shaft spelled two ways',
    (d) => (d.train.elements[3].between = ['S2', 'case']),
    [
      'warning shafts-joined /train/elements/3/between/0',
      'error range-drives /chart/ranges/2/applied',
      'error range-drives /chart/ranges/4/applied',
    ],
  ],
  [
    'planets of half a tooth',
    (d) => {
      d.train.gearsets.push({
        id: 'X',
        kind: 'simple',
        sun: { shaft: 's2', teeth: 30 },
        ring: { shaft: 'x', teeth: 69 },
        carrier: { shaft: 'y' },
        planets: 4,
      });
      d.train.elements.push(
        { id: 'B8', kind: 'brake', between: ['x', 'case'] },
        { id: 'B9', kind: 'brake', between: ['y', 'case'] },
      );
    },
    [
      'warning planets-whole /train/gearsets/2/ring/teeth',
      'warning planets-spaced /train/gearsets/2/planets',
      'error elements-used /train/elements/6',
      'error elements-used /train/elements/7',
      'warning feeds-recorded /train/elements/6',
      'warning feeds-recorded /train/elements/7',
    ],
  ],
  [
    'ring no larger than sun',
    (d) => {
      d.train.gearsets = [{ ...d.train.gearsets[1], sun: { shaft: 's1', teeth: 69 } }];
      d.chart.ranges = [{ id: '1', applied: ['C1', 'B2'], ratio: '-1.000' }];
      d.shaftLine[2].belongsTo = [];
      d.codes = [];
    },
    [
      'error rows-exist /lever/positions/0/rows/1',
      'error rows-exist /lever/positions/0/rows/2',
      'error rows-exist /lever/positions/0/rows/3',
      'error rows-exist /lever/positions/0/rows/4',
      'error rows-exist /lever/positions/2/rows/0',
      'warning planets-whole /train/gearsets/0/ring/teeth',
      'error elements-used /train/elements/1',
      'error elements-used /train/elements/2',
      'error elements-used /train/elements/3',
      'warning one-ways-used /train/elements/5',
    ],
  ],
  [
    'seven one-ways',
    (d) => {
      for (const n of [1, 3, 4, 5, 6, 7])
        d.train.elements.push({ id: `F${n}`, kind: 'one-way', between: ['c', 'case'] });
    },
    [
      'error one-ways-few /train/elements',
      'warning one-ways-used /train/elements/6',
      'warning one-ways-used /train/elements/7',
      'warning one-ways-used /train/elements/8',
      'warning one-ways-used /train/elements/9',
      'warning one-ways-used /train/elements/10',
      'warning one-ways-used /train/elements/11',
    ],
  ],
  [
    'row that ties up',
    (d) => d.chart.ranges[4].applied.push('B2'),
    ['error range-drives /chart/ranges/4/applied'],
  ],
  [
    'row that leaves the output free',
    (d) => (d.chart.ranges[0].applied = ['C1']),
    ['error range-drives /chart/ranges/0/applied', 'warning one-ways-used /train/elements/5'],
  ],
  [
    'row with nothing on',
    (d) => (d.chart.ranges[3].applied = []),
    ['error range-drives /chart/ranges/3/applied'],
  ],
  [
    'row that holds the output',
    (d) => (d.chart.ranges[2].applied = ['B1', 'B2']),
    ['error range-drives /chart/ranges/2/applied'],
  ],
  [
    'stated ratio of another row',
    (d) => (d.chart.ranges[4].ratio = '1.568'),
    ['error ratio-agrees /chart/ranges/4/ratio'],
  ],
  [
    'stated ratio one change away',
    (d) => (d.chart.ranges[4].applied = ['C3', 'B1']),
    ['error range-drives /chart/ranges/4/applied', 'error positions-allow /lever/positions/0/rows/4'],
  ],
  [
    'last digit off',
    (d) => (d.chart.ranges[2].ratio = '1.569'),
    ['error ratio-agrees /chart/ranges/2/ratio'],
  ],
  ['sign lost', (d) => (d.chart.ranges[5].ratio = '2.300'), ['error ratio-agrees /chart/ranges/5/ratio']],
  ['ratio cut', (d) => (d.chart.ranges[4].ratio = '0.696'), ['warning ratio-cut /chart/ranges/4/ratio']],
  [
    'same elements, other order',
    (d) => d.chart.ranges.push({ id: '2b', applied: ['B1', 'C1'] }),
    ['error ranges-distinct /chart/ranges/6/applied', 'error rows-reached /chart/ranges/6'],
  ],
  [
    'another direct drive',
    (d) => d.chart.ranges.push({ id: '3b', applied: ['C2', 'C3'] }),
    ['warning ratios-distinct /chart/ranges/6/applied', 'error rows-reached /chart/ranges/6'],
  ],
  [
    'one-way turned round',
    (d) => (d.train.elements[5].between = ['case', 'c']),
    [
      'error one-way-holds /chart/ranges/0/applied',
      'error one-way-binds /chart/ranges/2/applied',
      'error one-way-binds /chart/ranges/3/applied',
      'error one-way-binds /chart/ranges/4/applied',
      'warning unplugged-safe /lever/positions/0',
    ],
  ],
  [
    'one-way that overruns backward',
    (d) => (d.train.elements[5].overruns = 'backward'),
    [
      'error one-way-holds /chart/ranges/0/applied',
      'error one-way-binds /chart/ranges/2/applied',
      'error one-way-binds /chart/ranges/3/applied',
      'error one-way-binds /chart/ranges/4/applied',
      'warning unplugged-safe /lever/positions/0',
    ],
  ],
  [
    'one-way that holds nothing',
    (d) => {
      d.train.elements.push(
        { id: 'C9', kind: 'clutch', between: ['s2', 'x'] },
        { id: 'F9', kind: 'one-way', between: ['x', 'case'] },
      );
      d.chart.ranges[2].applied.push('F9');
      d.chart.ranges[1].applied.push('C9');
    },
    [
      'error one-way-binds /chart/ranges/1/applied',
      'warning one-way-idle /chart/ranges/2/applied',
      'warning feeds-recorded /train/elements/6',
      'error positions-allow /lever/positions/0/rows/1',
    ],
  ],
  [
    'neutral that drives by its one-way',
    (d) => (d.chart.neutral[0].applied = ['C1']),
    ['error neutral-stays /chart/neutral/0/applied', 'error positions-allow /lever/positions/1/rows/0'],
  ],
  [
    'neutral that ties up',
    (d) => (d.chart.neutral[0].applied = ['C1', 'B1', 'B2']),
    ['error neutral-stays /chart/neutral/0/applied', 'error positions-allow /lever/positions/1/rows/0'],
  ],
  [
    'elements never used',
    (d) => {
      d.chart.ranges = d.chart.ranges.slice(1, 5);
      d.lever.positions[0].rows.shift();
      d.lever.positions.pop();
    },
    [
      'error cautions-attached /cautions/0/attachedTo/1',
      'error elements-used /train/elements/2',
      'warning one-ways-used /train/elements/5',
    ],
  ],
  [
    'solenoid that feeds nothing',
    (d) => d.solenoids.push({ id: 'S9', kind: 'on-off', feeds: [], whenUnplugged: 'none' }),
    ['error solenoid-feeds /solenoids/5/feeds'],
  ],
  [
    'oil for a one-way',
    (d) => {
      d.solenoids[0].feeds.push('F2');
      d.lever.positions[0].opens.push('F2');
    },
    ['error one-ways-unfed /solenoids/0/feeds/1', 'error one-ways-unfed /lever/positions/0/opens/4'],
  ],
  [
    'one solenoid, two demands',
    (d) => {
      d.solenoids[1].feeds = ['C2', 'B1'];
      d.solenoids.splice(3, 1);
    },
    ['error solenoid-demands /solenoids/1/feeds', 'error solenoid-demands /solenoids/1/feeds'],
  ],
  [
    'two demands, one feed closed',
    (d) => {
      d.solenoids[0].feeds = ['C1', 'C3'];
      d.solenoids.splice(2, 1);
    },
    [],
  ],
  [
    'element that nothing feeds',
    (d) => d.solenoids.splice(2, 1),
    ['warning feeds-recorded /train/elements/2'],
  ],
  [
    'two solenoids that agree',
    (d) =>
      d.solenoids.push({ id: 'S9', kind: 'on-off', feeds: ['C1', 'line-pressure'], whenUnplugged: 'none' }),
    ['warning feeds-single /solenoids/5/feeds'],
  ],
  [
    'two solenoids that do not',
    (d) => d.solenoids.push({ id: 'S9', kind: 'on-off', feeds: ['C1'], whenUnplugged: 'full' }),
    ['error feeds-agree /solenoids/5/whenUnplugged'],
  ],
  [
    'manual valve that does not say',
    (d) => delete d.lever.positions[1].opens,
    ['error lever-valve /lever/positions/1/opens'],
  ],
  [
    'feeds of a valve that is not there',
    (d) => {
      d.lever.valve = 'none';
      delete d.lever.positions[0].opens;
      delete d.lever.positions[1].opens;
      d.lever.positions[2].feeds = [];
    },
    [
      'error lever-valve /lever/positions/2/opens',
      'error lever-valve /lever/positions/2/feeds',
      'warning unplugged-safe /lever/positions/1',
      'warning unplugged-safe /lever/positions/2',
    ],
  ],
  [
    'row in no position',
    (d) => d.lever.positions[0].rows.splice(1, 1),
    ['error rows-reached /chart/ranges/1'],
  ],
  [
    'feed closed',
    (d) => (d.lever.positions[2].opens = ['C3']),
    ['error positions-allow /lever/positions/2/rows/0'],
  ],
  [
    'fed by hand, not in the row',
    (d) => (d.lever.positions[2].feeds = ['B1', 'B2']),
    ['error positions-allow /lever/positions/2/rows/0'],
  ],
  [
    'unplugged ties up',
    (d) =>
      (d.solenoids[2].whenUnplugged = d.solenoids[4].whenUnplugged = d.solenoids[0].whenUnplugged = 'full'),
    ['warning unplugged-safe /lever/positions/0'],
  ],
  [
    'unplugged drives in neutral',
    (d) => {
      d.lever.positions[1].opens = ['C2', 'B1'];
    },
    ['warning unplugged-safe /lever/positions/1'],
  ],
  [
    'unplugged turns the other way',
    (d) => {
      d.lever.positions[2].opens = ['C2', 'B1', 'C3', 'B2'];
    },
    ['warning unplugged-safe /lever/positions/2'],
  ],
  [
    'steps in a circle',
    (d) => (d.sequences[0].steps[0].after = [{ step: 'filter-off', reason: 'No.' }]),
    [
      'error sequence-acyclic /sequences/0/steps/0/after',
      'warning sequence-order /sequences/0/steps/0/after/0/step',
    ],
  ],
  [
    'step after itself',
    (d) => (d.sequences[0].steps[0].after = [{ step: 'drain', reason: 'No.' }]),
    ['error sequence-acyclic /sequences/0/steps/0/after'],
  ],
  [
    'steps listed too late',
    (d) => d.sequences[0].steps.reverse(),
    [
      'warning sequence-order /sequences/0/steps/0/after/0/step',
      'warning sequence-order /sequences/0/steps/1/after/0/step',
    ],
  ],
  ...HAND_CASES,
];

function broken(breakIt: (deck: Loose) => void): Deck {
  const deck = baseDeck();
  breakIt(deck);
  const shape = checkShape(deck);
  if (!shape.ok) throw new Error(`not the shape of a deck: ${shape.error.map(told).join('\n')}`);
  return shape.value;
}

const caseOf = (name: string) => CASES.find(([title]) => title === name)![1];

describe('each broken deck gives exactly its findings, all at once', () => {
  test.each(CASES)('%s', (_, breakIt, expected) => {
    const findings = checkRules(broken(breakIt));
    expect(findings.map(({ severity, rule, place }) => `${severity} ${rule} ${place.pointer}`)).toEqual(
      expected,
    );
  });
});

describe('the cases reach everything a rule can say', () => {
  const findings = CASES.flatMap(([, breakIt]) => checkRules(broken(breakIt)));

  test('every rule finds something in some case', () => {
    expect(RULES.map((rule) => rule.id).filter((id) => !findings.some(({ rule }) => rule === id))).toEqual(
      [],
    );
  });

  test('every message is used, and every finding has its message', () => {
    const used = new Set(findings.flatMap(({ found, expected }) => [found.key, expected.key]));
    const keys = Object.keys({ ...RULE_WORDS, ...HAND_RULE_WORDS }).filter((key) =>
      key.startsWith('finding.'),
    );
    expect(keys.filter((key) => !used.has(key))).toEqual([]);
    for (const finding of findings) expect(sentence(finding)).not.toContain('undefined');
  });

  test('rule ids are in lower-kebab and differ', () => {
    const ids = RULES.map((rule) => rule.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });
});

describe('a finding in plain words', () => {
  test.each([
    [
      'row that ties up',
      'Range "4", applied: found a row that ties up: with C2 and B2 on, the input cannot turn; expected elements that leave the output one speed, other than 0. The stated 0.697 comes with C2 and B1.',
    ],
    [
      'row that leaves the output free',
      'Range "1", applied: found a row that leaves the output free: C1 alone does not settle its speed; expected elements that leave the output one speed, other than 0. The stated 2.875 comes with C1 and F2.',
    ],
    [
      'row that holds the output',
      'Range "2", applied: found a row that holds the output still: with B1 and B2 on, it cannot turn; expected elements that leave the output one speed, other than 0. The stated 1.568 comes with C1 and B1.',
    ],
    [
      'last digit off',
      'Range "2", ratio: found a stated ratio of 1.569; expected 1.568, which C1 and B1 give in this train (solved: 1.568182).',
    ],
    [
      'ratio cut',
      'Range "4", ratio: found a stated ratio of 0.696, cut off and not rounded; expected 0.697 (solved: 0.696970), unless the source prints it so.',
    ],
    [
      'unknown step',
      'Step "strip/pan-off", after.step: found a step "drian" that this sequence does not have; expected one of drain, pan-off, and filter-off.',
    ],
    [
      'steps in a circle',
      'Step "strip/drain", after: found steps that wait for each other in a circle: drain → filter-off → pan-off → drain; expected relations that some order can keep.',
    ],
    [
      'one solenoid, two demands',
      'Solenoid "S2", feeds: found one solenoid for B1 and C2, but row "2" has B1 on and C2 off; expected a solenoid for each, or a lever position that closes one of the feeds.',
    ],
    [
      'neutral that drives by its one-way',
      'Neutral row "N", applied: found a neutral row that drives at 2.875 with C1 on; expected elements that leave the output free.',
    ],
  ])('%s', (name, words) => {
    expect(sentence(checkRules(broken(caseOf(name)))[0]!)).toBe(words);
  });
});

describe('loading', () => {
  const text = (breakIt: (deck: Loose) => void) => JSON.stringify(broken(breakIt), null, 2);

  test('a deck without findings gives its unit', () => {
    const loaded = loadDeck(text(() => {}));
    expect(loaded.ok && loaded.value.warnings).toEqual([]);
    expect(loaded.ok && loaded.value.unit.ranges.map((range) => range.ratio.toFraction())).toEqual([
      '23/8',
      '23/8',
      '69/44',
      '1',
      '23/33',
      '-23/10',
    ]);
  });

  test('a warning does not keep a deck from loading', () => {
    const loaded = loadDeck(text(caseOf('ratio cut')));
    expect(loaded.ok && loaded.value.warnings.map(({ rule }) => rule)).toEqual(['ratio-cut']);
  });

  test('faults in several places are all told, in the order of the text', () => {
    const faults = [
      caseOf('last digit off'),
      caseOf('row that ties up'),
      caseOf('unknown source'),
      caseOf('unknown step'),
      caseOf('ratio cut'),
    ];
    const source = text((deck) => {
      for (const fault of faults.slice(0, 4)) fault(deck);
      deck.chart.ranges[0].ratio = '2.874';
    });
    const loaded = loadDeck(source);
    expect(!loaded.ok && loaded.error.map(({ rule, place }) => [rule, place.id])).toEqual([
      ['sources-exist', 'Psmall'],
      ['ratio-agrees', '1'],
      ['ratio-agrees', '2'],
      ['range-drives', '4'],
      ['steps-exist', 'strip/pan-off'],
    ]);
    const lines = source.split('\n');
    for (const { place } of loaded.ok ? [] : loaded.error) {
      const field = place.pointer.split('/').at(-1)!;
      expect(lines[place.line! - 1]!.slice(place.column! - 1)).toMatch(new RegExp(`^"${field}":`));
    }
  });

  test('a deck that fails still gives its findings beside its shape', () => {
    const parsed = parseDeck(text(caseOf('row that ties up')));
    expect(parsed.ok && parsed.value.deck.chart.ranges[4]!.applied).toEqual(['C2', 'B1', 'B2']);
    expect(parsed.ok && parsed.value.findings.map(({ rule }) => rule)).toEqual(['range-drives']);
  });
});
