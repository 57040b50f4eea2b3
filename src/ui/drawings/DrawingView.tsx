/** A question's drawing as a figure, with its title block at the foot. */
import { connectorOf } from '../../core/questions/describe/harness.ts';
import { lineShown, seatOf } from '../../core/questions/describe/seats.ts';
import { stackOf } from '../../core/questions/describe/stack.ts';
import { stepsShown } from '../../core/questions/describe/steps.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Drawing } from '../../core/questions/question.ts';
import type { Provenance } from '../../core/unit/deck.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { ApplyChart } from './ApplyChart.tsx';
import { Circuit } from './Circuit.tsx';
import { Connector } from './Connector.tsx';
import { DepthGauge } from './DepthGauge.tsx';
import { Dial } from './Dial.tsx';
import './drawings.css';
import './gauges.css';
import { LimitsWindow } from './LimitsWindow.tsx';
import { Micrometer } from './Micrometer.tsx';
import './harness.css';
import './parts.css';
import './reckoning.css';
import { Seat } from './Seat.tsx';
import { ShaftLine } from './ShaftLine.tsx';
import { Speeds } from './Speeds.tsx';
import { Stack } from './Stack.tsx';
import type { Tapped } from './Stage.tsx';
import { Steps } from './Steps.tsx';
import './stage.css';
import { TableDrawing } from './TableDrawing.tsx';
import { TitleBlock } from './TitleBlock.tsx';
import { TrainDiagram } from './TrainDiagram.tsx';
import { ValveBody } from './ValveBody.tsx';

export type { Tapped } from './Stage.tsx';

interface Props {
  readonly drawing: Drawing;
  readonly unit: Unit;
  readonly say: Say;
  /** Only where a place on the drawing is asked for. */
  readonly tapped?: Tapped | undefined;
}

/** The deck values that the drawing shows; null when it rests on none. */
function shownValues({ deck }: Unit, drawing: Drawing): readonly Provenance[] | null {
  switch (drawing.kind) {
    case 'train':
      return [...deck.train.gearsets, ...deck.train.elements];
    case 'chart': {
      const rows = [...deck.chart.ranges, ...(deck.chart.neutral ?? [])];
      return drawing.rows ? rows.filter((row) => drawing.rows?.includes(row.id)) : rows;
    }
    case 'stack': {
      const stack = stackOf(deck, drawing.stack);
      return [stack, ...stack.items];
    }
    case 'seat':
      return [seatOf(deck, drawing.seat)];
    case 'shaft-line':
      return lineShown(deck, drawing).map((entry) => (entry.is === 'body' ? entry.body : entry.seat));
    case 'connector': {
      const connector = connectorOf(deck, drawing.connector);
      return [connector, ...connector.pins];
    }
    case 'circuit':
      return (deck.electrical?.windings ?? []).filter(({ solenoid }) => solenoid === drawing.solenoid);
    case 'valve-body':
      return [...(deck.valveBody ? [deck.valveBody] : []), ...(deck.solenoids ?? [])];
    case 'speeds':
      return deck.train.gearsets;
    case 'steps':
      return stepsShown(deck, drawing).map(({ step }) => step);
    case 'table':
    case 'dial':
    case 'micrometer':
    case 'depth-gauge':
    case 'window':
      return null;
  }
}

function Inner({ drawing, unit, say, tapped }: Props) {
  switch (drawing.kind) {
    case 'chart':
      return <ApplyChart drawing={drawing} unit={unit} say={say} />;
    case 'train':
      return <TrainDiagram drawing={drawing} unit={unit} say={say} />;
    case 'table':
      return <TableDrawing drawing={drawing} say={say} />;
    case 'dial':
      return <Dial drawing={drawing} say={say} />;
    case 'micrometer':
      return <Micrometer drawing={drawing} say={say} />;
    case 'depth-gauge':
      return <DepthGauge drawing={drawing} say={say} />;
    case 'stack':
      return <Stack drawing={drawing} unit={unit} say={say} tapped={tapped} />;
    case 'seat':
      return <Seat drawing={drawing} unit={unit} say={say} tapped={tapped} />;
    case 'shaft-line':
      return <ShaftLine drawing={drawing} unit={unit} say={say} tapped={tapped} />;
    case 'connector':
      return <Connector drawing={drawing} unit={unit} say={say} tapped={tapped} />;
    case 'circuit':
      return <Circuit drawing={drawing} say={say} />;
    case 'valve-body':
      return <ValveBody drawing={drawing} unit={unit} say={say} tapped={tapped} />;
    case 'window':
      return <LimitsWindow drawing={drawing} say={say} />;
    case 'speeds':
      return <Speeds drawing={drawing} unit={unit} say={say} />;
    case 'steps':
      return <Steps drawing={drawing} unit={unit} say={say} />;
  }
}

export function DrawingView({ drawing, unit, say, tapped }: Props) {
  return (
    <figure className={`dr-figure dr-figure-${drawing.kind}`}>
      <Inner drawing={drawing} unit={unit} say={say} tapped={tapped} />
      <TitleBlock
        title={say(phrase(`drawing.${drawing.kind}`))}
        unit={unit}
        say={say}
        from={shownValues(unit, drawing)}
      />
    </figure>
  );
}
