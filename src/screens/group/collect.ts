/**
 * Collecting: a report that came in is kept with the assignment it answers, and what was flagged is put with the
 * deck. A report whose seal does not fit is not kept.
 */
import { pass, type Result } from '../../core/result.ts';
import type { Received } from '../../exchange/message.ts';
import type { Proof } from '../../exchange/seal.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Services } from '../services.ts';

export type ReceivedReport = Extract<Received, { kind: 'report' }>;

/** kept: new here. known: the very same was here. broken: changed on its way. stranger: no such assignment here. */
export type CollectedKind = 'kept' | 'known' | 'broken' | 'stranger';

export interface Collected {
  readonly kind: CollectedKind;
  readonly assignment: string;
  readonly learner: string;
  readonly name: string;
  readonly answers: number;
  readonly flags: number;
  readonly proof: Proof;
}

export async function collectReport(
  { store: { classroom }, now }: Services,
  { sealed: { report, seal }, proof, text, count }: ReceivedReport,
): Promise<Result<Collected, StoreTrouble>> {
  const about = {
    assignment: report.assignment,
    learner: report.learner.id,
    name: report.learner.name,
    answers: count,
    flags: report.flags.length,
    proof,
  };
  if (proof === 'broken') return pass({ ...about, kind: 'broken' });
  const assignments = await classroom.assignments();
  if (!assignments.ok) return assignments;
  if (assignments.value.every(({ id }) => id !== report.assignment))
    return pass({ ...about, kind: 'stranger' });
  const kept = await classroom.keepReport({
    id: report.id,
    assignment: report.assignment,
    learner: report.learner.id,
    madeAt: report.madeAt,
    text,
    seal,
    savedAt: now().at,
  });
  if (!kept.ok) return kept;
  for (const flag of report.flags) {
    const raised = await classroom.raiseFlag(flag);
    if (!raised.ok) return raised;
  }
  return pass({ ...about, kind: kept.value ? 'kept' : 'known' });
}
