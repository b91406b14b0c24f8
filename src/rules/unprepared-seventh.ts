import { capitalised } from '../english/words.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { type Hearing, hearings } from '../harmony/by-ear/hearing.ts';
import { isDominant } from '../harmony/questions/functions.ts';
import { phraseAt } from '../harmony/questions/moments.ts';
import { isQuick } from '../harmony/questions/ornamental.ts';
import { type ChordTone, type Voicing, voicings } from '../harmony/questions/voicing.ts';
import { intervalBetween, intervalName } from '../score/interval.ts';
import { phraseBreaks, previousTone } from '../score/motion.ts';
import { fifthsPlace, sameNoteName } from '../score/pitch.ts';
import { VOICE_WORDS, VOICES } from '../score/score.ts';
import { sliceAt, type Tone, toneIn } from '../score/texture.ts';
import { beatLength } from '../score/time.ts';
import { about, besides } from './occurrence.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';
import { inVoice } from './wording.ts';

export const unpreparedSeventh = defineRule({
  id: 'unprepared-seventh',
  name: 'Seventh unprepared',
  family: 'chords',
  statement:
    'The seventh of any chord but a dominant is held over from the chord before, or comes in by step.',
  why: 'A dissonance that bursts in by leap is hard to sing and harsh to hear; only the dominant seventh is mild and familiar enough to be taken freely.',
  hints: [
    'Find the seventh of this chord and see what the same voice sang just before.',
    'Let that voice already have the note in the chord before, or reach it by step.',
    'Dissonance treatment: the sevenths of secondary seventh chords are prepared.',
  ],
  source: 'W. Piston, Harmony, chapter on secondary seventh chords (from memory)',
  severity: 'fault',
  weight: 4,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The soprano leaps to G, the seventh of the chord on A.',
        text: `key: C major
metre: 4/4
S: C5 G4 F4 F4 | E4*4 |
A: F4 E4 D4 D4 | C4*4 |
T: A3 C4 A3 B3 | G3*4 |
B: F3 A2 D3 G2 | C3*4 |`,
      },
    ],
    right: [
      {
        caption: 'The soprano already has the note, and it becomes the seventh.',
        text: `key: G major
metre: 4/4
S: G4 G4 F#4 G4 |
A: D4 E4 D4 D4 |
T: B3 A3 A3 B3 |
B: G2 C3 D3 G2 |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      voicings(analysis).flatMap((voicing) => unprepared(analysis, voicing)),
      hearings(analysis.texture).flatMap((heard) => unpreparedAsHeard(analysis, heard)),
    ),
});

function unprepared(analysis: Analysis, voicing: Voicing): Occurrence[] {
  const { chord } = voicing;
  if (chord.members.seventh === undefined || isDominant(chord) || !voicing.sure) return [];
  if (chord.roman.special !== undefined) return [];
  return voicing.tones
    .filter((chordTone) => chordTone.member === 'seventh')
    .flatMap((chordTone) => leapedTo(analysis, voicing, chordTone));
}

/** A seventh chord by the notes alone, on a beat and no dominant, whatever the reading explains away. */
function unpreparedAsHeard(analysis: Analysis, heard: Hearing): Occurrence[] {
  const { texture } = analysis;
  const { seventh, root } = heard.members;
  const slice = heard.slices[0]!;
  // The dominant's own sound is a minor seventh on a major triad; a diminished triad is one without its root.
  const plain =
    heard.quality === 'major' && seventh !== undefined && fifthsPlace(seventh) === fifthsPlace(root) - 2;
  if (seventh === undefined || plain || heard.quality === 'diminished' || slice.strength < 2) return [];
  if (phraseBreaks(texture).has(slice.at)) return [];
  return VOICES.flatMap((voice): Occurrence[] => {
    const tone = toneIn(slice, voice);
    const before = tone && previousTone(texture, tone);
    if (tone === undefined || before === undefined || tone.at !== slice.at) return [];
    const interval = intervalBetween(before.pitch, tone.pitch);
    const short = tone.until - tone.at < beatLength(slice.bar.metre);
    if (!sameNoteName(tone.pitch, seventh) || short || Math.abs(interval.steps) <= 1) return [];
    if (sameNoteName(before.pitch, tone.pitch)) return [];
    return [leapInto(before, tone, 'remark')];
  });
}

function leapInto(before: Tone, tone: Tone, severity: Severity): Occurrence {
  const interval = intervalBetween(before.pitch, tone.pitch);
  return about([before, tone], {
    severity,
    from: tone.at,
    until: tone.until,
    message: capitalised(
      `${inVoice(tone)} is the seventh of the chord, and the ${VOICE_WORDS[tone.voice]} leaps to it by ${article(intervalName(interval))}.`,
    ),
  });
}

function leapedTo(analysis: Analysis, voicing: Voicing, { tone }: ChordTone): Occurrence[] {
  // Held over from before, it is prepared.
  if (tone.at < voicing.chord.at) return [];
  const before = previousTone(analysis.texture, tone);
  if (before === undefined || sameNoteName(before.pitch, tone.pitch)) return [];
  // Reached in the course of its chord, it only changes places with another member.
  if (before.at >= voicing.chord.at) return [];
  const interval = intervalBetween(before.pitch, tone.pitch);
  if (Math.abs(interval.steps) <= 1) return [];
  const slice = sliceAt(analysis.texture, tone.at - 1);
  const lent = slice !== undefined && VOICES.some((voice) => isNamed(toneIn(slice, voice), tone));
  const phrase = phraseAt(analysis, tone.at);
  // A new phrase may open with it.
  return [leapInto(before, tone, phrase?.from === tone.at ? 'remark' : gravity(analysis, tone, lent))];
}

/** Off the beat and short it comes and goes with the other quavers; lent by another voice, the ear has it already. */
function gravity(analysis: Analysis, tone: Tone, lent: boolean): Severity {
  if (lent && isQuick(analysis.texture, tone)) return 'remark';
  return lent || isQuick(analysis.texture, tone) ? 'query' : 'fault';
}

function isNamed(other: Tone | undefined, tone: Tone): boolean {
  return other !== undefined && sameNoteName(other.pitch, tone.pitch);
}

function article(words: string): string {
  return /^[aeiou]/.test(words) ? `an ${words}` : `a ${words}`;
}
