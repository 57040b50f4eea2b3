/** Look a thing up in five seconds: every part of the deck, drawn or listed, and where each value comes from. */
import { type ReactNode, useDeferredValue, useMemo, useState } from 'react';
import { Link } from 'wouter';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import { makeDecimal } from '../../core/rational.ts';
import type { DeckCaution } from '../../core/unit/deck.ts';
import { type Found, findIn } from '../../core/unit/find.ts';
import { type Ref, rangeOf, type Unit } from '../../core/unit/unit.ts';
import { DrawingView } from '../../ui/drawings/DrawingView.tsx';
import { Sheet, titleBlockOf } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';
import { Contents, jumpTo, placeOf } from './Contents.tsx';
import { Elements, Interlocks, LeverPositions, Sensors, Solenoids } from './ControlSections.tsx';
import { FitsSection } from './FitsSection.tsx';
import { kindOf, NarrowedProvider, narrowedTo, partOf } from './found.ts';
import { LookFor } from './LookFor.tsx';
import { SequencesSection } from './SequencesSection.tsx';
import { Codes, ServiceSection } from './ServiceSections.tsx';
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

const told = (cautions: readonly DeckCaution[] = []) =>
  cautions.map((caution) => (
    <p key={caution.id} className="caution">
      {caution.text}
    </p>
  ));

function Cautions({ unit, say }: Props) {
  return (
    <>
      {told(unit.deck.cautions)}
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
  const { deck } = unit;
  const [text, setText] = useState('');
  const [range, setRange] = useState('');
  const [seat, setSeat] = useState('');
  const [stack, setStack] = useState(deck.stacks?.[0]?.id ?? '');
  const wanted = useDeferredValue(text);
  const found = useMemo(
    () => findIn(deck, wanted)?.filter(({ ref }) => partOf(ref) !== undefined) ?? null,
    [deck, wanted],
  );
  const narrowed = useMemo(() => narrowedTo(found), [found]);
  const { isSearching, shows } = narrowed;
  const given = { unit, say };
  const look = (changed: string) => {
    setText(changed);
    setSeat('');
  };
  const pick = ({ ref, id }: Found) => {
    const kind = kindOf(ref);
    if (kind === 'seat') setSeat(id);
    if (kind === 'stack') setStack(id);
    if (kind === 'plate') setStack(ref.slice('plate:'.length).split('/')[0]!);
    jumpTo(partOf(ref)!);
  };
  const litRows = isSearching
    ? [...deck.chart.ranges, ...(deck.chart.neutral ?? [])]
        .filter(({ id }) => shows(`range:${id}`) || shows(`neutral:${id}`))
        .map(({ id }) => id)
    : [range].filter(Boolean);
  // In the order of the page; what the deck does not have is left out.
  const parts: readonly (readonly [string, ReactNode])[] = [
    ['chart', <DrawingView key="chart" drawing={{ kind: 'chart', showRatios: true, litRows }} {...given} />],
    ['train', <TrainSection key="train" {...given} shown={range} onShow={setRange} />],
    ['elements', <Elements key="elements" {...given} />],
    ['solenoids', deck.solenoids && <Solenoids key="solenoids" {...given} />],
    ['interlocks', deck.interlocks && <Interlocks key="interlocks" {...given} />],
    [
      'shaft-line',
      deck.shaftLine && <ShaftLineSection key="shaft-line" {...given} shown={seat} onShow={setSeat} />,
    ],
    ['stacks', deck.stacks && <StackSection key="stacks" {...given} shown={stack} onShow={setStack} />],
    ['fits', deck.fits && <FitsSection key="fits" {...given} />],
    ['wires', deck.electrical && <WiresSection key="wires" {...given} />],
    ['sequences', deck.sequences && <SequencesSection key="sequences" {...given} />],
    ['lever', deck.lever && <LeverPositions key="lever" {...given} />],
    ['sensors', deck.sensors && <Sensors key="sensors" {...given} />],
    ['service', (deck.fluids ?? deck.torques ?? deck.weights) && <ServiceSection key="service" {...given} />],
    ['codes', deck.codes && <Codes key="codes" {...given} />],
    ['cautions', deck.cautions && <Cautions key="cautions" {...given} />],
    ['sources', deck.sources && <Sources key="sources" unit={unit} />],
  ];
  // A step has its cautions with it.
  const hanging = deck.cautions?.filter(({ attachedTo }) =>
    attachedTo.some((ref) => !ref.startsWith('step:') && shows(ref as Ref)),
  );
  const places = found && new Set(found.map(({ ref }) => partOf(ref)));
  const held = parts.filter(([part, content]) => content && (places?.has(part) ?? true));
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
      <LookFor text={text} onText={look} found={found} onPick={pick} say={say} deck={unit.deck.id} />
      {isSearching && told(hanging)}
      {!isSearching && <Contents parts={held.map(([part]) => part)} say={say} />}
      <NarrowedProvider value={narrowed}>
        {held.map(([part, content]) => (
          <section key={part} className="unit-part">
            <h2 id={placeOf(part)} tabIndex={-1}>
              {say(phrase(`unit.${part}`))}
            </h2>
            {content}
          </section>
        ))}
      </NarrowedProvider>
      <p>
        <Link href="/preview">{say(phrase('preview.link'))}</Link>
      </p>
    </Sheet>
  );
}
