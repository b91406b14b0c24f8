/** Second readings in words, as a teacher would tell them beside the first. */
import type { Analysis, SecondReading } from '../analysis.ts';
import { sameKey } from '../key.ts';
import { type LabelStyle, type NumeralStyle, numeral, printKey } from './labels.ts';

/** Chords named of one stretch; a longer one is told by its beginning. */
const NAMED = 5;

/** The style in which a second reading's chords are written: figures alone would be those of the first. */
export function numeralStyleOf(style: LabelStyle): NumeralStyle {
  return style === 'figured bass' ? 'figures' : style;
}

/** The chords of a second reading as `write` has them, each once: `ii6`, `V`, `I`; `…` where there are many. */
export function secondNumerals(
  second: SecondReading,
  write: (chord: SecondReading['chords'][number]) => string,
): string[] {
  const numerals = second.chords.map(write);
  const told = numerals.filter((one, i) => one !== numerals[i - 1]);
  return told.length > NAMED ? [...told.slice(0, NAMED), '…'] : told;
}

/** `F major` for a stretch that may be in another key; undefined where one chord alone is in doubt. */
export function secondKey({ chords }: Pick<Analysis, 'chords'>, second: SecondReading): string | undefined {
  const first = chords[second.chords[0]!.index]!;
  return sameKey(first.key, second.key) ? undefined : printKey(second.key);
}

/** `also F major: ii6–V–I`; `also ii65`. */
export function secondWords(analysis: Analysis, second: SecondReading, style: NumeralStyle): string {
  const key = secondKey(analysis, second);
  const numerals = secondNumerals(second, ({ roman }) => numeral(roman, second.key, style));
  return `also ${key === undefined ? '' : `${key}: `}${numerals.join('–')}`;
}
