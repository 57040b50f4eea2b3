/** Names as they are typed: spaces evened out, told apart without regard to capitals. */

export const LONGEST_NAME = 40;

/** The name, or null when nothing is left of it or it is too long. */
export function readName(text: string): string | null {
  const name = text
    .normalize('NFC')
    .replace(/[\p{C}\s]+/gu, ' ')
    .trim();
  return name === '' || name.length > LONGEST_NAME ? null : name;
}

const plain = (name: string) => name.normalize('NFKC').toLocaleLowerCase();

export const isSameName = (a: string, b: string): boolean => plain(a) === plain(b);
