/**
 * Solenoid currents are shown, with what each feeds: which elements have pressure? Tests what each solenoid
 * gives with no current. Currents are drawn freely, so no row of the chart can be recognised instead.
 */
import { elementsFedBy } from '../../hydraulics/feeds.ts';
import { type Current, pressureAt } from '../../hydraulics/solenoid.ts';
import type { DeckSolenoid } from '../../unit/deck.ts';
import type { Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { Family, Lure } from '../question.ts';
import { elementNames, setAnswer } from './chart-parts.ts';
import {
  decidingSolenoids,
  feedsInWords,
  type Position,
  positionRef,
  pressureFact,
  senseInWords,
  solenoidInWords,
  solenoidRefs,
  valvePositions,
} from './solenoid-parts.ts';

/** Fewer elements than this are guessed too easily. */
const FEWEST_ELEMENTS = 4;

function settings(unit: Unit): { position: Position; solenoids: DeckSolenoid[]; elements: string[] }[] {
  return valvePositions(unit)
    .map((position) => {
      const solenoids = decidingSolenoids(unit, position);
      const fed = solenoids.flatMap((solenoid) => elementsFedBy(unit.deck, solenoid));
      const elements = unit.deck.train.elements.map(({ id }) => id).filter((id) => fed.includes(id));
      return { position, solenoids, elements };
    })
    .filter(({ elements }) => elements.length >= FEWEST_ELEMENTS);
}

/** An interlock could take pressure from one of these: what it does is a question of its own. */
const mayBeBlocked = (unit: Unit, elements: readonly string[], picks: readonly string[]): boolean =>
  (unit.deck.interlocks ?? []).some(
    ({ whenApplied, blocks }) =>
      whenApplied.every((id) => picks.includes(id) || !elements.includes(id)) &&
      blocks.some((id) => picks.includes(id)),
  );

export const solenoidElements: Family = {
  id: 'solenoid-elements',
  level: 'apply',
  form: 'set',
  facts: (unit) => [
    ...new Set(settings(unit).flatMap(({ solenoids }) => solenoids.map(({ id }) => pressureFact(id)))),
  ],
  pose(unit, fact, random) {
    const fitting = settings(unit).filter(({ solenoids }) =>
      solenoids.some(({ id }) => pressureFact(id) === fact),
    );
    if (fitting.length === 0) return undefined;
    const { position, solenoids, elements } = random.pick(fitting);
    const currents = new Map(solenoids.map(({ id }): [string, Current] => [id, random.pick(['off', 'on'])]));
    const currentOf = ({ id }: DeckSolenoid) => currents.get(id)!;
    const pickWhere = (gives: (solenoid: DeckSolenoid) => boolean) =>
      elements.filter((element) =>
        solenoids.some((solenoid) => solenoid.feeds.includes(element) && gives(solenoid)),
      );
    const givesPressure = (solenoid: DeckSolenoid) => pressureAt(solenoid, currentOf(solenoid)) === 'full';
    const picks = pickWhere(givesPressure);
    if (picks.length === 0 || picks.length === elements.length) return undefined;
    if (mayBeBlocked(unit, elements, picks)) return undefined;

    const lures: Lure[] = [
      ...solenoids.map(
        (turned): Lure => ({
          answer: setAnswer(pickWhere((solenoid) => givesPressure(solenoid) !== (solenoid === turned))),
          slipUp: 'solenoid-turned-round',
          fact: pressureFact(turned.id),
        }),
      ),
      {
        answer: setAnswer(pickWhere((solenoid) => currentOf(solenoid) === 'on')),
        slipUp: 'current-means-pressure',
      },
      {
        answer: setAnswer(pickWhere((solenoid) => currentOf(solenoid) === 'off')),
        slipUp: 'current-cuts-pressure',
      },
    ];
    const { deck } = unit;
    const asked = solenoids.find(({ id }) => pressureFact(id) === fact)!;
    return {
      facts: [fact, ...solenoids.filter((other) => other !== asked).map(({ id }) => pressureFact(id))],
      uses: [...positionRef(position), ...solenoidRefs(unit, solenoids)],
      prompt: position
        ? say('solenoid-elements.prompt-lever', { position: thing('position', position.id) })
        : say('solenoid-elements.prompt'),
      drawing: {
        kind: 'table',
        columns: [say('solenoid.feeds-column'), say('solenoid.current-column')],
        rows: solenoids.map((solenoid) => ({
          head: thing('solenoid', solenoid.id),
          cells: [feedsInWords(unit, solenoid), say(`solenoid.${currentOf(solenoid)}`)],
          ...(solenoid === asked ? { lit: true } : {}),
        })),
      },
      space: { form: 'set', options: elements.map((id) => ({ id, label: thing('element', id) })) },
      answers: [setAnswer(picks)],
      lures,
      explanation: {
        row: say('solenoid-elements.row', { elements: elementNames(picks) }),
        reason: senseInWords(asked),
        more: solenoids.map((solenoid) =>
          solenoidInWords(unit, solenoid, currentOf(solenoid), pressureAt(solenoid, currentOf(solenoid))),
        ),
      },
      isRight: (answer) =>
        answer.form === 'set' &&
        elements.every((element) => {
          const fedBy = deck.solenoids!.find(({ feeds }) => feeds.includes(element))!;
          const hasPressure = (fedBy.whenUnplugged === 'full') !== (currents.get(fedBy.id) === 'on');
          return answer.picks.includes(element) === hasPressure;
        }),
    };
  },
};
