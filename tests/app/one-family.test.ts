import { expect, test } from 'vitest';
import { loadFamily } from '../../src/app/one-family.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';

test('every family is found by its id alone', async () => {
  for (const family of FAMILIES) expect(await loadFamily(family.id), family.id).toBe(family);
});

test.each(['no-such-family', 'chart-parts', 'index', '', '__proto__'])('"%s" is none', async (id) => {
  expect(await loadFamily(id)).toBeUndefined();
});
