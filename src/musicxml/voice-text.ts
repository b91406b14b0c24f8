/** Which line sings which voice, as a person types it: `S=1, A=2, T=3, B=4`. */
import { type Outcome, refuse } from '../refusal/refusal.ts';
import { VOICES, type VoiceName } from '../score/score.ts';
import type { VoiceAssignment } from './voices.ts';

/** Reads `S=1,A=2.1`: parts by their number, or a line of a staff of a part. */
export function readVoiceText(text: string): Outcome<{ readonly voices: VoiceAssignment }> {
  const voices: Partial<Record<VoiceName, string>> = {};
  for (const pair of text.split(',')) {
    const found = /^\s*([SATB])\s*=\s*(\d{1,3}(?:\.\d{1,3}){0,2})\s*$/i.exec(pair);
    if (found === null) {
      return refuse(
        `“${pair.trim().slice(0, 40)}” is no voice with its line. Write them as S=1,A=2,T=3,B=4.`,
      );
    }
    voices[found[1]!.toUpperCase() as VoiceName] = found[2]!;
  }
  return { ok: true, voices };
}

export function printVoiceText(voices: VoiceAssignment): string {
  return VOICES.flatMap((voice) => (voices[voice] === undefined ? [] : [`${voice}=${voices[voice]}`])).join(
    ',',
  );
}
