/** Section lining: two slopes that tell neighbours apart, dots for friction lining. Print and any eye keep them. */
import { createContext, type ReactNode, useContext, useId } from 'react';

export const LININGS = ['rising', 'falling', 'dotted'] as const;
export type Lining = (typeof LININGS)[number];

type Fills = Readonly<Record<Lining, string>>;

const Drawn = createContext<Fills>({ rising: 'none', falling: 'none', dotted: 'none' });

/** What to fill with: useHatching().rising. */
export const useHatching = (): Fills => useContext(Drawn);

function Slope({ id, turn, apart }: { id: string; turn: number; apart: number }) {
  return (
    <pattern
      id={id}
      width={apart}
      height={apart}
      patternUnits="userSpaceOnUse"
      patternTransform={`rotate(${turn})`}
    >
      <line x1="0" y1="0" x2="0" y2={apart} className="dr-lining" />
    </pattern>
  );
}

/** Defines the linings within an svg, for everything drawn in it. */
export function Hatching({ children }: { children: ReactNode }) {
  const id = useId();
  const fill = (lining: Lining) => `url(#${id}${lining})`;
  return (
    <Drawn value={{ rising: fill('rising'), falling: fill('falling'), dotted: fill('dotted') }}>
      <defs>
        <Slope id={`${id}rising`} turn={45} apart={6} />
        <Slope id={`${id}falling`} turn={-45} apart={6} />
        <pattern id={`${id}dotted`} width="5" height="5" patternUnits="userSpaceOnUse">
          <circle cx="1.25" cy="1.25" r="0.8" className="dr-dot" />
          <circle cx="3.75" cy="3.75" r="0.8" className="dr-dot" />
        </pattern>
      </defs>
      {children}
    </Drawn>
  );
}
