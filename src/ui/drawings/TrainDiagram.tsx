/** The gear train as a stick drawing, computed from the train; the same in words below it. */
import { useId, useMemo } from 'react';
import { CASE, type Gearset, type Train } from '../../core/gears/train.ts';
import { type Phrase, say as phrase, thing } from '../../core/questions/phrase.ts';
import type { Drawing } from '../../core/questions/question.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { Scroller } from './Scroller.tsx';
import { layoutTrain } from './train-layout.ts';
import { SIZE, type TrainLayout } from './train-shapes.ts';
import { ElementSymbol, GearsetSymbol, Ground, Housing, Line, Text } from './train-symbols.tsx';
import { TAG_RADIUS, type Tag, tagShafts } from './train-tags.ts';

export type StickDrawing = Extract<Drawing, { kind: 'train' }>;

interface Props {
  readonly drawing: StickDrawing;
  readonly unit: Unit;
  readonly say: Say;
}

/** A balloon for each lit shaft that has room for one. */
type Tags = readonly (Tag | null)[];

/** Smallest size of the drawing's text on a screen, in CSS pixels. */
const LEAST_FONT = 11;
const LARGEST = 1.8;

function inWords({ drawing, unit }: Props): Phrase[] {
  const { train } = unit.deck;
  const shaft = (id: string) => thing('shaft', id);
  const { showTeeth } = drawing;
  return [
    phrase('drawing.input-output', { input: shaft(train.input), output: shaft(train.output) }),
    ...train.gearsets.flatMap((set) => [
      phrase(`drawing.set-${set.kind}`, {
        set: thing('gearset', set.id),
        sun: shaft(set.sun.shaft),
        ring: shaft(set.ring.shaft),
        carrier: shaft(set.carrier.shaft),
      }),
      ...(showTeeth
        ? [
            phrase('drawing.set-teeth', {
              set: thing('gearset', set.id),
              sun: set.sun.teeth,
              ring: set.ring.teeth,
            }),
          ]
        : []),
    ]),
    ...train.elements.map(({ id, kind, between: [first, second] }) =>
      phrase(`drawing.element-${kind}`, {
        element: thing('element', id),
        first: shaft(first),
        second: shaft(second),
      }),
    ),
  ];
}

const shownOn = (applied: readonly string[]): Phrase =>
  applied.length === 0
    ? phrase('drawing.none-on')
    : phrase('drawing.shown-on', { elements: applied.map((id) => thing('element', id)) });

const layouts = new WeakMap<Train, Map<string, TrainLayout>>();

/** Laying out takes a while; a train keeps its layouts. */
function layoutOf(train: Train, showTeeth: boolean, say: Say): TrainLayout {
  const words = {
    input: say(phrase('drawing.in')),
    output: say(phrase('drawing.out')),
    ...(showTeeth
      ? {
          under: (set: Gearset) => [
            say(phrase('drawing.ring-teeth', { teeth: set.ring.teeth })),
            say(phrase('drawing.sun-teeth', { teeth: set.sun.teeth })),
          ],
        }
      : {}),
  };
  const key = `${words.input}/${words.output}/${showTeeth}`;
  const kept = layouts.get(train) ?? new Map<string, TrainLayout>();
  const layout = kept.get(key) ?? layoutTrain(train, words);
  layouts.set(train, kept.set(key, layout));
  return layout;
}

function Sketch({ layout, drawing, tags }: { layout: TrainLayout; drawing: StickDrawing; tags: Tags }) {
  const { litShafts = [], applied = [] } = drawing;
  const isLit = (shaft: string) => litShafts.includes(shaft);
  const shaftClass = (shaft: string) => (isLit(shaft) ? 'dr-shaft dr-lit' : 'dr-shaft');
  const inOrder = [...layout.shafts].sort((a, b) => Number(isLit(a.shaft)) - Number(isLit(b.shaft)));
  const head = 7;
  return (
    <>
      <Line of={layout.axis} className="dr-axis" />
      {layout.housing && <Housing of={layout.housing} isLit={isLit(CASE)} />}
      {inOrder.map(({ shaft, lines, dots }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: several members may be fixed to the case
        <g key={`${shaft}/${index}`} className={shaftClass(shaft)}>
          {isLit(shaft) &&
            lines.map((line) => (
              <Line
                key={`under ${line.x1},${line.y1},${line.x2},${line.y2}`}
                of={line}
                className="dr-under"
              />
            ))}
          {lines.map((line) => (
            <Line key={`${line.x1},${line.y1},${line.x2},${line.y2}`} of={line} />
          ))}
          {dots.map(({ x, y }) => (
            <circle key={`${x},${y}`} cx={x} cy={y} r={isLit(shaft) ? 4 : 3} />
          ))}
        </g>
      ))}
      <g className={shaftClass(layout.inputShaft)}>
        <Line of={layout.input} />
        <path d={`M${layout.input.x2 - 5} ${layout.input.y1}l${-head} -4v8z`} />
      </g>
      <g className={shaftClass(layout.outputShaft)}>
        <Line of={{ ...layout.output, x2: layout.output.x2 - head }} />
        <path d={`M${layout.output.x2} ${layout.output.y1}l${-head} -4v8z`} />
      </g>
      {layout.grounds.map((ground) => (
        <Ground key={`${ground.set}/${ground.member}`} of={ground} isLit={isLit(CASE)} />
      ))}
      {layout.sets.map((set) => (
        <GearsetSymbol key={set.set.id} of={set} isLit={isLit} />
      ))}
      {layout.elements.map((element) => (
        <ElementSymbol
          key={element.element.id}
          of={element}
          isOn={applied.includes(element.element.id)}
          isLit={isLit}
        />
      ))}
      <Text label={layout.inputLabel} className="dr-port" />
      <Text label={layout.outputLabel} className="dr-port" />
      {tags.map(
        (tag, index) =>
          tag && (
            <g key={litShafts[index]} className="dr-tag">
              <line x1={tag.on.x} y1={tag.on.y} x2={tag.x} y2={tag.y} />
              <circle cx={tag.x} cy={tag.y} r={TAG_RADIUS} />
              <text x={tag.x} y={tag.y + 4} textAnchor="middle">
                {index + 1}
              </text>
            </g>
          ),
      )}
    </>
  );
}

export function TrainDiagram({ drawing, unit, say }: Props) {
  const { train } = unit.deck;
  const showTeeth = drawing.showTeeth ?? false;
  const layout = useMemo(() => layoutOf(train, showTeeth, say), [train, showTeeth, say]);
  const title = useId();
  const { applied, litShafts = [] } = drawing;
  const tags: Tags = litShafts.length > 1 ? tagShafts(layout, litShafts) : [];
  const numbered = litShafts.map((id, index) =>
    tags[index]
      ? phrase('drawing.tagged', { number: index + 1, shaft: thing('shaft', id) })
      : thing('shaft', id),
  );
  return (
    <>
      <Scroller label={say(phrase('drawing.scroll', { drawing: say(phrase('drawing.train')) }))}>
        <svg
          className="dr-train"
          role="img"
          aria-labelledby={title}
          viewBox={`0 0 ${layout.width} ${layout.height}`}
          style={{
            minWidth: Math.ceil((layout.width * LEAST_FONT) / SIZE.font),
            maxWidth: layout.width * LARGEST,
          }}
        >
          <title id={title}>{say(phrase('drawing.stick', { unit: unit.deck.unit }))}</title>
          <Sketch layout={layout} drawing={drawing} tags={tags} />
        </svg>
      </Scroller>
      {applied && <p className="dr-note">{say(shownOn(applied))}</p>}
      {litShafts.length > 0 && (
        <p className="dr-note">{say(phrase('drawing.lit', { count: litShafts.length, shafts: numbered }))}</p>
      )}
      <details className="dr-more">
        <summary>{say(phrase('drawing.in-words'))}</summary>
        <ul className="dr-words">
          {inWords({ drawing, unit, say }).map((line) => {
            const text = say(line);
            return <li key={text}>{text}</li>;
          })}
        </ul>
      </details>
    </>
  );
}
