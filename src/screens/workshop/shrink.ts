/**
 * A photo made small enough to keep. It is drawn anew from its pixels, so nothing else that the camera wrote into the
 * file comes along: no place, no time, no name of the phone. Turned upright as the camera says.
 */
import { LARGEST_PHOTO } from '../../storage/workshop.ts';

/** Pixels along the longer side: letters stamped into a race can be read. */
const LONGEST = 1280;
const QUALITIES = [0.75, 0.6, 0.45];

/** A JPEG as a data URL; null for what is no picture. */
export async function shrunkPhoto(file: Blob): Promise<string | null> {
  try {
    const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
    const scale = Math.min(1, LONGEST / Math.max(picture.width, picture.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.max(1, Math.round(picture.width * scale));
    canvas.height = Math.max(1, Math.round(picture.height * scale));
    const context = canvas.getContext('2d');
    if (!context) return null;
    // What is transparent would turn black.
    context.fillStyle = '#fff';
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(picture, 0, 0, canvas.width, canvas.height);
    picture.close();
    const made = QUALITIES.map((quality) => canvas.toDataURL('image/jpeg', quality));
    return made.find((url) => url.startsWith('data:image/jpeg') && url.length <= LARGEST_PHOTO) ?? null;
  } catch {
    return null;
  }
}
