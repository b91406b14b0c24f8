/**
 * The voices of a tune in ABC, each as a tune of its own. In ABC a voice's music may come a line at a time, between
 * other voices', or all together; taken apart it can be read without knowing of the others.
 */
import { Refused } from '../refusal/refusal.ts';
import { ABC_LIMITS } from './limits.ts';

export interface VoiceText {
  /** As the tune names it: `name=`, else the id after `V:`; empty in a tune of one voice. */
  readonly name: string;
  /** A whole tune: the header, then what belongs to this voice. As many lines as the tune has, so that places hold. */
  readonly text: string;
}

interface Voice {
  name: string;
  readonly lines: string[];
}

const FIELD = /^([A-Za-z]):(.*)$/;

/** The voice that a line begins with, `V:S name="Soprano"` or `[V:S]`, and what is said of it. */
function voiceAt(line: string): { readonly id: string; readonly properties: string } | undefined {
  const inside = line.startsWith('[V:') ? line.slice(3, line.indexOf(']')) : undefined;
  const said = (inside ?? (line.startsWith('V:') ? line.slice(2) : '')).trim();
  const [id = ''] = /^\S+/.exec(said) ?? [];
  return id === '' ? undefined : { id, properties: said.slice(id.length) };
}

/** @throws {Refused} for more voices than are read */
export function voicesIn(text: string): VoiceText[] {
  const lines = text.split(/\r\n|\r|\n/);
  const end = lines.findIndex((line) => /^K:/.test(line));
  const header = lines.slice(0, end + 1);
  const voices = new Map<string, Voice>();
  const voiceOf = (id: string, properties: string): Voice => {
    const known = voices.get(id);
    const named = /\b(?:name|nm)\s*=\s*"([^"]*)"/.exec(properties)?.[1];
    if (known !== undefined) {
      if (named !== undefined) known.name = named;
      return known;
    }
    if (voices.size >= ABC_LIMITS.voices) {
      throw new Refused(`The tune has more than ${ABC_LIMITS.voices} voices; four are needed.`, {
        kind: 'unreadable',
      });
    }
    const made: Voice = { name: named ?? id, lines: [] };
    voices.set(id, made);
    return made;
  };
  for (const [i, line] of header.entries()) {
    const said = voiceAt(line);
    if (said !== undefined) voiceOf(said.id, said.properties).lines[i] = line;
  }
  let current: Voice | undefined = [...voices.values()][0];
  const body = lines.slice(end + 1);
  for (const [i, line] of body.entries()) {
    const said = voiceAt(line);
    if (said !== undefined) current = voiceOf(said.id, said.properties);
    current ??= voiceOf('', '');
    const whose = isForAll(line, body.slice(i + 1)) ? [...voices.values()] : [current];
    for (const voice of whose) voice.lines[header.length + i] = line;
  }
  return [...voices.values()].map(({ name, lines: own }) => ({
    name,
    text: textOf(header, own, lines.length),
  }));
}

/** A key, metre or unit that stands before a change of voice is for all of them; else for the voice it stands in. */
function isForAll(line: string, after: readonly string[]): boolean {
  const letter = FIELD.exec(line)?.[1];
  if (letter === undefined || !'KMLQ'.includes(letter)) return false;
  const next = after.find((one) => one.trim() !== '' && !/^[KMLQ%]/.test(one));
  return next !== undefined && voiceAt(next) !== undefined;
}

/** What is about other voices, and what they sing, is left blank. */
function textOf(header: readonly string[], own: readonly string[], length: number): string {
  return Array.from({ length }, (_, i) => {
    const shared = header[i];
    const aside = shared === undefined || voiceAt(shared) !== undefined || /^%%(score|staves)\b/.test(shared);
    return aside ? (own[i] ?? '%') : shared;
  }).join('\n');
}
