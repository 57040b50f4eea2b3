/**
 * What the form for an order is built of: plain elements that are tapped, until those that can be dragged as well
 * are loaded. They are a script of their own, since few questions want them; without it everything works by taps.
 */
import { type ComponentType, type ReactNode, type RefObject, useEffect, useState } from 'react';
import type { Say } from '../../words/words.ts';

export interface FrameProps {
  /** Ids of what is placed, from the first place on. */
  readonly order: readonly string[];
  readonly labelOf: (id: string) => string;
  readonly onPut: (id: string, place: number) => void;
  readonly onTakeOut: (id: string) => void;
  readonly say: Say;
  readonly children: ReactNode;
}

export interface PlaceProps {
  /** From 0. */
  readonly place: number;
  /** Id of what stands there. */
  readonly taken: string | undefined;
  readonly className: string;
  readonly children: ReactNode;
}

export interface KeysProps {
  readonly className: string;
  readonly children: ReactNode;
}

export interface KeyProps {
  readonly id: string;
  readonly onPress: () => void;
  readonly children: ReactNode;
}

export interface OrderParts {
  readonly Frame: ComponentType<FrameProps>;
  readonly Place: ComponentType<PlaceProps>;
  readonly Keys: ComponentType<KeysProps>;
  readonly Key: ComponentType<KeyProps>;
  readonly canDrag: boolean;
}

export const TAPPED: OrderParts = {
  Frame: ({ children }) => children,
  Place: ({ className, children }) => <li className={className}>{children}</li>,
  Keys: ({ className, children }) => <fieldset className={className}>{children}</fieldset>,
  Key: ({ onPress, children }) => (
    <button type="button" className="choice slim" onClick={onPress}>
      {children}
    </button>
  ),
  canDrag: false,
};

let loaded: OrderParts | undefined;

/**
 * Parts to build with. They are never changed under somebody's hands: while the focus is within the form, the
 * plain ones stay.
 */
export function useOrderParts(form: RefObject<HTMLElement | null>): OrderParts {
  const [parts, setParts] = useState(loaded ?? TAPPED);
  useEffect(() => {
    if (loaded) return;
    let wanted = true;
    void import('./order-dragging.tsx').then(({ DRAGGED }) => {
      loaded = DRAGGED;
      if (wanted && !form.current?.contains(document.activeElement)) setParts(DRAGGED);
    });
    return () => {
      wanted = false;
    };
  }, [form]);
  return parts;
}
