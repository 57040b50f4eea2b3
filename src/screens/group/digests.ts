/**
 * Digests of an assignment, made anew where they are out of date: when a report came in, a correction was made or
 * the class was moved. Reports are read only for those, so that a large board opens at once.
 */
import type { Assignment } from '../../core/assign/assignment.ts';
import { type Correction, voidsOf } from '../../core/assign/corrections.ts';
import { dueDay } from '../../core/assign/due.ts';
import type { LearnerLog } from '../../core/assign/merge-reports.ts';
import { confusionsIn } from '../../core/group/confusions.ts';
import { digestLog, type LearnerDigest } from '../../core/group/digest.ts';
import type { Attempt } from '../../core/memory/attempt.ts';
import { questionOf } from '../../core/questions/reopen.ts';
import { pass, type Result } from '../../core/result.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { joinPile } from '../../exchange/pile.ts';
import type { StoredDigest } from '../../storage/classroom-rows.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Services } from '../services.ts';

export interface DigestRequest {
  readonly assignment: Assignment;
  /** Revisions of the deck by their numbers. */
  readonly unitOf: (revision: number) => Unit | undefined;
  readonly corrections: readonly Correction[];
}

/** What a digest is made of, as far as it can change. */
const madeOf = (reports: number, { assignment, corrections }: DigestRequest): string =>
  [reports, dueDay(assignment.classAt), ...corrections.map(({ id }) => id)].join(' ');

/** What was confused, by the revision that the question was asked from. */
const confusedIn = ({ unitOf }: DigestRequest) => {
  return (attempt: Attempt) => {
    const unit = unitOf(attempt.revision);
    const question = unit && questionOf(unit, attempt);
    return question ? confusionsIn(question, attempt.answer) : [];
  };
};

const foldOf = (request: DigestRequest, log: LearnerLog, known: LearnerDigest | undefined): LearnerDigest =>
  digestLog({
    log,
    voids: voidsOf(log.attempts, request.corrections),
    classDay: dueDay(request.assignment.classAt),
    confusedIn: confusedIn(request),
    known,
  });

/** All digests of the assignment, up to date and stored. Learners whose reports cannot be read have none. */
export async function freshDigests(
  { store: { classroom } }: Services,
  request: DigestRequest,
): Promise<Result<LearnerDigest[], StoreTrouble>> {
  const { id } = request.assignment;
  const [counts, stored] = await Promise.all([classroom.reportCounts(id), classroom.digestsOf(id)]);
  if (!counts.ok) return counts;
  if (!stored.ok) return stored;
  const known = new Map(stored.value.map((row) => [row.learner, row]));
  const digests: LearnerDigest[] = [];
  for (const [learner, count] of counts.value) {
    const before = known.get(learner);
    const source = madeOf(count, request);
    if (before?.madeOf === source) {
      digests.push(before.digest);
      continue;
    }
    const reports = await classroom.reportsOf(id, learner);
    if (!reports.ok) return reports;
    const log = (await joinPile(reports.value.reports)).joined.learners.find(
      (one) => one.learner === learner,
    );
    if (!log) continue;
    const digest = foldOf(request, log, before?.digest);
    const row: StoredDigest = { assignment: id, learner, madeOf: source, digest };
    const saved = await classroom.saveDigest(row);
    if (!saved.ok) return saved;
    digests.push(digest);
  }
  return pass(digests);
}
