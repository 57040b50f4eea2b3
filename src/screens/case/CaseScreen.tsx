/**
 * A case run: the work order, one test at a time, then the cause. Nothing is hinted before a cause is named;
 * afterwards the whole way is told beside the best one.
 */
import { useEffect, useMemo, useState } from 'react';
import { Link } from 'wouter';
import {
  CASE_START,
  type Case,
  type CaseMove,
  type CaseState,
  makeCase,
  moveCase,
} from '../../core/diagnosis/case.ts';
import { faultPhrase, observationPhrase, testPhrase } from '../../core/diagnosis/say.ts';
import {
  cautionsOfTests,
  costOf,
  TEST_KINDS,
  type Test,
  type TestKind,
  testId,
} from '../../core/diagnosis/test.ts';
import { faultId } from '../../core/faults/fault.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { seedOf } from '../../core/random.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { StoredCase } from '../../storage/rows.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { DrawingView } from '../../ui/drawings/DrawingView.tsx';
import { Sheet, titleBlockOf } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { CaseResult } from './CaseResult.tsx';

/** The state that the stored moves lead to; moves that no longer fit are left out. */
function replay(run: Case, stored: StoredCase): CaseState {
  let state = CASE_START;
  for (const id of stored.asked) {
    const test = run.table.tests.find((candidate) => testId(candidate) === id);
    if (test) state = moveCase(run, state, { kind: 'ask', test });
  }
  const cause = run.table.suspects.find((suspect) => faultId(suspect) === stored.named);
  return cause ? moveCase(run, state, { kind: 'name', cause }) : state;
}

const storedOf = (unit: Unit, run: Case, state: CaseState): StoredCase => ({
  deck: unit.deck.id,
  revision: unit.deck.revision,
  seed: run.seed,
  asked: state.asked.map(({ test }) => testId(test)),
  named: state.named && faultId(state.named),
});

interface MovesProps {
  readonly run: Case;
  readonly state: CaseState;
  readonly unit: Unit;
  readonly say: Say;
  readonly onMove: (move: CaseMove) => void;
}

/** What can hurt in the tests of a kind: told where they are chosen, before any of them is. */
function TestCautions({
  kind,
  run,
  unit,
  say,
}: Pick<MovesProps, 'run' | 'unit' | 'say'> & { kind: TestKind }) {
  const { hazards, texts } = cautionsOfTests(
    unit.deck,
    kind,
    run.table.tests.filter((test) => test.kind === kind),
  );
  if (hazards.length + texts.length === 0) return null;
  return (
    <div className="caution" role="note">
      <strong>{say(phrase('drill.caution'))}</strong>
      {hazards.map((hazard) => (
        <p key={hazard}>{say(phrase(`hazard-harm.${hazard}`))}</p>
      ))}
      {texts.map((text) => (
        <p key={text}>{text}</p>
      ))}
      <p className="aside">{say(phrase('drill.caution-defer'))}</p>
    </div>
  );
}

function Tests({ run, state, unit, say, onMove }: MovesProps) {
  const asked = new Set(state.asked.map(({ test }) => testId(test)));
  const byKind = (kind: TestKind) => run.table.tests.filter((test) => test.kind === kind);
  const key = (test: Test) => (
    <button
      key={testId(test)}
      type="button"
      className="choice plain-key"
      disabled={asked.has(testId(test))}
      onClick={() => onMove({ kind: 'ask', test })}
    >
      {say(testPhrase(unit, test))}
    </button>
  );
  return (
    <>
      {TEST_KINDS.filter((kind) => byKind(kind).length > 0).map((kind) => (
        <details key={kind} open={kind === 'road'}>
          <summary>
            {say(
              phrase('case.tests-of-kind', {
                kind: phrase(`test-kind.${kind}`),
                cost: costOf(byKind(kind)[0]!),
              }),
            )}
          </summary>
          <TestCautions kind={kind} run={run} unit={unit} say={say} />
          <div className="choices wide">{byKind(kind).map(key)}</div>
        </details>
      ))}
    </>
  );
}

function Causes({ run, unit, say, onMove }: Omit<MovesProps, 'state'>) {
  const [picked, setPicked] = useState('');
  const cause = run.table.suspects.find((suspect) => faultId(suspect) === picked);
  return (
    <form
      className="fields"
      onSubmit={(event) => {
        event.preventDefault();
        if (cause) onMove({ kind: 'name', cause });
      }}
    >
      <label className="field">
        <span>{say(phrase('case.cause-field'))}</span>
        <select value={picked} onChange={(event) => setPicked(event.target.value)}>
          <option value="">{say(phrase('case.no-cause'))}</option>
          {run.table.suspects.map((suspect) => (
            <option key={faultId(suspect)} value={faultId(suspect)}>
              {say(faultPhrase(unit, suspect))}
            </option>
          ))}
        </select>
      </label>
      <button type="submit" className="button key" aria-disabled={!cause}>
        {say(phrase('case.name-it'))}
      </button>
    </form>
  );
}

function CaseRun({ unit, say, stored }: { unit: Unit; say: Say; stored: StoredCase | undefined }) {
  const { store, newId } = useServices();
  const [seed, setSeed] = useState(() => stored?.seed ?? seedOf('case', newId()) >>> 1);
  const run = useMemo(() => makeCase(unit, seed), [unit, seed]);
  const [state, setState] = useState<CaseState>(() => (run && stored ? replay(run, stored) : CASE_START));
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  useEffect(() => {
    if (!run) return;
    void store
      .saveCase(storedOf(unit, run, state))
      .then((saved) => setTrouble(saved.ok ? null : saved.error));
  }, [store, unit, run, state]);
  if (!run) return <p className="note">{say(phrase('case.none'))}</p>;
  const onMove = (move: CaseMove) => setState((before) => moveCase(run, before, move));
  const another = () => {
    setState(CASE_START);
    setSeed(seedOf('case', newId()) >>> 1);
  };
  const spent = state.asked.reduce((sum, { test }) => sum + costOf(test), 0);
  return (
    <>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      <section className="frame">
        <h2>{say(phrase('case.work-order'))}</h2>
        <p className="prompt">{say(run.complaint)}</p>
        <p className="aside">{say(phrase('case.one-fault'))}</p>
      </section>
      {state.asked.length > 0 && (
        <section aria-live="polite">
          <h2>{say(phrase('case.found-so-far', { spent }))}</h2>
          <ol className="steps">
            {state.asked.map((seen) => (
              <li key={testId(seen.test)}>{say(observationPhrase(unit, seen))}</li>
            ))}
          </ol>
        </section>
      )}
      {state.named ? (
        <CaseResult run={run} state={state} unit={unit} say={say} onAnother={another} />
      ) : (
        <>
          <section>
            <h2>{say(phrase('case.ask-next'))}</h2>
            <Tests run={run} state={state} unit={unit} say={say} onMove={onMove} />
          </section>
          <section>
            <h2>{say(phrase('case.name-cause'))}</h2>
            <Causes run={run} unit={unit} say={say} onMove={onMove} />
          </section>
          <details>
            <summary>{say(phrase('case.chart'))}</summary>
            <div>
              <DrawingView drawing={{ kind: 'chart', showRatios: true }} unit={unit} say={say} />
              <DrawingView drawing={{ kind: 'train' }} unit={unit} say={say} />
            </div>
          </details>
        </>
      )}
    </>
  );
}

export function CaseScreen({ unit, say }: { unit: Unit; say: Say }) {
  const { store } = useServices();
  const loaded = useLoaded(() => store.storedCase(), 'case');
  const stored =
    loaded?.ok && loaded.value?.deck === unit.deck.id && loaded.value.revision === unit.deck.revision
      ? loaded.value
      : undefined;
  return (
    <Sheet
      top={
        <>
          <h1>{say(phrase('case.title'))}</h1>
          <Link href="/">{say(phrase('app.back'))}</Link>
        </>
      }
      titleBlock={titleBlockOf(unit, say)}
    >
      {loaded ? (
        <CaseRun unit={unit} say={say} stored={stored} />
      ) : (
        <p className="aside">{say(phrase('app.loading'))}</p>
      )}
      <p className="aside">{say(phrase('app.standing-line'))}</p>
    </Sheet>
  );
}
