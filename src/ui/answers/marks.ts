/** How a choice is marked once the answer is checked: by outline, hatching and a word, never by colour. */
export interface Mark {
  readonly className: string;
  /** Message key of the word; none for a choice that was rightly left alone. */
  readonly key: string | null;
}

export function markOf(picked: boolean, right: boolean, checked: boolean): Mark {
  if (!checked || (!picked && !right)) return { className: '', key: null };
  if (picked && right) return { className: 'was-right', key: 'mark.right' };
  return picked
    ? { className: 'was-wrong', key: 'mark.not-this' }
    : { className: 'was-right', key: 'mark.left-out' };
}
