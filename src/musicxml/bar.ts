/** Reads one bar of one part, element by element as they come. */
import type { Pitch } from '../score/pitch.ts';
import type { KeySignature } from '../score/score.ts';
import { CROTCHET, type Metre, type Ticks } from '../score/time.ts';
import { readFigures } from './figures.ts';
import { LIMITS } from './limits.ts';
import { lyricsOf } from './lyrics.ts';
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
import { quoted, Refusal } from './refusal.ts';
import type { SourceBar, SourceFigure, SourceNote } from './source.ts';
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

export interface BarReader {
  readonly read: (element: XmlElement) => void;
  readonly finish: () => SourceBar;
}

/** What a bar's reader tells the score's. */
export interface Notices {
  readonly remark: (message: string, bar: string, line: number) => void;
  readonly tempo: (crotchetsAMinute: number) => void;
  /** Called for each note and rest; throws where there are too many. */
  readonly count: (element: XmlElement) => void;
}

export function readBar(measure: XmlElement, part: PartState, notices: Notices): BarReader {
  const number = (measure.attributes.number ?? '').trim().slice(0, 20);
  const notes: SourceNote[] = [];
  const keys: { at: Ticks; staff: number; key: KeySignature }[] = [];
  const metres: { at: Ticks; metre: Metre | 'free' }[] = [];
  const figures: SourceFigure[] = [];
  const repeats: { at: Ticks; direction: 'forward' | 'backward' }[] = [];
  const fermatas: Ticks[] = [];
  let cursor: Exact = ZERO;
  let furthest: Exact = ZERO;
  /** Where the last note began, for a chord's other notes; and where the next figure stands. */
  let onset: Exact = ZERO;
  let figureAt: Exact = ZERO;
  let ending = part.ending;
  const grace = new Map<string, Pitch[]>();

  const counted = { notes: 0, changes: 0, figures: 0 };
  const limit = (count: number, most: number, what: string, element: XmlElement) => {
    if (count > most) throw new Refusal(`Bar ${number || '?'} has more than ${most} ${what}.`, element);
  };
  const moveTo = (to: Exact) => {
    cursor = to;
    figureAt = to;
    if (compare(to, furthest) > 0) furthest = to;
  };

  const lengthOf = (element: XmlElement): Exact => {
    const given = childOf(element, 'duration');
    const notated = element.name === 'note' ? notatedLengthOf(element) : undefined;
    if (given === undefined) {
      if (notated !== undefined) return notated;
      throw new Refusal(`A ${element.name} has no duration.`, element);
    }
    const value = decimal(given.text);
    if (value === undefined || value.n < 0) {
      throw new Refusal(`A duration is ${quoted(given.text)}, where a positive number is needed.`, given);
    }
    const ticks = exact(value.n * CROTCHET, value.d * part.divisions);
    if (ticks.n > LIMITS.crotchets * CROTCHET * ticks.d) {
      throw new Refusal(`A duration is longer than ${LIMITS.crotchets} crotchets.`, given);
    }
    // Some programs round the durations of tuplets; the written value is then the exact one.
    if (notated !== undefined && notated.d === 1 && compare(ticks, notated) !== 0) {
      const off = minus(ticks, notated);
      const division = exact(CROTCHET, part.divisions);
      if (compare({ n: Math.abs(off.n), d: off.d }, division) < 0) return notated;
    }
    return ticks;
  };

  const readNote = (element: XmlElement) => {
    const chord = childOf(element, 'chord') !== undefined;
    const voice = (chord ? notes.at(-1)?.voice : undefined) ?? textOf(element, 'voice') ?? '';
    const staffElement = childOf(element, 'staff');
    const staff =
      staffElement === undefined ? 1 : wholeNumber(staffElement, 1, LIMITS.staves, 'A staff number');
    part.staves = Math.max(part.staves, staff);
    const by = part.transpositions.get(staff) ?? part.transpositions.get(0) ?? AS_WRITTEN;
    const pitchElement = childOf(element, 'pitch');
    const read = pitchElement && readPitch(pitchElement, by);
    const hidden =
      childOf(element, 'cue') !== undefined ||
      element.attributes['print-object'] === 'no' ||
      childOf(element, 'pitch')?.attributes['print-object'] === 'no';
    if (childOf(element, 'grace')) {
      // Of a chord of grace notes the first is kept.
      if (read && !hidden && !chord) {
        const lane = `${staff} ${voice}`;
        grace.set(lane, [...(grace.get(lane) ?? []), read.pitch]);
      }
      return;
    }
    notices.count(element);
    limit(++counted.notes, LIMITS.notesInBar, 'notes', element);
    const length = lengthOf(element);
    const start = chord ? onset : cursor;
    const end = plus(start, length);
    if (!chord) {
      onset = start;
      moveTo(end);
    }
    if (childOf(element, 'unpitched')) part.unpitched.set(staff, part.unpitched.get(staff) ?? 'percussion');
    if (hidden) {
      // Not printed, so not written; but it shows that this staff has such a voice.
      notes.push({
        kind: 'hidden',
        at: nearestTick(start),
        duration: nearestTick(end) - nearestTick(start),
        staff,
        voice,
        line: element.line,
        ...(chord ? { chord: true as const } : {}),
      });
      return;
    }
    if (read === undefined && !childOf(element, 'rest')) return;

    const at = nearestTick(start);
    const notations = childrenOf(element, 'notations');
    const has = (name: string) => notations.some((n) => childOf(n, name) !== undefined);
    const ties = [...childrenOf(element, 'tie'), ...notations.flatMap((n) => childrenOf(n, 'tied'))];
    const stem = textOf(element, 'stem');
    const rest = childOf(element, 'rest');
    const lane = `${staff} ${voice}`;
    const before = read && grace.get(lane);
    if (before) grace.delete(lane);
    const lyrics = lyricsOf(element);
    notes.push({
      kind: read ? 'note' : 'rest',
      at,
      duration: nearestTick(end) - at,
      ...(start.d === 1 && end.d === 1 ? {} : { inexact: true as const }),
      ...(read ? { pitch: read.pitch } : {}),
      ...(read?.odd === undefined ? {} : { oddPitch: read.odd }),
      staff,
      voice,
      ...(chord ? { chord: true as const } : {}),
      ...(stem === 'up' || stem === 'down' ? { stem } : {}),
      ...(ties.some((tie) => tie.attributes.type === 'start' || tie.attributes.type === 'continue')
        ? { tieStart: true as const }
        : {}),
      ...(ties.some((tie) => tie.attributes.type === 'stop') ? { tieStop: true as const } : {}),
      ...(has('fermata') ? { fermata: true as const } : {}),
      ...(lyrics.length > 0 ? { lyrics } : {}),
      ...(before ? { grace: before } : {}),
      ...(rest?.attributes.measure === 'yes' ? { wholeBar: true as const } : {}),
      line: element.line,
    });
  };

  const readAttributes = (element: XmlElement) => {
    const at = nearestTick(cursor);
    // The key is written before the transposition that it is to be read with.
    for (const child of childrenOf(element, 'transpose')) {
      part.transpositions.set(staffOf(child, 0), readTransposition(child));
    }
    for (const child of element.children) {
      if (child.name === 'divisions') {
        const value = decimal(child.text);
        if (value === undefined || value.d !== 1 || value.n < 1 || value.n > LIMITS.divisions) {
          throw new Refusal(
            `The file counts ${quoted(child.text)} divisions to a crotchet, where a whole number from 1 is needed.`,
            child,
          );
        }
        part.divisions = value.n;
      } else if (child.name === 'staves') {
        part.staves = Math.max(part.staves, wholeNumber(child, 1, LIMITS.staves, 'The number of staves'));
      } else if (child.name === 'clef') {
        const staff = staffOf(child, 1);
        const sign = textOf(child, 'sign') ?? '';
        const change = childOf(child, 'clef-octave-change');
        if (!part.clefs.has(staff)) {
          part.clefs.set(staff, {
            sign,
            octaves: change ? wholeNumber(change, -4, 4, "A clef's octave change") : 0,
          });
        }
        if (sign === 'TAB') part.unpitched.set(staff, 'tablature');
      } else if (child.name === 'key') {
        limit(++counted.changes, LIMITS.changesInBar, 'changes of key or metre', child);
        const staff = staffOf(child, 0);
        const by = part.transpositions.get(staff || 1) ?? part.transpositions.get(0) ?? AS_WRITTEN;
        const { key, odd } = readKey(child, by);
        if (odd) {
          notices.remark(
            `The file has ${odd}; it is read as a signature without sharps or flats. The notes keep their own accidentals.`,
            number,
            child.line,
          );
        }
        keys.push({ at, staff, key });
      } else if (child.name === 'time') {
        limit(++counted.changes, LIMITS.changesInBar, 'changes of key or metre', child);
        if (!metres.some((m) => m.at === at)) metres.push({ at, metre: readMetre(child) });
      }
    }
  };

  const readBarline = (element: XmlElement) => {
    limit(++counted.changes, LIMITS.changesInBar, 'barlines', element);
    const location = element.attributes.location ?? 'right';
    const at = location === 'left' ? 0 : location === 'middle' ? nearestTick(cursor) : -1;
    const direction = childOf(element, 'repeat')?.attributes.direction;
    if (direction === 'forward' || direction === 'backward') repeats.push({ at, direction });
    if (childOf(element, 'fermata')) fermatas.push(at);
    const mark = childOf(element, 'ending');
    if (mark === undefined) return;
    if (mark.attributes.type === 'start') {
      ending = (mark.attributes.number ?? '').trim().slice(0, 20) || undefined;
      part.ending = ending;
    } else {
      part.ending = undefined;
    }
  };

  const readTempo = (element: XmlElement) => {
    const sound = element.name === 'sound' ? element : childOf(element, 'sound');
    const given = decimal(sound?.attributes.tempo ?? '');
    if (given && given.n > 0) notices.tempo(given.n / given.d);
    for (const type of childrenOf(element, 'direction-type')) {
      const mark = childOf(type, 'metronome');
      const unit = mark && textOf(mark, 'beat-unit');
      const perMinute = mark && decimal(textOf(mark, 'per-minute') ?? '');
      const length = unit && notatedLength(unit, childrenOf(mark, 'beat-unit-dot').length, 1, 1);
      if (perMinute && perMinute.n > 0 && length) {
        notices.tempo((perMinute.n / perMinute.d) * (length.n / length.d / CROTCHET));
      }
    }
  };

  return {
    read: (element) => {
      switch (element.name) {
        case 'note':
          return readNote(element);
        case 'attributes':
          return readAttributes(element);
        case 'backup': {
          const back = minus(cursor, lengthOf(element));
          return moveTo(back.n < 0 ? ZERO : back);
        }
        case 'forward':
          return moveTo(plus(cursor, lengthOf(element)));
        case 'barline':
          return readBarline(element);
        case 'direction':
        case 'sound':
          return readTempo(element);
        case 'figured-bass': {
          limit(++counted.figures, LIMITS.figuresInBar, 'figures', element);
          const read = readFigures(element);
          if (read.length > 0) figures.push({ at: nearestTick(figureAt), figures: read });
          // Several figures under one note follow one another, each as long as it says.
          const own = childOf(element, 'duration') ? lengthOf(element) : ZERO;
          figureAt = plus(figureAt, own);
          return;
        }
      }
    },
    finish: () => {
      const length = nearestTick(furthest);
      const settle = (at: Ticks) => (at === -1 ? length : at);
      return {
        number,
        implicit: measure.attributes.implicit === 'yes',
        length,
        notes,
        keys,
        metres,
        figures,
        repeats: repeats.map((repeat) => ({ ...repeat, at: settle(repeat.at) })),
        ...(ending === undefined ? {} : { ending }),
        fermatas: fermatas.map(settle),
      };
    },
  };
}

function staffOf(element: XmlElement, otherwise: number): number {
  const text = element.attributes.number;
  if (text === undefined) return otherwise;
  return wholeNumber({ ...element, text }, 1, LIMITS.staves, 'A staff number');
}

function notatedLengthOf(note: XmlElement): Exact | undefined {
  const type = textOf(note, 'type');
  if (type === undefined) return undefined;
  const change = childOf(note, 'time-modification');
  const actual = change && childOf(change, 'actual-notes');
  const normal = change && childOf(change, 'normal-notes');
  return notatedLength(
    type,
    childrenOf(note, 'dot').length,
    actual ? wholeNumber(actual, 1, 100, 'The number of notes in a tuplet') : 1,
    normal ? wholeNumber(normal, 1, 100, 'The number of notes a tuplet replaces') : 1,
  );
}
