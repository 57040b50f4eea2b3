/**
 * A new bearing, washer or seal. Which end the writer looks from is asked before anything else; then the two bodies
 * are tapped that it lies between.
 */
import { useMemo, useState } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import { ENDS, type End } from '../../core/unit/record.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { addSeat, drawnLine } from '../../core/workshop/line.ts';
import { unitToDraw } from '../../core/workshop/train.ts';
import { ShaftLine } from '../../ui/drawings/ShaftLine.tsx';
import '../../ui/drawings/drawings.css';
import '../../ui/drawings/parts.css';
import '../../ui/drawings/stage.css';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import type { Desk, SectionProps } from './desk.ts';

/** A unit of nothing but the line, with its names; made anew only when the line is another one. */
export function useLine({ settled }: Desk): { unit: Unit; say: Say } {
  const { sayFor } = useServices();
  const line = drawnLine(settled);
  const text = JSON.stringify(line);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text is all that the drawing rests on
  return useMemo(() => {
    const unit = unitToDraw(settled, line);
    return { unit, say: sayFor(unit) };
  }, [text]);
}

export function NewSeat({ desk }: SectionProps) {
  const { draft, say } = desk;
  const { unit, say: named } = useLine(desk);
  const [from, setFrom] = useState<End | null>(null);
  const [front, setFront] = useState<string | null>(null);
  const bodies = unit.deck.shaftLine ?? [];
  if (bodies.length < 2) return <p className="note">{say(phrase('workshop.line-first'))}</p>;
  const after = front === null ? -1 : bodies.findIndex(({ id }) => id === front);
  const pick = (id: string) => {
    if (from === null) return;
    if (after < 0) return setFront(id);
    const other = bodies.findIndex((body) => body.id === id);
    if (other === after) return setFront(null);
    const [first, second] = other > after ? [front!, id] : [id, front!];
    desk.edit(addSeat(draft, from, first, second));
    setFront(null);
  };
  return (
    <>
      <fieldset className="answer">
        <legend>{say(phrase('workshop.looking-from'))}</legend>
        <div className="choices">
          {ENDS.map((end) => (
            <label key={end} className="choice">
              <input type="radio" name="looking-from" checked={from === end} onChange={() => setFrom(end)} />
              <span>{say(phrase(`workshop.looking-from.${end}`))}</span>
            </label>
          ))}
        </div>
      </fieldset>
      {from && (
        <>
          <p role="status">
            {after < 0
              ? say(phrase('workshop.tap-first'))
              : say(phrase('workshop.tap-second', { body: bodies[after]!.name ?? bodies[after]!.id }))}
          </p>
          <div className="line-and-keys">
            <figure className="dr-figure">
              <ShaftLine
                drawing={{
                  kind: 'shaft-line',
                  places: bodies.map(({ id }) => id),
                  ...(front ? { lit: [front] } : {}),
                }}
                unit={unit}
                say={named}
                tapped={{ picked: front, right: null, onPick: pick }}
              />
            </figure>
            <div className="choices wide">
              {bodies.map((body, index) => (
                <button
                  key={body.id}
                  type="button"
                  className="choice plain-key"
                  aria-pressed={front === body.id}
                  onClick={() => pick(body.id)}
                >
                  {say(phrase('answer.spot', { number: String(index + 1), what: body.name ?? body.id }))}
                </button>
              ))}
            </div>
          </div>
        </>
      )}
    </>
  );
}
