/** Loads one family without the others: its file has its id for a name. */
import type { Family } from '../core/questions/question.ts';

const files = import.meta.glob<Readonly<Record<string, unknown>>>('../core/questions/families/**/*.ts');

const paths = new Map(Object.keys(files).map((path) => [path.slice(path.lastIndexOf('/') + 1, -3), path]));

const isFamily = (value: unknown, id: string): value is Family =>
  typeof value === 'object' && value !== null && (value as Partial<Family>).id === id && 'pose' in value;

/** Undefined where there is no family of this id. */
export async function loadFamily(id: string): Promise<Family | undefined> {
  const path = paths.get(id);
  const file = path && (await files[path]!());
  return file ? Object.values(file).find((value) => isFamily(value, id)) : undefined;
}
