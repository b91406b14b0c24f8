/**
 * Writing on the stave: every change takes a score and gives a new one, or says in a sentence why it can't be made.
 */
import { buildScore, type DraftBar, type DraftEvent } from '../score/build.ts';
import { type Pitch, printPitch, samePitch } from '../score/pitch.ts';
import { barAt, placeAt, printPlace } from '../score/place.ts';
import { endOf, type Score, VOICE_WORDS, VOICES, type VoiceEvent, type VoiceName } from '../score/score.ts';
import type { Ticks } from '../score/time.ts';
import { addBars } from './bars.ts';
import { draftOf } from './draft.ts';
import { byStep } from './pitches.ts';

/** The new score and what to say about it, or why nothing was changed. */
export type Change =
  | { readonly kind: 'changed'; readonly score: Score; readonly said: string; readonly caret?: Ticks }
  | { readonly kind: 'refused'; readonly said: string };

/** What is written at a place: a pitch, a rest, or nothing. */
export type Content =
  | { readonly kind: 'note'; readonly pitch: Pitch; readonly fermata?: true }
  | { readonly kind: 'rest'; readonly fermata?: true }
  | { readonly kind: 'gap' };

const refused = (said: string): Change => ({ kind: 'refused', said });

/** The event that a voice has at a moment, or undefined past the end. */
export function eventAt(score: Score, voice: VoiceName, at: Ticks): VoiceEvent | undefined {
  return score.voices[voice].find((event) => event.at <= at && at < event.at + event.duration);
}

/**
 * Writes a note, a rest or a gap of this length over whatever the voice had there. A note that reaches over a
 * barline is written as two, tied; bars are added where the music runs past the end.
 */
export function write(score: Score, voice: VoiceName, at: Ticks, length: Ticks, content: Content): Change {
  let whole = score;
  while (content.kind !== 'gap' && at + length > endOf(whole)) {
    const longer = addBars(whole, 1);
    if (endOf(longer) === endOf(whole)) return refused('There is no bar to write in.');
    whole = longer;
  }
  const until = Math.min(at + length, endOf(whole));
  const draft = draftOf(whole);
  const bars = draft.bars.map((bar, i) => {
    const { at: barStart, duration } = whole.bars[i]!;
    const from = Math.max(at, barStart);
    const to = Math.min(until, barStart + duration);
    if (from >= to) return bar;
    const piece: DraftEvent =
      content.kind === 'note'
        ? { ...content, duration: to - from, ...(to < until ? { tied: true } : {}) }
        : { ...content, duration: to - from };
    return withVoice(bar, voice, overwritten(bar, voice, from - barStart, piece));
  });
  const what =
    content.kind === 'note' ? printPitch(content.pitch) : content.kind === 'rest' ? 'rest' : 'erased';
  return {
    kind: 'changed',
    score: buildScore({ ...draft, bars }),
    said: `${placeName(whole, voice, at)}: ${what}`,
    caret: until,
  };
}

/** A bar's events with one piece laid over them; a note that is cut keeps its beginning, and the rest is left open. */
function overwritten(bar: DraftBar, voice: VoiceName, from: Ticks, piece: DraftEvent): DraftEvent[] {
  const until = from + piece.duration;
  const result: DraftEvent[] = [];
  let at = 0;
  let placed = false;
  const place = () => {
    if (at < from) result.push({ kind: 'gap', duration: from - at });
    result.push(piece);
    placed = true;
  };
  for (const event of bar.voices[voice]?.events ?? []) {
    const end = at + event.duration;
    if (end <= from) result.push(event);
    else if (at >= until) {
      if (!placed) place();
      result.push(event);
    } else {
      if (at < from) {
        const { tied: _tied, ...cut } = event;
        result.push({ ...cut, duration: from - at });
        at = from;
      }
      if (!placed) place();
      // What sticks out behind the new piece is no longer anybody's note.
      if (end > until) result.push({ kind: event.kind === 'rest' ? 'rest' : 'gap', duration: end - until });
    }
    at = end;
  }
  if (!placed) place();
  return mergedGaps(result);
}

function mergedGaps(events: readonly DraftEvent[]): DraftEvent[] {
  const merged: DraftEvent[] = [];
  for (const event of events) {
    const last = merged.at(-1);
    if (event.kind === 'gap' && last?.kind === 'gap')
      merged[merged.length - 1] = { kind: 'gap', duration: last.duration + event.duration };
    else merged.push(event);
  }
  return merged;
}

function withVoice(bar: DraftBar, voice: VoiceName, events: readonly DraftEvent[]): DraftBar {
  return { ...bar, voices: { ...bar.voices, [voice]: { events, closed: false } } };
}

function placeName(score: Score, voice: VoiceName, at: Ticks): string {
  return `${printPlace(placeAt(score, Math.min(at, Math.max(0, endOf(score) - 1))))}, ${VOICE_WORDS[voice]}`;
}

/** Applies a change to every written note of the tone at a moment (tied notes change together). */
function changeTone(
  score: Score,
  voice: VoiceName,
  at: Ticks,
  change: (pitch: Pitch) => Pitch | undefined,
): Change {
  const here = eventAt(score, voice, at);
  if (here?.kind !== 'note')
    return refused(`${placeName(score, voice, at)}: there is no note here to change.`);
  const events = score.voices[voice];
  let first = events.indexOf(here);
  let last = first;
  while (first > 0 && isTied(events[first - 1]!)) first--;
  while (isTied(events[last]!)) last++;
  const pitch = change(here.pitch);
  if (pitch === undefined || pitch.octave < 0 || pitch.octave > 9)
    return refused(`${placeName(score, voice, at)}: ${printPitch(here.pitch)} can't be moved further.`);
  const changed = mapEvents(score, voice, (event, i) =>
    i >= first && i <= last && event.kind === 'note' ? { ...event, pitch } : event,
  );
  return {
    kind: 'changed',
    score: changed,
    said: `${placeName(score, voice, here.at)}: ${printPitch(pitch)}`,
  };
}

function isTied(event: VoiceEvent): boolean {
  return event.kind === 'note' && event.tied === true;
}

function mapEvents(
  score: Score,
  voice: VoiceName,
  change: (event: VoiceEvent, index: number) => VoiceEvent,
): Score {
  const voices = { ...score.voices, [voice]: score.voices[voice].map(change) };
  return buildScore(draftOf({ ...score, voices }));
}

/** Moves the note at a moment by steps of the scale that the key signature gives. */
export function moveBySteps(score: Score, voice: VoiceName, at: Ticks, steps: number): Change {
  return changeTone(score, voice, at, (pitch) => byStep(pitch, steps, barAt(score, at).key));
}

/** Moves the note at a moment by octaves. */
export function moveByOctaves(score: Score, voice: VoiceName, at: Ticks, octaves: number): Change {
  return changeTone(score, voice, at, (pitch) => ({ ...pitch, octave: pitch.octave + octaves }));
}

/** Gives the note at a moment a sharp, flat or natural; a second sharp or flat makes it double, a third single again. */
export function alter(score: Score, voice: VoiceName, at: Ticks, accidental: 1 | -1 | 0): Change {
  return changeTone(score, voice, at, (pitch) => ({
    ...pitch,
    alteration: pitch.alteration === accidental ? 2 * accidental : accidental,
  }));
}

/** Ties the note at a moment to the next one of the same pitch, or unties it. */
export function toggleTie(score: Score, voice: VoiceName, at: Ticks, length: Ticks): Change {
  const here = eventAt(score, voice, at);
  if (here?.kind !== 'note') return refused(`${placeName(score, voice, at)}: there is no note here to tie.`);
  const next = eventAt(score, voice, here.at + here.duration);
  if (next === undefined || next.kind === 'gap') {
    const written = write(score, voice, here.at + here.duration, length, { kind: 'note', pitch: here.pitch });
    return written.kind === 'refused' ? written : toggleTie(written.score, voice, here.at, length);
  }
  if (next.kind !== 'note' || !samePitch(next.pitch, here.pitch))
    return refused(
      `${placeName(score, voice, here.at)}: a tie joins two notes of the same pitch, and ${printPitch(here.pitch)} is followed by ${next.kind === 'note' ? printPitch(next.pitch) : 'a rest'}.`,
    );
  const tied = !here.tied;
  const changed = mapEvents(score, voice, (event) => {
    if (event !== here) return event;
    const { tied: _tied, ...loose } = here;
    return tied ? { ...loose, tied: true } : loose;
  });
  return {
    kind: 'changed',
    score: changed,
    said: `${placeName(score, voice, here.at)}: ${printPitch(here.pitch)} ${tied ? 'tied to the next note' : 'no longer tied'}`,
  };
}

/** Sets a fermata over what the given voices sound at a moment, or takes it away where they all have one. */
export function toggleFermata(score: Score, voices: readonly VoiceName[], at: Ticks): Change {
  const here = voices.flatMap((voice) => {
    const event = eventAt(score, voice, at);
    return event === undefined || event.kind === 'gap' ? [] : [{ voice, event }];
  });
  if (here.length === 0) return refused('There is no note here to put a fermata on.');
  const set = here.some(({ event }) => event.fermata !== true);
  let changed = score;
  for (const { voice, event } of here)
    changed = mapEvents(changed, voice, (other) => {
      if (other.at !== event.at || other.kind === 'gap') return other;
      const { fermata: _fermata, ...plain } = other;
      return set ? { ...plain, fermata: true } : plain;
    });
  const words = here.map(({ voice }) => VOICE_WORDS[voice]).join(', ');
  return {
    kind: 'changed',
    score: changed,
    said: `${printPlace(placeAt(score, at))}: fermata ${set ? 'set' : 'taken away'} (${words})`,
  };
}

/** Says that a phrase ends with the melody's note at a moment, or that none does, whatever is marked there. */
export function sayPhraseEnd(score: Score, at: Ticks, ends: boolean): Change {
  const voice = VOICES.find((v) => score.voices[v].some(({ kind }) => kind === 'note')) ?? 'S';
  const here = eventAt(score, voice, at);
  if (here?.kind !== 'note') return refused('There is no note of the melody here to end a phrase with.');
  const changed = mapEvents(score, voice, (other) =>
    other.at === here.at && other.kind === 'note' ? { ...other, phrase: ends ? 'ends' : 'goes on' } : other,
  );
  const place = printPlace(placeAt(score, here.at));
  return {
    kind: 'changed',
    score: changed,
    said: `${place}: ${ends ? 'a phrase ends' : 'no phrase ends'} here`,
  };
}

/** Gives the note or rest at a moment another length; what it no longer fills is left open. */
export function setLength(score: Score, voice: VoiceName, at: Ticks, length: Ticks): Change {
  const here = eventAt(score, voice, at);
  if (here === undefined || here.kind === 'gap')
    return refused(`${placeName(score, voice, at)}: there is nothing here to lengthen or shorten.`);
  const emptied =
    here.duration > length ? write(score, voice, here.at, here.duration, { kind: 'gap' }) : undefined;
  const base = emptied?.kind === 'changed' ? emptied.score : score;
  const fermata = here.fermata ? { fermata: true as const } : {};
  const content: Content =
    here.kind === 'note' ? { kind: 'note', pitch: here.pitch, ...fermata } : { kind: 'rest', ...fermata };
  return write(base, voice, here.at, length, content);
}
