/** Reads one bar of one part, element by element as they come. */

import { Refused } from '../refusal/refusal.ts';
import type { Pitch } from '../score/pitch.ts';
import type { KeySignature } from '../score/score.ts';
import { tempoWithin } from '../score/tempo.ts';
import { CROTCHET, type Metre, type Ticks } from '../score/time.ts';
import { readFigures } from './figures.ts';
import { LIMITS } from './limits.ts';
import { readNote } from './note.ts';
import {
  compare,
  decimal,
  type Exact,
  exact,
  minus,
  nearestTick,
  notatedLength,
  plus,
  wholeNumber,
  ZERO,
} from './numbers.ts';
import {
  AS_WRITTEN,
  readKey,
  readMetre,
  readPitch,
  readTransposition,
  type Transposition,
} from './pitches.ts';
import { quoted } from './quoted.ts';
import type { SourceBar, SourceFigure, SourceNote, Span } from './source.ts';
import { childOf, childrenOf, textOf, type XmlElement } from './xml.ts';

/** What a part carries from bar to bar. */
export interface PartState {
  divisions: number;
  staves: number;
  /** By staff; 0 stands for all of them. */
  readonly transpositions: Map<number, Transposition>;
  readonly clefs: Map<number, { sign: string; octaves: number }>;
  readonly unpitched: Map<number, 'tablature' | 'percussion'>;
  /** The ending that is open. */
  ending: string | undefined;
}

/** What a bar's reader tells the score's. */
export interface Notices {
  readonly remark: (message: string, bar: string, line: number) => void;
  /** Called for each note and rest; throws where there are too many. */
  readonly count: (element: XmlElement) => void;
}

type Writable<T> = { -readonly [K in keyof T]: T[K] };

const mostCrotchets = (): string => LIMITS.crotchets.toLocaleString('en-GB');

/** Stands for the end of the bar until it is known. */
const BAR_END = -1;

/** Takes the elements of a measure in their order and gives back the bar. */
export class BarReader {
  private readonly number: string;
  private readonly implicit: boolean;
  private readonly notes: SourceNote[] = [];
  private readonly keys: { at: Ticks; staff: number; key: KeySignature }[] = [];
  private readonly metres: { at: Ticks; metre: Metre | 'free' }[] = [];
  private readonly tempos: { at: Ticks; tempo: number }[] = [];
  private readonly figures: SourceFigure[] = [];
  private readonly repeats: { at: Ticks; direction: 'forward' | 'backward' }[] = [];
  private readonly fermatas: Ticks[] = [];
  /** Grace notes that wait for their note, by staff and voice. */
  private readonly grace = new Map<string, readonly Pitch[]>();
  private cursor: Exact = ZERO;
  private furthest: Exact = ZERO;
  /** Where the last note began, for the other notes of its chord. */
  private onset: Exact = ZERO;
  private figureAt: Exact = ZERO;
  /** The last note that was no chord note. */
  private head: { readonly span: Span; readonly fermata: boolean } | undefined;
  private ending: string | undefined;
  private counted = 0;
  private changes = 0;

  constructor(
    measure: XmlElement,
    private readonly part: PartState,
    private readonly notices: Notices,
  ) {
    this.number = (measure.attributes.number ?? '').trim().slice(0, 20);
    this.implicit = measure.attributes.implicit === 'yes';
    this.ending = part.ending;
  }

  /** @throws {Refused} for a number out of range or too much in one bar. */
  read(element: XmlElement): void {
    switch (element.name) {
      case 'note':
        this.readNote(element);
        break;
      case 'attributes':
        this.readAttributes(element);
        break;
      case 'backup': {
        const back = minus(this.cursor, this.lengthOf(element, childOf(element, 'duration')));
        this.moveTo(back.n < 0 ? ZERO : back);
        break;
      }
      case 'forward':
        this.moveTo(plus(this.cursor, this.lengthOf(element, childOf(element, 'duration'))));
        break;
      case 'barline':
        this.readBarline(element);
        break;
      case 'direction':
      case 'sound':
        this.readTempo(element);
        break;
      case 'figured-bass':
        this.readFigures(element);
        break;
    }
  }

  /** @throws {Refused} for a bar without end. */
  finish(): SourceBar {
    const length = nearestTick(this.furthest);
    if (length > LIMITS.crotchets * CROTCHET) {
      throw new Refused(`Bar ${this.number || '?'} is longer than ${mostCrotchets()} crotchets.`);
    }
    return {
      number: this.number,
      implicit: this.implicit,
      length,
      notes: this.notes,
      keys: this.keys,
      metres: this.metres,
      tempos: this.tempos,
      figures: this.figures,
      repeats: this.repeats.map(({ at, direction }) => ({ at: at === BAR_END ? length : at, direction })),
      ...(this.ending === undefined ? {} : { ending: this.ending }),
      fermatas: this.fermatas.map((at) => (at === BAR_END ? length : at)),
    };
  }

  private moveTo(to: Exact): void {
    this.cursor = to;
    this.figureAt = to;
    if (compare(to, this.furthest) > 0) this.furthest = to;
  }

  private limit(count: number, most: number, what: string, element: XmlElement): void {
    if (count > most) throw new Refused(`Bar ${this.number || '?'} has more than ${most} ${what}.`, element);
  }

  private lengthOf(element: XmlElement, given: XmlElement | undefined, notated?: Exact): Exact {
    if (given === undefined) {
      if (notated !== undefined) return notated;
      throw new Refused(`A ${element.name} has no duration.`, element);
    }
    const value = decimal(given.text);
    if (value === undefined || value.n < 0) {
      throw new Refused(`A duration is ${quoted(given.text)}, where a positive number is needed.`, given);
    }
    const { divisions } = this.part;
    const ticks = exact(value.n * CROTCHET, value.d * divisions);
    if (ticks.n > LIMITS.crotchets * CROTCHET * ticks.d) {
      throw new Refused(`A duration is longer than ${mostCrotchets()} crotchets.`, given);
    }
    // Some programs round the durations of tuplets; the written value is then the exact one.
    if (notated !== undefined && notated.d === 1 && compare(ticks, notated) !== 0) {
      const off = minus(ticks, notated);
      if (compare({ n: Math.abs(off.n), d: off.d }, exact(CROTCHET, divisions)) < 0) return notated;
    }
    return ticks;
  }

  private readNote(element: XmlElement): void {
    const { part, notes } = this;
    const written = readNote(element);
    const { chord, hidden } = written;
    const voice = (chord ? notes.at(-1)?.voice : undefined) ?? written.voice;
    const staff =
      written.staff === undefined ? 1 : wholeNumber(written.staff, 1, LIMITS.staves, 'A staff number');
    part.staves = Math.max(part.staves, staff);
    const by = part.transpositions.get(staff) ?? part.transpositions.get(0) ?? AS_WRITTEN;
    const read = written.pitch && readPitch(written.pitch, by);
    const lane = `${staff} ${voice}`;
    if (written.grace) {
      // Of a chord of grace notes the first is kept.
      if (read && !hidden && !chord) this.grace.set(lane, [...(this.grace.get(lane) ?? []), read.pitch]);
      return;
    }
    this.notices.count(element);
    this.limit(++this.counted, LIMITS.notesInBar, 'notes', element);
    const length = this.lengthOf(element, written.duration, written.notated);
    const start = chord ? this.onset : this.cursor;
    const end = plus(start, length);
    const span = { inside: element.inside, until: element.until };
    if (!chord) {
      this.onset = start;
      this.head = { span, fermata: written.fermata };
      this.moveTo(end);
    }
    if (written.unpitched) part.unpitched.set(staff, part.unpitched.get(staff) ?? 'percussion');
    if (!hidden && read === undefined && written.rest === undefined) return;
    const at = nearestTick(start);
    // Not printed, so not written; but it shows that this staff has such a voice.
    const kind = hidden ? 'hidden' : read ? 'note' : 'rest';
    const duration = nearestTick(end) - at;
    const note: Writable<SourceNote> = { kind, at, duration, staff, voice, line: element.line, span };
    notes.push(note);
    if (chord) {
      note.chord = true;
      if (this.head !== undefined) note.head = this.head.span;
    }
    if (hidden) return;
    if (start.d !== 1 || end.d !== 1) note.inexact = true;
    if (written.stem !== undefined) note.stem = written.stem;
    // One on the first note of a chord is for all its voices.
    if (written.fermata || (chord && this.head?.fermata)) note.fermata = true;
    if (written.rest?.attributes.measure === 'yes') note.wholeBar = true;
    if (read === undefined) return;
    note.pitch = read.pitch;
    if (read.odd !== undefined) note.oddPitch = read.odd;
    if (written.tieStart) note.tieStart = true;
    if (written.tieStop) note.tieStop = true;
    if (written.lyrics.length > 0) note.lyrics = written.lyrics;
    if (written.phrase !== undefined) note.phrase = written.phrase;
    const before = this.grace.get(lane);
    if (before === undefined) return;
    note.grace = before;
    this.grace.delete(lane);
  }

  private readAttributes(element: XmlElement): void {
    const { part } = this;
    // The key is written before the transposition that it is to be read with.
    for (const child of childrenOf(element, 'transpose')) {
      part.transpositions.set(staffOf(child, 0), readTransposition(child));
    }
    for (const child of element.children) {
      switch (child.name) {
        case 'divisions':
          part.divisions = divisionsOf(child);
          break;
        case 'staves':
          part.staves = Math.max(part.staves, wholeNumber(child, 1, LIMITS.staves, 'The number of staves'));
          break;
        case 'clef':
          this.readClef(child);
          break;
        case 'key':
          this.limit(++this.changes, LIMITS.changesInBar, 'changes of key or metre', child);
          this.readKey(child);
          break;
        case 'time': {
          this.limit(++this.changes, LIMITS.changesInBar, 'changes of key or metre', child);
          const at = nearestTick(this.cursor);
          if (!this.metres.some((m) => m.at === at)) this.metres.push({ at, metre: readMetre(child) });
          break;
        }
      }
    }
  }

  private readClef(clef: XmlElement): void {
    const staff = staffOf(clef, 1);
    const sign = textOf(clef, 'sign') ?? '';
    const change = childOf(clef, 'clef-octave-change');
    if (!this.part.clefs.has(staff)) {
      const octaves = change ? wholeNumber(change, -4, 4, "A clef's octave change") : 0;
      this.part.clefs.set(staff, { sign, octaves });
    }
    if (sign === 'TAB') this.part.unpitched.set(staff, 'tablature');
  }

  private readKey(element: XmlElement): void {
    const { transpositions } = this.part;
    const staff = staffOf(element, 0);
    const by = transpositions.get(staff || 1) ?? transpositions.get(0) ?? AS_WRITTEN;
    const { key, odd } = readKey(element, by);
    if (odd) {
      this.notices.remark(
        `The file has ${odd}; it is read as a signature without sharps or flats. The notes keep their own accidentals.`,
        this.number,
        element.line,
      );
    }
    this.keys.push({ at: nearestTick(this.cursor), staff, key });
  }

  private readBarline(element: XmlElement): void {
    this.limit(++this.changes, LIMITS.changesInBar, 'barlines', element);
    const location = element.attributes.location ?? 'right';
    const at = location === 'left' ? 0 : location === 'middle' ? nearestTick(this.cursor) : BAR_END;
    const direction = childOf(element, 'repeat')?.attributes.direction;
    if (direction === 'forward' || direction === 'backward') this.repeats.push({ at, direction });
    if (childOf(element, 'fermata')) this.fermatas.push(at);
    const mark = childOf(element, 'ending');
    if (mark === undefined) return;
    if (mark.attributes.type === 'start') {
      this.ending = (mark.attributes.number ?? '').trim().slice(0, 20) || undefined;
      this.part.ending = this.ending;
    } else {
      this.part.ending = undefined;
    }
  }

  private readTempo(element: XmlElement): void {
    const sound = element.name === 'sound' ? element : childOf(element, 'sound');
    const given = decimal(sound?.attributes.tempo ?? '');
    if (given && given.n > 0 && this.takeTempo(given.n / given.d)) return;
    for (const type of childrenOf(element, 'direction-type')) {
      const mark = childOf(type, 'metronome');
      const unit = mark && textOf(mark, 'beat-unit');
      const perMinute = mark && decimal(textOf(mark, 'per-minute') ?? '');
      const length = unit && notatedLength(unit, childrenOf(mark, 'beat-unit-dot').length, 1, 1);
      if (perMinute && perMinute.n > 0 && length) {
        if (this.takeTempo((perMinute.n / perMinute.d) * (length.n / length.d / CROTCHET))) return;
      }
    }
  }

  /** What can't be a tempo is no mark. */
  private takeTempo(crotchets: number): boolean {
    const tempo = tempoWithin(crotchets);
    if (tempo === undefined) return false;
    // A ritardando may be written out in hundreds of marks.
    if (this.tempos.length === LIMITS.changesInBar) this.tempos.pop();
    this.tempos.push({ at: nearestTick(this.cursor), tempo });
    return true;
  }

  private readFigures(element: XmlElement): void {
    const figures = readFigures(element);
    this.limit(this.figures.length, LIMITS.figuresInBar, 'figures', element);
    if (figures.length > 0) this.figures.push({ at: nearestTick(this.figureAt), figures });
    // Several figures under one note follow one another, each as long as it says.
    const duration = childOf(element, 'duration');
    if (duration) this.figureAt = plus(this.figureAt, this.lengthOf(element, duration));
  }
}

function staffOf(element: XmlElement, otherwise: number): number {
  const text = element.attributes.number;
  if (text === undefined) return otherwise;
  return wholeNumber({ ...element, text }, 1, LIMITS.staves, 'A staff number');
}

function divisionsOf(element: XmlElement): number {
  const value = decimal(element.text);
  if (value === undefined || value.d !== 1 || value.n < 1 || value.n > LIMITS.divisions) {
    throw new Refused(
      `The file counts ${quoted(element.text)} divisions to a crotchet, where a whole number from 1 is needed.`,
      element,
    );
  }
  return value.n;
}
