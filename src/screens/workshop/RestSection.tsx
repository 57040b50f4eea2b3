/**
 * What has no form of its own: sensors, interlocks, the valve body, wires, fluids, torques, weights, codes. A part at
 * a time as the text of a deck file, told by the checks like all else; text that cannot be read changes nothing.
 */
import { useId, useState } from 'react';
import { sentenceOf } from '../../content/finding.ts';
import { readJson } from '../../content/json.ts';
import { openDraft } from '../../content/open-draft.ts';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import { valueAt } from '../../core/workshop/draft.ts';
import type { SectionProps } from './desk.ts';
import { REST_PARTS } from './sections.ts';

export function RestSection({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  const [field, list] = [useId(), useId()];
  const [part, setPart] = useState<(typeof REST_PARTS)[number]>(REST_PARTS[0]);
  const [typed, setTyped] = useState<string | null>(null);
  const [refused, setRefused] = useState<Phrase | null>(null);
  const value = valueAt(draft, [part]);
  const text = typed ?? (value === undefined ? '' : JSON.stringify(value, null, 2));
  const show = (next: (typeof REST_PARTS)[number]) => {
    setPart(next);
    setTyped(null);
    setRefused(null);
  };
  const change = (next: string) => {
    setTyped(next);
    if (next.trim() === '') {
      setRefused(null);
      return edit({ kind: 'set', at: [part], value: undefined }, `text/${part}`);
    }
    const json = readJson(next);
    setRefused(json.ok ? null : sentenceOf(json.error));
    if (!json.ok) return;
    // What has another make than the part of a deck would break the other sections.
    const opened = openDraft({ ...draft, [part]: json.value.value });
    if (opened) desk.replace(opened.draft, `text/${part}`);
  };
  return (
    <>
      <p className="aside">{say(phrase('workshop.rest-hint'))}</p>
      <div className="field">
        <label htmlFor={list}>{say(phrase('workshop.rest-part'))}</label>
        <select
          id={list}
          value={part}
          onChange={({ target }) => show(REST_PARTS.find((one) => one === target.value) ?? part)}
        >
          {REST_PARTS.map((one) => (
            <option key={one} value={one}>
              {say(
                phrase(`workshop.part.${one}`, { has: valueAt(draft, [one]) === undefined ? 'no' : 'yes' }),
              )}
            </option>
          ))}
        </select>
      </div>
      <div className="field">
        <label htmlFor={field}>{say(phrase('workshop.rest-text'))}</label>
        <textarea
          id={field}
          rows={14}
          className="table-text"
          spellCheck={false}
          value={text}
          onChange={({ target }) => change(target.value)}
          onBlur={() => {
            if (!refused) setTyped(null);
            desk.endRun();
          }}
        />
      </div>
      {refused && (
        <p className="note" role="status">
          {say(refused)}
        </p>
      )}
    </>
  );
}
