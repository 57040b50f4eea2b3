/** A pack in half section: thickness to scale, what each plate is told by lining, and which way it looks. */
import {
  bareSize,
  describeStack,
  plateName,
  platesShown,
  type ShownPlate,
  stackOf,
  unitOf,
} from '../../core/questions/describe/stack.ts';
import type { StackDrawing } from '../../core/questions/drawing.ts';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { useHatching } from './hatching.tsx';
import { Stage, type Tapped } from './Stage.tsx';
import { layoutStack, type PlateShape, type SideLabel, type StackLayout } from './stack-layout.ts';
import {
  arrowPath,
  brokenPath,
  dishedPath,
  platePath,
  ripplePath,
  springPath,
  wavedPath,
} from './stack-shapes.ts';

function outlineOf(shape: PlateShape): string {
  const { looks } = shape.plate;
  switch (shape.shape) {
    case 'waved':
      return wavedPath(shape, shape.metal);
    case 'separator':
      return ripplePath(shape);
    case 'dished':
      return looks
        ? dishedPath(shape, shape.metal, looks.towards === 'opening' ? 'up' : 'down')
        : platePath(shape, undefined, 'right');
    case 'spring':
      return springPath(shape);
    default:
      return platePath(shape, looks, shape.isFriction ? 'left' : 'right');
  }
}

function Friction({ shape }: { shape: PlateShape }) {
  const { dotted } = useHatching();
  const { left, right, top, bottom } = shape;
  const lining = (bottom - top) * 0.32;
  const toothed = left + (right - left) * 0.19;
  return (
    <>
      {[top, bottom - lining].map((y) => (
        <rect key={y} x={toothed} y={y} width={right - toothed} height={lining} fill={dotted} />
      ))}
      <rect
        x={left}
        y={top + lining}
        width={right - left}
        height={bottom - top - 2 * lining}
        className="dr-core"
      />
      <path d={platePath({ left: toothed, right, top, bottom }, undefined, 'left')} className="dr-edge" />
    </>
  );
}

function Plate({ shape }: { shape: PlateShape }) {
  const { rising, falling } = useHatching();
  const { plate, left, right, top, bottom } = shape;
  const { kind } = plate.item;
  const path = outlineOf(shape);
  const lined = kind === 'piston' ? falling : kind === 'backing' || kind === 'apply' || kind === 'washer';
  const solid = ['steel', 'waved', 'dished', 'snap-ring'].includes(kind);
  const up = plate.looks?.towards === 'opening';
  if (shape.shape === 'covered')
    return (
      <g className={plate.isLit ? 'dr-plate-item dr-lit' : 'dr-plate-item'}>
        <path
          d={brokenPath({ left: left + 4, right: right - 4, top, bottom })}
          className="dr-outline dr-blank dr-covered"
        />
        <text x={(left + right) / 2} y={(top + bottom) / 2} textAnchor="middle" dominantBaseline="central">
          ?
        </text>
      </g>
    );
  return (
    <g className={plate.isLit ? 'dr-plate-item dr-lit' : 'dr-plate-item'}>
      {shape.isFriction ? (
        <Friction shape={shape} />
      ) : shape.shape === 'spring' || shape.shape === 'separator' ? (
        <path d={path} className="dr-coil" />
      ) : (
        <>
          <path d={path} className={solid ? 'dr-metal' : 'dr-blank dr-edge'} />
          {lined && <path d={path} fill={lined === true ? rising : lined} className="dr-edge" />}
        </>
      )}
      {!shape.isToScale && shape.shape === 'piston' && (
        <path d={brokenPath({ left: left + 6, right: right - 6, top, bottom })} className="dr-break" />
      )}
      {plate.looks && (
        <path
          d={arrowPath(shape.isFriction ? right + 11 : left - 10, shape, up)}
          className="dr-solid dr-arrow"
        />
      )}
    </g>
  );
}

function Beside({ label }: { label: SideLabel }) {
  const first = label.y - (label.lines.length - 1) * 6.5;
  if (label.lines.join('') === '') return null;
  return (
    <g className={label.isLit ? 'dr-beside dr-lit' : 'dr-beside'}>
      <path d={`M${label.from + 2} ${label.at}H${label.x - 20}L${label.x - 4} ${label.y}`} />
      {label.lines.map((line, index) => (
        <text key={line} x={label.x} y={first + index * 13} dominantBaseline="central">
          {line}
        </text>
      ))}
    </g>
  );
}

function Drum({ of }: { of: StackLayout }) {
  const { rising } = useHatching();
  const { wall, floor, top, thick } = of.drum;
  const left = of.hub - 4;
  const outline = `M${wall} ${top}V${floor}H${left}v${thick}H${wall + thick}V${top}Z`;
  return (
    <>
      <path d={outline} fill={rising} stroke="none" />
      <path d={outline} className="dr-outline" />
    </>
  );
}

export function Stack({
  drawing,
  unit,
  say,
  tapped,
}: {
  drawing: StackDrawing;
  unit: Unit;
  say: Say;
  tapped: Tapped | undefined;
}) {
  const { deck } = unit;
  const stack = stackOf(deck, drawing.stack);
  const plates = platesShown(deck, drawing);
  const sizeOf = ({ item }: ShownPlate): string => {
    const size = bareSize(item, unitOf(stack));
    return size ? say(size) : '';
  };
  const shortSizeOf = ({ item: { thickness } }: ShownPlate): string =>
    !thickness
      ? ''
      : thickness.unit === unitOf(stack)
        ? thickness.value
        : `${thickness.value} ${thickness.unit}`;
  const beside = (plate: ShownPlate): string => {
    if (plate.isCovered) return '';
    const size = drawing.showThickness ? sizeOf(plate) : '';
    return [drawing.hideNames ? '' : say(plateName(plate.item)), size].filter(Boolean).join(' ');
  };
  const layout = layoutStack(stack, plates, {
    beside,
    under: (plate) => (drawing.showThickness && !plate.isCovered ? shortSizeOf(plate) : ''),
    floor: say(
      phrase('drawing.stack.floor-caption', {
        floor: stack.floor,
        end: phrase(`drawing.end.${stack.floorAt}`),
      }),
    ),
  });
  const title = say(phrase('drawing.stack.title', { stack: thing('stack', stack.id) }));
  const { rule, caption } = layout;
  return (
    <Stage
      className="dr-stack"
      width={layout.width}
      height={layout.height}
      title={title}
      scroll={say(phrase('drawing.scroll', { drawing: title }))}
      words={describeStack(deck, drawing).map(say)}
      spots={layout.spots}
      tapped={tapped}
    >
      <Drum of={layout} />
      {layout.plates.map((shape, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the same plate may lie twice
        <Plate key={index} shape={shape} />
      ))}
      {layout.labels.map((label, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: as above
        <Beside key={index} label={label} />
      ))}
      {caption.lines.map((line, index) => (
        <text key={line} x={caption.x} y={caption.y + index * 13} className="dr-soft">
          {line}
        </text>
      ))}
      <path d={`M${rule.x} ${rule.y - 4}v8M${rule.x} ${rule.y}h${rule.length}m0 -4v8`} className="dr-fine" />
      <text x={rule.x + rule.length + 6} y={rule.y} dominantBaseline="central" className="dr-soft">
        {say(phrase('text', { text: rule.text }))}
      </text>
    </Stage>
  );
}
