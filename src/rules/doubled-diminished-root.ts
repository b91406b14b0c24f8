import { listed } from '../english/words.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { tonesIn } from '../harmony/by-ear/hearing.ts';
import { keysNearTo } from '../harmony/by-ear/keys-near.ts';
import { leadingNoteIn } from '../harmony/questions/degrees.ts';
import { doublingsOf } from '../harmony/questions/doubling.ts';
import { isDominant } from '../harmony/questions/functions.ts';
import { isFleeting, isPassingBy } from '../harmony/questions/ornamental.ts';
import { inFallingFifths } from '../harmony/questions/progression.ts';
import {
  type DiminishedTriad,
  diminishedTriadOf,
  nextChord,
  soundsOnly,
  type Voicing,
  voicings,
} from '../harmony/questions/voicing.ts';
import { keyFacts } from '../harmony/tonal.ts';
import { printKey } from '../harmony/words/labels.ts';
import { fifthsPlace, noteNameAtFifths, printNoteName, sameNoteName } from '../score/pitch.ts';
import { VOICES } from '../score/score.ts';
import { type Slice, toneIn } from '../score/texture.ts';
import { beatLength } from '../score/time.ts';
import { about, besides } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice } from './wording.ts';

export const doubledDiminishedRoot = defineRule({
  id: 'doubled-diminished-root',
  name: 'Root of a diminished triad doubled',
  family: 'chords',
  statement: 'In a diminished triad the third is doubled, not the root.',
  why: 'Root and fifth of a diminished triad rub against each other and want to move; only the third is at rest, so only the third bears doubling.',
  hints: [
    'Name the notes of the diminished triad and see which of them two voices share.',
    'Give one of these voices the third of the chord.',
    'Doubling: in diminished triads double the third, which is the bass note of the first inversion.',
  ],
  source: 'W. Piston, Harmony, chapter on triads in first inversion (from memory)',
  severity: 'query',
  weight: 4,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'Soprano and tenor both have B, the root of the diminished triad.',
        text: `key: A minor
metre: 4/4
S: A4 B4 G#4*2 | A4*4! |
A: E4 F4 E4*2 | E4*4! |
T: C4 B3 B3*2 | C4*4! |
B: A2 D3 E3*2 | A2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The third of the triad is doubled, in tenor and bass.',
        text: `key: A minor
metre: 4/4
S: A4 B4 G#4*2 | A4*4! |
A: E4 F4 E4*2 | E4*4! |
T: C4 D4 B3*2 | C4*4! |
B: A2 D3 E3*2 | A2*4! |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      oncePerDoubling(voicings(analysis).flatMap((voicing) => doublings(analysis, voicing))),
      analysis.texture.slices.flatMap((slice) => doubledInThird(analysis, slice)),
    ),
});

/** Two notes held or kept while the bass changes its place are doubled once. */
function oncePerDoubling(found: readonly Occurrence[]): Occurrence[] {
  return found.filter(({ tones }, i) => {
    const before = found[i - 1]?.tones ?? [];
    return tones.filter((tone) => before.includes(tone)).length < 2;
  });
}

function doublings(analysis: Analysis, voicing: Voicing): Occurrence[] {
  const triad = diminishedTriadOf(voicing);
  // A voice still to be written could make it part of a seventh chord.
  if (triad === undefined || voicing.written.length < VOICES.length) return [];
  // A sequence carries the doubling along with the chord: there its root does not lead.
  if (voicing.chord.roman.degree === 7 && inFallingFifths(analysis, voicing.chord.index)) return [];
  return doublingsOf(analysis, voicing, triad.root).map(({ from, until, tones }) =>
    about(tones, {
      ...(isFleeting(analysis, voicing.chord) || isToldOtherwise(analysis, voicing, triad)
        ? { severity: 'remark' as const }
        : {}),
      from,
      until,
      message: `${printNoteName(triad.root)}, the root of a diminished triad, is doubled: ${listed(tones.map(inVoice))}.`,
    }),
  );
}

/**
 * Other rules say it first: a leading note that goes to its tonic is doubled as that; a triad in root position is to
 * be turned over; of a third alone the question is which chord it is.
 */
function isToldOtherwise(analysis: Analysis, voicing: Voicing, { root, bass }: DiminishedTriad): boolean {
  const { chord } = voicing;
  const leading = isDominant(chord) ? leadingNoteIn(chord) : undefined;
  const goal = nextChord(analysis, chord.index);
  const leads =
    leading !== undefined &&
    sameNoteName(leading, root) &&
    goal !== undefined &&
    fifthsPlace(goal.root) === fifthsPlace(root) - 5;
  return leads || bass === 'root' || soundsOnly(voicing, ['root', 'third']);
}

/**
 * Four voices on a minor third with its upper note in the bass, both doubled or the lower: the lower is the root of a
 * diminished triad without its fifth, if that is what a key near has on it.
 */
function doubledInThird(analysis: Analysis, slice: Slice): Occurrence[] {
  const half = beatLength(slice.bar.metre) / 2;
  const tones = tonesIn(slice);
  const bass = toneIn(slice, 'B')?.pitch;
  if (tones.length < 4 || bass === undefined || slice.until - slice.at < half) return [];
  const above = tones.filter((tone) => !sameNoteName(tone.pitch, bass));
  if (above.some((tone) => isPassingBy(analysis.texture, tone))) return [];
  const root = above[0]?.pitch;
  // A minor third lies three places down the line of fifths from its lower note.
  if (root === undefined || fifthsPlace(bass) !== fifthsPlace(root) - 3 || above.length < 2) return [];
  if (!above.every((tone) => sameNoteName(tone.pitch, root))) return [];
  const fifth = noteNameAtFifths(fifthsPlace(root) - 6);
  const key = keysNearTo(analysis, slice.at).find((near) =>
    [root, bass, fifth].every((name) => keyFacts(near).harmonic.some((own) => sameNoteName(own, name))),
  );
  if (key === undefined) return [];
  return [
    about(above, {
      severity: 'remark',
      from: slice.at,
      until: slice.until,
      message: `${printNoteName(root)}, in ${printKey(key)} the root of a diminished triad, is doubled: ${listed(above.map(inVoice))}.`,
    }),
  ];
}
