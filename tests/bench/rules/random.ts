/** Chance that can be repeated: a multiplicative congruential generator (Lehmer; modulus 2^31 - 1, multiplier 48271). */
export interface Random {
  /** A whole number from 0 to below `n`. */
  readonly below: (n: number) => number;
  /** The items in another order, each once. */
  readonly shuffled: <T>(items: readonly T[]) => T[];
}

export function randomFrom(seed: number): Random {
  let state = (Math.abs(Math.trunc(seed)) % 2147483646) + 1;
  const below = (n: number) => {
    state = (state * 48271) % 2147483647;
    return Math.floor((state / 2147483647) * n);
  };
  const shuffled = <T>(items: readonly T[]) => {
    const out = [...items];
    for (let i = out.length - 1; i > 0; i--) {
      const j = below(i + 1);
      [out[i], out[j]] = [out[j]!, out[i]!];
    }
    return out;
  };
  return { below, shuffled };
}
