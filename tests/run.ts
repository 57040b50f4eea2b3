/** The whole check, as `npm test` and CI run it: style, types, dependencies, unit tests, build, browser tests; then one line. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureChromium } from './browser/chromium.ts';
import { audit } from './dependencies.ts';

const reports = mkdtempSync(join(tmpdir(), 'detent-tests-'));
let passed = 0;
let failed = 0;

function run(title: string, command: string, args: readonly string[], env: Record<string, string> = {}) {
  console.log(`\n== ${title}`);
  const { status } = spawnSync('npx', ['--no-install', command, ...args], {
    stdio: 'inherit',
    env: { ...process.env, ...env },
    shell: process.platform === 'win32',
  });
  return status === 0;
}

/** A step that is one check: it passes or fails as a whole. */
function check(title: string, command: string, args: readonly string[]) {
  if (run(title, command, args)) passed++;
  else failed++;
}

function count(title: string, ok: boolean, read: () => { passed: number; failed: number }) {
  try {
    const counted = read();
    passed += counted.passed;
    failed += counted.failed;
    if (!ok && counted.failed === 0) failed++;
    if (counted.passed + counted.failed === 0) throw new Error('it ran no test');
  } catch (error) {
    console.error(`${title}: no result to read (${error instanceof Error ? error.message : error})`);
    failed++;
  }
}

const json = (file: string) => JSON.parse(readFileSync(file, 'utf8'));

check('format and lint', 'biome', ['check', '--error-on-warnings', '.']);
check('types', 'tsc', ['--noEmit']);
check('types of core, without browser or Node', 'tsc', ['--noEmit', '-p', 'src/core']);

console.log('\n== what is known against the dependencies of the page');
const known = audit();
if (known.kind === 'clean') {
  passed++;
  console.log(`Nothing grave${known.lesser > 0 ? `; ${known.lesser} lesser: see npm audit` : ''}.`);
} else if (known.kind === 'vulnerable') {
  failed++;
  console.error(`Vulnerable: ${known.names.join(', ')}. See npm audit.`);
} else console.log(`NOT CHECKED: ${known.why}. This counts neither as passed nor as failed.`);

const unitReport = join(reports, 'unit.json');
const unitOk = run('unit, property and component tests', 'vitest', [
  'run',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${unitReport}`,
]);
count('unit tests', unitOk, () => {
  const report = json(unitReport);
  const brokenFiles = report.testResults.filter(
    (file: { status: string; assertionResults: unknown[] }) =>
      file.status === 'failed' && file.assertionResults.length === 0,
  ).length;
  return { passed: report.numPassedTests, failed: report.numFailedTests + brokenFiles };
});

check('build', 'vite', ['build', '--logLevel', 'warn']);
check('what the first scripts weigh', 'tsx', ['tests/first-scripts.ts']);

try {
  const browser = ensureChromium();
  const browserReport = join(reports, 'browser.json');
  const browserOk = run(
    'browser tests',
    'playwright',
    ['test', '--config', 'tests/browser/playwright.config.ts', '--reporter=list,json'],
    { CHROMIUM_PATH: browser, PLAYWRIGHT_JSON_OUTPUT_NAME: browserReport },
  );
  count('browser tests', browserOk, () => {
    const { stats } = json(browserReport);
    return { passed: stats.expected, failed: stats.unexpected + stats.flaky + stats.skipped };
  });
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  failed++;
}

console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
