/**
 * A PIN as it is kept: never itself, only a salted, slow hash of it (PBKDF2 with HMAC-SHA-256, through Web Crypto).
 * Four digits are ten thousand guesses, so even a slow hash holds nobody up for long who copies it off the device:
 * a PIN keeps a colleague from answering under another's name, no more. docs/spec/learners.md N9 to N13.
 */
import { z } from '../zod.ts';

export interface PinHash {
  readonly iterations: number;
  /** 16 random bytes, in hexadecimal. */
  readonly salt: string;
  /** 32 bytes, in hexadecimal. */
  readonly hash: string;
}

export const pinHashValue: z.ZodType<PinHash> = z.strictObject({
  iterations: z.int().positive(),
  salt: z.string().regex(/^[0-9a-f]{32}$/),
  hash: z.string().regex(/^[0-9a-f]{64}$/),
});

/** Four to eight digits. */
export const isPin = (text: string): boolean => /^[0-9]{4,8}$/.test(text);

/** What is recommended at least for this hash (OWASP, Password Storage Cheat Sheet, as of 2023; from memory). */
export const FEWEST_ITERATIONS = 600_000;
const MOST_ITERATIONS = 20_000_000;
/** One try should take this long on the device that keeps the PIN: hardly felt once, felt ten thousand times. */
export const AIMED_MS = 400;
const SAMPLE = 50_000;

/** False on a page without Web Crypto (plain http): no PIN can be kept there. */
export const canKeepPins = (): boolean => globalThis.crypto?.subtle !== undefined;

const toHex = (bytes: Uint8Array) => [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
const fromHex = (text: string) =>
  Uint8Array.from({ length: text.length / 2 }, (_, at) =>
    Number.parseInt(text.slice(2 * at, 2 * at + 2), 16),
  );

/** PBKDF2-HMAC-SHA-256 of the text's UTF-8, 32 bytes. */
export async function slowHash(text: string, salt: Uint8Array<ArrayBuffer>, iterations: number) {
  const key = await crypto.subtle.importKey('raw', new TextEncoder().encode(text), 'PBKDF2', false, [
    'deriveBits',
  ]);
  const bits = await crypto.subtle.deriveBits(
    { name: 'PBKDF2', hash: 'SHA-256', salt, iterations },
    key,
    256,
  );
  return new Uint8Array(bits);
}

/** How many iterations take about AIMED_MS when SAMPLE of them took so long; never fewer than recommended. */
export function iterationsFor(sampleMs: number): number {
  const fitting = Math.round((SAMPLE * AIMED_MS) / Math.max(sampleMs, 0.1) / 10_000) * 10_000;
  return Math.min(MOST_ITERATIONS, Math.max(FEWEST_ITERATIONS, fitting));
}

/** Measured on this device, now. `clock` gives milliseconds. */
export async function measureIterations(clock: () => number): Promise<number> {
  const salt = new Uint8Array(16);
  // The first call sets things up and is not measured.
  await slowHash('0000', salt, 1);
  const start = clock();
  await slowHash('0000', salt, SAMPLE);
  return iterationsFor(clock() - start);
}

export async function hashPin(pin: string, iterations: number): Promise<PinHash> {
  const salt = crypto.getRandomValues(new Uint8Array(16));
  return { iterations, salt: toHex(salt), hash: toHex(await slowHash(pin, salt, iterations)) };
}

/** Looks at every byte, wherever the first difference is. */
export function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  let difference = a.length ^ b.length;
  for (let at = 0; at < Math.max(a.length, b.length); at++) difference |= (a[at] ?? 0) ^ (b[at] ?? 0);
  return difference === 0;
}

export async function isPinOf(pin: string, { iterations, salt, hash }: PinHash): Promise<boolean> {
  return sameBytes(await slowHash(pin, fromHex(salt), iterations), fromHex(hash));
}
