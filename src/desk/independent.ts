/**
 * How much independent harmonisations of one tune agree, from the open chorales that set the same tune more than once;
 * derived by tests/bench/likeness.ts, which says how. Of all pairs p % agree in no more than `shares[p]` thousandths of
 * the added voices' time (`wholeBars[p]`: of the bars compared, those alike in all three added voices).
 */
export const INDEPENDENT: {
  /** Pairs of settings, and how many tunes they set. */
  readonly pairs: number;
  readonly tunes: number;
  readonly shares: readonly number[];
  readonly wholeBars: readonly number[];
} = {
  pairs: 147,
  tunes: 31,
  shares: [
    75, 214, 272, 288, 290, 296, 298, 304, 316, 317, 328, 328, 333, 338, 338, 342, 344, 345, 347, 353, 354,
    357, 360, 371, 378, 388, 388, 389, 392, 394, 396, 396, 402, 407, 410, 410, 412, 413, 414, 419, 419, 423,
    423, 427, 432, 434, 436, 439, 439, 443, 444, 446, 453, 456, 459, 462, 469, 470, 476, 484, 486, 488, 492,
    496, 496, 500, 503, 511, 514, 517, 517, 524, 525, 531, 535, 538, 538, 543, 546, 550, 556, 556, 560, 563,
    567, 575, 580, 583, 593, 604, 610, 660, 667, 694, 708, 750, 750, 769, 786, 792, 818,
  ],
  wholeBars: [
    0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 53,
    63, 67, 67, 67, 67, 71, 71, 71, 71, 71, 71, 77, 77, 77, 77, 77, 77, 77, 77, 77, 77, 77, 77, 83, 83, 83,
    83, 83, 83, 83, 83, 83, 91, 91, 100, 105, 125, 133, 133, 133, 133, 133, 133, 143, 143, 143, 143, 167, 167,
    167, 182, 182, 182, 182, 200, 200, 214, 231, 250, 273, 286, 286, 333, 333, 438, 467,
  ],
};
