/**
 * The way from something wrong to where it is written: the deck's draft is opened, or begun, at the record that a
 * flag, or a look-up, is about. `about` is "flag:" and the flag's id, or a reference of the deck.
 */
import { useEffect } from 'react';
import { Link, useLocation } from 'wouter';
import { openDraft } from '../../content/open-draft.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { questionOf } from '../../core/questions/reopen.ts';
import { fail, pass, type Result } from '../../core/result.ts';
import type { Ref } from '../../core/unit/refs.ts';
import type { DeckDraft } from '../../core/workshop/draft.ts';
import { placeOf } from '../../core/workshop/place-of.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { Sheet } from '../../ui/Sheet.tsx';
import { type Services, useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { sectionOf } from './sections.ts';

/** References that a flag or a look-up is about; those of a flag are what its question rests on. */
export async function refsAbout(
  { store, unitOf }: Services,
  deckText: string,
  about: string,
): Promise<Result<{ readonly note: string | null; readonly refs: readonly Ref[] }, StoreTrouble>> {
  const unit = unitOf(deckText);
  if (!about.startsWith('flag:')) return pass({ note: null, refs: [about as Ref] });
  const flags = await store.classroom.flagsOf(unit.deck.id);
  if (!flags.ok) return flags;
  const flag = flags.value.find(({ id }) => `flag:${id}` === about);
  if (!flag) return pass({ note: null, refs: [] });
  const question = questionOf(unit, flag);
  return pass({ note: flag.note, refs: question ? [...new Set(question.uses)] : [] });
}

type Way = string | null;

async function wayTo(services: Services, deckId: string, about: string): Promise<Result<Way, StoreTrouble>> {
  const { store, now, newId } = services;
  const [decks, drafts] = await Promise.all([store.decks(), store.workshop.drafts()]);
  if (!decks.ok) return fail(decks.error);
  if (!drafts.ok) return fail(drafts.error);
  const stored = decks.value.find(({ id }) => id === deckId);
  if (!stored) return pass(null);
  const read = (text: string): DeckDraft => openDraft(JSON.parse(text))?.draft ?? {};
  const open = drafts.value.find(({ text }) => read(text).id === deckId);
  const draft = read(open?.text ?? stored.text);
  const refs = await refsAbout(services, stored.text, about);
  if (!refs.ok) return refs;
  const ref = refs.value.refs.find((one) => placeOf(draft, one) !== null);
  const place = ref && placeOf(draft, ref);
  const id = open?.id ?? newId();
  if (!open) {
    const kept = await store.workshop.keep({
      id,
      unit: String(draft.unit ?? ''),
      text: JSON.stringify(draft),
      savedAt: now().at,
    });
    if (!kept.ok) return fail(kept.error);
  }
  const section = place ? sectionOf(`/${place.join('/')}`) : 'revisions';
  return pass(
    `/workshop/${id}/${section}/${encodeURIComponent(about)}${ref ? `/${encodeURIComponent(ref)}` : ''}`,
  );
}

export function FixScreen({ deck, about }: { deck: string; about: string }) {
  const services = useServices();
  const say = services.sayFor(null);
  const [, go] = useLocation();
  const way = useLoaded(() => wayTo(services, deck, about), `${deck} ${about}`);
  const to = way?.ok ? way.value : null;
  useEffect(() => {
    if (to) go(to, { replace: true });
  }, [to, go]);
  if (!way || to) return null;
  return (
    <Sheet top={<Link href="/workshop">{say(phrase('app.back'))}</Link>}>
      {way.ok ? (
        <p className="note">{say(phrase('fix.no-deck', { deck }))}</p>
      ) : (
        <TroubleNote trouble={way.error} say={say} />
      )}
    </Sheet>
  );
}
