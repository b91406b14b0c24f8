/** Text is put into a file's bytes and taken out of them; all other bytes stay as they are, in whatever encoding. */
import { strToU8 } from 'fflate';
import { joinedBytes } from '../bytes.ts';
import type { Decoded } from '../decode.ts';
import type { Insertion, Range } from './ours.ts';

interface Edit extends Range {
  /** ASCII; put in the place of the range. */
  readonly put: string;
}

/**
 * @param ranges what is taken out of the decoded text
 * @param insertions what is put in; their places are counted in the text without those ranges
 */
export function splice(
  bytes: Uint8Array,
  decoded: Decoded,
  ranges: readonly Range[],
  insertions: readonly Insertion[],
): Uint8Array {
  const edits = editsOf(ranges, insertions);
  const byteAt = byteCounter(bytes, decoded);
  const parts: Uint8Array[] = [];
  let from = 0;
  for (const edit of edits) {
    parts.push(bytes.subarray(from, byteAt(edit.from)), encoded(edit.put, decoded.encoding));
    from = byteAt(edit.until);
  }
  parts.push(bytes.subarray(from));
  return joinedBytes(parts);
}

/** In order of place; what is inserted at one place keeps its order. */
function editsOf(ranges: readonly Range[], insertions: readonly Insertion[]): Edit[] {
  const sorted = [...insertions].sort((a, b) => a.at - b.at);
  const edits: Edit[] = [];
  let removed = 0;
  let next = 0;
  const insertUpTo = (end: number) => {
    for (; next < sorted.length && sorted[next]!.at + removed < end; next++) {
      const at = sorted[next]!.at + removed;
      edits.push({ from: at, until: at, put: ascii(sorted[next]!.xml) });
    }
  };
  for (const range of ranges) {
    insertUpTo(range.from);
    edits.push({ ...range, put: '' });
    removed += range.until - range.from;
  }
  insertUpTo(Number.POSITIVE_INFINITY);
  return edits;
}

/** XML in which every sign beyond ASCII is written by its number, so that it can stand in any encoding. */
function ascii(xml: string): string {
  return xml.replace(/\P{ASCII}/gu, (sign) => `&#${sign.codePointAt(0)};`);
}

function encoded(text: string, encoding: string): Uint8Array {
  const bytes = strToU8(text);
  if (!encoding.startsWith('utf-16')) return bytes;
  const wide = new Uint8Array(bytes.length * 2);
  const low = encoding === 'utf-16le' ? 0 : 1;
  for (const [i, byte] of bytes.entries()) wide[2 * i + low] = byte;
  return wide;
}

/** Tells at which byte a sign of the decoded text stands; to be asked in ascending order. */
function byteCounter(bytes: Uint8Array, { encoding, mark, lead, text }: Decoded): (sign: number) => number {
  const whole = lead + text;
  if (encoding.startsWith('utf-16')) return (sign) => mark + 2 * (lead.length + sign);
  if (whole.length === bytes.length - mark) return (sign) => mark + lead.length + sign;
  const length = encoding === 'utf-8' ? utf8Lengths(whole) : decodedLengths(bytes.subarray(mark), encoding);
  let at = mark;
  let signs = 0;
  return (sign) => {
    const wanted = lead.length + sign;
    while (signs < wanted) {
      const next = length(signs);
      at += next.bytes;
      signs += next.signs;
    }
    return at;
  };
}

interface Step {
  readonly bytes: number;
  readonly signs: number;
}

function utf8Lengths(text: string): (sign: number) => Step {
  return (sign) => {
    const code = text.codePointAt(sign) ?? 0;
    if (code < 0x80) return { bytes: 1, signs: 1 };
    if (code < 0x800) return { bytes: 2, signs: 1 };
    return code < 0x10000 ? { bytes: 3, signs: 1 } : { bytes: 4, signs: 2 };
  };
}

/** For encodings of which only the decoder knows how long a sign is: byte by byte, until it gives one. */
function decodedLengths(bytes: Uint8Array, encoding: string): () => Step {
  const decoder = new TextDecoder(encoding);
  let at = 0;
  return () => {
    const from = at;
    let signs = 0;
    while (signs === 0 && at < bytes.length) {
      signs = decoder.decode(bytes.subarray(at, at + 1), { stream: true }).length;
      at++;
    }
    return { bytes: at - from, signs: Math.max(1, signs) };
  };
}
