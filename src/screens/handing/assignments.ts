/** Stored assignments, read from their messages; what this program cannot read is left out. */
import type { Assignment, Scope } from '../../core/assign/assignment.ts';
import { type ClassTime, classMoment } from '../../core/assign/due.ts';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import { pass, type Result } from '../../core/result.ts';
import { readMessage } from '../../exchange/message.ts';
import type { StoredAssignment } from '../../storage/classroom-rows.ts';
import type { Store } from '../../storage/store.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { type Language, LOCALES } from '../../words/figures.ts';

export interface OpenedAssignment {
  readonly stored: StoredAssignment;
  readonly assignment: Assignment;
}

async function openOne(stored: StoredAssignment): Promise<OpenedAssignment[]> {
  const read = await readMessage(stored.text);
  return read.ok && read.value.kind === 'assignment' ? [{ stored, assignment: read.value.assignment }] : [];
}

/** Latest saved first. */
export async function openAssignments(
  { classroom }: Store,
  role: StoredAssignment['role'],
): Promise<Result<OpenedAssignment[], StoreTrouble>> {
  const stored = await classroom.assignments();
  if (!stored.ok) return stored;
  const opened = await Promise.all(stored.value.filter((row) => row.role === role).map(openOne));
  return pass(opened.flat());
}

export const classTimePhrase = ({ date, time, zone }: ClassTime): Phrase =>
  phrase('class-time', { date, time, zone });

export function scopePhrase(scope: Scope): Phrase {
  switch (scope.kind) {
    case 'deck':
      return phrase('scope.deck');
    case 'areas':
      return phrase('scope.areas', { areas: scope.areas.map((area) => phrase(`area.${area}`)) });
    case 'facts':
      return phrase('scope.facts', { count: scope.facts.length });
  }
}

/** The class by the clock of a zone: "Thursday, 3 December 2026 at 08:00". */
export const classMomentIn = (classAt: ClassTime, zone: string, language: Language): string =>
  new Intl.DateTimeFormat(language === 'en' ? 'en-GB' : LOCALES[language], {
    dateStyle: 'full',
    timeStyle: 'short',
    timeZone: zone,
  }).format(classMoment(classAt));
