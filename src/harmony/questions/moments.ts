/** Questions about an analysis that rules, reports and the page share. All pure; times are ticks. */
import { fifthsPlace, type NoteName, noteNameAtFifths, type Pitch, sameNoteName, stepIndex } from '../../score/pitch.ts';
import { remembered } from '../../score/remember.ts';
import { lastBegun, stretchAt } from '../../score/search.ts';
import type { Tone } from '../../score/texture.ts';
import type { Ticks } from '../../score/time.ts';
import type { Analysis, Chord, Degree, Key, Members, Ornament, Phrase } from '../analysis.ts';
import { keyFacts } from '../tonal.ts';

export type Member = 'root' | 'third' | 'fifth' | 'seventh';
export const MEMBERS: readonly Member[] = ['root', 'third', 'fifth', 'seventh'];

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

/** The ornament a tone is at a moment, or at any moment where none is given; undefined where it belongs to its chord. */
export function ornamentOf(analysis: Analysis, tone: Tone, at?: Ticks): Ornament | undefined {
  const own = ornamentsByTone(analysis).get(tone) ?? [];
  return own.find((ornament) => at === undefined || (at >= ornament.at && at < ornament.until));
}

/** Each tone's ornaments, in order of time; tones that have none are left out. Worked out once. */
export const ornamentsByTone: (analysis: Analysis) => ReadonlyMap<Tone, readonly Ornament[]> = remembered(
  (analysis) => {
    const map = new Map<Tone, Ornament[]>();
    for (const ornament of analysis.ornaments) {
      const list = map.get(ornament.tone);
      if (list === undefined) map.set(ornament.tone, [ornament]);
      else list.push(ornament);
    }
    return map;
  },
);

/** Which member of the chord a note is, by spelling; undefined for a foreign note. */
export function memberOf(chord: { readonly members: Members }, note: NoteName): Member | undefined {
  const { root, third, fifth, seventh } = chord.members;
  if (sameNoteName(note, root)) return 'root';
  if (sameNoteName(note, third)) return 'third';
  if (sameNoteName(note, fifth)) return 'fifth';
  return seventh !== undefined && sameNoteName(note, seventh) ? 'seventh' : undefined;
}

/** The members a chord has, from the root up. */
export function membersOf(chord: { readonly members: Members }): readonly NoteName[] {
  const { root, third, fifth, seventh } = chord.members;
  return seventh === undefined ? [root, third, fifth] : [root, third, fifth, seventh];
}

/** A note's place in a key: degree 1 to 7, and how far it is altered from the scale (natural minor in minor). */
export function degreeOf(note: NoteName, key: Key): { readonly degree: number; readonly alteration: number } {
  const { scale } = keyFacts(key);
  const index = (stepIndex(note.step) - stepIndex(scale[0]!.step) + 7) % 7;
  return { degree: index + 1, alteration: note.alteration - scale[index]!.alteration };
}

/** The seventh degree a semitone below the tonic: raised in minor. */
export function leadingNoteOf(key: Key): NoteName {
  return keyFacts(key).harmonic[6]!;
}

/** True for the leading note of the key by name, in any octave. */
export function isLeadingNote(note: NoteName, key: Key): boolean {
  return sameNoteName(note, leadingNoteOf(key));
}

/**
 * The leading note a chord contains: the local key's, or for an applied chord that of the degree it points to
 * (F# in V/V of C major). Undefined where the chord has none: only major-third dominants and leading-note chords do.
 */
export function leadingNoteIn(chord: Chord): NoteName | undefined {
  const goal = chord.roman.applied === undefined ? chord.key : appliedKey(chord.key, chord.roman.applied);
  const leading = leadingNoteOf(goal);
  return membersOf(chord).find((name) => sameNoteName(name, leading));
}

/** The key whose tonic triad an applied chord points to: G major for V/V in C major. */
export function appliedKey(key: Key, applied: Degree): Key {
  return { tonic: degreeRoot(key, applied), mode: applied.quality === 'minor' ? 'minor' : 'major' };
}

/** The root of a degree, spelt: the raised seventh for a diminished chord on 7 in minor, else the natural one. */
function degreeRoot(key: Key, degree: Degree): NoteName {
  const { scale, harmonic } = keyFacts(key);
  const raised = degree.degree === 7 && degree.quality === 'diminished';
  const plain = (raised ? harmonic : scale)[degree.degree - 1]!;
  return noteNameAtFifths(fifthsPlace(plain) + 7 * degree.alteration);
}

/** V, V7, viio, viio7 and the like, of the local key or (unless `own` is asked for) of another degree. */
export function isDominant(chord: Chord, own = false): boolean {
  const { roman } = chord;
  if (own && roman.applied !== undefined) return false;
  if (roman.special !== undefined) return false;
  return (
    (roman.degree === 5 && roman.alteration === 0 && roman.quality !== 'minor') ||
    (roman.degree === 7 && roman.quality === 'diminished')
  );
}

/** The tonic triad of the local key (a tierce de Picardie included), in any inversion. */
export function isTonic(chord: Chord): boolean {
  const { roman } = chord;
  return (
    roman.degree === 1 && roman.alteration === 0 && roman.applied === undefined && roman.seventh === undefined
  );
}

/** Same root, quality and seventh: the harmony has not changed, whatever the inversion or key. */
export function sameHarmony(a: Chord, b: Chord): boolean {
  return sameNoteName(a.root, b.root) && a.quality === b.quality && a.roman.seventh === b.roman.seventh;
}

/** The lowest octave-bound pitch a voice sounds at a moment, if it sounds. */
export function pitchAt(analysis: Analysis, voice: Tone['voice'], at: Ticks): Pitch | undefined {
  return stretchAt(analysis.texture.tones[voice], at)?.pitch;
}
