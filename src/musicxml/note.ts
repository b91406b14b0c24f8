/** What a MusicXML note element says, taken apart in one pass over its children. */
import { lyricsOf } from './lyrics.ts';
import { type Exact, notatedLength, wholeNumber } from './numbers.ts';
import { phraseIn } from './phrase-marks.ts';
import { childOf, type XmlElement } from './xml.ts';

export interface WrittenNote {
  readonly chord: boolean;
  readonly grace: boolean;
  readonly unpitched: boolean;
  /** A cue note, or one that is not printed. */
  readonly hidden: boolean;
  readonly pitch: XmlElement | undefined;
  readonly rest: XmlElement | undefined;
  readonly duration: XmlElement | undefined;
  readonly staff: XmlElement | undefined;
  readonly voice: string;
  readonly stem: 'up' | 'down' | undefined;
  readonly tieStart: boolean;
  readonly tieStop: boolean;
  readonly fermata: boolean;
  readonly phrase: 'ends' | 'goes on' | undefined;
  readonly lyrics: readonly string[];
  /** The length that note value, dots and tuplet stand for, where there is a note value. */
  readonly notated: Exact | undefined;
}

const NO_LYRICS: readonly string[] = [];
const NONE: readonly XmlElement[] = [];
const UNMARKED = { tieStart: false, tieStop: false, fermata: false, phrase: undefined };

/** What was met among the children of a note; of most the last one counts. */
interface Met {
  pitch?: XmlElement;
  rest?: XmlElement;
  duration?: XmlElement;
  staff?: XmlElement;
  voice?: XmlElement;
  type?: XmlElement;
  modification?: XmlElement;
  stem: 'up' | 'down' | undefined;
  chord: boolean;
  grace: boolean;
  unpitched: boolean;
  cue: boolean;
  lyrics: boolean;
  dots: number;
  /** Undefined where there are none, as for most notes. */
  ties?: XmlElement[];
  notations?: XmlElement[];
}

export function readNote(element: XmlElement): WrittenNote {
  const met = childrenOfNote(element);
  const type = met.type?.text.trim();
  const { ties = NONE, notations = NONE, pitch } = met;
  return {
    pitch,
    rest: met.rest,
    duration: met.duration,
    staff: met.staff,
    chord: met.chord,
    grace: met.grace,
    unpitched: met.unpitched,
    hidden: met.cue || isHidden(element) || (pitch !== undefined && isHidden(pitch)),
    voice: met.voice?.text.trim() ?? '',
    stem: met.stem,
    ...(ties === NONE && notations === NONE ? UNMARKED : tiesAndMarks(ties, notations)),
    lyrics: met.lyrics ? lyricsOf(element) : NO_LYRICS,
    notated: type === undefined ? undefined : lengthFrom(type, met.dots, met.modification),
  };
}

function childrenOfNote({ children }: XmlElement): Met {
  const met: Met = {
    stem: undefined,
    chord: false,
    grace: false,
    unpitched: false,
    cue: false,
    lyrics: false,
    dots: 0,
  };
  for (const child of children) meet(met, child);
  return met;
}

function meet(met: Met, child: XmlElement): void {
  switch (child.name) {
    case 'pitch':
    case 'rest':
    case 'duration':
    case 'staff':
    case 'voice':
    case 'type':
      met[child.name] = child;
      break;
    case 'time-modification':
      met.modification = child;
      break;
    case 'stem':
      met.stem = wayOf(child) ?? met.stem;
      break;
    case 'chord':
    case 'grace':
    case 'unpitched':
    case 'cue':
      met[child.name] = true;
      break;
    case 'lyric':
      met.lyrics = true;
      break;
    case 'dot':
      met.dots++;
      break;
    case 'tie':
      met.ties ??= [];
      met.ties.push(child);
      break;
    case 'notations':
      met.notations ??= [];
      met.notations.push(child);
      break;
  }
}

function isHidden({ attributes }: XmlElement): boolean {
  return attributes['print-object'] === 'no';
}

function wayOf(stem: XmlElement): 'up' | 'down' | undefined {
  const way = stem.text.trim();
  return way === 'up' || way === 'down' ? way : undefined;
}

/** Ties are written twice, as sounds and as signs; either will do. */
function tiesAndMarks(
  ties: readonly XmlElement[],
  notations: readonly XmlElement[],
): Pick<WrittenNote, 'tieStart' | 'tieStop' | 'fermata' | 'phrase'> {
  const marks = notations.flatMap(({ children }) => children);
  const all = [...ties, ...marks.filter(({ name }) => name === 'tied')];
  const said = marks.find(({ name }) => name === 'other-notation');
  return {
    tieStart: all.some(startsTie),
    tieStop: all.some(({ attributes }) => attributes.type === 'stop'),
    fermata: marks.some(({ name }) => name === 'fermata'),
    phrase: said && phraseIn(said.text.trim()),
  };
}

function startsTie(tie: XmlElement): boolean {
  return tie.attributes.type === 'start' || tie.attributes.type === 'continue';
}

function lengthFrom(type: string, dots: number, modification: XmlElement | undefined): Exact | undefined {
  const actual = modification && childOf(modification, 'actual-notes');
  const normal = modification && childOf(modification, 'normal-notes');
  return notatedLength(
    type,
    dots,
    actual ? wholeNumber(actual, 1, 100, 'The number of notes in a tuplet') : 1,
    normal ? wholeNumber(normal, 1, 100, 'The number of notes a tuplet replaces') : 1,
  );
}
