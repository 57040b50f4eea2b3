// @vitest-environment jsdom
/** Where a learner stands: the course, topics and facts, and how far forecasts can be trusted, with its evidence. */
import { cleanup, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import type { Attempt } from '../../src/core/memory/attempt.ts';
import { foldAttempts } from '../../src/core/memory/fold.ts';
import { recallOn } from '../../src/core/memory/recall.ts';
import { calibrationOf } from '../../src/core/plan/calibration.ts';
import { observationsOf } from '../../src/core/plan/observe.ts';
import { type OutlookRequest, outlookOf } from '../../src/core/plan/outlook.ts';
import { personalScale } from '../../src/core/plan/personal.ts';
import { factsOf } from '../../src/core/questions/facts.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { anAttempt, putAttempt } from '../attempts.ts';
import { deckOf, PUBLISHED } from '../units.ts';
import { bench, show } from './bench.tsx';

const deck = deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!);
const facts = factsOf(makeUnit(deck));
/** The clock of the bench: 2026-03-02. */
const TODAY = 20_514;

const percent = (share: number) => Math.round(100 * share);

/** Each fact again and again over so many days, three answers in four right. */
const logOf = (count: number, days: number): Attempt[] =>
  Array.from({ length: count }, (_, i) => {
    const fact = facts[i % facts.length]!.id;
    return anAttempt({
      deck: deck.id,
      fact,
      facts: [fact],
      day: TODAY - days + Math.floor((i * days) / count),
      right: (i * 7) % 4 !== 0,
      sequence: i + 1,
      id: `a${i}`,
    });
  });

async function onBench(attempts: readonly Attempt[], classDate: string | null) {
  const place = await bench(deck);
  await place.store.setPractice(deck.id, { classDate, minutes: 5, daysAWeek: 7 });
  for (const { device, sequence, ...attempt } of attempts) await putAttempt(place.store, attempt);
  const asked: OutlookRequest[] = [];
  window.location.hash = '#/progress';
  show({
    services: {
      ...place.services,
      planFor: (course, request, tell) => {
        asked.push(request);
        place.services.planFor(course, request, tell);
      },
    },
  });
  await screen.findByRole('heading', { name: 'How you stand' });
  return { asked };
}

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

describe('the way to class', () => {
  test('both courses end on the figure that the plan gives', async () => {
    const { asked } = await onBench([], '2026-03-08');
    const chart = await screen.findByRole('img', { name: /^Expected on class day/ });
    const part = [...outlookOf(asked[0]!)].find(({ kind }) => kind === 'forecast');
    if (part?.kind !== 'forecast') throw new Error('no forecast');
    const [kept, skipped] = [part.course, part.skipped].map(({ recalled }) => percent(recalled.at(-1)!));
    expect(skipped).toBeLessThan(kept!);
    expect(
      screen.getByText(
        `Expected on class day: ${kept} % with today’s drill, ${skipped} % if you leave it out today.`,
      ),
    ).toBeVisible();
    expect(chart.querySelectorAll('.chart-bar')).toHaveLength(part.course.seconds.length);
  });

  test('each topic has its range, and each of its facts what is known now and by class', async () => {
    const user = userEvent.setup();
    const attempts = logOf(20, 4);
    const { asked } = await onBench(attempts, '2026-03-08');
    const summary = await screen.findByText(/^Power flow and shifts: now \d+ %, by class likely/);
    const part = [...outlookOf(asked[0]!)].find(({ kind }) => kind === 'forecast');
    if (part?.kind !== 'forecast') throw new Error('no forecast');
    const { low, high } = part.readiness.topics.get('power-flow')!;
    expect(summary).toHaveTextContent(`by class likely ${percent(low)} to ${percent(high)} %`);
    await user.click(summary);
    const row = (await screen.findByText('Elements of a range: 1')).closest('tr')!;
    const known = foldAttempts(attempts).get('range:1/elements')!;
    const expected = part.readiness.facts.find(({ fact }) => fact === 'range:1/elements')!.expected;
    expect(
      within(row)
        .getAllByRole('cell')
        .map((cell) => cell.textContent?.replace(/\s/g, ' ')),
    ).toEqual([`${percent(recallOn(known, TODAY))} %`, `${percent(expected)} %`]);
  });

  test('without a class date the topics tell only of now', async () => {
    await onBench([], null);
    expect(screen.getByText('Power flow and shifts: now 0 %')).toBeVisible();
    expect(screen.queryByRole('img')).toBeNull();
  });
});

describe('how far forecasts can be trusted', () => {
  test('with few answers nothing is claimed', async () => {
    await onBench(logOf(12, 2), null);
    expect(await screen.findByText(/^Too few answers yet\. Each question/)).toBeVisible();
    expect(await screen.findByText(/^Too few answers yet to hold some back/)).toBeVisible();
  });

  test('expected against observed, as plot, sentence and list; the own pace with its evidence', async () => {
    const attempts = logOf(260, 24);
    await onBench(attempts, null);
    const { evidence, adopted, weights } = personalScale(attempts);
    await waitFor(() => expect(screen.queryByText('Working it out…')).toBeNull());
    expect(
      screen.getByText(new RegExp(`^Estimated from your first ${evidence!.fitted} answers`)),
    ).toHaveTextContent(
      `${evidence!.usual.toFixed(3)} by the usual pace, ${evidence!.personal.toFixed(3)} by your own`,
    );
    expect(
      screen.getByText(adopted ? /^Your own foresees you better/ : /^That is no clear gain/),
    ).toBeVisible();

    const calibration = calibrationOf(observationsOf(attempts, new Set(), weights))!;
    const { answers, bins, rmse, logLoss } = calibration;
    const right = bins.reduce((sum, bin) => sum + bin.observed * bin.count, 0) / answers;
    const said = screen.getByText(new RegExp(`^In ${answers} questions about a single fact`));
    expect(said).toHaveTextContent(`and ${percent(right)} % came.`);
    // Under the own pace, once the log is folded by it.
    await waitFor(() => expect(said).toHaveTextContent(`off by about ${percent(rmse)} points.`));
    expect(
      screen.getByText(new RegExp(`^Mean surprise of an answer: ${logLoss.toFixed(2)}\\.`)),
    ).toBeVisible();
    const chart = screen.getByRole('img', { name: /^Each square/ });
    expect(chart.querySelectorAll('.chart-mark')).toHaveLength(bins.length);
    expect(screen.getAllByText(/^\d+ answers?: \d+ % expected, \d+ % came$/)).toHaveLength(bins.length);
  });
});
