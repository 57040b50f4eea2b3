/** What this device has to hand in for an assignment, and the sealed report of it. */
import { type Assignment, assignedFacts } from '../../core/assign/assignment.ts';
import { makeReport, type Report, type SealedReport } from '../../core/assign/report.ts';
import { factsOf } from '../../core/questions/facts.ts';
import { pass, type Result } from '../../core/result.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { sealReport } from '../../exchange/message.ts';
import { makeDeviceKey } from '../../exchange/seal.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Services } from '../services.ts';

/** Everything but the name and the id: what would go in. */
export type Contents = Pick<Report, 'attempts' | 'flags' | 'corrections'>;

/** `after`: only answers given later than that moment; flags are few and always go along. */
export async function contentsFor(
  { store }: Services,
  unit: Unit,
  assignment: Assignment,
  after?: number,
): Promise<Result<Contents, StoreTrouble>> {
  const { id } = unit.deck;
  const log = await store.attemptsOf(id);
  if (!log.ok) return log;
  const flags = await store.classroom.flagsOf(id);
  if (!flags.ok) return flags;
  const corrections = await store.classroom.correctionsOf(id);
  if (!corrections.ok) return corrections;
  const { attempts, ...rest } = makeReport({
    id: '',
    assignment,
    facts: new Set(assignedFacts(assignment, factsOf(unit)).facts.map((fact) => fact.id)),
    learner: { id: '', name: '' },
    attempts: log.value.attempts,
    flags: flags.value,
    corrections: corrections.value.map((correction) => correction.id),
    madeAt: 0,
    ...(after === undefined ? {} : { after }),
  });
  return pass({ attempts, flags: rest.flags, corrections: rest.corrections });
}

/** The report under a name, with the device's seal where the browser gives keys. */
export async function sealedReportOf(
  { store, now, newId }: Services,
  assignment: Assignment,
  contents: Contents,
  name: string,
): Promise<Result<SealedReport, StoreTrouble>> {
  const learner = await store.classroom.nameLearner(name);
  if (!learner.ok) return learner;
  const pair = await store.classroom.deviceKey(makeDeviceKey);
  if (!pair.ok) return pair;
  const report: Report = {
    ...contents,
    id: newId(),
    assignment: assignment.id,
    deck: assignment.deck.id,
    learner: learner.value,
    madeAt: now().at,
  };
  return pass(await sealReport(report, pair.value));
}
