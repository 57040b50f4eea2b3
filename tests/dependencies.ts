/**
 * Looks the dependencies over: exact versions, a lock file that names no host, licences that may be shipped, and
 * what is known against them. The last needs a registry that answers: where none does, that is said, and it counts
 * neither as passed nor as failed.
 */
import { spawnSync } from 'node:child_process';

interface Manifest {
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
}

interface Locked {
  readonly version?: string;
  readonly resolved?: string;
  readonly integrity?: string;
  readonly license?: string;
  readonly dev?: boolean;
  readonly hasInstallScript?: boolean;
}

export interface Lock {
  readonly packages: Readonly<Record<string, Locked>>;
}

/** Licences of what goes into the page: all let it be handed on with their notice, and ask nothing of our own work. */
const SHIPPABLE: readonly string[] = [
  'MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', 'Unlicense', 'OFL-1.1', 'BlueOak-1.0.0',
]; // biome-ignore format: a list of names

/** Licences of tools, which are not handed on. */
const USABLE: readonly string[] = [
  ...SHIPPABLE, 'MIT-0', 'CC0-1.0', 'CC-BY-4.0', 'MPL-2.0', 'Python-2.0', 'MIT OR Apache-2.0', '(MIT OR CC0-1.0)',
]; // biome-ignore format: a list of names

const EXACT = /^\d+\.\d+\.\d+(-[0-9A-Za-z.-]+)?$/;
const SHA512 = /^sha512-[A-Za-z0-9+/]{86}==$/;

/** What is wrong with pins, lock file and licences, a sentence each. */
export function faultsOf(manifest: Manifest, lock: Lock): string[] {
  const faults: string[] = [];
  const { dependencies, devDependencies, optionalDependencies } = manifest;
  for (const [name, version] of Object.entries({
    ...dependencies,
    ...devDependencies,
    ...optionalDependencies,
  })) {
    if (!EXACT.test(version)) faults.push(`${name}: "${version}" is no exact version`);
    const locked = lock.packages[`node_modules/${name}`]?.version;
    if (locked !== version) faults.push(`${name}: the lock file has ${locked ?? 'nothing'}, not ${version}`);
  }
  for (const [place, entry] of Object.entries(lock.packages)) {
    if (place === '') continue;
    const name = place.slice(place.lastIndexOf('node_modules/') + 'node_modules/'.length);
    if (!place.startsWith('node_modules/')) faults.push(`${place}: not from a registry`);
    if (entry.resolved !== undefined) faults.push(`${name}: the lock file names where it was fetched`);
    if (!EXACT.test(entry.version ?? '')) faults.push(`${name}: no exact version in the lock file`);
    if (!SHA512.test(entry.integrity ?? '')) faults.push(`${name}: no SHA-512 in the lock file`);
    const may = entry.dev ? USABLE : SHIPPABLE;
    if (!may.includes(entry.license ?? '')) faults.push(`${name}: licence ${entry.license ?? 'unknown'}`);
    if (entry.hasInstallScript && !entry.dev) faults.push(`${name}: runs a script when it is installed`);
  }
  return faults;
}

export type Known =
  | { readonly kind: 'clean'; readonly lesser: number }
  | { readonly kind: 'vulnerable'; readonly names: readonly string[] }
  | { readonly kind: 'not-checked'; readonly why: string };

const GRAVE = ['high', 'critical'];

/** What an audit said, from its JSON; what is no audit's answer is no answer. */
export function readAudit(text: string): Known {
  let said: unknown;
  try {
    said = JSON.parse(text);
  } catch {
    return { kind: 'not-checked', why: 'no registry answered' };
  }
  const { auditReportVersion, vulnerabilities, statusCode } = (said ?? {}) as {
    auditReportVersion?: unknown;
    vulnerabilities?: Record<string, { severity?: string }>;
    statusCode?: number;
  };
  if (auditReportVersion === undefined || typeof vulnerabilities !== 'object' || vulnerabilities === null)
    return {
      kind: 'not-checked',
      why: statusCode ? `the registry answered ${statusCode}` : 'no registry answered',
    };
  const found = Object.entries(vulnerabilities);
  const grave = found.filter(([, { severity }]) => GRAVE.includes(severity ?? ''));
  return grave.length > 0
    ? { kind: 'vulnerable', names: grave.map(([name, { severity }]) => `${name} (${severity})`) }
    : { kind: 'clean', lesser: found.length };
}

/** Asks the registry what is known against what goes into the page. */
export function audit(): Known {
  const { stdout } = spawnSync('npm', ['audit', '--omit=dev', '--json'], {
    encoding: 'utf8',
    timeout: 60_000,
    shell: process.platform === 'win32',
  });
  return readAudit(stdout ?? '');
}
