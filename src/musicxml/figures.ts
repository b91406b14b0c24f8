/** Figured bass as MusicXML writes it, read into figures such as `6`, `#`, `b7`, `#4`. */
import { childrenOf, textOf, type XmlElement } from './xml.ts';

/** Signs before or after a figure. A stroke through a figure raises it by a semitone, save a backslash that lowers. */
const SIGNS: Readonly<Record<string, string>> = {
  sharp: '#',
  flat: 'b',
  natural: 'n',
  'double-sharp': '##',
  'sharp-sharp': '##',
  'flat-flat': 'bb',
  'double-flat': 'bb',
  cross: '#',
  slash: '#',
  backslash: '#',
  vertical: '#',
};

/** The figures from the top, without those that are empty. */
export function readFigures(element: XmlElement): string[] {
  const figures: string[] = [];
  for (const figure of childrenOf(element, 'figure').slice(0, 8)) {
    const sign = signOf(textOf(figure, 'prefix')) || signOf(textOf(figure, 'suffix'));
    const number = textOf(figure, 'figure-number') ?? '';
    const plain = /^\d{1,2}$/.test(number) ? number : signOf(number);
    if (sign + plain !== '') figures.push(sign + plain);
  }
  return figures;
}

function signOf(name: string | undefined): string {
  return name !== undefined && Object.hasOwn(SIGNS, name) ? SIGNS[name]! : '';
}
