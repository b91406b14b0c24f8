/**
 * Masters told from a machine that imitates them by what the rules say: faults counted three times and queries once, a
 * beat; without the rules of spelling and range, since the machine's pieces came without letters; with and without
 * those of phrase ends, which for both are found without fermatas. The masters' chorales lose theirs first. Rules on
 * lines and relations read letters too, so that letters from the conversion count against the machine: what it comes to
 * without them is told beside it.
 */
import { CHORALE } from '../../../src/profiles/profile.ts';
import { type Review, reviewScore } from '../../../src/review/review.ts';
import { RULES } from '../../../src/rules/list.ts';
import { endOf } from '../../../src/score/score.ts';
import { crotchets } from '../../../src/score/time.ts';
import { machineMadePresent, readMachineMade } from '../machine-made.ts';
import { respelt } from './respelt.ts';
import type { Section } from './section.ts';
import { withoutFermatas } from './thin.ts';

const SPELLING_AND_RANGE: readonly string[] = ['misspelt-note', 'accidental-slip', 'voice-range'];
const PHRASE_ENDS = RULES.filter((rule) => rule.family === 'cadences and phrases').map((rule) => rule.id);

export interface Told {
  readonly faults: number;
  readonly queries: number;
  readonly beats: number;
}

/** What the rules say about a score, but for those left out. */
function told({ score, findings }: Review, leftOut: readonly string[]): Told {
  const count = (severity: string) =>
    findings.filter((f) => f.severity === severity && !leftOut.includes(f.rule.id)).length;
  return { faults: count('fault'), queries: count('query'), beats: crotchets(endOf(score)) };
}

export interface Parted {
  /** How often a machine's piece has more against it than a master's; ties count half. */
  readonly area: number;
  readonly masters: Told;
  readonly machine: Told;
}

function part(masters: readonly Review[], machine: readonly Review[], leftOut: readonly string[]): Parted {
  const [ours, theirs] = [masters, machine].map((reviews) =>
    reviews.map((review) => told(review, leftOut)),
  ) as [Told[], Told[]];
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
    'Masters told from a machine by faults (three times) and queries a beat, without the rules of spelling and range',
  rows: ({ pieces }) => {
    if (!machineMadePresent() || pieces.length === 0) return [];
    const masters = pieces.map(({ texture }) => reviewScore(withoutFermatas(texture.score), CHORALE));
    const machine = readMachineMade().map(({ score }) => reviewScore(score, CHORALE));
    const whole = part(masters, machine, SPELLING_AND_RANGE);
    const spelt = machine.map(({ analysis }) => reviewScore(respelt(analysis), CHORALE));
    const within = part(masters, machine, [...SPELLING_AND_RANGE, ...PHRASE_ENDS]);
    const per100 = ({ faults, queries, beats }: Told) =>
      `${((100 * faults) / beats).toFixed(2)} faults, ${((100 * queries) / beats).toFixed(2)} queries per 100 beats`;
    return [
      { material: 'area under the curve', figure: whole.area.toFixed(3), target: 'over 0.95' },
      { material: `${masters.length} chorales, fermatas removed`, figure: per100(whole.masters), target: '' },
      { material: `${machine.length} machine-made chorales`, figure: per100(whole.machine), target: '' },
      {
        material: 'area with the machine’s notes respelt by their keys',
        figure: part(masters, spelt, SPELLING_AND_RANGE).area.toFixed(3),
        target: '',
      },
      { material: 'area without the rules of phrase ends', figure: within.area.toFixed(3), target: '' },
    ];
  },
};
