import { deflateRawSync, inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crc32, fromBase64Url, fromUtf8, toBase64Url, utf8 } from '../../src/exchange/bytes.ts';
import { deflate, inflate } from '../../src/exchange/deflate.ts';
import { canonical, MAX_DEPTH, readJson } from '../../src/exchange/json.ts';

const bytes = fc.uint8Array({ maxLength: 200 });

describe('bytes as text', () => {
  // RFC 4648, section 10, with its padding left off; the last two are section 5's own letters.
  test.each([
    ['', ''],
    ['f', 'Zg'],
    ['fo', 'Zm8'],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg'],
    ['fooba', 'Zm9vYmE'],
    ['foobar', 'Zm9vYmFy'],
  ])('base64url of "%s" is "%s"', (text, expected) => {
    expect(toBase64Url(utf8(text))).toBe(expected);
    expect(fromUtf8(fromBase64Url(expected)!)).toBe(text);
  });

  test('base64url is that of the platform, and comes back', () => {
    fc.assert(
      fc.property(bytes, (data) => {
        expect(toBase64Url(data)).toBe(Buffer.from(data).toString('base64url'));
        expect(fromBase64Url(toBase64Url(data))).toEqual(new Uint8Array(data));
      }),
    );
  });

  test.each(['A', 'AB==', 'A+/A', 'AB CD', 'Zh', 'ä123'])('"%s" is no base64url', (text) => {
    expect(fromBase64Url(text)).toBeNull();
  });

  // The check value every description of this CRC gives; the second by zlib's own.
  test.each([
    ['123456789', 'cbf43926'],
    ['', '00000000'],
    ['The quick brown fox jumps over the lazy dog', '414fa339'],
  ])('CRC-32 of "%s" is %s', (text, expected) => {
    expect(crc32(utf8(text))).toBe(expected);
  });

  test('text that is no UTF-8 is told', () => {
    expect(fromUtf8(new Uint8Array([0xc3, 0x28]))).toBeNull();
    expect(fromUtf8(utf8('größer ✓ 変速機'))).toBe('größer ✓ 変速機');
  });
});

describe('compression', () => {
  test('what it makes another program unpacks, and the other way round', async () => {
    const text = utf8('range 4 applies B1 and C1. '.repeat(500));
    const small = await deflate(text);
    expect(small.length).toBeLessThan(200);
    expect(new Uint8Array(inflateRawSync(small))).toEqual(text);
    const back = await inflate(new Uint8Array(deflateRawSync(text)), text.length);
    expect(back).toEqual({ ok: true, value: text });
  });

  test('E5 a small packet that unpacks into hundreds of megabytes is given up early', async () => {
    const bomb = new Uint8Array(deflateRawSync(Buffer.alloc(200_000_000)));
    expect(bomb.length).toBeLessThan(300_000);
    const before = process.memoryUsage().arrayBuffers;
    expect(await inflate(bomb, 1_000_000)).toMatchObject({ ok: false, error: { code: 'too-large' } });
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(50_000_000);
  });

  test('E5 what is cut off, or is no such data, is damaged', async () => {
    const small = await deflate(utf8('range 4 applies B1 and C1. '.repeat(500)));
    for (const wrong of [small.slice(0, -3), new Uint8Array([7, 7, 7]), new Uint8Array()])
      expect(await inflate(wrong, 100_000)).toMatchObject({ ok: false, error: { code: 'damaged' } });
  });
});

describe('JSON from strangers', () => {
  test.each([
    ['', 'empty'],
    [' \n', 'empty'],
    ['{"a":', 'damaged'],
    ['{"a":1}x', 'damaged'],
    ['{"__proto__":{"admin":true}}', 'wrong-shape'],
    ['[{"x":[{"__proto__":1}]}]', 'wrong-shape'],
    [`${'['.repeat(MAX_DEPTH + 1)}${']'.repeat(MAX_DEPTH + 1)}`, 'wrong-shape'],
    [`${'['.repeat(100_000)}`, 'wrong-shape'],
  ])('E6 "%s" is refused: %s', (text, code) => {
    expect(readJson(text)).toMatchObject({ ok: false, error: { code } });
  });

  test('E6 brackets inside texts are no depth', () => {
    expect(readJson(JSON.stringify({ a: '[{'.repeat(50), b: '"\\[' }))).toEqual({
      ok: true,
      value: { a: '[{'.repeat(50), b: '"\\[' },
    });
  });

  test('canonical text does not depend on the order of keys, and parses to the same value', () => {
    // RFC 8785, section 3.2.3: keys sorted by UTF-16 code units.
    const example = { '\u20ac': 'Euro Sign', '\r': 'Carriage Return', '\ufb33': 'Hebrew Letter Dalet With Dagesh', '1': 'One', '\u0080': 'Control', '\u00f6': 'Latin Small Letter O With Diaeresis' };
    expect(Object.keys(JSON.parse(canonical(example)))).toEqual(['1', '\r', '\u0080', '\u00f6', '\u20ac', '\ufb33']);
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(JSON.parse(canonical(value))).toEqual(JSON.parse(JSON.stringify(value)));
        const turned = JSON.parse(JSON.stringify(value), (_, entry) =>
          entry && typeof entry === 'object' && !Array.isArray(entry) ? Object.fromEntries(Object.entries(entry).reverse()) : entry,
        );
        expect(canonical(turned)).toBe(canonical(value));
      }),
    );
  }); // biome-ignore format: keys of the standard's example
});
