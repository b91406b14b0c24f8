/** The words by which our files keep that a phrase ends with a note, or that none does: an unprinted `other-notation`. */
export const PHRASE_WORDS = { ends: 'phrase ends', 'goes on': 'phrase goes on' } as const;

export function phraseIn(words: string): 'ends' | 'goes on' | undefined {
  if (words === PHRASE_WORDS.ends) return 'ends';
  return words === PHRASE_WORDS['goes on'] ? 'goes on' : undefined;
}
