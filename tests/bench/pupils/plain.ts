/** Plain exercises made by chance, their chords known, with the inner voices still to be written. */
import { analyse } from '../../../src/harmony/analyse.ts';
import type { VoiceName } from '../../../src/score/score.ts';
import { textureOf } from '../../../src/score/texture.ts';
import { type Agreement, add, compare, NOTHING, readingsOf } from '../harmony-measure.ts';
import { plainExercises } from '../plain-exercises.ts';
import { percent, type Section } from './section.ts';
import { withoutVoices } from './thin.ts';

const NUMBER = 200;
/** Not the seed that the network learns from. */
const SEED = 2;

const MISSING: readonly { readonly name: string; readonly voices: readonly VoiceName[] }[] = [
  { name: 'complete', voices: [] },
  { name: 'tenor still to be written', voices: ['T'] },
  { name: 'alto still to be written', voices: ['A'] },
  { name: 'alto and tenor still to be written', voices: ['A', 'T'] },
];

export const PLAIN: Section = {
  title: `Half-finished work, ${NUMBER} plain exercises of our own: agreement with the chords they were made of`,
  rows: () => {
    const exercises = plainExercises(NUMBER, SEED);
    return MISSING.map(({ name, voices }) => {
      const sum = exercises.reduce<Agreement>((sum, { texture, labels }) => {
        const thin = textureOf(withoutVoices(texture.score, voices));
        return add(sum, compare(labels, readingsOf(analyse(thin))));
      }, NOTHING);
      const figure = `${percent(sum.all, sum.total)} (root ${percent(sum.root, sum.total)}, key ${percent(sum.key, sum.total)})`;
      return { material: name, figure, target: '' };
    });
  },
};
