/** What a MusicXML note element says, taken apart in one pass over its children. */
import { lyricsOf } from './lyrics.ts';
import { type Exact, notatedLength, wholeNumber } from './numbers.ts';
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
  readonly lyrics: readonly string[];
  /** The length that note value, dots and tuplet stand for, where there is a note value. */
  readonly notated: Exact | undefined;
}

const NO_LYRICS: readonly string[] = [];

export function readNote(element: XmlElement): WrittenNote {
  let chord = false;
  let grace = false;
  let unpitched = false;
  let hidden = element.attributes['print-object'] === 'no';
  let voice = '';
  let stem: 'up' | 'down' | undefined;
  let tieStart = false;
  let tieStop = false;
  let fermata = false;
  let hasLyrics = false;
  let type: string | undefined;
  let dots = 0;
  let modification: XmlElement | undefined;
  let pitch: XmlElement | undefined;
  let rest: XmlElement | undefined;
  let duration: XmlElement | undefined;
  let staff: XmlElement | undefined;
  for (const child of element.children) {
    switch (child.name) {
      case 'pitch':
        pitch = child;
        hidden ||= child.attributes['print-object'] === 'no';
        break;
      case 'rest':
        rest = child;
        break;
      case 'duration':
        duration = child;
        break;
      case 'staff':
        staff = child;
        break;
      case 'chord':
        chord = true;
        break;
      case 'grace':
        grace = true;
        break;
      case 'cue':
        hidden = true;
        break;
      case 'unpitched':
        unpitched = true;
        break;
      case 'voice':
        voice = child.text.trim();
        break;
      case 'type':
        type = child.text.trim();
        break;
      case 'dot':
        dots++;
        break;
      case 'time-modification':
        modification = child;
        break;
      case 'stem': {
        const way = child.text.trim();
        if (way === 'up' || way === 'down') stem = way;
        break;
      }
      case 'tie':
        tieStart ||= startsTie(child);
        tieStop ||= child.attributes.type === 'stop';
        break;
      case 'notations':
        for (const mark of child.children) {
          if (mark.name === 'fermata') fermata = true;
          if (mark.name !== 'tied') continue;
          tieStart ||= startsTie(mark);
          tieStop ||= mark.attributes.type === 'stop';
        }
        break;
      case 'lyric':
        hasLyrics = true;
        break;
    }
  }
  return {
    pitch,
    rest,
    duration,
    staff,
    chord,
    grace,
    unpitched,
    hidden,
    voice,
    stem,
    tieStart,
    tieStop,
    fermata,
    lyrics: hasLyrics ? lyricsOf(element) : NO_LYRICS,
    notated: type === undefined ? undefined : lengthFrom(type, dots, modification),
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
