import { describe, expect, test } from 'vitest';
import type { DeckFit } from '../../../src/core/unit/fits.ts';
import { readFits, writeFits } from '../../../src/exchange/csv/fits.ts';
import { AS_DONE, readSequences, writeSequences } from '../../../src/exchange/csv/sequences.ts';
import { readStacks, writeStacks } from '../../../src/exchange/csv/stacks.ts';
import {
  freeText,
  fromFreeText,
  MAX_LETTERS,
  readTable,
  writeTable,
} from '../../../src/exchange/csv/table.ts';
import { shippedDecks } from '../../units.ts';

const must = <T>(read: { ok: true; value: T } | { ok: false; error: unknown }): T => {
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};
const codes = (read: { ok: boolean; error?: unknown }) =>
  read.ok
    ? []
    : (read as { error: { code: string; line: number; column: number }[] }).error.map(
        ({ code, line, column }) => [code, line, column],
      );

describe('tables', () => {
  test('T5 lines end with CR LF, quotes are doubled, the file starts with a mark: RFC 4180, section 2', () => {
    const text = writeTable(['a', 'b'], [['x,y', 'say "hi"'], ['two\r\nlines', -1.8], [null, true]]);
    expect(text).toBe('\uFEFFa,b\r\n"x,y","say ""hi"""\r\n"two\r\nlines",-1.8\r\n,true\r\n');
    expect(must(readTable(text))).toEqual([['a', 'b'], ['x,y', 'say "hi"'], ['two\r\nlines', '-1.8'], ['', 'true']]);
  }); // biome-ignore format: rows

  test.each([
    ['=HYPERLINK("http://a")', '\'=HYPERLINK("http://a")'],
    ['+1', "'+1"],
    ['-2', "'-2"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['\tcmd', "'\tcmd"],
    ['Ada', 'Ada'],
    ["O'Neil", "O'Neil"],
    ['a=b', 'a=b'],
  ])('T5 free text %j is no formula in a spreadsheet: %j', (text, expected) => {
    expect(freeText(text)).toBe(expected);
    expect(fromFreeText(expected)).toBe(text);
  });

  test('T1 the divider that divides most evenly wins, whatever else is in the cells', () => {
    expect(must(readTable('a;b;c\n1,5;2,5;3\n4;5;6,7\n'))).toEqual([['a', 'b', 'c'], ['1,5', '2,5', '3'], ['4', '5', '6,7']]);
    expect(must(readTable('a\tb, c; d\n1\t2\n'))).toEqual([['a', 'b, c; d'], ['1', '2']]);
    expect(must(readTable('a,b\n1\n'))).toEqual([['a', 'b'], ['1', '']]);
  }); // biome-ignore format: rows

  test('too large a table is refused before it is read', () => {
    expect(readTable('a,b\n'.repeat(MAX_LETTERS / 4 + 1))).toMatchObject({ error: { code: 'too-large' } });
    expect(readTable(`a${','.repeat(999)}\n`.repeat(200)).ok).toBe(false);
  });
});

describe('stacks', () => {
  const text = [
    'stack;element;floor;floorAt;plate;kind;thickness;free;unit;identical;feature;towards',
    'C1;C1;drum floor;front;cushion;waved;1,80;2,40;mm;;;',
    'C1;;;;steel-1;steel;1,75;;mm;steels;;',
    'C1;;;;snap;snap-ring;0.0591;;in;;bevel;opening',
  ].join('\n');

  test('T6 a line a plate, from the floor up', () => {
    expect(must(readStacks(text))).toEqual([
      {
        id: 'C1', element: 'C1', floor: 'drum floor', floorAt: 'front',
        items: [
          { id: 'cushion', kind: 'waved', thickness: { value: '1.80', unit: 'mm' }, free: { value: '2.40', unit: 'mm' } },
          { id: 'steel-1', kind: 'steel', thickness: { value: '1.75', unit: 'mm' }, identical: 'steels' },
          { id: 'snap', kind: 'snap-ring', thickness: { value: '0.0591', unit: 'in' }, looks: { feature: 'bevel', towards: 'opening' } },
        ],
      },
    ]);
  }); // biome-ignore format: a line a plate

  test('T6 what the table has no column for stays as the deck has it; a plate not in the table is gone', () => {
    const before = must(readStacks(text)).map((stack) => ({
      ...stack,
      source: 'bench',
      room: { value: '30', unit: 'mm' as const },
      items: stack.items.map((item) => ({ ...item, unsure: true as const, note: `of ${item.id}` })),
    }));
    const [after] = must(readStacks('stack,plate,kind,thickness\nC1,steel-1,steel,1.80\n', before));
    expect(after).toMatchObject({ source: 'bench', room: { value: '30' }, floor: 'drum floor' });
    expect(after!.items).toEqual([
      {
        id: 'steel-1',
        kind: 'steel',
        thickness: { value: '1.80', unit: 'mm' },
        unsure: true,
        note: 'of steel-1',
      },
    ]);
  });

  test('T3 problems by line and column', () => {
    const read = readStacks('stack,plate,kind,thickness,colour\nC1,a,wood,1.8,red\n');
    expect(codes(read)).toEqual([['column-unknown', 1, 5]]);
    expect(
      codes(readStacks('stack,plate,kind,thickness\nC1,a,wood,thick\n,a,steel,1\nC1,a,steel,1\n')),
    ).toEqual([
      ['word-unknown', 2, 3],
      ['number-wrong', 2, 4],
      ['id-missing', 3, 1],
      ['id-twice', 4, 2],
    ]);
    expect(codes(readStacks('plate,kind\na,steel\n'))).toEqual([['column-missing', 1, 1]]);
  });

  test('T4 written and read with the deck beside it, every shipped stack is what it was', () => {
    for (const { stacks = [] } of shippedDecks())
      if (stacks.length > 0) expect(must(readStacks(writeStacks(stacks), stacks))).toEqual(stacks);
  });
});

describe('sequences', () => {
  test('T7 with nothing said each step follows the one above it', () => {
    const [sequence] = must(
      readSequences('sequence\ttext\nstrip\tDrain the oil.\nstrip\tTake the pan off.\nstrip\tUnplug.\n'),
    );
    expect(sequence!.steps).toEqual([
      { id: 'step-1', text: 'Drain the oil.' },
      { id: 'step-2', text: 'Take the pan off.', after: [{ step: 'step-1', reason: AS_DONE }] },
      { id: 'step-3', text: 'Unplug.', after: [{ step: 'step-2', reason: AS_DONE }] },
    ]);
  });

  test('T7 what must come before, with one reason or several, torque and hazards', () => {
    const text = [
      'sequence,step,text,after,reason,torque,torqueUnit,hazards',
      'strip,drain,Drain.,,,,,hot-fluid',
      'strip,pan,"Pan, off.",drain,It spills.,"9,5",N·m,',
      'strip,valves,Valves out.,drain pan,It drips. | The pan is in the way.,,,',
    ].join('\n');
    const [sequence] = must(readSequences(text));
    expect(sequence!.steps[0]).toEqual({ id: 'drain', text: 'Drain.', hazards: ['hot-fluid'] });
    expect(sequence!.steps[1]!.torque).toEqual({ value: '9.5', unit: 'N·m' });
    expect(sequence!.steps[2]!.after).toEqual([
      { step: 'drain', reason: 'It drips.' },
      { step: 'pan', reason: 'The pan is in the way.' },
    ]);
    expect(must(readSequences(writeSequences([sequence!])))).toEqual([sequence]);
  });

  test('T3 problems by line and column', () => {
    const text = 'sequence,step,text,after,torque,torqueUnit,hazards\ns,a,Do.,b,,,\ns,a,,,5,,fire\n';
    expect(codes(readSequences(text)).sort()).toEqual([
      ['id-missing', 3, 3],
      ['id-twice', 3, 2],
      ['word-unknown', 2, 4],
      ['word-unknown', 3, 6],
      ['word-unknown', 3, 7],
    ]);
  });

  test('T4 written and read with the deck beside it, every shipped sequence is what it was', () => {
    for (const { sequences = [] } of shippedDecks())
      if (sequences.length > 0)
        expect(must(readSequences(writeSequences(sequences), sequences))).toEqual(sequences);
  });
});

describe('fits', () => {
  const fit: DeckFit = {
    id: 'end-play', kind: 'end-play', where: 'at the output shaft', method: 'bare', instrument: 'dial', effect: 'closes',
    limits: { low: { value: '0.10', unit: 'mm' }, high: { value: '0.30', unit: 'mm' } }, aim: { value: '0.15', unit: 'mm' },
    parts: [{ id: 'A', thickness: { value: '1.60', unit: 'mm' } }, { id: 'B', thickness: { value: '1.65', unit: 'mm' } }],
  }; // biome-ignore format: one record

  test('T8 a line a fit, selective parts in one cell', () => {
    const text =
      'fit;kind;where;method;instrument;low;high;aim;effect;parts\nend-play;end-play;at the output shaft;bare;dial;0,10;0,30;0,15;closes;A=1,60 B=1,65\n';
    expect(must(readFits(text))).toEqual([fit]);
    expect(must(readFits(writeFits([fit])))).toEqual([fit]);
  });

  test('T3 problems by line and column', () => {
    const text =
      'fit,kind,where,method,instrument,low,high,effect,parts\na,play,x,bare,dial,0.1,,shrinks,A:1.6\n';
    expect(codes(readFits(text)).sort()).toEqual([
      ['number-wrong', 2, 7],
      ['number-wrong', 2, 9],
      ['word-unknown', 2, 2],
      ['word-unknown', 2, 8],
    ]);
  });

  test('T8 a fit in two units cannot be told in one line, and is left to the deck file', () => {
    const mixed = { ...fit, aim: { value: '0.006', unit: 'in' as const } };
    expect(must(readTable(writeFits([mixed])))).toHaveLength(1);
  });

  test('T4 written and read with the deck beside it, every shipped fit is what it was', () => {
    for (const { fits = [] } of shippedDecks())
      if (fits.length > 0) expect(must(readFits(writeFits(fits), fits))).toEqual(fits);
  });
});
