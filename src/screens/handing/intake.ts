/**
 * Takes in one thing that was handed over: a file's bytes, or the text of a link or a code. Pieces of a chain are
 * put together; what is complete comes out as a message.
 */
import { fail, pass, type Result } from '../../core/result.ts';
import { addPiece, type Chain, joinChain, missingPieces } from '../../exchange/chain.ts';
import type { Received } from '../../exchange/message.ts';
import { readIncoming, readIncomingFile, readPacket } from '../../exchange/read.ts';
import type { ExchangeTrouble } from '../../exchange/trouble.ts';

export interface TakenIn {
  /** Null while pieces are missing. */
  readonly received: Received | null;
  /** The chain as it now stands; null once it is put together. */
  readonly chain: Chain | null;
}

/** `chain` is what was read of a chain before. On trouble it stays as it was. */
export async function takeIn(
  given: string | Uint8Array<ArrayBuffer>,
  chain: Chain | null,
): Promise<Result<TakenIn, ExchangeTrouble>> {
  const read = await (typeof given === 'string' ? readIncoming(given) : readIncomingFile(given));
  if (!read.ok) return read;
  if (read.value.kind !== 'piece') return pass({ received: read.value, chain });
  const longer = addPiece(chain, read.value.piece);
  if (!longer.ok) return longer;
  if (missingPieces(longer.value).length > 0) return pass({ received: null, chain: longer.value });
  const packet = joinChain(longer.value);
  if (!packet.ok) return fail(packet.error);
  const received = await readPacket(packet.value);
  return received.ok ? pass({ received: received.value, chain: null }) : received;
}
