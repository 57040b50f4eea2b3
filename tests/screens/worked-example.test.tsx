// @vitest-environment jsdom
/** Worked, then alone: the same calculation three times in a drill, and what the log says of it. */
import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { startDrill } from '../../src/core/memory/drill.ts';
import { ask } from '../../src/core/questions/ask.ts';
import { emptyDraft } from '../../src/core/questions/draft.ts';
import { dialReading } from '../../src/core/questions/families/measuring/dial-reading.ts';
import { rowRatio } from '../../src/core/questions/families/row-ratio.ts';
import type { Question } from '../../src/core/questions/question.ts';
import { exampleFor } from '../../src/core/questions/worked-example.ts';
import { makeDecimal, parseRational } from '../../src/core/rational.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import type { ShownExample } from '../../src/screens/drill/ExampleView.tsx';
import { QuestionView } from '../../src/screens/drill/QuestionView.tsx';
import { makeSay } from '../../src/words/words.ts';
import { deckOf, PUBLISHED } from '../units.ts';
import { bench, show } from './bench.tsx';

const deck = deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!);
const unit = makeUnit(deck);
const say = makeSay(deck);

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

const example = () => screen.queryByText('Worked example')?.closest('details') ?? null;

describe('M39 M41 in a drill', () => {
  test('full and open, then folded with its last step hidden, then none', async () => {
    const user = userEvent.setup();
    const place = await bench(deck);
    const items = [7, 8, 9].map((seed) => ({ fact: 'range:2/ratio', family: 'row-ratio', seed }));
    await place.store.beginDrill(
      startDrill({ id: 'd', deck, day: 20_514, minutes: 10, items, at: place.clock.at }),
    );
    show(place);
    await user.click(await screen.findByRole('button', { name: 'Go on' }));

    await screen.findByRole('button', { name: /Check/ });
    expect(example()).toHaveAttribute('open');
    expect(within(example()!).queryByText('The last step')).toBeNull();
    const answerOnce = async () => {
      await user.type(screen.getByRole('textbox'), '99');
      await user.click(screen.getByRole('button', { name: 'Check' }));
      await screen.findByRole('status');
      // Its own working takes over.
      expect(example()).toBeNull();
      expect(screen.getByText('How it follows')).toBeInTheDocument();
      await user.click(screen.getByRole('button', { name: /Next|Finish/ }));
    };
    await answerOnce();
    expect(example()).not.toHaveAttribute('open');
    expect(within(example()!).getByText('The last step')).toBeInTheDocument();
    await answerOnce();
    expect(example()).toBeNull();
    await answerOnce();

    const log = await place.store.attemptsOf(deck.id);
    expect(log.ok && log.value.attempts.map(({ guessRate }) => guessRate)).toEqual([0.5, 0.25, 0]);
  });
});

describe('M40 what the example shows', () => {
  const view = (question: Question, support: ShownExample['support']) => {
    const family = question.family === 'row-ratio' ? rowRatio : dialReading;
    const worked = exampleFor(unit, family, question, say)!;
    render(
      <QuestionView
        question={question}
        unit={unit}
        say={say}
        draft={emptyDraft(question.space)}
        onChange={() => {}}
        verdict={null}
        again={false}
        example={{ support, worked }}
      />,
    );
    const [answer] = worked.question.answers;
    const result =
      answer.form === 'number' ? makeDecimal(parseRational(answer.value)!.abs(), 3) : 'no number';
    return { worked, result };
  };

  test('full: a question of its own and every step up to the result', () => {
    const { worked, result } = view(ask(unit, rowRatio, 2, 'range:3/ratio')!, 'full');
    const box = within(example()!);
    expect(box.getByText(say(worked.question.prompt))).toBeInTheDocument();
    const steps = box.getAllByRole('listitem').map((item) => item.textContent);
    expect(steps).toEqual([...worked.steps, ...worked.last]);
    expect(steps.at(-1)).toContain(result);
  });

  test('one step hidden: the result stands only in the step to open', () => {
    const { worked, result } = view(ask(unit, rowRatio, 2, 'range:3/ratio')!, 'one-step-hidden');
    const hidden = screen.getByText('The last step').closest('details')!;
    expect(hidden).not.toHaveAttribute('open');
    expect(hidden).toHaveTextContent(result);
    const list = within(example()!).getAllByRole('list', { hidden: true })[0]!;
    expect(list).not.toHaveTextContent(result);
    expect(list.children).toHaveLength(worked.steps.length);
  });

  test('an instrument is drawn again with its other reading; the train stands once', () => {
    view(ask(unit, dialReading, 2)!, 'full');
    expect(example()!.querySelector('.dr-figure-dial')).not.toBeNull();
    cleanup();
    view(ask(unit, rowRatio, 2)!, 'full');
    expect(example()!.querySelector('figure')).toBeNull();
  });
});
