import type { Analysis, Chord } from '../harmony/analysis.ts';
import { type Hearing, hearings, isWritten, tonesIn } from '../harmony/by-ear/hearing.ts';
import { dominantIn } from '../harmony/by-ear/keys-near.ts';
import { leadingNoteIn } from '../harmony/questions/degrees.ts';
import { dullDominants } from '../harmony/questions/dull-dominants.ts';
import { isDominant } from '../harmony/questions/functions.ts';
import { memberOf } from '../harmony/questions/members.ts';
import { endsPhrase } from '../harmony/questions/moments.ts';
import { isPassingBy, isQuick } from '../harmony/questions/ornamental.ts';
import { departure, leapsAway, resolutionOf } from '../harmony/questions/resolution.ts';
import { lastTone, nextChord, type Voicing, voicings } from '../harmony/questions/voicing.ts';
import { intervalBetween } from '../score/interval.ts';
import { isInner, nextTone, phraseBreaks } from '../score/motion.ts';
import { fifthsPlace, type NoteName, noteNameAtFifths, printPitch, sameNoteName } from '../score/pitch.ts';
import { barAt } from '../score/place.ts';
import { VOICE_WORDS, VOICES } from '../score/score.ts';
import { sliceAt, type Texture, type Tone, toneIn, writtenPitch } from '../score/texture.ts';
import { beatLength, type Ticks } from '../score/time.ts';
import { besides } from './occurrence.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';
import { inVoice } from './wording.ts';

export const unresolvedLeadingNote = defineRule({
  id: 'unresolved-leading-note',
  name: 'Leading note unresolved',
  family: 'chords',
  statement:
    'The leading note of a dominant chord rises to the tonic; in an inner voice it may fall a third at a perfect cadence.',
  why: 'The leading note lies a semitone below the tonic and the ear waits for that semitone; when it goes elsewhere, most of all in soprano or bass, the cadence loses its pull.',
  hints: [
    'Follow the voice named from the dominant chord into the next one.',
    'Let it move up by a semitone; if that spoils the next chord, change which voice has the leading note.',
    'Tendency notes: the leading note rises to the tonic when the dominant resolves.',
  ],
  source:
    'A. Butterworth, Harmony in Practice, on the dominant chord (from memory); R. Hutchinson, Music Theory for the 21st-Century Classroom, 2017, chapters 17 and 18 on applied dominants, whose leading notes are bound alike (open to all)',
  severity: 'fault',
  weight: 6,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The soprano leaves F#, the leading note, by a leap down.',
        text: `key: G major
metre: 4/4
S: B4 A4 A4 F#4 | D4*4! |
A: G4 E4 D4 D4 | B3*4! |
T: D4 A3 F#3 A3 | G3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The leading note rises to the tonic.',
        text: `key: G major
metre: 4/4
S: B4 A4 A4 F#4 | G4*4! |
A: G4 E4 D4 D4 | D4*4! |
T: D4 A3 F#3 A3 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      },
      {
        caption: 'In the alto it may fall a third at a perfect cadence, so that the last chord is complete.',
        text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      voicings(analysis).flatMap((voicing) => unresolved(analysis, voicing)),
      // A voice still to be written may make no dominant of it.
      hearings(analysis.texture)
        .filter(isWritten)
        .flatMap((heard) => unresolvedAsHeard(analysis, heard)),
    ),
});

function unresolved(analysis: Analysis, voicing: Voicing): Occurrence[] {
  const { chord } = voicing;
  const leading = isDominant(chord) ? leadingNoteIn(chord) : undefined;
  const next = nextChord(analysis, chord.index);
  if (leading === undefined || next === undefined || !voicing.sure) return [];
  // In minor a chord that stands for the dominant with its seventh unraised has no leading note of another key.
  if (dullDominants(analysis).some((dull) => dull.chord === chord)) return [];
  if (endsPhrase(analysis, chord)) return [];
  // The dominant goes on: its leading note is asked for when the last of these chords moves.
  if (isDominant(next) && memberOf(next, leading) !== undefined) return [];
  const tonic = noteNameAtFifths(fifthsPlace(leading) - 5);
  return VOICES.flatMap((voice): Occurrence[] => {
    const tone = lastTone(voicing, voice);
    if (tone === undefined || !sameNoteName(tone.pitch, leading)) return [];
    if (isPassingBy(analysis.texture, tone)) return [];
    const goesTo = departure(analysis.texture, tone);
    if (goesTo === undefined) return [];
    const resolves = resolutionOf(analysis.texture, tone, 'up') !== undefined;
    if (resolves && !leapsAway(analysis.texture, tone)) return [];
    const severity = resolves ? 'remark' : gravity(analysis, tone, goesTo, tonic, next);
    if (severity === undefined) return [];
    return [unresolvedTo(tone, goesTo, severity, Math.max(tone.at, chord.at), next.at)];
  });
}

function unresolvedTo(tone: Tone, goesTo: Tone, severity: Severity, from: Ticks, next: Ticks): Occurrence {
  return {
    severity,
    voices: [tone.voice],
    from,
    until: Math.max(goesTo.until, next),
    tones: [tone, goesTo],
    message: `${inVoice(tone)} is the leading note, but the ${VOICE_WORDS[tone.voice]} goes to ${printPitch(writtenPitch(goesTo))} instead of rising to the tonic.`,
  };
}

/** Where notes that sound as a dominant in a near key are left for its tonic, whatever the reading makes of them. */
function unresolvedAsHeard(analysis: Analysis, heard: Hearing): Occurrence[] {
  const { texture } = analysis;
  const dominant = dominantIn(analysis, heard);
  if (dominant === undefined || phraseBreaks(texture).has(heard.until)) return [];
  const { leading, tonic } = dominant;
  const last = heard.slices.at(-1)!;
  const then = sliceAt(texture, heard.until);
  if (then === undefined) return [];
  const arrives = tonesIn(then).some((tone) => sameNoteName(tone.pitch, tonic));
  return VOICES.flatMap((voice): Occurrence[] => {
    const tone = toneIn(last, voice);
    if (tone === undefined || !sameNoteName(tone.pitch, leading) || tone.until > heard.until) return [];
    if (isPassingBy(texture, tone)) return [];
    const goesTo = departure(texture, tone);
    if (goesTo === undefined || resolutionOf(texture, tone, 'up') !== undefined) return [];
    const { steps } = intervalBetween(tone.pitch, goesTo.pitch);
    if (Math.abs(steps) <= 1 || (steps === -2 && isInner(voice))) return [];
    // Where no tonic comes, only a wide leap tells that the note is dropped.
    if (!arrives && Math.abs(steps) <= 2) return [];
    return [unresolvedTo(tone, goesTo, 'remark', Math.max(tone.at, heard.at), heard.until)];
  });
}

/** How much it matters that a leading note does not rise; undefined where the style has its reasons. */
function gravity(
  analysis: Analysis,
  tone: Tone,
  goesTo: Tone,
  tonic: NoteName,
  next: Chord,
): Severity | undefined {
  const { texture } = analysis;
  const { steps, semitones } = intervalBetween(tone.pitch, goesTo.pitch);
  // Lowered chromatically, it becomes the seventh of a new dominant.
  if (steps === 0 && semitones === -1) return undefined;
  const member = memberOf(next, tonic);
  // To the tonic itself, or to the submediant in an interrupted cadence: there the ear waits for the tonic note.
  const resolves = member === 'root' || (member === 'third' && next.roman.inversion === 0);
  if (!resolves) return Math.abs(steps) <= 1 || isInner(tone.voice) ? undefined : 'remark';
  // Held over, it has become the suspension of a new chord, and falls as suspensions do.
  if (goesTo.at > next.at && steps === -1) return undefined;
  const closes = endsPhrase(analysis, next) && next.roman.degree === 1;
  const toFifth = fallsToFifth(texture, tone, goesTo, next);
  const wayOut = steps === 3 || (steps === -4 && tone.voice === 'T');
  const toThird = wayOut && memberOf(next, goesTo.pitch) === 'third';
  if (isInner(tone.voice)) {
    if (toFifth) return undefined;
    // To the third of the tonic: the tenor's other way out when the cadence would lack its third.
    if (toThird) return 'remark';
    // Quick, or going on down by step, an inner voice is covered by the others.
    return isQuick(texture, tone) || steps === -1 ? 'remark' : 'query';
  }
  // A bass that goes on down the scale (V6–vi).
  if (tone.voice === 'B' && steps === -1 && member !== 'root') return 'remark';
  // Up a fourth inside the phrase the chorales now and then let it go, in tune and bass.
  if (toThird && steps === 3 && !closes) return 'query';
  // Inside a phrase, or into another degree than the tonic, a melody that falls to the fifth is often given so.
  return tone.voice === 'S' && toFifth && !closes ? 'remark' : 'fault';
}

/** Down a third to the fifth of the next chord, with or without a short passing note between. */
function fallsToFifth(texture: Texture, tone: Tone, goesTo: Tone, next: Chord): boolean {
  const isFifth = (to: Tone) =>
    intervalBetween(tone.pitch, to.pitch).steps === -2 && memberOf(next, to.pitch) === 'fifth';
  if (isFifth(goesTo)) return true;
  const after = nextTone(texture, goesTo);
  const { score } = texture;
  const short = goesTo.until - goesTo.at < beatLength(barAt(score, goesTo.at).metre);
  return short && after !== undefined && isFifth(after);
}
