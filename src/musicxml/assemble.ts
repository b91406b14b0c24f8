/** From the lines that were chosen to a score: bars, metres and keys are settled, and silence is judged. */

import { Refused } from '../refusal/refusal.ts';
import { buildScore, type DraftBar, type DraftEvent } from '../score/build.ts';
import { printPitch } from '../score/pitch.ts';
import {
  type ByVoice,
  byVoice,
  type KeySignature,
  type ReaderRemark,
  type Score,
  type SpareNote,
  VOICE_WORDS,
  VOICES,
  type VoiceName,
} from '../score/score.ts';
import { barLength, beatLength, type Metre, type Ticks } from '../score/time.ts';
import { LIMITS } from './limits.ts';
import type { Line } from './lines.ts';
import { metreOfLength } from './pitches.ts';
import { judgeSilence, type Piece, type RawBar } from './silence.ts';
import type { SourceBar, SourceNote, SourceScore } from './source.ts';

type Lines = Readonly<Partial<Record<VoiceName, Line>>>;

/** A bar, or what stands between the barlines inside it. */
interface Stretch {
  readonly source: readonly SourceBar[];
  readonly number: string;
  readonly implicit: boolean;
  /** Into the source's bar. */
  readonly from: Ticks;
  readonly until: Ticks;
  /** One of several parts of a bar. */
  readonly split: boolean;
  readonly metre: Metre;
  readonly key: KeySignature;
  /** Crotchets a minute from here on; left out where it goes on. */
  readonly tempo?: number;
  readonly repeatStart: boolean;
  readonly repeatEnd: boolean;
  readonly ending?: string;
  readonly pieces: Readonly<Record<VoiceName, Piece[]>>;
}

/** A note of the score and the note of the file that it was read from. */
export interface ReadFrom {
  readonly at: Ticks;
  readonly until: Ticks;
  readonly note: SourceNote;
  readonly part: number;
}

export interface Assembled {
  readonly score: Score;
  /** In order of time. */
  readonly readFrom: ByVoice<readonly ReadFrom[]>;
}

/** @throws {Refused} for a pitch or a length that the score can't hold, naming bar and voice. */
export function assemble(source: SourceScore, lines: Lines, remarks: readonly ReaderRemark[]): Assembled {
  const notes = Object.values(lines).reduce((sum, line) => sum + line.notes, 0);
  if (notes > LIMITS.voiceNotes) {
    throw new Refused(
      `The four voices have ${notes.toLocaleString('en-GB')} notes; at most ${LIMITS.voiceNotes.toLocaleString('en-GB')} can be reviewed at once. Split the file into movements or chorales.`,
    );
  }
  const found = stretchesOf(source, lines);
  const stretches = source.explicitSilence ? found : trimUpbeat(found);
  const judged = judgeSilence(
    stretches.map(
      (stretch): RawBar => ({
        length: lengthIn(stretch),
        beat: beatLength(stretch.metre),
        voices: stretch.pieces,
      }),
    ),
    source.explicitSilence,
  );
  const events = byVoice((voice) =>
    eventsOf(
      judged.map((bar) => bar[voice]),
      stretches,
    ),
  );
  const inWork =
    !source.explicitSilence &&
    judged.some((bar) => VOICES.some((voice) => bar[voice].some((p) => p.kind === 'gap')));
  const bars = stretches.map((stretch, index): DraftBar => {
    const sung = VOICES.filter((voice) => judged[index]![voice].some((piece) => piece.kind !== 'gap'));
    const shape = shapeOf(stretches, index, source.explicitSilence);
    // A bar that is too short by itself, in an exercise still in work, waits for its other notes.
    const waits = inWork && shape.less && !shape.halved && !shape.givesBack && !shape.meantShort;
    const short = shape.meantShort || (sung.length === 0 && shape.less && (shape.halved || shape.givesBack));
    return {
      ...(stretch.number === '' ? {} : { number: stretch.number }),
      metre: stretch.metre,
      key: stretch.key,
      ...(stretch.tempo === undefined ? {} : { tempo: stretch.tempo }),
      ...(short ? { short: lengthIn(stretch) } : {}),
      ...(stretch.repeatStart ? { repeatStart: true } : {}),
      ...(stretch.repeatEnd ? { repeatEnd: true } : {}),
      ...(stretch.ending === undefined ? {} : { ending: stretch.ending }),
      figures: figuresIn(stretch),
      voices: Object.fromEntries(
        sung.map((voice) => [voice, { events: events[voice][index]!, closed: !waits }]),
      ),
    };
  });
  const score = buildScore({ title: source.title, bars, remarks });
  return {
    score,
    readFrom: byVoice((voice) => readFrom(voice, lines[voice]?.part ?? 0, judged, score)),
  };
}

function lengthIn({ from, until }: Stretch): Ticks {
  return until - from;
}

/** Why a bar may be shorter than its metre says. */
interface Shape {
  readonly less: boolean;
  /** With a neighbour it makes a whole bar. */
  readonly halved: boolean;
  /** The last bar, which the upbeat fills up. */
  readonly givesBack: boolean;
  readonly meantShort: boolean;
}

function shapeOf(stretches: readonly Stretch[], index: number, explicitSilence: boolean): Shape {
  const stretch = stretches[index]!;
  const length = lengthIn(stretch);
  const full = barLength(stretch.metre);
  const less = length < full;
  const completes = (other: Stretch | undefined) => other !== undefined && lengthIn(other) + length === full;
  const next = stretches[1];
  // A first bar may be the first part of a split one; otherwise a short first bar is an upbeat.
  const opens =
    index === 0 &&
    !stretch.implicit &&
    next !== undefined &&
    (next.split || next.implicit) &&
    completes(next);
  return {
    less,
    halved: completes(stretches[index - 1]) || completes(stretches[index + 1]),
    givesBack: index === stretches.length - 1 && index > 0 && completes(stretches[0]),
    meantShort:
      !opens && (stretch.split || (less && (stretch.implicit || (index === 0 && !explicitSilence)))),
  };
}

function figuresIn({ source, from, until }: Stretch): NonNullable<DraftBar['figures']> {
  return source
    .flatMap((bar) => bar.figures)
    .filter(({ at }) => at >= from && at < until)
    .map(({ at, figures }) => ({ into: at - from, figures }));
}

function readFrom(
  voice: VoiceName,
  part: number,
  judged: readonly ByVoice<readonly Piece[]>[],
  score: Score,
): ReadFrom[] {
  return judged.flatMap((bar, index) =>
    bar[voice].flatMap(({ kind, note, at, duration }) => {
      if (kind !== 'note' || note === undefined) return [];
      const from = score.bars[index]!.at + at;
      return [{ at: from, until: from + duration, note, part }];
    }),
  );
}

function stretchesOf(source: SourceScore, lines: Lines): Stretch[] {
  const own = [...new Set(Object.values(lines).map((line) => line.part))];
  const length = Math.max(0, ...source.parts.map((part) => part.bars.length));
  const stretches: Stretch[] = [];
  const tempoFrom = tempoFollower();
  let metre: Metre = usualMetre(source);
  let key: KeySignature = { fifths: 0 };
  for (let index = 0; index < length; index++) {
    // The parts that sing come first: what they say about the bar counts before what others say.
    const order = [...own, ...source.parts.keys()].filter((part, i, all) => all.indexOf(part) === i);
    const all = order.flatMap((part) => source.parts[part]!.bars[index] ?? []);
    const first = all[0];
    if (first === undefined) continue;
    const end = lengthOf(index, source, lines, own);
    const metres = all.flatMap((bar) => bar.metres);
    const given = metres.find((one) => one.at === 0);
    if (given !== undefined) {
      metre = given.metre === 'free' ? (metreOfLength(end) ?? metre) : given.metre;
    }
    const keys = new Map<Ticks, KeySignature>();
    for (const bar of all) for (const one of bar.keys) if (!keys.has(one.at)) keys.set(one.at, one.key);
    const repeats = all.flatMap((bar) => bar.repeats);
    const backAtStart = repeats.some((r) => r.direction === 'backward' && r.at === 0);
    const before = stretches.at(-1);
    if (backAtStart && before) stretches[stretches.length - 1] = { ...before, repeatEnd: true };
    const until = end > 0 ? end : barLength(metre);
    const pieces = byVoice((voice) => piecesOf(lines[voice], index, until, metre, source.explicitSilence));
    const cuts = [...keys.keys(), ...repeats.map((repeat) => repeat.at)]
      .filter((at, i, list) => at > 0 && at < until && list.indexOf(at) === i)
      .filter(
        (at) => !VOICES.some((v) => pieces[v].some((p) => p.note && p.at < at && p.at + p.duration > at)),
      )
      .sort((a, b) => a - b);
    const edges = [0, ...cuts, until];
    for (const [i, from] of edges.slice(0, -1).entries()) {
      const to = edges[i + 1]!;
      for (const [at, changed] of keys) if (at >= (i === 0 ? 0 : from) && at < to) key = changed;
      const lastOne = i === edges.length - 2;
      const tempo = tempoFrom(all, from, lastOne ? Number.POSITIVE_INFINITY : to);
      stretches.push({
        source: all,
        number: first.number,
        implicit: first.implicit,
        from,
        until: to,
        split: edges.length > 2,
        metre,
        key,
        ...(tempo === undefined ? {} : { tempo }),
        repeatStart: repeats.some((r) => r.direction === 'forward' && r.at === from && from < until),
        repeatEnd: repeats.some((r) => r.direction === 'backward' && (r.at === to || (lastOne && r.at > to))),
        ...(first.ending === undefined ? {} : { ending: first.ending }),
        pieces: byVoice((voice) => clipped(pieces[voice], from, to)),
      });
    }
    const change = metres.find((one) => one.at > 0);
    if (change !== undefined && change.metre !== 'free') metre = change.metre;
  }
  return stretches;
}

/**
 * Goes through the stretches in order and says at which tempo each begins, where it is told: by the first part that
 * tells any. A mark inside a stretch holds from the next one on, in the very first from its beginning.
 */
function tempoFollower(): (bars: readonly SourceBar[], from: Ticks, until: Ticks) => number | undefined {
  let opening = true;
  let waiting: number | undefined;
  return (bars, from, until) => {
    const marks = bars.find((bar) => bar.tempos.length > 0)?.tempos ?? [];
    const here = marks.filter(({ at }) => at >= from && at < until);
    const first = here.find(({ at }) => opening || at === from);
    const tempo = first?.tempo ?? waiting;
    waiting = here.findLast((mark) => mark !== first && mark.at > from)?.tempo;
    opening = false;
    return tempo;
  };
}

/** The metre to begin with where the file gives none: the length most bars have. */
function usualMetre(source: SourceScore): Metre {
  const counts = new Map<Ticks, number>();
  for (const bar of source.parts[0]?.bars ?? []) {
    if (bar.length > 0) counts.set(bar.length, (counts.get(bar.length) ?? 0) + 1);
  }
  const [most] = [...counts].sort((a, b) => b[1] - a[1] || b[0] - a[0]);
  return metreOfLength(most?.[0] ?? 0) ?? { beats: 4, unit: 4 };
}

/** How long a bar is in the file. A rest "for the whole bar" is as long as the bar, whatever number it carries. */
function lengthOf(index: number, source: SourceScore, lines: Lines, own: readonly number[]): Ticks {
  const bars = own.flatMap((part) => source.parts[part]!.bars[index] ?? []);
  const nominal = bars.some((bar) => bar.notes.some((note) => note.wholeBar));
  const sung = Math.max(
    0,
    ...Object.values(lines).flatMap((line) =>
      (line.bars[index] ?? []).filter((n) => !n.wholeBar).map((n) => n.at + n.duration),
    ),
  );
  const whole = Math.max(0, ...bars.map((bar) => bar.length));
  return nominal && sung > 0 && bars.some((bar) => bar.implicit) ? sung : whole;
}

/**
 * A voice's bar as pieces without holes between them, up to the end of the bar; where the file tells by itself what is
 * not yet written, a voice that stops short of that is a bar counted wrongly and stays so.
 */
function piecesOf(
  line: Line | undefined,
  index: number,
  until: Ticks,
  metre: Metre,
  explicit: boolean,
): Piece[] {
  const staff = line === undefined ? '' : `${line.part}.${line.staff}`;
  const pieces: Piece[] = [];
  const notes = line?.bars[index] ?? [];
  // A voice that is too long does not make the others too short.
  const enough = Math.min(until, barLength(metre));
  let at = 0;
  let end = 0;
  for (const note of notes) {
    const start = note.wholeBar ? 0 : note.at;
    if (start > at) pieces.push({ kind: 'hole', at, duration: start - at, staff });
    const duration = note.wholeBar ? until : note.duration;
    if (note.kind === 'hidden') pieces.push({ kind: 'hole', at: start, duration, staff });
    else pieces.push({ kind: note.kind, at: start, duration, staff, note });
    at = start + duration;
    if (note.kind !== 'hidden') end = at;
  }
  if (explicit && notes.length > 0) return pieces;
  if (at < enough) pieces.push({ kind: 'hole', at, duration: enough - at, staff });
  return clipped(pieces, 0, Math.max(end, enough));
}

/** What of the pieces lies between two times, counted from the first of them. */
function clipped(pieces: readonly Piece[], from: Ticks, to: Ticks): Piece[] {
  const kept: Piece[] = [];
  for (const piece of pieces) {
    const at = Math.max(piece.at, from);
    const duration = Math.min(piece.at + piece.duration, Math.max(to, 0)) - at;
    if (duration <= 0) continue;
    const whole = from === 0 && duration === piece.duration;
    kept.push(whole ? piece : { ...piece, at: at - from, duration });
  }
  return kept;
}

/**
 * A first bar that is silent for half its length or more was filled up with rests before an upbeat, and becomes that
 * upbeat (a shorter rest before the first note is a rest, as several of the old chorales have it); a last bar
 * that gives the upbeat back loses the empty time after it.
 */
function trimUpbeat(stretches: readonly Stretch[]): readonly Stretch[] {
  const [first] = stretches;
  const last = stretches.at(-1);
  if (first === undefined || last === undefined || first === last) return stretches;
  const full = barLength(first.metre);
  const sung = VOICES.flatMap((voice) => first.pieces[voice].filter((piece) => piece.note?.pitch));
  const begin = Math.min(...sung.map((piece) => piece.at));
  let trimmed = [...stretches];
  if (sung.length > 0 && first.from === 0 && !first.split && begin >= full / 2) {
    const from = begin;
    trimmed[0] = {
      ...first,
      from,
      pieces: byVoice((voice) => clipped(first.pieces[voice], from, first.until)),
    };
  }
  const upbeat = trimmed[0]!.until - trimmed[0]!.from;
  const rests = full - upbeat;
  const written = VOICES.flatMap((voice) => last.pieces[voice].filter((piece) => piece.note !== undefined));
  const ends = Math.max(0, ...written.map((piece) => piece.at + piece.duration));
  if (rests > 0 && rests < full && !last.split && ends === rests && last.until > rests) {
    trimmed = [
      ...trimmed.slice(0, -1),
      {
        ...last,
        until: rests,
        pieces: byVoice((voice) => clipped(last.pieces[voice], 0, rests)),
      },
    ];
  }
  return trimmed;
}

/** The events of one voice by bar, with ties and barline fermatas settled. */
function eventsOf(bars: readonly (readonly Piece[])[], stretches: readonly Stretch[]): DraftEvent[][] {
  let before: { event: DraftEvent; list: DraftEvent[] } | undefined;
  return bars.map((pieces, index) => {
    const stretch = stretches[index]!;
    const held = new Set(stretch.source.flatMap((bar) => bar.fermatas));
    const list: DraftEvent[] = [];
    for (const piece of pieces) {
      const { note } = piece;
      if (note !== undefined) refuseOdd(note, stretch, piece);
      const ends = stretch.from + piece.at + piece.duration;
      const fermata = note?.fermata === true || (held.has(ends) && ends > 0);
      const pitch = piece.kind === 'note' ? note?.pitch : undefined;
      if (
        note?.tieStop &&
        before?.event.pitch &&
        pitch &&
        printPitch(before.event.pitch) === printPitch(pitch)
      ) {
        before.list[before.list.length - 1] = { ...before.event, tied: true };
      }
      const event: DraftEvent = {
        kind: pitch ? 'note' : piece.kind === 'rest' ? 'rest' : 'gap',
        duration: piece.duration,
        ...(pitch ? { pitch } : {}),
        ...(pitch && note?.tieStart ? { tied: true } : {}),
        ...(fermata ? { fermata: true } : {}),
        ...(pitch && note?.phrase ? { phrase: note.phrase } : {}),
        ...(pitch && note?.lyrics ? { lyrics: note.lyrics } : {}),
        ...(pitch && note?.grace ? { grace: note.grace } : {}),
        ...(pitch && note?.beside ? { beside: note.beside.flatMap((spare) => spareOf(note, spare)) } : {}),
      };
      list.push(event);
      before = { event, list };
    }
    return list;
  });
}

function spareOf(taken: SourceNote, { pitch, at, duration }: SourceNote): SpareNote[] {
  return pitch === undefined ? [] : [{ pitch, into: at - taken.at, duration }];
}

function refuseOdd(note: SourceNote, stretch: Stretch, _piece: Piece): void {
  if (note.oddPitch === undefined && !note.inexact) return;
  const voice = VOICES.find((v) => stretch.pieces[v].some((piece) => piece.note === note));
  const where = `In bar ${stretch.number || '?'}${voice ? `, ${VOICE_WORDS[voice]}` : ''},`;
  throw new Refused(
    note.oddPitch !== undefined
      ? `${where} a note is ${note.oddPitch}; only pitches up to a double sharp or double flat can be judged.`
      : `${where} a note begins or ends at a moment that no usual division of the beat reaches (an odd tuplet?). Write it in notes that divide the beat into 2, 3, 4, 5, 6, 7 or 8.`,
    { line: note.line, column: 1 },
  );
}
