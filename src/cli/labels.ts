/** `--labels`: how chords are written, under names short enough to type. */
import { InvalidArgumentError, Option } from 'commander';
import type { LabelStyle } from '../harmony/words/labels.ts';

const STYLES: Readonly<Record<string, LabelStyle>> = {
  figures: 'figures',
  letters: 'letters',
  capitals: 'capital letters',
  bass: 'figured bass',
};

export function labelOption(): Option {
  return new Option(
    '--labels <style>',
    'how chords are written: figures (V65, ii6), letters (V7b, iib), capitals (V7b, IIb) or bass (65, 6)',
  )
    .argParser((text: string): LabelStyle => {
      const style = Object.hasOwn(STYLES, text) ? STYLES[text] : undefined;
      if (style === undefined) {
        throw new InvalidArgumentError(`Chords are written in one of: ${Object.keys(STYLES).join(', ')}.`);
      }
      return style;
    })
    .default('figures' satisfies LabelStyle);
}
