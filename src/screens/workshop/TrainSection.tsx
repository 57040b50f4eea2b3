/** The gear train: sets with their counts, what sits with what, the elements; drawn as far as it is described. */
import { say as phrase } from '../../core/questions/phrase.ts';
import { shaftsOfDraft } from '../../core/workshop/train.ts';
import type { SectionProps } from './desk.ts';
import { ELEMENTS, Elements } from './Elements.tsx';
import { Fold } from './Fold.tsx';
import { GEARSETS, Gearsets } from './Gearsets.tsx';
import { Vouch } from './Provenance.tsx';
import { Sketch } from './Sketch.tsx';
import { shaftLabel } from './shafts.ts';

/** Names of shafts: only for reading, so they come last. */
function Shafts({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  const named = draft.train?.shafts ?? [];
  // A name whose shaft is gone is listed too, so that it can be emptied.
  const shafts = [...new Set([...shaftsOfDraft(draft), ...named.flatMap(({ id }) => id ?? [])])];
  const setName = (shaft: string, name: string) => {
    const index = named.findIndex(({ id }) => id === shaft);
    const run = `shaft-name/${shaft}`;
    if (index < 0) edit({ kind: 'insert', at: ['train', 'shafts'], value: { id: shaft, name } }, run);
    else if (name === '') edit({ kind: 'remove', at: ['train', 'shafts', index] }, run);
    else edit({ kind: 'set', at: ['train', 'shafts', index, 'name'], value: name }, run);
  };
  return (
    <Fold summary={say(phrase('workshop.shaft-names'))}>
      <div className="fields">
        {shafts.map((shaft) => (
          <label key={shaft} className="field">
            <span>
              {shaftLabel({ ...desk, draft: { ...draft, train: { ...draft.train, shafts: [] } } }, shaft)}
            </span>
            <input
              type="text"
              autoComplete="off"
              value={named.find(({ id }) => id === shaft)?.name ?? ''}
              onChange={({ target }) => setName(shaft, target.value)}
              onBlur={desk.endRun}
            />
          </label>
        ))}
      </div>
    </Fold>
  );
}

export function TrainSection({ desk }: SectionProps) {
  const { say } = desk;
  return (
    <>
      <div className="beside">
        <div className="beside-drawing">
          <Sketch desk={desk} />
        </div>
        <div className="beside-form">
          <h3>{say(phrase('workshop.sets'))}</h3>
          <p className="aside">{say(phrase('workshop.sets-hint'))}</p>
          <Gearsets desk={desk} />
          <h3>{say(phrase('workshop.elements'))}</h3>
          <p className="aside">{say(phrase('workshop.elements-hint'))}</p>
          <Elements desk={desk} />
          <Shafts desk={desk} />
        </div>
      </div>
      <Vouch desk={desk} lists={[GEARSETS, ELEMENTS]} />
    </>
  );
}
