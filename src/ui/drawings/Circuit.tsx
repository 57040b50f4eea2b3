/** One winding from supply to ground, the controller's switch above or below it, and what is wrong with the wire. */
import { describeCircuit } from '../../core/questions/describe/harness.ts';
import type { CircuitDrawing } from '../../core/questions/drawing.ts';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';
import { Stage } from './Stage.tsx';
import { wrapText } from './wrap.ts';

const WIDTH = 276;
const HEIGHT = 268;
const WIRE = 92;
/** Levels of the two things in the wire, and of the wire between them. */
const UPPER = 78;
const LOWER = 190;
const BETWEEN = (UPPER + LOWER) / 2;

function Winding({ y }: { y: number }) {
  return <rect x={WIRE - 12} y={y - 24} width="24" height="48" className="dr-outline dr-winding" />;
}

/** A switch that is closed, open, or drawn open with a question mark. */
function Driver({ y, state }: { y: number; state: CircuitDrawing['driver'] }) {
  return (
    <g>
      <rect x={WIRE - 34} y={y - 32} width="68" height="64" className="dr-outline dr-covered dr-blank" />
      <path d={`M${WIRE} ${y - 32}V${y - 14}M${WIRE} ${y + 14}V${y + 32}`} className="dr-coarse" />
      <path
        d={state === 'on' ? `M${WIRE} ${y - 14}V${y + 14}` : `M${WIRE} ${y + 14}L${WIRE - 16} ${y - 12}`}
        className="dr-shoulder"
      />
      <circle cx={WIRE} cy={y - 14} r="3" className="dr-solid" />
      <circle cx={WIRE} cy={y + 14} r="3" className="dr-solid" />
    </g>
  );
}

function Ground({ x, y }: { x: number; y: number }) {
  return <path d={`M${x} ${y}v8m-12 0h24m-20 5h16m-12 5h8`} className="dr-coarse" />;
}

function Fault({ circuit }: { circuit: CircuitDrawing['circuit'] }) {
  const branch = WIRE - 52;
  switch (circuit) {
    case 'open':
      return (
        <>
          <rect x={WIRE - 5} y={BETWEEN - 8} width="10" height="16" className="dr-gap" />
          <path d={`M${WIRE - 7} ${BETWEEN - 7}l14 14m0 -14l-14 14`} className="dr-shoulder" />
        </>
      );
    case 'short-to-ground':
      return (
        <>
          <path d={`M${WIRE} ${BETWEEN}H${branch}V${BETWEEN + 18}`} className="dr-shoulder" />
          <Ground x={branch} y={BETWEEN + 18} />
        </>
      );
    case 'short-to-supply':
      return <path d={`M${WIRE} ${BETWEEN}H${branch}V20`} className="dr-shoulder" />;
    default:
      return null;
  }
}

export function Circuit({ drawing, say }: { drawing: CircuitDrawing; say: Say }) {
  const { switched, solenoid, driver, circuit } = drawing;
  const title = say(phrase('drawing.circuit.title', { solenoid: thing('solenoid', solenoid) }));
  const [windingAt, driverAt] = switched === 'low' ? [UPPER, LOWER] : [LOWER, UPPER];
  const pin = driverAt === LOWER ? driverAt - 32 : driverAt + 32;
  const right = WIRE + 46;
  const texts: (readonly [number, string])[] = [
    [20, say(phrase('drawing.circuit.supply'))],
    [windingAt, say(phrase('drawing.circuit.winding', { solenoid: thing('solenoid', solenoid) }))],
    [pin + (driverAt === LOWER ? -8 : 8), say(phrase('drawing.circuit.pin'))],
    [driverAt, say(phrase('drawing.circuit.controller', { driver: driver ?? 'none' }))],
    [HEIGHT - 22, say(phrase('drawing.circuit.ground'))],
  ];
  return (
    <Stage
      className="dr-circuit"
      width={WIDTH}
      height={HEIGHT}
      title={title}
      scroll={say(phrase('drawing.scroll', { drawing: title }))}
      words={describeCircuit(drawing).map(say)}
    >
      <path d={`M30 20H${right - 8}`} className="dr-shoulder" />
      <path d={`M${WIRE} 20V${HEIGHT - 30}`} className="dr-coarse" />
      <Ground x={WIRE} y={HEIGHT - 30} />
      <Winding y={windingAt} />
      <Driver y={driverAt} state={driver} />
      <Fault circuit={circuit} />
      <circle cx={WIRE} cy={pin} r="5" className="dr-terminal" />
      {texts.map(([y, text]) => {
        const lines = wrapText(text, WIDTH - right, 3);
        return lines.map((line, index) => (
          <text
            key={`${y}${line}`}
            x={right}
            y={y + (index - (lines.length - 1) / 2) * 13}
            dominantBaseline="central"
          >
            {line}
          </text>
        ));
      })}
    </Stage>
  );
}
