/**
 * The arrow of imports: core <- content, storage, exchange, words, ui <- screens <- app, and cli beside them. Reads the
 * imports of a file from its syntax tree and names each edge that the arrow forbids.
 */
import { posix } from 'node:path';
import { parseSync } from 'vite';

export const LAYERS = [
  'core',
  'content',
  'storage',
  'exchange',
  'words',
  'ui',
  'screens',
  'app',
  'cli',
] as const;
export type Layer = (typeof LAYERS)[number];

/** What a layer may import, itself apart. */
const MAY: Readonly<Record<Layer, readonly Layer[]>> = {
  core: [],
  content: ['core'],
  storage: ['core'],
  exchange: ['core'],
  words: ['core'],
  ui: ['core'],
  screens: ['core', 'content', 'storage', 'exchange', 'words', 'ui'],
  app: ['core', 'content', 'storage', 'exchange', 'words', 'ui', 'screens'],
  cli: ['core', 'content', 'words'],
};

/** What it may know the types of besides: ui is handed the words and only names what it is handed. */
const MAY_NAME: Partial<Record<Layer, readonly Layer[]>> = { ui: ['words'] };

/** Packages that come in by one door: everyone else asks whoever holds it. A folder ends in "/". */
const DOORS: Readonly<Record<string, readonly string[]>> = {
  'fraction.js': ['core/rational.ts'],
  'pure-rand': ['core/random.ts'],
  'ts-fsrs': ['core/memory/'],
  dexie: ['storage/'],
  zod: ['content/', 'storage/', 'exchange/'],
  papaparse: ['exchange/'],
  uqr: ['exchange/qr.ts'],
  jsqr: ['exchange/qr.ts'],
  fflate: ['exchange/'],
  'intl-messageformat': ['words/'],
  react: ['ui/', 'screens/', 'app/'],
  'react-dom': ['ui/', 'screens/', 'app/'],
  wouter: ['screens/', 'app/'],
};

/** The only packages core may use: arithmetic, chance and forgetting, each behind its door. */
const CORE_PACKAGES = ['fraction.js', 'pure-rand', 'simple-statistics', 'ts-fsrs'];

export interface Import {
  readonly from: string;
  /** Only types are taken, so that nothing of it is left when the program runs. */
  readonly typesOnly: boolean;
}

/** Every module a file mentions: imports, re-exports, dynamic imports. Throws when the file does not parse. */
export function importsOf(path: string, source: string): Import[] {
  const { module, errors } = parseSync(path, source);
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]!.message}`);
  const fixed = module.staticImports.map(({ moduleRequest, entries }) => ({
    from: moduleRequest.value,
    typesOnly: entries.length > 0 && entries.every((entry) => entry.isType),
  }));
  const passedOn = module.staticExports.flatMap(({ entries }) =>
    entries.flatMap(({ moduleRequest, isType }) =>
      moduleRequest ? [{ from: moduleRequest.value, typesOnly: isType }] : [],
    ),
  );
  const later = module.dynamicImports.map(({ moduleRequest }) => {
    const text = source.slice(moduleRequest.start, moduleRequest.end);
    if (!/^(['"]).*\1$/.test(text)) throw new Error(`${path}: import(${text}) cannot be followed`);
    return { from: text.slice(1, -1), typesOnly: false };
  });
  return [...fixed, ...passedOn, ...later];
}

const layerOf = (path: string) => LAYERS.find((layer) => path.startsWith(`${layer}/`));
const packageOf = (from: string) =>
  from
    .split('/')
    .slice(0, from.startsWith('@') ? 2 : 1)
    .join('/');

/** Each forbidden edge of one file in words; `path` is relative to src. */
export function forbiddenEdges(path: string, source: string): string[] {
  const layer = layerOf(path);
  if (!layer) return [`${path}: is in none of the layers ${LAYERS.join(', ')}`];
  return importsOf(path, source).flatMap(({ from, typesOnly }) => {
    if (from.startsWith('.')) {
      const target = posix.join(posix.dirname(path), from);
      const other = layerOf(target);
      if (!other) return [`${path}: ${from} leaves src`];
      const may = [layer, ...MAY[layer], ...(typesOnly ? (MAY_NAME[layer] ?? []) : [])];
      return may.includes(other) ? [] : [`${path}: ${layer} must not import ${other} (${from})`];
    }
    if (from.startsWith('node:'))
      return layer === 'cli' ? [] : [`${path}: only cli runs on a machine with ${from}`];
    const name = packageOf(from);
    if (layer === 'core' && !CORE_PACKAGES.includes(name)) return [`${path}: core must not import ${name}`];
    const doors = DOORS[name];
    const open = !doors || doors.some((door) => (door.endsWith('/') ? path.startsWith(door) : path === door));
    return open ? [] : [`${path}: ${name} comes in by ${doors.join(' or ')} only`];
  });
}
