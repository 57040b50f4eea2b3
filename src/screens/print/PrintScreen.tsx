/** Paper from the deck in use: the bench sheet, or work sheets with their keys, a seed for each person. */
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { areaOf } from '../../core/assign/assignment.ts';
import { factsOf } from '../../core/questions/facts.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { questionOf } from '../../core/questions/reopen.ts';
import { seedOf } from '../../core/random.ts';
import { AREAS, type Area } from '../../core/self-check/areas.ts';
import { drawFacts, makeSheet } from '../../core/sheet/sheet.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { widthClass } from '../../ui/answers/Choices.tsx';
import { Sheet } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';
import { BENCH_PARTS, type BenchPart, BenchSheet, partsOf } from './BenchSheet.tsx';
import { type PaperSize, PrintBar } from './Paper.tsx';
import { KeySheet, WorkSheet } from './WorkSheet.tsx';

interface Props {
  readonly unit: Unit;
  readonly say: Say;
}

interface WorkFields {
  /** A name a line; empty lines make sheets with room for a name. */
  readonly names: string;
  readonly count: string;
  readonly seed: string;
  readonly area: Area | '';
}

/** What a bench sheet has when nothing is chosen: what is looked up with a part in the hand. */
const USUAL_PARTS: readonly BenchPart[] = ['chart', 'train', 'solenoids', 'shaft-line', 'stacks', 'fits'];

/** More than this is a misprint. */
const [MOST_PEOPLE, MOST_QUESTIONS] = [40, 40];

const whole = (text: string, most: number) => Math.min(most, Math.max(1, Math.trunc(Number(text)) || 1));

/** One sheet a name: the same facts, each person's own questions. */
function sheetsOf(unit: Unit, { names, count, seed, area }: WorkFields) {
  const facts = factsOf(unit).filter((fact) => area === '' || areaOf(fact) === area);
  const drawn = drawFacts(facts, whole(count, MOST_QUESTIONS), seedOf('work-sheet', seed));
  const people = names.split('\n').map((name) => name.trim());
  return people.slice(0, MOST_PEOPLE).map((name, place) => ({
    name,
    number: `${seed}-${place + 1}`,
    questions: makeSheet(unit, drawn, seedOf('work-sheet', seed, place + 1)).flatMap(
      (item) => questionOf(unit, item) ?? [],
    ),
  }));
}

function WorkPapers({ unit, say, size, fields }: Props & { size: PaperSize; fields: WorkFields }) {
  const sheets = useMemo(() => sheetsOf(unit, fields), [unit, fields]);
  const title = say(phrase('print.work'));
  const given = (sheet: (typeof sheets)[number]) => ({
    questions: sheet.questions,
    title,
    name: sheet.name,
    sheet: sheet.number,
    size,
    unit,
    say,
  });
  return (
    <>
      {sheets.map((sheet) => (
        <WorkSheet key={sheet.number} {...given(sheet)} />
      ))}
      {sheets.map((sheet) => (
        <KeySheet key={sheet.number} {...given(sheet)} />
      ))}
    </>
  );
}

export function PrintScreen({ unit, say }: Props) {
  const held = useMemo(() => partsOf(unit), [unit]);
  const nameOf = (part: BenchPart) => say(phrase(part === 'torques' ? 'print.torques' : `unit.${part}`));
  const areas = useMemo(() => new Set(factsOf(unit).map(areaOf)), [unit]);
  const [kind, setKind] = useState<'bench' | 'work'>('bench');
  const [size, setSize] = useState<PaperSize>('a4');
  const [parts, setParts] = useState<readonly BenchPart[]>(USUAL_PARTS.filter((part) => held.includes(part)));
  const [fields, setFields] = useState<WorkFields>({ names: '', count: '10', seed: '1', area: '' });
  const change = (changed: Partial<WorkFields>) => setFields({ ...fields, ...changed });
  const field = (key: 'count' | 'seed') => (
    <label className="field">
      <span>{say(phrase(`print.${key}`))}</span>
      <input
        type="text"
        inputMode="numeric"
        value={fields[key]}
        onChange={(event) => change({ [key]: event.target.value })}
      />
    </label>
  );
  return (
    <Sheet
      className="printing"
      top={
        <>
          <h1>{say(phrase('print.title'))}</h1>
          <Link href="/assign">{say(phrase('app.back'))}</Link>
        </>
      }
    >
      <section className="frame">
        <fieldset className="answer">
          <legend>{say(phrase('print.what'))}</legend>
          <div className="choices">
            {(['bench', 'work'] as const).map((one) => (
              <label key={one} className="choice">
                <input type="radio" name="kind" checked={kind === one} onChange={() => setKind(one)} />
                <span>{say(phrase(`print.${one}`))}</span>
              </label>
            ))}
          </div>
        </fieldset>
        {kind === 'bench' ? (
          <fieldset className="answer">
            <legend>{say(phrase('print.parts'))}</legend>
            <div className={`choices ${widthClass(held.map(nameOf))}`}>
              {held.map((part) => (
                <label key={part} className="choice">
                  <input
                    type="checkbox"
                    checked={parts.includes(part)}
                    onChange={({ target }) =>
                      setParts(
                        BENCH_PARTS.filter((one) => (one === part ? target.checked : parts.includes(one))),
                      )
                    }
                  />
                  <span>{nameOf(part)}</span>
                </label>
              ))}
            </div>
          </fieldset>
        ) : (
          <>
            <p className="aside">{say(phrase('print.work-note'))}</p>
            <label className="field">
              <span>{say(phrase('print.names'))}</span>
              <textarea
                rows={3}
                value={fields.names}
                onChange={(event) => change({ names: event.target.value })}
              />
            </label>
            <div className="fields">
              {field('count')}
              {field('seed')}
              <label className="field">
                <span>{say(phrase('print.area'))}</span>
                <select
                  value={fields.area}
                  onChange={(event) => change({ area: event.target.value as WorkFields['area'] })}
                >
                  <option value="">{say(phrase('scope.deck'))}</option>
                  {AREAS.filter((area) => areas.has(area)).map((area) => (
                    <option key={area} value={area}>
                      {say(phrase(`area.${area}`))}
                    </option>
                  ))}
                </select>
              </label>
            </div>
          </>
        )}
        <PrintBar size={size} onSize={setSize} say={say} />
      </section>
      {kind === 'bench' ? (
        <BenchSheet unit={unit} say={say} parts={parts} size={size} />
      ) : (
        <WorkPapers unit={unit} say={say} size={size} fields={fields} />
      )}
    </Sheet>
  );
}
