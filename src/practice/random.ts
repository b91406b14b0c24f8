/** Chance that can be had again: the same seed gives the same numbers on every machine. */

export interface Chance {
  /** A whole number from 0 to `below` - 1. */
  next(below: number): number;
  pick<T>(items: readonly T[]): T;
  /** The items in another order. */
  shuffled<T>(items: readonly T[]): T[];
}

/** Marsaglia's xorshift on 32 bits (2003). */
export function chance(seed: number): Chance {
  let state = (seed ^ 0x9e37_79b9) | 0 || 1;
  const step = (): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return state >>> 0;
  };
  // Seeds that are near to one another begin alike: the first numbers are thrown away.
  for (let i = 0; i < 16; i++) step();
  const next = (below: number): number => step() % below;
  return {
    next,
    pick: (items) => items[next(items.length)]!,
    shuffled(items) {
      const left = [...items];
      return items.map(() => left.splice(next(left.length), 1)[0]!);
    },
  };
}
