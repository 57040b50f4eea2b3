/** Offers contents as a file to save; the browser asks where, or puts it with the downloads. */
export function saveFile(name: string, contents: string | Uint8Array<ArrayBuffer>, type: string): void {
  const address = URL.createObjectURL(new Blob([contents], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The download has begun by then; browsers give no event for it.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** A name that every file system takes: letters, digits and dashes. */
export const fileName = (...parts: readonly string[]): string =>
  parts
    .map((part) =>
      part
        .normalize('NFKD')
        .replace(/[^\w]+/g, '-')
        .replace(/^-+|-+$/g, '')
        .toLowerCase(),
    )
    .filter((part) => part !== '')
    .join('-')
    .slice(0, 80);
