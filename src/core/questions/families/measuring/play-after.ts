/**
 * A reading, and parts to put in: what would the play be with each, too little, within limits or too much? What
 * a thicker part does here has to be known.
 */
import { type Place, placeIn } from '../../../measure/limits.ts';
import { playWith } from '../../../measure/play.ts';
import type { Part } from '../../../measure/select.ts';
import type { Rational } from '../../../rational.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { Answer, FactId, Family, Lure } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import {
  type AskedFit,
  askedFits,
  bareInWords,
  drawReading,
  fixed,
  floatPlay,
  HAIR,
  partLabel,
  readingInWords,
} from './fit-parts.ts';

const PARTS = 4;
const WAYS = ['low', 'in', 'high'] as const satisfies readonly Place[];

const factOf = ({ fit }: AskedFit): FactId => `fit:${fit.id}/effect`;

/** Fits with enough parts, read with the play itself. */
const fitsWithPlay = (unit: Unit) =>
  askedFits(unit).filter(({ fit, parts }) => fit.method !== 'depths' && parts.length >= PARTS);

export const playAfter: Family = {
  id: 'play-after',
  level: 'apply',
  form: 'pair',
  facts: (unit) => fitsWithPlay(unit).map(factOf),
  pose(unit, fact, random) {
    const asked = fitsWithPlay(unit).find((candidate) => factOf(candidate) === fact);
    const drawn = asked && drawReading(asked, random);
    if (!asked || !drawn || drawn.reading.method === 'depths') return undefined;
    const { fit, unit: length, limits, parts } = asked;
    const { play: read } = drawn.reading;
    const chosen = random.sample(
      parts.filter(({ id }) => id !== drawn.present?.id),
      PARTS,
    );
    const tried = parts.filter((part) => chosen.includes(part));
    const playOf = ({ thickness }: Part) => playWith(drawn.bare, fit.effect, thickness);
    const told = (rule: (part: Part) => Place): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(tried.map((part) => [part.id, rule(part)])),
    });
    const right = told((part) => placeIn(limits, playOf(part)));
    if (new Set(tried.map((part) => placeIn(limits, playOf(part)))).size < 2) return undefined;

    const opposite = fit.effect === 'closes' ? 'opens' : 'closes';
    const was = drawn.present?.thickness;
    const byPlay = (rule: (part: Part) => Rational) => told((part) => placeIn(limits, rule(part)));
    const lures: Lure[] = [
      {
        slipUp: 'thicker-turned-round',
        answer: byPlay(({ thickness }) => playWith(read, opposite, was ? thickness.sub(was) : thickness)),
        fact,
      },
      ...(was
        ? [
            {
              slipUp: 'fitted-part-forgotten' as const,
              answer: byPlay(({ thickness }) => playWith(read, fit.effect, thickness)),
            },
          ]
        : []),
      {
        slipUp: 'limit-counted-out',
        answer: told((part) => {
          const play = playOf(part);
          if (play.lte(limits.low)) return 'low';
          return play.gte(limits.high) ? 'high' : 'in';
        }),
      },
    ];
    return {
      facts: [fact],
      uses: [asked.ref],
      prompt: say('play-after.prompt', {
        fit: thing('fit', fit.id),
        low: fixed(asked, limits.low),
        high: fixed(asked, limits.high),
        unit: length,
        reading: readingInWords(asked, drawn),
      }),
      space: {
        form: 'pair',
        left: tried.map((part) => ({ id: part.id, label: partLabel(asked, part) })),
        right: WAYS.map((way) => ({ id: way, label: say(`measuring.place-${way}`) })),
      },
      answers: [right],
      lures: distinctLures(lures),
      explanation: {
        row: bareInWords(asked, drawn),
        reason: say(`play-after.reason-${fit.effect}`),
        more: tried.map((part) => {
          const play = playOf(part);
          return say(`play-after.line-${play.lt(0n) ? 'none' : fit.effect}`, {
            bare: fixed(asked, drawn.bare),
            part: partLabel(asked, part),
            thickness: fixed(asked, part.thickness),
            play: fixed(asked, play),
            unit: length,
            place: say(`measuring.place-${placeIn(limits, play)}`),
          });
        }),
      },
      isRight: (answer) =>
        answer.form === 'pair' &&
        tried.every((part) => {
          const play = floatPlay(asked, drawn, part);
          const [low, high] = [limits.low.valueOf() - HAIR, limits.high.valueOf() + HAIR];
          return answer.pairs[part.id] === (play < low ? 'low' : play > high ? 'high' : 'in');
        }),
    };
  },
};
