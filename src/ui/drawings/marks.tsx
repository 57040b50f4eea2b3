/** Marks of the apply chart, told apart by fill so that they survive print and any eye. */

export type Mark = 'on' | 'one-way';

export function ChartMark({ mark }: { mark: Mark }) {
  return (
    <svg className={`dr-mark dr-mark-${mark}`} viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
      <rect x="1.5" y="1.5" width="13" height="13" />
      {mark === 'one-way' && <path d="M1.5 1.5 V14.5 H14.5 Z" />}
    </svg>
  );
}
