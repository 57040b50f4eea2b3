/** A bearing, washer or seal in its pocket, and the face of it that is seen from one end. */
import {
  describeSeat,
  nameTouched,
  type ShownSeat,
  seatOf,
  seatShown,
} from '../../core/questions/describe/seats.ts';
import type { SeatDrawing } from '../../core/questions/drawing.ts';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import { ENDS, type End } from '../../core/unit/record.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { around } from './dial-layout.ts';
import { useHatching } from './hatching.tsx';
import { Stage, type Tapped } from './Stage.tsx';
import { isToScale, layoutSeat, patch, pathOf, type SeatLayout } from './seat-layout.ts';
import { piecesOf, sense } from './seat-shapes.ts';
import { wrapText } from './wrap.ts';

function Block({ end, layout }: { end: End; layout: SeatLayout }) {
  const { rising, falling } = useHatching();
  const path = pathOf(layout.blocks[end], layout.place);
  return <path d={path} fill={end === 'front' ? rising : falling} className="dr-outline" />;
}

function Part({ shown, layout }: { shown: ShownSeat; layout: SeatLayout }) {
  const { rising } = useHatching();
  const { part, place } = layout;
  const { from, to } = part;
  const className = shown.isLit ? 'dr-part dr-lit' : 'dr-part';
  if (shown.isCovered) {
    const middle = place({ a: 0, r: (from.r + to.r) / 2 });
    return (
      <g className={className}>
        <path
          d={pathOf(patch(from.a, from.r, to.a, to.r), place)}
          className="dr-outline dr-blank dr-covered"
        />
        <text x={middle.x} y={middle.y} textAnchor="middle" dominantBaseline="central" className="dr-strong">
          ?
        </text>
      </g>
    );
  }
  return (
    <g className={className}>
      {piecesOf(shown, part).map(({ outline, look }, index) => (
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: pieces have no other identity and never move
          key={index}
          d={pathOf(outline, place)}
          className={look === 'solid' ? 'dr-metal' : 'dr-edge'}
          fill={look === 'lined' ? rising : look === 'blank' ? 'none' : undefined}
        />
      ))}
    </g>
  );
}

/** An eye that looks along the axis. */
function Eye({ end, layout }: { end: End; layout: SeatLayout }) {
  const { x, y } = layout.eye[end];
  return (
    <g className="dr-eye">
      <path d={`M${x - 9} ${y}q9 -9 18 0q-9 9 -18 0z`} className="dr-blank" />
      <circle cx={x} cy={y} r="3" className="dr-solid" />
    </g>
  );
}

function Pressure({ end, layout, text }: { end: End; layout: SeatLayout; text: string }) {
  const { part, place } = layout;
  const r = part.from.r - 20;
  const s = sense(end);
  const [tail, head] = [place({ a: s * (part.to.a + 50), r }), place({ a: s * (part.to.a + 10), r })];
  const [up, down] = [
    place({ a: s * (part.to.a + 20), r: r + 5 }),
    place({ a: s * (part.to.a + 20), r: r - 5 }),
  ];
  const label = place({ a: s * (part.to.a + 34), r: r - 14 });
  return (
    <g>
      <path d={`M${tail.x} ${tail.y}L${head.x} ${head.y}`} className="dr-coarse" />
      <path d={`M${head.x} ${head.y}L${up.x} ${up.y}L${down.x} ${down.y}Z`} className="dr-solid" />
      <text
        x={layout.isLevel ? label.x : tail.x - 8}
        y={label.y}
        textAnchor={layout.isLevel ? 'middle' : 'end'}
        dominantBaseline="central"
        className="dr-soft dr-halo"
      >
        {text}
      </text>
    </g>
  );
}

const FACE = { size: 168, outer: 76 } as const;
const NEEDLES = 24;

/** The face as it lies before the eye: needles, closed race, lip or plain. */
function FaceSeen({ shown, end }: { shown: ShownSeat; end: End }) {
  const { rising } = useHatching();
  const middle = { x: FACE.size / 2, y: FACE.size / 2 };
  const { size, kind } = shown.seat;
  const ratio = size ? Number(size.inner.value) / Number(size.outer.value) : 0.64;
  const inner = FACE.outer * ratio;
  const side = shown.sides[end];
  const hasRace = shown.sides.front.isRace || shown.sides.rear.isRace;
  const isBare = kind === 'thrust-bearing' && hasRace && !side.isRace;
  const band = FACE.outer - inner;
  const circle = (r: number, className: string) => (
    <circle cx={middle.x} cy={middle.y} r={r} className={className} />
  );
  const turns = Array.from({ length: NEEDLES }, (_, needle) => (needle * 360) / NEEDLES);
  return (
    <>
      {circle(FACE.outer, 'dr-outline')}
      {circle(inner, 'dr-outline')}
      {!isBare && (
        <path
          d={`M${middle.x - FACE.outer} ${middle.y}a${FACE.outer} ${FACE.outer} 0 1 0 ${2 * FACE.outer} 0a${FACE.outer} ${FACE.outer} 0 1 0 ${-2 * FACE.outer} 0ZM${middle.x - inner} ${middle.y}a${inner} ${inner} 0 1 1 ${2 * inner} 0a${inner} ${inner} 0 1 1 ${-2 * inner} 0Z`}
          fillRule="evenodd"
          fill={kind === 'thrust-bearing' ? rising : 'none'}
          stroke="none"
        />
      )}
      {isBare &&
        turns.map((degrees) => {
          const from = around(middle, degrees, inner + band * 0.16);
          const to = around(middle, degrees, FACE.outer - band * 0.16);
          return <line key={degrees} x1={from.x} y1={from.y} x2={to.x} y2={to.y} className="dr-needle" />;
        })}
      {kind === 'lip-seal' && circle(inner + band * 0.14, side.isLip ? 'dr-coarse' : 'dr-fine')}
      {kind === 'lip-seal' && side.isLip && circle(inner + band * 0.3, 'dr-garter')}
      <path d={`M${middle.x - 8} ${middle.y}h16M${middle.x} ${middle.y - 8}v16`} className="dr-axis" />
    </>
  );
}

interface Props {
  readonly drawing: SeatDrawing;
  readonly unit: Unit;
  readonly say: Say;
  readonly tapped: Tapped | undefined;
}

function Section({ drawing, unit, say, tapped, shown }: Props & { shown: ShownSeat }) {
  const { deck } = unit;
  const { places = [], seenFrom, hideNames } = drawing;
  const layout = layoutSeat(
    shown,
    drawing.front ?? 'left',
    places.map((end, index) => ({ end, number: index + 1 })),
  );
  const title = hideNames
    ? say(phrase('drawing.seat.title-unnamed'))
    : say(phrase('drawing.seat.title', { seat: thing('seat', drawing.seat) }));
  const [from, to] = layout.axis.map(layout.place) as [{ x: number; y: number }, { x: number; y: number }];
  const name = (end: End) =>
    hideNames
      ? []
      : wrapText(say(nameTouched(deck, shown.sides[end].touches)), layout.isLevel ? 134 : 260, 3);
  const pressure = ENDS.find((end) => shown.sides[end].isPressure);
  return (
    <Stage
      className="dr-seat"
      width={layout.width}
      height={layout.height}
      title={title}
      scroll={say(phrase('drawing.scroll', { drawing: title }))}
      words={describeSeat(deck, drawing).map(say)}
      spots={layout.spots}
      tapped={tapped}
    >
      <path d={`M${from.x} ${from.y}L${to.x} ${to.y}`} className="dr-axis" />
      {ENDS.map((end) => (
        <Block key={end} end={end} layout={layout} />
      ))}
      <Part shown={shown} layout={layout} />
      {pressure && shown.seat.kind === 'lip-seal' && (
        <Pressure end={pressure} layout={layout} text={say(phrase('drawing.seat.pressure'))} />
      )}
      {ENDS.map((end) => {
        const { x, y } = layout.names[end];
        const lines = name(end);
        return lines.map((line, index) => (
          <text
            key={`${end}${line}`}
            x={x}
            y={y + (index - (lines.length - 1) / 2) * 13}
            textAnchor="middle"
            dominantBaseline="central"
          >
            {line}
          </text>
        ));
      })}
      {ENDS.map((end) => (
        <text
          key={end}
          x={layout.ends[end].x}
          y={layout.ends[end].y}
          textAnchor={layout.isLevel ? 'middle' : 'end'}
          dominantBaseline="central"
          className="dr-strong"
        >
          {say(phrase(`drawing.end.${end}`))}
        </text>
      ))}
      {seenFrom && <Eye end={seenFrom} layout={layout} />}
    </Stage>
  );
}

export function Seat(props: Props) {
  const { drawing, unit, say } = props;
  const shown = seatShown(unit.deck, seatOf(unit.deck, drawing.seat), drawing);
  const { seenFrom, hideNames } = drawing;
  const marks = shown.isCovered || hideNames ? [] : ENDS.filter((end) => shown.sides[end].mark !== undefined);
  const faceTitle =
    seenFrom && say(phrase('drawing.seat.face-title', { end: phrase(`drawing.end.${seenFrom}`) }));
  return (
    <>
      <div className="dr-pair">
        <div className="dr-pair-part">
          <Section {...props} shown={shown} />
        </div>
        {seenFrom && faceTitle && !shown.isCovered && (
          <div className="dr-pair-part">
            <p className="dr-caption">
              {say(phrase('drawing.seat.face-caption', { end: phrase(`drawing.end.${seenFrom}`) }))}
            </p>
            <Stage
              className="dr-face"
              width={FACE.size}
              height={FACE.size}
              title={faceTitle}
              scroll={say(phrase('drawing.scroll', { drawing: faceTitle }))}
              words={[]}
              largest={1.2}
            >
              <FaceSeen shown={shown} end={seenFrom} />
            </Stage>
          </div>
        )}
      </div>
      {!isToScale(shown) && <p className="dr-note">{say(phrase('drawing.seat.no-scale'))}</p>}
      {marks.map((end) => (
        <p key={end} className="dr-note" aria-hidden="true">
          {say(phrase('drawing.seat.note', { end, mark: shown.sides[end].mark! }))}
        </p>
      ))}
    </>
  );
}
