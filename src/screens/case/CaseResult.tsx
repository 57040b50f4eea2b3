/** What a case came to: the cause, the effort beside the best, and what each test struck out. */

import type { Case, CaseState } from '../../core/diagnosis/case.ts';
import { bestWay, type CaseStep, scoreCase, stepsOf } from '../../core/diagnosis/case-result.ts';
import { faultPhrase, observationPhrase, testPhrase } from '../../core/diagnosis/say.ts';
import { testId } from '../../core/diagnosis/test.ts';
import { faultId } from '../../core/faults/fault.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { makeDecimal } from '../../core/rational.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';

interface Props {
  readonly run: Case;
  readonly state: CaseState;
  readonly unit: Unit;
  readonly say: Say;
  readonly onAnother: () => void;
}

/** With `hint`, a test that would have told more is named. Suspects as a list in which those struck out are crossed through, and said to be. */
function Step({ step, hint, unit, say }: { step: CaseStep; hint: boolean; unit: Unit; say: Say }) {
  const struck = new Set(step.struckOut.map(faultId));
  const betterTests = step.best.filter(({ test }) => testId(test) !== testId(step.test));
  const wasBest = step.best.some(({ test }) => testId(test) === testId(step.test));
  return (
    <li>
      <p>{say(observationPhrase(unit, step))}</p>
      <ul className="suspects">
        {step.before.map((suspect) => (
          <li key={faultId(suspect)}>
            {struck.has(faultId(suspect)) ? (
              <>
                <s>{say(faultPhrase(unit, suspect))}</s>
                <span className="unseen">, {say(phrase('case.struck-out'))}</span>
              </>
            ) : (
              say(faultPhrase(unit, suspect))
            )}
          </li>
        ))}
      </ul>
      {hint && !wasBest && betterTests.length > 0 && (
        <p className="aside">
          {say(phrase('case.better-test', { test: testPhrase(unit, betterTests[0]!.test) }))}
        </p>
      )}
      {step.struckOut.length === 0 && <p className="aside">{say(phrase('case.struck-nobody'))}</p>}
    </li>
  );
}

export function CaseResult({ run, state, unit, say, onAnother }: Props) {
  const score = scoreCase(run, state)!;
  const verdict = score.found ? (score.early ? 'case.found-early' : 'case.found') : 'case.not-found';
  return (
    <>
      <section className={`verdict ${score.found ? 'right' : 'wrong'}`} role="status">
        <strong>{say(phrase(score.found ? 'result.right' : 'result.wrong'))}</strong>
        <p>{say(phrase(verdict, { cause: faultPhrase(unit, run.cause) }))}</p>
        {score.contradicted.map((seen) => (
          <p key={testId(seen.test)}>
            {say(phrase('case.contradicted', { seen: observationPhrase(unit, seen) }))}
          </p>
        ))}
        <p>
          {say(
            phrase('case.effort', {
              spent: score.cost,
              tests: score.tests,
              average: makeDecimal(score.best.average, 1),
              worst: makeDecimal(score.best.worst, 0),
              here: score.best.here,
            }),
          )}
        </p>
      </section>
      <section>
        <h2>{say(phrase('case.your-way'))}</h2>
        <p>{say(phrase('case.suspects-first', { count: run.suspects.length }))}</p>
        <ol className="steps">
          {stepsOf(run, state).map((step) => (
            <Step
              key={testId(step.test)}
              step={step}
              hint={score.cost > score.best.here}
              unit={unit}
              say={say}
            />
          ))}
        </ol>
      </section>
      <details>
        <summary>{say(phrase('case.best-way'))}</summary>
        <ol className="steps">
          {bestWay(run).map((step) => (
            <Step key={testId(step.test)} step={step} hint={false} unit={unit} say={say} />
          ))}
        </ol>
      </details>
      <button type="button" className="button key" onClick={onAnother}>
        {say(phrase('case.another'))}
      </button>
    </>
  );
}
