/**
 * Seals: an ECDSA signature (P-256, SHA-256) over a report's canonical text, with a key made on the device that
 * cannot be taken out of it. It shows that the report is as that device made it, and whether two reports come from
 * one device. It does not show who held the phone, nor that nobody helped: docs/exchange.md.
 */
import type { Seal } from '../core/assign/report.ts';
import { fromBase64Url, toBase64Url, utf8 } from './bytes.ts';

const CURVE = { name: 'ECDSA', namedCurve: 'P-256' } as const;
const SIGNING = { name: 'ECDSA', hash: 'SHA-256' } as const;
/** First byte of an uncompressed point. */
const UNCOMPRESSED = 4;

/** A new key pair; the private half is not extractable. Null where the page has no Web Crypto (plain http). */
export async function makeDeviceKey(): Promise<CryptoKeyPair | null> {
  if (!globalThis.crypto?.subtle) return null;
  return crypto.subtle.generateKey(CURVE, false, ['sign', 'verify']);
}

/** The public half as text: x and y of the point, 64 bytes. */
export async function publicKeyText(pair: CryptoKeyPair): Promise<string> {
  const point = new Uint8Array(await crypto.subtle.exportKey('raw', pair.publicKey));
  return toBase64Url(point.subarray(1));
}

export async function sealText(text: string, pair: CryptoKeyPair): Promise<Seal> {
  const signature = await crypto.subtle.sign(SIGNING, pair.privateKey, utf8(text));
  return { key: await publicKeyText(pair), signature: toBase64Url(new Uint8Array(signature)) };
}

/** sound: as the device made it. broken: changed since, or no seal of this text. none: it was never sealed. */
export type Proof = 'sound' | 'broken' | 'none' | 'not-checked';

/** not-checked: this page has no Web Crypto to check with. */
export async function checkSeal(text: string, seal: Seal | null): Promise<Proof> {
  if (seal === null) return 'none';
  if (!globalThis.crypto?.subtle) return 'not-checked';
  const [point, signature] = [fromBase64Url(seal.key), fromBase64Url(seal.signature)];
  if (point?.length !== 64 || signature?.length !== 64) return 'broken';
  try {
    const raw = new Uint8Array([UNCOMPRESSED, ...point]);
    const key = await crypto.subtle.importKey('raw', raw, CURVE, false, ['verify']);
    return (await crypto.subtle.verify(SIGNING, key, signature, utf8(text))) ? 'sound' : 'broken';
  } catch {
    // Not a point of the curve.
    return 'broken';
  }
}

/** A key in eight digits that two people can compare by reading them out: "3F2A 91C0". */
export async function fingerprint(key: string): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', utf8(key)));
  const digits = [...hash.subarray(0, 4)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return `${digits.slice(0, 4)} ${digits.slice(4)}`.toUpperCase();
}
