/** A speed sensor is lost: which figures can no longer be worked out? What a controller does instead is not asked. */
import { figuresLostWith, SPEED_FIGURES, type SpeedFigure } from '../../../faults/readings.ts';
import type { DeckSensor } from '../../../unit/deck.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { FactId, Family, Lure } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { distinctLures, setAnswer } from '../chart-parts.ts';
import { perUnit } from '../per-unit.ts';

const lostFact = (sensor: string): FactId => `sensor:${sensor}/lost`;

/** Each figure as it is worked out from input and output speed; a speed that is not known is not a number. */
const WORKED_OUT: Readonly<Record<SpeedFigure, (input: number, output: number) => number>> = {
  'input-speed': (input) => input,
  'output-speed': (_, output) => output,
  ratio: (input, output) => input / output,
  slip: (input, output) => input - 2 * output,
  'shift-time': (input, output) => input / output - 1,
  'converter-slip': (input) => 2000 - input,
  'road-speed': (_, output) => output / 3,
};

/** Sensors of input and output, where nothing about either is unverified. */
const sensors = perUnit((unit: Unit): DeckSensor[] => {
  const { input, output } = unit.deck.train;
  const ends = (unit.deck.sensors ?? []).filter(({ reads }) => reads === input || reads === output);
  const both = [input, output].every((shaft) => ends.some(({ reads }) => reads === shaft));
  return both && input !== output && ends.every(({ id }) => unit.sure(`sensor:${id}`)) ? ends : [];
});

const asking = (unit: Unit) => sensors(unit).filter(({ id }) => figuresLostWith(unit.deck, id).length > 0);

export const sensorLost: Family = {
  id: 'sensor-lost',
  level: 'reason',
  form: 'set',
  facts: (unit) => asking(unit).map(({ id }) => lostFact(id)),
  pose(unit, fact, random) {
    const sensor = asking(unit).find(({ id }) => lostFact(id) === fact);
    if (!sensor) return undefined;
    const { input, output } = unit.deck.train;
    const end = sensor.reads === input ? 'input' : 'output';
    const lost = figuresLostWith(unit.deck, sensor.id);
    const both = lost.filter((figure) => ['ratio', 'slip', 'shift-time'].includes(figure));
    const otherSpeed: readonly SpeedFigure[] =
      end === 'input' ? ['output-speed', 'road-speed'] : ['input-speed', 'converter-slip'];
    const own: SpeedFigure = end === 'input' ? 'input-speed' : 'output-speed';
    const inList = (figures: readonly SpeedFigure[]) =>
      setAnswer(SPEED_FIGURES.filter((figure) => figures.includes(figure)));
    const lure = (slipUp: SlipUp, figures: readonly SpeedFigure[]): Lure => ({
      answer: inList(figures),
      slipUp,
      fact,
    });
    const heard = sensors(unit).filter((other) => other !== sensor);
    return {
      facts: [fact],
      uses: sensors(unit).map(({ id }): Ref => `sensor:${id}`),
      prompt: say('sensor-lost.prompt', {
        sensor: thing('sensor', sensor.id),
        shaft: thing('shaft', sensor.reads),
      }),
      space: {
        form: 'set',
        options: random.shuffle(SPEED_FIGURES).map((id) => ({ id, label: say(`speed-figure.${id}`) })),
      },
      answers: [inList(lost)],
      lures: distinctLures([
        lure('ends-swapped', [...otherSpeed, ...both]),
        lure('its-own-speed-only', [own]),
        lure('ratio-alone-lost', [own, 'ratio']),
        lure(
          'needs-both-left-out',
          lost.filter((figure) => !both.includes(figure)),
        ),
        lure('every-figure-lost', SPEED_FIGURES),
      ]),
      explanation: {
        row: say('sensor-lost.row', { figures: lost.map((figure) => say(`speed-figure.${figure}`)) }),
        reason: say('sensor-lost.reason'),
        more: SPEED_FIGURES.map((figure) => say(`speed-figure-needs.${figure}`)),
      },
      // By working each figure out with what is still heard.
      isRight(answer) {
        const speedOf = (shaft: string) => (heard.some(({ reads }) => reads === shaft) ? 1000 : Number.NaN);
        const gone = SPEED_FIGURES.filter((figure) =>
          Number.isNaN(WORKED_OUT[figure](speedOf(input), speedOf(output))),
        );
        return (
          answer.form === 'set' &&
          answer.picks.length === gone.length &&
          gone.every((figure) => answer.picks.includes(figure))
        );
      },
    };
  },
};
