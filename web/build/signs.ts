/** The signs of the music font that the page can draw: SMuFL code points (Bravura). The build leaves the others out. */
const RANGES: readonly (readonly [number, number])[] = [
  // Tops and bottoms of brackets; barlines and repeat dots.
  [0xe002, 0xe004],
  [0xe030, 0xe044],
  // Clefs, and those set smaller where they change; figures of a metre.
  [0xe050, 0xe069],
  [0xe07a, 0xe07c],
  [0xe080, 0xe08f],
  // Heads from the breve down, augmentation dot, flags, accidentals and their brackets.
  [0xe0a0, 0xe0a4],
  [0xe1e7, 0xe1e7],
  [0xe240, 0xe24f],
  [0xe260, 0xe26b],
  // Fermatas, rests, figures over a tuplet.
  [0xe4c0, 0xe4c1],
  [0xe4e0, 0xe4ee],
  [0xe880, 0xe88a],
  // Notes of metronome marks, and their dot.
  [0xeca2, 0xecab],
  [0xecb7, 0xecb7],
];

/** Written letters: those of the languages of Western and Central Europe, which a pupil's words and lyrics may be in. */
const LETTERS: readonly (readonly [number, number])[] = [
  [0x20, 0x7e],
  [0xa0, 0x17f],
  [0x2010, 0x2027],
  [0x2030, 0x203a],
  [0x266d, 0x266f],
];

export const MUSIC_SIGNS: string = textOf([[0x20, 0x20], [0x30, 0x39], ...RANGES]);
export const WORD_SIGNS: string = textOf(LETTERS);

function textOf(ranges: readonly (readonly [number, number])[]): string {
  return ranges
    .flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)))
    .join('');
}
