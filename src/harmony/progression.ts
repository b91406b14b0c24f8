/** Steps from chord to chord inside a phrase: what rules about the order of chords ask. */
import type { Analysis, Chord, Key } from './analysis.ts';
import { endsPhrase, sameHarmony } from './questions.ts';
import { nextChord, voicings } from './voicing.ts';

/** One step of the harmony inside a phrase: the last chord of a harmony and the first of the next. */
export interface HarmonyStep {
  readonly from: Chord;
  readonly to: Chord;
}

/**
 * All steps from one harmony to another inside a phrase, both chords in the same local key, both sure enough to be
 * judged. Across a phrase end anything may follow anything.
 */
export function harmonySteps(analysis: Analysis): readonly HarmonyStep[] {
  return analysis.chords.flatMap((from) => {
    const to = nextChord(analysis, from.index);
    if (to === undefined || sameHarmony(from, to) || endsPhrase(analysis, from)) return [];
    if (!sameKey(from.key, to.key)) return [];
    const known = voicings(analysis);
    return known[from.index]!.sure && known[to.index]!.sure ? [{ from, to }] : [];
  });
}

export function sameKey(a: Key, b: Key): boolean {
  return a.mode === b.mode && a.tonic.step === b.tonic.step && a.tonic.alteration === b.tonic.alteration;
}

/** The degree of an unaltered chord of the key itself; undefined for applied, altered and special chords. */
export function plainDegree(chord: Chord): number | undefined {
  const { roman } = chord;
  return roman.applied === undefined && roman.special === undefined && roman.alteration === 0
    ? roman.degree
    : undefined;
}
