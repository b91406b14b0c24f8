/** Score → Standard MIDI File, a track for each voice, for listening in any program. */
import { writeMidi as encode, type MidiEvent } from 'midi-file';
import { capitalised } from '../english/words.ts';
import { midiNumber } from '../score/pitch.ts';
import { endOf, type Score, VOICE_WORDS, VOICES, type VoiceName } from '../score/score.ts';
import { tempoMarks } from '../score/tempo.ts';
import { textureOf } from '../score/texture.ts';
import { CROTCHET, isCompound, printMetre, type Ticks } from '../score/time.ts';

export interface MidiOptions {
  /** Crotchets a minute where the score gives no tempo; 72 if left out. */
  readonly tempo?: number;
}

/** "Choir aahs" of General MIDI, counted from 0. */
const CHOIR = 52;
const LOUDNESS = 80;
/** MIDI ticks to a crotchet: the usual 480, or our own where something is finer than that. */
const USUAL_DIVISION = 480;

/** At one moment, what ends comes before what begins. */
interface Timed {
  readonly at: Ticks;
  readonly event: MidiEvent;
}

/**
 * The score as a Standard MIDI File of format 1: a track for tempo, metre and key, then one for each voice, tied notes as one
 * sound. Repeats are played once.
 */
export function writeMidi(score: Score, options: MidiOptions = {}): Uint8Array {
  const fine = VOICES.some((voice) =>
    score.voices[voice].some((event) => event.duration % (CROTCHET / USUAL_DIVISION)),
  );
  const division = fine ? CROTCHET : USUAL_DIVISION;
  const texture = textureOf(score);
  const tracks = [
    conductor(score, options.tempo ?? 72),
    ...VOICES.map((voice, channel) =>
      texture.tones[voice].reduce<Timed[]>(
        (events, tone) => {
          const noteNumber = midiNumber(tone.pitch);
          // Higher than MIDI counts; nobody sings it.
          if (noteNumber > 127 || noteNumber < 0) return events;
          events.push(
            { at: tone.at, event: { deltaTime: 0, type: 'noteOn', channel, noteNumber, velocity: LOUDNESS } },
            { at: tone.until, event: { deltaTime: 0, type: 'noteOff', channel, noteNumber, velocity: 0 } },
          );
          return events;
        },
        opening(voice, channel),
      ),
    ),
  ];
  const end = endOf(score);
  return Uint8Array.from(
    encode({
      header: { format: 1, numTracks: tracks.length, ticksPerBeat: division },
      tracks: tracks.map((track) => inDeltas(track, end, CROTCHET / division)),
    }),
  );
}

function opening(voice: VoiceName, channel: number): Timed[] {
  return [
    { at: 0, event: { deltaTime: 0, type: 'trackName', text: capitalised(VOICE_WORDS[voice]) } },
    { at: 0, event: { deltaTime: 0, type: 'programChange', channel, programNumber: CHOIR } },
  ];
}

/** `usual` is the tempo up to the first that the score gives. */
function conductor(score: Score, usual: number): Timed[] {
  const marks = tempoMarks(score).map(({ bar, tempo }) => tempoEvent(bar.at, tempo));
  const events: Timed[] = [
    { at: 0, event: { deltaTime: 0, type: 'trackName', text: utf8(score.title) } },
    ...(marks[0]?.at === 0 ? [] : [tempoEvent(0, score.tempo ?? usual)]),
    ...marks,
  ];
  for (const [index, bar] of score.bars.entries()) {
    const before = score.bars[index - 1];
    if (before === undefined || printMetre(before.metre) !== printMetre(bar.metre)) {
      const { beats, unit } = bar.metre;
      // MIDI clocks (24 to the crotchet) to a click of the metronome.
      const metronome = Math.min(255, ((24 * 4) / unit) * (isCompound(bar.metre) ? 3 : 1));
      events.push({
        at: bar.at,
        event: {
          deltaTime: 0,
          type: 'timeSignature',
          numerator: beats,
          denominator: unit,
          metronome,
          thirtyseconds: 8,
        },
      });
    }
    const { fifths, mode } = bar.key;
    if (before === undefined || before.key.fifths !== fifths || before.key.mode !== mode) {
      const scale = mode === 'minor' ? 1 : 0;
      events.push({ at: bar.at, event: { deltaTime: 0, type: 'keySignature', key: fifths, scale } });
    }
  }
  return events;
}

function tempoEvent(at: Ticks, tempo: number): Timed {
  // A tempo takes three bytes of microseconds: 3.6 crotchets a minute is the slowest.
  const microsecondsPerBeat = Math.min(0xffffff, Math.max(1, Math.round(60_000_000 / tempo)));
  return { at, event: { deltaTime: 0, type: 'setTempo', microsecondsPerBeat } };
}

function inDeltas(track: readonly Timed[], end: Ticks, tick: Ticks): MidiEvent[] {
  const rank = (event: MidiEvent) => (event.type === 'noteOff' ? 0 : 1);
  const sorted = [...track].sort((a, b) => a.at - b.at || rank(a.event) - rank(b.event));
  let now = 0;
  const events = sorted.map(({ at, event }) => {
    const deltaTime = (at - now) / tick;
    now = at;
    return { ...event, deltaTime };
  });
  return [...events, { deltaTime: Math.max(0, end - now) / tick, type: 'endOfTrack' }];
}

/** MIDI text is bytes; the library writes one byte for each character it is given. */
function utf8(text: string): string {
  return Array.from(new TextEncoder().encode(text), (byte) => String.fromCharCode(byte)).join('');
}
