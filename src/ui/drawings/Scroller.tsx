/** Lets a drawing that is wider than the page scroll by itself, with a visible edge and by keyboard. */
import { type ReactNode, useEffect, useRef, useState } from 'react';

interface Props {
  /** Said when the content overflows and the scroller becomes a stop for the keyboard. */
  readonly label: string;
  readonly children: ReactNode;
}

export function Scroller({ label, children }: Props) {
  const box = useRef<HTMLDivElement>(null);
  const [hidden, setHidden] = useState({ left: false, right: false });
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    const look = () => {
      const left = element.scrollLeft > 1;
      const right = element.scrollLeft + element.clientWidth < element.scrollWidth - 1;
      setHidden((was) => (was.left === left && was.right === right ? was : { left, right }));
    };
    look();
    element.addEventListener('scroll', look, { passive: true });
    const observer = typeof ResizeObserver === 'undefined' ? undefined : new ResizeObserver(look);
    observer?.observe(element);
    // What is inside may grow by itself: a typeface that arrives late, another drawing.
    for (const child of element.children) observer?.observe(child);
    return () => {
      element.removeEventListener('scroll', look);
      observer?.disconnect();
    };
  }, []);
  const overflows = hidden.left || hidden.right;
  const edges = `${hidden.left ? ' dr-more-left' : ''}${hidden.right ? ' dr-more-right' : ''}`;
  return (
    <div className={`dr-frame${edges}`}>
      <div
        className="dr-scroll"
        ref={box}
        {...(overflows ? { role: 'region', 'aria-label': label, tabIndex: 0 } : {})}
      >
        {children}
      </div>
    </div>
  );
}
