/** How much a tune in ABC may hold: few enough that the worst one is parsed in under a second. */
export const ABC_LIMITS = {
  /** Signs of text, after which some of the parser's work grows with the square. A long hymn in four voices has 4,000. */
  text: 24 * 1024,
  voices: 8,
  /** Groups of grace notes, each of which the parser looks for through the rest of its line. */
  graces: 400,
} as const;
