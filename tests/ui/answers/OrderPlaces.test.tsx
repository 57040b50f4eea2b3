// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { type Draft, emptyDraft } from '../../../src/core/questions/draft.ts';
import { say as phrase } from '../../../src/core/questions/phrase.ts';
import type { AnswerSpace } from '../../../src/core/questions/question.ts';
import { AnswerForm } from '../../../src/ui/answers/AnswerForm.tsx';
import { putAt, without } from '../../../src/ui/answers/arrange.ts';
import { makeSay } from '../../../src/words/words.ts';

afterEach(cleanup);

const say = makeSay(null);
const text = (words: string) => phrase('text', { text: words });
const JOBS: Extract<AnswerSpace, { form: 'order' }> = {
  form: 'order',
  items: ['drain', 'pan', 'filter', 'body'].map((id) => ({ id, label: text(id) })),
  first: text('first'),
  last: text('last'),
};

describe('an order under way', () => {
  test.each<[string, string, number, string]>([
    ['', 'a', 0, 'a'],
    ['a b', 'c', 2, 'a b c'],
    ['a b', 'c', 0, 'c a b'],
    ['a b', 'c', 9, 'a b c'],
    ['a b c', 'a', 2, 'b c a'],
    ['a b c', 'c', 1, 'a c b'],
    ['a b c', 'b', 1, 'a b c'],
  ])('"%s", %s put at %i: "%s"', (order, id, place, expected) => {
    const before = order.split(' ').filter(Boolean);
    expect(putAt(before, id, place).join(' ')).toBe(expected);
    expect(before.join(' ')).toBe(order);
  });

  test('what is taken out leaves no gap', () => {
    expect(without(['a', 'b', 'c'], 'b')).toEqual(['a', 'c']);
  });
});

const DRAGGING = '../../../src/ui/answers/order-dragging.tsx';

/** The form anew, with the script for dragging there to be loaded, or never coming. */
async function freshForm(withDragging: boolean): Promise<typeof AnswerForm> {
  vi.resetModules();
  if (withDragging) vi.doUnmock(DRAGGING);
  else vi.doMock(DRAGGING, () => new Promise(() => {}));
  return (await import('../../../src/ui/answers/AnswerForm.tsx')).AnswerForm;
}

/** A form with a draft of its own, as a drill keeps it. */
function Kept({ of: Shown, onDraft }: { of: typeof AnswerForm; onDraft: (draft: Draft) => void }) {
  const [draft, setDraft] = useState(emptyDraft(JOBS));
  const change = (next: Draft) => {
    setDraft(next);
    onDraft(next);
  };
  return <Shown space={JOBS} draft={draft} onChange={change} say={say} />;
}

async function open(withDragging: boolean, onDraft = vi.fn()) {
  render(<Kept of={await freshForm(withDragging)} onDraft={onDraft} />);
  if (withDragging) await screen.findByText('Tap the next one, or drag it to its place.');
  return { user: userEvent.setup(), onDraft };
}
const places = () =>
  within(screen.getByRole('list', { name: 'Your order' }))
    .getAllByRole('listitem')
    .map((item) => item.textContent!.replace(', take it back', ''));

describe.each([
  ['by taps alone', false],
  ['where it can be dragged too', true],
])('%s', (_, withDragging) => {
  test('A9 a tap takes the next place, a tap on what is placed takes it back', async () => {
    const { user, onDraft } = await open(withDragging);
    for (const name of ['pan', 'drain', 'body']) await user.click(screen.getByRole('button', { name }));
    expect(places()).toEqual(['1pan', '2drain', '3body', '4…']);
    await user.click(screen.getByRole('button', { name: 'drain, take it back' }));
    expect(places()).toEqual(['1pan', '2body', '3…', '4…']);
    expect(onDraft).toHaveBeenLastCalledWith({ form: 'order', order: ['pan', 'body'] });
    expect(screen.getByRole('button', { name: 'drain' })).toBeInTheDocument();
  });

  test('the keyboard goes on beside the key it pressed, and Enter is left for Check at the end', async () => {
    const { user } = await open(withDragging);
    const [pan, filter] = ['pan', 'filter'].map((name) => screen.getByRole('button', { name }));
    pan!.focus();
    await user.keyboard('{Enter}');
    expect(filter).toHaveFocus();
    await user.keyboard('{Enter}');
    expect(screen.getByRole('button', { name: 'body' })).toHaveFocus();
    screen.getByRole('button', { name: 'filter, take it back' }).focus();
    await user.keyboard('{Enter}');
    expect(screen.getByRole('button', { name: 'pan, take it back' })).toHaveFocus();
    for (const name of ['filter', 'body', 'drain']) {
      screen.getByRole('button', { name }).focus();
      await user.keyboard('{Enter}');
    }
    expect(document.body).toHaveFocus();
  });

  test('number keys press what is left', async () => {
    const { user, onDraft } = await open(withDragging);
    await user.keyboard('3');
    await user.keyboard('1');
    expect(onDraft).toHaveBeenLastCalledWith({ form: 'order', order: ['filter', 'drain'] });
  });

  test('nothing is a button to a screen reader but what can be pressed', async () => {
    const { user } = await open(withDragging);
    await user.click(screen.getByRole('button', { name: 'pan' }));
    for (const element of screen.getAllByRole('button')) expect(element.tagName).toBe('BUTTON');
    expect(document.querySelector('[aria-roledescription], [tabindex]')).toBeNull();
    expect(screen.queryByRole('status')).toBeNull();
  });
});

test('A9 parts to drag do not come under a hand that is at work', async () => {
  const Fresh = await freshForm(true);
  render(<Fresh space={JOBS} draft={emptyDraft(JOBS)} onChange={() => {}} say={say} />);
  screen.getByRole('button', { name: 'pan' }).focus();
  await import(DRAGGING);
  await new Promise((resolve) => setTimeout(resolve));
  expect(screen.getByText('Tap the next one.')).toBeInTheDocument();
  expect(screen.getByRole('button', { name: 'pan' })).toHaveFocus();
  cleanup();
  render(<Fresh space={JOBS} draft={emptyDraft(JOBS)} onChange={() => {}} say={say} />);
  expect(screen.getByText('Tap the next one, or drag it to its place.')).toBeInTheDocument();
});

test('once checked, nothing can be tapped or dragged', async () => {
  const order = ['drain', 'pan', 'filter', 'body'];
  render(
    <AnswerForm
      space={JOBS}
      draft={{ form: 'order', order: order.toReversed() }}
      onChange={() => {}}
      say={say}
      right={{ form: 'order', order }}
    />,
  );
  expect(screen.getByText('here: drain')).toBeInTheDocument();
  expect(screen.queryByRole('button')).toBeNull();
  expect(document.querySelector('.draggable')).toBeNull();
});
