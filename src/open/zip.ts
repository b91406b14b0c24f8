/** The files in a zip of many scripts, unpacked with every limit kept while unpacking, never after. */
import { Unzip, UnzipInflate } from 'fflate';
import { joinedBytes } from '../musicxml/index.ts';

export const ZIP_LIMITS = {
  files: 20_000,
  /** Bytes of one file, unpacked. */
  fileBytes: 8 * 1024 * 1024,
  /** Bytes of all files together, unpacked. */
  allBytes: 512 * 1024 * 1024,
} as const;

export interface ZippedFile {
  /** As written in the archive; used to name the script, never to write a file. */
  readonly name: string;
  readonly content: Uint8Array;
}

export interface Unzipped {
  readonly files: readonly ZippedFile[];
  /** What was left out, each in a sentence. */
  readonly left: readonly string[];
}

/** Packed bytes unpacked at a time: a bomb is noticed after some two megabytes. */
const PORTION = 2_048;

/** True for a zip that is no compressed MusicXML: a stack of files. */
export function isStackOfFiles(bytes: Uint8Array): boolean {
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b) return false;
  // A compressed score names its container near the beginning; names stand unpacked in the archive.
  const head = bytes.subarray(0, 64 * 1024);
  const tail = bytes.subarray(Math.max(0, bytes.length - 64 * 1024));
  return !holds(head, 'META-INF/container.xml') && !holds(tail, 'META-INF/container.xml');
}

/** Unpacks a stack of files. Folders and what systems add of their own are passed over. */
export function unzipStack(bytes: Uint8Array): Unzipped {
  const files: ZippedFile[] = [];
  const left: string[] = [];
  let all = 0;
  let entries = 0;
  let stopped = false;
  const unzip = new Unzip((entry) => {
    entries++;
    if (stopped || entry.name.endsWith('/') || isSystemFile(entry.name)) return;
    if (entries > ZIP_LIMITS.files) {
      stop(`The archive holds more than ${ZIP_LIMITS.files} files; the rest is left out.`);
      return;
    }
    const chunks: Uint8Array[] = [];
    let size = 0;
    entry.ondata = (error, chunk, final) => {
      if (stopped || size < 0) return;
      if (error !== null) {
        left.push(`${entry.name} could not be unpacked: it is damaged, or locked with a password.`);
        size = -1;
        return;
      }
      size += chunk.length;
      all += chunk.length;
      chunks.push(chunk);
      if (size > ZIP_LIMITS.fileBytes) {
        left.push(
          `${entry.name} is larger than ${ZIP_LIMITS.fileBytes / 1024 / 1024} MB unpacked; it is left out.`,
        );
        size = -1;
        entry.terminate();
      } else if (all > ZIP_LIMITS.allBytes) {
        stop(`The archive holds more than ${ZIP_LIMITS.allBytes / 1024 / 1024} MB; the rest is left out.`);
      } else if (final) files.push({ name: entry.name, content: joinedBytes(chunks) });
    };
    entry.start();
  });
  unzip.register(UnzipInflate);
  const stop = (message: string): void => {
    left.push(message);
    stopped = true;
  };
  try {
    for (let at = 0; at < bytes.length && !stopped; at += PORTION) {
      unzip.push(bytes.subarray(at, at + PORTION), at + PORTION >= bytes.length);
    }
  } catch {
    left.push('The archive is broken; what came before the break is taken.');
  }
  if (entries === 0 && left.length === 0) left.push('The archive holds no files.');
  return { files, left };
}

function isSystemFile(name: string): boolean {
  return /(^|\/)(__MACOSX\/|\.)|(^|\/)(Thumbs\.db|desktop\.ini)$/i.test(name);
}

function holds(bytes: Uint8Array, text: string): boolean {
  const wanted = [...text].map((sign) => sign.charCodeAt(0));
  const last = bytes.length - wanted.length;
  for (let i = 0; i <= last; i++) {
    if (bytes[i] === wanted[0] && wanted.every((byte, k) => bytes[i + k] === byte)) return true;
  }
  return false;
}
