/** Tunes to write on, for somebody who has none at hand. Invented, like the demonstration. */
export interface Tune {
  readonly title: string;
  readonly about: string;
  readonly text: string;
}

/** The melody as the soprano of an exercise whose other voices are still to be written. */
function tune(title: string, about: string, headers: string, melody: string): Tune {
  return { title, about, text: `title: ${title}\n${headers}\n\nS: ${melody}\n` };
}

export const TUNES: readonly Tune[] = [
  tune(
    'Harbour light',
    'F major, 4/4, four short phrases',
    'key: F major\nmetre: 4/4\ntempo: 76\nupbeat: 1',
    'C5 | A4 Bb4 C5 D5 | C5*2 Bb4! A4 | G4 A4 Bb4 A4 | G4*3! G4 | A4 Bb4 C5 F5 | E5 D5 C5! Bb4 | A4 G4 F4 G4 | F4*3! ||',
  ),
  tune(
    'The long field',
    'G major, 3/4, two phrases',
    'key: G major\nmetre: 3/4\ntempo: 84',
    'B4*2 A4 | G4*2 A4 | B4 C5 B4 | A4*3! | D5*2 C5 | B4*2 A4 | G4 A4 F#4 | G4*3! ||',
  ),
  tune(
    'Winter gate',
    'A minor, 4/4, two phrases',
    'key: A minor\nmetre: 4/4\ntempo: 66',
    'A4 B4 C5 B4 | A4 G4 E4*2! | A4 C5 D5 E5 | C5 B4 A4*2! ||',
  ),
];
