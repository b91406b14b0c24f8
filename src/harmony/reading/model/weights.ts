/**
 * The weights of the reading, by family of features and by name (see layout.ts). Written by
 * tests/bench/harmony-training.ts, not by hand: averaged perceptrons over the open chorales and their human
 * analyses (D. Tymoczko and colleagues, as published in the When in Rome meta-corpus). Only sums are compared, so
 * the unit has no meaning; greater is likelier.
 */
export const TABLE = `
# tone by shape
root: none>none 0.03, none>repeated 0.49, none>step_up 0.08, none>step_down 0.3, none>leap 0.68, none>held -0.42, repeated>none 0.37, repeated>repeated 0.54, repeated>step_up 0.49, repeated>step_down 0.29, repeated>leap 0.7, repeated>held -0.26, step_up>none 0.23, step_up>repeated 0.43, step_up>step_up 0.43, step_up>step_down 0.25, step_up>leap 0.46, step_up>held 0.18, step_down>none -0.16, step_down>repeated 0.23, step_down>step_up 0.45, step_down>step_down 0.07, step_down>leap 0.55, step_down>held 0.08, leap>none 0.36, leap>repeated 0.42, leap>step_up 0.19, leap>step_down 0.64, leap>leap 1, leap>held 0.2, held>none -0.07, held>repeated -0.06, held>step_up -0.21, held>step_down -0.04, held>leap 0.09, held>held -0.21
third: none>none -0.03, none>step_up 0.09, none>step_down 0.14, none>leap -0.21, none>held -0.19, repeated>none -0.49, repeated>repeated 0.15, repeated>step_up 0.12, repeated>step_down -0.02, repeated>leap 0.08, repeated>held 0.01, step_up>none 0.2, step_up>repeated 0.29, step_up>step_up 0.36, step_up>step_down 0.15, step_up>leap 0.14, step_up>held -0.16, step_down>none 0.29, step_down>repeated 0.28, step_down>step_up 0.31, step_down>step_down 0.28, step_down>leap 0.32, step_down>held -0.12, leap>none 0.03, leap>repeated 0.35, leap>step_up 0.3, leap>step_down -0.02, leap>leap 0.31, leap>held -0.22, held>none -0.21, held>repeated -0.32, held>step_up 0.13, held>step_down -0.17, held>leap -0.09, held>held -0.42
fifth: none>repeated -0.33, none>step_up 0.53, none>step_down 0.24, none>leap 0.22, none>held -0.29, repeated>none -0.19, repeated>repeated 0.24, repeated>step_up 0.46, repeated>step_down 0.14, repeated>leap 0.55, repeated>held -0.24, step_up>none 0.06, step_up>repeated 0.04, step_up>step_up 0.16, step_up>step_down 0.16, step_up>leap -0.09, step_up>held -0.1, step_down>none 0.07, step_down>repeated 0.54, step_down>step_up 0.39, step_down>step_down 0.15, step_down>leap 0.17, step_down>held -0.12, leap>none -0.41, leap>repeated 0.09, leap>step_up 0.33, leap>step_down 0.36, leap>leap 0.14, leap>held -0.1, held>none -0.3, held>repeated -0.47, held>step_up 0.15, held>step_down 0.08, held>leap -0.07, held>held -0.17
seventh: none>repeated -0.26, none>step_up -0.32, none>step_down 0.22, none>leap -0.07, none>held -0.04, repeated>none 0.2, repeated>repeated -0.5, repeated>step_up -0.41, repeated>step_down 0.24, repeated>leap -0.09, repeated>held 0.03, step_up>none -0.01, step_up>repeated -0.2, step_up>step_up -1.15, step_up>step_down 0.29, step_up>leap 0.11, step_up>held -0.14, step_down>none -0.12, step_down>repeated -0.37, step_down>step_up -0.72, step_down>step_down 0.21, step_down>leap -0.69, step_down>held 0.08, leap>none -0.18, leap>repeated -0.05, leap>step_up -0.75, leap>step_down 0.34, leap>leap -0.27, leap>held -0.33, held>none -0.09, held>repeated -0.32, held>step_up -0.53, held>step_down 0.04, held>leap -0.26, held>held -0.45
foreign: none>repeated -0.1, none>step_up -0.4, none>step_down -0.26, none>leap -0.15, none>held 0.36, repeated>none 0.12, repeated>repeated -0.75, repeated>step_up -0.56, repeated>step_down -1.46, repeated>leap 0.04, repeated>held -1.03, step_up>none -0.3, step_up>repeated -0.47, step_up>step_up -0.41, step_up>step_down -0.41, step_up>leap -0.33, step_up>held -0.74, step_down>none -0.24, step_down>repeated -0.69, step_down>step_up -0.32, step_down>step_down -0.96, step_down>leap -0.37, step_down>held -0.55, leap>none -0.31, leap>repeated -0.54, leap>step_up -0.28, leap>step_down -0.59, leap>leap -0.28, leap>held -0.48, held>none 0.56, held>repeated -0.97, held>step_up -0.34, held>step_down -1.12, held>leap -0.75, held>held -0.46
foreign_to-member: none>step_up -0.32, none>step_down -0.07, none>leap -0.52, repeated>step_up -1.16, repeated>step_down 0.19, repeated>leap -0.64, repeated>held -0.63, step_up>step_up -0.52, step_up>step_down -0.3, step_up>leap -0.78, step_up>held -0.24, step_down>step_up -0.36, step_down>step_down -0.64, step_down>leap -0.59, step_down>held -1.02, leap>step_up 0.24, leap>step_down -0.41, leap>leap -0.56, leap>held -0.28, held>step_up -1.18, held>step_down 0.33, held>leap -0.64, held>held -0.72
foreign_from-member: step_up>repeated -0.09, step_up>step_up -0.04, step_up>step_down -0.51, step_up>leap -0.66, step_up>held -0.96, step_down>none 0.2, step_down>repeated 0.07, step_down>step_up 0.33, step_down>step_down 0.2, step_down>leap -0.57, step_down>held -0.63, leap>none -0.16, leap>repeated -0.06, leap>step_up -0.62, leap>step_down -0.95, leap>leap -1.14, leap>held -0.65, held>none 0.31, held>repeated -0.91, held>step_up -0.14, held>step_down -1.13, held>leap -0.54, held>held -0.3
foreign_between-members: step_up>step_up 0.26, step_up>step_down -0.69, step_up>leap -0.45, step_up>held -1.33, step_down>step_up -0.12, step_down>step_down 0.06, step_down>leap -0.54, step_down>held -0.76, leap>step_up -0.84, leap>step_down -1.13, leap>leap -0.8, leap>held -1.24, held>step_up -0.71, held>step_down 0.31, held>leap -0.49, held>held -0.8
# tone by place
root downbeat: semiquaver 0.35, quaver 0.22, crotchet 0.46, long 0.6
root start: semiquaver 0.1, quaver 0.08, crotchet 0.43, long 0.69
root weak_start: semiquaver 0.06, quaver 0.4, crotchet 0.3
root beat: semiquaver 0.37, quaver 0.24, crotchet 0.24, long -0.08
root offbeat: semiquaver 0.03, quaver 0.2, crotchet 0.03
root small: semiquaver 0.13
root held_in: semiquaver 0.98, quaver -0.23, crotchet -0.1, long -0.25
third downbeat: semiquaver -0.33, quaver 0.02, crotchet 0.39, long 0.38
third start: semiquaver 0.23, quaver 0.03, crotchet 0.33, long 0.19
third weak_start: semiquaver -0.24, quaver 0.28, crotchet 0.22
third beat: quaver 0.16, crotchet 0.14, long -0.08
third offbeat: semiquaver 0.26, quaver 0.16, crotchet -0.2
third small: semiquaver -0.17
third held_in: semiquaver 0.56, quaver -0.11, crotchet -0.35, long -0.22
fifth downbeat: semiquaver -0.11, quaver 0.12, crotchet 0.39, long 0.41
fifth start: semiquaver -0.42, quaver -0.03, crotchet 0.27, long -0.28
fifth weak_start: semiquaver -0.5, quaver -0.08, crotchet -0.24
fifth beat: semiquaver -0.04, quaver 0.02, crotchet 0.34, long -0.1
fifth offbeat: semiquaver -0.98, quaver 0.2, crotchet -0.24
fifth small: semiquaver 0.21
fifth held_in: semiquaver -0.25, quaver -0.07, crotchet -0.08, long -0.21
seventh downbeat: semiquaver -0.09, quaver -0.41, crotchet 0.12, long -0.03
seventh start: semiquaver 0.86, quaver -0.58, crotchet 0.15, long -0.41
seventh weak_start: semiquaver -0.67, quaver 0.27, crotchet 0.03
seventh beat: semiquaver -0.19, quaver -0.54, crotchet -0.95, long -0.42
seventh offbeat: semiquaver -0.36, quaver -0.59, crotchet -0.21
seventh small: semiquaver -0.08
seventh held_in: semiquaver -0.15, quaver -0.4, crotchet -0.05, long -0.76
foreign downbeat: semiquaver -0.14, quaver -1.05, crotchet -1.18, long -0.65
foreign start: semiquaver -0.29, quaver -1.22, crotchet -1.11, long -0.17
foreign weak_start: semiquaver -0.38, quaver -1.22
foreign beat: quaver -0.6, crotchet -0.45, long -0.08
foreign offbeat: semiquaver -0.29, quaver -0.02, crotchet -0.04
foreign small: semiquaver 0.15
foreign held_in: quaver -1.29, crotchet -0.74, long -0.24
foreign_to-member downbeat: semiquaver 0.47, quaver -0.96, crotchet -0.82, long -0.38
foreign_to-member start: quaver -0.3, crotchet -0.74, long -0.38
foreign_to-member weak_start: semiquaver -0.4, quaver -1.19, crotchet -0.03
foreign_to-member beat: quaver -0.8, crotchet -0.16, long 0.37
foreign_to-member offbeat: semiquaver -0.73, quaver 0.4, crotchet -0.04
foreign_to-member small: semiquaver -0.04
foreign_to-member held_in: quaver -0.31, crotchet -0.4, long -0.13
foreign_from-member downbeat: quaver -1.06, crotchet -0.82, long 0.3
foreign_from-member start: semiquaver -0.41, quaver -1.09, crotchet -1.28, long -0.08
foreign_from-member weak_start: semiquaver 1.06, quaver -0.57
foreign_from-member beat: semiquaver -0.54, quaver -0.28, crotchet -0.46, long -0.37
foreign_from-member offbeat: semiquaver -0.03, quaver 0.18, crotchet -0.43
foreign_from-member small: semiquaver 0.2
foreign_from-member held_in: quaver -1.34, crotchet -0.52, long -0.23
foreign_between-members downbeat: semiquaver -0.08, quaver -1.1, crotchet -0.54, long -0.08
foreign_between-members start: semiquaver -0.07, quaver 0.1, crotchet -0.56, long -0.32
foreign_between-members weak_start: semiquaver 1.17, quaver -0.35, crotchet -0.3
foreign_between-members beat: semiquaver -0.09, quaver -0.76, crotchet -0.15, long -0.1
foreign_between-members offbeat: semiquaver -0.52, quaver 0.05, crotchet -0.83
foreign_between-members small: semiquaver -0.36
foreign_between-members held_in: semiquaver 0.18, quaver -0.22, crotchet -0.47, long 0.2
# tone by kind
root suspension: downbeat 0.37, start -0.15, weak_start -0.4, beat 0.13, offbeat 0.4, held_in -0.04
root retardation: downbeat 0.17, start 0.13, weak_start 0.23, beat 0.46, offbeat -0.14, held_in -0.21
root pedal: downbeat 0.01, start 0.17, weak_start -0.25, beat 0.18, offbeat -0.11, held_in -0.14
root passing: downbeat 0.42, start 0.2, weak_start -0.04, beat 0.2, offbeat -0.19, small 0.35
root neighbour: downbeat 0.48, start 0.34, weak_start -0.52, beat -0.12, offbeat 0.63, small 0.03
root escape: downbeat 0.72, start 0.37, weak_start 0.08, beat -0.7, offbeat 0.24, small -0.25
root appoggiatura: downbeat 0.07, start 0.35, weak_start 0.43, beat 0.61, offbeat -0.51
root anticipation: downbeat 0.15, start 0.28, weak_start 0.52, beat -0.09, offbeat 0.76
root leaping: downbeat 0.6, start 0.17, weak_start 0.94, beat 0.53, offbeat -0.48, held_in 0.09
root edge: downbeat 0.59, start 0.03, beat 0.45, offbeat 0.06, held_in -0.07
third suspension: downbeat 0.01, start 0.13, weak_start 0.29, beat -0.27, offbeat -0.25, held_in -0.17
third retardation: downbeat -0.2, start -0.03, weak_start -0.13, beat 0.37, offbeat 0.03, held_in 0.13
third pedal: downbeat 0.19, start -0.28, weak_start 0.42, beat 0.21, offbeat 0.21, held_in -0.51
third passing: downbeat 0.26, start 0.2, weak_start -0.1, beat 0.4, offbeat 0.18, small -0.17
third neighbour: downbeat 0.3, start 0.32, weak_start -0.28, beat -0.18, offbeat 0.3, small -0.07
third escape: downbeat 0.31, start 0.01, weak_start 0.25, beat -0.01, offbeat 0.45, small 0.07
third appoggiatura: downbeat 0.21, start 0.16, weak_start 0.56, beat -0.23, offbeat -0.4
third anticipation: downbeat 0.03, start -0.12, weak_start 0.15, offbeat 0.07, small -0.04
third leaping: downbeat 0.12, start 0.16, weak_start 0.4, beat -0.09, offbeat -0.15, small 0.17, held_in -0.09
third edge: downbeat 0.13, start -0.27, weak_start -0.18, beat 0.36, offbeat 0.11, held_in -0.21
fifth suspension: downbeat 0.35, start -0.02, weak_start 0.03, beat -0.17, offbeat -0.08, held_in 0.08
fifth retardation: downbeat 0.36, start 0.32, weak_start 0.16, beat -0.02, offbeat -0.02, held_in 0.15
fifth pedal: downbeat -0.04, start -0.15, weak_start -0.04, beat 0.39, offbeat -0.23, held_in -0.39
fifth passing: downbeat 0.44, start 0.24, weak_start -0.12, beat -0.04, offbeat -0.09, small -0.06
fifth neighbour: downbeat 0.28, start 0.34, weak_start -0.41, beat 0.14, offbeat 0.28, small 0.16
fifth escape: downbeat 0.21, start -0.08, weak_start -0.79, beat -0.14, offbeat 0.4, small 0.42
fifth appoggiatura: downbeat 0.19, start 0.25, weak_start 0.68, beat 0.04, offbeat -0.31
fifth anticipation: downbeat 0.06, start -0.09, weak_start 0.12, beat -0.08, offbeat -0.09
fifth leaping: downbeat 0.44, weak_start -0.06, beat 0.46, offbeat -0.17, small -0.17, held_in -0.07
fifth edge: downbeat -0.06, start 0.15, weak_start -0.41, beat 0.33, offbeat 0.59, held_in -0.3
seventh suspension: downbeat 0.36, start -0.14, weak_start -0.32, beat -0.13, offbeat 0.4, held_in 0.04
seventh retardation: downbeat -0.4, start -0.11, weak_start -0.04, beat -0.09, held_in -0.53
seventh pedal: downbeat -0.17, start -0.14, beat -0.11, held_in -0.58
seventh passing: downbeat 0.2, start 0.21, weak_start 0.05, beat -0.84, offbeat -0.71, small 0.11
seventh neighbour: downbeat -0.16, start 0.26, weak_start -0.43, beat -0.57, offbeat 0.17, small -0.37
seventh escape: downbeat -0.39, start 0.05, weak_start 0.09, beat 0.14, offbeat -0.43, small 0.03
seventh appoggiatura: downbeat -0.2, start -0.27, weak_start 0.55, beat 0.07, offbeat -0.44
seventh anticipation: downbeat -0.24, start -0.06, weak_start 0.55, beat -1, offbeat -0.66
seventh leaping: downbeat -0.03, start -0.32, weak_start -0.07, beat -0.04, offbeat 0.07, held_in -0.26
seventh edge: downbeat -0.06, start -0.34, weak_start 0.4, beat -0.14, offbeat -0.12, held_in -0.09
foreign suspension: downbeat -0.37, start -0.26, weak_start -0.08, beat 0.01, held_in -0.4
foreign retardation: downbeat -0.73, start -1.03, weak_start -0.06, beat -0.04, held_in -1.27
foreign pedal: downbeat -1.02, start -1, beat -0.15, held_in -1.88
foreign passing: downbeat -1.02, start -0.31, weak_start -0.11, beat -0.15, offbeat 0.28, small -0.07
foreign neighbour: downbeat -0.9, start -1.08, weak_start -0.68, beat -0.57, offbeat 0.29, small 0.16
foreign escape: downbeat -1, start -0.65, weak_start -0.11, beat -0.87, offbeat -0.46, small -0.43
foreign appoggiatura: downbeat -0.83, start -1, weak_start -0.02, beat -0.72, offbeat -0.9
foreign anticipation: downbeat -1.32, start -1.18, weak_start -0.21, beat -1.25, offbeat -0.73, small 0.04
foreign leaping: downbeat -0.35, start -0.73, weak_start -0.07, beat -0.94, offbeat -1.1, held_in -1.22
foreign edge: downbeat -0.25, start -0.24, beat -0.33, offbeat -0.52, held_in 0.55
# bass tone by place
root downbeat: quaver -0.16, crotchet 0.33, long 0.55
root start: quaver 0.17, crotchet 0.23, long 0.55
root weak_start: semiquaver -0.13, quaver 0.45, crotchet 0.38
root beat: quaver 0.49, crotchet 0.57, long -0.01
root offbeat: semiquaver 0.16, quaver 0.06, crotchet -0.01
root small: semiquaver -0.18
root held_in: quaver -0.34, crotchet -0.31, long 0.17
third downbeat: quaver 0.18, crotchet 0.28, long 0.07
third start: quaver 0.2, crotchet 0.2, long -0.01
third weak_start: semiquaver -0.07, quaver 0.08, crotchet -0.04
third beat: quaver -0.12, crotchet -0.45, long -0.08
third offbeat: semiquaver 0.15, quaver 0.26, crotchet -0.03
third small: semiquaver 0.11
third held_in: semiquaver -0.13, quaver 0.01, crotchet -0.15, long -0.48
fifth downbeat: quaver -0.16, crotchet 0.23, long -0.03
fifth start: quaver -0.33, crotchet -0.4, long -0.13
fifth weak_start: semiquaver -0.11, quaver -0.13, crotchet -0.04
fifth beat: quaver -0.94, crotchet -1.28, long -0.4
fifth offbeat: quaver -0.31
fifth small: semiquaver 0.03
fifth held_in: quaver -0.42, crotchet -0.63, long -0.44
seventh downbeat: quaver -0.27, crotchet -0.37, long 0.18
seventh start: quaver -0.52, crotchet -0.28, long -0.04
seventh weak_start: semiquaver -0.15, quaver 0.19, crotchet -0.16
seventh beat: quaver -0.33, crotchet -0.39, long -0.04
seventh offbeat: quaver -0.36, crotchet -0.03
seventh small: semiquaver -0.01
seventh held_in: quaver -0.22, crotchet -0.28, long -0.09
foreign downbeat: quaver -0.86, crotchet -0.39, long 0.19
foreign start: quaver 0.05, crotchet -0.29, long -0.3
foreign weak_start: semiquaver 0.65, quaver -1.09, crotchet -0.12
foreign beat: quaver -1.12, crotchet -0.14, long -0.15
foreign offbeat: semiquaver -0.64, quaver 0.22, crotchet -0.27
foreign small: semiquaver 0.05
foreign held_in: quaver -0.19, crotchet -0.06, long -0.17
# seventh by kind
M7 suspension: start 0.1, weak_start -0.2, beat 0.1, offbeat 0.57, held_in -0.52
M7 retardation: downbeat -0.05, start 0.15, held_in 0.07
M7 pedal: downbeat -0.15, start 0.08, held_in -0.2
M7 passing: downbeat 0.24, start 0.15, weak_start 1.03, beat -0.52, offbeat -0.27, small 0.55
M7 neighbour: downbeat 0.13, start 0.37, weak_start -0.26, beat -0.26, offbeat 0.23, small 0.18
M7 escape: downbeat -0.01, start 0.05, weak_start -0.36, beat 0.34, offbeat -0.47, small 0.2
M7 appoggiatura: downbeat 0.01, start -0.3, weak_start 0.29, beat 0.54, offbeat -0.8
M7 anticipation: downbeat -0.3, start 0.08, weak_start 0.44, beat -0.69, offbeat -0.27
M7 leaping: downbeat 0.11, start -0.36, weak_start -0.3, offbeat -0.07, held_in -0.04
M7 edge: downbeat 0.13, held_in 0.04
Mmaj7 suspension: downbeat 0.05, start -0.28, beat -0.1, held_in 0.61
Mmaj7 retardation: downbeat -0.35, start -0.17, weak_start -0.04, beat -0.05, held_in -0.1
Mmaj7 pedal: downbeat 0.18, start -0.09, held_in -0.44
Mmaj7 passing: downbeat -0.08, start -0.14, weak_start -1.05, beat -0.42, offbeat -0.38, small -0.11
Mmaj7 neighbour: downbeat -0.27, weak_start -0.31, beat -0.14, small -0.29
Mmaj7 escape: downbeat -0.05, start -0.3, beat -0.2, small -0.04
Mmaj7 appoggiatura: downbeat -0.1, start -0.06, weak_start 0.48, beat -0.2, offbeat 0.04
Mmaj7 anticipation: downbeat -0.05, start 0.31, weak_start -0.27, beat -0.31, offbeat -0.02
Mmaj7 leaping: downbeat -0.13, start 0.26, offbeat -0.06, held_in 0.48
Mmaj7 edge: downbeat -0.01, start -0.03, beat -0.04
m7 suspension: downbeat 0.37, start 0.25, weak_start -0.11, beat -0.04, offbeat -0.36, held_in 0.23
m7 retardation: downbeat -0.03, start -0.01, held_in -0.43
m7 pedal: downbeat -0.11, start -0.03, beat -0.04, held_in -0.25
m7 passing: downbeat -0.16, start 0.25, weak_start -0.67, beat -0.45, offbeat -0.37, small -0.66
m7 neighbour: downbeat -0.19, start -0.15, weak_start -0.17, beat -0.18, offbeat 0.34, small -0.39
m7 escape: downbeat -0.18, start 0.1, weak_start -0.04, beat -0.08, offbeat 0.23, small -0.11
m7 appoggiatura: downbeat -0.24, start -0.05, weak_start 0.46, beat -0.15, offbeat 0.15
m7 anticipation: downbeat 0.1, start -0.05, weak_start -0.04, beat -0.24, offbeat -0.35
m7 leaping: downbeat 0.02, start -0.39, weak_start 0.16, offbeat 0.24, held_in -0.1
m7 edge: downbeat -0.1, start -0.03, beat -0.11, offbeat -0.08, held_in -0.13
ø7 suspension: downbeat 0.14, start -0.39, weak_start 0.03, beat -0.02, offbeat -0.03, held_in 0.33
ø7 retardation: downbeat -0.16, start -0.17, beat -0.04, held_in -0.61
ø7 pedal: downbeat -0.03, start -0.13, beat -0.08, held_in -0.28
ø7 passing: start -0.02, weak_start -0.31, beat -0.1, offbeat -0.46, small 0.12
ø7 neighbour: downbeat -0.32, start -0.07, weak_start 0.14, offbeat -0.26, small -0.19
ø7 escape: downbeat -0.16, start -0.25, weak_start 0.44, beat -0.04, offbeat -0.4, small -0.07
ø7 appoggiatura: downbeat 0.19, start 0.09, weak_start -0.18, beat -0.12, offbeat -0.22
ø7 anticipation: downbeat -0.06, start -0.22, weak_start 0.61, beat -0.12, offbeat -0.22
ø7 leaping: downbeat 0.25, start -0.29, weak_start 0.11, beat -0.04, offbeat -0.12, held_in -0.65
ø7 edge: downbeat -0.03, start -0.18
o7 suspension: downbeat 0.07, start -0.17, weak_start -0.06, beat -0.14, offbeat 0.15, held_in -0.14
o7 retardation: held_in -0.11
o7 pedal: downbeat -0.19, start -0.04, held_in -0.44
o7 passing: downbeat 0.38, start 0.26, weak_start 0.38, beat -0.04, offbeat -0.08
o7 neighbour: downbeat 0.27, start 0.2, weak_start 0.04, beat -0.35, offbeat -0.04, small 0.03
o7 escape: downbeat -0.14, start 0.44, weak_start -0.05
o7 appoggiatura: downbeat -0.26, start 0.05, weak_start -0.2, beat -0.22, offbeat 0.28
o7 anticipation: downbeat 0.01, start -0.02, weak_start -0.07, beat -0.14
o7 leaping: downbeat -0.12, start 0.21, weak_start -0.13, held_in -0.15
o7 edge: downbeat -0.05, start -0.14, weak_start 0.4, offbeat -0.05
mmaj7 retardation: held_in -0.07
mmaj7 passing: downbeat -0.08, start -0.08
mmaj7 neighbour: downbeat -0.15, start -0.03, weak_start -0.23, offbeat -0.06, small -0.17
mmaj7 appoggiatura: downbeat -0.03, weak_start -0.06, offbeat -0.04
mmaj7 anticipation: start -0.07, weak_start -0.07
+maj7 suspension: downbeat -0.2, start -0.07, held_in 0.09
+maj7 pedal: downbeat -0.04, held_in -0.03
+maj7 passing: downbeat -0.04, start -0.05, weak_start -0.29, offbeat -0.12
+maj7 neighbour: start -0.06, weak_start -0.04, beat -0.05, offbeat -0.05
+maj7 escape: downbeat -0.08, start -0.07
+maj7 appoggiatura: start -0.03, weak_start 0.26, offbeat -0.07
+maj7 anticipation: downbeat -0.04, start -0.08
+maj7 leaping: downbeat -0.25, held_in -0.18
+maj7 edge: downbeat -0.04, start -0.04
Fr suspension: downbeat -0.14, start -0.05, held_in -0.33
Fr pedal: held_in -0.03
Fr passing: weak_start -0.05, offbeat -0.05, small -0.03
Fr appoggiatura: weak_start -0.07
Fr anticipation: start -0.04, weak_start -0.04, offbeat -0.04
Fr leaping: held_in -0.04
Ger suspension: held_in -0.24
Ger retardation: downbeat -0.04, held_in -0.03
Ger pedal: start -0.04, held_in 0.25
Ger passing: downbeat -0.04, start -0.03, small -0.06
Ger neighbour: downbeat -0.07, start -0.04, small -0.08
Ger escape: start -0.13
Ger appoggiatura: start -0.04
Ger anticipation: downbeat -0.13, start -0.13
Ger leaping: start -0.08
# members present
M: r--- 0.44, r3-- -0.12, --5- 0.78, r-5- -1.1, -35- -0.6, r35- 0.39
m: r--- -0.46, r3-- -0.35, r-5- -0.97, -35- -0.39, r35- 0.33
o: r3-- -0.82, r-5- -0.31, -35- -1.13, r35- 0.69
+: r3-- -0.67, r-5- -0.04, -35- -0.26, r35- -0.12
M7: r--- 0.72, r3-- 0.73, -35- 0.44, r35- 2.23, r--7 0.29, r3-7 0.44, --57 0.86, r-57 -0.91, -357 -0.85, r357 0.76
Mmaj7: -3-7 -0.04, r3-7 -0.33, --57 -0.07, r-57 -0.45, -357 -1.11, r357 0.02
m7: r35- 1.72, r--7 -0.06, -3-7 0.22, r3-7 -0.88, --57 0.58, r-57 -0.53, -357 -0.99, r357 0.1
ø7: r3-- 1.28, r35- 0.44, r--7 -0.12, -3-7 0.32, r3-7 -0.92, --57 -0.13, r-57 -0.46, -357 -1.26, r357 0.69
o7: -35- 0.72, r35- 1.28, r3-7 -0.52, --57 0.26, r-57 0.36, -357 -1.05, r357 0.85
mmaj7: r3-7 -0.13, --57 -0.03, r-57 -0.18, -357 -0.27, r357 -0.39
+maj7: r3-7 -0.12, -357 -0.42, r357 -0.13
It: r-5- -0.17, -35- 0.19, r35- -0.04
Fr: r--7 -0.04, r3-7 -0.44, r-57 -0.2, -357 -0.04, r357 -0.05
Ger: r-57 -0.18, -357 -0.58, r357 0.31
# members at start
M: ---- 0.22, r--- -0.47, -3-- -0.31, r3-- -0.59, --5- 0.16, r-5- 0.17, -35- -0.18, r35- 0.26
m: ---- 0.38, r--- -0.46, -3-- -0.19, r3-- -0.88, --5- 0.02, r-5- -0.61, -35- -0.28, r35- 0.49
o: ---- -0.04, r--- -0.39, -3-- -0.24, r3-- -0.75, r-5- -0.08, -35- -0.23, r35- 0.48
+: r--- -0.04, r3-- -0.85, -35- -0.49, r35- 0.24
M7: r--- -0.23, r3-- 0.82, --5- -0.04, r-5- -0.81, -35- 0.23, r35- 0.1, ---7 -0.58, r--7 -0.02, -3-7 -0.3, r3-7 0.29, --57 -0.47, r-57 -0.01, -357 -0.39, r357 1.42
Mmaj7: r--- -0.07, r3-- -0.48, r-5- -0.12, -35- -0.18, r35- -0.61, ---7 -0.2, -3-7 -0.39, r3-7 -0.15, --57 -0.53, r-57 -0.02, -357 -1, r357 0.54
m7: r--- -0.1, r3-- 0.6, r-5- -0.14, -35- -0.35, r35- -0.99, ---7 -0.36, r--7 -0.32, -3-7 0.09, r3-7 -0.54, --57 0.13, r-57 -0.33, -357 -1.22, r357 1.02
ø7: r--- 0.41, r3-- 0.83, -35- -0.31, r35- -0.47, ---7 -0.26, r--7 -0.42, -3-7 -0.1, r3-7 -0.77, --57 -0.24, r-57 -0.1, -357 -1.23, r357 1.22
o7: r--- -0.05, r3-- -0.04, --5- -0.08, r-5- 0.29, -35- 0.4, r35- 1.16, ---7 -0.14, -3-7 0.14, r3-7 -0.55, --57 -0.41, r-57 0.32, -357 -0.13, r357 0.78
mmaj7: r3-- -0.07, r35- -0.19, r3-7 -0.07, --57 -0.17, r-57 -0.12, -357 -0.4, r357 -0.03
+maj7: r3-- -0.09, r35- -0.07, -3-7 -0.04, r3-7 -0.33, --57 -0.02, -357 -0.42, r357 0.2
It: r3-- -0.04, r-5- -0.17, -35- 0.19
Fr: r3-- -0.04, r35- -0.05, r--7 -0.08, r3-7 -0.39, r-57 -0.2, -357 -0.04, r357 -0.01
Ger: -35- -0.06, --57 -0.07, r-57 -0.11, -357 -0.57, r357 0.33
# bass chosen
M a: only 0.63, first -1.46, after_foreign -0.01, later -1.03, none -1.23
M b: only 0.67, first -1.59, after_foreign 0.31, later -1.1, none 1.32
M c: only -0.35, first -0.54, after_foreign -0.13, later -0.42
m a: only 0.56, first -1.41, after_foreign -0.1, later -0.74, none -0.92
m b: only 0.36, first -1.41, after_foreign 0.1, later -0.85, none 0.72
m c: only -0.18, first -0.36, later -0.67, none 0.45
o a: only -0.36, first -0.1, after_foreign -0.07, later -0.14, none -0.59
o b: only 0.43, first -0.66, after_foreign 0.64, later -0.34, none 1.09
o c: only -0.42, first -0.2, after_foreign -0.45, later -0.07
+ a: only -0.74, first -0.08, after_foreign -0.11, later -0.03, none -0.08
+ b: only 0.05, first -0.08, later -0.04
+ c: only -0.08, first -0.02
M7 a: only 0.93, first -0.72, after_foreign 0.02, later -0.85, none -0.95
M7 b: only 0.77, first -0.79, after_foreign 0.43, later -0.29, none 0.95
M7 c: only 0.08, first -0.69, after_foreign 0.58, later -0.44
M7 d: only 0.82, first -0.73, after_foreign -0.19, later -0.44, none 0.94
Mmaj7 a: only 0.06, first -0.1, after_foreign 0.26, later -0.28, none -0.37
Mmaj7 b: only -0.12, first -0.35, after_foreign -0.32, later -0.06
Mmaj7 c: only -0.54, first -0.18, after_foreign -0.2, later -0.01
Mmaj7 d: only -0.53, first -0.29, after_foreign -0.04
m7 a: only 0.37, first -0.23, after_foreign 0.24, later -0.17, none -0.2
m7 b: only 0.16, first -0.83, after_foreign -0.28, later -0.29, none 0.73
m7 c: only -0.51, first -0.48, after_foreign -0.38, later -0.07
m7 d: only -0.56, first -0.28, after_foreign -0.03, later -0.27
ø7 a: only 0.38, first -0.26, after_foreign 0.18, later -0.48, none -0.32
ø7 b: only 0.21, first -0.92, after_foreign 0.08, later -0.22, none 0.44
ø7 c: only -0.02, first -0.35, after_foreign 0.17, later -0.11
ø7 d: only -0.3, first -0.18, after_foreign -0.09, later -0.04
o7 a: only 0.23, first -0.1, after_foreign 0.6, later -0.08, none -0.17
o7 b: only 0.63, first -0.41, after_foreign 0.37, later -0.1, none 0.72
o7 c: only 0.41, first -0.25, after_foreign -0.19, later -0.22
o7 d: only -0.31, first -0.17, after_foreign -0.04, later -0.08, none 0.51
mmaj7 a: only -0.35, first -0.02, none -0.03
mmaj7 b: only -0.14, after_foreign -0.04, later -0.01
mmaj7 c: only -0.39
mmaj7 d: only -0.03
+maj7 a: only -0.1, first -0.05, after_foreign -0.02, later -0.04, none -0.14
+maj7 b: only -0.06, first -0.07, after_foreign -0.1
+maj7 c: only -0.04
+maj7 d: only -0.12, later -0.04
It a: only -0.04, none -0.1
It b: only 0.19
It c: only -0.07
Fr a: only -0.39, none -0.04
Fr b: only -0.08
Fr c: only -0.15
Fr d: only -0.12, after_foreign -0.03
Ger a: only -0.08, after_foreign -0.03
Ger b: only -0.21, after_foreign -0.02
Ger c: only -0.23, after_foreign -0.06
# later bass
beat: quaver -1.55, crotchet -1.41, long -0.4
offbeat: semiquaver -0.27, quaver -1.44
small: semiquaver -0.46
# segment
1 ½: 2 -0.13, 3 0.36, 4 0.14
1 1: 1 -0.98
1 1½: 2 -1, 3 -0.69, 4 -0.92
1 2: 1 -0.3, 2 -0.17, 3 -0.12, 4 -0.06
1 3: 1 -0.04, 2 -0.1, 3 -0.04, 4 -0.04
1 longer: 2 -0.11, 4 -0.01
2 ½: 1 -0.08
2 1: 2 -0.19, 3 0.23, 4 0.1
2 1½: 1 -0.35
2 2: 1 0.1, 2 -0.05, 4 -0.65
2 3: 2 0.16, 3 -0.62, 4 -0.47
2 4: 2 -0.2, 4 -0.04
2 longer: 2 0.44, 4 -0.18
3 ½: 1 0.01
3 1: 2 0.16, 4 0.31
3 1½: 1 0.34
3 2: 1 -0.16, 3 -0.33, 4 0.16
3 3: 2 -0.22
3 4: 3 -0.17
3 longer: 2 -0.07, 3 -0.03, 4 -0.08
4 ½: 1 -0.32
4 1: 2 -0.18
4 1½: 1 0.09
4 2: 1 -0.41, 2 0.45, 4 0.07
4 3: 1 0.35, 2 0.04, 4 0.47
4 4: 3 -0.02, 4 0.68
4 longer: 2 -0.15, 3 0.32
# boundary
1 held: 1 -0.44, 2 -0.37
1 repeated: 2 0.03, 4 -0.27
1 step: 1 -1.67, 2 -0.66, 3 0.55, 4 0.51
1 leap: 1 1.04, 2 0.97, 3 1.14, 4 0.11
1 none: 3 -0.47
2 held: 1 -0.42, 2 -0.63, 3 0.03
2 repeated: 3 -0.7, 4 -0.83
2 step: 1 -0.38, 2 -0.09, 3 0.33, 4 0.48
2 leap: 1 0.54, 2 0.15, 3 0.43, 4 -0.1
3 held: 1 0.15, 2 -0.29, 3 0.16
3 repeated: 4 -0.29
3 step: 2 0.32, 3 0.3, 4 0.8
3 leap: 2 0.19, 3 0.24, 4 0.04
4 held: 2 -0.06, 3 -0.29
4 repeated: 3 -0.39, 4 -0.84
4 step: 1 0.14, 2 0.2, 3 0.8, 4 0.83
4 leap: 1 0.1, 2 0.11, 3 0.46, 4 -0.13
# chord in key
major: strangea -0.15, strangeb 0.31, Ia 0.5, Ib 0.37, Ic 0.32, Imaj7a 0.23, Imaj7b -0.14, Imaj7c -0.19, Imaj7d -0.16, V7/IVa 0.16, V7/IVb 0.2, V7/IVc 0.12, V7/IVd 0.42, ia -0.47, ib -0.31, ic -0.45, I+a -0.43, I+b -0.4, I+c -0.06, Va 0.52, Vb 0.39, Vc -0.72, V7a 0.34, V7b 0.47, V7c 0.22, V7d 0.48, va -0.4, vb -0.52, vc -0.16, v7a 0.02, v7b 0.13, v7c -0.19, v7d -0.2, V+a -0.23, V+b -0.17, vob -0.34, vø7a -0.19, vø7b -0.07, vø7c -0.1, iia -0.04, iib -0.1, iic -0.26, ii7a 0.51, ii7b 0.55, ii7c -0.19, ii7d -0.03, V/Va -0.26, V/Vb -0.37, V/Vc -0.29, V7/Va -0.2, V7/Vb 0.24, V7/Vc -0.05, V7/Vd 0.17, iioa -0.33, iiob 0.03, iioc -0.09, iiø7a -0.49, iiø7b -0.39, iiø7c 0.08, iiø7d -0.09, Fr43a -0.25, Fr43d -0.12, via 0.04, vib 0.13, vic -0.35, vi7a 0.19, vi7b -0.55, vi7c -0.44, vi7d -0.55, V/iia -0.59, V/iib -0.14, V/iic -0.03, V7/iia 0.31, V7/iib -0.23, V7/iic -0.18, V7/iid -0.5, vioa -0.16, viob -0.19, vioc -0.11, viø7a -0.46, viø7b -0.15, viø7c -0.07, viø7d -0.23, iiia -0.56, iiib -0.17, iiic -0.45, iii7a -0.16, iii7b -0.53, iii7c -0.11, iii7d -0.36, V/via -0.61, V/vib 0.23, V/vic -0.18, V7/via 0.15, V7/vib -0.16, V7/vic -0.28, V7/vid -0.23, viio/IVa -0.22, viio/IVb -0.29, viio/IVc -0.07, viiø7/IVa -0.36, viiø7/IVb -0.11, viiø7/IVc -0.17, viiø7/IVd -0.24, viio7/IVa 0.38, viio7/IVc -0.03, viioa 0.05, viiob 0.51, viioc -0.23, viiø7a 0.29, viiø7b -0.12, viiø7c -0.19, viiø7d 0.05, viio7a -0.07, viio7b -0.06, viio7c -0.09, V/iiia -0.37, V/iiib -0.45, V7/iiia -0.23, V7/iiib -0.2, V7/iiic -0.04, viia -0.38, viib -0.73, viic -0.14, viio/Va -0.07, viio/Vb 0.16, viio/Vc -0.07, viiø7/Va 0.13, viiø7/Vb -0.49, viiø7/Vc 0.28, viiø7/Vd -0.23, viio7/Va 0.36, viio7/Vb -0.08, viio7/Vc -0.1, It6a -0.1, It6c -0.04, Ger65b -0.04, viio/iia -0.18, viio/iib -0.12, viio/iic -0.13, viiø7/iia -0.21, viiø7/iib -0.3, viiø7/iic -0.08, viiø7/iid -0.02, viio7/iia 0.23, viio7/iib 0.15, viio7/iic -0.12, viio7/iid -0.05, viio/via -0.42, viio/vib 0.02, viio/vic -0.07, viiø7/vib -0.05, viiø7/vic -0.04, viio7/via -0.06, viio7/vib -0.24, viio7/vic -0.31, viio7/vid -0.04, viio/iiia -0.01, viio/iiic -0.02, viio7/iiia -0.09, viio7/iiib -0.07, viio7/iiic -0.02, viio7/iiid -0.04, IVb 0.26, IVc -0.28, IVmaj7a -0.06, IVmaj7b 0.2, IVmaj7c -0.43, IVmaj7d -0.06, IV7a -0.18, IV7b -0.03, IV7c -0.04, IV7d -0.25, iva -0.22, ivb 0.02, ivc -0.04, iv7a -0.06, iv7b -0.03, iv7c -0.04, bVIIa -0.62, bVIIb -0.43, bVIIc -0.19, bVIImaj7a 0.25, bVIImaj7b -0.33, bVIImaj7c -0.18, bVIImaj7d -0.04, bVII7a -0.26, bIIIa -0.12, bIIIb -0.07, bVIa -0.28, bVIb -0.12, bVIc -0.04, bVImaj7a -0.04, bVImaj7b -0.02, bVImaj7d -0.07, Na -0.04
minor: strangea -0.27, ia 0.6, ib 0.29, ic 0.51, i7a -0.27, i7b -0.35, i7c -0.3, i7d -0.17, imaj7a -0.38, imaj7b -0.19, imaj7c -0.39, imaj7d -0.03, Ia -0.29, Ib 0.04, Ic 0.19, V7/iva -0.59, V7/ivb 0.08, V7/ivc 0.16, V7/ivd -0.05, va -0.02, vb 0.24, vc -0.64, v7a -0.44, v7b -0.43, v7c -0.26, v7d 0.1, Va 0.36, Vb 0.26, Vc -0.3, V7a 0.61, V7b 0.36, V7c 0.36, V7d 0.21, V+a -0.17, viio/VIa -0.13, viio/VIb -0.43, viio/VIc -0.04, viiø7/VIa -0.28, viiø7/VIb -0.09, viiø7/VIc -0.31, viiø7/VId -0.31, iioa -0.21, iiob 0.43, iioc -0.55, iiø7a 0.25, iiø7b 0.69, iiø7c -0.15, iiø7d 0.18, iia -0.19, iib 0.01, iic -0.19, ii7a -0.63, ii7b -0.71, ii7c -0.19, ii7d 0.12, V/Va -0.15, V/Vb 0.16, V/Vc -0.04, V7/Va -0.41, V7/Vb 0.14, V7/Vc 0.15, V7/Vd -0.45, Fr43a -0.23, Fr43b -0.08, Fr43c -0.15, Fr43d -0.03, vioa -0.21, viob -0.05, vioc -0.01, viø7a 0.28, viø7b 0.14, viø7c 0.36, viø7d -0.41, viio7/VIIa -0.01, #via -0.4, #vib -0.28, #vic -0.1, viio/iva -0.08, viio/ivb -0.03, viio/ivc -0.02, viiø7/iva 0.03, viiø7/ivb -0.34, viiø7/ivc 0.27, viio7/iva 0.07, viio7/ivb 0.3, viio7/ivc 0.26, viio7/ivd -0.08, viioa -0.15, viiob 0.58, viioc -0.03, viiø7a 0.19, viiø7b -0.23, viiø7c 0.08, viiø7d -0.02, viio7a 0.01, viio7b 0.72, viio7c 0.1, viio7d 0.11, viio/Va -0.3, viio/Vb -0.46, viio/Vc 0.27, viiø7/Vb -0.03, viiø7/Vc -0.03, viio7/Va 0.2, viio7/Vb 0.43, viio7/Vc 0.35, viio7/Vd -0.28, It6a -0.04, It6b -0.28, It6c -0.04, Ger65a -0.11, Ger65b -0.2, Ger65c -0.27, #io7b -0.07, #io7c -0.1, #io7d -0.04, iva -0.03, ivb 0.23, ivc -0.29, iv7a 0.27, iv7b 0.11, iv7c -0.39, iv7d -0.42, IVa -0.5, IVb 0.18, IVc -0.4, IV7a -0.48, IV7b 0.33, IV7c -0.54, IV7d 0.36, VIIa -0.51, VIIb -0.24, VIIc 0.07, VII7a -0.81, VII7b -0.01, VII7c -0.31, VII7d -0.37, viia -0.35, viib -0.19, viic -0.04, IIIa -0.38, IIIb -0.56, IIIc -0.38, IIImaj7a -0.17, IIImaj7b -0.28, IIImaj7c -0.14, IIImaj7d -0.48, V7/VIa -0.25, V7/VIb -0.22, V7/VIc -0.07, V7/VId -0.07, III+a -0.39, III+b 0.21, III+c -0.04, III+maj7a -0.21, III+maj7b -0.12, III+maj7c -0.04, III+maj7d -0.16, VIa -0.01, VIb -0.17, VIc -0.4, VImaj7a -0.02, VImaj7b -0.44, VImaj7c -0.2, VImaj7d -0.31, VI7a 0.07, VI7b -0.08, VI7d -0.04, Na -0.42, Nb 0.1, Nc -0.13, bIImaj7a -0.15, bIImaj7b -0.21, bIImaj7c -0.04, bIImaj7d -0.07
# chord by place
major strange: weak -0.12, beat 0.34, strong -0.04
major I: weak -0.52, beat 0.46, strong 0.65
major Imaj7: weak -0.54, beat 0.22, strong 0.22
major V7/IV: weak 0.61, beat 0.13, strong -0.62
major i: weak -0.26, beat -0.73, strong -0.31
major I+: weak -0.11, beat -0.31, strong -0.49
major V: weak -0.4, beat 0.42, strong 0.56
major V7: weak 0.61, beat 0.38, strong 0.13
major v: weak -0.38, beat -0.46, strong -0.28
major v7: weak 0.14, beat -0.31, strong -0.1
major V+: weak -0.05, beat -0.13, strong -0.22
major vo: strong -0.34
major vø7: weak -0.04, beat -0.19, strong -0.11
major ii: weak -0.57, beat 0.15, strong -0.07
major ii7: weak 0.11, beat 0.26, strong 0.51
major V/V: weak -0.51, beat -0.09, strong -0.52
major V7/V: weak 0.56, beat -0.64, strong 0.1
major iio: weak -0.28, beat -0.16, strong 0.07
major iiø7: weak -0.28, beat -0.19, strong -0.4
major Fr43: beat -0.27, strong -0.09
major vi: weak -0.34, beat 0.07, strong 0.13
major vi7: weak -0.36, beat 0.38, strong -0.92
major V/ii: weak 0.06, beat -0.13, strong -0.62
major V7/ii: weak -0.28, beat -0.12, strong -0.2
major vio: beat -0.17, strong -0.27
major viø7: weak -0.12, beat -0.28, strong -0.43
major iii: weak -0.13, beat -0.51, strong -0.36
major iii7: weak -0.7, beat 0.08, strong -0.37
major V/vi: weak -0.47, beat -0.13, strong -0.06
major V7/vi: weak 0.25, beat -0.24, strong -0.72
major viio/IV: weak -0.2, beat -0.25, strong -0.13
major viiø7/IV: beat -0.42, strong -0.45
major viio7/IV: beat 0.37, strong -0.01
major viio: weak 0.3, beat 0.02, strong 0.27
major viiø7: weak 0.37, beat -0.56, strong 0.06
major viio7: weak -0.04, beat 0.03, strong -0.17
major V/iii: weak -0.06, beat -0.56, strong -0.16
major V7/iii: weak -0.13, beat -0.17, strong -0.19
major vii: weak -0.49, beat -0.45, strong -0.4
major viio/V: weak 0.36, beat 0.04, strong -0.27
major viiø7/V: weak 0.47, beat -0.28, strong -0.6
major viio7/V: weak -0.11, beat 0.21, strong 0.2
major It6: weak -0.04, beat -0.1
major Ger65: beat -0.04
major viio/ii: weak 0.09, beat -0.24, strong -0.3
major viiø7/ii: weak -0.25, beat -0.19, strong -0.17
major viio7/ii: weak 0.12, beat 0.11, strong 0.03
major viio/vi: weak 0.31, beat -0.58, strong -0.32
major viiø7/vi: beat -0.05, strong -0.04
major viio7/vi: weak -0.22, beat -0.1, strong -0.2
major viio/iii: weak -0.02, beat -0.01
major viio7/iii: weak -0.02, beat -0.13, strong -0.04
major IV: weak -0.46, beat 0.25, strong 0.18
major IVmaj7: weak -0.38, beat 0.08, strong 0.27
major IV7: weak -0.12, beat 0.02, strong -0.37
major iv: weak -0.27, beat -0.26, strong 0.15
major iv7: weak -0.06, beat -0.03, strong -0.04
major bVII: weak -0.09, beat -0.65, strong -0.47
major bVIImaj7: weak -0.17, beat 0.1, strong -0.25
major bVII7: beat -0.26
major bIII: weak -0.04, beat -0.13, strong -0.04
major bVI: weak -0.13, beat -0.28, strong -0.04
major bVImaj7: beat -0.12
major N: strong -0.04
minor strange: weak -0.04, beat -0.21, strong -0.04
minor i: weak -0.03, beat 0.57, strong 0.71
minor i7: weak -0.56, beat -0.08, strong -0.33
minor imaj7: weak -0.41, beat -0.21, strong -0.35
minor I: weak 0.05, beat -0.52, strong 0.01
minor V7/iv: weak 0.03, beat -0.05, strong -0.36
minor v: weak -0.41, beat 0.06, strong 0.02
minor v7: weak -0.36, beat -0.37, strong -0.18
minor V: weak -0.18, beat 0.31, strong 0.46
minor V7: weak 0.92, beat -0.14, strong 0.37
minor V+: beat -0.07, strong -0.11
minor viio/VI: weak -0.04, beat -0.4, strong -0.18
minor viiø7/VI: weak -0.24, beat -0.46, strong -0.24
minor iio: weak 0.12, beat -0.05, strong 0.13
minor iiø7: weak 0.5, beat 0.24, strong 0.15
minor ii: weak -0.22, beat 0.09, strong -0.21
minor ii7: weak -0.51, beat -0.25, strong -0.71
minor V/V: weak -0.32, beat 0.2, strong 0.02
minor V7/V: weak -0.51, beat 0.41, strong -0.34
minor Fr43: weak -0.23, beat -0.15, strong -0.12
minor vio: weak 0.08, beat -0.17, strong -0.08
minor viø7: weak 0.15, beat 0.08, strong 0.27
minor viio7/VII: beat 0.04, strong -0.06
minor #vi: weak -0.29, beat -0.58, strong 0.02
minor viio/iv: weak -0.11, beat -0.04, strong 0.1
minor viiø7/iv: weak 0.31, beat -0.22, strong -0.27
minor viio7/iv: weak -0.03, beat 0.2, strong 0.29
minor viio: weak 0.09, beat 0.19, strong 0.28
minor viiø7: weak 0.13, beat 0.1, strong -0.13
minor viio7: weak 0.33, beat 0.09, strong 0.33
minor viio/V: weak 0.13, beat -0.44, strong -0.16
minor viiø7/V: strong -0.06
minor viio7/V: weak 0.56, beat 0.2, strong -0.2
minor It6: weak -0.14, beat -0.14, strong -0.11
minor Ger65: weak 0.09, beat -0.41, strong -0.27
minor #io7: weak -0.01, beat -0.15, strong -0.04
minor iv: weak -0.7, beat 0.23, strong 0.18
minor iv7: weak 0.09, beat -0.19, strong 0.18
minor IV: weak -0.42, beat 0.09, strong -0.4
minor IV7: weak 0.12, beat -0.22, strong 0.22
minor VII: weak -0.56, beat 0.02, strong -0.65
minor VII7: weak -0.27, beat -0.38, strong -0.71
minor vii: weak -0.07, beat -0.17, strong -0.33
minor III: weak -0.38, beat -0.67, strong -0.17
minor IIImaj7: weak -0.59, beat -0.14, strong -0.22
minor V7/VI: weak -0.28, beat -0.35, strong 0.01
minor III+: weak 0.01, beat -0.16, strong 0.11
minor III+maj7: weak 0.21, beat -0.47, strong -0.37
minor VI: weak -0.21, beat 0.15, strong -0.26
minor VImaj7: weak -0.09, beat -0.2, strong -0.27
minor VI7: weak -0.16, beat -0.12, strong 0.21
minor N: weak -0.08, beat -0.44, strong 0.01
minor bIImaj7: weak -0.01, beat -0.19, strong -0.24
# progression
major strange: I -0.27, V -0.14, V7 -0.04, V7/V -0.04, iio -0.03, Fr43 -0.04, vi -0.04, V7/ii 0.46, iii -0.04, V7/vi -0.04, viiø7 -0.04, viio7 -0.07, V/iii -0.04, IV -0.05, IVmaj7 -0.04, iv -0.04, bVII -0.04, bVIImaj7 -0.04
major I: strange -0.04, I -0.24, Imaj7 -0.43, V7/IV 0.9, i -0.12, I+ -0.25, V 0.68, V7 -0.06, v -0.03, v7 -0.23, ii 0.37, ii7 0.39, V/V -0.33, V7/V -0.02, iio -0.1, iiø7 -0.35, Fr43 -0.17, vi 0.39, vi7 0.01, V/ii 0.1, V7/ii -0.18, viø7 -0.15, iii7 0.25, V/vi 0.44, V7/vi -0.25, viio/IV -0.26, viiø7/IV 0.22, viio 0.33, viiø7 -0.31, vii -0.31, viio/V 0.02, viiø7/V 0.41, viio7/V 0.06, It6 -0.06, viio/ii -0.06, viiø7/ii -0.02, viio7/ii -0.34, viio/vi 0.02, viiø7/vi -0.04, viio7/vi 0.01, IV 0.3, IVmaj7 0.21, IV7 -0.24, iv -0.25, bVII -0.08, bVIImaj7 -0.07, bIII -0.07, N -0.04
major Imaj7: I -0.33, Imaj7 0.35, V -0.42, V7 -0.14, ii 0.07, ii7 0.29, V/V -0.15, V7/V -0.22, vi -0.07, vi7 -0.04, viø7 -0.02, iii -0.06, viio -0.08, viiø7 0.34, V/iii -0.02, viio/V 0.1, viiø7/V -0.11, viio/ii -0.04, IV -0.02, IVmaj7 -0.34
major V7/IV: I 0.13, V7/IV 0.32, V7 -0.04, v -0.08, v7 -0.07, ii7 -0.03, V/V -0.02, V7/V -0.1, iio -0.08, vi -0.46, vi7 0.08, V/ii -0.14, viio/IV -0.06, viiø7/IV -0.02, viio -0.1, viiø7 -0.15, viio/V 0.32, viio7/V -0.04, viio7/ii -0.04, IV 0.53, IVmaj7 0.02, iv -0.29, bVII -0.18
major i: I -0.14, i -0.15, V -0.67, V7 -0.2, ii7 -0.01, V7/V -0.29, iio -0.13, iiø7 -0.26, viø7 -0.04, viio/IV -0.04, viio -0.03, viio7 -0.04, viio7/V -0.08, IV -0.07, iv -0.17, iv7 -0.04, bVI -0.14
major I+: I -0.07, V -0.05, ii -0.03, ii7 -0.12, V7/V -0.04, vi -0.31, V/vi -0.07, V7/vi -0.08, viio/vi -0.04, IV -0.16, IVmaj7 -0.01
major V: strange 0.36, I -0.1, Imaj7 -0.14, V7/IV 0.28, i -0.12, I+ -0.03, V -0.33, V7 0.97, v -0.24, v7 -0.04, V+ -0.04, ii -0.36, ii7 -0.42, V/V 0.05, V7/V -0.01, vi 0.22, vi7 -0.19, V/ii -0.36, V7/ii -0.08, viø7 -0.26, iii 0.32, iii7 -0.11, V/vi -0.16, V7/vi 0.22, viio/IV -0.04, viiø7/IV -0.04, viio -0.01, viiø7 -0.28, viio7 -0.04, vii -0.16, viio/V -0.15, viiø7/V -0.16, viio7/V -0.07, viio/ii 0.07, viiø7/ii -0.23, viio7/ii 0.53, viio/vi -0.07, viio7/vi -0.26, viio7/iii -0.11, IV 0.57, IVmaj7 -0.37, iv -0.03, iv7 -0.04, bVIImaj7 -0.03, bVII7 -0.26, bVI 0.05, bVImaj7 -0.04
major V7: I 0.94, Imaj7 0.69, V7/IV -0.45, i -0.16, I+ -0.16, V -0.2, V7 0.1, v -0.08, v7 -0.01, V+ -0.01, ii -0.47, ii7 -0.13, V/V -0.04, vi 0.74, vi7 0.23, V/ii -0.36, V7/ii -0.36, vio -0.19, viø7 -0.14, iii 0.02, iii7 -0.08, V/vi 0.22, V7/vi -0.36, viio/IV -0.14, viiø7/IV -0.22, viio -0.22, viiø7 -0.11, viio/V -0.05, viiø7/V 0.19, viio7/V 0.43, viio/ii -0.49, viiø7/ii -0.04, viio7/ii 0.24, viio7/vi -0.15, IV -0.59, IVmaj7 -0.01, iv -0.04, bVI -0.14, bVImaj7 -0.02
major v: I -0.55, V7/IV -0.32, i -0.04, V -0.46, V7 -0.49, v -0.16, v7 0.31, ii -0.22, V/V -0.05, V7/V -0.04, vi -0.51, V7/ii -0.01, vio -0.02, viø7 -0.04, iii -0.04, viio/IV -0.03, viiø7/IV -0.04, viiø7 -0.04, viio7/V -0.03, viio7/ii -0.29, IV 0.48, iv -0.04, bVII -0.14, bVIImaj7 0.44, bIII -0.04
major v7: I -0.42, V7/IV -0.2, V -0.24, V7 -0.07, v -0.03, v7 -0.06, vø7 -0.01, V/V -0.03, vi 0.28, V/ii -0.04, V7/ii -0.04, iii -0.08, viiø7/IV -0.03, viiø7 0.36, viio7 -0.02, IV -0.22, IVmaj7 -0.03, iv -0.03
major V+: I -0.14, V/ii -0.04, iii -0.03, IV -0.07
major vo: V7/IV -0.34
major vø7: I -0.1, V7/IV -0.1, V -0.07, vi -0.02, vi7 -0.03, viio7/ii -0.04, IV -0.04
major ii: I -0.54, Imaj7 -0.06, V7/IV -0.08, i -0.04, I+ -0.11, V 0.28, V7 0.24, v -0.34, v7 -0.28, vø7 -0.1, ii -0.14, ii7 -0.44, V/V -0.09, V7/V 0.03, iiø7 -0.03, vi -0.19, vi7 -0.18, V/ii 0.11, V7/ii -0.29, iii 0.13, iii7 -0.32, V/vi -0.24, V7/vi -0.23, viio/IV -0.08, viiø7/IV -0.42, viio 0.86, viiø7 0.02, viio7 -0.11, vii -0.04, viiø7/V -0.04, viio7/V 0.14, viiø7/ii -0.04, viio7/ii -0.19, viio/vi -0.07, viio7/vi -0.21, IV -0.34, IVmaj7 -0.07, bVII -0.15, bVIImaj7 -0.09, bIII -0.04
major ii7: I 0.13, Imaj7 -0.06, V7/IV 0.11, I+ -0.02, V 0.81, V7 -0.02, v -0.14, v7 -0.12, ii -0.73, ii7 1.18, V/V -0.1, V7/V 0.5, iio -0.11, iiø7 -0.04, vi -0.31, vi7 -0.08, iii -0.22, iii7 -0.07, V/vi 0.04, V7/vi -0.03, viio/IV -0.11, viiø7/IV -0.07, viio 0.1, viiø7/V -0.32, viio/vi -0.07, viio7/iii 0.39, IV -0.4, IVmaj7 -0.04, bVII -0.11, bVIImaj7 -0.04, bVI -0.04
major V/V: I -0.28, Imaj7 -0.04, V -0.43, V7 0.19, v -0.26, V+ -0.06, ii -0.25, ii7 -0.08, V/V -0.12, V7/V 0.27, vi -0.13, iii -0.07, V7/vi -0.38, viio -0.04, viiø7 -0.07, V/iii -0.04, vii -0.28, viio/V -0.04, viio7/vi 0.11
major V7/V: I 0.4, V 0.08, V7 0.05, v -0.28, v7 -0.04, V+ -0.08, vø7 -0.1, ii -0.03, ii7 -0.23, V/V -0.07, V7/V 0.08, vi -0.3, vi7 -0.04, iii -0.16, iii7 0.31, V/vi 0.24, V7/vi 0.07, viio -0.04, V/iii -0.04, V7/iii -0.04, vii -0.05, viio/V -0.34, viio7/ii -0.04, viio/vi 0.05, viio/iii -0.01, IV -0.01
major iio: I -0.05, V -0.28, V7 0.25, ii -0.03, iio -0.13, vi -0.02, viio -0.04, viio7/V -0.04, IVmaj7 -0.04, iv -0.04
major iiø7: I -0.15, V7/IV -0.08, i -0.11, V -0.47, V7 -0.14, ii7 -0.03, iio -0.04, iiø7 -0.01, vi -0.04, iii7 -0.04, viio -0.2, viio7 -0.01
major Fr43: V -0.19, ii7 -0.04, vi -0.04, viio/vi -0.08
major vi: I 0.27, Imaj7 -0.24, V7/IV 0.09, i -0.03, I+ -0.03, V 0.24, V7 -0.24, v 0.1, v7 -0.02, ii 0.07, ii7 0.57, V/V 0.11, V7/V 0.08, iiø7 -0.22, Fr43 -0.05, vi 0.09, vi7 -0.66, V/ii -0.13, vio -0.04, viø7 -0.03, iii 0.03, iii7 -0.33, V/vi -0.66, V7/vi -0.39, viio/IV 0.25, viiø7/IV -0.03, viiø7 -0.36, V/iii -0.21, vii -0.21, viio/V 0.1, viiø7/V 0.26, viio7/V 0.3, viio/ii -0.1, viiø7/ii -0.1, viio7/ii -0.06, viio/vi -0.16, viiø7/vi -0.04, viio7/vi 0.17, viio/iii -0.02, viio7/iii -0.12, IV 0.3, IVmaj7 -0.19, IV7 -0.04, bVII -0.18, bVIImaj7 -0.08
major vi7: I -0.4, V7/IV -0.07, V -0.39, V7 -0.09, V+ -0.04, ii 0.04, ii7 0.33, V/V -0.4, V7/V 0.07, Fr43 -0.1, vi 0.26, vi7 0.28, viio 0.03, viiø7 -0.22, vii -0.07, viio/V 0.31, viiø7/V 0.24, It6 -0.08, viio7/vi -0.07, viio7/iii -0.04, IV -0.01, IVmaj7 -0.17, bVII -0.07, bVIImaj7 -0.03
major V/ii: I -0.09, V -0.13, V7 -0.08, ii -0.26, ii7 -0.14, V/V -0.16, iio -0.07, vi -0.01, V/ii 0.28, V7/ii 0.17, iii -0.32, viio -0.11, viiø7 -0.07, V7/iii -0.07, IV -0.04, IVmaj7 -0.13, bVII -0.02
major V7/ii: I -0.04, V -0.1, V7 -0.09, ii -0.1, ii7 -0.19, V/V -0.23, V7/V -0.04, iio -0.03, iiø7 0.25, vi7 -0.04, V7/ii -0.1, V7/vi -0.01, viio -0.2, viiø7 -0.07, V7/iii -0.07, vii -0.14, viio/ii -0.06, viio7/vi -0.09, IV -0.18, IVmaj7 -0.03, iv -0.04, bVII 0.28, bVIImaj7 -0.11
major vio: i -0.04, V -0.03, v -0.02, V7/V -0.03, iiø7 -0.04, iii -0.03, viio -0.07, viio7/V -0.04
major viø7: I -0.04, V7/IV -0.04, i -0.04, V -0.17, V7 -0.1, ii7 -0.04, V/V -0.08, V7/V -0.05, iiø7 -0.04, Fr43 -0.03, iii -0.04, iii7 -0.04, viio -0.1, viio/V -0.21, viio7/V -0.04, IV -0.02
major iii: I -0.11, Imaj7 -0.16, V -0.18, V7 0.03, ii -0.19, ii7 0.19, V/V 0.26, V7/V -0.04, vi -0.26, vi7 0.01, V/ii -0.07, V7/ii -0.07, viø7 -0.14, iii -0.3, iii7 -0.44, V/vi 0.26, viio 0.07, viiø7 -0.11, V/iii -0.04, V7/iii -0.11, vii -0.07, viio/V -0.34, viiø7/V -0.13, viio/ii 0.5, viiø7/ii -0.06, viio7/ii -0.03, viiø7/vi -0.01, viio7/vi -0.04, viio7/iii -0.02, IV -0.24, IVmaj7 0.32, IV7 -0.04, bVIImaj7 -0.03
major iii7: I -0.32, Imaj7 -0.03, V -0.27, V7 -0.31, ii -0.13, ii7 -0.05, V/V -0.06, V7/V -0.02, vi -0.33, vi7 0.07, V/ii -0.03, V7/ii -0.04, iii -0.02, iii7 -0.04, V/vi -0.08, viio -0.16, vii -0.02, viio/V 0.23, viiø7/V -0.03, viio/ii -0.03, IV -0.21, IVmaj7 -0.24
major V/vi: I -0.09, V/V -0.04, vi -0.06, V/ii -0.09, vio -0.08, iii -0.04, V/vi -0.08, V7/vi 0.64, viio -0.04, viiø7 -0.04, viio/V -0.01, viiø7/V -0.31, IV -0.62, IVmaj7 0.15
major V7/vi: I -0.11, V -0.04, ii -0.09, ii7 -0.06, vi 0.32, vi7 -0.04, vio -0.03, V/vi -0.07, V7/vi -0.1, viio/IV -0.01, viio/V -0.03, viiø7/V -0.08, IV -0.33, IVmaj7 -0.13
major viio/IV: I -0.13, V7/IV -0.4, V -0.07, V7 -0.04, v -0.01, ii -0.12, ii7 -0.08, V/V -0.04, vi -0.13, vi7 -0.18, V/ii -0.04, V7/ii -0.04, viø7 -0.04, viio/IV -0.03, viio -0.03, viiø7 -0.04, IV 0.14, IVmaj7 0.26, iv 0.31, bVIImaj7 -0.01
major viiø7/IV: I -0.13, V -0.1, V7 -0.06, ii -0.02, vi -0.16, vi7 -0.2, V/ii -0.04, V7/ii -0.1, V/vi -0.05, viiø7/IV -0.04, viio7 -0.04, viio/ii -0.04, IV 0.03, IVmaj7 -0.04, bVII -0.04
major viio7/IV: V7/IV -0.04, iv 0.39
major viio: I 0.8, Imaj7 0.21, V7/IV 0.27, i -0.31, I+ -0.32, V -0.43, V7 0.21, v -0.04, ii -0.19, ii7 -0.28, vi 0.31, vi7 -0.03, V/ii -0.27, V7/ii -0.09, iii 0.14, iii7 -0.1, V/vi -0.19, V7/vi -0.1, viio/IV -0.02, viiø7/IV -0.07, viio -0.28, viiø7 0.15, viiø7/V -0.05, viio/ii -0.13, viio7/iii -0.29, IV 0.36, IVmaj7 -0.23, bVI -0.04
major viiø7: I 0.48, V7/IV -0.07, I+ -0.04, V 0.01, V7 -0.4, ii -0.16, V/V -0.04, vi -0.47, V7/ii -0.11, iii -0.11, iii7 -0.24, V/vi -0.2, V7/vi -0.13, viio/IV -0.1, viiø7 -0.08, vii -0.04, viiø7/V -0.13, viio/vi -0.09, IV -0.25
major viio7: I 0.02, i -0.07, V -0.13, V7 -0.03, viø7 -0.04, viio -0.09
major V/iii: I -0.19, Imaj7 -0.1, V7 -0.02, V/V -0.04, V/ii -0.21, iii -0.3, V/vi -0.04, V/iii -0.09, vii -0.04, viiø7/ii -0.04
major V7/iii: I -0.22, V7/ii -0.04, iii -0.22, V/vi -0.02, V/iii -0.04
major vii: strange -0.07, I -0.61, Imaj7 -0.25, V -0.24, V7 0.38, V/V -0.12, V7/V -0.07, vi -0.15, iii -0.08, V7/vi -0.03, V/iii -0.08, V7/iii -0.04, viio7/iii -0.04, IV -0.16
major viio/V: I -0.42, V 0.42, V7 -0.08, v -0.1, V+ -0.14, ii7 -0.09, V/V -0.16, V7/V -0.27, vi -0.12, iii -0.06, iii7 -0.03, V/vi -0.04, viio -0.04, V7/iii -0.1, viio/V 0.28, viio/vi -0.04
major viiø7/V: I 0.2, Imaj7 -0.06, V 0.43, V7 -0.06, ii -0.04, ii7 -0.08, V/V -0.08, V7/V -0.23, iiø7 -0.04, vi -0.17, vi7 -0.04, V7/ii -0.04, iii -0.08, V/vi -0.12, V7/vi -0.1, viio -0.17, viiø7 -0.07, V7/iii -0.04, vii -0.09, viiø7/V -0.03, viio/vi -0.13, viio7/vi -0.09, bVII -0.03
major viio7/V: V 0.26, V7 -0.16, V/V -0.07, V7/V 0.13
major It6: V -0.14
major Ger65: bIII -0.04
major viio/ii: ii 0.02, iio -0.04, vi -0.1, vi7 -0.04, V/ii -0.08, V7/ii -0.1, viiø7/IV -0.02, viio -0.01, V7/iii -0.04, viio/ii -0.1, IV -0.03, IVmaj7 -0.04, bVIImaj7 -0.04
major viiø7/ii: I -0.04, V7 -0.08, ii -0.26, viio -0.04, viio/V -0.02, IV -0.13
major viio7/ii: I -0.04, V7/IV -0.03, V -0.01, v -0.01, ii 0.27, V/V -0.04, vi7 -0.03, V/ii 0.16, V7/ii -0.19, viio -0.04, IV -0.12, iv -0.03
major viio/vi: I -0.1, ii -0.08, ii7 -0.01, vi7 -0.03, V/ii -0.07, vio -0.03, viø7 -0.04, V/vi -0.03, viio7/vi -0.04, IV -0.08
major viiø7/vi: I -0.01, vi -0.08, IV -0.04
major viio7/vi: I -0.13, V7 -0.02, vi 0.14, V/ii -0.08, V7/ii -0.02, iii -0.04, V/vi -0.18, V7/vi -0.12, viio7/iii -0.07, IV -0.01, IVmaj7 -0.04
major viio/iii: V/vi -0.02
major viio7/iii: V -0.12, iii -0.04, V7/iii -0.02
major IV: I 0.36, Imaj7 -0.14, V7/IV -0.32, i -0.09, I+ -0.07, V 0.09, V7 0.21, v -0.28, v7 0.1, V+ -0.04, vø7 -0.08, ii 0.16, ii7 -0.03, V/V -0.22, V7/V 0.17, iio -0.04, iiø7 -0.04, vi -0.24, vi7 -0.33, V/ii -0.06, V7/ii 0.22, vio -0.04, iii -0.03, iii7 -0.04, V/vi 0.01, V7/vi -0.08, viio/IV 0.15, viiø7/IV -0.11, viio7/IV -0.01, viio 0.09, viiø7 0.43, viio7 -0.1, vii -0.14, viio/V -0.14, viiø7/V -0.21, viio7/V 0.28, Ger65 -0.04, viio/ii 0.05, viiø7/ii -0.04, viio7/ii 0.36, viio7/vi -0.05, viio7/iii -0.04, IV -0.09, IVmaj7 0.05, IV7 -0.12, iv 0.02, iv7 -0.03, bVII -0.42, bVIImaj7 -0.14, bVI -0.15
major IVmaj7: I -0.62, I+ -0.04, V 0.04, V7 0.32, v -0.1, v7 -0.07, ii 0.46, ii7 -0.39, V/V 0.1, V7/V -0.31, vi -0.19, vi7 -0.03, viø7 -0.04, iii -0.19, iii7 -0.05, V/vi -0.13, V7/vi -0.04, viio 0.18, viiø7 -0.26, viiø7/V -0.18, viio7/V -0.08, viio7/vi -0.04, IV -0.38, IVmaj7 -0.22, bVIImaj7 -0.04
major IV7: i -0.1, V/V -0.04, V7/V -0.08, vio -0.03, viio -0.19, viio7/V -0.08, IV -0.04
major iv: I -0.09, i -0.14, V 0.09, V7 -0.18, v7 -0.03, ii7 -0.16, V/V -0.04, iiø7 -0.08, V7/ii 0.29, viio7/IV -0.03, viio -0.08, viio7/V -0.02, IV -0.06, iv -0.14, iv7 -0.02, bVI -0.04, bVImaj7 -0.03
major iv7: i -0.03, V -0.09, V7 -0.08, iiø7 -0.04
major bVII: I -0.46, V7/IV -0.41, V 0.56, V7 -0.12, v -0.14, v7 -0.1, ii 0.29, ii7 -0.04, V/V -0.11, vi -0.04, V7/ii -0.02, viio/IV -0.2, viiø7/IV -0.09, viio7/IV -0.04, viio -0.08, viiø7 -0.1, viio7 0.25, viio/ii -0.03, IV -0.39, bVII -0.04, bVIImaj7 -0.07
major bVIImaj7: I -0.12, V -0.24, V7 -0.06, ii -0.07, V/V -0.04, V7/V -0.01, vi -0.07, iii -0.03, V7/vi -0.03, viio/IV -0.04, viio -0.04, viiø7 0.43, viio/ii -0.04, IV -0.11, IVmaj7 -0.03
major bVII7: I -0.04, V7 -0.04, V7/ii -0.26
major bIII: I -0.07, V -0.12, v -0.04, iio -0.04, viø7 -0.08, viio7/IV 0.41, viio -0.08, IV7 -0.04, bVII -0.06
major bVI: i -0.08, V -0.1, V7 -0.04, v -0.04, ii7 -0.07, iiø7 -0.19, bIII -0.02
major bVImaj7: I -0.03, V -0.02, V7 -0.04, iv -0.04
major N: V7 -0.07
minor strange: i -0.11, i7 -0.04, I -0.06, v -0.04, v7 -0.08, V -0.13, V7 -0.27, iiø7 -0.03, ii7 -0.04, viø7 -0.07, #vi -0.07, viio/iv -0.04, viiø7/iv -0.04, viiø7 -0.06, viio7/V 0.42, Ger65 -0.04, iv -0.04, IV -0.12, VII -0.06, III -0.16, V7/VI -0.04, III+ -0.04, VI -0.04
minor i: strange -0.04, i -0.04, i7 -0.33, imaj7 -0.41, I 0.11, V7/iv 0.08, v 0.6, v7 -0.26, V 0.56, V7 0.16, viio/VI -0.04, viiø7/VI -0.11, iio 0.11, iiø7 0.36, ii 0.24, ii7 -0.44, V/V 0.25, V7/V 0.14, Fr43 -0.19, vio 0.32, viø7 0.14, viio7/VII -0.06, #vi -0.04, viio/iv -0.04, viio7/iv 0.12, viio 0.53, viio7 0.18, viio/V 0.24, viio7/V 0.27, Ger65 -0.07, iv 0.24, iv7 0.14, IV 0.38, IV7 -0.22, VII 0.32, VII7 0.16, vii -0.13, III 0.03, IIImaj7 -0.18, V7/VI -0.11, III+ -0.17, III+maj7 -0.21, VI 0.24, VImaj7 0.17, VI7 0.21, N 0.07, bIImaj7 -0.02
minor i7: i -0.23, v -0.07, v7 -0.03, V -0.08, V7 -0.11, iio -0.01, iiø7 -0.2, ii -0.12, V/V -0.08, viio7 -0.17, viio/V -0.02, iv -0.23, iv7 -0.08, IV -0.07, IV7 0.22, VII -0.14, VII7 -0.02, vii -0.04, III -0.08, VI 0.22, VImaj7 -0.04
minor imaj7: i -0.12, V -0.26, V7 -0.07, iiø7 -0.06, viø7 -0.04, viio -0.07, viio7 -0.01, viio7/V -0.04, iv -0.22, iv7 -0.07, IV -0.11, IV7 -0.03
minor I: strange -0.04, i -0.11, i7 0.41, I 0.04, V7/iv 0.43, v -0.34, v7 -0.08, V -0.16, V7 -0.13, viiø7/VI -0.04, iio -0.2, iiø7 -0.27, ii -0.43, ii7 -0.08, V/V -0.03, V7/V -0.2, #vi -0.34, viio7/iv -0.03, viio -0.06, viiø7 -0.02, viio7 -0.14, viio/V -0.14, viio7/V 0.06, It6 -0.04, iv -0.31, iv7 -0.14, IV -0.51, IV7 0.18, III -0.04, V7/VI -0.15, VImaj7 -0.08, N -0.17
minor V7/iv: i -0.04, I -0.24, V7/iv -0.04, v -0.03, V7 -0.04, iio -0.16, iiø7 -0.42, ii 0.26, V/V 0.09, V7/V -0.07, viø7 -0.03, viio7/iv -0.04, viiø7 -0.16, viio7 -0.2, viio/V -0.15, viio7/V -0.04, It6 -0.07, iv 0.36, iv7 -0.04, IV7 -0.07, VImaj7 -0.04, N -0.04, bIImaj7 -0.04
minor v: i -0.3, i7 -0.29, I -0.41, V7/iv 0.01, v -0.27, v7 0.04, V -0.15, V7 -0.27, viiø7/VI -0.08, iio 0.15, iiø7 -0.24, ii -0.17, ii7 -0.03, V/V -0.12, V7/V -0.3, Fr43 -0.08, vio 0.02, viø7 -0.44, #vi -0.08, viio/iv 0.25, viiø7/iv 0.11, viio7/iv -0.07, viio 0.48, viiø7 -0.07, viio7 -0.14, viio/V -0.14, viio7/V 0.24, It6 -0.02, Ger65 -0.04, #io7 -0.01, iv 0.19, iv7 0.27, IV 0.21, IV7 -0.27, VII -0.38, VII7 -0.14, III 0.26, IIImaj7 -0.12, V7/VI -0.23, III+maj7 0.22, VI 0.22, VImaj7 0.06, bIImaj7 -0.07
minor v7: i 0.1, I -0.21, V7/iv -0.28, v -0.04, V -0.17, V7 -0.03, iiø7 -0.07, #vi -0.02, viio/iv -0.03, viiø7/iv -0.04, viio7/iv -0.04, viio -0.04, viio7 -0.04, Ger65 -0.02, iv -0.11, iv7 -0.03, IV -0.09, IV7 -0.06, III -0.13, III+ -0.03, VI -0.03, VImaj7 -0.08
minor V: i 0.06, imaj7 -0.08, I -0.11, V7/iv -0.13, v -0.15, V -0.64, V7 0.89, V+ -0.04, iio -0.07, iiø7 0.11, ii -0.11, V/V -0.08, V7/V -0.06, vio -0.07, viø7 0.1, #vi 0.23, viiø7/iv -0.04, viio -0.22, viio7 0.49, viio/V -0.08, viio7/V -0.14, It6 -0.04, iv 0.37, iv7 -0.02, IV 0.25, VII7 -0.04, III -0.02, IIImaj7 -0.15, III+ -0.12, III+maj7 0.1, VI -0.26, VImaj7 -0.33
minor V7: i 0.87, i7 -0.08, imaj7 -0.07, I 0.24, V7/iv -0.21, v -0.2, V -0.18, V7 0.31, iiø7 -0.01, ii -0.11, ii7 -0.04, vio 0.31, viø7 0.2, #vi -0.24, viio/iv 0.26, viiø7/iv -0.04, viio -0.48, viio7 -0.01, viio7/V -0.25, #io7 -0.04, iv -0.39, iv7 0.06, IV -0.16, IV7 -0.03, IIImaj7 -0.04, III+ -0.03, III+maj7 -0.04, VI 0.67, VImaj7 0.16
minor V+: i -0.07
minor viio/VI: i -0.12, I -0.11, V7/iv -0.04, viio/VI -0.04, V/V -0.1, viio7/iv -0.01, viio7 -0.26, It6 -0.04, iv -0.19, IV -0.06, VII7 -0.04, VI -0.05, VImaj7 -0.15
minor viiø7/VI: i -0.27, I -0.04, V7/iv -0.27, v7 -0.03, V -0.05, viio/VI -0.04, iiø7 -0.03, viio7/iv -0.11, iv -0.14, IV -0.04, IV7 -0.04, VII -0.04, VII7 -0.04, VI -0.14
minor iio: i 0.43, imaj7 -0.07, I -0.27, V7/iv -0.03, v 0.2, v7 -0.22, V 0.03, V7 -0.17, V+ -0.04, iio -0.17, iiø7 0.11, ii -0.01, V/V 0.42, V7/V -0.26, Fr43 -0.01, vio -0.04, viio/iv -0.04, viio -0.15, viio7 0.11, viio7/V 0.53, It6 -0.04, Ger65 -0.03, iv -0.36, iv7 -0.01, IV -0.04, IV7 -0.15, VII -0.23, VII7 -0.18, III -0.27, IIImaj7 -0.28, V7/VI 0.45, III+ -0.31, III+maj7 0.04, VI -0.07
minor iiø7: i -0.11, i7 -0.08, imaj7 -0.04, I -0.27, V7/iv -0.14, v -0.3, v7 -0.07, V 0.88, V7 0.8, viiø7/VI -0.03, iio 0.04, iiø7 1.19, ii -0.6, ii7 -0.07, V7/V -0.19, Fr43 -0.03, viio7/VII -0.04, viio/iv -0.06, viio -0.29, viiø7 -0.11, viio7 0.28, viio7/V -0.37, It6 -0.04, iv -0.45, iv7 0.11, IV -0.22, IV7 -0.06, VII -0.27, VII7 -0.17, III -0.29, IIImaj7 -0.06, III+ 0.08, III+maj7 -0.19, VI -0.2, VImaj7 -0.11
minor ii: i -0.38, i7 -0.04, I 0.15, v -0.06, v7 -0.04, V -0.73, V7 -0.07, iio -0.11, iiø7 0.04, ii 0.14, ii7 -0.14, V/V -0.04, V7/V -0.03, vio -0.19, viø7 0.4, #vi -0.13, viio/iv -0.04, viio 0.42, viiø7 0.47, viio7 -0.24, viio7/V -0.14, IV 0.43, IV7 0.06, VII -0.11, III -0.11, V7/VI -0.04, III+ -0.2, VI -0.02
minor ii7: i -0.05, i7 -0.02, I -0.15, V7/iv -0.01, v -0.04, v7 -0.03, V -0.34, V7 -0.44, iio -0.04, iiø7 -0.07, ii -0.06, ii7 -0.1, V7/V -0.04, viio -0.18, viiø7 -0.08, viio7 -0.1, III -0.16, III+ -0.03
minor V/V: i 0.35, imaj7 -0.08, I -0.06, v 0.06, V -0.69, V7 -0.14, V/V -0.17, V7/V 0.24, viø7 -0.03, III+ 0.15, III+maj7 -0.02
minor V7/V: strange -0.04, i -0.18, imaj7 -0.14, V7/iv -0.08, v -0.17, V7 -0.21, V+ -0.08, viiø7/VI -0.15, V/V -0.14, V7/V -0.09, Fr43 -0.04, viio/V -0.04, viio7/V -0.04, III -0.1, III+ 0.34, III+maj7 -0.04
minor Fr43: i -0.04, V7/iv -0.04, v -0.08, V -0.15, V7 -0.1, viio7/V -0.04
minor vio: i -0.42, v -0.23, V7 -0.22, iiø7 0.12, ii7 -0.13, V/V -0.11, V7/V -0.15, vio -0.12, viø7 0.37, #vi -0.04, viio 0.09, viio7 0.09, viio/V -0.12, viio7/V -0.04, iv -0.1, IV7 -0.04, VII 0.09, vii -0.11, III -0.21, VI -0.03
minor viø7: i -0.25, I -0.04, v -0.23, V 0.07, V7 0.38, iio -0.06, iiø7 -0.16, ii 0.55, ii7 -0.04, V/V 0.03, V7/V 0.12, Fr43 -0.01, vio -0.02, viø7 -0.02, #vi -0.04, viio 0.58, viiø7 -0.07, viio7 -0.17, viio7/V -0.14, Ger65 -0.04, iv -0.05, iv7 -0.04, IV 0.01, IV7 0.21, VII -0.24, VII7 -0.04, III -0.09, VImaj7 -0.04
minor viio7/VII: i -0.04, IV -0.03, VII 0.32
minor #vi: I -0.05, v -0.04, V -0.3, V7 -0.04, ii -0.15, ii7 -0.18, V/V -0.03, V7/V -0.11, Fr43 -0.03, #vi -0.04, viio7/iv -0.01, viio -0.14, viiø7 -0.04, viio7 -0.01, viio7/V -0.04, iv -0.04, IV 0.18, VII -0.09, III -0.04, N -0.04
minor viio/iv: I -0.04, V7/iv -0.15, V -0.04, viiø7/VI -0.03, iiø7 -0.04, ii -0.06, #vi -0.01, viio/iv -0.11, viiø7/iv -0.05, viio7/iv 0.17, viio/V -0.03, iv 0.35, iv7 -0.04, IV -0.33, IV7 -0.12, VI -0.06, N -0.04, bIImaj7 -0.03
minor viiø7/iv: v -0.12, v7 -0.04, ii -0.03, V/V -0.04, V7/V -0.02, vio -0.04, viio7 -0.04, viio/V -0.04, iv 0.28, IV 0.1
minor viio7/iv: i7 -0.04, I -0.17, V7/iv -0.12, V -0.01, iiø7 -0.03, viio/iv -0.04, viio7/iv 0.44, iv 0.36, iv7 -0.04, IV 0.27, VI -0.08, bIImaj7 -0.04
minor viio: strange -0.04, i 0.54, i7 -0.02, imaj7 -0.04, I -0.06, V 0.19, V7 -0.11, iio 0.45, iiø7 -0.16, ii -0.07, V7/V -0.04, vio -0.13, viio -0.52, viiø7 -0.09, viio7 0.2, viio7/V -0.27, iv -0.16, IV -0.04, IV7 -0.04, VII7 -0.04, III -0.04, III+ -0.05, VI -0.11, VImaj7 -0.03
minor viiø7: i 0.24, I 0.08, V7/iv -0.04, V -0.13, V7 -0.04, viiø7 -0.07, IV -0.08, III+ -0.04
minor viio7: i 0.51, imaj7 -0.04, I 0.08, V7/iv 0.28, v -0.04, v7 -0.04, V 0.24, V7 -0.38, iio -0.14, iiø7 -0.08, ii -0.01, V/V -0.04, V7/V -0.11, Fr43 -0.04, viø7 -0.07, viio -0.18, viio7 0.36, viio7/V 0.17, iv 0.11, iv7 -0.23, III -0.1, IIImaj7 -0.04, III+ -0.25, III+maj7 -0.13, VI -0.18, VImaj7 -0.04
minor viio/V: i -0.04, v -0.33, v7 -0.04, V 0.07, viio/VI -0.1, V/V -0.04, viio/V -0.08, viiø7/V -0.03, viio7/V -0.01
minor viiø7/V: v -0.03, V -0.07
minor viio7/V: i 0.21, I -0.04, v 0.08, V 0.73, V7 0.05, viiø7/VI -0.04, ii7 -0.03, V/V -0.11, V7/V -0.42, viø7 -0.03, viiø7/iv -0.02, viio -0.17, viio7 -0.03, viio/V -0.04, viio7/V 0.32, VII -0.1
minor It6: v -0.11, V -0.07, V7 -0.08, iv -0.1, VII -0.02
minor Ger65: i 0.16, v -0.11, V -0.23, V7 -0.06, iio -0.04, iiø7 -0.09, viio7 -0.04, viio7/V -0.02, iv -0.04, III -0.09
minor #io7: iio -0.04, iv -0.11, IV -0.02
minor iv: strange -0.04, i 0.62, i7 -0.04, imaj7 -0.04, I -0.16, V7/iv 0.17, v -0.3, v7 0.11, V 0.6, V7 -0.08, viio/VI -0.12, viiø7/VI -0.17, iio 0.15, iiø7 0.1, ii -0.14, ii7 -0.23, V/V 0.1, V7/V 0.32, viø7 -0.04, viio7/VII -0.01, viio/iv -0.38, viiø7/iv -0.04, viio7/iv 0.39, viio -0.01, viio7 -0.04, viio7/V 0.2, It6 -0.01, iv -0.13, iv7 0.07, IV 0.25, IV7 -0.07, VII -0.45, VII7 -0.44, vii -0.08, III -0.42, IIImaj7 -0.04, V7/VI -0.04, III+ -0.1, III+maj7 -0.13, VI -0.24, VImaj7 -0.07, N -0.04, bIImaj7 -0.11
minor iv7: i -0.61, i7 -0.04, I -0.08, v -0.28, v7 0.25, V 0.32, V7 0.03, viio/VI -0.01, viiø7/VI -0.14, iio 0.23, iiø7 -0.19, ii7 -0.1, V/V -0.08, viio -0.44, viio7 0.2, viio7/V 0.15, iv 0.11, iv7 0.34, IV7 0.37, VII -0.21, VII7 -0.2, III -0.16, IIImaj7 -0.05, III+ -0.08, III+maj7 -0.04, VI -0.12, VImaj7 -0.04, N -0.11
minor IV: strange -0.04, i -0.17, I -0.5, V7/iv -0.21, v -0.22, v7 -0.22, V -0.7, V7 -0.08, iiø7 -0.29, ii 0.43, ii7 -0.19, V/V 0.1, vio -0.01, viø7 -0.08, #vi -0.16, viio/iv -0.11, viio7/iv -0.04, viio 0.21, viiø7 0.15, viio7 0.2, viio7/V 0.16, #io7 -0.03, iv -0.37, IV -0.32, IV7 0.13, VII -0.5, VII7 -0.06, vii -0.07, III -0.09, III+ 0.3, III+maj7 -0.04, VI 0.33, VI7 -0.05
minor IV7: i -0.22, V7/iv -0.03, v 0.05, v7 -0.07, V -0.33, V7 0.01, iiø7 -0.12, ii 0.04, ii7 -0.08, V/V -0.08, V7/V -0.04, vio -0.16, viiø7/iv -0.08, viio7/iv -0.04, viio 0.11, viio7 0.25, viio/V -0.04, viio7/V -0.11, iv 0.38, iv7 -0.04, IV7 0.31, VII 0.42, VII7 -0.15, vii -0.08, III -0.04, III+ -0.04, VI -0.03, N -0.04
minor VII: strange -0.07, i -0.67, i7 -0.12, I -0.26, V7/iv -0.12, v 0.05, v7 -0.08, V 0.05, V7 -0.06, iio 0.41, iiø7 0.37, ii -0.28, ii7 -0.05, V/V -0.13, V7/V -0.08, vio -0.19, viø7 -0.06, viio/iv 0.11, viiø7/iv 0.22, viio7/iv -0.24, viio 0.37, viio7 0.36, viio7/V -0.13, Ger65 -0.03, iv 0.51, iv7 -0.06, IV -0.32, IV7 -0.31, VII -0.37, VII7 0.11, III 0.15, IIImaj7 -0.05, V7/VI -0.11, III+ -0.16, III+maj7 -0.19, VI 0.2, VImaj7 -0.07
minor VII7: i -0.67, i7 -0.08, I -0.05, V7/iv -0.18, v -0.34, v7 -0.07, V 0.01, V7 -0.1, viio/VI -0.04, iio -0.07, iiø7 -0.07, ii -0.04, Fr43 -0.04, viio/iv -0.23, viio7 -0.27, viio7/V -0.04, Ger65 -0.04, iv -0.06, iv7 -0.04, IV -0.04, III 0.21, IIImaj7 -0.11, V7/VI -0.04, III+ 0.15, III+maj7 -0.28, VI -0.19, VImaj7 -0.05
minor vii: i -0.2, i7 -0.04, I -0.1, v7 -0.03, V -0.17, iv 0.11, IV -0.04, IV7 -0.05, vii -0.03, III -0.08, VI -0.03
minor III: i -0.52, i7 -0.09, I 0.37, V7/iv 0.03, v 0.37, v7 -0.41, V 0.24, V7 0.21, V+ -0.03, viio/VI -0.08, viiø7/VI -0.08, iio -0.12, iiø7 -0.27, ii 0.22, ii7 -0.04, Fr43 -0.04, vio -0.17, viø7 0.12, viio7/VII -0.01, viio/iv -0.11, viiø7/iv -0.06, viio7/iv 0.12, viio -0.04, viio7 0.23, viio7/V -0.13, Ger65 -0.08, iv -0.14, iv7 -0.7, IV 0.01, IV7 0.29, VII 0.12, VII7 -0.18, III -0.15, IIImaj7 -0.06, V7/VI -0.3, III+ 0.4, III+maj7 -0.17, VI -0.36, VImaj7 -0.12, VI7 -0.04, N -0.12
minor IIImaj7: i -0.4, imaj7 -0.04, I -0.04, V7/iv -0.02, v -0.08, v7 -0.03, V -0.31, V7 0.38, iiø7 0.2, V/V -0.03, vio -0.04, viio -0.15, viio7 -0.23, It6 -0.02, iv -0.22, iv7 -0.12, IV 0.1, IV7 -0.08, VII -0.05, III -0.02, IIImaj7 -0.04, VI -0.05, VImaj7 0.25
minor V7/VI: i -0.22, I 0.33, iiø7 -0.04, V7/V -0.15, viio7/iv -0.17, viio7 -0.05, Ger65 -0.02, iv -0.31, IV -0.03, VI 0.03, VImaj7 -0.24
minor III+: i 0.02, V 0.04, V7 -0.01, iio -0.04, iiø7 -0.19, ii -0.08, vio -0.08, viø7 0.13, viio -0.04, viiø7 -0.04, viio7 -0.08, viio7/V 0.04, Ger65 -0.04, iv -0.31, iv7 0.15, IV -0.08, IV7 0.05, IIImaj7 -0.04, III+maj7 0.31, VI 0.12, VImaj7 -0.07, bIImaj7 -0.04
minor III+maj7: i -0.02, i7 -0.04, I -0.08, V -0.1, V7 -0.09, iiø7 -0.11, viio -0.13, viio7 -0.08, viiø7/V -0.03, iv 0.39, iv7 -0.04, IV7 -0.03, III+maj7 -0.04, VI -0.38, VImaj7 0.21
minor VI: i -0.41, i7 -0.13, I 0.21, v 0.62, v7 -0.08, V -0.05, V7 -0.13, viio/VI -0.14, viiø7/VI -0.13, iio -0.04, iiø7 0.23, ii7 -0.07, V/V 0.26, V7/V 0.07, viio7/VII -0.19, viio/iv 0.1, viio7/iv -0.01, viio 0.14, viio7 -0.01, viio7/V -0.07, It6 -0.04, Ger65 -0.04, #io7 -0.04, iv -0.24, iv7 0.28, IV -0.37, IV7 0.5, VII 0.11, VII7 -0.42, III -0.35, IIImaj7 -0.01, V7/VI -0.1, III+maj7 -0.08, VI -0.44, VImaj7 -0.12, VI7 -0.16, N -0.11, bIImaj7 -0.08
minor VImaj7: i 0.29, imaj7 -0.03, I -0.03, v -0.1, V -0.38, V7 -0.29, iio 0.01, iiø7 0.03, V7/V 0.28, viio -0.01, viio7 -0.13, iv 0.11, iv7 0.12, IV -0.02, IV7 -0.11, VII -0.11, VII7 -0.08, vii -0.03, III -0.04, III+ -0.07, VI -0.07, VImaj7 -0.04, bIImaj7 -0.03
minor VI7: V7 -0.05, iio -0.04, viio7/VII -0.08, iv 0.43, IV7 -0.08, bIImaj7 -0.04
minor N: i -0.11, I -0.05, V -0.2, viio/VI -0.03, viiø7/VI -0.11, iio -0.04, iiø7 -0.06, viio/iv -0.04, iv -0.07, iv7 -0.04, VII7 -0.04, III -0.18, V7/VI -0.04, VI -0.06, VI7 -0.04
minor bIImaj7: I -0.09, V -0.03, V7 -0.04, viio/VI -0.04, iiø7 -0.04, viio/iv -0.04, vii -0.07, III -0.11, V7/VI -0.04, III+ -0.03, VI -0.02
# progression with inversions
major strangea: Ia -0.21, V7/Va -0.04, viiø7a -0.04, viio7a -0.04, viio7c -0.03, V/iiia -0.04, IVa -0.01, IVb -0.04, bVIIb -0.04, bVIImaj7b -0.04
major strangeb: Ia -0.04, Ic -0.03, Va -0.14, V7d -0.04, Fr43a -0.04, via -0.04, V7/iia 0.46, iiia -0.04, V7/vid -0.04, IVmaj7b -0.04
major strangec: Ic -0.01, iiob -0.03
major stranged: ivb -0.04
major Ia: Ia -1.58, Ib 0.8, Ic -0.27, Imaj7a -0.32, Imaj7b -0.13, Imaj7c -0.04, Imaj7d -0.37, V7/IVa 0.65, V7/IVb -0.23, V7/IVc -0.1, V7/IVd 0.48, ia -0.06, I+a -0.08, Va 0.35, Vb 0.38, Vc -0.22, V7a -0.22, V7b 0.01, V7c 0.22, V7d -0.32, vb -0.07, v7a -0.06, v7c -0.04, iia 0.15, iib 0.42, iic -0.17, ii7a -0.16, ii7b -0.02, ii7c 0.11, ii7d 0.1, V/Va 0.17, V/Vb -0.1, V/Vc -0.08, V7/Vb 0.13, V7/Vc 0.11, V7/Vd -0.1, iiø7a -0.16, iiø7c -0.04, iiø7d -0.05, Fr43a -0.07, Fr43d -0.12, via 0.6, vib -0.21, vic -0.09, vi7a -0.07, vi7b -0.04, vi7d -0.04, V/iib 0.17, V7/iib -0.07, viø7a -0.1, iiia 0.19, iiib 0.2, iiic -0.37, iii7a 0.59, iii7b -0.08, iii7c 0.13, iii7d -0.02, V/via -0.14, V/vib 0.42, V7/vib -0.07, V7/vic -0.08, V7/vid -0.01, viio/IVa -0.14, viio/IVb -0.04, viiø7/IVa 0.34, viiø7/IVd -0.04, viioa -0.27, viiob 0.42, viioc 0.14, viiø7a 0.13, viiø7b -0.28, viiø7c -0.11, viiø7d -0.22, viib -0.31, viio/Va -0.05, viio/Vb 0.22, viio/Vc -0.13, viiø7/Va -0.16, viiø7/Vb -0.16, viiø7/Vc 0.24, viio7/Va -0.1, viio7/Vc -0.04, It6a -0.02, It6c -0.04, viio/iia -0.06, viiø7/iid -0.02, viio7/iia -0.32, viio/vib 0.1, viio/vic -0.04, viiø7/vib -0.04, viio7/via 0.19, viio7/vib -0.11, IVa 0.33, IVb 0.28, IVc -0.49, IVmaj7a 0.25, IVmaj7b 0.32, IVmaj7c -0.3, IVmaj7d -0.1, IV7d -0.07, iva -0.14, bVIIb -0.08, bVIImaj7b -0.03, bVIImaj7c -0.04, Na -0.04
major Ib: strangea -0.04, Ia 0.31, Ib -1.08, Ic 0.13, Imaj7a 0.11, Imaj7b 0.07, Imaj7c -0.06, V7/IVa 0.02, V7/IVb 0.52, V7/IVc -0.07, V7/IVd -0.04, ia -0.03, ib -0.04, I+a -0.08, I+b -0.12, Va 0.7, Vb 0.04, Vc -0.6, V7a -0.54, V7b 0.59, V7c 0.02, V7d 0.07, va 0.08, vc -0.07, v7a -0.15, iia 0.24, iib -0.29, ii7a 0.11, ii7b 0.39, ii7c -0.03, ii7d -0.15, V/Va -0.23, V/Vb -0.39, V7/Va -0.24, V7/Vb -0.56, V7/Vd 0.22, iioa -0.1, iiø7a -0.05, iiø7b -0.08, iiø7d -0.04, via 0.23, vib 0.16, vic -0.33, vi7a 0.27, vi7b -0.22, vi7c -0.14, vi7d -0.11, V/iia -0.09, V/iib -0.03, V7/iic -0.08, V7/iid -0.12, viø7b -0.05, iiia -0.38, iiib 0.1, iiic -0.01, iii7a -0.16, iii7b -0.06, iii7c -0.1, iii7d -0.17, V/via 0.28, V/vic -0.09, V7/via -0.13, V7/vib -0.09, viio/IVb -0.11, viiø7/IVa -0.05, viiø7/IVb -0.03, viiø7/IVd -0.04, viioa -0.28, viiob 0.36, viioc -0.11, viiø7b -0.03, viiø7c -0.05, viio/Va -0.09, viio/Vb -0.04, viio/Vc -0.1, viiø7/Va 0.16, viiø7/Vb -0.07, viiø7/Vc -0.11, viiø7/Vd -0.14, viio7/Va -0.05, viio7/iia -0.04, viio/via -0.06, viio/vib -0.02, viio7/via -0.14, viio7/vic -0.02, IVa 0.02, IVb 0.18, IVc -0.08, IVmaj7a -0.07, IVmaj7b -0.21, IVmaj7c -0.04, IVmaj7d 0.15, IV7c -0.04, IV7d -0.17, iva -0.1, ivb -0.04, bIIIa -0.07
major Ic: Ia 0.05, Ib 0.01, Ic -0.11, Va 0.27, Vb -0.04, V7a 0.08, V7b -0.03, V7d -0.42, iib 0.17, ii7a -0.08, ii7b 0.48, ii7c -0.02, V/Vb -0.15, V7/Vb 0.57, V7/Vc -0.02, via -0.17, vib -0.04, vi7d -0.07, iii7a -0.04, viioa -0.12, viiob -0.26, viioc -0.03, viio/Vb -0.2, viiø7/Va 0.46, viio7/Va 0.21, IVa 0.01, IVb -0.54, IVmaj7a -0.25, IVmaj7b 0.25
major Imaj7a: Ia -0.13, Ib -0.07, Ic -0.01, Va -0.02, Vb -0.32, V7b -0.11, iia -0.17, iib 0.37, ii7a -0.04, ii7d 0.42, V/Va -0.08, V7/Va -0.03, V7/Vd -0.02, via -0.19, vib 0.36, vic -0.23, iiia -0.04, viioa -0.04, viiø7a -0.07, viiø7b -0.07, viio/Vb -0.06, viio/iib -0.04, IVa 0.23, IVb -0.12, IVmaj7a -0.15, IVmaj7b -0.1
major Imaj7b: Ib -0.01, Imaj7a 0.39, Va -0.08, V7d -0.04, ii7b -0.09, V/Va -0.03, V7/Vb -0.14, V7/Vd -0.04, via 0.22, vib -0.04, vic -0.04, vi7a -0.04, viø7a -0.02, iiia -0.02, viio/Vb -0.09, viiø7/Va -0.04, viiø7/Vd -0.04, IVa -0.31, IVb -0.07, IVmaj7d -0.02
major Imaj7c: Ia -0.14, Va -0.04, Vb -0.01, iib -0.12, V/Vb -0.04, via -0.06, vib -0.04, IVa 0.29, IVb -0.07, IVmaj7b -0.02
major Imaj7d: Ia -0.04, Imaj7c -0.07, Vb -0.01, via -0.19, vib -0.04, viiob -0.04, viiø7d 0.44, V/iiia -0.02, viio/Vb 0.21, viiø7/Vb -0.04, IVb -0.09, IVc -0.04, IVmaj7b -0.12
major V7/IVa: Ia -0.12, V7/IVa -0.04, V7/IVb 0.19, V7/IVc -0.08, V7/IVd -0.01, V7d -0.04, v7d -0.03, iia 0.22, iib -0.26, ii7a -0.08, ii7b 0.15, V/Va -0.02, V7/Vb -0.1, iiob -0.08, V/iib -0.1, viiø7/IVa -0.02, viiob -0.06, viiø7a -0.12, viio7/iia -0.04, IVa 0.41, IVmaj7a -0.23, iva -0.12, bVIIa -0.09, bVIIc -0.11
major V7/IVb: V7/IVa -0.07, iib -0.06, ii7b -0.12, via -0.06, vi7a 0.2, V/iib -0.04, viiø7c -0.04, IVa 0.23, IVb -0.21, IVmaj7a -0.1, IVmaj7d -0.03, iva -0.09
major V7/IVc: V7/IVa -0.09, v7a -0.04, ii7b -0.04, viio/IVb -0.04, IVa 0.24, IVb 0.15, IVmaj7b -0.11, ivb -0.04
major V7/IVd: Ia -0.04, Ic 0.24, V7/IVc 0.37, va -0.08, via -0.4, vib -0.03, vi7a -0.12, viio/IVb -0.02, viiob -0.04, viio/Vb 0.32, viio7/Vb -0.04, IVa -0.35, IVb 0.31, IVmaj7b 0.37, ivb -0.1
major ia: Ia -0.1, Ib -0.02, Va -0.32, Vb -0.28, V7a -0.13, ii7a -0.01, V7/Vb -0.26, V7/Vd -0.04, iiø7b -0.14, viio/IVa -0.04, viio7/Va -0.04, IVa -0.03, iva -0.04, ivb -0.09, bVIa -0.13, bVIb -0.04
major ib: Ib -0.04, ia -0.04, ic -0.11, Va -0.05, V7c -0.07, iiø7a -0.04, viiob -0.03, viio7a -0.04, iv7a -0.04
major ic: Va -0.25, V7a -0.04, V7/Vb -0.01, iiob -0.04, iioc -0.09, iiø7b -0.07, iiø7c -0.04, viø7d -0.04, viio7/Va -0.04, IVa -0.04, ivb -0.04
major I+a: Ia -0.04, Ib -0.03, Va -0.05, ii7b -0.06, via -0.21, vib -0.08, V/vic -0.07, IVmaj7b -0.01
major I+b: iib -0.03, ii7a -0.06, V7/Vb -0.04, vib -0.03, V7/vib -0.04, viio/via -0.04, IVa -0.16
major I+c: vib -0.02, V7/vib -0.04
major Va: Ia 0.16, Ib -0.22, Ic -0.11, Imaj7a -0.29, Imaj7b 0.14, Imaj7c -0.26, V7/IVa -0.04, V7/IVb -0.04, V7/IVc -0.09, V7/IVd -0.03, ia -0.25, ib -0.04, Va -1.53, Vb 0.38, Vc 0.53, V7a 0.95, V7b -0.61, V7c 0.35, V7d 0.74, va -0.19, vb -0.03, v7a -0.04, V+a -0.04, iia -0.08, iib -0.36, ii7a -0.18, ii7b -0.28, ii7c -0.05, V/Va 0.08, V/Vb -0.39, V7/Va -0.17, V7/Vb 0.3, V7/Vc -0.23, V7/Vd -0.01, via -0.48, vib -0.31, vi7a -0.07, vi7b -0.19, vi7d -0.19, V/iia -0.03, V/iib -0.15, V7/iib -0.04, V7/iid -0.11, viø7a -0.18, iiia -0.18, iiib 0.09, iii7a 0.16, iii7b -0.16, V/via -0.13, V/vib -0.08, V7/via 0.29, V7/vib -0.04, viio/IVa -0.04, viiø7/IVa -0.04, viiob -0.17, viioc -0.11, viiø7b -0.03, viiø7c -0.09, viiø7d -0.04, viio7c -0.04, viia -0.11, viic -0.03, viio/Va -0.1, viio/Vb -0.02, viiø7/Vb -0.08, viiø7/Vc -0.07, viio7/Va -0.07, viio/iia -0.03, viio/iib 0.27, viio/iic -0.1, viiø7/iic -0.04, viio7/iia -0.12, viio7/iic 0.18, viio/vib -0.07, viio7/via -0.23, viio7/iiia -0.04, viio7/iiib -0.07, IVa -0.25, IVb 0.49, IVmaj7b -0.32, ivc -0.03, bVIa 0.12, bVImaj7d -0.04
major Vb: strangea -0.08, strangeb 0.46, Ia -0.2, Ib 0.15, Ic -0.2, Imaj7a -0.06, Imaj7b -0.04, Imaj7c -0.03, Imaj7d 0.23, V7/IVa -0.06, V7/IVd 0.47, ia 0.17, I+a -0.03, Va 0.55, Vb -0.7, Vc -0.21, V7a -0.34, V7b 0.27, V7c -0.12, V7d -0.04, va -0.04, iia -0.13, iib -0.05, ii7a -0.02, V/Va 0.46, V/Vc -0.07, V7/Vc -0.08, V7/Vd 0.16, via 0.8, vib 0.06, vi7a -0.13, vi7b 0.23, V/iib -0.24, V7/iia -0.03, V7/iib 0.06, viø7a -0.1, iiia 0.29, iiib 0.53, iiic -0.11, iii7a -0.06, iii7b -0.04, iii7c -0.1, V7/vid -0.04, viioa -0.03, viiob 0.26, viiø7a -0.03, viiø7b -0.02, viiø7d -0.07, viia -0.04, viio/Vb -0.15, viio/iia -0.19, viiø7/iia -0.21, viio7/iia 0.52, viio7/via -0.04, IVb 0.38, IVc -0.08, IVmaj7b -0.08, iv7c -0.04, bVIImaj7b -0.03, bVII7a -0.26, bVIa -0.04, bVIb -0.02
major Vc: Ib -0.05, Ic -0.07, V7/IVa -0.04, ia -0.13, Va -0.23, Vb -0.06, V7a -0.04, V7c -0.38, V7d 0.37, iib -0.08, V/Va -0.18, V7/Va -0.12, vib -0.11, vi7b -0.1, viiob -0.03, viiø7c -0.04, viiø7/Vc -0.03, IVa -0.03
major V7a: Ia 0.6, Ib -0.25, Ic -0.69, Imaj7a 0.33, Imaj7b -0.04, Imaj7c 0.3, V7/IVd -0.37, ia 0.13, I+a -0.01, I+c -0.04, Va -0.29, Vb -0.08, V7a -0.48, V7b -0.02, V7c -0.16, V7d 0.11, va -0.08, iia -0.2, ii7a -0.03, via 0.48, vib 0.76, vi7a 0.34, V/iia -0.25, V7/iib -0.03, V7/iid -0.04, vioa -0.04, viob -0.08, viø7d -0.14, iiib 0.03, iii7b -0.08, V/vib -0.07, viio/IVb -0.11, viiø7/IVb -0.04, viiø7d -0.04, viio/Vb -0.05, viiø7/Va 0.27, viiø7/Vb -0.04, viiø7/Vc -0.03, viio7/Va -0.23, viio7/Vb -0.05, viio7/Vc -0.03, viio/iia -0.08, viio/iib -0.4, viio7/iic -0.09, viio7/via -0.13, IVa -0.23, IVb -0.15, IVmaj7a -0.09, IVmaj7b 0.21, bVIa -0.11
major V7b: Ia 0.95, Ib -0.13, Ic 0.24, Imaj7c -0.02, Imaj7d 0.31, V7/IVa -0.08, V7/IVd -0.04, ia -0.25, ib -0.04, I+a -0.03, I+c -0.02, Va -0.29, Vb 0.34, V7a 0.15, V7b -0.29, v7a -0.01, V+a -0.01, iia -0.04, ii7a -0.04, via -0.04, vib -0.09, vi7a -0.05, V7/iib -0.31, iiib -0.28, V/via -0.04, V/vib -0.22, V7/vib -0.08, viiø7d -0.03, viio/iia -0.13, IVb -0.4, IVmaj7b -0.07, bVIb -0.04
major V7c: Ia 0.2, Ib -0.18, Ic -0.03, Imaj7a 0.37, Imaj7b 0.31, I+a -0.04, Va 0.34, V7a 0.45, V7b -0.21, V7d -0.05, iia -0.17, ii7b -0.04, via -0.09, vib 0.11, vic -0.13, vi7b -0.07, V/iia -0.11, iii7a -0.08, V/via -0.07, V/vib 0.4, viiob -0.28, IVa -0.04, IVb 0.24, IVc -0.11, IVmaj7a -0.1, IVmaj7c -0.08
major V7d: Ia -0.52, Ib 0.91, Ic -0.2, Imaj7b -0.13, V7/IVc -0.04, ib -0.14, ic -0.02, I+b -0.03, Va -0.32, Vb -0.04, Vc -0.26, V7a -0.32, V7b -0.15, V7c 0.71, V7d -0.17, iia -0.16, ii7a -0.01, ii7b -0.02, V/Vb -0.04, via -0.38, vib -0.08, vic 0.36, vi7c -0.07, V/iia -0.07, vioc -0.1, iiia 0.23, iiib -0.15, iii7a 0.06, V/via 0.32, V7/via -0.31, viio/IVb -0.04, viiø7/IVa -0.19, viiob -0.04, viioc -0.01, viiø7c -0.04, viio7/Va 0.61, viio/iib -0.07, viiø7/iib -0.04, viio7/iia -0.04, viio7/iib 0.34, viio7/via -0.02, IVa -0.26, IVb -0.04, IVmaj7d -0.08, iva -0.04, bVImaj7b -0.02
major va: Ia -0.27, Ib -0.32, Ic -0.04, V7/IVa -0.22, V7/IVb -0.03, Va -0.28, Vc -0.09, V7a -0.07, V7d -0.11, vb -0.07, v7a 0.35, v7d -0.13, iia -0.16, iib -0.04, V/Va -0.02, V/Vb -0.04, via -0.41, vioc -0.02, iiib -0.04, viiø7/IVb -0.04, viiø7b -0.04, IVa -0.02, IVb 0.37, ivb -0.01, bVIIa -0.11, bVIIb -0.03, bIIIa -0.04
major vb: Ia -0.09, Ib -0.02, V7/IVa -0.04, V7/IVd -0.07, Vb -0.15, V7b -0.39, va -0.09, v7a -0.03, iic -0.04, V7/Vb -0.04, via -0.14, vib -0.04, viø7d -0.04, viio/IVc -0.03, viio7/Va -0.03, viio7/iia -0.26, viio7/iid -0.01, IVa -0.04, IVb 0.27, bVIImaj7a 0.44
major vc: Ib -0.03, V7/IVa -0.02, ia -0.04, Va -0.04, V7/iib -0.01, viio7/iib -0.04, iva -0.04
major v7a: Ia -0.19, V7/IVa -0.06, V7/IVc -0.04, Va -0.17, V7a -0.04, V7b -0.04, va -0.03, via 0.31, vib -0.04, V7/iib -0.04, iiib -0.08, IVa -0.03, IVb -0.13, IVmaj7b -0.03, ivb -0.03
major v7b: Ia -0.15, V7/IVa -0.04, Vb -0.04, v7a -0.06, vø7a -0.01, via -0.04, viiø7/IVa -0.03, viiø7a 0.36, viio7a -0.02, IVb -0.05
major v7c: Ia -0.04, Ib -0.07, V7/IVb -0.03, V/iib -0.04, IVc -0.03
major v7d: Ib -0.06, V7/IVb -0.06, Va -0.04, V/Vb -0.03, via -0.05
major V+a: Ia -0.05, IVa -0.04, IVb -0.04
major V+b: Ia -0.12, V/iib -0.04, iiib -0.03
major vob: V7/IVa -0.34
major vø7a: Ia -0.09, via -0.02, vi7a -0.03, viio7/iic -0.04, IVb -0.04
major vø7b: Vb -0.07
major vø7c: V7/IVa -0.1
major vø7d: Ib -0.02
major iia: Ia -0.9, Ib -0.16, Ic 0.12, Imaj7b -0.04, Imaj7c -0.03, V7/IVa -0.01, V7/IVb -0.04, V7/IVd -0.04, ia -0.04, I+b -0.07, Va -0.02, Vb 0.5, Vc -0.04, V7a 0.26, V7b -0.12, V7c 0.29, V7d 0.1, va -0.04, vb -0.13, v7a -0.04, v7b -0.1, v7c -0.07, vø7a -0.1, iia -0.46, iib -0.04, iic -0.1, ii7a -0.73, ii7b -0.15, ii7c -0.04, ii7d -0.48, V/Va -0.15, V/Vc -0.04, V7/Vd -0.22, iiø7a -0.03, via 0.02, vib -0.25, vic -0.07, vi7a -0.08, vi7c -0.04, V/iia 0.25, V/iib -0.07, V7/iia -0.1, V7/iib -0.03, iiia 0.39, iiib -0.07, iii7a -0.34, V/vib -0.2, V7/vib -0.07, V7/vid -0.06, viio/IVa -0.03, viiø7/IVa -0.17, viioa 0.04, viiob 0.83, viiø7a -0.08, viiø7b 0.09, viio7a -0.08, viio7b -0.04, viia -0.04, viio7/iia -0.04, viio/vib -0.04, viio/vic -0.04, viio7/vic -0.1, IVa -0.02, IVb -0.29, IVc -0.08, bVIIa -0.01, bVIIb -0.05, bVIImaj7a -0.02, bVIImaj7b -0.04
major iib: Ia -0.17, Ib -0.11, Ic 0.12, I+a -0.04, Va -0.22, Vb -0.07, Vc 0.17, V7a -0.3, V7b -0.08, V7c -0.11, V7d 0.65, va -0.09, vb -0.11, v7a -0.12, iia 0.14, iib -0.04, ii7a 0.36, ii7b 0.41, V/Va -0.05, V/Vb 0.05, V7/Va -0.07, V7/Vb 0.31, via -0.07, vib -0.09, vic -0.06, vi7a -0.08, V/iia -0.09, V/iib -0.06, V7/iia -0.03, V7/iib -0.13, V7/iic -0.04, iiia 0.2, iiib -0.26, iii7a -0.08, V/via -0.49, V/vib -0.04, V7/via -0.09, V7/vid -0.03, viio/IVc -0.04, viiø7/IVa -0.25, viiø7/IVc -0.07, viioa -0.05, viiob 0.07, viioc -0.03, viiø7a -0.03, viiø7b -0.34, viiø7c 0.25, viiø7/Va -0.04, viio7/Va 0.14, viiø7/iib -0.04, viio7/iib -0.13, viio7/via -0.17, viio7/vic -0.04, IVa -0.02, IVb -0.13, IVmaj7a -0.04, IVmaj7b -0.04, bVIIb -0.07, bVIIc -0.03, bVIImaj7a -0.03, bIIIb -0.04
major iic: Ia -0.05, Va -0.05, Vb -0.07, V7b -0.1, V7c -0.04, va -0.04, iia -0.04, ii7b -0.03, via -0.04, V/iia -0.04, iiib -0.19, V/vib 0.37, viioa 0.26, viio7/iia -0.04
major ii7a: Ia -0.47, Ib -0.6, Ic 0.4, Imaj7a -0.02, Imaj7b -0.04, V7/IVb 0.18, Va 0.78, Vb -0.17, V7a 0.52, V7b -0.03, V7c -0.36, V7d -0.03, v7b -0.03, v7c -0.03, iia -0.15, iib -0.04, ii7a -0.02, ii7b -0.19, ii7d -0.08, V7/Vb -0.04, via -0.13, vic -0.08, iiia -0.34, V/via 0.21, V/vib -0.03, V7/vic -0.03, viio/IVa -0.04, viiø7/IVd -0.03, viioa -0.1, viiob 0.16, viioc -0.04, viiø7b 0.31, viiø7c -0.09, viio7/iiia 0.39, IVc -0.08, bVIIa -0.04, bVIIb -0.04
major ii7b: Ia -0.11, Ib -0.22, Ic 0.72, I+a -0.02, Va 0.44, Vb -0.04, Vc -0.04, V7a -0.3, V7b -0.09, V7c -0.1, V7d -0.44, va -0.08, v7a -0.03, iia -0.51, iib -0.11, ii7a 1.36, ii7b -0.14, ii7d -0.04, V/Vb -0.1, V7/Va -0.03, V7/Vb 0.56, iioa -0.11, iiø7b -0.04, via -0.09, vi7d -0.08, iiia -0.11, iiib 0.23, iii7b -0.07, V/via -0.15, viio/IVb -0.07, viiø7/IVd -0.04, viiob -0.38, viioc -0.11, viiø7b -0.14, viiø7c 0.21, viiø7/Va -0.32, viio/via -0.04, IVa -0.18, IVb -0.07, IVmaj7d -0.04, bVIImaj7b -0.04, bVIa -0.04
major ii7c: Ia -0.1, Ic 0.24, V7/IVb -0.02, Va -0.1, Vb -0.18, V7b -0.05, va -0.04, ii7a -0.14, ii7b 0.35, ii7c -0.04, via -0.04, iiia -0.07, iiib -0.03, IVa -0.06, IVb -0.06
major ii7d: Ia -0.24, Ib -0.04, V7/IVd -0.08, Va -0.11, Vb 0.02, V7b 0.33, vb -0.04, v7b -0.03, iib -0.16, ii7a -0.08, ii7c -0.05, V7/Vd -0.03, via -0.04, iiia -0.05, V/vib -0.06, viioa 0.36, viiø7a -0.32, viio/vib -0.03, IVb -0.04, bVIIa -0.04
major V/Va: Ia -0.01, Ib -0.2, Ic -0.05, Imaj7b -0.04, Va -0.09, Vb -0.45, V7a -0.04, V7b -0.04, V7d 0.5, va -0.12, V+a -0.06, iia -0.14, iib -0.04, ii7a -0.04, V/Va -0.22, V/Vb -0.2, V7/Va 0.13, V7/Vb -0.07, V7/Vd 0.33, via -0.1, viiø7a -0.03, viiø7b -0.04, V/iiib -0.04, viib -0.12, viio7/via -0.02
major V/Vb: Ib -0.04, Va -0.19, Vb -0.04, Vc -0.04, V7a -0.04, V7d -0.36, va -0.12, iia -0.09, V/Va 0.13, V/Vb -0.02, V7/Va -0.19, V7/Vb 0.1, iiib -0.07, V7/vib -0.38, viioa -0.04, viib -0.09, viic -0.11, viio/Vb -0.04, viio7/via 0.12
major V/Vc: Va -0.14, va -0.04, ii7c -0.04, V7/Vc -0.04, vib -0.04
major V7/Va: Va -0.23, Vb -0.18, Vc -0.07, V7d -0.07, va -0.03, V+a -0.08, vø7c -0.1, iib -0.03, ii7a -0.11, V7/Va -0.04, V7/Vb -0.04, iiia -0.12, iii7a 0.31, V/via -0.14, viio/iiia -0.01
major V7/Vb: Ia -0.03, Ic -0.07, Va 0.21, Vb -0.06, V7a 0.19, V7d -0.07, va -0.19, v7a -0.04, ii7a -0.15, V/Vb -0.04, V7/Va 0.28, V7/Vb -0.04, via -0.09, vi7a -0.04, iiib -0.01, V/vib 0.36, V7/vib 0.07, V/iiib -0.04, V7/iiic -0.04, viio/via -0.3
major V7/Vc: Ib -0.04, Ic 0.49, Va 0.2, Vb -0.41, V7a -0.07, V7/Va -0.08, V7/Vc -0.04, V7/Vd -0.03, via -0.1, vib -0.03, iiib -0.09, viio/Vb -0.11, viio/vib -0.03, IVb -0.01
major V7/Vd: Ia -0.02, Va 0.06, Vb 0.44, V7b -0.04, vb -0.08, V/Va -0.04, V7/Va -0.03, V7/Vd -0.03, via -0.12, iiia -0.03, V/vib -0.02, viiob -0.04, viia -0.05, viio/Vb -0.27, viio7/iia -0.04, viio/vib 0.36
major iioa: Ic -0.04, Va -0.11, iia -0.03, via -0.02, IVmaj7b -0.04
major iiob: Ia -0.01, Va -0.19, V7a 0.25, viiob -0.04, viio7/Va -0.04, iva -0.04
major iioc: iiob -0.13
major iiø7a: Ia -0.08, V7/IVb -0.04, Va -0.14, V7a -0.28, via -0.04, iii7a -0.04, viioa -0.04, viiob -0.16, viio7a -0.01
major iiø7b: Ic -0.08, Va -0.37, V7a -0.04, ii7b -0.03, iiø7a -0.01
major iiø7c: ic -0.11, Va -0.08, V7a 0.25, iiob -0.04
major iiø7d: V7/IVb -0.04, V7b -0.08
major Fr43a: Va -0.17, Vc -0.03, ii7a -0.04
major Fr43d: via -0.04, viio/vib -0.08
major via: Ia -0.58, Ib 0.96, Ic 0.04, Imaj7a -0.04, Imaj7b -0.04, Imaj7c -0.11, Imaj7d -0.08, V7/IVa -0.17, V7/IVb 0.04, V7/IVc 0.25, V7/IVd -0.03, ic -0.03, Va -0.21, Vb 0.41, Vc -0.09, V7a -0.03, V7b -0.11, V7c -0.07, V7d -0.07, va -0.04, vb 0.16, iia 0.42, iib 0.06, iic -0.35, ii7a -0.11, ii7b 0.54, ii7c -0.33, ii7d -0.11, V/Va -0.39, V/Vb 0.36, V7/Va 0.05, V7/Vb 0.32, V7/Vc -0.11, V7/Vd -0.1, iiø7a -0.15, Fr43a -0.05, via -0.31, vib 0.11, vic 0.36, vi7a -0.43, vi7b -0.02, vi7c -0.02, vi7d -0.34, V/iia -0.09, V7/iia 0.35, V7/iid -0.34, vioa -0.04, viø7d -0.03, iiia 0.29, iiib -0.14, iiic -0.03, iii7a -0.3, V/via -0.28, V/vib -0.37, V7/via -0.14, V7/vib -0.08, V7/vic -0.08, viio/IVa 0.34, viio/IVb -0.04, viioa -0.36, viiob 0.22, viioc 0.15, viiø7a -0.46, viiø7b -0.1, viiø7c -0.07, viiø7d -0.23, V/iiia -0.21, viio/Va -0.11, viio/Vb 0.23, viiø7/Va 0.11, viiø7/Vb -0.28, viio7/Va 0.3, viio/iib -0.1, viiø7/iib -0.1, viio7/iib -0.02, viio/vib -0.11, viio7/via -0.07, viio7/vib -0.03, viio7/vic -0.04, viio7/vid -0.04, viio7/iiia -0.11, viio7/iiic -0.02, IVa 0.28, IVb 0.15, IVmaj7a 0.24, IVmaj7b -0.27, IV7a -0.04, bVIIa -0.03
major vib: Ia -0.32, Ib -0.44, V7/IVd -0.04, I+b -0.03, Va 0.19, Vb -0.09, V7a -0.06, V7b 0.04, V7d -0.03, vb -0.02, v7b -0.02, iia -0.45, iib -0.09, iic -0.04, ii7a -0.21, ii7b 0.44, ii7d 0.4, V/Va -0.07, V7/Va -0.04, V7/Vb -0.04, V7/Vc -0.04, V7/Vd -0.3, iiø7a -0.07, via 0.16, vib -0.06, vi7a -0.14, vi7b -0.03, V/iib -0.04, V7/iib -0.06, iiia -0.32, iii7c -0.04, V/via -0.21, V7/via -0.07, V7/vic -0.1, V7/vid -0.01, viiø7/IVc -0.03, viioa -0.11, viiob -0.2, viiø7a -0.15, viiø7b 0.39, viia -0.04, viib -0.18, viio/Vb -0.06, viio/Vc -0.14, viiø7/Vc 0.41, viio7/iia -0.04, viio/vib -0.06, viiø7/vic -0.04, viio7/via 0.32, viio/iiic -0.02, IVa -0.24, IVb 0.43, IVc -0.13, IVmaj7b -0.3, bVIIa -0.11, bVIIb -0.04, bVIImaj7b -0.04, bVIImaj7c -0.04
major vic: Ia -0.04, Ic -0.03, Va -0.06, Vc -0.1, V7a -0.04, V7c -0.04, iia -0.41, iib 0.4, ii7a -0.08, ii7b 0.02, via 0.21, vib -0.06, V/via -0.04, viio/IVa -0.04, viiob -0.03, viio7/vic -0.03, IVa -0.28, IVmaj7d -0.04
major vi7a: Ia -0.21, Ic -0.04, V7/IVc -0.04, Va -0.15, Vb -0.06, Vc -0.03, V7a -0.25, V7b -0.1, V7c 0.35, V7d -0.06, V+b -0.04, iia 0.02, iib -0.1, iic 0.35, ii7a 0.54, ii7b -0.18, ii7c -0.04, V/Va -0.07, V/Vb -0.04, V7/Va -0.22, V7/Vc 0.26, Fr43a -0.1, via -0.12, vib 0.44, vi7d 0.36, viioa 0.29, viiob -0.22, viiø7d -0.04, viib -0.03, viio/Vb 0.32, viiø7/Vb 0.3, It6a -0.08, viio7/vic -0.07, viio7/iiia -0.04, IVa -0.24, IVb -0.27, IVmaj7a -0.04, IVmaj7b -0.04, bVIIa -0.03, bVIImaj7a -0.03
major vi7b: Ia -0.12, Ib -0.08, V7a -0.01, iia 0.05, iib -0.05, ii7a -0.04, V/Va -0.21, V7/Va -0.08, via -0.08, vi7a -0.03, viiob 0.11, viib -0.04, viio/Vc -0.04, IVb -0.07, IVmaj7b -0.03
major vi7c: V7/IVb -0.03, Va -0.15, V7a -0.04, V7c -0.03, iib -0.04, ii7a -0.04, via -0.03, vi7a -0.08, viiob -0.11, viiø7a -0.02, IVmaj7d -0.04, bVIIb -0.04
major vi7d: Ib -0.13, Ic -0.04, Va -0.22, V7a -0.05, V7d 0.04, iia -0.02, iib -0.15, iic -0.09, ii7b -0.2, V/Vb -0.16, V7/Vb 0.04, V7/Vc -0.04, viioa -0.03, viiø7c -0.17, viiø7/Va -0.07, IVa 0.4, IVb -0.04, IVmaj7a -0.06
major V/iia: Ia -0.03, Ib -0.07, Vb -0.13, V7c -0.04, V7d -0.04, iia -0.12, iib -0.01, ii7a -0.03, ii7b -0.04, V/Va -0.14, V/Vb -0.02, iioa -0.07, vib -0.01, V/iib -0.06, V/iic -0.03, V7/iia -0.04, V7/iib -0.03, iiia -0.04, viiø7b -0.07, IVmaj7a -0.09, bVIIb -0.02
major V/iib: iia -0.19, ii7a -0.08, V/iia 0.33, V7/iia -0.1, V7/iib 0.25, iiia -0.29, viioa -0.07, viiob -0.04, V7/iiib -0.07, IVa -0.04, IVmaj7a -0.03
major V7/iia: Vc -0.04, V7c -0.09, iia 0.2, iib -0.03, ii7a -0.09, iioa -0.03, iiø7c 0.25, viiob -0.2, viio7/vib -0.04, viio7/vic -0.02, ivb -0.04, bVIIa 0.3
major V7/iib: iia -0.08, iib -0.03, ii7a -0.08, V/Va -0.08, vi7a -0.04, V7/iia -0.06, V7/iib -0.04, viiø7b -0.07, V7/iiib -0.07, viib -0.14, viio/iia -0.04, bVIIb -0.04, bVIImaj7b -0.04
major V7/iic: iia -0.15, IVmaj7d -0.03, bVIImaj7b -0.03
major V7/iid: Ib -0.04, Va -0.03, Vc -0.04, iib -0.14, ii7b -0.04, V/Vb -0.17, V7/Vb -0.04, V7/vib -0.01, viio/iib -0.03, viio7/via -0.04, IVa -0.18, bVIImaj7c -0.04
major vioa: Vb -0.03, iiø7c -0.04, viioa -0.01, viio7/Va -0.04
major viob: V7/Vb -0.03, iiia -0.03
major vioc: ia -0.04, vc -0.02, viiob -0.06
major viø7a: Ic -0.04, V7/IVc -0.04, ia -0.04, Va -0.06, V7a -0.04, V7b -0.03, V7/Vc -0.01, Fr43a -0.03, iiia -0.04, viioa -0.07, viiob -0.04, viio/Vb -0.21
major viø7b: ii7b -0.04, V/Va -0.04, V/Vb -0.04, iiø7b -0.04, IVa -0.02
major viø7c: iii7d -0.04
major viø7d: Va -0.13, V7a -0.04, V7/Vb -0.04, viio7/Va -0.04
major iiia: Ia 0.13, Ic -0.01, Imaj7a -0.09, Imaj7c -0.04, Va -0.37, Vb 0.13, Vc -0.08, V7a -0.04, V7b 0.08, V7c 0.34, V7d -0.17, iia -0.49, iib -0.21, iic -0.04, ii7a -0.07, ii7b -0.14, ii7c -0.04, V/Va 0.3, V/Vb -0.03, via -0.08, vib -0.35, vic -0.03, vi7a 0.21, vi7b -0.04, vi7c -0.07, V/iib -0.07, V7/iia -0.04, V7/iib -0.03, viø7a -0.14, iiia -0.19, iiib -0.11, iii7a -0.22, iii7d -0.16, V/via -0.04, viioa -0.16, viiob 0.22, viiø7d -0.04, V7/iiia -0.04, viia -0.04, viib -0.03, viio/Va -0.04, viio/Vb -0.16, viio/Vc -0.1, viiø7/Va -0.04, viiø7/Vc -0.07, viio/iib 0.5, viiø7/iib -0.06, viiø7/vib -0.01, viio7/via -0.04, viio7/iiia -0.02, IVa 0.14, IVb 0.14, IVc -0.11, IVmaj7a -0.05, IVmaj7b 0.07, IVmaj7c -0.03, IVmaj7d 0.08, IV7a -0.04, bVIImaj7b -0.03
major iiib: Ia -0.3, Ib -0.15, Ic -0.07, Imaj7b -0.04, Va 0.07, Vb -0.09, V7a -0.11, V7b -0.04, V7d -0.2, iia -0.11, iib 0.41, iic -0.02, ii7b -0.1, ii7c 0.45, V7/Vb -0.04, via -0.48, vib 0.35, vi7a -0.04, vi7b -0.01, vi7c -0.04, vi7d -0.14, iiia -0.03, iii7b -0.17, V/vib 0.28, viioc -0.03, viiø7c -0.08, V/iiia -0.04, V7/iiia -0.07, viio/Vb -0.07, viiø7/Va -0.02, IVa -0.78, IVb 0.03, IVmaj7a -0.23, IVmaj7b 0.5
major iiic: V7b -0.03, V/Vc -0.04, vi7a -0.11, viio/Vb -0.04, viio7/iia -0.03, IVb -0.11, IVmaj7b -0.06
major iii7a: Ia -0.05, Ib -0.24, Imaj7a -0.01, Imaj7c -0.02, Va -0.14, Vc -0.12, V7a -0.1, V7c -0.07, iia -0.04, iib -0.06, ii7b -0.04, ii7c -0.01, V7/Vb -0.02, via -0.07, vib -0.04, vic -0.15, vi7a 0.15, V/iia -0.03, V7/iib -0.04, viiob -0.14, viib -0.02, viio/Va 0.27, viio/iib -0.03, IVa -0.14, IVb -0.2, IVmaj7a -0.15
major iii7b: Ia -0.03, Va -0.03, Vb -0.03, V7a -0.1, V7b -0.04, iia -0.04, V/Vb -0.02, via -0.07, vi7d -0.04, iii7a -0.04, V/vib -0.08, viio/Vb -0.04, IVa -0.08, IVb -0.1, IVmaj7b -0.04
major iii7c: V7b -0.07, viioa -0.04, IVb 0.16, IVmaj7b -0.08
major iii7d: Ia -0.04, V/Va -0.04, vib -0.15, vi7b -0.04, iiia -0.02, viiø7/Vc -0.03
major V/via: Ic -0.07, V/Vc -0.04, via -0.17, vib -0.12, V/iia -0.07, vioa -0.08, iiia -0.01, V/vib -0.2, V7/via 0.06, V7/vid -0.04, viiob -0.04, viiø7b -0.04, viio/Vb -0.01, viiø7/Vb -0.19, IVa -0.07, IVb -0.08, IVmaj7a -0.04, IVmaj7b -0.13, IVmaj7d 0.34
major V/vib: Ib -0.02, via 0.11, vib -0.02, V/iia -0.03, iiia -0.04, V/via 0.1, V/vib -0.11, V7/via 0.75, V7/vib 0.28, viiø7/Va -0.1, viiø7/Vb -0.06, IVb -0.54, IVmaj7b -0.03
major V/vic: via -0.15
major V7/via: Ia -0.04, iib -0.07, ii7a -0.04, ii7b -0.03, via 0.35, vib -0.1, vi7a -0.04, vioa -0.03, viio/Vb -0.03, IVa -0.11, IVb -0.11
major V7/vib: iic -0.03, via 0.36, V/vib -0.04, V7/via -0.1, viiø7/Vb -0.08, IVa -0.03, IVb -0.24, IVmaj7b -0.07
major V7/vic: Ia -0.04, Vb -0.04, via -0.11, vib -0.11, IVmaj7b -0.04
major V7/vid: Ia -0.03, via -0.02, vib -0.14, V/vic -0.04, viio/IVa -0.01, IVmaj7b -0.03
major viio/IVa: Ic -0.03, Va -0.04, Vc -0.03, V7d -0.01, iia -0.04, iib -0.04, ii7b -0.04, via -0.02, vi7a -0.06, vi7d -0.04, viio/IVb -0.03, IVa -0.05, IVmaj7a 0.27
major viio/IVb: Ia -0.07, Ib -0.03, V7/IVa -0.4, va -0.01, iia -0.05, ii7b -0.04, V/Va -0.04, via -0.08, vi7a -0.1, V/iia -0.04, V7/iia -0.04, viø7a -0.04, viiob -0.03, viiø7c -0.04, IVa 0.03, IVb 0.26, ivb 0.31, bVIImaj7a -0.01
major viio/IVc: V7b -0.03, via -0.04, IVa -0.04, IVb -0.04, IVmaj7a -0.02
major viiø7/IVa: Ib -0.13, Va -0.1, V7a -0.06, iib -0.02, via -0.08, vi7a -0.14, vi7c -0.03, V7/iia -0.04, V/via -0.04, viio/iib -0.04, IVa 0.07, IVb -0.04, IVmaj7a -0.04
major viiø7/IVb: V/iia -0.04, V7/iid -0.03, viiø7/IVa -0.04
major viiø7/IVc: via -0.1, viio7a -0.04, bVIIa -0.04
major viiø7/IVd: vi7b -0.04, V7/iib -0.04, V/via -0.01
major viio7/IVa: V7/IVb -0.04, iva 0.41
major viio7/IVc: ivb -0.04
major viioa: Ia 0.19, Ib -0.1, Ic -0.14, Imaj7a 0.33, V7/IVd 0.32, ia -0.18, V7a 0.4, V7b 0.17, vb -0.04, via -0.28, vib -0.25, V7/iia -0.09, iii7a -0.03, V/vib -0.23, viiø7/IVc -0.04, viiob -0.59, viioc -0.04, IVb -0.11
major viiob: Ia 0.57, Ib 0.79, Ic -0.28, Imaj7a 0.03, Imaj7b -0.14, V7/IVa -0.07, ia -0.11, ib -0.04, I+a -0.14, I+b -0.15, Va -0.33, Vb -0.11, V7a -0.27, V7b 0.23, V7c -0.47, V7d 0.09, iia -0.04, iib -0.11, ii7a -0.19, ii7d -0.11, via 0.29, vib 0.53, vic -0.15, vi7b -0.03, V/iia -0.27, iiia 0.2, iiib -0.07, iii7a -0.09, V/via 0.14, V/vib -0.24, V7/vib -0.07, V7/vid -0.04, viio/IVa -0.02, viiø7/IVd -0.04, viioa 0.41, viiob -0.09, viioc -0.11, viiø7a -0.04, viiø7b 0.17, viiø7/Vb -0.01, viiø7/Vc -0.04, viio/iib -0.13, viio7/iiia -0.29, IVa 0.02, IVb 0.2, IVc 0.4, IVmaj7a -0.08, IVmaj7b -0.07, IVmaj7c -0.07, bVIb -0.04
major viioc: Ia -0.42, Ib -0.04, Imaj7b -0.02, ib -0.02, I+b -0.06, Va -0.1, V7a -0.07, V7c -0.15, V7d 0.5, iib -0.08, via -0.05, iiia -0.01, viiob -0.04, IVa -0.08, IVmaj7a -0.04
major viiø7a: Ia 0.5, Ib 0.34, V7/IVd -0.07, I+b -0.04, Va -0.03, Vb -0.42, Vc -0.08, V7a -0.03, V7b -0.07, V/Vc -0.04, via -0.08, vib -0.18, iii7a -0.18, iii7c -0.07, V7/via -0.06, viio/IVa -0.03, viiø7a -0.04, viio/vib -0.04, IVb -0.04, IVc -0.1
major viiø7b: Ia -0.07, Ib 0.05, Ic -0.29, Va 0.49, Vb -0.04, V7a -0.23, V7b -0.01, iiib -0.11, V/via -0.1, V/vib -0.04, viiø7a -0.05, viia -0.04, viio/vib -0.07, IVa -0.06, IVb -0.09
major viiø7c: Ia -0.48, Ib 0.33, Ic -0.06, Va -0.14, V7a -0.09, V7d -0.22, iia -0.08, iib -0.09, V7/iic -0.03, V/via -0.04, V7/via -0.04, viiø7/Va -0.09, viiø7/Vc -0.04
major viiø7d: Ia -0.11, Ic 0.24, Vb -0.04, via -0.31, V7/iia -0.09, V/vib -0.04, V7/vib -0.04, viio/IVb -0.07
major viio7a: Ia 0.02, ia -0.07, Vb -0.09, V7b -0.01, viø7b -0.04
major viio7b: Vb -0.04, V7a -0.02
major viio7c: viiob -0.09
major V/iiia: Ia -0.01, Imaj7b -0.03, V/Vc -0.04, V/iib -0.21, iiia -0.06, V/iiib -0.03, viia -0.04
major V/iiib: Ib -0.18, Imaj7b -0.06, Imaj7c -0.01, V7c -0.02, iiia -0.25, V/via -0.04, V/iiia -0.06, V/iiib -0.02, viiø7/iib -0.04
major V7/iiia: Ia -0.17, Ib -0.04, V7/iib -0.04, iiia -0.11
major V7/iiib: Ib -0.04, iiia -0.07, V/via -0.02, V/iiib -0.04
major V7/iiic: iiia -0.04, iiib -0.03
major viia: strangea -0.04, Ia -0.32, Ib -0.08, Imaj7d -0.04, Va -0.08, V7a 0.44, V7b -0.04, V/Vb -0.07, V7/Vc -0.07, via -0.1, iiia -0.04, viio7/iiid -0.04
major viib: strangeb -0.04, Ia -0.11, Ib -0.34, Imaj7a -0.04, Imaj7b -0.19, Va -0.05, Vb -0.03, V/Va -0.05, vib -0.06, iiia -0.04, V7/via -0.03, V/iiib -0.08, V7/iiib -0.04, IVa -0.16
major viic: Va -0.11
major viio/Va: Va 0.04, iii7b -0.03, V/vib -0.04, viio/Vb -0.05
major viio/Vb: Ia -0.08, Ib -0.07, Ic -0.33, Va 0.77, Vb -0.68, V7a -0.04, V7b -0.04, va -0.08, V+b -0.14, ii7a -0.06, ii7b -0.04, V/Va -0.16, V7/Va -0.03, V7/Vc -0.07, via -0.04, vib -0.09, iiia -0.06, viiob -0.04, V7/iiia -0.1, viio/Vb -0.02, viio/Vc 0.38, viio/vib -0.04
major viio/Vc: Va 0.06, Vb 0.09, va -0.02, V7/Vc -0.2, viio/Vb -0.04
major viiø7/Va: Ic 0.29, Va 0.18, V/Vb -0.08, V7/Vb -0.04, iiia -0.04, V7/via -0.1, viiø7a -0.04, V7/iiia -0.04, viiø7/Va -0.03, viio/via -0.06, viio7/via -0.09
major viiø7/Vb: Ia -0.1, Va -0.07, Vb -0.19, V7b -0.03, iib -0.04, ii7b -0.01, V7/Va -0.08, iiø7a -0.04, vib -0.15, V7/iid -0.04, iiib -0.04, V/via -0.12, viiø7a -0.03, viia -0.09, viio/vib -0.03
major viiø7/Vc: Imaj7a -0.06, Va 0.78, Vb -0.25, ii7a -0.04, ii7d -0.04, V7/Vb -0.04, V7/Vd -0.1, via -0.04, viiob -0.11, viio/vib -0.04
major viiø7/Vd: Vc -0.1, V7d -0.03, vi7c -0.04, iiia -0.01, viiob -0.07, bVIIb -0.03
major viio7/Va: Va 0.29, V7a -0.04, V7d -0.12, V7/Vb 0.13
major viio7/Vb: Vb -0.05, V/Vb -0.04
major viio7/Vc: Vb -0.04, V/Va -0.03
major It6a: Va -0.08, Vb -0.02
major It6c: Va -0.04
major Ger65b: bIIIb -0.04
major viio/iia: iia -0.24, V7/iib -0.06, V7/iiib -0.04, viio/iib -0.1, bVIImaj7b -0.04
major viio/iib: iia 0.21, iib -0.03, iiob -0.04, via -0.1, vi7a -0.04, V/iia -0.04, V/iib -0.04, V7/iid -0.04, viiø7/IVd -0.02, viiob -0.01, IVa -0.03, IVmaj7d -0.04
major viio/iic: iia -0.04, iib -0.04
major viiø7/iia: iia -0.21
major viiø7/iib: Ia -0.04, V7c -0.08, iia -0.07, viiob -0.04, IVa -0.1
major viiø7/iic: IVb -0.03
major viiø7/iid: viio/Vb -0.02
major viio7/iia: Ib -0.04, iia 0.3, V/Va -0.04, vi7a -0.03, V/iia -0.06, V/iib -0.08, V7/iib -0.09
major viio7/iib: vc -0.01, iib -0.1, V/iib 0.34, V7/iib -0.12
major viio7/iic: V7/IVa -0.03, iia 0.13, V/iia -0.09, viiob -0.04, IVa -0.12, ivb -0.03
major viio7/iid: Vb -0.01
major viio/via: Ic -0.04, via -0.38, vi7a -0.03, V/iia -0.03, IVb -0.04
major viio/vib: Ia -0.07, iic -0.04, ii7d -0.01, via 0.38, vib -0.06, viob -0.03, viø7a -0.04, V/vib -0.03, viio7/vib -0.04, IVc -0.04
major viio/vic: iib -0.04, V/iia -0.04
major viiø7/vib: Ia -0.01, via -0.08
major viiø7/vic: IVa -0.04
major viio7/via: via 0.3, V7/iia -0.02, V/via -0.16, V7/vib -0.12, IVb -0.01, IVmaj7b -0.04
major viio7/vib: Ia -0.08, via -0.04, vib -0.1, V/vib -0.04
major viio7/vic: Ia -0.04, Ib -0.02, V7b -0.02, via -0.17, V/iia -0.08, iiia -0.04, viio7/iiia -0.07
major viio/iiic: V/via -0.02
major viio7/iiia: V7/iiib -0.02
major viio7/iiib: Va -0.04, iiib -0.07
major viio7/iiic: Va -0.02, Vb -0.01
major viio7/iiid: Vb -0.06
major IVa: Ia 0.35, Ib -0.02, Ic -0.28, Imaj7b -0.04, V7/IVb -0.16, V7/IVc -0.08, V7/IVd -0.02, ib -0.04, I+a -0.07, Va 0.27, Vb 0.52, Vc -0.14, V7a -0.04, V7b -0.35, V7c -0.35, V7d 0.42, va 0.07, v7a -0.08, v7b -0.03, v7c -0.04, v7d -0.03, V+a -0.04, vø7a -0.04, iia 0.21, iib 0.35, ii7a 0.45, ii7b -0.58, ii7c -0.06, V/Va -0.27, V7/Va -0.07, V7/Vb 0.29, iioa -0.04, via -0.08, vib -0.15, vic -0.41, vi7b -0.07, vi7c -0.07, vi7d -0.15, V/iia -0.06, V7/iib 0.32, V7/iic -0.05, iiia 0.18, iiib -0.13, iii7d -0.04, V/via -0.12, V/vib 0.32, V7/via -0.04, viio/IVa -0.04, viio/IVb 0.19, viiø7/IVc -0.04, viiø7/IVd -0.08, viio7/IVa -0.01, viioa 0.15, viiob 0.15, viioc -0.1, viiø7a 0.27, viiø7b -0.31, viiø7c -0.25, viio7a -0.09, viib -0.14, viio/Va -0.07, viio/Vb -0.04, viiø7/Va -0.1, viiø7/Vd -0.07, viio7/Va 0.31, viio/iia 0.19, viio/iib -0.19, viio7/iia 0.24, viio7/iid -0.04, viio7/vib -0.01, viio7/vic -0.04, viio7/iiia -0.04, IVa -0.79, IVb 0.37, IVc -0.13, IVmaj7a -0.46, IVmaj7b 0.33, IVmaj7d -0.19, IV7a -0.12, iva -0.06, bVIIa -0.14, bVIIb -0.07, bVIImaj7b -0.01, bVIImaj7c -0.03
major IVb: Ia 0.23, Ib -0.48, Ic 0.36, Imaj7d -0.08, V7/IVa -0.07, V7/IVb -0.19, V7/IVc 0.09, V7/IVd -0.07, ia -0.02, ic -0.04, Va -0.78, Vb 0.09, V7a 0.03, V7b 0.58, V7d -0.21, va -0.08, vb -0.34, v7a -0.13, v7b 0.37, v7d -0.02, vø7a -0.04, iia -0.26, iib -0.54, iic -0.15, ii7a -0.36, ii7b 0.24, ii7c -0.15, ii7d -0.06, V/Va -0.03, V7/Vb -0.07, iiø7a -0.04, via 0.11, vib -0.03, vi7d -0.15, V7/iid -0.07, viob -0.04, iiia 0.04, iiib 0.05, V/vib -0.22, V7/vic -0.04, viio/IVa -0.13, viio/IVb 0.14, viioa -0.35, viiob 0.08, viiø7a 0.6, viiø7c 0.32, viiø7d 0.06, viio/Vb -0.04, viiø7/Va -0.04, viiø7/Vb -0.04, viio7/Vc -0.04, Ger65b -0.04, viiø7/iic -0.04, viio7/iia 0.33, viio7/iib -0.04, viio7/iic -0.08, IVa 0.05, IVb -0.4, IVc 0.39, IVmaj7a 0.47, IVmaj7b -0.32, iva -0.12, ivb 0.16, iv7b -0.03, bVIIa -0.28, bVIImaj7a -0.1, bVIImaj7c -0.01, bVIa -0.15
major IVc: Ia 0.35, Ib -0.02, Imaj7d -0.04, Va -0.18, Vb -0.15, V7a -0.07, V7b -0.37, V7c -0.03, iib -0.04, ii7a -0.1, V7/Vd -0.02, via -0.08, iiia -0.04, V/vib -0.02, viioa 0.07, viiob -0.04, viioc -0.04, viiø7a -0.13, viio7a -0.01, IVa -0.04, IVb -0.13, IVc -0.04
major IVmaj7a: Ia -0.1, Ib -0.13, Ic -0.21, I+a -0.04, Va 0.25, Vb -0.07, V7a 0.05, V7b -0.03, V7c -0.02, V7d -0.05, va -0.1, v7a -0.03, iia -0.09, iib 0.17, ii7b -0.12, ii7d -0.03, V/Vb 0.16, V7/Vb -0.26, via -0.02, vic -0.07, viø7c -0.04, iiia -0.03, iiib -0.04, iii7b -0.04, viioa -0.09, viiob -0.29, viioc -0.07, viiø7c -0.22, viiø7d -0.03, viiø7/Va -0.18, IVa -0.13, IVb -0.19, IVmaj7b -0.02, IVmaj7d -0.1, bVIImaj7a -0.04
major IVmaj7b: Ia -0.19, Ib -0.01, Ic -0.01, Va -0.3, Vb -0.29, V7a -0.15, V7b 0.54, V7d -0.02, v7b -0.04, iia 0.13, iib 0.36, iic 0.32, ii7a -0.09, ii7b -0.22, V/Vb -0.09, V7/Vb -0.03, via -0.02, vib -0.08, vi7d -0.03, iiib -0.04, iii7c -0.02, V/via -0.04, V/vib -0.06, V7/vic -0.04, viioa 0.5, viiob -0.05, viiø7a -0.27, viiø7d 0.18, viio7/Va -0.08, viio7/via -0.04, IVa -0.04, IVb -0.09, IVmaj7a -0.1, IVmaj7d -0.04
major IVmaj7c: Ia -0.11, Ib -0.08, Va -0.08, Vb -0.07, V7a -0.07, V7d -0.14, V7/Va -0.03, iiia -0.04
major IVmaj7d: Ia -0.05, Va -0.03, V7c -0.08, iia -0.26, iiib -0.07, V/via -0.04, viiob 0.1, viioc -0.04
major IV7a: V/Vb -0.04, V7/Vb -0.04, viio7/Va -0.08
major IV7c: V7/Vb -0.04, IVc -0.04
major IV7d: ia -0.1, viob -0.03, viioa -0.18, viiob -0.03
major iva: Ia -0.28, Ib -0.04, Va -0.28, Vb 0.42, V7a -0.08, V7b -0.04, V7d -0.04, v7a -0.03, ii7a -0.15, V/Va -0.04, iiø7a -0.04, viio7/IVc -0.03, viiob -0.08, IVa -0.06, iva -0.01, iv7a -0.02, bVIc -0.04
major ivb: Ib -0.04, Ic 0.23, ic -0.14, Va -0.04, V7a -0.04, ii7a -0.01, iiø7b -0.04, iiø7c -0.01, V7/iia 0.29, viio7/Va -0.02, iva -0.14, bVImaj7d -0.03
major ivc: Ia -0.04
major iv7a: Va -0.07, Vb -0.02, V7a -0.08
major iv7b: ic -0.03
major iv7c: iiø7a -0.04
major bVIIa: Ia -0.29, V7/IVc -0.03, V7/IVd -0.39, Va 0.51, Vb 0.18, V7b -0.08, va -0.04, vb -0.11, v7b -0.08, iia 0.4, iic -0.07, vib -0.04, viio/IVb -0.18, viiø7/IVa -0.05, viiø7/IVc -0.01, viio7/IVa -0.04, viiø7d -0.07, viio7a 0.28, IVb -0.18, bVIImaj7a -0.03
major bVIIb: Ia -0.02, Ib -0.21, v7a -0.04, iia -0.01, iib -0.1, ii7c -0.04, V7/iib -0.02, viio/IVa -0.04, viiø7/IVa -0.04, viiob -0.08, viiø7b -0.03, viio7c -0.02, IVa -0.2, IVb -0.08, bVIIc -0.04, bVIImaj7c -0.04
major bVIIc: Ib -0.04, V7a -0.04, V/Vb -0.11, viio7b -0.02, viio/iib -0.03
major bVIImaj7a: Ia -0.03, Vb -0.21, V7b -0.04, V7/Vb -0.01, via -0.03, viiø7a 0.43, IVb -0.03
major bVIImaj7b: Ia -0.07, Vb -0.01, V7b -0.02, iia -0.07, via -0.03, V7/via -0.03, viio/IVa -0.04, IVa -0.04, IVmaj7d -0.03
major bVIImaj7c: Ib -0.04, V/Vb -0.04, via -0.01, iiib -0.03, viiob -0.04, viio/iib -0.04
major bVIImaj7d: Va -0.03, IVa -0.04
major bVII7a: Ia -0.04, V7b -0.04, V7/iia -0.26
major bIIIa: Va -0.04, Vb -0.04, vc -0.04, iiob -0.04, viø7b -0.04, viø7c -0.04, viio7/IVa 0.41, viiob -0.08, IV7d -0.04, bVIIc -0.02
major bIIIb: Ia -0.02, Ib -0.04, Ic -0.02, Va -0.04, bVIIa -0.04
major bVIa: ic -0.08, Va -0.06, V7a -0.04, ii7a -0.03, iiø7b -0.14, iiø7c -0.07
major bVIb: vc -0.04, bIIIa -0.02
major bVIc: Va -0.04, ii7a -0.04
major bVImaj7a: ivb -0.04
major bVImaj7b: Vb -0.02
major bVImaj7d: Ib -0.03, V7d -0.04
major Na: V7b -0.07
minor strangea: ia -0.11, i7a -0.04, v7b -0.04, Va -0.01, Vb -0.06, iiø7d -0.03, viø7a -0.04, viiø7/ivb -0.04, viiø7a -0.06, viio7/Va -0.03, viio7/Vc 0.44, Ger65b -0.04, iva -0.04, IVa -0.07, IVb -0.06, VIIa -0.06, IIIa -0.04, V7/VIa -0.04, III+b -0.04
minor strangeb: vc -0.04, Vb -0.07, V7a -0.26, ii7b -0.04, viø7a -0.03, #via -0.07, IIIa -0.08, VIa -0.04
minor strangec: Ib -0.03, v7a -0.04, IIIa -0.04
minor stranged: Ia -0.04, V7b -0.01, viio/ivb -0.04, IIIb -0.04
minor ia: strangea -0.04, ia -1.48, ib 0.9, ic -0.32, i7a -0.48, i7b -0.04, i7c -0.11, i7d -0.12, imaj7a -0.18, imaj7d -0.03, Ia -0.24, Ic -0.07, V7/ivd -0.15, va 0.3, vb 0.29, vc -0.31, v7a -0.11, v7c -0.07, Va 0.35, Vb 0.05, Vc -0.28, V7a -0.29, V7b 0.19, V7c 0.11, viio/VIb -0.04, iioa -0.44, iiob 0.57, iioc -0.1, iiø7a -0.35, iiø7b 0.53, iiø7c 0.02, iiø7d 0.04, iia 0.16, ii7a -0.22, ii7d -0.12, V/Va 0.22, V/Vb 0.12, V7/Va -0.34, V7/Vb 0.19, V7/Vc 0.27, V7/Vd -0.06, Fr43a -0.11, Fr43c -0.04, Fr43d -0.03, vioa -0.03, viob 0.35, viø7a -0.07, viø7b 0.4, viø7c -0.03, viø7d -0.04, viio7/VIIa -0.06, viio/iva -0.04, viio7/ivc -0.13, viioa 0.23, viiob 0.5, viio7a 0.16, viio7b -0.1, viio7c -0.16, viio7d -0.05, viio/Va -0.01, viio/Vb -0.17, viio/Vc 0.6, viio7/Va 0.01, viio7/Vb -0.04, viio7/Vc 0.43, viio7/Vd -0.04, Ger65b 0.13, Ger65c -0.17, iva -0.25, ivb 0.43, ivc -0.42, iv7a 0.73, iv7b -0.09, iv7c -0.2, iv7d -0.03, IVa 0.03, IVb 0.5, IVc -0.07, IV7a 0.11, IV7b 0.06, IV7c -0.29, IV7d 0.27, VIIb 0.45, VIIc -0.03, VII7a -0.06, VII7b 0.31, VII7d 0.08, viia -0.07, IIIa 0.41, IIIb -0.28, IIIc -0.09, IIImaj7a -0.05, IIImaj7b -0.04, IIImaj7c -0.04, IIImaj7d -0.03, V7/VIa -0.04, V7/VIb -0.04, V7/VIc -0.04, III+a -0.07, III+b -0.04, III+maj7a -0.17, VIa 0.26, VIb -0.08, VImaj7a 0.36, VImaj7b -0.12, VImaj7d -0.04, VI7a 0.21, Na -0.18, Nb 0.3, bIImaj7b -0.02
minor ib: ia 0.54, ib -0.27, i7a 0.17, imaj7a -0.12, imaj7b -0.11, imaj7c -0.04, Ib 0.39, Ic -0.04, V7/ivb 0.21, va 0.55, vb -0.03, v7a -0.06, v7c -0.01, v7d -0.04, Va 0.28, Vb 0.03, Vc -0.26, V7a 0.1, V7b 0.03, V7c -0.11, V7d -0.49, viiø7/VIc -0.11, iioa -0.15, iiob -0.08, iioc -0.03, iiø7a -0.13, iiø7b 0.85, iiø7c -0.22, iiø7d -0.25, iia 0.25, iib -0.05, ii7a -0.12, ii7b -0.04, V/Va -0.03, V/Vb -0.03, Fr43a -0.04, vioa -0.11, viob -0.02, vioc 0.24, viø7a -0.1, viø7b -0.1, viø7c -0.12, viø7d -0.02, viio7/iva 0.26, viio7/ivc -0.04, viioa -0.49, viiob 0.44, viioc -0.2, viio7a -0.2, viio7b 0.06, viio7c -0.09, viio7d -0.03, viio/Va -0.08, viio/Vc -0.29, viio7/Va -0.04, viio7/Vb -0.04, viio7/Vc -0.13, viio7/Vd -0.23, Ger65b -0.07, iva 0.14, ivb 0.3, iv7a -0.13, iv7b -0.38, iv7d -0.11, IVa -0.36, IVb 0.29, IV7a -0.36, IV7c -0.03, IV7d 0.02, VIIa -0.11, VIIb 0.06, VII7b -0.16, VII7d -0.04, viib -0.06, IIIa -0.08, IIIb -0.12, IIImaj7b -0.03, III+b -0.08, III+maj7d -0.05, VIa 0.52, VIb -0.4, VIc -0.06, VImaj7a -0.28, VImaj7d -0.04, Na -0.03, Nc -0.06
minor ic: ia -0.05, ib 0.23, ic -0.05, imaj7c -0.04, Ia -0.07, Ic -0.04, V7/ivc -0.05, V7/ivd -0.03, va -0.08, vb -0.02, Va 0.52, V7a 0.47, V7b -0.04, V7d -0.04, iiob -0.04, iioc -0.2, iiø7a -0.19, iiø7b -0.29, iiø7c 0.48, ii7c -0.04, V7/Vb 0.1, #via -0.04, viioc -0.02, viio7a -0.21, viio7c 0.71, viio7d -0.07, viio/Vb -0.03, viio7/Va 0.27, Ger65a -0.08, iva -0.08, ivb 0.02, iv7a 0.18, iv7b -0.17, iv7d -0.03, IVb -0.04, IV7a -0.08, IV7b -0.18, IV7d -0.04, VIIa -0.12, IIIa -0.08, VIa -0.11, VImaj7a -0.03
minor i7a: ia -0.2, vb -0.04, iioa -0.04, iiob 0.14, iiø7b -0.09, iiø7d -0.12, iia -0.12, V/Vb -0.04, viio7a -0.1, iva 0.16, ivb -0.03, iv7b -0.04, IV7d -0.01, VIIa -0.07, IIIc -0.03, VIa -0.03, VIb 0.57
minor i7b: ia -0.04, v7d -0.03, Vb -0.08, V7d -0.11, V/Va -0.04, viio7a -0.07, iva -0.07, ivb -0.04, IV7a -0.04, VIa -0.04
minor i7c: va -0.03, iiob -0.18, iva -0.01, IVb -0.04, VIIa -0.04, VII7c -0.02, viia -0.04, VIa -0.1
minor i7d: viio/Vb -0.02, ivb -0.35, iv7b -0.04, IVb -0.04, IV7b 0.26, VIIa -0.04, IIIb -0.05, VIa -0.33, VImaj7a -0.04
minor imaj7a: ia -0.12, viiob -0.07, viio7/Va -0.04, iva -0.01, ivb -0.19, iv7b -0.03
minor imaj7b: V7c -0.04, viio7b -0.01, IVb -0.11
minor imaj7c: Va -0.24, Vb -0.04, V7a -0.03, iiø7b -0.04, viø7a -0.04, ivb -0.03, iv7a -0.04, IV7b -0.03
minor imaj7d: iiø7d -0.03
minor Ia: strangea -0.04, ia -0.15, ib -0.04, i7a 0.42, Ia -0.17, Ib -0.16, Ic 0.31, V7/iva 0.32, V7/ivb -0.14, V7/ivc -0.03, V7/ivd -0.03, va -0.15, vb -0.07, v7a -0.04, Va -0.54, Vb -0.31, Vc -0.04, V7a -0.07, V7c -0.15, V7d -0.13, iioa -0.04, iiob -0.11, iioc -0.01, iiø7a -0.19, iiø7b -0.02, iiø7d -0.02, iib -0.2, ii7b -0.26, ii7d 0.37, V/Va -0.03, V7/Vb -0.04, V7/Vc -0.04, V7/Vd -0.06, #via -0.18, #vib -0.03, viiob 0.13, viioc -0.04, viiø7d -0.02, viio/Vb -0.06, It6c -0.04, iva -0.31, ivb -0.36, ivc -0.04, IVa -0.5, IVb -0.39, VImaj7a -0.08, Na -0.1, Nc -0.04
minor Ib: ia -0.05, ib 0.14, ic -0.04, i7b -0.01, Ia 0.28, Ib -0.04, Ic -0.07, V7/iva -0.35, V7/ivb 0.6, va -0.18, v7a -0.04, Va 0.05, Vb 0.42, Vc -0.04, V7b -0.04, V7c -0.11, V7d -0.12, viiø7/VIa -0.04, iiob -0.04, iiø7b -0.06, iia -0.12, iib -0.11, ii7a -0.11, ii7b -0.13, V7/Vb -0.07, #via -0.18, #vib -0.01, viio7/iva -0.03, viioa -0.08, viiob -0.19, viio7c -0.08, viio/Va -0.09, viio7/Va 0.08, iva -0.16, iv7a -0.14, IVa 0.25, IVb -0.04, IV7b -0.04, IV7d 0.23, IIIa -0.04, V7/VIa -0.15, Nb -0.04
minor Ic: V7/iva -0.02, Va 0.19, V7a -0.15, V7d 0.4, iiob -0.03, iib -0.12, ii7b -0.11, viio7c -0.07, viio7/Va -0.03, ivb 0.31, IVa -0.04, IVb -0.2
minor V7/iva: Ia -0.09, V7/ivc -0.01, V7/ivd -0.04, V7a -0.04, iiob -0.16, iiø7b -0.21, iiø7d -0.04, iia 0.27, iib -0.03, viiø7a -0.15, iva -0.49, ivb -0.04, ivc 0.38, IVa -0.11, IV7d -0.04, Nb -0.04
minor V7/ivb: Ib -0.04, V7/iva -0.35, iiø7b -0.07, V/Vb 0.09, V7/Vb -0.07, viio7c -0.15, viio/Va -0.11, viio7/Va -0.04, iva 0.44, ivb -0.04, iv7a -0.01, IVa 0.04, IV7a -0.04, bIImaj7b -0.04
minor V7/ivc: ia -0.04, V7/iva -0.04, vb -0.03, iiø7b -0.2, viø7a -0.03, viio7/ivc -0.04, iva 0.24, ivb -0.14, IVa -0.07, IVb 0.4
minor V7/ivd: Ic -0.15, V7/ivc 0.44, V7/ivd -0.03, viiø7c -0.02, viio7a -0.03, viio7d -0.04, viio/Vb -0.04, It6b -0.07, ivb 0.04, iv7b -0.04, IVb -0.23, VImaj7a -0.04
minor va: ia -0.33, ib 0.08, ic -0.31, i7a -0.11, i7b -0.05, Ia -0.24, Ib -0.1, Ic -0.06, V7/iva -0.07, V7/ivb -0.33, V7/ivd 0.49, va -0.56, vb 0.31, v7a -0.23, v7b -0.03, v7d 0.32, Va -0.54, Vb -0.03, Vc 0.3, V7a -0.35, V7c -0.07, V7d -0.16, viiø7/VId -0.08, iiob 0.17, iioc -0.04, iiø7b -0.04, iiø7c -0.03, iib -0.11, ii7a -0.03, V/Va -0.18, V/Vb 0.21, V7/Va -0.06, V7/Vb -0.09, V7/Vc -0.07, Fr43b -0.04, vioa -0.15, viob 0.19, vioc -0.04, viø7a -0.22, viø7b -0.19, viø7d -0.07, #via -0.08, viio/iva -0.04, viio/ivb 0.28, viiø7/iva -0.07, viiø7/ivb -0.11, viiø7/ivc -0.04, viio7/ivb -0.07, viiob 0.52, viiø7b -0.03, viio7a 0.32, viio7b -0.06, viio7c -0.03, viio/Va -0.04, viio/Vb -0.04, viio7/Va -0.25, viio7/Vb -0.06, It6b -0.02, #io7c -0.01, ivb 0.18, ivc -0.04, iv7a -0.1, iv7b -0.1, IVa -0.1, IVb 0.31, IV7a -0.2, IV7b -0.07, IV7d -0.04, VIIa -0.24, VIIb -0.07, VIIc -0.12, VII7b -0.03, VII7c -0.08, VII7d -0.04, IIIa -0.11, IIIb 0.31, IIImaj7a -0.12, V7/VIa -0.23, III+maj7a 0.22, VIa 0.31, VIb -0.3, VIc -0.23, VImaj7a 0.21, VImaj7b -0.04, VImaj7c -0.08, VImaj7d 0.19, bIImaj7b -0.07
minor vb: ia 0.29, ib -0.08, ic -0.11, i7a -0.07, i7d -0.11, Ia -0.1, V7/ivd -0.08, va -0.24, vb -0.04, v7b -0.1, Vb 0.08, V7b -0.28, iiø7c -0.19, iia -0.07, V/Va -0.15, V/Vb -0.04, V7/Va -0.07, Fr43c -0.04, vioa -0.04, vioc -0.01, viø7a 0.12, viø7b -0.19, viø7c -0.04, viiø7/ivb -0.02, viiø7/ivc 0.28, viiø7c -0.04, viio7a -0.39, viio7d -0.04, viio/Vb -0.08, viio7/Vb 0.5, Ger65b -0.04, iva -0.07, ivb 0.19, iv7b 0.43, iv7c -0.02, IVb -0.13, IV7b -0.01, IIIa 0.41, IIIb -0.04, VIa 0.23, VIb -0.05, VImaj7a -0.24, VImaj7b -0.08
minor vc: ia -0.19, ib -0.14, Vc -0.04, V7c -0.04, V7d 0.42, V/Va -0.04, V7/Va -0.06, vioa -0.04, viø7a -0.04, viø7b -0.1, viiob -0.04, viioc -0.03, viio7a -0.02, iva -0.11, IVa -0.03, VIIb -0.01, IIIa -0.17, VIb -0.05
minor v7a: ia 0.09, ib -0.07, ic -0.04, Ia -0.04, V7/iva -0.04, V7/ivd -0.04, va -0.04, iiø7b -0.03, iiø7c -0.04, #via -0.02, viio/ivb -0.03, viiob -0.04, Ger65b -0.02, ivb -0.08, iv7b -0.03, IV7b -0.04, IIIb -0.04, VIa -0.01, VIb -0.04, VImaj7a -0.04
minor v7b: ia -0.13, ic -0.03, Ia -0.15, V7/ivb -0.04, Vb -0.16, V7a -0.03, IVb -0.03, VIc -0.03
minor v7c: ia -0.2, ib -0.07, viio7b -0.04, IIIa -0.03, VImaj7c -0.04
minor v7d: ib 0.26, Ib -0.04, V7/ivb -0.2, Va -0.01, viiø7/iva -0.04, viio7/iva -0.04, iva -0.04, IVa -0.06, IV7a -0.02, IIIa -0.07, III+a -0.03
minor Va: ia 0.29, ib -0.43, ic -0.59, imaj7b -0.04, Ia -0.13, Ib -0.11, Ic -0.21, V7/ivd -0.04, va -0.12, Va -0.87, Vb 0.19, Vc -0.07, V7a 0.83, V7b -0.25, V7c -0.51, V7d 0.63, iiob -0.07, iiø7a -0.02, iiø7b 0.24, iiø7c -0.13, iib -0.01, V/Vb -0.08, V7/Vb -0.03, vioa -0.04, viob -0.03, viø7a 0.07, viø7b 0.19, viø7c -0.04, viø7d -0.17, #via 0.28, #vic -0.03, viiø7/ivb -0.04, viiob -0.08, viioc -0.04, viio7c 0.55, viio7d -0.04, viio/Va -0.04, viio/Vb -0.04, viio7/Va -0.07, viio7/Vb -0.07, It6b -0.04, ivb 0.39, ivc -0.04, iv7a -0.02, iv7b -0.02, IVb 0.33, IIIa -0.02, IIImaj7a -0.15, III+b -0.12, III+maj7a 0.18, III+maj7b -0.12, VIa -0.49, VIb -0.08, VImaj7a -0.22, VImaj7b -0.04, VImaj7d -0.14
minor Vb: ia 0.2, ib -0.12, ic -0.15, imaj7a -0.04, Ia 0.13, Ib -0.04, V7/ivd -0.09, va -0.04, Va 0.05, Vb -0.35, V7a 0.02, V7b 0.49, V7c -0.1, V+a -0.04, iia -0.1, V7/Va -0.04, viø7a 0.04, #vib -0.04, viioa -0.08, viiob -0.03, viio7a -0.05, viio7d -0.04, IVb -0.11, VII7d -0.04, VIb 0.22, VImaj7b -0.04
minor Vc: ia 0.43, ib -0.49, Ia -0.08, Va -0.09, Vb -0.07, V7b -0.2, V7c -0.26, V7d -0.01
minor V7a: ia 0.5, ib -0.2, ic 0.12, i7a -0.04, Ia 0.57, Ic -0.1, V7/iva 0.14, Va -0.4, Vb -0.25, V7a -0.28, V7b -0.03, V7c 0.2, V7d -0.35, ii7c -0.04, vioa 0.35, viob -0.16, viø7a 0.04, viø7b -0.16, viø7d -0.08, #via -0.15, #vib -0.06, viioa -0.04, viio7/Vb 0.01, ivb -0.23, iv7b 0.19, iv7c -0.12, IVb -0.03, IVc -0.04, IV7b 0.1, IV7c -0.07, III+b -0.26, VIa 0.94, VIb -0.33, VIc -0.03, VImaj7a 0.24
minor V7b: ia 0.32, ib -0.1, ic -0.18, imaj7a -0.04, imaj7c -0.03, Ia -0.42, Ic -0.04, V7/iva -0.13, V7/ivd -0.25, vb -0.08, Va -0.15, Vb 0.11, V7a 0.06, V7b -0.39, V7c 0.53, iiø7d -0.01, iia -0.11, viob 0.05, viø7b -0.03, #vib -0.05, viio/ivc 0.31, viio7a -0.01, #io7d -0.04, ivc -0.03, iv7c -0.02, IV7c -0.03, III+b 0.22, VIa -0.01, VIb 0.31, VImaj7b -0.03
minor V7c: ia 0.05, ib 0.55, Ia -0.23, Ib -0.18, Va -0.03, Vb 0.64, V7a 0.1, V7b -0.13, V7d -0.15, viiob -0.05, ivc -0.14, IVa -0.04, IVc -0.06, VIb -0.04, VImaj7c -0.03
minor V7d: ia -0.07, ib 0.48, ic -0.15, i7c -0.04, Ia -0.2, Ib 0.12, Ic -0.01, va -0.14, Va -0.26, Vc -0.23, V7a -0.13, V7b -0.04, V7c 0.97, V7d -0.25, vioa -0.04, vioc 0.17, viø7b -0.01, viø7c 0.37, #vic -0.04, viio/ivb -0.07, viiø7/iva -0.04, viiob -0.43, viio7/Va -0.28, ivb -0.06, IV7d -0.1, IIImaj7a -0.04, III+a -0.02, III+maj7a -0.04, VIa -0.44, VIb -0.03, VImaj7b -0.04
minor V+a: ia -0.07
minor viio/VIa: V7/ivc -0.04, viio/VIb -0.04, viio7/iva -0.01, IVa -0.06
minor viio/VIb: ia -0.08, Ia -0.11, V/Va -0.1, viio7a -0.26, It6b -0.04, iva -0.03, ivb -0.16, VII7d -0.04, VIa -0.05, VImaj7a -0.15
minor viio/VIc: ia -0.05
minor viiø7/VIa: ia -0.04, ib -0.04, V7/ivc -0.04, v7a -0.03, viio7/ivb -0.08, IV7b -0.04, VII7d -0.04, VIa -0.1
minor viiø7/VIb: Vb -0.05, viio/VIb -0.04, VIIa -0.04
minor viiø7/VIc: ia -0.21, Ia -0.04, V7/iva -0.15, VIa -0.04
minor viiø7/VId: V7/ivb -0.12, iiø7b -0.03, viio7/iva -0.04, iva -0.14, IVa -0.04
minor iioa: ia 0.13, ib -0.26, Ia -0.04, V7/ivb -0.03, va -0.08, Va -0.09, Vb 0.39, Vc -0.02, V7a -0.01, V7b -0.34, iiob 0.26, iioc -0.04, iiø7a -0.04, iiø7b -0.02, Fr43b -0.01, viio7a -0.35, iv7a -0.12, IVa -0.04, VII7d -0.04, IIIa -0.12, IIImaj7d -0.07
minor iiob: ia -0.04, ib -0.21, ic 0.71, imaj7c -0.03, Ia -0.2, Ib -0.07, va 0.3, v7a -0.21, v7d -0.03, Va 0.13, Vb 0.08, Vc -0.03, V7a -0.34, V7b -0.15, V7c -0.08, V7d 0.52, V+a -0.04, iioa -0.02, iiob -0.19, iioc -0.2, iiø7a -0.06, iiø7b 0.24, iiø7c -0.11, iia -0.01, V/Vb 0.42, V7/Vb -0.26, Fr43b -0.01, vioa -0.04, viio/iva -0.04, viiob -0.04, viioc -0.11, viio7b 0.24, viio7c -0.08, viio7d -0.06, viio7/Va 0.55, It6a -0.04, Ger65a -0.03, iva -0.11, ivb -0.26, iv7a 0.1, iv7b -0.04, IV7a -0.15, VIIa -0.23, VII7a -0.1, IIIa -0.13, IIIb 0.25, IIIc -0.04, IIImaj7a -0.19, IIImaj7b -0.04, V7/VIa 0.45, III+a -0.08, III+b -0.04, III+maj7a -0.3, III+maj7b 0.33, VIa -0.06
minor iioc: ia -0.04, ic 0.46, imaj7c -0.04, va -0.06, Va -0.49, Vb -0.03, V7b -0.04, iiob -0.2, iiø7b -0.05, iiø7c -0.12, viio7d 0.39, viio7/Va -0.04, ivb -0.03, VII7c -0.06, IIIa -0.15, IIIb -0.31, IIImaj7b -0.04, III+b -0.27, VIa -0.02
minor iiø7a: ia -0.26, ib -0.48, i7a -0.06, imaj7c -0.04, Ia -0.04, Ib -0.06, Ic -0.04, V7/ivb -0.04, va -0.18, vb -0.03, v7a -0.07, Va 1.13, Vb -0.29, V7a 0.29, V7b -0.11, V7c 0.43, V7d -0.04, iiø7a -0.06, iiø7b -0.22, iiø7d -0.11, ii7a -0.04, viio/iva -0.03, viiob -0.09, viiø7b -0.04, viio7a -0.19, viio7b 0.6, ivc -0.03, IVa -0.14, IVb -0.07, IVc -0.04, VIIb -0.24, VII7b -0.1, IIIa -0.16
minor iiø7b: ia -0.08, ib -0.42, ic 0.68, Ia -0.14, va 0.04, Va 0.4, Vb -0.24, Vc -0.04, V7a 0.5, V7b 0.29, V7c -0.26, V7d 0.06, viiø7/VIa -0.03, iioa -0.14, iiob -0.23, iiø7a 1.32, iiø7b -0.21, iiø7c 0.27, iia -0.45, iib -0.23, ii7a -0.03, V7/Vb -0.19, Fr43a -0.03, viiob -0.25, viioc -0.12, viiø7b -0.07, viio7b -0.03, viio7c 0.11, viio7/Va -0.37, iva -0.18, ivb -0.23, iv7a 0.28, IV7d -0.04, VIIb -0.04, VII7a -0.07, IIIa -0.07, IIIb -0.14, IIIc -0.04, IIImaj7a -0.06, III+b -0.17, III+maj7a -0.08, III+maj7b -0.02, VIa -0.11, VImaj7a -0.11
minor iiø7c: ia -0.07, ib -0.08, ic 0.26, va -0.28, Va -0.04, V7a -0.19, V7b -0.04, iiob 0.37, iioc -0.02, iiø7b 0.27, iiø7c -0.04, iib -0.03, viio7/VIIa -0.04, viio/ivb -0.04, viio7d -0.16, It6b -0.04, ivb -0.08, iv7a -0.17, IV7a -0.03, IIIb -0.02, III+b 0.24, III+maj7a -0.03, III+maj7b -0.07, VIa -0.1
minor iiø7d: ia -0.18, ib -0.03, i7d -0.02, Ia -0.02, V7/iva -0.11, vb -0.06, Vb 0.37, V7b 0.51, V7c -0.12, iiø7a -0.01, iiø7c -0.1, viiob -0.04, viio7a -0.09, ivb -0.05, IIIc -0.03, III+b -0.04
minor iia: ia -0.06, ib -0.23, ic -0.04, i7b -0.04, Ia -0.22, Ib -0.17, Ic -0.09, va -0.03, vb -0.01, vc -0.04, v7a -0.04, Va -0.31, Vb -0.3, V7a -0.4, V7b 0.34, V7c -0.02, V7d -0.13, iioa -0.04, iiob -0.07, iiø7d 0.09, iia -0.07, iib 0.36, ii7a -0.04, ii7d -0.11, V7/Va -0.03, vioa -0.04, vioc -0.16, viø7c -0.03, #via -0.1, #vib -0.04, viioa -0.03, viiob 0.43, viiø7a 0.42, viiø7b -0.02, viio7a -0.03, viio7b -0.13, viio7c 0.1, IVa 0.18, IVb 0.3, IVc -0.1, IV7a -0.13, IV7c -0.07, IV7d 0.26, VIIa -0.08, IIIa -0.07, V7/VIa -0.04, III+b -0.2
minor iib: ia -0.04, ib -0.08, Ia -0.09, Ib -0.04, Ic 0.5, Va -0.44, V7a 0.04, V7d -0.04, iiø7a -0.04, iiø7b -0.03, iia -0.14, V/Vb -0.04, viø7c 0.41, viio/ivb -0.04, viiø7c 0.18, viio7b -0.02, viio7/Va -0.14, IVa -0.04, IVb 0.41, IV7b -0.04, VIIa -0.04, IIIb -0.04, VIa -0.02
minor iic: Ic -0.04, va -0.02, Vb -0.03, V7b -0.05, viioa -0.01, viio7a -0.19
minor ii7a: ia -0.01, i7a -0.02, Ia -0.04, V7/ivc -0.01, v7a -0.03, Va -0.12, Vb -0.04, V7a -0.15, V7c -0.04, ii7c -0.04, viiob -0.08, viio7b -0.1, IIIa -0.16
minor ii7b: Ib -0.02, Ic -0.08, Va -0.55, V7a -0.08, iiob -0.04, iiø7b -0.07, ii7a -0.04, V7/Va -0.04, viiob -0.04, viiø7c -0.04, III+b -0.03
minor ii7c: vb -0.04, Vb -0.04, V7b -0.13, ii7b -0.04, viioa -0.08
minor ii7d: ia -0.03, Ia -0.03, Va -0.08, Vb 0.43, V7b -0.15, iib -0.06, viiø7a -0.04
minor V/Va: ia -0.03, ic 0.38, imaj7c -0.08, Ib -0.06, va 0.2, vb -0.04, vc -0.03, Va -0.58, V7a -0.03, V/Va -0.14, V7/Va -0.09, V7/Vd -0.05, viø7b -0.03, III+b -0.03, III+maj7a -0.02
minor V/Vb: va -0.03, Va -0.22, V7a -0.05, V7d -0.08, V/Va -0.04, V7/Va -0.1, V7/Vb 0.42, III+b 0.18
minor V/Vc: Vb -0.04
minor V7/Va: V7/ivb -0.08, va -0.26, vc -0.04, Va -0.26, Vc -0.03, V7a -0.14, V+a -0.08, viiø7/VIc -0.15, V/Va -0.02, Fr43a -0.04, IIIb -0.03, III+maj7b -0.04
minor V7/Vb: ic -0.18, imaj7c -0.14, va -0.02, Va 0.25, V7a -0.1, V7d 0.04, V/Vb -0.1, V7/Vb -0.05, viio7/Va -0.04, IIIb -0.04, III+b 0.34
minor V7/Vc: va 0.32, vb -0.05, Va -0.09, Vb -0.04, V/Vb -0.03, viio/Vb -0.04, IIIb -0.04
minor V7/Vd: strangea -0.04, va -0.02, vb -0.29, Va -0.06, Vb -0.03, V7c -0.08, V7/Va -0.04
minor Fr43a: V7/ivb -0.04, Va -0.11, V7d -0.04
minor Fr43b: Va -0.05, V7d -0.04
minor Fr43c: ic -0.04, va -0.08, viio7/Va -0.04
minor Fr43d: V7c -0.03
minor vioa: va -0.04, Va -0.08, Vb 0.33, V7b -0.03, iiø7c 0.17, V/Va -0.04, viob -0.11, #vib -0.04, viioa -0.04, viiob -0.13, viioc -0.04, viio7/Va -0.04, ivb -0.03, IV7b -0.04, VIIa -0.04
minor viob: ia -0.04, ib -0.39, va -0.14, vb -0.08, Va -0.23, V7c -0.01, ii7a -0.13, V/Va -0.07, V7/Vb -0.12, vioc -0.01, viø7a -0.03, viø7c 0.39, viioa -0.02, viiob 0.32, viio7b -0.04, viio7d -0.04, viio/Vc -0.12, iva -0.04, ivb -0.04, VIIa -0.14, VIIb 0.03, viia -0.11, IIIa -0.21, VIa -0.02, VIb -0.01
minor vioc: V7d -0.19, iiø7d -0.04, V7/Vd -0.04, viiob -0.12, viio7a 0.24, viio7b -0.08, VIIa -0.12, VIIb 0.43
minor viø7a: Ia -0.04, va -0.07, vb -0.04, Vb -0.21, V7a 0.04, V7b 0.23, iiø7a -0.02, iiø7c -0.04, iia 0.34, iic -0.01, ii7c -0.04, V7/Va 0.2, V7/Vc -0.03, Fr43a -0.01, viob -0.02, viioa 0.55, viiø7a -0.07, viio7a -0.17, viio7/Vb -0.04, IVb 0.05, IV7b 0.36, VIIa -0.17
minor viø7b: ia -0.19, ib -0.04, va -0.04, Va 0.41, V7a -0.03, V7c -0.04, iiob -0.02, iiø7a -0.03, iiø7b -0.08, iia -0.03, V/Va 0.05, V7/Va -0.04, viø7a -0.02, #via -0.04, viiob 0.58, viio7/Vc -0.07, ivb -0.05, iv7b -0.04, IVb -0.06, IV7b -0.11, IIIa -0.06, IIIb -0.02, VImaj7a -0.04
minor viø7c: ia -0.04, vc -0.04, Va -0.03, Vb -0.04, V7b -0.04, V7c 0.42, iiob -0.04, iia 0.34, V/Va -0.04, viioa -0.04, viiob -0.17, Ger65b -0.04, IV7d -0.03, VIIa -0.04, VIIb -0.04, VII7a -0.04
minor viø7d: va -0.08, Va -0.22, V7a -0.11, V7/Vb -0.04, viioc -0.1, viio7/Va -0.04
minor viio7/VIIa: ia -0.04, IVb -0.03, VIIa 0.32
minor #via: Ia -0.02, Ib -0.03, Va -0.17, Vb -0.17, V7b -0.04, iia -0.15, ii7b -0.15, V/Vb -0.03, V7/Vb -0.07, V7/Vc -0.01, Fr43a -0.03, #vib -0.04, viio7/ivc -0.01, viiob -0.1, viio7a -0.01, viio7/Va -0.04, IVa 0.33, IVb -0.14, VIIa -0.06, IIIb -0.04
minor #vib: vb -0.04, ii7d -0.04, viiø7a -0.04, IVa -0.01, IVc -0.04, VIIb -0.04, Na -0.04
minor #vic: V7/Vb -0.03, viiob -0.04, iva -0.04
minor viio/iva: V7/iva -0.04, V7/ivb -0.06, viio/ivb -0.11, iva 0.17, iv7a -0.04, IVa -0.02
minor viio/ivb: Ib -0.04, V7/iva -0.04, V7/ivd -0.02, Va -0.04, viiø7/VId -0.03, iiø7b -0.04, iib -0.06, #via -0.01, viiø7/ivb -0.05, viio7/ivc 0.17, viio/Vb -0.03, iva 0.25, ivb -0.23, IVa -0.15, IVb 0.02, IV7b -0.08, VIa -0.06, Nc -0.04, bIImaj7b -0.03
minor viio/ivc: ivb 0.31, IVa -0.26, IVb -0.17, IV7b -0.04
minor viiø7/iva: iib -0.03, iva 0.23, IVa -0.15
minor viiø7/ivb: va -0.07, v7d -0.04, V/Vb -0.04, V7/Vc -0.02, viio/Vb -0.04, ivb -0.05, IVb -0.13
minor viiø7/ivc: va -0.06, viob -0.04, viio7a -0.04, iva -0.04, ivb 0.21, IVb 0.3
minor viio7/iva: i7a -0.04, Ib -0.07, V7/ivb -0.1, V7/ivc -0.03, iiø7b -0.03, viio/ivb -0.04, viio7/ivb 0.44, iva 0.11, ivb -0.08, IVa 0.17, bIImaj7b -0.04
minor viio7/ivb: Ib -0.07, ivb 0.39, VIa -0.08
minor viio7/ivc: Vb -0.01, iva 0.09, ivb 0.14, iv7b -0.04, IVb 0.12
minor viio7/ivd: Ib -0.04, ivc -0.04
minor viioa: ia 0.15, ic -0.12, Ia -0.13, Va -0.03, Vb 0.32, V7b -0.15, iia -0.02, viob -0.13, viiob -0.29, viio7a -0.13, viio7d -0.06, VII7d -0.04, VIa -0.04, VIb -0.04
minor viiob: strangea -0.04, ia 0.39, ib 0.26, i7a -0.02, imaj7a -0.04, Ia -0.28, Ib 0.29, Va -0.16, Vb 0.18, V7a -0.2, V7b -0.03, V7c 0.18, iiob 0.45, iiø7a -0.04, iiø7d -0.12, iia -0.06, viioa -0.05, viiob -0.25, viiø7b -0.09, viio7a 0.11, viio7b 0.25, viio7c -0.12, viio7d 0.1, viio7/Vc -0.04, ivc -0.09, IVa -0.04, IV7c -0.04, IIIa -0.04, III+b -0.05, VIb -0.04, VImaj7b -0.03
minor viioc: ia 0.36, ib 0.11, Ia -0.17, Ib -0.09, Va -0.15, V7/Vb -0.04, viiob -0.1, viio7/Va -0.25, ivb -0.08
minor viiø7a: ia 0.26, Ia 0.12, Ib -0.04, V7/iva -0.04, Vc -0.04, viiø7a -0.07, IVc -0.08, III+b -0.04
minor viiø7b: ia -0.03, ib -0.07, Ib -0.02, Va -0.1, V7a -0.04
minor viiø7c: ia -0.07, ib 0.14
minor viio7a: ia 0.45, ib -0.04, Ia -0.43, V7/ivd 0.28, v7a -0.04, Va 0.14, Vb 0.04, V7a -0.05, V7b -0.78, iioa -0.03, iioc -0.02, viø7b -0.07, viiob -0.08, viio7a -0.26, viio7d 0.3
minor viio7b: ia -0.11, ib 0.03, Ia 0.44, Va 0.18, Vb 0.41, Vc -0.04, V7a -0.09, V7b 0.41, iioa -0.08, viioa -0.02, viiob -0.02, viio7a 0.38, viio7c -0.04, viio7d -0.17, iva -0.02, ivc -0.06, iv7a -0.08, IIImaj7d -0.04, III+b -0.18, III+maj7b -0.04, III+maj7d -0.04, VIb -0.04
minor viio7c: ia -0.07, ib 0.64, ic -0.4, Ia 0.12, Ib -0.13, va -0.04, Va -0.25, Vb -0.05, V7b -0.1, V7c -0.04, V7d -0.08, iiob -0.03, iiø7c -0.04, iia -0.01, V/Vb -0.04, V7/Vb -0.11, Fr43b -0.04, viiob -0.07, viio7a -0.04, viio7b -0.04, viio7/Va 0.18, iva -0.04, ivb 0.21, iv7a -0.15, IIIa -0.04, III+b -0.03, III+maj7a -0.06, VImaj7a -0.04
minor viio7d: ia -0.05, ib -0.04, ic 0.1, imaj7c -0.04, Va -0.1, Vb -0.18, V7a 0.29, iiø7c -0.04, viio7c 0.41, viio7/Va -0.04, ivb -0.04, iv7a -0.02, IIIb -0.06, III+b -0.07, VIa -0.15
minor viio/Va: va -0.18, Va -0.04, viio/Vc -0.08, viio7/Va -0.01
minor viio/Vb: ic -0.04, va -0.18, v7a -0.04, Va -0.15, Vb -0.1, viio/VIb -0.1, viiø7/Vc -0.03
minor viio/Vc: Va 0.29, V/Va -0.04
minor viiø7/Vb: Vb -0.07
minor viiø7/Vc: vb -0.03
minor viio7/Va: ic 0.13, Ic -0.04, va -0.01, Va 0.4, V7a -0.04, V7d 0.07, V/Vb -0.07, V7/Vb -0.42, viiø7/ivb -0.02, viio7/Va -0.16
minor viio7/Vb: ic 0.13, va 0.41, vb -0.06, Vb 0.24, V7b 0.03, viio7/Va -0.02, VIIa -0.04
minor viio7/Vc: ib -0.04, va -0.16, vb -0.07, Va 0.55, Vb -0.08, viiø7/VIb -0.04, ii7a -0.03, V/Vb -0.04, viø7c -0.03, viiob -0.1, viio7/Vb 0.44, VIIb -0.07
minor viio7/Vd: Va -0.17, V7d -0.04, viiob -0.08, viio7a -0.03, viio/Vc -0.04
minor It6a: Va -0.04
minor It6b: va -0.04, vb -0.04, Va -0.04, V7a -0.08, iva -0.03, ivb -0.07, VIIa -0.02
minor It6c: vb -0.04
minor Ger65a: va -0.03, Va -0.08
minor Ger65b: ic 0.16, Va -0.04, iiob -0.04, iiø7b -0.09, viio7c -0.04, viio7/Va -0.02, iva -0.04, IIIa -0.02, IIIb -0.04
minor Ger65c: vc -0.08, Va -0.11, Vb -0.03, V7c -0.06, IIIa -0.04
minor #io7b: iva -0.04
minor #io7c: iiob -0.04, ivb -0.04, IVb -0.02
minor #io7d: ivb -0.04
minor iva: ia 0.15, ib -0.27, ic 0.17, i7a -0.04, imaj7b -0.01, imaj7c -0.03, Ia -0.35, Ib -0.16, Ic -0.04, V7/ivc -0.08, va -0.43, vb -0.07, v7a -0.1, Va 0.2, Vb 0.34, V7a 0.39, V7b -0.13, V7c -0.04, V7d 0.01, viio/VIa -0.04, viio/VIb -0.04, viiø7/VIa -0.04, iioa -0.11, iiob -0.02, iiø7a -0.03, iiø7b -0.29, iiø7c -0.01, iia -0.08, iib -0.04, ii7b -0.15, V/Vb 0.1, V7/Vb 0.32, viø7b -0.04, viio/ivb -0.28, viiø7/ivb -0.04, viio7/iva 0.35, viio7/ivd -0.08, viioa -0.1, viiob 0.17, viioc -0.09, viio7a 0.16, viio7b 0.2, viio7c -0.13, viio7/Va 0.15, iva -0.47, ivb 0.35, ivc -0.07, iv7a -0.28, iv7c -0.04, iv7d -0.21, IVa -0.07, IVb -0.04, IV7d 0.15, VIIa -0.02, VIIb -0.19, VIIc -0.05, VII7a -0.08, VII7b -0.2, VII7c -0.09, viib -0.01, viic -0.04, IIIa -0.09, IIIb -0.12, V7/VIc -0.04, III+a -0.08, III+b -0.25, III+maj7b -0.08, VIa -0.08, VIb -0.17, VIc -0.08, VImaj7d -0.04, Nb -0.04, bIImaj7a -0.1
minor ivb: strangea -0.04, ia 0.17, ib 0.14, ic 0.71, Ia -0.35, Ib -0.04, Ic -0.03, V7/iva -0.03, V7/ivb 0.15, V7/ivc 0.17, V7/ivd -0.07, va 0.12, vb -0.09, v7a 0.25, v7b -0.04, Va 0.33, Vb 0.57, V7a 0.08, V7b -0.05, V7d -0.05, viio/VIa -0.07, viiø7/VIa -0.04, viiø7/VIc -0.07, viiø7/VId -0.04, iioa 0.35, iiob -0.12, iioc 0.21, iiø7a -0.04, iiø7b 0.16, iiø7c 0.23, iib -0.04, ii7b -0.1, viio7/VIIa -0.01, viio/iva -0.02, viio/ivb -0.13, viio7/iva 0.15, viioa -0.13, viio7a 0.26, viio7b -0.09, viio7c -0.47, viio7d -0.14, viio7/Va 0.09, It6b -0.01, iva -0.27, ivb -0.29, ivc 0.39, iv7a 0.2, iv7b 0.41, iv7d -0.03, IVa -0.04, IVb 0.32, IV7a -0.18, IV7b -0.07, VIIa -0.23, VIIb -0.04, VIIc -0.04, VII7a -0.08, VII7c -0.04, VII7d -0.1, viia -0.03, IIIa -0.14, IIIb -0.25, IIImaj7b -0.04, III+b 0.13, III+maj7a -0.02, III+maj7b -0.04, VIa 0.02, VImaj7d -0.04
minor ivc: ia -0.08, ib -0.06, Ia 0.65, V7/iva -0.04, Vb -0.37, V7b -0.44, V7c -0.08, iiø7d -0.12, viioa -0.04, viio7a -0.16, ivb -0.03, VIc -0.04
minor iv7a: ia -0.04, ib -0.24, ic -0.32, Ic -0.04, va -0.26, vb -0.03, v7a 0.25, Va 0.41, Vb -0.22, V7a 0.22, V7b 0.18, V7c -0.04, V7d -0.4, viio/VIb -0.01, viiø7/VId -0.04, iioa -0.04, iiob -0.12, iioc -0.07, iiø7a -0.07, iiø7b 0.13, iiø7c -0.23, ii7b -0.04, V/Vb -0.08, viioa -0.03, viio7a -0.28, viio7c -0.13, viio7/Va 0.15, ivb 0.41, iv7a -0.03, IV7a -0.02, VIIa 0.41, IIIa -0.04, IIIb -0.08, IIImaj7a -0.01, III+maj7a -0.04, Na -0.04, Nb -0.03
minor iv7b: ia -0.03, ib -0.04, ic -0.14, Ic -0.04, Va 0.24, Vb -0.17, V7b 0.17, viiø7/VId -0.07, iiob 0.35, iioc 0.2, iiø7b 0.16, iiø7c -0.32, viioa -0.42, viio7c -0.04, viio7d 0.36, iva -0.03, ivb -0.35, iv7a 0.49, IV7a -0.04, IV7b 0.43, VIIa -0.38, VII7a -0.2, IIIb -0.05, III+b -0.08, VIa -0.02, VImaj7d -0.04
minor iv7c: ia -0.02, Va -0.07, Vb -0.08, V7c -0.07, viiø7/VIb -0.04, iv7a -0.11, VIIb -0.04, VIb -0.02
minor iv7d: i7a -0.04, Vb -0.08, iiob -0.02, iiø7a -0.07, ii7b -0.06, viio7b 0.22, VIIb -0.27, IIImaj7d -0.04, VIb -0.08, Na -0.04
minor IVa: ia -0.45, ib -0.27, ic -0.21, Ia -0.19, Ib -0.12, V7/ivc -0.06, va -0.03, v7b -0.03, Va -0.59, Vb -0.14, Vc -0.07, V7a -0.35, V7b 0.27, V7c -0.04, V7d -0.3, iiø7a -0.29, iia 0.09, iib 0.38, iic -0.03, V/Vb 0.16, vioc -0.01, viø7c -0.08, #via -0.09, viio/ivb -0.04, viio7/iva -0.04, viioa -0.15, viiob -0.03, viioc 0.56, viio7a 0.57, viio7b -0.18, viio7c -0.08, viio7/Va 0.24, #io7b -0.03, iva -0.04, ivb -0.08, IVa 0.18, IVb -0.36, IV7a -0.25, IV7b 0.25, IV7d -0.14, VIIa -0.15, VIIb -0.3, VII7a -0.06, IIIb -0.02, III+a -0.01, III+b 0.31, VIc -0.04
minor IVb: strangea -0.04, ia 0.4, ic -0.07, Ia -0.3, Ib -0.11, Ic -0.13, V7/iva -0.04, V7/ivb -0.04, V7/ivc -0.08, V7/ivd -0.02, va -0.04, vb -0.14, v7a -0.04, v7b -0.17, Va -0.17, Vb -0.18, V7a -0.03, V7b 0.25, V7d -0.06, iia 0.16, iib -0.14, ii7a -0.05, ii7b -0.11, V/Va -0.04, #via -0.04, #vib -0.04, viio/ivb -0.08, viioa -0.05, viiø7a 0.25, viio7a 0.03, viio7d -0.04, viio7/Vb -0.11, iva -0.23, ivb -0.11, ivc -0.04, IVa -0.42, IVb -0.08, IVc -0.06, IV7a -0.07, IV7b 0.24, VIIa -0.22, viia -0.07, IIIb -0.07, VIa 0.35, VI7a -0.05
minor IVc: Ia -0.06, vb -0.03, Vb -0.04, V7b -0.03, ii7d -0.04, viiob -0.04, viiø7a -0.11, viio7a -0.04, VIIb -0.04, III+maj7b -0.04
minor IV7a: va -0.17, vb -0.05, v7b -0.04, Va -0.14, Vb -0.03, V7a -0.07, V7b -0.25, V7c -0.11, V7d -0.04, iiø7c -0.04, V/Vb -0.08, vioa -0.13, viioa -0.08, viiob -0.18, viio7b -0.24, viio7/Va -0.07, iva 0.43, ivb -0.02, VIIa 0.5
minor IV7b: ic -0.01, vb 0.17, Vb -0.13, V7b 0.25, iiø7a -0.01, iiø7c -0.05, iia -0.01, viiø7/ivc -0.08, viioa 0.38, viio7a -0.01, viio/Vb -0.04, iv7a -0.04, IV7a 0.59, IV7b -0.19, VIIa 0.22, VIIb -0.04, VII7a -0.15, viia -0.05
minor IV7c: ia -0.13, va -0.01, Va -0.2, Vb -0.04, viioa -0.02, viiob -0.1, VIIa -0.09
minor IV7d: ia -0.11, V7/ivb -0.03, v7c -0.03, Va -0.11, Vb 0.16, V7c -0.06, V7d -0.01, iiø7d -0.03, iia 0.05, iib -0.01, ii7a -0.08, V7/Va -0.04, viob -0.04, viio7/iva -0.04, viioa 0.33, viiob -0.15, viioc -0.04, viio7a -0.09, viio7b 0.44, viio7/Vc -0.04, ivb -0.04, IV7a -0.08, VIIb 0.05, viib -0.03, IIIa -0.04, III+c -0.04, VIb -0.03, Na -0.04
minor VIIa: strangea -0.04, ia -0.39, ib -0.21, ic -0.04, i7a -0.03, i7d -0.04, Ia -0.03, Ib -0.07, V7/ivd -0.07, va 0.18, vb -0.02, v7a -0.04, v7b -0.04, Va -0.14, Vb -0.07, V7a -0.34, V7b 0.24, iioa 0.33, iiob 0.11, iioc -0.04, iiø7a -0.18, iiø7b -0.02, iiø7c -0.15, iiø7d -0.03, iia -0.08, iic -0.16, ii7c -0.02, V/Vb -0.13, V7/Vd -0.08, vioa -0.07, viob -0.04, viø7a -0.02, viio/iva -0.07, viio/ivb 0.52, viio/ivc -0.32, viiø7/iva -0.04, viiø7/ivc 0.19, viio7/iva -0.19, viio7/ivc -0.03, viioa 0.24, viiob 0.01, viio7a 0.43, viio7b -0.03, viio7/Va -0.04, viio7/Vb -0.09, iva 0.4, ivb 0.24, ivc -0.1, iv7c -0.04, IVa 0.02, IVb -0.09, IVc -0.04, IV7b -0.21, IV7c -0.03, VIIa -0.06, VIIb -0.31, VIIc -0.07, VII7a -0.15, VII7b -0.03, VII7d 0.04, IIIa -0.28, IIIb -0.48, IIIc -0.04, IIImaj7a 0.34, IIImaj7b -0.01, IIImaj7c -0.03, V7/VIb -0.02, III+b -0.11, III+maj7a -0.04, VIb -0.04
minor VIIb: strangea -0.04, ia -0.2, ib -0.16, i7a -0.04, i7c -0.04, Ib -0.05, V7/ivb -0.06, va -0.19, vc -0.07, Va 0.41, Vb -0.09, V7a -0.21, V7b -0.13, V7c -0.12, V7d 0.15, iiob 0.22, iiø7a -0.07, iiø7b -0.03, iiø7d 0.67, iib -0.08, ii7c -0.04, viob -0.08, vioc -0.02, viø7c -0.04, viio/iva -0.12, viiø7/iva 0.15, viiø7/ivb -0.04, viio7/iva -0.04, viiob 0.26, viioc -0.08, viio7a 0.08, viio7b -0.12, viio7c -0.07, Ger65c -0.03, iva -0.05, ivb 0.23, ivc 0.09, iv7a -0.02, IVa -0.37, IVb -0.04, IV7d -0.12, VIIa -0.41, VIIb -0.1, VIIc 0.34, VII7a -0.08, VII7b 0.34, IIIa 0.59, IIImaj7a -0.23, IIImaj7d -0.18, V7/VIa -0.08, V7/VId -0.02, III+b -0.07, III+maj7a -0.15, VIb 0.25, VImaj7b -0.03
minor VIIc: ib -0.09, Ib -0.14, V7a -0.03, IIIa -0.04, IIImaj7a -0.04, VImaj7a -0.04
minor VII7a: ia -0.35, ib -0.4, Ia -0.05, V7/ivd -0.04, v7b -0.04, Va -0.04, Vb 0.29, Vc -0.03, V7a -0.04, V7b -0.35, viio/VIb -0.04, viio/iva -0.04, viio/ivb -0.02, viio7a -0.2, IIIa -0.23, IIIb -0.03, IIImaj7a -0.08, III+maj7a -0.19, VImaj7a -0.01
minor VII7b: ia -0.04, ib -0.03, i7a -0.04, i7b -0.04, V7/ivb -0.15, Vb -0.18, V7b -0.13, viio/iva -0.07, viio7a -0.09, IIIa 0.34, V7/VIa -0.04, III+maj7a -0.03, III+maj7c -0.04, VImaj7b -0.04
minor VII7c: ia -0.04, Va -0.04, V7a -0.04, viio7/Va -0.04, iva -0.06, iv7a -0.04, IIIa -0.06, IIIb -0.06, III+a -0.04, III+b -0.11, III+maj7a -0.04
minor VII7d: ia -0.04, ib -0.04, ic -0.04, va -0.34, v7a -0.03, Va -0.12, V7a 0.32, iiob -0.07, iiø7b -0.04, iiø7c -0.03, iia -0.04, Fr43c -0.04, viio/ivb -0.12, Ger65b -0.04, IVa -0.04, IIIb 0.2, IIImaj7b -0.04, III+b 0.28, VIa -0.19
minor viia: ia -0.06, Ib -0.03, Vb -0.17, iva 0.12, ivb -0.03, IVb -0.01, viib -0.03, IIIa -0.04, IIIb -0.03, IIIc -0.01, VIb -0.03
minor viib: ia -0.14, Ia -0.08, v7b -0.03, IVa -0.03, IV7b -0.05
minor viic: i7c -0.04
minor IIIa: ia -0.6, ib 0.04, ic -0.11, i7a -0.07, i7b -0.03, Ia -0.04, Ib 0.46, V7/ivb -0.04, va 0.67, vb -0.13, vc -0.12, v7a -0.08, v7b -0.03, v7c -0.15, v7d -0.18, Va 0.1, Vb 0.09, Vc -0.07, V7a -0.43, V7b 0.73, V7d -0.25, V+a -0.03, viio/VIc -0.04, viiø7/VIa -0.04, iioa -0.1, iiob 0.19, iiø7a -0.13, iiø7b -0.14, iiø7c -0.07, iiø7d 0.12, iia -0.04, iib 0.27, ii7b -0.04, Fr43c -0.04, viob 0.01, vioc -0.18, viø7a -0.22, viø7b 0.28, viø7c -0.38, viio7/VIIa -0.01, viio/iva -0.08, viio7/iva 0.12, viioa -0.51, viiob 0.38, viioc -0.08, viio7a 0.51, viio7b 0.14, viio7c -0.09, viio7d -0.21, viio7/Va -0.08, viio7/Vc -0.04, viio7/Vd -0.03, Ger65b -0.04, Ger65c -0.04, iva 0.35, ivb -0.14, ivc -0.08, iv7a -0.15, iv7b -0.22, iv7d -0.23, IVa -0.04, IVb 0.28, IV7a -0.14, IV7b -0.12, IV7c -0.04, IV7d 0.55, VIIa 0.19, VIIb -0.07, VII7a -0.08, IIIa -0.22, IIIb -0.21, IIIc -0.09, IIImaj7a -0.1, IIImaj7b -0.05, IIImaj7d -0.25, V7/VIa -0.21, V7/VIb -0.04, V7/VId -0.06, III+a -0.06, III+b 0.29, III+maj7b -0.1, VIa -0.19, VIb -0.01, VImaj7a -0.24, VImaj7b -0.04, VImaj7c -0.08, Nb -0.08
minor IIIb: ia 0.37, ib -0.36, ic -0.08, Ia -0.04, V7/iva -0.01, V7/ivc -0.07, V7/ivd 0.21, va -0.25, vb -0.11, vc -0.04, v7a -0.02, v7d -0.06, Va -0.16, Vc 0.4, V7a -0.14, V7b -0.01, V7d -0.13, viio/VIb -0.05, viiø7/VIa -0.04, iiob -0.33, iiø7b -0.23, vioa -0.03, viob -0.04, viø7a 0.4, viø7b -0.04, viø7d -0.04, viio/ivc -0.04, viiø7/ivb -0.04, viiø7/ivc -0.02, viiob -0.16, viioc -0.04, viio7a -0.25, viio7c 0.11, iva -0.4, ivb -0.03, iv7a -0.38, iv7b -0.1, IVa -0.24, IVb -0.22, IV7b 0.28, IV7d -0.07, VIIa 0.09, VIIb -0.15, VII7a -0.08, VII7b -0.05, IIIa 0.2, IIIb -0.06, IIIc -0.06, IIImaj7a 0.33, IIImaj7b -0.08, V7/VIa -0.04, III+a -0.06, III+b 0.28, III+maj7a -0.04, III+maj7d -0.04, VIa -0.47, VImaj7a 0.15, VI7d -0.04, Nb -0.04
minor IIIc: ia -0.04, iiob -0.04, viø7a -0.02, viiob -0.04, viio7b -0.04, iva -0.04, ivb -0.07, IVa -0.03, IVb 0.3, IV7b -0.29, VIa -0.15, VIb -0.01
minor IIImaj7a: ia -0.04, ib -0.11, ic -0.04, imaj7b -0.04, Ib -0.04, V7/ivb -0.02, va -0.04, Va -0.2, Vb -0.01, Vc -0.04, V7a -0.08, V7b 0.27, V7c 0.33, V7d -0.04, iiø7a 0.32, vioc -0.04, viiob -0.15, viio7b -0.13, viio7c -0.08, It6b -0.02, ivb -0.2, iv7b -0.12, IVa 0.24, IV7d -0.04, VIIb -0.01, IIIb -0.02, VIa 0.2, VImaj7a 0.29
minor IIImaj7b: Va -0.11, V7a -0.03, iiø7b -0.06, IVb -0.08, IV7b -0.04, IIImaj7a -0.04, VIa -0.04
minor IIImaj7c: vb -0.04, iiø7a -0.02, viio7a -0.04, ivb -0.04, IVa -0.04, IVb -0.06, VImaj7a -0.04
minor IIImaj7d: ia -0.25, ib -0.04, v7b -0.03, iiø7b -0.01, iiø7d -0.1, V/Va -0.03, VIIb -0.04, VIb -0.25
minor V7/VIa: Ib 0.33, iiø7b -0.04, V7/Va -0.15, viio7/iva -0.17, viio7d -0.02, iva -0.17, ivb -0.14, VIa 0.18, VImaj7a -0.24
minor V7/VIb: ia -0.11, IVb -0.03, VIa -0.18
minor V7/VIc: viio7a -0.04, VIa -0.04
minor V7/VId: ia -0.13, Ger65b -0.02, ivc -0.04, VIb -0.04
minor III+a: ia -0.13, ib -0.06, V7c -0.05, V7d -0.04, iib -0.08, viø7a -0.08, viio7/Va -0.01, VIa -0.04
minor III+b: ia -0.3, ib 0.38, ic -0.08, Va -0.12, Vb 0.2, V7a 0.15, V7d -0.15, iioc -0.04, iiø7b -0.13, iiø7c -0.06, vioa -0.08, viø7a 0.24, viø7d -0.1, viioc -0.04, viiø7c -0.04, viio7c -0.04, viio7d -0.04, viio7/Va 0.13, viio7/Vb -0.11, Ger65b -0.04, iva -0.08, ivb -0.26, iv7a -0.06, iv7b 0.21, IVa -0.04, IVb -0.04, IV7b 0.05, IIImaj7a -0.04, III+maj7a 0.38, III+maj7b -0.01, VIa 0.18, VImaj7a -0.07, bIImaj7c -0.04
minor III+c: III+maj7a -0.04
minor III+maj7a: ia -0.12, ib -0.12, ic -0.02, i7a -0.04, Ib -0.08, V7a -0.04, V7b -0.02, V7c -0.03, iiø7a -0.11, viiob -0.06, viioc -0.08, viio7c -0.08, ivb 0.51, iv7b -0.04, III+maj7d -0.04, VIa -0.34, VIb -0.04, VImaj7a 0.22
minor III+maj7b: ib 0.31, ic -0.04, Va -0.06, viiø7/Vb -0.03, ivb -0.21, IV7c -0.03, VImaj7b -0.01
minor III+maj7c: ia -0.04
minor III+maj7d: ia -0.08, Vb -0.05, VIb -0.04
minor VIa: ia -0.39, ib 0.15, ic -0.08, i7c -0.1, Ia -0.04, Ib -0.04, Ic 0.35, va -0.1, vb 0.54, v7a -0.04, Va 0.11, Vb -0.32, V7a 0.22, V7b -0.04, V7d -0.03, viiø7/VIa -0.04, viiø7/VId -0.1, iioa -0.22, iiob 0.33, iioc -0.48, iiø7a -0.33, iiø7b 0.59, iiø7c -0.21, ii7b -0.04, V/Vb 0.26, V7/Vb 0.07, viio7/VIIa -0.15, viio/iva 0.27, viio/ivb -0.17, viio7/iva -0.18, viio7/ivb -0.07, viio7/ivc -0.04, viioa -0.07, viio7a -0.03, viio7b -0.09, viio7c -0.1, viio7d -0.04, viio7/Va -0.07, It6b -0.04, #io7b -0.04, iva 0.28, ivb -0.37, iv7a 0.18, iv7b -0.13, iv7d -0.02, IVa -0.08, IVb -0.27, IV7a -0.03, IV7b 0.53, VIIa -0.19, VIIb -0.16, VII7c -0.08, VII7d -0.32, IIIa 0.01, IIIb -0.1, V7/VIb -0.04, III+maj7a -0.04, III+maj7b -0.04, VIa -0.16, VIb -0.28, VImaj7a 0.2, VImaj7d -0.33, VI7a -0.15, VI7b -0.04, Na -0.07, bIImaj7a -0.01, bIImaj7b -0.03
minor VIb: ia -0.32, ib -0.15, i7b -0.03, Ia -0.04, va -0.06, vb 0.39, vc -0.09, v7c -0.04, Va -0.08, Vb 0.19, V7a -0.04, V7b -0.2, V7c -0.09, viio/VIb -0.11, iioa 0.1, iiob -0.03, iiø7a -0.11, iiø7b -0.08, iiø7c -0.04, iiø7d 0.22, ii7a -0.03, viio7/VIIa -0.04, viio/ivb -0.04, viio7/ivc 0.28, viiob 0.23, viio7a -0.1, viio7b 0.27, Ger65c -0.04, ivb -0.31, ivc -0.13, iv7b 0.31, IVb -0.07, IV7c -0.03, VIIa -0.04, VIIb 0.34, VII7a -0.02, VII7b -0.07, IIIa -0.4, IIIc -0.04, IIImaj7d -0.01, V7/VIa -0.03, V7/VIb -0.04, VIa -0.15, VIb -0.01, VImaj7b -0.04, Na -0.05, bIImaj7d -0.04
minor VIc: ia -0.04, Va -0.04, viio/VIb -0.03, iioa -0.2, iiø7a -0.04, iiø7b -0.03, viiob -0.04, viio7b -0.04
minor VImaj7a: ia -0.1, ic 0.42, imaj7a -0.03, Ic -0.03, va -0.07, Va -0.21, V7a -0.17, iioa -0.04, iiob -0.25, iioc -0.2, iiø7b -0.13, iiø7c 0.46, iiø7d -0.04, V7/Vb 0.29, viio7b -0.04, iva 0.22, ivb 0.08, iv7a -0.17, iv7b 0.3, IVb -0.02, VIIb -0.08, viia -0.03, IIIb -0.04, III+b -0.07, VIa -0.07
minor VImaj7b: ia -0.08, Va -0.1, Vb -0.07, V7b -0.08, V7c -0.03, iioa 0.35, iiø7b -0.04, iiø7d -0.18, V7/Vb -0.03, viio7a -0.04, viio7b -0.04, iva -0.04, ivb -0.03, ivc -0.07, IV7b -0.07, VIIb -0.04, VII7b -0.08, bIImaj7d -0.03
minor VImaj7c: va -0.03, V7b -0.04, viioa -0.01, ivb -0.04, VImaj7a -0.04
minor VImaj7d: Va -0.08, V7a -0.02, iiob 0.07, iioc -0.03, iiø7b -0.18, iiø7c -0.08, viio7b -0.03, iva -0.04, ivb -0.04, iv7a -0.05, IV7b -0.04
minor VI7a: V7a -0.05, viio7/VIIa -0.08, ivb 0.43, IV7b -0.08
minor VI7b: bIImaj7a -0.04
minor VI7d: iiob -0.04
minor Na: ia -0.04, ib -0.03, Vb -0.2, viio/VIb -0.03, viiø7/VIa -0.08, viiø7/VIc -0.04, iioa -0.04, iv7c -0.04, VII7b -0.04, IIIa -0.11, IIIb -0.04, VIa -0.04
minor Nb: ib -0.04, Ia -0.04, iva -0.07, IIIb -0.07, V7/VIb -0.04, VIa -0.02, VI7b -0.04
minor Nc: Ia -0.04, iiø7b -0.06, viio/ivb -0.04
minor bIImaj7a: Ia -0.05, viio/VIa -0.04, viib -0.07, V7/VIa -0.04
minor bIImaj7b: Ia -0.04, viio/ivb -0.04, IIIa -0.07, IIIb -0.03, III+b -0.03, VIa -0.02
minor bIImaj7c: iiø7b -0.04
minor bIImaj7d: Vb -0.03, V7b -0.04
# root to root
major -5: 1 -0.07
major -4: -3 -0.02, -1 -0.04, 0 -0.11, 1 -0.21, 2 -0.25
major -3: -2 -0.06, -1 -0.04, 0 -0.07, 1 -0.15, 2 -0.08, 3 -0.08, 4 0.41, 5 -0.14
major -2: -2 -0.11, -1 -0.46, 0 -0.75, 1 0.1, 2 0.07, 3 -0.34, 4 -0.35, 5 0.44, 7 -0.07
major -1: -4 -0.2, -2 -0.54, -1 -0.26, 0 0.11, 1 0.2, 2 0.14, 3 -0.33, 4 -0.2, 5 0.21, 6 -0.29, 7 0.32, 8 -0.08, 9 -0.04
major 0: -5 -0.04, -4 -0.14, -3 -0.11, -2 -0.31, -1 0.35, 0 0.06, 1 0.36, 2 0.15, 3 0.12, 4 0.07, 5 0.18, 6 0.32, 7 -0.44, 8 -0.03
major 1: -4 -0.09, -3 -0.04, -2 0.11, -1 0.23, 0 0.52, 1 0.45, 2 -0.69, 3 0.21, 4 -0.02, 5 -0.3, 6 0.02, 7 -0.13, 8 0.04, 9 -0.11
major 2: -4 -0.04, -3 -0.04, -2 -0.33, -1 -0.64, 0 -0.37, 1 0.32, 2 0.1, 3 -0.54, 4 -0.49, 5 0.52, 6 -0.53, 7 -0.26, 8 -0.12, 9 0.38
major 3: -2 -0.13, -1 0.11, 0 -0.02, 1 -0.08, 2 0.12, 3 0.02, 4 -0.67, 5 -0.58, 6 0.53, 7 -0.28, 8 -0.09, 9 -0.18
major 4: -2 -0.08, -1 -0.2, 0 -0.6, 1 -0.36, 2 -0.28, 3 -0.3, 4 0.18, 5 -0.29, 6 -0.41, 7 0.41, 8 -0.05, 9 -0.02
major 5: -4 -0.04, -1 0.08, 0 0.68, 1 -0.29, 2 -0.57, 3 -0.27, 4 -0.59, 5 -0.37, 6 -0.17, 7 -0.16, 8 -0.09, 9 -0.31
major 6: -3 -0.04, -2 -0.03, 0 -0.22, 1 0.56, 2 -0.52, 3 -0.32, 4 -0.34, 5 -0.4, 6 0.26, 8 -0.23
major 7: -2 -0.04, -1 -0.29, 0 -0.1, 1 -0.1, 2 0.06, 3 -0.2, 4 -0.02, 5 -0.12, 6 -0.02, 7 -0.1
major 8: -1 -0.15, 0 -0.23, 1 -0.02, 2 -0.09, 3 0.2, 4 -0.31, 8 -0.04, 9 -0.07
major 9: 0 -0.01, 1 -0.18, 4 -0.04, 5 -0.02
major 10: -1 -0.04, 2 -0.04, 3 -0.04
minor -6: -3 -0.04, 2 -0.04
minor -5: -4 -0.11, -3 -0.32, -2 -0.1, -1 -0.11, 0 -0.2, 1 -0.37, 2 -0.13, 4 -0.08
minor -4: -5 -0.24, -4 -0.56, -3 -0.47, -2 -0.26, -1 0.16, 0 -0.16, 1 -0.05, 2 0.21, 3 -0.25, 4 0.08, 5 -0.01, 6 -0.12, 7 -0.04
minor -3: -5 -0.15, -4 -0.41, -3 -0.05, -1 -0.28, 0 -0.42, 1 0.17, 2 -0.37, 4 -0.12, 5 -0.1, 6 -0.21
minor -2: -7 -0.04, -4 -0.02, -2 -0.25, -1 0.07, 0 -1.22, 1 -0.29, 2 0.24, 3 -0.24, 4 -0.05, 5 0.41, 6 0.26
minor -1: -5 -0.26, -4 -0.21, -3 -0.48, -2 -0.56, -1 0.14, 0 0.02, 1 -0.02, 2 0.05, 3 -0.4, 4 -0.23, 5 0.29, 6 0.27, 7 -0.03
minor 0: -5 -0.07, -4 0.38, -3 -0.38, -2 0.24, 0 -0.08, 1 0.47, 2 0.05, 3 0.17, 4 0.01, 5 0.36, 6 0.21
minor 1: -5 -0.07, -4 0.24, -3 -0.05, -2 -0.54, -1 0.18, 0 0.29, 1 0.37, 2 -0.59, 3 0.02, 4 0.24, 5 -0.07, 6 -0.25, 7 -0.04
minor 2: -4 -0.26, -3 -0.5, -2 -0.68, -1 -0.11, 0 -0.17, 1 0.15, 2 0.5, 4 -0.13, 5 0.22, 6 0.13
minor 3: -5 -0.04, -4 -0.07, -3 -0.3, -2 -0.06, -1 0.07, 0 -0.63, 1 -0.09, 2 0.03, 3 0.11, 4 -0.01, 5 0.39, 6 -0.32
minor 4: -5 -0.11, -4 -0.14, -1 0.43, 0 -0.41, 1 -0.24, 2 -0.19, 3 -0.14, 4 0.41, 5 -0.04, 6 -0.06
minor 5: -4 -0.32, -3 -0.49, -2 -0.04, -1 -0.32, 0 0.81, 1 -0.11, 2 -0.07, 3 -0.18, 4 -0.04, 5 0.14, 6 -0.01
minor 6: -3 -0.09, -2 -0.12, -1 -0.13, 0 0.25, 1 0.4, 2 -0.57, 3 -0.03, 4 -0.02, 5 -0.23, 6 0.2
minor 7: -1 -0.13, 2 -0.04
minor 8: 0 -0.03
# bass to bass
major -5: 0 -0.1, 5 -0.07
major -4: -4 -0.11, -1 -0.4, 1 -0.03, 2 -0.04, 3 0.29, 4 -0.04, 6 -0.02
major -3: -3 -0.08, -1 -0.16, 0 -0.23, 1 -0.22, 2 -0.34, 4 0.37, 5 -0.26
major -2: -4 -0.17, -2 -0.16, -1 -0.41, 0 -0.78, 1 0.45, 2 0.38, 3 0.18, 4 -0.13, 5 0.12, 6 -0.08, 7 -0.26
major -1: -4 -0.04, -3 -0.3, -2 -0.44, -1 -0.28, 0 -0.55, 2 0.49, 4 0.21, 5 0.19, 6 0.53, 7 0.37, 8 0.1, 9 -0.04
major 0: -5 -0.04, -4 -0.24, -3 -0.09, -2 0.22, -1 0.5, 0 -0.73, 1 0.24, 2 -0.25, 3 0.38, 4 0.6, 5 -0.04, 6 -0.31, 7 -0.34, 8 0.58
major 1: -4 0.09, -3 -0.08, -2 -0.45, -1 0.11, 0 0.49, 1 -0.29, 2 -0.12, 3 0.14, 4 -0.55, 5 -0.14, 6 0.23, 7 -0.36, 8 -0.2, 9 -0.04
major 2: -5 -0.1, -3 -0.04, -2 -0.32, -1 -0.22, 0 -0.03, 1 0.31, 2 -0.13, 3 -0.18, 4 -0.11, 5 0.06, 6 -0.31, 7 -0.21, 8 -0.12, 9 -0.03
major 3: -4 0.14, -2 0.01, -1 0.67, 0 0.06, 1 -0.01, 2 -0.13, 3 -0.33, 4 0.43, 5 0.28, 6 0.37, 7 0.25, 8 -0.27, 9 -0.14
major 4: -4 -0.04, -3 -0.27, -2 -0.04, -1 -0.01, 0 0.08, 1 0.18, 2 -0.19, 3 0.08, 4 -0.53, 5 0.25, 6 -0.57, 8 -0.46, 9 -0.02
major 5: -4 -0.04, -3 -0.04, -2 0.62, -1 -0.12, 0 0.38, 1 0.56, 2 -0.2, 3 0.25, 4 -0.04, 5 -0.15, 6 -0.07, 7 -0.31, 8 -0.51, 9 -0.03
major 6: -1 -0.48, 0 -0.03, 1 0.18, 2 0.04, 3 -0.18, 4 -0.21, 5 -0.21, 6 -0.03, 8 -0.14, 9 -0.04
major 7: -1 -0.1, 2 -0.42, 3 0.14, 4 -0.39, 5 -0.07, 7 0.02, 9 -0.15
major 8: -1 -0.03, 0 -0.04, 1 -0.04, 3 -0.14, 4 0.55, 6 -0.1, 8 0.17
major 9: 1 -0.01, 2 -0.02, 4 -0.4, 5 -0.06, 9 -0.08
minor -6: -1 -0.04, 1 -0.26
minor -5: -5 -0.11, -4 -0.09, -3 -0.24, -2 -0.06, -1 -0.03, 0 -0.68, 1 -0.14, 2 -0.07, 3 -0.05, 4 -0.04, 5 -0.2
minor -4: -5 -0.15, -4 -0.23, -3 -0.12, -2 -0.36, -1 0.56, 0 -0.33, 1 0.53, 2 -0.44, 3 0.32, 4 0.2, 5 -0.23, 6 0.37
minor -3: -5 -0.32, -4 -0.32, -3 -0.65, -2 -0.17, -1 -0.14, 0 -0.27, 1 0.41, 2 0.17, 3 -0.1, 4 0.74, 5 0.5, 6 -0.21
minor -2: -7 -0.04, -5 -0.03, -4 -0.09, -3 -0.46, -2 -0.35, -1 0.14, 0 -0.58, 1 -0.34, 2 -0.45, 3 -0.03, 4 -0.39, 5 -0.06, 6 -0.18
minor -1: -5 -0.21, -4 -0.23, -3 0.08, -2 0.12, -1 -0.4, 0 -0.57, 1 0.1, 2 0.31, 3 -0.02, 4 -0.36, 5 0.18, 6 0.52
minor 0: -5 -0.34, -4 0.21, -3 0.71, -2 -0.2, -1 0.12, 0 -0.57, 1 0.03, 2 0.27, 3 0.15, 4 -0.28, 5 0.09, 6 0.14
minor 1: -6 -0.04, -4 0.4, -3 -0.07, -2 0.27, -1 -0.12, 0 0.28, 1 -0.08, 2 -0.01, 3 0.3, 4 -0.55, 5 -0.14, 6 -0.02
minor 2: -5 -0.16, -4 0.07, -3 0.09, -2 -0.51, -1 0.26, 0 -0.1, 1 -0.19, 2 0.02, 3 -0.01, 4 -0.14, 5 0.56, 6 -0.01
minor 3: -4 0.23, -2 -0.24, -1 -0.01, 0 -0.1, 1 -0.3, 2 0.12, 3 -0.05, 4 -0.19, 5 0.46, 6 -0.21
minor 4: -4 -0.11, -3 0.18, -1 0.14, 0 -0.33, 1 0.05, 2 -0.46, 3 -0.26, 4 0.44, 5 0.31, 6 -0.18
minor 5: -4 0.12, -3 -0.26, -2 0.2, 0 0.52, 1 -0.09, 2 -0.04, 3 -0.04, 4 -0.08, 5 -0.28
minor 6: -1 -0.02, 0 -0.08, 1 0.27, 2 -0.13, 6 -0.13
minor 8: 3 -0.08
# progression into a phrase
major strange: I -0.03, vi -0.04, viio -0.04, bVIImaj7 -0.04
major I: strange -0.08, I 0.71, Imaj7 -0.11, V7/IV 0.05, V 0.66, V7 -0.25, v -0.07, v7 -0.03, ii -0.21, ii7 0.32, V/V 0.34, V7/V 0.39, vi 0.32, vi7 0.39, V/ii 0.16, vio -0.04, iii -0.3, V/vi 0.1, V7/vi -0.03, viio -0.13, vii -0.03, viio/V 0.05, viiø7/V -0.13, viio7/V -0.29, viio/vi -0.03, IV 0.48, IVmaj7 -0.08, IV7 -0.03
major V7/IV: ii -0.11, V7/V -0.03, IV 0.16
major i: I -0.12, V -0.02, v -0.04
major I+: iii -0.03
major V: I 0.21, Imaj7 -0.18, V7/IV -0.04, i -0.03, V7 -0.1, v -0.17, v7 -0.04, vo -0.34, ii 0.35, V/V -0.01, V7/V 0.3, vi 0.46, vi7 -0.08, V7/ii 0.16, iii -0.37, iii7 -0.16, V/vi 0.36, viio/IV 0.18, viiø7/IV -0.08, viio -0.04, viio/V -0.01, viio/ii -0.09, viiø7/ii -0.04, viio7/ii -0.03, IV -0.01, IVmaj7 -0.07, bVIImaj7 -0.02
major V7: I 0.4, vi -0.08, V/vi -0.03
major v: I -0.4, V -0.38, v -0.15, vø7 -0.04, ii 0.62, vi -0.11, iii -0.04, viio -0.04, IV 0.24
major v7: i -0.04
major V+: I -0.03, V -0.04, vi -0.03
major ii: I -0.26, V 0.53, V7 0.29, V+ -0.04, ii -0.28, V/V 0.48, V7/V -0.04, vi 0.2, iii -0.15, V/vi -0.16, viio -0.11, viio/V -0.04, viio7/vi -0.04, IV 0.04, IVmaj7 -0.01, bVII -0.04
major ii7: I -0.11, V -0.12, V7 -0.04, vi -0.04
major V/V: I -0.22, V -0.4, V7 0.03, v 0.3, ii -0.22, ii7 -0.04, V/V 0.22, iio 0.34, vi 0.09, iii -0.04, V/vi -0.06, viio -0.08, V/iii -0.05, IV -0.46
major V7/V: V -0.07
major iio: ii -0.07
major vi: I -0.06, V7/IV 0.31, V 0.47, V7 -0.03, ii 0.41, ii7 -0.02, V/V 0.14, V7/V -0.21, vi 0.01, V/ii -0.1, V7/ii -0.07, iii -0.24, V/vi -0.24, viio/IV -0.38, viio -0.14, V/iii -0.27, viio/V -0.04, viio/ii -0.04, viio7/ii -0.03, IV 0.29, bVII -0.34
major vi7: V7/IV -0.03
major V/ii: I 0.6, V7/IV -0.3, ii 0.12, ii7 -0.04, V/V -0.04, V7/V -0.03, iio -0.06, vi -0.22, V/ii -0.03, V/vi -0.22, viio 0.16, viiø7 -0.04, IV -0.17
major V7/ii: ii -0.08, vi -0.12
major vio: vi -0.08, V/vi -0.03
major iii: I -0.27, V -0.19, V7 -0.32, ii -0.08, V/V -0.31, vi -0.11, iii -0.36, V/vi -0.01, viio 0.49, vii -0.04, viio/V 0.12, viiø7/ii -0.04, IV 0.55
major iii7: I -0.01, V7/ii -0.04
major V/vi: I -0.09, Imaj7 -0.04, V -0.21, V7 0.39, ii -0.08, ii7 -0.1, V/V -0.14, vi -0.31, iii -0.22, V/vi -0.27, V7/vi -0.02, viio/V -0.07, viio/ii -0.04, IV 0.12
major V7/vi: ii -0.04, vi -0.14, V/vi -0.04
major viio/IV: ii -0.06, IV -0.15
major viio: I 0.31, V 0.4, V7 -0.06
major viiø7: IVmaj7 -0.03
major V/iii: iii -0.03
major V7/iii: vi -0.04, V/iii -0.07
major vii: V -0.04
major viio/V: I -0.03, V/V -0.1, V7/V -0.07, vi -0.01
major viiø7/V: vi -0.03
major viiø7/ii: V -0.04, ii -0.03
major viio7/ii: vi -0.03
major viio7/iii: IV -0.04
major IV: I -0.42, i -0.19, V 0.35, V7 -0.15, ii 0.27, ii7 -0.16, vi 0.26, vi7 -0.01, V/ii -0.04, V7/ii -0.03, viio/IV -0.03, viio -0.66, viio7 -0.04, viio7/V -0.12, viio/ii -0.06, IV -0.01, IVmaj7 -0.09
major iv: I -0.16, V -0.04, bVImaj7 -0.04
major bVII: I -0.56, V 0.03, v -0.07, vø7 -0.04, ii -0.06, ii7 -0.04, IV -0.14, IVmaj7 -0.03, bVII -0.03
major bVIImaj7: V -0.04
major bVII7: I -0.04
major bIII: I -0.12
major bVI: viio7/ii -0.08
minor strange: i -0.04, I -0.03, V7/iv -0.04, V -0.14, V7 -0.04, viio/VI -0.03, ii -0.07, ii7 -0.04, V/V -0.04, #vi -0.1, viio7/iv 0.15, viio7 -0.05, Ger65 -0.04, iv -0.04, IV -0.05, IV7 -0.02, IIImaj7 -0.04, VI -0.03
minor i: i 0.66, I -0.54, V7/iv -0.34, v 0.07, V 0.42, V7 -0.04, viio/VI -0.01, iio -0.1, ii 0.41, V/V 0.17, viø7 -0.04, viio/iv -0.02, iv 0.36, IV -0.28, IV7 -0.05, VII -0.26, III 0.31, V7/VI -0.02, VI 0.27, N -0.04
minor I: i 0.21, I 0.27, v -0.14, V 0.14, V7 0.04, iio -0.24, ii -0.02, V7/V 0.15, vio -0.03, viio7 -0.08, It6 -0.03, iv -0.71, IV -0.44, IV7 -0.04, VII -0.31, VI -0.1
minor V7/iv: IV -0.04
minor v: i -0.11, I -0.04, v -0.38, V 0.34, V7 0.15, ii -0.39, viio 0.37, iv -0.07, IV -0.08, VII -0.03, III -0.39, VI -0.37
minor v7: i -0.04, VII -0.04
minor V: i 0.39, i7 -0.08, I -0.06, V7/iv -0.03, v 0.41, V 0.45, V7 -0.09, ii -0.08, V/V -0.07, V7/V -0.08, vio -0.04, viø7 0.26, viio/iv 0.06, viio -0.06, viio7 0.02, viio7/V -0.04, Ger65 -0.04, #io7 -0.06, iv -0.34, IV -0.19, VII -0.06, VII7 -0.1, III -0.36, VI 0.52
minor V7: i 0.29, V 0.04, IV -0.25
minor V+: i -0.04
minor iio: V -0.04, iv -0.04
minor iiø7: i -0.06, v -0.04, iv -0.01
minor ii: i -0.04, V -0.31, V7 -0.04, ii -0.01, viio 0.04, VII -0.03, III+ 0.29
minor V/V: i -0.04, I 0.37, v 0.09, V -0.18, V7 -0.13, ii -0.08, viio -0.16, IV -0.04, IIImaj7 -0.04
minor V7/V: V/V -0.04
minor Fr43: i -0.04
minor vio: i -0.01, v -0.03
minor viø7: i -0.03, V7/iv -0.03
minor #vi: V -0.14, viio/iv -0.04, viio -0.03
minor viio: V 0.07, V7 -0.04
minor viiø7: i -0.02
minor viio7: i 0.36
minor iv: i -0.22, I -0.15, v -0.25, V 0.29, V7 -0.04, iiø7 -0.04, viø7 -0.04, iv 0.25, IV -0.05, IV7 -0.07, VII -0.37, VII7 -0.14, III 0.36, VI -0.07, N -0.07
minor IV: i -0.09, I -0.16, V7/iv -0.02, v -0.03, V 0.1, V7 0.25, ii -0.29, V/V -0.36, viø7 -0.03, viio7/V 0.15, iv 0.26, IV 0.32, VII -0.15, VI -0.06
minor IV7: i -0.06, V -0.03
minor VII: i -0.45, i7 -0.06, I -0.04, v -0.14, V -0.19, viiø7/VI -0.01, ii -0.07, V/V -0.01, vio -0.19, viio/iv -0.08, viio -0.01, viio7 -0.04, viio7/V -0.03, iv -0.04, IV 0.32, IV7 -0.03, VII -0.2, VII7 -0.04, vii -0.04, III -0.41, IIImaj7 -0.02, V7/VI -0.01, VI -0.11
minor vii: iv -0.03, III -0.04
minor III: i -0.06, i7 -0.11, I -0.12, v -0.04, V -0.03, V7 -0.04, vio -0.08, viio7/VII 0.32, #vi -0.04, viio -0.13, iv -0.11, IV7 -0.36, VII -0.21, vii -0.01, III -0.4, III+ -0.04, VI -0.26
minor IIImaj7: VImaj7 -0.04
minor V7/VI: It6 -0.04, VI -0.04
minor III+maj7: I -0.04
minor VI: i -0.26, I -0.07, viio/iv 0.26, Ger65 -0.08, #io7 -0.04, iv 0.41, VII -0.07, III -0.07, VI -0.29
minor N: VI -0.11
# cadence
major strange: I -0.15, V -0.04
major I: I -0.85, V7/IV -0.07, i -0.04, V 0.25, V7 -0.22, ii -0.15, ii7 -0.17, vi -0.13, iii -0.1, iii7 -0.01, viio/IV -0.06, IV -0.26, IVmaj7 -0.04, iv -0.06, N -0.04
major Imaj7: I -0.19, V -0.07, vi -0.09, IV 0.4
major V7/IV: V7/IV -0.11, ii -0.22, iio -0.04, vi -0.08, viio/V 0.36, IV 0.32
major i: I -0.03, V -0.14
major I+: vi -0.15
major V: I 0.44, Imaj7 -0.03, i 0.18, V -0.7, V7 0.15, V+ -0.04, vi 0.51, V/ii -0.03, iii -0.04, iii7 -0.04, viiø7/V -0.07, bVI 0.12
major V7: I 0.62, Imaj7 -0.07, i -0.25, V -0.08, V7 -0.04, vi 0.18, V/ii -0.27, iii -0.04, iii7 -0.04, V/vi -0.14, viiø7/V -0.03
major v: I -0.03, V -0.07, vi -0.07
major v7: I -0.14, vi -0.02, V7/ii -0.04
major ii: I -0.04, V -0.24, V7 -0.07, ii -0.04, vi 0.2, V/ii 0.21, iii 0.38, V/vi -0.05, viio/IV -0.03, viio -0.04, IV -0.08
major ii7: I -0.22, V7/IV -0.04, V 0.06, V7 -0.04, V/vi 0.25, viio/IV -0.04, bVI -0.04
major V/V: V -0.15, v -0.06, V+ -0.06, ii -0.04, V/V -0.04, V7/vi -0.04
major V7/V: I -0.02, V -0.03, v -0.06, V+ -0.04, vi -0.02
major iio: I -0.01, iv -0.04
major iiø7: I -0.03
major Fr43: V -0.17
major vi: I -0.26, V7/IV -0.02, I+ -0.03, V -0.34, V7/V -0.04, vi 0.18, iii -0.12, V/vi -0.26, IV -0.04
major vi7: I -0.07, V -0.03, V7 -0.04, ii -0.04
major V/ii: V7 -0.04, ii -0.11, V/V -0.14, iio -0.07, V7/iii -0.07, bVII -0.02
major V7/ii: V -0.04, ii -0.06, iio -0.03, viiø7 -0.03
major viø7: V -0.02
major iii: I -0.25, ii -0.03, V/V -0.04, vi -0.15
major iii7: I -0.03
major V/vi: vi -0.01, V/ii -0.07, vio -0.08, V7/vi -0.03, viio/V -0.01, IV -0.07
major V7/vi: vi -0.52, vio -0.03, IV -0.11
major viio/IV: ii7 -0.04, V/V -0.04, vi -0.04, V/ii -0.04
major viiø7/IV: vi -0.07, V/ii -0.04, IV -0.13
major viio: I -0.03, i -0.01, V -0.1, vi -0.17, V/ii -0.27, V/vi -0.41, V7/vi -0.07, IV -0.04
major viiø7: I 0.25, vi -0.04, V/vi -0.04
major V/iii: iii -0.03
major V7/iii: I -0.04, iii -0.14
major vii: V -0.05
major viio/V: V 0.22, v -0.08, iii -0.02
major viiø7/V: V 0.37, vi -0.04, iii -0.04
major viio7/V: V -0.08
major It6: V -0.08
major viio/ii: ii -0.18, bVIImaj7 -0.04
major viio7/ii: ii -0.04, V/V -0.04, V/ii -0.09
major viio/vi: vi -0.04, V/ii -0.07, V/vi -0.03
major viio7/vi: vi -0.32, V/ii -0.08
major viio/iii: V/vi -0.02
major viio7/iii: iii 0.32
major IV: I 0.27, V7/IV 0.29, V 0.33, V7 0.55, ii -0.04, ii7 -0.04, vi -0.07, iii -0.07, V/vi -0.15, viio/IV -0.1, viio 0.42, IV -0.11
major IVmaj7: I -0.17, V -0.14, V7 -0.04, iii -0.04, V/vi -0.09, IV -0.04
major IV7: viio -0.1
major iv: I -0.22, V -0.08
major bVII: I -0.07, viio/IV -0.04, IV -0.13, bVII -0.04, bVIImaj7 -0.04
major bVIImaj7: I -0.03, vi -0.07, IV -0.04
major bVII7: I -0.04
major bIII: bVII -0.04
minor strange: ii7 -0.04
minor i: i -0.51, imaj7 -0.04, I -0.12, v 0.27, v7 -0.01, V 0.08, ii -0.04, V/V -0.04, V7/V -0.15, Fr43 -0.04, viø7 -0.16, viio -0.13, viio7/V -0.04, iv7 -0.12, IV -0.04, IV7 -0.04, III -0.1, VI -0.08
minor i7: V/V -0.04
minor imaj7: V -0.04
minor I: i -0.07, i7 -0.04, I -0.11, V7/iv 0.16, V -0.24, iio -0.04, iiø7 -0.02, ii7 -0.03, V7/V -0.04, #vi -0.03, iv -0.13, IV -0.11
minor V7/iv: I -0.09, V7/iv -0.37, iiø7 -0.15, viiø7 -0.02, iv 0.44, IV -0.08
minor v: i -0.2, V7/iv 0.17, V -0.1, V7 -0.2, viio/iv -0.04, IV -0.12, VI -0.04
minor v7: i -0.42, I -0.08, V7/iv -0.14
minor V: i 0.28, I 0.17, V -0.41, V7 -0.1, viø7 -0.2, viio7 0.36, IV 0.44, III+maj7 -0.07, VI -0.05
minor V7: i 0.36, I 0.5, V7/iv 0.14, V -0.2, V7 0.08, vio -0.1, viø7 -0.16, #vi -0.1, viio -0.05, iv -0.04, iv7 -0.04, IV -0.04, IV7 -0.07, VI -0.01
minor viio/VI: i -0.05, I -0.07
minor viiø7/VI: i -0.07, I -0.04
minor iio: i -0.26, I -0.23, v -0.08, V 0.04, V7 -0.15, V+ -0.04, viio/iv -0.04, III -0.04, IIImaj7 -0.04
minor iiø7: i 0.37, I -0.19, v -0.03, V7 -0.16, iv -0.11, IV -0.02, III -0.06
minor ii: I -0.05, V -0.03, V7 0.4, VII -0.04
minor ii7: i -0.03, I -0.06, V7 -0.09
minor V/V: v 0.25, V -0.48, V7 -0.03
minor V7/V: v 0.09, V -0.22, V7 -0.14, V+ -0.08, III+maj7 -0.04
minor Fr43: V -0.08, V7 -0.03
minor vio: v -0.14, V -0.13, V7 -0.19, V7/V -0.12, vio -0.01, VII -0.04
minor viø7: i -0.17, v -0.04, V -0.37, ii -0.04, Ger65 -0.04
minor #vi: IV -0.01
minor viio/iv: V7/iv -0.04, iv 0.33
minor viiø7/iv: IV -0.13
minor viio7/iv: iv -0.01, VI -0.08
minor viio: i -0.03, I -0.2, V -0.08
minor viiø7: i -0.04, I 0.25
minor viio7: i -0.02, I 0.21, V -0.06, V7 -0.2, viio7 -0.04
minor viio/V: v -0.1, V 0.29
minor viio7/V: v -0.31, V 0.66, V7 -0.04
minor It6: V -0.01
minor Ger65: V -0.11, V7 -0.06, III -0.02
minor iv: i 0.23, I -0.08, V7/iv 0.37, v -0.12, V 0.76, V7 0.08, iiø7 -0.05, iv 0.39, IV -0.03
minor iv7: i -0.11, V 0.62, V7 0.32, iiø7 -0.03
minor IV: I -0.22, V -0.17, V7 0.21, viio -0.06, IV -0.04, III+maj7 -0.04
minor IV7: i -0.04, v -0.04, V -0.18, V7 -0.04, V7/V -0.04, viio -0.18, VII -0.11
minor VII: strange -0.04, v7 -0.04, V7 0.09, viio -0.03, IV -0.17, III -0.43, IIImaj7 -0.04, V7/VI -0.02
minor VII7: i -0.08, V -0.05, V7 -0.16, III -0.2
minor vii: I -0.08, IV -0.03
minor III: i -0.04, V7/iv -0.16, v -0.04, V7 -0.04, iv -0.04, IV -0.04, III -0.04, V7/VI -0.04, VI -0.21
minor IIImaj7: v -0.04, V -0.12, V7 -0.06, It6 -0.02, IV -0.14, VI -0.04
minor V7/VI: i -0.02, VI -0.28
minor III+: i -0.17
minor III+maj7: i -0.09, IV7 -0.03, VI -0.11
minor VI: i -0.03, V -0.41, V7 -0.05, iiø7 -0.04, V/V 0.26, viio 0.27, VII -0.02, III -0.18, V7/VI -0.04
minor VImaj7: i -0.04, V -0.2, V7/V -0.03, iv -0.04
minor N: I -0.05, V -0.2
minor bIImaj7: I -0.09, V -0.03
# relation
same: 1 -2.06, 2 -2.19, 3 -1.02, 4 -1.83
turned: 1 1.79, 2 1.35, 3 0.17, 4 0.06
seventh_added: 1 1.55, 2 0.73, 3 0.08, 4 0.09
seventh_dropped: 1 -0.98, 2 -0.3, 3 0.38, 4 -0.24
quality_changed: 1 -0.59, 2 -0.01, 3 -0.26, 4 -0.53
third_apart: 1 -0.7, 2 -0.26, 3 -0.59, 4 0.11
fifth_up: 1 -1.08, 2 0.05, 3 0.25, 4 0.09
fifth_down: 1 -0.6, 2 0.3, 3 0.48, 4 0.39
step_up: 1 -0.55, 2 0.04, 3 0.64, 4 0.24
step_down: 1 -0.76, 2 -0.51, 3 -0.44, 4 0.08
tritone: 1 0.08, 2 -0.03, 3 -0.4, 4 0.2
# key change
phrase_start major major: -4 -0.15, -3 -0.46, -2 -0.57, -1 0.34, 1 0.06, 2 -0.45, 3 -0.24, 4 -0.03
phrase_start major minor: -2 -0.01, -1 -0.41, 0 -0.14, 1 0.24, 2 -0.12, 3 -0.25, 4 -0.11, 5 -0.04
phrase_start minor major: -5 -0.04, -4 0.02, -3 0.33, -2 0.27, -1 -0.02, 0 0.11, 1 -0.36
phrase_start minor minor: -4 -0.14, -3 -0.22, -2 -0.43, -1 0.04, 1 -0.14, 2 -0.27, 3 -0.53, 4 -0.15, 5 -0.04
within major major: -4 -0.04, -3 0.38, -2 -0.51, -1 -0.3, 1 -0.31, 2 -0.22, 3 -0.6, 4 -0.14
within major minor: -1 -0.45, 0 -0.83, 1 -0.78, 2 -0.45, 3 0.05, 4 -0.7, 5 -0.18
within minor major: -5 -0.2, -4 -0.66, -3 -0.11, -2 -0.09, -1 -0.62, 0 -0.99, 1 -0.41
within minor minor: -4 -0.16, -3 -0.44, -2 -0.16, -1 -0.32, 1 -0.18, 2 -0.37, 3 -0.29, 4 -0.04
goal major major: -2 -0.11, -1 -0.51, 1 -0.37, 2 -0.14, 3 -0.05
goal major minor: 0 -0.12, 1 -0.11, 2 -0.4, 3 0.19, 4 -0.06
goal minor major: -4 -0.17, -3 -0.41, -2 -0.48, -1 -0.31, 0 -0.44
goal minor minor: -2 -0.13, -1 -0.36, 1 -0.55, 2 -0.1, 3 -0.08
# key entered with
major: I -0.33, Imaj7 -0.06, V7/IV -0.23, i -0.34, V -0.47, V7 -0.04, v -0.11, v7 -0.29, V+ -0.12, vo -0.34, vø7 -0.07, ii 0.24, ii7 -0.67, V/V 0.27, V7/V -0.11, iio 0.11, iiø7 -0.18, Fr43 -0.04, vi 0.03, vi7 -0.07, V/ii -0.28, V7/ii -0.3, viø7 -0.12, iii -0.63, iii7 -0.25, V/vi 0.25, V7/vi -0.22, viio/IV -0.4, viiø7/IV -0.12, viio7/IV 0.38, viio 0.22, viiø7 0.09, viio7 -0.29, V/iii -0.32, V7/iii -0.08, vii -0.15, viio/V -0.26, viiø7/V -0.23, viio7/V -0.29, viio/ii -0.16, viiø7/ii -0.08, viio7/ii -0.07, viio/vi -0.11, viiø7/vi -0.01, viio7/vi -0.22, viio7/iii -0.04, IV -0.15, IVmaj7 0.24, IV7 -0.04, iv -0.21, bVII -0.26, bVIImaj7 -0.16, bVII7 -0.04, bVI -0.15, bVImaj7 -0.06
minor: i -0.44, i7 0.29, imaj7 -0.04, I -0.33, V7/iv -0.31, v -0.7, v7 -0.56, V -0.42, V7 -0.32, V+ -0.1, viio/VI -0.27, viiø7/VI -0.12, iio 0.11, iiø7 -0.09, ii -0.37, ii7 -0.22, V/V -0.24, V7/V 0.18, Fr43 -0.08, vio -0.14, viø7 -0.19, viio7/VII 0.32, #vi -0.22, viio/iv 0.2, viiø7/iv 0.3, viio7/iv -0.16, viio -0.1, viiø7 -0.07, viio7 -0.08, viio/V -0.07, viio7/V -0.28, It6 -0.07, Ger65 -0.2, #io7 -0.07, iv -0.05, iv7 -0.04, IV 0.26, IV7 0.15, VII -0.55, VII7 -0.37, vii -0.05, III -0.71, IIImaj7 -0.41, V7/VI -0.11, III+ 0.12, III+maj7 -0.48, VI -0.44, VI7 -0.06, N -0.16, bIImaj7 -0.03
# key prepared by
major: strange -0.44, I -0.43, Imaj7 -0.27, V7/IV -0.45, i -0.38, V -0.19, V7 -0.48, v -0.42, v7 -0.5, V+ -0.04, vø7 -0.04, ii 0.37, ii7 -0.05, V/V -0.46, V7/V -0.93, iio -0.16, iiø7 -0.39, vi 0.2, vi7 0.06, V/ii -0.08, V7/ii -0.47, vio -0.04, viø7 -0.06, iii 0.23, iii7 -0.42, V/vi -0.4, V7/vi -0.12, viio/IV -0.16, viiø7/IV -0.21, viio7/IV -0.01, viio 0.21, viiø7 -0.83, viio7 -0.16, V/iii -0.19, V7/iii -0.17, vii -0.13, viio/V -0.1, viiø7/V -0.51, viio7/V -0.22, viio/ii -0.06, viiø7/ii -0.1, viio7/ii -0.13, viio/vi -0.21, viiø7/vi -0.04, viio7/vi -0.3, viio7/iii -0.14, IV 0.18, IVmaj7 -0.41, IV7 -0.12, iv -0.4, iv7 -0.11, bVII -0.37, bVIImaj7 -0.32, bVII7 -0.12, bIII 0.07, bVI -0.04, bVImaj7 -0.04, N -0.07
minor: strange -0.39, i 0.1, i7 -0.07, I -0.07, V7/iv -0.5, v 0.12, v7 -0.11, V -0.39, V7 -0.77, viio/VI -0.42, viiø7/VI -0.2, iio -0.27, iiø7 -0.32, ii -0.03, ii7 -0.29, V/V -0.6, V7/V -0.62, vio 0.13, viø7 -0.21, #vi -0.37, viio/iv -0.42, viiø7/iv -0.04, viio7/iv 0.02, viio -0.48, viiø7 -0.19, viio7 -0.46, viio/V -0.11, viiø7/V -0.04, viio7/V -0.34, iv 0.09, iv7 -0.09, IV -0.52, IV7 -0.5, VII -0.13, VII7 -0.39, vii -0.06, III -0.07, IIImaj7 0.04, V7/VI -0.13, III+ -0.04, VI -0.44, VImaj7 -0.07, N -0.27, bIImaj7 -0.08
# key left for
major: strange -0.76, I -0.43, Imaj7 -0.31, V7/IV -0.09, i -0.13, I+ 0.25, V -0.59, V7 -0.19, v7 -0.04, V+ -0.1, ii -0.3, ii7 -0.16, V/V -0.3, V7/V 0.03, iio -0.1, iiø7 -0.04, vi -0.39, vi7 -0.14, V/ii 0.39, V7/ii -0.38, vio -0.26, viø7 -0.2, iii 0.12, iii7 -0.38, V/vi -0.17, V7/vi 0.05, viio/IV -0.09, viiø7/IV 0.03, viio7/IV -0.04, viio 0.13, viiø7 -0.21, viio7 -0.04, V/iii -0.47, V7/iii -0.19, vii -0.23, viio/V 0.25, viiø7/V -0.11, viio7/V -0.01, viio/ii -0.5, viiø7/ii 0.26, viio7/ii 0.01, viio/vi 0.39, viio7/vi 0.08, viio/iii -0.19, viio7/iii -0.12, IV -0.56, IVmaj7 -0.01, IV7 -0.25, iv -0.45, iv7 -0.04, bVII 0.05, bVIImaj7 0.07, bVII7 0.45, bIII 0.11, bVI -0.2
minor: strange -0.65, i -0.42, i7 -0.24, I -0.5, V7/iv -0.42, v -0.15, v7 -0.36, V -0.71, V7 -0.68, viio/VI -0.21, viiø7/VI 0.32, iio 0.23, iiø7 0.09, ii -0.04, ii7 -0.13, V/V -0.18, V7/V -0.45, vio -0.44, viø7 -0.16, viio7/VII -0.49, #vi -0.14, viio/iv 0.26, viiø7/iv -0.09, viio7/iv 0.08, viio -0.12, viiø7 -0.12, viio7 -0.04, viio/V -0.06, viio7/V 0.02, #io -0.04, #io7 -0.42, iv -0.23, iv7 -0.45, IV -0.02, IV7 -0.06, VII -0.21, VII7 0.17, vii 0.12, III 0.1, IIImaj7 -0.25, V7/VI 0.04, VI -0.53, VImaj7 0.19, VI7 -0.04, N 0.04, bIImaj7 0.18
# key left
phrase_start 1 nothing: narrow -0.72, broad -0.26
phrase_start 2 nothing: narrow -0.18, broad -0.33
phrase_start 2 dominant_to_tonic: narrow -0.73
phrase_start 3 nothing: narrow -0.11, broad -0.38
phrase_start 3 dominant_to_tonic: narrow -0.6, broad 0.31
phrase_start 4 nothing: narrow -0.04, broad 0.02
phrase_start 4 dominant_to_tonic: narrow 0.3, broad 0.1
phrase_start 4 phrase_end: narrow -0.04, broad -0.03
phrase_start more nothing: narrow -0.01, broad -0.7
phrase_start more dominant_to_tonic: narrow -0.33, broad 0.58
phrase_start more phrase_end: narrow -0.19, broad 0.24
within 1 nothing: narrow -0.54, broad -0.67
within 2 nothing: narrow -1.01, broad -0.78
within 2 dominant_to_tonic: narrow -1.03
within 2 phrase_end: narrow -0.57, broad -0.14
within 3 nothing: narrow -0.48, broad -0.59
within 3 dominant_to_tonic: narrow -0.42, broad -0.41
within 3 phrase_end: narrow -0.09, broad -0.23
within 4 nothing: narrow 0.16, broad -0.5
within 4 dominant_to_tonic: narrow -0.1, broad -0.15
within 4 phrase_end: narrow -0.39, broad -0.06
within more nothing: broad -0.26
within more dominant_to_tonic: narrow -0.02, broad 0.32
within more phrase_end: narrow -0.1, broad 0.29
goal 1 nothing: narrow -0.25, broad -0.12
goal 2 nothing: narrow -0.28, broad -0.39
goal 2 dominant_to_tonic: narrow -0.3
goal 3 nothing: narrow -0.04, broad -0.48
goal 3 dominant_to_tonic: narrow -0.13, broad -0.36
goal 4 nothing: narrow -0.02, broad -0.46
goal 4 dominant_to_tonic: narrow -0.16, broad -0.24
goal more nothing: broad -0.11
goal more dominant_to_tonic: narrow -0.21, broad -0.43
goal more phrase_end: broad 0.08
# key change by metre
: 1 -1.03, 2 -0.78, 3 -0.87, 4 -0.8
# key change by crotchets into the phrase
: 0 -0.4, 1 -0.57, 2 -0.59, 3 -0.52, 4 -0.46, 5 -0.5, 6 -0.63, 7 -0.89, 8 -0.89, 9 -0.76
# key change by crotchets left of the phrase
: 1 -0.42, 2 -0.97, 3 -0.66, 4 -0.55, 5 -0.57, 6 -0.57, 7 -0.53, 8 -0.71, 9 -0.68
# key change by need
phrase_start never: never 0.01, later 0.18, at_once -0.55
phrase_start later: never 0.01, later -0.34, at_once -0.82
phrase_start at_once: never 0.46, later -0.06, at_once -0.15
within never: never -0.4, later -0.86, at_once -0.71
within later: never -0.49, later -0.77, at_once -1.04
within at_once: never -0.12, later -0.56, at_once -0.57
goal never: never -0.86, later -0.09, at_once -0.38
goal later: never -0.25
goal at_once: never -0.6, later -0.04, at_once -0.45
# signature
major: -3 -0.43, -2 -0.41, -1 -0.13, 0 0.32, 1 0.06, 2 -0.46, 3 -0.86, 4 -0.53, 5 -0.25
minor: -5 -0.06, -4 -0.5, -3 -0.49, -2 -0.36, -1 0.05, 0 0.3, 1 -0.13, 2 -0.29, 3 -0.1
# stated mode
major: major 0.08, minor -0.19
minor: major -0.08, minor 0.19
# first chord
major: I 1.28, Imaj7 -0.04, i -0.04, V -0.4, V7 0.69, v 0.31, ii -0.62, ii7 -0.1, V/V -0.11, V7/V -0.02, vi -1.33, vi7 -0.17, V/ii -0.23, viø7 -0.04, iii -0.21, V/vi -0.46, V7/vi -0.12, viio -0.04, viiø7/V -0.04, IV -1.23, IVmaj7 -0.08, iv -0.18, bVIImaj7 -0.03
minor: i 1.76, i7 -0.03, I -0.23, V7/iv 0.14, v 0.04, V 0.35, V7 0.09, iiø7 -0.04, ii -0.04, V/V 0.27, V7/V -0.27, viiø7/iv -0.03, viio -0.04, iv -0.61, iv7 -0.03, IV -0.24, VII -0.1, III -0.33, III+ -0.08, VI -0.18
# last chord
major: I -0.07, Imaj7 -0.04, V7/IV -0.01, i -0.14, V 0.06, V+ -0.04, ii -0.04, ii7 -0.05, vi -0.16, vi7 -0.04, iii -0.1, iii7 -0.01, IV -0.21
minor: i -1.03, I 0.85, V7/iv -0.2, V 0.38, V7 -0.03, #vi -0.03, iv -0.15, III -0.04, III+maj7 -0.04, VI -0.06
# last key
major: -1 -0.11, 0 0.57, 1 -0.24, 2 -0.35, 3 -0.62, 4 -0.15, 5 -0.19
minor: -3 -0.35, -2 -0.04, -1 -0.18, 0 1.11, 1 -0.32, 2 -0.17
# last chord of a phrase
major: I 0.66, Imaj7 -0.04, V7/IV 0.02, i -0.02, I+ -0.03, V -0.03, V7 0.33, v -0.18, V+ -0.13, ii -0.63, ii7 -0.23, V/V -0.23, iio -0.14, vi -0.54, vi7 -0.11, V/ii -0.35, V7/ii -0.12, vio -0.1, iii 0.23, iii7 -0.06, V/vi -0.43, V7/vi -0.14, viio/IV -0.23, viio 0.34, viiø7 -0.03, V7/iii -0.07, viio/V 0.33, viiø7/V -0.1, IV -0.16, IVmaj7 -0.01, iv -0.06, bVII -0.09, bVIImaj7 -0.08, bVI 0.08, N -0.04
minor: strange -0.04, i 0.34, i7 -0.08, I 0.25, V7/iv -0.23, v 0.05, v7 -0.04, V 0.53, V7 0.16, V+ -0.11, iiø7 -0.09, ii -0.08, ii7 -0.04, V/V 0.13, V7/V -0.31, Fr43 -0.04, vio -0.1, viø7 -0.07, #vi -0.12, viio/iv -0.04, viio 0.02, viiø7 -0.02, viio7 0.35, viio7/V -0.04, It6 -0.02, Ger65 -0.04, iv -0.03, iv7 -0.07, IV 0.08, IV7 -0.09, VII -0.27, III -0.71, IIImaj7 -0.04, V7/VI -0.08, III+maj7 -0.14, VI -0.52
# note in key
major: -5 -0.12, -4 -0.28, -3 -0.85, -2 -1.36, -1 0.18, 0 0.39, 1 0.24, 2 0.18, 3 -0.27, 4 -0.01, 5 0.02, 6 -0.95, 7 -1.04, 8 -0.89, 9 -0.78
minor: -7 -0.04, -6 -0.4, -5 -0.58, -4 -0.22, -3 0.01, -2 -0.56, -1 -0.19, 0 0.3, 1 0.23, 2 0.07, 3 -0.51, 4 -0.08, 5 0.45, 7 -0.16, 8 -0.04
# note in phrase
major: -6 -0.01, -5 -0.44, -4 -0.82, -3 -1.08, -2 -0.91, -1 -0.01, 0 0.19, 1 0.03, 2 0.03, 3 -0.16, 4 0.22, 5 0.04, 6 -0.98, 7 -0.46, 8 -0.18, 9 -0.77, 10 0.23
minor: -7 0.13, -6 -0.44, -5 -0.33, -4 -0.09, -3 0.27, -2 -0.34, -1 -0.11, 0 0.16, 1 0.17, 2 0.11, 3 -0.63, 4 -0.43, 5 0.43, 6 -0.45, 7 -0.23, 8 -0.26, 9 -0.04
# last bass of a phrase
major: -5 -0.43, -4 0.44, -2 0.18, -1 -0.07, 0 0.2, 1 0.07, 2 -0.34, 3 -0.06, 4 -0.09, 5 0.1, 6 -0.38, 7 -0.09, 8 0.04, 9 -0.21
minor: -7 0.11, -5 -0.12, -4 0.03, -3 -0.18, -2 -0.26, -1 -0.16, 0 0.27, 1 0.11, 2 -0.21, 3 -0.02, 4 -0.08, 5 0.11, 6 -0.15, 7 -0.08
# last melody note of a phrase
major: -4 -0.05, -3 0.39, -2 -0.21, -1 -0.02, 0 0.2, 1 -0.08, 2 0.04, 3 0.04, 4 0.08, 5 -0.05, 6 0.06, 7 -0.25, 8 -0.23, 9 -0.01
minor: -4 0.21, -3 -0.18, -2 -0.37, -1 0.01, 0 0.25, 1 -0.07, 2 -0.11, 3 -0.11, 4 -0.43, 5 0.58, 6 -0.04, 7 -0.05
# last bass of all
major: -3 -0.3, -2 -0.43, -1 -0.12, 0 0.21, 1 -0.32, 2 -0.14, 3 0.05, 4 -0.14, 5 -0.09, 6 -0.12
minor: -5 -0.05, -4 -0.04, -3 -0.18, -1 -0.09, 0 0.24, 1 -0.16, 2 -0.22, 3 -0.12, 4 -0.24
# few voices: members present
two M: ---- 0.42, r--- -2.05, -3-- 0.05, r3-- -1.63, --5- -1, r-5- -1.56, -35- -0.35, r35- -1.68
two m: r--- -1.81, -3-- 0.33, r3-- -1.75, --5- -0.71, r-5- -1.9, -35- -0.39, r35- -1.53
two o: ---- 0.26, r--- -2.11, r3-- -2.68, --5- -0.84, r-5- -1.57, -35- -1.08, r35- -1.38
two +: r--- -1.76, -3-- -0.21, r3-- -1.75, r-5- -0.08, -35- -0.55, r35- -0.23
two M7: r--- 2.77, -3-- 0.67, r3-- 4.15, --5- 0.73, r-5- 5.38, -35- 3.35, r35- 0.42, ---7 0.45, r--7 -2.67, -3-7 -0.3, r3-7 -1.33, --57 3.95, r-57 -2.28, -357 -0.58, r357 -1.55
two Mmaj7: r--- 0.27, -3-- 0.26, r3-- 2.35, --5- 0.26, r-5- 0.68, r--7 -0.92, -3-7 0.7, r3-7 -1.23, --57 0.25, r-57 -0.76, r357 -0.63
two m7: r--- 2.39, -3-- 1.01, r3-- 4.27, --5- 0.21, r-5- 1.31, -35- 0.53, r35- 0.42, ---7 0.19, r--7 -1.13, -3-7 2.58, r3-7 -2.16, --57 0.43, r-57 -1.6, r357 -1.51
two ø7: r--- 1.63, -3-- 1.14, r3-- 3.5, --5- 0.27, r-5- 2.63, -35- 1.38, ---7 0.26, r--7 -1.29, -3-7 1.95, r3-7 -1.86, --57 1.85, r-57 -0.73, r357 -1.55
two o7: -3-- 0.25, r3-- 2.21, --5- 0.55, r-5- 2.78, -35- 2.29, r--7 -0.27, -3-7 0.89, r3-7 -0.41, --57 1.44, r-57 -0.52, r357 -0.16
two mmaj7: r3-7 -0.09, r-57 -0.08, r357 -0.09
two +maj7: r--- 0.28, r3-- 0.22, r--7 -0.15, r3-7 -0.33, r357 -0.08
two It: r--- -0.74, r-5- -1.24, -35- 0.22, r35- -0.24
two Fr: r--7 -0.55, -3-7 -0.09, r3-7 -0.08, r-57 -0.13
two Ger: r--7 -0.29, -3-7 0.26
three M: ---- 0.26, r--- -0.98, -3-- -0.74, r3-- -0.61, --5- -0.89, r-5- -0.13, -35- -0.78, r35- -2.22
three m: r--- -0.73, -3-- -0.53, r3-- -0.31, --5- -0.66, r-5- -0.38, -35- -1.07, r35- -1.82
three o: r--- -0.5, -3-- -0.87, r3-- -0.57, --5- -0.64, r-5- -0.33, -35- -0.98, r35- -2.24
three +: r--- -0.67, -3-- -0.35, r3-- -0.94, -35- -0.69, r35- -0.58
three M7: r--- 0.55, r3-- 2.39, --5- 0.16, r-5- 1.48, -35- 1.54, r35- 4.58, r--7 -0.62, -3-7 0.16, r3-7 -0.95, --57 1.4, r-57 -1.11, -357 -0.89, r357 -1.4
three Mmaj7: r3-- 0.81, -35- 0.13, r35- 1.89, r--7 0.02, r3-7 -0.55, r-57 -0.21, -357 0.81, r357 -0.85
three m7: r3-- 1.67, --5- 0.15, r-5- 1.27, -35- 0.4, r35- 3.55, ---7 0.16, r--7 -0.61, -3-7 0.8, r3-7 -0.55, --57 0.27, r-57 -0.62, -357 1.69, r357 -1.31
three ø7: r--- 0.48, -3-- 0.23, r3-- 1.23, r-5- 0.8, -35- 0.52, r35- 3.16, r--7 -0.39, -3-7 0.87, r3-7 -0.75, --57 0.41, r-57 -0.18, -357 2.2, r357 -1.24
three o7: r3-- 0.35, --5- 0.16, r-5- 0.15, -35- 0.7, r35- 2.88, -3-7 0.25, r3-7 -0.34, --57 0.62, r-57 -0.32, -357 1.66, r357 -0.47
three mmaj7: r3-7 -0.23, r-57 -0.31, r357 -0.16
three +maj7: r3-- 0.16, r35- 0.16, r--7 0.09, r3-7 -0.31, r-57 -0.09, r357 -0.24
three It: r-5- -0.35, -35- 0.27, r35- -0.03
three Fr: r3-7 -0.37, r-57 -0.13
three Ger: r3-7 0.09, r-57 -0.15, -357 0.14
# few voices: tone by kind
two root suspension: downbeat -0.35, start -0.3, beat -0.24, offbeat -0.21, held_in -0.61
two root retardation: downbeat -0.02, start -0.07, beat 0.29, held_in 0.53
two root pedal: downbeat 0.39, start -0.19, beat 0.05, held_in 0.45
two root passing: downbeat -0.18, start -0.04, weak_start -0.33, beat -1.31, offbeat -0.54, small -0.34
two root neighbour: downbeat 0.3, start 0.05, weak_start -0.81, beat -1.02, offbeat 0.11, small -0.58
two root escape: downbeat 0.36, start -0.33, weak_start 0.34, beat -1.49, offbeat 0.11, small -0.03
two root appoggiatura: downbeat 0.29, start -0.06, weak_start -0.41, beat -0.54, offbeat 0.13
two root anticipation: downbeat 0.93, start 0.85, weak_start -0.14, beat -0.74, offbeat -0.34
two root leaping: downbeat 0.48, start 0.08, weak_start -0.04, beat -0.6, offbeat -0.09, held_in 1.25
two root edge: downbeat 0.52, start 0.39, weak_start -0.29, beat 0.18, offbeat -0.08, held_in 0.15
two third suspension: downbeat -0.07, start 0.46, weak_start 0.27, beat -0.33, offbeat -0.33, held_in 0.56
two third retardation: downbeat 0.31, start 0.19, weak_start 0.08, beat -0.49, offbeat -0.08, held_in 0.83
two third pedal: downbeat 0.37, start 0.14, beat -0.21, held_in 0.37
two third passing: downbeat 0.44, start 0.87, weak_start 0.07, beat -0.81, offbeat -0.24, small 0.29
two third neighbour: downbeat 0.57, start 0.37, weak_start 0.11, beat -0.86, offbeat 0.93, small 0.36
two third escape: downbeat 0.29, start 0.04, weak_start -0.19, beat -0.62, offbeat -0.01, small 0.12
two third appoggiatura: downbeat 0.43, start 0.42, weak_start 0.24, beat -0.58, offbeat 0.29
two third anticipation: downbeat 1.09, start 0.94, weak_start 0.23, beat -0.57, offbeat 0.35
two third leaping: downbeat 0.37, start 0.09, weak_start 0.5, beat -0.43, offbeat -0.19, held_in -0.04
two third edge: downbeat -0.06, start -0.01, beat -0.25, held_in -0.09
two fifth suspension: downbeat -0.66, start -0.24, weak_start 0.66, beat -0.95, offbeat -0.59, held_in 1.85
two fifth retardation: downbeat 0.14, start 0.11, weak_start -0.15, beat -0.7, offbeat 0.21, held_in 0.84
two fifth pedal: downbeat 0.36, start 0.89, beat -0.53, held_in 1.45
two fifth passing: downbeat -0.21, start 0.29, weak_start 1.12, beat -1.01, offbeat 0.32, small -0.07
two fifth neighbour: downbeat -0.26, start 0.1, weak_start 0.34, beat -0.86, offbeat 0.47, small -0.09
two fifth escape: downbeat -0.16, start 0.16, beat -0.96, offbeat 0.17, small -0.16
two fifth appoggiatura: downbeat -0.28, start 0.18, weak_start 0.22, beat -0.82, offbeat -0.57
two fifth anticipation: downbeat 0.78, start 1.34, weak_start -0.38, beat -0.05, offbeat -0.2
two fifth leaping: downbeat -0.03, start 0.07, weak_start 0.56, beat -0.3, offbeat -0.52, held_in 0.66
two fifth edge: downbeat 0.78, start -0.04, weak_start 0.29, beat -0.04, offbeat 0.33, held_in -0.09
two seventh suspension: downbeat 1.01, start 0.41, beat -0.22, offbeat 0.28
two seventh retardation: downbeat -0.57, start -0.8, beat -0.16, held_in -1.07
two seventh pedal: downbeat 0.43, start -0.28, beat -0.23, held_in 0.1
two seventh passing: downbeat -0.41, start 0.01, weak_start 0.22, beat -1.55, offbeat -1.84, small 0.24
two seventh neighbour: downbeat -0.7, start -0.02, weak_start -0.56, beat -1, offbeat -0.65, small 0.1
two seventh escape: downbeat -0.25, start 0.42, weak_start -0.44, beat -0.84, offbeat -0.57, small -0.15
two seventh appoggiatura: downbeat -0.7, start -0.16, weak_start -0.09, beat -0.96, offbeat -0.37
two seventh anticipation: downbeat -0.18, start -0.79, weak_start -0.42, beat -1.45, offbeat -0.23
two seventh leaping: downbeat -0.39, start -0.3, weak_start 0.22, beat -0.31, offbeat -0.09, held_in -1.04
two seventh edge: downbeat -0.11, start -0.05, beat -0.38, offbeat -0.16
two foreign suspension: downbeat -0.11, start -0.56, weak_start -0.09, beat -0.08, held_in -0.52
two foreign retardation: downbeat -0.38, start -0.35, weak_start -0.09, beat -0.09, held_in -0.72
two foreign pedal: downbeat -0.3, start -0.68, beat -0.34, held_in -0.18
two foreign passing: downbeat -0.83, start -0.04, weak_start 0.17, beat -1.25, small -0.1
two foreign neighbour: downbeat -0.67, start -0.32, weak_start -0.11, beat -0.69, offbeat 0.1, small 0.17
two foreign escape: downbeat -0.46, start -0.48, weak_start 0.12, beat -0.91, offbeat 0.02, small 0.16
two foreign appoggiatura: downbeat -0.65, start -0.83, weak_start -0.22, beat -0.91, offbeat 0.26
two foreign anticipation: downbeat -0.6, start -0.83, weak_start 0.34, beat -0.87, offbeat 0.32
two foreign leaping: downbeat -0.47, start -0.42, beat -0.53, offbeat -0.31, held_in -0.13
two foreign edge: downbeat -0.31, start -0.63, beat -0.32, offbeat -0.09, held_in 0.06
three root suspension: downbeat -0.01, start 0.01, weak_start -0.17, beat -0.01, offbeat 0.04, held_in -0.02
three root retardation: downbeat 0.1, start 0.26, weak_start 0.09, beat 0.01, held_in 0.48
three root pedal: downbeat 0.21, start 0.1, weak_start -0.21, beat -0.1, offbeat 0.08, held_in 0.23
three root passing: downbeat 0.14, start 0.13, weak_start -0.1, beat -0.19, offbeat 0.14, small 0.11
three root neighbour: downbeat 0.3, start 0.21, weak_start -0.27, beat -0.25, offbeat 0.27, small -0.27
three root escape: downbeat 0.37, start -0.47, beat -0.6, offbeat 0.43, small 0.09
three root appoggiatura: downbeat 0.23, start 0.07, weak_start -0.39, beat 0.2, offbeat 0.24
three root anticipation: downbeat 0.56, start 0.49, weak_start 0.03, offbeat 0.28
three root leaping: downbeat 0.3, start 0.1, weak_start -0.1, beat -0.22, offbeat 0.01, held_in 1.06
three root edge: downbeat 0.35, start 0.24, weak_start 0.14, beat 0.17, offbeat -0.14, held_in 0.32
three third suspension: start 0.13, weak_start 0.26, beat -0.11, offbeat -0.11, held_in 0.34
three third retardation: downbeat 0.18, start 0.15, weak_start 0.07, beat -0.2, offbeat 0.02, held_in 0.62
three third pedal: downbeat 0.11, start 0.28, weak_start 0.16, beat -0.33, offbeat 0.07, held_in 0.18
three third passing: downbeat 0.13, start 0.4, weak_start 0.23, beat -0.14, offbeat 0.07, small -0.23
three third neighbour: downbeat 0.03, start 0.1, weak_start 0.22, beat -0.24, offbeat 0.11, small 0.01
three third escape: downbeat 0.03, start -0.78, weak_start 0.75, beat -0.99, offbeat -0.59, small 0.09
three third appoggiatura: downbeat 0.01, start 0.2, weak_start 0.33, beat 0.19, offbeat 0.33
three third anticipation: downbeat 0.3, start 0.7, weak_start -0.09, beat 0.44, offbeat -0.01
three third leaping: downbeat 0.07, start 0.01, weak_start -0.06, beat 0.02, offbeat 0.09, small 0.06, held_in 0.96
three third edge: downbeat -0.21, start -0.02, beat -0.14, held_in -0.16
three fifth suspension: downbeat -0.37, start -0.12, weak_start 0.16, beat -0.39, offbeat -0.32, held_in 0.71
three fifth retardation: downbeat 0.02, start 0.02, weak_start -0.09, beat -0.21, offbeat -0.01, held_in 0.14
three fifth pedal: downbeat 0.29, start 0.46, beat -0.1, offbeat -0.08, held_in 0.6
three fifth passing: downbeat -0.19, start 0.39, weak_start 0.31, beat -0.31, offbeat 0.42, small 0.19
three fifth neighbour: downbeat -0.16, start 0.25, weak_start 0.19, beat -0.21, offbeat 0.31, small 0.15
three fifth escape: downbeat 0.15, start 0.02, weak_start -0.57, beat -0.29, offbeat 0.34, small 0.12
three fifth appoggiatura: downbeat -0.19, start 0.11, weak_start 0.37, beat -0.38, offbeat -0.04
three fifth anticipation: downbeat 0.43, start 0.55, weak_start 0.17, beat 0.07, offbeat 0.06
three fifth leaping: downbeat 0.14, start 0.02, weak_start 0.15, beat 0.01, offbeat 0.15, small -0.06, held_in 0.21
three fifth edge: downbeat 0.22, start -0.09, weak_start -0.08, held_in -0.09
three seventh suspension: downbeat 0.17, start -0.07, weak_start -0.16, beat -0.36, offbeat 0.22, held_in -0.07
three seventh retardation: downbeat -0.7, start -0.52, beat -0.09, held_in -0.41
three seventh pedal: downbeat 0.2, start -0.01, held_in -0.03
three seventh passing: downbeat -0.15, start -0.07, weak_start -0.54, beat -0.97, offbeat -1.28, small -0.56
three seventh neighbour: downbeat -0.17, start -0.1, weak_start -0.71, beat -0.24, offbeat -0.14, small -0.34
three seventh escape: downbeat -0.26, start -0.24, weak_start -0.43, beat -0.36, offbeat -0.19, small -0.33
three seventh appoggiatura: downbeat -0.2, start 0.05, weak_start -0.08, beat -0.54, offbeat -0.51, small -0.09
three seventh anticipation: downbeat -0.21, start -0.21, weak_start 0.08, beat -0.78, offbeat -0.61
three seventh leaping: downbeat -0.29, start -0.31, weak_start 0.23, beat -0.16, offbeat 0.01, held_in -0.31
three seventh edge: downbeat 0.07, start 0.16, weak_start 0.09, beat -0.06, held_in -0.02
three foreign suspension: downbeat 0.06, start -0.24, beat -0.07, held_in -0.21
three foreign retardation: downbeat -0.3, start -0.67, weak_start -0.07, held_in -0.73
three foreign pedal: downbeat -0.53, start -0.77, beat -0.12, held_in -0.23
three foreign passing: downbeat -0.95, start -0.37, weak_start -0.04, beat -0.37, offbeat 0.12, small 0.35
three foreign neighbour: downbeat -0.74, start -0.64, weak_start -0.27, beat -0.38, offbeat -0.13, small 0.19
three foreign escape: downbeat -0.52, start -0.83, weak_start -0.15, beat -0.61, offbeat -0.05, small 0.02
three foreign appoggiatura: downbeat -0.66, start -0.68, weak_start -0.5, beat -0.51, offbeat -0.11, small 0.09
three foreign anticipation: downbeat -0.72, start -0.72, weak_start 0.2, beat -0.7, offbeat -0.14
three foreign leaping: downbeat -0.57, start -0.56, weak_start -0.09, beat -0.39, offbeat -0.59, held_in -0.25
three foreign edge: downbeat -0.18, start -0.43, weak_start -0.09, beat -0.03, offbeat -0.01, held_in 0.22
# few voices: segment
two ½: 1 1.47, 2 1.09, 3 0.84, 4 0.83
two 1: 1 -0.15, 2 0.48, 3 0.52, 4 0.69
two 1½: 1 -1.04, 2 -0.54, 3 0.28, 4 0.06
two 2: 1 -1.17, 2 -0.84, 3 -0.62, 4 -0.44
two 3: 1 -0.56, 2 -1.12, 3 -0.7, 4 -0.59
two 4: 1 -0.09, 2 -0.45, 3 -0.3, 4 -0.62
two longer: 1 -0.08, 2 -0.33, 3 -0.12, 4 -0.19
three ½: 1 0.7, 2 0.49, 3 0.43, 4 0.28
three 1: 1 -0.42, 2 0.11, 3 0.11, 4 0.04
three 1½: 1 -0.84, 2 0.09, 3 0.37, 4 0.08
three 2: 1 -0.7, 2 -0.18, 3 -0.18, 4 -0.3
three 3: 1 -0.09, 2 -0.38, 3 -0.25, 4 -0.36
three 4: 2 -0.08, 3 -0.07, 4 0.2
three longer: 2 -0.07, 3 -0.21, 4 0.05
# few voices: chord in key
two major: strangeb 0.22, Ia 0.05, Ib -0.32, Ic -0.39, Imaj7a 0.15, Imaj7b 0.55, Imaj7c 0.26, Imaj7d 0.28, V7/IVa 1.85, V7/IVb 1.68, V7/IVc 0.68, V7/IVd 0.84, ia -0.87, ib -0.33, ic -0.42, I+a -0.8, I+b -0.55, I+c -0.38, Va -0.97, Vb -0.38, Vc -0.81, V7a 3.83, V7b 1.48, V7c 1.79, V7d 1.37, va -1.44, vb -0.69, vc -0.36, v7a 0.21, v7b 0.23, v7c -0.09, v7d -0.49, V+a -1.2, V+b -0.77, V+c -0.09, voa -1.17, vob -0.47, vø7a -0.03, vø7b -0.08, vø7d -0.14, iia -0.92, iib -1.72, iic -0.63, ii7a 1.91, ii7b 3.7, ii7c 0.13, ii7d 0.46, V/Va -1.14, V/Vb -0.49, V/Vc -0.51, V7/Va 0.86, V7/Vb 1.78, V7/Vc 0.66, V7/Vd 0.21, iioa -1.05, iiob -1.43, iioc -0.17, iiø7c 0.22, iiø7d -0.09, Fr43d -0.43, via 0.1, vib -0.6, vic -0.42, vi7a 0.97, vi7b 0.45, vi7c -0.09, vi7d 0.38, V/iia -1.2, V/iib -0.31, V/iic -0.61, V7/iia 0.18, V7/iib 0.56, V7/iid -0.04, vioa -0.62, viob -0.65, vioc -0.37, viø7a -0.18, viø7d -0.27, iiia -0.24, iiib -0.06, iiic -0.09, iii7a 0.77, iii7b -0.09, iii7c 0.18, iii7d -0.12, V/via -0.93, V/vib -0.07, V/vic -0.38, V7/via 0.54, V7/vib 0.95, V7/vic 0.24, V7/vid -0.27, viio/IVa -0.76, viio/IVb -0.31, viio/IVc -0.23, viiø7/IVa 0.08, viiø7/IVd -0.21, viio7/IVa 0.25, viioa -0.98, viiob -0.41, viioc -0.84, viiø7a 1.63, viiø7b 0.94, viiø7c 1.06, viiø7d 0.57, viio7a 0.23, V/iiia -0.29, V/iiib -0.35, V7/iiib -0.09, viia -0.86, viib -0.63, viic -0.16, viio/Va -0.71, viio/Vb -0.35, viio/Vc -0.38, viiø7/Va 0.57, viiø7/Vb 0.22, viiø7/Vc 0.82, viio7/Va 0.93, viio7/Vd -0.09, It6a -0.9, It6c -0.26, Ger65a -0.03, viio/iia -0.61, viio/iib -0.36, viio/iic -0.49, viiø7/iid -0.08, viio7/iia 0.7, viio7/iib 0.27, viio7/iic 0.24, viio7/iid -0.08, viio/via -0.31, viio/vib -0.08, viio/vic -0.31, viio7/via 0.74, viio/iiia -0.35, viio/iiib -0.45, viio/iiic -0.19, viio7/iiia 0.25, IVa -0.4, IVb -0.69, IVc -0.94, IVmaj7a -0.16, IVmaj7b 1.15, IVmaj7c -0.16, IVmaj7d 0.14, IV7d 0.16, iva -1.08, ivb -0.01, ivc -0.69, bVIIa -0.73, bVIIb -0.57, bVIIc -0.66, bVIImaj7a -0.03, bVIImaj7d -0.09, bIIIa -0.16, bIIIb -0.8, bIIIc -0.16, bVIa -0.02, bVIb -0.57, bVIc -0.16, Nb -0.97, Nc -0.16
two minor: strangea -0.09, ia 0.03, ib -0.31, ic -0.05, i7a 0.4, i7b -0.09, i7d 0.27, imaj7a -0.09, imaj7c -0.09, imaj7d -0.08, Ia 0.07, Ib -0.15, Ic -0.56, V7/iva 0.43, V7/ivb 0.86, V7/ivc 0.39, V7/ivd 0.06, va -1.29, vb -0.42, vc -0.31, v7a 0.39, v7b -0.09, v7d 0.07, Va -0.75, Vb -0.36, Vc -0.74, V7a 3.67, V7b 1.55, V7c 1.71, V7d 0.47, V+a -1.01, V+b -0.73, viio/VIa -0.82, viio/VIb -0.39, viio/VIc -0.09, viiø7/VIa -0.09, viiø7/VId -0.09, iioa -1.08, iiob -0.84, iioc -0.51, iiø7a 1.21, iiø7b 2.82, iiø7c 1.13, iiø7d 0.47, iia -1.35, iib -1.57, iic -0.22, ii7d 0.27, V/Va -0.99, V/Vb -0.69, V/Vc -0.09, V7/Va 0.43, V7/Vb 0.95, V7/Vc 0.16, Fr43b -0.09, Fr43c -0.13, Fr43d -0.27, vioa -0.51, viob -0.14, vioc -0.16, viø7a 0.94, viø7b 0.81, viø7c 0.64, viio7/VIIa 0.28, #via -0.83, #vib -0.67, #vic -0.23, viio/iva -0.58, viio/ivb -0.37, viio/ivc -0.09, viiø7/iva 0.2, viiø7/ivc 0.4, viio7/iva 0.69, viio7/ivb 0.25, viio7/ivc 0.55, viioa -1.25, viiob -0.63, viioc -0.53, viiø7a 0.31, viiø7b -0.09, viiø7c 0.23, viio7a 2.31, viio7b 1.94, viio7c 1.42, viio7d 0.6, viio/Va -0.67, viio/Vb -0.16, viio/Vc -0.32, viio7/Va 1.02, viio7/Vb 0.63, viio7/Vc 1.14, It6a -1.05, It6b -0.24, Ger65a -0.27, Ger65b 0.26, #ioa -0.23, #iob -0.44, #ioc -0.27, iva -0.42, ivb -0.46, ivc -0.34, iv7a 0.66, iv7b 0.97, iv7d 0.16, IVa -0.82, IVb -0.44, IVc -0.73, IV7a 0.44, IV7b 1.66, IV7d 0.57, VIIa -0.34, VIIb -0.32, VIIc -0.58, VII7b 0.42, VII7d 0.22, viia -0.76, viic -0.2, IIIa -0.06, IIIb -0.28, IIImaj7a -0.03, IIImaj7b -0.05, V7/VIa 0.23, III+a -0.92, III+b -0.46, III+maj7a 0.13, III+maj7b -0.07, III+maj7d -0.16, VIa -0.1, VIb -0.37, VIc -0.49, VImaj7a 0.25, VImaj7b -0.09, VImaj7c -0.19, VImaj7d 0.05, VI7a 0.27, Na -0.34, Nb -0.66, Nc -0.39, bIImaj7a -0.09
three major: strangeb 0.27, Ia -0.21, Ib -0.59, Ic -0.37, Imaj7a 0.04, Imaj7c -0.06, Imaj7d 0.21, V7/IVa 1.03, V7/IVb 0.74, V7/IVc 0.3, V7/IVd 0.2, ia -0.47, ib -0.08, ic -0.33, I+a -0.49, I+b -0.39, I+c -0.21, Va -0.75, Vb -0.25, Vc -0.79, V7a 2.66, V7b 0.77, V7c 0.46, V7d 0.26, va -0.38, vb -0.46, vc -0.24, v7a 0.3, v7b 0.13, v7c -0.21, v7d -0.25, V+a -0.56, V+b -0.41, V+c -0.09, voa -0.65, vob -0.16, vø7c -0.08, vø7d -0.07, iia -0.3, iib -1.35, iic -0.53, ii7a 0.94, ii7b 2.19, ii7c 0.1, ii7d 0.16, V/Va -0.56, V/Vb -0.25, V/Vc -0.13, V7/Va 0.74, V7/Vb 0.92, V7/Vc 0.42, V7/Vd 0.13, iioa -0.67, iiob -0.89, iioc -0.12, iiø7a -0.22, iiø7b -0.09, iiø7c 0.21, Fr43b -0.16, Fr43d -0.14, via 0.16, vib -0.67, vic -0.45, vi7a 0.7, vi7b 0.25, vi7d 0.39, V/iia -0.72, V/iib 0.06, V/iic -0.41, V7/iia 0.03, V7/iib 0.4, V7/iid -0.26, vioa -0.64, viob -0.27, vioc -0.24, viø7a -0.28, viø7b -0.07, iiia -0.13, iiib -0.01, iiic -0.37, iii7a 0.39, iii7b -0.09, iii7c 0.2, V/via -0.43, V/vib 0.03, V/vic -0.16, V7/via 0.26, V7/vib 0.4, V7/vic 0.21, V7/vid -0.17, viio/IVa -0.43, viio/IVb -0.22, viio/IVc -0.16, viiø7/IVa -0.11, viiø7/IVb -0.09, viio7/IVa 0.27, viioa -0.47, viiob -0.39, viioc -0.5, viiø7a 0.54, viiø7b 0.56, viiø7c 0.49, viiø7d 0.34, viio7a 0.16, viio7c -0.09, V/iiia -0.29, V/iiib -0.19, viia -0.59, viib -0.28, viic -0.16, viio/Va -0.61, viio/Vb -0.4, viio/Vc -0.27, viiø7/Va 0.38, viiø7/Vb 0.21, viiø7/Vc 0.64, viio7/Va 0.51, It6a -0.09, It6c -0.14, Ger65a -0.15, viio/iia -0.42, viio/iib -0.3, viio/iic -0.34, viiø7/iib -0.09, viio7/iia 0.51, viio7/iib 0.24, viio7/iic 0.26, viio/via -0.39, viio/vib -0.06, viio/vic -0.22, viiø7/vic -0.09, viio7/via 0.6, viio7/vic -0.07, viio/iiia -0.21, viio/iiib -0.45, viio7/iiia 0.05, IVa -0.24, IVb -0.61, IVc -0.43, IVmaj7a -0.17, IVmaj7b 0.92, IVmaj7c -0.09, IVmaj7d 0.16, IV7a -0.09, IV7d 0.03, iva -0.77, ivb 0.07, ivc -0.29, iv7a -0.16, bVIIa -0.26, bVIIb -0.47, bVIIc -0.32, bVIImaj7a 0.13, bVII7a -0.09, bIIIa -0.15, bIIIb -0.35, bVIa -0.26, bVIb -0.16, Nb -0.2
three minor: ia 0.02, ib -0.42, ic -0.25, i7a 0.21, i7b -0.19, i7d 0.08, imaj7a -0.28, imaj7c -0.31, imaj7d -0.09, Ia 0.06, Ib -0.02, Ic -0.19, V7/iva 0.2, V7/ivb 0.59, V7/ivc 0.21, V7/ivd 0.08, va -0.26, vb -0.07, vc -0.49, v7a 0.46, v7d 0.32, Va -0.69, Vb -0.24, Vc -0.39, V7a 2.62, V7b 0.56, V7c 0.63, V7d 0.31, V+a -0.71, V+b -0.32, viio/VIa -0.36, viio/VIb -0.25, viiø7/VIa -0.16, iioa -1.1, iiob -0.72, iioc -0.43, iiø7a 0.79, iiø7b 1.89, iiø7c 0.62, iiø7d 0.87, iia -0.59, iib -0.42, iic -0.31, ii7a -0.09, ii7d 0.11, V/Va -0.14, V/Vb -0.37, V/Vc -0.16, V7/Va 0.34, V7/Vb 0.4, V7/Vc 0.24, V7/Vd -0.08, Fr43b -0.09, Fr43c -0.09, Fr43d -0.13, vioa -0.38, viob -0.26, vioc -0.2, viø7a 0.54, viø7b 0.76, viø7c 0.55, viio7/VIIa 0.28, #via -0.24, #vib -0.26, #vic -0.15, viio/iva -0.22, viio/ivb -0.17, viio/ivc -0.17, viiø7/iva 0.07, viiø7/ivb -0.09, viiø7/ivc 0.13, viio7/iva 0.36, viio7/ivb 0.27, viio7/ivc 0.58, viioa -0.81, viiob -0.23, viioc -0.46, viiø7a 0.33, viiø7c 0.14, viiø7d -0.09, viio7a 0.79, viio7b 1.49, viio7c 0.98, viio7d 0.14, viio/Va -0.49, viio/Vb -0.36, viio/Vc 0.01, viio7/Va 0.73, viio7/Vb 0.67, viio7/Vc 0.84, viio7/Vd -0.08, It6a -0.15, It6c -0.09, Ger65b 0.2, #ioa -0.09, #iob -0.1, #ioc -0.08, iva -0.15, ivb -0.5, ivc -0.38, iv7a 0.52, iv7b 0.6, iv7c -0.16, iv7d 0.11, IVa -0.52, IVb -0.14, IVc -0.33, IV7a 0.13, IV7b 0.69, IV7c -0.09, IV7d 0.1, VIIa -0.32, VIIb -0.18, VIIc -0.22, VII7b 0.14, VII7c -0.15, VII7d 0.07, viia -0.39, viib -0.09, viic -0.16, IIIa 0.06, IIIb -0.08, IIIc -0.24, IIImaj7a -0.03, IIImaj7b -0.09, IIImaj7c -0.01, IIImaj7d -0.09, V7/VIa 0.01, V7/VId -0.06, III+a -0.61, III+b -0.34, III+c -0.33, III+maj7a 0.01, III+maj7b 0.07, III+maj7c -0.09, III+maj7d -0.32, VIa -0.07, VIb -0.36, VIc -0.29, VImaj7a 0.16, VImaj7b -0.09, VImaj7c -0.09, VImaj7d 0.14, VI7a 0.11, Na -0.23, Nb -0.48, Nc -0.2, bIImaj7a -0.09
`;
