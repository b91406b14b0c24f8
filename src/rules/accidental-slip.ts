import { listed } from '../english/words.ts';
import type { Analysis, Key } from '../harmony/analysis.ts';
import { chordLedBy, hearingAt, reachesItsTonic } from '../harmony/by-ear/hearing.ts';
import { neapolitanAt } from '../harmony/by-ear/neapolitan.ts';
import { isLeadingNote } from '../harmony/questions/degrees.ts';
import { type DullDominant, dullDominants } from '../harmony/questions/dull-dominants.ts';
import { memberOf, membersOf } from '../harmony/questions/members.ts';
import { chordAt, endsPhrase, keyIndexAt } from '../harmony/questions/moments.ts';
import { isFleeting } from '../harmony/questions/ornamental.ts';
import { belongsToKey } from '../harmony/questions/spelling.ts';
import { printKey } from '../harmony/words/labels.ts';
import { type Interval, intervalBetween, intervalQuality } from '../score/interval.ts';
import { nextTone, previousTone } from '../score/motion.ts';
import { fifthsPlace, type Pitch, printNoteName, sameNoteName, samePitch } from '../score/pitch.ts';
import { barAt, placeAt, printPlace } from '../score/place.ts';
import { VOICES } from '../score/score.ts';
import { stretchesWithin } from '../score/search.ts';
import { signatureAlteration } from '../score/signature.ts';
import { sliceAt, type Tone, toneIn, writtenPitch } from '../score/texture.ts';
import { barLength, beatLength, type Ticks } from '../score/time.ts';
import { about, besides } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice } from './wording.ts';

export const accidentalSlip = defineRule({
  id: 'accidental-slip',
  name: 'Accidental forgotten?',
  family: 'rhythm and notation',
  statement: 'A note that departs from the key signature does so for a reason.',
  why: 'In our text notation the key signature is never applied by itself: F in G major is F natural. A sharp or flat that was only forgotten changes the chord and sets off other findings.',
  hints: [
    'Compare this note with the key signature and with what the other voices have on the same letter.',
    'If you meant the note of the signature, write its sharp or flat out.',
    'Notation: every accidental is written, whatever the signature says.',
  ],
  source:
    'E. Gould, Behind Bars, 2011, chapter on accidentals and key signatures (from memory), for what a signature and an accidental do; R. Hutchinson, Music Theory for the 21st-Century Classroom, 2017, chapters 17 and 18 on applied dominants and 20 on the Neapolitan, for the notes that are altered on purpose (open to all)',
  severity: 'remark',
  weight: 5,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The alto has F natural where the signature and the chord ask for a sharp.',
        text: `key: A major
metre: 4/4
S: A4 A4 G#4*2 | A4*4! |
A: E4 F4 E4*2 | E4*4! |
T: C#4 D4 B3*2 | C#4*4! |
B: A3 D3 E3*2 | A2*4! |`,
      },
    ],
    right: [
      {
        caption: 'F natural is the seventh of a chord that leads to the subdominant.',
        text: `key: G major
metre: 4/4
S: B4 B4 C5 C5 | B4*4! |
A: G4 G4 G4 F#4 | G4*4! |
T: D4 D4 G3 D4 | D4*4! |
B: G3 F3 E3 D3 | G2*4! |`,
      },
    ],
  },
  check: (analysis) => {
    const lowered = dullDominants(analysis).filter(({ key }) => key.mode === 'major');
    return besides(
      lowered.map((dominant) => loweredDominant(analysis, dominant)),
      VOICES.flatMap((voice) => analysis.texture.tones[voice].flatMap((tone) => slip(analysis, tone))),
    );
  },
});

/** The seventh degree of a major key lowered in a chord that stands where its dominant belongs. */
function loweredDominant(analysis: Analysis, { key, place, chord, goal, tones }: DullDominant): Occurrence {
  const where = printPlace(placeAt(analysis.texture.score, goal.at));
  const stands =
    place === 'full close' ? `in the chord before the close at ${where}` : 'between two tonic chords';
  return about(tones, {
    severity: place === 'full close' ? 'fault' : 'query',
    from: chord.at,
    until: chord.until,
    message: `${listed(tones.map(inVoice))}, ${stands}, where the dominant belongs, ${tones.length === 1 ? 'is' : 'are'} a semitone lower than the seventh degree of ${printKey(key)}.`,
  });
}

function slip(analysis: Analysis, tone: Tone): Occurrence[] {
  const { score } = analysis.texture;
  const signature = barAt(score, tone.at).key;
  const expected = signatureAlteration(signature.fifths, tone.pitch.step);
  // Only a plain letter can be an accidental forgotten.
  if (expected === 0 || tone.pitch.alteration !== 0 || !samePitch(tone.pitch, writtenPitch(tone))) return [];
  if (
    isRaisedOnPurpose(analysis, tone) ||
    leadsToItsGoal(analysis, tone) ||
    neapolitanAt(analysis, tone.at) !== undefined
  )
    return [];
  const meant: Pitch = { ...tone.pitch, alteration: expected };
  const reason = whySuspect(analysis, tone, meant) ?? lineAgainst(analysis, tone, meant);
  if (reason === undefined) return [];
  return [
    about([tone], {
      ...(spoilsTonic(analysis, tone) ? { severity: 'query' as const } : {}),
      from: tone.at,
      until: tone.until,
      message: `${inVoice(tone)} is natural, though the signature has ${printNoteName({ step: meant.step, alteration: expected })}, and ${reason}: was its accidental forgotten?`,
    }),
  ];
}

/** The third of a tonic that is minor with it, while the music around is in major: no borrowed colour of this style. */
function spoilsTonic(analysis: Analysis, tone: Tone): boolean {
  const chord = chordAt(analysis, tone.at);
  if (chord === undefined || chord.key.mode !== 'major' || isFleeting(analysis, chord)) return false;
  const { roman, quality } = chord;
  const tonic = roman.degree === 1 && roman.applied === undefined && roman.alteration === 0;
  return tonic && quality === 'minor' && memberOf(chord, tone.pitch) === 'third';
}

/** In minor: the leading note of the key's own dominant, or the third of a tierce de Picardie. */
function isRaisedOnPurpose(analysis: Analysis, tone: Tone): boolean {
  const chord = chordAt(analysis, tone.at);
  if (chord === undefined || chord.key.mode !== 'minor') return false;
  const { tonic } = chord.key;
  const heard = hearingAt(analysis.texture, tone.at);
  const members = heard?.members ?? chord.members;
  if (isLeadingNote(tone.pitch, chord.key)) return memberOf({ members }, tone.pitch) !== undefined;
  const tierce = sameNoteName(members.root, tonic) && sameNoteName(members.third, tone.pitch);
  return tierce && fifthsPlace(tone.pitch) === fifthsPlace(tonic) + 4 && endsPhrase(analysis, chord);
}

/** The third of a major chord that goes on to the chord a fifth below: the leading note of a dominant, whatever its key. */
function leadsToItsGoal({ texture }: Analysis, tone: Tone): boolean {
  const heard = chordLedBy(texture, tone);
  return heard?.quality === 'major' && reachesItsTonic(texture, heard, tone);
}

/** Why a plain letter looks like a slip; undefined where the music explains it. */
function whySuspect(analysis: Analysis, tone: Tone, meant: Pitch): string | undefined {
  const chord = chordAt(analysis, tone.at);
  const keys = standingKeys(analysis, tone.at);
  if (chord === undefined) return undefined;
  if (membersOf(chord).some((name) => name.step === meant.step && name.alteration === meant.alteration))
    return 'the chord asks for that';
  // The raised degrees of minor, and the notes of a key the piece has moved to.
  const key = keys.find((candidate) => !belongsToKey(tone.pitch, candidate));
  if (key === undefined) return undefined;
  const slice = sliceAt(analysis.texture, tone.at);
  const other =
    slice &&
    VOICES.map((voice) => toneIn(slice, voice)).find(
      (t) => t !== undefined && t.pitch.step === meant.step && t.pitch.alteration === meant.alteration,
    );
  if (other !== undefined) return `${inVoice(other)} sounds with it`;
  // In an applied chord the note belongs to the key that the chord points to.
  const { applied, special } = chord.roman;
  const explained =
    memberOf(chord, tone.pitch) !== undefined && (applied !== undefined || special !== undefined);
  return explained ? undefined : `${printKey(key)} does not have it`;
}

/**
 * What the line says against a natural of a beat or more, even where a chord can be made of it: that it does not lead
 * on by semitone, and makes an augmented or diminished interval or stands against its own sharp or flat near by.
 */
function lineAgainst(analysis: Analysis, tone: Tone, meant: Pitch): string | undefined {
  const { texture } = analysis;
  const beat = beatLength(barAt(texture.score, tone.at).metre);
  const [before, after] = [previousTone(texture, tone), nextTone(texture, tone)];
  if (tone.until - tone.at < beat) return undefined;
  if (after !== undefined && Math.abs(intervalBetween(tone.pitch, after.pitch).semitones) <= 1)
    return undefined;
  const odd = [before, after].some(
    (other) => other !== undefined && isOdd(intervalBetween(tone.pitch, other.pitch)),
  );
  if (odd) return 'the line makes an awkward interval with it';
  const close = VOICES.some((voice) =>
    // One that stops just a beat before still sounds close by.
    stretchesWithin(texture.tones[voice], tone.at - beat - 1, tone.until + beat).some(
      ({ pitch }) => pitch.step === meant.step && pitch.alteration === meant.alteration,
    ),
  );
  return close ? `${printNoteName(meant)} sounds close by` : undefined;
}

function isOdd(interval: Interval): boolean {
  const quality = intervalQuality(interval);
  return quality !== 'perfect' && quality !== 'major' && quality !== 'minor';
}

/**
 * The key at a moment, and the one before it where it does not outlast a bar: a slip can make a key of its own, which
 * then explains nothing.
 */
function standingKeys(analysis: Analysis, at: Ticks): readonly Key[] {
  const index = keyIndexAt(analysis, at);
  const [region, before] = [analysis.keys[index], analysis.keys[index - 1]];
  if (region === undefined) return [];
  const brief = region.until - region.from < barLength(barAt(analysis.texture.score, at).metre);
  return brief && before !== undefined ? [region.key, before.key] : [region.key];
}
