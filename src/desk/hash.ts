/** FNV-1a, 32 bits (Fowler, Noll and Vo): for texts that are only to be told apart, where a rare mistake costs nothing. */
export function hash(text: string): number {
  let value = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    value ^= text.charCodeAt(i);
    value = Math.imul(value, 0x01000193);
  }
  return value >>> 0;
}

/** A hash with one more number in it, so that what has no text needs none; a step of MurmurHash3 (A. Appleby), from memory. */
export function mixed(value: number, number: number): number {
  const one = Math.imul(number, 0xcc9e2d51);
  const turned = value ^ Math.imul((one << 15) | (one >>> 17), 0x1b873593);
  return (Math.imul((turned << 13) | (turned >>> 19), 5) + 0xe6546b64) | 0;
}
