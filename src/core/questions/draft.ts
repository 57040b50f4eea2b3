/** An answer on its way: what has been tapped or typed so far. Plain JSON, so a killed page can resume it. */
import { belongs } from './answer-space.ts';
import type { Answer, AnswerSpace } from './question.ts';
import { readTypedNumber } from './typed-number.ts';

export type Draft =
  | { readonly form: 'set'; readonly picks: readonly string[] }
  | { readonly form: 'one'; readonly pick: string | null }
  | { readonly form: 'order'; readonly order: readonly string[] }
  | { readonly form: 'number'; readonly text: string }
  | { readonly form: 'pair'; readonly pairs: Readonly<Record<string, string>> }
  | { readonly form: 'fill'; readonly cells: Readonly<Record<string, string>> }
  | { readonly form: 'place'; readonly spot: string | null };

export function emptyDraft(space: AnswerSpace): Draft {
  switch (space.form) {
    case 'set':
      return { form: 'set', picks: [] };
    case 'one':
      return { form: 'one', pick: null };
    case 'order':
      return { form: 'order', order: [] };
    case 'number':
      return { form: 'number', text: '' };
    case 'pair':
      return { form: 'pair', pairs: {} };
    case 'fill':
      return { form: 'fill', cells: {} };
    case 'place':
      return { form: 'place', spot: null };
  }
}

/** The finished answer, or null while something is still open. A set needs at least one tick. */
export function finishDraft(space: AnswerSpace, draft: Draft): Answer | null {
  let answer: Answer | null = null;
  if (draft.form === 'one') answer = draft.pick === null ? null : { form: 'one', pick: draft.pick };
  else if (draft.form === 'place') answer = draft.spot === null ? null : { form: 'place', spot: draft.spot };
  else if (draft.form === 'number') {
    const value = readTypedNumber(draft.text, space.form === 'number' ? space.decimals : 0);
    answer = value === null ? null : { form: 'number', value };
  } else if (draft.form !== 'set' || draft.picks.length > 0) answer = draft;
  return answer && belongs(space, answer) ? answer : null;
}
