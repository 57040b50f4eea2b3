/** Fits with their selective parts. What a thicker part does is held against one real case before it counts. */

import { EFFECTS, METHODS } from '../../core/measure/play.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { type DeckFit, FIT_KINDS, INSTRUMENTS } from '../../core/unit/fits.ts';
import { LENGTH_UNITS } from '../../core/unit/record.ts';
import { usualUnit } from '../../core/workshop/amounts.ts';
import { type Edit, freshId, type Place, valueAt } from '../../core/workshop/draft.ts';
import { figureFrom, finishDraft } from '../../core/workshop/finish.ts';
import { proveEffect } from '../../core/workshop/prove-effect.ts';
import { readFits } from '../../exchange/csv/fits.ts';
import { AmountField } from './AmountField.tsx';
import type { Desk, SectionProps } from './desk.ts';
import { Fold } from './Fold.tsx';
import { ChoiceField, IdField, PickField, TextField, TickField, textAt } from './fields.tsx';
import { LinesBox } from './LinesBox.tsx';
import { nameAndIdOptions, wordedOptions } from './options.ts';
import { PasteBox } from './PasteBox.tsx';
import { Provenance, Vouch } from './Provenance.tsx';
import { AddRecord, countAt, headOf, Records } from './Records.tsx';

const FITS: Place = ['fits'];

/** "A 1.60" a line: the code on the part and what it measures, thinnest first. */
function partsFrom(text: string, unit: string, taken: string[]): { id: string; thickness: object }[] {
  return text
    .split('\n')
    .flatMap((line) => {
      const match = /^\s*(?:(\S+)[\s=:;]+)?(\d{1,6}(?:[.,]\d{1,6})?)\s*(mm|in)?\s*$/.exec(line);
      if (!match) return [];
      const [, code, value = '', said] = match;
      const id = code ?? freshId('part-', taken);
      taken.push(id);
      return [{ id, thickness: { value: figureFrom(value), unit: said ?? unit } }];
    })
    .sort((a, b) => Number(a.thickness.value) - Number(b.thickness.value));
}

function Case({ desk, fit, at }: { desk: Desk; fit: Place; at: Place }) {
  const { draft, say } = desk;
  const method = textAt(desk, [...fit, 'method']);
  const typed = valueAt(draft, fit) as NonNullable<typeof draft.fits>[number];
  const reading = valueAt(draft, at) as NonNullable<typeof typed.readings>[number];
  const proof = proveEffect(typed, reading);
  const effect = textAt(desk, [...fit, 'effect']);
  const parts = nameAndIdOptions(typed.parts);
  return (
    <>
      <div className="fields tight">
        {method === 'part-fitted' && (
          <PickField desk={desk} at={[...at, 'fitted']} label={phrase('workshop.fitted')} options={parts} />
        )}
        {method === 'depths' ? (
          (['seat', 'standOff'] as const).map((depth) => (
            <div key={depth} className="fields">
              <AmountField
                desk={desk}
                at={[...at, depth, 'reading']}
                label={phrase(`workshop.depth.${depth}`)}
              />
              {textAt(desk, [...fit, 'bar', 'value']) !== '' && (
                <TickField desk={desk} at={[...at, depth, 'overBar']} label={phrase('workshop.over-bar')} />
              )}
            </div>
          ))
        ) : (
          <AmountField desk={desk} at={[...at, 'play']} label={phrase('workshop.play-read')} />
        )}
        <PickField
          desk={desk}
          at={[...at, 'chosen']}
          label={phrase('workshop.chosen')}
          options={parts}
          none={phrase('workshop.not-said')}
        />
        <AmountField desk={desk} at={[...at, 'result']} label={phrase('workshop.result')} />
      </div>
      <p role="status">
        {say(
          phrase('workshop.proof', {
            proof,
            agrees: effect === '' ? 'open' : effect === proof ? 'yes' : 'no',
          }),
        )}
      </p>
      {(proof === 'closes' || proof === 'opens') && effect !== proof && (
        <button
          type="button"
          className="button plain"
          onClick={() => desk.edit({ kind: 'set', at: [...fit, 'effect'], value: proof })}
        >
          {say(phrase('workshop.take-proof'))}
        </button>
      )}
      <Provenance desk={desk} at={at} />
    </>
  );
}

function FitFields({ desk, at }: { desk: Desk; at: Place }) {
  const { draft, say, edit } = desk;
  const [parts, readings] = [
    [...at, 'parts'],
    [...at, 'readings'],
  ];
  const typedParts = (valueAt(draft, parts) ?? []) as readonly { id?: string }[];
  const stack = draft.stacks?.find(({ id }) => id === textAt(desk, [...at, 'stack']));
  return (
    <>
      <div className="fields tight">
        <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.name')} />
        <IdField kind="fit" desk={desk} at={[...at, 'id']} label={phrase('workshop.short-id')} />
        <PickField
          desk={desk}
          at={[...at, 'kind']}
          label={phrase('workshop.fit-kind')}
          options={wordedOptions(say, FIT_KINDS, 'workshop.fit-kind')}
        />
        <TextField desk={desk} at={[...at, 'where']} label={phrase('workshop.where')} />
        <PickField
          desk={desk}
          at={[...at, 'method']}
          label={phrase('workshop.method')}
          options={wordedOptions(say, METHODS, 'workshop.method')}
        />
        <PickField
          desk={desk}
          at={[...at, 'instrument']}
          label={phrase('workshop.instrument')}
          options={wordedOptions(say, INSTRUMENTS, 'workshop.instrument')}
        />
        <AmountField desk={desk} at={[...at, 'limits', 'low']} label={phrase('workshop.low')} />
        <AmountField desk={desk} at={[...at, 'limits', 'high']} label={phrase('workshop.high')} />
        {textAt(desk, [...at, 'method']) === 'depths' && (
          <>
            <AmountField desk={desk} at={[...at, 'bar']} label={phrase('workshop.bar')} />
            <AmountField desk={desk} at={[...at, 'gasket']} label={phrase('workshop.gasket')} />
          </>
        )}
      </div>
      <Fold
        summary={say(phrase('workshop.selective', { count: typedParts.length }))}
        starts={typedParts.length === 0 ? 'open' : 'closed'}
      >
        <LinesBox
          say={say}
          label={phrase('workshop.parts-lines')}
          how={phrase('workshop.parts-lines-how', { unit: usualUnit(draft, LENGTH_UNITS) })}
          onTake={(text) => {
            const taken = typedParts.flatMap(({ id }) => id ?? []);
            const edits = partsFrom(text, usualUnit(draft, LENGTH_UNITS), taken).map(
              (value): Edit => ({ kind: 'insert', at: parts, value }),
            );
            edit({ kind: 'all', edits });
          }}
        />
        <Records desk={desk} at={parts} ordered head={(index) => headOf(desk, parts, index, 'workshop.part')}>
          {(part) => (
            <div className="fields tight">
              <TextField desk={desk} at={[...part, 'id']} label={phrase('workshop.part-code')} />
              <AmountField desk={desk} at={[...part, 'thickness']} label={phrase('workshop.thickness')} />
            </div>
          )}
        </Records>
      </Fold>
      <ChoiceField
        desk={desk}
        at={[...at, 'effect']}
        label={phrase('workshop.effect')}
        options={wordedOptions(say, EFFECTS, 'workshop.effect')}
      />
      <h4>{say(phrase('workshop.cases'))}</h4>
      <p className="aside">{say(phrase('workshop.cases-hint'))}</p>
      <Records desk={desk} at={readings} head={(index) => phrase('workshop.case-no', { number: index + 1 })}>
        {(reading) => <Case desk={desk} fit={at} at={reading} />}
      </Records>
      <AddRecord desk={desk} at={readings} stem="case-" label={phrase('workshop.add-case')} />
      <Fold summary={say(phrase('workshop.more-of-fit'))}>
        <div className="fields tight">
          <AmountField desk={desk} at={[...at, 'aim']} label={phrase('workshop.aim')} />
          <AmountField desk={desk} at={[...at, 'spread']} label={phrase('workshop.spread')} />
          <PickField
            desk={desk}
            at={[...at, 'seat']}
            label={phrase('workshop.of-seat')}
            options={nameAndIdOptions(draft.seats)}
            none={phrase('workshop.not-said')}
          />
          <PickField
            desk={desk}
            at={[...at, 'stack']}
            label={phrase('workshop.in-stack')}
            options={nameAndIdOptions(draft.stacks)}
            none={phrase('workshop.not-said')}
          />
          {stack && (
            <PickField
              desk={desk}
              at={[...at, 'item']}
              label={phrase('workshop.of-plate')}
              options={nameAndIdOptions(stack.items)}
              none={phrase('workshop.not-said')}
            />
          )}
        </div>
      </Fold>
      <Provenance desk={desk} at={at} />
    </>
  );
}

export function FitSection({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  const existing = ((finishDraft({ fits: draft.fits }).fits ?? []) as DeckFit[]).filter(({ parts }) =>
    Array.isArray(parts),
  );
  return (
    <>
      <PasteBox
        has={draft.fits?.length ?? 0}
        say={say}
        label={phrase('workshop.paste-fits')}
        how={phrase('workshop.paste-fits-how')}
        read={(text) => readFits(text, existing)}
        tell={(fits) => phrase('workshop.fits-read', { fits: fits.map(({ id }) => id) })}
        onTake={(fits) => {
          const others = (draft.fits ?? []).filter(({ id }) => !fits.some((fit) => fit.id === id));
          edit({ kind: 'set', at: FITS, value: [...others, ...fits] });
        }}
      />
      <Records
        folds
        desk={desk}
        at={FITS}
        kind="fit"
        head={(index) => headOf(desk, FITS, index, 'workshop.fit')}
      >
        {(at) => <FitFields desk={desk} at={at} />}
      </Records>
      <AddRecord desk={desk} at={FITS} stem="fit-" value={{ parts: [] }} label={phrase('workshop.add-fit')} />
      {countAt(desk, FITS) > 0 && <Vouch desk={desk} lists={[FITS]} />}
    </>
  );
}
