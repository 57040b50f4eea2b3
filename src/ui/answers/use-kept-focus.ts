/**
 * Keeps the keyboard's place where a button goes away as it is pressed: the focus moves to the one now beside it in
 * the same list or group, else to the first of the group. Call what it returns before such a change.
 */
import { type RefObject, useEffect, useRef } from 'react';

const WITHIN = ['ol button', 'fieldset button'] as const;

/** `wanted`: whether there is something left to go on with; if not, Enter belongs to the screen. */
export function useKeptFocus(form: RefObject<HTMLElement | null>, wanted: boolean): () => void {
  const pressed = useRef<{ readonly within: string; readonly index: number } | null>(null);
  const buttons = (within: string) => [...(form.current?.querySelectorAll<HTMLElement>(within) ?? [])];
  useEffect(() => {
    const before = pressed.current;
    pressed.current = null;
    if (!before || !wanted || document.activeElement !== document.body) return;
    const beside = buttons(before.within);
    const next = beside[Math.min(before.index, beside.length - 1)] ?? buttons('fieldset button')[0];
    next?.focus({ preventScroll: true });
  });
  return () => {
    const held = document.activeElement as HTMLElement;
    const within = WITHIN.find((selector) => buttons(selector).includes(held));
    pressed.current = within ? { within, index: buttons(within).indexOf(held) } : null;
  };
}
