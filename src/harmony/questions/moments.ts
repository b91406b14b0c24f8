/** What holds at a moment: chord, key, phrase, a voice's pitch. All pure; times are ticks. */
import type { Pitch } from '../../score/pitch.ts';
import { lastBegun, stretchAt } from '../../score/search.ts';
import type { Tone } from '../../score/texture.ts';
import type { Ticks } from '../../score/time.ts';
import type { Analysis, Chord, Key, Phrase } from '../analysis.ts';

/** The chord that sounds at a moment; undefined where the analysis has none. */
export function chordAt(analysis: Analysis, at: Ticks): Chord | undefined {
  return stretchAt(analysis.chords, at);
}

/** The local key at a moment. */
export function keyAt(analysis: Analysis, at: Ticks): Key | undefined {
  return analysis.keys[keyIndexAt(analysis, at)]?.key;
}

/** The index in `keys` of the local key at a moment; -1 where there is none. */
export function keyIndexAt({ keys }: Analysis, at: Ticks): number {
  const index = lastBegun(keys, at, ({ from }) => from);
  return index >= 0 && at < keys[index]!.until ? index : -1;
}

/** The phrase a moment belongs to. */
export function phraseAt(analysis: Analysis, at: Ticks): Phrase | undefined {
  const phrase = analysis.phrases[lastBegun(analysis.phrases, at, ({ from }) => from)];
  return phrase !== undefined && at < phrase.until ? phrase : undefined;
}

/** True where a chord sounds when its phrase ends. */
export function endsPhrase(analysis: Analysis, chord: Chord): boolean {
  const phrase = phraseAt(analysis, chord.at);
  return phrase !== undefined && chord.until >= phrase.until;
}

/** The lowest octave-bound pitch a voice sounds at a moment, if it sounds. */
export function pitchAt(analysis: Analysis, voice: Tone['voice'], at: Ticks): Pitch | undefined {
  return stretchAt(analysis.texture.tones[voice], at)?.pitch;
}
