/** Loads one family without the others: its file has its id for a name. */
import type { Family } from '../core/questions/question.ts';

const files = import.meta.glob<Readonly<Record<string, unknown>>>('../core/questions/families/**/*.ts');

const paths = new Map(Object.keys(files).map((path) => [path.slice(path.lastIndexOf('/') + 1, -3), path]));

const isFamily = (value: unknown, id: string): value is Family =>
  typeof value === 'object' && value !== null && (value as Partial<Family>).id === id && 'pose' in value;

const EXPECTED = 'detent-expected-family';

/** Notes whose question is at hand, so that it can be fetched before the store says so. Only a hint: it may be lost. */
export function expectFamily(id: string): void {
  try {
    localStorage.setItem(EXPECTED, id);
  } catch {
    // A browser that keeps nothing.
  }
}

/** Fetches the one that was noted last. */
export function fetchExpected(): void {
  try {
    const id = localStorage.getItem(EXPECTED);
    if (id !== null) void loadFamily(id).catch(() => {});
  } catch {
    // As above.
  }
}

/** Undefined where there is no family of this id. */
export async function loadFamily(id: string): Promise<Family | undefined> {
  const path = paths.get(id);
  const file = path && (await files[path]!());
  return file ? Object.values(file).find((value) => isFamily(value, id)) : undefined;
}
