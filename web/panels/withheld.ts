/** Helps that the brief of the exercise withholds. */
import { type Help, readBrief } from '../../src/brief/brief.ts';
import type { Panel } from './context.ts';

let last: { readonly text: string; readonly without: readonly Help[] } = { text: '', without: [] };

/** True where the exercise was set without this help. The brief is read once, and again when it is another. */
export function isWithheld({ state }: Pick<Panel, 'state'>, help: Help): boolean {
  const text = state.exercise.brief;
  if (text !== last.text) last = { text, without: text === '' ? [] : readBrief(text).brief.without };
  return last.without.includes(help);
}
