/** Out of the workshop: among the decks on the device, as a file, and as tables for a spreadsheet. */
import { useState } from 'react';
import { useLocation } from 'wouter';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Deck } from '../../core/unit/deck.ts';
import { finishDraft, writeDeck } from '../../core/workshop/finish.ts';
import { writeChart } from '../../exchange/csv/chart.ts';
import { writeFits } from '../../exchange/csv/fits.ts';
import { writeSequences } from '../../exchange/csv/sequences.ts';
import { writeStacks } from '../../exchange/csv/stacks.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { fileName, saveFile } from '../handing/save-file.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { Correct } from './Correct.tsx';
import type { Desk } from './desk.ts';
import { type Published, publish } from './publish.ts';

interface Props {
  readonly desk: Desk;
  /** Called when the decks on the device, or the choice of one, have changed. */
  readonly onChange: () => void;
}

const TABLES: readonly (readonly [name: string, write: (deck: Deck) => string | null])[] = [
  ['chart', writeChart],
  ['stacks', ({ stacks }) => (stacks ? writeStacks(stacks) : null)],
  ['fits', ({ fits }) => (fits ? writeFits(fits) : null)],
  ['sequences', ({ sequences }) => (sequences ? writeSequences(sequences) : null)],
];

export function PublishSection({ desk, onChange }: Props) {
  const services = useServices();
  const [, go] = useLocation();
  const [told, setTold] = useState<Published | null>(null);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const { draft, check, say } = desk;
  const ready = check.deck !== null;
  const made = finishDraft(draft);
  const name = fileName(String(made.id ?? 'deck'));

  const put = async () => {
    const published = await publish(services, draft);
    setTrouble(published.ok ? null : published.error);
    if (!published.ok) return;
    setTold(published.value);
    if (published.value.kind === 'refused') return;
    desk.replace(published.value.draft);
    onChange();
  };
  const tryIt = async (id: string) => {
    const chosen = await services.store.chooseDeck(id);
    if (!chosen.ok) return setTrouble(chosen.error);
    onChange();
    go('/preview');
  };

  return (
    <>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      <p>{say(phrase(ready ? 'workshop.publish-ready' : 'workshop.publish-waits'))}</p>
      <button type="button" className="button key" aria-disabled={!ready} onClick={() => ready && void put()}>
        {say(phrase('workshop.publish'))}
      </button>
      <div role="status">
        {told?.kind === 'refused' && <p className="note">{say(phrase('workshop.publish-refused'))}</p>}
        {told?.kind === 'published' && (
          <div className="note">
            <p>
              {say(
                phrase(told.changed ? 'workshop.published' : 'workshop.published-before', {
                  title: told.deck.title,
                  revision: told.deck.revision,
                }),
              )}
            </p>
            <button type="button" className="button" onClick={() => void tryIt(told.deck.id)}>
              {say(phrase('workshop.try'))}
            </button>
          </div>
        )}
      </div>
      <Correct
        key={`${made.id} ${told?.kind === 'published' ? told.deck.revision : ''}`}
        desk={desk}
        deckId={String(made.id ?? '')}
      />
      <h3>{say(phrase('workshop.files'))}</h3>
      <p className="aside">{say(phrase('workshop.files-hint'))}</p>
      <div className="row-of-buttons">
        <button
          type="button"
          className="button plain"
          onClick={() => saveFile(`${name}.json`, writeDeck(made), 'application/json')}
        >
          {say(phrase('workshop.save-deck'))}
        </button>
        {check.deck &&
          TABLES.map(([table, write]) => {
            const text = write(check.deck!);
            if (text === null) return null;
            return (
              <button
                key={table}
                type="button"
                className="button plain"
                onClick={() => saveFile(`${name}-${table}.csv`, text, 'text/csv')}
              >
                {say(phrase('workshop.save-table', { table: say(phrase(`workshop.table.${table}`)) }))}
              </button>
            );
          })}
      </div>
    </>
  );
}
