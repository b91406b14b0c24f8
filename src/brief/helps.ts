/** The helps of the pupil's page, each of which a brief may withhold. This list is their only home. */
import { listed } from '../english/words.ts';

export const HELPS = ['marks', 'hints', 'ways out', 'numerals', 'style', 'room', 'playback'] as const;
export type Help = (typeof HELPS)[number];

/** What each help is, for whoever decides about it. */
export const HELP_WORDS: Readonly<Record<Help, string>> = {
  marks: 'marks: what is wrong, and where',
  hints: 'hints at a mark, opened one at a time',
  'ways out': 'how many ways out of a fault there are',
  numerals: 'numerals, keys and cadences',
  style: 'how like the model the work is',
  room: 'places with room for an ornament',
  playback: 'playback',
};

export function isHelp(name: string): name is Help {
  return HELPS.some((help) => help === name);
}

/** A controlled sitting allows no help at all. */
export function isControlled({ without }: { readonly without: readonly Help[] }): boolean {
  return HELPS.every((help) => without.includes(help));
}

/** How the exercise was set, for the page and for what is handed in; empty where every help is allowed. */
export function sittingInWords(brief: { readonly without: readonly Help[] }): string {
  if (brief.without.length === 0) return '';
  if (isControlled(brief)) return 'Controlled sitting: set without any help of the page.';
  return `Set without ${listed(HELPS.filter((help) => brief.without.includes(help)))}.`;
}
