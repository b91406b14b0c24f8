/** Lyric syllables, both ways: a hyphen at the end of a syllable says that the word goes on. */
import { LIMITS } from './limits.ts';
import { childrenOf, type XmlElement } from './xml.ts';

/** The syllables under a note, first verse first, with empty texts for verses that have none here. */
export function lyricsOf(note: XmlElement): string[] {
  const verses: { number: number; text: string }[] = [];
  for (const [index, lyric] of childrenOf(note, 'lyric').entries()) {
    let text = '';
    let goesOn = false;
    for (const child of lyric.children) {
      if (child.name === 'syllabic') goesOn = ['begin', 'middle'].includes(child.text.trim());
      // Several syllables sung on one note are joined by an elision sign, or by a space where it has none.
      else if (child.name === 'elision') text += child.text === '' ? ' ' : child.text;
      else if (child.name === 'text') text += child.text;
    }
    text = text.trim().slice(0, LIMITS.nameLength);
    if (text === '') continue;
    const given = /^\d{1,3}$/.exec((lyric.attributes.number ?? '').trim());
    const number = given ? Number(given[0]) : index + 1;
    if (number < 1 || number > LIMITS.verses) continue;
    verses.push({ number, text: goesOn && !text.endsWith('-') ? `${text}-` : text });
  }
  const found: string[] = [];
  for (const { number, text } of verses) {
    while (found.length < number) found.push('');
    found[number - 1] = text;
  }
  return found;
}
