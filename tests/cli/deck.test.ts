/** The command line as a process: exit codes, streams, and no stack trace whatever happens. */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));

function spawn(command: string) {
  const { status, stdout, stderr } = spawnSync('sh', ['-c', command], { cwd: root, encoding: 'utf8' });
  return { status, stdout, stderr };
}

describe('npm run -s deck', () => {
  test('a shipped deck is in order', () => {
    expect(spawn('npm run -s deck -- check decks/kestrel-7.json')).toEqual({
      status: 0,
      stdout: 'decks/kestrel-7.json: in order\n',
      stderr: '',
    });
  });

  test.each([
    ['check package.json', 1, /^package\.json: \d+ errors\n/, /^$/],
    ['check none.json', 2, /^$/, /^deck: There is no file none\.json\. Check the path\.\n$/],
  ])('%s', (line, status, stdout, stderr) => {
    const result = spawn(`node --import tsx src/cli/deck.ts ${line}`);
    expect(result.status).toBe(status);
    expect(result.stdout).toMatch(stdout);
    expect(result.stderr).toMatch(stderr);
    expect(result.stdout + result.stderr).not.toMatch(/\n\s+at |node:internal/);
  });

  test('a pipe may stand for the file, and a reader may close the other one early', () => {
    const { stdout, stderr } = spawn(
      'cat decks/dunlin-9.json | node --import tsx src/cli/deck.ts ask /dev/stdin --count 400 | head -n 1',
    );
    expect(stdout).toMatch(/^[a-z-]+ {2}\S+ {2}seed 1 {2}[a-z]+\n$/);
    expect(stderr).toBe('');
  });
});
