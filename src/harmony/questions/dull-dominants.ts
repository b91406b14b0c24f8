/**
 * Chords that stand where a dominant belongs but have no leading note: v, or in minor the major chord on the seventh
 * degree as the signature gives it. In the middle of a line such chords may be good; here only three places are
 * looked at, where the ear waits for the semitone.
 */
import { fifthsPlace, type NoteName, noteNameAtFifths, sameNoteName } from '../../score/pitch.ts';
import { remembered } from '../../score/remember.ts';
import { VOICES } from '../../score/score.ts';
import { type Tone, toneIn } from '../../score/texture.ts';
import type { Analysis, Chord, Key } from '../analysis.ts';
import { sameKey } from '../key.ts';
import { closedPhrases, lastChordOf } from './closes.ts';
import { homeKey } from './home-key.ts';
import { endsPhrase, phraseAt } from './moments.ts';
import { isFleeting } from './ornamental.ts';
import { nextChord, previousChord, soundingTriadOf, voicings } from './voicing.ts';

export interface DullDominant {
  readonly key: Key;
  readonly place: 'full close' | 'half close' | 'between tonics';
  readonly chord: Chord;
  /** The chord it leads to, or at a half close the chord itself. */
  readonly goal: Chord;
  /** The tones on the seventh degree, by voice from the top. Never empty. */
  readonly tones: readonly Tone[];
}

/** All of them, in order of time; each chord once. Worked out once. */
export const dullDominants: (analysis: Analysis) => readonly DullDominant[] = remembered(findDullDominants);

function findDullDominants(analysis: Analysis): readonly DullDominant[] {
  const closes = closedPhrases(analysis).flatMap((phrase): DullDominant[] => {
    const last = lastChordOf(analysis, phrase);
    const approach = last && previousChord(analysis, last.index);
    if (last === undefined || approach === undefined || approach.at < phrase.from) return [];
    return [...fullClose(analysis, approach, last), ...halfClose(analysis, approach, last)];
  });
  const taken = new Set(closes.map(({ chord }) => chord));
  const between = analysis.chords.flatMap((chord) =>
    taken.has(chord) ? [] : betweenTonics(analysis, chord),
  );
  return [...closes, ...between].sort((a, b) => a.chord.at - b.chord.at);
}

function fullClose(analysis: Analysis, chord: Chord, goal: Chord): DullDominant[] {
  if (goal.roman.inversion !== 0) return [];
  const key = keysOf(analysis, [goal, chord]).find((k) => isTonicOf(analysis, goal, k));
  return key === undefined ? [] : dull(analysis, chord, goal, key, 'full close');
}

/** The phrase stops on v itself, and nothing before it makes it a tonic; or on VII, while the reading stays in minor. */
function halfClose(analysis: Analysis, approach: Chord, goal: Chord): DullDominant[] {
  const phrase = phraseAt(analysis, goal.at);
  const first = analysis.chords.find((chord) => phrase !== undefined && chord.until > phrase.from);
  if (goal.roman.inversion !== 0 || first === undefined) return [];
  const leading = noteNameAtFifths(fifthsPlace(goal.root) + 5);
  const led = analysis.chords
    .slice(first.index, goal.index)
    .some((chord) => Object.values(chord.members).some((name: NoteName) => sameNoteName(name, leading)));
  if (led) return [];
  const keys = [approach, first].map((chord) => chord.key).filter((key) => key.mode === 'minor');
  return keys
    .slice(0, 1)
    .flatMap((key) =>
      soundOf(analysis, goal).quality === 'major' && !sameKey(goal.key, key)
        ? []
        : dull(analysis, goal, goal, key, 'half close'),
    );
}

function betweenTonics(analysis: Analysis, chord: Chord): DullDominant[] {
  const before = previousChord(analysis, chord.index);
  const after = nextChord(analysis, chord.index);
  if (before === undefined || after === undefined || isFleeting(analysis, chord)) return [];
  if (endsPhrase(analysis, before) || endsPhrase(analysis, chord)) return [];
  const key = keysOf(analysis, [before, after]).find(
    (k) => isTonicOf(analysis, before, k) && isTonicOf(analysis, after, k),
  );
  if (key === undefined || isOfAnotherPhrase(analysis, chord, key)) return [];
  return dull(analysis, chord, after, key, 'between tonics');
}

/** The reading is in another key there, and the phrase goes on to close in it: no dominant of this one belongs there. */
function isOfAnotherPhrase(analysis: Analysis, chord: Chord, key: Key): boolean {
  const phrase = phraseAt(analysis, chord.at);
  const cadence = phrase?.cadence === undefined ? undefined : analysis.cadences[phrase.cadence];
  return cadence?.kind === 'perfect' && !sameKey(chord.key, key) && sameKey(cadence.key, chord.key);
}

function dull(
  analysis: Analysis,
  chord: Chord,
  goal: Chord,
  key: Key,
  place: DullDominant['place'],
): DullDominant[] {
  const voicing = voicings(analysis)[chord.index]!;
  const { root, quality } = soundOf(analysis, chord);
  const distance = fifthsPlace(root) - fifthsPlace(key.tonic);
  const minorDominant = distance === 1 && quality === 'minor';
  const subtonic = distance === -2 && quality === 'major' && key.mode === 'minor';
  if (!voicing.sure || (!minorDominant && !subtonic)) return [];
  const seventh = noteNameAtFifths(fifthsPlace(key.tonic) - 2);
  const tones = VOICES.flatMap((voice): Tone[] => {
    const sung = voicing.slices.flatMap((slice) => toneIn(slice, voice) ?? []);
    const tone = sung.find(({ pitch }) => sameNoteName(pitch, seventh));
    return tone === undefined ? [] : [tone];
  });
  return tones.length === 0 ? [] : [{ key, place, chord, goal, tones }];
}

/** The keys a place may be in: those of the reading there, and the one the piece is at home in. */
function keysOf(analysis: Analysis, chords: readonly Chord[]): readonly Key[] {
  return [...chords.map((chord) => chord.key), homeKey(analysis)];
}

/** The tonic triad of a key as it sounds; in minor a major one too. */
function isTonicOf(analysis: Analysis, chord: Chord, key: Key): boolean {
  const { root, quality } = soundOf(analysis, chord);
  if (!sameNoteName(root, key.tonic) || chord.roman.seventh !== undefined) return false;
  return quality === 'major' || (quality === 'minor' && key.mode === 'minor');
}

/** Root and quality by the notes alone where they make one triad, else by the reading. */
function soundOf(analysis: Analysis, chord: Chord): Pick<Chord, 'root' | 'quality'> {
  return soundingTriadOf(voicings(analysis)[chord.index]!) ?? chord;
}
