/**
 * Where the phrases of hymn tunes end, typed as people type them with no pause marked: tunes of the 16th to the 19th
 * century and tunes of our own, whose lines of text say where. The committed table has learnt from every second tune, so
 * each half is measured with a table learnt from the chorales and the other half.
 */
import { phrasesOf } from '../../../src/harmony/reading/phrases.ts';
import type { VoiceName } from '../../../src/score/score.ts';
import { textureOf } from '../../../src/score/texture.ts';
import type { HymnTune } from './hymns/hymn-tune.ts';
import { halfOf, TUNES } from './hymns/list.ts';
import { typedHymn } from './hymns/print.ts';
import { type Bench, percent, type Row, type Section } from './section.ts';

const SHAPES: readonly { readonly name: string; readonly voices: readonly VoiceName[] }[] = [
  { name: 'the tune alone', voices: ['S'] },
  { name: 'tune and bass', voices: ['S', 'B'] },
  { name: 'four parts', voices: ['S', 'A', 'T', 'B'] },
];

export const HYMNS: Section = {
  title: 'Hymn tunes, no pause marked: ends of the lines of the text',
  rows: (bench) =>
    SHAPES.flatMap(({ name, voices }) => {
      const whole = TUNES.filter((tune) => voices.every((voice) => tune[voice] !== undefined));
      return measure(bench, `${name} (${whole.length})`, whole, voices);
    }),
};

function measure(
  { hymnWeights }: Bench,
  name: string,
  tunes: readonly HymnTune[],
  voices: readonly VoiceName[],
): Row[] {
  let [ends, found, told] = [0, 0, 0];
  const complaints: Row[] = [];
  for (const tune of tunes) {
    const hymn = typedHymn(tune, voices);
    const inside = phrasesOf(textureOf(hymn.score), hymnWeights(halfOf(tune)))
      .slice(0, -1)
      .map(({ until }) => until);
    const right = hymn.ends.filter((end) => inside.includes(end)).length;
    ends += hymn.ends.length;
    found += right;
    told += inside.length;
    const [few, many] = [hymn.ends.length - right, inside.length - right];
    if (few + many > 0)
      complaints.push({
        material: `    ${tune.name}`,
        figure: `${few} missed, ${many} too many`,
        target: '',
      });
  }
  return [
    { material: `${name}: found`, figure: percent(found, ends), target: '90 %' },
    { material: `${name}: right of those told`, figure: percent(found, told), target: '90 %' },
    ...complaints,
  ];
}
