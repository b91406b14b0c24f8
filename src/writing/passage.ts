/** Passages: a stretch of some voices copied, written elsewhere, erased, or moved as a whole. */
import { placeAt, printPlace } from '../score/place.ts';
import { endOf, type Score, VOICE_WORDS, VOICES, type VoiceName } from '../score/score.ts';
import type { Ticks } from '../score/time.ts';
import { type Change, type Content, moveByOctaves, moveBySteps, write } from './write.ts';

/** One sound of a passage, counted from its beginning. Tied notes are one. */
export interface Piece {
  readonly at: Ticks;
  readonly duration: Ticks;
  readonly content: Content;
}

export interface Passage {
  readonly duration: Ticks;
  readonly lines: readonly { readonly voice: VoiceName; readonly pieces: readonly Piece[] }[];
}

/** Some voices from one moment to another. */
export interface Extent {
  readonly from: Ticks;
  readonly until: Ticks;
  readonly voices: readonly VoiceName[];
}

/** What the voices have in the stretch; what reaches beyond it is cut. */
export function copyPassage(score: Score, { from, until, voices }: Extent): Passage {
  return {
    duration: until - from,
    lines: VOICES.filter((voice) => voices.includes(voice)).map((voice) => ({
      voice,
      pieces: piecesOf(score, voice, from, until),
    })),
  };
}

function piecesOf(score: Score, voice: VoiceName, from: Ticks, until: Ticks): Piece[] {
  const pieces: Piece[] = [];
  let tied = false;
  for (const event of score.voices[voice]) {
    const at = Math.max(event.at, from);
    const end = Math.min(event.at + event.duration, until);
    if (at >= end) continue;
    const last = pieces.at(-1);
    const fermata = event.kind !== 'gap' && event.fermata ? { fermata: true as const } : {};
    if (tied && event.kind === 'note' && last) {
      pieces[pieces.length - 1] = {
        ...last,
        duration: end - from - last.at,
        content: { kind: 'note', pitch: event.pitch, ...fermata },
      };
    } else {
      const content: Content =
        event.kind === 'note'
          ? { kind: 'note', pitch: event.pitch, ...fermata }
          : event.kind === 'rest'
            ? { kind: 'rest', ...fermata }
            : { kind: 'gap' };
      pieces.push({ at: at - from, duration: end - at, content });
    }
    tied = event.kind === 'note' && event.tied === true;
  }
  return pieces;
}

/**
 * Writes a passage over what stood there: one line into the voice given, several each into its own. Voices in `shut`
 * are left as they are.
 */
export function pastePassage(
  score: Score,
  passage: Passage,
  voice: VoiceName,
  at: Ticks,
  shut: readonly VoiceName[],
): Change {
  const [only, ...others] = passage.lines;
  const lines = only && others.length === 0 ? [{ ...only, voice }] : passage.lines;
  const open = lines.filter((line) => !shut.includes(line.voice));
  if (open.length === 0) return { kind: 'refused', said: 'Nothing was pasted: its voices are locked.' };
  let whole = score;
  for (const line of open)
    for (const piece of line.pieces) {
      const change = write(whole, line.voice, at + piece.at, piece.duration, piece.content);
      if (change.kind === 'refused') return change;
      whole = change.score;
    }
  const where = printPlace(placeAt(score, Math.min(at, Math.max(0, endOf(score) - 1))));
  return {
    kind: 'changed',
    score: whole,
    said: `Pasted at ${where}: ${voiceWords(open)}`,
    caret: at + passage.duration,
  };
}

/** Opens the stretch: its voices have nothing there any more. */
export function erasePassage(score: Score, { from, until, voices }: Extent): Change {
  let whole = score;
  for (const voice of voices) {
    const change = write(whole, voice, from, until - from, { kind: 'gap' });
    if (change.kind === 'refused') return change;
    whole = change.score;
  }
  return { kind: 'changed', score: whole, said: 'The stretch was erased.', caret: from };
}

/** Moves every note that begins in the stretch by steps of the scale or by octaves. */
export function movePassage(
  score: Score,
  { from, until, voices }: Extent,
  by: { readonly steps: number } | { readonly octaves: number },
): Change {
  let whole = score;
  let moved = 0;
  for (const voice of voices) {
    let tied = false;
    for (const event of score.voices[voice]) {
      const begins = event.kind === 'note' && !tied && event.at >= from && event.at < until;
      tied = event.kind === 'note' && event.tied === true;
      if (!begins) continue;
      const change =
        'steps' in by
          ? moveBySteps(whole, voice, event.at, by.steps)
          : moveByOctaves(whole, voice, event.at, by.octaves);
      if (change.kind === 'refused') return change;
      whole = change.score;
      moved++;
    }
  }
  if (moved === 0) return { kind: 'refused', said: 'There is no note in the stretch to move.' };
  return { kind: 'changed', score: whole, said: `${moved} ${moved === 1 ? 'note' : 'notes'} moved.` };
}

function voiceWords(lines: Passage['lines']): string {
  return lines.map(({ voice }) => VOICE_WORDS[voice]).join(', ');
}
