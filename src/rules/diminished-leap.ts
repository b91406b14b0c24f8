import { withArticle } from '../english/words.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { movesAsMeant } from '../harmony/by-ear/plainly-misspelt.ts';
import { sameHarmony } from '../harmony/questions/functions.ts';
import { chordAt } from '../harmony/questions/moments.ts';
import { type Interval, intervalBetween, intervalName, intervalQuality } from '../score/interval.ts';
import { nextTone, phraseBreaks } from '../score/motion.ts';
import { printPitch, sameNoteName } from '../score/pitch.ts';
import { VOICE_WORDS } from '../score/score.ts';
import { type Texture, type Tone, writtenPitch } from '../score/texture.ts';
import type { Ticks } from '../score/time.ts';
import { defineRule, type Occurrence } from './rule.ts';

export const diminishedLeap = defineRule({
  id: 'diminished-leap',
  name: 'Diminished leap not resolved',
  family: 'melody',
  statement: 'A voice that leaps a diminished interval steps back inside it.',
  why: 'The second note of a diminished leap pulls back towards the first. If the line goes on outwards, the pull is never answered.',
  hints: [
    'Look at the note after the leap: it should lie between the two notes of the leap.',
    'After the leap, turn round and move by step; or make the leap smaller.',
    'Melody: diminished fourths, fifths and sevenths are resolved inwards by step.',
  ],
  source: 'E. Aldwell and C. Schachter, Harmony and Voice Leading, on melodic intervals (from memory)',
  severity: 'query',
  weight: 2,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The bass falls a diminished fifth and goes on down.',
        text: `key: C major
metre: 3/4
S: F4 G4 A4 | B4 C5*2 |
A: C4 D4 E4 | F4 E4*2 |
T: A3 G3 C4 | D4 C4*2 |
B: F3 B2 A2 | G2 C3*2 |`,
      },
    ],
    right: [
      {
        caption: 'The bass falls a diminished fifth and steps back up, inside the leap.',
        text: `key: C major
metre: 3/4
S: F4 G4 G4 | F4 E4*2 |
A: C4 D4 E4 | D4 C4*2 |
T: A3 G3 G3 | B3 C4*2 |
B: F3 B2 C3 | G2 C3*2 |`,
      },
    ],
  },
  check: (analysis) =>
    movesAsMeant(analysis)
      .flatMap(({ from, to, interval, acrossFermata }) =>
        acrossFermata || !isDiminished(interval) ? [] : resolution(analysis, from, to, interval),
      )
      .sort((a, b) => a.from - b.from),
});

function isDiminished(interval: Interval): boolean {
  const steps = Math.abs(interval.steps);
  return steps > 1 && steps < 7 && /diminished/.test(intervalQuality(interval) ?? '');
}

function resolution(analysis: Analysis, from: Tone, to: Tone, interval: Interval): Occurrence[] {
  const { texture } = analysis;
  const next = nextMoved(texture, to, phraseBreaks(texture));
  const back = next && intervalBetween(writtenPitch(to), writtenPitch(next)).steps;
  const inward = back !== undefined && back !== 0 && back > 0 !== interval.steps > 0;
  if (inward && Math.abs(back) === 1) return [];
  const inside = inward && Math.abs(back) <= Math.abs(interval.steps);
  const leap = `The ${VOICE_WORDS[from.voice]} leaps ${interval.steps > 0 ? 'up' : 'down'} ${withArticle(intervalName(interval))}, ${printPitch(writtenPitch(from))} to ${printPitch(writtenPitch(to))},`;
  return [
    {
      // To turn back by leap, to end the phrase or to break up one chord leaves the pull in the air; to go on denies it.
      ...(inside || next === undefined || isBrokenChord(analysis, to, next)
        ? { severity: 'remark' as const }
        : {}),
      voices: [from.voice],
      from: from.at,
      until: next?.until ?? to.until,
      tones: next === undefined ? [from, to] : [from, to, next],
      message:
        next === undefined
          ? `${leap} and stops there.`
          : `${leap} and ${inside ? 'turns back by leap' : 'does not step back inside it but moves'} to ${printPitch(writtenPitch(next))}.`,
    },
  ];
}

/** The next tone of another name, in the same phrase and without a break. */
function nextMoved(texture: Texture, tone: Tone, breaks: ReadonlySet<Ticks>): Tone | undefined {
  let next = nextTone(texture, tone);
  while (next !== undefined && !breaks.has(next.at)) {
    if (!sameNoteName(tone.pitch, next.pitch)) return next;
    next = nextTone(texture, next);
  }
  return undefined;
}

/** The two notes belong to one harmony, which the line only breaks up. */
function isBrokenChord(analysis: Analysis, to: Tone, next: Tone): boolean {
  const first = chordAt(analysis, to.at);
  const second = chordAt(analysis, next.at);
  return first !== undefined && second !== undefined && sameHarmony(first, second);
}
