/**
 * A worked example above the answer of a calculation, to fold away. With a step hidden it starts folded, and the
 * step that ends in the result is left to work out before it is opened.
 */
import type { Support } from '../../core/memory/support.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { WorkedExample } from '../../core/questions/worked-example.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { DrawingLater } from './DrawingLater.tsx';

export interface ShownExample {
  readonly support: Exclude<Support, 'alone'>;
  readonly worked: WorkedExample;
}

/** Drawings of the unit itself stand with the question already. */
const DRAWN_ONCE: ReadonlySet<string> = new Set(['train', 'chart']);

interface Props extends ShownExample {
  readonly unit: Unit;
  readonly say: Say;
  /** Cautions that stand above already. */
  readonly told: readonly string[];
}

const sentences = (texts: readonly string[]) => texts.map((text) => <li key={text}>{text}</li>);

export function ExampleView({ support, worked, unit, say, told }: Props) {
  const { question, steps, last } = worked;
  const { drawing } = question;
  const isFull = support === 'full';
  return (
    <details className="example" open={isFull}>
      <summary>{say(phrase('example.title'))}</summary>
      <p className="aside">{say(phrase(isFull ? 'example.full' : 'example.step-hidden'))}</p>
      {question.cautions
        .filter((caution) => !told.includes(caution))
        .map((caution) => (
          <p key={caution} className="caution">
            {caution}
          </p>
        ))}
      <p>
        <strong>{say(question.prompt)}</strong>
      </p>
      {drawing && !DRAWN_ONCE.has(drawing.kind) && <DrawingLater drawing={drawing} unit={unit} say={say} />}
      <ol className="steps">
        {sentences(steps)}
        {isFull && sentences(last)}
      </ol>
      {!isFull && last.length > 0 && (
        <details>
          <summary>{say(phrase('example.last'))}</summary>
          <ul className="steps">{sentences(last)}</ul>
        </details>
      )}
    </details>
  );
}
