/**
 * The controller's pin for a solenoid in different states of driver and wire: battery voltage, nothing, or afloat?
 * Which side the controller switches is told; what follows from it is asked.
 */
import {
  CIRCUITS,
  type Circuit,
  DRIVERS,
  type Driver,
  type PinState,
  pinState,
  type Side,
} from '../../../electrical/driver.ts';
import type { Unit } from '../../../unit/unit.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { Answer, FactId, Family, Lure } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import { type AskedWinding, askedWindings } from './winding-parts.ts';

const CASES = 4;
const LEVELS = ['supply', 'ground', 'floating'] as const satisfies readonly PinState['level'][];
type Level = (typeof LEVELS)[number];

const FACTS: Readonly<Record<Side, FactId>> = { low: 'skill:low-side-pin', high: 'skill:high-side-pin' };

interface Case {
  readonly driver: Driver;
  readonly circuit: Circuit;
}

const idOf = ({ driver, circuit }: Case): string => `${driver}-${circuit}`;

const EVERY_CASE: readonly Case[] = CIRCUITS.flatMap((circuit) =>
  DRIVERS.map((driver): Case => ({ driver, circuit })),
);

const windingsOn = (unit: Unit, side: Side): AskedWinding[] =>
  askedWindings(unit).filter(({ winding }) => winding.switched === side);

const caseInWords = ({ driver, circuit }: Case): Phrase =>
  say(`driver-pin.case-${circuit}`, { driver: say(`driver-pin.driver-${driver}`) });

/** Conductances to battery and ground, in siemens, from the wiring: switch, winding, shorts. */
function conductances(side: Side, { driver, circuit }: Case) {
  const [closed, winding, dead] = [1e6, 0.1, 1e7];
  const toSwitched = driver === 'on' ? closed : 0;
  const through = circuit === 'open' ? 0 : winding;
  const short = (to: Circuit) => (circuit === to ? dead : 0);
  return {
    supply: (side === 'high' ? toSwitched : through) + short('short-to-supply'),
    ground: (side === 'low' ? toSwitched : through) + short('short-to-ground'),
  };
}

/** The level by nodal voltage: the pin follows the stronger side, or whatever it is touched with. */
function levelByVoltage(side: Side, one: Case): Level {
  const { supply, ground } = conductances(side, one);
  const volts = (touch: number) => (12 * supply + touch * 1e-6) / (supply + ground + 1e-6);
  const [low, high] = [volts(0), volts(12)];
  if (high - low > 6) return 'floating';
  return low > 6 ? 'supply' : 'ground';
}

export const driverPin: Family = {
  id: 'driver-pin',
  level: 'reason',
  form: 'fill',
  facts: (unit) =>
    (['low', 'high'] as const).filter((side) => windingsOn(unit, side).length > 0).map((side) => FACTS[side]),
  pose(unit, fact, random) {
    const side = (['low', 'high'] as const).find((candidate) => FACTS[candidate] === fact);
    const windings = side ? windingsOn(unit, side) : [];
    if (!side || windings.length === 0) return undefined;
    const { winding, uses } = random.pick(windings);
    // Off and on with a sound wire tell the sides apart; two of the others beside them.
    const [off, on, ...others] = EVERY_CASE;
    const drawn = random.sample(others, CASES - 2);
    const cases = EVERY_CASE.filter((one) => one === off || one === on || drawn.includes(one));
    const levelOf = (one: Case): Level => pinState(side, one.driver, one.circuit).level;
    const told = (rule: (one: Case) => Level): Answer => ({
      form: 'fill',
      cells: Object.fromEntries(cases.map((one) => [`${idOf(one)}/pin`, rule(one)])),
    });
    const lures: Lure[] = [
      {
        slipUp: 'switched-side-swapped',
        answer: told(
          ({ driver, circuit }) => pinState(side === 'low' ? 'high' : 'low', driver, circuit).level,
        ),
      },
      {
        slipUp: 'open-reads-nothing',
        answer: told((one) => (levelOf(one) === 'floating' ? 'ground' : levelOf(one))),
      },
      { slipUp: 'on-means-battery', answer: told(({ driver }) => (driver === 'on' ? 'supply' : 'ground')) },
      {
        slipUp: 'wire-fault-left-out',
        answer: told(({ driver }) => pinState(side, driver, 'sound').level),
      },
    ];
    return {
      facts: [fact],
      uses,
      prompt: say(`driver-pin.prompt-${side}`, { solenoid: thing('solenoid', winding.solenoid) }),
      drawing: { kind: 'circuit', solenoid: winding.solenoid, switched: side },
      space: {
        form: 'fill',
        rows: cases.map((one) => ({
          id: idOf(one),
          label: caseInWords(one),
        })),
        columns: [{ id: 'pin', label: say('driver-pin.pin') }],
        marks: LEVELS.map((id) => ({ id, label: say(`driver-pin.level-${id}`) })),
        asked: cases.map((one) => `${idOf(one)}/pin`),
        given: {},
      },
      answers: [told(levelOf)],
      lures: distinctLures(lures.map((lure) => ({ ...lure, fact }))),
      explanation: {
        row: say(`driver-pin.row-${side}`),
        reason: say('driver-pin.reason'),
        more: cases.map((one) => {
          const state = pinState(side, one.driver, one.circuit);
          return say('driver-pin.line', {
            case: caseInWords(one),
            level: say(`driver-pin.level-${state.level}`),
            powered: state.powered ? 'yes' : 'no',
            overloaded: state.overloaded ? 'yes' : 'no',
          });
        }),
      },
      isRight: (answer) =>
        answer.form === 'fill' &&
        cases.every((one) => answer.cells[`${idOf(one)}/pin`] === levelByVoltage(side, one)),
    };
  },
};
