/** Pixels of a picture or of what a camera sees, shrunk so far that a code is found quickly. */
import { fail, pass, type Result } from '../../core/result.ts';
import { HEAD_BYTES, MOST_PIXELS, pixelsIn } from '../../exchange/picture-size.ts';
import type { Pixels } from '../../exchange/qr.ts';
import { type ExchangeTrouble, trouble } from '../../exchange/trouble.ts';

/** Pixels along the longer side: enough for a code of some 700 letters that fills half of the picture. */
const LONGEST = 1400;

function pixelsOf(source: CanvasImageSource, width: number, height: number): Pixels | null {
  const scale = Math.min(1, LONGEST / Math.max(width, height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context || canvas.width === 0 || canvas.height === 0) return null;
  context.drawImage(source, 0, 0, canvas.width, canvas.height);
  return context.getImageData(0, 0, canvas.width, canvas.height);
}

/** "no-code-seen" for what is no picture, "too-large" for one that would unpack into more than a phone has room for. */
export async function pixelsOfFile(file: Blob): Promise<Result<Pixels, ExchangeTrouble>> {
  const size = await pixelsIn(new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer()));
  if (size === null) return fail(trouble('no-code-seen'));
  if (size > MOST_PIXELS) return fail(trouble('too-large'));
  try {
    const picture = await createImageBitmap(file);
    const pixels = pixelsOf(picture, picture.width, picture.height);
    picture.close();
    return pixels ? pass(pixels) : fail(trouble('no-code-seen'));
  } catch {
    return fail(trouble('no-code-seen'));
  }
}

/** Null as long as the camera shows nothing. */
export const pixelsOfVideo = (video: HTMLVideoElement): Pixels | null =>
  pixelsOf(video, video.videoWidth, video.videoHeight);
