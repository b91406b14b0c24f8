/** From bytes to text, for every kind of file. XML says its encoding in three ways: a byte-order mark, the bytes of its first `<`, a name. */

import { Refused } from '../refusal/refusal.ts';
import { quoted } from './quoted.ts';

/** A file's text and how it was written. */
export interface Decoded {
  /** From the first sign that is not white space. */
  readonly text: string;
  /** White space before that: an error in strict XML, but harmless. */
  readonly lead: string;
  /** As `TextDecoder` names it. */
  readonly encoding: string;
  /** Bytes of a byte-order mark before everything. */
  readonly mark: number;
}

/** @throws {Refused} where the bytes are not what they claim to be. */
export function decodeXml(bytes: Uint8Array): Decoded {
  const label = encodingOf(bytes);
  let decoder: TextDecoder;
  try {
    decoder = new TextDecoder(label, { fatal: true });
  } catch {
    throw new Refused(
      `The file says its letters are encoded as ${quoted(label)}, which can't be read here. Save it as UTF-8.`,
    );
  }
  let whole: string;
  try {
    whole = decoder.decode(bytes);
  } catch {
    throw new Refused(
      `The file's letters are broken: they are not valid ${label.toUpperCase()}. Export the exercise again.`,
    );
  }
  const { encoding } = decoder;
  if (encoding === 'windows-1252') whole = withQuotes(whole);
  const text = whole.trimStart();
  return { text, lead: whole.slice(0, whole.length - text.length), encoding, mark: markOf(bytes) };
}

/** What Windows-1252 has from 0x80 on; Node 20 leaves control characters there. */
const WINDOWS_1252 = '€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8dŽ\x8f\x90‘’“”•–—˜™š›œ\x9džŸ';

/**
 * Text that is no markup: UTF-8, UTF-16 with a byte-order mark, or else Windows-1252; undefined for bytes that are neither, and for
 * bytes that no text has (so that a picture with a wrong ending is told from an exercise).
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

/** Text that is in no Unicode encoding, as most programs wrote it before; undefined where it holds signs no text has. */
function windows1252(bytes: Uint8Array): string | undefined {
  const text = withQuotes(new TextDecoder('windows-1252').decode(bytes));
  return /[^\P{Cc}\t\r\n]/u.test(text) ? undefined : text;
}

function withQuotes(text: string): string {
  return text.replace(/[\x80-\x9f]/g, (sign) => WINDOWS_1252[sign.charCodeAt(0) - 0x80]!);
}

function markOf([a, b, c, d]: Uint8Array): number {
  if (a === 0xef && b === 0xbb && c === 0xbf) return 3;
  return (a === 0xff && b === 0xfe && !(c === 0 && d === 0)) || (a === 0xfe && b === 0xff) ? 2 : 0;
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
