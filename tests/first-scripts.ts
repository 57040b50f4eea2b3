/**
 * After a build: what a browser must load before the first script runs weighs under 130 kB gzipped, and what an
 * apprentice's first question does not need is in none of it. Read from the build's manifest and page.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

const MOST = 130_000;

/** Loaded by themselves when they are wanted. */
const APART = [
  'src/screens/assign/AssignScreen.tsx',
  'src/screens/group/GroupScreen.tsx',
  'src/screens/print/PrintScreen.tsx',
  'src/screens/self-check/SelfCheckScreen.tsx',
  'src/screens/workshop/WorkshopScreen.tsx',
  'src/ui/drawings/DrawingView.tsx',
  'src/ui/answers/order-dragging.tsx',
  'src/content/index.ts',
  'src/storage/store.ts',
  'node_modules/jsqr/dist/jsQR.js',
];

interface Chunk {
  readonly file: string;
  readonly isEntry?: boolean;
  readonly imports?: readonly string[];
}

type Manifest = Readonly<Record<string, Chunk>>;

/** Keys of the entry and of all it imports, and what these import, at once. */
function firstOf(manifest: Manifest): Set<string> {
  const first = new Set<string>();
  const add = (key: string) => {
    if (first.has(key)) return;
    first.add(key);
    for (const needed of manifest[key]?.imports ?? []) add(needed);
  };
  for (const [key, chunk] of Object.entries(manifest)) if (chunk.isEntry) add(key);
  return first;
}

/** What is wrong with a build; nothing when all is well. */
function faultsOf(dist: string): string[] {
  const manifest = JSON.parse(readFileSync(join(dist, '.vite/manifest.json'), 'utf8')) as Manifest;
  const first = firstOf(manifest);
  const files = new Set([...first].map((key) => manifest[key]!.file));
  const page = readFileSync(join(dist, 'index.html'), 'utf8');
  const named = [...page.matchAll(/(?:src|href)="\.\/([^"]+\.js)"/g)].map(([, file]) => file!);
  for (const file of named) files.add(file);
  const sizes = [...files].map((file) => ({
    file,
    bytes: gzipSync(readFileSync(join(dist, file)), { level: 9 }).length,
  }));
  const sum = sizes.reduce((all, { bytes }) => all + bytes, 0);
  for (const { file, bytes } of sizes) console.log(`${(bytes / 1000).toFixed(1).padStart(7)} kB  ${file}`);
  console.log(`${(sum / 1000).toFixed(1).padStart(7)} kB of ${MOST / 1000} in all, gzipped`);
  return [
    ...(named.length === 0 ? ['the page names no script'] : []),
    ...(named.length > 2 ? [`more than the entry and the page is waited for: ${named.join(', ')}`] : []),
    ...(sum >= MOST ? [`the first scripts weigh ${sum} bytes`] : []),
    ...APART.flatMap((key) => {
      const [, name] = /([^/]+)\.\w+$/.exec(key)!;
      // One that is loaded in several places is known by its name only.
      const own =
        manifest[key]?.file ??
        Object.values(manifest).find(({ file }) => file.startsWith(`assets/${name}-`))?.file;
      if (own === undefined) return [`${key} is no chunk of its own`];
      return files.has(own) ? [`${key} is in the first scripts`] : [];
    }),
  ];
}

const dist = process.argv[2] ?? 'dist';
if (!existsSync(join(dist, '.vite/manifest.json'))) throw new Error(`${dist} holds no build: npm run build`);
const faults = faultsOf(dist);
for (const fault of faults) console.error(fault);
process.exitCode = faults.length === 0 ? 0 : 1;
