/** What cannot be opened, the names or one learner's store: what that means, and what can be done. */
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { Sheet } from '../../ui/Sheet.tsx';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';

interface Props {
  readonly trouble: StoreTrouble;
  readonly about: Phrase;
  readonly onAgain: () => void;
  /** Another way on: what it is called, and whom it is for. */
  readonly other: { readonly label: Phrase; readonly note: Phrase; readonly go: () => void };
}

export function NamesTrouble({ trouble, about, onAgain, other }: Props) {
  const say = useServices().sayFor(null);
  return (
    <Sheet top={<strong>Detent</strong>}>
      <h1>{say(about)}</h1>
      <TroubleNote trouble={trouble} say={say} />
      <button type="button" className="button key" onClick={onAgain}>
        {say(phrase('names.again'))}
      </button>
      <section className="frame">
        <p>{say(other.note)}</p>
        <button type="button" className="button plain" onClick={other.go}>
          {say(other.label)}
        </button>
      </section>
    </Sheet>
  );
}
