/** What is put into a note element, or before it. */
import { element, textElement } from '../markup.ts';
import { coloured, type Insertion, ours } from './ours.ts';
import { childrenIn, type Spot, tagStart, textIn } from './spots.ts';

/** What stands in a note before its notehead, by the schema. */
const BEFORE_NOTEHEAD = new Set([
  'grace',
  'chord',
  'pitch',
  'unpitched',
  'rest',
  'cue',
  'duration',
  'tie',
  'instrument',
  'footnote',
  'level',
  'voice',
  'type',
  'dot',
  'accidental',
  'time-modification',
  'stem',
]);
/** What stands after its lyrics. */
const AFTER_LYRICS = new Set(['play', 'listen']);

/** Colours a notehead; one to which the pupil gave a colour keeps it. */
export function colourInsertions(text: string, inside: number, colour: string): Insertion[] {
  const children = childrenIn(text, inside);
  const own = children.find((child) => child.name === 'notehead');
  if (own !== undefined) {
    const tag = text.slice(own.from, own.inside);
    return /\scolor\s*=/.test(tag) ? [] : coloured(text, { from: own.from, until: own.inside }, colour);
  }
  const before = children.findLast((child) => BEFORE_NOTEHEAD.has(child.name));
  return [ours(before?.until ?? inside, textElement('notehead', 'normal', { color: colour }))];
}

export interface LyricWords {
  readonly number: number;
  readonly name: string;
  readonly words: string;
}

/** A lyric of ours under a note. */
export function lyricInsertion(text: string, inside: number, { number, name, words }: LyricWords): Insertion {
  const children = childrenIn(text, inside);
  const before = children.findLast((child) => !AFTER_LYRICS.has(child.name));
  const lyric = element(
    'lyric',
    { number, name, placement: 'below' },
    textElement('syllabic', 'single'),
    textElement('text', words),
  );
  return ours(before?.until ?? inside, lyric);
}

export interface NumberWords {
  readonly text: string;
  readonly colour: string;
  readonly bold: boolean;
}

/** Numbers over the staff, before a note; `into` is how far into the note, as a part of its length. */
export function numberInsertion(text: string, inside: number, into: number, numbers: NumberWords): Insertion {
  const children = childrenIn(text, inside);
  const child = (name: string): Spot | undefined => children.find((one) => one.name === name);
  const staff = textIn(text, child('staff'));
  const offset = into === 0 ? 0 : Number(textIn(text, child('duration'))) * into;
  const words = textElement('words', numbers.text, {
    color: numbers.colour,
    'font-style': 'normal',
    'font-weight': numbers.bold ? 'bold' : undefined,
  });
  return ours(
    tagStart(text, inside),
    element(
      'direction',
      { placement: 'above' },
      element('direction-type', {}, words),
      offset > 0 ? textElement('offset', Number(offset.toFixed(6))) : '',
      staff === '' ? '' : textElement('staff', staff),
    ),
  );
}

/** Points. */
const LIST_SIZE = 7;
/** Signs in a line of the list: some 10 cm at this size, which every page has room for. */
const LIST_LINE = 110;

/** The list, over the first staff of its part. */
export function listInsertion(at: number, list: readonly string[], severalStaves: boolean): Insertion {
  const lines = list.flatMap((entry) => broken(entry));
  const words = textElement('words', lines.join('\n'), {
    justify: 'left',
    halign: 'left',
    'font-size': LIST_SIZE,
    'font-style': 'normal',
  });
  return ours(
    at,
    element(
      'direction',
      { placement: 'above' },
      // Written by its number, the line's end leaves the lines of the file as they are counted.
      element('direction-type', {}, words.replaceAll('\n', '&#10;')),
      severalStaves ? textElement('staff', 1) : '',
    ),
  );
}

/** Lines of an entry; those after the first stand a little in. */
function broken(entry: string): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of entry.split(' ')) {
    if (line.trim() !== '' && line.length + 1 + word.length > LIST_LINE) {
      lines.push(line);
      line = `    ${word}`;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}
