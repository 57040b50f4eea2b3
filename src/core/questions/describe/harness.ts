/** Connector faces, circuits and the valve body as they are drawn; and in words. */
import type { Deck } from '../../unit/deck.ts';
import type { DeckConnector, DeckPin } from '../../unit/electrical.ts';
import type { CircuitDrawing, ConnectorDrawing, ValveBodyDrawing } from '../drawing.ts';
import { type Phrase, say, type ThingKind, thing } from '../phrase.ts';

/** The connector with this id; an unknown id is a mistake of the caller and throws. */
export function connectorOf(deck: Deck, id: string): DeckConnector {
  const connector = deck.electrical?.connectors?.find((candidate) => candidate.id === id);
  if (!connector) throw new Error(`no connector "${id}"`);
  return connector;
}

export interface ShownPin {
  readonly pin: DeckPin;
  readonly row: number;
  /** As it is drawn: from the other side the columns run the other way. */
  readonly column: number;
  readonly isLit: boolean;
  /** Its number among the drawing's places, from 1. */
  readonly place: number | null;
}

/** Pins row by row, from the left. */
export function pinsShown(connector: DeckConnector, drawing: ConnectorDrawing): ShownPin[] {
  return connector.pins
    .map((pin): ShownPin => {
      const place = drawing.places?.indexOf(pin.id) ?? -1;
      return {
        pin,
        row: pin.row,
        column: drawing.mirrored ? connector.columns + 1 - pin.column : pin.column,
        isLit: drawing.litPins?.includes(pin.id) ?? false,
        place: place < 0 ? null : place + 1,
      };
    })
    .sort((a, b) => a.row - b.row || a.column - b.column);
}

/** Where somebody stands who sees the face as drawn. */
export const faceSeen = ({ seenFrom }: DeckConnector, mirrored: boolean | undefined): 'unit' | 'harness' =>
  mirrored ? (seenFrom === 'unit' ? 'harness' : 'unit') : seenFrom;

/** What a pin serves, as the shop calls it. */
export function servesName(serves: string): Phrase {
  const [kind = '', id] = serves.split(':');
  return id === undefined ? say(`drawing.pin.${kind}`) : thing(kind as ThingKind, id);
}

export function describeConnector(deck: Deck, drawing: ConnectorDrawing): Phrase[] {
  const connector = connectorOf(deck, drawing.connector);
  const pins = pinsShown(connector, drawing);
  const isAsked = pins.some(({ place }) => place !== null);
  const nameOf = ({ pin, place }: ShownPin) =>
    place !== null
      ? say('drawing.connector.place', { number: place })
      : isAsked
        ? say('drawing.connector.pin')
        : pin.id;
  const rows = [...new Set(pins.map(({ row }) => row))];
  const lit = pins.filter(({ isLit }) => isLit).map(nameOf);
  return [
    say('drawing.connector.seen', {
      seen: faceSeen(connector, drawing.mirrored),
      rows: connector.rows,
      columns: connector.columns,
    }),
    ...rows.map((row) =>
      say('drawing.connector.row', {
        row,
        pins: pins
          .filter((pin) => pin.row === row)
          .map((pin) => say('drawing.connector.at', { pin: nameOf(pin), column: pin.column })),
      }),
    ),
    ...(drawing.probes
      ? [say('drawing.connector.probes', { from: drawing.probes[0], to: drawing.probes[1] })]
      : []),
    ...(lit.length > 0 ? [say('drawing.connector.lit', { pins: lit })] : []),
  ];
}

export function describeCircuit({ solenoid, switched, driver, circuit = 'sound' }: CircuitDrawing): Phrase[] {
  return [
    say(`drawing.circuit.${switched}`, { solenoid: thing('solenoid', solenoid) }),
    ...(driver ? [say(`drawing.circuit.driver-${driver}`)] : []),
    ...(circuit === 'sound' ? [] : [say(`drawing.circuit.${circuit}`)]),
  ];
}

export interface ShownSolenoid {
  readonly id: string;
  readonly row: number;
  readonly column: number;
  readonly state: 'on' | 'off' | 'unplugged' | null;
  readonly isLit: boolean;
  readonly place: number | null;
}

/** How many stand in a row where the deck does not say where they sit. */
const LISTED = 4;

export interface ShownValveBody {
  readonly rows: number;
  readonly columns: number;
  /** What is looked at, in the shop's words; null when the solenoids stand in the order of the list. */
  readonly seenFrom: string | null;
  readonly solenoids: readonly ShownSolenoid[];
}

export function valveBodyShown(deck: Deck, drawing: ValveBodyDrawing): ShownValveBody {
  const { solenoids = [], valveBody } = deck;
  const spots = valveBody
    ? valveBody.solenoids
    : solenoids.map(({ id }, index) => ({
        solenoid: id,
        row: Math.floor(index / LISTED) + 1,
        column: (index % LISTED) + 1,
      }));
  return {
    rows: valveBody?.rows ?? Math.ceil(solenoids.length / LISTED),
    columns: valveBody?.columns ?? Math.min(LISTED, Math.max(1, solenoids.length)),
    seenFrom: valveBody?.seenFrom ?? null,
    solenoids: spots
      .map(({ solenoid: id, row, column }): ShownSolenoid => {
        const place = drawing.places?.indexOf(id) ?? -1;
        return {
          id,
          row,
          column,
          state: drawing.unplugged?.includes(id) ? 'unplugged' : (drawing.currents?.[id] ?? null),
          isLit: drawing.lit?.includes(id) ?? false,
          place: place < 0 ? null : place + 1,
        };
      })
      .sort((a, b) => a.row - b.row || a.column - b.column),
  };
}

export function describeValveBody(deck: Deck, drawing: ValveBodyDrawing): Phrase[] {
  const { rows, columns, seenFrom, solenoids } = valveBodyShown(deck, drawing);
  return [
    seenFrom === null
      ? say('drawing.valve-body.listed')
      : say('drawing.valve-body.seen', { from: seenFrom, rows, columns }),
    ...solenoids.map(({ id, row, column, state, isLit, place }) =>
      say('drawing.valve-body.solenoid', {
        row,
        column,
        place: place ?? 0,
        name: drawing.hideNames || place !== null ? say('drawing.valve-body.unnamed') : thing('solenoid', id),
        state: state ?? 'none',
        lit: isLit ? 'yes' : 'no',
      }),
    ),
  ];
}
