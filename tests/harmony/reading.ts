/** Reads an exercise in our text notation and tells its harmony in short, for tests. */
import { analyse } from '../../src/harmony/analyse.ts';
import type { Analysis } from '../../src/harmony/analysis.ts';
import { numeral, printKey } from '../../src/harmony/words/labels.ts';
import { readNotation } from '../../src/notation/index.ts';
import { textureOf } from '../../src/score/texture.ts';

export function analyseText(text: string): Analysis {
  const { score, problems } = readNotation(text);
  if (score === undefined) throw new Error(problems.map((problem) => problem.message).join('\n'));
  return analyse(textureOf(score));
}

/** `G major: I V65 I D major: V7 I`. */
export function numerals(analysis: Analysis): string {
  let key = '';
  return analysis.chords
    .flatMap((chord) => {
      const own = printKey(chord.key);
      const written = numeral(chord.roman, chord.key);
      const told = own === key ? [written] : [`${own}:`, written];
      key = own;
      return told;
    })
    .join(' ');
}
