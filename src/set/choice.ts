/** What of a piece is given to the pupil, as a person says it: `tune, closes, opening=2, bars=3-4`. */
import { listed } from '../english/words.ts';
import { type Outcome, refuse } from '../refusal/refusal.ts';
import type { Bar } from '../score/score.ts';

/** Kinds of things that can be given; each is whole or nothing. */
export const GIVES = ['all', 'tune', 'bass', 'figures', 'closes'] as const;
export type Give = (typeof GIVES)[number];

export const GIVE_WORDS: Readonly<Record<Give, string>> = {
  all: 'all that is written',
  tune: 'the tune',
  bass: 'the bass',
  figures: 'figures under the bass',
  closes: 'the bass notes of the closes',
};

export interface Choice {
  readonly gives: readonly Give[];
  /** So many chords at the beginning are given in all voices; 0 for none. */
  readonly opening: number;
  /** Bars given in all voices, by their printed numbers: `3, 5-6`; empty for none. */
  readonly bars: string;
}

export const THE_TUNE: Choice = { gives: ['tune'], opening: 0, bars: '' };
/** For a brief, and for a file that holds only what is to be given. */
export const ALL_OF_IT: Choice = { gives: ['all'], opening: 0, bars: '' };

/** The most opening chords that can be given. */
export const MOST_OPENING = 16;

const EXPECTED = `${listed(GIVES)}, opening=2 for the first two chords and bars=3+5-6 for single bars`;

/** Reads `tune,closes,opening=2,bars=3+5-6`. */
export function parseChoice(text: string): Outcome<{ readonly choice: Choice }> {
  const gives: Give[] = [];
  let opening = 0;
  let bars = '';
  for (const word of text.split(',').map((part) => part.trim().toLowerCase())) {
    const [name = '', value] = word.split('=').map((part) => part.trim());
    const give = GIVES.find((known) => known === name);
    if (give !== undefined && value === undefined) gives.push(give);
    else if (name === 'opening' && /^\d{1,2}$/.test(value ?? '') && Number(value) <= MOST_OPENING)
      opening = Number(value);
    else if (name === 'bars' && value !== undefined && value !== '') bars = value.replaceAll('+', ', ');
    else return refuse(`“${word}” can’t be given. What can: ${EXPECTED}.`);
  }
  return { ok: true, choice: { gives: GIVES.filter((give) => gives.includes(give)), opening, bars } };
}

/** `the tune, the first two chords and bars 3, 5-6`; `nothing` where nothing is. */
export function choiceInWords({ gives, opening, bars }: Choice): string {
  const given = [
    ...gives.map((give) => GIVE_WORDS[give]),
    ...(opening === 0 ? [] : [opening === 1 ? 'the first chord' : `the first ${opening} chords`]),
    ...(bars === '' ? [] : [`${/[,-]/.test(bars) ? 'bars' : 'bar'} ${bars}`]),
  ];
  return given.length === 0 ? 'nothing' : listed(given);
}

/** The indices of bars named as `3, 5-6`. */
export function barsNamed(
  bars: readonly Bar[],
  text: string,
): Outcome<{ readonly bars: ReadonlySet<number> }> {
  const found = new Set<number>();
  const [first, last] = [bars[0]?.number ?? '', bars.at(-1)?.number ?? ''];
  for (const part of text.split(',').map((name) => name.trim())) {
    if (part === '') continue;
    const [from = '', until = from] = part.split('-').map((name) => name.trim());
    const start = bars.findIndex(({ number }) => number === from);
    const end = bars.findLastIndex(({ number }) => number === until);
    if (start < 0 || end < start)
      return refuse(
        `There is no bar ${start < 0 ? from : until} to give; the piece has bars ${first} to ${last}.`,
      );
    for (let i = start; i <= end; i++) found.add(i);
  }
  return { ok: true, bars: found };
}
