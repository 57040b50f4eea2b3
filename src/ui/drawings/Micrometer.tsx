/** Micrometer: what is uncovered of the sleeve, and the thimble's line at the datum. */
import { describeMicrometer } from '../../core/questions/describe/gauges.ts';
import type { MicrometerDrawing } from '../../core/questions/drawing.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';
import type { Printed, Tick } from './dial-layout.ts';
import { useHatching } from './hatching.tsx';
import { layoutMicrometer, type MicrometerLayout } from './micrometer-layout.ts';
import { Stage } from './Stage.tsx';
import { Line } from './train-symbols.tsx';

export const tickClass = ({ rank }: Tick) => (rank === 'division' ? 'dr-fine' : 'dr-coarse');

export function Numbers({ of }: { of: readonly Printed[] }) {
  return of.map(({ x, y, text }) => (
    <text key={text} x={x} y={y} dominantBaseline="central" textAnchor="middle">
      {text}
    </text>
  ));
}

/** The part of the thimble that is held, for the look of it. */
function Knurl({ of, middle }: { of: MicrometerLayout['thimble']; middle: number }) {
  const { rising, falling } = useHatching();
  const left = of.body + 42;
  return [rising, falling].map((fill) => (
    <rect
      key={fill}
      x={left}
      y={middle - of.radius}
      width={Math.max(0, of.right - left)}
      height={2 * of.radius}
      fill={fill}
      className="dr-knurl"
    />
  ));
}

export function Micrometer({ drawing, say }: { drawing: MicrometerDrawing; say: Say }) {
  const layout = layoutMicrometer(drawing);
  const { thimble, sleeve, datum } = layout;
  const title = say(phrase('drawing.micrometer'));
  const { edge, body, right, rim, radius } = thimble;
  const y = datum.y1;
  const end = layout.isBroken
    ? `q-7 ${(sleeve.bottom - sleeve.top) / 4} 0 ${(sleeve.bottom - sleeve.top) / 2}t0 ${(sleeve.bottom - sleeve.top) / 2}`
    : `v${sleeve.bottom - sleeve.top}`;
  return (
    <Stage
      className="dr-micrometer"
      width={layout.width}
      height={layout.height}
      title={title}
      scroll={say(phrase('drawing.scroll', { drawing: title }))}
      words={describeMicrometer(drawing).map(say)}
    >
      <path d={`M${edge} ${sleeve.top}H${sleeve.left}${end}H${edge}`} className="dr-outline" />
      <Line of={datum} className="dr-coarse" />
      {layout.lines.map((tick) => (
        <Line key={tick.x1} of={tick} className={tickClass(tick)} />
      ))}
      <Numbers of={layout.numbers} />
      <path
        d={`M${edge} ${y - rim}L${body} ${y - radius}H${right}V${y + radius}H${body}L${edge} ${y + rim}Z`}
        className="dr-outline dr-blank"
      />
      <Knurl of={thimble} middle={y} />
      <line x1={body} y1={y - radius} x2={body} y2={y + radius} className="dr-fine" />
      {layout.thimbleLines.map((tick) => (
        <Line key={tick.y1} of={tick} className={tickClass(tick)} />
      ))}
      <Numbers of={layout.thimbleNumbers} />
      <text x={layout.legend.x} y={layout.legend.y} className="dr-soft">
        {say(phrase('text', { text: layout.legend.text }))}
      </text>
    </Stage>
  );
}
