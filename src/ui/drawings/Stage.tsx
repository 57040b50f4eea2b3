/**
 * Holds a drawing: it scrolls by itself when wider than the page, is told in words to who cannot see it, and
 * carries numbered places that can be tapped. The same places stand as keys under the drawing, so the rings here
 * are for the thumb only and no stop of the keyboard.
 */
import { type ReactNode, useId } from 'react';
import { Hatching } from './hatching.tsx';
import { Scroller } from './Scroller.tsx';
import { type Spot, UNDER } from './spots.ts';

/** What of the drawing's `places` is picked and, once checked, right; a tap picks another. */
export interface Tapped {
  readonly picked: string | null;
  readonly right: string | null;
  readonly onPick: ((place: string) => void) | undefined;
}

interface Props {
  readonly className: string;
  readonly width: number;
  readonly height: number;
  readonly title: string;
  /** Said when the drawing is wider than the page. */
  readonly scroll: string;
  /** All that is seen, a sentence each. */
  readonly words: readonly string[];
  readonly spots?: readonly Spot[];
  readonly tapped?: Tapped | undefined;
  /** How far it may grow beyond its natural size. */
  readonly largest?: number;
  readonly children: ReactNode;
}

function Ring({ spot, tapped, style }: { spot: Spot; tapped: Tapped | undefined; style: object }) {
  const states = [
    'dr-spot',
    tapped?.picked === spot.id ? 'dr-spot-picked' : '',
    tapped?.right === spot.id ? 'dr-spot-right' : '',
  ];
  const className = states.filter(Boolean).join(' ');
  const { onPick } = tapped ?? {};
  return onPick ? (
    <button
      type="button"
      tabIndex={-1}
      aria-hidden="true"
      className={className}
      style={style}
      data-spot={spot.id}
      onClick={() => onPick(spot.id)}
    >
      <span>{spot.label}</span>
    </button>
  ) : (
    <span aria-hidden="true" className={className} style={style} data-spot={spot.id}>
      <span>{spot.label}</span>
    </span>
  );
}

export function Stage(props: Props) {
  const {
    className,
    width,
    height,
    title,
    scroll,
    words,
    spots = [],
    tapped,
    largest = 1.5,
    children,
  } = props;
  const name = useId();
  const told = useId();
  const percent = (part: number, whole: number) => `${(100 * part) / whole}%`;
  return (
    <>
      <Scroller label={scroll}>
        <div className="dr-stage" style={{ minWidth: width, maxWidth: width * largest }}>
          <svg
            className={`dr-svg ${className}`}
            role="img"
            aria-labelledby={name}
            aria-describedby={words.length > 0 ? told : undefined}
            viewBox={`0 0 ${width} ${height}`}
          >
            <title id={name}>{title}</title>
            <Hatching>{children}</Hatching>
            {spots.map(
              ({ id, x, y, under }) =>
                under && (
                  <text key={id} x={x} y={y + UNDER} textAnchor="middle" className="dr-under-ring">
                    {under}
                  </text>
                ),
            )}
            {spots.map(
              ({ id, x, y, at, via = at }) =>
                at &&
                via && (
                  <g key={id} className={tapped?.picked === id ? 'dr-leader dr-lit' : 'dr-leader'}>
                    <path d={`M${x} ${y}L${via.x} ${via.y}L${at.x} ${at.y}`} />
                    <circle cx={at.x} cy={at.y} r="2" />
                  </g>
                ),
            )}
          </svg>
          {spots.map((spot) => (
            <Ring
              key={spot.id}
              spot={spot}
              tapped={tapped}
              style={{ left: percent(spot.x, width), top: percent(spot.y, height) }}
            />
          ))}
        </div>
      </Scroller>
      {words.length > 0 && (
        <ul className="dr-unseen" id={told}>
          {words.map((line, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two plates may be told in the same words
            <li key={index}>{line}</li>
          ))}
        </ul>
      )}
    </>
  );
}
