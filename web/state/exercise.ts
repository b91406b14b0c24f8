/** What belongs to the exercise besides its music: locks, notes, the brief, the file it came from. Pure functions. */
import { asGiven, onlyGiven, printBrief } from '../../src/brief/brief.ts';
import { byVoice, type Score, VOICE_WORDS, VOICES, type VoiceName } from '../../src/score/score.ts';
import { say } from './notice.ts';
import type { Caret, PageState, Particulars, Source } from './page.ts';
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

/** Asks which voices were given; whatever had been chosen is open until that is answered. */
export function askGiven(state: PageState): PageState {
  return { ...state, asking: true };
}

/** Locks the given voices and takes the caret to where writing begins. */
export function answerGiven(state: PageState, given: readonly VoiceName[]): PageState {
  const brief = briefFromFile(state, given);
  const particulars = { locked: given, ...(brief === undefined ? {} : { brief }) };
  return startWriting({ ...withParticulars(state, particulars), asking: false });
}

/** What was given in a file, kept as its brief, so that the last check can say whether it was left alone. */
function briefFromFile({ exercise, history }: PageState, given: readonly VoiceName[]): string | undefined {
  if (exercise.source === undefined || exercise.brief !== '' || given.length === 0) return undefined;
  const score = onlyGiven(
    asGiven(history.now.score),
    byVoice((voice) => given.includes(voice)),
  );
  return printBrief({ score, task: '', profile: 'chorale', without: [] });
}

/** The caret goes to the first empty place of the voice to write. */
export function startWriting(state: PageState): PageState {
  return { ...state, caret: firstEmpty(state.history.now.score, state.exercise.locked) };
}

/**
 * The earliest place not written yet in a voice that is not given; of several the lowest voice's, since the bass is
 * usually written first (common practice, no source). Where all is written, the first voice that may be changed.
 */
function firstEmpty(score: Score, given: readonly VoiceName[]): Caret {
  const open = VOICES.filter((voice) => !given.includes(voice));
  const empty = open.flatMap((voice): Caret[] => {
    const gap = score.voices[voice].find((event) => event.kind === 'gap');
    return gap === undefined ? [] : [{ voice, at: gap.at }];
  });
  const first = empty.reduce<Caret | undefined>(
    (best, caret) => (best === undefined || caret.at <= best.at ? caret : best),
    undefined,
  );
  return first ?? { voice: open[0] ?? 'S', at: 0 };
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
