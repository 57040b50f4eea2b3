/** QR codes: made as squares to draw, read from the pixels of a photo. Both libraries are loaded when first needed. */
import { fail, pass, type Result } from '../core/result.ts';
import { type ExchangeTrouble, trouble } from './trouble.ts';

export interface Code {
  /** Squares a side, quiet zone included. */
  readonly size: number;
  /** SVG path of the dark squares, one unit each, for a viewBox of "0 0 size size". */
  readonly path: string;
}

/** Light squares around the code that readers need. */
const QUIET = 4;

/** A code of the text, with middling error correction (15 %). Throws RangeError above what one code can hold. */
export async function makeCode(text: string): Promise<Code> {
  const { encode } = await import('uqr');
  const { data, size } = encode(text, { ecc: 'M', border: QUIET });
  const runs = data.flatMap((row, y) => {
    const found: string[] = [];
    for (let x = 0; x < row.length; x++) {
      if (!row[x]) continue;
      const from = x;
      while (row[x + 1]) x++;
      found.push(`M${from} ${y}h${x - from + 1}v1h${from - x - 1}z`);
    }
    return found;
  });
  return { size, path: runs.join('') };
}

/** The code as a whole SVG text, for a file or a printed page. */
export const svgOf = ({ size, path }: Code, title: string): string =>
  [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}" shape-rendering="crispEdges" role="img">`,
    `<title>${title.replace(/[&<>]/g, (mark) => `&#${mark.charCodeAt(0)};`)}</title>`,
    `<rect width="${size}" height="${size}" fill="#fff"/><path d="${path}" fill="#000"/></svg>`,
  ].join('');

/** Pixels as a canvas gives them: four bytes each, row by row. */
export interface Pixels {
  readonly data: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

/** Pixels of the largest picture that is searched: shrink photos before. */
export const MAX_PIXELS = 16_000_000;

/** Each pixel the mean of the nine around it, in grey: what a dim, grainy picture needs before a code is found in it. */
function soften({ data, width, height }: Pixels): Uint8ClampedArray {
  const soft = new Uint8ClampedArray(data.length).fill(255);
  for (let y = 1; y < height - 1; y++)
    for (let x = 1; x < width - 1; x++) {
      let sum = 0;
      for (let row = y - 1; row <= y + 1; row++)
        for (let at = (row * width + x - 1) * 4; at <= (row * width + x + 1) * 4; at += 4)
          sum += data[at]! + data[at + 1]! + data[at + 2]!;
      soft.fill(sum / 27, (y * width + x) * 4, (y * width + x) * 4 + 3);
    }
  return soft;
}

/** The text of the code in a picture. One code a picture: of several none may be found. */
export async function readCode(picture: Pixels): Promise<Result<string, ExchangeTrouble>> {
  const { data, width, height } = picture;
  if (width * height > MAX_PIXELS) return fail(trouble('too-large'));
  if (!(width > 0 && height > 0) || data.length !== width * height * 4) return fail(trouble('no-code-seen'));
  const { default: read } = await import('jsqr');
  const found = read(data, width, height) ?? read(soften(picture), width, height);
  return found && found.data !== '' ? pass(found.data) : fail(trouble('no-code-seen'));
}
