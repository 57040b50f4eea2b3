/**
 * Joins reports: for each learner the union of all attempts and flags by id. The result depends on which reports
 * there are and on nothing else: not on their order, on how often one comes, or on whether some were joined
 * before. Contradictions (one id, two contents; one attempt handed in by two people) are told, never hidden.
 */
import type { Attempt } from '../memory/attempt.ts';
import { type Correction, isVoidedBy } from './corrections.ts';
import type { Flag, SealedReport } from './report.ts';

export interface LearnerLog {
  readonly learner: string;
  /** As in the latest report. */
  readonly name: string;
  /** Each once, sorted by id. */
  readonly attempts: readonly Attempt[];
  readonly flags: readonly Flag[];
  /** Corrections that some device of the learner has taken in. */
  readonly corrections: readonly string[];
  /** Public keys his reports were sealed with, one a device; null for reports with no seal. */
  readonly keys: readonly (string | null)[];
  readonly reports: number;
  /** When the latest report was made. */
  readonly lastReport: number;
}

export interface Disputed {
  readonly attempt: string;
  /** Learners whose reports hold it. */
  readonly learners: readonly string[];
  /** changed: two reports give it different contents, the earlier made one counts. shared: by several learners. */
  readonly kind: 'changed' | 'shared';
}

export interface JoinedReports {
  /** Sorted by name, then id. */
  readonly learners: readonly LearnerLog[];
  readonly disputed: readonly Disputed[];
}

const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** JSON with sorted keys, so that equal contents are equal texts. */
const contentOf = (value: unknown): string =>
  JSON.stringify(value, (_, entry: unknown) =>
    typeof entry === 'object' && entry !== null && !Array.isArray(entry)
      ? Object.fromEntries(Object.entries(entry).sort(([a], [b]) => byText(a, b)))
      : entry,
  );

/** Earliest made first; equal ones in an order of their own content. */
function inOrderOfMaking(reports: Iterable<SealedReport>): SealedReport[] {
  const once = new Map<string, SealedReport>();
  for (const sealed of reports) {
    const key = `${sealed.report.id} ${sealed.seal?.key ?? ''} ${sealed.seal?.signature ?? contentOf(sealed.report)}`;
    if (!once.has(key)) once.set(key, sealed);
  }
  return [...once]
    .sort(([a, { report: x }], [b, { report: y }]) => x.madeAt - y.madeAt || byText(a, b))
    .map(([, sealed]) => sealed);
}

class Log {
  readonly attempts = new Map<string, Attempt>();
  readonly flags = new Map<string, Flag>();
  readonly corrections = new Set<string>();
  readonly keys = new Set<string | null>();
  readonly changed = new Set<string>();
  reports = 0;
  name = '';
  lastReport = Number.NEGATIVE_INFINITY;

  add({ report, seal }: SealedReport): void {
    for (const attempt of report.attempts) {
      const known = this.attempts.get(attempt.id);
      if (!known) this.attempts.set(attempt.id, attempt);
      else if (known !== attempt && contentOf(known) !== contentOf(attempt)) this.changed.add(attempt.id);
    }
    for (const flag of report.flags) if (!this.flags.has(flag.id)) this.flags.set(flag.id, flag);
    for (const id of report.corrections) this.corrections.add(id);
    this.keys.add(seal?.key ?? null);
    this.reports++;
    this.name = report.learner.name;
    this.lastReport = report.madeAt;
  }
}

/** The logs of all learners after these reports of one assignment. */
export function joinReports(reports: Iterable<SealedReport>): JoinedReports {
  const logs = new Map<string, Log>();
  for (const sealed of inOrderOfMaking(reports)) {
    const { id } = sealed.report.learner;
    const log = logs.get(id) ?? new Log();
    logs.set(id, log);
    log.add(sealed);
  }
  const holders = new Map<string, string[]>();
  for (const [learner, log] of logs)
    for (const id of log.attempts.keys()) {
      const own = holders.get(id);
      if (own) own.push(learner);
      else holders.set(id, [learner]);
    }
  const changed = [...logs].flatMap(([learner, log]) =>
    [...log.changed].map((attempt): Disputed => ({ attempt, learners: [learner], kind: 'changed' })),
  );
  const shared = [...holders]
    .filter(([, learners]) => learners.length > 1)
    .map(([attempt, learners]): Disputed => ({ attempt, learners: learners.sort(byText), kind: 'shared' }));
  return {
    learners: [...logs]
      .map(
        ([learner, log]): LearnerLog => ({
          learner,
          name: log.name,
          attempts: [...log.attempts.values()].sort((a, b) => byText(a.id, b.id)),
          flags: [...log.flags.values()].sort((a, b) => a.at - b.at || byText(a.id, b.id)),
          corrections: [...log.corrections].sort(byText),
          keys: [...log.keys].sort((a, b) => byText(a ?? '', b ?? '')),
          reports: log.reports,
          lastReport: log.lastReport,
        }),
      )
      .sort((a, b) => byText(a.name, b.name) || byText(a.learner, b.learner)),
    disputed: [...changed, ...shared].sort(
      (a, b) =>
        byText(a.attempt, b.attempt) || byText(a.kind, b.kind) || byText(a.learners[0]!, b.learners[0]!),
    ),
  };
}

/** Somebody who has answered on a wrong value. */
export interface ToTell {
  readonly learner: string;
  readonly name: string;
  /** Voided answers, and the last local day one was given. */
  readonly answers: number;
  readonly lastDay: number;
  /** His device has taken the correction in, so it has told him. */
  readonly told: boolean;
}

/** Whom a correction concerns, those not told yet first. */
export function whomToTell(correction: Correction, logs: readonly LearnerLog[]): ToTell[] {
  return logs
    .flatMap(({ learner, name, attempts, corrections }) => {
      const voided = attempts.filter((attempt) => isVoidedBy(correction, attempt));
      if (voided.length === 0) return [];
      const lastDay = Math.max(...voided.map(({ day }) => day));
      return [{ learner, name, answers: voided.length, lastDay, told: corrections.includes(correction.id) }];
    })
    .sort(
      (a, b) => Number(a.told) - Number(b.told) || byText(a.name, b.name) || byText(a.learner, b.learner),
    );
}
