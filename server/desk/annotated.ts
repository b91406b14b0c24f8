/** A script as it came, with what the teacher says put into it. */
import { numbersOf } from '../../src/desk/index.ts';
import { markedFile } from '../../src/open/marked.ts';
import { annotationsOf, type Marked } from '../../src/report/annotations.ts';
import { reviewScore } from '../../src/review/review.ts';
import type { Tone } from '../../src/score/texture.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { missing, type Script, type Stack } from './records.ts';
import { isPrinted, openedScript, standingOf } from './reports.ts';
import type { Desk } from './store.ts';

/** Agreed findings and the teacher's own remarks, numbered as on the sheet; a remark about the whole stands at its beginning. @throws {Refused} for an unreadable file */
export function annotatedScript(desk: Desk, stack: Stack, script: Script): Uint8Array {
  const opened = openedScript(desk, script);
  if (opened === undefined)
    throw missing(`${script.file} could not be read, so there is no score to write into.`);
  const review = reviewScore(opened.score, stack.profile);
  const { findings, remarks } = standingOf(desk, script);
  const { tones } = review.analysis.texture;
  const toneAt = (voice: Tone['voice'], at: number) =>
    tones[voice].filter((tone) => Math.abs(tone.at / CROTCHET - at) < 1e-6);
  const printed = findings.filter(isPrinted);
  const numbers = numbersOf(printed);
  const last = Math.max(0, ...numbers.values());
  const marks: Marked[] = [
    ...printed.map(({ id, severity, voices, from, notes, name, message }) => ({
      number: numbers.get(id)!,
      severity,
      voices,
      from: Math.round(from * CROTCHET),
      tones: notes.flatMap(({ voice, at }) => toneAt(voice, at)),
      sentence: `${severity}, ${name.toLowerCase()}. ${message}`,
    })),
    ...remarks.map(({ voice, from = 0, text }, i) => ({
      number: last + i + 1,
      severity: 'remark' as const,
      voices: voice === undefined ? [] : [voice],
      from: Math.round(from * CROTCHET),
      tones: [],
      sentence: text,
    })),
  ];
  return markedFile(desk.content(script.id), opened, annotationsOf(review, 'figures', marks), {
    form: 'musicxml',
    ...(opened.voices === undefined ? {} : { voices: opened.voices }),
  });
}
