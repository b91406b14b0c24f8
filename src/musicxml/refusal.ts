/** Why a file was not read, as a sentence; thrown inside this folder only and caught at its door. */
export class Refusal extends Error {
  readonly line: number | undefined;
  readonly column: number | undefined;

  /** @param place line and column counted from 1, where the file has lines. */
  constructor(message: string, place?: { readonly line: number; readonly column: number }) {
    super(message);
    this.name = 'Refusal';
    this.line = place?.line;
    this.column = place?.column;
  }
}

/** Text from a file, short enough and plain enough to be quoted in a sentence. */
export function quoted(text: string, most = 40): string {
  const plain = text
    .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
    .replace(/"/g, "'")
    .trim();
  const letters = [...plain];
  return `"${letters.length > most ? `${letters.slice(0, most - 1).join('')}…` : plain}"`;
}
