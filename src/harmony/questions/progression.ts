/** Steps from chord to chord inside a phrase: what rules about the order of chords ask. */
import { stepIndex } from '../../score/pitch.ts';
import { remembered } from '../../score/remember.ts';
import type { Analysis, Chord, Key, Roman } from '../analysis.ts';
import { sameKey } from '../key.ts';
import { degreeOf } from './degrees.ts';
import { endsPhrase } from './moments.ts';
import { belongsToKey } from './spelling.ts';
import { nextChord, previousChord, type SoundingTriad, soundingTriadOf, voicings } from './voicing.ts';

/** A chord as one step of the harmony, read in the key of that step. */
export interface Station {
  readonly chord: Chord;
  readonly roman: Roman;
}

/** One step of the harmony inside a phrase. */
export interface HarmonyStep {
  readonly key: Key;
  readonly from: Station;
  readonly to: Station;
  /** The chords are in different keys by the analysis: the step may be the turn from one to the other. */
  readonly modulates: boolean;
}

/**
 * All steps from one harmony to another inside a phrase, both chords being sure enough to be judged. Where the key
 * changes between them the step is read in either key. Across a phrase end anything may follow anything.
 * Worked out once.
 */
export const harmonySteps: (analysis: Analysis) => readonly HarmonyStep[] = remembered(findSteps);

function findSteps(analysis: Analysis): readonly HarmonyStep[] {
  const known = voicings(analysis);
  return analysis.chords.flatMap((chord): HarmonyStep[] => {
    const next = nextChord(analysis, chord.index);
    if (next === undefined || endsPhrase(analysis, chord)) return [];
    if (!known[chord.index]!.sure || !known[next.index]!.sure) return [];
    const modulates = !sameKey(chord.key, next.key);
    return (modulates ? [chord.key, next.key] : [chord.key]).flatMap((key): HarmonyStep[] => {
      const [from, to] = [stationOf(analysis, chord, key), stationOf(analysis, next, key)];
      if (from === undefined || to === undefined || sameStation(from.roman, to.roman)) return [];
      // In a turn to another key only plain root positions say enough.
      if (modulates && from.roman.inversion + to.roman.inversion > 0) return [];
      return [{ key, from, to, modulates }];
    });
  });
}

/**
 * A chord in a key. Where it sounds as one whole triad from beginning to end, that is what the ear goes by, even if
 * the analysis explains a note of it away as an ornament. Undefined for what the key cannot name plainly.
 */
function stationOf(analysis: Analysis, chord: Chord, key: Key): Station | undefined {
  const heard = soundingTriadOf(voicings(analysis)[chord.index]!);
  const own = sameKey(chord.key, key);
  if (own && (heard === undefined || sameRootName(heard, chord))) return { chord, roman: chord.roman };
  const triad = heard ?? { ...chord.members, quality: chord.quality, inversion: chord.roman.inversion };
  const { degree, alteration } = degreeOf(triad.root, key);
  const plain = alteration === 0 || (alteration === 1 && triad.quality === 'diminished' && degree === 7);
  const inKey = [triad.root, triad.third, triad.fifth].every((name) => belongsToKey(name, key));
  if (!plain || !inKey || degree < 1) return own ? { chord, roman: chord.roman } : undefined;
  const roman: Roman = {
    degree: degree as Roman['degree'],
    alteration: 0,
    quality: triad.quality,
    inversion: triad.inversion,
  };
  return { chord, roman };
}

function sameRootName(heard: SoundingTriad, chord: Chord): boolean {
  return heard.root.step === chord.root.step && heard.root.alteration === chord.root.alteration;
}

function sameStation(a: Roman, b: Roman): boolean {
  return plainDegree(a) !== undefined && plainDegree(a) === plainDegree(b) && a.quality === b.quality;
}

/** The degree of an unaltered chord of the key itself; undefined for applied, altered and special chords. */
export function plainDegree(roman: Roman): Roman['degree'] | undefined {
  const own = roman.applied === undefined && roman.special === undefined && roman.alteration === 0;
  return own ? roman.degree : undefined;
}

/** Three roots in the bass, each a fifth below the one before (or a fourth above): a sequence carries the triad along. */
export function inFallingFifths(analysis: Analysis, index: number): boolean {
  const around = [previousChord(analysis, index), analysis.chords[index], nextChord(analysis, index)];
  const steps = around.map((chord) =>
    chord === undefined || chord.roman.inversion > 0 ? undefined : stepIndex(chord.root.step),
  );
  const [a, b, c] = steps;
  if (a === undefined || b === undefined || c === undefined) return false;
  return (a - b + 7) % 7 === 4 && (b - c + 7) % 7 === 4;
}
