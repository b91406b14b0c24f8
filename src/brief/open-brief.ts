/** A brief from any file: our text, or MusicXML with the notes that are given. */
import { decodeText, type FoundLine, type VoiceAssignment } from '../musicxml/index.ts';
import { kindOf, openScore } from '../open/open.ts';
import { type Outcome, refuse } from '../refusal/refusal.ts';
import type { VoiceName } from '../score/score.ts';
import { asGiven, type Brief, readBrief } from './brief.ts';

/** Never throws. A text keeps its headers; of MusicXML the notes are given, and figures and lyrics are kept. */
export function openBrief(bytes: Uint8Array): Outcome<{ readonly brief: Brief }> {
  if (kindOf(bytes) === 'text') {
    const text = decodeText(bytes);
    if (text !== undefined) {
      const { brief, problems } = readBrief(text);
      const [first] = problems;
      return first === undefined ? { ok: true, brief } : refuse(first.message, { ...first, problems });
    }
  }
  const opened = openScore(bytes);
  if (opened.ok) return given(opened);
  // A tune by itself is no four-part exercise, but it is a brief.
  const voices = opened.lines === undefined ? undefined : fromTheTop(opened.lines);
  const again = voices === undefined ? opened : openScore(bytes, undefined, voices);
  return again.ok ? given(again) : opened;
}

function given({ score }: Extract<ReturnType<typeof openScore>, { ok: true }>): {
  readonly ok: true;
  readonly brief: Brief;
} {
  return { ok: true, brief: { score: asGiven(score), task: '', profile: 'chorale', without: [] } };
}

/** More lines than these are an orchestra's: nobody would find four voices among them by looking. */
const MOST_LINES = 8;
const IN_ORDER: readonly (readonly VoiceName[])[] = [
  [],
  ['S'],
  ['S', 'B'],
  ['S', 'A', 'B'],
  ['S', 'A', 'T', 'B'],
];

/** Which voices the lines of a file are, from the top, until a person says otherwise: a tune, tune and bass, all four. */
export function fromTheTop(lines: readonly FoundLine[]): VoiceAssignment | undefined {
  const sung = lines.filter(({ notes }) => notes > 0);
  if (sung.length === 0 || sung.length > MOST_LINES) return undefined;
  const order = IN_ORDER[Math.min(4, sung.length)]!;
  return Object.fromEntries(order.map((voice, i) => [voice, sung[i]!.id]));
}
