/** Where a value comes from, who checked it and when, or that nobody has: for one record, and for many at once. */
import { say as phrase } from '../../core/questions/phrase.ts';
import { type Edit, type Place, valueAt } from '../../core/workshop/draft.ts';
import type { Desk } from './desk.ts';
import { Fold } from './Fold.tsx';
import { ActField, AreaField, type Option, PickField, TextField, TickField, WriterField } from './fields.tsx';
import { NoteCard } from './NoteCard.tsx';

export const sourceOptions = ({ draft }: Desk): Option[] =>
  (draft.sources ?? []).flatMap(({ id, title }) => (id ? [{ value: id, label: title || id }] : []));

export const checkedBy = ({ writer, today }: Desk) => ({ by: writer, on: today });

/** Bench notes that the record was made from, found by the ids on the way to it. */
function evidenceFor({ draft, draftId, notes }: Desk, at: Place) {
  const ids = at.flatMap((step, depth) =>
    typeof step === 'number'
      ? [(valueAt(draft, at.slice(0, depth + 1)) as { id?: string } | undefined)?.id ?? '']
      : [],
  );
  const [holder, id] = [ids.length > 1 ? `/${ids.at(-2)}` : '', ids.at(-1) ?? ''];
  const record = `${at[0]}${holder}:${id}`;
  return notes.filter(({ usedIn }) => usedIn?.draft === draftId && usedIn.record === record);
}

export function Provenance({ desk, at }: { readonly desk: Desk; readonly at: Place }) {
  const unsure = valueAt(desk.draft, [...at, 'unsure']) === true;
  const verified = valueAt(desk.draft, [...at, 'verified']) !== undefined;
  const { say, writer } = desk;
  const state = unsure ? 'unsure' : verified ? 'verified' : 'open';
  const evidence = evidenceFor(desk, at);
  return (
    <Fold
      className="provenance-form"
      summary={
        <>
          {say(phrase('workshop.provenance', { state }))}
          {evidence.length > 0 && ` ${say(phrase('bench.evidence', { count: evidence.length }))}`}
        </>
      }
    >
      {evidence.map((note) => (
        <NoteCard key={note.id} note={note} say={say} />
      ))}
      <div className="fields">
        <PickField
          desk={desk}
          at={[...at, 'source']}
          label={phrase('workshop.source')}
          options={sourceOptions(desk)}
          none={phrase('workshop.no-source')}
        />
        <TextField
          desk={desk}
          at={[...at, 'measuredBy']}
          label={phrase('workshop.measured-by')}
          offers={writer ? [writer] : []}
        />
        <TextField desk={desk} at={[...at, 'verified', 'by']} label={phrase('workshop.verified-by')} />
        <TextField
          desk={desk}
          at={[...at, 'verified', 'on']}
          label={phrase('workshop.verified-on')}
          type="date"
        />
      </div>
      <div className="row-of-buttons">
        {writer !== '' && (
          <button
            type="button"
            className="button plain"
            onClick={() =>
              desk.edit({
                kind: 'all',
                edits: [
                  { kind: 'set', at: [...at, 'verified'], value: checkedBy(desk) },
                  // Whoever checked it is sure.
                  { kind: 'set', at: [...at, 'unsure'], value: undefined },
                ],
              })
            }
          >
            {say(phrase('workshop.verify', { writer }))}
          </button>
        )}
        <TickField desk={desk} at={[...at, 'unsure']} label={phrase('workshop.unsure')} />
      </div>
      <AreaField desk={desk} at={[...at, 'note']} label={phrase('workshop.note')} rows={2} />
    </Fold>
  );
}

/** For all records of these lists at once: one source, or one person who checked all that is not marked unsure. */
export function Vouch({ desk, lists }: { readonly desk: Desk; readonly lists: readonly Place[] }) {
  const records = lists.flatMap((at) => {
    const list = valueAt(desk.draft, at);
    return (Array.isArray(list) ? list : []).map((record: unknown, index) => ({
      at: [...at, index] as Place,
      unsure: (record as { unsure?: unknown }).unsure === true,
    }));
  });
  const setAll = (edits: readonly Edit[]) => desk.edit({ kind: 'all', edits });
  if (records.length === 0) return null;
  const { say, writer } = desk;
  const sources = sourceOptions(desk);
  return (
    <Fold summary={say(phrase('workshop.all-of-these', { count: records.length }))}>
      <div className="fields">
        {sources.length > 0 && (
          <ActField
            label={say(phrase('workshop.source-of-all'))}
            none={say(phrase('workshop.pick'))}
            options={sources}
            onPick={(value) =>
              value !== '' && setAll(records.map(({ at }) => ({ kind: 'set', at: [...at, 'source'], value })))
            }
          />
        )}
        <WriterField desk={desk} />
      </div>
      {writer !== '' && (
        <button
          type="button"
          className="button plain"
          onClick={() =>
            setAll(
              records
                .filter(({ unsure }) => !unsure)
                .map(({ at }) => ({ kind: 'set', at: [...at, 'verified'], value: checkedBy(desk) })),
            )
          }
        >
          {say(phrase('workshop.verify-all', { writer }))}
        </button>
      )}
    </Fold>
  );
}
