/** From XML text to a {@link SourceScore}, partwise or timewise, in one pass. */
import { harmless } from '../english/words.ts';
import { Refused } from '../refusal/refusal.ts';
import { BarReader, type Notices, type PartState } from './bar.ts';
import { LIMITS } from './limits.ts';
import { quoted } from './quoted.ts';
import { SOFTWARE } from './software.ts';
import type { SourceBar, SourcePart, SourceScore } from './source.ts';
import { wrongMarkup } from './wrong-files.ts';
import {
  childOf,
  childrenOf,
  type DocumentKind,
  parseXml,
  textOf,
  type XmlElement,
  type XmlListener,
} from './xml.ts';

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

/** @throws {Refused} where the text is no MusicXML score, breaks a limit or holds an impossible number. */
export function parseMusicXml(text: string): SourceScore {
  const reader = new ScoreReader();
  parseXml(text, SCORE, reader);
  return reader.finish();
}

/** Takes a score's elements as they come, partwise or timewise, and gives back what it says. */
class ScoreReader implements XmlListener {
  private readonly parts: PartInWork[] = [];
  private readonly named = new Map<string, string>();
  private readonly headings: Headings = { work: '', movement: '', credit: '', software: [] };
  private readonly remarks: { message: string; bar?: string; line?: number }[] = [];
  private notes = 0;
  private part: PartInWork | undefined;
  private bar: BarReader | undefined;
  /** Of a timewise score. */
  private measure: XmlElement | undefined;
  private root: XmlElement | undefined;
  /** In a timewise score: which part of the measure this is. */
  private position = 0;
  private measures = 0;

  private readonly notices: Notices = {
    remark: (message, number, line) => {
      if (this.remarks.length < 50 && !this.remarks.some((known) => known.message === message)) {
        this.remarks.push({ message, ...(number === '' ? {} : { bar: number }), line });
      }
    },
    count: (element) => {
      this.notes++;
      if (this.notes > LIMITS.notes) {
        throw new Refused(
          `The file has more than ${LIMITS.notes.toLocaleString('en-GB')} notes, too many for one exercise.`,
          element,
        );
      }
    },
  };

  readonly open = (element: XmlElement, inside: XmlElement | undefined): void => {
    if (element.name === 'part') this.openPart(element);
    else if (element.name === 'measure') this.openMeasure(element, inside);
    else if (inside === undefined) this.root = element;
  };

  readonly close = (element: XmlElement): void => {
    if (element.name === (this.measure === undefined ? 'measure' : 'part')) this.closeBar();
    if (element.name === 'part') this.part = undefined;
    if (element.name === 'measure') this.measure = undefined;
  };

  readonly whole = (element: XmlElement, inside: XmlElement): void => {
    if (this.bar !== undefined) this.bar.read(element);
    else if (inside.name !== 'part-list') readHeading(element, this.headings);
    else if (element.name === 'score-part')
      this.named.set(element.attributes.id ?? `#${this.named.size}`, nameOf(element));
  };

  /** @throws {Refused} for what is no whole score, or too large a one */
  finish(): SourceScore {
    const { root, parts, headings } = this;
    if (root === undefined || !root.name.startsWith('score-')) {
      throw new Refused(
        `This is not a whole MusicXML score: its outermost element is ${quoted(root?.name ?? '')}. Export the exercise as MusicXML again.`,
      );
    }
    const staffBars = parts.reduce((sum, one) => sum + one.bars.length * one.state.staves, 0);
    if (staffBars > LIMITS.barsInAll) {
      throw new Refused(
        `The parts of the score have ${staffBars.toLocaleString('en-GB')} bars together, too many for one exercise.`,
      );
    }
    return {
      title: headings.work || headings.movement || headings.credit,
      explicitSilence: headings.software.length > 0 && headings.software.every((name) => name === SOFTWARE),
      parts: parts.map(finished),
      remarks: this.remarks,
    };
  }

  private openPart(element: XmlElement): void {
    const partwise = this.root?.name === 'score-partwise';
    this.part = this.partOf(element, partwise ? this.parts.length : this.position++);
    if (this.measure !== undefined) this.bar = new BarReader(this.measure, this.part.state, this.notices);
  }

  private openMeasure(element: XmlElement, inside: XmlElement | undefined): void {
    if (inside?.name === 'score-timewise') {
      this.measure = element;
      this.position = 0;
      this.measures++;
      countBars(this.measures, element);
    } else if (this.part !== undefined) {
      countBars(this.part.bars.length + 1, element);
      this.bar = new BarReader(element, this.part.state, this.notices);
    }
  }

  private closeBar(): void {
    const { bar, part } = this;
    if (bar === undefined || part === undefined) return;
    // A part that is missing in some measures of a timewise score still counts them.
    while (this.measure !== undefined && part.bars.length < this.measures - 1) part.bars.push(EMPTY_BAR);
    part.bars.push(bar.finish());
    this.bar = undefined;
  }

  private partOf(element: XmlElement, position: number): PartInWork {
    const id = element.attributes.id ?? '';
    const known = id === '' ? this.parts[position] : this.parts.find((p) => p.id === id);
    if (known !== undefined) return known;
    if (this.parts.length >= LIMITS.parts) {
      throw new Refused(`The score has more than ${LIMITS.parts} parts.`, element);
    }
    const name = this.named.get(id) ?? [...this.named.values()][this.parts.length] ?? '';
    const made: PartInWork = { id, name, state: newState(), bars: [] };
    this.parts.push(made);
    return made;
  }
}

function newState(): PartState {
  return {
    divisions: 1,
    staves: 1,
    transpositions: new Map(),
    clefs: new Map(),
    unpitched: new Map(),
    ending: undefined,
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
  tempos: [],
  figures: [],
  repeats: [],
  fermatas: [],
};

function countBars(bars: number, element: XmlElement): void {
  if (bars > LIMITS.bars) {
    throw new Refused(
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
