/** What a backup that came in would bring, and putting it in. Decks go through every check, as any deck from outside. */
import { fail, pass, type Result } from '../../core/result.ts';
import type { ReceivedBackup } from '../../exchange/backup.ts';
import { type ExchangeTrouble, trouble } from '../../exchange/trouble.ts';
import type { Contents } from '../../storage/backup.ts';

export interface BackupOffer {
  readonly madeAt: number;
  readonly contents: Contents;
  /** Ids of decks in it that do not pass the checks of this version; they stay out. */
  readonly leftOut: readonly string[];
}

/** The backup checked as a whole; nothing is stored. */
export async function offerOf(received: ReceivedBackup): Promise<Result<BackupOffer, ExchangeTrouble>> {
  const { readContents } = await import('../../storage/backup.ts');
  const read = readContents(received.contents);
  if (!read.ok) return fail(trouble('wrong-shape', read.error.where));
  const { loadDeck } = await import('../../content/index.ts');
  const leftOut = new Set<string>();
  const passes = ({ id, revision, text }: { id: string; revision: number; text: string }) => {
    const loaded = loadDeck(text);
    const sound = loaded.ok && loaded.value.deck.id === id && loaded.value.deck.revision === revision;
    if (!sound) leftOut.add(id);
    return sound;
  };
  const decks = read.value.decks.filter(passes);
  const revisions = read.value.revisions.filter(({ deck, revision, text }) =>
    passes({ id: deck, revision, text }),
  );
  return pass({
    madeAt: received.madeAt,
    contents: { ...read.value, decks, revisions },
    leftOut: [...leftOut],
  });
}
