/** The bodies of the shaft line, from front to rear. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Place } from '../../core/workshop/draft.ts';
import { idFrom } from '../../exchange/csv/records.ts';
import type { SectionProps } from './desk.ts';
import { Fold } from './Fold.tsx';
import { IdField, SeveralField, TextField } from './fields.tsx';
import { LinesBox } from './LinesBox.tsx';
import { Provenance } from './Provenance.tsx';
import { headOf, Records } from './Records.tsx';

export const LINE: Place = ['shaftLine'];

export function Bodies({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  const { gearsets = [], elements = [] } = draft.train ?? {};
  const owners = [
    ...gearsets.flatMap(({ id }) => (id ? [{ value: `gearset:${id}`, label: id }] : [])),
    ...elements.flatMap(({ id }) => (id ? [{ value: `element:${id}`, label: id }] : [])),
  ];
  const take = (text: string) => {
    const lines = text.split('\n').filter((line) => line.trim() !== '');
    const taken = (draft.shaftLine ?? []).map(({ id }) => id);
    const bodies = lines.map((line) => {
      const { id, name } = idFrom(line.trim());
      let free = id;
      for (let number = 2; taken.includes(free); number++) free = `${id}-${number}`;
      taken.push(free);
      return { id: free, ...(name || free !== id ? { name: name ?? line.trim() } : {}) };
    });
    edit({ kind: 'all', edits: bodies.map((value) => ({ kind: 'insert', at: LINE, value })) });
  };
  return (
    <>
      <LinesBox
        say={say}
        label={phrase('workshop.bodies')}
        how={phrase('workshop.bodies-how')}
        onTake={take}
      />
      <Fold summary={say(phrase('workshop.bodies-here', { count: draft.shaftLine?.length ?? 0 }))}>
        <Records
          folds
          desk={desk}
          at={LINE}
          kind="part"
          ordered
          head={(index) => headOf(desk, LINE, index, 'workshop.body')}
        >
          {(at) => (
            <>
              <div className="fields tight">
                <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.name')} />
                <IdField kind="part" desk={desk} at={[...at, 'id']} label={phrase('workshop.short-id')} />
              </div>
              <SeveralField
                desk={desk}
                at={[...at, 'belongsTo']}
                label={phrase('workshop.belongs-to')}
                options={owners}
              />
              <Provenance desk={desk} at={at} />
            </>
          )}
        </Records>
      </Fold>
    </>
  );
}
