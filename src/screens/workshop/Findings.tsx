/** What the checks say, in plain words: the first thing that cannot be right, and what is still missing. */
import { Link } from 'wouter';
import { type Finding, sentenceOf, whereOf } from '../../content/finding.ts';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Desk } from './desk.ts';
import { type SectionId, sectionOf } from './sections.ts';

/** A place that is empty is told by its name alone; one that holds something else, by what is wrong with it. */
export function findingPhrase(finding: Finding): Phrase {
  const empty = finding.rule === 'shape' && finding.found.values?.found;
  return typeof empty === 'object' && 'key' in empty && empty.key === 'value.nothing'
    ? phrase('workshop.missing-place', { where: whereOf(finding.place) })
    : sentenceOf(finding);
}

interface Props {
  readonly desk: Desk;
  readonly draftId: string;
  readonly section: SectionId;
}

function List({ findings, desk, draftId, section }: Props & { readonly findings: readonly Finding[] }) {
  return (
    <ul className="steps">
      {findings.map((finding) => {
        const own = sectionOf(finding.place.pointer);
        const words = desk.say(findingPhrase(finding));
        return (
          <li key={`${finding.rule} ${finding.place.pointer} ${words}`}>
            {words}{' '}
            {own !== section && (
              <Link href={`/workshop/${draftId}/${own}`}>{desk.say(phrase(`workshop.section.${own}`))}</Link>
            )}
          </li>
        );
      })}
    </ul>
  );
}

export function Findings(props: Props) {
  const { desk } = props;
  const { found, missing, deck } = desk.check;
  const errors = found.filter(({ severity }) => severity === 'error');
  const warnings = found.filter(({ severity }) => severity !== 'error');
  const [first, ...others] = errors;
  return (
    <section className="note findings" aria-live="polite">
      {first ? (
        <>
          <strong>{desk.say(phrase('workshop.contradiction'))}</strong>
          <List {...props} findings={[first]} />
        </>
      ) : (
        <p>{desk.say(phrase(deck ? 'workshop.ready' : 'workshop.no-contradiction'))}</p>
      )}
      {others.length > 0 && (
        <details>
          <summary>{desk.say(phrase('workshop.more-contradictions', { count: others.length }))}</summary>
          <List {...props} findings={others} />
        </details>
      )}
      {missing.length > 0 && (
        <details>
          <summary>{desk.say(phrase('workshop.missing', { count: missing.length }))}</summary>
          <List {...props} findings={missing} />
        </details>
      )}
      {warnings.length > 0 && (
        <details>
          <summary>{desk.say(phrase('workshop.warnings', { count: warnings.length }))}</summary>
          <List {...props} findings={warnings} />
        </details>
      )}
    </section>
  );
}
