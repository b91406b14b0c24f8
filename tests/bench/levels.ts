/**
 * Do suggested levels fall where the writing gets worse? Masters' chorales with the tune as the brief, and the same
 * tunes with lower voices spoilt, plain, half done or thrown, each judged by the example scheme.
 *
 *     npm run bench:levels [-- every nth chorale, 5 unless said]
 */
import { applyDecisions } from '../../src/desk/decisions.ts';
import { EXAMPLE_SCHEME } from '../../src/desk/example-scheme.ts';
import { factsOf } from '../../src/desk/facts.ts';
import { measure } from '../../src/desk/measures.ts';
import { suggestLevel } from '../../src/desk/suggest.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { KINDS, type Kind, made, tuneOf } from './levels/stacks.ts';
import { corpusIsThere, readPieces } from './rules/corpus.ts';

/** Which criteria a kind is worse at than the kind it is made of; for the whole order see the table. */
const TOUCHED: readonly (readonly [better: Kind, worse: Kind, criteria: readonly string[]])[] = [
  ['master', '6 wrong', ['part-writing', 'handling']],
  ['6 wrong', '18 wrong', ['chords', 'part-writing', 'handling', 'decoration']],
  ['master', '18 wrong', ['chords', 'part-writing', 'handling', 'decoration']],
  ['18 wrong', 'random', ['chords', 'part-writing', 'handling', 'decoration']],
  ['master', 'random', ['chords', 'part-writing', 'handling', 'decoration']],
  ['master', 'block chords', ['decoration']],
  ['master', 'bass only', ['chords', 'part-writing', 'handling', 'decoration']],
];

/** No suggestion stands below every level. */
const NONE = -1;
type Levels = Readonly<Record<string, number>>;

if (!corpusIsThere()) {
  console.log('The open chorales are not there (../shared): nothing is measured.');
} else {
  const nth = Number(process.argv[2] ?? 5);
  const pieces = readPieces().filter((_, i) => i % nth === 0);
  const judged = pieces.map(({ score }, i) => {
    const { analysis } = reviewScore(score, CHORALE);
    const brief = tuneOf(score);
    return Object.fromEntries(
      KINDS.map((kind) => [kind, levelsOf(made(kind, analysis, 1_000 * i + 7), brief)]),
    ) as Record<Kind, ReturnType<typeof levelsOf>>;
  });
  printTable(judged);
  printPairs(judged);
}

function levelsOf(score: Parameters<typeof reviewScore>[0], brief: typeof score) {
  const facts = factsOf(reviewScore(score, CHORALE), brief);
  const { findings } = applyDecisions('x', facts.findings, []);
  const ground = { counts: facts.counts, findings };
  const levels: Levels = Object.fromEntries(
    EXAMPLE_SCHEME.criteria.map((criterion) => [criterion.id, suggestLevel(criterion, ground).level ?? NONE]),
  );
  const crotchets = facts.counts.phrases.reduce((sum, { from, until }) => sum + until - from, 0);
  const { value } = measure('faults a phrase', ground);
  return { levels, faults: (10 * value * facts.counts.phrases.length) / crotchets };
}

function printTable(judged: readonly Record<Kind, { levels: Levels; faults: number }>[]): void {
  const { criteria } = EXAMPLE_SCHEME;
  console.log(
    `${judged.length} chorales. Share of scripts at each level (none, then from the lowest), per cent:`,
  );
  console.log(`${''.padEnd(14)}faults/10 beats  ${criteria.map(({ id }) => id.padEnd(24)).join('')}`);
  for (const kind of KINDS) {
    const faults = judged.map((one) => one[kind].faults).sort((a, b) => a - b);
    const at = (share: number) => faults[Math.floor(share * (faults.length - 1))]!.toFixed(1);
    const shares = criteria.map(({ id, levels }) =>
      [NONE, ...levels.keys()]
        .map((level) => judged.filter((one) => one[kind].levels[id] === level).length)
        .map((count) => String(Math.round((100 * count) / judged.length)))
        .join(' ')
        .padEnd(24),
    );
    console.log(`${kind.padEnd(14)}${`${at(0.1)} ${at(0.5)} ${at(0.9)}`.padEnd(17)}${shares.join('')}`);
  }
}

function printPairs(judged: readonly Record<Kind, { levels: Levels }>[]): void {
  console.log('\nPairs of one tune, per cent: the worse is not above the better (below it)');
  let least = 100;
  for (const [better, worse, criteria] of TOUCHED) {
    const figures = criteria.map((id) => {
      const [a, b] = [better, worse].map((kind) => judged.map((one) => one[kind as Kind].levels[id]!));
      const share = (holds: (x: number, y: number) => boolean) =>
        (100 * a!.filter((x, i) => holds(x, b![i]!)).length) / judged.length;
      const ordered = share((x, y) => y <= x);
      least = Math.min(least, ordered);
      return `${id} ${ordered.toFixed(0)} (${share((x, y) => y < x).toFixed(0)})`;
    });
    console.log(`${better} → ${worse}: `.padEnd(26) + figures.join('   '));
  }
  console.log(`least in order: ${least.toFixed(0)} %`);
}
