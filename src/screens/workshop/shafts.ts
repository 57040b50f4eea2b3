/** What shafts are called while they are being described: by the name they were given, and by what sits on them. */
import { CASE } from '../../core/gears/train.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { membersOn, shaftNames, shaftsOfDraft } from '../../core/workshop/train.ts';
import type { Desk } from './desk.ts';
import type { Option } from './fields.tsx';

interface Except {
  readonly set: number;
  readonly member: string;
}

export function shaftLabel({ draft, say }: Desk, shaft: string, except?: Except): string {
  if (shaft === CASE) return say(phrase('workshop.case'));
  const { input, output } = draft.train ?? {};
  const name = shaftNames(draft).find(({ id }) => id === shaft)?.name;
  const gears = membersOn(draft, shaft)
    .filter(({ index, member }) => index !== except?.set || member !== except.member)
    .map(({ set, member }) => say(phrase('workshop.member-of', { set, member })));
  const port = shaft === input ? 'workshop.input' : shaft === output ? 'workshop.output' : null;
  const own = name ?? (port ? say(phrase(port)) : null);
  if (own === null) return gears.length > 0 ? gears.join(' + ') : shaft;
  return gears.length > 0 ? `${own} (${gears.join(' + ')})` : own;
}

/** Every shaft of the draft, to pick one. */
export const shaftOptions = (desk: Desk): Option[] =>
  shaftsOfDraft(desk.draft).map((shaft) => ({ value: shaft, label: shaftLabel(desk, shaft) }));
