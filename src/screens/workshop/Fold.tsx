/** A part that folds away, and stays as it was left when what is in it changes. */
import { type ReactNode, useState } from 'react';

interface Props {
  readonly summary: string;
  /** How it stands at first. */
  readonly starts?: 'open' | 'closed';
  readonly children: ReactNode;
}

export function Fold({ summary, starts = 'closed', children }: Props) {
  const [open, setOpen] = useState(starts === 'open');
  return (
    <details open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{summary}</summary>
      {children}
    </details>
  );
}
