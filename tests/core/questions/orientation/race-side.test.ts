import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { raceSide } from '../../../../src/core/questions/families/orientation/race-side.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { describeRules } from '../rules.ts';
import { lineUnit } from './line.ts';

const unit = lineUnit();
const asked = (seat: string, seed = 0) => ask(unit, raceSide, seed, `seat:${seat}/face`)!;
const at = (spot: string) => ({ form: 'place' as const, spot });

describe('race-side, by hand from the line in line.ts', () => {
  test.each([
    ['T1', 'T1/front'],
    ['T2', 'T2/rear'],
    ['T3', 'T3/front'],
    ['T4', 'T4/rear'],
  ])('the closed race of %s lies at %s', (seat, spot) => {
    for (let seed = 0; seed < 10; seed++) expect(asked(seat, seed).answers).toEqual([at(spot)]);
  });

  test.each([
    ['T2', 'T2/front', ['seat-turned-round'], ['seat:T2/face']],
    // the right side, but of the gap to the front or to the rear
    ['T2', 'T3/rear', ['neighbour-seat'], ['seat:T2/place']],
    ['T2', 'T3/front', [], []],
  ])('%s put at %s is %j', (seat, spot, slipUps, missed) => {
    const question = asked(seat);
    const verdict = judge(question, at(spot));
    expect(verdict.right).toBe(false);
    expect(verdict.slipUps).toEqual(slipUps);
    expect(verdict.missed).toEqual(missed);
  });

  test('both sides of each gap are numbered, a gap once: T1 shares its gap with S1, T3 with W3', () => {
    const { space, drawing } = asked('T1');
    const spots = space.form === 'place' ? space.spots.map(({ id }) => id) : [];
    expect(spots).toEqual([
      'T1/front',
      'T1/rear',
      'T2/front',
      'T2/rear',
      'T3/front',
      'T3/rear',
      'T4/front',
      'T4/rear',
    ]);
    expect(drawing).toMatchObject({
      kind: 'shaft-line',
      places: spots,
      hideSeatNames: true,
      from: 'pump',
      to: 'cover',
    });
    expect(drawing?.kind === 'shaft-line' && drawing.covered).toEqual(['T1', 'T2', 'T3', 'T4']);
    expect(asked('T1').guessRate).toBe(1 / 8);
  });

  test('bearings whose faces are alike have no side to ask for', () => {
    const plain = {
      faces: { A: { touches: 'hub' }, B: { touches: 'drum' } },
      race: undefined,
      turned: undefined,
    };
    expect(raceSide.facts(lineUnit({ T2: plain }))).toEqual(['seat:T1/face', 'seat:T3/face', 'seat:T4/face']);
  });
});

describeRules(raceSide, { seeds: 100 });
