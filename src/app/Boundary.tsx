/** Catches what should never happen, says what is safe, and offers the way on. */
import { Component, type ReactNode } from 'react';
import { type Phrase, say as phrase } from '../core/questions/phrase.ts';
import { Sheet } from '../ui/Sheet.tsx';
import type { Language } from '../words/figures.ts';
import { UNLOADED } from '../words/unloaded.ts';
import type { Say } from '../words/words.ts';

interface Props {
  readonly say: Say;
  readonly language: Language;
  readonly children: ReactNode;
}

export class Boundary extends Component<Props, { readonly reference: string | null }> {
  override state = { reference: null };

  static getDerivedStateFromError(error: unknown) {
    return { reference: error instanceof Error ? error.message : String(error) };
  }

  override render() {
    const { say, language, children } = this.props;
    const { reference } = this.state;
    if (reference === null) return children;
    const { note, again } = UNLOADED[language];
    /** The words may be what is missing. */
    const told = (wanted: Phrase, instead: string) => {
      try {
        return say(wanted);
      } catch {
        return instead;
      }
    };
    return (
      <Sheet top={<strong>Detent</strong>}>
        <p className="note" role="alert">
          {told(phrase('app.broken', { reference }), `${note} (${reference})`)}
        </p>
        <button type="button" className="button key" onClick={() => window.location.reload()}>
          {told(phrase('app.reload'), again)}
        </button>
      </Sheet>
    );
  }
}
