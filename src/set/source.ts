/** The piece that work is set from: any file that opens as an exercise, a tune by itself, or a brief to be changed. */
import { type Brief, isBrief, readBrief } from '../brief/brief.ts';
import { fromTheTop } from '../brief/open-brief.ts';
import { decodeText, type VoiceAssignment } from '../musicxml/index.ts';
import { kindOf, openScore } from '../open/open.ts';
import { type Outcome, refuse } from '../refusal/refusal.ts';
import type { Score } from '../score/score.ts';

export interface Source {
  readonly score: Score;
  /** Where the file is a brief already: what it says besides its notes. */
  readonly brief?: Brief;
}

/** Never throws. `voices` says which line sings which voice, where a person has said so. */
export function openSource(
  bytes: Uint8Array,
  voices?: VoiceAssignment,
): Outcome<{ readonly source: Source }> {
  const text = kindOf(bytes) === 'text' ? decodeText(bytes) : undefined;
  if (text !== undefined && isBrief(text)) {
    const { brief, problems } = readBrief(text);
    const [first] = problems;
    return first === undefined
      ? { ok: true, source: { score: brief.score, brief } }
      : refuse(first.message, { ...first, problems });
  }
  const opened = openScore(bytes, undefined, voices);
  if (opened.ok) return { ok: true, source: { score: opened.score } };
  const guessed = opened.lines === undefined ? undefined : fromTheTop(opened.lines);
  const again = guessed === undefined ? opened : openScore(bytes, undefined, guessed);
  return again.ok ? { ok: true, source: { score: again.score } } : opened;
}
