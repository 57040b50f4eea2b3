import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { seatNeighbours } from '../../../../src/core/questions/families/orientation/seat-neighbours.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { describeRules } from '../rules.ts';
import { lineUnit } from './line.ts';

const unit = lineUnit();
const between = (front: string, rear: string) => ({ form: 'pair' as const, pairs: { front, rear } });

describe('seat-neighbours, by hand from the line in line.ts', () => {
  test.each([
    ['T1', 'pump', 'drum'],
    ['T2', 'drum', 'hub'],
    // W3 lies between T3 and the sun, and both between hub and sun
    ['T3', 'hub', 'sun'],
    ['W3', 'hub', 'sun'],
    ['T4', 'sun', 'cover'],
  ])('%s lies between %s and %s', (seat, front, rear) => {
    expect(ask(unit, seatNeighbours, 1, `seat:${seat}/place`)!.answers).toEqual([between(front, rear)]);
  });

  test.each([
    [between('hub', 'drum'), ['mirror-view']],
    [between('pump', 'drum'), ['neighbour-seat']],
    [between('hub', 'sun'), ['neighbour-seat']],
    [between('drum', 'drum'), []],
  ])('T2 put %j', (answer, slipUps) => {
    const question = ask(unit, seatNeighbours, 1, 'seat:T2/place')!;
    expect(judge(question, answer).slipUps).toEqual(slipUps);
    expect(question.guessRate).toBe(1 / 25);
  });
});

describeRules(seatNeighbours, { seeds: 100 });
