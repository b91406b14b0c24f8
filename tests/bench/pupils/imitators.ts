/**
 * Masters told from a machine that imitates them by what the rules say: faults counted three times and queries once, a
 * beat; without the rules of spelling, range and phrase ends, since the machine's pieces came without letters and
 * fermatas. The masters' chorales lose their fermatas first.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { openScore } from '../../../src/open/open.ts';
import { CHORALE } from '../../../src/profiles/profile.ts';
import { reviewScore } from '../../../src/review/review.ts';
import { RULES } from '../../../src/rules/list.ts';
import { endOf, type Score } from '../../../src/score/score.ts';
import { crotchets } from '../../../src/score/time.ts';
import type { Section } from './section.ts';
import { withoutFermatas } from './thin.ts';

const FOLDER = fileURLToPath(new URL('../../../../shared/corpus/machine-made/', import.meta.url));

const LEFT_OUT = new Set([
  'misspelt-note',
  'accidental-slip',
  'voice-range',
  ...RULES.filter((rule) => rule.family === 'cadences and phrases').map((rule) => rule.id),
]);

function imitatorsAreThere(): boolean {
  return existsSync(FOLDER);
}

function readImitators(): { readonly name: string; readonly score: Score }[] {
  return readdirSync(FOLDER)
    .filter((name) => name.endsWith('.mxl'))
    .map((name) => {
      const opened = openScore(readFileSync(FOLDER + name));
      if (!opened.ok) throw new Error(`${name} cannot be read: ${opened.message}`);
      return { name: name.replace('.mxl', ''), score: opened.score };
    });
}

export interface Told {
  readonly faults: number;
  readonly queries: number;
  readonly beats: number;
}

/** What the rules say about a score, but for those left out. */
function told(score: Score): Told {
  const { findings } = reviewScore(score, CHORALE);
  const count = (severity: string) =>
    findings.filter((f) => f.severity === severity && !LEFT_OUT.has(f.rule.id)).length;
  return { faults: count('fault'), queries: count('query'), beats: crotchets(endOf(score)) };
}

export interface Parted {
  /** How often a machine's piece has more against it than a master's; ties count half. */
  readonly area: number;
  readonly masters: Told;
  readonly machine: Told;
}

function part(masters: readonly Score[], machine: readonly Score[]): Parted {
  const [ours, theirs] = [masters.map((score) => told(withoutFermatas(score))), machine.map(told)];
  const weigh = ({ faults, queries, beats }: Told) => (3 * faults + queries) / beats;
  const [low, high] = [ours.map(weigh), theirs.map(weigh)];
  let above = 0;
  for (const a of high) for (const b of low) above += a > b ? 1 : a === b ? 0.5 : 0;
  return { area: above / (low.length * high.length), masters: sum(ours), machine: sum(theirs) };
}

function sum(all: readonly Told[]): Told {
  return all.reduce(
    (a, b) => ({ faults: a.faults + b.faults, queries: a.queries + b.queries, beats: a.beats + b.beats }),
    { faults: 0, queries: 0, beats: 0 },
  );
}

export const IMITATORS: Section = {
  title:
    'Masters told from a machine by faults (three times) and queries a beat, without spelling, range and phrase ends',
  rows: ({ pieces }) => {
    if (!imitatorsAreThere() || pieces.length === 0) return [];
    const imitators = readImitators();
    const { area, masters, machine } = part(
      pieces.map(({ texture }) => texture.score),
      imitators.map(({ score }) => score),
    );
    const per100 = ({ faults, queries, beats }: Told) =>
      `${((100 * faults) / beats).toFixed(2)} faults, ${((100 * queries) / beats).toFixed(2)} queries per 100 beats`;
    return [
      { material: 'area under the curve', figure: area.toFixed(3), target: 'over 0.95' },
      { material: `${pieces.length} chorales, fermatas removed`, figure: per100(masters), target: '' },
      { material: `${imitators.length} machine-made chorales`, figure: per100(machine), target: '' },
    ];
  },
};
