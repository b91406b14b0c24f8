/**
 * The weights of the reading, by family of features and by name (see layout.ts). Written by
 * tests/bench/harmonyTraining.ts, not by hand: an averaged perceptron over the open chorales and their human
 * analyses (D. Tymoczko and colleagues, as published in the When in Rome meta-corpus). Only sums are compared, so
 * the unit has no meaning; greater is likelier.
 */
export const TABLE = `
# tone by shape
root: none>repeated 4.1, none>step_up -1.2, none>step_down 1.5, none>leap 11.1, none>held -7.6, repeated>none 2.6, repeated>repeated 9.5, repeated>step_up 7.7, repeated>step_down 2.3, repeated>leap 10.4, repeated>held -3.7, step_up>none 0.2, step_up>repeated 7.7, step_up>step_up 13.2, step_up>step_down 4.2, step_up>leap 8, step_up>held 6.3, step_down>none -2.1, step_down>repeated 3.7, step_down>step_up 5.9, step_down>step_down 1.3, step_down>leap 7.3, step_down>held 2.3, leap>none 1.9, leap>repeated 4.2, leap>step_up 3.7, leap>step_down 14.8, leap>leap 20.9, leap>held 3.3, held>none -1.4, held>repeated 1.8, held>step_up -2.8, held>step_down 1.8, held>leap 1.6, held>held -4.5
third: none>repeated 2.9, none>step_up 3, none>step_down -1.5, none>leap -4, none>held -0.6, repeated>none -2.2, repeated>repeated 2.8, repeated>step_up 1.7, repeated>step_down 1.8, repeated>leap 1.4, repeated>held 2.6, step_up>none 1.6, step_up>repeated 5.9, step_up>step_up 12, step_up>step_down 3.7, step_up>leap 5.6, step_up>held 0.5, step_down>none -0.5, step_down>repeated 2.1, step_down>step_up 6.6, step_down>step_down 6.4, step_down>leap 8.9, step_down>held -2.4, leap>none 0.9, leap>repeated 4.7, leap>step_up 6.1, leap>step_down 1.6, leap>leap 11, leap>held -2.7, held>none -2.3, held>repeated -2.6, held>step_up 2.3, held>step_down -2.4, held>leap -1.6, held>held -8.9
fifth: none>repeated -5.3, none>step_up 5.3, none>step_down 3.2, none>leap 1, none>held -4.2, repeated>none -2.9, repeated>repeated 6.6, repeated>step_up 11, repeated>step_down 3.5, repeated>leap 6.7, repeated>held -5.3, step_up>none -0.4, step_up>repeated 0.3, step_up>step_up 9.4, step_up>step_down 4.7, step_up>leap -1.2, step_up>held -0.1, step_down>none 1, step_down>repeated 8.4, step_down>step_up 9.5, step_down>step_down 1.8, step_down>leap 7.5, step_down>held -1.7, leap>none -1.8, leap>repeated 1.4, leap>step_up 11, leap>step_down 8.1, leap>leap 3.6, leap>held 0.3, held>none -2.2, held>repeated -7.6, held>step_up 3.8, held>step_down 1.2, held>leap 0.4, held>held -4.3
seventh: none>repeated -1.2, none>step_up -0.3, none>step_down 0.8, none>leap -1, repeated>none 1, repeated>repeated -3, repeated>step_up -3.9, repeated>step_down 3.3, repeated>leap -1.1, repeated>held 1.4, step_up>repeated -2, step_up>step_up -18.6, step_up>step_down 3.8, step_up>leap 6.1, step_up>held 4.3, step_down>repeated -5.6, step_down>step_up -8.6, step_down>step_down 6.3, step_down>leap -6.2, step_down>held 4.2, leap>none -1.4, leap>repeated -2.4, leap>step_up -5.6, leap>step_down 7, leap>leap -1.9, leap>held 0.8, held>none 0.3, held>repeated -7, held>step_up -6.1, held>step_down -0.9, held>leap -0.2, held>held -3.5
foreign: none>step_up -0.6, none>leap -0.1, none>held 1.9, repeated>none 1.2, repeated>repeated -6.6, repeated>step_up -6.4, repeated>step_down -19.4, repeated>leap 2.7, repeated>held -8.5, step_up>none -1.6, step_up>repeated -2.9, step_up>step_up -7.7, step_up>step_down -2.6, step_up>leap -1.7, step_up>held -9.4, step_down>none -0.5, step_down>repeated -6.4, step_down>step_up -6.9, step_down>step_down -12, step_down>leap -5.5, step_down>held -2.6, leap>none -1, leap>repeated -4.2, leap>step_up -1.8, leap>step_down -1.1, leap>leap -1.7, leap>held -2, held>none 3.8, held>repeated -10.8, held>step_up -5, held>step_down -14.1, held>leap -6.5, held>held -1.4
foreign_to-member: none>step_up -4.2, none>step_down 2.3, none>leap -4.7, none>held -0.4, repeated>step_up -13.2, repeated>step_down 8.3, repeated>leap -7, repeated>held -5.7, step_up>step_up -3.2, step_up>step_down -3, step_up>leap -9.8, step_up>held -1, step_down>step_down -14.2, step_down>leap -4.1, step_down>held -8.6, leap>step_up 4.8, leap>step_down -0.6, leap>leap -3.1, leap>held 0.1, held>step_up -9.2, held>step_down 10.2, held>leap -7.5, held>held -2.9
foreign_from-member: step_up>none 1.9, step_up>repeated 5.1, step_up>step_up 2.8, step_up>step_down -1.1, step_up>leap -12.1, step_up>held -13.2, step_down>none 2.1, step_down>repeated 6.1, step_down>step_up 3.2, step_down>step_down 6.9, step_down>leap -5.3, step_down>held -4.9, leap>none 0.4, leap>repeated 2.6, leap>step_up -9, leap>step_down -12, leap>leap -10.4, leap>held -7.4, held>none 1.5, held>repeated -12.1, held>step_up -2.6, held>step_down -14.7, held>leap -3.4, held>held -2.6
foreign_between-members: step_up>step_up 12.3, step_up>step_down -8.5, step_up>leap -3.4, step_up>held -16.2, step_down>step_up -2, step_down>step_down 4.6, step_down>leap -3.5, step_down>held -2.7, leap>step_up -10.3, leap>step_down -16.3, leap>leap -6.2, leap>held -10.3, held>step_up -5.9, held>step_down 8.6, held>leap -1.3, held>held -8.9
# tone by place
root downbeat: semiquaver 1.9, quaver 12.1, crotchet 16.2, long 14.5
root start: semiquaver 1, quaver 8.2, crotchet 14.6, long 11.6
root weak_start: semiquaver 0.6, quaver 11.6, crotchet 2
root beat: semiquaver 1.7, quaver 10.5, crotchet 13.6, long 3.8
root offbeat: semiquaver 3.4, quaver 13.4, crotchet 0.8
root small: semiquaver 2
root held_in: semiquaver 11.8, quaver -4.7, crotchet -5.1, long -5.5
third downbeat: semiquaver -1.9, quaver 5.4, crotchet 14.3, long 12.3
third start: semiquaver 0.9, quaver 3.7, crotchet 12.2, long 0.9
third weak_start: semiquaver -2.3, quaver 7.4, crotchet 1.4
third beat: quaver 7.1, crotchet 10.8, long 3.3
third offbeat: semiquaver 1.1, quaver 9, crotchet -0.9
third small: semiquaver -5.1
third held_in: semiquaver 3, quaver -6.9, crotchet -8.9, long -2.7
fifth downbeat: semiquaver -1.5, quaver 5.7, crotchet 13, long 10.6
fifth start: semiquaver -3.8, quaver 7.8, crotchet 12.5, long 1.6
fifth weak_start: semiquaver -3.1, quaver 0.1, crotchet -0.7
fifth beat: semiquaver 1.2, quaver 10.2, crotchet 12.2, long 5.4
fifth offbeat: semiquaver -6.7, quaver 14.9, crotchet -1.4
fifth small: semiquaver 3.4
fifth held_in: semiquaver -0.6, quaver -2, crotchet -0.6, long -5.5
seventh downbeat: quaver -6.7, crotchet 6.5, long 4.1
seventh start: semiquaver 10.1, quaver -13.7, crotchet 9.3, long -0.6
seventh weak_start: semiquaver -5.8, quaver 5.3, crotchet 0.6
seventh beat: semiquaver -0.9, quaver -4.4, crotchet -12, long -1
seventh offbeat: semiquaver -3.5, quaver -8.5, crotchet -0.9
seventh small: semiquaver -1.6
seventh held_in: quaver -9.5, crotchet -1.1, long -6.7
foreign downbeat: quaver -14.3, crotchet -16.7, long -9.9
foreign start: semiquaver -3, quaver -17.8, crotchet -18.1
foreign weak_start: quaver -16
foreign beat: quaver -3.1, crotchet -4.1, long -1
foreign offbeat: semiquaver -2.4, quaver -2.1
foreign small: semiquaver 1.1
foreign held_in: quaver -23.2, crotchet -9.6, long -1.2
foreign_to-member downbeat: semiquaver 2.6, quaver -16.4, crotchet -12.6, long -4.9
foreign_to-member start: quaver -5.3, crotchet -8.6, long -2.2
foreign_to-member weak_start: semiquaver -2.6, quaver -11.8
foreign_to-member beat: quaver -9.5, crotchet -1.8, long 1.9
foreign_to-member offbeat: semiquaver -4.9, quaver 8.4
foreign_to-member small: semiquaver 0.6
foreign_to-member held_in: quaver -6.6, crotchet -2.8
foreign_from-member downbeat: quaver -10.8, crotchet -11.3, long 5.6
foreign_from-member start: semiquaver -2.9, quaver -17.2, crotchet -22.8
foreign_from-member weak_start: semiquaver 11.9, quaver -6.8
foreign_from-member beat: semiquaver -2.4, quaver 1.5, crotchet 1.5, long 4.8
foreign_from-member offbeat: semiquaver 0.5, quaver 3.1, crotchet -2.5
foreign_from-member small: semiquaver 3.8
foreign_from-member held_in: quaver -26.5, crotchet -5.8, long -1.6
foreign_between-members downbeat: semiquaver -1.2, quaver -13.7, crotchet 1, long -2.4
foreign_between-members start: semiquaver -1.8, quaver -1.8, crotchet -2.8, long -1
foreign_between-members weak_start: semiquaver 23.1, quaver -8.4, crotchet -2.9
foreign_between-members beat: quaver -19.2, crotchet -1.6, long -1
foreign_between-members offbeat: semiquaver -9.3, quaver -2.9, crotchet -12
foreign_between-members small: semiquaver -4.3
foreign_between-members held_in: quaver -5.2, crotchet -5.8, long 3.5
# tone by kind
root suspension: downbeat 2.3, start -2.4, weak_start -1.9, beat 2.5, offbeat 1.9, held_in 1.8
root retardation: downbeat -0.9, start 0.3, weak_start 2.2, beat 6.1, held_in -2.8
root pedal: downbeat -1.9, start 3.6, weak_start -1.8, beat 6, held_in -2.7
root passing: downbeat 6.4, start -0.3, weak_start -3.2, beat 6.3, offbeat 1, small 4.4
root neighbour: downbeat 9.9, start 3.8, weak_start -8.9, beat -5.5, offbeat 12.7, small -2.1
root escape: downbeat 12.4, start 8.9, beat -8.7, offbeat 2.9, small -0.2
root appoggiatura: downbeat 1.2, start 10.1, weak_start 4.4, beat 7.9, offbeat -5.1
root anticipation: downbeat -0.3, start 3.6, weak_start 6.9, beat 1, offbeat 12.8
root leaping: downbeat 8.1, start 5.6, weak_start 16.5, beat 9.6, offbeat -8.5, held_in 1.6
root edge: downbeat 7.5, start 2.2, weak_start 0.1, beat 4.3, offbeat -0.1, held_in -1.4
third suspension: downbeat 1.9, start 0.8, weak_start 1, beat -1.6, offbeat -0.3, held_in -2.4
third retardation: downbeat -1.6, start 0.3, weak_start -2.1, beat 4.9, offbeat 0.1, held_in 2.3
third pedal: downbeat 1.8, start -2, weak_start 2, beat 3.1, offbeat 0.6, held_in -11.5
third passing: downbeat 3.8, start 3.8, weak_start -3.7, beat 10.9, offbeat 5.7, small -2.1
third neighbour: downbeat 7.9, start 7.8, weak_start -7.9, beat -0.8, offbeat 5.8, small -2.6
third escape: downbeat 7.8, start 1.5, weak_start 3, beat 0.1, offbeat 3.6, small -1.5
third appoggiatura: downbeat 5.4, start 5.3, weak_start 7.2, beat -3.5, offbeat -6.7
third anticipation: downbeat 1.5, start -0.6, weak_start 3.5, beat 2, offbeat 3.9
third leaping: downbeat 3.1, start 4.5, weak_start 3.4, beat 3.9, offbeat -3.6, small 1.2, held_in -1.6
third edge: downbeat -1.5, start -3.6, beat 2.3, held_in -2.3
fifth suspension: downbeat 5.3, start -1.7, weak_start -0.6, beat -0.3, offbeat 0.8, held_in 1.2
fifth retardation: downbeat 4.2, start 3.5, weak_start 1.1, beat 3.6, offbeat -1.4, held_in 3.8
fifth pedal: downbeat -0.6, start -2.7, weak_start -0.4, beat 5.4, offbeat -0.3, held_in -11.9
fifth passing: downbeat 7.6, start 3.3, weak_start -1.5, beat 0.7, offbeat 0.7, small 0.4
fifth neighbour: downbeat 5.6, start 6.2, weak_start -11.8, beat 5.6, offbeat 8.3, small 0.4
fifth escape: downbeat 4.3, start 0.5, weak_start -3.3, beat -1.7, offbeat 2.7, small 3.8
fifth appoggiatura: downbeat 2.1, start 4.9, weak_start 13.9, beat 5, offbeat -7
fifth anticipation: downbeat -0.4, start -2.2, beat 0.9, offbeat 0.8
fifth leaping: downbeat 2.5, start 1.3, weak_start 2.4, beat 8.6, offbeat -3.3, small -1.2, held_in 0.4
fifth edge: downbeat -2.8, start 5, weak_start -3.6, beat 1.3, offbeat 5.5, held_in -2.2
seventh suspension: downbeat 4.3, start -0.5, weak_start -3.2, beat -0.5, offbeat 3.2, held_in -0.9
seventh retardation: downbeat -3, start 0.1, beat -1, held_in -6.1
seventh pedal: downbeat -0.7, start -0.9, held_in -10.5
seventh passing: downbeat 7.1, start 5.6, weak_start -5.5, beat -8, offbeat -10.7, small -0.7
seventh neighbour: downbeat 0.1, start 3.7, weak_start -7.4, beat -3.3, offbeat 4.1, small -2.1
seventh escape: downbeat -1.4, start 0.6, weak_start 0.5, beat 0.2, offbeat -1.1, small 1.1
seventh appoggiatura: downbeat -2.2, start -2.6, weak_start 7.5, beat 1.5, offbeat -2.9
seventh anticipation: downbeat -0.2, start 3.6, weak_start 6.5, beat -6.2, offbeat -5.6
seventh leaping: downbeat 0.5, start -3.3, weak_start -0.3, offbeat 0.2, held_in -0.2
seventh edge: downbeat -0.7, start -1.2, weak_start 2, beat -1, held_in 0.3
foreign suspension: downbeat -7.7, start -5, beat 2.6, offbeat -1, held_in -10
foreign retardation: downbeat -6.8, start -11.7, beat -1, held_in -22.8
foreign pedal: downbeat -7.1, start -12.2, beat -1.4, held_in -38.9
foreign passing: downbeat -15.3, start -5.1, weak_start -0.5, beat 4.6, offbeat 7.8, small -2
foreign neighbour: downbeat -13.1, start -18, weak_start -9.5, beat 1.2, offbeat 12.1, small 6.4
foreign escape: downbeat -13.1, start -8.5, weak_start -0.9, beat -12.1, offbeat -7.5, small -3.2
foreign appoggiatura: downbeat -8.5, start -15.6, weak_start -0.6, beat -7.4, offbeat -14
foreign anticipation: downbeat -25.8, start -23.4, weak_start -2, beat -13.9, offbeat -10.9
foreign leaping: downbeat -7.6, start -6.3, beat -5.1, offbeat -6.7, held_in -18.6
foreign edge: start 0.5, beat -1.5, offbeat -3.9, held_in 5.3
# bass tone by place
root downbeat: quaver -2.7, crotchet 6.7, long 8.6
root start: quaver 2.1, crotchet 2, long 11.2
root weak_start: semiquaver -0.4, quaver 4.5, crotchet 2
root beat: quaver 10.3, crotchet 16.2, long 1.5
root offbeat: semiquaver 0.4, quaver 4.8, crotchet 0.2
root small: semiquaver 0.3
root held_in: quaver -12.5, crotchet -4, long 0.7
third downbeat: quaver 3.6, crotchet 2.9, long 1.6
third start: quaver 4.6, crotchet -0.3, long -0.6
third weak_start: quaver 3
third beat: crotchet -3.4, long 0.4
third offbeat: semiquaver 0.1, quaver 8.8
third small: semiquaver -0.6
third held_in: semiquaver -0.6, quaver 4.5, crotchet -4.6, long -3.2
fifth downbeat: quaver -1.4, crotchet 9.8, long 1.2
fifth start: quaver -2.7, crotchet -4.6
fifth weak_start: semiquaver -1.3, quaver -1.5
fifth beat: quaver -7.1, crotchet -11.2, long -1.9
fifth offbeat: quaver -4.1
fifth small: semiquaver 1.2
fifth held_in: quaver -6.6, crotchet -12, long -0.8
seventh downbeat: quaver -4.2, crotchet -1.2
seventh start: quaver -8.4, crotchet -3.2, long -0.6
seventh weak_start: semiquaver -0.2, quaver 5.6
seventh beat: quaver -2.5, crotchet -3
seventh offbeat: quaver -5.5
seventh small: semiquaver -1
seventh held_in: quaver -6, crotchet -1.2, long -1
foreign downbeat: quaver -14.7, crotchet -0.2, long 1.2
foreign start: quaver 3, crotchet -2.3, long -1.3
foreign weak_start: semiquaver 7.1, quaver -16.8
foreign beat: quaver -14, crotchet -2.2, long 3.7
foreign offbeat: semiquaver -5.7, quaver 2.4, crotchet -2.4
foreign small: semiquaver 0.1
foreign held_in: quaver -4, crotchet -0.5, long -2.8
# seventh by kind
M7 suspension: downbeat 2.2, start 3.8, weak_start -1.9, beat 2, offbeat 3.9, held_in -15.9
M7 retardation: downbeat -0.8, start 1.9, held_in 0.4
M7 pedal: downbeat -2.4, start 0.8, held_in -0.3
M7 passing: downbeat 2.9, start 0.9, weak_start 18.7, beat -2.9, offbeat 1.4, small 5.9
M7 neighbour: downbeat 1.4, start 1, weak_start -4.8, beat -1.5, offbeat 5.7, small 0.8
M7 escape: downbeat -0.2, start -2.2, weak_start -1.4, beat 3.2, offbeat -1.7, small 1.1
M7 appoggiatura: start -4.6, weak_start 3.6, beat 3.5, offbeat -4.2
M7 anticipation: downbeat -1.9, start 3.3, weak_start 6, beat -2, offbeat -2.1
M7 leaping: downbeat 1.9, start -2.2, weak_start -3.5, held_in -0.3
M7 edge: downbeat 0.7, held_in 0.8
Mmaj7 suspension: downbeat -0.1, start -0.8, held_in 10
Mmaj7 retardation: downbeat -0.9, start -0.8, beat -1, held_in -1.9
Mmaj7 pedal: downbeat 1.3, start -1, held_in -3.8
Mmaj7 passing: downbeat -1.6, start -0.8, weak_start -15.8, beat -2, offbeat -6.5, small -0.4
Mmaj7 neighbour: start -0.9, weak_start -1.6, offbeat 1.2, small -0.1
Mmaj7 escape: start -0.9, beat -3
Mmaj7 appoggiatura: downbeat -0.8, start -1, weak_start 2.6, beat -1, offbeat -0.4
Mmaj7 anticipation: downbeat -0.7, start 2.8, weak_start -0.8, beat -3
Mmaj7 leaping: downbeat 0.7, start 2, held_in 4.2
Mmaj7 edge: start -1, beat -1
m7 suspension: downbeat 3.9, start 6, weak_start -0.4, beat -1.8, offbeat -1.6, held_in -2.5
m7 retardation: downbeat -0.6, start -0.2, held_in -1.6
m7 pedal: start 0.4, held_in -2.6
m7 passing: downbeat 0.7, start 5.1, weak_start -8.6, beat -2.4, offbeat -3, small -6.9
m7 neighbour: downbeat -0.7, start 1.8, weak_start -1.4, beat -0.3, offbeat 3.9, small -2.5
m7 escape: downbeat -0.3, start 1.1, weak_start -0.1, offbeat 1.4
m7 appoggiatura: downbeat -1, start 1.2, weak_start 2.5, offbeat -0.1
m7 anticipation: downbeat 0.4, start 1, weak_start -1.7, beat -1.1, offbeat -1.3
m7 leaping: downbeat -1.6, start -2.9, weak_start 1.7, offbeat 0.8, held_in 1.6
m7 edge: held_in -0.4
ø7 suspension: downbeat 0.4, start -3.8, held_in 7.7
ø7 retardation: downbeat -0.6, held_in -2
ø7 pedal: downbeat 1.2, start -0.7, held_in -2.7
ø7 passing: downbeat 0.7, weak_start -3.3, beat -0.8, offbeat -0.1, small 0.8
ø7 neighbour: downbeat -0.9, start -1.2, weak_start 0.1, offbeat -5.8, small -0.6
ø7 escape: downbeat -0.9, start -0.8, weak_start 1.9, offbeat -0.8
ø7 appoggiatura: downbeat 1.5, start 2.4, weak_start -2, offbeat -0.3
ø7 anticipation: downbeat 0.4, start -2.4, weak_start 3.9, offbeat -2.2
ø7 leaping: downbeat 1, start -0.5, weak_start 1.5, offbeat -0.6, held_in -4.4
ø7 edge: downbeat -1
o7 suspension: downbeat -0.9, start -2.8, weak_start -0.9, beat -0.8, offbeat 0.9, held_in -0.4
o7 retardation: held_in -0.7
o7 pedal: downbeat -0.8, held_in -1.6
o7 passing: downbeat 5.1, start 2.3, weak_start 3.9, offbeat -1.4
o7 neighbour: downbeat 0.2, start 3, weak_start 1.3, beat -0.6, offbeat -0.9, small 0.3
o7 escape: start 5
o7 appoggiatura: downbeat -1.9, start 0.7, weak_start -0.2, beat -1, offbeat 2.1
o7 anticipation: downbeat 1.6, start -0.2, weak_start -0.9, beat -0.1
o7 leaping: start 0.9, held_in -0.6
o7 edge: downbeat -0.4, start -0.2, weak_start 2
mmaj7 passing: weak_start -0.4
mmaj7 neighbour: weak_start -1
mmaj7 escape: start -1
+maj7 suspension: downbeat -0.4, start -2.8, held_in 1.9
+maj7 retardation: start -0.8
+maj7 pedal: start -0.4
+maj7 passing: start -1, offbeat -0.9
+maj7 neighbour: beat -0.9
+maj7 escape: start -0.7
+maj7 appoggiatura: start -0.4, weak_start 1.1, offbeat -0.1
+maj7 anticipation: start -0.8
+maj7 leaping: downbeat -1.4, start -0.3, held_in -0.7
Fr suspension: held_in -0.7
Fr passing: offbeat -0.2
Ger suspension: downbeat -0.8, held_in -0.9
Ger retardation: held_in -0.3
Ger pedal: held_in 0.6
Ger passing: downbeat -0.6, start -1
Ger appoggiatura: start -0.9
Ger leaping: start -0.4
# members present
2 M: r3-- 1.2
2 m: r--- -0.3
2 +: r3-- -0.5
2 M7: r3-7 -0.6, r357 -0.4
2 ø7: --57 -0.3
3 M: r35- 1.6
3 m: r--- -0.7, r3-- -2.3, -35- -0.3, r35- 2.6
3 o: -35- -0.9, r35- -1.9
3 M7: --57 -0.3, -357 -0.6
3 ø7: r--7 -0.6, --57 -1
3 o7: r35- 4.1, r-57 2
4 M: r--- 2.1, -3-- -1, r3-- -4.7, --5- 3.7, r-5- -24, -35- -15.5, r35- 8
4 m: r--- -4.4, r3-- -3.5, --5- -0.4, r-5- -16.3, -35- -3.7, r35- 5.1
4 o: r3-- -11.1, r-5- 0.1, -35- -14.8, r35- 20.5
4 +: r3-- -8.6, r-5- -0.5, -35- -2.3, r35- 0.5
4 M7: r--- 4, r3-- 4.4, -35- 1.9, r35- 27.8, r--7 2, r3-7 8.3, --57 12.2, r-57 -15.5, -357 -17.1, r357 8.6
4 Mmaj7: r3-7 -0.8, --57 -0.9, r-57 -5.1, -357 -14, r357 6.5
4 m7: r35- 17.6, -3-7 0.5, r3-7 -9.6, --57 3.4, r-57 -4, -357 -13.3, r357 2.3
4 ø7: r3-- 13.7, r35- 2, -3-7 1.8, r3-7 -12.1, --57 1.2, r-57 0.8, -357 -17.9, r357 14.8
4 o7: -35- 3.9, r35- 8, r3-7 -5.3, --57 2, r-57 4.1, -357 -11.2, r357 20.4
4 mmaj7: r-57 -1.6, -357 -0.9
4 +maj7: r3-7 -0.7, -357 -5.2, r357 -0.8
4 It: r-5- -1, -35- 1.4
4 Fr: r3-7 -0.8, r357 -0.2
4 Ger: -357 -5.8, r357 1.6
# members at start
M: ---- 2.1, r--- -8.7, -3-- -2.4, r3-- -14.9, --5- 0.6, r-5- -1.4, -35- -5.8, r35- 2.1
m: ---- 2, r--- -5.3, -3-- -1.5, r3-- -15.6, --5- -0.1, r-5- -8.8, -35- -8.1, r35- 13.4
o: r--- -1.2, -3-- -0.4, r3-- -10.3, --5- -0.6, r-5- 0.9, -35- -6.3, r35- 9.8
+: r3-- -11.1, r-5- -0.5, -35- -3.8, r35- 4
M7: r--- -1.8, r3-- 10.7, r-5- -6.6, -35- 0.2, r35- 9, ---7 -3.5, r--7 -1.6, -3-7 -0.5, r3-7 7.1, --57 -5.8, r-57 0.8, -357 -2.8, r357 29.4
Mmaj7: r3-- -1, r35- -3.5, -3-7 -4.9, r3-7 1.2, --57 -4.3, r-57 -1, -357 -12.4, r357 11.4
m7: r3-- 12.4, r-5- -0.2, -35- -2.4, r35- -9.7, ---7 -0.6, r--7 -1.7, -3-7 1.4, r3-7 -8.3, --57 5.3, r-57 -3.9, -357 -18.6, r357 23
ø7: r--- 2, r3-- 10.4, -35- -1.8, r35- -1.2, ---7 -1.7, r--7 -1.2, -3-7 0.8, r3-7 -11.3, --57 -0.9, r-57 3.6, -357 -18.3, r357 22
o7: r3-- -0.9, r-5- 1.3, -35- 0.2, r35- 13.7, ---7 -0.3, -3-7 0.9, r3-7 -4.9, r-57 3.5, -357 0.6, r357 13.9
mmaj7: --57 -1, r-57 -0.6, -357 -0.9
+maj7: r3-- -0.9, r35- -0.1, r3-7 -2.4, -357 -5.2, r357 1.9
It: r-5- -1, -35- 1.4
Fr: r35- -0.2, r3-7 -0.8
Ger: -357 -5.8, r357 1.6
# bass chosen
M a: only 15.1, first -9.8, after_foreign 3.4, later -10.2, none -27.4
M b: only 16.1, first -11.8, after_foreign 5.9, later -10.3, none 10.3
M c: only -5.7, after_foreign -0.4, later -3.5
m a: only 12.5, first -11.4, after_foreign 0.3, later -4, none -11.6
m b: only 5.6, first -9, after_foreign 3.3, later -2.3, none 3.8
m c: only -2.7, first -0.6, after_foreign -5.5, later -4.3, none 1.8
o a: only -6.4, first -0.4, after_foreign 0.1, none -7.4
o b: only 4.6, first -1.6, after_foreign 7.4, later -1.2, none 10.1
o c: only -9, first -0.9, after_foreign -3.3
+ a: only -8.7, none -0.9
+ b: only -1.2
+ c: after_foreign -0.6
M7 a: only 19.5, first -8, after_foreign -0.1, later -6, none -12.7
M7 b: only 17.2, first -2.6, after_foreign 1.7, later -1.9, none 6
M7 c: only 4.2, first -1.6, after_foreign 8.7, later -1.6
M7 d: only 16.2, first -7.8, after_foreign -2, later -0.7, none 5.9
Mmaj7 a: only 4.6, first 0.8, after_foreign -0.8, none -2.1
Mmaj7 b: only 2.3, first -2, after_foreign -2.8
Mmaj7 c: only -5.3, first -1, after_foreign -0.4
Mmaj7 d: only -7.7
m7 a: only 10.7, first 0.5, after_foreign 2.1, later 1.4, none 0.4
m7 b: only 5.6, first -5.7, after_foreign -2, later -0.7, none 3.9
m7 c: only -2.6, first -2, after_foreign -1.4
m7 d: only -12.2, first -1
ø7 a: only 11.7, first -0.9, after_foreign 0.5, none -3.1
ø7 b: only 6.9, first -9.7, after_foreign 1, later -1.9, none 2.2
ø7 c: only 3, first -1.4, after_foreign 2
ø7 d: only -6.6, after_foreign -1
o7 a: only 2.8, first -0.8, after_foreign 3.7
o7 b: only 7.8, first -1.8, after_foreign 1.9, none 4.3
o7 c: only 10.2, later -0.1
o7 d: only -3.6, first -0.3, none 4.1
mmaj7 a: only -0.2
mmaj7 b: only -0.9
mmaj7 c: only -1.4
+maj7 a: only -3.6
+maj7 b: only -0.3, first -0.1
+maj7 c: only -2.6
It a: none -1
It b: only 1.4
It c: only -0.1
Fr b: only -0.2
Fr d: only -0.7
Ger b: only -1.3
Ger c: only -2
Ger d: only -0.9
# later bass
beat: quaver -12.9, crotchet -13.7, long -0.8
offbeat: semiquaver -0.6, quaver -16.1
small: semiquaver -3.3
# segment
1 ½: 2 -2.3, 3 11.1, 4 3.2
1 1: 1 -14.1
1 1½: 2 -8.3, 3 -0.8, 4 -8.7
1 2: 1 -0.6, 2 -1.8, 4 -0.4
1 3: 4 -0.4
1 longer: 2 -1
2 ½: 1 -6.5
2 1: 2 -1.4, 3 -1, 4 -5.4
2 1½: 1 0.3
2 2: 1 1.9, 2 1.3, 4 -3.6
2 3: 2 3.1, 3 -3.5, 4 -0.1
2 longer: 2 -0.1, 4 -1
3 ½: 1 2.9
3 1: 2 -3.9, 4 1.2
3 1½: 1 1.6
3 2: 3 -2.8, 4 -0.1
3 3: 2 -0.2
3 4: 3 -0.6
4 ½: 1 -10.6
4 1: 2 -16
4 1½: 1 0.5
4 2: 1 -1.6, 2 13.1, 3 -3.4
4 3: 1 2.1, 2 1.3, 4 10.7
4 4: 3 -0.6, 4 6.6
4 longer: 3 -0.3, 4 1.9
# boundary
1 held: 1 -13.3, 2 -10.3, 3 -2.8
1 repeated: 2 -0.8, 4 -0.8
1 step: 1 -35.2, 2 -17, 3 5.3, 4 6.4
1 leap: 1 20.1, 2 14.1, 3 14
1 none: 3 -4.1
2 held: 1 -7, 2 -11.3, 3 -0.5
2 repeated: 3 -4.3, 4 -8.2
2 step: 1 -4.5, 2 -2.4, 3 7.3, 4 2.8
2 leap: 1 4.6, 2 2.6, 3 5.1, 4 -0.3
3 held: 2 -1.5, 3 1
3 repeated: 4 -6.5
3 step: 2 -0.7, 3 1.3, 4 1.3
3 leap: 3 2.3, 4 0.9
4 held: 2 -1.4, 3 -7.5
4 repeated: 3 -1.9, 4 -5.5
4 step: 2 1.8, 3 5.7, 4 10.8
4 leap: 1 0.5, 2 1.4, 3 4.4, 4 -4.4
# chord in key
major: strangea -2.6, strangeb -1.5, strangec -1.5, stranged -1, Ia 15.9, Ib 5.9, Ic 10.9, Imaj7a 7.7, Imaj7b 1.1, Imaj7c -0.6, Imaj7d -0.2, V7/IVa -0.1, V7/IVb 10.2, V7/IVc 1.7, V7/IVd 6.6, ia -9.7, ib -6.4, ic -3.6, I+a -3.7, I+b -0.8, Va 24.3, Vb 12.8, Vc -5.1, V7a 14.9, V7b 10, V7c 2.2, V7d 7.7, va -0.7, vb -1.8, vc -1.4, v7a 5.4, v7b 1.1, V+a -1, V+b -2, voa -0.8, vob -0.4, vø7c -0.6, iia -6.1, iib 0.9, iic -1.9, ii7a 10.6, ii7b 13.1, ii7c 0.4, ii7d 0.5, V/Va -2.2, V/Vb 4.3, V7/Va -5.1, V7/Vb 3.9, V7/Vc 0.8, V7/Vd 5.4, iiob -3.3, iioc -1.6, iiø7a -0.3, iiø7b -3.3, iiø7c 0.6, Fr43d -0.7, via 4.1, vib 0.5, vic -3.4, vi7a 5.6, vi7b -4, vi7c -1.7, vi7d -5.4, V/iia -3.7, V/iib -5.1, V7/iia 1.3, V7/iib -11.1, V7/iid -2.4, vioa -1.6, viob -0.7, vioc -0.8, viø7a -1.8, viø7b -0.4, viø7c -0.4, viø7d -3, iiia -14.2, iiib -1, iiic -1, iii7a -4.3, iii7b -2.5, iii7c 1, iii7d -0.1, V/via -10.5, V/vib 8, V/vic -0.9, V7/via 2.5, V7/vib -5.4, V7/vic -0.4, V7/vid -0.9, viio/IVa -3.8, viio/IVb -3.4, viiø7/IVa -3.4, viiø7/IVb -2, viio7/IVa 0.7, viioa 4.5, viiob 4.6, viioc -2.6, viiø7a 8, viiø7b -8, viiø7c -2.1, viiø7d -2.4, viio7a 0.2, viio7b -0.7, V/iiia -1.6, V/iiib -3.4, V7/iiib -2.2, viia -3.2, viib -1.6, viio/Va -0.5, viio/Vb 6.5, viio/Vc -1.3, viiø7/Va 1, viiø7/Vb -6, viiø7/Vc 4.5, viiø7/Vd -0.8, viio7/Va 3, viio7/Vc -0.2, viio/iia -4.4, viio/iib -0.5, viiø7/iia -2.5, viiø7/iib -2.4, viio7/iia 1.4, viio7/iib -0.5, viio7/iic 0.7, viio/via -3.9, viio/vib -2.5, viio/vic -0.8, viio7/via -5.4, viio7/vic -1.2, viio7/vid -2.7, viio/iiia -1, viio7/iiia -1.5, viio7/iiib -1.2, viio7/iiic -1.9, IVa 2.3, IVb 12, IVc -2.3, IVmaj7a 3.4, IVmaj7b 4.7, IVmaj7c -2, IVmaj7d 0.1, IV7a -1, IV7b -2, IV7d 0.7, iva -5.6, ivb -4.3, iv7a -1.6, bVIIa -8.4, bVIIb -6.6, bVIIc -0.8, bVIImaj7a -0.7, bVIImaj7b -1.9, bVIImaj7d -1, bVII7a -0.2, bIIIa -0.4, bIIIb -0.8, bVIa -1, bVImaj7b -0.8, bVImaj7c -1
minor: strangea -5.6, strangeb -7.6, strangec -2.9, stranged -0.1, ia 12.9, ib 3.5, ic 12.2, i7a -1.9, i7b -1.8, i7c -1.2, i7d -1.6, imaj7a -0.2, imaj7b -0.9, imaj7c -1, Ia -15.6, Ib -5.9, Ic 0.6, V7/iva -10.3, V7/ivb 5, V7/ivc 2.2, V7/ivd 0.9, va 13.2, vb 6.3, vc -5.7, v7a 1.4, v7c -0.7, v7d -0.4, Va 10.7, Vb 3.4, Vc -4.3, V7a 12.1, V7b 6.9, V7c 6, V7d 1.3, viio/VIa -1.5, viio/VIb -2.4, viiø7/VIa -1.5, viiø7/VId -0.1, iioa -0.3, iiob 5.6, iioc -3, iiø7a 2.3, iiø7b 14.9, iiø7c -3.3, iiø7d 1.4, iia -1.1, iib 1.4, ii7a -5.8, ii7b -7.1, ii7c -1.6, ii7d -0.3, V/Va -1.5, V/Vb 6.2, V7/Va -2.8, V7/Vb 3.2, V7/Vc 0.9, V7/Vd -2.9, Fr43b -0.2, vioa -1.8, viob 1.5, vioc -1, viø7a 1.6, viø7b 6.1, viø7c 4.6, viø7d -2.7, viio7/VIIa 0.1, viio7/VIIc -0.4, #via -1.6, #vib -0.8, viio/iva 0.1, viio/ivb 4.4, viio/ivc 0.9, viiø7/iva 1.1, viiø7/ivb -0.6, viiø7/ivc 2, viio7/iva 2.6, viio7/ivb 1.7, viio7/ivc 4.3, viioa 2.1, viiob 11.5, viioc -1.9, viiø7a 3.5, viiø7c -0.9, viio7a -0.2, viio7b 9.1, viio7c 3.1, viio7d 4.9, viio/Va -1.1, viio/Vb -0.9, viio/Vc -1.1, viiø7/Vc -0.9, viio7/Va 4.8, viio7/Vb 3.6, viio7/Vc 5.8, viio7/Vd -1.2, Ger65b 1, Ger65d -0.9, #iob -0.8, #io7d -0.8, iva 0.1, ivb 7, ivc -6.5, iv7a 7.3, iv7b 2.3, iv7c -2.1, iv7d -4.7, IVa -13.1, IVb 6.5, IVc -0.8, IV7a -3.8, IV7b 8.2, IV7c -3.1, IV7d 3.6, VIIa -16.4, VIIb -6.2, VIIc -0.1, VII7a -12.2, VII7b -0.9, VII7d -3.6, viia -1.6, viib -0.6, IIIa -10.7, IIIb -12.9, IIIc -4.6, IIImaj7a -7.4, IIImaj7b -1.8, IIImaj7c -0.4, IIImaj7d -2.7, V7/VIa -1.9, V7/VIb -4.9, V7/VIc -0.5, V7/VId -3.8, III+a -3.4, III+b 4.2, III+c -0.6, III+maj7a -2.7, III+maj7b 2.1, III+maj7c -1.6, VIa 6.1, VIb -9.2, VIc -1.5, VImaj7a 1.6, VImaj7b -2.1, VImaj7c -1.9, VImaj7d -3.8, VI7a 0.1, VI7d -1, Na -2.9, Nb 1.3, Nc -0.7, bIImaj7a -0.4, bIImaj7b -0.9
# chord by place
major strange: weak -0.5, beat -3.5, strong -2.6
major I: weak -5.8, beat 14.9, strong 23.6
major Imaj7: weak -5, beat 3.1, strong 10
major V7/IV: weak 15, beat 6.1, strong -2.6
major i: weak -0.7, beat -10.8, strong -8.2
major I+: weak -0.8, beat -0.4, strong -3.3
major V: weak -4.8, beat 16.5, strong 20.2
major V7: weak 12.3, beat 11.4, strong 11.1
major v: beat -4, strong 0.2
major v7: weak 6.4, beat -0.9, strong 1
major V+: beat -2, strong -1
major vo: beat -0.8, strong -0.4
major vø7: beat -0.6
major ii: weak -11.1, beat 4.6, strong -0.6
major ii7: weak 3.3, beat 5.3, strong 15.9
major V/V: weak -3.3, beat 8.8, strong -3.4
major V7/V: weak 10.9, beat -7.1, strong 1.3
major iio: weak -1.7, beat -1, strong -2.2
major iiø7: weak -0.8, beat -0.2, strong -1.9
major Fr43: beat -0.7
major vi: weak -2.8, beat 1.8, strong 2.3
major vi7: weak -5.4, beat 9.5, strong -9.6
major V/ii: weak 1.2, beat -1.8, strong -8.2
major V7/ii: weak -4.8, beat -7.8, strong 0.4
major vio: beat -2.3, strong -0.8
major viø7: weak -1.2, beat -2.6, strong -1.8
major iii: weak -1.8, beat -9.2, strong -5.2
major iii7: weak -4.9, beat 2.4, strong -3.4
major V/vi: weak -1.1, beat -0.9, strong -1.5
major V7/vi: weak 4.9, beat -2.2, strong -6.9
major viio/IV: weak -1, beat -4.6, strong -1.7
major viiø7/IV: weak -0.4, beat -1.5, strong -3.5
major viio7/IV: beat 1, strong -0.3
major viio: weak 7.3, beat -3.2, strong 2.4
major viiø7: weak 9.2, beat -10.8, strong -2.9
major viio7: beat -0.5
major V/iii: beat -4.2, strong -0.8
major V7/iii: beat -1, strong -1.2
major vii: weak -1.3, beat -1.3, strong -2.1
major viio/V: weak 9.9, beat -2.5, strong -2.6
major viiø7/V: weak 6.6, beat -1.7, strong -6.1
major viio7/V: weak -0.6, beat 1.4, strong 2
major viio/ii: weak -1.5, beat -2.9, strong -0.5
major viiø7/ii: weak -2.5, beat -1.5, strong -0.9
major viio7/ii: weak 0.3, beat 1.7, strong -0.4
major viio/vi: weak 2.4, beat -6, strong -3.6
major viio7/vi: weak -1.7, beat -6.8, strong -0.7
major viio/iii: beat -1
major viio7/iii: weak -1.9, beat -0.8, strong -1.9
major IV: weak -10.3, beat 11.6, strong 10.7
major IVmaj7: weak -2.7, beat 2.7, strong 6.3
major IV7: strong -2.3
major iv: weak -0.9, beat -4.4, strong -4.6
major iv7: weak -1.6
major bVII: weak -0.8, beat -8.6, strong -6.4
major bVIImaj7: weak -1.6, beat -1.1, strong -0.9
major bVII7: beat -0.2
major bIII: beat -1.2
major bVI: beat -1
major bVImaj7: beat -1.8
minor strange: weak -2.7, beat -6.2, strong -7.3
minor i: weak -3.7, beat 16.9, strong 15.4
minor i7: weak -5.4, beat -0.3, strong -0.8
minor imaj7: weak -1, beat -1
minor I: weak -3.9, beat -13.9, strong -3.2
minor V7/iv: weak 2.1, beat -3.1, strong -1.2
minor v: weak -3.3, beat 9.8, strong 7.3
minor v7: weak -1.8, beat 0.6, strong 1.3
minor V: weak -9.7, beat 10.7, strong 8.7
minor V7: weak 19, beat 1.8, strong 5.5
minor viio/VI: weak -0.5, beat -3.4
minor viiø7/VI: weak -0.6, beat -0.9, strong -0.1
minor iio: weak 1.1, beat -0.9, strong 2.1
minor iiø7: weak 8, beat 5.5, strong 1.8
minor ii: weak -3.2, beat 4.6, strong -1.1
minor ii7: weak -5, beat -2.5, strong -7.3
minor V/V: weak -1.8, beat 2.8, strong 3.8
minor V7/V: weak -4.3, beat 4.8, strong -2.2
minor Fr43: beat -0.2
minor vio: weak 2.4, beat -1.3, strong -2.4
minor viø7: weak 1.6, beat 2, strong 6.1
minor viio7/VII: beat 0.3, strong -0.5
minor #vi: beat -1.9, strong -0.5
minor viio/iv: weak 1.3, beat 2.2, strong 1.8
minor viiø7/iv: weak 4.9, beat -0.9, strong -1.5
minor viio7/iv: weak 0.9, beat 6, strong 1.7
minor viio: weak 1.1, beat 3.7, strong 6.9
minor viiø7: weak 0.9, beat 1.7
minor viio7: weak 10.6, beat 0.8, strong 5.4
minor viio/V: weak -0.2, beat -3
minor viiø7/V: beat -0.7, strong -0.1
minor viio7/V: weak 8.3, beat 5.5, strong -0.7
minor Ger65: weak 0.6, strong -0.6
minor #io: weak -0.8
minor #io7: strong -0.8
minor iv: weak -10.6, beat 2.6, strong 8.6
minor iv7: weak 2.8, beat -0.2, strong 0.2
minor IV: weak -0.9, beat 2.7, strong -9.2
minor IV7: weak 1.4, beat 1.4, strong 1.9
minor VII: weak -4.7, beat 0.9, strong -18.8
minor VII7: weak -7.6, beat -5.4, strong -3.7
minor vii: beat -1.3, strong -0.9
minor III: weak -8.1, beat -20.4, strong 0.2
minor IIImaj7: weak -5.6, beat -3.1, strong -3.7
minor V7/VI: weak -3.2, beat -5, strong -2.8
minor III+: weak 1.3, beat -1.7, strong 0.7
minor III+maj7: weak 2.9, beat -4.2, strong -0.9
minor VI: weak -7.8, beat 6.9, strong -3.7
minor VImaj7: weak -2.4, beat -0.4, strong -3.4
minor VI7: weak -0.6, beat -2.1, strong 1.8
minor N: beat -1.6, strong -0.7
minor bIImaj7: weak -0.4, strong -0.9
# progression
major strange: I -1.7, Imaj7 -1, ii -0.5, ii7 -0.1, V7/V -0.6, vi -1, V7/ii 1.9, vio -0.6, viio/IV -1, viio -0.4, IV7 -1
major I: strange -1.7, I -8.6, Imaj7 -4.7, V7/IV 17.1, i -1.6, I+ -0.7, V 18, V7 6.2, v 4.4, v7 -0.1, ii 6.6, ii7 5.2, V/V -2.8, V7/V 0.4, iiø7 -0.3, Fr43 -0.7, vi 13.2, vi7 1.8, V/ii -1.9, V7/ii -5.7, viø7 -0.8, iii 8.7, iii7 4, V/vi 0.1, V7/vi -1.2, viiø7/IV 1.9, viio 3.9, viiø7 -1.2, vii -1.8, viio/V 1.9, viiø7/V 6.3, viio7/V 0.3, viio/ii -0.1, viio7/ii -2.9, viio/vi 0.4, viio7/vi -0.9, viio7/iii -1.9, IV 6.9, IVmaj7 4.3, IV7 -0.3, iv -0.8, iv7 -0.8, bVII -1.9, bIII -0.4
major Imaj7: I -0.9, Imaj7 1.5, V -1.4, ii 0.1, ii7 1.4, V7/V -0.7, vi 3.1, viiø7 2, viio/V 1.4, IV 2.5, IVmaj7 -0.6
major V7/IV: I 1.3, V7/IV 3.4, ii 1.2, ii7 1, V/V -0.7, vi -2.7, vi7 0.8, V/ii -0.5, viiø7 -0.6, viio/V 0.9, IV 16.8, IVmaj7 1.7, iv -1.8, bVII -0.8, bVIImaj7 -1
major i: strange -1, i -3.7, V -7, V7 -1.9, v -1, V7/V -1.4, iio -1.6, iiø7 -1.1, iii7 -1, iv -3, iv7 -0.8
major I+: vi -0.4, viio7/iii -0.3, IV -0.3
major V: strange 1.5, I 4, Imaj7 1.1, V7/IV 3.9, i -0.8, V -6.5, V7 13.9, v -0.4, ii -8.3, ii7 -2.7, V/V 1.9, V7/V 0.6, vi 8.8, vi7 0.4, V/ii -0.8, V7/ii -0.9, viø7 -0.4, iii 0.9, iii7 -0.9, V/vi -1, V7/vi 1.8, viio/IV -1.8, viiø7/IV -1, viio -2.4, viiø7 -1.3, viio/V -1.8, viio/ii -2.9, viiø7/ii -2.5, viio7/ii 4.5, viio7/vi -0.7, viio7/iii -0.2, IV 6.9, IVmaj7 -1.4, IV7 -1, bVII7 -0.2
major V7: I 27.9, Imaj7 12.5, V7/IV -1, i -0.7, V -0.9, V7 -0.5, v -0.5, ii -3.7, ii7 -0.7, vi 26.7, vi7 3.1, V/ii -1, V7/ii -1.1, vio -0.8, viø7 -1.5, iii 2.3, iii7 -0.6, V/vi 3.8, V7/vi -3.1, viio/IV -0.4, viio -1.6, viiø7 -1.3, viiø7/V 0.3, viio7/V 2.8, viio/ii -3.5, viio7/ii 0.4, viio7/vi -0.8, IV -2.6, IVmaj7 2.4, bVI -0.8, bVImaj7 -0.8
major v: I -3.1, V7/IV -0.8, V -1, V7 -2.2, v7 6.5, ii -0.7, V/V -2.7, V7/V -0.8, iio -1, vi -6.5, viio/V -0.8, viio7/ii -1, IV 6.3, bVIImaj7 1.9, bIII -0.8
major v7: strange -1, I -1.9, V7/IV -0.2, V -1, vi 6.5, viiø7 2
major V+: V7/IV -1, viio/V -1
major vo: I -0.9, V7/IV -0.5
major vø7: I -0.7, V7/IV -0.6
major ii: I -14.6, V 8.2, V7 10.3, v -0.3, ii -4.1, ii7 -2.2, V/V 0.8, vi -3.9, V/ii -0.7, V7/ii -0.2, iii -0.3, iii7 -4, V/vi -0.1, V7/vi -0.9, viio/IV -1, viiø7/IV -2.9, viio 16.8, viiø7 4.6, viio7 -0.7, V7/iii -0.9, viio/ii -0.5, viio7/ii -0.6, viio7/vi -3.1, viio7/iii -0.9, IV -8.1, IVmaj7 -3.3, bVII -1.7
major ii7: I -3.5, Imaj7 -0.5, V7/IV 0.4, V 14.9, V7 5.4, ii -4.9, ii7 13.7, V7/V 4, vi -0.1, iii -2.1, iii7 -1.7, V/vi 1, V7/vi -0.3, viio/IV -0.5, viio 4.7, viiø7 0.4, viiø7/V -1, viio7/iii 2.2, IV -2.9, bVII -1.3
major V/V: I -2.2, Imaj7 -0.1, V -3, V7 -0.1, v -1.3, V/V 1.1, V7/V 4.6, vi -1, V7/vi -2.5, viiø7/IV -0.8, viio -1, vii -0.4, viio/vi -0.8, viio7/vi -0.1
major V7/V: strange -1, I 0.4, V 10.6, V7 -0.4, v -3.6, vo -0.8, vø7 -0.6, ii7 -0.8, V/V -1, V7/V -0.6, iii -1.7, iii7 1.9, V/vi 1, V7/vi 2.8, vii -1, viio/V -2.3, viio/vi 0.4
major iio: V -5.6, V7 -0.5, iio -1.6
major iiø7: I -0.8, V -3.9, V7 -0.2, viio -0.8
major Fr43: vi -0.7
major vi: I 3.9, Imaj7 -1.7, V7/IV 3.2, V 2.4, V7 -5.9, v 0.7, V+ -1, ii 4.9, ii7 11.1, V/V 3.5, V7/V 0.9, vi 1.3, vi7 -8.3, V7/ii -2.1, viø7 -0.8, iii -1.2, iii7 -1.3, V/vi -5.9, V7/vi -1.3, viio/IV 1, viio -6, viiø7 -10.6, V/iii -1.4, V7/iii -0.9, vii -0.4, viio/V 2.1, viiø7/V 0.7, viio7/V 1.3, viiø7/ii -0.5, viio/vi -0.9, viio7/vi -0.6, viio/iii -1, viio7/iii -1.5, IV 8.5, IVmaj7 1.6, bVII -1.8
major vi7: I -3.1, i -1, V -3.5, V7 -0.4, ii 1.3, ii7 4.3, V/V -2.1, V7/V -1.5, vi 1.4, vi7 0.6, V/vi -1, viio -1.2, viiø7 -0.7, V/iii -0.4, viio/V 4, viiø7/V 2.1, IV 0.5, IVmaj7 -0.3
major V/ii: V -1, ii -5.8, ii7 -1.6, V/ii 0.5, V7/ii -1.6, iii -1.4, V7/iii -0.2
major V7/ii: V7 -1, ii -8.8, ii7 -0.2, V/V -0.9, iiø7 0.6, viio -2.4, viiø7 -1, vii -0.8, viiø7/V -0.9, IV -1.1, bVII 0.4
major vio: i -0.2, V -1.6, iii -0.7, viio -0.6
major viø7: V -1.7, V7 -1, v -0.4, V/V -0.2, viio -0.3, viio7/V -0.6, IV -0.8, bVIImaj7 -0.5
major iii: I -4.1, Imaj7 -2.5, I+ -1, V 0.5, V7 1.7, ii 1.1, ii7 0.7, V/V 2, V7/V -0.1, vi -6.7, vi7 -0.6, V/ii -0.9, iii -2.8, iii7 -2.3, V/vi 2.2, viio -0.4, vii -0.3, viio/V -2.7, viiø7/V -0.8, viio/ii 2, viiø7/ii -1, viio7/ii -0.9, viio7/vi -1.9, IV -5.2, IVmaj7 2.8
major iii7: I -3.4, I+ -2, V7 -1.4, ii -0.8, vi -0.7, vi7 0.1, viio/V 1.9, viio/ii -0.1, IV -1.2
major V/vi: I -0.9, I+ -0.5, vi -5.4, V/ii -0.8, iii -0.2, V/vi 1.5, V7/vi 8.2, viiø7/V -0.4, IV -7.7, IVmaj7 -0.2
major V7/vi: vi -0.8, V7/vi -1, viiø7/V -2, IV -6.6, IVmaj7 -0.8
major viio/IV: I -1.2, V7/IV -0.9, vi7 -1.6, IV 2.9, IVmaj7 1, iv 0.2, bVII -1
major viiø7/IV: I -1.9, V -1.1, V7/V -0.8, vi -1.1, vi7 -0.8, viiø7 -1, IV 0.5
major viio7/IV: iv 0.7
major viio: strange -0.4, I 20.9, Imaj7 4, V7/IV 1.9, i -3.6, V -4.4, V7 3, ii -2.3, ii7 -0.1, vi 4.1, V/ii -0.5, V7/ii -1.5, iii 2, V/vi -1, V7/vi -0.4, viio -2.3, viiø7 -0.3, viio7/V -0.8, viio/ii -0.3, viio7/vi -0.9, viio7/iii -0.8, IV 2.1
major viiø7: I 16.2, I+ -0.3, V -0.9, V7 -2.3, ii -0.6, vi -2.5, V7/ii -0.8, iii -1.2, V/vi -5.4, V7/vi -0.9, viio -0.3, viiø7 -2, viio/ii -0.6, viio/vi -0.9, IV -0.6, IVmaj7 -0.9
major viio7: I 0.2, V -0.7
major V/iii: V -1.1, V/ii -1.4, iii -3.7, V7/vi -0.8, viiø7/ii -0.9
major V7/iii: I -0.3, iii -2.7, V/vi -0.9
major vii: I -1.3, V7 2, V+ -1, V7/V -0.3, vi -0.4, V/iii -0.8, viio/V -0.9, viio7/ii -1, viio7/vi -0.3, IV -0.4
major viio/V: I -3.6, V 9.4, v -1.7, V+ -1, V/V -0.1, V7/V -0.8, vi -1, iii -0.5, viio/IV -1, viiø7 -0.3, viio/V 1.4, viio/vi -1.6, viio7/iii -0.9
major viiø7/V: strange -1, I -0.5, V 10, V/V -0.6, V7/vi -1, viio -0.5, viiø7/V -1, viio/vi -3.8
major viio7/V: i -0.8, V 1.9, V7 -0.7, V/V -0.6, V7/V 0.2, viio/V -0.7
major viio/ii: V7 -0.3, ii -3.1, V/V -0.7, V7/ii -0.1
major viiø7/ii: V7 -0.9, ii -2.2, IV -0.5
major viio7/ii: ii 3.5, ii7 -0.8, V/V -0.5, vi7 -0.7, V/ii 0.2, V7/ii -1, iv -0.2
major viio/vi: ii7 -0.5, vi -5.2, vio -0.7, V/vi -0.1, IV -1
major viiø7/vi: vi -0.3
major viio7/vi: vi -3.9, V/vi -1.6, V7/vi -1.5, IV -0.8
major viio/iii: iii -1
major viio7/iii: V -1, V7/V -0.9, iii -1.3
major IV: strange -1.5, I 14.4, V7/IV -0.1, i -1, V 0.1, V7 4.6, v7 1.1, ii 9.3, ii7 -0.3, V/V 0.4, V7/V 0.1, iiø7 -0.6, vi -6.9, vi7 -1.8, V7/ii 0.4, viø7 -1.8, iii 2.6, V/vi 0.2, viio/IV 2.4, viio 2.5, viiø7 7.4, V7/iii -0.1, viiø7/V -1, viio7/V 1.3, viio/ii 1.1, viio7/ii 4.1, viio7/iii -0.3, IV -4.5, IVmaj7 1.9, iv -0.3, bVII -3.5, bVIImaj7 -1.2, bVI -0.2
major IVmaj7: I -1, V 0.5, V7 6.9, ii 3.9, ii7 -3, V/V 1.1, vi -0.9, vi7 -1, iii -0.1, V7/vi -0.9, viio 3.9, viiø7 -2.3, viiø7/V -0.5, bVII -0.9
major IV7: i -1.3, V7 -1, viio -0.1, bVIImaj7 -1
major iv: I -5.6, i -1, V 0.1, V7 -0.8, v -2, ii7 -0.5, iio -1, V7/ii 0.4, iv -2
major iv7: V -1.6
major bVII: I -6.3, V7/IV -3.4, V 1.5, V7 -0.2, ii 3.6, V/V -0.8, viio/IV -1.5, viiø7/IV -2.3, viio7 0.2, IV -5.5, bVIImaj7 -0.9
major bVIImaj7: I -1.4, V7/IV -0.9, V -2.4, v7 -1, V7/ii -1, viiø7 1.9, viio7/V -0.2, IV -0.7, bVIImaj7 -1
major bVII7: v -0.8, V7/ii -0.2
major bIII: i -1, V -0.9, viø7 -0.4, viio7/IV 1, iv -1, bVII -0.8
major bVI: i -0.2, V7 -1, iiø7 -1.6
major N: viio7/IV -0.3
minor strange: strange -0.7, i -2.3, I -1.6, v -0.1, V -2, V7 -1.4, iio -0.9, iiø7 -1, ii -0.7, V/V -1.3, vio -0.4, viio -0.5, viiø7 -0.2, viio7 -0.4, viio7/V 2.2, iv -1.3, IV -1, VII -1, VII7 -1, V7/VI -1, VI -1.5, N -0.3
minor i: strange -1.4, i -7.4, i7 -3.2, imaj7 -1, I 1.8, V7/iv -1.1, v 16, V 12, V7 7.7, iio 2.8, iiø7 5.5, ii 3.6, ii7 -2.1, V/V 2.9, V7/V 2.2, vio 5, viø7 1.8, viio7/VII -0.5, viio7/iv 2, viio 6.9, viio7 2, viio/V 0.4, viio7/V 8.3, Ger65 0.6, iv 1.6, iv7 3.2, IV 0.3, IV7 -3.2, VII 12.3, VII7 2.8, vii -0.6, III 4.9, IIImaj7 -0.4, V7/VI -1.8, III+ -1, VI 3.7, VImaj7 2.2, VI7 1.8, N 1.3
minor i7: i -2.3, V7 -0.6, iio 0.6, iiø7 -1.9, viio7 -0.6, viio7/V -0.7, iv -1.3, IV7 1.3, III -0.8, VI 3.7
minor imaj7: i -0.9, I -1, iv -0.2
minor I: strange -2.8, i -2.6, i7 2.1, I -5.6, V7/iv 5.1, V -7.5, V7 -3.2, iio -1, iiø7 -2, ii -5, ii7 -2.2, V7/V -1, viio 0.7, viio/V -2.2, viio7/V 0.4, iv 0.8, IV -5.6, IV7 1.3, VImaj7 -0.7
minor V7/iv: V7/iv 0.2, iio -2.1, iiø7 -3, ii 1.7, V7/V -0.5, iv 6.9, IV 0.7
minor v: strange -0.6, i -7.7, i7 -2.1, I -1, V7/iv -1.5, v 0.5, v7 0.8, V 0.4, V7 -2.3, iio -0.5, iiø7 -3.4, ii -0.1, V7/V -1.9, vio 1.1, viø7 -1.7, viio/iv 2, viiø7/iv 1.5, viio 1.5, viio7 -0.7, viio7/V 1.7, Ger65 -0.6, iv 5.2, iv7 0.8, IV 5.2, IV7 -1.7, VII -2, VII7 -0.9, III 5.5, V7/VI -1, III+maj7 0.6, VI 5.3, VImaj7 0.5
minor v7: i 2.4, I -2.3, V7/iv -0.8, V -0.5, vio -1.7, VI 1.1
minor V: strange -1, i 5.6, I -0.3, v -1.3, V -12.3, V7 19.5, iio -0.9, iiø7 0.9, ii -1, V7/V -2, viø7 1.9, #vi 1.9, viio -0.7, viio7 3.9, iv 4.2, iv7 -0.5, IV 4.2, IIImaj7 -1.5, III+maj7 2, VI 0.7, VImaj7 -2.9
minor V7: strange -0.9, i 20.3, I 8.9, V7/iv -2.4, V 0.6, V7 4.7, ii -1.2, vio 3.4, viø7 1.8, #vi -1.8, viio/iv 1.3, viio -1.1, viio7/V 0.2, #io7 -0.8, iv -1.3, iv7 2.1, III+ 0.8, VI 16.4, VImaj7 1.3
minor viio/VI: strange -1, I -0.4, viio/VI -0.5, viio7 -0.3, iv -1.7, VI -1.6, VImaj7 -0.3
minor viiø7/VI: i -0.6, I -0.8, V7/iv -0.1, vii -0.5, VI -1.5
minor iio: strange -1, i 3.6, I -0.1, v 0.4, v7 -0.9, V 0.3, V7 -0.9, iio 0.9, iiø7 -0.3, V/V 1, Fr43 -0.2, viio7 0.4, viio7/V 1.6, iv -1.3, iv7 0.1, IV7 -1.5, VII -0.4, VII7 -2.1, III 0.1, IIImaj7 -0.9, V7/VI 2.2, III+ -4, III+maj7 -0.2, VI 0.2, VImaj7 -1.2
minor iiø7: i -2.4, I -1.6, v -4.5, v7 -0.1, V 17.4, V7 12.9, iio 1, iiø7 18.7, ii -5, V7/V -0.4, viio -4.9, viio7 1.6, viio7/V -1.4, iv -2.8, iv7 0.2, IV -0.3, IV7 -0.1, VII -1.3, VII7 -0.7, III -4.1, III+ 2.1, III+maj7 -1.8
minor ii: i -1.2, I -1.2, v -1.5, v7 -0.6, V -12.5, V7 -2.3, ii 1.2, ii7 -1.7, V/V -1, vio -0.5, viø7 2, viio 3.3, viiø7 1.8, IV 4.2, IV7 1.7, III+maj7 -0.9
minor ii7: i -2, imaj7 -1, V -4, V7 -3.2, iiø7 -0.3, ii7 -0.8, viio/iv -0.3, viio -0.3, viio7/V -0.1, IV -1, III -1.5
minor V/V: i -0.2, v 5.6, V -6.2, V7 -1.4, V7/V 2.2, III+ 1.2
minor V7/V: i -0.8, v -2.2, V -4.3, V7 -0.8, viio7/V -1, III+ 0.4
minor Fr43: V -0.2
minor vio: i -1.8, V 3, V7 -1.5, iiø7 0.3, ii7 -2.5, viø7 2.1, viio7/VII -0.4, viiø7/iv -0.7, viio 2.8, viio7 0.8, viio/V -0.7, IV7 -1.1, VII 0.9
minor viø7: v -0.2, V 0.6, V7 3.2, iiø7 -1, ii 4, V/V 0.3, V7/V -0.4, viio 3.8, viiø7 -0.9, IV 0.7, IV7 1.1, VII -2.9, VII7 -0.1
minor viio7/VII: VII 1.6
minor #vi: I -3.2, V7 -1.8, ii -1.7, ii7 -0.8, viiø7/V -0.1, IV 1.8
minor viio/iv: V7/iv -0.3, ii -0.6, viio/iv -0.7, viio7/iv 1.9, viio7 -0.9, iv 5.3, iv7 -0.4, IV -4.2
minor viiø7/iv: i -0.3, I -0.8, v -0.6, iv 2.8, IV 0.7
minor viio7/iv: I -0.8, viio7/iv 1.7, iv 4.4, IV 2.5, VI -0.1
minor viio: strange -0.1, i 18.1, I 2.2, V 0.7, V7 -2.5, iio 2, viio/iv -1, viiø7/iv -0.8, viio -3.8, viio7 0.3, iv -2.5
minor viiø7: i 2, I -0.5
minor viio7: i 16, I 0.7, V7/iv 2, v -0.1, V 1.7, V7 -8.5, viio -1, viio7 3.6, viio7/V 0.9, iv 0.3, iv7 -1, III+ -0.8, III+maj7 -0.7, VI -0.1
minor viio/V: v -1.3, V -1.5, viio/V -0.7
minor viiø7/V: V7/iv -0.7, v -0.1
minor viio7/V: i 1.7, v 3.1, V 12, V7 1.4, V7/V -3.1, viio -0.9, viio7/V 2.2, VII -0.8
minor Ger65: i 1.6, V -0.9, iv -0.6
minor #io7: iv -0.8
minor iv: i 9.9, I -0.8, V7/iv -0.7, v -3.4, v7 1.9, V 8.1, V7 -0.5, viiø7/VI -1, iio 1.4, iiø7 5.5, ii7 -0.5, V/V 0.1, V7/V 2, viø7 -1, viio/iv -2, viio7/iv 2.7, viio 0.8, viiø7 -0.9, viio7 -1.1, viio7/V 0.8, iv -5.7, iv7 2.4, IV 3.3, IV7 0.7, VII -2.5, VII7 -2.2, vii -0.1, III -5.8, IIImaj7 -0.8, V7/VI -1, III+ -0.8, III+maj7 -0.1, VI -4.4, VImaj7 -0.4, N -1.6
minor iv7: i -1.8, v -0.8, v7 1.6, V 6.5, V7 1, viio/VI -1, iio 0.6, iiø7 -2.1, ii7 -0.3, V/V -0.6, viio -2.7, viio7 2.4, viio7/V -0.3, iv -0.7, iv7 2.5, IV7 1.7, VII -3.7, VII7 -1.5, V7/VI -0.5, III+ -0.5, VI -1.3
minor IV: i -0.8, I -9.7, v -1.8, V -6.8, V7 -0.1, iiø7 -0.8, ii 4.6, ii7 -2.1, V/V 1, #vi -0.7, viio/iv -0.6, viio 6.9, viiø7 2.9, viio7 1.7, viiø7/V -0.7, viio7/V 0.3, #io -0.8, iv -0.6, IV -4.9, IV7 1.6, VII -9.3, VII7 -1.2, vii -0.6, III -0.7, III+maj7 -0.7, VI 1.4, VI7 -1.1
minor IV7: i -1.9, v -2.7, v7 -0.9, V -1.2, V7 -2.1, ii 1.4, viio 3.4, viio7 1.6, iv 0.8, iv7 -0.3, IV7 1.6, VII 3.6, VII7 -0.5, vii -0.3
minor VII: strange -1.1, i -14.1, i7 -0.9, I -1.5, V7/iv -2.8, v 0.4, v7 -0.6, V 1.3, V7 -0.9, iio 3.3, iiø7 2.7, ii7 -0.6, V/V -0.1, vio -1.4, viø7 -0.9, viio/iv 2.1, viiø7/iv 2.8, viio7/iv -1.2, viio 2.7, viio7 5.7, viio7/V -0.7, iv 5.9, IV -6.8, IV7 -3.4, VII -6.9, VII7 -2.7, III 3.4, IIImaj7 -1.7, III+ -2, III+maj7 -0.7
minor VII7: i -18.4, V7/iv -0.5, v -4.3, V -2.1, V7 -2, III -3.3, IIImaj7 -1.8, V7/VI -1.3, III+ 1.3, III+maj7 -0.7, VI -1
minor vii: i -1.8, I -2.1, V -0.3, iv 2
minor III: i -12.8, I 3.1, V7/iv 3.2, v 5.7, v7 -1, V 6.7, V7 6.5, viiø7/VI -0.6, iio -1.4, iiø7 -1.7, ii 4.1, vio -2.5, viø7 0.2, viio7/iv 0.6, viio -1.3, viio7 -0.7, iv -4.5, iv7 -6.5, IV 1.4, IV7 4.4, VII 1.5, VII7 -1, III -3.8, IIImaj7 -3.3, V7/VI -2.7, III+ 2.7, VI -8.4, VImaj7 -3.4, VI7 -1, N -0.7
minor IIImaj7: i -7.6, v -0.6, V -1, V7 3.3, iiø7 1.2, V/V -0.7, viio -0.9, viio7 -0.5, iv -2.6, IV 0.6, IV7 -0.3, VI -2.1, VImaj7 -0.2
minor V7/VI: i -1.7, I 1.7, vio -1.4, viio7/iv -1.4, iv -2, iv7 -0.9, III -1, VI -7.9, VImaj7 -1.4
minor III+: i -3, V 1.8, iiø7 -0.6, viø7 2.3, viio -0.3, viio7/V 0.2, iv -2.4, iv7 0.7, IV -0.4, IV7 0.1, III+ -0.1, III+maj7 1.1, VI 1.3
minor III+maj7: i 1.3, I -0.9, V7 -1.1, ii -0.7, viio -1.7, iv 2.9, iv7 -1, VI -2.8, VImaj7 1.7
minor VI: i -6.6, i7 -0.7, I 0.3, v 5.4, V 0.9, V7 1, viio/VI -0.8, iio 2, iiø7 -1.7, ii -1, V/V 1.8, V7/V 1.3, viio7/VII -0.3, viio/iv 1.1, viio7/iv 0.9, viio 1, viio7 0.6, viio7/V -1.5, iv -6.1, iv7 3.3, IV -1.7, IV7 2.3, VII -0.9, VII7 -1.9, III -7.7, IIImaj7 -1, V7/VI -2.6, VI -4.5, VImaj7 -1.4, VI7 -0.6, N -0.5, bIImaj7 -1.3
minor VImaj7: i 3.7, V -2.7, V7 -0.2, iio -2.3, iiø7 0.3, V7/V 1, viø7 -0.4, viio -0.9, viio7 -0.6, iv 3.2, iv7 -1, IV -1.5, VII -1, VII7 -0.6
minor VI7: V7 -1.1, iio -1, viio7/VII -0.6, iv 1.8
minor N: strange -1, i -1.7, I -0.5, v -0.9, V -1.6, viio/VI -1.6, iv7 -0.2, V7/VI -0.5, VI -0.7
minor bIImaj7: I -0.8, III -0.4, V7/VI -0.9
# progression with inversions
major strangea: Ia -1, V7/Va -0.6
major strangeb: Ia -0.7, iia -0.5, V7/iia 1.9, vioa -0.6, viio/IVa -1
major strangec: Imaj7a -1, ii7a -0.1, vib -1, viioa -0.4
major stranged: IV7b -1
major Ia: Ia -25.7, Ib 19.4, Ic 0.2, Imaj7a -3.2, Imaj7d -1.8, V7/IVa 5.3, V7/IVb -1, V7/IVc -0.8, V7/IVd 8.2, ia -0.8, ib -0.8, I+a -0.3, Va 5, Vb 6.9, V7a 2.8, V7b 0.1, V7c 2.2, V7d -2.7, va 3.2, vb -0.1, iia 1.7, iib 7.1, ii7a -4.3, ii7b 2.2, ii7c 0.8, ii7d -0.1, V/Va 1.5, V7/Va 1.4, V7/Vb 1.1, V7/Vc 2, V7/Vd 0.3, iiø7a -0.3, Fr43d -0.7, via 16.3, vib -5.5, vi7a -0.9, vi7b -1.3, V/iib -1.9, V7/iib -5.7, viø7a -0.8, iiia 5.8, iiib 0.6, iiic -0.8, iii7a 4, iii7c 1, V/via -1, V/vib 2.6, V7/vib -0.8, V7/vic -0.4, viiø7/IVa 1.9, viioa -2.2, viiob 3, viioc 0.5, viiø7a -1.1, viiø7d -0.1, viia -0.9, viio/Vb 3.2, viio/Vc -1.3, viiø7/Vc 4.6, viio/iia -0.1, viio7/iia -2.1, viio/vib 0.4, viio7/via 0.7, viio7/vic -1, viio7/iiib -1, viio7/iiic -0.9, IVa 8.9, IVb 6.4, IVc -2.4, IVmaj7a 1.5, IVmaj7b 3.8, IVmaj7c -1.2, IV7a -1, iv7a -0.8, bVIIb -1.9
major Ib: strangea -0.6, strangec -1.1, Ia -1.6, Ib -6, Ic 4.1, Imaj7a 0.7, Imaj7b -0.5, V7/IVa 0.5, V7/IVb 4.8, I+a -0.4, Va 9.3, Vb -2, Vc -5.6, V7a -3.6, V7b 3.1, V7c 2.5, V7d 3.2, va 1.3, iia -0.5, iib -3.7, ii7a -0.2, ii7b 0.6, V/Va -1.2, V/Vb -3.1, V7/Va -0.7, V7/Vb -6, V7/Vd 1.3, vib 4, vic -0.7, vi7a 5.4, vi7b -0.9, iiia -0.8, iiib 3.8, V/via -0.6, V/vic -0.9, viioa -0.1, viiob 3.8, viia -0.9, viiø7/Va -0.2, viiø7/Vc -0.5, viiø7/Vd -0.8, viio7/iia -0.8, viio7/via -0.7, IVa -5.1, IVb 1.5, IVmaj7a 1, IVmaj7d -0.6, IV7d 0.7, iva -0.8, bIIIa -0.4
major Ic: Ia 2.9, Ib -1.9, Va 4.3, V7a 2, V7b -0.8, V7d -2.4, v7a -0.1, iib 2.1, ii7b 6.2, V7/Vb 1, via -0.9, vi7d -0.5, iii7b -1, viioa -0.4, viiob -0.8, viiø7/Va 3.3, viio7/Va 0.3, IVa -0.4, IVb -1.9, IVmaj7a -0.9, IVmaj7b 0.6
major Imaj7a: Ia -0.9, Vb -1.4, iia -0.1, iib 1.9, ii7a -0.7, ii7d 2, via -0.7, vib 2.3, IVa 2.3
major Imaj7b: Imaj7a 1.5, V7/Vb -0.7, via 1.5, IVa -0.3
major Imaj7c: iib -1.8, IVa 1.1
major Imaj7d: viiø7d 2, viio/Vb 1.4, IVb -0.5, IVmaj7b -0.6
major V7/IVa: Ia -0.9, V7/IVb 1.8, iia 1.4, iib -0.2, ii7b 1, V/iib -0.5, viiø7a -0.6, IVa 4.4, IVmaj7a -0.1, iva -0.8, bVIIc -0.8
major V7/IVb: vi7a 0.8, IVa 6.3, IVb -0.8
major V7/IVc: IVa 0.6, IVb 1
major V7/IVd: Ic 2.2, V7/IVc 1.6, V/Va -0.7, via -2.7, viio/Vb 0.9, IVa -0.5, IVb 5.8, IVmaj7b 1.9, ivb -1, bVIImaj7d -1
major ia: stranged -1, ib -2.1, Va -1.4, V7a -1.9, V7/Va -1, V7/Vb -0.4, iiø7b -0.8, iva -1, ivb -1
major ib: ic -1.6, Va -3.7, vc -1, iioc -0.9, iiø7b -0.3, ivb -1, iv7a -0.8
major ic: Va -1.9, iioc -0.7, iii7b -1
major I+a: via -0.4, IVa -0.3
major I+b: viio7/iiia -0.3
major Va: strangeb -0.4, Ia 13.8, Ib -7.6, Ic -0.2, Imaj7b 0.5, Imaj7c -0.9, V7/IVd 1.5, ia -1.6, Va -23, Vb 4.9, Vc 4.5, V7a 11.3, V7b -5.4, V7c 0.7, V7d 10, va -0.4, iia -3.3, iib -4.1, ii7b -2.3, ii7c -0.3, V/Va -0.3, V/Vb -0.9, V7/Vb 1, V7/Vc -0.3, via -2, vib -1.2, vi7a 2.9, vi7d -1, V7/iid -1, viø7b -0.4, iiia -5.3, iiib -0.5, iii7a 0.5, V/vib -1, V7/via 1.8, viio/IVb -1.8, viiob -0.7, viiø7b -0.3, viiø7c -0.4, viio/Vb -1, viio/iia -0.8, viio/iib 1.4, viio7/iic 1.8, viio7/via -0.7, viio7/iiib -0.2, IVa -2, IVb 6.5, IVmaj7b -1.4, IV7b -1
major Vb: strangeb 1.9, Ia 0.1, Ib -0.4, Ic -1.1, Imaj7a 1.1, Imaj7d 0.4, V7/IVd 2.4, ia 0.9, Va 11.2, Vb -2.1, Vc -1.5, V7a -2.1, V7b -1.3, V7c -0.7, iia -0.8, V/Va 3.1, V7/Va -0.4, V7/Vd 1.5, via 12.6, vib -0.2, vi7a -1.1, vi7b 0.3, V/iib -0.8, iiia 1.5, iiib 5.3, iii7a -1.3, viiø7/IVb -1, viioa -0.9, viiob -0.7, viiø7b -0.5, viio/Vb -0.8, viio/iia -3.4, viiø7/iia -2.5, viio7/iia 2.7, IVb 3, IVc -0.7, bVII7a -0.2
major Vc: Ia -0.8, Ib 0.2, Va -0.6, V7c -0.8, V7d 2.2, V7/Va -1.2, vib -0.5, vi7b -0.7
major V7a: Ia 9.2, Ic -4.1, Imaj7a 5.2, Imaj7c 2, V7/IVd -1, ia 2, Va -0.5, V7b -0.6, V7c -2.2, V7d -1, va -0.5, iia -2.5, ii7b -0.7, via 10.5, vib 15.2, vi7a 3.1, viø7d -1.5, iiib -1.4, V/vib 0.3, viio/IVb -0.4, viiø7/Va 0.6, viiø7/Vc -0.3, viio7/Va -0.6, viio/iib -3.6, viio7/via -0.8, IVa -1.2, IVb -0.3, IVmaj7b 2.4, bVIa -0.8, bVImaj7b -0.8
major V7b: Ia 17.9, Ib -2.1, Ic 1.6, Imaj7d 1.2, ia -2, Va -0.2, Vb 1.6, V7a 0.7, V7b -0.9, V7c -0.3, iia -1, vib 1.8, V7/iib -1.1, V/vib -0.7, viio/iia -1, IVb -1.5
major V7c: Ia 0.6, Ib -1.6, Imaj7a 2, Imaj7b 2.1, Va 1.6, V7a 2.2, V7b -1, V7d -0.8, iib -0.2, via -0.4, vib 0.1, vic -0.6, V/iia -0.9, V/vib 2.1, V7/vib -1, viiob -0.8, IVb 1.1, IVc -0.7
major V7d: Ia -8.2, Ib 14.7, ib -0.7, Va -3, Vc -0.5, V7a -2, V7c 6.9, V7d -1.5, via -0.1, vic 0.1, V/iib -0.1, vioc -0.8, iiia 3.6, iii7a -0.6, V/via 2.1, V7/via -1.2, V7/vid -0.9, viiob -0.8, viiø7c -1.3, viio7/Va 3.4, viio/iib 1.1, viio7/iib 0.4, IVa -0.1
major va: Ia -0.4, Ib -1.8, Va -0.2, V7d -1, v7a 6.5, V/Va -0.5, V/Vb -0.8, V7/Va -0.8, iiob -1, via -4.8, viio7/iia -0.1, IVa -0.5, IVb 6, bIIIb -0.8
major vb: Ia -1, V7/IVd -0.8, Vb -0.8, V7b -1.2, iic -0.7, via -1.7, viio/Vb -0.8, viio7/iia -0.9, IVb 0.8, bVIImaj7a 1.9
major vc: V/Va -1.4
major v7a: strangeb -1, Ia -0.4, Va -0.1, via 6.5
major v7b: Ia -1.6, V7/IVa -0.2, Vb -1, viiø7a 2
major V+b: V7/IVd -1, viio/Vb -1
major voa: Ib -0.8
major vob: Ia -0.1, V7/IVa -0.5
major vø7b: Ia -0.7
major vø7c: V7/IVa -0.6
major iia: Ia -7.5, Ib -6.2, Va 0.5, Vb 8.1, V7a 0.7, V7b 1.1, V7c 0.9, V7d -0.8, vb -0.3, iia -1, iib -5.2, iic -0.3, ii7a -3.8, ii7d -3.2, V7/Vd -0.7, via -0.1, vib -2.4, V/iia 0.6, V/iib -0.1, V7/iia -0.1, iiia 3.2, iii7a -1.4, V/via -0.3, V/vib -0.5, viio/IVb -1, viiø7/IVa -1.1, viiø7/IVb -1, viioa 0.5, viiob 14.8, viiø7a 0.3, viiø7b 3.6, viio7b -0.7, V7/iiib -0.9, viio7/iia -0.6, viio7/via -0.5, viio7/vic -0.2, viio7/iiia -0.9, IVa 0.2, IVb -6.5, IVc -0.9, IVmaj7a -0.9, IVmaj7b -0.7, bVIIa -1.2, bVIIb -0.5
major iib: Ia -0.8, Ib -1, Ic 0.9, Va -0.6, Vb -0.3, Vc 0.8, V7a 3.5, V7b -0.4, V7c -0.1, V7d 5.4, iia 3.6, iib -0.9, ii7a 2.3, ii7b 2.5, V/Vb 0.8, V7/Vb 0.7, via 1, vib -0.9, vic -1.6, V/iia -1.2, V7/iib -0.1, iiia 0.2, iiib -2.6, iii7a -2.6, V/via -1.5, viiø7/IVa -0.8, viiob 0.2, viioc -0.8, viiø7b -0.9, viiø7c 2.2, viio/iib -0.5, viio7/via -0.6, viio7/vid -0.8, IVa -1, IVmaj7b -1.7
major iic: Va -0.3, iia -0.3, iiib -1.1, V/vib 2.2, V7/vib -0.9, viioa 2.2, viiø7d -0.6, viio7/via -0.9
major ii7a: Ia -3, Ib -4.7, Ic 2.4, Imaj7a -0.5, V7/IVb 0.4, Va 12.5, Vb -1.2, V7a 6.5, V7b -0.2, V7c -4.2, ii7b -0.5, iiia -3, iii7a -1.7, V/via 1, V7/vib -0.3, viiob 5.6, viiø7b 0.8, viio7/iiia 2.2, IVa -0.3, bVIIa -1
major ii7b: Ib -0.6, Ic 4.5, Va 5.9, V7a -1.8, V7d -1.3, iia -3.8, ii7a 15, ii7b -1.6, V7/Vb 4, via -0.1, iiib 1.8, viio/IVb -0.5, viiob -2.7, viiø7c 0.5, viiø7/Va -1, IVa -2.6
major ii7c: Ic 0.8, Vb -0.8, ii7a -0.7, ii7b 2.1, iiia -1
major ii7d: Ia -2.8, Ib -0.1, Va -0.4, Vb -1.1, V7b 6.5, iib -1.1, ii7a -0.5, viioa 1.8, viiø7a -0.9, bVIIa -0.3
major V/Va: Ib -1.4, Imaj7b -0.1, Va -4.4, Vb -1.5, V7d 1.9, va -1.3, V7/Va 2, V7/Vb -0.6, V7/Vd 3.9, via -1, viiob -1, viib -0.4, viio/vic -0.8, viio7/via -0.6
major V/Vb: Ib -0.8, Va 2.9, V7a -0.5, V7d -1.4, V/Va 1.7, V/Vb -0.5, V7/Va -0.9, V7/Vb 0.2, V7/vib -2.5, viiø7/IVa -0.8, viio7/via 0.4
major V7/Va: Ib -1, Ic -0.3, Va -4.9, Vc -0.6, V7d -1.8, va -0.8, voa -0.8, vø7c -0.6, ii7a -0.8, V/Va -1, iiia -0.2, iii7a 1.9
major V7/Vb: strangeb -1, Va 5.9, V7a 1.4, V7/Va 0.2, iiib 0.9, V/vib 1, V7/vib 2.8, viio/Va -0.5, viio/Vb -1, viio/via -3.2
major V7/Vc: Ib -0.9, Ic 2.7, Va 3.4, Vb -1.1, va -2, V7/Vd -0.8, iiib -1.3
major V7/Vd: Va 1.4, Vb 6.6, vb -0.8, iiib -1, viia -1, viio/Vb -0.8, viio/vib 3.6
major iiob: Va -5.6, V7a -0.5
major iioc: iiob -1.6
major iiø7a: Ia -0.3, V7a -0.8
major iiø7b: Ia -0.6, Va -3.9, viioc -0.8
major iiø7c: V7a 0.6
major Fr43d: via -0.7
major via: Ia -8.5, Ib 12.6, Ic 1, Imaj7c -1.7, V7/IVb 1.8, V7/IVc 1.5, Va -1.5, Vb 6.2, Vc -0.7, V7a -4.3, V7b -1.3, V7d 0.3, vb 0.7, iia 7.1, iib 4.1, iic -1.8, ii7a -2.1, ii7b 5.4, ii7c -1.2, V/Va -1.7, V/Vb 6.8, V7/Va 0.3, V7/Vb 4.5, V7/Vc -2, V7/Vd -1, via 0.6, vib -6.1, vic 4.4, vi7a -2.6, vi7c -0.3, vi7d -5.5, V7/iia 1.8, V7/iid -2, viø7d -0.8, iiia 3.7, iiib -1.1, iii7a -1.3, V/via -1, V/vib -1.9, viio/IVa 1, viioa -3.9, viiob -1.1, viioc 1.7, viiø7a -3.6, viiø7b -1.4, viiø7c -0.9, viiø7d -3.2, V/iiia -0.9, V/iiib -0.5, V7/iiib -0.9, viio/Va -0.9, viio/Vb 3.2, viiø7/Va 0.8, viiø7/Vb -1.8, viio7/Va 1.3, viiø7/iib -0.5, viio7/via -1.1, viio7/vid -0.9, viio/iiia -1, viio7/iiia -0.5, viio7/iiic -1, IVa 3.2, IVb 1, IVmaj7a 2.8, IVmaj7b -0.5, bVIIa -0.3
major vib: Ia -0.4, Ib -0.9, Va -0.4, Vb -1.3, V+b -1, iia -2.9, iib 0.6, ii7a 1, ii7b 5.4, ii7d 2.3, V/Va -1.4, V/Vb -0.1, V7/Vd -0.9, via 3, vib -0.5, vic -1.1, V7/iib -1.9, iiia -2.6, iiib -1, iiic -0.3, V/via -1.4, V/vib -0.8, V7/vib -1, viioa -0.2, viiob -1.3, viiø7b 0.4, viib -0.4, viio/Vc -0.2, viiø7/Vc 1.7, viio/vib -0.9, viio7/via 1.5, IVb 4.2, IVmaj7b -0.6, bVIIa -1, bVIIb -0.6
major vic: V7a -0.6, iia -3.4, iib 1.1, ii7b 0.3, via 1, V/via -0.8, V7/via -0.3, viiob -1.1, viiø7b -1.8
major vi7a: Ic -2.8, Va -0.9, Vb 0.9, V7a -1.1, V7b 0.1, V7c 2.1, iia -0.3, iic 2.2, ii7a 5.2, ii7b -0.9, V7/Va -1.7, V7/Vc 1.2, via -0.7, vib 2.1, vi7d 2, viioa 1.6, viiob -3.4, V/iiia -0.4, viio/Vb 4, viiø7/Vb 2.1, IVb -1.2, IVmaj7b -0.3
major vi7b: Ia -0.3, ic -1, iia 1.2, iib -1, V/Va -2.1, V7/Va -0.6, viiob 0.6
major vi7c: Va -0.2, vi7a -1.3, viiø7b -0.3
major vi7d: Va -3.4, V7d -1.5, iib -0.8, V7/Vb -0.3, V/via -1, viiø7c -0.5, IVa 1.6
major V/iia: Vb -1, iia -4.4, V/iib -0.7
major V/iib: iia -1.4, ii7a -1.6, V/iia 1.2, V7/iia -0.1, V7/iib -1.5, iiia -1.4, V7/iiib -0.2
major V7/iia: V7c -0.2, iia 0.5, iib -1, iiø7c 0.6, viiob -1.8, bVIIa 0.4
major V7/iib: iia -7.4, iic -0.9, V/Va -0.9, viiob -0.6, viiø7b -1, viib -0.8
major V7/iid: V7d -0.8, ii7b -0.2, viiø7/Va -0.9, IVa -1.1
major vioa: Va -1, Vb -0.6
major viob: iiia -0.7
major vioc: ia -0.2, viiob -0.6
major viø7a: V7c -1, bVIImaj7a -0.5
major viø7b: V/Va -0.2
major viø7c: vc -0.4, viiob -0.3
major viø7d: Va -1.7, viio7/Va -0.6, IVa -0.8
major iiia: Ia -2, Ib -1, Imaj7a -2.2, Imaj7b -0.3, Va -0.8, Vb 0.9, V7b -0.7, V7c 2.3, V7d -0.5, iia -1.8, ii7a -0.9, ii7b -0.4, V/Va 2, V7/Vb -0.1, via -3.5, vib -2.5, vi7a 2.5, vi7c -1.3, V/iib -0.9, iiia -0.9, iiib -1.9, iii7a -1.7, iii7d -0.1, viiob 0.4, viioc -0.8, viia -0.3, viio/Va -0.9, viio/Vb -0.9, viio/Vc -0.9, viiø7/Vb -0.8, viio/iib 3, viiø7/iib -1, viio7/via -0.9, viio7/vid -1, IVa -3.5, IVb 2.9, IVc -0.8, IVmaj7a -0.5, IVmaj7b -0.3, IVmaj7d 0.5
major iiib: Ia -0.3, Ib -0.9, I+a -1, Va 0.3, V7a 2.1, V7d -1.5, iia -0.2, iib 3.2, ii7b -0.1, ii7c 2.1, via -1.8, vib 1.1, vi7a -1.7, vi7d -0.1, iii7b -0.5, V/vib 2.2, viio/iib -1, viio7/iib -0.9, IVa -5.1, IVb 1.2, IVmaj7a -1.4, IVmaj7b 4.8
major iiic: IVmaj7b -0.3
major iii7a: Ia -0.7, Ib -2.6, V7a -0.8, V7b -0.7, iib -0.8, via -0.7, vi7a 0.1, viio/Va 1.9, viio/iib -0.1, IVa -1.1, IVb -2
major iii7b: I+a -2
major iii7c: IVb 1.9
major iii7d: Ia -0.1
major V/via: Ia -0.9, I+b -0.5, via -5.5, V/iia -0.5, iiia -0.2, V7/via 0.5, viiø7/Vb -0.4, IVa -1.7, IVmaj7a -0.7, IVmaj7d 0.5
major V/vib: via 1, V/iia -0.3, V/via 1.5, V7/via 5.3, V7/vib 2.5, IVb -5.9
major V/vic: via -0.9
major V7/via: via 0.6, IVa -4.9, IVb -1.7
major V7/vib: via -1, V7/via -1, viiø7/Vb -2
major V7/vic: via -0.4
major V7/vid: IVmaj7c -0.8
major viio/IVa: Ic -1.2, vi7a -1.6, IVmaj7a 1
major viio/IVb: V7/IVa -0.9, IVa 1.3, IVb 1.8, ivb 0.2, bVIIa -1
major viio/IVc: IVb -0.2
major viiø7/IVa: Ib -1, Va -1.1, V7/Va -0.8, via -1.1, vi7a -0.8, IVa 0.5
major viiø7/IVb: Ia -1
major viiø7/IVc: viiø7a -1
major viio7/IVa: iva 0.7
major viioa: Ia 6.5, Imaj7a 2, V7/IVd 1.9, ia -0.8, V7a 1.4, V7b 0.5, via -1.8, vib -1, V7/iia -0.7, V/vib -0.8, viiob -3.3, viio7/via -0.9
major viiob: strangec -0.4, Ia 11.8, Ib 5.8, Ic -1.3, Imaj7a 2, ia -2, Va -2.6, Vb -0.3, V7a -0.1, V7b 1.3, V7c -3.1, iia -1.1, iib -1.1, ii7a -0.1, via 3.2, vib 4.9, vic -1, V/iia -0.5, iiia 2, V/via 0.3, V/vib -0.5, V7/via -0.4, viioa 2.7, viiob -0.8, viioc -0.6, viiø7b -0.3, viio/iib -0.3, viio7/iiia -0.8, IVa -1.8, IVb 2, IVc 1.9
major viioc: Ia -1.2, Ib -0.6, ib -0.8, Va -1.4, V7a -0.6, V7c -0.4, V7d 4, vic -0.3, V7/iid -0.8, viiob -0.1, viio7/Va -0.8
major viiø7a: Ia 8.9, Ib 1.1, Vb -1.9, Vc -0.8, V7b 0.5, V/via -0.1, viio/iia -0.6, viio/vib -0.9, IVc -0.6, IVmaj7b -0.9
major viiø7b: Ib 1.7, Ic -0.9, Va 2.2, V7c -1, vib -1, iiia -0.7, V/via -2.9, viiob -0.3, viiø7a -1
major viiø7c: Ia -0.6, Ib 5, Ic -0.3, I+b -0.3, Va -0.5, V7d -1.8, iib -0.6, vic -0.1, iiia -0.5, viiø7b -0.9
major viiø7d: Ic 1.3, via -1.4, V7/iia -0.8, V/vib -2.4, V7/vib -0.9
major viio7a: Ia 0.2
major viio7b: Vb -0.7
major V/iiia: V/iib -1.4, iiia -0.2
major V/iiib: Va -1.1, iiia -3.5, V7/via -0.8, viiø7/iib -0.9
major V7/iiia: Ia -0.3, iiia -0.8, V/via -0.8
major V7/iiib: iiia -1.9, V/via -0.1
major viia: Ia -1.3, V7a 2, viio/Vb -0.9, viio7/iia -1
major viib: V+a -1, V7/Va -0.3, vib -0.4, V/iiib -0.8, IVa -0.4
major viic: viio7/via -0.3
major viio/Va: Va 1, iiib -0.5, viiø7c -0.3, viio7/iiia -0.9
major viio/Vb: Ia -1, Ic -2.6, Va 13.1, Vb -6.6, va -1.7, V/Va -0.1, vib -1, viio/IVa -1, viio/Vc 2.1, viio/vib -1.6
major viio/Vc: Va 0.9, Vb 1, V+b -1, V7/Vc -0.8, viio/Vb -0.6
major viiø7/Va: Ic 0.6, Va 3.2, V/Vb -0.6, viio/via -0.8
major viiø7/Vb: strangea -1, Ia -0.1, Vb 0.8, V7/vib -1, viiø7/Vc -1, viio/vib -2.8
major viiø7/Vc: Ib -1, Va 6.9, viiob -0.5, viio/vib -0.3
major viiø7/Vd: Vc -0.8
major viio7/Va: ic -0.8, Va 1.9, V7d -0.7, V/Vb -0.6, V7/Vb 0.2
major viio7/Vc: viio/Vb -0.7
major viio/iia: iia -5.4, V7/iib -0.1
major viio/iib: V7d -0.3, iia 2.4, iib -0.1, V/Vb -0.7
major viiø7/iia: iia -1.8
major viiø7/iib: V7c -0.9, IVa -0.5
major viiø7/iic: iib -0.3
major viio7/iia: iia 3.5, iib -0.8, V/Va -0.5, vi7a -0.7, V7/iib -1
major viio7/iib: V/iib 0.2
major viio7/iic: iia 0.8, ii7a -0.8, ivb -0.2
major viio/via: via -3.9
major viio/vib: ii7d -0.5, via 3.4, vib -3.9, viob -0.7, V/vib -0.1, IVb -1
major viio/vic: vib -0.8
major viiø7/via: via -0.3
major viio7/via: via -2.5, V/via -0.6, V7/vib -0.6
major viio7/vic: via -0.4, V/via -1
major viio7/vid: vic -1, V7/via -0.9, IVa -0.8
major viio/iiia: iiia -1
major viio7/iiia: iiia -0.4
major viio7/iiib: iiib -1
major viio7/iiic: Va -1, V7/Vb -0.9
major IVa: strangea -1, strangeb -0.5, Ia 3.2, Ib 3.7, Ic -2.1, V7/IVc -0.6, V7/IVd -0.1, ib -1, Va 4.7, Vb 1.7, V7a -2.2, V7b -0.8, V7c -1.1, V7d 4.5, va 1.7, vb -0.3, iia 10, iib 4.3, ii7a 5.9, ii7b -3.9, V/Va -0.5, V/Vb 0.9, V7/Vb 0.7, iiø7b -0.6, via -7.3, vib -0.6, vic -1.6, vi7a -1.4, V7/iib 1.4, viø7d -0.8, iiia 0.5, iiib -1.4, V/vib 1.5, viio/IVb 0.8, viioa 0.2, viiob 6.1, viioc -1.8, viiø7a 5, viiø7b -5.2, viiø7c -1.3, V7/iiib -0.1, viiø7/Va -1, viio7/Va 1.3, viio/iia 1.6, viio/iib -0.5, viio7/iia 2, viio7/iiia -0.3, IVa -2.2, IVb -1.9, IVmaj7a -3.4, IVmaj7b 2.6, IVmaj7d -0.2, iva -0.9, bVIIa -0.3, bVIIb -1.3, bVIImaj7b -0.9
major IVb: Ia 3.2, Ib -0.9, Ic 5.3, V7/IVb 1.5, V7/IVc -0.1, V7/IVd -0.8, Va -6.4, Vb 0.7, V7a 1, V7b 6.3, V7d -2.2, va -0.5, vb -0.9, v7b 1.1, iia -0.8, iib -1.9, iic -2.4, ii7a -2.3, ii7b 0.9, ii7c -1, V7/Vb -0.7, via 2.6, vi7d -0.4, V7/iia -1, viø7a -1, iiia 2, iiib 1.5, V/vib -1.3, viio/IVb 1.7, viioa -2.3, viiob 0.2, viiø7a 10, viiø7c 2, viiø7d -1.2, viio7/iia 2.2, IVa 1, IVb -3, IVc 1.9, IVmaj7a 5.1, IVmaj7b -2.1, ivb 0.6, bVIIa -1.9, bVIImaj7a -0.2, bVIa -0.2
major IVc: Ia 1.9, Va -0.7, V7b -0.9, viiø7a -2.1, IVa -0.3
major IVmaj7a: Ib -0.1, Va 7.4, Vb -0.3, V7a 1, V7d 0.4, iia -0.2, iib -0.4, ii7b -0.7, V/Vb 1.1, viioa -0.3, viiob -1.4, viiø7c -2.1, viiø7/Va -0.5, bVIIb -0.9
major IVmaj7b: Ia -0.9, Va -2.3, Vb -2.3, V7a -0.9, V7b 6.4, iia 0.6, iib 2.1, iic 1.9, ii7a -0.8, ii7b -1.4, via -0.9, vi7b -1, iiib -0.1, V7/vib -0.9, viioa 6.3, viiø7a -1, viiø7d 0.8
major IVmaj7c: Va -1.2, Vb -0.8
major IVmaj7d: viiob -0.7
major IV7a: bVIImaj7a -1
major IV7b: ia -1, V7b -1
major IV7d: ia -0.3, viiob -0.1
major iva: Ia -2.9, Ib -1, ia -1, Va -1.8, Vb 2, V7b -0.8, ii7a -0.5, ivb -1
major ivb: Ia -2.4, Ic 0.6, va -2, iiob -1, V7/iia 0.4, iva -1
major iv7a: Va -1.6
major bVIIa: Ia -2.3, V7/IVd -2, Va 1.5, Vb 0.1, V7b -0.2, iia 3.6, viio/IVb -1.5, viiø7/IVa -1, viio7a 0.2, IVa -1, IVb -2.1, bVIImaj7a -0.9
major bVIIb: Ib -4, V7/IVa -1.4, viiø7/IVa -1.4, IVa -2.3
major bVIIc: V/Vb -0.8
major bVIImaj7a: Ia -1.4, Vb -2.4, v7a -1, viiø7a 1.9, viio7/Vc -0.2
major bVIImaj7b: V7/IVa -0.9, IVa -0.7, bVIImaj7b -1
major bVIImaj7d: V7/iib -1
major bVII7a: V7/iia -0.2
major bVII7d: va -0.8
major bIIIa: ia -1, Vb -0.9, viø7c -0.4, viio7/IVa 1, iva -1
major bIIIb: bVIIa -0.8
major bVIa: ic -0.2, V7a -1, iiø7b -1.6
major Nb: viio7/IVa -0.3
minor strangea: ia -0.8, Ic -0.8, Va -0.9, viiob -0.5, viiø7a -0.2, viio7a -0.4, viio7/Vc 2.2, IVb -1, VIIb -1, VII7a -1, VIa -0.8
minor strangeb: strangeb -0.7, ia -0.4, ib -0.8, Va -0.1, V7a -0.4, iiob -0.9, iiø7a -1, iia -0.7, V/Va -1.3, vioa -0.4, iva -0.3, ivb -1, V7/VIb -1, Na -0.3
minor strangec: ia -0.3, Ib -0.8, Va -1, VIa -0.8
minor stranged: va -0.1, V7a -1
minor ia: strangea -0.7, strangeb -0.8, ia -18.7, ib 22.9, ic -10, i7a -2.7, i7c -0.5, imaj7b -0.9, Ia -1.3, Ib -1, V7/iva -0.3, V7/ivd -0.9, va 5.1, vb 7.1, vc -0.6, Va 6.1, Vb -3.8, Vc -2, V7a -2.3, V7b 2.8, V7c 2.5, iioa -0.4, iiob 5.7, iioc -0.1, iiø7a -4.7, iiø7b 5.5, iiø7c 2.6, iiø7d 1.3, iia 4.2, ii7a -1.2, V/Va 1.9, V/Vb 1, V7/Va -1.5, V7/Vb 2.8, V7/Vc 0.9, viob 4.2, viø7a -0.1, viø7b 3.9, viio7/VIIa -0.5, viioa -0.8, viiob 6.7, viio7a -1.3, viio7b -1.3, viio7d 0.4, viio/Vb -0.9, viio/Vc 3.7, viio7/Va 2.3, viio7/Vc 2.6, Ger65b 1.6, iva -3.4, ivb 6.8, ivc -3.6, iv7a 5.9, iv7b -1.9, iv7c -1, IVa 1, IVb 1.6, IV7a -0.5, IV7b -0.3, IV7c -0.9, IV7d 1.5, VIIa 2.6, VIIb 9.7, VIIc -1, VII7b 2.2, VII7d 0.6, IIIa 7.4, IIIb 0.6, IIIc -1.9, IIImaj7c -0.4, V7/VIb -0.3, V7/VIc -0.5, V7/VId -0.9, III+a -0.4, III+c -0.6, VIa 6.6, VIb 0.1, VImaj7a 3, VI7a 1.8, Nb 2
minor ib: ia -1.8, ic 2.7, imaj7a -0.2, Ib 4, V7/ivb 0.2, va 8.1, vc -2.7, Va 5.2, Vb 2.2, Vc -2.4, V7a 3.4, V7b -1.6, V7c -0.1, V7d -0.9, iioa -0.7, iiob -1.5, iioc -0.4, iiø7a -2.5, iiø7b 6.3, iiø7c -1, iiø7d -1.9, iia 1.2, iib -1.8, ii7a -1, viob 0.9, vioc -0.2, viø7c -0.3, viio7/iva 2, viioa -3.6, viiob 5, viioc -0.4, viio7a -1.3, viio7b 0.9, viio7c -0.3, viio/Va -0.7, viio/Vc -1.7, viio7/Vc 1.8, viio7/Vd -1.2, Ger65d -0.9, iva 3.3, ivb -0.9, iv7a -1.1, iv7b -1.1, iv7d -0.3, IVa -3.3, IVb 0.9, IV7a -2.1, IV7d -0.8, VIIa -0.1, VIIb 1.2, viib -0.6, IIIa -0.8, IIIb -0.4, VIa 1.1, VIb -3.8, Nc -0.7
minor ic: ia -1.6, ib -0.9, va -0.9, Va 6.8, V7a 4.4, V7b -0.5, iiob 0.3, iiø7a -1.4, iiø7b -2, iiø7c 3.1, viø7a -0.7, viø7d -0.9, viio7a -0.4, viio7c 5.3, viio7/Va 2.8, iva -2.4, ivb 1.8, iv7a 2.7, IV7b -0.1, VIa -0.3, VImaj7d -0.9
minor i7a: ia -1.4, iiob 1.5, iiø7b -1.3, viio7a -0.6, iva 1.3, VIb 3.8
minor i7b: ia -0.9, V7d -0.6, iiob -0.9, IIIb -0.8, VIa -0.1
minor i7c: iiø7b -0.5, viio7/Va -0.7
minor i7d: ivb -2.6, IV7b 1.3
minor imaj7a: ivb -0.2
minor imaj7b: ia -0.9
minor imaj7c: Ia -1
minor Ia: strangea -0.8, strangec -1, stranged -0.1, ia -2.3, i7a 2.1, Ia -3, Ib -0.6, Ic 1.1, V7/ivd 1, Va -6.1, Vb -2.5, V7a -1.1, V7c -0.5, iioa -1, iiø7a -2, iib -1.1, ii7b -1.8, ii7d 1.4, viiob 0.7, viio/Vc -1.7, iva -1.5, IVa -3.1, IVb -0.8, IVc -0.8, VImaj7a -0.7
minor Ib: strangea -0.8, ia -0.8, ib 0.5, Ia -2.6, Ic -0.5, V7/iva -2.2, V7/ivb 6.3, Va -1, Vb 0.9, Vc -1, V7c -1, iia -3.9, ii7b -1, V7/Vb -1, viio/Va -0.5, viio7/Va 0.4, iva 1.2, IVa -0.8, IV7d 1.3
minor Ic: Va 2.1, V7a -2.5, V7d 1.9, ii7b -0.8, iva -0.7, ivb 1.9
minor V7/iva: iiob -2.1, iiø7b -1.4, iia 1.7, iva -3.5, ivc 1.9, IVa -1.7
minor V7/ivb: V7/iva -1.9, V7/Vb -0.5, iva 6.3, IVa 2.1
minor V7/ivc: iiø7b -1.5, iva 1.7, IVb 2.1
minor V7/ivd: V7/ivc 2.1, ivb 0.5, IVb -1.7
minor va: strangeb -0.6, ia 0.6, ib -2.4, ic -0.5, i7a -0.3, V7/iva -0.8, V7/ivb -2.3, V7/ivd 1.7, va -2, vb 3.4, v7a 0.2, v7d 0.6, Va -1.6, Vc 1.1, V7c -0.5, V7d -1.9, iiob 0.5, iiø7b -0.7, iiø7c -0.8, V/Vb 0.8, V7/Va -0.5, V7/Vb -0.8, viob 1.1, viø7a -0.1, viio/ivb 2, viiø7/iva -0.1, viiø7/ivb -0.6, viiob 1.9, viio7a 1.3, viio7d 1, viio7/Va -0.3, Ger65b -0.6, iva -0.2, ivb 1.4, iv7a -1.1, IVb 5.4, IV7a -1, IV7b -0.8, VIIa -1.1, VIIc -0.1, VII7d -0.9, IIIa 2.6, IIIb 1.4, V7/VIa -1, III+maj7a 0.6, VIa 3.1, VIb -0.7, VIc -0.5, VImaj7a 1.9, VImaj7b -0.5, VImaj7d 0.1
minor vb: ia 0.8, ic -1.2, i7a -0.1, i7d -1.7, Ia -1, va -0.9, Vb 0.9, V7b -0.4, iioa -1, iiø7c -1.9, iia -0.1, V/Va -0.8, V7/Va -0.7, viø7a -1.2, viø7b -0.4, viiø7/ivc 2.1, viio7a -2.9, viio7d -0.1, viio7/Vb 2, iva -0.4, ivb 4.3, iv7b 2, IVb -0.2, VIIa -0.7, IIIa 2.3, VIa 4.8, VIb -1.4, VImaj7a -0.6, VImaj7b -0.4
minor vc: ia -4.1, ib -1, V7c -0.7, V7d 1.2, viob -0.1, viiob -0.5, IIIa -0.6
minor v7a: ia 3.1, ib -0.8, Ia -0.6, vioa -0.9, viob -0.8, VIa 1.7
minor v7b: ia -0.1, Vb -0.5
minor v7c: ia -0.9, VIb -0.6
minor v7d: ib 1.1, Ib -1.7, V7/ivb -0.8
minor Va: ia 8.8, ib -3.4, ic -2.7, Ia -1.1, Ib -2, va -0.3, vb -1, Va -13.6, Vb 1.8, V7a 17.3, V7b 0.3, V7c -5, V7d 3.4, iiob -0.9, iiø7b 0.9, V7/Vb -1, viø7a 1, viø7b 1.1, #via 1.9, viioc -0.7, viio7c 3.9, ivb 4.2, iv7d -0.5, IVb 4.2, IIImaj7a -1.5, III+maj7a 2, VIa -1, VImaj7a -2.4, VImaj7d -0.5
minor Vb: strangeb -1, ia 5.1, ic -1, Ia 2.7, Va -0.5, V7a 2.8, V7b 2.1, iia -1, viø7a -0.2, VIb 1.7
minor Vc: ia 1.8, ib -3, V7c -1.4, V7/Vd -1
minor V7a: ia 6.7, ib -0.5, ic 1.1, Ia 17.2, Ib -1, Ic -0.9, V7/iva 0.7, Va -0.8, V7a -2, V7b 0.4, V7c 1.2, V7d -3.7, vioa 0.9, #via -0.2, #vib -0.8, viio7/Vb 1, ivb -1.2, iv7b 2.1, VIa 14.3, VImaj7a 1.3
minor V7b: strangeb -0.1, ia 6.6, ic -0.9, Ia -4.5, V7/iva -1.8, V7/ivd -1.2, V7a 0.2, V7b -1.9, V7c 2.7, iia -1.2, viob 1.7, viio/ivc 1.3, viioa -0.1, #io7d -0.8, III+b 0.8, VIb 4.3
minor V7c: ia 0.9, ib 6.3, Ia -0.3, Ib -0.5, Va -1.7, Vb 4.1, V7a 1.9, V7b -0.8, viiob -0.1, ivc -0.2
minor V7d: strangec -0.8, ia -2.7, ib 4.4, ic -1.5, Ia -0.8, Ib -0.4, Vc -1, V7a -0.9, V7c 7.4, vioc 0.8, viø7c 1.8, #via -0.8, viiob -0.9, viio7/Va -0.8, VIa -2.2
minor viio/VIa: strangea -1, viio/VIb -0.5
minor viio/VIb: Ia -0.3, viio7a -0.3, ivb -1.7, VIa -1.6, VImaj7a -0.3
minor viio/VIc: Ia -0.1
minor viiø7/VIa: VIa -1.5
minor viiø7/VIb: Ia -0.8, viia -0.5
minor viiø7/VIc: ia -0.6
minor viiø7/VId: V7/ivb -0.1
minor iioa: strangea -1, ia 0.6, ib -1.6, Va 1, Vb 0.8, V7b -1.2, V7d -1, iiob 1.3, VIIb -0.4, IIIa -0.3, VImaj7b -0.3
minor iiob: ia 0.3, ib -2.1, ic 4.9, Ia -0.1, va 0.4, v7a -0.9, Va 2.4, Vb -0.6, V7a -1.8, V7d 3.1, iioa 1, iioc -1.4, iiø7b 1, iiø7c -1.3, V/Vb 1, Fr43b -0.2, viio7c -0.7, viio7d -0.9, viio7/Va 1.6, iva -0.6, ivb -0.7, iv7a 0.1, IV7a -1.5, VII7a -1.1, VII7b -1, IIIa 0.5, IIIb 1.7, IIImaj7b -0.9, V7/VIa 2.2, III+a -0.9, III+b -1.5, III+maj7a -2.4, III+maj7b 2.2, VIa 0.2
minor iioc: ia -0.4, ic 2.2, Va -3.4, viio7d 1.9, IIIa -0.4, IIIb -1.4, III+b -1.7, VImaj7c -0.9
minor iiø7a: ib -3, Ib -1, va -0.7, vb -0.4, v7c -0.1, Va 11, Vb -1.8, V7a 2.6, V7c 2, iiø7b -1, viiob -2.4, viio7a -0.8, viio7b 4.3, IVa -0.3, IV7a -0.1, VIIb -1.3, VII7b -0.7, IIIa -1.8
minor iiø7b: ib -2.1, ic 4.5, Ia -0.7, va 0.1, vb -0.3, Va 3.6, Vb -0.8, V7a 3.1, V7b 1.2, V7c -1.7, V7d 0.9, iiob -1, iiø7a 16.1, iiø7c 2, iia -3.9, iib -1.1, V7/Vb -0.4, viiob -1.6, viioc -1, viio7c -0.6, viio7/Va -1.4, iva -1.4, ivb -0.4, iv7a 1.5, III+b 0.3, III+maj7a -0.9
minor iiø7c: ib -0.9, ic 2.5, va -3.2, Va 0.3, iiob 2, iiø7b 2.1, ivb -0.2, iv7a -1.2, IIIa -1.6, III+b 1.8, III+maj7a -0.9
minor iiø7d: ia -3.3, Vb 5.1, V7b 5.8, V7c -1, iiø7c -0.5, viio7a -1.3, ivb -0.8, IIIc -0.7
minor iia: ia -0.3, ib -0.9, Ia -3.9, Ib -0.9, va -1.5, Va -5.8, Vb -3.5, V7a -5, V7b 2.5, V7d -0.1, iib 2, ii7d -1.7, vioc -0.5, viiob 3.3, viiø7a 1.7, IVa 1.7, IVb 0.7, IV7d 1.7, III+maj7c -0.9
minor iib: Ic 3.6, v7a -0.6, Va -3.2, V7a 0.4, iia -0.8, V/Va -1, viø7c 2, IVb 1.8
minor ii7a: ib -2, Va -0.8, viio/ivb -0.3, viiob -0.3, IIIa -1.5
minor ii7b: imaj7c -1, Va -4.5, V7a -2, iiø7b -0.3, ii7a -0.8
minor ii7c: V7b -0.6, viio7/Vb -0.1
minor ii7d: Vb 1.3, V7b -0.6, IVb -1
minor V/Va: ia -1, ic 0.8, va 1.3, vc -0.8, Va -6, V7/Va 0.2, III+b -0.6
minor V/Vb: va 5.1, Va -0.3, V7a -0.8, V7d -0.6, V7/Vb 2, III+b 1.8
minor V7/Va: va -2.3, Va -5.4, V7a -0.7, III+b -0.4
minor V7/Vb: ic -0.8, va 0.4, Va 3, V7d -0.2, viio7/Va -1, III+b 0.9
minor V7/Vc: va 0.9
minor V7/Vd: vb -1.1, Vb -1.8
minor Fr43b: Va -0.2
minor vioa: Vb 1.8, V7b -1, iiø7c 0.3, IV7b -0.4, VIIa -0.9
minor viob: ia -0.9, ib -0.9, Va 1.1, ii7a -2.5, viø7c 2.1, viio7/VIIc -0.4, viiø7/ivc -0.7, viiob 4.1, viio/Vc -0.7, IV7a -0.7, VIIa 0.8, VIIb -0.9
minor vioc: V7d -0.5, viiob -1.3, viio7a 0.8, VIIb 1.9
minor viø7a: vb -0.2, V7a -0.2, V7b 2.2, iia 2, V7/Va -0.4, viioa 3, viiø7a -0.9, IVb 0.7, IV7b 1.4, VIIa -2.9, VII7a -0.1
minor viø7b: Va 1.9, V/Va 0.3, viiob 2.6, IV7b -0.3
minor viø7c: Va -0.3, V7b -1, V7c 2.1, iia 2, viiob -1
minor viø7d: Va -0.9, iiø7b -1, viioc -0.8
minor viio7/VIIa: VIIa 1.6
minor #via: Ia -0.5, Ib -1.7, Ic -1, V7a -1, V7d -0.8, iia -0.9, iib -0.8, ii7b -0.8, viiø7/Vc -0.1, IVa 1.8
minor viio/iva: iva 1.1, IVb -1
minor viio/ivb: V7/iva -0.3, iib -0.6, viio7/ivc 1.9, iva 3, iv7a -0.4, IVb -1.9
minor viio/ivc: viio/ivb -0.7, viio7a -0.9, ivb 1.3, IVa -0.9, IVb -0.3
minor viiø7/iva: Ib -0.8, iva 1.3, IVa -0.1
minor viiø7/ivb: va -0.6
minor viiø7/ivc: ia -0.3, iva -0.7, ivb 2.1, IVb 0.8
minor viio7/iva: viio7/ivb 1.9, iva 0.2, IVa 0.9
minor viio7/ivb: Ib -0.8, viio7/iva -0.1, ivb 1.9, VIa -0.1
minor viio7/ivc: iva 1.5, ivb 0.9, IVb 1.5
minor viioa: ia 5.7, Vb 1.9, V7b -2.1, viiob -1.7, viio7a -0.5
minor viiob: strangeb -0.1, ia 4.3, ib 6.4, ic -0.9, Ia -0.6, Ib 3, Vb -0.2, V7a -0.7, V7b -0.7, V7c 1.1, iiob 2, viio/iva -1, viiø7/iva -0.8, viiob -0.6, viio7a 1, viio7b 1.4, viio7c -1.5, ivc -1.3
minor viioc: ia 1.9, ib 0.7, Ia -0.2, Va -1, viiob -1.5, ivb -1.3
minor viiø7a: ia 2.9, Ia 0.3
minor viiø7c: ib -0.9, Ia -0.8
minor viio7a: ia 9.9, Ia -1.9, V7/ivd 2, Va 0.6, Vb -1.1, V7b -9.6, viiob -1, viio7d 0.9
minor viio7b: ia 0.8, ib 0.6, Ia 2.2, Va 1, Vb 3.8, V7b 0.2, viio7a 1.4, viio7c -0.8, III+b -0.8, VIb -0.1
minor viio7c: ia -3.3, ib 5.6, ic -1.5, Ia 1.9, Ib -1.5, Vb -0.1, V7c -0.4, V7d -0.6, viio7/Va 0.9, ivb 0.9, iv7a -1, III+maj7a -0.7
minor viio7d: ia -0.4, ic 4.4, va -0.1, Va -1.3, Vb -1.1, V7a 2, viio7c 2, ivb -0.6
minor viio/Va: va -0.5, viio/Vc -0.7
minor viio/Vb: va -0.9, Va -1.8
minor viio/Vc: Va 0.6, Vb -0.3
minor viiø7/Vc: V7/iva -0.7, vb -0.1
minor viio7/Va: ic 1.7, va 1.8, Va 3.3, V7d 0.4, V7/Vb -3.1
minor viio7/Vb: va 2, vb -0.7, Vb 2.1, V7b 1
minor viio7/Vc: Va 6.9, viio7/Vb 2.2, VIIa -0.8
minor viio7/Vd: Va -0.3, viiob -0.9
minor Ger65b: ic 1.6, ivb -0.6
minor Ger65d: Vc -0.9
minor #io7d: ivb -0.8
minor iva: ia -0.5, ib -2.9, ic 1.4, Ia -2.2, Ib -0.2, V7/ivb -0.1, va -4.9, Va 4, Vb 1.4, V7a 3.3, V7b -1, V7d 0.6, viiø7/VIa -0.9, viiø7/VId -0.1, iiob 0.9, iiø7a 0.4, iiø7b -1.8, ii7a -0.3, V/Vb 0.1, V7/Vb 2, viio/ivb -2, viio7/iva 1.9, viioa -0.5, viiob 2.6, viioc -1.2, viiø7c -0.9, viio7a -0.6, viio7b 2.4, viio7c -1, viio7/Va 0.8, iva -1.8, ivb -1, ivc -1.4, iv7a -0.6, iv7d -1, IV7d 0.7, VIIb -1, viia -0.1, IIIa -1.2, IIIb -2.5, IIIc -1, IIImaj7a -0.8, III+a -0.1, III+b -1.8, VIa -1.4, VIb -1.3, VIc -1, Na -1.6
minor ivb: ia -0.6, ib 1.1, ic 12.3, Ia -0.7, V7/ivb -0.7, V7/ivc 0.1, va 1.5, v7a 1.9, Va 4.7, Vb 1.9, V7a -0.3, iioa 1.9, iiob -2.1, iioc 0.7, iiø7b 1.9, iiø7c 5, ii7b -0.2, viø7d -1, viio7/iva 0.9, viio7/ivb -0.1, viio7a 0.8, viio7b -0.8, viio7c -1.3, iva -1.1, ivb -0.8, ivc 0.3, iv7a 1.1, iv7b 2.9, IVb 3.3, VIIa -1.5, VII7a -2.2, IIIb -1.1, III+b 1.1, III+maj7b -0.1, VIa -0.6, VImaj7a -0.4
minor ivc: ib -0.8, Ia 2.2, Vb -3.9, V7b -3.2, iiø7d -0.1, viio7a -0.6, V7/VIa -1
minor iv7a: ic -1.8, va -0.8, v7a 1.6, Va 3.5, Vb -0.1, V7a 1.6, V7b 1.4, V7c -0.1, V7d -1.5, iiob -2.5, iioc -0.9, iiø7b 0.8, iiø7c -1.6, ii7b -0.3, V/Vb -0.6, ivb 1.6, iv7b -0.4, VIIa 1.5, VII7a -0.7, V7/VIb -0.5
minor iv7b: Va 3.2, V7b -0.3, iiob 1.9, iioc 2.1, iiø7b 2, iiø7c -3.2, viioa -2.7, viio7a -0.5, viio7c -0.4, viio7d 3.3, viio7/Va -0.3, ivb -2.3, iv7a 2.9, IV7b 1.7, VIIa -2.1, VII7a -0.8
minor iv7c: Vb -0.2, viio/VIa -1, VIIa -1
minor iv7d: viio7b 0.1, VIIb -2.1, III+b -0.5, VIb -1.3
minor IVa: ia -3.7, ib -0.9, Ia -4.1, Ib -2.5, Ic -1.9, va -0.1, Va -4.5, Vb -1.3, V7a -2.5, V7b 0.5, V7d -2.4, iiø7a -0.8, iia 0.2, iib 3.8, V/Vb 1, #via -0.7, viioa -0.7, viiob 0.1, viioc 5.1, viio7a 2.6, viio7c -0.9, viio7/Va 0.9, IVb -2.2, IV7a -0.3, IV7b 0.8, IV7d 0.6, VIIa -0.9, VIIb -3.2, VII7a -0.7, IIIb -0.7, III+maj7c -0.7
minor IVb: ia 4.1, ic -0.3, Ia -0.3, Ic -0.8, va -0.1, vb -1.6, Vb -1, V7b 5.1, iia 0.8, iib -0.3, ii7b -2.1, viio/ivb -0.6, viioa 2.4, viiø7a 2.9, viiø7/Vc -0.7, viio7/Vb -0.7, iva -0.1, ivb -0.5, IVa -2.6, IV7b 0.5, VIIa -5.2, VII7d -0.5, viia -0.6, VIa 1.4, VI7a -1.1
minor IVc: V7b -0.8, #iob -0.8
minor IV7a: ib -0.9, va -1, v7a -0.9, Va -0.3, V7b -1.7, V7c -0.8, V7d -0.3, viioa -0.2, viiob 0.1, viio7b -0.4, iva 1.7, VIIa 3.5
minor IV7b: vb -1.8, Vb -0.1, V7b 0.6, viioa 5.3, viio7a -0.8, iv7a -0.3, IV7a 3.6, IV7b -1, VIIa -0.4, VII7a -0.5, viia -0.3
minor IV7c: ia -1, Va -0.9, IV7d -0.6, VIIa -0.6
minor IV7d: Vb 0.1, iia 1.4, viioa 1.3, viiob -3.1, viio7a -0.8, viio7b 3.6, iva -0.9, IV7a -0.4, VIIb 1.2
minor VIIa: ia -4.4, ib -1.4, i7a -0.9, V7/iva -2.8, va 1.2, Va -0.9, Vb 1.7, V7a -3.5, V7b 2.2, iioa 0.9, iiob 1.7, iiø7b -0.9, V/Vb -0.1, vioa -1.3, viø7a -0.9, viio/ivb 2.4, viio/ivc -0.3, viiø7/ivc 0.8, viio7/iva -1.2, viioa 1.9, viio7a 5.2, viio7b -0.9, viio7/Vb -0.7, iva 2.8, ivb 4.8, IVa 0.5, IVb -1.5, IV7b -1, IV7c -0.6, VIIb -3.3, VII7a -3, VII7d -1.1, IIIa -6.1, IIIb -1.5, IIImaj7a -0.5, III+b -2, VIb -0.7
minor VIIb: strangeb -0.9, strangec -0.3, ia -5.4, ib -2.8, Ib -0.6, vb -0.8, v7c -0.6, Va 1, Vb -0.4, V7a -1, V7b 0.3, V7c -1, V7d 2, iiob 0.8, iiø7d 3.6, ii7c -0.6, viob -0.1, viiø7/iva 2, viiob 0.8, viio7a 1.4, iva -1.7, ivb 0.5, ivc -0.4, IVa -4.8, IVb -1, IV7c -1, IV7d -0.9, VIIa -4.5, VIIc 0.9, VII7b 1.3, IIIa 13.1, IIImaj7a -0.8, IIImaj7d -0.4, III+maj7a -0.7, VIb 0.7
minor VIIc: ib -0.1, Ib -0.9, IIIa -1.1, IIIb -1
minor VII7a: ia -8.9, ib -8, V7/ivd -0.5, Vb -0.1, V7a -1.5, V7b -1.3, IIIa -4, IIIb -1, IIImaj7a -1.8, V7/VId -0.5, III+a -0.7, III+b -0.1, III+maj7a -0.7
minor VII7b: ib -0.7, Va -0.5, Vb -0.5, V7b -0.7, IIIa 2.7, V7/VIa -0.7
minor VII7c: ib -0.8, Vb -0.7, IIIa -1, IIIb -1
minor VII7d: va -2.6, vb -1.7, Va -0.2, V7a 1.5, IIIb 1, III+b 2, VIa -1
minor viia: Ia -1.2, Vb -0.3, iva 2
minor viib: ia -1.8, Ia -0.9
minor IIIa: ia -12.5, ib -0.3, Ib 3.1, V7/ivb 3.2, va 8.8, vc -1.1, v7d -1, Va 2.5, Vb 3.1, V7a -0.8, V7b 9, V7c -0.2, V7d -1.5, viiø7/VIa -0.6, iioa -0.8, iiob 1.4, iiø7d -0.8, iia 1.9, iib 2.2, viob -1.4, vioc -1.1, viø7a -1.5, viø7b 1.6, viø7c -1, viio7/iva 0.6, viioa -3, viiob 2.9, viioc -1.3, viio7a 1.5, viio7b 0.3, viio7d -1.7, iva 0.5, ivb -2.2, iv7a -0.6, iv7b -0.6, iv7d -3, IVa -1.8, IVb 1.7, IV7a -0.8, IV7b -0.5, IV7d 1.9, VIIa 2.7, VIIb -2.3, VII7b -1, IIIa -2, IIIb -1.1, IIImaj7b -0.9, IIImaj7d -2.3, V7/VIa -0.9, V7/VId -1, III+a -0.5, III+b 1.8, VIa -1.3, VIb -1.7, VImaj7a -1, VImaj7b -0.6, VImaj7c -1, Nb -0.7
minor IIIb: ia 1.9, ib -1, va -1.2, vb -0.7, Va -0.8, Vc 2, iioa -1, iiob -1.1, iiø7b -0.9, viø7a 1.1, viio7a -1.5, viio7c 0.7, iva -1.2, ivb -0.1, iv7a -2.1, iv7b -0.2, IVb 0.5, IV7b 3.9, VIIa 1.9, VIIb -0.9, IIIa 1.2, IIIc -1, IIImaj7a -0.1, V7/VId -0.8, III+b 1.4, VIa -4.4, VImaj7a -0.8, VI7d -1
minor IIIc: ia -1, ivb -1.6, IVb 0.9, IV7b -0.1, IIIa -1, VIb -1
minor IIImaj7a: ia -2.8, ib -2.6, ic -0.5, vc -0.6, Va -0.1, V7b 1.2, V7c 2.1, iiø7a 1.9, viiob -0.1, viioc -0.8, viio7c -0.5, iva -0.7, ivb -1, IVa 0.6, IV7d -0.3, VIa -0.2, VIb -1, VImaj7a 0.4
minor IIImaj7b: Va -0.9, V/Va -0.7, ivb -0.9
minor IIImaj7c: VImaj7a -0.4
minor IIImaj7d: ia -1.2, ib -0.7, iiø7d -0.7, VIb -0.9, VImaj7b -0.2
minor V7/VIa: Ib 1.7, viio7/iva -1.4, iva -1.8, ivb -0.2, VIa 0.2, VImaj7a -1.4
minor V7/VIb: iv7b -0.9, IIIb -1, VIa -3
minor V7/VIc: VIa -0.5
minor V7/VId: ia -1.7, viob -1.4, VIb -4.6
minor III+a: ia -0.8, ib -0.9, IVb -0.4, III+b -0.1, VIa -0.5
minor III+b: ib 1.4, ic -2.2, Va 0.7, Vb 1.1, iiø7c -0.6, viø7a 3.1, viø7d -0.8, viioa -0.3, viio7/Va 0.3, viio7/Vb -0.1, ivb -2.4, iv7a -0.6, iv7b 1.3, IV7b 0.1, III+maj7a 1.1, VIa 1.8
minor III+c: ia -0.6
minor III+maj7a: ia -0.9, V7b -0.4, V7c -0.7, viiob -0.9, viioc -0.7, ivb 3, iv7b -1, VIa -2.8, VImaj7a 1.7
minor III+maj7b: ib 2.2, ivb -0.1
minor III+maj7c: Ia -0.9, iia -0.7
minor VIa: ia -4.2, ib 1.4, ic -2.2, i7c -0.7, Ia -0.6, Ib -0.9, Ic 1.9, va -1.7, vb 4.9, Va 2.1, Vb -1.5, V7a 1, iioa -0.6, iiob 4.5, iioc -1.5, iiø7a -2, iiø7b 8.7, iiø7c -6.8, V/Vb 1.8, V7/Vb 1.3, viio7/VIIa -0.3, viio/iva 1.1, viio7b -0.1, viio7/Va -1.5, iva 1.2, ivb -4.3, iv7a 3, iv7c -1, IVb -0.7, IV7b 2.3, VIIa -1, VII7d -1.2, IIIa -1.9, IIIb -4, IIImaj7a -1, VIb -1, VImaj7a 1.1, VImaj7d -2.5, VI7a -0.6, Na -0.5, bIImaj7b -0.9
minor VIb: ia -1.6, vb 2.1, Vb 0.3, viio/VIa -0.5, viio/VIb -0.3, iiø7a -1.8, iiø7d 0.3, viio7/ivc 0.9, viiob 1, viio7b 0.7, ivb -2.3, ivc -0.7, iv7b 1.3, IVb -1, VIIa -0.5, VIIb 0.7, VII7b -0.7, IIIa -1.8, V7/VIa -0.5, V7/VIb -2.1, VIa -3.5, bIImaj7a -0.4
minor VIc: iioa -0.5, iib -1
minor VImaj7a: ic 3.7, iioa -0.4, iiob -1.5, iioc -1.5, iiø7b -0.4, iiø7c 1.6, V7/Vb 1, viø7a -0.4, iva 2.3, ivb 3, iv7a -0.9, iv7b -0.1, IVb -1.5, VII7d -0.1
minor VImaj7b: Va -0.6, V7b -0.2, iioa 2.1, iiø7d -0.3, viio7a -0.6, ivc -1.2, VII7b -0.5
minor VImaj7c: viiob -0.9, VIIb -1
minor VImaj7d: Va -2, iiob -1, iiø7b -0.6, iva -0.9
minor VI7a: V7a -1.1, viio7/VIIa -0.6, ivb 1.8
minor VI7d: iiob -1
minor Na: ia -0.9, Ia -0.5, Vb -1.6, viio/VIb -1.6, iv7c -0.2, V7/VId -0.5
minor Nb: strangeb -1, ib -0.8, va -0.1, VIa -0.7
minor Nc: va -0.7
minor bIImaj7a: IIIa -0.4
minor bIImaj7b: Ia -0.8, V7/VIb -0.9
# progression into a phrase
major strange: V -0.5, V7 -0.8, viiø7/V -1, bVImaj7 -1
major I: I 11.5, V7/IV -1.6, V 12.8, V7 -1.4, v -0.4, ii 0.6, ii7 1.3, V/V 0.9, V7/V 3.7, vi 9.7, vi7 2.6, V/ii 0.7, vio -1, V/vi -0.2, viio -0.8, viio/V 0.5, viio7/V -0.6, IV 6.7
major V7/IV: IV 1.2
major I+: vi -1, viio/V -1
major V: I 6.6, Imaj7 -0.6, V7/IV -0.2, i -0.8, V 2.7, V7 2, vo -0.4, ii 3.6, V/V -0.7, V7/V 0.9, vi 3.8, V7/ii 1.3, iii -6.4, V/vi 8.2, viio/IV -1.9, viiø7/IV -0.3, viio7/ii -0.2, IV 0.8, IVmaj7 -0.9
major V7: I 1.8
major v: I -2, V -2.9, ii 2.2, IV 1.5
major V+: I -1
major ii: strange -0.6, I -3.4, V 1.4, V7 1.6, ii 1.2, V/V 3.1, V7/V -0.8, vi 0.8, vi7 -0.2, iii -0.9, viio/V -0.1, IV 0.8, bVII -1.5
major ii7: I -0.4
major V/V: I -1.7, V -2.8, V7 0.5, v 1.9, ii -2.9, V/V 1.4, iio 0.4, vi 0.7, V/vi -0.3, IV -1.7
major iio: IV -1
major vi: I -0.8, V7/IV 1.6, V 1.3, ii 3.6, V/V 1.5, vi 0.5, iii -0.1, V/vi -1, viio/IV -0.9, viio -1.5, V/iii -2.1, IV 4.3, bVII -0.9
major V/ii: I 5.1, V7/IV -1.8, V -0.3, ii -2.5, V7/V -0.8, vi -4.8, V/vi -0.1, V7/vi -0.8, viio 0.8, IV -1.6
major V7/ii: vi -0.9
major viø7: I -0.4
major iii: I -4.2, V -1, V7 -1.7, iii -1.5, viio 1.7, viio/V 2, IV 3.8
major V/vi: V -1.7, V7 1.8, V/V -0.3, vi -2, iii -2, V/vi -1, viio/IV -0.6, IV 0.1
major V7/vi: vi -0.3, viiø7/V -1
major viio: I 2, V 1.1, vi -1
major V7/iii: V/iii -0.2
major viio/V: V/V -0.8
major viiø7/V: I -0.3
major IV: I -9.8, i -1, V 3, V7 -2.3, ii 0.6, ii7 -0.6, vi 2.9, V/ii -0.7, viio -4, viio7/V -0.7, IV 5.1
major iv: I -0.3, iv -0.8
major bVII: I -1.9, V -1, IV -0.3, iv -1
major bIII: I -0.7, viio -1
major bVI: viio7/ii -0.8
minor strange: I -0.7, V -1.5, ii7 -1, viio7/iv 1.5, viio7 -0.6
minor i: i 9.4, I -0.9, V7/iv -1.2, v 1.2, V 1.9, iio -2, ii 1.9, V/V 2.1, iv 0.8, IV -1.4, III 2.9, VI 4.6, N -0.5
minor I: strange -1, i 1.3, I 4.7, v -0.8, V 0.6, V7 0.8, iio -0.3, V7/V -0.8, vio -0.4, viio7 -0.2, iv -3.2, IV -1.3, VII -0.9, VI -0.1
minor v: strange -0.4, i -2.6, i7 -0.9, v -2.5, V 1.2, V7 2, ii -3.2, viio 1.1, VII -0.1, III -1.7, IIImaj7 -0.2, VI -2.4
minor V: i 8.4, i7 -0.8, I -1.8, v 5.8, V 4.1, V7 -1.7, viø7 1.5, viio/iv 1.9, iv -2.3, IV -1.8, III -1.4, VI 3.1
minor V7: i 0.8, V -0.6, IV -0.7
minor iiø7: i -0.6
minor ii: V -0.9, V7 -0.4, vio -0.7, III+ 1.8
minor V/V: I 1.5, v 0.8, V -1, V7 -0.8, viio -1.5
minor #vi: strange -0.8, #vi -1
minor viio: V 0.6
minor viio7: i 2
minor iv: i -1.5, I -0.9, V7/iv -0.5, v -0.9, V7/V 0.8, iv -2.1, IV -1, VII -1.2, VII7 -1.2, III 1.7
minor IV: V -0.5, V7 2.8, ii -1, V/V -0.9, viio7/V 0.7, iv 1.9, IV 1.4, VI -1
minor VII: strange -1.6, i -3.3, v 0.3, V -5.2, ii -1, vio -1, viiø7/iv -0.3, iv -0.3, IV 1.6, VII -3.8, VII7 -0.3, III -5.7, IIImaj7 -0.8, VI -0.8
minor vii: VII -0.8, VII7 -1
minor III: strange -0.7, i 0.1, i7 -0.1, I -1.4, v -0.3, V 2.2, vio -0.8, viio7/VII 1.6, viio -0.6, viio7 -0.9, viio7/V -0.8, IV7 -1.5, VII -1.8, VII7 -0.5, III -6, III+ -0.8, VI -0.9
minor V7/VI: iv -0.6
minor III+: i -0.4, VII -0.7
minor VI: i -2.4, I -1.3, viio/iv 1.6, iv 3.4, III -1.3, VI -3
minor bIImaj7: iv7 -1
# cadence
major strange: I -0.7, ii -0.5, viio/IV -1
major I: I -5.9, Imaj7 -0.9, V7/IV 0.1, V 7.2, ii7 -0.4, V/vi -1, IV -0.4
major Imaj7: I -0.9, IV 0.7
major V7/IV: V7/IV -0.2, viio/V 1.7, IV 6.2
major i: V -1.3
major V: I 10.3, Imaj7 -0.1, i -0.5, V -2.4, V7 -0.1, vi 2.8, viø7 -0.4
major V7: I 15.1, vi 2.4, V/ii -0.9, V7/vi -1, viiø7/V -0.3
major v: V/V -0.5
major v7: I -1.9
major vo: I -0.1
major ii: V -0.2, vi 1.7, V/ii -0.3, iii 1.9, V/vi 0.7
major ii7: V 1.8, V/vi 2, V7/vi -0.3
major V/V: V -6.8, v -1.3
major V7/V: I -0.3, V -3.3, v -1, V7/V -0.8, iii -0.2
major iio: V -1
major iiø7: I -0.6
major vi: I -0.4, V -1.9, V7/V -0.8, vi -0.8, V/vi -0.8
major vi7: vi -0.7, V/vi -1
major V/ii: ii -1.9, V7/iii -0.2
major V7/ii: ii -1.1
major iii: I+ -1, ii -0.1
major iii7: I+ -2
major V/vi: vi -1, V/ii -0.5
major V7/vi: vi -5.1, IV -3.1, IVmaj7 -0.8
major viiø7/IV: IV -0.6
major viio: I -2.7, V -1.4, vi -0.9, V/ii -0.5, V7/ii -0.8, V/vi -1.7
major viiø7: I 3.8
major V/iii: iii -0.5
major V7/iii: I -0.3, iii -0.8, V/vi -0.9
major vii: V+ -1
major viio/V: V 2.3, viio/IV -1
major viiø7/V: strange -1, V 3.3
major viio/ii: ii -1.5
major viio/vi: vi -0.3
major viio7/vi: vi -0.9
major viio7/iii: iii 1.7
major IV: strange -0.5, I -0.4, V7/IV 2, V 2.4, V7 1.2, ii -0.7, iiø7 -0.6, viio 2, iv -0.9
major IVmaj7: V 0.3
major iv: I -4.5
major bVII: I -1.5, IV -1.2
major bVIImaj7: I -0.5
minor strange: V -1
minor i: i -3.7, I -0.9, v 1.6, V 8.5, V7 1.1, iiø7 -0.6, viø7 -0.9, iv -0.8, IV -0.8, III -0.8
minor imaj7: I -1
minor I: i -1, I -1, V7/iv 1.6, V -1
minor V7/iv: V7/iv -1.9, iiø7 -1.4, iv 4.7
minor v: i -2.6, V7/iv 0.7, V -0.6, V7 -0.4, VI -0.8
minor v7: i -0.8, V7/iv -0.8
minor V: i 10.6, I 3.6, v -0.3, V -4, V7 -2.7, viio7 2, IV 2.2
minor V7: i 3, I 14.7, V7/iv 0.7, V7 1.7, #vi -0.8, viio -0.1, VI 3.4
minor viio/VI: I -0.1
minor viiø7/VI: i -0.6
minor iio: i -0.7, I -0.1, V -1.8, V7 -0.6
minor iiø7: i 1.8, I -0.7, v -0.3, V -0.7, V7 -1, iv -1.4, III -0.3
minor ii: i -0.3, I -0.9, V7 3.2
minor ii7: V7 -0.6
minor V/V: v 2.3, V -4.8
minor V7/V: v -1.1, V -4.1, V7 -0.7, III+ -0.4
minor vio: V 1.1, V7 -0.5
minor viø7: V -1.8
minor viio/iv: iv 1.5
minor viiø7/iv: IV -0.1
minor viio7/iv: VI -0.1
minor viio: i -0.5, I -0.3
minor viiø7: I 1.4
minor viio7: i -3.7, I 3.2, V -1.3
minor viio/V: V 0.6
minor viio7/V: V 7.6
minor iv: i -1, I -0.5, V7/iv 1.7, V 5.9, V7 -1.1, iv 2.7
minor iv7: V 5.1, V7 1.4
minor IV: I -0.7, V7 0.2, IV -2, VII -1.3
minor IV7: V -1.4, viio -0.3, VII -0.1
minor VII: V7 0.1, IV -1.8, III -4
minor VII7: i -1.5, V7 -0.7, III -4.1, III+ -0.7
minor vii: i -1, I -1.4
minor III: III -1, VI -2.4
minor IIImaj7: viio -0.1
minor V7/VI: vio -1.4, VI -3.4
minor III+maj7: i -0.9, VI -0.7
minor VI: V/V 1.8, viio 1, III -0.5, V7/VI -0.6
minor N: I -0.5, V -1.6
minor bIImaj7: I -0.8
# relation
same: 1 -36.8, 2 -44.3, 3 -16.1, 4 -21.2
turned: 1 47.7, 2 27.7, 3 0.6, 4 5.6
seventh_added: 1 31.9, 2 11.1, 3 2.9, 4 2.4
seventh_dropped: 1 -7.3, 2 -6.4, 3 3.2, 4 0.1
quality_changed: 1 -4, 2 7.1, 3 -4.5, 4 -2.8
third_apart: 1 -8.6, 2 0.2, 3 -7.7, 4 2.2
fifth_up: 1 -24.2, 2 -7.3, 3 3.9, 4 -4
fifth_down: 1 -6.9, 2 3.2, 3 6.3, 4 5.4
step_up: 1 -7.1, 2 -0.6, 3 13.4, 4 7.5
step_down: 1 -10.9, 2 -7.4, 3 -2, 4 2.9
tritone: 1 1.9, 2 0.7, 3 -2, 4 5.7
# key change
phrase_start major major: -4 -5.3, -3 -5, -2 -10.3, -1 -0.8, 1 -3.5, 2 -7.1, 3 -3.9, 4 -0.3
phrase_start major minor: -1 -1, 0 1.3, 1 4.9, 2 -4.9, 3 -6.5, 4 -0.2
phrase_start minor major: -4 1.1, -3 2.7, -2 8.6, -1 2.4, 0 1.1
phrase_start minor minor: -4 -1.8, -3 -1.8, -2 -4.3, -1 -2.3, 1 -10.8, 2 -6, 3 -6.9, 4 -1
within major major: -4 -2.5, -3 1.5, -2 -10.3, -1 -19.8, 1 -21.1, 2 -5, 3 -10.3, 4 -1.8
within major minor: -1 -1.3, 0 -3.8, 1 -6.6, 2 -8.8, 3 -6.9, 4 -14.8
within minor major: -5 -1.9, -4 -5.8, -3 -18.5, -2 -1.1, -1 -4.6, 0 -5.4, 1 -2.2
within minor minor: -4 -1.8, -3 -18.7, -2 -11.8, -1 -9.7, 1 -13.3, 2 -7.3, 3 -14.6, 4 -1.7
goal major major: -3 -1.2, -2 -2.1, -1 -14.3, 1 -11.3, 2 -1.1, 3 -2, 4 -0.8
goal major minor: -1 -0.9, 0 -0.8, 1 -1.1, 2 -8.6, 3 -3.1, 4 -0.9
goal minor major: -4 -2.4, -3 -6.2, -2 -3, -1 -4.1, 0 -4.5, 1 -1.3
goal minor minor: -3 -0.7, -2 -1.2, -1 -11.2, 1 -9.8, 2 -0.1, 3 -3.6, 4 -1
# key entered with
major: strange -2, I -19.9, Imaj7 -1.5, V7/IV -3.6, i -5.6, V -29.5, V7 -10.2, v 0.8, V+ -1, vo -0.4, ii -2.5, ii7 -16.3, V/V 4.3, V7/V -3.7, iio -0.5, iiø7 -1.9, vi -13.8, vi7 -5.4, V/ii -0.9, V7/ii -0.8, iii -18.1, iii7 -2.2, V/vi 0.7, V7/vi -3.2, viio/IV -6.7, viiø7/IV -1, viio7/IV 0.7, viio -3, viiø7 -2.1, viio7 -1.1, V/iii -2.1, viio/V -3.1, viiø7/V -1.7, viio7/V -0.7, viio/ii -1, viiø7/ii -0.9, viio/vi -1.9, viio7/vi -3.7, IV -9.1, IVmaj7 1.6, iv -4.7, bVII -2.4, bVIImaj7 -1.5, bIII -0.8, bVI -0.2, bVImaj7 -1
minor: strange -5.9, i -20.2, i7 2.9, I -21.4, V7/iv -3, v -12.9, v7 -3.8, V -26.1, V7 -15.1, viio/VI -0.3, viiø7/VI -0.6, iio -2.3, iiø7 -5.9, ii -4.2, ii7 -4.9, V/V -2.5, V7/V 0.9, vio -7.2, viø7 -0.5, viio7/VII 1.6, #vi -1.1, viio/iv 6.5, viiø7/iv 2.6, viio7/iv 1.2, viio -4.9, viiø7 -1.6, viio7 -1.3, viio7/V -3.3, iv -4.6, iv7 -3.8, IV 1.9, IV7 3.5, VII -8.7, VII7 -6.2, vii -0.5, III -21.8, IIImaj7 -6.9, V7/VI -1.4, III+ 0.8, III+maj7 -3, VI -16.9, VImaj7 -1.6, VI7 -2.1, N -0.7
# key prepared by
major: strange -5, I -11.1, Imaj7 -0.4, V7/IV -4.4, i -3.9, V -9.7, V7 -7.2, v -12, v7 -2.2, vo -0.2, vø7 -0.7, ii 5.9, ii7 1.6, V/V -13.3, V7/V -15.7, iio -4, iiø7 -2.9, vi -2.5, vi7 1.4, V/ii -12.2, V7/ii -8.5, viø7 -1, iii -5.7, iii7 -0.9, V/vi -13, V7/vi -9.2, viio/IV 0.6, viiø7/IV -1.8, viio 3.1, viiø7 -2.6, V/iii -2.9, V7/iii -3, vii -0.9, viio/V -5.5, viio7/V -3.6, viio/ii -1, viiø7/ii -0.3, viio7/ii -2.1, viio/vi -0.3, viiø7/vi -0.3, viio7/vi -1.4, viio7/iii -0.3, IV 0.9, IVmaj7 -1.5, IV7 -1.1, iv -6.8, bVII -5.2, bVIImaj7 -4.2, bVII7 -0.8, bIII -3.6, bVI -1.8, N -0.3
minor: strange -7.9, i 9.1, i7 1.9, I -5.3, V7/iv -2.7, v -4.2, v7 -2.1, V -4.5, V7 -4.9, viio/VI -1.9, viiø7/VI -2, iio -7.6, iiø7 -4.1, ii -7.6, ii7 -1.8, V/V -7.4, V7/V -9.2, vio 2.3, viø7 -3.9, #vi -6.2, viio/iv -5.4, viiø7/iv -0.7, viio7/iv -0.9, viio -1.4, viiø7 -1.2, viio7 -3.3, viio/V -1.8, viio7/V -0.2, iv -7.4, iv7 -2.1, IV -14.7, IV7 -11.6, VII -20.6, VII7 -19.5, vii -2.4, III -18.8, IIImaj7 1, V7/VI -5.6, III+ -0.8, VI -11.5, VImaj7 -0.6, N -4.3, bIImaj7 -1.8
# key left for
major: strange -5.5, I -18.5, Imaj7 -4.4, V7/IV -16.3, i -10.7, I+ -0.7, V -20.2, V7 -5.6, v -1.1, v7 -1.2, ii -8.2, ii7 -2.3, V/V -5.2, V7/V -4.8, iio -2, iiø7 -0.3, vi -13.4, vi7 -2.6, V/ii 1.1, V7/ii -4.4, vio -5, viø7 -0.3, iii -5.8, iii7 -4.3, V/vi -8.3, V7/vi 4.9, viio/IV 0.3, viiø7/IV -1.7, viio -0.1, viiø7 -5, V/iii -7.3, V7/iii -1.8, vii -1.6, viio/V 2.2, viiø7/V -5.3, viio7/V 0.2, viio/ii -11.4, viiø7/ii 3.6, viio7/ii 1.6, viio/vi 5.7, viio7/vi 2.6, viio/iii -2, viio7/iii -4.1, IV -16.8, IVmaj7 -5.2, IV7 -1.8, iv -6, bVII -2.4, bVIImaj7 -1.7, bVII7 1.2, bVI -1
minor: strange -11.4, i -14.7, i7 -9.9, I -20.6, V7/iv -7.9, v -7.4, v7 -1.5, V -9.2, V7 -4.3, viio/VI -3.7, viiø7/VI 0.4, iio 0.1, iiø7 1.8, ii -5.1, ii7 -0.7, V/V -6.2, V7/V -7.5, vio -6.8, viø7 0.7, viio7/VII -1.1, #vi -5.8, viio/iv 0.5, viiø7/iv -4.5, viio7/iv -0.4, viio -1.5, viio7 -0.1, viio/V -0.3, viio7/V -2.7, Ger65 -0.4, #io7 -2.7, iv -7.4, iv7 -9, IV -2.1, IV7 -2.1, VII -17.8, VII7 3.5, vii 0.8, III -3, IIImaj7 -1.9, V7/VI -0.8, III+maj7 -1, VI -17.4, VImaj7 2, N 2.6, bIImaj7 0.2
# key left
phrase_start 1: nothing -42.1
phrase_start 2: nothing -18.5, dominant_to_tonic -23.2
phrase_start 3: nothing -3.3, dominant_to_tonic -0.4
phrase_start 4: nothing 0.7, dominant_to_tonic 15
phrase_start more: nothing -3.6, dominant_to_tonic 9.1, phrase_end 4.6
within 1: nothing -48.2
within 2: nothing -47.5, dominant_to_tonic -46.6, phrase_end -16.6
within 3: nothing -23.7, dominant_to_tonic -26.2, phrase_end -7.6
within 4: nothing -16.2, dominant_to_tonic -8.9, phrase_end 2.2
within more: nothing -12.9, dominant_to_tonic 0.3, phrase_end 21.9
goal 1: nothing -20.1
goal 2: nothing -19.4, dominant_to_tonic -11
goal 3: nothing -15.9, dominant_to_tonic -2.4
goal 4: nothing -3.9, dominant_to_tonic -5.1
goal more: nothing -3, dominant_to_tonic -15, phrase_end -1.3
# signature
major: -3 -1.3, -2 2.4, -1 34.1, 0 54.8, 1 36, 2 -37.4, 3 -70.4, 4 -31.9, 5 -2.9
minor: -5 -3.1, -4 -31.4, -3 -79.4, -2 -9, -1 42.4, 0 62.3, 1 35.2, 2 -0.5
# stated mode
major: major 4.9, minor -21.4
minor: major -4.9, minor 21.4
# first chord
major: I 17.2, i -1, V -6.1, V7 4, v 1.6, ii -3.6, vi -20.1, V/ii -1, iii -0.9, V/vi -2, V7/vi -0.4, viio -0.1, viiø7/V -1, IV -10.7, IVmaj7 -1.1
minor: i 36, I -1, v -0.4, V 3, V7 0.9, V7/V -1.1, #vi -0.8, iv -6.6, IV -2.4, VII -0.7, III -1.7
# last chord
major: I -1.5, I+ -1, V -2.1, V/ii -0.5, bVImaj7 -1
minor: i -7.8, I 21.4, V7/iv -1.2, v -0.9, V -3.6, III -1.7
# last key
major: 0 5, 1 0.6, 2 -2.1, 3 -8.4, 5 -1.2
minor: -4 -0.9, -3 -3.6, -1 -6, 0 15.8, 1 0.9
# last chord of a phrase
major: strange -1.5, I 18.9, Imaj7 -1, V7/IV 1, i -0.5, I+ -3, V 4.3, V7 2, v -2.2, V+ -1, ii -6.6, ii7 -0.4, V/V -0.5, vi -3.5, V/ii -2.3, viø7 -0.4, iii 2, V/vi -2.7, V7/vi -1.3, viio/IV -2, viio 2, V7/iii -0.2, viio/V 1.7, viiø7/V -0.3, IV -1.2, bVIImaj7 -1, bVImaj7 -1
minor: i 0.9, I 12.6, V7/iv -2.1, v 2.8, V 7.1, V7 -0.6, iiø7 -0.6, V/V 1.8, vio -1.4, #vi -0.8, viio 0.6, viio7 2, iv -0.6, iv7 -1, IV -1.1, VII -2.8, III -10.7, V7/VI -0.6, III+ -1.1, VI -4
# note in key
major: -5 -0.3, -4 -19.5, -3 -48.8, -2 -44.8, -1 39.1, 0 46.4, 1 36.9, 2 31.1, 3 5, 4 10.4, 5 5.2, 6 -31.7, 7 -34.8, 8 -34.2, 9 -10.3
minor: -6 -3.4, -5 -10.5, -4 -5.6, -3 -2.4, -2 -25.2, -1 4.5, 0 40.3, 1 27.2, 2 18.5, 3 -17, 4 -17.6, 5 31.6, 6 11.7, 7 -1.5
# note in phrase
major: -6 -0.2, -5 -3.2, -4 -37.6, -3 -70.7, -2 -41.7, -1 2.1, 0 47, 1 39.5, 2 25.3, 3 11.2, 4 42.8, 5 15.2, 6 -45, 7 -24.2, 8 -14.1, 9 -12.4, 10 0.2
minor: -7 0.7, -6 -1.7, -5 -5.4, -4 1.7, -3 41.4, -2 -23, -1 13.4, 0 39.3, 1 51.5, 2 25.7, 3 -40.8, 4 -59, 5 23.1, 6 2.5, 7 -2.1, 8 -1.5
# last bass of a phrase
major: -5 -7.3, -4 5, -2 6.5, -1 1.7, 0 2.4, 1 7.6, 2 -8.6, 3 -8.1, 4 -2.9, 5 2.6, 6 -8.5, 8 -3.9, 9 -3
minor: -7 2.2, -5 -3.4, -4 -10.4, -3 -7.3, -2 -6, -1 1.7, 0 16.4, 1 15.9, 2 -4.8, 3 7, 4 -1.7, 5 6, 6 0.9
# last melody note of a phrase
major: -3 -2.1, -2 -0.8, -1 -6.2, 0 -4.1, 1 -9.1, 2 -1.7, 3 7.2, 4 8.8, 5 3.4, 6 3.6, 7 -1.1, 8 -14.4
minor: -4 5.3, -3 -9.5, -2 -13.4, -1 19, 0 24.2, 1 -1.1, 2 -5.7, 3 -4.9, 4 -12.5, 5 15.1
`;
