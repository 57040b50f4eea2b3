/**
 * Finds a Chromium for the browser tests, and installs the system's where there is none and that is possible.
 * Looked for: CHROMIUM_PATH, then the usual places, then the browser that playwright itself manages.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';

const USUAL_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

/** Where a browser is, or null. */
export function findChromium(): string | null {
  const places = [process.env.CHROMIUM_PATH, ...USUAL_PLACES, chromium.executablePath()];
  return places.find((place) => place && existsSync(place)) ?? null;
}

const ways: readonly { readonly tool: string; readonly steps: readonly (readonly string[])[] }[] = [
  {
    tool: 'apt-get',
    steps: [
      ['apt-get', 'update'],
      ['apt-get', 'install', '-y', '--no-install-recommends', 'chromium'],
    ],
  },
  { tool: 'dnf', steps: [['dnf', 'install', '-y', 'chromium']] },
  { tool: 'apk', steps: [['apk', 'add', 'chromium']] },
];

/** Finds or installs a browser; the message of the error says what to do where neither works. */
export function ensureChromium(): string {
  const found = findChromium();
  if (found) return found;
  const root = process.getuid?.() === 0;
  const way = ways.find(({ tool }) => spawnSync(tool, ['--version']).status === 0);
  if (root && way) {
    console.log(`No Chromium found: installing it with ${way.tool}.`);
    for (const [command, ...args] of way.steps) spawnSync(command!, args, { stdio: 'inherit' });
    const installed = findChromium();
    if (installed) return installed;
  }
  throw new Error(
    'The browser tests need Chromium or Chrome. Install it with your system’s package manager ' +
      '(for example: sudo apt-get install chromium), or name it: CHROMIUM_PATH=/path/to/chrome npm test',
  );
}
