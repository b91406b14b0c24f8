/** What is said to those who don't see the stave, in one live region; short, and only when something changed. */

import { withSigns } from '../../src/report/sentences.ts';
import type { Review } from '../../src/review/review.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { placeAt, printPlace } from '../../src/score/place.ts';
import { endOf, VOICE_WORDS } from '../../src/score/score.ts';
import { eventAt } from '../../src/writing/write.ts';
import { describeMoment } from '../engrave/index.ts';
import { withholds } from '../state/brief.ts';
import { onceAfterPaint } from '../state/frames.ts';
import type { Caret, PageState } from '../state/page.ts';
import type { Store } from '../state/store.ts';
import { marksSeen } from './seen.ts';

const NUMBER_WORDS = [
  'nothing',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
] as const;

/** `bar 3, beat 2, tenor: two findings`. */
function findingsAt(review: Review, caret: Caret): string {
  if (caret.at >= endOf(review.score)) return '';
  const here = review.findings.filter(
    (f) => f.voices.includes(caret.voice) && f.from <= caret.at && caret.at < Math.max(f.until, f.from + 1),
  );
  const count = NUMBER_WORDS[here.length] ?? String(here.length);
  const what = here.length === 0 ? 'no findings' : `${count} ${here.length === 1 ? 'finding' : 'findings'}`;
  return `${placeWords(review, caret)}: ${what}`;
}

function placeWords(review: Review, caret: Caret): string {
  return `${printPlace(placeAt(review.score, caret.at))}, ${VOICE_WORDS[caret.voice]}`;
}

/** What sounds at the caret: voice by voice, chord and key. */
export function caretWords(state: PageState): string {
  const { caret, reviewed, history } = state;
  const { score } = history.now;
  if (score.bars.length === 0) return 'No bars yet.';
  if (caret.at >= endOf(score)) return `At the end, ${VOICE_WORDS[caret.voice]}. Writing here adds a bar.`;
  const moment =
    reviewed === undefined
      ? ''
      : describeMoment(reviewed.review.analysis.texture, marksSeen(state), caret.at);
  const lock = state.exercise.locked.includes(caret.voice) ? ', locked' : '';
  const voice = VOICE_WORDS[caret.voice];
  return `Writing the ${voice}${lock}. ${moment}`;
}

/** How the note at the caret is changed; empty where there is none to change. */
function noteWords({ caret, history, exercise }: PageState): string {
  const here = eventAt(history.now.score, caret.voice, caret.at);
  if (here?.kind !== 'note' || exercise.locked.includes(caret.voice)) return '';
  return `Drag ${withSigns(printPitch(here.pitch))} or press ↑ ↓ to move it; a letter writes over it; Delete erases it.`;
}

/** Keeps the live region and the line under the stave up with the state. */
export function createAnnouncer(store: Store<PageState>, region: HTMLElement): { say(text: string): void } {
  let editedAt: Caret | undefined;
  let saidBefore = '';
  const say = (text: string): void => {
    if (text === '') return;
    // A region that gets the same words again says nothing: an invisible sign makes them new.
    region.textContent = region.textContent === text ? `${text}\u00a0` : text;
  };
  store.subscribe((state, before) => {
    if (state.history.now !== before.history.now) editedAt = before.caret;
    if (state.notice !== before.notice && state.notice?.kind === 'said') say(state.notice.text);
    if (
      state.reviewed !== before.reviewed &&
      state.reviewed?.whole &&
      state.reviewed.of === state.history.now &&
      editedAt
    ) {
      const words = withholds(state, 'marks') ? '' : findingsAt(state.reviewed.review, editedAt);
      const said = state.notice?.kind === 'said' ? state.notice.text : '';
      if (words !== '') say(said === '' ? words : `${said}${said.endsWith('.') ? '' : '.'} ${words}`);
      editedAt = undefined;
    }
    if (state.caret !== before.caret && state.history.now === before.history.now) {
      const words = shortCaretWords(state);
      if (words !== saidBefore) say(words);
      saidBefore = words;
    }
    describe(state);
  });
  return { say };
}

/** The words that stand for the caret beside the stave. */
const describe = onceAfterPaint((state: PageState): void => {
  show('#caret-words', caretWords(state));
  show('#note-words', noteWords(state));
});

function show(selector: string, words: string): void {
  const line = document.querySelector(selector);
  if (line !== null && line.textContent !== words) line.textContent = words;
}

/** While the caret moves: place, voice and note only. */
function shortCaretWords({ caret, history }: PageState): string {
  const { score } = history.now;
  if (score.bars.length === 0 || caret.at >= endOf(score)) return `end, ${VOICE_WORDS[caret.voice]}`;
  const event = score.voices[caret.voice].find((e) => e.at <= caret.at && caret.at < e.at + e.duration);
  const what =
    event === undefined || event.kind === 'gap'
      ? 'not written'
      : event.kind === 'rest'
        ? 'rest'
        : `${event.pitch.step}${signWords(event.pitch.alteration)} ${event.pitch.octave}`;
  return `${printPlace(placeAt(score, caret.at))}, ${VOICE_WORDS[caret.voice]}: ${what}`;
}

function signWords(alteration: number): string {
  return { [-2]: ' double flat', [-1]: ' flat', 0: '', 1: ' sharp', 2: ' double sharp' }[alteration] ?? '';
}
