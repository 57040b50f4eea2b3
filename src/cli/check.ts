/** `deck check`: everything that is wrong with a deck, or that it is in order. */
import { type Finding, whereOf } from '../content/finding.ts';
import { parseDeck } from '../content/load.ts';
import type { Say } from '../words/words.ts';
import { labelled } from './layout.ts';
import { readText } from './read-deck.ts';

export interface Checked {
  readonly file: string;
  readonly findings: readonly Finding[];
}

/** Findings of one file; a file that cannot be read throws a `Failure`. */
export function checkFile(file: string): Checked {
  const parsed = parseDeck(readText(file));
  return { file, findings: parsed.ok ? parsed.value.findings : parsed.error };
}

export const countOf = (findings: readonly Finding[], severity: Finding['severity']): number =>
  findings.filter((finding) => finding.severity === severity).length;

const counts = (findings: readonly Finding[]) => ({
  errors: countOf(findings, 'error'),
  warnings: countOf(findings, 'warning'),
});

export function checkInWords({ file, findings }: Checked, say: Say): string {
  const head = say({ key: 'cli.check.head', values: { file, ...counts(findings) } });
  const labels = [say({ key: 'cli.check.found' }), say({ key: 'cli.check.expected' })];
  const width = Math.max(...labels.map((label) => label.length));
  const blocks = findings.map((finding) => {
    const { severity, rule, place, found, expected } = finding;
    const line = place.line === null ? '' : say({ key: 'cli.check.line', values: { line: place.line } });
    const where = say({
      key: `cli.check.${severity}`,
      values: { where: say(whereOf(place)), line, rule },
    });
    return [
      `  ${where}`,
      labelled(labels[0]!, say(found), width, '    '),
      labelled(labels[1]!, say(expected), width, '    '),
    ].join('\n');
  });
  return [head, ...blocks].join('\n\n');
}

/** The same as data: one list, each finding with its file. */
export function checkAsData(checked: readonly Checked[], say: Say) {
  const all = checked.flatMap(({ findings }) => findings);
  return {
    ok: countOf(all, 'error') === 0,
    ...counts(all),
    findings: checked.flatMap(({ file, findings }) =>
      findings.map(({ severity, rule, place, found, expected }) => ({
        file,
        severity,
        rule,
        where: say(whereOf(place)),
        place,
        found: say(found),
        expected: say(expected),
      })),
    ),
  };
}
