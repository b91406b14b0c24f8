/** Files dropped, chosen or pasted, as work for the shelf. */

import { isBrief, readBrief } from '../../src/brief/brief.ts';
import { fromTheTop } from '../../src/brief/open-brief.ts';
import { decodeText, type FoundLine, readMusicXml, type VoiceAssignment } from '../../src/musicxml/index.ts';
import { hasHeader } from '../../src/notation/index.ts';
import { kindOf, openScore, readyFor } from '../../src/open/open.ts';
import { type Outcome, refuse } from '../../src/refusal/refusal.ts';
import { whollyGiven } from '../state/brief.ts';
import type { Particulars, Source } from '../state/page.ts';
import { type Work, workFromScore, workFromText } from '../state/work.ts';
import { asTyped } from './pasted.ts';

/** What pasted text is called where a file would have its name. */
const PASTED = 'What was pasted';

/** The work a file holds, or a sentence saying why there is none. A text with mistakes is work too: they are shown. */
export type Taken = Outcome<{ readonly work: Work; readonly particulars?: Partial<Particulars> }>;

export function takeBytes(bytes: Uint8Array, name: string): Taken {
  if (kindOf(bytes) === 'text') {
    const text = decodeText(bytes);
    if (text !== undefined && isBrief(text)) return takeBrief(text, name);
  }
  const opened = openScore(bytes);
  if (opened.ok) {
    if (opened.text !== undefined) return { ok: true, work: named(workFromText(opened.text), name) };
    return { ok: true, work: named(workFromScore(opened.score), name), particulars: sourceOf(bytes, name) };
  }
  if (kindOf(bytes) === 'text' && opened.problems !== undefined) {
    const text = decodeText(bytes);
    if (text !== undefined && looksLikeNotation(text)) return { ok: true, work: workFromText(text) };
  }
  const { message, line, column, lines } = opened;
  const guessed = lines === undefined ? undefined : withLinesInOrder(bytes, name, lines, message);
  if (guessed !== undefined) return guessed;
  const where =
    line === undefined ? '' : ` (line ${line}${column === undefined ? '' : `, column ${column}`})`;
  return refuse(`${name}${where}: ${message}`);
}

/** The same, once what it is read with is there. */
export async function takeFile(bytes: Uint8Array, name: string): Promise<Taken> {
  await readyFor(kindOf(bytes));
  return takeBytes(bytes, name);
}

/** A larger file is not kept beside the exercise, since it would be written with every keystroke. */
const MOST_KEPT = 1024 * 1024;

/** The file is kept with the exercise, so that its voices can be given out otherwise. */
function sourceOf(bytes: Uint8Array, name: string): Partial<Particulars> {
  const read = readMusicXml(bytes);
  if (!read.ok || bytes.length > MOST_KEPT) return {};
  const { assignment } = read;
  return { source: { name, bytes, assignment, ...(assignment.guessed ? { doubtful: true } : {}) } };
}

/** A file whose voices can't be told is opened with its upper lines; the form beside it says why, and changes that. */
function withLinesInOrder(
  bytes: Uint8Array,
  name: string,
  lines: readonly FoundLine[],
  why: string,
): Taken | undefined {
  const voices = fromTheTop(lines);
  if (voices === undefined || bytes.length > MOST_KEPT) return undefined;
  const read = readMusicXml(bytes, { voices });
  if (!read.ok) return undefined;
  const how = `${why} Choose below which line sings which voice.`;
  return {
    ok: true,
    work: named(workFromScore(read.score), name),
    particulars: { source: { name, bytes, assignment: { ...read.assignment, how }, doubtful: true } },
  };
}

/** The file read again with its lines given out to the voices as a person wishes. */
export function withVoices(
  source: Source,
  voices: VoiceAssignment,
): Outcome<{ readonly work: Work; readonly source: Source }> {
  const read = readMusicXml(source.bytes, { voices });
  if (!read.ok) return read;
  return {
    ok: true,
    work: named(workFromScore(read.score), source.name),
    source: { ...source, assignment: read.assignment },
  };
}

/** A brief begins a new exercise: what is given stands in it, locked, and the brief lies beside it. */
function takeBrief(text: string, name: string): Taken {
  const { brief, problems } = readBrief(text);
  const [first] = problems;
  if (first !== undefined)
    return refuse(`${name} (line ${first.line}, column ${first.column}): ${first.message}`);
  return {
    ok: true,
    work: workFromScore(brief.score),
    particulars: { brief: text, locked: whollyGiven(brief), begunFromBrief: true },
  };
}

/** A pasted text: MusicXML, ABC or our notation. */
export async function takeText(text: string): Promise<Taken> {
  const whole = new TextEncoder().encode(text.trimStart());
  const plain = kindOf(whole) === 'text' ? new TextEncoder().encode(asTyped(text)) : whole;
  return takeFile(plain, PASTED);
}

/** At least one voice or header line: worth showing with its mistakes, rather than refusing. */
function looksLikeNotation(text: string): boolean {
  return hasHeader(text, ['s', 'a', 't', 'b', 'title', 'key', 'metre']);
}

/** A score without a title takes the file's name. */
function named(work: Work, name: string): Work {
  if (work.score.title.trim() !== '' || name === PASTED) return work;
  const title = name
    .replace(/\.[A-Za-z]+$/, '')
    .replaceAll(/[_\s]+/g, ' ')
    .trim();
  return work.text.includes('title:') || title === ''
    ? work
    : workFromScore({ ...work.score, title: title.slice(0, 80) });
}
