/** Keys 1 to 9 press the first nine choices, unless a text field has the keyboard. */
import { useEffect, useRef } from 'react';

export function useNumberKeys(count: number, press: (index: number) => void, active: boolean) {
  const latest = useRef(press);
  latest.current = press;
  useEffect(() => {
    if (!active) return;
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.target instanceof HTMLInputElement) return;
      const index = Number(event.key) - 1;
      if (Number.isInteger(index) && index >= 0 && index < Math.min(count, 9)) latest.current(index);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [count, active]);
}
