/** One bar of one staff as MusicXML. */
import type { Pitch } from '../score/pitch.ts';
import type { Bar, Note, Score, VoiceEvent, VoiceName, WrittenFigure } from '../score/score.ts';
import type { Ticks } from '../score/time.ts';
import { element, textElement } from './markup.ts';
import { noteValue } from './note-values.ts';

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

/** The notes, words and figures of all voices of one staff, each voice after a backup to the bar's beginning. */
export function staffBar(context: BarContext, plan: StaffPlan, bar: Bar, firstVoice: number): string[] {
  const out: string[] = [];
  const signs = accidentals(context.score, plan, bar);
  for (const [i, voice] of plan.voices.entries()) {
    if (i > 0) out.push(backup(context, bar.duration));
    out.push(...voiceBar(context, plan, bar, voice, firstVoice + i, signs));
  }
  return out;
}

export function backup(context: BarContext, ticks: Ticks): string {
  return element('backup', {}, textElement('duration', ticks / context.tick));
}

function voiceBar(
  context: BarContext,
  plan: StaffPlan,
  bar: Bar,
  voice: VoiceName,
  number: number,
  signs: ReadonlyMap<VoiceEvent, string>,
): string[] {
  const out: string[] = [];
  const until = bar.at + bar.duration;
  const all = context.score.voices[voice];
  const events = eventsIn(all, bar);
  const tuplets = tupletEdges(events);
  // What a voice itself left open is hidden; what only fills the bar up, because it was closed too early or another
  // voice is too long, is left out, so that the reader counts the same.
  const misfit = bar.misfits.find((one) => one.voice === voice) ?? bar.misfits[0];
  const own = misfit === undefined ? bar.duration : misfit.voice === voice ? misfit.written : misfit.expected;
  const closedAt = Math.min(until, bar.at + own);
  const written = context.score.figures ?? [];
  for (const event of events) {
    const end = event.at + event.duration;
    if (voice === 'B') out.push(...figuredBass(context, event, written));
    if (event.kind === 'note') {
      for (const pitch of event.grace ?? []) {
        out.push(
          element(
            'note',
            {},
            element('grace'),
            pitchOf(pitch),
            ...tail(plan, number, ['<type>eighth</type>']),
          ),
        );
      }
    }
    if (event.kind === 'gap' && end > closedAt) {
      const open = Math.max(0, closedAt - event.at);
      if (open > 0) out.push(noteOf(context, plan, { ...event, duration: open }, voice, number, all));
      out.push(element('forward', {}, textElement('duration', (event.duration - open) / context.tick)));
      continue;
    }
    out.push(noteOf(context, plan, event, voice, number, all, signs.get(event), tuplets.get(event)));
  }
  return out;
}

/** A voice's events that begin in a bar; none of them crosses its end. */
function eventsIn(events: readonly VoiceEvent[], bar: Bar): VoiceEvent[] {
  let low = 0;
  let high = events.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (events[middle]!.at < bar.at) low = middle + 1;
    else high = middle;
  }
  const found: VoiceEvent[] = [];
  for (let i = low; i < events.length && events[i]!.at < bar.at + bar.duration; i++) found.push(events[i]!);
  return found;
}

function noteOf(
  context: BarContext,
  plan: StaffPlan,
  event: VoiceEvent,
  voice: VoiceName,
  number: number,
  all: readonly VoiceEvent[],
  sign?: string,
  tuplet?: 'start' | 'stop',
): string {
  const duration = textElement('duration', event.duration / context.tick);
  const value = noteValue(event.duration);
  const shown = value === undefined ? [] : [`<type>${value.type}</type>`, '<dot/>'.repeat(value.dots)];
  if (event.kind !== 'note') {
    // A gap is a rest that isn't printed: it is for the pupil to fill, and read as nothing.
    const hidden = event.kind === 'gap' ? { 'print-object': 'no' } : {};
    const fermata = event.kind === 'rest' && event.fermata ? [fermataOf(plan, voice)] : [];
    const notations = fermata.length > 0 ? [element('notations', {}, ...fermata)] : [];
    return element(
      'note',
      hidden,
      element('rest'),
      duration,
      ...tail(plan, number, [...shown, ...modification(value?.tuplet)], notations),
    );
  }
  const before = previous(all, event);
  const stops = before?.kind === 'note' && before.tied === true;
  const ties = [...(stops ? ['stop'] : []), ...(event.tied ? ['start'] : [])];
  const notations = [
    ...ties.map((type) => element('tied', { type })),
    ...(tuplet === undefined ? [] : [element('tuplet', { type: tuplet })]),
    ...(event.fermata ? [fermataOf(plan, voice)] : []),
  ];
  // A semibreve draws no stem, but where two such voices cross only the word says which is the upper one.
  const stem = plan.voices.length === 2 ? [`<stem>${plan.voices[0] === voice ? 'up' : 'down'}</stem>`] : [];
  return element(
    'note',
    {},
    pitchOf(event.pitch),
    duration,
    ...ties.map((type) => element('tie', { type })),
    ...tail(
      plan,
      number,
      [
        ...shown,
        ...(sign === undefined ? [] : [`<accidental>${sign}</accidental>`]),
        ...modification(value?.tuplet),
        ...stem,
      ],
      [...(notations.length > 0 ? [element('notations', {}, ...notations)] : []), ...lyricsOf(all, event)],
    ),
  );
}

/** What follows pitch and duration: voice, the looks, staff, then notations and lyrics, in the schema's order. */
function tail(
  plan: StaffPlan,
  number: number,
  looks: readonly string[],
  end: readonly string[] = [],
): string[] {
  return [
    textElement('voice', number),
    ...looks,
    ...(plan.staff === undefined ? [] : [textElement('staff', plan.staff)]),
    ...end,
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
function fermataOf(plan: StaffPlan, voice: VoiceName): string {
  return element('fermata', { type: plan.voices[0] === voice ? 'upright' : 'inverted' });
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
  let low = 0;
  let high = all.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (all[middle]!.at < event.at) low = middle + 1;
    else high = middle;
  }
  return all[low - 1];
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
const SHARPS = 'FCGDAEB';

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
    const signature =
      fifths > 0 && SHARPS.indexOf(step) < fifths
        ? 1
        : fifths < 0 && SHARPS.indexOf(step) >= 7 + fifths
          ? -1
          : 0;
    const before = previous(score.voices[voice], event);
    const held = event.at === bar.at && before?.kind === 'note' && before.tied === true;
    if ((state.get(place) ?? signature) === alteration || held) continue;
    state.set(place, alteration);
    signs.set(event, SIGNS[alteration]!);
  }
  return signs;
}
