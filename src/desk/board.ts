/** Bars worth showing to a class: one clear case of each fault, and places that came off well. Nobody is named. */
import * as z from 'zod';
import { capitalised } from '../english/words.ts';
import type { Cadence, Ornament } from '../harmony/analysis.ts';
import { cadenceWords } from '../harmony/words/words.ts';
import { shownFindings } from '../report/json.ts';
import { withSigns } from '../report/sentences.ts';
import type { Finding, Review } from '../review/review.ts';
import { printPitch } from '../score/pitch.ts';
import { barAt, placeAt, printPlace } from '../score/place.ts';
import { type Bar, type Score, VOICE_WORDS, VOICES } from '../score/score.ts';
import { crotchets, type Ticks } from '../score/time.ts';
import { excerptText } from './excerpt.ts';
import type { ScriptFinding } from './finding.ts';

const shown = {
  /** Printed numbers of the first and last bar shown. */
  firstBar: z.string(),
  lastBar: z.string(),
  /** The bars in our notation, without a title. */
  text: z.string(),
};

export const boardBarSchema = z.object({
  rule: z.string(),
  /** The finding's id: a bar whose finding is overruled is not shown. */
  finding: z.string(),
  ...shown,
  message: z.string(),
  /** The notes it is about, in crotchets from the beginning of the bars shown. */
  notes: z.array(z.object({ voice: z.enum(['S', 'A', 'T', 'B']), at: z.number().min(0) })).exactOptional(),
  severity: z.enum(['fault', 'query', 'remark']).exactOptional(),
  /** How plainly the bar shows this one thing, 0 to 1: 1 where it is the only finding in bars wholly written. */
  clearness: z.number().min(0).max(1),
});
export type BoardBar = z.infer<typeof boardBarSchema>;

export const goodBarSchema = z.object({
  ...shown,
  /** What came off well, in a sentence. */
  message: z.string(),
  /** What kind of thing it is, so that a class sees different ones: `suspension`, `perfect cadence`. */
  kind: z.string(),
  worth: z.number().min(0),
});
export type GoodBar = z.infer<typeof goodBarSchema>;

/** A finding over more bars than this is no picture for a board. */
const MOST_BARS = 3;
/** Good bars kept of one script. */
const MOST_GOOD = 3;

/** For each rule that found something the script's clearest bar. `findings` are those shown of the review, in its order. */
export function boardBars(review: Review, findings: readonly ScriptFinding[]): BoardBar[] {
  const { score } = review;
  const inBar = findingsByBar(review);
  const best = new Map<string, BoardBar & { first: number; last: number }>();
  for (const [i, found] of shownFindings(review).entries()) {
    const finding = findings[i]!;
    const first = barAt(score, found.from);
    const last = barAt(score, Math.max(found.from, found.until - 1));
    if (last.index - first.index >= MOST_BARS) continue;
    const others = inBar.slice(first.index, last.index + 1).flat();
    const clearness = clearnessOf(score, found, others, first, last);
    if (clearness <= (best.get(finding.rule)?.clearness ?? 0)) continue;
    best.set(finding.rule, {
      rule: finding.rule,
      finding: finding.id,
      firstBar: first.number,
      lastBar: last.number,
      text: '',
      message: finding.message,
      notes: found.tones.map(({ voice, at }) => ({ voice, at: crotchets(Math.max(0, at - first.at)) })),
      severity: finding.severity,
      clearness,
      first: first.index,
      last: last.index,
    });
  }
  return [...best.values()].map(({ first, last, ...bar }) => ({
    ...bar,
    text: excerptText(score, first, last),
  }));
}

const CLUTTER = { fault: 1, query: 0.6, remark: 0.2 } as const;

/** One fault alone in its bars is clearest; each other finding there, unwritten beats and a second bar take from it. */
function clearnessOf(
  score: Score,
  finding: Finding,
  there: readonly Finding[],
  first: Bar,
  last: Bar,
): number {
  const clutter = [...new Set(there)]
    .filter((other) => other !== finding)
    .reduce((sum, other) => sum + CLUTTER[other.severity], 0);
  const share = writtenShare(score, first.at, last.at + last.duration);
  return share < 0.5 ? 0 : (share * (1 - 0.1 * (last.index - first.index))) / (1 + clutter);
}

/** For each bar the findings that touch it. */
function findingsByBar({ score, findings }: Review): Finding[][] {
  const inBar: Finding[][] = score.bars.map(() => []);
  for (const finding of findings) {
    const last = barAt(score, Math.max(finding.from, finding.until - 1)).index;
    for (let bar = barAt(score, finding.from).index; bar <= last; bar++) inBar[bar]!.push(finding);
  }
  return inBar;
}

function writtenShare(score: Score, from: Ticks, until: Ticks): number {
  let gaps = 0;
  for (const voice of VOICES)
    for (const event of score.voices[voice])
      if (event.kind === 'gap')
        gaps += Math.max(0, Math.min(until, event.at + event.duration) - Math.max(from, event.at));
  return 1 - gaps / (VOICES.length * (until - from));
}

interface Praise {
  readonly from: Ticks;
  readonly until: Ticks;
  readonly message: string;
  readonly kind: string;
  readonly worth: number;
}

/** Places of a script that came off well: nothing found in the bars, and something in them to point at. */
export function goodBars(review: Review): GoodBar[] {
  const { score, analysis } = review;
  const praises = [
    ...analysis.ornaments.flatMap((ornament) => praiseOrnament(score, ornament)),
    ...analysis.cadences.flatMap((cadence) => praiseCadence(review, cadence)),
  ].sort((a, b) => b.worth - a.worth || a.from - b.from);
  const inBar = findingsByBar(review);
  const kept: GoodBar[] = [];
  for (const praise of praises) {
    if (kept.length >= MOST_GOOD || kept.some((bar) => bar.kind === praise.kind)) continue;
    const first = barAt(score, praise.from);
    const last = barAt(score, Math.max(praise.from, praise.until - 1));
    const until = last.at + last.duration;
    const there = inBar.slice(first.index, last.index + 1).flat();
    const spoilt = there.some(({ severity }) => severity !== 'remark');
    if (spoilt || last.index - first.index >= MOST_BARS || writtenShare(score, first.at, until) < 1) continue;
    kept.push({
      firstBar: first.number,
      lastBar: last.number,
      text: excerptText(score, first.index, last.index),
      message: praise.message,
      kind: praise.kind,
      worth: praise.worth,
    });
  }
  return kept;
}

function praiseOrnament(score: Score, ornament: Ornament): Praise[] {
  if (
    ornament.kind !== 'suspension' ||
    ornament.preparation === undefined ||
    ornament.resolution === undefined
  )
    return [];
  const { voice, tone, resolution } = ornament;
  const figures = ornament.figures === undefined ? '' : `${ornament.figures} `;
  return [
    {
      from: ornament.at,
      until: resolution.until,
      message: `${capitalised(printPlace(placeAt(score, ornament.at)))}: a ${figures}suspension in the ${VOICE_WORDS[voice]}, ${withSigns(printPitch(tone.pitch))}, prepared and resolved by step to ${withSigns(printPitch(resolution.pitch))}.`,
      kind: 'suspension',
      worth: voice === 'S' ? 2 : 4,
    },
  ];
}

function praiseCadence(review: Review, cadence: Cadence): Praise[] {
  const { analysis, score } = review;
  const approach = analysis.chords[cadence.approach];
  const goal = analysis.chords[cadence.goal];
  const before = analysis.chords[cadence.approach - 1];
  if (approach === undefined || goal === undefined) return [];
  const strong = cadence.full || cadence.phrygian;
  if (!strong) return [];
  const prepared =
    before !== undefined && before.until === approach.at
      ? before.sixFour === 'cadential'
        ? ', prepared by a cadential six-four'
        : [2, 4].includes(before.roman.degree) && before.roman.applied === undefined
          ? `, prepared by the ${before.roman.degree === 2 ? 'supertonic' : 'subdominant'}`
          : ''
      : '';
  const name = cadenceWords(cadence).name;
  return [
    {
      from: prepared === '' ? approach.at : before!.at,
      until: Math.min(goal.until, goal.at + (barAt(score, goal.at).duration || 1)),
      message: `${printPlace(placeAt(score, cadence.at)).replace(/^b/, 'B')}: ${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}${prepared}.`,
      kind: name,
      worth: (prepared === '' ? 1 : 3) + (cadence.phrygian ? 0.5 : 0),
    },
  ];
}
