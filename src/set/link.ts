/**
 * Exercises in an address: after the `#`, so that they never leave the browser. What comes in an address may have been
 * made by anybody: it is bounded before it is unpacked, and checked before it is read.
 */
import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate';
import * as z from 'zod';
import { type Brief, printBrief, readBrief } from '../brief/brief.ts';
import { type Outcome, refuse } from '../refusal/refusal.ts';

export const LINK_LIMITS = {
  /** Of the packed exercises. Longer addresses are cut by some mail and learning systems (from memory, no source). */
  characters: 2_000,
  /** Of all exercises together, unpacked. */
  text: 64 * 1024,
  exercises: 6,
} as const;

const BEGINS = 'set/';

const packed = z.strictObject({
  v: z.literal(1),
  briefs: z.array(z.string().min(1).max(LINK_LIMITS.text)).min(1).max(LINK_LIMITS.exercises),
});

/** What to put after `#` of the page's address. Lyrics and grace notes are left out, as the text notation has none. */
export function linkTo(briefs: readonly Brief[]): Outcome<{ readonly hash: string }> {
  const content = { v: 1, briefs: briefs.map((brief) => printBrief(brief)) } satisfies z.infer<typeof packed>;
  const payload = toBase64Url(deflateSync(strToU8(JSON.stringify(content)), { level: 9 }));
  if (payload.length > LINK_LIMITS.characters || briefs.length > LINK_LIMITS.exercises)
    return refuse(
      `The exercise is too long for a link (${payload.length} characters, and ${LINK_LIMITS.characters} pass everywhere). Give out the file instead.`,
    );
  return { ok: true, hash: `${BEGINS}${payload}` };
}

export interface LinkedExercise {
  readonly brief: Brief;
  /** The brief as its file would say it. */
  readonly text: string;
}

/** Reads what {@link linkTo} made; never throws, whatever comes in. */
export function readLink(hash: string): Outcome<{ readonly exercises: readonly LinkedExercise[] }> {
  const payload = hash.slice(BEGINS.length);
  if (payload.length > LINK_LIMITS.characters)
    return refuse(
      'The link is longer than any that is made here, so it was not opened. Ask for the file instead.',
    );
  const content = unpacked(payload);
  if (content === undefined)
    return refuse(
      'The link is damaged or was cut short, so there is no exercise in it. Copy the whole of it, or ask for the file instead.',
    );
  const exercises: LinkedExercise[] = [];
  for (const text of content.briefs) {
    const { brief, problems } = readBrief(text);
    const [first] = problems;
    if (first !== undefined)
      return refuse(`The exercise in the link can’t be read (line ${first.line}): ${first.message}`);
    exercises.push({ brief, text });
  }
  return { ok: true, exercises };
}

function unpacked(payload: string): z.infer<typeof packed> | undefined {
  const bytes = fromBase64Url(payload);
  if (bytes === undefined) return undefined;
  try {
    // A byte unpacks to some thousand at most, so that this stays below 2 MB.
    const text = inflateSync(bytes);
    if (text.length > LINK_LIMITS.text) return undefined;
    return packed.safeParse(JSON.parse(strFromU8(text))).data;
  } catch {
    return undefined;
  }
}

/** RFC 4648, section 5, without padding. */
const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

function toBase64Url(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const three = (bytes[i]! << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    const signs = Math.min(4, bytes.length - i + 1);
    for (let k = 0; k < signs; k++) text += ALPHABET[(three >> (18 - 6 * k)) & 63];
  }
  return text;
}

function fromBase64Url(text: string): Uint8Array | undefined {
  if (text === '' || text.length % 4 === 1) return undefined;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let [held, bits, at] = [0, 0, 0];
  for (const sign of text) {
    const value = ALPHABET.indexOf(sign);
    if (value < 0) return undefined;
    held = ((held << 6) | value) & 0xffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[at++] = (held >> bits) & 255;
  }
  return bytes;
}
