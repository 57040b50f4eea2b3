/** The title block at the foot of a drawing: what it shows, of which unit and revision, from which sources. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Provenance } from '../../core/unit/deck.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';

interface Props {
  readonly title: string;
  readonly unit: Unit;
  readonly say: Say;
  /** The values drawn; null when the drawing does not rest on values of its own. */
  readonly from: readonly Provenance[] | null;
}

/** Titles of the sources these values name, each once. */
function sourcesOf({ deck }: Unit, values: readonly Provenance[]): string[] {
  const ids = new Set(values.map((value) => value.source));
  return (deck.sources ?? []).filter((source) => ids.has(source.id)).map((source) => source.title);
}

export function TitleBlock({ title, unit, say, from }: Props) {
  const cells = [
    { head: say(phrase('drawing.unit')), value: unit.deck.unit },
    { head: say(phrase('drawing.revision')), value: String(unit.deck.revision) },
  ];
  if (from) {
    const sources = sourcesOf(unit, from);
    const value = sources.length > 0 ? sources.join('; ') : say(phrase('drawing.no-source'));
    cells.push({ head: say(phrase('drawing.source')), value });
  }
  return (
    <figcaption className="dr-block">
      <strong className="dr-block-title">{title}</strong>
      <dl>
        {cells.map(({ head, value }) => (
          <div key={head}>
            <dt>{head}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </figcaption>
  );
}
