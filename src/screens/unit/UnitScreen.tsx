/** Look a thing up in five seconds: chart, gear train, parts, and where each value comes from. */
import { useState } from 'react';
import { Link } from 'wouter';
import { CASE } from '../../core/gears/train.ts';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import { makeDecimal } from '../../core/rational.ts';
import type { Provenance } from '../../core/unit/deck.ts';
import { rangeOf, type Unit } from '../../core/unit/unit.ts';
import { DrawingView } from '../../ui/drawings/DrawingView.tsx';
import { Sheet, titleBlockOf } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';

function ProvenanceNote({ of, unit, say }: { of: Provenance; unit: Unit; say: Say }) {
  const source = unit.deck.sources?.find((candidate) => candidate.id === of.source);
  const parts = [
    of.unsure && say(phrase('unit.unsure')),
    of.verified && say(phrase('unit.verified', { by: of.verified.by, on: of.verified.on })),
    source && say(phrase('unit.source', { title: source.title })),
    of.note,
  ].filter(Boolean);
  return parts.length > 0 ? <span className="provenance">{parts.join('; ')}</span> : null;
}

function Elements({ unit, say }: { unit: Unit; say: Say }) {
  return (
    <table className="listing">
      <tbody>
        {unit.deck.train.elements.map((element) => {
          const [first, second] = element.between;
          const key =
            element.kind === 'one-way' ? 'unit.one-way' : second === CASE ? 'unit.holds' : 'unit.joins';
          return (
            <tr key={element.id}>
              <th scope="row">{element.id}</th>
              <td>
                {element.name && <strong>{element.name} </strong>}
                {say(phrase(key, { first: thing('shaft', first), second: thing('shaft', second) }))}
                <ProvenanceNote of={element} unit={unit} say={say} />
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function Solenoids({ unit, say }: { unit: Unit; say: Say }) {
  const feed = (id: string) =>
    unit.deck.train.elements.some((element) => element.id === id)
      ? thing('element', id)
      : phrase(`feed.${id}`);
  return (
    <table className="listing">
      <tbody>
        {unit.deck.solenoids?.map((solenoid) => (
          <tr key={solenoid.id}>
            <th scope="row">{solenoid.id}</th>
            <td>
              {solenoid.name && <strong>{solenoid.name} </strong>}
              {say(phrase('unit.feeds', { what: solenoid.feeds.map(feed) }))},{' '}
              {say(phrase(`unit.unplugged.${solenoid.whenUnplugged}`))}
              <ProvenanceNote of={solenoid} unit={unit} say={say} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The chart and the train, with one range put into the train on tap. */
function ChartAndTrain({ unit, say }: { unit: Unit; say: Say }) {
  const [shown, setShown] = useState('');
  const range = rangeOf(unit, shown);
  return (
    <>
      <section>
        <h2>{say(phrase('unit.chart'))}</h2>
        <DrawingView
          drawing={{ kind: 'chart', showRatios: true, ...(range ? { litRows: [range.id] } : {}) }}
          unit={unit}
          say={say}
        />
      </section>
      <section>
        <h2>{say(phrase('unit.train'))}</h2>
        <label className="field">
          <span>{say(phrase('unit.show-range'))}</span>
          <select value={shown} onChange={(event) => setShown(event.target.value)}>
            <option value="">{say(phrase('unit.no-range'))}</option>
            {unit.ranges.map(({ id, ratio, decimals }) => (
              <option key={id} value={id}>
                {say(
                  phrase('unit.ratio', { range: thing('range', id), ratio: makeDecimal(ratio, decimals) }),
                )}
              </option>
            ))}
          </select>
        </label>
        <DrawingView
          drawing={{ kind: 'train', showTeeth: true, ...(range ? { applied: range.applied } : {}) }}
          unit={unit}
          say={say}
        />
      </section>
    </>
  );
}

export function UnitScreen({ unit, say }: { unit: Unit; say: Say }) {
  const { deck } = unit;
  return (
    <Sheet
      top={
        <>
          <h1>{deck.unit}</h1>
          <Link href="/">{say(phrase('app.back'))}</Link>
        </>
      }
      titleBlock={titleBlockOf(unit, say)}
    >
      <ChartAndTrain unit={unit} say={say} />
      <section>
        <h2>{say(phrase('unit.elements'))}</h2>
        <Elements unit={unit} say={say} />
      </section>
      {deck.solenoids && (
        <section>
          <h2>{say(phrase('unit.solenoids'))}</h2>
          <Solenoids unit={unit} say={say} />
        </section>
      )}
      {deck.lever && (
        <section>
          <h2>{say(phrase('unit.lever'))}</h2>
          <table className="listing">
            <tbody>
              {deck.lever.positions.map((position) => (
                <tr key={position.id}>
                  <th scope="row">{position.name ?? position.id}</th>
                  <td>
                    {say(phrase('unit.lever-rows', { rows: position.rows.map((id) => thing('range', id)) }))}
                    <ProvenanceNote of={position} unit={unit} say={say} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      {deck.sensors && (
        <section>
          <h2>{say(phrase('unit.sensors'))}</h2>
          <table className="listing">
            <tbody>
              {deck.sensors.map((sensor) => (
                <tr key={sensor.id}>
                  <th scope="row">{sensor.name ?? sensor.id}</th>
                  <td>
                    {say(phrase('unit.reads', { shaft: thing('shaft', sensor.reads), teeth: sensor.teeth }))}
                    <ProvenanceNote of={sensor} unit={unit} say={say} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      {deck.cautions && (
        <section>
          <h2>{say(phrase('unit.cautions'))}</h2>
          {deck.cautions.map((caution) => (
            <p key={caution.id} className="caution">
              {caution.text}
            </p>
          ))}
          <p className="aside">{say(phrase('app.standing-line'))}</p>
        </section>
      )}
      {deck.sources && (
        <section>
          <h2>{say(phrase('unit.sources'))}</h2>
          <ul className="steps">
            {deck.sources.map((source) => (
              <li key={source.id}>{[source.title, source.by, source.on].filter(Boolean).join(', ')}</li>
            ))}
          </ul>
        </section>
      )}
      <p>
        <Link href="/preview">{say(phrase('preview.link'))}</Link>
      </p>
    </Sheet>
  );
}
