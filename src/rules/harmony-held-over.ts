import type { Analysis, Chord } from '../harmony/analysis.ts';
import { sameHarmony } from '../harmony/questions/functions.ts';
import { phraseAt } from '../harmony/questions/moments.ts';
import { previousChord, voicings } from '../harmony/questions/voicing.ts';
import { printNoteName, samePitch } from '../score/pitch.ts';
import { barAt, metricalStrength, placeAt, printPlace } from '../score/place.ts';
import { type Bar, VOICES } from '../score/score.ts';
import { type Slice, sliceAt, type Texture, toneIn } from '../score/texture.ts';
import { beatLength, type Ticks } from '../score/time.ts';
import { about, besides } from './occurrence.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';

export const harmonyHeldOver = defineRule({
  id: 'harmony-held-over',
  name: 'Harmony held from weak to strong beat',
  family: 'rhythm and notation',
  statement:
    'The harmony changes at the barline: a chord that begins on a weak beat is not held into the next strong one.',
  why: 'The strong beat is heard as strong because something new happens there; if the chord was there already, the metre goes slack.',
  hints: [
    'Look at the chord on the last beat of the bar and at the chord on the first beat of the next.',
    'Change one of them: a new chord on the strong beat, or another one before it.',
    'Harmonic rhythm: chords change from weak to strong beats.',
  ],
  source: 'W. Piston, Harmony, chapter on harmonic rhythm (from memory)',
  severity: 'query',
  weight: 5,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The subdominant comes on the last beat and stays over the barline.',
        text: `key: G major
metre: 4/4
S: B4 A4 B4 C5 | C5 A4 G4*2! |
A: G4 F#4 G4 G4 | G4 F#4 G4*2! |
T: D4 D4 D4 E4 | E4 D4 B3*2! |
B: G3 D3 G3 C3 | C3 D3 G2*2! |`,
      },
    ],
    right: [
      {
        caption: 'The harmony changes at the barline.',
        text: `key: G major
metre: 4/4
S: B4 A4 B4 B4 | C5 A4 G4*2! |
A: G4 F#4 G4 G4 | G4 F#4 G4*2! |
T: D4 D4 D4 E4 | E4 D4 B3*2! |
B: G3 D3 G3 E3 | C3 D3 G2*2! |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      analysis.chords.flatMap((chord) => heldOver(analysis, chord)),
      repeatedChords(analysis),
    ),
});

function heldOver(analysis: Analysis, chord: Chord): Occurrence[] {
  const { score } = analysis.texture;
  const before = previousChord(analysis, chord.index);
  // A harmony is taken once, at its beginning, whatever inversions it goes through.
  if (before !== undefined && sameHarmony(before, chord)) return [];
  const phrase = phraseAt(analysis, chord.at);
  // An upbeat often has the harmony of the downbeat; a phrase may begin so.
  if (phrase === undefined || chord.at <= phrase.from) return [];
  const bar = barAt(score, chord.at);
  const strength = metricalStrength(bar, chord.at);
  const barline = bar.at + bar.duration;
  const next = score.bars[bar.index + 1];
  if (next === undefined || strength >= 3 || barline >= phrase.until) return [];
  const end = endOfHarmony(analysis, chord, barline + beatLength(next.metre));
  if (end <= barline) return [];
  // A chord that comes just before the barline is an anticipation of the next, not a harmony of its own.
  if (barline - chord.at < beatLength(bar.metre)) return [];
  const known = voicings(analysis);
  if (!known[chord.index]!.sure) return [];
  const [early, late] = [sliceAt(analysis.texture, chord.at), sliceAt(analysis.texture, barline)];
  const bass = early && toneIn(early, 'B');
  const bassAfter = late && toneIn(late, 'B');
  if (bass === undefined || bassAfter === undefined) return [];
  const still = samePitch(bass.pitch, bassAfter.pitch) || standsStill(analysis.texture, chord.at, barline);
  const weak = !still || bar.misfits.length > 0 || isHemiola(bar, chord.at, end - barline);
  const severity: Severity = weak ? 'remark' : 'query';
  return [
    about([bass, bassAfter], {
      severity,
      from: chord.at,
      until: end,
      message: `The chord that begins at ${printPlace(placeAt(score, chord.at))} is held over the barline into bar ${next.number}.`,
    }),
  ];
}

/**
 * Two bars of three beats heard as three of two, as before many closes: the chord comes on the last beat and goes with
 * the next bar's second.
 */
function isHemiola({ at, duration, metre }: Bar, from: Ticks, after: Ticks): boolean {
  const beat = beatLength(metre);
  return duration === 3 * beat && from === at + 2 * beat && after === beat;
}

/** No voice moves between two moments: the bass that only changes its place at the later one brings nothing on. */
function standsStill({ slices }: Texture, from: Ticks, until: Ticks): boolean {
  return !slices.some(({ at }) => at > from && at < until);
}

/** When the harmony of a chord ends, however often the chord changes its position; not looked for beyond a moment. */
function endOfHarmony(analysis: Analysis, chord: Chord, atMost: Ticks): Ticks {
  let last = chord;
  for (let i = chord.index + 1; i < analysis.chords.length && last.until < atMost; i++) {
    const next = analysis.chords[i]!;
    // A cadential six-four has the tonic's notes and is the dominant's beginning.
    if (next.at !== last.until || next.sixFour === 'cadential' || !sameHarmony(chord, next)) break;
    last = next;
  }
  return Math.min(last.until, atMost);
}

/**
 * The four notes of a downbeat sounded whole on the beat before it, and new there: held over the barline to the ear,
 * even if a voice moves on later in the bar and the analysis takes the downbeat for another chord.
 */
function repeatedChords(analysis: Analysis): Occurrence[] {
  const { score, slices } = analysis.texture;
  return slices.flatMap((slice, i): Occurrence[] => {
    const [early, before] = [slices[i - 1], slices[i - 2]];
    if (slice.at !== slice.bar.at || early === undefined || before === undefined) return [];
    const beat = beatLength(early.bar.metre);
    const phrase = phraseAt(analysis, early.at);
    if (early.until - early.at !== beat || early.strength >= 3) return [];
    if (phrase === undefined || early.at <= phrase.from || slice.at >= phrase.until) return [];
    const [now, then, old] = [namesOf(slice), namesOf(early), namesOf(before)];
    if (now === undefined || now !== then || old === undefined || now === old) return [];
    const [bass, bassAfter] = [toneIn(early, 'B'), toneIn(slice, 'B')];
    const fresh = now.split(' ').filter((name) => !old.split(' ').includes(name)).length;
    if (bass === undefined || bassAfter === undefined || fresh < 2) return [];
    return [
      about([bass, bassAfter], {
        severity: samePitch(bass.pitch, bassAfter.pitch) ? 'query' : 'remark',
        from: early.at,
        until: slice.at + Math.min(beat, slice.bar.duration),
        message: `The chord that begins at ${printPlace(placeAt(score, early.at))} is sounded again after the barline, in bar ${slice.bar.number}.`,
      }),
    ];
  });
}

/** The names of the four notes of a slice, from the top; undefined where a voice is silent. */
function namesOf(slice: Slice): string | undefined {
  const names = VOICES.flatMap((voice) => toneIn(slice, voice) ?? []).map((tone) =>
    printNoteName(tone.pitch),
  );
  return names.length === VOICES.length ? names.join(' ') : undefined;
}
