import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import type { Plugin, Rolldown } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';

const file = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const PAGE = file('src/app/page.tsx');

/** Only our own files may run or load. Added to the built page; the development server needs inline scripts. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

const contentSecurityPolicy: Plugin = {
  name: 'content-security-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY },
      injectTo: 'head-prepend',
    },
  ],
};

/**
 * Puts the few lines by which modules of older kinds are joined into the page's own file: a file for them alone has to
 * be fetched, and the page waits for it.
 */
const joinedWithin: Plugin = {
  name: 'joined-within',
  // A build for reading is written otherwise, and keeps the file.
  apply: ({ build }, { command }) => command === 'build' && build?.minify !== false,
  enforce: 'pre',
  generateBundle(_, bundle) {
    const chunks = Object.values(bundle).filter((part) => part.type === 'chunk');
    const joints = chunks.find(({ name }) => name === 'rolldown-runtime');
    const page = chunks.find(({ moduleIds }) => moduleIds.includes(PAGE));
    if (!joints || !page) return;
    const pairs = (list: string) => list.replaceAll(/([\w$]+) as ([\w$]+)/g, '$1:$2');
    const code = joints.code.replace(
      /export\{(.*)\};?\s*$/,
      (_all, list: string) => `return{${list.replaceAll(/([\w$]+) as ([\w$]+)/g, '$2:$1')}}`,
    );
    const from = `"./${joints.fileName.slice(joints.fileName.lastIndexOf('/') + 1)}"`;
    const taking = new RegExp(`import\\{([^}]*)\\}from${from.replaceAll('.', '\\.')};`);
    if (!taking.test(page.code) || code === joints.code)
      return this.error('rolldown-runtime is written in another way than it was');
    page.code = page.code.replace(taking, (_all, list: string) => `const{${pairs(list)}}=(()=>{${code}})();`);
    page.imports = page.imports.filter((name) => name !== joints.fileName);
  },
};

/** Names in the page what the entry loads in any case, so that it comes along: the page's script, the faces of type. */
const comesAlong: Plugin = {
  name: 'comes-along',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler(html, { bundle = {} }) {
      const files = new Set<string>();
      const add = (file: string) => {
        const chunk = bundle[file];
        if (files.has(file) || chunk?.type !== 'chunk' || chunk.isEntry) return;
        files.add(file);
        for (const needed of chunk.imports) add(needed);
      };
      for (const [name, chunk] of Object.entries(bundle))
        if (chunk.type === 'chunk' && chunk.moduleIds.includes(PAGE)) add(name);
      const scripts = [...files].filter((file) => !html.includes(file));
      const faces = Object.keys(bundle).filter((file) => file.endsWith('.woff2'));
      return [
        ...scripts.map((file) => ({
          tag: 'link',
          attrs: { rel: 'modulepreload', crossorigin: true, href: `./${file}` },
        })),
        ...faces.map((file) => ({
          tag: 'link',
          attrs: { rel: 'preload', as: 'font', type: 'font/woff2', crossorigin: true, href: `./${file}` },
        })),
      ].map((link) => ({ ...link, injectTo: 'head' as const }));
    },
  },
};

/** Families that stand in no folder, by what their names tell; the rest of them is about the chart. */
const SUBJECTS: readonly (readonly [subject: string, names: RegExp])[] = [
  ['control', /solenoid|polarity|valve|interlock|guard|unplugged|actual|fails|stuck/],
  ['gears', /torque|ratio|speed|set|push|tie|neutral/],
];

function familiesOf(file: string): string | null {
  const [, folder, name] = /\/questions\/families\/(?:([a-z]+)\/)?([a-z-]+)\.ts$/.exec(file) ?? [];
  if (!name || name === 'index') return null;
  return `families-${folder ?? SUBJECTS.find(([, names]) => names.test(name))?.[0] ?? 'chart'}`;
}

type NameOfChunk = Rolldown.CodeSplittingNameFunction;
type Modules = Parameters<NameOfChunk>[1];

/** What a module imports at once, and what that imports. */
function reachedFrom(start: string, modules: Modules, reached = new Set<string>()): Set<string> {
  if (reached.has(start)) return reached;
  reached.add(start);
  for (const next of modules.getModuleInfo(start)?.importedIds ?? []) reachedFrom(next, modules, reached);
  return reached;
}

const pageOf: NameOfChunk = (id, modules) => (reachedFrom(PAGE, modules).has(id) ? 'page' : null);

const GROUPS: readonly Rolldown.CodeSplittingGroup[] = [
  // So small that it runs while the page is on its way: it waits for nothing else.
  { name: 'entry', tags: ['$initial'], includeDependenciesRecursively: false },
  // All that the first picture needs, React too: one file is there soonest.
  { name: pageOf, includeDependenciesRecursively: false },
  {
    name: 'reckoning',
    test: /\/src\/core\/(faults|gears|hydraulics|sequence|speeds|unit)\/|\/src\/core\/questions\/(?!facts|reopen|resting|slip-ups)[a-z-]+\.ts$|\/families\/([a-z]+-(parts|words|rules)|per-unit)\.ts$/,
  },
  { name: 'measuring', test: /\/src\/core\/(capacity|electrical|measure|units)\// },
  { name: familiesOf },
];

/**
 * What goes together; all else is cut where it is loaded. A question then needs few files, none waiting for another:
 * the page, the families of one subject, one lot of words. What a group takes is not there for those after it. The
 * entry runs first of all, the page before whatever it loads later: files that need each other are in that order.
 */
const CHUNKS = GROUPS.map((group, place) => ({ ...group, priority: GROUPS.length - place }));

export default defineConfig({
  base: './',
  build: {
    manifest: true,
    modulePreload: {
      // A browser that does not know it loads the files where they are imported.
      polyfill: false,
      // Links put in by a script cost more than they save where all comes from the offline worker; styles are needed.
      resolveDependencies: (_, files, { hostType }) =>
        hostType === 'html' ? files : files.filter((file) => file.endsWith('.css')),
    },
    rolldownOptions: {
      output: { codeSplitting: { groups: CHUNKS } },
    },
  },
  plugins: [
    react(),
    contentSecurityPolicy,
    joinedWithin,
    comesAlong,
    VitePWA({
      strategies: 'generateSW',
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        id: './',
        name: 'Detent',
        short_name: 'Detent',
        description: 'Spaced practice for apprentices who rebuild automatic transmissions.',
        lang: 'en',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#f2f3ee',
        theme_color: '#f2f3ee',
        icons: [
          { src: 'detent-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'detent-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'detent-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
          { src: 'detent.svg', sizes: 'any', type: 'image/svg+xml' },
        ],
      },
      workbox: {
        globPatterns: ['**/*.{html,js,css,svg,png,woff2,json,webmanifest}'],
        cleanupOutdatedCaches: true,
      },
    }),
  ],
  server: { host: '127.0.0.1', port: 4173 },
  preview: { host: '127.0.0.1', port: 4173 },
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/browser/**', 'node_modules/**'],
    testTimeout: 60_000,
  },
});
