/** What the unit is, and where its values come from. */
import { say as phrase } from '../../core/questions/phrase.ts';
import { finishDraft } from '../../core/workshop/finish.ts';
import type { SectionProps } from './desk.ts';
import { IdField, TextField, WriterField } from './fields.tsx';
import { AddRecord, Records } from './Records.tsx';

export function UnitSection({ desk }: SectionProps) {
  const { draft, say, writer, today } = desk;
  const made = finishDraft(draft);
  return (
    <>
      <div className="fields">
        <TextField
          desk={desk}
          at={['unit']}
          label={phrase('workshop.unit')}
          hint={phrase('workshop.unit-hint')}
        />
        <TextField
          desk={desk}
          at={['title']}
          label={phrase('workshop.title')}
          placeholder={typeof made.title === 'string' ? made.title : undefined}
        />
        <WriterField desk={desk} hint={phrase('workshop.writer-hint')} />
      </div>
      <details>
        <summary>{say(phrase('workshop.more-of-unit'))}</summary>
        <div className="fields">
          <TextField
            desk={desk}
            at={['id']}
            label={phrase('workshop.deck-id')}
            hint={phrase('workshop.deck-id-hint')}
            placeholder={typeof made.id === 'string' ? made.id : undefined}
          />
          <TextField desk={desk} at={['language']} label={phrase('workshop.language')} placeholder="en" />
        </div>
      </details>
      <h3>{say(phrase('workshop.sources'))}</h3>
      <p className="aside">{say(phrase('workshop.sources-hint'))}</p>
      <Records
        desk={desk}
        at={['sources']}
        kind="source"
        folds
        head={(index) =>
          phrase('workshop.source-no', {
            number: index + 1,
            title: draft.sources?.[index]?.title ?? '',
            titled: draft.sources?.[index]?.title ? 'yes' : 'no',
          })
        }
      >
        {(at) => (
          <div className="fields">
            <TextField desk={desk} at={[...at, 'title']} label={phrase('workshop.source-title')} />
            <TextField
              desk={desk}
              at={[...at, 'by']}
              label={phrase('workshop.source-by')}
              offers={writer ? [writer] : []}
            />
            <TextField desk={desk} at={[...at, 'on']} label={phrase('workshop.source-on')} type="date" />
            <IdField kind="source" desk={desk} at={[...at, 'id']} label={phrase('workshop.short-id')} />
          </div>
        )}
      </Records>
      <AddRecord
        desk={desk}
        at={['sources']}
        stem="source-"
        value={{ ...(writer && { by: writer }), on: today }}
        label={phrase('workshop.add-source')}
      />
    </>
  );
}
