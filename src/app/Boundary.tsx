/** Catches what should never happen, says what is safe, and offers the way on. */
import { Component, type ReactNode } from 'react';
import { say as phrase } from '../core/questions/phrase.ts';
import { Sheet } from '../ui/Sheet.tsx';
import type { Say } from '../words/words.ts';

interface Props {
  readonly say: Say;
  readonly children: ReactNode;
}

export class Boundary extends Component<Props, { readonly reference: string | null }> {
  override state = { reference: null };

  static getDerivedStateFromError(error: unknown) {
    return { reference: error instanceof Error ? error.message : String(error) };
  }

  override render() {
    const { say, children } = this.props;
    const { reference } = this.state;
    if (reference === null) return children;
    return (
      <Sheet top={<strong>Detent</strong>}>
        <p className="note" role="alert">
          {say(phrase('app.broken', { reference }))}
        </p>
        <button type="button" className="button key" onClick={() => window.location.reload()}>
          {say(phrase('app.reload'))}
        </button>
      </Sheet>
    );
  }
}
