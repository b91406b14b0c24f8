/** Variety of chords: how evenly many different ones share the piece. */
import type { Chord } from '../../harmony/analysis.ts';
import type { Measure } from '../measure.ts';
import { countedHere } from '../source.ts';

export const variety: Measure = {
  id: 'variety',
  name: 'Variety of chords',
  unit: 'bits',
  definition:
    'How unforeseeable a chord is where only the piece’s own mixture is known. Chords are told apart by degree, quality and what they are dominant to; 2 bits are as four chords used equally often, 3 bits as eight.',
  why: 'The model goes well beyond tonic, dominant and subdominant: the second and sixth degrees, and dominants of other degrees, are everyday chords.',
  low: 'A few chords do nearly all the work. Look where the second degree could take the place of the fourth, or the sixth that of the first.',
  high: 'A great many different chords are used. See that the key is clear at the start and at each close.',
  source: countedHere('0.41'),
  count: (music) => {
    const counts = new Map<string, number>();
    const chords = music.analysis.chords.filter((chord) => music.written(chord.at));
    for (const chord of chords) counts.set(meaning(chord), (counts.get(meaning(chord)) ?? 0) + 1);
    let bits = 0;
    for (const n of counts.values()) bits -= (n / chords.length) * Math.log2(n / chords.length);
    return { value: chords.length === 0 ? undefined : bits, where: [] };
  },
};

function meaning({ roman: { degree, alteration, quality, applied, special } }: Chord): string {
  return [degree, alteration, quality, applied?.degree, special].join(' ');
}
