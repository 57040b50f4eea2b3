/** Pixels of a picture or of what a camera sees, shrunk so far that a code is found quickly. */
import type { Pixels } from '../../exchange/qr.ts';

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

/** Null for what is no picture. */
export async function pixelsOfFile(file: Blob): Promise<Pixels | null> {
  try {
    const picture = await createImageBitmap(file);
    const pixels = pixelsOf(picture, picture.width, picture.height);
    picture.close();
    return pixels;
  } catch {
    return null;
  }
}

/** Null as long as the camera shows nothing. */
export const pixelsOfVideo = (video: HTMLVideoElement): Pixels | null =>
  pixelsOf(video, video.videoWidth, video.videoHeight);
