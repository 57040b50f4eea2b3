/** Steps as on a job sheet: a box to tick, what is done, and the tool. */
import { stepsShown } from '../../core/questions/describe/steps.ts';
import type { StepsDrawing } from '../../core/questions/drawing.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';

export function Steps({ drawing, unit, say }: { drawing: StepsDrawing; unit: Unit; say: Say }) {
  return (
    <ol className="dr-steps">
      {stepsShown(unit.deck, drawing).map(({ step, text, isDone, isLit }) => (
        <li key={step.id} className={isLit ? 'dr-step dr-step-lit' : 'dr-step'}>
          <svg className="dr-tick" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
            <rect x="1.5" y="1.5" width="13" height="13" />
            {isDone && <path d="M3.5 8.5L7 12L13 4" />}
          </svg>
          <span>
            {text}
            {isDone && <span className="dr-unseen">, {say(phrase('drawing.steps.done'))}</span>}
            {isLit && <span className="dr-unseen">, {say(phrase('drawing.marked'))}</span>}
          </span>
        </li>
      ))}
    </ol>
  );
}
