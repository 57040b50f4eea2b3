/** Assignments, reports and corrections for the tests of assigning, collecting and storing. */
import type { Assignment } from '../src/core/assign/assignment.ts';
import type { Correction } from '../src/core/assign/corrections.ts';
import type { Flag, Report, SealedReport } from '../src/core/assign/report.ts';
import { anAttempt } from './attempts.ts';

export const anAssignment = (changes: Partial<Assignment> = {}): Assignment => ({
  id: '0b7e6a52-5a0f-4f0e-9d52-2f6f0c1c9a01',
  issue: 1,
  deck: { id: 'demo', revision: 1 },
  scope: { kind: 'deck' },
  group: 'second year, bench 2',
  classAt: { date: '2026-12-03', time: '08:00', zone: 'Europe/Berlin' },
  minutes: 10,
  threshold: { share: 0.85, cautioned: true },
  note: null,
  corrections: [],
  madeAt: 1_795_000_000_000,
  ...changes,
});

export const aFlag = (changes: Partial<Flag> = {}): Flag => ({
  id: 'flag-1',
  deck: 'demo',
  revision: 1,
  family: 'range-elements',
  fact: 'range:1/elements',
  seed: 7,
  note: 'B3 has the red clip on mine',
  at: 1_795_000_000_000,
  ...changes,
});

export const aReport = (changes: Partial<Report> = {}): Report => ({
  id: 'report-1',
  assignment: '0b7e6a52-5a0f-4f0e-9d52-2f6f0c1c9a01',
  deck: 'demo',
  learner: { id: 'learner-1', name: 'Ada' },
  madeAt: 1_795_000_000_000,
  attempts: [anAttempt({ sequence: 1 }), anAttempt({ sequence: 2, fact: 'range:2/elements' })],
  flags: [],
  corrections: [],
  ...changes,
});

export const sealed = (report: Report, key: string | null = 'key-1'): SealedReport => ({
  report,
  seal: key === null ? null : { key, signature: `signed ${report.id} by ${key}` },
});

export const aCorrection = (changes: Partial<Correction> = {}): Correction => ({
  id: 'correction-1',
  deck: 'demo',
  revision: 2,
  refs: ['range:1', 'cell:1/B1'],
  facts: ['range:1/elements', 'element:B1/ranges'],
  note: 'Range 1 has C1, not B1.',
  at: 1_795_100_000_000,
  ...changes,
});
