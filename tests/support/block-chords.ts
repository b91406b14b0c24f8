/** Eight bars of block chords, one to a note of the tune: fault-free but for two places, and no style at all. */
export const BLOCK_CHORDS = `title: Block chords
key: C major
metre: 4/4

S: E5 D5 C5 D5 | E5 F5 E5*2! | G5 F5 E5 D5 | C5 D5 C5*2! |
A: G4 G4 G4 G4 | G4 A4 G4*2! | G4 A4 G4 G4 | E4 G4 E4*2! |
T: C4 B3 C4 B3 | C4 C4 C4*2! | C4 C4 C4 B3 | G3 B3 G3*2! |
B: C3 G3 E3 G3 | C3 F3 C3*2! | E3 F3 C3 G3 | A3 G3 C3*2! |

S: E5 D5 C5 D5 | E5 F5 E5*2! | G5 F5 E5 D5 | C5 D5 C5*2! ||
A: G4 G4 G4 G4 | G4 A4 G4*2! | G4 A4 G4 G4 | E4 G4 E4*2! ||
T: C4 B3 C4 B3 | C4 C4 C4*2! | C4 C4 C4 B3 | G3 B3 G3*2! ||
B: C3 G3 E3 G3 | C3 F3 C3*2! | E3 F3 C3 G3 | A3 G3 C3*2! ||
`;
