/** Look a thing up in five seconds: every part of the deck, drawn or listed, and where each value comes from. */
import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import { makeDecimal } from '../../core/rational.ts';
import { rangeOf, type Unit } from '../../core/unit/unit.ts';
import { DrawingView } from '../../ui/drawings/DrawingView.tsx';
import { Sheet, titleBlockOf } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';
import { Contents, placeOf } from './Contents.tsx';
import { Elements, LeverPositions, Sensors, Solenoids } from './ControlSections.tsx';
import { FitsSection } from './FitsSection.tsx';
import { SequencesSection } from './SequencesSection.tsx';
import { ShaftLineSection } from './ShaftLineSection.tsx';
import { StackSection } from './StackSection.tsx';
import { WiresSection } from './WiresSection.tsx';

interface Props {
  readonly unit: Unit;
  readonly say: Say;
}

/** The train, and the speeds of one range put into it. */
function TrainSection({ unit, say, shown, onShow }: Props & { shown: string; onShow: (id: string) => void }) {
  const range = rangeOf(unit, shown);
  return (
    <>
      <label className="field">
        <span>{say(phrase('unit.show-range'))}</span>
        <select value={shown} onChange={(event) => onShow(event.target.value)}>
          <option value="">{say(phrase('unit.no-range'))}</option>
          {unit.ranges.map(({ id, ratio, decimals }) => (
            <option key={id} value={id}>
              {say(phrase('unit.ratio', { range: thing('range', id), ratio: makeDecimal(ratio, decimals) }))}
            </option>
          ))}
        </select>
      </label>
      <DrawingView
        drawing={{ kind: 'train', showTeeth: true, ...(range ? { applied: range.applied } : {}) }}
        unit={unit}
        say={say}
      />
      {range && <DrawingView drawing={{ kind: 'speeds', range: range.id }} unit={unit} say={say} />}
    </>
  );
}

function Cautions({ unit, say }: Props) {
  return (
    <>
      {unit.deck.cautions?.map((caution) => (
        <p key={caution.id} className="caution">
          {caution.text}
        </p>
      ))}
      <p className="aside">{say(phrase('app.standing-line'))}</p>
    </>
  );
}

function Sources({ unit }: { unit: Unit }) {
  return (
    <ul className="steps">
      {unit.deck.sources?.map((source) => (
        <li key={source.id}>{[source.title, source.by, source.on].filter(Boolean).join(', ')}</li>
      ))}
    </ul>
  );
}

export function UnitScreen({ unit, say }: Props) {
  const [shown, setShown] = useState('');
  const { deck } = unit;
  const range = rangeOf(unit, shown);
  const given = { unit, say };
  // In the order of the page; what the deck does not have is left out.
  const parts: readonly (readonly [string, ReactNode])[] = [
    [
      'chart',
      <DrawingView
        key="chart"
        drawing={{ kind: 'chart', showRatios: true, ...(range ? { litRows: [range.id] } : {}) }}
        {...given}
      />,
    ],
    ['train', <TrainSection key="train" {...given} shown={shown} onShow={setShown} />],
    ['elements', <Elements key="elements" {...given} />],
    ['solenoids', deck.solenoids && <Solenoids key="solenoids" {...given} />],
    ['shaft-line', deck.shaftLine && <ShaftLineSection key="shaft-line" {...given} />],
    ['stacks', deck.stacks && <StackSection key="stacks" {...given} />],
    ['fits', deck.fits && <FitsSection key="fits" {...given} />],
    ['wires', deck.electrical && <WiresSection key="wires" {...given} />],
    ['sequences', deck.sequences && <SequencesSection key="sequences" {...given} />],
    ['lever', deck.lever && <LeverPositions key="lever" {...given} />],
    ['sensors', deck.sensors && <Sensors key="sensors" {...given} />],
    ['cautions', deck.cautions && <Cautions key="cautions" {...given} />],
    ['sources', deck.sources && <Sources key="sources" unit={unit} />],
  ];
  const held = parts.filter(([, content]) => content);
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
      <Contents parts={held.map(([part]) => part)} say={say} />
      {held.map(([part, content]) => (
        <section key={part} className="unit-part">
          <h2 id={placeOf(part)} tabIndex={-1}>
            {say(phrase(`unit.${part}`))}
          </h2>
          {content}
        </section>
      ))}
      <p>
        <Link href="/preview">{say(phrase('preview.link'))}</Link>
      </p>
    </Sheet>
  );
}
