// @vitest-environment jsdom
/** The way to a class date on screen: the planner's drill, its forecast, and what happens when it does not come. */
import { cleanup, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { EMPTY_LEDGER } from '../../src/core/ledger/ledger.ts';
import { READING_SECONDS } from '../../src/core/memory/pace.ts';
import { planDrill } from '../../src/core/memory/plan-drill.ts';
import { type OutlookPart, type OutlookRequest, outlookOf } from '../../src/core/plan/outlook.ts';
import { factsOf } from '../../src/core/questions/facts.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { planSeed } from '../../src/screens/use-outlook.ts';
import type { Practice } from '../../src/storage/rows.ts';
import { anAttempt, putAttempt } from '../attempts.ts';
import { deckOf, PUBLISHED } from '../units.ts';
import { type Bench, bench, show } from './bench.tsx';

const deck = deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!);
const unit = makeUnit(deck);
const facts = factsOf(unit);
/** The clock of the bench: 2026-03-02. */
const TODAY = 20_514;

async function onBench(practice: Partial<Practice>): Promise<Bench & { readonly asked: OutlookRequest[] }> {
  const place = await bench(deck);
  await place.store.setPractice(deck.id, { classDate: '2026-03-07', minutes: 2, daysAWeek: 7, ...practice });
  const asked: OutlookRequest[] = [];
  const planFor: Bench['services']['planFor'] = (course, request, tell) => {
    asked.push(request);
    place.services.planFor(course, request, tell);
  };
  return { ...place, services: { ...place.services, planFor }, asked };
}

const partOf = <K extends OutlookPart['kind']>(request: OutlookRequest, kind: K) =>
  [...outlookOf(request)].find((part) => part.kind === kind) as Extract<OutlookPart, { kind: K }>;

const percent = (share: number) => Math.round(100 * share);

async function itemsOf({ store }: Bench) {
  const drill = await waitFor(async () => {
    const stored = await store.currentDrill();
    if (!stored.ok || !stored.value) throw new Error('no drill is stored');
    return stored.value;
  });
  return drill.items;
}

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

describe('with a class date', () => {
  test('tells the forecast, the most that the minutes allow and what is left out, as the planner reckons them', async () => {
    const place = await onBench({});
    show(place);
    expect(await screen.findByText(/^With 2 minutes a day at most/)).toBeVisible();
    const [request] = place.asked;
    expect(request).toMatchObject({ today: TODAY, classDay: TODAY + 5, attendance: 1, spentSeconds: 0 });
    const { readiness, leftOut } = partOf(request!, 'forecast');
    const { expected, low, high } = readiness.all;
    expect(
      screen.getByText(
        `By class day about ${percent(expected)} %, likely ${percent(low)} to ${percent(high)} %.`,
      ),
    ).toBeVisible();
    const [now, twice] = partOf(request!, 'ceilings').each;
    expect(
      screen.getByText(
        `With 2 minutes a day at most ${percent(now!.atMost)} %; with 4 at most ${percent(twice!.atMost)} %.`,
      ),
    ).toBeVisible();
    expect(leftOut.length).toBeGreaterThan(0);
    expect(
      screen.getByText(`${leftOut.length} of ${facts.length} facts find no time before class`),
    ).toBeVisible();
  });

  test('the drill asks what the plan drew', async () => {
    const user = userEvent.setup();
    const place = await onBench({});
    show(place);
    await user.click(await screen.findByRole('button', { name: 'Start' }));
    const items = await itemsOf(place);
    const { order } = partOf(place.asked[0]!, 'drill');
    expect(items.length).toBeGreaterThan(2);
    expect(order).toEqual(expect.arrayContaining(items.map(({ fact }) => fact)));
  });

  test('fewer days a week are kept and lower the forecast', async () => {
    const user = userEvent.setup();
    const place = await onBench({ minutes: 4 });
    show(place);
    await screen.findByText(/^By class day/);
    await user.click(screen.getByText('Minutes and class date'));
    await user.selectOptions(screen.getByLabelText('Days a week with practice'), '3');
    await screen.findByText(/if you practise 4 minutes 3 days a week/);
    await waitFor(() => expect(place.asked.at(-1)!.attendance).toBe(3 / 7));
    const [before, after] = [place.asked[0]!, place.asked.at(-1)!].map(
      (request) => partOf(request, 'forecast').readiness.all.expected,
    );
    expect(after!).toBeLessThan(before! - 0.05);
    await screen.findByText(new RegExp(`^By class day about ${percent(after!)} %`));
    const practice = await place.store.practiceOf(deck.id);
    expect(practice.ok && practice.value.daysAWeek).toBe(3);
  });

  test('the next plan starts from the prices of the last, and what holds all day is not reckoned again', async () => {
    const place = await onBench({});
    show(place);
    await screen.findByText(/^With 2 minutes a day/);
    await waitFor(async () => {
      const kept = await place.store.planOf(deck.id);
      expect(kept.ok && kept.value?.ceilings).toBeTruthy();
    });
    cleanup();
    show(place);
    expect(await screen.findByText(/^With 2 minutes a day/)).toBeVisible();
    await waitFor(() => expect(place.asked).toHaveLength(2));
    const [first, second] = place.asked;
    expect(first!.prices).toBeUndefined();
    expect([...second!.prices!]).toEqual([...partOf(first!, 'drill').prices]);
    expect(second!.ceilings).toEqual([]);
  });

  test('minutes practised today are not counted on again', async () => {
    const place = await onBench({});
    const fact = facts[0]!.id;
    const { device, sequence, ...attempt } = anAttempt({
      deck: deck.id,
      fact,
      facts: [fact],
      day: TODAY,
      seconds: 20,
    });
    await putAttempt(place.store, attempt);
    show(place);
    await screen.findByText(/^By class day/);
    expect(place.asked[0]!.spentSeconds).toBe(20 + READING_SECONDS);
  });
});

describe('when the plan does not come', () => {
  const bySimpleRule = planDrill({
    unit,
    facts,
    memory: new Map(),
    day: TODAY,
    classDay: TODAY + 5,
    minutes: 2,
    seed: planSeed(unit, EMPTY_LEDGER),
    secondsPerForm: {},
  });

  test('a planner that is too slow keeps nobody waiting: after two seconds the simple rule serves', async () => {
    const user = userEvent.setup();
    const place = await onBench({});
    show({ services: { ...place.services, planFor: () => {} } });
    await user.click(await screen.findByRole('button', { name: 'Start' }));
    expect(screen.getByText('questions').nextSibling).toHaveTextContent('…');
    expect(await itemsOf(place)).toEqual(bySimpleRule);
  });

  test('a browser that cannot plan says so, and drills at once', async () => {
    const user = userEvent.setup();
    const place = await onBench({});
    show({ services: { ...place.services, planFor: (_course, _request, tell) => tell(null) } });
    expect(await screen.findByText(/cannot work it out/)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Start' }));
    expect(await itemsOf(place)).toEqual(bySimpleRule);
  });
});

describe('without a class ahead', () => {
  test('no date: nothing is planned, and the drill is ready at once', async () => {
    const place = await onBench({ classDate: null });
    show(place);
    expect((await screen.findByText('questions')).nextSibling).toHaveTextContent(/^\d+$/);
    expect(screen.queryByRole('heading', { name: 'On the way to class' })).toBeNull();
    expect(place.asked).toEqual([]);
  });

  test('class over: what was never met is spread over two weeks', async () => {
    const user = userEvent.setup();
    const place = await onBench({ classDate: '2026-03-01', minutes: 60 });
    show(place);
    await user.click(await screen.findByRole('button', { name: 'Start' }));
    expect(await itemsOf(place)).toHaveLength(Math.ceil(facts.length / 14));
    expect(place.asked).toEqual([]);
  });

  test('class is today: what is known today is told, with nothing to practise for', async () => {
    const place = await onBench({ classDate: '2026-03-02' });
    show(place);
    expect(await screen.findByText(/^Today about 0 %/)).toBeVisible();
  });
});
