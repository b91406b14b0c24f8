/**
 * Small exercises with what must be found in them and what must not be said, from `../shared/pupils/cases.json`.
 * A rule is given by the beginning of its id, a place by bar and beat: inside what is found, or within a beat of it.
 */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as z from 'zod';
import { readNotation } from '../../../src/notation/index.ts';
import { CHORALE } from '../../../src/profiles/profile.ts';
import { type Finding, reviewScore } from '../../../src/review/review.ts';
import type { Score } from '../../../src/score/score.ts';
import { beatLength } from '../../../src/score/time.ts';
import { percent, type Section } from './section.ts';

const FILE = fileURLToPath(new URL('../../../../shared/pupils/cases.json', import.meta.url));

const wantedSchema = z.object({
  rules: z.array(z.string()).optional(),
  severity: z.array(z.string()).optional(),
  bar: z.string().optional(),
  beat: z.number().optional(),
  voices: z.array(z.string()).optional(),
});
const casesSchema = z.array(
  z.object({
    id: z.string(),
    text: z.string(),
    expect: z.array(wantedSchema),
    forbid: z.array(wantedSchema),
  }),
);

/** What a finding must be like: every part that is given holds of it. */
export type Wanted = z.infer<typeof wantedSchema>;

export interface CasesMeasured {
  readonly toFind: number;
  readonly found: number;
  readonly notToSay: number;
  readonly said: number;
  /** One line for each miss and each thing wrongly said. */
  readonly complaints: readonly string[];
}

function casesAreThere(): boolean {
  return existsSync(FILE);
}

function measureCases(): CasesMeasured {
  const cases = casesSchema.parse(JSON.parse(readFileSync(FILE, 'utf8')));
  const complaints: string[] = [];
  let [toFind, found, notToSay, said] = [0, 0, 0, 0];
  for (const { id, text, expect, forbid } of cases) {
    const { score } = readNotation(text);
    if (score === undefined) throw new Error(`${id} cannot be read.`);
    const { findings } = reviewScore(score, CHORALE);
    for (const wanted of expect) {
      toFind++;
      if (findings.some((finding) => answers(score, finding, wanted))) found++;
      else complaints.push(`${id}: not found: ${JSON.stringify(wanted)}`);
    }
    for (const wanted of forbid) {
      notToSay++;
      const wrong = findings.find((finding) => answers(score, finding, wanted));
      if (wrong === undefined) continue;
      said++;
      complaints.push(`${id}: wrongly said: ${wrong.rule.id} (${wrong.severity}) ${wrong.message}`);
    }
  }
  return { toFind, found, notToSay, said, complaints };
}

/** True where a finding is what was asked for. */
export function answers(score: Score, finding: Finding, wanted: Wanted): boolean {
  if (wanted.rules && !wanted.rules.some((id) => finding.rule.id.startsWith(id))) return false;
  if (wanted.severity && !wanted.severity.includes(finding.severity)) return false;
  if (wanted.voices && !wanted.voices.every((voice) => (finding.voices as readonly string[]).includes(voice)))
    return false;
  if (wanted.bar === undefined) return true;
  const bar = score.bars.find(({ number }) => number === wanted.bar);
  if (bar === undefined) return false;
  const { from, until } = finding;
  if (wanted.beat === undefined) return from >= bar.at && from < bar.at + bar.duration;
  const beat = beatLength(bar.metre);
  const at = bar.at - bar.offset + (wanted.beat - 1) * beat;
  return at >= from - beat && at <= Math.max(until - 1, from + beat);
}

export const CASES: Section = {
  title: 'Small exercises: what must be found in them, and what must not be said',
  rows: () => {
    if (!casesAreThere()) return [];
    const { toFind, found, notToSay, said, complaints } = measureCases();
    return [
      { material: `found, of ${toFind}`, figure: percent(found, toFind), target: '98 %' },
      { material: `wrongly said, of ${notToSay}`, figure: percent(said, notToSay), target: '2 % at most' },
      ...complaints.map((complaint) => ({ material: `  ${complaint}`, figure: '', target: '' })),
    ];
  },
};
