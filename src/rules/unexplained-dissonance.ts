import { listed } from '../english/words.ts';
import type { Analysis, Ornament } from '../harmony/analysis.ts';
import { type BareDissonance, bareDissonances, placesTo } from '../harmony/by-ear/bare-dissonances.ts';
import { hearingAt, tonesIn } from '../harmony/by-ear/hearing.ts';
import { clashesWith } from '../harmony/questions/dissonance.ts';
import { memberOf } from '../harmony/questions/members.ts';
import { chordAt } from '../harmony/questions/moments.ts';
import { isPassingBy, isQuick } from '../harmony/questions/ornamental.ts';
import { ornamentOf } from '../harmony/questions/ornaments.ts';
import { isChordAsSpelt, mayBecomeChord } from '../harmony/questions/spelling.ts';
import { firstTone, isBrokenInBass, nextChord, voicings } from '../harmony/questions/voicing.ts';
import { numeral } from '../harmony/words/labels.ts';
import { nextTone, previousTone } from '../score/motion.ts';
import { sameNoteName, samePitch } from '../score/pitch.ts';
import { barAt, metricalStrength } from '../score/place.ts';
import { VOICE_WORDS, VOICES } from '../score/score.ts';
import { isAllWritten, type Slice, sliceAt, type Tone, toneIn } from '../score/texture.ts';
import { beatLength, type Ticks } from '../score/time.ts';
import { about, besides } from './occurrence.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';
import { inVoice, named } from './wording.ts';

export const unexplainedDissonance = defineRule({
  id: 'unexplained-dissonance',
  name: 'Unexplained dissonance',
  family: 'dissonance',
  statement:
    'A note that is foreign to its chord is prepared and resolved, or is a passing, neighbour or other recognised ornament.',
  why: 'A dissonance is heard as good when one can follow how it came about and where it goes; one that is leapt to and left by leap just sounds like a wrong note.',
  hints: [
    'Look at this note, at the note before it and at the note after it in the same voice.',
    'Move to a note of the chord, or reach and leave the dissonance by step.',
    'Non-harmony notes: passing, neighbour, suspension, anticipation and the like, each with its own way in and out.',
  ],
  source:
    'W. Piston, Harmony, chapter on nonharmonic tones (from memory); R. Hutchinson, Music Theory for the 21st-Century Classroom, 2017, chapter 10 on non-chord notes (open to all)',
  severity: 'fault',
  weight: 7,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The alto leaps to F over a chord on C and leaps away again.',
        text: `key: C major
metre: 4/4
S: E4 G4 A4 G4 | G4*4! |
A: C4 F4 C4 B3 | C4*4! |
T: G3 E3 F3 D3 | E3*4! |
B: C3 C3 F2 G2 | C3*4! |`,
      },
    ],
    right: [
      {
        caption: 'The alto has a note of the chord.',
        text: `key: C major
metre: 4/4
S: E4 G4 A4 G4 | G4*4! |
A: C4 C4 C4 B3 | C4*4! |
T: G3 E3 F3 D3 | E3*4! |
B: C3 C3 F2 G2 | C3*4! |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      analysis.ornaments.flatMap((ornament) => unexplained(analysis, ornament)),
      bareDissonances(analysis.texture).flatMap((dissonance) => unexplainedAsHeard(analysis, dissonance)),
    ),
});

function unexplained(analysis: Analysis, ornament: Ornament): Occurrence[] {
  if (ornament.kind !== 'unclassified') return [];
  const slice = sliceAt(analysis.texture, ornament.at);
  const chord = analysis.chords[ornament.chord];
  if (slice === undefined || chord === undefined) return [];
  const clashes = clashesWith(slice, ornament.tone);
  if (clashes.length === 0 || clashes.every((other) => isPedalUnder(analysis, slice, other))) return [];
  if (bearsNextChord(analysis, ornament, clashes) || isFromNear(analysis, ornament.tone)) return [];
  // With the voices still to be written it may be another chord, to which the note belongs.
  const open = !isAllWritten(slice);
  if (open && mayBecomeChord(tonesIn(slice).map(({ pitch }) => pitch))) return [];
  return [
    about([ornament.tone, ...clashes], {
      severity: open ? 'remark' : gravity(analysis, ornament),
      from: ornament.at,
      until: ornament.until,
      message: `${inVoice(ornament.tone)} is foreign to the chord (${numeral(chord.roman, chord.key)}) and dissonant with ${listed(clashes.map(named))}, and is no ornament that the style knows.`,
    }),
  ];
}

/** A bass that lies still, or strikes its note again, under a chord that the other voices make without it. */
function isPedalUnder({ texture }: Analysis, slice: Slice, bass: Tone): boolean {
  if (bass.voice !== 'B' || !isChordAsSpelt(tonesAbove(slice).map(({ pitch }) => pitch))) return false;
  const [before, after] = [previousTone(texture, bass), nextTone(texture, bass)];
  const stays = (other: Tone | undefined, long: boolean) =>
    long || (other !== undefined && samePitch(other.pitch, bass.pitch));
  return stays(before, bass.at < slice.at) && stays(after, bass.until > slice.until);
}

/** Quick and off the beat, from a third away and on by step: the line hardly leaves its way. */
function isFromNear({ texture }: Analysis, tone: Tone): boolean {
  const [before, after] = [previousTone(texture, tone), nextTone(texture, tone)];
  if (before === undefined || after === undefined || !isQuick(texture, tone)) return false;
  return Math.abs(placesTo(before, tone)) === 2 && Math.abs(placesTo(tone, after)) === 1;
}

/**
 * A bass that is the root of the chord read next and stays or is struck again for it, while what it clashes with
 * belongs to that chord too or falls to it by step: that chord is there already, with suspensions over it.
 */
function bearsNextChord(analysis: Analysis, { tone, chord }: Ornament, clashes: readonly Tone[]): boolean {
  const next = nextChord(analysis, chord);
  const under = next && firstTone(voicings(analysis)[next.index]!, 'B');
  if (tone.voice !== 'B' || next === undefined || under === undefined) return false;
  if (!samePitch(under.pitch, tone.pitch) || !sameNoteName(next.root, tone.pitch)) return false;
  return clashes.every((other) => {
    if (memberOf(next, other.pitch) !== undefined) return true;
    const then = nextTone(analysis.texture, other);
    return then !== undefined && placesTo(other, then) === -1 && memberOf(next, then.pitch) !== undefined;
  });
}

function tonesAbove(slice: Slice): Tone[] {
  return VOICES.flatMap((voice) => (voice === 'B' ? [] : (toneIn(slice, voice) ?? [])));
}

/** Short and off the beat it may pass; long or on the beat it stands there for all to hear. */
function gravity(analysis: Analysis, ornament: Ornament): Severity {
  const bar = barAt(analysis.texture.score, ornament.at);
  const long = ornament.until - ornament.at >= beatLength(bar.metre);
  const onBeat = metricalStrength(bar, ornament.at) >= 2;
  if (onBeat && long) return 'fault';
  return long ? 'query' : 'remark';
}

/**
 * A moment in which nothing that sounds is a chord, and in it a note of half a beat or more that leaps in and out: the reading may take
 * its neighbours for the intruders, but it is this line that the ear cannot follow.
 */
function unexplainedAsHeard(
  analysis: Analysis,
  { slice, before, tone, after, against }: BareDissonance,
): Occurrence[] {
  const long = tone.until - tone.at >= beatLength(slice.bar.metre) / 2;
  const leaps = Math.abs(placesTo(before, tone)) > 1 && Math.abs(placesTo(tone, after)) > 1;
  if (tone.at !== slice.at || !long || !leaps) return [];
  if (hearingAt(analysis.texture, slice.at) !== undefined) return [];
  // With the voice still to be written it may be a chord.
  if (!isAllWritten(slice)) return [];
  // Where the others only decorate, off the beat or beside a shorter note, this one is the chord's.
  const brief = slice.strength < 2 || tone.until - tone.at < beatLength(slice.bar.metre);
  const decorates = (other: Tone) =>
    isPassingBy(analysis.texture, other) || ornamentOf(analysis, other, slice.at) !== undefined;
  if (brief && against.every(decorates)) return [];
  // Over a suspension the bass may leap: it is the suspended note that gives way, if that ends the clash.
  const gaveWay = (other: Tone) => {
    const ornament = ornamentOf(analysis, other, slice.at);
    return ornament?.kind === 'suspension' && !staysAtOdds(tone, ornament.resolution);
  };
  // One that was there before and goes up instead is told as such; the bass under it is not to blame.
  const goesUp = (other: Tone) => {
    const [earlier, next] = [previousTone(analysis.texture, other), nextTone(analysis.texture, other)];
    const prepared = other.at < slice.at || (earlier !== undefined && samePitch(earlier.pitch, other.pitch));
    return prepared && next !== undefined && next.at < tone.until && placesTo(other, next) === 1;
  };
  if (tone.voice === 'B' && against.every((other) => gaveWay(other) || goesUp(other))) return [];
  if (against.some(gaveWay) || (tone.voice === 'B' && isInBrokenChord(analysis, slice.at))) return [];
  if (against.every((other) => isLedThrough(analysis, slice, tone, other))) return [];
  return [
    about([tone, ...against], {
      severity: 'remark',
      from: tone.at,
      until: tone.until,
      message: `${inVoice(tone)} is dissonant with ${listed(against.map(named))}, and the ${VOICE_WORDS[tone.voice]} leaps to it and away from it.`,
    }),
  ];
}

/** The bass breaks the chord that the others hold: it leaps from one of its notes to another. */
function isInBrokenChord(analysis: Analysis, at: Ticks): boolean {
  const chord = chordAt(analysis, at);
  return chord?.at === at && isBrokenInBass(analysis, voicings(analysis)[chord.index]!);
}

/**
 * Over a bass that leaps to the root, a note that lay there or came by step and goes on down by step, as sevenths do;
 * or a pedal, against which any line may go that stays within a fifth.
 */
function isLedThrough(analysis: Analysis, slice: Slice, tone: Tone, other: Tone): boolean {
  const { texture } = analysis;
  if (other.voice === 'B') {
    const around = [previousTone(texture, tone), nextTone(texture, tone)];
    const near = around.every((to) => to === undefined || Math.abs(placesTo(tone, to)) <= 4);
    return near && ornamentOf(analysis, other, slice.at)?.kind === 'pedal';
  }
  const [before, next] = [previousTone(texture, other), nextTone(texture, other)];
  const chord = chordAt(analysis, slice.at);
  const onRoot = tone.voice === 'B' && chord !== undefined && sameNoteName(chord.root, tone.pitch);
  if (!onRoot || next === undefined || placesTo(other, next) !== -1) return false;
  return other.at < slice.at || (before !== undefined && Math.abs(placesTo(before, other)) <= 1);
}

/** Where the suspended note goes, the tone still sounds, and has the same letter with another accidental. */
function staysAtOdds(tone: Tone, resolution: Tone | undefined): boolean {
  return (
    resolution !== undefined &&
    resolution.at < tone.until &&
    resolution.pitch.step === tone.pitch.step &&
    resolution.pitch.alteration !== tone.pitch.alteration
  );
}
