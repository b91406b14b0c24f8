/**
 * Names the notes that do not belong to their chord, by how they are reached, how they are left, and where they
 * stand in the bar. The kinds are common textbook practice, no single source.
 */

import { type NoteName, semitone, staffPlace } from '../../score/pitch.ts';
import { barAt, metricalStrength } from '../../score/place.ts';
import { VOICES } from '../../score/score.ts';
import { stretchAt } from '../../score/search.ts';
import type { Texture, Tone } from '../../score/texture.ts';
import type { Ticks } from '../../score/time.ts';
import type { Chord, Ornament, OrnamentKind } from '../analysis.ts';
import { memberOf } from '../questions/members.ts';
import { suspensionFigures } from './suspension-figures.ts';

/** A stretch of a tone foreign to the chord that sounds. */
interface Stretch {
  readonly tone: Tone;
  readonly at: Ticks;
  readonly until: Ticks;
  readonly chord: Chord;
}

interface Verdict {
  readonly kind: OrnamentKind;
  readonly preparation?: Tone;
  readonly resolution?: Tone;
}

/** How a voice goes from one tone to another: staff places and semitones, both signed. */
interface Step {
  readonly places: number;
  readonly semitones: number;
}

/** All ornaments, by time and then by voice from the top. */
export function ornamentsOf(texture: Texture, chords: readonly Chord[]): Ornament[] {
  const ornaments: Ornament[] = [];
  for (const voice of VOICES) {
    const tones = texture.tones[voice];
    for (const stretch of foreignStretches(tones, chords)) {
      const verdict = judge(texture, tones, stretch, chords);
      const suspended = verdict.kind === 'suspension' || verdict.kind === 'retardation';
      const figures =
        suspended && verdict.resolution
          ? suspensionFigures(texture, stretch.tone, stretch.at, verdict.resolution)
          : undefined;
      ornaments.push({
        voice,
        tone: stretch.tone,
        at: stretch.at,
        until: stretch.until,
        kind: verdict.kind,
        ...(figures === undefined ? {} : { figures }),
        ...(verdict.preparation ? { preparation: verdict.preparation } : {}),
        ...(verdict.resolution ? { resolution: verdict.resolution } : {}),
        chord: stretch.chord.index,
      });
    }
  }
  return ornaments.sort((a, b) => a.at - b.at || VOICES.indexOf(a.voice) - VOICES.indexOf(b.voice));
}

/** Adjacent foreign stretches of one tone are one, told of the first chord it is foreign to. */
function foreignStretches(tones: readonly Tone[], chords: readonly Chord[]): Stretch[] {
  const stretches: Stretch[] = [];
  let first = 0;
  for (const tone of tones) {
    while (first < chords.length && chords[first]!.until <= tone.at) first++;
    let open: Stretch | undefined;
    for (let i = first; i < chords.length && chords[i]!.at < tone.until; i++) {
      const chord = chords[i]!;
      if (memberOf(chord, tone.pitch) !== undefined) {
        if (open) stretches.push(open);
        open = undefined;
        continue;
      }
      const at = Math.max(tone.at, chord.at);
      const until = Math.min(tone.until, chord.until);
      if (open) open = { ...open, until };
      else open = { tone, at, until, chord };
    }
    if (open) stretches.push(open);
  }
  return stretches;
}

function judge(
  texture: Texture,
  tones: readonly Tone[],
  stretch: Stretch,
  chords: readonly Chord[],
): Verdict {
  const { tone, at, until } = stretch;
  const before = neighbour(tones, tone, -1);
  const after = neighbour(tones, tone, 1);
  const heldIn = tone.at < at;
  const heldOut = tone.until > until;
  const strength = (time: Ticks) => metricalStrength(barAt(texture.score, time), time);
  const repeated = before !== undefined && sameSound(before, tone);
  const prepared = heldIn ? tone : repeated ? before : undefined;

  if (prepared !== undefined) {
    if (heldOut || (after !== undefined && sameSound(tone, after) && belongs(after, chords)))
      return { kind: 'pedal' };
    const resolution = resolutionOf(tones, stretch);
    if (resolution !== undefined && strength(at) >= Math.min(2, strength(resolution.at))) {
      const down = staffPlace(resolution.pitch) < staffPlace(tone.pitch);
      return { kind: down ? 'suspension' : 'retardation', preparation: prepared, resolution };
    }
  }
  if (heldOut) return { kind: heldIn ? 'pedal' : 'anticipation' };
  const into = before === undefined ? undefined : stepFrom(before, tone);
  const out = after === undefined ? undefined : stepFrom(tone, after);
  if (out === undefined || after === undefined) return { kind: 'unclassified' };
  const accented = strength(at) > strength(after.at);
  if (out.semitones === 0 && out.places === 0)
    return { kind: !heldIn && !accented && into !== undefined ? 'anticipation' : 'unclassified' };
  if (into === undefined)
    return isStep(out) && accented ? { kind: 'appoggiatura', resolution: after } : { kind: 'unclassified' };
  const ahead = neighbour(tones, after, 1);
  const behind = before === undefined ? undefined : neighbour(tones, before, -1);
  if (isStep(into) && isStep(out)) {
    if (sameWay(into, out)) return { kind: accented ? 'accented passing' : 'passing' };
    if (before !== undefined && sameSound(before, after)) return { kind: 'neighbour' };
    if (into.semitones * out.semitones < 0)
      return accented ? { kind: 'appoggiatura', resolution: after } : { kind: 'neighbour' };
  }
  if (isStep(into) && isThird(out) && ahead !== undefined) {
    const home = stepFrom(after, ahead);
    if (isStep(home) && !sameWay(out, home)) return { kind: 'changing notes' };
  }
  if (isThird(into) && isStep(out) && behind !== undefined && before !== undefined) {
    const start = stepFrom(behind, before);
    if (isStep(start) && sameSound(behind, after)) return { kind: 'changing notes' };
  }
  if (isStep(into) && !accented) return { kind: 'échappée' };
  // Leapt to off the beat, it only looks like one.
  if (isStep(out) && accented) return { kind: 'appoggiatura', resolution: after };
  return { kind: 'unclassified' };
}

/**
 * Where a suspended tone resolves: to the next tone a step away that belongs to the chord or follows at once; up to
 * two notes may come between (a decorated resolution) as long as the chord lasts.
 */
function resolutionOf(tones: readonly Tone[], { tone, chord }: Stretch): Tone | undefined {
  for (let ahead = 1; ahead <= 3; ahead++) {
    const next = tones[tone.index + ahead];
    const previous = tones[tone.index + ahead - 1]!;
    if (next === undefined || next.at !== previous.until) return undefined;
    if (ahead > 1 && next.at >= chord.until) return undefined;
    const step = stepFrom(tone, next);
    if (Math.abs(step.places) === 1 && isStep(step) && (ahead === 1 || memberOf(chord, next.pitch)))
      return next;
  }
  return undefined;
}

/** The tone before (-1) or after (1) without a silence between. */
function neighbour(tones: readonly Tone[], tone: Tone, way: -1 | 1): Tone | undefined {
  const other = tones[tone.index + way];
  if (other === undefined) return undefined;
  return (way < 0 ? other.until === tone.at : tone.until === other.at) ? other : undefined;
}

function belongs(tone: Tone, chords: readonly Chord[]): boolean {
  const chord = stretchAt(chords, tone.at);
  return chord !== undefined && memberOf(chord, tone.pitch as NoteName) !== undefined;
}

function stepFrom(from: Tone, to: Tone): Step {
  return {
    places: staffPlace(to.pitch) - staffPlace(from.pitch),
    semitones: semitone(to.pitch) - semitone(from.pitch),
  };
}

function sameSound(a: Tone, b: Tone): boolean {
  const step = stepFrom(a, b);
  return step.places === 0 && step.semitones === 0;
}

/** A tone or semitone; a chromatic semitone counts (F–F#–G passes). */
function isStep({ places, semitones }: Step): boolean {
  return Math.abs(places) <= 1 && semitones !== 0 && Math.abs(semitones) <= 2;
}

function isThird({ places, semitones }: Step): boolean {
  return Math.abs(places) === 2 && Math.abs(semitones) <= 4;
}

function sameWay(a: Step, b: Step): boolean {
  return a.semitones * b.semitones > 0;
}
