/** From XML text to a {@link SourceScore}, partwise or timewise, in one pass. */
import { harmless } from '../english/words.ts';
import { BarReader, type Notices, type PartState } from './bar.ts';
import { LIMITS } from './limits.ts';
import { quoted, Refusal } from './refusal.ts';
import { SOFTWARE } from './software.ts';
import type { SourceBar, SourcePart, SourceScore } from './source.ts';
import { wrongMarkup } from './wrong-files.ts';
import { childOf, childrenOf, type DocumentKind, parseXml, textOf, type XmlElement } from './xml.ts';

interface Headings {
  work: string;
  movement: string;
  credit: string;
  software: string[];
}

interface PartInWork {
  readonly id: string;
  readonly name: string;
  readonly state: PartState;
  readonly bars: SourceBar[];
}

/** @throws {Refusal} where the text is no MusicXML score, breaks a limit or holds an impossible number. */
export function parseMusicXml(text: string): SourceScore {
  const parts: PartInWork[] = [];
  const named = new Map<string, string>();
  const headings: Headings = { work: '', movement: '', credit: '', software: [] };
  let tempo: number | undefined;
  const remarks: { message: string; bar?: string; line?: number }[] = [];
  let notes = 0;

  let part: PartInWork | undefined;
  let bar: BarReader | undefined;
  let measure: XmlElement | undefined;
  let root: XmlElement | undefined;

  const notices: Notices = {
    remark: (message, number, line) => {
      if (remarks.length < 50 && !remarks.some((known) => known.message === message)) {
        remarks.push({ message, ...(number === '' ? {} : { bar: number }), line });
      }
    },
    tempo: (value) => {
      if (tempo === undefined && value >= 5 && value <= 1000) tempo = value;
    },
    count: (element) => {
      notes++;
      if (notes > LIMITS.notes) {
        throw new Refusal(
          `The file has more than ${LIMITS.notes.toLocaleString('en-GB')} notes, too many for one exercise.`,
          element,
        );
      }
    },
  };

  const partOf = (element: XmlElement, position: number): PartInWork => {
    const id = element.attributes.id ?? '';
    const known = id === '' ? parts[position] : parts.find((p) => p.id === id);
    if (known !== undefined) return known;
    if (parts.length >= LIMITS.parts) {
      throw new Refusal(`The score has more than ${LIMITS.parts} parts.`, element);
    }
    const made: PartInWork = {
      id,
      name: named.get(id) ?? [...named.values()][parts.length] ?? '',
      state: {
        divisions: 1,
        staves: 1,
        transpositions: new Map(),
        clefs: new Map(),
        unpitched: new Map(),
        ending: undefined,
      },
      bars: [],
    };
    parts.push(made);
    return made;
  };

  /** In a timewise score: which part of the measure this is. */
  let position = 0;
  let measures = 0;

  parseXml(text, SCORE, {
    open: (element, inside) => {
      if (element.name === 'part') {
        part = partOf(element, root?.name === 'score-partwise' ? parts.length : position++);
        if (measure !== undefined) bar = new BarReader(measure, part.state, notices);
      } else if (element.name === 'measure') {
        if (inside?.name === 'score-timewise') {
          measure = element;
          position = 0;
          measures++;
          countBars(measures, element);
        } else if (part !== undefined) {
          countBars(part.bars.length + 1, element);
          bar = new BarReader(element, part.state, notices);
        }
      } else if (inside === undefined) {
        root = element;
      }
    },
    close: (element) => {
      if (
        bar !== undefined &&
        part !== undefined &&
        element.name === (measure === undefined ? 'measure' : 'part')
      ) {
        // A part that is missing in some measures of a timewise score still counts them.
        while (measure !== undefined && part.bars.length < measures - 1) part.bars.push(EMPTY_BAR);
        part.bars.push(bar.finish());
        bar = undefined;
      }
      if (element.name === 'part') part = undefined;
      if (element.name === 'measure') measure = undefined;
    },
    whole: (element, inside) => {
      if (bar !== undefined) bar.read(element);
      else if (inside.name === 'part-list') {
        if (element.name === 'score-part')
          named.set(element.attributes.id ?? `#${named.size}`, nameOf(element));
      } else readHeading(element, headings);
    },
  });

  if (root === undefined || !root.name.startsWith('score-')) {
    throw new Refusal(
      `This is not a whole MusicXML score: its outermost element is ${quoted(root?.name ?? '')}. Export the exercise as MusicXML again.`,
    );
  }
  const staffBars = parts.reduce((sum, one) => sum + one.bars.length * one.state.staves, 0);
  if (staffBars > LIMITS.barsInAll) {
    throw new Refusal(
      `The parts of the score have ${staffBars.toLocaleString('en-GB')} bars together, too many for one exercise.`,
    );
  }
  return {
    title: headings.work || headings.movement || headings.credit,
    ...(tempo === undefined ? {} : { tempo }),
    explicitSilence: headings.software.length > 0 && headings.software.every((name) => name === SOFTWARE),
    parts: parts.map(finished),
    remarks,
  };
}

const SCORE: DocumentKind = {
  outer: new Set(['score-partwise', 'score-timewise', 'part', 'measure', 'part-list']),
  wrongRoot,
};

function wrongRoot(name: string): string {
  const known = wrongMarkup(name);
  if (known !== undefined) return known;
  if (name === 'opus') {
    return 'This file only lists other scores (a MusicXML opus). Open one of the scores it names.';
  }
  return `This is XML but not a MusicXML score: its outermost element is ${quoted(name)}, where score-partwise or score-timewise is needed. Export the exercise as MusicXML.`;
}

const EMPTY_BAR: SourceBar = {
  number: '',
  implicit: false,
  length: 0,
  notes: [],
  keys: [],
  metres: [],
  figures: [],
  repeats: [],
  fermatas: [],
};

function countBars(bars: number, element: XmlElement): void {
  if (bars > LIMITS.bars) {
    throw new Refusal(
      `The score has more than ${LIMITS.bars.toLocaleString('en-GB')} bars, too many for one exercise.`,
      element,
    );
  }
}

function finished(part: PartInWork): SourcePart {
  const { staves, unpitched, clefs } = part.state;
  return { id: part.id, name: part.name, staves, unpitched, clefs, bars: part.bars };
}

function nameOf(scorePart: XmlElement): string {
  const shown = childOf(scorePart, 'part-name-display');
  const display = shown
    ? childrenOf(shown, 'display-text')
        .map((t) => t.text)
        .join(' ')
    : '';
  const name =
    display.trim() ||
    textOf(scorePart, 'part-name') ||
    textOf(scorePart, 'part-abbreviation') ||
    (childOf(scorePart, 'score-instrument') &&
      textOf(childOf(scorePart, 'score-instrument')!, 'instrument-name')) ||
    '';
  return oneLine(name);
}

function readHeading(element: XmlElement, headings: Headings): void {
  if (element.name === 'work') headings.work = titled(textOf(element, 'work-title') ?? '');
  else if (element.name === 'movement-title') headings.movement = titled(element.text);
  else if (element.name === 'identification') {
    const names = childrenOf(element, 'encoding').flatMap((encoding) => childrenOf(encoding, 'software'));
    headings.software.push(...names.map((software) => software.text.trim()));
  } else if (
    element.name === 'credit' &&
    headings.credit === '' &&
    textOf(element, 'credit-type') === 'title'
  ) {
    headings.credit = titled(
      childrenOf(element, 'credit-words')
        .map((words) => words.text)
        .join(' '),
    );
  }
}

/** Programs write the file's name where no title was given; its ending is no part of a title. */
function titled(text: string): string {
  return oneLine(text).replace(/\.(mxl|musicxml|xml)$/i, '');
}

function oneLine(text: string): string {
  return harmless(text.replace(/\s+/g, ' ').trim()).slice(0, LIMITS.nameLength);
}
