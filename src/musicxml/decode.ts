/** From bytes to text. XML says its encoding in three ways: a byte-order mark, the bytes of its first `<`, a name. */
import { quoted, Refusal } from './refusal.ts';

/** @throws {Refusal} where the bytes are not what they claim to be. */
export function decodeXml(bytes: Uint8Array): string {
  const label = encodingOf(bytes);
  let decoder: TextDecoder;
  try {
    decoder = new TextDecoder(label, { fatal: true });
  } catch {
    throw new Refusal(
      `The file says its letters are encoded as ${quoted(label)}, which can't be read here. Save it as UTF-8.`,
    );
  }
  let text: string;
  try {
    text = decoder.decode(bytes);
  } catch {
    throw new Refusal(
      `The file's letters are broken: they are not valid ${label.toUpperCase()}. Export the exercise again.`,
    );
  }
  // White space before the declaration is an error in strict XML, but harmless.
  return text.trimStart();
}

function encodingOf(bytes: Uint8Array): string {
  const [a, b, c, d] = bytes;
  if (a === 0xff && b === 0xfe && !(c === 0 && d === 0)) return 'utf-16le';
  if (a === 0xfe && b === 0xff) return 'utf-16be';
  if (a === 0xef && b === 0xbb && c === 0xbf) return 'utf-8';
  if (a === 0x3c && b === 0) return 'utf-16le';
  if (a === 0 && b === 0x3c) return 'utf-16be';
  let head = '';
  for (const byte of bytes.subarray(0, 300)) head += String.fromCharCode(byte);
  const named = /^\s*<\?xml[^>]*?encoding\s*=\s*["']([^"']*)["']/.exec(head)?.[1];
  // The declaration was read byte by byte, so the file is not in UTF-16, whatever it says.
  return named === undefined || /^utf-?16/i.test(named) ? 'utf-8' : named.toLowerCase();
}
