/** Dial indicator, before and after a move where both are shown. */
import { describeDial } from '../../core/questions/describe/gauges.ts';
import type { DialDrawing } from '../../core/questions/drawing.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';
import { around, type DialFace, type DialLayout, layoutDial, type Rank, type Tick } from './dial-layout.ts';
import { Stage } from './Stage.tsx';

/** Many ticks are one path for each length. */
const pathOf = (ticks: readonly Tick[], rank: Rank) =>
  ticks
    .filter((tick) => tick.rank === rank)
    .map(({ x1, y1, x2, y2 }) => `M${x1.toFixed(2)} ${y1.toFixed(2)}L${x2.toFixed(2)} ${y2.toFixed(2)}`)
    .join('');

function Marks({ face }: { face: DialFace }) {
  return (
    <>
      <path d={pathOf(face.ticks, 'division')} className="dr-fine" />
      <path d={pathOf(face.ticks, 'fifth')} className="dr-fine" />
      <path d={pathOf(face.ticks, 'numbered')} className="dr-coarse" />
      {face.numbers.map(({ text, x, y }) => (
        <text key={text} x={x} y={y} dominantBaseline="central" textAnchor="middle">
          {text}
        </text>
      ))}
    </>
  );
}

function Face({ layout, say }: { layout: DialLayout; say: Say }) {
  const { middle, counter, legend } = layout;
  const tip = around(middle, layout.hand, layout.tip);
  const tail = around(middle, layout.hand + 180, 13);
  const side = (turn: number) => around(middle, layout.hand + turn, 4);
  const [left, right] = [side(-90), side(90)];
  const small = around(counter.middle, counter.hand, counter.radius - 2);
  const smallTail = around(counter.middle, counter.hand + 180, 8);
  return (
    <>
      <circle cx={middle.x} cy={middle.y} r={layout.bezel} className="dr-outline" />
      <circle cx={middle.x} cy={middle.y} r={layout.radius} className="dr-plain" />
      <Marks face={layout} />
      <text x={legend.x} y={legend.y} textAnchor="middle" className="dr-soft">
        {say(phrase('text', { text: legend.text }))}
      </text>
      <circle cx={counter.middle.x} cy={counter.middle.y} r={counter.radius} className="dr-plain" />
      <g className="dr-small">
        <Marks face={counter} />
      </g>
      <line x1={smallTail.x} y1={smallTail.y} x2={small.x} y2={small.y} className="dr-hand-small" />
      <circle cx={counter.middle.x} cy={counter.middle.y} r="2.5" className="dr-solid" />
      <path
        d={`M${left.x} ${left.y}L${tip.x} ${tip.y}L${right.x} ${right.y}L${tail.x} ${tail.y}Z`}
        className="dr-hand"
      />
      <circle cx={middle.x} cy={middle.y} r="6" className="dr-solid" />
    </>
  );
}

export function Dial({ drawing, say }: { drawing: DialDrawing; say: Say }) {
  const { scale, reading, start } = drawing;
  const title = say(phrase('drawing.dial'));
  const faces = start
    ? ([
        ['start', start],
        ['now', reading],
      ] as const)
    : ([['now', reading]] as const);
  const [told, ...stands] = describeDial(drawing).map(say);
  return (
    <div className="dr-pair">
      {faces.map(([key, shown], index) => {
        const layout = layoutDial(scale, shown);
        const caption = say(phrase(`drawing.dial.caption-${key}`));
        return (
          <div key={key} className="dr-pair-part">
            {start && <p className="dr-caption">{caption}</p>}
            <Stage
              className="dr-dial"
              width={layout.width}
              height={layout.height}
              title={start ? `${title}, ${caption}` : title}
              scroll={say(phrase('drawing.scroll', { drawing: title }))}
              words={[...(index === 0 ? [told!] : []), stands[index]!]}
            >
              <Face say={say} layout={layout} />
            </Stage>
          </div>
        );
      })}
    </div>
  );
}
