// @vitest-environment jsdom
/** The key that adds a record: what stands in the list after each press. */
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, describe, expect, test } from 'vitest';
import { say as phrase } from '../../../src/core/questions/phrase.ts';
import { applyEdit, type DeckDraft } from '../../../src/core/workshop/draft.ts';
import type { Desk } from '../../../src/screens/workshop/desk.ts';
import { AddRecord } from '../../../src/screens/workshop/Records.tsx';
import { makeSay } from '../../../src/words/words.ts';

afterEach(cleanup);

const say = makeSay(null);

/** A desk whose edits are kept, and the key on it. */
function Bench({
  start,
  ...key
}: { start: DeckDraft } & Pick<Parameters<typeof AddRecord>[0], 'stem' | 'value'>) {
  const [draft, setDraft] = useState(start);
  const desk = { draft, say, edit: (edit) => setDraft((was) => applyEdit(was, edit)) } as Desk;
  return (
    <>
      <AddRecord desk={desk} at={['weights']} label={phrase('workshop.add-weight')} {...key} />
      <output>{JSON.stringify(draft.weights ?? null)}</output>
    </>
  );
}

async function pressed(times: number) {
  const key = screen.getByRole('button', { name: 'Add a weight' });
  for (let time = 0; time < times; time++) await userEvent.click(key);
  return JSON.parse(screen.getByRole('status').textContent!);
}

describe('adding a record', () => {
  test('begins the list where there is none, and numbers on from there', async () => {
    render(<Bench start={{}} stem="weight-" />);
    expect(await pressed(2)).toEqual([{ id: 'weight-1' }, { id: 'weight-2' }]);
  });

  test('takes the first number that is free, and stands last whatever its number', async () => {
    render(
      <Bench
        start={{ weights: [{ id: 'weight-3' }, { name: 'no id yet' }, { id: 'weight-1' }] }}
        stem="weight-"
      />,
    );
    const list = await pressed(2);
    expect(list.map(({ id }: { id?: string }) => id ?? '')).toEqual([
      'weight-3',
      '',
      'weight-1',
      'weight-2',
      'weight-4',
    ]);
  });

  test('starts with what is given beside the id; without a stem it has no other id than that', async () => {
    render(<Bench start={{}} stem="weight-" value={{ name: 'unit' }} />);
    expect(await pressed(1)).toEqual([{ id: 'weight-1', name: 'unit' }]);
    cleanup();
    render(<Bench start={{}} value={{ id: 'unit' }} />);
    expect(await pressed(1)).toEqual([{ id: 'unit' }]);
    cleanup();
    render(<Bench start={{}} />);
    expect(await pressed(1)).toEqual([{}]);
  });
});
