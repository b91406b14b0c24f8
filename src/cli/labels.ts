/** `--labels`: how chords are written, under names short enough to type. */
import { InvalidArgumentError, Option } from 'commander';
import { LABEL_STYLES, type LabelStyle } from '../harmony/words/labels.ts';

const TYPED: Readonly<Record<LabelStyle, string>> = {
  figures: 'figures',
  letters: 'letters',
  'capital letters': 'capitals',
  'figured bass': 'bass',
};

export function labelOption(): Option {
  return new Option(
    '--labels <style>',
    'how chords are written: figures (V65, ii6), letters (V7b, iib), capitals (V7b, IImb) or bass (65, 6)',
  )
    .argParser((text: string): LabelStyle => {
      const style = LABEL_STYLES.find((one) => TYPED[one] === text);
      if (style === undefined) {
        throw new InvalidArgumentError(
          `Chords are written in one of: ${LABEL_STYLES.map((one) => TYPED[one]).join(', ')}.`,
        );
      }
      return style;
    })
    .default('figures' satisfies LabelStyle);
}
