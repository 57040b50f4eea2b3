import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { forbiddenEdges, importsOf, LAYERS } from './imports.ts';

const root = fileURLToPath(new URL('../', import.meta.url));
const files = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
  .map((name) => name.replaceAll('\\', '/'))
  .filter((name) => /\.tsx?$/.test(name));
const read = (path: string) => readFileSync(join(root, 'src', path), 'utf8');

describe('the arrow of imports', () => {
  test('core <- content, storage, exchange, words, ui <- screens <- app; cli knows core, content, words', () => {
    expect(files.flatMap((path) => forbiddenEdges(path, read(path)))).toEqual([]);
  });

  test('every layer was read, and its imports seen', () => {
    for (const layer of LAYERS) {
      const own = files.filter((path) => path.startsWith(`${layer}/`));
      expect(own.flatMap((path) => importsOf(path, read(path))).length).toBeGreaterThan(0);
    }
  });
});

// Each source breaks the arrow once; what must be said of it.
const PLANTED: readonly [path: string, source: string, said: string][] = [
  ['core/gears/x.ts', "import { Say } from '../../words/words.ts';", 'core must not import words'],
  ['core/x.ts', "import type { Say } from '../words/words.ts';", 'core must not import words'],
  ['core/x.ts', "import { load } from '../content/load.ts';", 'core must not import content'],
  ['core/x.ts', "import { store } from '../storage/store.ts';", 'core must not import storage'],
  ['core/x.ts', "import { useState } from 'react';", 'core must not import react'],
  ['core/x.tsx', "import { jsx } from 'react/jsx-runtime'; export const a = <p>b</p>;", 'core must not import react'],
  ['core/x.ts', "import { createRoot } from 'react-dom/client';", 'core must not import react-dom'],
  ['core/x.ts', "import Dexie from 'dexie';", 'core must not import dexie'],
  ['core/x.ts', "import * as z from 'zod/mini';", 'core must not import zod'],
  ['core/x.ts', "import { readFileSync } from 'node:fs';", 'only cli'],
  ['core/x.ts', "import Fraction from 'fraction.js';", 'comes in by core/rational.ts'],
  ['core/x.ts', "import { Rating } from 'ts-fsrs';", 'comes in by core/memory/'],
  ['core/x.ts', "export { App } from '../app/App.tsx';", 'core must not import app'],
  ['core/x.ts', "export * from '../ui/Sheet.tsx';", 'core must not import ui'],
  ['core/x.ts', "export const later = () => import('../screens/drill/DrillScreen.tsx');", 'core must not import screens'],
  ['core/x.ts', "import '../ui/look.css';", 'core must not import ui'],
  ['content/x.ts', "import { store } from '../storage/store.ts';", 'content must not import storage'],
  ['content/x.ts', "import { useState } from 'react';", 'react comes in by'],
  ['storage/x.ts', "import { load } from '../content/load.ts';", 'storage must not import content'],
  ['storage/rows/x.ts', "import { Sheet } from '../../ui/Sheet.tsx';", 'storage must not import ui'],
  ['exchange/x.ts', "import { load } from '../content/load.ts';", 'exchange must not import content'],
  ['exchange/x.ts', "import { store } from '../storage/store.ts';", 'exchange must not import storage'],
  ['exchange/read.ts', "import { encode } from 'uqr';", 'comes in by exchange/qr.ts'],
  ['storage/x.ts', "import { read } from '../exchange/read.ts';", 'storage must not import exchange'],
  ['words/x.ts', "import { load } from '../content/load.ts';", 'words must not import content'],
  ['ui/x.tsx', "import { db } from '../storage/database.ts';", 'ui must not import storage'],
  ['ui/x.tsx', "import { makeSay } from '../words/words.ts';", 'ui must not import words'],
  ['ui/x.tsx', "import { type Say, makeSay } from '../words/words.ts';", 'ui must not import words'],
  ['ui/x.tsx', "import { Link } from 'wouter';", 'wouter comes in by'],
  ['screens/x.tsx', "import { App } from '../app/App.tsx';", 'screens must not import app'],
  ['screens/x.tsx', "import Dexie from 'dexie';", 'dexie comes in by storage/'],
  ['app/x.ts', "import { run } from '../cli/deck.ts';", 'app must not import cli'],
  ['cli/x.ts', "import { store } from '../storage/store.ts';", 'cli must not import storage'],
  ['app/x.ts', "import { version } from '../../package.json';", 'leaves src'],
  ['helpers/x.ts', 'export const a = 1;', 'none of the layers'],
]; // biome-ignore format: a table reads across

describe('planted violations are caught', () => {
  test.each(PLANTED)('%s: %s', (path, source, said) => {
    const found = forbiddenEdges(path, source);
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(said);
  });

  test.each([
    ['core/gears/x.ts', "import { ONE } from '../rational.ts';"],
    ['core/rational.ts', "import Fraction from 'fraction.js';"],
    ['ui/x.tsx', "import type { Say } from '../words/words.ts';"],
    ['screens/x.tsx', "import { load } from '../content/load.ts';"],
    ['cli/x.ts', "import { readFileSync } from 'node:fs';"],
    ['core/x.ts', "// import { useState } from 'react';\nexport const a = \"import x from 'react'\";"],
  ])('and %s may: %s', (path, source) => {
    expect(forbiddenEdges(path, source)).toEqual([]);
  });

  test('a file that does not parse, or an import that cannot be followed, is no pass', () => {
    expect(() => forbiddenEdges('core/x.ts', "import { from 'react'")).toThrow('core/x.ts');
    expect(() => forbiddenEdges('core/x.ts', 'export const a = (b: string) => import(b);')).toThrow(
      'followed',
    );
  });
});

/** Puts files into an empty project, runs a tool on it, and returns all it says. */
function sayOf(tool: readonly string[], project: Record<string, string>): string {
  const folder = mkdtempSync(join(tmpdir(), 'detent-planted-'));
  try {
    for (const [name, content] of Object.entries(project)) {
      mkdirSync(dirname(join(folder, name)), { recursive: true });
      writeFileSync(join(folder, name), content);
    }
    const [script, ...args] = tool;
    return spawnSync(process.execPath, [join(root, script!), ...args], { cwd: folder, encoding: 'utf8' })
      .stdout;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe('the other two guards of core report a planted file', () => {
  test('lint: imports, clock and console in core, each by its rule, and nothing elsewhere', () => {
    const planted: readonly [rule: string, source: string][] = [
      ['lint/style/noRestrictedImports', "import { useState } from 'react';\nexport const a = useState;"],
      [
        'lint/style/noRestrictedImports',
        "import { createRoot } from 'react-dom/client';\nexport const a = createRoot;",
      ],
      ['lint/style/noRestrictedImports', "import * as z from 'zod';\nexport const a = z;"],
      ['lint/style/noRestrictedImports', "import { Sheet } from '../ui/Sheet.tsx';\nexport const a = Sheet;"],
      ['lint/style/noRestrictedGlobals', 'export const a = () => Date.now();'],
      ['lint/suspicious/noConsole', "export const a = () => console.log('a');"],
    ];
    const { $schema: _, ...settings } = JSON.parse(readFileSync(join(root, 'biome.json'), 'utf8'));
    const said = sayOf(['node_modules/@biomejs/biome/bin/biome', 'lint', '--reporter=json', 'src'], {
      // Our settings; only, the planted project is no repository.
      'biome.json': JSON.stringify({ ...settings, vcs: { enabled: false } }),
      ...Object.fromEntries(
        planted.flatMap(([, source], index) => [
          [`src/core/planted-${index}.ts`, source],
          [`src/app/planted-${index}.ts`, source],
        ]),
      ),
    });
    const { diagnostics } = JSON.parse(said) as {
      diagnostics: { category: string; severity: string; location: { path: string | { file: string } } }[];
    };
    const found = diagnostics.map(({ category, severity, location: { path } }) =>
      [severity, (typeof path === 'string' ? path : path.file).replaceAll('\\', '/'), category].join(' '),
    );
    expect(found.sort()).toEqual(
      planted.map(([rule], index) => `error src/core/planted-${index}.ts ${rule}`).sort(),
    );
  });

  test('types: core knows no page, no machine and no timers', () => {
    const unknown = ['document', 'window', 'localStorage', 'process', 'setTimeout', 'console'];
    const said = sayOf(['node_modules/typescript/bin/tsc', '--noEmit', '-p', '.'], {
      'tsconfig.json': JSON.stringify({ extends: join(root, 'src/core/tsconfig.json'), include: ['*.ts'] }),
      'planted.ts': unknown.map((name, index) => `export const a${index} = ${name};`).join('\n'),
    });
    for (const name of unknown) expect(said).toContain(`Cannot find name '${name}'`);
  });
});

test('core draws no chance but from its seed', () => {
  const chance = /\bMath\s*\.\s*random\b|\bcrypto\b/;
  expect(chance.test('const a = Math.random();')).toBe(true);
  expect(files.filter((path) => path.startsWith('core/') && chance.test(read(path)))).toEqual([]);
});
