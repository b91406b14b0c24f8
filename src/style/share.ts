/** Shares and rates, undefined where there is nothing to divide by. */

/** `part` of `whole` in per cent. */
export function shareOf(part: number, whole: number): number | undefined {
  return whole === 0 ? undefined : (100 * part) / whole;
}

/** So many for each one. */
export function perOne(count: number, ones: number): number | undefined {
  return ones === 0 ? undefined : count / ones;
}
