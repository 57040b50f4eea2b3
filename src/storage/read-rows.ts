/** Reads rows and settings through their schemas: what has not the shape of a row counts as not there. */
import type { Database } from './database.ts';
import type { z } from './zod.ts';

export function readRows<T>(rows: readonly unknown[], schema: z.ZodType<T>): T[] {
  return rows.flatMap((row) => {
    const read = schema.safeParse(row);
    return read.success ? [read.data] : [];
  });
}

export async function readSetting<T>(
  db: Database,
  key: string,
  schema: z.ZodType<T>,
): Promise<T | undefined> {
  return readRows([(await db.settings.get(key))?.value], schema)[0];
}
