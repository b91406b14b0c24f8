/** What goes on a pupil's sheet: two strengths, three things to work on, drawn from what counts after the teacher's decisions. */
import type { JsonFinding, JsonReview } from '../report/json.ts';
import { counted, list } from '../report/sentences.ts';
import type { Evidence } from './evidence.ts';

export interface ToWorkOn {
  readonly rule: string;
  readonly name: string;
  readonly times: number;
  /** Where, as `bar 3` or `bars 3, 5 and 8`. */
  readonly where: string;
  readonly why: string;
  /** The first hint: where to look. */
  readonly hint: string;
}

/**
 * The three rules that most want work: faults before queries, then how often. Remarks are no matter for the sheet's
 * front, and neither is what is simply unwritten.
 */
export function toWorkOn(counting: readonly JsonFinding[], most = 3): ToWorkOn[] {
  const byRule = new Map<string, JsonFinding[]>();
  for (const finding of counting) {
    if (finding.severity === 'remark') continue;
    byRule.set(finding.rule, [...(byRule.get(finding.rule) ?? []), finding]);
  }
  return [...byRule.values()]
    .sort((a, b) => faultsIn(b) - faultsIn(a) || b.length - a.length)
    .slice(0, most)
    .map((findings) => {
      const { rule, name, why, hints } = findings[0]!;
      return { rule, name, times: findings.length, where: printBars(findings), why, hint: hints[1]! };
    });
}

function faultsIn(findings: readonly JsonFinding[]): number {
  return findings.filter(({ severity }) => severity === 'fault').length;
}

function printBars(findings: readonly JsonFinding[]): string {
  const bars = [...new Set(findings.map(({ bar }) => bar))];
  return `${bars.length === 1 ? 'bar' : 'bars'} ${list(bars)}`;
}

/** Things done well, the most telling first, each a sentence that a score bears out. At most `most`. */
export function strengths(
  review: JsonReview,
  evidence: Evidence,
  counting: readonly JsonFinding[],
  most = 2,
): string[] {
  const found: [number, string][] = [];
  const praise = (weight: number, sentence: string): void => {
    found.push([weight, sentence]);
  };
  const faultless = (family: JsonFinding['family']) =>
    evidence.written > 0.9 && !counting.some((f) => f.family === family && f.severity !== 'remark');
  const suspensions = review.ornaments.filter(({ kind }) => kind === 'suspension');
  if (suspensions.length > 0 && faultless('dissonance')) {
    const figures = [...new Set(suspensions.flatMap((s) => (s.figures === undefined ? [] : [s.figures])))];
    praise(
      9,
      `${suspensions.length === 1 ? 'A suspension' : `${suspensions.length} suspensions`}${figures.length > 0 ? ` (${list(figures)})` : ''}, prepared and resolved as the style asks.`,
    );
  }
  const kinds = Object.keys(evidence.cadences);
  if (evidence.phrases > 1 && evidence.closed === evidence.phrases) {
    praise(
      kinds.length > 1 ? 8 : 5,
      `Every phrase ends in a cadence${kinds.length > 1 ? `, of different kinds: ${list(kinds)}` : ''}.`,
    );
  }
  if (evidence.keys.length > 1 && faultless('cadences and phrases')) {
    praise(7, `The music goes somewhere: ${list(evidence.keys)}.`);
  }
  if (faultless('consecutives') && faultless('spacing and range')) {
    praise(8, 'The four voices stay independent: no consecutives, no crossing, good spacing.');
  } else if (faultless('consecutives')) praise(7, 'No consecutive fifths or octaves anywhere.');
  if (faultless('chords') && evidence.chords >= 5) {
    praise(6, `${counted(evidence.chords, 'different chord')}, each well built and resolved.`);
  }
  const passing = (evidence.ornaments.passing ?? 0) + (evidence.ornaments['accented passing'] ?? 0);
  if (passing >= 3) praise(4, `Lines that flow: ${counted(passing, 'passing note')}.`);
  if (faultless('melody')) praise(4, 'Every voice is good to sing: no awkward steps or leaps.');
  const inverted = review.chords.filter(({ root, bass }) => root !== bass).length;
  if (inverted >= review.chords.length / 4 && review.chords.length >= 8) {
    praise(3, `A bass line that moves: ${inverted} of ${review.chords.length} chords are inverted.`);
  }
  if (evidence.written === 1) praise(1, 'All four voices are written to the end.');
  if (evidence.written > 0) praise(0, `${Math.floor(evidence.written * 100)} % of the beats are written.`);
  return found
    .sort(([a], [b]) => b - a)
    .slice(0, most)
    .map(([, sentence]) => sentence);
}
