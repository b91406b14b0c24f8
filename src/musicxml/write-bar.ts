/** One bar of one staff as MusicXML. */
import type { Pitch } from '../score/pitch.ts';
import type {
  Bar,
  Gap,
  Note,
  Rest,
  Score,
  SpareNote,
  VoiceEvent,
  VoiceName,
  WrittenFigure,
} from '../score/score.ts';
import { lastBegun } from '../score/search.ts';
import { signatureAlteration } from '../score/signature.ts';
import type { Ticks } from '../score/time.ts';
import { element, textElement } from './markup.ts';
import { type NoteValue, noteValue } from './note-values.ts';
import { PHRASE_WORDS } from './phrase-marks.ts';

/** One staff of the layout: who sings from it and how it is written. */
export interface StaffPlan {
  readonly voices: readonly VoiceName[];
  readonly clef: { readonly sign: 'G' | 'F'; readonly line: number; readonly octaves: number };
  /** Staff number in a part of several, else undefined. */
  readonly staff?: number;
}

export interface BarContext {
  readonly score: Score;
  /** Ticks in one division. */
  readonly tick: Ticks;
}

/** A voice's events that begin in a bar; none of them crosses its end. */
function eventsIn(events: readonly VoiceEvent[], bar: Bar): readonly VoiceEvent[] {
  return events.slice(beginning(events, bar.at), beginning(events, bar.at + bar.duration));
}

/** The index of the first event that begins at a moment or later. */
function beginning(events: readonly VoiceEvent[], at: Ticks): number {
  return lastBegun(events, at - 1, (event) => event.at) + 1;
}

/** One voice of a staff, with all that writing one of its notes needs to know. */
interface VoicePlan {
  readonly context: BarContext;
  readonly staff: StaffPlan;
  readonly voice: VoiceName;
  /** In the file. */
  readonly number: number;
  /** All its events. */
  readonly events: readonly VoiceEvent[];
}

/** The notes, words and figures of all voices of one staff, each voice after a backup to the bar's beginning. */
export function staffBar(context: BarContext, staff: StaffPlan, bar: Bar, firstVoice: number): string[] {
  const signs = accidentals(context.score, staff, bar);
  return staff.voices.flatMap((voice, i) => {
    const plan = { context, staff, voice, number: firstVoice + i, events: context.score.voices[voice] };
    return [...(i > 0 ? [backup(context, bar.duration)] : []), ...voiceBar(plan, bar, signs)];
  });
}

export function backup(context: BarContext, ticks: Ticks): string {
  return element('backup', {}, durationOf(context, ticks));
}

function forward(context: BarContext, ticks: Ticks): string {
  return element('forward', {}, durationOf(context, ticks));
}

function durationOf({ tick }: BarContext, ticks: Ticks): string {
  return textElement('duration', ticks / tick);
}

function voiceBar(plan: VoicePlan, bar: Bar, signs: ReadonlyMap<VoiceEvent, string>): string[] {
  const { context, voice } = plan;
  const events = eventsIn(plan.events, bar);
  const tuplets = tupletEdges(events);
  const closedAt = closingOf(voice, bar);
  const written = context.score.figures ?? [];
  return events.flatMap((event) => [
    ...(voice === 'B' ? figuredBass(context, event, written) : []),
    ...(event.kind === 'gap' && event.at + event.duration > closedAt
      ? openGap(plan, event, closedAt)
      : eventOf(plan, event, { sign: signs.get(event), tuplet: tuplets.get(event) })),
  ]);
}

/**
 * What a voice itself left open is hidden; what only fills the bar up, because it was closed too early or another voice
 * is too long, is left out from here on, so that the reader counts the same.
 */
function closingOf(voice: VoiceName, bar: Bar): Ticks {
  const misfit = bar.misfits.find((one) => one.voice === voice) ?? bar.misfits[0];
  const own = misfit === undefined ? bar.duration : misfit.voice === voice ? misfit.written : misfit.expected;
  return bar.at + Math.min(bar.duration, own);
}

function openGap(plan: VoicePlan, gap: Gap, closedAt: Ticks): string[] {
  const open = Math.max(0, closedAt - gap.at);
  const hidden = open > 0 ? silenceOf(plan, { ...gap, duration: open }) : '';
  return [hidden, forward(plan.context, gap.duration - open)].filter((line) => line !== '');
}

/** What is drawn with a note that its pitch and length don't say. */
interface Looks {
  readonly sign: string | undefined;
  readonly tuplet: 'start' | 'stop' | undefined;
}

function eventOf(plan: VoicePlan, event: VoiceEvent, looks: Looks): string[] {
  if (event.kind !== 'note') return [silenceOf(plan, event)];
  return [
    ...(event.grace ?? []).map((pitch) => graceOf(plan, pitch)),
    noteOf(plan, event, looks),
    ...(event.beside ?? []).flatMap((spare) => spareOf(plan, event, spare)),
  ];
}

function graceOf(plan: VoicePlan, pitch: Pitch): string {
  return element(
    'note',
    {},
    element('grace'),
    pitchOf(pitch),
    ...tail(plan, { looks: ['<type>eighth</type>'] }),
  );
}

/** A note too many: of the note's chord, or, where it begins later, after going back. */
function spareOf(plan: VoicePlan, note: Note, { pitch, into, duration }: SpareNote): string[] {
  const { context } = plan;
  const value = noteValue(duration);
  const looks = [...shownValue(value), ...modification(value?.tuplet), ...stemOf(plan)];
  const chord = into === 0 ? [element('chord')] : [];
  const written = element(
    'note',
    {},
    ...chord,
    pitchOf(pitch),
    durationOf(context, duration),
    ...tail(plan, { looks }),
  );
  if (into === 0) return [written];
  const past = into + duration - note.duration;
  return [
    backup(context, note.duration - into),
    written,
    ...(past === 0 ? [] : [past > 0 ? backup(context, past) : forward(context, -past)]),
  ];
}

function silenceOf(plan: VoicePlan, event: Rest | Gap): string {
  const value = noteValue(event.duration);
  // A gap is a rest that isn't printed: it is for the pupil to fill, and read as nothing.
  const hidden = event.kind === 'gap' ? { 'print-object': 'no' } : {};
  return element(
    'note',
    hidden,
    element('rest'),
    durationOf(plan.context, event.duration),
    ...tail(plan, {
      looks: [...shownValue(value), ...modification(value?.tuplet)],
      notations: event.kind === 'rest' && event.fermata ? [fermataOf(plan)] : [],
    }),
  );
}

function noteOf(plan: VoicePlan, event: Note, { sign, tuplet }: Looks): string {
  const value = noteValue(event.duration);
  const before = previous(plan.events, event);
  const stops = before?.kind === 'note' && before.tied === true;
  const ties = [...(stops ? ['stop'] : []), ...(event.tied ? ['start'] : [])];
  return element(
    'note',
    {},
    pitchOf(event.pitch),
    durationOf(plan.context, event.duration),
    ...ties.map((type) => element('tie', { type })),
    ...tail(plan, {
      looks: [
        ...shownValue(value),
        ...(sign === undefined ? [] : [textElement('accidental', sign)]),
        ...modification(value?.tuplet),
        ...stemOf(plan),
      ],
      notations: [
        ...ties.map((type) => element('tied', { type })),
        ...(tuplet === undefined ? [] : [element('tuplet', { type: tuplet })]),
        ...(event.fermata ? [fermataOf(plan)] : []),
        ...(event.phrase === undefined ? [] : [phraseMark(event.phrase)]),
      ],
      lyrics: lyricsOf(plan.events, event),
    }),
  );
}

/** What somebody said of a phrase's end has no sign in print: the standard leaves other notations to whoever needs them. */
function phraseMark(phrase: 'ends' | 'goes on'): string {
  return textElement('other-notation', PHRASE_WORDS[phrase], { type: 'single', 'print-object': 'no' });
}

function shownValue(value: NoteValue | undefined): string[] {
  return value === undefined ? [] : [textElement('type', value.type), '<dot/>'.repeat(value.dots)];
}

/** A semibreve draws no stem, but where two such voices cross only the word says which is the upper one. */
function stemOf({ staff, voice }: VoicePlan): string[] {
  return staff.voices.length === 2 ? [textElement('stem', staff.voices[0] === voice ? 'up' : 'down')] : [];
}

/** What follows pitch and duration: voice, the looks, staff, then notations and lyrics, in the schema's order. */
function tail(
  { staff, number }: VoicePlan,
  after: {
    readonly looks: readonly string[];
    readonly notations?: readonly string[];
    readonly lyrics?: readonly string[];
  },
): string[] {
  const { looks, notations = [], lyrics = [] } = after;
  return [
    textElement('voice', number),
    ...looks,
    ...(staff.staff === undefined ? [] : [textElement('staff', staff.staff)]),
    ...(notations.length > 0 ? [element('notations', {}, ...notations)] : []),
    ...lyrics,
  ];
}

function pitchOf(pitch: Pitch): string {
  return element(
    'pitch',
    {},
    textElement('step', pitch.step),
    pitch.alteration === 0 ? '' : textElement('alter', pitch.alteration),
    textElement('octave', pitch.octave),
  );
}

/** Over the staff; of two voices on one staff the lower has its own under it, so that they do not meet. */
function fermataOf({ staff, voice }: VoicePlan): string {
  return element('fermata', { type: staff.voices[0] === voice ? 'upright' : 'inverted' });
}

function modification(tuplet: { actual: number; normal: number } | undefined): string[] {
  if (tuplet === undefined) return [];
  return [
    element(
      'time-modification',
      {},
      textElement('actual-notes', tuplet.actual),
      textElement('normal-notes', tuplet.normal),
    ),
  ];
}

/** Where tuplet brackets begin and end: a bracket closes when the notes under it make a plain note value. */
function tupletEdges(events: readonly VoiceEvent[]): Map<VoiceEvent, 'start' | 'stop'> {
  const edges = new Map<VoiceEvent, 'start' | 'stop'>();
  let first: VoiceEvent | undefined;
  let sum = 0;
  for (const event of events) {
    const value = event.kind === 'note' ? noteValue(event.duration) : undefined;
    if (value?.tuplet === undefined) {
      if (first !== undefined) edges.delete(first);
      first = undefined;
      continue;
    }
    if (first === undefined) {
      first = event;
      sum = 0;
      edges.set(event, 'start');
    }
    sum += event.duration;
    const whole = noteValue(sum);
    if (first !== event && whole !== undefined && whole.tuplet === undefined && whole.dots === 0) {
      edges.set(event, 'stop');
      first = undefined;
    }
  }
  if (first !== undefined) edges.delete(first);
  return edges;
}

function previous(all: readonly VoiceEvent[], event: VoiceEvent): VoiceEvent | undefined {
  return all[beginning(all, event.at) - 1];
}

function lyricsOf(all: readonly VoiceEvent[], event: Note): string[] {
  const lyrics = event.lyrics ?? [];
  return lyrics.flatMap((text, i) => {
    if (text === '') return [];
    const goesOn = text.length > 1 && text.endsWith('-');
    const from = wordGoesOn(all, event, i);
    const syllabic = from ? (goesOn ? 'middle' : 'end') : goesOn ? 'begin' : 'single';
    return [
      element(
        'lyric',
        { number: i + 1 },
        textElement('syllabic', syllabic),
        textElement('text', goesOn ? text.slice(0, -1) : text),
      ),
    ];
  });
}

/** The last syllable of this verse before a note ended with a hyphen. */
function wordGoesOn(all: readonly VoiceEvent[], event: Note, verse: number): boolean {
  let before = previous(all, event);
  // A syllable may be held over many notes, but seldom over more than a bar or two.
  for (let i = 0; before !== undefined && i < 32; i++) {
    const text = before.kind === 'note' ? before.lyrics?.[verse] : undefined;
    if (text !== undefined && text !== '') return text.length > 1 && text.endsWith('-');
    before = previous(all, before);
  }
  return false;
}

/** The figures that stand under one event of the bass; one that comes late is led up to by an empty figure. */
function figuredBass(context: BarContext, event: VoiceEvent, written: readonly WrittenFigure[]): string[] {
  const end = event.at + event.duration;
  const here = written.filter((figure) => figure.at >= event.at && figure.at < end);
  const [first] = here;
  if (first === undefined) return [];
  const led = first.at > event.at ? [{ at: event.at, figures: [] }, ...here] : here;
  return led.map((figure, i) => {
    const until = led[i + 1]?.at ?? end;
    const figures = figure.figures.length === 0 ? [element('figure')] : figure.figures.map(figureOf);
    const length = led.length === 1 ? [] : [textElement('duration', (until - figure.at) / context.tick)];
    return element('figured-bass', {}, ...figures, ...length);
  });
}

const PREFIXES: Readonly<Record<string, string>> = {
  '#': 'sharp',
  b: 'flat',
  n: 'natural',
  '##': 'double-sharp',
  bb: 'flat-flat',
};

function figureOf(figure: string): string {
  const [, sign = '', number = ''] = /^(##?|bb?|n)?(\d*)$/.exec(figure) ?? [];
  const prefix = PREFIXES[sign];
  return element(
    'figure',
    {},
    prefix === undefined ? '' : textElement('prefix', prefix),
    number === '' ? '' : textElement('figure-number', number),
  );
}

const SIGNS: Readonly<Record<number, string>> = {
  [-2]: 'flat-flat',
  [-1]: 'flat',
  0: 'natural',
  1: 'sharp',
  2: 'double-sharp',
};

/** Which notes of a staff need an accidental: those that differ from the key signature or from the last on their place. */
function accidentals(score: Score, plan: StaffPlan, bar: Bar): Map<VoiceEvent, string> {
  const { fifths } = bar.key;
  const state = new Map<string, number>();
  const signs = new Map<VoiceEvent, string>();
  const notes = plan.voices.flatMap((voice) =>
    eventsIn(score.voices[voice], bar).flatMap((event) => (event.kind === 'note' ? [{ voice, event }] : [])),
  );
  notes.sort((a, b) => a.event.at - b.event.at);
  for (const { voice, event } of notes) {
    const { step, octave, alteration } = event.pitch;
    const place = step + octave;
    const signature = signatureAlteration(fifths, step);
    const before = previous(score.voices[voice], event);
    const held = event.at === bar.at && before?.kind === 'note' && before.tied === true;
    if ((state.get(place) ?? signature) === alteration || held) continue;
    state.set(place, alteration);
    signs.set(event, SIGNS[alteration]!);
  }
  return signs;
}
