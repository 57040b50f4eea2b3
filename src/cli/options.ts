/** Reads a command line with node's own parser, and says in our words what is wrong with it. */
import { parseArgs } from 'node:util';
import { Failure } from './failure.ts';

export interface Options {
  readonly files: readonly string[];
  readonly json: boolean;
  readonly help: boolean;
  /** Options with a value, by name. */
  readonly values: ReadonlyMap<string, string>;
}

/** The largest seed: any whole number up to it gives a question of its own. */
export const MOST_SEED = 4_294_967_295;
export const MOST_COUNT = 1000;

/** `valued` are the names of the options that take a value; --json and --help are always known. */
export function readOptions(command: string, args: readonly string[], valued: readonly string[]): Options {
  const flags = ['json', 'help'];
  const { tokens } = parseArgs({
    args: [...args],
    strict: false,
    allowPositionals: true,
    tokens: true,
    options: {
      json: { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
      ...Object.fromEntries(valued.map((name) => [name, { type: 'string' as const }])),
    },
  });
  const values = new Map<string, string>();
  const files: string[] = [];
  const set = new Set<string>();
  for (const token of tokens) {
    if (token.kind === 'positional') files.push(token.value);
    if (token.kind !== 'option') continue;
    const { name, rawName, value } = token;
    if (flags.includes(name)) {
      if (value !== undefined) throw new Failure(2, 'cli.flag-value', { option: rawName });
      set.add(name);
    } else if (!valued.includes(name)) {
      const known = [...valued, ...flags].map((option) => `--${option}`);
      throw new Failure(2, 'cli.unknown-option', { option: rawName, command, known });
    } else if (value === undefined || value === '' || value.startsWith('--')) {
      throw new Failure(2, 'cli.no-value', { option: rawName });
    } else if (values.has(name)) {
      throw new Failure(2, 'cli.option-twice', { option: rawName });
    } else values.set(name, value);
  }
  return { files, json: set.has('json'), help: set.has('help'), values };
}

/** A whole number option from `least` to `most`. */
export function numberOption(
  options: Options,
  name: string,
  otherwise: number,
  [least, most]: readonly [number, number],
): number {
  const text = options.values.get(name);
  if (text === undefined) return otherwise;
  const value = /^\d{1,12}$/.test(text) ? Number(text) : Number.NaN;
  if (!(value >= least && value <= most))
    throw new Failure(2, 'cli.bad-number', { option: `--${name}`, text, least, most });
  return value;
}
