/** What the page says about what just happened. */
import type { NoticeKind, PageState } from './page.ts';

export function say(state: PageState, text: string, kind: NoticeKind = 'said'): PageState {
  return { ...state, notice: { text, kind } };
}

export function refuse(state: PageState, text: string): PageState {
  return say(state, text, 'refused');
}

/** Takes the sentence shown away. */
export function hush(state: PageState): PageState {
  return { ...state, notice: undefined };
}
