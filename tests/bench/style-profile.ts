/**
 * Measures the open chorales and writes `src/style/profile-data.ts` and `src/style/precedents-data.ts`. Run with `npx tsx tests/bench/style-profile.ts`
 * after any change to a measure or to the reading; the same corpus gives the same table.
 */
import { writeFileSync } from 'node:fs';
import { printRow } from '../../src/style/precedents.ts';
import { corpusPresent } from './harmony-corpus.ts';
import { closesOf } from './style-closes.ts';
import { quantilesOf, readStyleCorpus, valuesOf } from './style-corpus.ts';

const QUANTILES = Array.from({ length: 21 }, (_, i) => 5 * i);

if (!corpusPresent()) {
  console.log('Skipped: the open chorales are not at ../shared/corpus/chorales.');
} else {
  const pieces = readStyleCorpus();
  const runs = pieces.flatMap((piece) => piece.runs);
  const table = (name: string, doc: string, values: Record<string, number[]>) =>
    `/** ${doc} */\nexport const ${name}: Readonly<Record<string, readonly number[]>> = {\n${Object.entries(
      values,
    )
      .map(([id, sorted]) => {
        const quantiles = quantilesOf(sorted, QUANTILES).map((value) => Number(value.toFixed(3)));
        return `  '${id}': [${quantiles.join(', ')}],\n`;
      })
      .join('')}};\n`;
  const text = `/**
 * How each measure is spread over the open chorales. Written by tests/bench/style-profile.ts, not by hand, from
 * ${pieces.length} chorales by J. S. Bach in the encodings of the music21 corpus (M. Greentree and others), read by our
 * own analysis.
 */

/** The percentages at which the values stand. */
export const QUANTILES: readonly number[] = [${QUANTILES.join(', ')}];

${table('LONG', `Whole chorales: ${pieces.length} of them.`, valuesOf(pieces.map(({ music }) => music)))}
${table('SHORT', `Runs of whole phrases of 24 to 44 beats, as long as an exercise: ${runs.length} of them.`, valuesOf(runs))}`;
  writeFileSync(new URL('../../src/style/profile-data.ts', import.meta.url), text);
  const closes = closesOf(pieces).map(({ close }) => printRow(close));
  writeFileSync(
    new URL('../../src/style/precedents-data.ts', import.meta.url),
    `/**
 * Phrase ends of the open chorales. Written by tests/bench/style-profile.ts, not by hand: J. S. Bach's chorales in the
 * encodings of the music21 corpus, read by our own analysis, where it agrees in root and key with the human analyses of
 * D. Tymoczko and colleagues (When in Rome meta-corpus, CC BY-SA 4.0). ${closes.length} closes; a row is
 * chorale|bar|mode|tune's degrees|place|key|cadence|chords|bass degrees|suspensions.
 */
export const CLOSES = \`
${closes.join('\n')}
\`;
`,
  );
  console.log(`${closes.length} closes: src/style/precedents-data.ts is written.`);
  console.log(
    `${pieces.length} chorales, ${runs.length} runs of phrases: src/style/profile-data.ts is written.`,
  );
}
