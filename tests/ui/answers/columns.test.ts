/** How many keys of a row stand beside one another; the room of a key was measured on a phone of 320 px. */
import { expect, it } from 'vitest';
import { mostColumns } from '../../../src/ui/answers/columns.ts';

it.each([
  { labels: ['up', 'down'], columns: null },
  { labels: ['sets', 'could set', 'cannot set'], columns: null },
  { labels: ['sein Magnetventil: frei', 'niemand', 'der Wählschieber'], columns: 1 },
  { labels: ['comes on', 'goes off', 'stays on', 'stays off'], columns: null },
  { labels: ['schließt', 'öffnet', 'bleibt geschlossen', 'bleibt offen'], columns: null },
  { labels: ['Masse', 'Batteriespannung'], columns: 1 },
  { labels: ['a', 'b', 'c', 'd', 'Belaglamelle'], columns: 2 },
  { labels: [], columns: null },
])('$labels', ({ labels, columns }) => {
  expect(mostColumns(labels)).toBe(columns);
});
