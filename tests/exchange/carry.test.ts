import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addPiece,
  type Chain,
  cutPacket,
  joinChain,
  MAX_PIECES,
  missingPieces,
  type Piece,
  readPiece,
} from '../../src/exchange/chain.ts';
import { linkTo, MAX_LINK, makeLink, wordIn } from '../../src/exchange/link.ts';
import { packText, unpackText } from '../../src/exchange/packet.ts';
import { makeCode, type Pixels, readCode, svgOf } from '../../src/exchange/qr.ts';

const must = <T>(result: { ok: true; value: T } | { ok: false; error: unknown }): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};

/** Letters that do not compress. */
const noise = (length: number) => {
  let state = 1;
  return Array.from({ length }, () => {
    state = (state * 48_271) % 2_147_483_647;
    return String.fromCharCode(33 + (state % 90));
  }).join('');
};

/** The code painted as a camera would give it, `scale` pixels a square. */
function painted({ size, path }: { size: number; path: string }, scale: number): Pixels {
  const data = new Uint8ClampedArray(size * scale * size * scale * 4).fill(255);
  for (const [, x, y, width] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let row = 0; row < scale; row++)
      for (let column = 0; column < Number(width) * scale; column++) {
        const at = ((Number(y) * scale + row) * size * scale + Number(x) * scale + column) * 4;
        data.fill(0, at, at + 3);
      }
  return { data, width: size * scale, height: size * scale };
}

/**
 * The code as a phone sees it on a bench, 960 × 720: turned by `turn` degrees, sheared, filling `fill` of the height,
 * darker towards one corner by `shade`, each pixel `grain` off at most.
 */
function seen(
  { size, path }: { size: number; path: string },
  { turn, fill, shade, grain }: { turn: number; fill: number; shade: number; grain: number },
): Pixels {
  const [width, height] = [960, 720];
  const dark = new Set(
    [...path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)].flatMap(([, x, y, run]) =>
      Array.from({ length: Number(run) }, (_, step) => Number(y) * size + Number(x) + step),
    ),
  );
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const light = (x: number, y: number) => {
    const along = cos * (x - width / 2) + sin * (y - height / 2);
    const across = (-sin * (x - width / 2) + cos * (y - height / 2) - 0.05 * along) / 0.95;
    const column = Math.floor((along / (height * fill) + 0.5) * size);
    const row = Math.floor((across / (height * fill) + 0.5) * size);
    if (Math.min(column, row) < 0 || Math.max(column, row) >= size) return 107;
    return dark.has(row * size + column) ? 0 : 255;
  };
  let state = 1;
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const mean = (light(x, y) + light(x + 0.5, y) + light(x, y + 0.5) + light(x + 0.5, y + 0.5)) / 4;
      state = (state * 48_271) % 2_147_483_647;
      const off = ((state / 2_147_483_647) * 2 - 1) * grain;
      const level = mean * (1 - (shade * (x / width + y / height)) / 2) + off;
      data.fill(level, (y * width + x) * 4, (y * width + x) * 4 + 3);
    }
  return { data, width, height };
}

describe('a packet', () => {
  test('E1 comes back as it was', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'binary', maxLength: 300 }), async (text) => {
        const packet = await packText(text);
        expect(packet).toMatch(/^D1\.[\w-]*\.[0-9a-f]{8}$/);
        expect(await unpackText(packet)).toEqual({ ok: true, value: text.toWellFormed?.() ?? text });
      }),
      { numRuns: 20 },
    );
  });

  test('E4 any one letter changed, or the end cut off, is told as damaged', async () => {
    const packet = await packText('range 4 applies B1 and C1'.repeat(3));
    for (let at = 3; at < packet.length; at++) {
      const letter = packet[at] === 'b' ? 'c' : 'b';
      const read = await unpackText(packet.slice(0, at) + letter + packet.slice(at + 1));
      expect(read).toMatchObject({ ok: false, error: { code: 'damaged' } });
      expect((await unpackText(packet.slice(0, at))).ok).toBe(false);
    }
  });

  test('E3 a newer packet is refused as newer, anything else as not ours', async () => {
    expect(await unpackText('D2.abc.00000000')).toMatchObject({ error: { code: 'newer' } });
    expect(await unpackText('E1.abc.00000000')).toMatchObject({ error: { code: 'not-ours' } });
  });
});

describe('links', () => {
  test('E1 the message stands behind the "#", whatever the page stood at', async () => {
    const packet = await packText('{}');
    const link = must(makeLink('https://shop.example/detent/?a=1#/unit', packet));
    expect(link).toBe(`https://shop.example/detent/?a=1#/take/${packet}`);
    expect(new URL(link).search + new URL(link).pathname).not.toContain(packet);
  });

  test('E1 the word is found in whatever a messenger makes of it', async () => {
    const packet = await packText('{"a":1}');
    const link = linkTo('https://shop.example/', packet);
    for (const text of [
      packet,
      link,
      ` ${link}\n`,
      `Here it is: ${link}. See you!`,
      `<${link}>`,
      `#/take/${packet}`,
    ])
      expect(wordIn(text)).toBe(packet);
    for (const text of ['', 'hello', 'https://shop.example/#/unit', 'D1', 'AD1.abc'])
      expect(wordIn(text)).toBeNull();
  });

  test('a link too long to arrive whole is not offered', async () => {
    const packet = await packText(noise(2 * MAX_LINK));
    expect(makeLink('https://shop.example/', packet)).toMatchObject({
      ok: false,
      error: { code: 'too-large' },
    });
  });
});

describe('chains of codes', () => {
  test('E7 pieces in any order, some twice, give the packet', async () => {
    const packet = await packText(noise(4000));
    const texts = must(cutPacket(packet));
    expect(texts.length).toBeGreaterThan(4);
    expect(Math.max(...texts.map(({ length }) => length))).toBeLessThan(700);
    fc.assert(
      fc.property(fc.shuffledSubarray([...texts, ...texts], { minLength: texts.length * 2 }), (order) => {
        let chain: Chain | null = null;
        for (const text of order) chain = must(addPiece(chain, must(readPiece(text))));
        expect(joinChain(chain!)).toEqual({ ok: true, value: packet });
      }),
      { numRuns: 20 },
    );
  });

  test('E7 what is missing is said, and nothing is put together before', async () => {
    const texts = must(cutPacket(await packText(noise(3000))));
    let chain: Chain | null = null;
    for (const text of texts.slice(1, -1)) chain = must(addPiece(chain, must(readPiece(text))));
    expect(missingPieces(chain!)).toEqual([1, texts.length]);
    expect(joinChain(chain!)).toEqual({
      ok: false,
      error: { code: 'parts-missing', detail: `1, ${texts.length}` },
    });
  });

  test('E7 a code of another chain is refused and changes nothing', async () => {
    const [one, other] = await Promise.all([noise(3000), noise(3001)].map(packText));
    const chain = must(addPiece(null, must(readPiece(must(cutPacket(one!))[0]!))));
    const stranger = must(readPiece(must(cutPacket(other!))[1]!));
    expect(addPiece(chain, stranger)).toMatchObject({ ok: false, error: { code: 'part-of-another' } });
    expect(Object.keys(chain.pieces)).toEqual(['1']);
  });

  test('E4 a piece with any letter changed is damaged; pieces put together wrongly too', async () => {
    const [text] = must(cutPacket(await packText(noise(1500))));
    for (let at = 4; at < text!.length; at += 7) {
      const letter = text![at] === '1' ? '2' : '1';
      expect(readPiece(text!.slice(0, at) + letter + text!.slice(at + 1)).ok).toBe(false);
    }
    const whole: Piece = { chain: '00000000', number: 1, of: 2, text: 'a' };
    const chain = must(addPiece(must(addPiece(null, whole)), { ...whole, number: 2 }));
    expect(joinChain(chain)).toMatchObject({ ok: false, error: { code: 'damaged' } });
  });

  test('a short packet is one code; one that needs too many is refused', () => {
    expect(cutPacket('D1.abc.00000000')).toEqual({ ok: true, value: ['D1.abc.00000000'] });
    expect(cutPacket('x'.repeat(600 * (MAX_PIECES + 1)))).toMatchObject({
      error: { code: 'too-large', detail: '100' },
    });
    expect(readPiece('D2P.00000000.1.2.a.00000000')).toMatchObject({ error: { code: 'newer' } });
  });
});

describe('QR codes', () => {
  test('E7 each code of a chain is read back from its pixels', async () => {
    const packet = await packText(noise(1200));
    let chain: Chain | null = null;
    for (const text of must(cutPacket(packet)).toReversed()) {
      const link = linkTo('https://shop.example/detent/', text);
      const read = must(await readCode(painted(await makeCode(link), 3)));
      expect(read).toBe(link);
      chain = must(addPiece(chain, must(readPiece(wordIn(read)!))));
    }
    expect(joinChain(chain!)).toEqual({ ok: true, value: packet });
  });

  for (const [turn, fill, shade, grain] of [
    [0, 0.9, 0, 0],
    [-7, 0.8, 0.45, 5],
    [9, 0.8, 0.3, 15],
    [20, 0.7, 0.45, 15],
    [90, 0.8, 0.2, 20],
    [180, 0.6, 0, 10],
  ] as const)
    test(`E7 a full code turned by ${turn}°, ${fill * 100} % of the picture, ${shade * 100} % darker in a corner, grain ${grain}`, async () => {
      const [word] = must(cutPacket(await packText(noise(1200))));
      const link = linkTo('https://shop.example/detent/', word!);
      expect(await readCode(seen(await makeCode(link), { turn, fill, shade, grain }))).toEqual({
        ok: true,
        value: link,
      });
    });

  test('a picture without a code, or that is none, gives none', async () => {
    const grey = { data: new Uint8ClampedArray(100 * 100 * 4).fill(128), width: 100, height: 100 };
    expect(await readCode(grey)).toMatchObject({ error: { code: 'no-code-seen' } });
    expect(await readCode({ ...grey, width: 99 })).toMatchObject({ error: { code: 'no-code-seen' } });
    expect(await readCode({ ...grey, width: 1e6, height: 1e6 })).toMatchObject({
      error: { code: 'too-large' },
    });
  });

  test('the SVG has a quiet zone, a title that cannot break out, and every dark square once', async () => {
    const code = await makeCode('D1.abc.00000000');
    const svg = svgOf(code, 'Code 1 of 2 <script>');
    expect(svg).toContain('<title>Code 1 of 2 &#60;script&#62;</title>');
    expect(svg).toContain(`viewBox="0 0 ${code.size} ${code.size}"`);
    const starts = [...code.path.matchAll(/M(\d+) (\d+)h(\d+)/g)].map(([, x, y, w]) => [x, y, w].map(Number));
    for (const [x, y, width] of starts) {
      expect(Math.min(x!, y!)).toBeGreaterThanOrEqual(4);
      expect(x! + width!).toBeLessThanOrEqual(code.size - 4);
    }
    // Three finder patterns: a run of seven in the corners' first rows.
    expect(starts.filter(([, y, width]) => y === 4 && width === 7)).toHaveLength(2);
  });
});
