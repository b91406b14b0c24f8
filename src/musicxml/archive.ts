/**
 * Compressed MusicXML (.mxl): a zip archive whose META-INF/container.xml names the score inside.
 *
 * The list of entries is read from the central directory here, and fflate inflates the one entry asked for, a little at a
 * time: its own archive reader trusts declared sizes, checks no sum and passes over the flag of an encrypted entry.
 */
import { deflateSync, Inflate, strToU8, zipSync } from 'fflate';
import { Refused } from '../refusal/refusal.ts';
import { joinedBytes } from './bytes.ts';
import { decodeXml } from './decode.ts';
import { LIMITS } from './limits.ts';
import { quoted } from './quoted.ts';
import { wrongArchive } from './wrong-files.ts';
import { childrenOf, type DocumentKind, parseXml } from './xml.ts';
import { writeZip } from './zip-writing.ts';

const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
/** A general flag. */
const ENCRYPTED = 1;
/** Packed bytes inflated at a time: at most 8 MiB come out before the next check. */
const PORTION = 8_192;

interface Entry {
  readonly name: string;
  readonly rawName: Uint8Array;
  readonly flags: number;
  readonly time: number;
  readonly method: number;
  readonly crc: number;
  readonly packed: number;
  readonly size: number;
  readonly header: number;
}

export function isArchive(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b;
}

/** The bytes of the score in an archive. @throws {Refused} */
export function unpackScore(bytes: Uint8Array): Uint8Array {
  return unpack(bytes, scoreEntry(bytes, entriesOf(bytes)));
}

/** The archive with another score in it; every other file stays as it is. @throws {Refused} */
export function replaceScore(bytes: Uint8Array, score: Uint8Array): Uint8Array {
  const entries = entriesOf(bytes);
  const old = scoreEntry(bytes, entries);
  return writeZip(
    entries.map((entry) =>
      entry === old
        ? { ...entry, method: 8, crc: crc32(score), size: score.length, packed: deflateSync(score) }
        : { ...entry, packed: packedBytes(bytes, entry) },
    ),
  );
}

function scoreEntry(bytes: Uint8Array, entries: readonly Entry[]): Entry {
  const container = entryAt(entries, 'META-INF/container.xml');
  if (container !== undefined) {
    const path = rootFile(decodeXml(unpack(bytes, container)).text);
    const entry = entryAt(entries, path);
    if (entry === undefined) {
      throw new Refused(
        `The archive says its score is ${quoted(path)}, but holds no such file. Export it again.`,
      );
    }
    return entry;
  }
  const scores = entries.filter(
    (e) => /\.(musicxml|xml)$/i.test(e.name) && !/^(META-INF|__MACOSX)[\\/]/i.test(e.name),
  );
  if (scores.length !== 1) {
    throw new Refused(wrongArchive(entries.map(({ name }) => name)));
  }
  return scores[0]!;
}

/** The entry a path names, as different systems write paths: `./`, backslashes, `%20`, other case. */
function entryAt(entries: readonly Entry[], path: string): Entry | undefined {
  const wanted = plainPath(path);
  return (
    entries.find((entry) => entry.name === path) ??
    entries.find((entry) => plainPath(entry.name) === wanted) ??
    entries.find((entry) => plainPath(entry.name).toLowerCase() === wanted.toLowerCase())
  );
}

function plainPath(path: string): string {
  let plain = path;
  try {
    plain = decodeURIComponent(path);
  } catch {
    // A per cent sign that stands for itself.
  }
  return plain
    .replaceAll('\\', '/')
    .replace(/^(\.?\/)+/, '')
    .normalize('NFC');
}

/** Packs a MusicXML file as `.mxl`. */
export function packScore(xml: Uint8Array): Uint8Array {
  const container = `<?xml version="1.0" encoding="UTF-8"?>
<container>
  <rootfiles>
    <rootfile full-path="score.musicxml" media-type="application/vnd.recordare.musicxml+xml"/>
  </rootfiles>
</container>
`;
  // A fixed date, so that the same score always gives the same bytes.
  const mtime = '1980-01-01T12:00:00';
  return zipSync(
    {
      mimetype: [strToU8('application/vnd.recordare.musicxml'), { level: 0, mtime }],
      'META-INF/container.xml': [strToU8(container), { mtime }],
      'score.musicxml': [xml, { mtime }],
    },
    { level: 6 },
  );
}

const CONTAINER: DocumentKind = {
  outer: new Set(['container']),
  wrongRoot: (name) =>
    `The archive's META-INF/container.xml begins with ${quoted(name)}, where container is needed. Export the score again.`,
};

function rootFile(xml: string): string {
  const files: { path: string; type: string }[] = [];
  parseXml(xml, CONTAINER, {
    open: () => {},
    close: () => {},
    whole: (element) => {
      if (element.name !== 'rootfiles') return;
      for (const file of childrenOf(element, 'rootfile')) {
        files.push({ path: file.attributes['full-path'] ?? '', type: file.attributes['media-type'] ?? '' });
      }
    },
  });
  const musical = files.find((file) => file.type === '' || file.type.includes('musicxml')) ?? files[0];
  if (musical === undefined || musical.path === '') {
    throw new Refused("The archive's META-INF/container.xml names no score. Export it again.");
  }
  return musical.path;
}

function entriesOf(bytes: Uint8Array): Entry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  // The end record stands last, before a comment of at most 65,535 bytes.
  let end = bytes.length - 22;
  const earliest = Math.max(0, end - 65_535);
  while (end >= earliest && view.getUint32(end, true) !== END) end--;
  if (end < earliest) {
    throw new Refused(
      'The archive is cut off or broken: its list of files is missing. Copy or export the file again.',
    );
  }
  const count = view.getUint16(end + 10, true);
  if (count > LIMITS.entries) {
    throw new Refused(
      `The archive holds ${count} files; a compressed score has two or three, at most ${LIMITS.entries} are read.`,
    );
  }
  let at = view.getUint32(end + 16, true);
  const entries: Entry[] = [];
  for (let i = 0; i < count; i++) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== CENTRAL) throw brokenList();
    const nameLength = view.getUint16(at + 28, true);
    const next = at + 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (next > bytes.length) throw brokenList();
    entries.push({
      name: nameOf(bytes.subarray(at + 46, at + 46 + nameLength)),
      rawName: bytes.subarray(at + 46, at + 46 + nameLength),
      flags: view.getUint16(at + 8, true),
      time: view.getUint32(at + 12, true),
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packed: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      header: view.getUint32(at + 42, true),
    });
    at = next;
  }
  return entries;
}

function brokenList(): Refused {
  return new Refused("The archive's list of files is broken. Copy or export the file again.");
}

/** An entry's name, which must stay inside the archive: no way up, no drive, no root. */
function nameOf(bytes: Uint8Array): string {
  if (bytes.length > LIMITS.entryNameLength)
    throw new Refused("A file's name in the archive is far too long.");
  const name = plainName(bytes);
  const leaves = name.split(/[\\/]/).includes('..') || /^([\\/]|[A-Za-z]:)/.test(name) || name.includes('\0');
  if (leaves) {
    throw new Refused(
      `The archive has a file named ${quoted(name)}, which points outside the archive. It is not opened.`,
    );
  }
  return name;
}

function plainName(bytes: Uint8Array): string {
  if (bytes.every((byte) => byte < 0x80)) return String.fromCharCode(...bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

function unpack(bytes: Uint8Array, entry: Entry): Uint8Array {
  const what = quoted(entry.name);
  if ((entry.flags & ENCRYPTED) !== 0) {
    throw new Refused(`The file ${what} in the archive is locked with a password. Save it without one.`);
  }
  if (entry.method !== 0 && entry.method !== 8) {
    throw new Refused(
      `The file ${what} in the archive is packed in a way no score uses (method ${entry.method}).`,
    );
  }
  if (entry.size > LIMITS.unpackedBytes) throw tooBig(what);
  const packed = packedBytes(bytes, entry);
  const whole = entry.method === 0 ? packed : inflate(packed, what);
  if (whole.length !== entry.size || crc32(whole) !== entry.crc) {
    throw new Refused(
      `The file ${what} in the archive is damaged: its check sum is wrong. Copy or export it again.`,
    );
  }
  return whole;
}

function packedBytes(bytes: Uint8Array, entry: Entry): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (entry.header + 30 > bytes.length || view.getUint32(entry.header, true) !== LOCAL) throw brokenList();
  const from =
    entry.header + 30 + view.getUint16(entry.header + 26, true) + view.getUint16(entry.header + 28, true);
  if (from + entry.packed > bytes.length) {
    throw new Refused(
      `The archive is cut off in the middle of ${quoted(entry.name)}. Copy or export the file again.`,
    );
  }
  return bytes.subarray(from, from + entry.packed);
}

function inflate(packed: Uint8Array, what: string): Uint8Array {
  const chunks: Uint8Array[] = [];
  let out = 0;
  let done = false;
  const inflater = new Inflate((chunk, final) => {
    chunks.push(chunk);
    out += chunk.length;
    done ||= final;
  });
  for (let at = 0; at < packed.length; at += PORTION) {
    const taken = Math.min(packed.length, at + PORTION);
    try {
      inflater.push(packed.subarray(at, taken), taken === packed.length);
    } catch {
      throw new Refused(
        `The file ${what} in the archive can't be unpacked: it is damaged. Copy or export it again.`,
      );
    }
    if (out > LIMITS.unpackedBytes) throw tooBig(what);
    if (out > LIMITS.ratioFrom && out > LIMITS.ratio * taken) {
      throw new Refused(
        `The file ${what} in the archive unpacks to over ${LIMITS.ratio} times its size. No score does that; it is not opened.`,
      );
    }
  }
  if (!done) throw new Refused(`The file ${what} in the archive ends too early. Copy or export it again.`);
  return joinedBytes(chunks);
}

function tooBig(what: string): Refused {
  return new Refused(
    `The file ${what} in the archive unpacks to more than ${LIMITS.unpackedBytes / 1024 / 1024} MB, too much for one exercise.`,
  );
}

/** What each byte does to the sum, alone and with one, two or three bytes after it: 256 numbers each. */
const CRC_TABLE = new Uint32Array(4 * 256);
for (let n = 0; n < 256; n++) {
  let value = n;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  CRC_TABLE[n] = value;
}
for (let i = 256; i < CRC_TABLE.length; i++) {
  const before = CRC_TABLE[i - 256]!;
  CRC_TABLE[i] = CRC_TABLE[before & 0xff]! ^ (before >>> 8);
}

/** The check sum of ISO 3309, as zip archives use it; four bytes at a time. */
function crc32(bytes: Uint8Array): number {
  const table = CRC_TABLE;
  let crc = 0xffffffff;
  let i = 0;
  for (; i + 4 <= bytes.length; i += 4) {
    crc ^= bytes[i]! | (bytes[i + 1]! << 8) | (bytes[i + 2]! << 16) | (bytes[i + 3]! << 24);
    crc =
      table[768 + (crc & 0xff)]! ^
      table[512 + ((crc >>> 8) & 0xff)]! ^
      table[256 + ((crc >>> 16) & 0xff)]! ^
      table[crc >>> 24]!;
  }
  for (; i < bytes.length; i++) crc = table[(crc ^ bytes[i]!) & 0xff]! ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}
