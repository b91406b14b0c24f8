/** What the brief of the exercise says about the page: helps it keeps back, notes it gives. Pure, but for one memory. */
import { type Brief, readBrief } from '../../src/brief/brief.ts';
import { type Help, isControlled, sittingInWords } from '../../src/brief/helps.ts';
import { isUnwritten } from '../../src/review/marks.ts';
import type { Review } from '../../src/review/review.ts';
import { samePitch } from '../../src/score/pitch.ts';
import { type Note, type Score, VOICES, type VoiceEvent, type VoiceName } from '../../src/score/score.ts';
import { lastBegun } from '../../src/score/search.ts';
import type { PageState } from './page.ts';

type WithBrief = Pick<PageState, 'exercise'>;

let last: { readonly text: string; readonly brief: Brief | undefined } = { text: '', brief: undefined };

/** The brief beside the exercise. It is read once, and again when it is another. */
function briefOf({ exercise }: WithBrief): Brief | undefined {
  if (exercise.brief !== last.text)
    last = {
      text: exercise.brief,
      brief: exercise.brief === '' ? undefined : readBrief(exercise.brief).brief,
    };
  return last.brief;
}

/** True where the exercise was set without this help. */
export function withholds(state: WithBrief, help: Help): boolean {
  return briefOf(state)?.without.includes(help) ?? false;
}

/** How it was set, in a sentence; empty where every help is allowed. */
export function sitting(state: WithBrief): string {
  const brief = briefOf(state);
  return brief === undefined ? '' : sittingInWords(brief);
}

/** The exercise was begun from a brief that allows no help: the brief can't be taken away from it. */
export function isSitting(state: WithBrief): boolean {
  const brief = briefOf(state);
  return state.exercise.begunFromBrief === true && brief !== undefined && isControlled(brief);
}

/** What of a review the page may show: where marks are withheld, only what is still to be written. */
export function seenOf(state: WithBrief, review: Review): Review {
  return withholds(state, 'marks') ? { ...review, findings: review.findings.filter(isUnwritten) } : review;
}

/** Voices all of whose notes are given; they are locked as a whole. */
export function whollyGiven({ score }: Pick<Brief, 'score'>): VoiceName[] {
  return VOICES.filter(
    (voice) => score.voices[voice].length > 0 && score.voices[voice].every((event) => event.kind !== 'gap'),
  );
}

/** A given note in a voice of which only some are given, where a change would lose it; undefined where none is lost. */
export function givenLost(state: WithBrief, before: Score, after: Score): Note | undefined {
  const brief = briefOf(state);
  if (brief === undefined || state.exercise.begunFromBrief !== true) return undefined;
  const whole = whollyGiven(brief);
  for (const voice of VOICES) {
    if (whole.includes(voice) || before.voices[voice] === after.voices[voice]) continue;
    const lost = brief.score.voices[voice].find(
      (event): event is Note =>
        event.kind === 'note' && stands(before.voices[voice], event) && !stands(after.voices[voice], event),
    );
    if (lost !== undefined) return lost;
  }
  return undefined;
}

function stands(events: readonly VoiceEvent[], { at, duration, pitch }: Note): boolean {
  const there = events[lastBegun(events, at, (event) => event.at)];
  return (
    there?.kind === 'note' && there.at === at && there.duration === duration && samePitch(there.pitch, pitch)
  );
}
