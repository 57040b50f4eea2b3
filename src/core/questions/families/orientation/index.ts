/** Families on where parts of the shaft line sit and which way they face. */
import type { Family } from '../../question.ts';
import { raceSide } from './race-side.ts';
import { sealLip } from './seal-lip.ts';
import { seatFaces } from './seat-faces.ts';
import { seatNeighbours } from './seat-neighbours.ts';
import { seatPilot } from './seat-pilot.ts';
import { seatPlaces } from './seat-places.ts';
import { seatTurned } from './seat-turned.ts';
import { seatView } from './seat-view.ts';

export const ORIENTATION: readonly Family[] = [
  seatFaces,
  seatView,
  raceSide,
  seatPilot,
  seatPlaces,
  seatNeighbours,
  seatTurned,
  sealLip,
];
