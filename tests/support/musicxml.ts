/** MusicXML in the tests: where the shared data lies, and a source score in one readable line. */
import { existsSync, readFileSync } from 'node:fs';
import { decodeXml } from '../../src/musicxml/decode.ts';
import { parseMusicXml } from '../../src/musicxml/parse.ts';
import type { SourceNote, SourcePart, SourceScore } from '../../src/musicxml/source.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { CROTCHET } from '../../src/score/time.ts';

export const SHARED = new URL('../../../shared/', import.meta.url).pathname;
export const SUITE = `${SHARED}musicxml-suite/`;
export const CHORALES = `${SHARED}corpus/chorales/`;
export const SCHEMA = `${SHARED}schema/`;
export const haveSuite = existsSync(SUITE);
export const haveChorales = existsSync(CHORALES);
export const haveSchema = existsSync(SCHEMA);

export function suiteSource(file: string): SourceScore {
  return parseMusicXml(decodeXml(readFileSync(SUITE + file)).text);
}

/** A length in crotchets: `1`, `1/2`, `3/2`. */
export function length(ticks: number): string {
  for (const d of [1, 2, 3, 4, 5, 6, 7, 8, 12, 16, 32, 64]) {
    if ((ticks * d) % CROTCHET === 0)
      return d === 1 ? String(ticks / CROTCHET) : `${(ticks * d) / CROTCHET}/${d}`;
  }
  return `${ticks}t`;
}

function spellNote(note: SourceNote): string {
  const grace = note.grace ? `(${note.grace.map(printPitch).join(' ')})` : '';
  const what = note.pitch ? printPitch(note.pitch) : note.kind === 'rest' ? 'r' : '-';
  const marks = `${note.oddPitch ? '?' : ''}${note.inexact ? '≈' : ''}${note.fermata ? '!' : ''}${note.tieStart ? '~' : ''}`;
  return `${note.chord ? '+' : ''}${grace}${what}:${length(note.duration)}${marks}`;
}

/** A part as text, a bar between strokes: `G4:1 r:2 | C5:4~`; `+` joins a chord, `@2` says where a voice goes on. */
export function spell(part: SourcePart, staff?: number): string {
  return part.bars
    .map((bar) => {
      let at = 0;
      const out: string[] = [];
      for (const note of bar.notes) {
        if (staff !== undefined && note.staff !== staff) continue;
        if (!note.chord && note.at !== at) out.push(`@${length(note.at)}`);
        out.push(spellNote(note));
        if (!note.chord) at = note.at + note.duration;
      }
      return out.join(' ');
    })
    .join(' | ');
}
