/** Looks things up in lists that are in order of time, without going through them. */
import type { Ticks } from './time.ts';

interface Stretch {
  readonly at: Ticks;
  readonly until: Ticks;
}

/** The index of the last item that begins at a moment or before; -1 where none does. */
export function lastBegun<T>(items: readonly T[], at: Ticks, begins: (item: T) => Ticks): number {
  let low = 0;
  let high = items.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (begins(items[middle]!) <= at) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** The stretch a moment lies in, of stretches that don't overlap. */
export function stretchAt<T extends Stretch>(stretches: readonly T[], at: Ticks): T | undefined {
  const stretch = stretches[lastBegun(stretches, at, ({ at }) => at)];
  return stretch !== undefined && at < stretch.until ? stretch : undefined;
}

/** Those that sound at some time after `from` and before `until`, of stretches that don't overlap. */
export function stretchesWithin<T extends Stretch>(
  stretches: readonly T[],
  from: Ticks,
  until: Ticks,
): readonly T[] {
  const before = lastBegun(stretches, from, ({ at }) => at);
  const first = before >= 0 && stretches[before]!.until > from ? before : before + 1;
  return stretches.slice(first, lastBegun(stretches, until - 1, ({ at }) => at) + 1);
}
