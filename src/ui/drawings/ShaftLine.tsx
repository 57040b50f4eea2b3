/** The shaft line pulled apart: bodies, and which way the seats between them face. */
import {
  describeShaftLine,
  type LineEntry,
  lineShown,
  placesAt,
} from '../../core/questions/describe/seats.ts';
import type { ShaftLineDrawing } from '../../core/questions/drawing.ts';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { useHatching } from './hatching.tsx';
import { type LineLayout, type LineRow, layoutLine } from './line-layout.ts';
import { Stage, type Tapped } from './Stage.tsx';

type BodyRow = Extract<LineRow, { is: 'body' }>;
type SeatRow = Extract<LineRow, { is: 'seat' }>;

/** A saw of teeth down an edge. */
const teeth = (height: number, side: 1 | -1) => {
  const step = height / 5;
  return Array.from({ length: 5 }, () => `l${side * 5} ${step / 2}l${-side * 5} ${step / 2}`).join('');
};

/** Alike both ways up: which way a body faces the deck does not say. */
function outlineOf({ shape, half, top, bottom }: BodyRow, axis: number): string {
  const height = bottom - top;
  const [left, right] = [axis - half, axis + half];
  switch (shape) {
    case 'gear':
      return `M${left} ${top}H${right}${teeth(height, 1)}H${left}${teeth(-height, -1)}Z`;
    case 'drum': {
      const [high, low] = [top + 8, bottom - 8];
      return `M${left} ${top}H${left + 9}V${high}H${right - 9}V${top}H${right}V${bottom}H${right - 9}V${low}H${left + 9}V${bottom}H${left}Z`;
    }
    case 'plain': {
      const [high, low] = [top + 6, bottom - 6];
      const [near, beyond] = [axis - 16, axis + 16];
      return `M${left} ${high}H${near}V${top}H${beyond}V${high}H${right}V${low}H${beyond}V${bottom}H${near}V${low}H${left}Z`;
    }
  }
}

function Body({ row, axis }: { row: BodyRow; axis: number }) {
  const { rising } = useHatching();
  return (
    <path d={outlineOf(row, axis)} fill={rising} className={row.isLit ? 'dr-edge dr-lit-edge' : 'dr-edge'} />
  );
}

/** How far a shoulder reaches along the seat; two that face each other stay apart. */
const SHOULDER = 12;

/** One half of a seat, on one side of the axis. */
function Half({ row, axis, side }: { row: SeatRow; axis: number; side: 1 | -1 }) {
  const { rising } = useHatching();
  const { shown, inner, outer, up, down } = row;
  const { kind } = shown.seat;
  const [top, bottom] = [row.top + 3, row.bottom - 3];
  const near = axis + side * inner;
  const far = axis + side * outer;
  const left = Math.min(near, far);
  const width = Math.abs(far - near);
  const race = up.isRace ? 'up' : down.isRace ? 'down' : null;
  // The shoulder that centres it stands out from the side that centres it, under or over the part.
  const shoulders = [up, down].map(({ pilot }, index) => {
    if (!pilot) return null;
    const x = pilot.at === 'inner' ? near - side * 3 : far + side * 3;
    return index === 0
      ? `M${x} ${row.top - 5}V${row.top + SHOULDER}`
      : `M${x} ${row.bottom + 5}V${row.bottom - SHOULDER}`;
  });
  return (
    <g>
      {shoulders.map((path) => path && <path key={path} d={path} className="dr-shoulder" />)}
      {kind === 'thrust-bearing' && (
        <>
          <rect x={left + 2} y={top + 3} width={Math.max(0, width - 4)} height={bottom - top - 6} rx="2" />
          {(race ? [race] : ['up', 'down']).map((at) => (
            <rect
              key={at}
              x={left}
              y={at === 'up' ? top - 1 : bottom - 5}
              width={width}
              height="6"
              className="dr-solid"
            />
          ))}
        </>
      )}
      {kind === 'thrust-washer' && (
        <rect
          x={left}
          y={top + 5}
          width={width}
          height={bottom - top - 10}
          fill={rising}
          className="dr-edge"
        />
      )}
      {kind === 'sealing-ring' && (
        <rect
          x={far - (side > 0 ? 8 : 0)}
          y={top + 4}
          width="8"
          height={bottom - top - 8}
          className="dr-solid"
        />
      )}
      {kind === 'lip-seal' && (
        <>
          <path
            d={
              up.isLip
                ? `M${far} ${top}V${bottom}H${near + side * 6}`
                : `M${far} ${bottom}V${top}H${near + side * 6}`
            }
            className="dr-coarse"
          />
          <path
            d={
              up.isLip
                ? `M${near + side * 8} ${bottom}L${near} ${top + 1}`
                : `M${near + side * 8} ${top}L${near} ${bottom - 1}`
            }
            className="dr-shoulder"
          />
        </>
      )}
    </g>
  );
}

function SeatSymbol({ row, axis }: { row: SeatRow; axis: number }) {
  const { shown, outer, top, bottom } = row;
  const edge = row.isLit ? 'dr-lit-box' : undefined;
  if (shown.isCovered)
    return (
      <g>
        <rect
          x={axis - outer}
          y={top + 2}
          width={2 * outer}
          height={bottom - top - 4}
          className={`dr-outline dr-blank dr-covered ${edge ?? ''}`}
        />
        <text
          x={axis}
          y={(top + bottom) / 2}
          textAnchor="middle"
          dominantBaseline="central"
          className="dr-strong"
        >
          ?
        </text>
      </g>
    );
  return (
    <g>
      {edge && (
        <rect x={axis - 48} y={top - 2} width="96" height={bottom - top + 4} className={`dr-blank ${edge}`} />
      )}
      <Half row={row} axis={axis} side={-1} />
      <Half row={row} axis={axis} side={1} />
    </g>
  );
}

function Names({ layout }: { layout: LineLayout }) {
  return layout.rows.map((row) => {
    const middle = (row.top + row.bottom) / 2;
    const reach = row.is === 'body' ? row.half : row.isLit ? 48 : row.outer;
    return (
      <g key={`${row.is}${row.id}`} className={row.isLit ? 'dr-beside dr-lit' : 'dr-beside'}>
        {row.lines[0] !== '' && (
          <path
            d={`M${layout.axis + reach + 3} ${middle}H${Math.max(layout.names - 4, layout.axis + reach + 5)}`}
          />
        )}
        {row.lines.map((line, index) => (
          <text
            key={line}
            x={layout.names}
            y={middle + (index - (row.lines.length - 1) / 2) * 13}
            dominantBaseline="central"
            className={row.is === 'body' ? 'dr-soft' : 'dr-strong'}
          >
            {line}
          </text>
        ))}
      </g>
    );
  });
}

interface Props {
  readonly drawing: ShaftLineDrawing;
  readonly unit: Unit;
  readonly say: Say;
  readonly tapped: Tapped | undefined;
}

export function ShaftLine({ drawing, unit, say, tapped }: Props) {
  const { deck } = unit;
  const front = drawing.front ?? 'up';
  const nameOf = (entry: LineEntry) =>
    entry.is === 'body'
      ? say(thing('part', entry.body.id))
      : drawing.hideSeatNames
        ? ''
        : say(thing('seat', entry.seat.id));
  const layout = layoutLine(lineShown(deck, drawing), front, {
    nameOf,
    placesOf: (id) => placesAt(drawing, id),
  });
  const title = say(phrase('drawing.line.title'));
  const ends = [
    [layout.head, 14],
    [layout.head === 'front' ? 'rear' : 'front', layout.height - 8],
  ] as const;
  return (
    <Stage
      className="dr-line"
      width={layout.width}
      height={layout.height}
      title={title}
      scroll={say(phrase('drawing.scroll', { drawing: title }))}
      words={describeShaftLine(deck, drawing).map(say)}
      spots={layout.spots}
      tapped={tapped}
    >
      <path d={`M${layout.axis} 20V${layout.height - 20}`} className="dr-axis" />
      {layout.rows.map((row) =>
        row.is === 'body' ? (
          <Body key={`body ${row.id}`} row={row} axis={layout.axis} />
        ) : (
          <SeatSymbol key={`seat ${row.id}`} row={row} axis={layout.axis} />
        ),
      )}
      <Names layout={layout} />
      {ends.map(([end, y]) => (
        <text key={end} x={layout.axis} y={y} textAnchor="middle" className="dr-strong">
          {say(phrase(`drawing.end.${end}`))}
        </text>
      ))}
    </Stage>
  );
}
