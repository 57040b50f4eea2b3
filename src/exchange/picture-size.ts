/**
 * How large a picture is, from its first bytes: a few thousand bytes can be made to unpack into gigabytes of pixels,
 * so this is looked at before a browser unpacks it. What is no picture of a usual kind has no size.
 */
import type { types } from 'image-size';

/** Bytes from the start in which the size is looked for; photos carry a small picture of themselves before it. */
export const HEAD_BYTES = 500_000;
/** Pixels of the largest picture that is unpacked; phones take some 50 million. */
export const MOST_PIXELS = 64_000_000;

const KINDS: readonly (typeof types)[number][] = ['png', 'jpg', 'webp', 'gif', 'bmp', 'heif'];

/** Null where it cannot be told. */
export async function pixelsIn(head: Uint8Array): Promise<number | null> {
  const { disableTypes, imageSize, types } = await import('image-size');
  disableTypes(types.filter((kind) => !KINDS.includes(kind)));
  try {
    const { width, height, images = [] } = imageSize(head);
    const sizes = [{ width, height }, ...images].map((one) => one.width * one.height);
    return sizes.every((size) => Number.isFinite(size) && size > 0) ? Math.max(...sizes) : null;
  } catch {
    return null;
  }
}
