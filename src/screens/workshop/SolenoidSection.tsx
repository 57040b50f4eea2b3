/** Solenoids by what a gauge shows with the plug off. Words like "normally open" are never asked for. */
import { say as phrase } from '../../core/questions/phrase.ts';
import { OTHER_FEEDS, PRESSURES, SOLENOID_KINDS } from '../../core/unit/deck.ts';
import { freshId, type Place } from '../../core/workshop/draft.ts';
import type { SectionProps } from './desk.ts';
import { ActField, ChoiceField, IdField, PickField, SeveralField, TextField } from './fields.tsx';
import { frictionOf, nameAndIdOptions, wordedOptions } from './options.ts';
import { Provenance, Vouch } from './Provenance.tsx';
import { headOf, Records } from './Records.tsx';

const SOLENOIDS: Place = ['solenoids'];

export function SolenoidSection({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  const solenoids = draft.solenoids ?? [];
  const friction = nameAndIdOptions(frictionOf(draft));
  const unfed = friction
    .map(({ value }) => value)
    .filter((id) => !solenoids.some(({ feeds }) => feeds?.includes(id)));
  const fed = [...friction, ...wordedOptions(say, OTHER_FEEDS, 'feed')];
  const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'.split('').map((letter) => `S${letter}`);
  const nextIds = (count: number) => {
    const taken = solenoids.map(({ id }) => id);
    const free = letters.filter((id) => !taken.includes(id));
    return Array.from({ length: count }, (_, index) => free[index] ?? freshId('S', taken));
  };
  const add = (feeds: readonly (readonly string[])[]) =>
    edit({
      kind: 'all',
      edits: nextIds(feeds.length).map((id, index) => ({
        kind: 'insert',
        at: SOLENOIDS,
        value: { id, feeds: feeds[index]! },
      })),
    });
  const kinds = wordedOptions(say, SOLENOID_KINDS, 'workshop.solenoid-kind');
  return (
    <>
      <p className="aside">{say(phrase('workshop.solenoids-hint'))}</p>
      {solenoids.length > 1 && (
        <ActField
          label={say(phrase('workshop.all-solenoids'))}
          none={say(phrase('workshop.pick'))}
          options={kinds}
          onPick={(value) =>
            edit({
              kind: 'all',
              edits: solenoids.map((_, index) => ({
                kind: 'set',
                at: [...SOLENOIDS, index, 'kind'],
                value: value || undefined,
              })),
            })
          }
        />
      )}
      <Records
        desk={desk}
        at={SOLENOIDS}
        kind="solenoid"
        head={(index) => headOf(desk, SOLENOIDS, index, 'workshop.solenoid')}
      >
        {(at) => (
          <>
            <div className="fields tight">
              <IdField
                kind="solenoid"
                desk={desk}
                at={[...at, 'id']}
                label={phrase('workshop.id')}
                className="narrow"
              />
              <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.name')} />
              <PickField
                desk={desk}
                at={[...at, 'kind']}
                label={phrase('workshop.solenoid-kind')}
                options={kinds}
              />
            </div>
            <SeveralField desk={desk} at={[...at, 'feeds']} label={phrase('workshop.feeds')} options={fed} />
            <ChoiceField
              desk={desk}
              at={[...at, 'whenUnplugged']}
              label={phrase('workshop.unplugged')}
              options={wordedOptions(say, PRESSURES, 'workshop.unplugged')}
            />
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <div className="row-of-buttons">
        {unfed.length > 0 && (
          <button type="button" className="button plain" onClick={() => add(unfed.map((id) => [id]))}>
            {say(phrase('workshop.add-solenoids', { elements: unfed }))}
          </button>
        )}
        <button type="button" className="button plain" onClick={() => add([[]])}>
          {say(phrase('workshop.add-solenoid'))}
        </button>
      </div>
      <Vouch desk={desk} lists={[SOLENOIDS]} />
    </>
  );
}
