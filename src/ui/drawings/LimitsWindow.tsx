/** Which of the listed values lie within the limits: a lined band, and a mark for each. */
import { describeWindow } from '../../core/questions/describe/gauges.ts';
import type { WindowDrawing } from '../../core/questions/drawing.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';
import { useHatching } from './hatching.tsx';
import { Stage } from './Stage.tsx';
import { layoutWindow, type WindowLayout } from './window-layout.ts';
import { wrapText } from './wrap.ts';

function Band({ of }: { of: WindowLayout }) {
  const { rising } = useHatching();
  const { low, high, top, foot } = of;
  return (
    <>
      <rect x={low} y={top} width={high - low} height={foot - top} fill={rising} className="dr-band" />
      <path d={`M${low} ${top}V${foot + 6}M${high} ${top}V${foot + 6}`} className="dr-coarse" />
      <path d={`M${of.left - 8} ${foot}H${of.right + 8}`} className="dr-fine" />
    </>
  );
}

export function LimitsWindow({ drawing, say }: { drawing: WindowDrawing; say: Say }) {
  const title = say(phrase('drawing.window'));
  const labels = drawing.parts.map(({ label, at }) =>
    wrapText(`${say(label)}`, 130, 2).map((line) => line || at),
  );
  const layout = layoutWindow(drawing, labels);
  const { low, high, aim, foot } = layout;
  const isNarrow = high - low < 60;
  return (
    <Stage
      className="dr-window"
      width={layout.width}
      height={layout.height}
      title={title}
      scroll={say(phrase('drawing.scroll', { drawing: title }))}
      words={describeWindow(drawing).map(say)}
    >
      <Band of={layout} />
      {aim !== null && (
        <>
          <path d={`M${aim} ${layout.top - 4}V${foot}`} className="dr-aim" />
          <text x={aim} y={layout.top - 10} textAnchor="middle" className="dr-soft">
            {say(phrase('drawing.window.aim-short', { aim: drawing.aim! }))}
          </text>
        </>
      )}
      {layout.rows.map(({ lines, x, y, isLit }) => (
        <g key={y} className={isLit ? 'dr-window-row dr-lit' : 'dr-window-row'}>
          <path d={`M${layout.left - 8} ${y}H${layout.right + 8}`} className="dr-guide" />
          <circle cx={x} cy={y} r={isLit ? 7 : 5} />
          {lines.map((line, index) => (
            <text
              key={line}
              x={layout.names}
              y={y + (index - (lines.length - 1) / 2) * 13}
              dominantBaseline="central"
            >
              {line}
            </text>
          ))}
        </g>
      ))}
      <text
        x={isNarrow ? low - 3 : low}
        y={foot + 18}
        textAnchor={isNarrow ? 'end' : 'middle'}
        className="dr-strong"
      >
        {say(phrase('text', { text: drawing.low }))}
      </text>
      <text
        x={isNarrow ? high + 3 : high}
        y={foot + 18}
        textAnchor={isNarrow ? 'start' : 'middle'}
        className="dr-strong"
      >
        {say(phrase('text', { text: `${drawing.high} ${drawing.unit}` }))}
      </text>
    </Stage>
  );
}
