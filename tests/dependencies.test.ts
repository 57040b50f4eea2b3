import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { faultsOf, type Lock, readAudit } from './dependencies.ts';

const read = (name: string) => JSON.parse(readFileSync(`${import.meta.dirname}/../${name}`, 'utf8'));

test('versions are exact, the lock file names no host, and licences may be shipped', () => {
  const lock = read('package-lock.json') as Lock;
  expect(Object.keys(lock.packages).length).toBeGreaterThan(20);
  expect(faultsOf(read('package.json'), lock)).toEqual([]);
});

describe('faults are told', () => {
  const sound = { version: '1.2.3', integrity: `sha512-${'A'.repeat(86)}==`, license: 'MIT' };
  const faults = (version: string, entry: object, place = 'node_modules/a') =>
    faultsOf({ dependencies: { a: version } }, { packages: { '': {}, [place]: { ...sound, ...entry } } });

  test.each([
    ['nothing wrong', '1.2.3', {}, []],
    ['a range', '^1.2.3', {}, ['a: "^1.2.3" is no exact version', 'a: the lock file has 1.2.3, not ^1.2.3']],
    ['another version', '1.2.4', {}, ['a: the lock file has 1.2.3, not 1.2.4']],
    ['a host', '1.2.3', { resolved: 'https://x/a.tgz' }, ['a: the lock file names where it was fetched']],
    ['a weak sum', '1.2.3', { integrity: 'sha1-x' }, ['a: no SHA-512 in the lock file']],
    ['a licence that asks for more', '1.2.3', { license: 'GPL-3.0' }, ['a: licence GPL-3.0']],
    ['a licence for tools', '1.2.3', { license: 'MPL-2.0' }, ['a: licence MPL-2.0']],
    ['the same of a tool', '1.2.3', { license: 'MPL-2.0', dev: true }, []],
    ['a script', '1.2.3', { hasInstallScript: true }, ['a: runs a script when it is installed']],
  ])('%s', (_, version, entry, expected) => {
    expect(faults(version, entry)).toEqual(expected);
  });

  test('a folder beside the project', () => {
    expect(faults('1.2.3', {}, 'packages/a')).toContain('packages/a: not from a registry');
  });
});

describe('what an audit says', () => {
  const report = (vulnerabilities: object) => JSON.stringify({ auditReportVersion: 2, vulnerabilities });

  test.each([
    ['nothing known', report({}), { kind: 'clean', lesser: 0 }],
    ['something small', report({ a: { severity: 'low' }, b: { severity: 'moderate' } }), { kind: 'clean', lesser: 2 }],
    ['something grave', report({ a: { severity: 'high' }, b: { severity: 'critical' }, c: { severity: 'low' } }), { kind: 'vulnerable', names: ['a (high)', 'b (critical)'] }],
    ['a registry that does not do this', '{"statusCode":405,"message":"no"}', { kind: 'not-checked', why: 'the registry answered 405' }],
    ['no network', '{"error":{"code":"ENOTFOUND"}}', { kind: 'not-checked', why: 'no registry answered' }],
    ['nothing', '', { kind: 'not-checked', why: 'no registry answered' }],
    ['null', 'null', { kind: 'not-checked', why: 'no registry answered' }],
  ])('%s', (_, text, expected) => {
    expect(readAudit(text)).toEqual(expected);
  }); // biome-ignore format: a table
});
