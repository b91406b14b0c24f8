import type { Analysis, Chord } from '../harmony/analysis.ts';
import { sameKey } from '../harmony/key.ts';
import { memberOf } from '../harmony/questions/members.ts';
import { isFleeting, isStep } from '../harmony/questions/ornamental.ts';
import { type HarmonyStep, harmonySteps, plainDegree } from '../harmony/questions/progression.ts';
import { firstTone, lastTone, voicings } from '../harmony/questions/voicing.ts';
import { numeral } from '../harmony/words/labels.ts';
import { samePitch } from '../score/pitch.ts';
import { about, oncePerPlace, outerTones } from './occurrence.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';

export const backwardStep = defineRule({
  id: 'backward-step',
  name: 'Backward step in the harmony',
  family: 'chords',
  statement: 'Inside a phrase a dominant does not step back to the subdominant or the supertonic.',
  why: 'Chords lead towards the dominant and from there to the tonic; a dominant that turns back to IV or ii takes away the push it has just given.',
  hints: [
    'Name these two chords and their degrees in the key.',
    'Let the dominant go to the tonic or the submediant, or change the order so that it comes last.',
    'Progressions: subdominant and supertonic go before the dominant, not after it.',
  ],
  source: 'W. Piston, Harmony, table of usual root progressions (from memory)',
  severity: 'query',
  weight: 5,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The dominant on the second beat steps back to the subdominant.',
        text: `key: G major
metre: 4/4
S: B4 A4 C5 B4 | A4*2 G4*2! |
A: G4 F#4 G4 G4 | F#4*2 D4*2! |
T: D4 D4 E4 D4 | D4*2 B3*2! |
B: G3 D3 C3 G2 | D3*2 G2*2! |`,
      },
    ],
    right: [
      {
        caption: 'The subdominant goes before the dominant.',
        text: `key: G major
metre: 4/4
S: B4 C5 A4 B4 | A4*2 G4*2! |
A: G4 G4 F#4 G4 | F#4*2 D4*2! |
T: D4 E4 D4 D4 | D4*2 B3*2! |
B: G3 C3 D3 G2 | D3*2 G2*2! |`,
      },
    ],
  },
  check: (analysis) => {
    const steps = harmonySteps(analysis);
    const through = steps.flatMap((step, i) => overOrnament(analysis, step, steps.slice(i + 1, i + 4)));
    const found = [
      ...steps.flatMap((step) => backward(analysis, step, gravity(analysis, step))),
      ...through.flatMap((step) =>
        backward(analysis, step, gravity(analysis, step) === undefined ? undefined : 'remark'),
      ),
    ];
    return oncePerPlace(found.sort((a, b) => a.from - b.from));
  },
});

/** A chord that only passes over the bass that stays is part of the chord before it: the step leads on from that one. */
function overOrnament(
  analysis: Analysis,
  { key, from, to, modulates }: HarmonyStep,
  after: readonly HarmonyStep[],
): HarmonyStep[] {
  const known = voicings(analysis);
  const bass = lastTone(known[to.chord.index]!, 'B');
  const stays = bass !== undefined && bass === lastTone(known[from.chord.index]!, 'B');
  const next = after.find((step) => step.from.chord === to.chord && sameKey(step.key, key));
  if (!stays || next === undefined || !isFleeting(analysis, to.chord)) return [];
  return [{ key, from, to: next.to, modulates: modulates || next.modulates }];
}

function backward(analysis: Analysis, step: HarmonyStep, severity: Severity | undefined): Occurrence[] {
  if (severity === undefined) return [];
  const { key, from, to } = step;
  return [
    about(outerTones(analysis, step), {
      severity,
      from: from.chord.at,
      until: to.chord.until,
      message: `${numeral(from.roman, key)} steps back to ${numeral(to.roman, key)} inside the phrase.`,
    }),
  ];
}

/** Which steps count as backward, and how heavily: by degree, then by inversion. */
function gravity(analysis: Analysis, { from, to, modulates }: HarmonyStep): Severity | undefined {
  const [start, target] = [plainDegree(from.roman), plainDegree(to.roman)];
  // What the voices make as they pass between two beats is no step of the harmony.
  if (isFleeting(analysis, to.chord)) return undefined;
  const inverted = from.roman.inversion + to.roman.inversion > 0;
  const fromDominant = start === 5 || (start === 7 && from.roman.quality === 'diminished');
  if (fromDominant && (target === 2 || target === 4)) {
    if (liesOn(analysis, from.chord, to.chord)) return undefined;
    // With the bass gliding by step through an inversion (V–IV6 and the like) this is daily practice.
    if (inverted) return bassSteps(analysis, from.chord, to.chord) ? undefined : 'remark';
    // The minor dominant has no leading note to turn back from; and the turn to another key has its own logic.
    return from.roman.quality === 'minor' || modulates ? 'remark' : 'query';
  }
  return start === 2 && target === 4 && !inverted && !modulates ? 'query' : undefined;
}

/** The bass stays on a note foreign to the second chord: the dominant lies on as a pedal. */
function liesOn(analysis: Analysis, from: Chord, to: Chord): boolean {
  const known = voicings(analysis);
  const before = lastTone(known[from.index]!, 'B');
  const after = firstTone(known[to.index]!, 'B');
  if (before === undefined || after === undefined || memberOf(to, after.pitch) !== undefined) return false;
  return samePitch(before.pitch, after.pitch);
}

function bassSteps(analysis: Analysis, from: Chord, to: Chord): boolean {
  const known = voicings(analysis);
  const before = lastTone(known[from.index]!, 'B');
  const after = firstTone(known[to.index]!, 'B');
  return before !== undefined && after !== undefined && isStep(before, after);
}
