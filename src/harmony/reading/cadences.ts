/** Names the cadence at each phrase end from its last two harmonies. */

import { fifthsPlace, sameNoteName } from '../../score/pitch.ts';
import { VOICES } from '../../score/score.ts';
import { stretchesWithin } from '../../score/search.ts';
import { sliceAt, type Texture, toneIn } from '../../score/texture.ts';
import type { Cadence, CadenceKind, Chord, Key, Phrase } from '../analysis.ts';
import { appliedKey } from '../questions/degrees.ts';

/** Cadences in the order of the phrases; a phrase whose last chords make none has none. */
export function cadencesOf(
  texture: Texture,
  phrases: readonly Phrase[],
  chords: readonly Chord[],
): {
  readonly cadences: Cadence[];
  readonly phrases: Phrase[];
} {
  const cadences: Cadence[] = [];
  const told = phrases.map((phrase) => {
    const cadence = cadenceOf(texture, phrase, chords);
    if (cadence === undefined) return phrase;
    cadences.push(cadence);
    return { ...phrase, cadence: cadences.length - 1 };
  });
  return { cadences, phrases: told };
}

function cadenceOf(texture: Texture, phrase: Phrase, chords: readonly Chord[]): Cadence | undefined {
  const inside = stretchesWithin(chords, phrase.from, phrase.until);
  const last = inside.at(-1);
  if (last === undefined || last.until < phrase.until) return undefined;
  // The goal is where the last harmony begins: V that takes its seventh, a tonic that shifts its bass, or one whose
  // third is raised late is one goal.
  let goal = inside.length - 1;
  while (goal > 0 && leadsInto(inside[goal - 1]!, last)) goal--;
  const first = inside[goal]!;
  const approach = inside[goal - 1];
  const home = last === chords.at(-1) ? chords[0]?.key : undefined;
  const { key, kind } = amen(approach, first, home) ?? named(approach, first, last) ?? {};
  if (key === undefined || kind === undefined || approach === undefined) return undefined;
  const tonicGoal = kind === 'perfect' || kind === 'plagal';
  // Empty bars after the last note belong to its chord, not to the phrase.
  const sounding = sliceAt(texture, Math.min(last.until, phrase.until) - 1);
  const top = sounding && VOICES.map((voice) => toneIn(sounding, voice)).find((tone) => tone !== undefined);
  const inverted =
    approach.roman.inversion > 0 || last.roman.inversion > 0 || leadingNoteChord(approach, key);
  return {
    at: first.at,
    key,
    kind,
    approach: approach.index,
    goal: first.index,
    full: kind === 'perfect' && !inverted && top !== undefined && sameNoteName(top.pitch, key.tonic),
    inverted,
    phrygian:
      kind === 'imperfect' &&
      key.mode === 'minor' &&
      offset(approach, key) === -1 &&
      approach.quality === 'minor' &&
      approach.roman.inversion === 1,
    tierce: tonicGoal && key.mode === 'minor' && last.quality === 'major' && soundsThird(texture, last),
  };
}

/** A voice still to be written may have the third; nobody can say yet which it is. */
function soundsThird(texture: Texture, { at, until, members }: Chord): boolean {
  return VOICES.some((voice) =>
    stretchesWithin(texture.tones[voice], at, until).some(({ pitch }) => sameNoteName(pitch, members.third)),
  );
}

/**
 * At the end of a piece that began in minor, iv and its own tonic with a tierce: the reading may be in the key of iv by
 * then, as whose dominant the tierce sounds.
 */
function amen(
  approach: Chord | undefined,
  goal: Chord,
  home: Key | undefined,
): { key: Key; kind: CadenceKind } | undefined {
  if (approach === undefined || home?.mode !== 'minor' || !sameNoteName(goal.root, home.tonic))
    return undefined;
  const ends = goal.quality === 'major' && goal.roman.seventh === undefined && goal.roman.inversion === 0;
  return ends && offset(approach, home) === -1 && approach.quality === 'minor'
    ? { key: home, kind: 'plagal' }
    : undefined;
}

/** Key and kind, counted in the key of the goal; a goal that is an applied dominant closes in the key it points to. */
function named(
  approach: Chord | undefined,
  goal: Chord,
  last: Chord,
): { key: Key; kind: CadenceKind } | undefined {
  if (approach === undefined) return undefined;
  const { applied, special } = goal.roman;
  if (special !== undefined) return undefined;
  const key = applied === undefined ? goal.key : appliedKey(goal.key, applied);
  const from = offset(approach, key);
  const to = offset(goal, key);
  const dominant =
    (from === 1 && approach.quality !== 'minor' && approach.quality !== 'diminished') ||
    leadingNoteChord(approach, key);
  const triad = last.roman.seventh === undefined;
  // A six-four waits for its bass to move: nothing closes on it.
  if (triad && last.roman.inversion === 2) return undefined;
  if (to === 0 && triad && (goal.quality === 'major' || goal.quality === 'minor')) {
    if (dominant) return { key, kind: 'perfect' };
    const subdominant =
      (from === -1 && approach.quality !== 'diminished') ||
      (from === 2 && approach.roman.seventh !== undefined && approach.quality !== 'major');
    return subdominant ? { key, kind: 'plagal' } : undefined;
  }
  if (to === 1 && last.quality === 'major') return { key, kind: 'imperfect' };
  // A dominant applied to the very chord that follows closes in that chord's key.
  const own = approach.roman.applied && appliedKey(approach.key, approach.roman.applied);
  if (own !== undefined && triad && to !== 1 && offset(goal, own) === 0 && goal.quality === own.mode)
    return { key: own, kind: 'perfect' };
  return dominant && to !== 1 ? { key, kind: 'interrupted' } : undefined;
}

function offset(chord: Chord, key: Key): number {
  return fifthsPlace(chord.root) - fifthsPlace(key.tonic);
}

function leadingNoteChord(chord: Chord, key: Key): boolean {
  return offset(chord, key) === 5 && chord.quality === 'diminished';
}

/** On the same root, and of the same quality unless a minor third becomes major. */
function leadsInto(before: Chord, last: Chord): boolean {
  const raised = before.quality === 'minor' && last.quality === 'major';
  return sameNoteName(before.root, last.root) && (before.quality === last.quality || raised);
}
