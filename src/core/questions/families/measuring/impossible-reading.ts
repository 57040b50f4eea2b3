/**
 * Five notes of one fit: which of them cannot be right? Out of limits is not impossible. The only family that
 * asks about figures that contradict each other.
 */
import type { Random } from '../../../random.ts';
import type { Unit } from '../../../unit/unit.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { Answer, Family, Lure, Option } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import { type AskedFit, askedFits, fixed, partLabel } from './fit-parts.ts';
import {
  drawNote,
  flawsOf,
  floatFlawed,
  isOutside,
  limitsAreSwapped,
  NONE_IN,
  type Note,
  POSSIBLE,
  SORTS,
  type Sort,
} from './notes-parts.ts';

const FACT = 'skill:impossible-reading';
const NOTES = ['a', 'b', 'c', 'd', 'e'] as const;
const FEWEST_PARTS = 3;

/** Fits whose part closes the play, read as a play: there the sums of a note can be checked. */
const noteworthy = (unit: Unit) =>
  askedFits(unit).filter(
    ({ fit, parts }) => fit.effect === 'closes' && fit.method !== 'depths' && parts.length >= FEWEST_PARTS,
  );

/** One out of limits and possible, one at least that is impossible, the rest as it comes. */
function drawNotes(asked: AskedFit, random: Random): Note[] | undefined {
  const sorts = SORTS.filter((sort) => asked.fit.method === 'bare' || !NONE_IN.includes(sort));
  const wrong = random.pick(sorts.filter((sort) => !POSSIBLE.includes(sort)));
  const rest = Array.from({ length: NOTES.length - 2 }, () => random.pick(sorts));
  const notes = random.shuffle<Sort>(['out', wrong, ...rest]).map((sort) => drawNote(asked, sort, random));
  return notes.every((note) => note !== undefined) ? notes : undefined;
}

function noteInWords(asked: AskedFit, { low, high, first, part, second }: Note): Phrase {
  const reading = part
    ? say('measuring.read-part', {
        play: fixed(asked, first),
        unit: asked.unit,
        part: partLabel(asked, part),
      })
    : say('measuring.read-bare', { play: fixed(asked, first), unit: asked.unit });
  const values = { low: fixed(asked, low), high: fixed(asked, high), unit: asked.unit, reading };
  return second
    ? say('impossible-reading.note-then', {
        ...values,
        play: fixed(asked, second.play),
        part: partLabel(asked, second.part),
      })
    : say('impossible-reading.note', values);
}

/** What is wrong with the note of this number, or why nothing is; figures put in. */
function verdictInWords(asked: AskedFit, note: Note, number: number): Phrase {
  const [flaw] = flawsOf(note, asked.step);
  const told = flaw ?? (note.second ? (isOutside(note) ? 'out' : 'sound') : 'none-in');
  const room = note.part ? note.first.add(note.part.thickness) : note.first;
  const put = note.second?.part.thickness ?? note.first;
  return say(`impossible-reading.because-${told}`, {
    number,
    low: fixed(asked, note.low),
    high: fixed(asked, note.high),
    first: fixed(asked, note.first),
    was: note.part ? fixed(asked, note.part.thickness) : '',
    room: fixed(asked, room),
    put: fixed(asked, put),
    expected: fixed(asked, room.sub(put)),
    play: note.second ? fixed(asked, note.second.play) : '',
    unit: asked.unit,
  });
}

export const impossibleReading: Family = {
  id: 'impossible-reading',
  level: 'reason',
  form: 'set',
  facts: (unit) => (noteworthy(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const fits = noteworthy(unit);
    if (fact !== FACT || fits.length === 0) return undefined;
    const asked = random.pick(fits);
    const { fit, ref, unit: length, step } = asked;
    const notes = drawNotes(asked, random);
    if (!notes) return undefined;
    const picks = (rule: (note: Note) => boolean): Answer => ({
      form: 'set',
      picks: NOTES.filter((_, index) => rule(notes[index]!)),
    });
    const flawed = (note: Note) => flawsOf(note, step).length > 0;
    const lures: Lure[] = [
      { slipUp: 'out-of-limits-impossible', answer: picks((note) => flawed(note) || isOutside(note)), fact },
      {
        slipUp: 'only-limits-checked',
        answer: picks((note) => limitsAreSwapped(note) || isOutside(note)),
        fact,
      },
      {
        slipUp: 'swapped-limits-missed',
        answer: picks((note) => flawed(note) && !limitsAreSwapped(note)),
        fact,
      },
      { slipUp: 'sum-not-checked', answer: picks(limitsAreSwapped), fact },
    ];
    return {
      facts: [FACT],
      uses: [ref],
      prompt: say('impossible-reading.prompt', {
        fit: thing('fit', fit.id),
        tolerance: fixed(asked, step),
        unit: length,
      }),
      space: {
        form: 'set',
        options: notes.map((note, index): Option => ({ id: NOTES[index]!, label: noteInWords(asked, note) })),
      },
      answers: [picks(flawed)],
      lures: distinctLures(lures),
      explanation: {
        row: say('impossible-reading.row'),
        reason: say('impossible-reading.reason'),
        more: notes.map((note, index) => verdictInWords(asked, note, index + 1)),
      },
      isRight: (answer) =>
        answer.form === 'set' &&
        notes.every((note, index) => answer.picks.includes(NOTES[index]!) === floatFlawed(note, step)),
    };
  },
};
