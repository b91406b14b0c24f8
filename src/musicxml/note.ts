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

export function readNote(element: XmlElement): WrittenNote {
  const children = childrenByName(element);
  const first = (name: string): XmlElement | undefined => children.get(name)?.[0];
  const last = (name: string): XmlElement | undefined => children.get(name)?.at(-1);
  const pitch = last('pitch');
  const type = last('type')?.text.trim();
  const dots = children.get('dot')?.length ?? 0;
  return {
    pitch,
    rest: last('rest'),
    duration: last('duration'),
    staff: last('staff'),
    chord: children.has('chord'),
    grace: children.has('grace'),
    unpitched: children.has('unpitched'),
    hidden: isHidden(element) || children.has('cue') || (pitch !== undefined && isHidden(pitch)),
    voice: last('voice')?.text.trim() ?? '',
    stem: stemOf(children.get('stem') ?? []),
    ...tiesAndMarks(children.get('tie') ?? [], children.get('notations') ?? []),
    lyrics: first('lyric') === undefined ? NO_LYRICS : lyricsOf(element),
    notated: type === undefined ? undefined : lengthFrom(type, dots, last('time-modification')),
  };
}

function childrenByName({ children }: XmlElement): ReadonlyMap<string, readonly XmlElement[]> {
  const byName = new Map<string, XmlElement[]>();
  for (const child of children) {
    const known = byName.get(child.name);
    if (known === undefined) byName.set(child.name, [child]);
    else known.push(child);
  }
  return byName;
}

function isHidden({ attributes }: XmlElement): boolean {
  return attributes['print-object'] === 'no';
}

function stemOf(stems: readonly XmlElement[]): 'up' | 'down' | undefined {
  const way = stems.map(({ text }) => text.trim()).findLast((text) => text === 'up' || text === 'down');
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
