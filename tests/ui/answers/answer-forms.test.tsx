// @vitest-environment jsdom
import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { useState } from 'react';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { type Draft, emptyDraft } from '../../../src/core/questions/draft.ts';
import { say as phrase } from '../../../src/core/questions/phrase.ts';
import type { Answer, AnswerSpace } from '../../../src/core/questions/question.ts';
import { AnswerForm } from '../../../src/ui/answers/AnswerForm.tsx';
import { makeSay } from '../../../src/words/words.ts';

afterEach(cleanup);

const say = makeSay(null);
const text = (words: string) => phrase('text', { text: words });
const option = (id: string, words: string) => ({ id, label: text(words) });

/** The form with a draft of its own, as a drill keeps it; `onDraft` hears every change. */
function Form({
  space,
  onDraft,
  right,
  start = emptyDraft(space),
}: {
  space: AnswerSpace;
  onDraft?: (draft: Draft) => void;
  right?: Answer;
  start?: Draft;
}) {
  const [draft, setDraft] = useState(start);
  const change = (next: Draft) => {
    setDraft(next);
    onDraft?.(next);
  };
  return <AnswerForm space={space} draft={draft} onChange={change} say={say} right={right} />;
}

const LINE: AnswerSpace = {
  form: 'place',
  spots: [
    option('T1/front', 'right behind pump'),
    option('T1/rear', 'right in front of drum'),
    option('T2/front', 'right behind drum'),
    option('T2/rear', 'right in front of hub'),
  ],
};

describe('a place on the drawing', () => {
  test('A8 one native radio for each place, numbered as on the drawing', () => {
    render(<Form space={LINE} />);
    const radios = within(screen.getByRole('group', { name: /Tap the place/ })).getAllByRole('radio');
    expect(radios.map((radio) => (radio as HTMLInputElement).labels![0]!.textContent)).toEqual([
      '1: right behind pump',
      '2: right in front of drum',
      '3: right behind drum',
      '4: right in front of hub',
    ]);
  });

  test('a tap picks, another picks instead; number keys do the same', () => {
    const onDraft = vi.fn();
    render(<Form space={LINE} onDraft={onDraft} />);
    fireEvent.click(screen.getByRole('radio', { name: '3: right behind drum' }));
    expect(onDraft).toHaveBeenLastCalledWith({ form: 'place', spot: 'T2/front' });
    fireEvent.keyDown(window, { key: '2' });
    expect(onDraft).toHaveBeenLastCalledWith({ form: 'place', spot: 'T1/rear' });
    expect(screen.getByRole<HTMLInputElement>('radio', { name: '2: right in front of drum' }).checked).toBe(
      true,
    );
  });

  test('once checked the right place is told in words, and nothing can be changed', () => {
    render(
      <Form
        space={LINE}
        start={{ form: 'place', spot: 'T1/front' }}
        right={{ form: 'place', spot: 'T1/rear' }}
      />,
    );
    expect(screen.getByRole<HTMLInputElement>('radio', { name: /^1:.*not this/ }).disabled).toBe(true);
    expect(screen.getByRole('radio', { name: /^2:.*this one/ })).toBeTruthy();
  });
});

const PACK: AnswerSpace = {
  form: 'order',
  items: [
    option('f2', 'friction'),
    option('s1', 'steel'),
    option('ring', 'ring'),
    option('f1', 'friction'),
    option('s2', 'steel'),
  ],
  first: text('floor'),
  last: text('opening'),
  alike: [
    ['f1', 'f2'],
    ['s1', 's2'],
  ],
};
const order = (ids: string): Extract<Answer, { form: 'order' }> => ({ form: 'order', order: ids.split(' ') });

describe('an order of which some items cannot be told apart', () => {
  const keys = () =>
    within(screen.getByRole('group'))
      .getAllByRole('button')
      .map((button) => button.textContent);

  test('A3 they share a key that says how many are left and keeps its place', () => {
    const onDraft = vi.fn();
    render(<Form space={PACK} onDraft={onDraft} />);
    expect(keys()).toEqual(['friction (2 left)', 'steel (2 left)', 'ring', 'Take one back']);
    fireEvent.click(screen.getByRole('button', { name: 'steel (2 left)' }));
    fireEvent.click(screen.getByRole('button', { name: 'friction (2 left)' }));
    expect(keys()).toEqual(['friction (1 left)', 'steel (1 left)', 'ring', 'Take one back']);
    fireEvent.click(screen.getByRole('button', { name: 'steel (1 left)' }));
    expect(keys()).toEqual(['friction (1 left)', 'ring', 'Take one back']);
    const given = onDraft.mock.lastCall![0] as Extract<Draft, { form: 'order' }>;
    expect(given.order).toHaveLength(3);
    expect(new Set(given.order).size).toBe(3);
  });

  test('A3 once checked, a like in another’s place is not marked', () => {
    render(<Form space={PACK} start={order('s2 f1 s1 f2 ring')} right={order('s1 f1 s2 f2 ring')} />);
    expect(screen.queryByText(/here:/)).toBeNull();
  });

  test('a plate in the wrong place says what belongs there', () => {
    render(<Form space={PACK} start={order('s2 f1 f2 s1 ring')} right={order('s1 f1 s2 f2 ring')} />);
    expect(screen.getAllByText(/^here:/).map((node) => node.textContent)).toEqual([
      'here: steel',
      'here: friction',
    ]);
  });
});
