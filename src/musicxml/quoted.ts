/** Text from a file, short enough and plain enough to be quoted in a sentence. */
export function quoted(text: string, most = 40): string {
  const plain = text
    .replace(/[\p{Cc}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]+/gu, ' ')
    .replace(/"/g, "'")
    .trim();
  const letters = [...plain];
  return `"${letters.length > most ? `${letters.slice(0, most - 1).join('')}…` : plain}"`;
}
