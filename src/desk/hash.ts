/** FNV-1a, 32 bits (Fowler, Noll and Vo): for texts that are only to be told apart, where a rare mistake costs nothing. */
export function hash(text: string): number {
  let value = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    value ^= text.charCodeAt(i);
    value = Math.imul(value, 0x01000193);
  }
  return value >>> 0;
}
