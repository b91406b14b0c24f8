/**
 * What each bar holds, as written signs in plain data: values, accidentals, ties, beams, tuplets, the height of rests.
 * Everything that can be known without measuring a glyph. Two equal plans give the same drawing.
 */
import { staffPlace } from '../../src/score/pitch.ts';
import {
  type Bar,
  type ByVoice,
  byVoice,
  type Score,
  type SpareNote,
  VOICES,
  type VoiceEvent,
  type VoiceName,
} from '../../src/score/score.ts';
import { signatureAlteration } from '../../src/score/signature.ts';
import { beatLength, type Ticks } from '../../src/score/time.ts';
import { accidentalsInBar, type NoteInBar, type Reminders } from './accidentals.ts';
import { type PlannedBar, type PlannedTuplet, type Sign, STAFF_VOICES, type StaffName } from './bars.ts';
import { settleHeights } from './heights.ts';
import { beamUnit, findTuplets, noteValues, restValues, tupletValue, wholeBarRest } from './values.ts';

/** What goes on over a barline: the tone of a tie that is still open in each voice, and accidentals to be reminded of. */
interface Carried {
  /** The tone's id where the voice's last note is tied on. */
  readonly open: ByVoice<string | undefined>;
  readonly reminders: Readonly<Record<StaffName, Reminders>>;
}

/** A plan with what each bar's was made from, so that a bar with nothing new about it need not be planned again. */
export interface Planned {
  readonly score: Score;
  readonly bars: readonly PlannedBar[];
  readonly made: readonly MadeBar[];
}

interface MadeBar {
  readonly from: readonly [before: Bar | undefined, bar: Bar, after: Bar | undefined];
  readonly events: ByVoice<readonly VoiceEvent[]>;
  readonly carried: Carried;
  readonly plan: PlannedBar;
  /** What it carries over to the next bar. */
  readonly left: Carried;
}

const NOTHING_CARRIED: Carried = {
  open: { S: undefined, A: undefined, T: undefined, B: undefined },
  reminders: { treble: new Map(), bass: new Map() },
};

/** Plans every bar of a score. Pure. */
export function planBars(score: Score): readonly PlannedBar[] {
  return planScore(score).bars;
}

/** Plans a score. Bars that hold the very same events as in `before` keep the plan they had there. Pure. */
export function planScore(score: Score, before?: Planned): Planned {
  const cursors = byVoice(() => 0);
  let carried = NOTHING_CARRIED;
  const made = score.bars.map((bar, i) => {
    const from = [score.bars[i - 1], bar, score.bars[i + 1]] as const;
    const events = byVoice((voice) => {
      const all = score.voices[voice];
      const first = cursors[voice];
      while (cursors[voice] < all.length && all[cursors[voice]]!.at < bar.at + bar.duration) cursors[voice]++;
      return all.slice(first, cursors[voice]);
    });
    const old = before?.made[i];
    const still = old !== undefined && isMadeFrom(old, from, events, carried);
    const here = still ? old : makeBar(score, from, events, carried);
    carried = here.left;
    return here;
  });
  return { score, bars: made.map(({ plan }) => plan), made };
}

function isMadeFrom(
  made: MadeBar,
  from: MadeBar['from'],
  events: MadeBar['events'],
  carried: Carried,
): boolean {
  return (
    sameItems(made.from, from) &&
    VOICES.every((voice) => sameItems(made.events[voice], events[voice])) &&
    sameCarried(made.carried, carried)
  );
}

/** True where two lists hold the very same things. */
export function sameItems(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((each, i) => each === b[i]);
}

function sameCarried(a: Carried, b: Carried): boolean {
  return (
    a === b ||
    (VOICES.every((voice) => a.open[voice] === b.open[voice]) &&
      (['treble', 'bass'] as const).every((staff) => sameReminders(a.reminders[staff], b.reminders[staff])))
  );
}

function sameReminders(a: Reminders, b: Reminders): boolean {
  return (
    a.size === b.size &&
    [...a].every(([step, alterations]) => {
      const others = b.get(step);
      return others?.size === alterations.size && [...alterations].every((each) => others.has(each));
    })
  );
}

function makeBar(
  score: Score,
  from: MadeBar['from'],
  events: ByVoice<readonly VoiceEvent[]>,
  carried: Carried,
): MadeBar {
  const [, bar] = from;
  const open = { ...carried.open };
  const drafts = byVoice((voice) => writeVoice(events[voice], bar, voice, open));
  const plain = byVoice((voice) => drafts[voice].signs);
  const reminders = {
    treble: accidentals(plain, 'treble', bar, carried.reminders.treble),
    bass: accidentals(plain, 'bass', bar, carried.reminders.bass),
  };
  const signs = settleHeights(plain);
  const plan = {
    ...frame(score, bar),
    signs,
    beams: byVoice((voice) => beams(signs[voice], bar)),
    tuplets: VOICES.flatMap((voice) => drafts[voice].tuplets),
    columns: columns(signs, bar),
  };
  return { from, events, carried, plan, left: { open, reminders } };
}

/** The bar itself, and how it differs from its neighbours. */
function frame(score: Score, bar: Bar): Omit<PlannedBar, 'signs' | 'beams' | 'tuplets' | 'columns'> {
  const before = score.bars[bar.index - 1];
  const after = score.bars[bar.index + 1];
  const metreChanges =
    before !== undefined && (before.metre.beats !== bar.metre.beats || before.metre.unit !== bar.metre.unit);
  return {
    index: bar.index,
    number: bar.number,
    at: bar.at,
    duration: bar.duration,
    metre: bar.metre,
    key: bar.key,
    ...(before && before.key.fifths !== bar.key.fifths ? { keyBefore: before.key.fifths } : {}),
    ...(metreChanges ? { metreChanges: true as const } : {}),
    ...(before && bar.tempo !== undefined && before.tempo !== bar.tempo ? { tempo: bar.tempo } : {}),
    ...(bar.repeatStart ? { repeatStart: true as const } : {}),
    ...(bar.repeatEnd ? { repeatEnd: true as const } : {}),
    ...(bar.ending !== undefined ? { ending: bar.ending } : {}),
    ...(bar.ending !== undefined && before?.ending !== bar.ending ? { endingBegins: true as const } : {}),
    ...(bar.ending !== undefined && after?.ending !== bar.ending ? { endingEnds: true as const } : {}),
    ...(after === undefined ? { final: true as const } : {}),
  };
}

type MutableSign = { -readonly [K in keyof Sign]: Sign[K] };

/** One voice's events of one bar as signs; remembers in `open` what goes on over the barline. */
function writeVoice(
  events: readonly VoiceEvent[],
  bar: Bar,
  voice: VoiceName,
  open: Record<VoiceName, string | undefined>,
): { signs: MutableSign[]; tuplets: PlannedTuplet[] } {
  const signs: MutableSign[] = [];
  const tuplets: PlannedTuplet[] = [];
  const merged = mergeGaps(events);
  const spans = findTuplets(merged.map((event) => event.duration));
  for (const [i, event] of merged.entries()) {
    const span = spans.find(({ first, last }) => i >= first && i <= last);
    const into = event.at - bar.at + bar.offset;
    const first = signs.length;
    if (span) {
      signs.push({ ...sign(event), value: tupletValue(event.duration, span.ratio) });
      if (i === span.last) {
        tuplets.push({ voice, first: first - (span.last - span.first), last: first, ratio: span.ratio });
      }
    } else if (event.kind === 'gap') {
      signs.push({ ...sign(event), value: { base: 4, dots: 0 } });
    } else if (event.kind === 'rest' && event.duration === bar.duration && bar.offset === 0) {
      signs.push({ ...sign(event), value: wholeBarRest(bar.metre), wholeBar: true });
    } else {
      const write = event.kind === 'rest' ? restValues : noteValues;
      for (const piece of write(into, event.duration, bar.metre)) {
        const at = piece.at - bar.offset + bar.at;
        signs.push({ ...sign(event), at, duration: piece.duration, value: piece.value });
      }
    }
    finishEvent(signs.slice(first), event, voice, open);
    if (event.kind === 'note' && event.beside) addBeside(signs.slice(first), event.beside, bar);
  }
  return { signs, tuplets };
}

function sign(event: VoiceEvent): Omit<MutableSign, 'value'> {
  const { kind, at, duration } = event;
  if (event.kind !== 'note') return { kind, at, duration, place: 0 };
  return { kind, at, duration, pitch: event.pitch, place: staffPlace(event.pitch) };
}

/** Ties the signs of one event, names their tone, and hangs what belongs to the first or the last of them. */
function finishEvent(
  signs: readonly MutableSign[],
  event: VoiceEvent,
  voice: VoiceName,
  open: Record<VoiceName, string | undefined>,
): void {
  const first = signs[0];
  const last = signs.at(-1);
  if (!first || !last) return;
  if (event.kind !== 'gap' && event.fermata) last.fermata = true;
  if (event.kind !== 'note') {
    open[voice] = undefined;
    return;
  }
  const tone = open[voice] ?? `${voice}@${event.at}`;
  for (const [i, each] of signs.entries()) {
    each.tone = tone;
    if (i > 0 || open[voice] !== undefined) each.continued = true;
    if (i < signs.length - 1 || event.tied) each.tied = true;
  }
  if (event.grace) first.grace = event.grace;
  if (event.lyrics) first.lyrics = event.lyrics;
  open[voice] = event.tied ? tone : undefined;
}

/** Notes too many that begin with a note stand at its stem; one that begins later is only told of. */
function addBeside(signs: readonly MutableSign[], beside: readonly SpareNote[], bar: Bar): void {
  const here = beside.flatMap(({ into, pitch }) => {
    const accidental = pitch.alteration !== signatureAlteration(bar.key.fifths, pitch.step);
    return into === 0 ? [{ pitch, accidental }] : [];
  });
  if (signs[0] && here.length > 0) signs[0].beside = here;
}

/** Gaps that follow one another are one stretch still to be written. */
function mergeGaps(events: readonly VoiceEvent[]): VoiceEvent[] {
  const merged: VoiceEvent[] = [];
  for (const event of events) {
    const last = merged.at(-1);
    if (last?.kind === 'gap' && event.kind === 'gap') {
      merged[merged.length - 1] = { ...last, duration: last.duration + event.duration };
    } else merged.push(event);
  }
  return merged;
}

/** Writes the accidentals of one staff into its signs and answers what the next bar is to be reminded of. */
function accidentals(
  signs: ByVoice<readonly MutableSign[]>,
  staff: StaffName,
  bar: Bar,
  before: Reminders,
): Reminders {
  const [upper, lower] = STAFF_VOICES[staff];
  const notes = [
    ...signs[upper].map((each) => ({ each, rank: 0 })),
    ...signs[lower].map((each) => ({ each, rank: 1 })),
  ]
    .filter(({ each }) => each.kind === 'note')
    .sort((a, b) => a.each.at - b.each.at || a.rank - b.rank);
  const asked: NoteInBar[] = notes.map(({ each }) => ({
    at: each.at,
    pitch: each.pitch!,
    continued: each.continued === true,
  }));
  const { needs, reminders } = accidentalsInBar(asked, bar.key.fifths, before);
  for (const [i, need] of needs.entries()) if (need) notes[i]!.each.accidental = need;
  return reminders;
}

/** Beams join quavers and shorter notes that begin within one beat, without a rest or gap between. */
function beams(signs: readonly Sign[], bar: Bar): [number, number][] {
  const unit = beamUnit(bar.metre);
  const runs: [number, number][] = [];
  let open: [number, number] | undefined;
  let group = -1;
  const close = () => {
    if (open && open[1] > open[0]) runs.push(open);
    open = undefined;
  };
  for (const [i, each] of signs.entries()) {
    const here = Math.floor((each.at - bar.at + bar.offset) / unit);
    if (each.kind !== 'note' || each.value.base < 8) close();
    else if (open && here === group) open[1] = i;
    else {
      close();
      open = [i, i];
      group = here;
    }
  }
  close();
  return runs;
}

/** Every beginning of a note or rest, and every beat of a stretch still to be written. */
function columns(signs: ByVoice<readonly Sign[]>, bar: Bar): Ticks[] {
  const moments = new Set<Ticks>([bar.at]);
  const beat = beatLength(bar.metre);
  for (const voice of VOICES) {
    for (const each of signs[voice]) {
      moments.add(each.at);
      if (each.kind !== 'gap') continue;
      const into = each.at - bar.at + bar.offset;
      for (let t = Math.ceil(into / beat) * beat; t < into + each.duration; t += beat) {
        moments.add(t - bar.offset + bar.at);
      }
    }
  }
  return [...moments].sort((a, b) => a - b);
}
