/** The facts of a unit on paper, for the bench: no questions. Cautions first, then only the parts that were chosen. */
import type { ReactNode } from 'react';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import { ENDS } from '../../core/unit/record.ts';
import { type DeckSeat, inOrder } from '../../core/unit/seats.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { DrawingView } from '../../ui/drawings/DrawingView.tsx';
import type { Say } from '../../words/words.ts';
import { Elements, LeverPositions, Sensors, Solenoids } from '../unit/ControlSections.tsx';
import { FitsSection } from '../unit/FitsSection.tsx';
import { ProvenanceNote } from '../unit/ProvenanceNote.tsx';
import { Step } from '../unit/SequencesSection.tsx';
import { sideText } from '../unit/ShaftLineSection.tsx';
import { Clearance } from '../unit/StackSection.tsx';
import { WiresSection } from '../unit/WiresSection.tsx';
import { Paper, type PaperSize } from './Paper.tsx';

export const BENCH_PARTS = [
  'chart',
  'train',
  'elements',
  'solenoids',
  'shaft-line',
  'stacks',
  'fits',
  'torques',
  'sequences',
  'wires',
  'lever',
  'sensors',
] as const;
export type BenchPart = (typeof BENCH_PARTS)[number];

interface Given {
  readonly unit: Unit;
  readonly say: Say;
}

/** Parts that this deck has something for. */
export function partsOf({ deck }: Unit): BenchPart[] {
  const holds: Readonly<Record<BenchPart, boolean>> = {
    chart: true,
    train: true,
    elements: true,
    solenoids: !!deck.solenoids,
    'shaft-line': !!deck.shaftLine,
    stacks: !!deck.stacks,
    fits: !!deck.fits,
    torques: !!deck.torques,
    sequences: !!deck.sequences,
    wires: !!deck.electrical,
    lever: !!deck.lever,
    sensors: !!deck.sensors,
  };
  return BENCH_PARTS.filter((part) => holds[part]);
}

function SeatOnPaper({ seat, unit, say }: Given & { seat: DeckSeat }) {
  const { viewedFrom } = seat;
  return (
    <section className="paper-card">
      <h4>{say(thing('seat', seat.id))}</h4>
      <DrawingView
        drawing={{
          kind: 'seat',
          seat: seat.id,
          seenFrom: viewedFrom,
          front: viewedFrom === 'front' ? 'left' : 'right',
        }}
        unit={unit}
        say={say}
      />
      <ul className="steps">
        {ENDS.map((end) => (
          <li key={end}>{sideText(seat, end, { unit, say })}</li>
        ))}
        <li>{say(phrase('unit.noted-from', { end: viewedFrom }))}</li>
        {seat.turned && (
          <li>
            {say(
              phrase('unit.wrong-way', {
                goes: seat.turned.goesIn ? 'yes' : 'no',
                effect: seat.turned.effect,
              }),
            )}
          </li>
        )}
      </ul>
      <ProvenanceNote of={seat} unit={unit} say={say} />
    </section>
  );
}

function ShaftLineOnPaper({ unit, say }: Given) {
  return (
    <>
      <DrawingView drawing={{ kind: 'shaft-line' }} unit={unit} say={say} />
      <div className="paper-cards">
        {inOrder(unit.deck.seats ?? []).map((seat) => (
          <SeatOnPaper key={seat.id} seat={seat} unit={unit} say={say} />
        ))}
      </div>
    </>
  );
}

function StacksOnPaper({ unit, say }: Given) {
  return (
    <div className="paper-cards">
      {unit.deck.stacks?.map((stack) => (
        <section key={stack.id} className="paper-card">
          <h4>{say(thing('stack', stack.id))}</h4>
          <DrawingView
            drawing={{ kind: 'stack', stack: stack.id, showThickness: true }}
            unit={unit}
            say={say}
          />
          <Clearance stack={stack} say={say} />
          <ProvenanceNote of={stack} unit={unit} say={say} />
        </section>
      ))}
    </div>
  );
}

function SequencesOnPaper({ unit, say }: Given) {
  return (
    <>
      <p>{say(phrase('unit.sequences-note'))}</p>
      {unit.deck.sequences?.map((sequence) => (
        <section key={sequence.id}>
          <h4>{say(thing('sequence', sequence.id))}</h4>
          <ol className="steps">
            {sequence.steps.map((step) => (
              <Step key={step.id} step={step} sequence={sequence} unit={unit} say={say} />
            ))}
          </ol>
          <ProvenanceNote of={sequence} unit={unit} say={say} />
        </section>
      ))}
    </>
  );
}

function Torques({ unit, say }: Given) {
  return (
    <table className="listing">
      <tbody>
        {unit.deck.torques?.map((record) => (
          <tr key={record.id}>
            <th scope="row">{say(thing('torque', record.id))}</th>
            <td>
              {say(phrase('text', { text: `${record.torque.value} ${record.torque.unit}` }))}
              {record.count !== undefined && `, × ${record.count}`}
              <ProvenanceNote of={record} unit={unit} say={say} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function contentOf(part: BenchPart, given: Given): ReactNode {
  switch (part) {
    case 'chart':
      return <DrawingView drawing={{ kind: 'chart', showRatios: true }} {...given} />;
    case 'train':
      return <DrawingView drawing={{ kind: 'train', showTeeth: true }} {...given} />;
    case 'elements':
      return <Elements {...given} />;
    case 'solenoids':
      return <Solenoids {...given} />;
    case 'shaft-line':
      return <ShaftLineOnPaper {...given} />;
    case 'stacks':
      return <StacksOnPaper {...given} />;
    case 'fits':
      return <FitsSection {...given} />;
    case 'torques':
      return <Torques {...given} />;
    case 'sequences':
      return <SequencesOnPaper {...given} />;
    case 'wires':
      return <WiresSection {...given} />;
    case 'lever':
      return <LeverPositions {...given} />;
    case 'sensors':
      return <Sensors {...given} />;
  }
}

interface Props extends Given {
  readonly parts: readonly BenchPart[];
  readonly size: PaperSize;
}

export function BenchSheet({ unit, say, parts, size }: Props) {
  const { deck } = unit;
  return (
    <Paper title={say(phrase('print.bench'))} size={size} unit={unit} say={say} kind="bench">
      {deck.cautions && (
        <section>
          <h3>{say(phrase('unit.cautions'))}</h3>
          {deck.cautions.map(({ id, text }) => (
            <p key={id} className="caution">
              {text}
            </p>
          ))}
          <p>{say(phrase('drill.caution-defer'))}</p>
        </section>
      )}
      {parts.map((part) => (
        <section key={part} className="paper-part">
          <h3>{say(phrase(part === 'torques' ? 'print.torques' : `unit.${part}`))}</h3>
          {contentOf(part, { unit, say })}
        </section>
      ))}
      <section>
        <h3>{say(phrase('unit.sources'))}</h3>
        <ul className="steps">
          {(deck.sources ?? []).map((source) => (
            <li key={source.id}>{[source.title, source.by, source.on].filter(Boolean).join(', ')}</li>
          ))}
          {!deck.sources && <li>{say(phrase('drawing.no-source'))}</li>}
        </ul>
      </section>
    </Paper>
  );
}
