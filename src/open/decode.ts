/** Bytes → text. */
import { windows1252 } from '../musicxml/index.ts';

/**
 * UTF-8, UTF-16 with a byte-order mark, or else Windows-1252; undefined for bytes that are neither, and for bytes that no text has
 * (so that a picture with a wrong ending is told from an exercise).
 */
export function decodeText(bytes: Uint8Array): string | undefined {
  const label =
    bytes[0] === 0xff && bytes[1] === 0xfe
      ? 'utf-16le'
      : bytes[0] === 0xfe && bytes[1] === 0xff
        ? 'utf-16be'
        : 'utf-8';
  try {
    const text = new TextDecoder(label, { fatal: true }).decode(bytes);
    return text.includes('\u0000') ? undefined : text;
  } catch {
    return label === 'utf-8' ? windows1252(bytes) : undefined;
  }
}
