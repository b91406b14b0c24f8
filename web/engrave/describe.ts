/** The music in words, for those who don't see the drawing. */
import { capitalised } from '../../src/english/words.ts';
import type { Chord } from '../../src/harmony/analysis.ts';
import { numeral, printKey } from '../../src/harmony/words/labels.ts';
import { withSigns } from '../../src/report/sentences.ts';
import { printNoteName, printPitch } from '../../src/score/pitch.ts';
import { placeAt, printPlace } from '../../src/score/place.ts';
import { VOICE_WORDS, VOICES } from '../../src/score/score.ts';
import { sliceAt, type Texture } from '../../src/score/texture.ts';
import type { Ticks } from '../../src/score/time.ts';
import type { Marks } from './input.ts';

/**
 * One moment voice by voice, then its chord and key: "Bar 3, beat 2: soprano D5, alto B4, tenor G4, bass B3. Chord V6
 * in G major: D major, first inversion." A note that goes on from before is "held", a gap "not written". Empty outside the score.
 */
export function describeMoment(
  texture: Texture,
  marks: Pick<Marks, 'chords' | 'seconds'>,
  at: Ticks,
): string {
  const slice = sliceAt(texture, at);
  if (slice === undefined) return '';
  const place = placeAt(texture.score, at);
  const voices = VOICES.map((voice) => {
    const part = slice.parts[voice];
    if (part.kind !== 'tone') return `${VOICE_WORDS[voice]} ${part.kind === 'rest' ? 'rest' : 'not written'}`;
    return `${VOICE_WORDS[voice]} ${printPitch(part.tone.pitch)}${part.attacked ? '' : ' held'}`;
  });
  const chord = marks.chords.find((each) => at >= each.at && at < each.until);
  const harmony = chord ? ` ${describeChord(chord)}${alsoHeard(marks, chord)}` : '';
  return withSigns(`${capitalised(printPlace(place))}: ${voices.join(', ')}.${harmony}`);
}

/** ` Or ii6 in F major.`, where a second reading lies close. */
function alsoHeard({ seconds }: Pick<Marks, 'seconds'>, { index }: Chord): string {
  const heard = seconds.flatMap(({ key, chords }) =>
    chords
      .filter((chord) => chord.index === index)
      .map(({ roman }) => ` Or ${numeral(roman, key)} in ${printKey(key)}.`),
  );
  return heard.join('');
}

const POSITIONS = ['root position', 'first inversion', 'second inversion', 'third inversion'] as const;

/** `Chord V6 in G major: D major, first inversion.` */
function describeChord({ roman, key, root, quality }: Chord): string {
  const seventh = roman.seventh === undefined ? '' : ' with a seventh';
  const position = POSITIONS[roman.inversion];
  const triad = `${printNoteName(root)} ${quality}${seventh}`;
  return `Chord ${numeral(roman, key)} in ${printKey(key)}: ${triad}, ${position}.`;
}
