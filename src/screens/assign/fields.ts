/** The form of an assignment as typed, and the assignment it makes. */
import { type Assignment, type Counting, type Scope, USUAL_THRESHOLD } from '../../core/assign/assignment.ts';
import { isZone, minutesOfTime } from '../../core/assign/due.ts';
import { dayOfDate } from '../../core/memory/day.ts';
import { fail, pass, type Result } from '../../core/result.ts';
import type { Area } from '../../core/self-check/areas.ts';

export interface AssignFields {
  readonly group: string;
  readonly kind: Scope['kind'];
  readonly areas: readonly Area[];
  /** Facts of an assignment that names them; the form keeps them as they are. */
  readonly facts: readonly string[];
  /** Areas that do not count as usual. */
  readonly counting: Readonly<Partial<Record<Area, Counting>>>;
  readonly date: string;
  readonly time: string;
  readonly zone: string;
  readonly minutes: string;
  /** Per cent. */
  readonly share: string;
  readonly cautioned: boolean;
  readonly note: string;
  /** A name a line. */
  readonly roster: string;
  readonly withDeck: boolean;
  /** What was wrong before this revision. */
  readonly wrong: string;
}

export const emptyFields = (zone: string): AssignFields => ({
  group: '',
  kind: 'deck',
  areas: [],
  facts: [],
  counting: {},
  date: '',
  time: '08:00',
  zone,
  minutes: '10',
  share: String(Math.round(USUAL_THRESHOLD.share * 100)),
  cautioned: USUAL_THRESHOLD.cautioned,
  note: '',
  roster: '',
  withDeck: true,
  wrong: '',
});

export const fieldsOf = (
  { group, scope, counting = {}, classAt, minutes, threshold, note }: Assignment,
  roster: readonly string[],
): AssignFields => ({
  group,
  kind: scope.kind,
  areas: scope.kind === 'areas' ? scope.areas : [],
  facts: scope.kind === 'facts' ? scope.facts : [],
  counting,
  ...classAt,
  minutes: String(minutes),
  share: String(Math.round(threshold.share * 100)),
  cautioned: threshold.cautioned,
  note: note ?? '',
  roster: roster.join('\n'),
  withDeck: true,
  wrong: '',
});

export function scopeOf({ kind, areas, facts }: Pick<AssignFields, 'kind' | 'areas' | 'facts'>): Scope {
  if (kind === 'areas') return { kind, areas };
  return kind === 'facts' ? { kind, facts } : { kind: 'deck' };
}

/** Only areas that are asked can count otherwise. */
function countingOf({ kind, areas, counting }: AssignFields): Partial<Record<Area, Counting>> {
  const asked = Object.entries(counting).filter(
    ([area]) => kind !== 'areas' || areas.some((one) => one === area),
  );
  return Object.fromEntries(asked);
}

export const rosterOf = ({ roster }: AssignFields): string[] =>
  roster
    .split('\n')
    .map((name) => name.trim())
    .filter((name) => name !== '');

export type AssignFault = 'group' | 'areas' | 'date' | 'time' | 'zone' | 'minutes' | 'share' | 'note';

/** What the form says, checked; the rest of the assignment comes from the caller. All faults at once. */
export function readFields(
  fields: AssignFields,
): Result<
  Pick<Assignment, 'group' | 'scope' | 'counting' | 'classAt' | 'minutes' | 'threshold' | 'note'>,
  readonly AssignFault[]
> {
  const { date, time, zone } = fields;
  const [group, note] = [fields.group.trim(), fields.note.trim()];
  const [minutes, share] = [Number(fields.minutes), Number(fields.share)];
  const counting = countingOf(fields);
  const faults: readonly (readonly [AssignFault, boolean])[] = [
    ['group', group === '' || group.length > 200],
    ['areas', fields.kind === 'areas' && fields.areas.length === 0],
    ['date', dayOfDate(date) === null],
    ['time', minutesOfTime(time) === null],
    ['zone', zone.length > 60 || !isZone(zone)],
    ['minutes', !Number.isInteger(minutes) || minutes < 1 || minutes > 120],
    ['share', !(share >= 1 && share <= 100)],
    ['note', note.length > 2000],
  ];
  const found = faults.filter(([, isSo]) => isSo).map(([fault]) => fault);
  if (found.length > 0) return fail(found);
  return pass({
    group,
    scope: scopeOf(fields),
    ...(Object.keys(counting).length > 0 && { counting }),
    classAt: { date, time, zone },
    minutes,
    threshold: { share: share / 100, cautioned: fields.cautioned },
    note: note === '' ? null : note,
  });
}
