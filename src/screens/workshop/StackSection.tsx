/** Packs of plates from the floor up: pasted, or added by the handful, and drawn as far as they are measured. */
import { useMemo } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import { ENDS } from '../../core/unit/record.ts';
import {
  type DeckStack,
  FEATURES,
  isInPack,
  OUTSIDE_PACK,
  STACK_KINDS,
  type StackKind,
  TOWARDS,
} from '../../core/unit/stacks.ts';
import { type Edit, freshId, type Place, valueAt } from '../../core/workshop/draft.ts';
import { finishDraft } from '../../core/workshop/finish.ts';
import { unitToDraw } from '../../core/workshop/train.ts';
import { readStacks } from '../../exchange/csv/stacks.ts';
import { Stack } from '../../ui/drawings/Stack.tsx';
import '../../ui/drawings/drawings.css';
import '../../ui/drawings/parts.css';
import '../../ui/drawings/stage.css';
import { useServices } from '../services.ts';
import { AmountField } from './AmountField.tsx';
import type { Desk, SectionProps } from './desk.ts';
import { Fold } from './Fold.tsx';
import { ChoiceField, IdField, PickField, TextField, textAt } from './fields.tsx';
import { frictionOf, nameAndIdOptions, wordedOptions } from './options.ts';
import { PasteBox } from './PasteBox.tsx';
import { Provenance, Vouch } from './Provenance.tsx';
import { AddRecord, countAt, headOf, Records } from './Records.tsx';

const STACKS: Place = ['stacks'];

/** Drawn once every plate has what a drawing needs; until then only the form stands there. */
function Drawn({ desk, index }: { desk: Desk; index: number }) {
  const { sayFor } = useServices();
  const pointer = `/stacks/${index}`;
  const whole = !desk.check.missing.some(({ place }) => `${place.pointer}/`.startsWith(`${pointer}/`));
  const text = JSON.stringify(desk.settled.stacks?.[index] ?? null);
  const drawn = useMemo(() => {
    const [stack] = (finishDraft({ stacks: [JSON.parse(text)] }).stacks ?? []) as DeckStack[];
    const measured = stack?.items.every((item) => !isInPack(item) || item.thickness);
    if (!whole || !stack || stack.items.length === 0 || !measured) return null;
    const unit = unitToDraw({}, { stacks: [stack] });
    return { unit, say: sayFor(unit), id: stack.id };
  }, [text, whole, sayFor]);
  if (!drawn) return <p className="aside">{desk.say(phrase('workshop.stack-not-drawn'))}</p>;
  return (
    <figure className="dr-figure">
      <Stack
        drawing={{ kind: 'stack', stack: drawn.id, showThickness: true }}
        unit={drawn.unit}
        say={drawn.say}
        tapped={undefined}
      />
    </figure>
  );
}

/** A plate like the last of its kind: same thickness, and alike where the last one has a peer. */
function plateLike(desk: Desk, items: Place, kind: StackKind, taken: string[]): object {
  const list = (valueAt(desk.draft, items) ?? []) as readonly {
    id?: string;
    kind?: string;
    thickness?: object;
    identical?: string;
  }[];
  const last = list.findLast((item) => item.kind === kind);
  const id = freshId(`${kind}-`, taken);
  taken.push(id);
  return {
    id,
    kind,
    ...(last?.thickness && { thickness: last.thickness }),
    ...(kind === 'friction' || kind === 'steel' ? { identical: kind } : {}),
  };
}

function Plates({ desk, at }: { desk: Desk; at: Place }) {
  const { say, edit } = desk;
  const items = [...at, 'items'];
  const kinds = wordedOptions(say, STACK_KINDS, 'workshop.plate-kind');
  const add = (pattern: readonly StackKind[]) => {
    const list = (valueAt(desk.draft, items) ?? []) as readonly { id?: string }[];
    const taken = list.flatMap(({ id }) => id ?? []);
    const edits = pattern.map(
      (kind): Edit => ({ kind: 'insert', at: items, value: plateLike(desk, items, kind, taken) }),
    );
    edit({ kind: 'all', edits });
  };
  /** Every plate of the kind gets this thickness. */
  const likewise = (index: number) => {
    const list = (valueAt(desk.draft, items) ?? []) as readonly { kind?: string; thickness?: unknown }[];
    const { kind, thickness } = list[index] ?? {};
    edit({
      kind: 'all',
      edits: list.flatMap((item, other): Edit[] =>
        item.kind === kind ? [{ kind: 'set', at: [...items, other, 'thickness'], value: thickness }] : [],
      ),
    });
  };
  return (
    <>
      <Records desk={desk} at={items} ordered head={(index) => headOf(desk, items, index, 'workshop.plate')}>
        {(plate, index) => {
          const kind = textAt(desk, [...plate, 'kind']);
          const bent = kind === 'waved' || kind === 'dished';
          return (
            <>
              <div className="fields tight">
                <PickField
                  desk={desk}
                  at={[...plate, 'kind']}
                  label={phrase('workshop.plate-kind')}
                  options={kinds}
                />
                {!OUTSIDE_PACK.some((outside) => outside === kind) && (
                  <AmountField
                    desk={desk}
                    at={[...plate, 'thickness']}
                    label={phrase(bent ? 'workshop.pressed-flat' : 'workshop.thickness')}
                  />
                )}
                {bent && (
                  <AmountField desk={desk} at={[...plate, 'free']} label={phrase('workshop.free-height')} />
                )}
                <TextField desk={desk} at={[...plate, 'identical']} label={phrase('workshop.identical')} />
              </div>
              <Fold summary={say(phrase('workshop.more-of-plate'))}>
                <div className="fields tight">
                  <TextField desk={desk} at={[...plate, 'id']} label={phrase('workshop.short-id')} />
                  <TextField desk={desk} at={[...plate, 'name']} label={phrase('workshop.name')} />
                  <PickField
                    desk={desk}
                    at={[...plate, 'looks', 'feature']}
                    label={phrase('workshop.one-sided')}
                    options={wordedOptions(say, FEATURES, 'workshop.feature')}
                    none={phrase('workshop.both-alike')}
                    onPick={(value) =>
                      edit({
                        kind: 'set',
                        at: value === '' ? [...plate, 'looks'] : [...plate, 'looks', 'feature'],
                        value: value || undefined,
                      })
                    }
                  />
                  {textAt(desk, [...plate, 'looks', 'feature']) !== '' && (
                    <PickField
                      desk={desk}
                      at={[...plate, 'looks', 'towards']}
                      label={phrase('workshop.towards')}
                      options={wordedOptions(say, TOWARDS, 'workshop.towards')}
                    />
                  )}
                </div>
                <button type="button" className="button plain small" onClick={() => likewise(index)}>
                  {say(phrase('workshop.likewise'))}
                </button>
                <Provenance desk={desk} at={plate} />
              </Fold>
            </>
          );
        }}
      </Records>
      <div className="row-of-buttons">
        <button type="button" className="button plain" onClick={() => add(['steel', 'friction'])}>
          {say(phrase('workshop.add-pair'))}
        </button>
        <button
          type="button"
          className="button plain"
          onClick={() =>
            add(['steel', 'friction', 'steel', 'friction', 'steel', 'friction', 'steel', 'friction'])
          }
        >
          {say(phrase('workshop.add-four-pairs'))}
        </button>
        {(['waved', 'backing', 'snap-ring'] as const).map((kind) => (
          <button key={kind} type="button" className="button plain" onClick={() => add([kind])}>
            {say(phrase('workshop.add-plate', { kind: say(phrase(`workshop.plate-kind.${kind}`)) }))}
          </button>
        ))}
      </div>
    </>
  );
}

export function StackSection({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  const friction = nameAndIdOptions(frictionOf(draft));
  const existing = ((finishDraft({ stacks: draft.stacks }).stacks ?? []) as DeckStack[]).filter(({ items }) =>
    Array.isArray(items),
  );
  const free = friction.find(({ value }) => !draft.stacks?.some(({ element }) => element === value))?.value;
  const taken = (draft.stacks ?? []).map(({ id }) => id);
  return (
    <>
      <PasteBox
        has={draft.stacks?.length ?? 0}
        say={say}
        label={phrase('workshop.paste-stacks')}
        how={phrase('workshop.paste-stacks-how')}
        read={(text) => readStacks(text, existing)}
        tell={(stacks) =>
          phrase('workshop.stacks-read', {
            stacks: stacks.map(({ id }) => id),
            plates: stacks.reduce((sum, { items }) => sum + items.length, 0),
          })
        }
        onTake={(stacks) => {
          const others = (draft.stacks ?? []).filter(({ id }) => !stacks.some((stack) => stack.id === id));
          edit({ kind: 'set', at: STACKS, value: [...others, ...stacks] });
        }}
      />
      <Records
        folds
        desk={desk}
        at={STACKS}
        kind="stack"
        head={(index) => headOf(desk, STACKS, index, 'workshop.stack')}
      >
        {(at, index) => (
          <>
            <div className="fields tight">
              <IdField
                kind="stack"
                desk={desk}
                at={[...at, 'id']}
                label={phrase('workshop.id')}
                className="narrow"
              />
              <PickField
                desk={desk}
                at={[...at, 'element']}
                label={phrase('workshop.pack-of')}
                options={friction}
                none={phrase('workshop.pack-of-none')}
              />
              <TextField
                desk={desk}
                at={[...at, 'floor']}
                label={phrase('workshop.floor')}
                placeholder={say(phrase('workshop.floor-such-as'))}
              />
            </div>
            <ChoiceField
              desk={desk}
              at={[...at, 'floorAt']}
              label={phrase('workshop.floor-at')}
              options={wordedOptions(say, ENDS, 'workshop.end')}
            />
            <Drawn desk={desk} index={index} />
            <Fold
              summary={say(phrase('workshop.plates', { count: countAt(desk, [...at, 'items']) }))}
              starts={countAt(desk, [...at, 'items']) === 0 ? 'open' : 'closed'}
            >
              <Plates desk={desk} at={at} />
            </Fold>
            <div className="fields">
              <AmountField desk={desk} at={[...at, 'room']} label={phrase('workshop.room')} />
              <PickField
                desk={desk}
                at={[...at, 'waves']}
                label={phrase('workshop.waves')}
                options={wordedOptions(say, ['flat', 'free'], 'workshop.waves')}
                none={phrase('workshop.not-said')}
              />
            </div>
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <AddRecord
        desk={desk}
        at={STACKS}
        value={{
          id: free && !taken.includes(free) ? free : freshId('pack-', taken),
          ...(free && { element: free }),
          items: [],
        }}
        label={phrase('workshop.add-stack')}
      />
      <Vouch desk={desk} lists={[STACKS]} />
    </>
  );
}
