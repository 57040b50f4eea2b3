import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ReadChart, readChart, writeChart } from '../../../src/exchange/csv/chart.ts';
import { problemPhrase, type TableProblem } from '../../../src/exchange/csv/records.ts';
import { readTable } from '../../../src/exchange/csv/table.ts';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, PUBLISHED, shippedDecks } from '../../units.ts';

const must = (text: string, known?: Parameters<typeof readChart>[1]): ReadChart => {
  const read = readChart(text, known);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};
const problems = (text: string): readonly TableProblem[] => {
  const read = readChart(text);
  return read.ok ? [] : read.error;
};
const told = ({ ranges, neutral }: ReadChart) =>
  [...ranges, ...neutral].map(({ id, applied, unsure, ratio }) =>
    [id, applied.join(' '), unsure.join(' '), ratio ?? ''].join('|'),
  );

/** One small chart as spreadsheets and people write it; each row must read the same. */
const SAME: readonly [name: string, text: string][] = [
  ['tabs, as pasted from a spreadsheet', 'Range\tB1\tC1\tF1\tRatio\n1\tX\t\t(X)\t3.48\n2\t\tX\t\t1\nR\tX\tX\t\t-2.1\nN\t\t\t\t\n'],
  ['commas', 'Range,B1,C1,F1,Ratio\r\n1,X,,(X),3.48\r\n2,,X,,1\r\nR,X,X,,-2.1\r\nN,,,,\r\n'],
  ['semicolons and decimal commas', '\uFEFFRange;B1;C1;F1;Ratio\n1;x;-;(x);3,48\n2;-;x;-;1\nR;x;x;-;−2,1\nN;-;-;-;\n'],
  ['other marks, quotes, blank lines', '"Range","B1","C1","F1","ratio"\n\n"1","●","","[on]","3.48"\n"2","","✓","","1"\n"R","1","×","0","-2.1"\n"N","off","off","off",""\n'],
  ['transposed', ',1,2,R,N\nB1,X,,X,\nC1,,X,X,\nF1,(X),,,\nRatio,3.48,1,-2.1,\n'],
  ['no corner, no line end', '\tB1\tC1\tF1\ti\n1\tX\t\t(X)\t3.48\n2\t\tX\t\t1\nR\tX\tX\t\t-2.1\nN\t\t\t\t'],
]; // biome-ignore format: a table reads across

describe('reading an apply chart', () => {
  test.each(SAME)('T1 %s', (name, text) => {
    const chart = must(text);
    expect(told(chart)).toEqual(['1|B1 F1||3.48', '2|C1||1', 'R|B1 C1||-2.1', 'N|||']);
    expect(chart.elements.map(({ id }) => id)).toEqual(['B1', 'C1', 'F1']);
    expect(chart.ranges[0]!.bracketed).toEqual(['F1']);
    expect(chart.neutral.map(({ id }) => id)).toEqual(['N']);
    expect(chart.transposed).toBe(name === 'transposed');
  });

  test('T1 what is not sure is marked with "?", on or off', () => {
    expect(told(must('r,B1,C1\n1,X?,?\n2,,(X)?\n'))).toEqual(['1|B1|B1 C1|', '2|C1|C1|']);
  });

  test('T2 names that are known decide which way round it lies', () => {
    // Elements called 1 and 2, ranges called low and high: by looks alone the wrong way round.
    const text = 'x,low,high\n1,X,\n2,,X\n';
    const known = { elements: ['1', '2'], ranges: ['low', 'high'] };
    expect(must(text, known)).toMatchObject({ transposed: true, elements: [{ id: '1' }, { id: '2' }] });
    expect(told(must(text, known))).toEqual(['low|1||', 'high|2||']);
    expect(must(text).transposed).toBe(false);
  });

  test('T2 titles that cannot be ids become ids and stay as names', () => {
    const { elements, ranges } = must('Gear,Low brake,C1\nRev. low,X,\n2:nd,,X\n');
    expect(elements).toEqual([{ id: 'Low-brake', name: 'Low brake' }, { id: 'C1' }]);
    expect(ranges.map(({ id, name }) => [id, name])).toEqual([['Rev.-low', 'Rev. low'], ['2nd', '2:nd']]);
  }); // biome-ignore format: pairs

  test.each([
    ['', [['unreadable', 1, 1]]],
    ['just words', [['no-rows', 1, 1]]],
    ['r,B1,C1', [['no-rows', 1, 1]]],
    ['r,B1,C1\n1,X,maybe\n2,Y,\n', [['mark-unknown', 2, 3], ['mark-unknown', 3, 2]]],
    ['r,B1,B1\n1,X,\n1,,X\n', [['id-twice', 1, 3], ['id-twice', 3, 1]]],
    ['r,B1,\n1,X,X\n,X,\n', [['id-missing', 1, 3], ['id-missing', 3, 1]]],
    ['r,B1,ratio\n1,X,fast\n2,,1.0\n', [['number-wrong', 2, 3]]],
    ['r,1,2,3\nB1,X,no way,\nC1,,,Q\n', [['mark-unknown', 2, 3], ['mark-unknown', 3, 4]]],
  ])('T3 %j tells every problem by line and column', (text, expected) => {
    const found = problems(text);
    expect(found.map(({ code, line, column }) => [code, line, column]).sort()).toEqual([...expected].sort());
    for (const problem of found) expect(makeSay(null)(problemPhrase(problem)).length).toBeGreaterThan(10);
  }); // biome-ignore format: lists of problems

  test('T4 written and read again, every chart is what it was: shipped and published ones', () => {
    for (const deck of [...shippedDecks(), ...PUBLISHED.map(deckOf)]) {
      const text = writeChart(deck);
      const chart = must(text);
      const rows = [...deck.chart.ranges, ...(deck.chart.neutral ?? [])];
      expect([...chart.ranges, ...chart.neutral]).toHaveLength(rows.length);
      for (const row of rows) {
        const read = [...chart.ranges, ...chart.neutral].find(({ id }) => id === row.id)!;
        expect([...read.applied].sort()).toEqual([...row.applied].sort());
        expect([...read.unsure].sort()).toEqual([...(row.unsureCells ?? [])].sort());
        expect(read.ratio).toBe('ratio' in row ? row.ratio : undefined);
      }
      const table = readTable(text);
      if (!table.ok) throw new Error(table.error.code);
      const lying = table.value[0]!.map((_, column) =>
        table.value.map((row) => row[column]!).join('\t'),
      ).join('\n');
      const known = { elements: deck.train.elements.map(({ id }) => id), ranges: rows.map(({ id }) => id) };
      expect({ ...must(lying, known), transposed: false }).toEqual({
        ...must(text, known),
        transposed: false,
      });
    }
  });

  test('T3 no text makes it throw, and a text is read or refused whole', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.array(fc.array(fc.constantFrom('X', '(X)', '', '?', '1', 'R', 'B1', '"', '\n', ',', ';', '3,4'), { maxLength: 6 }), { maxLength: 8 }).map((rows) => rows.map((row) => row.join(';')).join('\n'))), (text) => {
        const read = readChart(text);
        if (read.ok) for (const { id } of [...read.value.ranges, ...read.value.elements]) expect(id).toMatch(/^[\p{L}\p{N}]\S*$/u);
        else expect(read.error.length).toBeGreaterThan(0);
      }),
    );
  }); // biome-ignore format: a generator
});
