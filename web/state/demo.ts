/** What the page opens on for someone new: a half-finished exercise with a few things to mend. Invented. */
export const DEMO = `title: A tune for practice
key: G major
metre: 4/4
tempo: 72
upbeat: 1

S: G4 | G4 A4 B4 D5 | C5 B4 A4! B4 | C5 B4 A4 B4 | A4*2 G4! D5 |
A: D4 | D4 D4 G4 G4 | G4 G4 F#4! G4 | G4 G4 F#4 G4 | E4 F#4 G4! ? |
T: B3 | B3 A3 D4 D4 | E4 D4 D4! D4 | E4 D4 D4 B3 | C4 C4 B3! ? |
B: G3 | G3 F#3 G3 B3 | C4 G3 D3! G3 | C4 G3 D3 E3 | C3 D3 G2! G3 |

S: D5 C5 B4 A4 | B4 C5 D5! B4 | C5 B4 A4 G4 | A4*2 G4! |
A: ?*4 | ?*4 | ?*4 | ?*3 |
T: ?*4 | ?*4 | ?*4 | ?*3 |
B: B3 A3 G3 F#3 | G3 E3 D3! ? | ?*4 | ?*3 |
`;
