/** How high rests and gaps stand, so that they keep clear of the other voice on their staff. */
import { type ByVoice, byVoice, type VoiceName } from '../../src/score/score.ts';
import type { Sign } from './bars.ts';

/** Staff place of the lowest line and which voice shares the staff; `up` for the voice that keeps to the upper half. */
const SEATS: ByVoice<{ readonly lowest: number; readonly other: VoiceName; readonly up: boolean }> = {
  S: { lowest: 30, other: 'A', up: true },
  A: { lowest: 30, other: 'S', up: false },
  T: { lowest: 18, other: 'B', up: true },
  B: { lowest: 18, other: 'T', up: false },
};

/** Places by which a rest's middle keeps away from another voice's head. */
const CLEARANCE = 4;

/**
 * Gives every rest and gap its staff place. Alone or beside the same rest of the other voice it stands in the middle
 * of the staff (then one is drawn for both); else in its voice's half, moved outwards from the other voice's notes.
 */
export function settleHeights(signs: ByVoice<readonly Sign[]>): ByVoice<readonly Sign[]> {
  return byVoice((voice) => {
    const { lowest, other, up } = SEATS[voice];
    const middle = lowest + 4;
    return signs[voice].map((sign) => {
      if (sign.kind === 'note') return sign;
      const sounding = signs[other].filter(
        (each) => each.at < sign.at + sign.duration && each.at + each.duration > sign.at,
      );
      const twin = sounding.find(
        (each) =>
          sign.kind === 'rest' &&
          each.kind === 'rest' &&
          each.at === sign.at &&
          each.value.base === sign.value.base,
      );
      if (twin) return { ...sign, place: middle, ...(up ? {} : { shared: true as const }) };
      const notes = sounding.filter((each) => each.kind === 'note').map((each) => each.place);
      const home = up ? middle + 2 : middle - 2;
      // A whole bar's rest stands in the middle of its bar, seldom right under or over a head.
      const away = sign.wholeBar ? 2 : sign.kind === 'gap' ? CLEARANCE - 1 : CLEARANCE;
      // A rest sits on lines only: an even number of places from the lowest line.
      const place = up
        ? Math.max(home, ...notes.map((note) => even(note + away - lowest, 1) + lowest))
        : Math.min(home, ...notes.map((note) => even(note - away - lowest, -1) + lowest));
      return { ...sign, place };
    });
  });
}

function even(places: number, towards: 1 | -1): number {
  return places % 2 === 0 ? places : places + towards;
}
