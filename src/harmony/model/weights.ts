/**
 * The weights of the reading, by family of features and by name (see layout.ts). Written by
 * tests/bench/harmonyTraining.ts, not by hand: an averaged perceptron over the open chorales and their human
 * analyses (D. Tymoczko and colleagues, as published in the When in Rome meta-corpus). Only sums are compared, so
 * the unit has no meaning; greater is likelier.
 */
export const TABLE = `
# tone by shape
root: none>repeated 1.7, none>step_up -0.5, none>step_down 0.9, none>leap 2.2, none>held -1.2, repeated>none 1.4, repeated>repeated 1.9, repeated>step_up 1.9, repeated>step_down 1.4, repeated>leap 2.5, step_up>none 1, step_up>repeated 1.3, step_up>step_up 1.2, step_up>step_down 0.7, step_up>leap 1.3, step_up>held 0.5, step_down>none -0.5, step_down>repeated 1.1, step_down>step_up 0.9, step_down>leap 1.3, step_down>held -0.3, leap>none 0.7, leap>repeated 1.6, leap>step_up 0.3, leap>step_down 1.7, leap>leap 2.9, leap>held 0.5, held>repeated 0.3, held>step_up -0.2, held>leap 0.3, held>held -1
third: none>repeated 1.1, none>step_up 0.8, none>step_down 0.5, none>leap -1, none>held -1, repeated>none -1.5, repeated>repeated 1.1, repeated>step_up 1, repeated>step_down 0.1, repeated>leap 0.8, repeated>held 0.3, step_up>none -0.2, step_up>repeated 1, step_up>step_up 1.2, step_up>step_down 0.5, step_up>leap 0.8, step_up>held -0.3, step_down>none -0.1, step_down>repeated 0.7, step_down>step_up 0.7, step_down>step_down 0.9, step_down>leap 1.3, step_down>held -0.3, leap>none -0.2, leap>repeated 1.5, leap>step_up 0.7, leap>leap 1.4, leap>held -0.5, held>none -0.8, held>repeated -0.8, held>step_up 0.1, held>step_down -0.4, held>leap -0.1, held>held -1.1
fifth: none>repeated -1.1, none>step_up 1.3, none>leap 0.5, none>held -1.6, repeated>none -0.9, repeated>repeated 1.7, repeated>step_up 1.3, repeated>step_down 0.9, repeated>leap 1, repeated>held -0.2, step_up>none -0.4, step_up>repeated -0.5, step_up>step_up 0.2, step_up>step_down 0.4, step_up>leap -0.2, step_up>held -0.4, step_down>none 0.4, step_down>repeated 1.3, step_down>step_up 0.3, step_down>step_down 0.5, step_down>leap 1.1, step_down>held -0.2, leap>none -0.8, leap>repeated 0.7, leap>step_up 0.9, leap>step_down 1.2, leap>leap 0.1, leap>held -0.1, held>none -0.4, held>repeated -1, held>step_up 0.5, held>step_down 0.2, held>leap 0.3, held>held -0.9
seventh: none>repeated -1.3, none>step_down 0.6, none>leap -0.7, repeated>repeated -1.1, repeated>step_up -1, repeated>step_down 0.7, repeated>leap -0.8, repeated>held 0.2, step_up>repeated -0.6, step_up>step_up -2.7, step_up>step_down 1.1, step_up>leap 1, step_up>held -0.6, step_down>repeated -1.2, step_down>step_up -1.5, step_down>step_down 0.6, step_down>leap -2, step_down>held 0.7, leap>none -0.8, leap>repeated -0.5, leap>step_up -2.3, leap>step_down 0.5, leap>leap -0.9, leap>held 0.1, held>none -0.4, held>repeated -1.4, held>step_up -1.4, held>step_down -0.2, held>leap -0.1, held>held -0.7
foreign: none>repeated -0.7, none>step_down -0.2, none>leap -0.2, none>held 1.1, repeated>none 1.1, repeated>repeated -2.3, repeated>step_up -1.5, repeated>step_down -2.9, repeated>leap 0.7, repeated>held -2, step_up>none -0.2, step_up>repeated -1.5, step_up>step_up -1.8, step_up>step_down -0.7, step_up>leap -0.6, step_up>held -1, step_down>repeated -1.3, step_down>step_up -1, step_down>step_down -3.7, step_down>leap -0.9, step_down>held -0.8, leap>none -0.7, leap>repeated -1.2, leap>step_up 0.6, leap>step_down -1.1, leap>leap -0.2, leap>held -0.8, held>none 1.5, held>repeated -2.2, held>step_down -2.5, held>leap -0.9, held>held -2.1
foreign_to-member: none>step_up -1, none>step_down 0.3, none>leap -2.3, none>held -0.3, repeated>step_up -3.1, repeated>leap -2.5, repeated>held -1.3, step_up>step_up -1.1, step_up>step_down -0.7, step_up>leap -2, step_up>held 0.9, step_down>step_up -0.7, step_down>step_down -1.7, step_down>leap -0.7, step_down>held -2.1, leap>step_up 1, leap>step_down -1.2, leap>leap -1.5, leap>held -0.9, held>step_up -2.3, held>step_down 1.2, held>leap -0.8, held>held -2.3
foreign_from-member: step_up>none 0.4, step_up>repeated -0.5, step_up>step_up -0.7, step_up>step_down -1.2, step_up>leap -2.5, step_up>held -2.1, step_down>none 0.5, step_down>repeated 0.3, step_down>step_up 1.6, step_down>step_down 0.4, step_down>leap -1.1, step_down>held -1.8, leap>none -0.2, leap>repeated 0.5, leap>step_up -1.3, leap>step_down -1.9, leap>leap -3.1, leap>held -2.2, held>none 0.6, held>repeated -2.3, held>step_up -0.3, held>step_down -2.4, held>leap -1, held>held -1.3
foreign_between-members: step_up>step_up 0.6, step_up>step_down -0.8, step_up>leap -0.5, step_up>held -3.8, step_down>step_up -0.1, step_down>step_down 0.2, step_down>held -1.4, leap>step_up -1.6, leap>step_down -2.2, leap>leap -1.6, leap>held -1.4, held>step_up -1.7, held>step_down 1.1, held>leap -0.1, held>held -1.9
# tone by place
root downbeat: semiquaver 0.4, quaver 0.5, crotchet 1.4, long 1.6
root start: semiquaver 0.4, quaver 0.3, crotchet 1.2, long 2.1
root weak_start: semiquaver 0.6, quaver 0.9, crotchet 1
root beat: semiquaver 0.8, quaver 0.7, crotchet 0.6, long 0.1
root offbeat: semiquaver 0.1, quaver 0.8, crotchet 0.8
root small: semiquaver 0.8
root held_in: semiquaver 2.6, quaver 0.1, crotchet 1, long -0.2
third downbeat: semiquaver -1, quaver 0.2, crotchet 1.1, long 1.9
third start: semiquaver 0.6, quaver 0.5, crotchet 1, long -0.1
third weak_start: semiquaver -1.1, quaver 0.4, crotchet 0.6
third beat: quaver 0.6, crotchet 0.4, long 0.3
third offbeat: semiquaver -0.2, quaver 0.4, crotchet -0.7
third small: semiquaver -0.8
third held_in: semiquaver 1.2, quaver 0.1, crotchet -0.2, long 0.3
fifth downbeat: semiquaver 0.3, quaver 0.4, crotchet 1.2, long 1.5
fifth start: semiquaver -0.9, quaver 0.5, crotchet 1.1, long 0.9
fifth weak_start: semiquaver -0.5, quaver 0.2, crotchet -1.1
fifth beat: quaver 0.8, crotchet 0.9, long 1
fifth offbeat: semiquaver -2.4, quaver 1.2, crotchet -1
fifth small: semiquaver 0.9
fifth held_in: semiquaver -0.4, quaver 0.3, crotchet 0.5
seventh downbeat: semiquaver -0.5, quaver -1.5, crotchet 0.4, long 1.1
seventh start: semiquaver 2.6, quaver -1.5, crotchet 0.3, long -0.1
seventh weak_start: semiquaver -2.2, quaver 0.4, crotchet -0.4
seventh beat: quaver -0.8, crotchet -1.4, long -0.8
seventh offbeat: semiquaver -1.4, quaver -1.2, crotchet -0.8
seventh small: semiquaver -1
seventh held_in: semiquaver -0.7, quaver -0.4, crotchet 0.9, long -2.2
foreign downbeat: quaver -2.3, crotchet -2.3, long -0.1
foreign start: semiquaver -1.1, quaver -2.9, crotchet -2.1
foreign weak_start: semiquaver -0.1, quaver -2.9
foreign beat: quaver -1, crotchet 0.2, long -0.7
foreign offbeat: semiquaver -0.5, quaver 0.6
foreign small: semiquaver 1
foreign held_in: quaver -1.9, crotchet -1.6, long -0.6
foreign_to-member downbeat: semiquaver 1, quaver -1.7, crotchet -1.6, long -0.4
foreign_to-member start: quaver -0.7, crotchet -1.3, long -1
foreign_to-member weak_start: semiquaver -1.1, quaver -2.2
foreign_to-member beat: quaver -2.3, crotchet -0.5, long 0.9
foreign_to-member offbeat: semiquaver -1.6, quaver 1.3
foreign_to-member held_in: quaver -1.1, crotchet -0.5
foreign_from-member downbeat: quaver -1.9, crotchet -1.7, long 0.6
foreign_from-member start: semiquaver -1.6, quaver -2.1, crotchet -3
foreign_from-member weak_start: semiquaver 3.8, quaver -0.8
foreign_from-member beat: semiquaver -1.5, quaver -0.1, crotchet 0.1, long 0.3
foreign_from-member offbeat: semiquaver -0.2, quaver 0.5, crotchet -1.1
foreign_from-member small: semiquaver 0.5
foreign_from-member held_in: quaver -1.8, crotchet -0.6, long -0.2
foreign_between-members downbeat: semiquaver -0.1, quaver -3.1, crotchet 0.3, long -0.1
foreign_between-members start: quaver 0.1, crotchet 0.3, long -0.7
foreign_between-members weak_start: semiquaver 3.3, quaver -0.8, crotchet -0.7
foreign_between-members beat: semiquaver -0.6, quaver -1.8, crotchet 0.1
foreign_between-members offbeat: semiquaver -1.6, quaver -0.4, crotchet -1.5
foreign_between-members small: semiquaver -0.9
foreign_between-members held_in: semiquaver 0.7, quaver -1.3, crotchet -1.1, long 0.7
# tone by kind
root suspension: downbeat 0.8, start -0.5, weak_start -1.2, beat 0.4, offbeat 1.2
root retardation: downbeat 0.9, start -0.4, weak_start 1.1, beat 1.5, held_in -0.2
root pedal: downbeat 0.6, start 0.2, weak_start -0.2, beat 0.6, offbeat -0.3, held_in -0.1
root passing: downbeat 1.3, start 0.7, weak_start -0.5, beat 1.1, offbeat -0.2, small 1.4
root neighbour: downbeat 1.4, start 0.5, weak_start -1.6, beat 0.9, offbeat 1.4, small -0.1
root escape: downbeat 1.6, start 1.1, weak_start -0.5, beat -1.3, offbeat 0.9
root appoggiatura: downbeat 0.8, start 1.5, weak_start 0.4, beat 2.2, offbeat -0.7
root anticipation: downbeat 0.5, start 0.4, weak_start 0.6, beat 0.7, offbeat 1.6
root leaping: downbeat 1.5, start 0.6, weak_start 1.9, beat 1.8, offbeat -0.6, held_in 0.3
root edge: downbeat 1.3, start 0.1, weak_start 0.4, beat 1.2, offbeat -0.4
third suspension: downbeat 1.3, start 0.5, weak_start 1.2, beat -0.7, offbeat -1, held_in -0.4
third retardation: downbeat -0.4, start -0.2, weak_start -0.7, beat 1.2, held_in 0.1
third pedal: downbeat 0.9, start -0.6, weak_start 0.9, beat 1, offbeat 0.3, held_in -1.2
third passing: downbeat 0.3, start 0.1, weak_start -0.1, beat 1.1, offbeat 0.9, small -1.1
third neighbour: downbeat 1.2, start 0.6, weak_start -0.3, offbeat 0.9, small -0.7
third escape: downbeat 1.1, start 0.5, weak_start 0.9, beat 0.8, offbeat 1.3, small 0.9
third appoggiatura: downbeat 0.6, start 0.3, weak_start 1.5, beat -0.9, offbeat -0.6
third anticipation: downbeat 0.4, start -0.3, weak_start 0.3, beat -0.3, offbeat 0.4
third leaping: downbeat 0.8, start 0.5, weak_start 0.7, beat 0.3, offbeat 0.3, small 0.6, held_in -0.1
third edge: downbeat 0.7, start -1.5, beat 0.1, held_in -0.8
fifth suspension: downbeat 0.9, start -0.3, beat 0.5, offbeat 0.7, held_in 0.2
fifth retardation: downbeat 0.8, start 1.1, weak_start 0.4, beat -0.1, offbeat -0.9, held_in 0.5
fifth pedal: downbeat 0.4, start 0.1, beat 1.2, offbeat -0.8, held_in -0.4
fifth passing: downbeat 1.2, start 0.9, weak_start -0.1, beat 0.6, offbeat 0.4, small 0.1
fifth neighbour: downbeat 0.9, start 1.2, weak_start -1.6, beat 0.3, offbeat 1.3, small 0.6
fifth escape: downbeat 1.1, start -0.1, weak_start -1.9, beat -0.3, offbeat 0.7, small 0.7
fifth appoggiatura: downbeat 0.8, start 0.8, weak_start 1.6, beat 1.5, offbeat -1.1
fifth anticipation: downbeat 0.6, start 0.1, weak_start -0.4, beat 0.6, offbeat 0.6
fifth leaping: downbeat 1, start 0.4, weak_start 0.1, beat 1.2, offbeat -1.1, small -0.6, held_in 0.3
fifth edge: downbeat -0.1, start 0.8, weak_start -1, beat -0.2, offbeat 1.5, held_in -0.4
seventh suspension: downbeat 1, start 0.4, weak_start -1.3, beat -0.1, offbeat 1.3, held_in -0.2
seventh retardation: downbeat -0.7, start -0.2, beat -0.9, held_in -1.4
seventh pedal: downbeat -0.8, start 0.5, beat -1, held_in -1.5
seventh passing: downbeat 1.1, weak_start -0.1, beat -1.8, offbeat -1.4, small -0.3
seventh neighbour: downbeat -0.7, start 0.6, weak_start -1.4, beat -0.5, offbeat 0.5, small -1.7
seventh escape: downbeat -1.1, start 0.5, weak_start 0.3, beat 0.4, offbeat -0.2, small -0.5
seventh appoggiatura: downbeat -0.1, start -0.9, weak_start 1.2, beat -0.1, offbeat -0.8
seventh anticipation: downbeat -0.3, start 0.6, weak_start 0.7, beat -1.9, offbeat -2.2
seventh leaping: downbeat 0.1, start -0.7, weak_start 0.1, beat -0.7, offbeat -0.5, held_in -0.1
seventh edge: downbeat -0.1, start -0.6, weak_start 0.6, beat -0.7, held_in -0.4
foreign suspension: downbeat -0.4, start -0.4, beat 0.3, offbeat -0.7, held_in -0.7
foreign retardation: downbeat -1.9, start -2.4, beat -0.7, held_in -2.8
foreign pedal: downbeat -1.7, start -2.7, beat -0.7, held_in -2.3
foreign passing: downbeat -2, start -0.4, weak_start -0.2, beat 0.5, offbeat 0.9, small -0.1
foreign neighbour: downbeat -2.2, start -3, weak_start -2, beat -0.3, offbeat 0.7, small 1.2
foreign escape: downbeat -2.2, start -0.9, weak_start -0.5, beat -0.9, offbeat -0.4, small -1.3
foreign appoggiatura: downbeat -1.4, start -2.1, weak_start -0.5, beat -1.3, offbeat -1.3
foreign anticipation: downbeat -2.9, start -2.3, weak_start 0.7, beat -1.6, offbeat -1.3
foreign leaping: downbeat -0.7, start -1.8, weak_start -0.5, beat -1.5, offbeat -2.2, held_in -1.8
foreign edge: downbeat 0.1, start -1.1, beat -0.4, offbeat -1.3, held_in 1.5
# bass tone by place
root downbeat: quaver 0.3, crotchet 0.6, long 1.6
root start: quaver 0.8, crotchet 0.3, long 1.8
root weak_start: semiquaver -0.4, quaver 0.3, crotchet 1
root beat: quaver 1.1, crotchet 1.8, long 0.5
root offbeat: semiquaver 0.4, quaver 0.5, crotchet 0.3
root small: semiquaver -0.7
root held_in: quaver -0.9, crotchet -0.8, long 1
third downbeat: quaver 0.5, crotchet 0.4, long 0.2
third start: quaver -0.1, crotchet -0.2, long -0.1
third weak_start: quaver -0.7
third beat: quaver 0.7, crotchet 0.4, long -0.2
third offbeat: quaver 0.9
third small: semiquaver -0.6
third held_in: semiquaver -0.4, quaver 0.2, crotchet -1.1, long -0.6
fifth downbeat: quaver 0.8, crotchet 0.8, long -0.4
fifth start: quaver -0.3, crotchet -1.1, long -0.6
fifth weak_start: semiquaver -0.3, quaver -0.5
fifth beat: quaver -2.4, crotchet -2.2, long -0.7
fifth offbeat: quaver -0.4
fifth small: semiquaver 0.6
fifth held_in: quaver -0.8, crotchet -2.6, long -0.4
seventh downbeat: quaver -0.5, crotchet -0.8, long 0.2
seventh start: quaver -1, crotchet -0.1
seventh weak_start: quaver 0.8, crotchet -0.6
seventh beat: quaver -0.6, crotchet -1.2, long -0.1
seventh offbeat: quaver -1, crotchet -0.3
seventh small: semiquaver 0.6
seventh held_in: quaver -0.5, crotchet -1.6, long -0.7
foreign downbeat: quaver -2.1, crotchet -1.3, long 0.5
foreign start: quaver -0.4, crotchet -1.1, long -1
foreign weak_start: semiquaver 1.6, quaver -2
foreign beat: quaver -2.6, crotchet -0.1, long 1
foreign offbeat: semiquaver -1.4, quaver 0.9, crotchet -1.1
foreign small: semiquaver -0.1
foreign held_in: quaver -0.8, crotchet -1, long -0.7
# seventh by kind
M7 suspension: downbeat 1.1, start 0.6, weak_start -0.5, beat 0.8, offbeat 1.6, held_in -1.9
M7 retardation: downbeat -0.6, start 0.5, held_in 1.2
M7 pedal: start 1.5, held_in -0.2
M7 passing: downbeat 0.3, weak_start 1.2, beat -1, offbeat 0.2, small 0.8
M7 neighbour: downbeat 1, start -0.3, weak_start -0.4, beat -0.2, offbeat 0.1, small -0.6
M7 escape: downbeat -0.2, start -0.7, weak_start -0.8, beat 1.4, offbeat -0.6, small 0.1
M7 appoggiatura: downbeat -0.7, start -0.6, weak_start -0.5, beat 1.7, offbeat -1.2
M7 anticipation: downbeat -0.8, start 0.6, weak_start 0.5, beat -0.7, offbeat -1.1
M7 leaping: downbeat 1.4, start -1.4, weak_start -0.4, held_in 0.2
M7 edge: start 0.8
Mmaj7 suspension: downbeat -0.5, start -1, beat -0.7, held_in 1.2
Mmaj7 retardation: beat -0.9, held_in -0.4
Mmaj7 pedal: downbeat -0.8, start -0.7, beat -0.7, held_in -1.5
Mmaj7 passing: downbeat -0.5, start 0.2, weak_start -2, beat -0.7, offbeat -0.7, small 0.9
Mmaj7 neighbour: downbeat -1.2, start -0.6, weak_start -0.9, offbeat -0.2
Mmaj7 escape: start -0.6, beat -0.7
Mmaj7 appoggiatura: start -0.7, weak_start 1.2, beat -0.9, offbeat -0.6
Mmaj7 anticipation: downbeat -0.7, start 1.2, beat -1.1, offbeat -0.7
Mmaj7 leaping: downbeat -0.7, start 1, beat -0.7, offbeat -0.7, held_in 1.4
Mmaj7 edge: start -0.7, beat -0.7
m7 suspension: downbeat 0.6, start 1, weak_start -0.3, offbeat -1, held_in -0.2
m7 retardation: downbeat -0.2, start -0.6, held_in -0.6
m7 pedal: downbeat -0.5, start 0.7, held_in -1
m7 passing: downbeat -0.1, start 0.6, weak_start -1.6, beat -0.7, offbeat -0.9, small -2.1
m7 neighbour: downbeat -1.2, start 0.5, weak_start -0.4, offbeat 1.1, small -1
m7 escape: downbeat -0.5, start 0.6, weak_start -0.3, offbeat 1.2, small -0.7
m7 appoggiatura: start 0.1, weak_start 1.1, offbeat 0.8
m7 anticipation: downbeat 0.6, start 0.4, weak_start -0.1, beat -0.1, offbeat -0.8
m7 leaping: start -0.7, weak_start 0.4, offbeat 0.6, held_in 0.6
m7 edge: held_in -0.4
ø7 suspension: downbeat 0.2, start -0.8, held_in 0.1
ø7 retardation: held_in -1.1
ø7 pedal: downbeat 0.5, start -0.2, beat -0.3, held_in -0.1
ø7 passing: downbeat 0.6, start -0.7, weak_start -1.2, beat -0.1, offbeat -1.6
ø7 neighbour: downbeat -1.2, start 0.7, weak_start 0.8, offbeat -0.8, small -0.8
ø7 escape: downbeat -0.6, weak_start 1.2, beat -0.1, offbeat -0.9
ø7 appoggiatura: downbeat 0.8, start 0.4, weak_start 0.1, offbeat -0.9
ø7 anticipation: downbeat 0.6, start -1, weak_start 0.6, offbeat -0.2
ø7 leaping: downbeat 0.6, start -0.1, weak_start 0.3, offbeat -0.4, held_in -1.6
o7 suspension: start -0.8, weak_start -0.7, offbeat 0.7, held_in -0.1
o7 retardation: held_in -1.1
o7 pedal: held_in -1.1
o7 passing: downbeat 0.7, start 1.2, weak_start -0.1
o7 neighbour: downbeat 0.9, start 0.5, weak_start 0.8, beat -0.7, small 0.2
o7 escape: start 1.2
o7 appoggiatura: downbeat -0.4, start 0.1, weak_start -1.1, beat -0.7, offbeat 1.3
o7 anticipation: downbeat 0.3, start 0.2, beat -0.5
o7 leaping: downbeat -0.7, start 0.7, held_in -0.7
o7 edge: downbeat -0.1, start -0.7, weak_start 0.6
mmaj7 retardation: held_in -0.7
mmaj7 neighbour: weak_start -0.8
+maj7 suspension: held_in 0.1
+maj7 passing: weak_start -0.6, offbeat -0.1
+maj7 neighbour: weak_start -0.5
+maj7 appoggiatura: weak_start 0.7
+maj7 anticipation: start -0.3
+maj7 leaping: downbeat -0.7
Fr passing: offbeat -0.2
Ger suspension: downbeat -0.6
Ger pedal: held_in 0.6
Ger anticipation: start -0.6
# members present
2 M: r3-- 0.1
2 m: --5- -0.1, -35- -0.1
3 M: r3-- -0.6, -35- 0.3, r35- 0.6
3 m: r3-- -0.6, -35- 0.5, r35- 0.7
3 o: -35- -0.8, r35- -0.5
3 M7: -357 -0.9
3 m7: r357 -0.3
3 o7: r35- 1.5, r-57 0.6
4 M: r--- 1.4, r3-- -0.1, --5- 2.1, r-5- -2.1, -35- -2.1, r35- 0.3
4 m: r--- -0.9, r3-- -0.6, r-5- -1.3, -35- -0.3, r35- 0.4
4 o: r3-- -2, r-5- -0.3, -35- -2.8, r35- 1.7
4 +: r3-- -1.2, -35- -0.7, r35- -0.3
4 M7: r--- 2.1, r3-- 2.3, -35- 1.2, r35- 7.5, r--7 1.5, r3-7 1.3, --57 2.7, r-57 -1.7, -357 -2.2, r357 0.7
4 Mmaj7: r3-7 -0.8, --57 -0.4, r-57 -1.6, -357 -2.7, r357 0.1
4 m7: r35- 5.4, -3-7 1.2, r3-7 -2.3, --57 1.5, r-57 -1.1, -357 -2.3
4 ø7: r3-- 4, r35- 1.2, -3-7 0.7, r3-7 -1.8, --57 0.4, r-57 -0.5, -357 -3.1, r357 1.3
4 o7: -35- 2.1, r35- 3.5, r3-7 -0.9, --57 0.5, r-57 1.1, -357 -2.5, r357 1.8
4 mmaj7: r-57 -0.6, -357 -0.3, r357 -0.7
4 +maj7: -357 -0.3, r357 -0.3
4 It: -35- 0.8
4 Fr: r357 -0.2
4 Ger: -357 -1.1, r357 0.6
# members at start
M: ---- 1.3, r--- -0.2, -3-- -0.6, r3-- -2.2, --5- 0.6, r-5- -0.3, -35- -0.6, r35- -0.1
m: ---- 1.3, r--- -1.1, -3-- -0.5, r3-- -1.4, --5- 0.4, r-5- -1.3, -35- -0.8, r35- 0.9
o: r--- -0.6, r3-- -1.9, --5- -0.5, r-5- -0.1, -35- -0.6, r35- 0.6
+: r3-- -1.7, -35- -0.9, r35- 0.6
M7: r--- -0.4, r3-- 1.9, r-5- -1.5, -35- 0.7, r35- 0.9, ---7 -0.3, -3-7 -1.4, r3-7 1.2, --57 -0.7, r-57 0.4, -357 -1.3, r357 2.7
Mmaj7: r3-- -0.4, r35- -0.1, ---7 -0.7, -3-7 -0.9, r3-7 -0.1, --57 -2.1, -357 -2.1, r357 1.3
m7: r3-- 1.8, r-5- 0.3, -35- -0.7, r35- -2.5, r--7 -0.9, -3-7 0.6, r3-7 -1, --57 1.3, r-57 -0.7, -357 -2.7, r357 2.3
ø7: r--- 1.2, r3-- 2.4, -35- -1.1, r35- -1.3, ---7 -1, -3-7 0.1, r3-7 -1.3, --57 -0.5, r-57 1, -357 -2.5, r357 2.3
o7: r-5- 1, -35- 1.6, r35- 3.7, -3-7 0.5, r3-7 -1.5, --57 -0.7, r-57 1.1, -357 -0.8, r357 1.7
mmaj7: r-57 -0.6, -357 -0.9
+maj7: r35- -0.1, r3-7 -0.4, -357 -0.3, r357 0.4
It: -35- 0.8
Fr: r35- -0.2
Ger: -357 -1.1, r357 0.6
# bass chosen
M a: only 1.1, first -2.2, later -2.1, none -2.3
M b: only 1, first -3, after_foreign 1.3, later -1.5, none 4.1
M c: only -1.1, first -0.9, after_foreign 0.4, later -0.6
m a: only 0.7, first -3.6, after_foreign -0.4, none -1.1
m b: only 0.6, first -2.7, after_foreign 1.8, later -2.1, none 2
m c: only -1, first -0.9, after_foreign 0.4, later -0.9, none 1.1
o a: only -1.4, none -0.9
o b: only 0.3, first -1.4, after_foreign 1, later -0.3, none 3.3
o c: only -1, first -0.7, after_foreign -1.1
+ a: only -1.2, first -0.7
+ b: only 0.4, first -0.7
M7 a: only 1.7, first -1.1, later -1.9, none -2.1
M7 b: only 1.9, first -1.6, after_foreign 1, later -0.6, none 2.8
M7 c: only 0.4, first -1.1, after_foreign 1.8, later -1.1
M7 d: only 1.7, first -1.3, after_foreign -0.9, none 2.8
Mmaj7 a: first 0.6, none -0.1
Mmaj7 b: first -0.9, after_foreign -0.6
Mmaj7 c: only -0.2, first -0.7, after_foreign -0.7
Mmaj7 d: only -1.3, later -0.7
m7 a: only 1.9, after_foreign 0.7, later 0.8, none -0.3
m7 b: only 1.4, first -2.1, after_foreign -1, later -0.3, none 2
m7 c: only -1.7, first -0.9, after_foreign -0.6
m7 d: only -1.1, first -0.7, later -0.3
ø7 a: only 1.8, first -0.5, after_foreign 1, later -1.1, none -0.3
ø7 b: only 1.1, first -2.9, after_foreign 1, later -0.1, none 1.3
ø7 c: only 0.4, first -1.4, after_foreign 0.8
ø7 d: only -1.5, first -0.7, after_foreign -0.1, later -0.1
o7 a: only 0.2, after_foreign 0.9
o7 b: only 2.1, first -0.7, after_foreign 1.2, later -0.6, none 2.2
o7 c: only 1.3, first -0.6, later -0.2
o7 d: only -0.9, first -0.5, none 1.5
mmaj7 a: only -0.6
mmaj7 b: only -0.3
mmaj7 c: only -0.7
+maj7 a: none -0.6
+maj7 b: only 0.5
+maj7 c: only -0.3
It b: only 0.8
Fr b: only -0.2
Ger b: only -0.3
# later bass
beat: quaver -2.8, crotchet -2.2, long -0.2
offbeat: semiquaver -0.5, quaver -4.1
small: semiquaver -1.2
# segment
1 ½: 2 -0.1, 3 1, 4 0.5
1 1: 1 -2.7
1 1½: 2 -1.1, 3 -0.4, 4 -1.7
1 2: 1 -0.4, 2 -0.1, 3 -0.7
1 longer: 2 -0.7
2 ½: 1 0.3
2 1: 2 0.5, 3 0.7, 4 0.4
2 1½: 1 0.2
2 2: 1 0.8, 2 1.3, 4 -0.7
2 3: 2 1.4, 3 -0.8, 4 -0.1
2 longer: 2 -0.2, 4 -0.7
3 ½: 1 0.8
3 1: 2 0.2, 4 0.7
3 1½: 1 0.4
3 2: 3 -0.2, 4 0.7
3 3: 2 -0.4
4 ½: 1 -0.1
4 1: 2 -0.2
4 2: 1 -1, 2 1.7, 3 0.1, 4 0.1
4 3: 1 0.7, 2 1.4, 4 1.7
4 4: 4 1.8
4 longer: 3 -1, 4 1.2
# boundary
1 held: 1 -1.1, 2 -1.3, 3 -0.3
1 repeated: 4 -0.4
1 step: 1 -1.9, 2 -0.7, 3 1.4, 4 1.9
1 leap: 1 2, 2 2.3, 3 3.3, 4 0.6
1 none: 3 -1
2 held: 1 -1.5, 2 -1.2, 3 0.3
2 repeated: 3 -2, 4 -1.5
2 step: 1 -1.3, 2 -0.4, 3 0.3, 4 0.1
2 leap: 1 0.3, 2 0.4, 3 1, 4 -0.1
3 held: 2 -1, 3 -0.5
3 repeated: 4 -0.2
3 step: 2 0.6, 3 0.7, 4 0.3
3 leap: 2 0.1, 3 0.7, 4 0.1
4 held: 2 -0.3, 3 -0.7
4 repeated: 3 -1.1, 4 -1.6
4 step: 3 1.3, 4 0.8
4 leap: 2 0.5, 3 0.7, 4 -0.3
# chord in key
major: strangeb 1, strangec -0.3, Ia 1.2, Ib 1, Ic 0.8, Imaj7a 1, Imaj7b -0.1, Imaj7c 0.2, Imaj7d -0.3, V7/IVa 0.3, V7/IVb 0.7, V7/IVc 1.4, V7/IVd 1, ia 0.2, ib -0.7, I+a -0.7, I+b -1.3, Va 1.3, Vb 0.7, Vc -0.5, V7a 0.8, V7b 0.9, V7c 0.6, V7d 0.9, va -0.3, vb -1, vc -0.9, v7a 0.4, v7b 0.4, v7d -0.3, vob -0.6, iia 0.4, iib 0.3, iic -0.8, ii7a 1.3, ii7b 1.6, ii7c -0.4, ii7d -0.1, V/Va -0.1, V7/Va -0.3, V7/Vb 1.5, V7/Vc 0.7, V7/Vd 0.6, iioa -0.1, iiob 0.6, iiø7a -0.7, iiø7b -0.6, vib 0.5, vic -0.8, vi7a 0.2, vi7b -0.7, vi7c -0.9, vi7d -0.9, V/iia -1.2, V/iib 0.2, V7/iia 1.3, V7/iib -0.6, V7/iid -0.6, vioa -0.2, viob -0.7, vioc -0.4, viø7a -0.5, viø7d -1.2, iiia -0.8, iiib -0.1, iiic -0.4, iii7a -0.4, iii7b -0.2, iii7c -0.4, V/via -1.2, V/vib 0.7, V/vic -0.7, V7/via 0.5, V7/vib -0.8, V7/vic -0.4, V7/vid -0.7, viio/IVa -0.7, viio/IVb -0.4, viiø7/IVa -0.3, viio7/IVa 1.2, viioa 0.4, viiob 0.8, viioc -0.4, viiø7a 0.8, viiø7b -0.3, viiø7c -0.1, viio7a 0.1, viio7c -0.3, V/iiia -0.7, V/iiib -1.3, V7/iiia -1.3, viia -1, viib -1, viio/Va -1, viio/Vb 0.1, viio/Vc -0.6, viiø7/Va 0.9, viiø7/Vb -1.8, viiø7/Vc 1.2, viiø7/Vd -0.7, viio7/Va 1.1, viio/iia -0.4, viiø7/iia -0.5, viio7/iia 0.9, viio7/iib 0.7, viio7/iic -0.4, viio/via -1.8, viio/vib 0.9, viio/vic -0.3, viio7/via -0.1, viio7/vic -0.6, viio7/iiia 0.1, IVa 0.2, IVb 1, IVc -0.9, IVmaj7b 0.2, IVmaj7c -0.5, IVmaj7d -0.4, IV7a -0.8, IV7d -0.2, iva 0.9, ivb 0.8, ivc -0.2, bVIIa -0.3, bVIIb -0.6, bVIIc -0.6, bVIImaj7a 0.4, bVIImaj7b -0.3, bVIImaj7c -0.3, bVII7a -0.4, bIIIa -0.5, bVIa -0.5, bVImaj7b -0.7, bVImaj7c -0.9
minor: strangea -1.1, ia 0.6, ib 0.3, ic 0.7, i7a -0.8, i7b -0.7, i7c -0.9, i7d -0.1, imaj7a -0.6, imaj7b -0.3, imaj7c -0.7, Ia -0.5, Ib 0.5, Ic 1.2, V7/iva -0.6, V7/ivb 0.4, V7/ivc 0.7, va 0.4, vb 1, vc -1.1, v7a -0.7, v7b -0.6, v7c -0.7, Va 0.4, Vb 0.8, Vc -0.9, V7a 0.8, V7b 0.7, V7c 1, V7d 0.8, V+a -0.6, viio/VIb -0.4, viiø7/VIa -0.6, iioa -0.7, iiob 1.1, iioc -0.9, iiø7a 0.6, iiø7b 1.8, iiø7c -0.5, iiø7d 0.2, iib 0.8, ii7a -0.5, ii7b -1.3, ii7c -0.7, V/Va -0.2, V/Vb 0.2, V7/Va -0.7, V7/Vb 0.6, V7/Vc 0.6, V7/Vd -1.3, Fr43b -0.2, vioa 0.4, viob 0.2, vioc -0.8, viø7a 0.9, viø7b 0.5, viø7c 0.7, viø7d -1.6, viio7/VIIa -0.8, #via -0.7, #vib -0.9, viio/ivb 0.2, viio/ivc -0.9, viiø7/iva 0.3, viiø7/ivc 0.3, viio7/iva 0.7, viio7/ivb 0.3, viio7/ivc 0.6, viio7/ivd -0.7, viioa 0.2, viiob 1.1, viioc -0.3, viiø7a 1.2, viiø7c -0.4, viio7a -0.4, viio7b 2.1, viio7c 0.5, viio7d 0.8, viio/Va -0.6, viio/Vb -1.3, viio/Vc 0.9, viiø7/Vb -0.7, viio7/Va 0.4, viio7/Vb 1.4, viio7/Vc 1, viio7/Vd -0.5, It6b -0.4, Ger65b -0.3, #io7a -0.7, iva 0.6, ivb 1, ivc -0.5, iv7a 0.6, iv7b 0.1, iv7c -0.3, iv7d -0.5, IVa -0.3, IVb 0.5, IVc -1.3, IV7a -0.5, IV7b 1.2, IV7c -0.9, IV7d 1, VIIa -0.6, VIIb 0.2, VIIc -0.4, VII7a -1.8, VII7b 0.3, VII7d 0.3, viia -0.6, IIIa -0.5, IIIb -0.7, IIIc -0.7, IIImaj7a -0.5, IIImaj7d -1.1, V7/VIa 0.4, V7/VIb -0.8, III+a -0.7, III+b 0.7, III+maj7a -0.4, III+maj7b 0.6, VIa 0.6, VIb -0.2, VIc -1.3, VImaj7a -0.1, VImaj7b -0.8, VImaj7d -0.4, VI7a 0.7, Na -0.6, Nb 0.6, bIImaj7b -0.9
# chord by place
major strange: beat 0.8, strong -0.1
major I: weak -0.9, beat 1.3, strong 1.7
major Imaj7: weak -0.4, beat 1, strong 0.3
major V7/IV: weak 1.6, beat 0.5, strong -0.4
major i: beat -0.7, strong -0.3
major I+: strong -1.3
major V: beat 1.2, strong 1.2
major V7: weak 1.2, beat 0.8, strong 0.7
major v: weak -0.6, beat -0.2, strong -0.2
major v7: weak 1.2, beat -0.7
major vo: strong -0.6
major ii: weak -1, beat 0.2, strong -0.2
major ii7: weak 1.4, beat 0.8, strong 1.1
major V/V: weak -0.4, beat 0.4, strong -0.9
major V7/V: weak 1.7, beat -0.7, strong 0.7
major iio: weak -0.1, strong 0.6
major iiø7: weak -0.2, beat -0.7
major vi: weak -0.1, beat 0.2, strong 0.2
major vi7: weak -0.3, beat 0.3, strong -1.5
major V/ii: weak 0.5, beat -0.1, strong -1.6
major V7/ii: weak 0.4, beat -0.6, strong 0.1
major vio: beat -0.2, strong -1
major viø7: beat -0.7, strong -1.1
major iii: weak -0.3, beat -0.3, strong -0.3
major iii7: weak -1.1, beat 0.4, strong -0.5
major V/vi: weak -0.8, beat -0.5, strong -0.3
major V7/vi: weak 0.6, beat -0.3, strong -1.6
major viio/IV: weak -0.7, beat -0.3
major viiø7/IV: weak 0.2, beat -0.6, strong -0.4
major viio7/IV: beat 1.2
major viio: weak 0.4, beat 0.4, strong 1.3
major viiø7: weak 1.2, beat -1.7, strong 0.1
major viio7: beat 0.3, strong -0.6
major V/iii: beat -1.2, strong -0.7
major V7/iii: weak -0.7, beat -0.7
major vii: weak -0.4, beat -0.7, strong -0.9
major viio/V: weak 0.5, strong -1.4
major viiø7/V: weak 0.7, beat -0.4, strong -1.1
major viio7/V: weak -0.6, beat 0.6, strong 1.1
major viio/ii: weak 0.2, beat -0.7
major viiø7/ii: weak -0.5
major viio7/ii: beat 0.8, strong 0.7
major viio/vi: weak 0.9, beat -1.5, strong -0.7
major viio7/vi: weak -1.4, beat 0.2, strong 0.6
major viio7/iii: beat 0.1
major IV: weak -0.9, beat 0.8, strong 0.4
major IVmaj7: weak -0.5, beat 0.2, strong -0.4
major IV7: weak -0.7, strong -0.4
major iv: beat -0.3, strong 1.5
major bVII: beat -1.2
major bVIImaj7: weak -0.7, beat 0.8, strong -0.3
major bVII7: beat -0.4
major bIII: beat -0.5
major bVI: weak -0.6, strong 0.1
major bVImaj7: weak -0.7, beat -0.7, strong -0.7
minor strange: beat -0.6, strong -0.6
minor i: weak -0.1, beat 0.8, strong 0.8
minor i7: weak -0.7, beat -0.2, strong -0.8
minor imaj7: weak -0.8, strong -0.7
minor I: weak -0.5, beat -0.6, strong 0.1
minor V7/iv: weak 0.3, beat -0.4
minor v: weak -0.9, beat 0.5
minor v7: weak -0.9, beat -1.2, strong 0.4
minor V: weak 0.2, beat 1, strong 0.7
minor V7: weak 1.7, strong 0.7
minor V+: weak -0.6
minor viio/VI: weak -0.4
minor viiø7/VI: beat -0.6
minor iio: weak 0.3, beat 0.1, strong 0.3
minor iiø7: weak 1.7, beat 0.5, strong -0.3
minor ii: weak -0.3, beat 0.9
minor ii7: weak -1.2, beat -0.2, strong -1
minor V/V: weak -1.1, beat 0.1, strong 0.8
minor V7/V: weak -1.4, beat 0.7, strong -1.1
minor Fr43: beat -0.2
minor vio: weak 1.1, beat -1.2, strong 0.8
minor viø7: weak 0.4, beat 0.4, strong 1.1
minor viio7/VII: beat -0.3, strong -0.6
minor #vi: beat -1.7, strong 0.8
minor viio/iv: weak -0.4, beat 0.6, strong -0.3
minor viiø7/iv: weak 0.9, strong -0.4
minor viio7/iv: weak -0.6, beat 0.6, strong 0.9
minor viio: weak 0.5, strong 1
minor viiø7: weak 0.5, beat 0.2
minor viio7: weak 0.7, beat 0.6, strong 0.6
minor viio/V: weak 0.5, beat -1.2
minor viiø7/V: beat -0.7
minor viio7/V: weak 1, beat 0.8, strong -0.6
minor It6: weak -0.4
minor Ger65: weak 0.6, beat -0.6, strong -0.6
minor #io7: beat -0.7
minor iv: weak -1.7, beat 1, strong 1.2
minor iv7: weak 0.2, beat -0.2, strong 0.7
minor IV: weak -1.2, beat 0.7, strong -0.3
minor IV7: weak -0.1, beat 0.2, strong 1.2
minor VII: weak -1, beat -0.1, strong -0.1
minor VII7: weak -0.6, beat -0.1, strong -0.8
minor vii: strong -0.6
minor III: weak -0.9, beat -1, strong 0.3
minor IIImaj7: weak -1.2, beat -0.3, strong -0.3
minor V7/VI: beat -1.1, strong 0.8
minor III+: weak 1, beat -0.3, strong -0.7
minor III+maj7: weak 0.5, strong -0.8
minor VI: weak -0.8, beat 1.1, strong -0.2
minor VImaj7: weak -0.3, beat -0.2, strong -0.4
minor VI7: strong 0.7
minor N: weak -0.4, beat 0.7, strong 0.2
minor bIImaj7: beat -0.9
# progression
major strange: I -0.4, V -0.3, V7/ii 1.1, viio7 -0.3, IV -0.1
major I: I -0.1, Imaj7 -0.6, V7/IV 1.9, V 1, V7 0.2, v 0.1, v7 -0.5, ii 0.7, ii7 0.6, V/V -0.8, V7/V 0.2, vi 1, vi7 0.1, V/ii 0.3, V7/ii -0.4, viø7 -0.2, iii 0.3, iii7 0.9, V/vi 1, V7/vi -0.6, viio/IV -0.5, viiø7/IV 0.7, viio 0.5, viiø7 -1.3, viio/V -0.6, viiø7/V 1.4, viio7/ii -0.8, viio/vi -0.1, viio7/vi 0.6, IV 0.8, IVmaj7 0.6, IV7 -0.2, iv -0.1, bIII -0.5
major Imaj7: I -0.6, Imaj7 0.7, V -1.4, ii 0.6, ii7 0.4, vi 0.6, viiø7 1.1, viiø7/V -0.1, IVmaj7 -1.7
major V7/IV: I -0.1, V7/IV 1.5, ii 0.2, V7/V -0.7, vi -1, vi7 0.2, V/ii -0.4, viiø7 -0.4, viio/V 0.9, viio7/ii -0.6, IV 1.4, IVmaj7 0.1, iv -0.4, bVII -0.6, bVIImaj7 -0.3
major i: I -0.7, V -1.6, V7 -0.3, ii -0.5, V7/V -0.2, viio7/V -0.2, bVI -0.6
major I+: IV -0.7
major V: strange 1.1, I 0.1, Imaj7 0.1, V7/IV 0.7, i 0.3, V -0.6, V7 1.6, v -0.1, ii -0.2, ii7 -1.9, V/V 1.2, V7/V 1.1, vi 0.9, vi7 -0.4, V/ii -0.2, vio -0.7, viø7 -0.3, iii 1.2, iii7 0.2, V/vi 0.5, V7/vi 0.2, viio 0.7, viiø7 -0.7, vii -0.7, viio/V -0.1, viio/ii 0.2, viiø7/ii -0.5, viio7/ii 1.3, viio7/vi -0.3, IV 0.8, IVmaj7 -0.7, iv -0.2, bVII7 -0.4, bVI 0.1
major V7: I 1.9, Imaj7 1.4, V7/IV -0.7, i 0.3, V 0.1, V7 0.6, ii -1.1, vi 2, vi7 0.5, V/ii -0.5, V7/ii -0.7, vio -0.6, viø7 -0.6, iii 0.4, iii7 -0.6, V/vi 0.4, V7/vi -0.8, viiø7/IV -0.5, viio -0.4, viio/V -0.7, viiø7/V 0.4, viio7/V 1.1, viio/ii -1.4, viio7/ii 1, IV -1.4, IVmaj7 0.4
major v: I -1.6, V -0.8, V7 -1.3, v7 1.3, V/V -0.5, vi -1.4, V7/ii -0.7, viio/IV -0.7, viio -0.7, viio7/ii -0.6, IV 1.9, bVIImaj7 1.1
major v7: I -1.2, V7/IV -0.6, V -0.9, vi 1.3, viiø7 1
major V+: V7/iii -0.7
major vo: V7/IV -0.6
major ii: I -1.1, V 0.7, V7 0.6, v -0.7, ii -0.5, ii7 -1.4, V/V -0.6, V7/V 0.6, vi -1, V/ii 0.6, iii -0.3, iii7 -0.6, V/vi -0.6, viio/IV -0.7, viiø7/IV -0.7, viio 0.8, viiø7 0.5, viio7/V 0.5, viio7/ii -0.4, viio/vi -0.7, viio7/vi -0.5, IV -0.7
major ii7: I 0.3, Imaj7 -0.4, V7/IV 0.3, V 1.6, V7 0.6, v -0.6, ii -2.3, ii7 3.6, V/V -0.4, V7/V 1.6, iio -0.1, vi -0.3, iii 0.5, iii7 -0.2, V/vi 1, V7/vi -0.7, viio 0.4, viiø7 -0.1, viiø7/V -0.4, viio7/iii 1.1, IV -1.3
major V/V: I -0.2, Imaj7 -0.2, V -0.7, V7 -0.2, v -0.1, ii -0.8, V/V 0.2, V7/V 0.1, vi -0.7, V7/vi -0.6, vii -0.4, viio7/vi 0.5
major V7/V: I 0.7, V 0.1, V7 -0.1, ii7 -0.4, V7/V 0.5, vi -0.6, iii 0.2, iii7 1.3, V/vi 0.9, V7/vi 0.8, viio/V -0.6, viio/vi 1
major iio: V -0.8, V7 0.6
major iiø7: V -0.6, V7 -1, viio -0.2
major vi: I 0.2, V7/IV 1.3, V 0.9, V7 -0.9, v 0.5, ii 0.6, ii7 1.3, V/V 0.4, V7/V 0.1, vi 0.5, vi7 -1.6, V7/ii 0.4, iii7 -0.6, V/vi -1.6, V7/vi -1.2, viio/IV 0.9, viiø7 0.7, V/iii -1.2, vii -0.6, viio/V 0.2, viiø7/V 0.6, viio7/V 0.6, viio/ii -0.1, viio/vi -0.2, viio7/vi 0.4, IV 0.8, IVmaj7 -0.8, IV7 -0.2
major vi7: I -0.9, V7/IV -0.5, V -0.3, V7 -0.4, ii -0.1, ii7 0.6, V/V -0.6, V7/V 0.2, vi 0.8, vi7 -0.1, viio 0.3, V7/iii -0.7, viio/V 0.8, viiø7/V 0.7, IV -0.4
major V/ii: ii -0.7, V/V -0.5, V/ii 0.6, V7/ii 0.5, iii -0.7, viiø7 -0.9
major V7/ii: V7 -0.8, ii -0.6, ii7 -0.8, V7/ii -0.4, IV -0.6, bVII 0.6
major vio: V -0.2, viio -0.4
major viø7: I -0.9, V -0.3, V7 -0.7, viio7/V -0.6
major iii: I 0.2, Imaj7 -0.9, V -0.9, V7 0.3, ii 0.2, ii7 0.9, V/V 1, V7/V -0.6, vi -0.1, vi7 0.4, iii7 -0.7, viio 0.7, viiø7 -0.7, viio/V -1, viio/ii 1.1, IV -0.5, IVmaj7 0.6
major iii7: I -1.2, V -0.2, V7 -0.7, vi -0.6, vi7 0.1, viio -0.4, viio/V 0.7, IV 0.1, bVImaj7 -0.7
major V/vi: vi -0.2, V/ii -0.7, iii -0.7, V/vi 0.1, V7/vi 1.8, viiø7/V -0.4, IV -0.7, IVmaj7 0.4
major V7/vi: vi 0.2, V7/vi -0.4, IV -0.8
major viio/IV: ii -1.3, vi -0.6, vi7 -0.6, V/ii -0.7, IV 0.2, IVmaj7 0.4, iv 1
major viiø7/IV: V -0.4, vi7 -0.8, IV -0.3
major viio7/IV: iv 1.2
major viio: strange -0.1, I 2, Imaj7 1, V7/IV 0.2, i -0.7, I+ -1.3, V -1.9, V7 1.3, ii -0.6, ii7 -0.1, vi 1.3, V/ii -0.7, iii 0.3, iii7 0.1, V/vi 0.6, V7/vi -0.7, viio -0.8, viiø7 1, viio7/vi -1.2, viio7/iii -0.9, IV 1.1, IVmaj7 -0.6
major viiø7: I 0.8, V7 -0.4, v7 -0.7, ii -0.6, vi -1.2, V7/ii -0.5, viiø7/V -0.7, IV -0.4
major viio7: I 0.6, viio -0.3
major V/iii: V -0.7, V/ii -0.7
major V7/iii: I -0.7, iii -0.1, viio/IV -0.7
major vii: I -1.2, Imaj7 -0.4, V7 1.2, vi -0.5, V/vi -0.3, IV -0.6
major viio/V: I -0.6, V 1.4, v -0.9, V/V -0.2, V7/V -0.9, iii -0.7, V/vi -0.7, viio/V 1, viiø7/V -0.7, viio/vi -0.7
major viiø7/V: I -0.2, V 0.9, vi -0.4, V7/vi -0.4, viio -0.7, viiø7 -0.7, viio/vi -0.7
major viio7/V: V 0.8, V7/V 0.5
major viio/ii: ii 0.4, vi -0.4
major viiø7/ii: ii -0.5
major viio7/ii: ii 1, vi7 -0.5, V/ii 1, V7/ii -0.8, iv -0.4
major viio/vi: I -0.2, ii -0.3, vi -0.9
major viio7/vi: vi 0.4, V/vi -0.6, V7/vi -0.7
major IV: I 1, V7/IV -0.2, V 0.5, V7 0.8, v -0.2, v7 1, ii 0.5, ii7 -0.1, V/V 0.4, V7/V -0.1, iiø7 -0.2, vi -0.3, vi7 -0.3, V7/ii 0.9, iii 0.4, iii7 -0.4, V/vi 0.7, viio/IV 0.6, viio -0.2, viiø7 0.8, viio7 -0.6, viiø7/V -0.7, viio7/V 0.6, viio7/ii 0.9, IV 0.3, IVmaj7 0.4, IV7 -0.7, iv 0.2, bVII -0.2, bVIImaj7 -0.1
major IVmaj7: I -1.6, V 0.4, V7 0.5, v -0.1, ii 1.6, ii7 -0.8, V/V 0.5, V7/V -0.6, viø7 -0.7, iii -0.4, V/vi -0.5, viio 0.3, viiø7 0.2, viiø7/V -0.4, IV -0.7
major IV7: i -0.2, V -0.7, V7/V -0.2, viio -0.4, viio7/V -0.4
major iv: I -0.2, V 0.2, ii7 -0.7, iiø7 -0.6, V7/ii 0.6
major bVII: I -0.7, V7/IV -0.7, V 1.1, ii 0.6, V/V -0.6, vi -0.7, viio7 0.6, IV -0.6, bVIImaj7 -0.7
major bVIImaj7: I -0.3, V -1.1, V/V -0.3, viiø7 1.1
major bVII7: V7/ii -0.4
major bIII: v -0.5, viio7/IV 1.2
major bVI: iiø7 -0.6
major bVImaj7: bVImaj7 -0.7
minor strange: V -1.1, viiø7 -0.1, viio7/V 0.8, IV -0.7
minor i: strange -0.6, i 0.2, i7 -0.8, imaj7 -0.8, I -0.4, V7/iv 0.1, v 1.3, V 0.4, iio 0.5, iiø7 0.9, ii 0.6, ii7 -0.8, V/V 1.2, V7/V 0.7, vio 0.7, viø7 0.9, viio7/VII -0.6, viio/iv -0.3, viio7/iv -0.1, viio 1.7, viio7 0.2, viio/V 0.9, viio7/V 0.8, Ger65 0.6, iv 0.6, iv7 0.8, IV 1.2, IV7 0.2, VII 1, VII7 0.9, vii -0.6, III 0.9, III+ -0.7, III+maj7 -1.1, VI 1, VImaj7 0.8, VI7 0.7, N 1.1
minor i7: i -0.7, iio -0.1, iiø7 -0.7, iv -0.6, IV -0.7, IV7 0.6, VII -0.6, VII7 -0.7, VI 0.4, VImaj7 -0.7
minor imaj7: i -0.3, iiø7 -0.7, iv -0.6
minor I: strange -0.6, i -0.9, i7 1.2, I 0.4, V7/iv 1.2, v -0.4, V -0.5, V7 0.2, iiø7 -0.7, ii -0.1, V7/V -0.7, #vi -0.6, viio 0.3, viio/V -0.6, viiø7/V -0.7, #io7 -0.7, iv -0.2, IV -0.7, IV7 0.4, V7/VI -0.6
minor V7/iv: I -0.4, iio -0.6, iiø7 -0.6, ii 0.5, V/V 0.6, V7/V -0.4, iv 0.4, iv7 -0.4, IV 0.6, VImaj7 -0.5
minor v: i -0.6, i7 -0.8, I -0.2, V7/iv -0.1, v -0.1, v7 0.3, V -0.4, V7 0.5, iio 1.2, ii -0.4, V/V 0.3, V7/V -0.7, vio 0.6, viø7 -0.8, #vi -0.7, viio/iv 0.4, viiø7/iv 0.3, viio 1.6, viio7 -0.6, viio7/V 0.5, iv 0.7, iv7 0.9, IV 0.2, IV7 -0.4, VII -0.7, III 0.1, V7/VI -0.6, III+maj7 0.6, VI 0.3, VImaj7 0.1
minor v7: i 0.2, V -0.6, iio -0.7, III -0.7, VI -0.2
minor V: i 0.4, I -1.3, v -0.4, V -0.8, V7 2.2, iio -0.6, iiø7 0.1, ii -1.1, viø7 0.1, #vi 1.2, viiø7 -0.7, viio7 1, viio/V -0.6, iv 0.6, IV 1.8, IIImaj7 -0.6, III+maj7 0.6, VI -0.2, VImaj7 -0.7
minor V7: i 1.7, I 0.2, V7/iv -0.3, V -0.6, V7 0.5, ii -0.6, vio 1.1, viø7 0.6, #vi -0.6, viio/iv 0.3, viio -0.1, viio7/V -0.6, iv -1.2, iv7 0.7, IV7 -0.3, VI 1.8, VImaj7 0.6
minor V+: iv -0.6
minor viio/VI: viio/VI -0.4, viio7 -0.4, iv -1, VI -0.5
minor viiø7/VI: III -0.7, VI -0.6
minor iio: i 1.5, v 0.4, v7 -0.4, V 0.1, V7 -0.8, iio -0.2, iiø7 0.1, V/V 1.1, Fr43 -0.2, viio -0.4, viio7 0.5, viio7/V 0.5, iv -0.7, iv7 0.6, IV7 -0.5, VII7 -0.2, III -0.1, IIImaj7 -0.7, V7/VI 1.3, III+ -0.8, III+maj7 -0.2
minor iiø7: i 0.2, v -0.5, v7 -0.7, V 2, V7 2.6, iiø7 4.4, ii -1.5, V7/V -0.8, viio -1.5, viio7 -0.2, viio7/V -1.1, iv -1.2, iv7 0.3, VII -0.7, VII7 -0.4, III -0.2, III+ -0.1
minor ii: i -1.2, I -0.4, v -0.4, V -1.5, V7 -0.7, ii 0.4, ii7 -0.7, vio -0.6, viø7 0.7, viio 0.6, viiø7 1.3, viio7 -0.7, viio7/V -0.5, IV 1.1, IV7 -0.1, III -0.2, III+ -0.5
minor ii7: V7/iv -0.2, V 0.4, V7 -0.6, iiø7 -0.2, viio/iv -0.7, IV -0.7, III -0.5
minor V/V: i 0.5, V -1.1, V7 -0.5, V/V -0.9, V7/V 0.7, III+ 0.5
minor V7/V: i -1, V7/iv -0.5, v -0.1, V -0.2, V7 -0.1, III+ 0.5
minor Fr43: V -0.2
minor vio: i -1, v -0.6, V 0.6, V7 -0.6, ii7 -0.5, viø7 0.9, viio -0.3, viio7 0.6, VII 0.6, III -0.6
minor viø7: i -0.4, V 0.8, V7 1.2, ii 1, V/V 0.5, V7/V 0.5, viio 1.3, viiø7 -0.6, viio7/V -0.2, IV -0.1, IV7 0.5, VII -0.5, VI -0.5
minor viio7/VII: VII 0.6
minor #vi: I -0.2, V -1.1, V7 -0.7, ii -0.6, viø7 -0.7, IV 1.1
minor viio/iv: V7/iv -0.5, V7 -0.7, viio7/iv 0.6, iv 0.7, IV -1.6
minor viiø7/iv: iv 0.8, IV 0.3
minor viio7/iv: V7/iv -0.1, viio/iv -0.2, viio7/iv 1.2, iv 0.2, IV 1.2
minor viio: i 1.4, I -0.7, V 0.1, V7 0.2, iio 0.7, viio -0.8, viio7 0.8, viio7/V -0.3, IV -0.7
minor viiø7: i 0.2, I 1, V7 -0.7
minor viio7: i 1.4, imaj7 -0.7, I 0.1, V7/iv 0.6, V 0.7, V7 -0.4, iiø7 -0.7, V7/V -0.6, viio -0.8, viio7 0.4, viio7/V 0.8, iv 0.5, iv7 -0.6, III -0.7, III+ -0.5, VI -0.6
minor viio/V: V -0.4, viio/V -0.1
minor viiø7/V: V -0.7
minor viio7/V: i 0.2, v 0.8, V 1.3, V7/V -1.1, viio/V -0.2, viio7/V 1.2
minor It6: V -0.4
minor Ger65: i -0.3
minor iv: i 1.3, i7 -0.7, V7/iv -0.3, v -0.7, v7 0.4, V 0.5, V7 -0.6, viiø7/VI -0.6, iio 0.5, iiø7 0.3, ii7 -0.2, V7/V 1.1, viio/iv -1.2, viio7/iv 1.4, viio 0.1, viio7 -0.2, viio7/V -0.6, It6 -0.4, Ger65 -0.6, iv -0.4, iv7 0.3, IV 0.8, IV7 0.7, VII -1.2, VII7 -0.1, III -1, III+ 0.7, VI -0.7, VImaj7 -0.1
minor iv7: i -1.7, v -0.6, V 0.2, V7 -0.3, iio 0.8, iiø7 -0.7, ii7 -0.4, viiø7/iv -0.4, viio -0.5, viio7 1.9, viio7/V 0.6, iv7 0.8, IV7 1.1, VII -0.9, III -0.4, N -0.4
minor IV: i -0.4, I -0.9, V7/iv -0.4, v -0.6, V -1.4, V7 0.7, V+ -0.6, iio -0.7, iiø7 -0.8, ii 1.2, ii7 -0.1, V/V -0.7, viø7 -0.7, viio 0.5, viiø7 0.8, viio7 0.5, viio7/V 0.3, iv -0.9, IV -0.2, IV7 0.1, VII -0.6, III+ 0.9, VI 0.9
minor IV7: i -0.4, v -0.4, V -0.3, V7 0.1, iio -0.6, ii -0.5, viio 0.3, iv 0.6, IV7 0.3, VII 1.3
minor VII: i -1.4, v 0.2, v7 -0.4, V 0.5, V7 -0.1, iio 1, iiø7 0.9, ii -0.5, V/V -0.4, vio -0.4, viio/iv -0.4, viiø7/iv 0.6, viio7/iv -0.3, viio 0.8, viio7 1.2, viio7/V -0.2, iv 0.6, IV -0.7, IV7 -1.3, VII 0.6, VII7 0.4, III 1.7, IIImaj7 0.4, III+ -0.5, VI 0.8
minor VII7: i -1.6, v -0.6, v7 -0.6, V -0.2, V7 0.8, viio/iv -0.7, viio7 -0.5, III 0.4, IIImaj7 -0.7, III+ 0.5, III+maj7 -0.7, VI -0.9
minor vii: iv 0.8, VI -0.6
minor III: i -0.6, i7 -0.9, I 1.3, V7/iv -0.3, v 0.2, v7 -0.8, V 0.9, V7 0.6, iio -0.1, iiø7 -0.4, ii 1.2, vio -0.7, viio7/VII -0.7, #vi -0.7, viio/iv -0.5, viio7/iv -0.2, viio -0.1, viio7 0.6, Ger65 -0.6, iv -0.6, iv7 -1.6, IV -0.2, IV7 0.1, VII -0.1, VII7 -0.5, III -0.4, IIImaj7 0.3, III+ 1.1, VI -0.8, VImaj7 -0.8, N -0.6
minor IIImaj7: i -1.5, V -1.1, V7 0.9, iiø7 0.3, viio -0.7, iv7 -0.7, IV 0.9, VI 0.4, VImaj7 0.3
minor V7/VI: i -0.6, I 0.4, V7/V -0.6, iv -0.6, VI 0.6, VImaj7 -0.5
minor III+: i -0.1, V 0.1, iiø7 -1, viø7 1.1, viio -0.7, viio/V -0.7, iv -0.8, iv7 0.9, IV7 -0.7, III+maj7 0.7, VI 0.5
minor III+maj7: i 0.1, V7 -0.7, iv 1.2, VI -0.6, VImaj7 -0.2
minor VI: i -0.9, I 0.9, v 1.4, V7 -0.9, iiø7 0.1, V/V 0.2, V7/V 0.3, viio7/VII -0.2, viio/iv 1.2, viio7/iv -1.2, viio 0.1, viio7 -0.3, viio7/V -0.4, iv -0.3, iv7 0.8, IV -0.6, IV7 1.4, VII 0.4, VII7 -1, III 0.1, V7/VI -0.1, VI -0.9, VImaj7 0.4, N -0.6
minor VImaj7: i 0.4, V -1.1, V7 -0.6, iio 0.6, iiø7 0.8, V7/V 0.3, iv 1, iv7 -0.5, IV -0.4, III+ -0.6
minor VI7: iv 0.3
minor N: i -0.7, V -0.2, V7 -0.6, viio7/V 0.7, VI -0.2
minor bIImaj7: bIImaj7 -0.7
# progression with inversions
major strangea: Ia -0.4, viio7c -0.3
major strangeb: V7/iia 1.1, IVa -0.1
major strangec: Va -0.3
major Ia: Ia -3.3, Ib 1.3, Ic -1.2, Imaj7a 0.5, Imaj7d -0.9, V7/IVa 1, V7/IVb -0.9, V7/IVd 0.9, Va 1, Vb 0.5, V7a -0.5, V7b 0.1, V7c 0.8, V7d -1, va -0.4, iia -0.3, iib 1.3, ii7a 0.1, ii7b 0.6, ii7c 0.6, ii7d 0.4, V/Va 0.8, V7/Va -1, V7/Vc 1.3, V7/Vd 0.3, via 1.4, vib -0.5, vi7a -0.4, V/iib 0.3, V7/iib -0.2, viø7a -0.2, iiia 0.3, iiib 0.5, iiic -0.4, iii7a 1.3, iii7c 0.9, V/via -0.5, V/vib 1.5, V7/vib -0.7, V7/vic 0.1, viiø7/IVa 0.7, viioa -0.9, viiob 0.6, viioc 0.8, viiø7a 0.1, viiø7d -0.5, viio/Vb 0.3, viio/Vc -0.5, viiø7/Vb -1.1, viiø7/Vc 0.8, viio7/iia -0.8, viio/vib 0.2, viio/vic -0.3, viio7/via 0.6, IVa 0.5, IVb 0.3, IVc -1.8, IVmaj7a 0.6, IVmaj7b 0.6, IVmaj7c -0.1
major Ib: Ia 0.5, Ib -1.2, Ic 0.6, Imaj7a -0.2, V7/IVa 0.1, V7/IVb 0.9, Va 1.3, Vb 0.2, Vc -1.7, V7a -1.2, V7b 1.3, V7c -0.2, V7d 1.6, va 0.5, v7d -0.3, iia 0.5, iib -1, ii7a -1.2, ii7b -0.3, ii7d -0.6, V/Va -0.9, V/Vb -0.7, V7/Va -1.1, V7/Vb -1.3, V7/Vd 0.6, via 0.7, vib 0.5, vic -0.7, vi7a 0.7, vi7b -0.7, V7/iid -0.4, iiia -0.6, iiib 0.4, iii7a -0.5, iii7c -0.6, V/via 0.4, V/vic -0.6, viio/IVb -0.5, viioa -0.7, viiob 0.9, viiø7c -1.1, viio/Va -0.7, viiø7/Va 0.6, viiø7/Vc -0.5, IVa -0.1, IVb 1, IVmaj7a -0.3, IVmaj7c -0.4, IVmaj7d 0.3, IV7d -0.2, iva -0.1, bIIIa -0.5
major Ic: Ia -0.2, Ib -0.6, V7/IVa -0.7, Va 0.3, V7a 0.8, V7d -1.4, v7a -0.3, iib 0.6, ii7b 1.4, V7/Vb 1.5, via -0.6, viiob -0.7, viiø7/Va 1.7, IVa 0.5, IVb -1.9, IVmaj7a -0.6
major Imaj7a: Ia -0.6, Vb -0.9, iia -0.5, iib 1.2, ii7b -0.3, ii7d 1.2, vib 1.4, vic -0.4, viiø7a -0.2, IVa -0.1, IVmaj7a -0.5, IVmaj7b -0.2, IVmaj7d -0.6
major Imaj7b: Imaj7a 0.7, Va -0.7, ii7b -0.6, via 0.3, vic -0.6, viiø7/Va -0.1
major Imaj7c: IVa 1.2, IVb -0.6, IVmaj7b -0.6
major Imaj7d: via -0.2, viiø7d 1.2, IVb -0.3
major V7/IVa: Ib -0.5, V7/IVb 1, iia 0.7, iib -0.9, V7/Vb -0.7, V/iib -0.4, viiø7a -0.4, viio7/iia -0.6, IVa 0.7, IVmaj7a -0.3, iva -0.3, bVIIc -0.6, bVIImaj7c -0.3
major V7/IVb: vi7a 0.2, IVa 1, IVb -0.6, IVmaj7a -0.7
major V7/IVc: IVa 0.7, IVb 0.2, IVmaj7b -0.3
major V7/IVd: Ic 0.2, V7/IVc 0.6, via -1, viio/Vb 0.9, IVa -0.9, IVb 1.2, IVmaj7b 1.3, ivb -0.1
major ia: Va -0.7, Vb -1.1, V7d -0.3, iib -0.5, V7/Vb -0.2, bVIa -0.6
major ib: Ib -0.7, viio7/Va -0.2
major I+b: IVa -0.7
major Va: Ia 0.5, Ib -0.6, Ic -0.1, Imaj7b 0.3, V7/IVd -0.9, ia -0.1, Va -2.9, Vb 0.6, Vc 2.5, V7a 1.5, V7b -1.7, V7c 0.5, V7d 1.2, iia -0.6, iib -0.6, ii7a -0.6, ii7b -1, ii7c -0.7, V/Va 0.9, V/Vb -0.7, V7/Vb 0.9, V7/Vc -0.6, via -1.2, vib -0.6, vi7a 0.5, viob -0.7, viø7a -0.3, iiia -0.2, iiib -0.1, iii7a 0.4, V/vib 0.5, V7/via 1.1, viioc -0.1, viiø7a -0.7, viia -0.7, viio/Va -0.6, viio/Vb 0.3, viio/iib 1.1, viio7/iia -0.5, viio7/via -0.3, IVa -0.6, IVb 0.9, IVmaj7b -0.7, bVIa 0.1
major Vb: strangeb 1.1, Ia -0.1, Ib 0.7, Ic -0.7, Imaj7a -0.3, Imaj7d 0.5, V7/IVd 1.3, ia 1, Va 1.4, Vb -1.3, Vc -0.6, V7a -0.8, V7b 0.2, V7c -0.4, vb -0.1, iia 0.2, V/Va 1.1, V7/Vd 0.7, via 2.2, vib 0.4, vi7a -1.1, vi7b 0.7, V/iib -0.2, V7/iia -0.2, V7/iib 0.2, iiia 0.4, iiib 1.4, iii7a -0.2, V7/vid -0.7, viiob 0.8, viio/Vb -0.1, viio/iia -0.7, viiø7/iia -0.5, viio7/iia 1.6, IVb -0.1, ivc -0.2, bVII7a -0.4
major Vc: Ia -0.2, Ib 0.5, ia -0.6, V7c -1.2, V7d 1.5, V/Va -0.3, vi7b -0.7
major V7a: Ia 0.9, Ib -0.2, Ic -1.4, Imaj7a 0.9, Imaj7c 0.7, V7/IVd -0.7, ia 1.3, V7a -0.7, V7b 0.2, V7c -0.6, V7d 0.4, iia -0.7, via 1.1, vib 2.1, vi7a 0.8, vioa -0.2, viø7d -0.6, iiib -0.5, V/vib 0.1, viio/Vb -0.7, viiø7/Va 0.4, viio7/Va -0.7, viio/iib -1, IVa -0.7, IVb 0.1, IVmaj7b 0.9
major V7b: Ia 2.6, Ib -0.9, Imaj7c -0.6, Imaj7d 0.6, ia -0.7, Va -0.7, Vb 1, V7a -0.3, via -0.1, vib -0.7, V7/iib -0.7, iiib -0.1, V/vib -0.8, IVb -1.3, IVmaj7b -0.6
major V7c: Ia 0.8, Ib -0.6, Imaj7a 0.7, Imaj7b 0.8, Va 1.2, V7a 2, V7b -0.7, V7d -0.6, iib -0.5, via -1.3, vib 0.8, vic -0.4, V/vib 0.5, viiob -0.7, IVb 1.2, IVc -0.7, IVmaj7a -0.1
major V7d: Ia -1.6, Ib 1.5, Ic -0.4, Imaj7b -0.6, ia -0.3, Va -1, Vc -0.7, V7a -0.7, V7c 1.2, V7d -0.7, via -0.1, vic 0.9, vi7c -0.4, V/iia -0.5, vioc -0.4, iiia 0.8, iii7a -0.6, V/via 1, V7/via -0.8, viiø7/IVa -0.5, viiob 0.3, viio7/Va 1.6, viio/iib -0.5, viio7/iib 1, IVa -0.1
major va: Ia -0.6, Ib -0.6, Va -0.2, Vc -0.6, v7a 1.3, via -0.6, V7/iib -0.7, viio/IVb -0.7, viiob -0.7, IVb 1.3
major vb: Ib -0.7, V7b -1.3, via -0.9, viio7/iia -0.6, IVb 1.2, bVIImaj7a 1.1
major vc: V/Va -0.5
major v7a: Ia -0.7, Va -0.3, via 1.3
major v7b: Ia -0.6, V7/IVa -0.6, Vb -0.7, viiø7a 1
major V+b: V7/iiia -0.7
major vob: V7/IVa -0.6
major iia: Ia -1.1, Ib -0.1, Va 0.1, Vb 0.6, V7a 0.1, V7b -0.8, V7c 1.3, V7d -0.1, iib -0.1, iic -0.3, ii7a -2.8, ii7b -0.5, ii7d -0.6, via -0.2, V/iia 0.6, iiia -0.4, viio/IVb -0.7, viiø7/IVa -0.4, viioa -0.3, viiob 1.1, viiø7a -0.5, viio/via -0.7, viio7/via 0.7, viio7/vic -0.6, IVa 0.7, IVb -0.8, IVc -0.7
major iib: Ia -0.7, Ib 0.1, Ic 0.2, Va -0.5, Vc 0.5, V7a -0.8, V7b -0.3, V7c -0.2, V7d 1.7, vb -0.7, iia -0.4, ii7a 1.4, ii7b 1.6, V/Vb -0.6, V7/Vb 0.6, via -0.8, vib -0.4, iiia 1, iiib -0.6, iii7a -0.6, V/via -1.2, V/vib -0.4, viiø7/IVa -0.4, viiob -0.6, viioc 0.1, viiø7b -0.2, viiø7c 0.9, viio7/Va 0.5, viio7/iib -0.4, viio7/via -0.4, IVb -0.1
major iic: Ia -0.7, Va -0.1, V7b -0.3, iiib -0.6, V/vib 1.2, viioa 0.5, viio7/via -0.6
major ii7a: Ia -0.6, Ib -1.3, Ic 1.4, Imaj7a -0.4, V7/IVb 0.3, Va 1.7, Vb -0.3, V7a 1.1, V7c -0.8, vc -0.6, ii7b -0.3, ii7c -0.2, vic -0.3, iiia -0.7, V/via 1, V7/vib -0.7, viiob 0.5, viiø7b 0.7, viio7/iiia 1.1
major ii7b: Ia -0.6, Ib -0.5, Ic 1.4, V7a -0.3, V7d -0.7, iia -1.7, ii7a 4.2, ii7b -1.5, V/Va -0.4, V7/Vb 1.6, iioa -0.1, iiib 1.1, iii7b -0.2, viiob -1, viiø7c 0.2, viiø7/Va -0.4, IVa -0.7
major ii7c: Ic 0.8, ii7a -0.6, ii7b 0.9, IVb -0.7
major ii7d: Ia -0.2, Va -0.4, Vb -0.3, V7b 1.1, iib -1, ii7a -0.3, viioa 1.1, viiø7a -1
major V/Va: Ib -0.2, Imaj7b -0.2, Va -0.3, Vb -0.7, V7a -0.7, V7d 1.4, iia -0.4, V7/Va 0.6, V7/Vd 0.4, vib -0.7, viib -0.4
major V/Vb: Va -0.3, V7d -0.9, va -0.1, iia -0.5, V/Va 0.5, V/Vb -0.4, V7/Vb -0.2, V7/vib -0.6, viio7/via 0.5
major V7/Va: Va -0.4, vib -0.6, iii7a 1.3
major V7/Vb: Va 1.1, V7a -0.1, ii7a -0.4, V7/Va 0.9, V7/Vb -0.4, iiib 0.5, V/vib 0.9, V7/vib 0.8, viio/via -0.8
major V7/Vc: Ib -0.7, Ic 1.4, Va 0.6, Vb -1.3, iiib -0.4
major V7/Vd: Va -0.2, Vb 0.9, V7/Vc -0.3, viio/Vb -0.6, viio/vib 1.6
major iioa: Va -0.1
major iiob: Va -0.7, V7a 0.6
major iiø7a: V7a -1, viioa -0.2
major iiø7b: Va -0.6
major via: Ia -1.6, Ib 1.1, Ic 0.7, V7/IVb 0.6, V7/IVc 0.8, Va -0.4, Vb 1.1, V7a -0.3, V7b -0.1, V7c -0.7, V7d 0.2, vb 0.5, iia 0.9, iib -0.4, iic -0.6, ii7a -0.5, ii7b 0.1, ii7c -0.6, V/Va -0.6, V/Vb 0.7, V7/Va -0.3, V7/Vb 0.5, V7/Vc 0.2, V7/Vd -0.7, via 0.3, vib -0.2, vic 0.8, vi7d -1, V7/iia 1, V7/iid -0.7, iiia 0.8, iiib -0.7, iii7a -0.6, V/vib -0.7, V7/vib -0.7, viio/IVa 0.9, viioa -0.7, viiob 0.8, viioc 0.2, viiø7b -0.3, viiø7d -0.3, V/iiia -0.7, V/iiib -0.7, viio/Va -0.6, viio/Vb 0.5, viiø7/Va -0.2, viiø7/Vb -0.3, viio7/Va 0.6, viio/iib -0.1, viio/vib -0.2, viio7/via -0.3, IVa 1, IVb 0.2, IVmaj7a 0.3, IVmaj7b -0.3, IV7a -0.2
major vib: Ia -0.9, Va 0.9, Vb 0.1, iia -0.8, iib -0.2, ii7a -0.3, ii7b 2.1, ii7d -0.2, V7/Va -0.3, V7/Vd -0.1, via 0.6, vib -0.6, vi7a -0.7, V/via -0.5, V7/vic -0.6, viiob -0.8, viiø7b 1.2, viib -0.6, viio/Vb -0.2, viiø7/Vc 1, viio7/via 0.7, IVb 0.9, IVmaj7a -0.2, IVmaj7b -0.9
major vic: iia -1.6, iib 1, via 0.4, V/via -0.7, viiob 0.5, IVa -0.7
major vi7a: Ia -0.4, Ic -0.5, V7/IVc -0.5, Vb 0.1, V7a -0.7, V7b -0.5, V7c 1.3, iib -0.5, iic 1, ii7a 0.8, ii7b -0.4, V7/Vc 0.3, via -0.5, vib 1.3, vi7d 0.4, viioa -0.1, viiob 0.2, V7/iiia -0.7, viio/Vb 0.8, viiø7/Vb 0.7, IVb -1.1
major vi7b: iia -0.2, V7/Va -0.4, viiob 0.4
major vi7c: vi7a -0.6
major vi7d: Va -0.5, V7d -0.4, iib -0.5, V/Vb -0.6, V7/Vb 0.3, IVa 0.8
major V/iia: iia 0.1, V/Va -0.5, V/iib -0.5, viiø7b -0.9
major V/iib: iia -0.8, V/iia 1, V7/iib 0.5, iiia -0.7
major V7/iia: V7c -0.8, iia 0.1, bVIIa 0.6
major V7/iib: iia -0.4, ii7a -0.8, V7/iia -0.4
major V7/iid: iib -0.1, IVa -0.6
major vioa: Vb -0.2
major vioc: viiob -0.4
major viø7a: Ic -0.2, Vc -0.3
major viø7d: Ib -0.7, V7d -0.7, viio7/Va -0.6
major iiia: Ia 0.4, Ib 1, Imaj7a -0.9, Va -1.1, Vb 0.9, V7a -0.6, V7b -0.6, V7c 1, V7d -0.7, iia -0.6, V/Va 1, V7/Va -0.6, vib -0.6, vi7a 0.7, vi7c -0.6, iii7a -0.7, viioa -0.3, viiob 0.9, viiø7d -0.7, viio/Vb -0.6, viio/Vc -0.5, viio/iib 1.1, IVa -0.2, IVb 0.3, IVmaj7a 0.7, IVmaj7b 0.3, IVmaj7d -0.5
major iiib: Ia -0.4, Ib -0.8, Ic -0.4, Va -0.4, V7a 0.9, iia -0.5, iib 0.9, ii7b -0.5, ii7c 1.2, via -0.8, vib 0.9, IVa -1.8, IVb 0.4, IVmaj7a -1.3, IVmaj7b 1.4
major iiic: IVmaj7b -0.4
major iii7a: Ia -1.2, V7a -0.5, V7c -0.5, via -0.6, vi7a 0.1, viiob -0.4, viio/Va 0.7, IVa 0.1, IVb -0.6
major iii7b: Va -0.2, IVa -0.5
major iii7c: IVb 0.9, bVImaj7b -0.7
major V/via: via 0.1, V/iia -0.7, V/vib -0.7, V/vic -0.1, V7/via 0.3, IVmaj7d 0.4
major V/vib: via 0.3, iiia -0.7, V/via 1, V7/via 1.4, V7/vib 0.9, viiø7/Va -0.4, IVb -0.7
major V/vic: via -0.6, vib -0.1
major V7/via: via 0.9, vic -0.7, IVa 0.4, IVb -0.6
major V7/vib: via 0.6, V7/via -0.4, IVb -1
major V7/vic: via -0.4
major V7/vid: vib -0.1
major viio/IVa: IVa -0.7, IVmaj7a 0.9, IVmaj7b -0.6
major viio/IVb: iib -0.7, via -0.6, vi7a -0.6, V/iia -0.7, IVa 0.4, IVb 1, ivb 1
major viio/IVc: iic -0.7, IVb -0.2
major viiø7/IVa: Va -0.4, vi7a -0.8, IVa 0.6, IVb -0.2
major viiø7/IVb: IVb -0.7
major viio7/IVa: iva 1.2
major viioa: Ia 0.3, Imaj7a 0.9, V7/IVd 1, V7a 1.1, V7b 0.1, via -1.1, vib -0.7, V/vib -0.4, viiob -0.8, viio7/via -1.2
major viiob: strangeb -0.1, Ia 0.4, Ib 2, Ic -0.5, Imaj7a 0.1, V7/IVb -0.7, ib -0.7, I+a -0.7, I+b -1.3, Va -1.7, V7a -0.1, V7b 0.7, V7c -1.2, iib -0.6, ii7a -0.1, via 0.5, vib 2.1, vic -0.1, V/iia -0.7, iiia 0.3, iii7a 0.1, V/via 1.2, V/vib -0.4, V7/via -0.7, viioa 1.1, viiob -0.6, viioc -0.5, viiø7b 1, viio7/iiia -0.9, IVa -0.6, IVb 1.1, IVc 0.6, IVmaj7a -0.6
major viioc: Ia -0.7, Ib -0.2, Va -0.5, V7c -0.1, V7d 1.3
major viiø7a: Ia 0.6, Ib 0.7, Va -0.3, Vb -0.6, Vc -0.4, vib -0.7, IVc -0.4
major viiø7b: Ic -0.8, Va 1.2, v7a -0.7
major viiø7c: Ia -0.7, Ib 0.9, Va -0.2, V7d -0.4, iib -0.6, viiø7/Va -0.7
major viiø7d: Ia -0.9, Ic 1.1, via -0.6, V7/iia -0.5
major viio7a: Ia 0.6
major viio7c: viiob -0.3
major V/iiia: V/iib -0.7
major V/iiib: Va -0.7
major V7/iiia: Ia -0.7, viio/IVa -0.7
major V7/iiib: iiia -0.1
major viia: V7a 1.2, via -0.5, V/via -0.3
major viib: Ib -1.1, Imaj7b -0.4, IVa -0.6
major viio/Va: Va -0.3, viio/via -0.7
major viio/Vb: Ic -0.6, Va 2, Vb -1.3, va -0.9, V/Va -0.2, V7/Vc -0.4, iiia -0.7, V/via -0.7, viio/Vc 1.2, viiø7/Vb -0.7
major viio/Vc: Va 0.1, Vb 0.5, vb -0.7, V7/Vc -0.6, viio/Vb -0.3
major viiø7/Va: Ic 0.4, Va 0.7, V7/via -0.4
major viiø7/Vb: Va -0.5, Vb -0.4, viiø7a -0.7, viio/vib -0.7
major viiø7/Vc: Ib -0.5, Va 2.1, Vb -0.6, via -0.4
major viiø7/Vd: viiob -0.7
major viio7/Va: Va 0.8, V7/Vb 0.5
major viio/iia: iia -0.4
major viio/iib: iia 0.6, via -0.4
major viiø7/iia: iia -0.5
major viio7/iia: iia 1, vi7a -0.5, V7/iib -0.5
major viio7/iib: V/iib 1, V7/iib -0.4
major viio7/iic: ivb -0.4
major viio/via: Ia -0.2, via -1.7
major viio/vib: via 1.7, vib -0.8
major viio/vic: iib -0.3
major viio7/via: via 0.4, V/vib -0.6, V7/vib -0.7
major viio7/iiia: iiia 0.1
major viio7/iiib: iiia -0.1
major IVa: Ia 0.6, Ib -0.4, Ic -0.5, V7/IVd -0.7, Va 0.3, Vb 1.2, V7a -0.2, V7b -1, V7c -0.9, V7d 1.1, va 0.3, iia 0.5, iib 1.2, ii7a 1.4, ii7b -1.2, V/Va -0.6, V/Vb 0.8, V7/Vb 0.1, via -0.1, vib -0.4, vic -0.6, V7/iib 0.9, iiia 1, iii7a -0.4, V/via -0.2, V/vib 0.9, viioa 1.1, viiob -0.2, viiø7a 0.3, viiø7b -1.2, viiø7c -0.9, viio7a -0.6, viiø7/Vd -0.7, viio7/Va 0.6, viio/iia 0.5, viio/iib -0.6, viio7/iia 0.2, IVa -1.2, IVb 0.7, IVc -0.6, IVmaj7b 0.7, IVmaj7d 0.1, IV7a -0.7
major IVb: Ia 0.9, Ib -1.3, Ic 0.3, V7/IVb -0.1, V7/IVc 0.5, Va -2.1, Vb 0.6, V7a 0.8, V7b 1.4, vb -0.6, v7b 1, iib -1.6, iic -0.6, ii7a -1, ii7b 0.9, ii7c -0.7, V7/Vb -0.3, iiø7a -0.2, via 0.2, vi7d -0.3, iiia -0.3, viio/IVa -0.4, viio/IVb 0.9, viioa -0.6, viiob 0.2, viiø7a 1.4, viiø7c 0.9, viiø7d 0.1, viio7/iia 0.9, IVa 0.2, IVb -1.3, IVc 1.3, IVmaj7a 0.9, ivb 0.2, bVIIa -0.2, bVIImaj7a -0.1
major IVc: Ia 0.7, Vb -0.6, V7b -1.1, ii7a -0.6, ii7d -0.4, viioa -0.1, viiø7a -0.7, IVa -0.1, IVmaj7a -0.6
major IVmaj7a: Ib -0.7, Va 0.4, V7a 0.1, V7d -0.4, va -0.1, iib 0.5, ii7b -0.6, V/Vb 0.5, V7/Vb -0.6, viiø7c -0.4, viiø7/Va -0.4
major IVmaj7b: Ia -0.7, Ic -0.6, V7b 0.8, iia -0.8, iib 1.3, iic 1, ii7b -0.3, viø7d -0.7, iiib -0.4, V/vib -0.5, viioa 0.7, viioc -0.6, viiø7d 0.6
major IVmaj7c: V7d -0.1, viiob -0.4
major IVmaj7d: viiob 0.4, IVa -0.7
major IV7a: Va -0.7, V7/Vb -0.2, viio7/Va -0.4
major IV7b: Vb -0.1
major IV7d: ia -0.2, viiob -0.4
major iva: Ia -0.3, Va -0.7, Vb 1.2, ii7a -0.7, iiø7a -0.6
major ivb: Ic 0.2, V7/iia 0.6
major ivc: Va -0.2
major bVIIa: Ia -0.2, V7/IVd -0.7, Va 0.6, Vb 0.7, iia 0.6, vib -0.7, viio7a 0.6, bVIImaj7a -0.7
major bVIIb: Ib -0.6, IVa -0.6
major bVIIc: V/Vb -0.6
major bVIImaj7a: Vb -1.1, viiø7a 1.1
major bVIImaj7b: Ib -0.3
major bVIImaj7c: V/Vb -0.3
major bVII7a: V7/iia -0.4
major bIIIa: vc -0.5, viio7/IVa 1.2
major bVIa: iiø7b -0.6
major bVImaj7b: bVImaj7c -0.7
minor strangea: Va -1.1, viiø7a -0.1, viio7/Vc 0.8, IVa -0.6
minor strangeb: IVb -0.1
minor ia: ia -1.8, ib 2.3, ic -0.6, i7a -1.2, i7d -0.1, imaj7b -0.3, Ia -0.9, Ib -0.7, vb 0.8, Va 0.4, Vb -0.4, Vc -0.6, V7a -0.5, V7b 0.7, V7c -0.2, iioa -1.1, iiob 0.9, iioc 0.3, iiø7a -1.2, iiø7b 2, iiø7c 0.5, iiø7d 0.2, iia 1.2, iib -0.2, ii7c -0.7, ii7d -0.1, V/Va 0.8, V/Vb 0.5, V7/Va -0.7, V7/Vb 1.4, V7/Vc 0.6, V7/Vd -0.7, viob 0.6, viø7a -0.2, viø7b 1, viio7/VIIa -0.6, viio/ivb -0.3, viio7/ivd -0.7, viioa 1.1, viiob 0.7, viio7b -0.3, viio7d 0.1, viio/Vc 1.4, viio7/Vc 0.5, Ger65b 0.6, iva -0.9, ivb 0.2, iv7a 1.4, iv7b 0.2, IVa 0.4, IVb 1.2, IV7b 0.4, IV7d 0.9, VIIa 0.5, VIIb 0.5, VII7a -0.6, VII7b 1.4, VII7d 0.4, IIIa 1.7, IIIb -0.5, III+a -0.7, III+maj7a -1.1, VIa 0.2, VIb 0.4, VImaj7a 0.8, VI7a 0.7, Nb 1.1
minor ib: strangea -0.6, ia 0.8, ic 0.2, i7a -0.1, imaj7a -0.6, Ib 1.5, V7/ivb 0.4, va 1.1, Va -0.1, Vb 0.7, Vc -0.9, V7a 0.1, V7b 0.1, V7c 0.7, V7d -1.8, iiob -0.1, iioc -0.5, iiø7a -0.4, iiø7b 1, iiø7c -1.4, iiø7d -0.7, iia 1.3, iib -1.1, viob 0.4, vioc -0.2, viio7/iva 0.8, viioa -0.9, viiob 1.5, viioc -0.2, viio7a -1.5, viio7b -1.2, viio7c -0.3, viio/Va -0.1, viio/Vc -0.6, viio7/Vc 0.3, viio7/Vd -0.5, iva 0.1, ivb 1.1, iv7a -0.2, iv7b -1.1, iv7d 0.1, IVa -0.8, IVb 0.7, IV7a -0.5, IV7d -0.6, VIIa -0.7, VIIb 1, viia -0.6, IIIb -0.9, VIa 1.6, VIb -1.1
minor ic: ia 0.4, ib -0.2, Ia -0.2, V7/ivd -0.3, va -0.5, Va 1.2, V7a 0.7, iiob 0.5, iioc -0.6, iiø7a -0.5, iiø7b -0.7, iiø7c 1.4, viio7a -0.3, viio7c 2.1, viio7/Va 0.6, iva -0.5, iv7a 1.1, VIa -0.2
minor i7a: ia -0.7, iiob 0.6, iiø7d -0.7, iva 0.6, VIIa -0.6, VII7b -0.7, VIb 1.3
minor i7b: iva -0.7
minor i7c: iiob -1, IVa -0.7, VIa -0.7
minor i7d: ivb -0.6, IV7b 0.6, VImaj7a -0.7
minor imaj7a: ivb -0.6
minor imaj7b: ia -0.3
minor imaj7c: iiø7b -0.7
minor Ia: strangea -0.6, ia -0.9, ib -0.7, i7a 1.2, Ia -0.9, Ib 0.6, Ic 1.1, V7/iva 1.1, V7/ivd -0.4, vb -0.4, Va -1.8, Vb -1.2, V7a -0.6, V7c -0.1, iiø7d -0.7, iia -0.1, ii7b -0.7, ii7d 0.9, V7/Vd -0.7, #via -0.6, viiob 1.2, viiø7/Vb -0.7, #io7a -0.7, iva -0.4, ivb -0.3, IVa -0.8
minor Ib: ia -0.7, ib 0.3, Ia 1.4, Ic -0.2, V7/iva -0.5, V7/ivb 1.2, Va 0.2, Vb 1.2, viiob -0.7, viio/Va -0.6, iva -0.3, IVa 0.2, IV7d 0.4, V7/VIa -0.6
minor Ic: Va 1.3, V7a -0.6, V7d 1.2, ivb 0.8, IVb -1.2
minor V7/iva: iiob -0.6, iiø7b -0.6, iia 0.8, iib -0.5, iva -1.1, ivc 0.7
minor V7/ivb: V7/iva -0.7, V/Vb 0.6, V7/Vb -0.4, iva 0.5, iv7a -0.4, IVa 0.9
minor V7/ivc: V7/iva -0.2, V7/ivd -0.3, iva 0.5, ivb -0.4, IVb 0.9
minor V7/ivd: Ic -0.4, V7/ivc 1, IVb -1.2, VImaj7a -0.5
minor va: ia -1.1, ib -0.1, ic -0.3, i7a -0.2, Ia -0.2, V7/ivb -0.5, V7/ivd 1, va -0.7, vb 0.5, v7a -0.2, v7d 0.8, Va -1.1, Vc 0.8, iiob 1.2, V/Va -0.3, V/Vb 0.5, V7/Vb -0.5, viob 0.6, viø7a -0.1, viø7b -0.6, viø7d -0.6, #vib -0.7, viio/ivb 0.4, viiob 1.6, viio7a 0.3, viio7c -0.5, viio7d 0.7, viio7/Va -0.5, viio7/Vb -0.2, iva 0.2, ivb 0.9, iv7a -0.1, IVa -0.6, IVb 1.4, IV7a -0.4, VIIc -0.7, IIIa -0.8, IIIb 1.2, V7/VIa -0.6, III+maj7a 0.6, VIa 0.7, VIb -0.6, VIc -0.6, VImaj7a 0.4, VImaj7b -0.4, VImaj7d 0.3
minor vb: ia 0.2, i7a -0.6, V7/ivd -0.5, va -0.7, v7b -0.6, Vb 0.6, iia -0.4, V7/Va -0.2, viø7a 0.4, viiø7/ivc 0.3, viio7a -1.3, viio7/Vb 1.2, ivb -0.1, iv7b 1, IVb -0.7, IIIa 0.4, VIa -0.1, VImaj7a -0.3
minor vc: ia -1, ib -0.7, V7d 0.5, iva -0.4
minor v7a: ia 0.4, ib -0.3, VIa -0.2
minor v7b: Vb -0.6
minor v7c: iioa -0.7
minor v7d: IIIb -0.7
minor Va: ia 0.3, ib -0.8, ic -1.3, Ib -0.7, va -0.4, Va -1.7, Vb 0.2, Vc -0.7, V7a 2.1, V7b -0.2, V7c -1.7, V7d 1.2, iiob -0.6, iiø7b 0.1, iib -0.6, viø7a -0.1, viø7b 0.8, viø7d -0.6, #via 1.2, viio7c 1.1, viio/Vb -0.6, ivb 0.8, ivc -0.4, IVb 1.8, IIImaj7a -0.6, III+maj7a 0.6, VIa -0.6, VImaj7a -0.7
minor Vb: ia 0.1, Ia -0.7, Va 1.4, V7a 0.6, V7b 0.6, iia -0.6, viø7a -0.2, viio7d -0.2, VIb 0.3
minor Vc: ia 0.9, ib -0.6, Va -0.3, V7c -0.7, viiø7c -0.7
minor V7a: ia 1.3, ib -0.9, ic 1.1, Ia 0.8, Ic -0.6, Va -1.3, V7c 1, V7d -0.8, vioa 0.8, viø7b -0.4, #via -0.6, ivb -0.7, iv7b 0.7, IV7b -0.1, VIa 2, VImaj7a 0.6
minor V7b: ia 1.3, ic -0.5, Ia -1.3, V7/ivd -0.3, Va -0.5, Vb 0.5, V7a -0.1, V7b -0.7, V7c 1.2, iia -0.6, viio/ivc 0.3, VIb 1
minor V7c: ia 0.5, ib 1.6, Ib -0.1, Va -1, Vb 1.8, V7a 0.2, V7b -1.2, V7d -0.4, viiob -0.1, ivc -0.7
minor V7d: ia 0.3, ib 0.4, ic -0.7, Ib 0.5, V7c 2.1, vioc 0.4, viø7c 1, viiob -0.1, viio7/Va -0.6, IV7d -0.2, VIa -1.3
minor V+a: ivb -0.6
minor viio/VIa: viio/VIb -0.4
minor viio/VIb: viio7a -0.4, ivb -1, VIa -0.5
minor viiø7/VIa: VIa -0.6
minor viiø7/VId: IIIb -0.7
minor iioa: ia 0.5, ib -0.7, Va 0.2, Vb 0.1, V7b -1.1, iiob 0.7, iiø7a -0.2, iiø7b -0.5
minor iiob: ia 0.4, ib -0.8, ic 1.3, va 0.4, v7a -0.4, Va 0.9, Vb -0.2, V7a -1.2, V7b -0.3, V7d 1.5, iioa 0.2, iiob -0.5, iioc -0.5, iiø7b 0.8, V/Vb 1.1, Fr43b -0.2, viioc -0.4, viio7c -0.5, viio7d -0.3, viio7/Va 0.5, ivb -0.7, iv7a 0.6, IV7a -0.5, VII7a -0.2, IIIa -0.5, IIIb 0.8, IIImaj7a -0.7, V7/VIa 1.3, III+b -0.5, III+maj7a -0.7, III+maj7b 0.6
minor iioc: ic 1.7, Va -1.6, iiob -0.6, iiø7b -0.5, iiø7c -0.5, viio7d 1.2, IIIb -0.5, III+b -0.8
minor iiø7a: ib -0.8, va 0.3, v7c -0.7, Va 3.5, Vb -1.5, V7a 1.2, V7b -0.6, V7c 0.9, V7d -0.5, iiø7a -0.2, iiø7b -0.7, iiø7d -0.2, viiob -0.3, viio7b 1.2, VIIb -0.7, VII7b -0.4, IIIa -0.5
minor iiø7b: ib -0.5, ic 1, va 0.6, Va -0.6, Vc -0.3, V7a 2.3, V7b 0.8, V7c -1.2, V7d -0.2, iiob -0.7, iiø7a 4.2, iiø7b -0.2, iiø7c 1.1, iia -1.5, V7/Vb -0.8, viiob -0.6, viioc -0.6, viio7c -0.5, viio7/Va -1.1, iva -0.6, ivb -0.7, iv7a 0.3, III+b 0.5
minor iiø7c: ic 1, va -1.1, Va 0.7, V7a -1.1, iiob 0.6, iiø7b 0.7, viio7d -0.4, IIIb 0.6, III+b -0.5
minor iiø7d: ia -0.3, vb -0.6, Vb 1.7, V7b 1, V7c -0.1, iiø7c -0.1, viioa -0.4, viio7a -0.4, IIIc -0.5
minor iia: ib -1.2, Ia -1.2, Ib -0.7, va -0.4, Va -1.1, Vb -0.6, V7a -1.7, V7b 0.7, V7d -0.4, iib 0.5, ii7d -0.7, vioc -0.6, viiob 0.6, viiø7a 1.1, viio7b -0.7, IVa 1.1, IVb 1.1, IVc -0.7, IV7b -0.7, IV7d 0.7, III+b -0.5
minor iib: Ib -0.6, Ic 1.4, V7a 0.6, iia -0.2, viø7c 0.7, viiø7c 0.4, viio7/Va -0.5, IVb 1.1, IIIa -0.2
minor ii7a: V7/ivc -0.2, IIIa -0.5
minor ii7b: Va -0.7, iiø7b -0.2, viio/ivb -0.7
minor ii7c: V7b -0.6, IVa -0.7
minor ii7d: Va -0.1, Vb 0.9
minor V/Va: ic 0.5, va 0.2, Va -1.2, V/Vb -0.7, V7/Va -0.2
minor V/Vb: V7a -0.5, V/Va -0.7, V7/Vb 1.1, III+b 0.5
minor V7/Va: V7/ivb -0.5, va -0.2, Va -0.5
minor V7/Vb: ib -0.5, ic -0.6, va 0.3, Va 0.4, V7d -0.1, III+b 0.5
minor V7/Vc: va 0.6
minor V7/Vd: vb -0.8, Va -0.9
minor Fr43b: Va -0.2
minor vioa: Vb 0.8
minor viob: ib -1, va -0.6, Va 0.6, ii7a -0.5, viø7c 0.9, viioa -0.3, viiob 0.2, VIIa -0.1, VIIb -0.3, IIIa -0.6
minor vioc: Va -0.7, V7d -0.6, viiob -0.4, viio7a 0.6, VIIb 1.2
minor viø7a: V7a -0.2, V7b 1.2, iia 0.4, V7/Va 0.5, viioa 1, viiø7a -0.6, IVb -0.1, IV7b 0.9, VIIa -0.5
minor viø7b: ia -0.4, Va 1.4, V/Va 0.5, viiob 1.4, viio7/Vc -0.2, IV7b -0.5, VIa -0.5
minor viø7c: V7c 0.9, iia 0.7, viiob -0.9
minor viø7d: Va -0.6, V7a -0.6
minor viio7/VIIa: VIIa 0.6
minor #via: Ia -0.2, Va -0.5, Vb -0.7, V7b -0.7, iia -0.6, IVa 1.1
minor #vib: viø7b -0.7
minor viio/ivb: V7/iva -0.5, V7a -0.7, viio7/ivc 0.6, iva 0.5, ivb -0.2, IVb -0.6
minor viio/ivc: ivb 0.3, IVa -0.6, IVb -0.6
minor viiø7/iva: iva 0.3, IVa -0.1
minor viiø7/ivc: ivb 0.5, IVb 0.4
minor viio7/iva: V7/ivc -0.1, viio/ivb -0.2, viio7/ivb 1.2, IVa 0.7
minor viio7/ivb: ivb 0.3
minor viio7/ivc: IVb 0.6
minor viioa: ic -0.6, Vb 0.9, V7b -0.4
minor viiob: ia 0.7, ib 0.9, Ia -1.2, Ib 0.2, Va -0.2, Vb 0.1, V7a -0.1, V7b 0.2, V7c 0.5, iioa -0.6, iiob 1.2, viiob -0.5, viio7a 1.2, viio7b 0.6, viio7c -0.6, IVc -0.7
minor viioc: ia 0.7, ib 0.2, Ib -0.2, Va -0.6, viiob -0.4, viio7/Va -0.3
minor viiø7a: ia 0.2, Ia 1
minor viiø7c: ib 0.1, V7d -0.7
minor viio7a: ia 0.7, Ia -1.3, V7/ivd 0.6, Vb 0.6, V7b -1.8, viio7a -0.7, viio7d 0.6
minor viio7b: ia 0.5, ib -0.3, Ia 1.4, Va 1.1, Vb -0.3, V7b 1.2, iiø7a -0.3, viio7a 0.3, III+b -0.5
minor viio7c: ia -0.4, ib 1.5, ic -1.1, Ia 0.5, Ib -0.6, iiø7c -0.4, V7/Vb -0.6, viiob -0.8, viio7/Va 0.8, ivb 0.5, iv7a -0.6
minor viio7d: ic 0.8, imaj7c -0.7, Va -0.3, Vb -0.4, V7a 1.2, viio7c 1.2, IIIa -0.7, VIa -0.6
minor viio/Va: viio/Vc -0.1
minor viio/Vb: Vb -1.3
minor viio/Vc: Va 0.9
minor viiø7/Vb: Va -0.7
minor viio7/Va: ic 0.2, va 0.2, Va 0.9, V7/Vb -1.1
minor viio7/Vb: va 1.2, vb -0.2, Vb 0.8, viio7/Va -0.2
minor viio7/Vc: va -0.4, Va 0.5, Vb -0.6, viio/Vb -0.2, viio7/Vb 1.3
minor viio7/Vd: Va -0.5
minor It6b: Va -0.4
minor Ger65b: ia -0.6, ic 0.1
minor iva: ia 0.5, ib -0.8, ic 0.6, i7b -0.7, Ia -0.8, Ib -0.6, V7/ivc -0.3, va -1.5, Va 0.4, Vb 0.2, V7a 1.4, V7b -0.5, V7c -0.6, V7d 0.9, viiø7/VIa -0.6, iioa -0.6, iiob 0.6, iiø7a -1, iiø7b -0.1, V7/Vb 1.1, viio/ivb -1.2, viio7/iva 0.9, viiob 0.8, viioc -0.7, viio7a 0.2, viio7b 0.9, viio7c -1, viio7/Va -0.6, Ger65b -0.6, iva -0.8, ivb 0.7, ivc -0.2, iv7a -0.5, iv7d -0.1, IV7d 0.7, VIIb -0.2, VII7b -0.1, IIIa -0.4, IIIb -0.7, III+b -0.2, VIa 1.1, VIb -0.6, VIc -0.7
minor ivb: ia 0.2, ib 0.2, ic 1.3, Ia -0.1, V7/iva -0.6, V7/ivb 0.2, V7/ivc 0.5, V7/ivd -0.1, va 0.5, v7a 0.4, Va 0.3, Vb 1.3, V7a -1.1, iioa 0.8, iiob -0.7, iioc 0.1, iiø7b 0.9, iiø7c 0.4, ii7b -0.2, viio7/iva 0.7, viio7a 0.7, viio7c -0.9, viio7d -0.9, It6b -0.4, iva -0.5, ivb -0.5, ivc 1, iv7a -0.1, iv7b 1.6, IVb 0.8, VIIa -1, IIIb -0.3, III+b 0.9, VIa -0.6, VImaj7a -0.1
minor ivc: Ia 1.5, Vb -0.8, V7b -1.1, iv7c -0.3
minor iv7a: ia -0.7, ib -0.6, ic -0.7, va -0.6, Va 1.1, Vb -0.7, V7a 1.1, V7b 0.7, V7c -0.6, V7d -0.9, iiob -0.1, iioc -0.6, iiø7b 0.6, iiø7c -1.1, ii7b -0.4, viiø7/ivc -0.4, viio7a -0.2, viio7c -0.3, viio7/Va 0.6, ivb 0.9, VIIa 0.8, IIIa -0.1, Nb -0.4
minor iv7b: Va 0.6, Vb -0.1, V7b -0.9, iiob 1.2, iioc 0.7, iiø7b -0.1, iiø7c -0.9, viioa -0.5, viio7d 1.5, ivb -0.7, iv7a 0.8, IV7b 1.1, VIIa -0.7, IIIb -0.3
minor iv7c: Vb -0.3
minor iv7d: Vb -0.7, viio7b 0.7, VIIb -1
minor IVa: ia -1.2, Ib -0.6, V7/ivc -0.4, Va -1.3, Vb -0.7, V7a -0.6, V7b 0.2, V7d -0.6, V+a -0.6, iiob -0.7, iiø7a -0.8, iia 0.2, iib 1.4, viø7d -0.7, viiob -0.8, viioc 1.2, viio7a 1.7, viio7/Va 0.7, IVa 1.2, IVb -0.7, IV7b 0.6, IV7d -0.3, VIIb -0.8, III+b 0.9
minor IVb: ia 1.7, Ia -0.4, vb -0.6, Vb 0.2, V7b 1.5, ii7b -0.1, V/Va -0.7, viiø7a 0.8, viio7a -0.9, viio7/Vb -0.5, iva -0.2, ivb -0.8, IVa -0.7, IV7b 0.3, VIIa -0.2, VIa 0.9
minor IV7a: V7d -0.5, iiob -0.6, viiob -0.4, viio7b -0.8, iva 0.6, VIIa 1.5
minor IV7b: vb -0.4, Vb -0.3, V7b 0.4, viioa -0.2, viio7a -0.2, IV7a 1.4, IV7b -0.7, VIIa 0.3
minor IV7d: ia -0.4, iia -0.5, viioa 1.2, viiob -0.3, viio7a -0.6, viio7b 1.1, IV7a -0.4, VIIb 0.3
minor VIIa: ia -0.8, ib -0.7, va 0.9, v7a -0.4, Va 0.2, Vb -0.1, V7a -1, V7b -0.3, iioa 1, iiob 0.7, iiø7a -0.5, iia -0.5, V/Vb -0.4, vioa -0.4, viio/ivb 1.4, viio/ivc -1.1, viiø7/iva -0.1, viiø7/ivc 0.4, viio7/iva -0.3, viioa 0.5, viiob -0.4, viio7a 1.2, viio7/Vb -0.2, iva -0.2, ivb 1.9, IVa 0.4, IVb -0.3, IV7b -0.7, VII7a -0.7, VII7d 0.3, IIIa 0.5, IIIb -1.5, IIImaj7a 0.8, III+b -0.5
minor VIIb: ia -0.2, ib -0.7, va -0.6, Va 0.8, Vb -0.2, V7b 0.7, V7c -0.4, V7d 0.7, iioa -0.5, iiob -0.3, iiø7d 1.2, viio/iva -0.5, viiø7/iva 0.3, viiob 0.6, iva -0.6, ivc -0.4, IVa -0.8, IV7c -0.7, VIIa -0.2, VIIc 0.8, VII7b 1.1, IIIa 1.9, IIImaj7d -0.5, VIb 0.8
minor VII7a: ia -1.2, ib -0.2, Vb 0.4, viio7a -0.5, IIIa -0.7, IIImaj7a -0.7, III+maj7a -0.7, VIa -0.7
minor VII7b: ib -0.7, Vb -0.4, viio/iva -0.4, IIIa 1.8
minor VII7c: V7a -0.3, IIIa -0.7, IIIb -0.7
minor VII7d: va -0.6, v7a -0.6, Va -0.6, V7a 0.9, viio/ivb -0.3, IIIb 1.1, III+b 0.5, VIa -0.3
minor viia: iva 0.8, VIa -0.6
minor IIIa: ia -0.5, ib 0.6, i7c -0.9, Ib 1.4, V7/ivb -0.6, va 2.3, vc -0.9, v7d -0.1, Va -0.9, Vb 0.8, V7a -0.9, V7b 1.2, V7c 0.3, V7d -0.1, iiob 1, iiø7a -0.6, iiø7d 0.1, iia -0.1, iib 1.2, viob -0.3, vioc -0.5, viø7a -0.9, viø7b 0.6, viø7c -1.2, viio7/VIIa -0.7, viio/iva -0.5, viio7/iva -0.2, viioa -1.2, viiob 1, viio7a 0.9, viio7b 0.4, viio7d -0.4, iva 1.3, ivb -1.2, iv7b -0.7, iv7d -0.5, IVa 0.2, IVb 0.6, IV7a -0.7, IV7b 0.3, IV7d 0.4, VIIa 0.4, VIIb 0.2, VIIc -0.7, IIIa -0.9, IIIb 0.9, IIImaj7d -0.7, III+b 0.7, VIa -0.2, VIb 0.2, VImaj7a -0.6
minor IIIb: ia -0.2, ib -0.6, Ic -0.1, V7/ivd 0.6, va -1, v7d -0.7, Vc 1, V7d -0.5, iioa -0.5, iiob -0.9, viø7a 1.5, viiob -0.4, viio7a -0.9, viio7c 0.5, Ger65b -0.6, iva -1.1, ivb 0.2, iv7a -0.6, IVa -0.4, IVb -0.8, IV7b 0.9, VII7b -0.5, IIIa -0.4, IIIc -0.2, IIImaj7a 1.2, III+b 0.5, VIa -0.5, VImaj7a -0.3, Nb -0.6
minor IIIc: #vib -0.7, ivb -0.5, IV7b -0.6, IV7c -0.7, VIb -0.7
minor IIImaj7a: ia -0.7, ic -0.3, Va -1.1, V7a -0.5, V7b 0.6, V7c 0.8, iiø7a 0.3, viiob -0.7, iv7b -0.7, IVa 0.9, VIa 0.8, VImaj7a 0.7
minor IIImaj7d: ia -0.7, VIb -0.5, VImaj7b -0.6
minor V7/VIa: Ib 0.4, V7/Va -0.6, iva -0.6, VIa 1.2, VImaj7a -0.5
minor V7/VIb: VIa -0.7
minor V7/VId: ia -0.6
minor III+a: viiob -0.7, IV7b -0.7
minor III+b: ia -0.5, ib 0.4, Va 0.1, V7a 0.6, V7d -0.6, iiø7b -0.7, iiø7c -0.4, viø7a 1.1, viio/Vb -0.7, ivb -0.8, iv7b 1.1, III+maj7a 0.7, VIa 0.5
minor III+maj7a: ia -0.5, V7a -0.7, ivb 1.2, VIb -0.6, VImaj7a -0.2
minor III+maj7b: ib 0.6
minor VIa: ia -0.9, ib 0.1, Ic 0.9, va -0.6, vb 1.3, Va 0.3, Vb -0.9, V7a 0.2, iiob 0.5, iioc -0.8, iiø7a -1.3, iiø7b 0.7, V/Vb 0.2, V7/Vb 0.3, viio7/VIIa -0.2, viio/iva 1.2, viio7/iva -0.6, viio7/ivb -0.6, viio7b -0.1, viio7d -0.7, viio7/Va -0.4, iva 0.8, ivb -0.7, iv7a 0.7, iv7b -0.5, IVb -0.6, IV7b 1.4, VIIa -0.7, VII7a -0.7, VII7d -0.4, IIIa 0.9, VIc -0.7, VImaj7a 1, VImaj7d -0.7, Na -0.6
minor VIb: ia -0.9, vb 1.1, vc -0.4, Vb 0.6, V7b -0.6, V7c -0.6, iioa 0.1, iiø7a -0.2, iiø7d 0.8, viiob 0.1, viio7b 0.5, ivb -0.5, ivc -0.5, iv7b 0.5, VIIb 1, IIIa -1.2, V7/VIb -0.1, VIa -0.7
minor VIc: iioa -0.6
minor VImaj7a: ic 0.4, Va -0.5, iiob -0.3, iiø7b -0.1, iiø7c 1.3, V7/Vb 0.3, iva 1.3, ivb 0.1, iv7a -1, iv7b 0.5, IVb -0.4, III+b -0.6
minor VImaj7b: V7b -0.6, iioa 0.9, iiø7d -0.6
minor VImaj7d: Va -0.6, iiob -0.2, ivb -0.3
minor VI7a: ivb 1.1
minor VI7d: iva -0.7
minor Na: ia -0.7, Vb -0.2, V7b -0.6
minor Nb: viio7/Va 0.7, VIa -0.2
minor bIImaj7b: bIImaj7b -0.7
# root to root
major -4: -4 -0.7, 1 -0.3, 2 -0.6
major -3: 1 -0.5, 4 1.2, 5 -0.3
major -2: -2 -0.7, -1 -0.6, 0 -1.5, 1 0.1, 2 -0.1, 3 -1, 5 1.5
major -1: -2 -0.3, -1 0.5, 0 0.5, 1 1.2, 2 0.7, 3 -0.5, 4 0.6, 5 0.6, 6 -0.7, 7 0.9
major 0: -4 -0.6, -3 -0.5, -2 -0.8, -1 0.9, 0 0.2, 1 0.6, 2 0.7, 3 0.8, 4 0.7, 5 0.3, 6 0.9, 7 -1.2, 8 0.5
major 1: -4 0.1, -2 0.7, -1 1.1, 0 1.3, 1 0.9, 2 -1.3, 3 0.2, 4 0.4, 5 -1.3, 6 0.2, 7 0.1, 8 0.8
major 2: -1 -1.9, 0 -0.4, 1 1, 2 0.8, 3 -1.1, 4 -0.6, 5 1.2, 6 -0.5, 7 -0.4, 8 0.2, 9 1.1
major 3: -2 0.6, -1 0.3, 0 -0.3, 1 -0.1, 2 0.8, 3 0.4, 4 -1.9, 5 -2, 6 1, 7 -0.1, 8 0.3
major 4: -4 -0.7, -1 -0.2, 0 -1, 1 -0.8, 2 -0.6, 3 -0.9, 4 0.9, 5 -0.3, 6 -0.5, 7 1.1
major 5: -1 0.5, 0 1.3, 1 -0.4, 2 -1.1, 3 -0.7, 4 -0.5, 5 -0.1, 6 -0.7, 8 -1.2, 9 -0.9
major 6: 0 -0.8, 1 0.7, 2 -0.3, 3 -0.4, 4 -1.1, 5 -1.2, 6 0.2, 8 -1.2
major 7: -1 -0.4, 2 1.2, 3 -0.1
major 8: 0 -0.2, 2 -0.3, 3 0.4, 4 -1.1
minor -5: -5 -0.7, -4 -0.2, 0 -0.7, 1 -0.8, 6 0.7
minor -4: -5 -0.6, -4 -0.7, -3 -0.3, -2 -0.5, -1 0.4, 0 -0.3, 1 0.2, 2 0.2, 3 -0.2, 4 -0.1, 5 -0.3, 6 -0.4
minor -3: -5 -0.6, -4 -0.9, -3 0.2, -2 -0.3, -1 -0.6, 0 -1.2, 1 -0.1, 2 -0.4, 3 -0.7, 4 -0.6, 5 -0.5, 6 -1.2
minor -2: -4 -0.6, -3 0.2, -2 0.8, -1 -0.4, 0 -2.4, 1 -0.1, 2 1.2, 3 -0.4, 4 -0.6, 5 1.3, 6 0.6
minor -1: -5 -0.4, -4 -0.2, -3 -0.3, -2 -0.7, -1 1.5, 0 -0.4, 1 0.2, 2 0.1, 3 -0.7, 4 0.3, 5 1.7, 6 -0.5
minor 0: -5 1.1, -4 0.7, -3 -0.9, -2 0.9, -1 0.6, 0 0.3, 1 0.7, 2 0.7, 3 1, 4 -0.7, 5 1.1, 6 0.4, 7 -0.7
minor 1: -4 0.7, -3 -0.2, -2 -0.7, -1 0.5, 0 0.6, 1 0.7, 2 -1.7, 3 0.3, 4 0.9, 5 0.1, 6 -0.5
minor 2: -3 -0.8, -2 -1.2, -1 -0.8, 0 -0.4, 1 0.6, 2 1.8, 3 0.2, 4 -0.7, 5 0.3, 6 -0.4
minor 3: -4 -0.5, -3 -0.6, -2 0.5, -1 1.3, 0 -1.5, 1 -0.1, 2 0.6, 5 0.9, 6 -0.2
minor 4: -1 0.8, 0 -0.6, 1 -0.7, 4 1.5
minor 5: -4 -0.6, -3 -1.1, -1 -0.8, 0 1.2, 1 -0.4, 2 -0.1, 5 0.4, 6 0.6
minor 6: 0 -0.2, 1 0.3, 2 -1.1, 6 1
# bass to bass
major -4: -1 -0.6, 1 0.2, 3 0.6
major -3: -1 -0.3, 0 -0.2, 2 -0.9, 4 0.3, 6 -0.2
major -2: -4 -0.1, -1 -0.9, 0 -1.9, 1 1, 2 0.6, 3 0.5, 4 -0.7, 7 -0.6
major -1: -3 -0.4, -2 -1.2, -1 -0.9, 0 -1.4, 1 -0.5, 2 1, 3 0.1, 4 0.3, 5 0.6, 6 1.6, 7 1.2, 8 0.1
major 0: -4 -0.6, -3 -0.7, -1 2.3, 0 -1.8, 1 0.5, 2 -0.3, 3 0.4, 4 1.3, 5 -0.2, 6 -0.8, 7 -0.7, 8 1.2
major 1: -4 0.7, -2 -1.4, -1 0.1, 0 1.4, 1 -1.1, 3 0.5, 4 -0.8, 5 -0.6, 6 1.5, 7 -1.1, 8 0.2
major 2: -3 -0.7, -1 -0.3, 1 0.7, 2 -0.5, 4 -0.6, 5 -0.1, 8 -0.7, 9 0.1
major 3: -4 0.2, -2 1.2, -1 1.1, 1 0.4, 3 -0.5, 4 0.6, 5 0.1, 6 0.8, 7 0.4, 8 -1.4, 9 -0.7
major 4: -3 -0.6, 1 0.4, 2 -0.8, 3 0.5, 4 -0.9, 5 -0.2, 6 -1, 7 0.7, 8 -0.7
major 5: -2 2.3, 0 0.3, 1 1.4, 2 -0.5, 3 0.9, 4 -0.4, 5 -0.8, 7 -0.4, 8 -2
major 6: -1 -0.9, 1 0.8, 2 0.8, 4 -0.5, 6 -0.2, 8 0.3
major 7: 2 -1.2, 3 0.4, 4 -0.7, 7 0.2
major 8: 0 -0.2, 3 -0.7, 4 1.2, 6 -0.4, 8 0.2
major 9: 1 -0.7
minor -6: -1 -0.7
minor -5: 0 -1.2, 5 -0.8
minor -4: -5 -0.6, -4 -0.2, -3 -0.3, -2 -1.4, -1 1.7, 0 -0.9, 1 1.7, 2 -0.7, 3 1.3, 4 1, 5 -0.7, 6 0.2
minor -3: -4 0.5, -3 -2, -2 -0.5, -1 -0.4, 0 0.1, 1 0.7, 2 0.7, 3 -0.2, 4 1.7, 5 1.2, 6 -0.1
minor -2: -4 -0.5, -3 -0.5, -2 -1.6, -1 1.1, 0 -1, 1 -0.3, 2 -0.3, 3 -0.8, 4 -0.4, 5 -0.4, 6 -0.4
minor -1: -4 -0.6, -3 -0.1, -2 1.7, -1 -1, 0 -0.9, 2 1.5, 3 0.6, 4 -0.5, 5 1.2, 6 0.9
minor 0: -5 -0.7, -4 0.4, -3 1.4, -2 0.1, -1 1, 0 -1.2, 1 0.2, 2 1.2, 3 0.1, 4 -0.3, 5 0.1, 6 1.6, 7 -0.7
minor 1: -4 1.1, -3 -0.1, -2 1.3, -1 -0.7, 0 0.7, 1 -0.1, 2 0.2, 3 1, 4 -1.1, 5 -0.4, 6 0.2
minor 2: -3 0.3, -2 -0.2, -1 -0.1, 1 0.1, 2 -0.2, 3 0.2, 4 -0.8, 5 0.9, 6 -0.7
minor 3: -4 0.2, -2 -0.6, -1 0.7, 0 1.4, 2 -0.5, 3 -0.3, 5 0.6, 6 -0.2
minor 4: -3 0.3, -1 0.1, 0 -0.3, 1 0.9, 2 -0.7, 4 1.2, 5 1.2, 6 -0.3
minor 5: -4 0.5, -2 0.6, 0 0.7, 1 0.6, 3 -0.2, 5 -0.6
minor 6: -3 -0.5, -1 -0.1, 0 -0.1, 1 1.4, 2 -0.7, 6 -0.2
minor 8: 3 -0.1
# progression into a phrase
major strange: iii7 -0.7
major I: I 2, V7/IV 0.7, V 2.1, V7 -0.2, v 0.5, ii -0.3, ii7 1.1, V/V 0.3, V7/V 0.6, vi 1, vi7 1.8, V/ii 0.6, V/vi -0.5, viio -0.2, viio/V -0.2, viio7/V -0.6, IV 0.8
major V7/IV: IV 0.4
major i: V7/IV -0.1
major V: I 0.4, Imaj7 -0.5, V7/IV -0.4, V 1, V7 -0.2, vo -0.6, ii 0.3, V7/V 0.7, vi 0.1, V7/ii 0.5, iii -0.6, V/vi 1.6, viio/IV 0.2, viiø7/IV -0.2, viio7/ii -0.4, IV -0.7
major V7: I 0.9
major v: I -1, V -1.6, v -0.6, ii 1.3, IV 1.1
major ii: strange -0.3, I -1.7, V 0.9, V7 0.8, ii -0.4, V/V 1, vi 1.1, iii -0.4, V/vi -0.6, viio -0.7, viio/V -0.7, IV -0.1, bVII -0.6, bVIImaj7 -0.3
major ii7: I -0.4
major V/V: V -0.4, V7 0.6, v 1.2, ii -0.3, V/V 0.3, iio 0.6, vi 0.2, V/vi -1, IV -0.7
major iio: vi -0.7
major vi: I -0.3, V7/IV 1.1, V 1.1, ii 1.3, V/V 0.5, vi 0.3, iii -0.7, viio -0.3, V/iii -0.7, IV 1.5, bVII -0.7
major V/ii: I 1.8, V7/IV -0.9, V -0.5, ii 0.6, vi -0.9, V/ii -0.7, V/vi -0.7, viio -0.4, IV -0.8
major iii: I -1.3, V -0.3, V7 -0.5, V/V -1, iii -0.7, viio 1, vii -0.3, viio/V 0.3, IV 1.1
major V/vi: I 0.5, V -1.1, V7 0.9, ii -0.4, V/V -0.2, vi -0.6, iii -0.5, V/vi -0.7, viiø7/V -0.7, IV 0.9
major V7/vi: vi -0.7
major viio: I 1.2, V 0.6
major V/iii: iii -0.1
major IV: I -1.1, i -0.5, V 1.4, ii 0.2, vi 0.6, V/ii -0.5, viio -1.6, viio7 -0.1, viio/ii -0.7, IV 0.4, IVmaj7 -0.7
major iv: I -0.8
major bVII: I -1.2, V 0.4, v7 -0.7
major bIII: I -0.4
major bVImaj7: bVImaj7 -0.7
minor strange: V -0.1, V/V -0.6, #vi -0.7
minor i: i 1.6, I -1.7, V7/iv -0.7, v 1.1, V 0.4, ii 1.2, V/V 0.7, iv 1.1, IV -0.7, III 0.6, V7/VI -0.7, VI 1.7
minor I: i 0.4, I 1.2, V 0.7, V7 -0.6, iio -0.2, viio7 -0.7, iv -1.2, IV -1.4, VII -0.1, VI -0.6
minor v: v -1.6, V 1.4, V7 0.9, ii -1.3, viio 0.6, IV -0.4, III -0.4, IIImaj7 -0.7, VI -0.5
minor V: i 0.8, I 0.9, V7/iv -0.7, v 1.3, V 1.7, viø7 0.6, viio/iv 0.6, iv -0.9, IV -0.8, III -0.8, III+ -0.7, VI 0.8, N 0.7
minor V7: i 1.1, IV -0.6
minor ii: V -0.4, V7 -0.8, viio 0.7, III+ 0.6
minor V/V: i -0.3, I 0.6, v -0.4, V -1, viio -1.2
minor #vi: viio/iv -0.5
minor viio7: i 0.6
minor iv: i -0.8, I -0.4, v -0.9, V 0.6, iv 1, VII -0.6, III 1.1, VI -0.3
minor IV: i -0.6, V 1, V7 1.2, ii -0.2, V/V -0.7, iv 1.1, IV 1.6, VII -0.1, VI -0.7
minor VII: i -1.5, v -0.7, V -0.6, vio -0.7, iv 1, IV 0.6, VII7 -0.7, III -1.7
minor vii: iv -0.5
minor III: i -0.4, i7 -0.6, I -0.4, V 0.8, vio -1, viio7/VII 0.7, IV -0.2, IV7 -1.1, VII -1.2, III -1.3
minor V7/VI: VI -0.1
minor VI: i -0.6, viio/iv 0.7, iv 1.5, VI -0.9
minor bIImaj7: iv7 -0.7
# cadence
major I: I -1.7, V7/IV -0.1, V 1.5, V7 -0.4, ii7 -0.4, vi -0.4, iii -0.3, IV 0.2, iv -0.1
major Imaj7: I -0.6, IV 0.2
major V7/IV: I -0.5, V7/IV -0.2, ii -0.1, viio/V 0.9, IV 0.8
major V: I 1.5, Imaj7 -0.7, i 1, V -1.6, V7 0.1, vi 1.9, bVI 0.1
major V7: I 0.9, Imaj7 -0.6, i -0.5, vi -0.1
major ii: V -0.7, vi 1, V/ii 0.6, iii 1, V/vi -0.3
major ii7: I -0.9, V -0.7, V/vi 1.2, V7/vi -0.7
major V/V: V -0.1
major V7/V: V 0.1
major vi: I -0.4, V -1, vi 0.6, V/vi -0.5
major vi7: vi -0.5
major V/ii: ii -0.7, V/V -0.5
major V7/ii: ii -0.7
major V/vi: vi 0.1, V/ii -0.7
major V7/vi: vi -0.5
major viio/IV: V/ii -0.7, IV -0.7
major viio: I 0.1, V7/IV -0.7, V -0.5, vi -0.6, V/ii -0.7, V/vi -0.6
major viiø7: I 0.6
major V7/iii: iii -0.1, viio/IV -0.7
major viio/V: V 0.7, v -0.7
major viiø7/V: V 0.6, vi -0.4
major viio/ii: ii -0.5
major viio/vi: I -0.2
major viio7/vi: vi -0.9
major viio7/iii: iii 1.1
major IV: I -0.3, V7/IV 1.1, V 1.1, V7 1.2, ii7 -0.6, viio 1.2
major IVmaj7: V -0.4, V/vi -0.5
major IV7: viio -0.4
major iv: I -0.3
major bVII: IV -0.6
minor i: i -2.1, I -0.9, v 1, V 0.1, V7 0.7, viø7 -0.3, viio -0.8, VI -0.6
minor I: i -0.7, V7/iv 1
minor V7/iv: V7/iv -0.7, iiø7 -0.6, iv 2
minor v: V7/iv 0.2, V -0.4, IV -1.1
minor v7: i -0.6
minor V: i 1.4, I 0.3, V -0.9, V7 -1.1, viø7 -0.6, viio7 0.6, IV 1.3
minor V7: i 0.7, I 1, V7 0.7, viø7 -0.4, viio -0.1
minor iio: i -0.3, v -0.5, V -0.1
minor iiø7: i 1.1, v -0.7, V 0.7, V7 -0.1, iv -0.6
minor ii: V7 0.4
minor V/V: v 0.5, V -0.7
minor V7/V: v 0.7, V -0.6
minor vio: v -0.6, V7 -0.6
minor viø7: i -0.4, V -0.8
minor viio/iv: iv 0.3
minor viiø7/iv: IV -0.1
minor viio7/iv: iv -0.1
minor viio: i -0.6
minor viiø7: I 1
minor viio7: i -0.5, I 0.7, V -0.3
minor viio/V: V 0.9
minor viio7/V: v -0.9, V 1.4
minor It6: V -0.4
minor iv: i -0.2, I 0.3, V7/iv 0.9, v -0.4, V 1.1, V7 -0.7, iv 1.8
minor iv7: i -0.7, V 1.3, V7 0.7
minor IV: i -0.7
minor IV7: ii -0.6
minor VII: V7 0.4, III -0.9
minor VII7: i -0.7, V7 -0.3, III -0.7
minor III: v -0.5, III -0.7
minor IIImaj7: V -0.6, viio -0.7
minor VI: V -0.8, V/V 0.2, viio 0.1, III -0.8, V7/VI -0.1
minor VImaj7: V -0.3
minor N: V -0.2
# relation
same: 1 -2.6, 2 -4, 3 -2.7, 4 -2.9
turned: 1 4, 2 2.4, 3 -0.8, 4 -0.1
seventh_added: 1 2.6, 2 1.9, 3 0.1, 4 -0.2
seventh_dropped: 1 -2.6, 2 -1.2, 3 1.2, 4 -0.4
quality_changed: 1 -0.8, 2 0.1, 3 -0.5, 4 -0.8
third_apart: 1 -1.2, 2 0.1, 3 -0.2, 4 0.7
fifth_up: 1 -1.6, 2 0.6, 3 1.5, 4 1
fifth_down: 1 -1.3, 2 0.2, 3 0.9, 4 0.7
step_up: 1 -1.4, 2 0.1, 3 1.7, 4 0.8
step_down: 1 -2.3, 2 -0.6, 3 -0.1, 4 0.4
tritone: 1 -0.3, 2 0.2, 3 -0.5, 4 0.8
# key change
phrase_start major major: -3 -0.7, -2 -1.7, -1 0.1, 1 0.4, 2 -1.8, 3 -0.4
phrase_start major minor: -1 -1.2, 0 -0.1, 1 0.4, 2 -0.7, 3 -1.1, 4 0.4
phrase_start minor major: -5 -0.6, -4 -0.1, -3 0.2, -2 0.4, -1 -0.3, 0 0.6, 1 -0.7
phrase_start minor minor: -4 -0.6, -3 -0.5, -2 -0.9, -1 0.3, 1 -0.7, 2 -0.6, 3 -1.1
within major major: -3 1.5, -2 -2.5, -1 -1.7, 1 -1.8, 2 -0.5, 3 -1.2
within major minor: 0 -2.6, 1 -2.9, 2 -2, 3 -1.6, 4 -2.3, 5 -2.1
within minor major: -5 -0.5, -4 -2.1, -3 -1.6, -2 -0.8, -1 -1.6, 0 -2, 1 -1.6
within minor minor: -4 -0.7, -3 -1.2, -2 -0.9, -1 -1, 1 -0.9, 2 -1.1, 3 -0.9
goal major major: -1 -2, 1 -1.3
goal major minor: 1 -0.7, 2 -0.7, 3 -0.7
goal minor major: -4 -0.9, -3 -1.2, -2 -2.2, -1 -1.5, 0 -1
goal minor minor: -2 -0.7, -1 -1.3, 1 -1.9, 2 -1.2
# key entered with
major: strange -0.3, I -1.4, Imaj7 -0.4, V7/IV -0.7, i -0.5, V -1.8, V7 -0.7, v 0.1, v7 -0.7, vo -0.6, ii -0.3, ii7 -2.7, V/V -0.4, V7/V -1.5, iio 0.6, iiø7 -1, vi -1.2, vi7 -0.5, V/ii -1.1, V7/ii -0.8, iii -1.8, iii7 -1.5, V/vi 0.1, V7/vi -0.9, viio/IV -1.2, viiø7/IV -0.2, viio7/IV 1.2, viio -0.8, viiø7 -1, viio7 -0.9, V/iii -0.7, V7/iii -0.7, vii -0.3, viio/V -1.3, viiø7/V -1.1, viio7/V -0.6, viio/ii -0.6, viio/vi -0.7, viio7/vi -1, IV -1.4, IVmaj7 -0.1, IV7 -0.2, bVII -1.1, bVIImaj7 -1.1
minor: i -1.1, i7 0.5, imaj7 -0.7, I -1.4, V7/iv -1.5, v -1.9, v7 -1.7, V -1.4, V7 -1.4, viio/VI -0.4, iio 0.1, iiø7 -0.9, ii -1.2, ii7 -1.4, V/V -1.3, V7/V 0.1, vio -0.9, viø7 -1.9, viio7/VII -0.1, #vi -1.3, viio/iv 0.7, viiø7/iv 0.9, viio7/iv -1.1, viio -1.1, viiø7 -0.7, viio7 -0.9, viio7/V -0.7, Ger65 -0.6, iv -0.6, iv7 -0.6, IV -0.1, IV7 -0.6, VII -2, VII7 -1.9, III -1.5, IIImaj7 -1.2, III+ -0.3, III+maj7 -0.9, VI -1.2, N -0.6
# key prepared by
major: strange -1.3, I -1.7, Imaj7 -1.1, V7/IV -1.9, i -1.5, V -1.1, V7 -1.5, v -1.4, v7 -0.7, V+ -0.7, ii 0.6, ii7 -0.8, V/V -2, V7/V -2.5, iio -1.3, iiø7 -0.6, vi -0.4, vi7 -0.8, V/ii -1.3, V7/ii -1.7, viø7 -0.7, iii -0.5, iii7 -1.2, V/vi -1.6, V7/vi -0.2, viio/IV -1.5, viiø7/IV -1.2, viio 0.3, viiø7 -2.2, V/iii -0.1, V7/iii -0.1, vii -0.5, viio/V -1.1, viiø7/V -1.8, viio7/V -0.6, viio7/ii -0.2, viio7/vi -1.1, viio7/iii -0.1, IV -0.3, IVmaj7 -1.1, IV7 -0.8, iv -2.1, bVII -1.4, bVIImaj7 -0.6, bIII 0.9
minor: strange -1.3, i -1.1, i7 -0.7, I -1.6, V7/iv -2, v -0.5, v7 -0.1, V -1.9, V7 -2, viio/VI -1.6, viiø7/VI -0.7, iio -0.8, iiø7 -1.5, ii -1, ii7 -0.9, V/V -2.8, V7/V -1.4, viø7 -1.3, viio7/VII -0.1, #vi -2.1, viio/iv -1.3, viio7/iv -0.1, viio -1.6, viiø7 -0.5, viio7 -2, viio7/V -0.6, iv -0.4, iv7 -1.4, IV -1.9, IV7 -2.9, VII -1, VII7 -1.7, vii 0.5, III -0.6, IIImaj7 0.1, V7/VI -0.8, III+ -0.7, VI -1.9, VImaj7 -0.4, VI7 -0.7, N -0.9
# key left for
major: strange -2.3, I -2, Imaj7 -1.4, V7/IV -1.3, i 0.1, I+ 0.8, V -2.2, V7 -2.3, v -0.2, v7 0.8, V+ -0.6, ii -1.1, ii7 -0.6, V/V -1.4, V7/V -0.7, iiø7 -0.2, vi -1.6, vi7 -0.7, V/ii 0.6, V7/ii -1.1, vio -1, viø7 -0.2, iii -0.4, iii7 -1.8, V/vi -1.5, V7/vi -0.7, viio/IV -1, viiø7/IV -0.9, viio -1.1, viiø7 -1.1, V/iii -1.5, V7/iii -0.1, vii -1.6, viio/V -0.4, viiø7/V -0.4, viio7/V -1.4, viio/ii -2.1, viiø7/ii 0.1, viio7/ii -0.3, viio/vi 1, viio7/vi -0.4, viio/iii -0.5, viio7/iii -1, IV -2.2, IVmaj7 -0.8, IV7 -0.5, iv -0.7, bVII -0.5, bVIImaj7 0.1, bVII7 1.2, bIII -0.6
minor: strange -2.1, i -1.9, i7 -1.6, I -2.5, V7/iv -1.7, v -0.9, v7 -0.9, V -2.3, V7 -0.9, viio/VI -0.2, iio 0.1, iiø7 -1.1, ii -0.5, V/V -1.1, V7/V -1.9, vio -1.6, viø7 -1.1, #vi -0.6, viio/iv 0.4, viiø7/iv -0.7, viio7/iv -0.4, viiø7 -0.9, viio7 -0.3, viio/V -0.1, viio7/V -0.5, #io7 -0.7, iv -1.4, iv7 -1.4, IV -0.5, IV7 -0.6, VII -1, VII7 -1, vii -1.3, III -0.9, IIImaj7 -1.1, V7/VI -0.5, VI -1.8, VImaj7 0.1, N -0.9, bIImaj7 1
# key left
phrase_start 1 nothing: narrow -2.5, broad -0.7
phrase_start 2 nothing: narrow -1.4, broad -0.4
phrase_start 2 dominant_to_tonic: narrow -2.6
phrase_start 3 nothing: narrow -0.1, broad -1.5
phrase_start 3 dominant_to_tonic: narrow -1.8, broad 0.9
phrase_start 3 phrase_end: broad -0.7
phrase_start 4 nothing: narrow -0.1, broad -0.5
phrase_start 4 dominant_to_tonic: narrow 0.8, broad -0.3
phrase_start more nothing: broad -0.8
phrase_start more dominant_to_tonic: narrow -0.2, broad 1.1
phrase_start more phrase_end: broad 0.8
within 1 nothing: narrow -2, broad -2
within 2 nothing: narrow -2.2, broad -2.6
within 2 dominant_to_tonic: narrow -3
within 2 phrase_end: narrow -0.9, broad -0.7
within 3 nothing: narrow -1.2, broad -1.7
within 3 dominant_to_tonic: narrow -1.3, broad -2.2
within 3 phrase_end: narrow -0.9, broad -0.7
within 4 nothing: narrow -0.6, broad -1.2
within 4 dominant_to_tonic: narrow -0.5, broad -1.2
within 4 phrase_end: narrow -1.9, broad -0.3
within more nothing: narrow -0.4, broad -0.7
within more dominant_to_tonic: broad -0.1
within more phrase_end: narrow -0.2
goal 1 nothing: narrow -1.2, broad -1.3
goal 2 nothing: narrow -1.3, broad -1.7
goal 2 dominant_to_tonic: narrow -1
goal 3 nothing: broad -3
goal 3 dominant_to_tonic: narrow -0.9, broad -1.7
goal 4 nothing: broad -1.1
goal 4 dominant_to_tonic: narrow -1.2, broad -0.4
goal more nothing: broad 0.3
goal more dominant_to_tonic: broad -2.1
goal more phrase_end: broad 0.4
# signature
major: -3 -1.5, -2 -1, -1 -0.1, 0 1.3, 1 1.1, 2 0.4, 3 -1.5, 4 -0.7, 5 -0.9
minor: -5 -0.9, -4 -1.8, -3 -1.3, -2 -0.7, -1 -0.2, 0 0.9, 1 0.1, 2 -1.3, 3 -0.9
# stated mode
major: major -0.2, minor -0.5
minor: major 0.2, minor 0.5
# first chord
major: I 2.9, V -1.6, V7 2.1, v 1.2, ii -1.3, vi -3, vi7 -0.6, V/ii -0.7, V/vi -0.9, V7/vi -0.5, IV -3.1, IVmaj7 -0.4
minor: i 4.7, I -0.7, V 1.9, V/V 0.4, V7/V -0.8, iv -1.5, III -0.1, bIImaj7 -0.7
# last chord
major: I 0.1, V -0.4, vi -0.6, V/ii -0.7, IV -0.2, bVImaj7 -0.7
minor: i -1.9, I 1.7, V7/iv -0.7, V 1.2, V7 -0.1
# last key
major: 0 0.1, 1 0.5, 2 -0.2, 3 -1.3, 4 -0.6, 5 -0.7
minor: -3 -0.8, -2 -0.2, -1 -0.7, 0 3, 1 -0.2, 2 -0.3
# last chord of a phrase
major: I 1.7, V7/IV 0.4, i 0.7, V 0.8, V7 0.9, v -0.7, ii -1.7, ii7 -0.4, V/V -0.5, vi 0.3, V/ii -0.8, iii 1.6, V/vi -0.4, V7/vi -0.7, viio/IV -0.7, viio 0.9, viio/V 0.9, IV -0.5, iv -0.1, bVI 0.1, bVImaj7 -0.9
minor: i 0.8, I 1.1, V7/iv -0.7, v -0.6, V 1.3, V7 0.5, ii -0.6, V/V 0.2, viio7 0.6, iv -0.2, iv7 -0.7, IV 0.9, III -1.6, V7/VI -0.1, VI -0.6, bIImaj7 -0.7
# note in key
major: -5 0.3, -3 -1.4, -2 -3.3, 0 0.3, 2 0.4, 3 0.1, 4 0.2, 6 -2.3, 7 -2, 8 -1.6, 9 -1.9
minor: -6 -1.5, -5 -0.9, -4 -0.9, -3 -0.2, -2 -1.1, -1 -0.5, 0 0.7, 1 0.5, 2 0.5, 3 -0.6, 4 0.2, 5 1, 6 0.1, 7 -1, 8 -0.6
# note in phrase
major: -5 -0.6, -4 -1.2, -3 -1.9, -2 -2.1, -1 -0.7, 1 0.1, 3 0.7, 4 1.3, 5 0.2, 6 -2.5, 7 -1.4, 9 -3.1
minor: -7 0.2, -6 -1.1, -4 -0.7, -3 0.8, -2 -0.6, -1 -0.7, 0 0.7, 1 0.6, 2 0.3, 3 -0.7, 4 -1, 5 0.9, 6 -1.9, 7 -0.6, 8 -1.1, 10 -0.1
# last bass of a phrase
major: -5 -1.1, -4 1.1, -2 1, -1 -0.2, 0 -0.2, 1 -0.2, 2 -1.1, 3 -1.5, 4 -1.2, 5 -0.3, 6 -0.6, 8 -0.3, 9 -0.8
minor: -7 0.4, -3 -0.1, -2 -0.3, -1 -0.1, 0 0.3, 1 0.1, 2 -0.2, 3 0.5, 5 0.4, 6 0.3
# last melody note of a phrase
major: -3 1.4, -1 -0.3, 0 0.1, 2 -0.1, 3 0.2, 4 0.5, 5 0.6, 6 0.9, 7 -0.6, 8 -0.9
minor: -3 -1.5, -2 -1, -1 -0.3, 0 -0.1, 1 -0.4, 2 -0.5, 3 -0.5, 4 -0.7, 5 0.4
`;
