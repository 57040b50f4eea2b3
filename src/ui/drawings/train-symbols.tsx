/** The parts of a stick drawing as SVG: gears, clutches, brakes, one-ways, the case and its hatching. */
import { CASE } from '../../core/gears/train.ts';
import type { ElementShape, GroundShape, Label, Segment, SetShape } from './train-shapes.ts';
import { SIZE } from './train-shapes.ts';

export function Line({ of, className }: { of: Segment; className?: string | undefined }) {
  return <line x1={of.x1} y1={of.y1} x2={of.x2} y2={of.y2} className={className} />;
}

export function Text({ label, className }: { label: Label; className?: string }) {
  return (
    <text x={label.x + label.width / 2} y={label.y + SIZE.font - 1} textAnchor="middle" className={className}>
      {label.text}
    </text>
  );
}

const lit = (isLit: boolean, base: string) => (isLit ? `${base} dr-lit` : base);

/** Strokes of hatching along a level bar, above it, or along an upright bar on one side. */
function hatching({ x1, y1, x2, y2 }: Segment, side: 1 | -1): string {
  const reach = SIZE.hatch;
  const strokes: string[] = [];
  if (y1 === y2) for (let x = x1; x <= x2 - reach; x += reach) strokes.push(`M${x} ${y1}l${reach} ${-reach}`);
  else for (let y = y1 + reach; y <= y2; y += 5) strokes.push(`M${x1} ${y}l${side * reach} ${-reach}`);
  return strokes.join('');
}

export function Housing({ of, isLit }: { of: Segment; isLit: boolean }) {
  return (
    <g className={lit(isLit, 'dr-case')}>
      <path d={hatching(of, 1)} className="dr-hatch" />
      <Line of={of} />
    </g>
  );
}

export function Ground({ of, isLit }: { of: GroundShape; isLit: boolean }) {
  return (
    <g className={lit(isLit, 'dr-case')}>
      <path d={hatching(of.bar, of.side)} className="dr-hatch" />
      <Line of={of.bar} />
    </g>
  );
}

export function GearsetSymbol({ of, isLit }: { of: SetShape; isLit: (shaft: string) => boolean }) {
  const { set, x } = of;
  return (
    <g>
      {of.carrier.map((line) => (
        <Line
          key={`${line.x1},${line.y1},${line.y2}`}
          of={line}
          className={lit(isLit(set.carrier.shaft), 'dr-shaft')}
        />
      ))}
      {of.planets.map(({ top, bottom, pin }) => (
        <g key={pin}>
          <path
            d={`M${x - SIZE.planet} ${top}h${2 * SIZE.planet}M${x - SIZE.planet} ${bottom}h${2 * SIZE.planet}M${x} ${top}V${bottom}`}
            className="dr-planet"
          />
          <circle cx={x} cy={pin} r="2.5" className={lit(isLit(set.carrier.shaft), 'dr-pin')} />
        </g>
      ))}
      <Line of={of.ring} className={lit(isLit(set.ring.shaft), 'dr-gear')} />
      <Line of={of.sun} className={lit(isLit(set.sun.shaft), 'dr-gear')} />
      {of.captions.map((caption, index) => (
        <Text key={caption.y} label={caption} className={index === 0 ? 'dr-id' : 'dr-teeth'} />
      ))}
    </g>
  );
}

/** The sprags of a one-way: two struts that lean between the bars. */
function sprags([first, second]: readonly [Segment, Segment]): string {
  const lean = SIZE.bar * 0.7;
  return [-SIZE.bar + 1, SIZE.bar - 1 - lean]
    .map((start) =>
      first.x1 === first.x2
        ? `M${first.x1} ${first.y1 + SIZE.bar + start + lean}L${second.x1} ${second.y1 + SIZE.bar + start}`
        : `M${first.x1 + SIZE.bar + start} ${first.y1}L${second.x1 + SIZE.bar + start + lean} ${second.y1}`,
    )
    .join('');
}

export function ElementSymbol({
  of,
  isOn,
  isLit,
}: {
  of: ElementShape;
  isOn: boolean;
  isLit: (shaft: string) => boolean;
}) {
  const { element, bars, label, shafts } = of;
  const [first, second] = bars;
  const isOneWay = element.kind === 'one-way';
  return (
    <g className={isOn ? 'dr-element dr-on' : 'dr-element'}>
      {isOn && (
        <path
          d={`M${first.x1} ${first.y1}L${first.x2} ${first.y2}L${second.x2} ${second.y2}L${second.x1} ${second.y1}Z`}
          className="dr-fill"
        />
      )}
      {isOneWay && <path d={sprags(bars)} className="dr-sprags" />}
      {bars.map((bar, index) => (
        <Line
          key={shafts[index] === CASE ? CASE : `${bar.x1}`}
          of={bar}
          className={lit(isLit(shafts[index]!), 'dr-bar')}
        />
      ))}
      {isOn && (
        <rect
          x={label.x - 1}
          y={label.y + 1}
          width={label.width + 2}
          height={label.height - 2}
          className="dr-plate"
        />
      )}
      <Text label={label} className="dr-id" />
    </g>
  );
}
