/** The speeds of a range: upright levers, one for each gearset, on one scale. */
import { describeSpeeds, type LeverNode, leversOf } from '../../core/questions/describe/speeds.ts';
import type { SpeedsDrawing } from '../../core/questions/drawing.ts';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { Stage } from './Stage.tsx';
import { type LeverShape, layoutSpeeds, type NodeShape } from './speeds-layout.ts';
import { Line } from './train-symbols.tsx';

function Arrow({ from, to }: { from: number; to: { x: number; y: number } }) {
  const length = to.x - from;
  if (Math.abs(length) < 0.5) return null;
  const head = Math.min(7, Math.abs(length)) * Math.sign(length);
  return (
    <>
      <path d={`M${from} ${to.y}H${to.x - head * 0.8}`} className="dr-speed" />
      <path d={`M${to.x} ${to.y}l${-head} -4v8z`} className="dr-speed-head" />
    </>
  );
}

/** A member that stands still is pinned to the case. */
function Still({ x, y }: { x: number; y: number }) {
  return <path d={`M${x} ${y}m-9 -7v14m0 -14l-5 5m5 -1l-5 5m5 -1l-5 5`} className="dr-fine" />;
}

function Node({ shape, say }: { shape: NodeShape; say: Say }) {
  const { node, at, tip, label, value } = shape;
  const text = node.isCovered
    ? '?'
    : say(node.text === null ? phrase('drawing.speeds.open') : phrase('text', { text: node.text }));
  const isStill = node.speed !== null && !node.isCovered && node.speed.n === 0n;
  return (
    <g className={node.isLit ? 'dr-node dr-lit' : 'dr-node'}>
      {tip && <Arrow from={at.x} to={tip} />}
      {isStill && <Still {...at} />}
      <circle cx={at.x} cy={at.y} r="4" />
      <path d={`M${96} ${label.y}L${at.x - (isStill ? 16 : 6)} ${at.y}`} className="dr-guide" />
      {label.lines.map((line, index) => (
        <text
          // biome-ignore lint/suspicious/noArrayIndexKey: member and shaft may have one name
          key={index}
          x="4"
          y={label.y + (index - (label.lines.length - 1) / 2) * 13}
          dominantBaseline="central"
          className={index === 0 ? 'dr-strong' : 'dr-soft'}
        >
          {line}
        </text>
      ))}
      <text x={value.x} y={value.y} textAnchor={value.anchor} dominantBaseline="central" className="dr-value">
        {text}
      </text>
    </g>
  );
}

function LeverDrawn({ shape, say }: { shape: LeverShape; say: Say }) {
  return (
    <g>
      <text x="4" y={shape.top - 22} className="dr-set">
        {say(thing('gearset', shape.set))}
      </text>
      {shape.line && <Line of={shape.line} className="dr-through" />}
      <Line of={shape.lever} className="dr-lever" />
      {shape.nodes.map((node) => (
        <Node key={node.node.member} shape={node} say={say} />
      ))}
    </g>
  );
}

export function Speeds({ drawing, unit, say }: { drawing: SpeedsDrawing; unit: Unit; say: Say }) {
  const labelOf = ({ member, shaft }: LeverNode) =>
    [say(phrase(`drawing.member.${member}`)), say(thing('shaft', shaft))] as const;
  const layout = layoutSpeeds(leversOf(unit, drawing), labelOf);
  const title = say(phrase('drawing.speeds.title', { range: thing('range', drawing.range) }));
  const scale = [
    [layout.zero, '0'],
    [layout.input, drawing.inputRpm === undefined ? '1' : String(drawing.inputRpm)],
  ] as const;
  return (
    <Stage
      className="dr-speeds"
      width={layout.width}
      height={layout.height}
      title={title}
      scroll={say(phrase('drawing.scroll', { drawing: title }))}
      words={describeSpeeds(unit, drawing).map(say)}
    >
      {scale.map(([x, text]) => (
        <g key={text}>
          <path d={`M${x} ${layout.top}V${layout.height - 6}`} className="dr-guide" />
          <text x={x} y={layout.top - 4} textAnchor="middle" className="dr-soft">
            {text}
          </text>
        </g>
      ))}
      {layout.levers.map((lever) => (
        <LeverDrawn key={lever.set} shape={lever} say={say} />
      ))}
    </Stage>
  );
}
