/** What belongs to the exercise besides its music: locks, notes, the brief, the file it came from. Pure functions. */
import { VOICE_WORDS, type VoiceName } from '../../src/score/score.ts';
import { say } from './notice.ts';
import type { PageState, Particulars, Source } from './page.ts';
import { changed, type Work } from './work.ts';

function withParticulars(state: PageState, particulars: Partial<Particulars>): PageState {
  return { ...state, exercise: { ...state.exercise, ...particulars } };
}

/** The pupil's own word on a finding; an empty one takes it away. */
export function setNote(state: PageState, id: string, note: string): PageState {
  const { [id]: _old, ...others } = state.exercise.notes;
  return withParticulars(state, { notes: note.trim() === '' ? others : { ...others, [id]: note } });
}

export function toggleLock(state: PageState, voice: VoiceName): PageState {
  const { locked } = state.exercise;
  const open = locked.includes(voice);
  const now = open ? locked.filter((each) => each !== voice) : [...locked, voice];
  return say(
    withParticulars(state, { locked: now }),
    `The ${VOICE_WORDS[voice]} is ${open ? 'open to changes' : 'locked'}.`,
  );
}

/** The file's lines given out to the voices in another way; undo takes it back. */
export function giveVoices(state: PageState, work: Work, source: Source): PageState {
  const history = changed(state.history, work, 'file', 0);
  return say({ ...withParticulars(state, { source }), history }, 'The voices are given out anew.');
}

export function setBrief(state: PageState, brief: string): PageState {
  return withParticulars(state, { brief });
}

export function setOtherSeconds(state: PageState, otherSeconds: number): PageState {
  return withParticulars(state, { otherSeconds });
}
