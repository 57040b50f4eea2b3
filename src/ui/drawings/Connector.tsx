/** A connector's face with its pins as they are numbered, and what they serve beside it. */
import { Fragment } from 'react';
import {
  connectorOf,
  describeConnector,
  faceSeen,
  pinsShown,
  servesName,
} from '../../core/questions/describe/harness.ts';
import type { ConnectorDrawing } from '../../core/questions/drawing.ts';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { layoutConnector, METER } from './connector-layout.ts';
import { Stage, type Tapped } from './Stage.tsx';

interface Props {
  readonly drawing: ConnectorDrawing;
  readonly unit: Unit;
  readonly say: Say;
  readonly tapped: Tapped | undefined;
}

export function Connector({ drawing, unit, say, tapped }: Props) {
  const connector = connectorOf(unit.deck, drawing.connector);
  const pins = pinsShown(connector, drawing);
  const layout = layoutConnector(connector, pins, drawing.probes);
  const { face, meter } = layout;
  // Two sorts of numbers on one face would be read for each other.
  const isAsked = layout.spots.length > 0;
  const title = say(phrase('drawing.connector.title', { connector: thing('connector', connector.id) }));
  const inOrder = connector.pins.filter(({ id }) => !drawing.places?.includes(id));
  return (
    <>
      <Stage
        className="dr-connector"
        width={layout.width}
        height={layout.height}
        title={title}
        scroll={say(phrase('drawing.scroll', { drawing: title }))}
        words={describeConnector(unit.deck, drawing).map(say)}
        spots={layout.spots}
        tapped={tapped}
      >
        <rect {...face} rx="10" className="dr-shell" />
        {layout.blanks.map(({ x, y }) => (
          <path key={`${x}/${y}`} d={`M${x - 5} ${y - 5}l10 10m0 -10l-10 10`} className="dr-no-pin" />
        ))}
        {layout.leads.map((path) => (
          <path key={path} d={path} className="dr-lead" />
        ))}
        {layout.pins.map(
          ({ pin, x, y }) =>
            pin.place === null && (
              <g key={pin.pin.id} className={pin.isLit ? 'dr-pin-hole dr-lit' : 'dr-pin-hole'}>
                <circle cx={x} cy={y} r={layout.radius} />
                <text x={x} y={y} textAnchor="middle" dominantBaseline="central">
                  {isAsked ? '' : pin.pin.id}
                </text>
              </g>
            ),
        )}
        {meter && (
          <g className="dr-meter">
            <circle cx={meter.x} cy={meter.y} r={METER} />
            <text x={meter.x} y={meter.y} textAnchor="middle" dominantBaseline="central">
              Ω
            </text>
          </g>
        )}
      </Stage>
      <p className="dr-note">
        {say(phrase('drawing.connector.side', { seen: faceSeen(connector, drawing.mirrored) }))}
      </p>
      {drawing.showServes && (
        <dl className="dr-names dr-serves">
          {inOrder.map((pin) => (
            <Fragment key={pin.id}>
              <dt>{pin.id}</dt>
              <dd>{say(servesName(pin.serves))}</dd>
            </Fragment>
          ))}
        </dl>
      )}
    </>
  );
}
