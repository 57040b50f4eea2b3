/**
 * A packet cut into numbered pieces, one QR code each: "D1P.<chain>.<number>.<of>.<piece>.<checksum>". The chain's
 * name is the checksum of the whole packet, so pieces of two chains are never mixed, and the whole is checked again
 * when it is put together. Pieces may come in any order, and as often as they like.
 */
import { fail, pass, type Result } from '../core/result.ts';
import { crc32, utf8 } from './bytes.ts';
import { type ExchangeTrouble, trouble } from './trouble.ts';

/** Letters of a packet in one code: a code of some 700 letters is still read off a greasy screen. */
export const PIECE_LENGTH = 600;
export const MAX_PIECES = 99;

const FORMAT = 1;

export interface Piece {
  readonly chain: string;
  /** From 1. */
  readonly number: number;
  readonly of: number;
  readonly text: string;
}

const sumOf = ({ chain, number, of, text }: Piece) => crc32(utf8(`${chain}.${number}.${of}.${text}`));

const writePiece = (piece: Piece) =>
  `D${FORMAT}P.${piece.chain}.${piece.number}.${piece.of}.${piece.text}.${sumOf(piece)}`;

/** The texts of the codes; "too-large" when more than MAX_PIECES are needed. One code for a short packet. */
export function cutPacket(packet: string, length = PIECE_LENGTH): Result<readonly string[], ExchangeTrouble> {
  const of = Math.max(1, Math.ceil(packet.length / length));
  if (of > MAX_PIECES) return fail(trouble('too-large', `${of}`));
  if (of === 1) return pass([packet]);
  const chain = crc32(utf8(packet));
  return pass(
    Array.from({ length: of }, (_, index) =>
      writePiece({ chain, number: index + 1, of, text: packet.slice(index * length, (index + 1) * length) }),
    ),
  );
}

export function readPiece(text: string): Result<Piece, ExchangeTrouble> {
  const format = /^D(\d{1,4})P\./.exec(text);
  if (!format) return fail(trouble('not-ours'));
  if (Number(format[1]) > FORMAT) return fail(trouble('newer'));
  const match = /^D1P\.([0-9a-f]{8})\.(\d{1,2})\.(\d{1,2})\.([\w.-]*)\.([0-9a-f]{8})$/.exec(text);
  if (!match) return fail(trouble('damaged'));
  const piece: Piece = { chain: match[1]!, number: Number(match[2]), of: Number(match[3]), text: match[4]! };
  const placed = piece.of >= 2 && piece.number >= 1 && piece.number <= piece.of;
  return placed && sumOf(piece) === match[5] ? pass(piece) : fail(trouble('damaged'));
}

/** Pieces read so far of one chain. Plain JSON, so that it can be kept until the next code is at hand. */
export interface Chain {
  readonly chain: string;
  readonly of: number;
  readonly pieces: Readonly<Record<number, string>>;
}

/** The chain with the piece; the first piece begins one. A piece of another chain is refused, and changes nothing. */
export function addPiece(chain: Chain | null, piece: Piece): Result<Chain, ExchangeTrouble> {
  if (chain && (chain.chain !== piece.chain || chain.of !== piece.of))
    return fail(trouble('part-of-another'));
  const pieces = { ...chain?.pieces, [piece.number]: piece.text };
  return pass({ chain: piece.chain, of: piece.of, pieces });
}

/** Numbers still to be read, rising. */
export const missingPieces = ({ of, pieces }: Chain): number[] =>
  Array.from({ length: of }, (_, index) => index + 1).filter((number) => pieces[number] === undefined);

/** The packet, once all pieces are there. */
export function joinChain(chain: Chain): Result<string, ExchangeTrouble> {
  const missing = missingPieces(chain);
  if (missing.length > 0) return fail(trouble('parts-missing', missing.join(', ')));
  const packet = Array.from({ length: chain.of }, (_, index) => chain.pieces[index + 1]!).join('');
  return crc32(utf8(packet)) === chain.chain ? pass(packet) : fail(trouble('damaged'));
}
