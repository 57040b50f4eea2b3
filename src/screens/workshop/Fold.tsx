/**
 * A part that folds away, and stays as it was left when what is in it changes. What was never folded out is not made:
 * a deck has hundreds of records, and each key pressed draws anew what is there.
 */
import { type ReactNode, useState } from 'react';

interface Props {
  readonly summary: ReactNode;
  /** How it stands at first. */
  readonly starts?: 'open' | 'closed';
  readonly className?: string;
  readonly children: ReactNode;
}

export function Fold({ summary, starts = 'closed', className, children }: Props) {
  const [open, setOpen] = useState(starts === 'open');
  const [made, setMade] = useState(open);
  return (
    <details
      open={open}
      className={className}
      onToggle={({ currentTarget }) => {
        setOpen(currentTarget.open);
        if (currentTarget.open) setMade(true);
      }}
    >
      <summary>{summary}</summary>
      {made && children}
    </details>
  );
}
