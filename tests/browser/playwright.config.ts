/** Browser tests run against the built page, served as a user gets it: offline shell and all. */
import { defineConfig } from '@playwright/test';
import { ensureChromium } from './chromium.ts';

const port = 4173;

export default defineConfig({
  testDir: '.',
  outputDir: '../../test-results',
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  timeout: 90_000,
  use: {
    baseURL: `http://127.0.0.1:${port}/`,
    viewport: { width: 390, height: 844 },
    launchOptions: {
      executablePath: ensureChromium(),
      args: [
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  webServer: {
    command: `node node_modules/vite/bin/vite.js preview --port ${port} --strictPort --host 127.0.0.1`,
    cwd: new URL('../..', import.meta.url).pathname,
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: false,
  },
});
