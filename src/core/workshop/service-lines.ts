/**
 * Torques and codes typed or dictated a line each. A line that cannot be read as one is kept as its words alone, so
 * that nothing typed is lost; the checks then say what is missing.
 */
import type { TORQUE_UNITS } from '../unit/record.ts';
import { figureFrom } from './finish.ts';
import { stepIdFrom } from './steps.ts';

type TorqueUnit = (typeof TORQUE_UNITS)[number];

/** How torques are written on sheets, spaces and dots taken out, small letters. */
const UNIT_WORDS: Readonly<Record<string, TorqueUnit>> = {
  nm: 'N·m',
  lbft: 'lbf·ft', lbfft: 'lbf·ft', ftlb: 'lbf·ft', ftlbs: 'lbf·ft', ftlbf: 'lbf·ft',
  lbin: 'lbf·in', lbfin: 'lbf·in', inlb: 'lbf·in', inlbs: 'lbf·in', inlbf: 'lbf·in',
  kgm: 'kgf·m', kgfm: 'kgf·m', mkg: 'kgf·m',
}; // biome-ignore format: a table reads across

const TORQUE =
  /^(.*?)[\s,;:]+(\d{1,5}(?:[.,]\d{1,4})?)\s*([a-z][a-z·.\-–\s]*?)?(?:[\s,;]+(?:[x×]\s*)?(\d{1,3})\s*[x×]?)?\s*$/i;

export interface TypedTorque {
  readonly id: string;
  readonly name: string;
  readonly torque?: { readonly value: string; readonly unit: TorqueUnit };
  readonly count?: number;
}

const linesOf = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

/** "pan bolts 11 N·m x14" → pan bolts, 11 N·m, 14 of them. A line without a unit is in the usual one. */
export function torquesFromLines(
  text: string,
  usual: TorqueUnit,
  taken: readonly (string | undefined)[],
): TypedTorque[] {
  const ids = [...taken];
  return linesOf(text).map((line): TypedTorque => {
    const match = TORQUE.exec(line);
    const [, words = '', figure = '', unit = '', count] = match ?? [];
    const known = UNIT_WORDS[unit.toLowerCase().replace(/[^a-z]/g, '')];
    const reads = match !== null && words !== '' && (unit.trim() === '' || known !== undefined);
    const name = reads ? words : line;
    const id = stepIdFrom(name, ids);
    ids.push(id);
    return {
      id,
      name,
      ...(reads && { torque: { value: figureFrom(figure), unit: known ?? usual } }),
      ...(reads && count !== undefined && { count: Number(count) }),
    };
  });
}

export interface TypedCode {
  readonly id: string;
  readonly meaning?: string;
  readonly watches: readonly string[];
}

/** "P0777 Solenoid B stays on": the code, then what it means. Codes that are there already are left out. */
export function codesFromLines(text: string, taken: readonly (string | undefined)[]): TypedCode[] {
  const ids = [...taken];
  return linesOf(text).flatMap((line): TypedCode[] => {
    const [id = '', ...rest] = line.split(/[\s,;:]+/);
    if (id === '' || ids.includes(id)) return [];
    ids.push(id);
    const meaning = rest.length > 0 ? line.slice(line.indexOf(id) + id.length).replace(/^[\s,;:]+/, '') : '';
    return [{ id, ...(meaning !== '' && { meaning }), watches: [] }];
  });
}
