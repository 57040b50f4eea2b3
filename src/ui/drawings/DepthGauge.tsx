/** Depth gauge: how it stands, where its zero lies, and which vernier line meets a main line. */
import { describeDepthGauge } from '../../core/questions/describe/gauges.ts';
import type { DepthGaugeDrawing } from '../../core/questions/drawing.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';
import { useHatching } from './hatching.tsx';
import { Numbers, tickClass } from './Micrometer.tsx';
import { Stage } from './Stage.tsx';
import { Line } from './train-symbols.tsx';
import { type Box, layoutVernier, type Setup, type Strip } from './vernier-layout.ts';

function Scales({ of, isLens }: { of: Strip; isLens: boolean }) {
  return (
    <g>
      <rect
        x={of.left}
        y={of.top}
        width={of.right - of.left}
        height={of.bottom - of.top}
        rx={isLens ? 10 : 0}
        className="dr-outline"
      />
      <Line of={of.seam} className="dr-seam" />
      {[...of.main, ...of.vernier].map((tick) => (
        <Line key={`${tick.x1}/${tick.y2}`} of={tick} className={tickClass(tick)} />
      ))}
      <Numbers of={of.mainNumbers} />
      <Numbers of={of.vernierNumbers} />
    </g>
  );
}

const Block = ({ of, className }: { of: Box; className: string }) => (
  <rect x={of.x} y={of.y} width={of.width} height={of.height} className={className} />
);

function HowItStands({ of, bar }: { of: Setup; bar: string }) {
  const { rising } = useHatching();
  return (
    <g>
      <path d={`${of.work}v30H${of.work.slice(1, of.work.indexOf(' '))}Z`} fill={rising} stroke="none" />
      <path d={of.work} className="dr-outline" />
      <Block of={of.blade} className="dr-outline dr-blank" />
      {of.bar && <Block of={of.bar} className="dr-outline dr-blank" />}
      <Block of={of.base} className="dr-outline dr-blank" />
      {of.bar && (
        <text x={of.bar.x - 5} y={of.bar.y + 10} textAnchor="end" className="dr-soft">
          {bar}
        </text>
      )}
    </g>
  );
}

export function DepthGauge({ drawing, say }: { drawing: DepthGaugeDrawing; say: Say }) {
  const title = say(phrase('drawing.depth-gauge'));
  const layout = layoutVernier(drawing, [
    say(phrase('drawing.depth.caption-zero')),
    say(phrase('drawing.depth.caption-lens')),
  ]);
  return (
    <Stage
      className="dr-vernier"
      width={layout.width}
      height={layout.height}
      title={title}
      scroll={say(phrase('drawing.scroll', { drawing: title }))}
      words={describeDepthGauge(drawing).map(say)}
    >
      <HowItStands of={layout.setup} bar={say(phrase('drawing.depth.bar'))} />
      {[layout.zeroCaption, layout.lensCaption].map(({ x, y, text }) => (
        <text key={y} x={x} y={y} className="dr-soft">
          {text}
        </text>
      ))}
      <Scales of={layout.zero} isLens={false} />
      <Scales of={layout.lens} isLens={true} />
      <text x={layout.legend.x} y={layout.legend.y} textAnchor="end" className="dr-soft">
        {say(phrase('text', { text: layout.legend.text }))}
      </text>
    </Stage>
  );
}
