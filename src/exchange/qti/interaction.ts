/** The part of an item that is answered: one interaction for each form, with its options in their own order. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Option, Question } from '../../core/questions/question.ts';
import { el, type XmlElement } from '../xml.ts';
import type { Speak } from './item.ts';
import { cellResponse, namesOf, RESPONSE } from './response.ts';

function choices(options: readonly Option[], names: ReadonlyMap<string, string>, speak: Speak): XmlElement[] {
  return options.map(({ id, label }) =>
    el('qti-simple-choice', { identifier: names.get(id)! }, speak(label)),
  );
}

/** The prompt and the interaction. A place on a drawing is picked from the list of its numbered places. */
export function interactionFor({ space, prompt }: Question, speak: Speak): XmlElement[] {
  const { left, right } = namesOf(space);
  const asked = el('qti-prompt', {}, speak(prompt));
  const common = { 'response-identifier': RESPONSE, shuffle: false };
  switch (space.form) {
    case 'one':
      return [
        el(
          'qti-choice-interaction',
          { ...common, 'max-choices': 1 },
          asked,
          ...choices(space.options, left, speak),
        ),
      ];
    case 'place': {
      const numbered = space.spots.map(({ id, label }, place) =>
        el(
          'qti-simple-choice',
          { identifier: left.get(id)! },
          speak(phrase('qti.place', { number: place + 1, label })),
        ),
      );
      return [el('qti-choice-interaction', { ...common, 'max-choices': 1 }, asked, ...numbered)];
    }
    case 'set':
      return [
        el(
          'qti-choice-interaction',
          { ...common, 'max-choices': 0 },
          asked,
          ...choices(space.options, left, speak),
        ),
      ];
    case 'order':
      return [
        el('p', {}, speak(phrase('qti.order', { first: space.first, last: space.last }))),
        el(
          'qti-order-interaction',
          { ...common, orientation: 'vertical' },
          asked,
          ...choices(space.items, left, speak),
        ),
      ];
    case 'pair': {
      const side = (options: readonly Option[], names: ReadonlyMap<string, string>, most: number) =>
        el(
          'qti-simple-match-set',
          {},
          ...options.map(({ id, label }) =>
            el(
              'qti-simple-associable-choice',
              { identifier: names.get(id)!, 'match-max': most },
              speak(label),
            ),
          ),
        );
      return [
        el(
          'qti-match-interaction',
          { ...common, 'max-associations': space.left.length },
          asked,
          side(space.left, left, 1),
          // No limit: one thing on the right may belong to several on the left.
          side(space.right, right, 0),
        ),
      ];
    }
    case 'number':
      return [
        el('p', {}, speak(prompt)),
        el(
          'p',
          {},
          el('qti-text-entry-interaction', { 'response-identifier': RESPONSE, 'expected-length': 10 }),
          ...(space.unit === null ? [] : [` ${speak(phrase('text', { text: space.unit }))}`]),
        ),
        el('p', {}, speak(phrase('qti.number', { decimals: space.decimals, tolerance: space.tolerance }))),
      ];
    case 'fill': {
      const labels = new Map(space.marks.map(({ id, label }) => [id, speak(label)]));
      const cell = (row: string, column: string) => {
        const key = `${row}/${column}`;
        const place = space.asked.indexOf(key);
        if (place < 0) return el('td', {}, labels.get(space.given[key] ?? '') ?? '');
        const marks = space.marks.map(({ id }) =>
          el('qti-inline-choice', { identifier: left.get(id)! }, labels.get(id)!),
        );
        const inline = { 'response-identifier': cellResponse(place), shuffle: false };
        return el('td', {}, el('qti-inline-choice-interaction', inline, ...marks));
      };
      return [
        el('p', {}, speak(prompt)),
        el(
          'table',
          {},
          el(
            'thead',
            {},
            el(
              'tr',
              {},
              el('td', {}),
              ...space.columns.map(({ label }) => el('th', { scope: 'col' }, speak(label))),
            ),
          ),
          el(
            'tbody',
            {},
            ...space.rows.map(({ id: row, label }) =>
              el(
                'tr',
                {},
                el('th', { scope: 'row' }, speak(label)),
                ...space.columns.map(({ id }) => cell(row, id)),
              ),
            ),
          ),
        ),
      ];
    }
  }
}
