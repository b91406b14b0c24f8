/** Where the measures come from, told alike for all of them. */

/** The source of a measure; `halves` is how well its value in one half of a chorale foretells that in the other. */
export function countedHere(halves: string): string {
  return `A count of our own. In a study of 196 chorales its value in one half of a piece and in the other agree with a rank correlation of ${halves}.`;
}
