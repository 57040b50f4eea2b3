/**
 * Figures and days as each language writes them. German: decimal comma, day.month.year (DIN 5008, from memory);
 * Mexican Spanish: decimal point (common practice, no source). English keeps what is handed in.
 */
import { describe, expect, it } from 'vitest';
import { say as phrase } from '../../src/core/questions/phrase.ts';
import { readTypedNumber } from '../../src/core/questions/typed-number.ts';
import { writerOf } from '../../src/words/figures.ts';
import type { Language } from '../../src/words/speak.ts';
import { makeSay } from '../../src/words/words.ts';

const ROWS: readonly (readonly [given: string, en: string, de: string, es: string])[] = [
  ['3.480', '3.480', '3,480', '3.480'],
  ['-1.800', '-1.800', '-1,800', '-1.800'],
  ['\u22121.80', '\u22121.80', '\u22121,80', '\u22121.80'],
  ['1.60 mm', '1.60 mm', '1,60 mm', '1.60 mm'],
  ['11.5–13.5 Ω', '11.5–13.5 Ω', '11,5–13,5 Ω', '11.5–13.5 Ω'],
  ['1.20 + 1.25 + 1.30', '1.20 + 1.25 + 1.30', '1,20 + 1,25 + 1,30', '1.20 + 1.25 + 1.30'],
  ['8.9 US qt', '8.9 US qt', '8,9 US qt', '8.9 US qt'],
  ['1950', '1950', '1950', '1950'],
  ['rpm', 'rpm', 'U/min', 'rpm'],
  ['1950 rpm', '1950 rpm', '1950 U/min', '1950 rpm'],
  ['2026-11-05', '2026-11-05', '05.11.2026', '5 nov 2026'],
  ['2026-13-45', '2026-13-45', '2026-13-45', '2026-13-45'],
  ['', '', '', ''],
];

const KEPT = [
  'C1',
  'low brake B1',
  'Torque to 11.5 N·m, in turn.',
  'kestrel-7',
  'P1.a',
  'yes',
  'none',
  'in',
  'A',
];

describe('figures by language', () => {
  it.each(ROWS)('%s', (given, en, de, es) => {
    expect((['en', 'de', 'es'] as const).map((language) => writerOf(language)(given))).toEqual([en, de, es]);
  });

  it.each(KEPT)('what is a name, a word or a sentence stays: %s', (given) => {
    for (const language of ['en', 'de', 'es'] as const) expect(writerOf(language)(given)).toBe(given);
  });

  it('what the German page writes is read back from the keys as the same number', () => {
    for (const exact of ['3.480', '-1.800', '0.05', '12.5'])
      expect(readTypedNumber(writerOf('de')(exact), 3)).toBe(readTypedNumber(exact, 3));
  });
});

const spoken = (language: Language, key: string, values: Readonly<Record<string, string | number>>) =>
  makeSay(null, language)(phrase(key, values));

describe('figures inside messages', () => {
  it('a figure handed over as text', () => {
    expect(spoken('de', 'chart.drives-at', { range: '1', ratio: '3.480' })).toContain('3,480 : 1');
    expect(spoken('es', 'chart.drives-at', { range: '1', ratio: '3.480' })).toContain('3.480 : 1');
    expect(spoken('en', 'chart.drives-at', { range: '1', ratio: '3.480' })).toContain('3.480 : 1');
  });

  it('a figure that the message writes itself is still read as a number', () => {
    const values = { step: '0.025', lines: '25', division: '0.001' };
    expect(spoken('de', 'drawing.depth.scale-in', values)).toMatch(/alle ,?0?,025 in/);
    expect(spoken('de', 'drawing.depth.scale-in', values)).toContain('0,001 in');
  });

  it('thousands that a message counts are grouped as the language groups them', () => {
    expect(spoken('de', 'group.more', { count: 1234 })).toBe('Noch 1.234');
    expect(spoken('en', 'group.more', { count: 1234 })).toBe('1,234 more');
    expect(spoken('es', 'group.more', { count: 1234 })).toContain('1,234');
  });
});
