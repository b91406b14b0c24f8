/** The plain definition of an augmented sixth that does not resolve. */
import { following, type Plain, type PlainNote } from './plain.ts';
import type { Place } from './planter.ts';

/** Places where the upper voice is an augmented sixth above the lower, and the two do not open outwards by semitone. */
export function openSixths(plain: Plain, upper: PlainNote['voice'], lower: PlainNote['voice']): Place[] {
  return plain.voices[upper].flatMap((high) =>
    plain.voices[lower].flatMap((low) => {
      if (low.at >= high.until || high.at >= low.until) return [];
      const wide = (high.place - low.place) % 7 === 5 && (high.midi - low.midi) % 12 === 10;
      const [up, down] = [following(plain, high), following(plain, low)];
      if (!wide || !up || !down) return [];
      const right = up.midi - high.midi === 1 && low.midi - down.midi === 1;
      const sinks = up.midi - high.midi === -1;
      return right || sinks || (up.midi === high.midi && down.midi === low.midi)
        ? []
        : [{ at: high.at, until: Math.max(up.until, down.until), voices: [upper, lower] }];
    }),
  );
}
