/** A pile of stored reports read and joined: the way from what was handed in to the logs that a board is made of. */
import { type JoinedReports, joinReports } from '../core/assign/merge-reports.ts';
import type { Seal, SealedReport } from '../core/assign/report.ts';
import { readReport } from './message.ts';

export interface Pile {
  readonly joined: JoinedReports;
  /** Reports whose seal does not fit; they are not joined. */
  readonly broken: number;
  readonly unreadable: number;
}

/** Joins reports by their texts and seals, as they were kept. */
export async function joinPile(
  reports: readonly { readonly text: string; readonly seal: Seal | null }[],
): Promise<Pile> {
  let [broken, unreadable] = [0, 0];
  const whole: SealedReport[] = [];
  for (const { text, seal } of reports) {
    const read = await readReport(text, seal);
    if (!read.ok || read.value.kind !== 'report') unreadable++;
    else if (read.value.proof === 'broken') broken++;
    else whole.push(read.value.sealed);
  }
  return { joined: joinReports(whole), broken, unreadable };
}
