/** The valve body's face: solenoids where they sit, on or off, or with their plug off. */
import { Fragment } from 'react';
import {
  describeValveBody,
  type ShownSolenoid,
  type ShownValveBody,
  valveBodyShown,
} from '../../core/questions/describe/harness.ts';
import type { ValveBodyDrawing } from '../../core/questions/drawing.ts';
import { nameAlone, say as phrase } from '../../core/questions/phrase.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { useHatching } from './hatching.tsx';
import { Stage, type Tapped } from './Stage.tsx';
import type { Spot } from './spots.ts';
import type { Point } from './train-shapes.ts';
import { layoutValveBody, type ValveBodyLayout } from './valve-body-layout.ts';

function Solenoid({ of, at, label, state }: { of: ShownSolenoid; at: Point; label: string; state: string }) {
  const { rising } = useHatching();
  const { x, y } = at;
  const isOn = of.state === 'on';
  return (
    <g className={`dr-solenoid${isOn ? ' dr-energised' : ''}${of.isLit ? ' dr-lit' : ''}`}>
      <rect x={x - 15} y={y - 14} width="30" height="28" rx="2" className="dr-can" />
      {!isOn && <rect x={x - 15} y={y - 14} width="30" height="28" rx="2" fill={rising} stroke="none" />}
      <rect x={x - 7} y={y + 14} width="14" height="6" className="dr-edge dr-blank" />
      {of.state === 'unplugged' ? (
        <path d={`M${x - 6} ${y - 27}h12v6h-12zM${x} ${y - 27}v-4`} className="dr-edge dr-blank" />
      ) : (
        <rect x={x - 6} y={y - 20} width="12" height="6" className="dr-edge dr-blank" />
      )}
      {of.place === null && (
        <text x={x} y={y + 32} textAnchor="middle" className="dr-strong">
          {label}
        </text>
      )}
      {state && (
        <text x={x} y={y + (of.place === null ? 45 : 32)} textAnchor="middle" className="dr-soft">
          {state}
        </text>
      )}
    </g>
  );
}

function Plate({ layout, shown }: { layout: ValveBodyLayout; shown: ShownValveBody }) {
  const { plate } = layout;
  if (shown.seenFrom === null) return null;
  const inset = 8;
  const bolts = [plate.x + inset, plate.x + plate.width - inset].flatMap((x) =>
    [plate.y + inset, plate.y + plate.height - inset].map((y) => ({ x, y })),
  );
  return (
    <>
      <rect {...plate} rx="8" className="dr-shell" />
      {bolts.map(({ x, y }) => (
        <circle key={`${x}/${y}`} cx={x} cy={y} r="3.5" className="dr-edge" />
      ))}
    </>
  );
}

interface Props {
  readonly drawing: ValveBodyDrawing;
  readonly unit: Unit;
  readonly say: Say;
  readonly tapped: Tapped | undefined;
}

export function ValveBody({ drawing, unit, say, tapped }: Props) {
  const { deck } = unit;
  const shown = valveBodyShown(deck, drawing);
  const layout = layoutValveBody(shown);
  const title = say(phrase('drawing.valve-body.title'));
  const spots: Spot[] = shown.solenoids.flatMap((solenoid) =>
    solenoid.place === null
      ? []
      : [{ id: solenoid.id, label: String(solenoid.place), ...layout.at(solenoid) }],
  );
  const named = drawing.hideNames ? [] : shown.solenoids.filter(({ place }) => place === null);
  return (
    <>
      <Stage
        className="dr-valve-body"
        width={layout.width}
        height={layout.height}
        title={title}
        scroll={say(phrase('drawing.scroll', { drawing: title }))}
        words={describeValveBody(deck, drawing).map(say)}
        spots={spots}
        tapped={tapped}
      >
        <Plate layout={layout} shown={shown} />
        {shown.solenoids.map((solenoid) => (
          <Solenoid
            key={solenoid.id}
            of={solenoid}
            at={layout.at(solenoid)}
            label={drawing.hideNames ? '' : solenoid.id}
            state={solenoid.state ? say(phrase(`drawing.valve-body.${solenoid.state}`)) : ''}
          />
        ))}
      </Stage>
      <p className="dr-note">
        {shown.seenFrom === null
          ? say(phrase('drawing.valve-body.listed'))
          : say(phrase('drawing.valve-body.side', { from: shown.seenFrom }))}
      </p>
      {named.length > 0 && (
        <details className="dr-more">
          <summary>{say(phrase('drawing.valve-body.names'))}</summary>
          <dl className="dr-names">
            {named.map(({ id }) => (
              <Fragment key={id}>
                <dt>{id}</dt>
                <dd>{say(nameAlone('solenoid', id))}</dd>
              </Fragment>
            ))}
          </dl>
        </details>
      )}
    </>
  );
}
