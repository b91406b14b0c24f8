/**
 * Every so-manyth of a long list, evenly from all of it, so that a change is tried in seconds; all of it where WHOLE is
 * set (`WHOLE=1 npm test`), as before a release.
 */
export function sampled<T>(all: readonly T[], step: number): T[] {
  return process.env.WHOLE ? [...all] : all.filter((_, i) => i % step === 0);
}
