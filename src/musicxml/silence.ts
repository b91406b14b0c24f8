/**
 * Which silence is music and which is not yet written.
 *
 * Notation programs fill every bar with rests, so a file shows a pupil's empty bar as a rest. The principle here:
 *
 * - Where a voice has nothing at all in the file, neither note nor visible rest, it is not yet written; but where the
 *   other voice of its staff has a rest and nobody sings, the one rest stands for both.
 * - An exercise is unfinished where some voice is silent through a whole bar in which another sings, or stops while
 *   another goes on to the end: singers of a chorale never do that.
 * - In an unfinished exercise such a voice's rests of a beat or more while another voice sings are not yet written;
 *   so are rests of half a bar or more in the other voices, and bars in which nobody sings.
 * - Everything else is a rest: short rests, rests of all voices together, every rest inside a finished score. Bars of
 *   rests after the last note of all are empty paper.
 */
import { type ByVoice, byVoice, VOICES, type VoiceName } from '../score/score.ts';
import type { Ticks } from '../score/time.ts';
import type { SourceNote } from './source.ts';

/** One bar of the four voices before silence is judged; pieces fill the time of the bar without overlap, in order. */
export interface RawBar {
  readonly length: Ticks;
  /** The length of a beat (the metre's lower figure). */
  readonly beat: Ticks;
  readonly voices: ByVoice<readonly Piece[]>;
}

/** A stretch of one voice's time; a hole is time for which the file has nothing. */
export interface Piece {
  readonly kind: 'note' | 'rest' | 'hole' | 'gap';
  readonly at: Ticks;
  readonly duration: Ticks;
  /** The staff, so that staff-mates can be told. */
  readonly staff: string;
  readonly note?: SourceNote;
}

/**
 * Decides each rest and hole: afterwards there are only notes, rests and gaps.
 * @param explicit the file tells by itself: a rest is a rest, a hole a gap.
 */
export function judgeSilence(bars: readonly RawBar[], explicit: boolean): ByVoice<readonly Piece[]>[] {
  if (explicit)
    return bars.map((bar) => byVoice((v) => bar.voices[v].map((p) => (p.kind === 'hole' ? asGap(p) : p))));
  const unfinished = byVoice((voice) => isUnfinished(bars, voice));
  const exercise = VOICES.some((voice) => unfinished[voice]);
  const lastSung = bars.findLastIndex((bar) => VOICES.some((voice) => sings(bar, voice)));
  return bars.map((bar, index) => {
    const silent = !VOICES.some((voice) => sings(bar, voice));
    return byVoice((voice) => {
      if (silent && (exercise || index > lastSung)) return bar.voices[voice].map(asGap);
      return bar.voices[voice].map((piece, i) => {
        if (piece.kind === 'note') return piece;
        const accompanied = others(voice).some((other) => sounds(bar, other, piece));
        if (piece.kind === 'hole') {
          return !accompanied && restsBeside(bar, voice, piece) ? { ...piece, kind: 'rest' } : asGap(piece);
        }
        const run = silenceAround(bar.voices[voice], i);
        const heard = others(voice).some((other) => sounds(bar, other, run));
        const enough = unfinished[voice] ? bar.beat : bar.length / 2;
        return exercise && heard && run.duration >= enough ? asGap(piece) : piece;
      });
    });
  });
}

function isUnfinished(bars: readonly RawBar[], voice: VoiceName): boolean {
  for (const bar of bars) {
    if (!sings(bar, voice) && others(voice).some((other) => sings(bar, other))) return true;
  }
  // All end together, or one stops while others go on for at least a beat.
  const last = bars.findLast((bar) => VOICES.some((one) => sings(bar, one)));
  if (last === undefined) return true;
  const end = (one: VoiceName) =>
    Math.max(0, ...last.voices[one].filter((p) => p.kind === 'note').map((p) => p.at + p.duration));
  return others(voice).some((other) => end(other) - end(voice) >= last.beat);
}

function others(voice: VoiceName): VoiceName[] {
  return VOICES.filter((other) => other !== voice);
}

function sings(bar: RawBar, voice: VoiceName): boolean {
  return bar.voices[voice].some((piece) => piece.kind === 'note');
}

function sounds(bar: RawBar, voice: VoiceName, during: { at: Ticks; duration: Ticks }): boolean {
  return bar.voices[voice].some(
    (p) => p.kind === 'note' && p.at < during.at + during.duration && p.at + p.duration > during.at,
  );
}

function restsBeside(bar: RawBar, voice: VoiceName, hole: Piece): boolean {
  return others(voice).some((other) =>
    bar.voices[other].some(
      (p) =>
        p.kind === 'rest' &&
        p.staff === hole.staff &&
        p.at <= hole.at &&
        p.at + p.duration >= hole.at + hole.duration,
    ),
  );
}

/** The whole stretch of silence that a piece is part of, within its bar. */
function silenceAround(pieces: readonly Piece[], index: number): { at: Ticks; duration: Ticks } {
  let first = index;
  let last = index;
  while (first > 0 && pieces[first - 1]!.kind !== 'note') first--;
  while (last + 1 < pieces.length && pieces[last + 1]!.kind !== 'note') last++;
  const { at } = pieces[first]!;
  return { at, duration: pieces[last]!.at + pieces[last]!.duration - at };
}

function asGap(piece: Piece): Piece {
  return piece.kind === 'note' ? piece : { ...piece, kind: 'gap' };
}
