import { describe, expect, test } from 'vitest';
import type { Finding } from '../../src/content/finding.ts';
import { MAX_DEPTH, MAX_LENGTH, MAX_VALUES } from '../../src/content/json.ts';
import { loadDeck, MAX_FINDINGS } from '../../src/content/load.ts';
import { FINDINGS } from '../../src/words/en/findings.ts';
import { baseDeck, type Loose, sentence, told } from './base.ts';

const findingsOf = (text: string): readonly Finding[] => {
  const loaded = loadDeck(text);
  return loaded.ok ? loaded.value.warnings : loaded.error;
};

const seen = new Set<string>();
const tell = (finding: Finding) => {
  seen.add(finding.found.key).add(finding.expected.key);
  return told(finding);
};

describe('text that is not JSON is refused where it stops being JSON', () => {
  test.each([
    ['', null, null, 'empty'],
    [' \n ', null, null, 'empty'],
    ['{"a": 1,\n "b": [1, 2', 2, 12, 'cut-off'],
    ['{"a": 1,\n "b": "x', 2, 7, 'quote'],
    ['{"a": 1\n "b": 2}', 2, 2, 'comma'],
    ['{"a": {"b": 1]}', 1, 14, 'comma'],
    ['{"a" 1}', 1, 6, 'colon'],
    ['{a: 1}', 1, 2, 'symbol'],
    ['{"a": 1, 5}', 1, 10, 'key'],
    ['{"a": [1, ]}', 1, 11, 'value'],
    ['{"a": 1,\n\n"b": NaN}', 3, 6, 'symbol'],
    ['{"a": 1.}', 1, 7, 'number'],
    ['{"a": 1} {', 1, 10, 'end'],
    ['// a deck\n{}', 1, 1, 'comment'],
    ['{"a": "x\ny"}', 1, 7, 'quote'],
    ['{"a": "\\q"}', 1, 7, 'escape'],
    ['{"a": "\\u12"}', 1, 7, 'unicode'],
    ['{"a": "\t"}', 1, 7, 'character'],
    ['\r\n\r\n{"a": 1,,}', 3, 9, 'key'],
  ])('%j', (text, line, column, kind) => {
    const findings = findingsOf(text);
    expect(findings).toHaveLength(1);
    const [finding] = findings;
    expect(tell(finding!)).not.toContain('undefined');
    expect([finding!.rule, finding!.found.key]).toEqual(['json', `finding.json.${kind}.found`]);
    expect([finding!.place.line, finding!.place.column]).toEqual([line, column]);
  });

  test('brackets nested without end do not overflow anything', () => {
    for (const open of ['[', '{"a":', '[{"a":']) {
      const [finding] = findingsOf(open.repeat(100_000));
      expect(finding!.found.key).toBe('finding.json.too-deep.found');
      tell(finding!);
    }
    expect(findingsOf('['.repeat(MAX_DEPTH) + ']'.repeat(MAX_DEPTH))[0]!.rule).toBe('shape');
  });

  test('more values than any deck has are refused before anything is made of them', () => {
    for (const [open, one, close] of [
      ['[', '0,', '0]'],
      ['{', '"a":0,', '"a":0}'],
      ['[', '[],', '[]]'],
    ] as const)
      expect(findingsOf(open + one.repeat(MAX_VALUES) + close).map(({ found }) => found.key)).toEqual([
        'finding.json.too-many.found',
      ]);
    tell(findingsOf(`[${'0,'.repeat(MAX_VALUES)}0]`)[0]!);
    expect(findingsOf(`[${'0,'.repeat(MAX_VALUES - 2)}0]`)[0]!.rule).toBe('shape');
  });

  test('of thousands of findings some hundreds are told, and how many more there are', () => {
    const keys = Array.from({ length: MAX_VALUES / 2 }, (_, index) => `"k${index}":0`).join(',');
    for (const text of [`{"detentDeck":1,${keys}}`, `{"detentDeck":1,${keys.replace(/k\d+/g, 'k')}}`]) {
      const findings = findingsOf(text);
      expect(findings).toHaveLength(MAX_FINDINGS + 1);
      const more = findings.find(({ rule }) => rule === 'more');
      expect(tell(more!)).toMatch(/ 9,\d\d\d more findings like these/);
      expect(more!.severity).toBe('error');
    }
  });

  test('a text far too large is refused unread', () => {
    const [finding] = findingsOf(`"${'x'.repeat(MAX_LENGTH)}"`);
    expect(tell(finding!)).toContain('at most 4,000,000');
  });

  test('a byte order mark is no fault', () => {
    expect(loadDeck(`\uFEFF${JSON.stringify(baseDeck())}`).ok).toBe(true);
  });
});

const CASES: [string, (deck: Loose) => unknown, string[]][] = [
  [
    'a field misspelled',
    (d) => (d.train.gearsets[0].sun = { shaft: 's1', teehts: 24 }),
    [
      'error shape /train/gearsets/0/sun/teeth: found nothing; expected a number',
      'error shape /train/gearsets/0/sun/teehts: found a field "teehts" that decks do not have; expected one of shaft and teeth; check the spelling',
    ],
  ],
  [
    'fields missing',
    (d) => {
      delete d.title;
      delete d.train;
      d.chart = {};
    },
    [
      'error shape /title: found nothing; expected text in double quotes',
      'error shape /train: found nothing; expected an object in braces',
      'error shape /chart/ranges: found nothing; expected a list in square brackets',
    ],
  ],
  [
    'wrong kinds of value',
    (d) => {
      d.title = 7;
      d.chart.ranges[0].ratio = 2.875;
      d.solenoids = {};
      d.sensors = [null];
      d.train.elements[0].between = 'in';
    },
    [
      'error shape /title: found 7; expected text in double quotes',
      'error shape /train/elements/0/between: found "in"; expected a list in square brackets',
      'error shape /chart/ranges/0/ratio: found 2.875; expected text in double quotes',
      'error shape /solenoids: found an object; expected a list in square brackets',
      'error shape /sensors/0: found null; expected an object in braces',
    ],
  ],
  [
    'teeth that cannot be',
    (d) => {
      d.train.gearsets[0].sun.teeth = 0;
      d.train.gearsets[0].ring.teeth = 68.5;
      d.train.gearsets[1].sun.teeth = -30;
      d.train.gearsets[1].ring.teeth = 6900;
    },
    [
      'error shape /train/gearsets/0/sun/teeth: found 0; expected 1 or more',
      'error shape /train/gearsets/0/ring/teeth: found 68.5; expected a whole number',
      'error shape /train/gearsets/1/sun/teeth: found -30; expected 1 or more',
      'error shape /train/gearsets/1/ring/teeth: found 6900; expected 999 or less',
    ],
  ],
  [
    'choices that are none',
    (d) => {
      d.train.elements[0].kind = 'band';
      d.solenoids[0].whenUnplugged = 'low';
      d.train.elements[1].unsure = false;
      d.cautions[0].hazard = 'boredom';
      d.lever.valve = 'hand';
    },
    [
      'error shape /train/elements/0/kind: found "band"; expected one of "brake", "clutch", and "one-way"',
      'error shape /train/elements/1/unsure: found false; expected true',
      'error shape /solenoids/0/whenUnplugged: found "low"; expected one of "none" and "full"',
      'error shape /lever/valve: found "hand"; expected one of "manual" and "none"',
      'error shape /cautions/0/hazard: found "boredom"; expected one of "roll-away", "moving-test", "hot-fluid", "pressure", "lift", "handling", "air", "stored-energy", "rotating", "electrical", "high-voltage", "chemicals", "heat", and "road-test"',
    ],
  ],
  [
    'texts of the wrong form',
    (d) => {
      d.id = 'Kestrel 7';
      d.language = 'english please';
      d.title = '  ';
      d.chart.ranges[0].ratio = '2,875';
      d.chart.ranges[1].id = '1/m';
      d.cautions[0].attachedTo = ['C1'];
      d.sources[0].on = '2026-02-30';
      d.sequences[0].steps[0].torque = { value: '-3', unit: 'N·m' };
    },
    [
      'error shape /id: found "Kestrel 7"; expected a deck id of small letters a to z and digits with hyphens between: "kestrel-7"',
      'error shape /title: found "  "; expected some words',
      'error shape /chart/ranges/0/ratio: found "2,875"; expected a decimal number as text, with a point: "3.480" or "-1.800"',
      'error shape /chart/ranges/1/id: found "1/m"; expected an id: starts with a letter or digit, at most 40 marks, no space, colon, slash or quote',
      'error shape /sources/0/on: found "2026-02-30"; expected a day of the calendar as "YYYY-MM-DD"',
      'error shape /sequences/0/steps/0/torque/value: found "-3"; expected a figure above zero as text, with a point: "12" or "12.5"',
      'error shape /cautions/0/attachedTo/0: found "C1"; expected what it belongs to, kind and id: "element:C1" or "solenoid:SA"',
      'error shape /language: found "english please"; expected a language tag: "en" or "fr-CA"',
    ],
  ],
  [
    'amounts that are none',
    (d) => {
      d.stacks[0].items[2].thickness.value = '0';
      d.fits[0].parts[0].thickness.unit = 'cm';
      d.fits[0].readings[0].result.value = '0,36';
      d.fluids[0].levelAt.low.value = '-999';
      d.electrical.connectors[0].pins[0].serves = 'main';
      d.seats[0].turned.goesIn = 'yes';
    },
    [
      'error shape /fits/0/parts/0/thickness/unit: found "cm"; expected one of "mm" and "in"',
      'error shape /fits/0/readings/0/result/value: found "0,36"; expected a figure as text, with a point: "0" or "12.5"',
      'error shape /stacks/0/items/2/thickness/value: found "0"; expected a figure above zero as text, with a point: "12" or "12.5"',
      'error shape /electrical/connectors/0/pins/0/serves: found "main"; expected "solenoid:SA", "sensor:ID", "thermistor:ID" or "supply:ID", or "ground" or "spare"',
      'error shape /fluids/0/levelAt/low/value: found "-999"; expected a temperature as text, with a point: "-40" or "87.5"',
      'error shape /seats/0/turned/goesIn: found "yes"; expected true or false, without quotes',
    ],
  ],
  [
    'too many, too few, too long',
    (d) => {
      d.chart.ranges = [];
      d.train.gearsets = Array(9).fill(d.train.gearsets[0]);
      d.unit = 'x'.repeat(2001);
    },
    [
      `error shape /unit: found a text of 2,001 characters; expected at most 2,000`,
      'error shape /train/gearsets: found a list of 9; expected at most 8',
      'error shape /chart/ranges: found an empty list; expected at least 1',
    ],
  ],
  [
    'a newer format, whatever else is in it',
    (d) => {
      d.detentDeck = 2;
      d.wheels = 4;
    },
    [
      'error format /detentDeck: found deck format 2; expected format 1 or lower: this deck was made for a newer Detent. Nothing has been changed; update Detent to open it',
    ],
  ],
  [
    'a format that never was',
    (d) => (d.detentDeck = '1'),
    ['error shape /detentDeck: found "1"; expected 1'],
  ],
];

describe('what has not the shape of a deck is told, all of it at once', () => {
  test.each(CASES)('%s', (_, breakIt, expected) => {
    const deck = baseDeck();
    breakIt(deck);
    expect(findingsOf(JSON.stringify(deck, null, 2)).map(tell)).toEqual(expected);
  });

  test.each(['null', '[]', '7', '"deck"', 'true'])('%s is no deck', (text) => {
    expect(findingsOf(text).map(({ rule, place }) => [rule, place.pointer])).toEqual([['shape', '']]);
  });

  test('places are named by record, by number where the id cannot be read, and by line', () => {
    const deck = baseDeck();
    deck.chart.ranges[3].ratio = 1;
    deck.train.elements[2].id = 9;
    deck.sequences[0].steps[1].text = 5;
    deck.revision = 0;
    const findings = findingsOf(JSON.stringify(deck, null, 2));
    expect(findings.map((finding) => sentence(finding).split(': ')[0])).toEqual([
      'Deck, revision',
      'Element no. 3, id',
      'Range "3", ratio',
      'Step "strip/pan-off", text',
    ]);
    const lines = JSON.stringify(deck, null, 2).split('\n');
    expect(findings.map(({ place }) => lines[place.line! - 1]!.trim())).toEqual([
      '"revision": 0,',
      '"id": 9,',
      '"ratio": 1',
      '"text": 5,',
    ]);
  });

  test('a key written twice is told, though JSON would take the second', () => {
    const text = JSON.stringify(baseDeck(), null, 2).replace(
      '"revision": 1',
      '"revision": 1,\n  "revision": 2',
    );
    const findings = findingsOf(text);
    expect(findings.map(tell)).toEqual([
      'error repeated-key /revision: found "revision" a second time in one object; expected each field once: the first would be lost without a word',
    ]);
    expect(findings[0]!.place.line).toBe(7);
  });

  test('nothing reaches the prototype of anything', () => {
    const text = JSON.stringify(baseDeck()).replace(
      '{',
      '{"__proto__": {"polluted": 1}, "constructor": {"prototype": {"polluted": 1}}, "toString": 1,',
    );
    expect(findingsOf(text).map(({ place }) => place.pointer)).toEqual([
      '/__proto__',
      '/constructor',
      '/toString',
    ]);
    expect(({} as Loose).polluted).toBeUndefined();
    const deck = baseDeck();
    deck.train.elements[0].id = '__proto__';
    expect(findingsOf(JSON.stringify(deck)).map(({ place }) => place.pointer)).toEqual([
      '/train/elements/0/id',
    ]);
  });

  test('"$schema" is for editors and does not reach the deck', () => {
    const loaded = loadDeck(JSON.stringify({ $schema: '../public/deck.schema.json', ...baseDeck() }));
    expect(loaded.ok && Object.keys(loaded.value.deck)).not.toContain('$schema');
  });

  test('every message about text and shape is used above', () => {
    const keys = Object.keys(FINDINGS).filter((key) =>
      /^finding\.(json|shape|format|repeated|more)/.test(key),
    );
    expect(keys.filter((key) => !seen.has(key) && !key.startsWith('finding.shape.other'))).toEqual([]);
  });
});
