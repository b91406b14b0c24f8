import type { Analysis } from '../harmony/analysis.ts';
import { type Hearing, hearingAt, hearings, isWritten } from '../harmony/by-ear/hearing.ts';
import { isDominant, sameHarmony } from '../harmony/questions/functions.ts';
import { memberOf } from '../harmony/questions/members.ts';
import { endsPhrase } from '../harmony/questions/moments.ts';
import { isFleeting, isPassingBy, isQuick, isStep } from '../harmony/questions/ornamental.ts';
import { departure, followsPull, leapsAway, resolutionOf } from '../harmony/questions/resolution.ts';
import {
  lastTone,
  nextChord,
  sameRoot,
  tonesOf,
  type Voicing,
  voicings,
} from '../harmony/questions/voicing.ts';
import { intervalBetween } from '../score/interval.ts';
import { phraseBreaks, previousTone } from '../score/motion.ts';
import { printPitch, sameNoteName, samePitch } from '../score/pitch.ts';
import { VOICE_WORDS, VOICES } from '../score/score.ts';
import { sliceAt, type Texture, type Tone, toneIn, writtenPitch } from '../score/texture.ts';
import type { Ticks } from '../score/time.ts';
import { besides } from './occurrence.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';
import { inVoice } from './wording.ts';

export const unresolvedSeventh = defineRule({
  id: 'unresolved-seventh',
  name: 'Seventh unresolved',
  family: 'chords',
  statement: 'The seventh of a chord falls by step when the chord moves on.',
  why: 'The seventh is a dissonance: it rubs against the root, and the step down is what the ear takes as the answer. Without it the dissonance just stops.',
  hints: [
    'Find the seventh of this chord and follow that voice into the next chord.',
    'Let it move down by step; if the next chord has no note there, another chord may be wanted.',
    'Dissonance treatment: sevenths resolve down by step.',
  ],
  source:
    'W. Piston, Harmony, chapter on the dominant seventh (from memory); R. Hutchinson, Music Theory for the 21st-Century Classroom, 2017, chapters 17 and 18 on applied dominants, whose sevenths are bound alike (open to all)',
  severity: 'fault',
  weight: 7,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'C4, the seventh of the dominant, rises instead of falling.',
        text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | B4*4! |
A: D4 E4 G4 F#4 | G4*4! |
T: G3 G3 D4 C4 | D4*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The seventh falls by step.',
        text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: D4 E4 G4 F#4 | G4*4! |
T: G3 G3 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      voicings(analysis).flatMap((voicing) => unresolved(analysis, voicing)),
      // A voice still to be written may take the seventh out of the chord, or take its resolution over.
      hearings(analysis.texture)
        .filter(isWritten)
        .flatMap((heard) => unresolvedAsHeard(analysis, heard)),
    ),
});

function unresolved(analysis: Analysis, voicing: Voicing): Occurrence[] {
  const { chord } = voicing;
  const seventh = chord.members.seventh;
  const next = nextChord(analysis, chord.index);
  if (seventh === undefined || next === undefined || !voicing.sure || !soundsAsSeventh(voicing)) return [];
  if (endsPhrase(analysis, chord) || sameHarmony(chord, next)) return [];
  return VOICES.flatMap((voice): Occurrence[] => {
    const tone = lastTone(voicing, voice);
    if (tone === undefined || !sameNoteName(tone.pitch, seventh)) return [];
    const goesTo = departure(analysis.texture, tone);
    if (goesTo === undefined || isRetardation(analysis.texture, tone, goesTo)) return [];
    const resolves = resolutionOf(analysis.texture, tone, 'down') !== undefined;
    if (resolves && !leapsAway(analysis.texture, tone)) return [];
    const severity = resolves ? 'remark' : gravity(analysis, voicing, tone, goesTo);
    if (severity === undefined) return [];
    return [unresolvedTo(tone, goesTo, severity, Math.max(tone.at, chord.at), next.at)];
  });
}

/** The seventh is one for the ear: over its root, or in a dominant, whose third leads, over that. */
function soundsAsSeventh(voicing: Voicing): boolean {
  if (tonesOf(voicing, 'root').length > 0) return true;
  return (
    isDominant(voicing.chord) && voicing.chord.quality === 'major' && tonesOf(voicing, 'third').length > 0
  );
}

function unresolvedTo(tone: Tone, goesTo: Tone, severity: Severity, from: Ticks, next: Ticks): Occurrence {
  return {
    severity,
    voices: [tone.voice],
    from,
    until: Math.max(goesTo.until, next),
    tones: [tone, goesTo],
    message: `${inVoice(tone)} is the seventh of the chord, but the ${VOICE_WORDS[tone.voice]} goes to ${printPitch(writtenPitch(goesTo))} instead of falling by step.`,
  };
}

/**
 * What sounds as a seventh chord by its notes, whatever it is taken for, has a seventh for the ear.
 */
function unresolvedAsHeard(analysis: Analysis, heard: Hearing): Occurrence[] {
  const { seventh } = heard.members;
  const last = heard.slices.at(-1)!;
  if (seventh === undefined || phraseBreaks(analysis.texture).has(heard.until)) return [];
  return VOICES.flatMap((voice): Occurrence[] => {
    const tone = toneIn(last, voice);
    if (tone === undefined || !sameNoteName(tone.pitch, seventh) || tone.until > heard.until) return [];
    if (isPassingBy(analysis.texture, tone)) return [];
    const goesTo = departure(analysis.texture, tone);
    if (goesTo === undefined || followsPull(tone, goesTo, 'down') || goesTo.pitch.step === tone.pitch.step)
      return [];
    if (isRetardation(analysis.texture, tone, goesTo)) return [];
    // A step up is told where the bass lies still: elsewhere the reading may have its reasons.
    const bass = toneIn(last, 'B');
    if (isStep(tone, goesTo) && (bass === undefined || bass.until <= goesTo.at)) return [];
    // Struck again as a consonance of what comes next, it is no longer a seventh.
    const then = hearingAt(analysis.texture, heard.until);
    if (goesTo.at > heard.until && then !== undefined && memberOf(then, tone.pitch) !== undefined) return [];
    // Sung on in another voice, or still the same chord: the seventh is only passed on.
    const next = hearingAt(analysis.texture, goesTo.at);
    if (next !== undefined && memberOf(next, seventh) !== undefined) return [];
    return [unresolvedTo(tone, goesTo, 'remark', Math.max(tone.at, heard.at), heard.until)];
  });
}

/** A leading note held back over its tonic, to which it rises while the bass has it still: no seventh to the ear. */
function isRetardation(texture: Texture, tone: Tone, goesTo: Tone): boolean {
  const { steps, semitones } = intervalBetween(tone.pitch, goesTo.pitch);
  const [under, then] = [sliceAt(texture, goesTo.at - 1), sliceAt(texture, goesTo.at)];
  const [bass, after] = [under && toneIn(under, 'B'), then && toneIn(then, 'B')];
  if (steps !== 1 || semitones !== 1 || bass === undefined || after === undefined) return false;
  const before = previousTone(texture, tone);
  const held = tone.at < bass.at || (before !== undefined && samePitch(before.pitch, tone.pitch));
  return held && sameNoteName(bass.pitch, goesTo.pitch) && sameNoteName(after.pitch, goesTo.pitch);
}

/** How much it matters that a seventh does not fall; undefined where the style has its reasons. */
function gravity(analysis: Analysis, voicing: Voicing, tone: Tone, goesTo: Tone): Severity | undefined {
  const next = nextChord(analysis, voicing.chord.index)!;
  const { steps, semitones } = intervalBetween(tone.pitch, goesTo.pitch);
  // Held as a consonance of the next chord, it is no longer a seventh and may go where it likes.
  if (goesTo.at > next.at && memberOf(next, tone.pitch) !== undefined) return undefined;
  // Raised or lowered chromatically, it moves into the next chord's own tendency note.
  if (steps === 0 && Math.abs(semitones) === 1) return 'remark';
  // In a 4/3 that passes, the seventh may rise in tenths with the bass, which the ear follows.
  if (steps === 1 && voicing.chord.roman.inversion === 2) return 'remark';
  // Inside one root the voices change places, and a chord in passing is no place for a long memory.
  if (sameRoot(voicing.chord, next) || isFleeting(analysis, voicing.chord)) return 'remark';
  // A seventh shorter than a beat, off the beat, is hardly more than an ornament.
  if (isQuick(analysis.texture, tone)) return Math.abs(steps) === 1 ? 'remark' : 'query';
  return 'fault';
}
