/** A part of an address as it was before it was encoded; what was never encoded stays as it is. */
export function fromAddress(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
