/** A zip archive from entries that are packed already, so that what is not touched is carried over as it is. */

export interface PackedEntry {
  /** The name as bytes. */
  readonly rawName: Uint8Array;
  /** General flags; that lengths follow the data is never so here. */
  readonly flags: number;
  /** Date and time as the archive writes them. */
  readonly time: number;
  readonly method: number;
  readonly crc: number;
  readonly size: number;
  readonly packed: Uint8Array;
}

const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
const LENGTHS_FOLLOW = 8;
/** Version 2.0 of the format is needed for compression. */
const VERSION = 20;

export function writeZip(entries: readonly PackedEntry[]): Uint8Array {
  const locals = entries.map((entry) => localHeader(entry));
  const starts: number[] = [];
  let at = 0;
  for (const [i, entry] of entries.entries()) {
    starts.push(at);
    at += locals[i]!.length + entry.packed.length;
  }
  const central = entries.map((entry, i) => centralHeader(entry, starts[i]!));
  const listed = central.reduce((sum, header) => sum + header.length, 0);
  const zip = new Uint8Array(at + listed + 22);
  let to = 0;
  const put = (bytes: Uint8Array): void => {
    zip.set(bytes, to);
    to += bytes.length;
  };
  for (const [i, entry] of entries.entries()) {
    put(locals[i]!);
    put(entry.packed);
  }
  for (const header of central) put(header);
  const end = new DataView(zip.buffer, to);
  end.setUint32(0, END, true);
  end.setUint16(8, entries.length, true);
  end.setUint16(10, entries.length, true);
  end.setUint32(12, listed, true);
  end.setUint32(16, at, true);
  return zip;
}

function localHeader(entry: PackedEntry): Uint8Array {
  const header = new Uint8Array(30 + entry.rawName.length);
  const view = new DataView(header.buffer);
  view.setUint32(0, LOCAL, true);
  view.setUint16(4, VERSION, true);
  writeFacts(view, 6, entry);
  header.set(entry.rawName, 30);
  return header;
}

function centralHeader(entry: PackedEntry, start: number): Uint8Array {
  const header = new Uint8Array(46 + entry.rawName.length);
  const view = new DataView(header.buffer);
  view.setUint32(0, CENTRAL, true);
  view.setUint16(4, VERSION, true);
  view.setUint16(6, VERSION, true);
  writeFacts(view, 8, entry);
  view.setUint32(42, start, true);
  header.set(entry.rawName, 46);
  return header;
}

/** What both headers say, in the same order. */
function writeFacts(view: DataView, at: number, entry: PackedEntry): void {
  view.setUint16(at, entry.flags & ~LENGTHS_FOLLOW, true);
  view.setUint16(at + 2, entry.method, true);
  view.setUint32(at + 4, entry.time, true);
  view.setUint32(at + 8, entry.crc, true);
  view.setUint32(at + 12, entry.packed.length, true);
  view.setUint32(at + 16, entry.size, true);
  view.setUint16(at + 20, entry.rawName.length, true);
}
