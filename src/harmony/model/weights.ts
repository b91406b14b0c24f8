/**
 * The weights of the reading, by family of features and by name (see layout.ts). Written by
 * tests/bench/harmonyTraining.ts, not by hand: averaged perceptrons over the open chorales and their human
 * analyses (D. Tymoczko and colleagues, as published in the When in Rome meta-corpus). Only sums are compared, so
 * the unit has no meaning; greater is likelier.
 */
export const TABLE = `
# tone by shape
root: none>none 0.04, none>repeated 0.55, none>step_up -0.08, none>step_down 0.4, none>leap 0.6, none>held -0.37, repeated>none 0.31, repeated>repeated 0.55, repeated>step_up 0.59, repeated>step_down 0.31, repeated>leap 0.71, repeated>held -0.18, step_up>none 0.28, step_up>repeated 0.56, step_up>step_up 0.4, step_up>step_down 0.25, step_up>leap 0.43, step_up>held 0.15, step_down>none -0.19, step_down>repeated 0.25, step_down>step_up 0.41, step_down>step_down 0.07, step_down>leap 0.62, step_down>held 0.09, leap>none 0.32, leap>repeated 0.48, leap>step_up 0.2, leap>step_down 0.71, leap>leap 1.01, leap>held 0.16, held>none -0.05, held>repeated -0.06, held>step_up -0.27, held>step_down -0.01, held>leap 0.09, held>held -0.21
third: none>repeated 0.14, none>step_up 0.08, none>step_down 0.03, none>leap -0.15, none>held -0.14, repeated>none -0.5, repeated>repeated 0.26, repeated>step_up 0.1, repeated>step_down 0.07, repeated>leap 0.03, repeated>held 0.01, step_up>none 0.14, step_up>repeated 0.29, step_up>step_up 0.38, step_up>step_down 0.16, step_up>leap 0.25, step_up>held -0.09, step_down>none 0.37, step_down>repeated 0.21, step_down>step_up 0.31, step_down>step_down 0.26, step_down>leap 0.38, step_down>held -0.04, leap>none 0.16, leap>repeated 0.24, leap>step_up 0.39, leap>step_down -0.04, leap>leap 0.32, leap>held -0.24, held>none -0.19, held>repeated -0.3, held>step_up 0.17, held>step_down -0.17, held>leap -0.11, held>held -0.44
fifth: none>repeated -0.25, none>step_up 0.56, none>step_down 0.21, none>leap 0.31, none>held -0.45, repeated>none -0.17, repeated>repeated 0.24, repeated>step_up 0.48, repeated>step_down 0.13, repeated>leap 0.46, repeated>held -0.23, step_up>none 0.09, step_up>repeated 0.08, step_up>step_up 0.21, step_up>step_down 0.21, step_up>leap -0.13, step_up>held -0.08, step_down>none 0.04, step_down>repeated 0.49, step_down>step_up 0.39, step_down>step_down 0.15, step_down>leap 0.21, step_down>held -0.15, leap>none -0.54, leap>repeated 0.22, leap>step_up 0.3, leap>step_down 0.35, leap>leap 0.06, leap>held -0.12, held>none -0.31, held>repeated -0.42, held>step_up 0.15, held>step_down 0.11, held>leap -0.03, held>held -0.11
seventh: none>repeated -0.29, none>step_up -0.33, none>step_down 0.14, none>leap -0.1, none>held -0.02, repeated>none 0.26, repeated>repeated -0.61, repeated>step_up -0.44, repeated>step_down 0.25, repeated>leap -0.17, repeated>held 0.04, step_up>none -0.04, step_up>repeated -0.23, step_up>step_up -1.24, step_up>step_down 0.39, step_up>leap 0.07, step_up>held -0.07, step_down>none -0.16, step_down>repeated -0.6, step_down>step_up -0.77, step_down>step_down 0.23, step_down>leap -0.73, step_down>held 0.19, leap>none -0.1, leap>repeated -0.13, leap>step_up -0.87, leap>step_down 0.32, leap>leap -0.31, leap>held -0.33, held>none -0.04, held>repeated -0.3, held>step_up -0.49, held>step_down 0.06, held>leap -0.22, held>held -0.43
foreign: none>none -0.04, none>repeated -0.25, none>step_up -0.36, none>step_down -0.23, none>leap -0.26, none>held 0.3, repeated>none 0.04, repeated>repeated -0.92, repeated>step_up -0.68, repeated>step_down -1.56, repeated>leap 0.05, repeated>held -0.95, step_up>none -0.41, step_up>repeated -0.4, step_up>step_up -0.59, step_up>step_down -0.41, step_up>leap -0.34, step_up>held -0.78, step_down>none -0.28, step_down>repeated -0.77, step_down>step_up -0.45, step_down>step_down -1.09, step_down>leap -0.38, step_down>held -0.68, leap>none -0.39, leap>repeated -0.6, leap>step_up -0.32, leap>step_down -0.59, leap>leap -0.3, leap>held -0.5, held>none 0.53, held>repeated -1.21, held>step_up -0.39, held>step_down -1.27, held>leap -0.68, held>held -0.55
foreign_to-member: none>step_up -0.27, none>step_down -0.01, none>leap -0.67, none>held -0.08, repeated>step_up -1.19, repeated>step_down 0.21, repeated>leap -0.67, repeated>held -0.64, step_up>step_up -0.43, step_up>step_down -0.4, step_up>leap -0.85, step_up>held -0.16, step_down>step_up -0.27, step_down>step_down -0.76, step_down>leap -0.64, step_down>held -1.03, leap>step_up 0.17, leap>step_down -0.41, leap>leap -0.64, leap>held -0.32, held>step_up -1.13, held>step_down 0.33, held>leap -0.65, held>held -0.8
foreign_from-member: step_up>none 0.1, step_up>repeated -0.17, step_up>step_up -0.04, step_up>step_down -0.43, step_up>leap -0.66, step_up>held -0.98, step_down>none 0.15, step_down>repeated 0.02, step_down>step_up 0.25, step_down>step_down 0.24, step_down>leap -0.58, step_down>held -0.73, leap>none -0.1, leap>repeated -0.02, leap>step_up -0.59, leap>step_down -0.86, leap>leap -1.15, leap>held -0.7, held>none 0.32, held>repeated -0.89, held>step_up -0.25, held>step_down -1.32, held>leap -0.58, held>held -0.41
foreign_between-members: step_up>step_up 0.29, step_up>step_down -0.7, step_up>leap -0.42, step_up>held -1.51, step_down>step_up -0.19, step_down>step_down 0.14, step_down>leap -0.5, step_down>held -0.77, leap>step_up -0.78, leap>step_down -1.22, leap>leap -0.86, leap>held -1.14, held>step_up -0.75, held>step_down 0.38, held>leap -0.51, held>held -0.92
# tone by place
root downbeat: semiquaver 0.24, quaver 0.25, crotchet 0.51, long 0.64
root start: semiquaver 0.2, quaver 0.13, crotchet 0.45, long 0.67
root weak_start: semiquaver -0.03, quaver 0.4, crotchet 0.2
root beat: semiquaver 0.33, quaver 0.25, crotchet 0.26, long -0.11
root offbeat: semiquaver 0.02, quaver 0.27, crotchet 0.27
root small: semiquaver 0.13
root held_in: semiquaver 1.08, quaver -0.23, crotchet -0.11, long -0.27
third downbeat: semiquaver -0.31, quaver 0.01, crotchet 0.42, long 0.42
third start: semiquaver 0.21, quaver -0.05, crotchet 0.3, long 0.13
third weak_start: semiquaver -0.38, quaver 0.27, crotchet 0.24
third beat: quaver 0.17, crotchet 0.17, long 0.13
third offbeat: semiquaver 0.22, quaver 0.2, crotchet -0.14
third small: semiquaver -0.05
third held_in: semiquaver 0.48, quaver -0.15, crotchet -0.39, long -0.29
fifth downbeat: semiquaver 0.03, quaver 0.13, crotchet 0.4, long 0.41
fifth start: semiquaver -0.24, quaver 0.06, crotchet 0.35, long -0.21
fifth weak_start: semiquaver -0.5, quaver -0.16, crotchet -0.15
fifth beat: semiquaver -0.16, quaver 0.03, crotchet 0.39, long 0.13
fifth offbeat: semiquaver -0.98, quaver 0.2, crotchet -0.25
fifth small: semiquaver 0.14
fifth held_in: semiquaver -0.28, quaver -0.1, crotchet -0.1, long -0.1
seventh downbeat: semiquaver -0.18, quaver -0.35, crotchet 0.11, long -0.01
seventh start: semiquaver 0.88, quaver -0.49, crotchet 0.16, long -0.39
seventh weak_start: semiquaver -0.8, quaver 0.31, crotchet 0.03, long -0.01
seventh beat: semiquaver -0.15, quaver -0.64, crotchet -0.82, long -0.36
seventh offbeat: semiquaver -0.45, quaver -0.68, crotchet -0.31
seventh small: semiquaver -0.09
seventh held_in: semiquaver -0.14, quaver -0.37, crotchet 0.06, long -0.86
foreign downbeat: semiquaver -0.14, quaver -1.01, crotchet -1.45, long -0.82
foreign start: semiquaver -0.36, quaver -1.37, crotchet -1.41, long -0.03
foreign weak_start: semiquaver -0.41, quaver -1.33, crotchet -0.01
foreign beat: quaver -0.63, crotchet -0.3, long -0.02
foreign offbeat: semiquaver -0.25, quaver -0.09
foreign small: semiquaver 0.15
foreign held_in: quaver -1.27, crotchet -0.8, long -0.19
foreign_to-member downbeat: semiquaver 0.48, quaver -0.97, crotchet -0.93, long -0.48
foreign_to-member start: semiquaver -0.04, quaver -0.29, crotchet -0.87, long -0.39
foreign_to-member weak_start: semiquaver -0.37, quaver -1.27, crotchet -0.04
foreign_to-member beat: quaver -0.74, crotchet -0.28, long 0.33
foreign_to-member offbeat: semiquaver -0.74, quaver 0.29, crotchet -0.04
foreign_to-member small: semiquaver -0.05
foreign_to-member held_in: quaver -0.38, crotchet -0.49, long -0.11
foreign_from-member downbeat: quaver -1.12, crotchet -0.91, long 0.17
foreign_from-member start: semiquaver -0.53, quaver -1.11, crotchet -1.46, long -0.06
foreign_from-member weak_start: semiquaver 1.08, quaver -0.61
foreign_from-member beat: semiquaver -0.5, quaver -0.3, crotchet -0.47, long -0.02
foreign_from-member offbeat: semiquaver -0.05, quaver 0.22, crotchet -0.42
foreign_from-member small: semiquaver 0.15
foreign_from-member held_in: quaver -1.45, crotchet -0.47, long -0.24
foreign_between-members downbeat: semiquaver -0.14, quaver -1.04, crotchet -0.56, long -0.17
foreign_between-members start: quaver 0.09, crotchet -0.54, long -0.12
foreign_between-members weak_start: semiquaver 1.27, quaver -0.44, crotchet -0.34
foreign_between-members beat: semiquaver -0.16, quaver -0.83, crotchet -0.19, long -0.03
foreign_between-members offbeat: semiquaver -0.48, quaver 0.06, crotchet -0.87
foreign_between-members small: semiquaver -0.41
foreign_between-members held_in: semiquaver 0.18, quaver -0.23, crotchet -0.66, long 0.18
# tone by kind
root suspension: downbeat 0.43, start -0.14, weak_start -0.44, beat 0.1, offbeat 0.33, held_in -0.01
root retardation: downbeat 0.21, start 0.07, weak_start 0.24, beat 0.58, offbeat -0.04, held_in -0.27
root pedal: downbeat 0.07, start 0.17, weak_start -0.28, beat 0.14, offbeat 0.09, held_in -0.18
root passing: downbeat 0.42, start 0.21, weak_start -0.05, beat 0.16, offbeat -0.25, small 0.34
root neighbour: downbeat 0.54, start 0.31, weak_start -0.57, beat -0.08, offbeat 0.57, small -0.06
root escape: downbeat 0.77, start 0.38, weak_start -0.07, beat -0.67, offbeat 0.23, small -0.13
root appoggiatura: downbeat 0.12, start 0.36, weak_start 0.37, beat 0.59, offbeat -0.45, small -0.03
root anticipation: downbeat 0.18, start 0.31, weak_start 0.49, beat -0.02, offbeat 0.84
root leaping: downbeat 0.59, start 0.26, weak_start 0.92, beat 0.51, offbeat -0.55, held_in 0.09
root edge: downbeat 0.63, start 0.02, weak_start 0.1, beat 0.37, offbeat -0.12, held_in -0.05
third suspension: downbeat 0.07, start 0.21, weak_start 0.23, beat -0.26, offbeat -0.34, held_in -0.17
third retardation: downbeat -0.14, start 0.01, weak_start -0.21, beat 0.28, offbeat -0.07, held_in 0.17
third pedal: downbeat 0.27, start -0.29, weak_start 0.43, beat 0.2, offbeat 0.14, held_in -0.52
third passing: downbeat 0.24, start 0.25, weak_start -0.02, beat 0.38, offbeat 0.24, small -0.18
third neighbour: downbeat 0.3, start 0.32, weak_start -0.31, beat -0.18, offbeat 0.39, small -0.04
third escape: downbeat 0.26, start 0.09, weak_start 0.35, beat -0.09, offbeat 0.37, small 0.01
third appoggiatura: downbeat 0.23, start 0.17, weak_start 0.52, beat -0.13, offbeat -0.4
third anticipation: downbeat 0.03, start -0.07, weak_start 0.06, beat 0.05, offbeat 0.1
third leaping: downbeat 0.06, start 0.14, weak_start 0.36, beat 0.02, offbeat -0.12, small 0.27, held_in -0.11
third edge: downbeat 0.2, start -0.33, weak_start -0.05, beat 0.39, offbeat 0.05, held_in -0.19
fifth suspension: downbeat 0.24, start 0.05, beat -0.17, held_in 0.11
fifth retardation: downbeat 0.28, start 0.32, weak_start 0.11, beat 0.07, offbeat 0.06, held_in 0.15
fifth pedal: downbeat -0.05, start -0.05, weak_start 0.04, beat 0.31, offbeat -0.28, held_in -0.43
fifth passing: downbeat 0.41, start 0.28, weak_start -0.19, beat 0.12, offbeat -0.05, small -0.01
fifth neighbour: downbeat 0.29, start 0.29, weak_start -0.41, beat 0.14, offbeat 0.41, small 0.07
fifth escape: downbeat 0.28, start -0.12, weak_start -0.82, beat -0.15, offbeat 0.4, small 0.45
fifth appoggiatura: downbeat 0.18, start 0.19, weak_start 0.73, beat 0.11, offbeat -0.29
fifth anticipation: downbeat 0.08, start -0.07, beat -0.02, offbeat -0.01
fifth leaping: downbeat 0.38, start -0.02, weak_start 0.02, beat 0.44, offbeat -0.31, small -0.25, held_in -0.03
fifth edge: downbeat -0.12, start 0.25, weak_start -0.35, beat 0.29, offbeat 0.57, held_in -0.31
seventh suspension: downbeat 0.4, start -0.06, weak_start -0.38, beat -0.08, offbeat 0.46, held_in 0.06
seventh retardation: downbeat -0.35, start -0.19, beat -0.11, held_in -0.49
seventh pedal: downbeat -0.17, start -0.04, beat -0.28, held_in -0.51
seventh passing: downbeat 0.25, start 0.21, weak_start 0.12, beat -0.89, offbeat -0.84, small 0.06
seventh neighbour: downbeat -0.22, start 0.26, weak_start -0.52, beat -0.42, offbeat 0.13, small -0.31
seventh escape: downbeat -0.46, start 0.1, weak_start -0.08, beat 0.1, offbeat -0.36, small -0.06
seventh appoggiatura: downbeat -0.43, start -0.28, weak_start 0.53, beat 0.07, offbeat -0.4
seventh anticipation: downbeat -0.24, start -0.09, weak_start 0.61, beat -0.88, offbeat -0.78
seventh leaping: downbeat -0.15, start -0.29, weak_start -0.14, beat -0.08, offbeat -0.01, small -0.03, held_in -0.22
seventh edge: downbeat 0.04, start -0.32, weak_start 0.35, beat -0.14, offbeat -0.1, held_in -0.04
foreign suspension: downbeat -0.42, start -0.39, beat 0.01, held_in -0.42
foreign retardation: downbeat -0.73, start -1.21, weak_start -0.06, beat -0.07, held_in -1.2
foreign pedal: downbeat -0.97, start -1.1, weak_start -0.02, beat -0.19, held_in -1.76
foreign passing: downbeat -1.26, start -0.37, weak_start -0.12, beat -0.07, offbeat 0.25, small -0.09
foreign neighbour: downbeat -1.07, start -1.27, weak_start -0.67, beat -0.44, offbeat 0.27, small 0.13
foreign escape: downbeat -1.15, start -0.67, weak_start -0.11, beat -0.95, offbeat -0.4, small -0.53
foreign appoggiatura: downbeat -0.93, start -1.14, weak_start -0.14, beat -0.65, offbeat -0.89, small 0.03
foreign anticipation: downbeat -1.38, start -1.35, weak_start -0.3, beat -1.03, offbeat -0.77
foreign leaping: downbeat -0.54, start -0.81, weak_start -0.08, beat -0.65, offbeat -1.06, held_in -1.14
foreign edge: downbeat -0.25, start -0.36, weak_start -0.06, beat -0.33, offbeat -0.53, held_in 0.56
# bass tone by place
root downbeat: quaver -0.11, crotchet 0.4, long 0.59
root start: quaver 0.21, crotchet 0.22, long 0.59
root weak_start: semiquaver -0.2, quaver 0.38, crotchet 0.31
root beat: quaver 0.56, crotchet 0.63, long -0.09
root offbeat: semiquaver 0.17, quaver -0.04, crotchet 0.04
root small: semiquaver -0.16
root held_in: quaver -0.31, crotchet -0.25, long 0.19
third downbeat: quaver 0.12, crotchet 0.26
third start: quaver 0.22, crotchet 0.15, long -0.22
third weak_start: semiquaver -0.04, quaver 0.06, crotchet -0.07
third beat: quaver -0.17, crotchet -0.44, long 0.05
third offbeat: semiquaver 0.11, quaver 0.3
third small: semiquaver 0.14
third held_in: semiquaver -0.03, quaver -0.08, crotchet -0.13, long -0.37
fifth downbeat: quaver -0.22, crotchet 0.18
fifth start: quaver -0.31, crotchet -0.44, long -0.04
fifth weak_start: semiquaver -0.11, quaver -0.02, crotchet -0.04
fifth beat: quaver -0.97, crotchet -1.25, long -0.47
fifth offbeat: quaver -0.33, crotchet -0.04
fifth small: semiquaver 0.14
fifth held_in: quaver -0.36, crotchet -0.76, long -0.39
seventh downbeat: quaver -0.38, crotchet -0.24, long 0.25
seventh start: quaver -0.58, crotchet -0.17, long -0.07
seventh weak_start: semiquaver -0.21, quaver 0.12, crotchet -0.17
seventh beat: quaver -0.42, crotchet -0.47, long -0.08
seventh offbeat: quaver -0.55, crotchet -0.12
seventh small: semiquaver -0.08
seventh held_in: quaver -0.19, crotchet -0.24, long -0.11
foreign downbeat: quaver -0.88, crotchet -0.52, long -0.01
foreign start: quaver 0.11, crotchet -0.41, long -0.28
foreign weak_start: semiquaver 0.76, quaver -0.96, crotchet -0.15
foreign beat: quaver -0.92, crotchet -0.13, long 0.08
foreign offbeat: semiquaver -0.65, quaver 0.28, crotchet -0.37
foreign small: semiquaver -0.08
foreign held_in: quaver -0.32, crotchet -0.15, long -0.27
# seventh by kind
M7 suspension: downbeat 0.14, start 0.16, weak_start -0.21, beat 0.18, offbeat 0.56, held_in -0.68
M7 retardation: downbeat -0.04, start -0.02, held_in 0.09
M7 pedal: downbeat -0.1, start 0.25, beat -0.08, held_in -0.2
M7 passing: downbeat 0.24, start 0.22, weak_start 1.08, beat -0.61, offbeat -0.18, small 0.55
M7 neighbour: downbeat 0.1, start 0.33, weak_start -0.35, beat -0.22, offbeat 0.27, small 0.16
M7 escape: downbeat 0.01, start 0.12, weak_start -0.4, beat 0.33, offbeat -0.44, small 0.23
M7 appoggiatura: downbeat 0.05, start -0.33, weak_start 0.23, beat 0.46, offbeat -0.84
M7 anticipation: downbeat -0.31, start 0.09, weak_start 0.41, beat -0.61, offbeat -0.3
M7 leaping: downbeat 0.22, start -0.37, weak_start -0.34, offbeat -0.07, held_in -0.02
M7 edge: downbeat 0.25, start 0.05, held_in 0.05
Mmaj7 suspension: downbeat -0.06, start -0.25, beat -0.07, held_in 0.61
Mmaj7 retardation: downbeat -0.3, start -0.13, beat -0.04, held_in -0.17
Mmaj7 pedal: start -0.07, beat -0.1, held_in -0.39
Mmaj7 passing: downbeat -0.34, start -0.15, weak_start -0.99, beat -0.29, offbeat -0.62, small -0.02
Mmaj7 neighbour: downbeat -0.26, start 0.02, weak_start -0.28, beat -0.13, offbeat -0.23, small -0.31
Mmaj7 escape: downbeat -0.09, start -0.3, beat -0.08, offbeat -0.03
Mmaj7 appoggiatura: downbeat -0.19, start -0.09, weak_start 0.39, beat -0.2, offbeat 0.1
Mmaj7 anticipation: downbeat -0.23, start 0.2, weak_start -0.25, beat -0.22, offbeat -0.14
Mmaj7 leaping: downbeat -0.08, start 0.27, beat -0.04, offbeat -0.05, held_in 0.47
Mmaj7 edge: downbeat -0.04, start -0.13, beat -0.06
m7 suspension: downbeat 0.33, start 0.37, weak_start -0.11, beat -0.14, offbeat -0.32, held_in 0.12
m7 retardation: start -0.03, beat -0.04, held_in -0.34
m7 pedal: beat -0.07, held_in -0.26
m7 passing: downbeat -0.14, start 0.2, weak_start -0.74, beat -0.42, offbeat -0.56, small -0.76
m7 neighbour: downbeat -0.18, start -0.07, weak_start -0.08, beat -0.11, offbeat 0.4, small -0.46
m7 escape: downbeat -0.35, start -0.02, weak_start -0.12, beat -0.06, offbeat 0.27, small -0.12
m7 appoggiatura: downbeat -0.23, start -0.18, weak_start 0.48, beat -0.07, offbeat 0.14
m7 anticipation: downbeat 0.13, start -0.04, weak_start 0.04, beat -0.27, offbeat -0.4
m7 leaping: downbeat -0.03, start -0.38, weak_start 0.19, offbeat 0.23, held_in -0.08
m7 edge: start -0.04, beat -0.09, offbeat -0.09, held_in -0.1
ø7 suspension: downbeat 0.19, start -0.25, beat -0.13, held_in 0.28
ø7 retardation: downbeat -0.17, start -0.11, beat -0.04, held_in -0.53
ø7 pedal: downbeat 0.01, start -0.04, beat -0.07, held_in -0.24
ø7 passing: downbeat 0.07, start -0.07, weak_start -0.31, beat -0.13, offbeat -0.54, small -0.05
ø7 neighbour: downbeat -0.43, start 0.01, weak_start 0.06, beat -0.06, offbeat -0.23, small -0.12
ø7 escape: downbeat -0.1, start -0.29, weak_start 0.43, beat -0.12, offbeat -0.34, small -0.13
ø7 appoggiatura: downbeat 0.08, start 0.17, weak_start -0.21, beat -0.03, offbeat -0.04
ø7 anticipation: downbeat -0.06, start -0.35, weak_start 0.65, beat -0.18, offbeat -0.26
ø7 leaping: downbeat 0.11, start -0.2, weak_start 0.1, beat -0.04, offbeat -0.19, small -0.03, held_in -0.63
ø7 edge: downbeat -0.04, start -0.18
o7 suspension: downbeat 0.07, start -0.41, weak_start -0.13, beat -0.03, offbeat 0.18, held_in -0.15
o7 retardation: held_in -0.25
o7 pedal: downbeat -0.1, held_in -0.38
o7 passing: downbeat 0.34, start 0.43, weak_start 0.17, offbeat -0.11
o7 neighbour: downbeat 0.26, start 0.21, weak_start 0.1, beat -0.2, offbeat -0.02, small 0.08
o7 escape: downbeat -0.1, start 0.47, weak_start -0.1, small -0.04
o7 appoggiatura: downbeat -0.31, start 0.07, weak_start -0.14, beat -0.34, offbeat 0.35
o7 anticipation: downbeat 0.19, start 0.05, weak_start -0.11, beat -0.22
o7 leaping: downbeat -0.16, start 0.18, weak_start -0.14, held_in -0.04
o7 edge: downbeat -0.1, start -0.14, weak_start 0.35, offbeat -0.02
mmaj7 retardation: held_in -0.07
mmaj7 pedal: start -0.08
mmaj7 passing: downbeat -0.04, weak_start -0.01
mmaj7 neighbour: downbeat -0.05, weak_start -0.27, offbeat -0.1, small -0.11
mmaj7 escape: beat -0.03
mmaj7 appoggiatura: downbeat -0.11, weak_start -0.08, offbeat -0.09
mmaj7 anticipation: downbeat -0.04, start -0.02
+maj7 suspension: downbeat -0.16, held_in 0.27
+maj7 retardation: start -0.03, held_in -0.07
+maj7 pedal: start -0.04, held_in -0.07
+maj7 passing: downbeat -0.02, start -0.16, weak_start -0.23, beat -0.03, offbeat -0.08
+maj7 neighbour: downbeat -0.04, start -0.13, weak_start -0.06, offbeat -0.02, small -0.04
+maj7 escape: beat -0.02
+maj7 appoggiatura: downbeat -0.04, weak_start 0.26, offbeat -0.07
+maj7 anticipation: downbeat -0.04, weak_start -0.02, beat -0.03
+maj7 leaping: downbeat -0.28, start -0.11, weak_start -0.04, held_in -0.09
+maj7 edge: downbeat -0.08
Fr suspension: downbeat -0.12, held_in -0.27
Fr passing: weak_start -0.04, offbeat -0.07
Fr anticipation: downbeat -0.04, start -0.04, weak_start -0.04
Fr leaping: held_in -0.02
Ger suspension: downbeat -0.07, start -0.11, held_in -0.07
Ger retardation: start -0.02, held_in -0.08
Ger pedal: downbeat -0.15, start -0.11, held_in 0.32
Ger passing: downbeat -0.08, start -0.07, small -0.02
Ger neighbour: downbeat -0.04, start -0.04, small -0.04
Ger escape: start -0.04
Ger appoggiatura: downbeat -0.03, start -0.06, weak_start -0.02
Ger anticipation: downbeat -0.08, start -0.16
Ger leaping: downbeat -0.04, start -0.04, held_in -0.08
Ger edge: downbeat -0.03
# members present
M: r--- 0.27, r3-- -0.2, --5- 0.58, r-5- -1.06, -35- -0.81, r35- 0.45
m: r--- -0.54, r3-- -0.34, --5- -0.08, r-5- -1.06, -35- -0.41, r35- 0.4
o: r3-- -0.87, r-5- -0.27, -35- -1.31, r35- 0.72
+: r3-- -0.74, r-5- -0.04, -35- -0.24, r35- -0.1
M7: r--- 0.73, r3-- 0.71, -35- 0.43, r35- 2.24, r--7 0.42, r3-7 0.49, --57 0.76, r-57 -0.96, -357 -1.15, r357 0.82
Mmaj7: -3-7 -0.07, r3-7 -0.42, --57 -0.18, r-57 -0.46, -357 -1.15, r357 0.08
m7: r35- 1.7, r--7 -0.09, -3-7 0.18, r3-7 -0.91, --57 0.59, r-57 -0.51, -357 -1.21, r357 0.16
ø7: r3-- 1.29, r35- 0.44, r--7 -0.09, -3-7 0.33, r3-7 -0.89, --57 -0.05, r-57 -0.54, -357 -1.46, r357 0.67
o7: -35- 0.73, r35- 1.29, -3-7 -0.03, r3-7 -0.4, --57 0.12, r-57 0.39, -357 -1.21, r357 0.84
mmaj7: r3-7 -0.08, --57 -0.02, r-57 -0.14, -357 -0.29, r357 -0.42
+maj7: r3-7 -0.11, r-57 -0.06, -357 -0.4, r357 -0.1
It: r-5- -0.06, -35- 0.1
Fr: r--7 -0.02, r3-7 -0.35, r-57 -0.08, -357 -0.04, r357 -0.11
Ger: r-57 -0.07, -357 -0.66, r357 0.38
# members at start
M: ---- 0.33, r--- -0.4, -3-- -0.26, r3-- -0.75, --5- -0.07, r-5- 0.07, -35- -0.17, r35- 0.29
m: ---- 0.36, r--- -0.42, -3-- -0.22, r3-- -0.97, --5- -0.03, r-5- -0.6, -35- -0.45, r35- 0.64
o: ---- -0.07, r--- -0.26, -3-- -0.14, r3-- -0.79, --5- -0.03, -35- -0.29, r35- 0.48
+: r--- -0.08, r3-- -0.87, -35- -0.41, r35- 0.15
M7: r--- -0.28, r3-- 0.79, --5- -0.02, r-5- -0.9, -35- 0.25, r35- 0.15, ---7 -0.47, -3-7 -0.3, r3-7 0.29, --57 -0.45, r-57 0.03, -357 -0.52, r357 1.45
Mmaj7: r--- -0.1, -3-- -0.02, r3-- -0.38, --5- -0.02, r-5- -0.16, -35- -0.08, r35- -0.76, ---7 -0.07, -3-7 -0.41, r3-7 -0.21, --57 -0.58, r-57 -0.06, -357 -1.09, r357 0.63
m7: r--- -0.08, -3-- -0.07, r3-- 0.71, r-5- -0.08, -35- -0.29, r35- -1.1, ---7 -0.37, r--7 -0.39, -3-7 0.05, r3-7 -0.63, --57 0.06, r-57 -0.31, -357 -1.29, r357 1.12
ø7: ---- -0.04, r--- 0.39, -3-- -0.03, r3-- 0.81, r-5- -0.03, -35- -0.42, r35- -0.4, ---7 -0.26, r--7 -0.32, -3-7 -0.11, r3-7 -0.77, --57 -0.34, r-57 -0.09, -357 -1.36, r357 1.25
o7: r--- -0.02, r3-- -0.02, r-5- 0.37, -35- 0.43, r35- 1.12, ---7 -0.16, r--7 -0.04, -3-7 0.07, r3-7 -0.49, --57 -0.4, r-57 0.35, -357 -0.23, r357 0.75
mmaj7: r3-- -0.07, --5- -0.03, r35- -0.21, r3-7 -0.04, --57 -0.02, r-57 -0.12, -357 -0.42, r357 -0.07
+maj7: -3-- -0.04, r3-- -0.02, r35- -0.12, r--7 -0.03, -3-7 -0.04, r3-7 -0.25, --57 -0.04, r-57 -0.03, -357 -0.38, r357 0.2
It: r-5- -0.06, -35- 0.1
Fr: r35- -0.07, r--7 -0.1, r3-7 -0.31, --57 -0.04, r-57 -0.04, -357 -0.04, r357 -0.04
Ger: -35- -0.02, -3-7 -0.04, --57 -0.04, r-57 -0.03, -357 -0.64, r357 0.38
# bass chosen
M a: only 0.67, first -1.52, after_foreign 0.22, later -0.93, none -1.38
M b: only 0.65, first -1.54, after_foreign 0.31, later -1.03, none 1.31
M c: only -0.42, first -0.36, after_foreign -0.1, later -0.51
m a: only 0.57, first -1.42, after_foreign -0.12, later -0.81, none -0.93
m b: only 0.3, first -1.39, after_foreign 0.18, later -0.86, none 0.71
m c: only -0.17, first -0.46, after_foreign -0.23, later -0.64, none 0.45
o a: only -0.45, first -0.04, after_foreign 0.06, later -0.07, none -0.62
o b: only 0.46, first -0.62, after_foreign 0.68, later -0.25, none 1.08
o c: only -0.42, first -0.18, after_foreign -0.57
+ a: only -0.71, after_foreign -0.12, none -0.12
+ b: only -0.07, first -0.06, after_foreign -0.02, later -0.07
+ c: only -0.07
M7 a: only 0.99, first -0.81, after_foreign 0.02, later -0.84, none -0.89
M7 b: only 0.84, first -0.7, after_foreign 0.33, later -0.25, none 0.96
M7 c: only 0.02, first -0.62, after_foreign 0.63, later -0.36
M7 d: only 0.74, first -0.67, after_foreign -0.24, later -0.56, none 0.94
Mmaj7 a: only 0.1, first -0.03, after_foreign 0.44, later -0.32, none -0.51
Mmaj7 b: only -0.1, first -0.4, after_foreign -0.26, later -0.07
Mmaj7 c: only -0.59, first -0.29, after_foreign -0.17, later -0.04
Mmaj7 d: only -0.39, first -0.32, after_foreign -0.11, later -0.13
m7 a: only 0.42, first -0.2, after_foreign 0.16, later -0.09, none -0.32
m7 b: only 0.14, first -0.79, after_foreign -0.24, later -0.33, none 0.73
m7 c: only -0.63, first -0.28, after_foreign -0.37, later -0.08
m7 d: only -0.52, first -0.42, after_foreign -0.08, later -0.36
ø7 a: only 0.38, first -0.29, after_foreign 0.18, later -0.5, none -0.14
ø7 b: only 0.24, first -0.97, after_foreign 0.13, later -0.18, none 0.43
ø7 c: only -0.07, first -0.43, after_foreign 0.18, later -0.08
ø7 d: only -0.23, first -0.21, after_foreign -0.18, later -0.07
o7 a: only 0.27, first -0.17, after_foreign 0.61, later -0.07, none -0.04
o7 b: only 0.57, first -0.45, after_foreign 0.35, later -0.05, none 0.73
o7 c: only 0.35, first -0.21, after_foreign -0.23, later -0.22
o7 d: only -0.33, first -0.18, after_foreign -0.04, none 0.51
mmaj7 a: only -0.31, first -0.03
mmaj7 b: only -0.2
mmaj7 c: only -0.35, first -0.03
mmaj7 d: only -0.04, later -0.03
+maj7 a: only 0.01, first -0.03, after_foreign -0.04, none -0.16
+maj7 b: only -0.14, first -0.07, after_foreign -0.03
+maj7 c: only -0.04
+maj7 d: only -0.17, later -0.04
It a: none -0.09
It b: only 0.18, after_foreign -0.07
It c: only -0.04
Fr a: only -0.28
Fr b: only -0.16
Fr c: only -0.12
Fr d: only -0.08
Ger a: only -0.03, after_foreign -0.04, none -0.04
Ger b: only -0.23, after_foreign -0.05
Ger c: only -0.2, after_foreign -0.02
Ger d: only -0.04
# later bass
beat: quaver -1.62, crotchet -1.26, long -0.42
offbeat: semiquaver -0.22, quaver -1.46, crotchet -0.07
small: semiquaver -0.5
# segment
1 ½: 2 -0.09, 3 0.4, 4 0.11
1 1: 1 -1.04
1 1½: 2 -0.99, 3 -0.76, 4 -0.91
1 2: 1 -0.33, 2 -0.26, 3 -0.11, 4 -0.21
1 3: 1 -0.07, 3 -0.05, 4 -0.08
1 longer: 2 -0.16
2 ½: 1 -0.1
2 1: 2 -0.13, 3 0.2, 4 0.06
2 1½: 1 -0.15
2 2: 1 -0.03, 2 0.07, 4 -0.51
2 3: 2 0.36, 3 -0.63, 4 -0.42
2 4: 2 -0.18, 4 -0.04
2 longer: 2 0.43, 3 -0.08, 4 -0.08
3 ½: 1 0.03
3 1: 2 0.06, 4 0.3
3 1½: 1 0.35
3 2: 1 -0.2, 3 -0.24, 4 0.2
3 3: 1 -0.04, 2 -0.07
3 4: 3 -0.21
3 longer: 2 -0.1, 3 -0.16, 4 -0.04
4 ½: 1 -0.2
4 1: 2 -0.17
4 1½: 1 0.12
4 2: 1 -0.47, 2 0.56, 3 0.02, 4 0.04
4 3: 1 0.37, 2 0.07, 4 0.49
4 4: 2 -0.02, 3 -0.07, 4 0.51
4 longer: 2 -0.12, 3 -0.07, 4 0.42
# boundary
1 held: 1 -0.48, 2 -0.35, 3 -0.1
1 repeated: 2 0.03, 4 -0.34
1 step: 1 -1.65, 2 -0.57, 3 0.6, 4 0.49
1 leap: 1 1.17, 2 1.05, 3 1.07, 4 0.16
1 none: 3 -0.43
2 held: 1 -0.49, 2 -0.47, 3 -0.02
2 repeated: 3 -0.82, 4 -0.76
2 step: 1 -0.31, 2 -0.08, 3 0.33, 4 0.48
2 leap: 1 0.51, 2 0.21, 3 0.24, 4 -0.05
3 held: 1 0.03, 2 -0.3, 3 0.05
3 repeated: 4 -0.39
3 step: 2 0.33, 3 0.29, 4 0.6
3 leap: 2 0.05, 3 0.42, 4 0.07
4 held: 2 0.04, 3 -0.24
4 repeated: 3 -0.38, 4 -0.92
4 step: 1 0.11, 2 0.15, 3 0.76, 4 0.89
4 leap: 1 0.17, 2 0.11, 3 0.5, 4 -0.43
# chord in key
major: strangea -0.08, strangeb 0.37, Ia 0.55, Ib 0.38, Ic 0.2, Imaj7a 0.11, Imaj7b -0.09, Imaj7c -0.14, Imaj7d -0.2, V7/IVa 0.15, V7/IVb 0.15, V7/IVc 0.14, V7/IVd 0.29, ia -0.51, ib -0.34, ic -0.39, I+a -0.43, I+b -0.48, I+c -0.04, Va 0.45, Vb 0.38, Vc -0.58, V7a 0.4, V7b 0.46, V7c 0.14, V7d 0.49, va -0.36, vb -0.47, vc -0.2, v7a 0.08, v7b 0.11, v7c -0.08, v7d -0.16, V+a -0.2, V+b -0.24, V+c -0.04, voa -0.09, vob -0.28, vø7a -0.1, vø7c -0.19, iia 0.01, iib -0.06, iic -0.25, ii7a 0.55, ii7b 0.57, ii7c -0.21, ii7d -0.1, V/Va -0.33, V/Vb -0.29, V/Vc -0.24, V7/Va -0.31, V7/Vb 0.34, V7/Vc 0.1, V7/Vd 0.14, iioa -0.35, iiob 0.13, iioc -0.08, iiø7a -0.42, iiø7b -0.38, iiø7c 0.24, iiø7d -0.06, Fr43a -0.18, Fr43d -0.08, vib 0.15, vic -0.35, vi7a 0.12, vi7b -0.44, vi7c -0.36, vi7d -0.43, V/iia -0.53, V/iib -0.09, V/iic -0.09, V7/iia 0.31, V7/iib -0.15, V7/iic -0.19, V7/iid -0.49, vioa -0.32, viob -0.17, vioc -0.15, viø7a -0.55, viø7b -0.16, viø7c -0.08, viø7d -0.31, iiia -0.52, iiib -0.15, iiic -0.42, iii7a -0.29, iii7b -0.38, iii7c -0.06, iii7d -0.29, V/via -0.6, V/vib 0.09, V/vic -0.18, V7/vib -0.11, V7/vic -0.25, V7/vid -0.24, viio/IVa -0.14, viio/IVb -0.13, viio/IVc -0.05, viiø7/IVa -0.34, viiø7/IVb -0.13, viiø7/IVc -0.17, viiø7/IVd -0.21, viio7/IVa 0.38, viio7/IVc -0.05, viioa 0.13, viiob 0.51, viioc -0.33, viiø7a 0.41, viiø7b -0.2, viiø7c -0.29, viio7a -0.01, viio7b -0.14, viio7c -0.04, V/iiia -0.35, V/iiib -0.43, V7/iiia -0.12, V7/iiib -0.2, V7/iiic -0.04, V7/iiid -0.04, viia -0.45, viib -0.66, viic -0.17, viio/Va -0.2, viio/Vb 0.2, viio/Vc -0.06, viiø7/Va 0.09, viiø7/Vb -0.45, viiø7/Vc 0.32, viiø7/Vd -0.22, viio7/Va 0.28, viio7/Vb -0.07, viio7/Vc -0.14, It6a -0.06, Ger65b -0.07, viio/iia -0.15, viio/iib -0.14, viio/iic -0.16, viiø7/iia -0.28, viiø7/iib -0.26, viiø7/iic -0.12, viio7/iia 0.25, viio7/iib 0.07, viio7/iic -0.05, viio7/iid -0.12, viio/via -0.51, viio/vib 0.03, viio/vic -0.14, viiø7/vib -0.04, viio7/via -0.02, viio7/vib -0.27, viio7/vic -0.29, viio7/vid -0.04, viio/iiia -0.07, viio/iiic -0.04, viio7/iiia 0.02, viio7/iiib -0.04, viio7/iiic -0.1, IVa 0.03, IVb 0.29, IVc -0.27, IVmaj7a -0.06, IVmaj7b 0.17, IVmaj7c -0.52, IVmaj7d -0.17, IV7a -0.11, IV7b -0.07, IV7c -0.04, IV7d -0.25, iva -0.26, ivb -0.01, ivc -0.11, iv7a -0.11, iv7b -0.06, iv7c -0.04, iv7d -0.03, bVIIa -0.55, bVIIb -0.43, bVIIc -0.23, bVIImaj7a 0.22, bVIImaj7b -0.32, bVIImaj7c -0.22, bVIImaj7d -0.04, bVII7a -0.17, bIIIa -0.15, bIIIb -0.11, bIIIc -0.04, bVIa -0.21, bVIb -0.05, bVIc -0.03, bVImaj7a -0.05, bVImaj7b -0.13, bVImaj7d -0.04, Nb -0.05
minor: strangea -0.04, strangeb -0.04, ia 0.56, ib 0.25, ic 0.46, i7a -0.21, i7b -0.35, i7c -0.33, i7d -0.3, imaj7a -0.33, imaj7b -0.2, imaj7c -0.37, imaj7d -0.07, Ia -0.34, Ib 0.07, Ic 0.07, V7/iva -0.52, V7/ivb -0.03, V7/ivc 0.11, V7/ivd 0.01, va 0.04, vb 0.2, vc -0.68, v7a -0.39, v7b -0.34, v7c -0.29, v7d -0.01, Va 0.32, Vb 0.28, Vc -0.2, V7a 0.54, V7b 0.29, V7c 0.38, V7d 0.23, V+a -0.13, viio/VIa -0.26, viio/VIb -0.37, viio/VIc -0.04, viiø7/VIa -0.29, viiø7/VIb -0.04, viiø7/VIc -0.26, viiø7/VId -0.23, iioa -0.11, iiob 0.37, iioc -0.37, iiø7a 0.26, iiø7b 0.59, iiø7c -0.19, iiø7d 0.2, iia -0.26, iib 0.02, iic -0.23, ii7a -0.54, ii7b -0.7, ii7c -0.16, ii7d 0.07, V/Va -0.3, V/Vb 0.19, V7/Va -0.34, V7/Vb 0.17, V7/Vc 0.08, V7/Vd -0.51, Fr43a -0.14, Fr43b -0.16, Fr43c -0.12, vioa -0.09, viob -0.01, vioc -0.16, viø7a 0.26, viø7b 0.19, viø7c 0.34, viø7d -0.39, viio7/VIIa 0.06, viio7/VIIc -0.1, #via -0.35, #vib -0.29, #vic -0.06, viio/iva 0.06, viio/ivb -0.01, viio/ivc -0.03, viiø7/iva 0.04, viiø7/ivb -0.23, viiø7/ivc 0.31, viiø7/ivd -0.12, viio7/iva 0.17, viio7/ivb 0.28, viio7/ivc 0.35, viioa -0.12, viiob 0.51, viioc -0.07, viiø7a 0.29, viiø7b -0.21, viiø7c -0.08, viiø7d -0.06, viio7a 0.01, viio7b 0.83, viio7c 0.1, viio7d 0.12, viio/Va -0.38, viio/Vb -0.33, viio/Vc 0.24, viiø7/Vb -0.02, viiø7/Vc -0.04, viio7/Va 0.18, viio7/Vb 0.29, viio7/Vc 0.35, viio7/Vd -0.23, It6a -0.03, It6b -0.32, It6c -0.04, Ger65a -0.11, Ger65b -0.2, Ger65c -0.22, Ger65d -0.04, #ioa -0.03, #io7a -0.07, #io7b -0.04, #io7c -0.05, #io7d -0.06, iva -0.05, ivb 0.28, ivc -0.31, iv7a 0.32, iv7b 0.04, iv7c -0.4, iv7d -0.45, IVa -0.58, IVb 0.22, IVc -0.28, IV7a -0.46, IV7b 0.32, IV7c -0.47, IV7d 0.27, VIIa -0.45, VIIb -0.18, VIIc 0.09, VII7a -0.63, VII7b -0.08, VII7c -0.22, VII7d -0.2, viia -0.43, viib -0.33, IIIa -0.36, IIIb -0.46, IIIc -0.39, IIImaj7a -0.15, IIImaj7b -0.21, IIImaj7c -0.15, IIImaj7d -0.37, V7/VIa -0.11, V7/VIb -0.27, V7/VIc -0.04, V7/VId -0.21, III+a -0.36, III+b 0.26, III+maj7a -0.11, III+maj7b -0.19, III+maj7c -0.04, III+maj7d -0.2, VIa 0.02, VIb -0.28, VIc -0.3, VImaj7a 0.03, VImaj7b -0.47, VImaj7c -0.25, VImaj7d -0.25, VI7a 0.08, Na -0.32, Nb -0.04, Nc -0.14, bIImaj7a -0.08, bIImaj7b -0.33, bIImaj7c -0.1, bIImaj7d -0.03
# chord by place
major strange: weak -0.04, beat 0.4, strong -0.04
major I: weak -0.5, beat 0.4, strong 0.66
major Imaj7: weak -0.45, beat 0.18, strong 0.06
major V7/IV: weak 0.59, beat 0.12, strong -0.68
major i: weak -0.19, beat -0.67, strong -0.4
major I+: weak -0.1, beat -0.42, strong -0.46
major V: weak -0.33, beat 0.38, strong 0.54
major V7: weak 0.59, beat 0.34, strong 0.19
major v: weak -0.3, beat -0.45, strong -0.23
major v7: weak 0.25, beat -0.37, strong 0.03
major V+: weak -0.02, beat -0.2, strong -0.25
major vo: beat -0.05, strong -0.3
major vø7: weak -0.04, beat -0.19, strong -0.07
major ii: weak -0.55, beat 0.19, strong -0.09
major ii7: weak 0.13, beat 0.21, strong 0.58
major V/V: weak -0.51, beat -0.06, strong -0.55
major V7/V: weak 0.67, beat -0.58, strong 0.04
major iio: weak -0.25, beat -0.11, strong 0.07
major iiø7: weak -0.17, beat -0.08, strong -0.4
major Fr43: weak -0.01, beat -0.2, strong -0.04
major vi: weak -0.33, beat 0.04, strong 0.12
major vi7: weak -0.46, beat 0.4, strong -0.84
major V/ii: weak 0.09, beat -0.17, strong -0.56
major V7/ii: weak -0.18, beat -0.1, strong -0.14
major vio: weak -0.04, beat -0.21, strong -0.37
major viø7: weak -0.21, beat -0.26, strong -0.56
major iii: weak -0.2, beat -0.47, strong -0.26
major iii7: weak -0.61, beat 0.13, strong -0.42
major V/vi: weak -0.35, beat -0.22, strong -0.13
major V7/vi: weak 0.17, beat -0.17, strong -0.74
major viio/IV: weak -0.14, beat -0.21, strong -0.01
major viiø7/IV: weak 0.14, beat -0.4, strong -0.55
major viio7/IV: beat 0.35
major viio: weak 0.32, beat 0.04, strong 0.27
major viiø7: weak 0.32, beat -0.56, strong -0.01
major viio7: beat -0.02, strong -0.15
major V/iii: weak -0.02, beat -0.57, strong -0.15
major V7/iii: weak -0.07, beat -0.2, strong -0.09
major vii: weak -0.44, beat -0.52, strong -0.39
major viio/V: weak 0.43, beat -0.05, strong -0.34
major viiø7/V: weak 0.33, beat -0.07, strong -0.51
major viio7/V: weak -0.23, beat 0.21, strong 0.2
major It6: beat -0.06
major Ger65: beat -0.04, strong -0.04
major viio/ii: weak 0.1, beat -0.2, strong -0.42
major viiø7/ii: weak -0.34, beat -0.15, strong -0.17
major viio7/ii: weak 0.11, beat 0.14, strong -0.1
major viio/vi: weak 0.27, beat -0.56, strong -0.4
major viiø7/vi: weak -0.04
major viio7/vi: weak -0.3, beat -0.03, strong -0.22
major viio/iii: weak -0.08, strong -0.03
major viio7/iii: weak -0.04, beat 0.02, strong -0.1
major IV: weak -0.44, beat 0.28, strong 0.16
major IVmaj7: weak -0.39, beat -0.06, strong 0.19
major IV7: weak -0.11, beat -0.02, strong -0.32
major iv: weak -0.29, beat -0.29, strong 0.11
major iv7: weak -0.11, beat -0.1, strong -0.04
major bVII: weak -0.07, beat -0.58, strong -0.49
major bVIImaj7: weak -0.17, beat 0.18, strong -0.33
major bVII7: beat -0.16, strong -0.01
major bIII: weak -0.04, beat -0.22
major bVI: weak -0.08, beat -0.22
major bVImaj7: weak -0.03, beat -0.07, strong -0.13
major N: beat -0.04, strong -0.04
minor strange: beat -0.04, strong -0.04
minor i: weak -0.07, beat 0.53, strong 0.61
minor i7: weak -0.54, beat -0.16, strong -0.29
minor imaj7: weak -0.35, beat -0.24, strong -0.37
minor I: weak 0.03, beat -0.52, strong 0.03
minor V7/iv: weak -0.03, beat -0.16, strong -0.26
minor v: weak -0.44, beat 0.11, strong 0.12
minor v7: weak -0.27, beat -0.38, strong -0.14
minor V: weak -0.15, beat 0.26, strong 0.55
minor V7: weak 0.87, beat -0.12, strong 0.42
minor V+: beat -0.07, strong -0.07
minor viio/VI: weak -0.18, beat -0.32, strong -0.23
minor viiø7/VI: weak -0.2, beat -0.4, strong -0.15
minor iio: weak 0.09, beat -0.03, strong 0.21
minor iiø7: weak 0.43, beat 0.21, strong 0.14
minor ii: weak -0.36, beat 0.12, strong -0.18
minor ii7: weak -0.51, beat -0.32, strong -0.66
minor V/V: weak -0.35, beat 0.15, strong -0.05
minor V7/V: weak -0.53, beat 0.3, strong -0.25
minor Fr43: weak -0.15, beat -0.1, strong -0.14
minor vio: weak 0.09, beat -0.17, strong -0.16
minor viø7: weak 0.1, strong 0.43
minor viio7/VII: beat 0.05, strong -0.11
minor #vi: weak -0.3, beat -0.45, strong -0.08
minor viio/iv: weak -0.07, beat -0.03, strong 0.11
minor viiø7/iv: weak 0.37, beat -0.26, strong -0.13
minor viio7/iv: weak 0.09, beat 0.24, strong 0.39
minor viio: weak 0.13, beat 0.2, strong 0.14
minor viiø7: weak 0.1, beat 0.04, strong -0.1
minor viio7: weak 0.39, beat 0.15, strong 0.31
minor viio/V: weak 0.12, beat -0.45, strong -0.06
minor viiø7/V: strong -0.06
minor viio7/V: weak 0.55, beat 0.13, strong -0.19
minor It6: weak -0.17, beat -0.05, strong -0.18
minor Ger65: weak 0.24, beat -0.41, strong -0.37
minor #io: weak -0.03
minor #io7: beat -0.18, strong -0.03
minor iv: weak -0.65, beat 0.24, strong 0.22
minor iv7: weak 0.08, beat -0.06, strong 0.12
minor IV: weak -0.46, beat 0.04, strong -0.32
minor IV7: weak 0.07, beat -0.26, strong 0.24
minor VII: weak -0.41, strong -0.68
minor VII7: weak -0.26, beat -0.14, strong -0.6
minor vii: weak -0.2, beat -0.09, strong -0.4
minor III: weak -0.28, beat -0.57, strong -0.12
minor IIImaj7: weak -0.56, beat -0.16, strong -0.12
minor V7/VI: weak -0.33, beat -0.29, strong -0.01
minor III+: weak -0.02, beat -0.14, strong 0.17
minor III+maj7: weak 0.23, beat -0.42, strong -0.35
minor VI: weak -0.27, beat 0.14, strong -0.23
minor VImaj7: weak -0.1, beat -0.08, strong -0.33
minor VI7: weak -0.05, beat -0.07, strong 0.19
minor N: weak -0.14, beat -0.26, strong -0.05
minor bIImaj7: weak -0.09, beat -0.15, strong -0.3
# progression
major strange: I -0.25, V7/IV -0.04, V -0.04, V7 -0.04, v7 -0.04, V7/V -0.08, vi -0.01, V7/ii 0.44, viio -0.07, viio7 -0.04, viio/V -0.04, viiø7/V -0.04, IV -0.07, bVII -0.04
major I: strange -0.11, I -0.15, Imaj7 -0.4, V7/IV 0.86, i -0.1, I+ -0.2, V 0.71, V7 0.02, v -0.05, v7 -0.17, vo -0.05, ii 0.35, ii7 0.32, V/V -0.36, V7/V -0.06, iio -0.1, iiø7 -0.27, Fr43 -0.1, vi 0.39, vi7 0.06, V/ii 0.08, V7/ii -0.1, vio -0.04, viø7 -0.24, iii 0.08, iii7 0.04, V/vi 0.41, V7/vi -0.17, viio/IV -0.2, viiø7/IV 0.24, viio 0.35, viiø7 -0.22, V/iii -0.04, vii -0.3, viio/V 0.03, viiø7/V 0.43, viio7/V -0.02, viio/ii -0.04, viiø7/ii -0.06, viio7/ii -0.33, viio/vi -0.08, viio7/vi 0.03, IV 0.3, IVmaj7 0.2, IV7 -0.28, iv -0.26, bVII -0.12, bVIImaj7 -0.08, bIII -0.11, bVImaj7 -0.03, N -0.04
major Imaj7: I -0.44, Imaj7 0.33, V -0.48, V7 -0.14, ii -0.09, ii7 0.26, V/V -0.07, V7/V -0.3, vi 0.13, vi7 -0.06, V7/ii -0.04, V/vi -0.11, viio -0.11, viiø7 0.3, vii -0.04, viio/V 0.12, viiø7/V -0.14, IV -0.15, IVmaj7 -0.23
major V7/IV: I 0.25, V7/IV 0.25, V7 -0.04, v -0.11, v7 -0.04, ii 0.05, ii7 -0.02, V7/V -0.04, iio -0.04, iiø7 -0.04, vi -0.53, vi7 0.02, V/ii -0.19, V7/ii -0.03, viø7 -0.11, viio/IV -0.08, viio -0.03, viiø7 -0.19, viio/V 0.26, viio7/ii -0.08, IV 0.47, IV7 -0.04, iv -0.2, bVII -0.2, N -0.01
major i: I -0.18, i -0.13, V -0.58, V7 -0.1, v -0.04, ii -0.04, ii7 -0.03, V7/V -0.28, iio -0.08, iiø7 -0.22, viio -0.12, viio7 -0.12, viio7/V -0.11, IV -0.11, IV7 -0.04, iv -0.21, iv7 -0.11, bVI -0.12
major I+: I -0.16, Imaj7 -0.04, V -0.07, ii -0.07, ii7 -0.07, vi -0.21, V/vi -0.04, V7/vi -0.04, vii -0.04, viio/V -0.03, viiø7/V -0.04, viio/vi -0.07, IV -0.22, IVmaj7 -0.04
major V: strange 0.41, I -0.06, Imaj7 -0.21, V7/IV 0.28, i -0.27, I+ -0.1, V -0.39, V7 0.9, v -0.15, V+ -0.07, ii -0.22, ii7 -0.51, V/V 0.03, V7/V 0.01, vi 0.2, vi7 -0.28, V/ii -0.28, V7/ii -0.11, vio -0.14, viø7 -0.29, iii 0.3, iii7 -0.07, V/vi -0.13, V7/vi 0.08, viio/IV -0.04, viiø7/IV -0.08, viio 0.03, viiø7 -0.15, V7/iii -0.04, vii -0.07, viio/V -0.19, viiø7/V -0.08, Ger65 -0.04, viio/ii -0.04, viiø7/ii -0.29, viio7/ii 0.55, viio/vi -0.04, viio7/vi -0.22, viio7/iii -0.09, IV 0.48, IVmaj7 -0.37, iv -0.04, bVIImaj7 -0.08, bVII7 -0.16, bVI 0.04, bVImaj7 -0.09
major V7: I 0.88, Imaj7 0.67, V7/IV -0.39, i -0.13, I+ -0.08, V -0.21, V7 0.1, v -0.05, v7 -0.03, V+ -0.02, ii -0.46, ii7 -0.05, V/V -0.08, vi 0.84, vi7 0.25, V/ii -0.35, V7/ii -0.34, vio -0.23, viø7 -0.2, iii 0.05, iii7 -0.07, V/vi 0.16, V7/vi -0.39, viio/IV -0.13, viiø7/IV -0.14, viio -0.36, viiø7 -0.13, viiø7/V 0.18, viio7/V 0.44, viio/ii -0.36, viiø7/ii -0.04, viio7/ii 0.19, viio7/vi -0.04, IV -0.51, IVmaj7 -0.08, iv7 -0.02, bVI -0.04
major v: I -0.53, V7/IV -0.33, V -0.37, V7 -0.44, v -0.27, v7 0.3, ii -0.15, V/V -0.2, vi -0.36, vi7 -0.11, V/ii -0.05, V7/ii -0.04, viø7 -0.04, viiø7/IV -0.03, viio -0.04, viio/V -0.03, viio7/V -0.1, viio7/ii -0.26, IV 0.36, IVmaj7 -0.05, iv -0.02, bVII -0.09, bVIImaj7 0.43
major v7: I -0.49, V7/IV -0.12, V -0.16, V7 -0.12, v7 -0.03, ii -0.04, V/V -0.04, vi 0.34, V/ii -0.04, viiø7 0.4, viio7/ii -0.04, IV -0.04, bVII -0.04
major V+: I -0.16, V -0.03, vi -0.02, V/ii -0.04, iii -0.07, V/iii -0.04
major vo: V7/IV -0.28, V7/V -0.05, IV -0.04
major vø7: I -0.07, V7/IV -0.19, V -0.07, vi -0.04
major ii: I -0.54, Imaj7 -0.04, V7/IV -0.15, I+ -0.1, V 0.23, V7 0.24, v -0.26, v7 -0.22, V+ -0.02, vø7 -0.07, ii -0.26, ii7 -0.41, V/V 0.03, vi -0.2, vi7 -0.12, V/ii 0.01, V7/ii -0.25, vio -0.04, iii 0.07, iii7 -0.24, V/vi -0.29, V7/vi -0.27, viio/IV -0.15, viiø7/IV -0.49, viio 0.77, viiø7 0.07, viio7 -0.1, V/iii -0.03, vii -0.01, viio/V -0.04, viiø7/V -0.06, viio7/V 0.16, viio/ii -0.12, viiø7/ii -0.02, viio7/ii -0.18, viio/vi -0.08, viio7/vi -0.05, viio7/iii -0.04, IV -0.41, IVmaj7 -0.25, bVII -0.26, bVIImaj7 -0.07, bIII -0.04
major ii7: I 0.13, Imaj7 -0.1, V7/IV 0.08, V 0.66, V7 0.07, v -0.1, ii -0.67, ii7 1.2, V/V -0.14, V7/V 0.5, iio -0.16, vi -0.38, vi7 -0.04, viø7 -0.04, iii -0.16, iii7 -0.07, V/vi 0.09, V7/vi -0.06, viio/IV -0.13, viiø7/IV -0.04, viio 0.17, viiø7 0.03, viiø7/V -0.26, viio7/V -0.02, viiø7/ii -0.01, viio7/vi -0.01, viio7/iii 0.42, IV -0.39, IVmaj7 -0.09, bVII -0.06
major V/V: I -0.31, Imaj7 -0.11, V -0.42, V7 0.09, v -0.15, V+ -0.04, ii -0.28, ii7 -0.05, V/V -0.07, V7/V 0.21, vi -0.12, viø7 -0.04, iii -0.08, V7/vi -0.31, vii -0.29, viio/V -0.01, viiø7/ii -0.04, viio/vi -0.11, viio7/vi -0.01, IV -0.04
major V7/V: I 0.38, V 0.08, v -0.23, v7 -0.04, V+ -0.04, vø7 -0.19, ii7 -0.3, V/V -0.16, V7/V 0.12, Fr43 -0.01, vi -0.25, iii -0.08, iii7 0.32, V/vi 0.25, V7/vi 0.08, viio/IV -0.02, viiø7/IV -0.03, viio -0.08, viiø7 -0.04, vii -0.15, viio/V -0.2, viiø7/V -0.08, viio7/ii -0.01, viio/vi 0.12, viio7/vi -0.08, viio7/iii -0.02, IV -0.06
major iio: I -0.04, V -0.29, V7 0.12, ii -0.05, ii7 -0.04, iio -0.07, vi -0.07, iii -0.01, bIII -0.04
major iiø7: I -0.12, V -0.4, V7 -0.16, iio -0.05, V/vi -0.04, viio -0.17
major Fr43: V -0.15, ii7 -0.04, viio/vi -0.07
major vi: I 0.28, Imaj7 -0.22, V7/IV 0.06, I+ -0.05, V 0.24, V7 -0.18, v 0.15, V+ -0.11, ii 0.02, ii7 0.56, V/V 0.03, V7/V 0.12, iiø7 -0.08, Fr43 -0.11, vi 0.09, vi7 -0.58, V/ii -0.06, V7/ii 0.08, viø7 -0.07, iii 0.03, iii7 -0.33, V/vi -0.76, V7/vi -0.35, viio/IV 0.32, viiø7/IV -0.04, viio -0.02, viiø7 -0.39, V/iii -0.25, V7/iii -0.05, vii -0.23, viio/V 0.15, viiø7/V 0.17, viio7/V 0.26, It6 -0.02, viio/ii -0.2, viiø7/ii -0.1, viio7/ii -0.05, viio/vi -0.19, viio7/vi 0.15, viio/iii -0.04, viio7/iii -0.07, IV 0.32, IVmaj7 -0.18, bVII -0.21, bVIImaj7 -0.12
major vi7: I -0.58, Imaj7 -0.03, V7/IV -0.12, V -0.32, V7 -0.13, v7 -0.04, ii 0.07, ii7 0.27, V/V -0.38, V7/V 0.09, iiø7 -0.07, Fr43 -0.04, vi 0.2, vi7 0.15, iii -0.01, viio/IV -0.04, viio 0.05, viiø7 -0.19, vii -0.06, viio/V 0.4, viiø7/V 0.27, viio7/vi -0.04, viio7/iii -0.04, IV -0.11, IVmaj7 -0.04, iv -0.01, bVII -0.11, bVIImaj7 -0.04
major V/ii: V -0.03, ii -0.33, ii7 -0.1, V/V -0.13, V7/V -0.01, iio -0.03, vi -0.14, V/ii 0.16, V7/ii 0.21, iii -0.32, viio -0.1, viiø7 -0.08, V7/iii -0.01, viio/iii -0.03, IV -0.05, IVmaj7 -0.04
major V7/ii: V -0.1, V7 -0.22, v7 -0.03, ii -0.02, ii7 -0.29, V/V -0.19, V7/V -0.07, iio -0.03, iiø7 0.29, vi -0.09, V7/ii -0.11, iii7 -0.04, viio -0.3, viiø7 -0.04, V7/iii -0.07, vii -0.03, It6 -0.04, viio7/vi -0.07, viio7/iii -0.04, IV -0.09, IVmaj7 -0.04, iv -0.03, bVII 0.16, bVII7 -0.01
major vio: I -0.01, i -0.07, v -0.04, ii7 -0.04, V/V -0.04, V7/V -0.08, vi -0.04, viio -0.11
major viø7: I -0.08, V7/IV -0.08, i -0.04, V -0.26, V7 -0.15, ii -0.08, ii7 -0.07, V/V -0.07, V7/V -0.05, vio -0.04, viio -0.06, viiø7 -0.03, vii -0.04, viio/V -0.11, viio7/V -0.14, IV -0.1
major iii: I -0.14, Imaj7 -0.09, V7/IV -0.03, V -0.18, V7 0.04, ii -0.14, ii7 0.2, V/V 0.23, V7/V -0.11, vi -0.36, vi7 0.05, V/ii -0.03, viø7 -0.15, iii -0.43, iii7 -0.52, V/vi 0.24, viio/IV -0.04, viio 0.21, viiø7 -0.23, V/iii -0.04, V7/iii -0.11, vii -0.1, viio/V -0.25, viiø7/V -0.12, viio/ii 0.53, viiø7/ii -0.04, viio7/iii -0.04, IV -0.15, IVmaj7 0.26, bVIImaj7 -0.04
major iii7: I -0.29, V -0.17, V7 -0.21, ii -0.11, ii7 -0.07, V/V -0.04, V7/V -0.07, vi -0.14, vi7 0.01, V/ii -0.01, viø7 -0.04, V/vi -0.1, viio -0.13, viio/V 0.24, viiø7/V -0.03, viio/ii -0.04, IV -0.15, IVmaj7 -0.22
major V/vi: I -0.13, vi -0.14, V/ii -0.07, vio -0.07, iii -0.09, V/vi 0.01, V7/vi 0.63, viio/V -0.04, viiø7/V -0.25, IV -0.62, IVmaj7 0.07
major V7/vi: I -0.13, I+ -0.04, ii -0.12, V7/V -0.02, vi 0.23, vi7 -0.08, V/ii -0.03, vio -0.02, V7/vi -0.13, viio -0.04, viio/V -0.07, IV -0.32, IVmaj7 -0.05
major viio/IV: I -0.11, V7/IV -0.31, V7 -0.06, ii -0.12, vi -0.25, vi7 -0.14, V/ii -0.04, V7/ii -0.06, viio/IV -0.04, IV 0.13, IVmaj7 0.2, iv 0.26
major viiø7/IV: I -0.12, V7/IV -0.04, V -0.18, V7 -0.09, ii -0.15, V/V -0.04, vi -0.24, vi7 -0.23, V/ii -0.05, V/vi -0.04, viiø7/IV -0.04, viiø7 -0.04, viio/ii -0.04, IV 0.14, IVmaj7 -0.11, bVII -0.03
major viio7/IV: iv 0.29
major viio: I 0.79, Imaj7 0.26, V7/IV 0.26, i -0.3, I+ -0.34, V -0.47, V7 0.34, ii -0.04, ii7 -0.23, V/V -0.04, vi 0.29, vi7 -0.04, V/ii -0.15, V7/ii -0.14, iii 0.14, iii7 -0.09, V/vi -0.14, V7/vi -0.24, viio/IV -0.06, viiø7/IV -0.09, viio -0.12, viiø7 0.04, viio/ii -0.19, viio7/ii -0.01, viio/vi -0.04, viio7/vi -0.14, viio7/iii -0.27, IV 0.5, IVmaj7 -0.11, iv7 -0.04
major viiø7: I 0.49, V7/IV -0.04, I+ -0.12, V -0.11, V7 -0.45, ii -0.1, vi -0.39, V7/ii -0.15, iii -0.17, iii7 -0.14, V/vi -0.21, V7/vi -0.04, viio/IV -0.06, viiø7 -0.11, viio/V -0.03, viiø7/V -0.23, viio/ii -0.08, viio/vi -0.05, IV -0.27, IVmaj7 -0.11
major viio7: I 0.07, i -0.08, V -0.13, viio -0.07, bVImaj7 -0.04
major V/iii: I -0.19, Imaj7 -0.21, I+ -0.03, V7 -0.04, V+ -0.04, V/ii -0.23, iii -0.22, V7/iii -0.02, vii -0.04, viiø7/ii -0.02
major V7/iii: I -0.14, iii -0.2, V7/vi -0.01
major vii: I -0.65, Imaj7 -0.18, V -0.26, V7 0.42, V/V -0.11, V7/V -0.1, vi -0.15, iii -0.05, V/vi -0.04, V7/vi -0.1, viio -0.01, V/iii -0.04, V7/iii -0.03, viiø7/vi -0.04, viio7/vi -0.04, IV -0.14
major viio/V: I -0.38, V 0.36, V7 -0.03, v -0.09, V+ -0.14, ii7 -0.03, V/V -0.1, V7/V -0.28, vi -0.09, iii -0.08, V/vi -0.07, viiø7 -0.01, V/iii -0.04, vii -0.04, viio/V 0.08, viiø7/V -0.02, viio/vi -0.11, viio/iii -0.04
major viiø7/V: I 0.13, Imaj7 -0.04, V 0.47, V7 -0.19, v -0.03, ii7 -0.08, V/V -0.11, V7/V -0.2, vi -0.1, iii -0.07, V/vi -0.08, V7/vi -0.16, viio -0.1, viiø7 -0.12, V7/iii -0.04, vii -0.04, viiø7/V -0.06, viio/vi -0.14, viio7/vi -0.03
major viio7/V: I -0.02, V 0.2, V7 -0.2, v -0.1, V/V -0.02, V7/V 0.12, vi -0.04
major It6: V -0.04, V/iii -0.02
major Ger65: vo -0.04
major viio/ii: V -0.04, V7 -0.15, ii 0.05, ii7 -0.02, iio -0.03, vi -0.11, vi7 -0.09, V/ii -0.04, viio -0.03, vii -0.04, viio/ii -0.14, IV -0.08, bVIImaj7 -0.04
major viiø7/ii: I -0.01, V -0.02, V7 -0.03, ii -0.28, V7/ii -0.03, iii -0.03, IV -0.19
major viio7/ii: V7/IV -0.04, v -0.07, ii 0.3, ii7 -0.04, V7/V -0.04, vi -0.04, vi7 -0.08, V/ii 0.22, V7/ii -0.2, viio -0.04, IV -0.06, iv -0.03
major viio/vi: ii -0.12, V/V -0.04, V7/V -0.04, vi -0.05, vi7 -0.03, V/ii -0.04, vio -0.07, V/vi -0.03, viio/V -0.04, viio/vi -0.04, viio7/vi -0.08, IV -0.11
major viiø7/vi: vi -0.04
major viio7/vi: I -0.11, ii -0.02, vi 0.17, V/ii -0.04, iii7 -0.07, V/vi -0.18, V7/vi -0.11, vii -0.03, viio7/vi -0.04, viio7/iii -0.04, IV -0.05, IVmaj7 -0.04
major viio/iii: Imaj7 -0.04, V/vi -0.04
major viio7/iii: V -0.03, iii 0.04, V/vi -0.06
major IV: I 0.38, Imaj7 -0.22, V7/IV -0.3, i -0.1, I+ -0.06, V 0.16, V7 0.19, v -0.34, v7 0.05, vø7 -0.04, ii 0.18, ii7 0.03, V/V -0.18, V7/V 0.03, iiø7 -0.13, vi -0.11, vi7 -0.13, V/ii -0.03, V7/ii 0.05, vio -0.01, iii -0.08, iii7 -0.08, V/vi 0.04, V7/vi -0.05, viio/IV 0.22, viiø7/IV -0.1, viio 0.12, viiø7 0.34, viio7 -0.08, vii -0.12, viio/V -0.02, viiø7/V -0.17, viio7/V 0.2, viio/ii 0.16, viiø7/ii -0.04, viio7/ii 0.31, viio/vi -0.04, viio7/vi -0.12, IV -0.16, IVmaj7 0.07, IV7 -0.08, iv 0.08, iv7 -0.07, bVII -0.37, bVIImaj7 -0.22, bVI -0.15
major IVmaj7: I -0.66, V7/IV -0.03, V 0.07, V7 0.29, v -0.08, ii 0.32, ii7 -0.42, V/V 0.25, V7/V -0.2, vi -0.21, iii -0.15, V/vi -0.13, V7/vi -0.05, viio 0.05, viiø7 -0.26, viio/V -0.04, viiø7/V -0.19, viio/ii -0.07, IV -0.26, IVmaj7 -0.22, bVII -0.03, bVIImaj7 -0.08
major IV7: I -0.04, i -0.15, V -0.04, V7 -0.08, v -0.04, V7/V -0.08, vio -0.04, viio -0.11, iv -0.04, bVImaj7 -0.03
major iv: I 0.03, i -0.17, V 0.04, V7 -0.25, ii7 -0.27, iiø7 -0.15, V7/ii 0.21, viio7/IV -0.05, viio -0.01, viio7/V -0.04, iv -0.16, bVI -0.03
major iv7: I -0.07, i -0.08, V -0.15, V7 -0.02
major bVII: I -0.46, V7/IV -0.35, V 0.44, V7 -0.2, v -0.08, ii 0.32, ii7 -0.03, V/V -0.14, vi -0.06, viio/IV -0.17, viiø7/IV -0.13, viio7/IV -0.04, viio -0.1, viiø7 -0.04, viio7 0.17, IV -0.4, bVIImaj7 -0.09
major bVIImaj7: I -0.19, Imaj7 -0.03, V7/IV -0.03, V -0.22, V7 -0.08, ii -0.07, V/V -0.04, vi -0.14, iii7 -0.01, V/vi -0.04, viiø7 0.4, viio7/V -0.04, IV -0.04
major bVII7: I -0.05, V -0.07, V7 -0.01, V7/ii -0.16
major bIII: V -0.07, V7 -0.03, v -0.07, iiø7 -0.04, viø7 -0.08, viio7/IV 0.41, IV -0.04, iv -0.04, bVImaj7 -0.04
major bVI: i -0.08, V7 -0.04, iio -0.02, iiø7 -0.15, viio -0.03, iv -0.07, bIII -0.04, bVI -0.04
major bVImaj7: i -0.04, V -0.07, V7 -0.02, ii -0.04, V7/V -0.03, iv -0.04
major N: viio/IV -0.04, viio7/V -0.04, iv -0.01
minor strange: i -0.05, i7 -0.04, I -0.04, v -0.11, v7 -0.04, V -0.2, V7 -0.21, ii -0.04, vio -0.04, viø7 -0.07, viio/iv -0.04, viiø7/iv -0.04, viio7/iv -0.04, viio -0.12, viiø7 -0.05, viio7 -0.04, viio7/V 0.43, Ger65 -0.04, IV -0.08, IV7 -0.03, vii -0.04, III -0.02
minor i: strange -0.04, i -0.05, i7 -0.38, imaj7 -0.36, I -0.01, V7/iv -0.03, v 0.62, v7 -0.3, V 0.62, V7 0.13, V+ -0.01, viio/VI -0.11, viiø7/VI -0.1, iio 0.2, iiø7 0.38, ii 0.1, ii7 -0.39, V/V 0.15, V7/V 0.21, Fr43 -0.14, vio 0.41, viø7 0.15, viio7/VII -0.1, viio/iv -0.01, viio7/iv 0.25, viio 0.56, viio7 0.1, viio/V 0.23, viio7/V 0.23, It6 -0.07, Ger65 0.05, #io7 -0.03, iv 0.27, iv7 0.27, IV 0.27, IV7 -0.15, VII 0.31, VII7 0.19, vii -0.22, III 0.12, IIImaj7 -0.1, V7/VI -0.06, III+ -0.16, III+maj7 -0.34, VI 0.19, VImaj7 0.2, VI7 0.19, N 0.08, bIImaj7 -0.11
minor i7: i -0.28, v7 -0.04, V -0.1, V7 -0.27, viio/VI -0.04, viiø7/VI -0.04, iio -0.01, iiø7 -0.29, ii7 -0.04, V/V -0.07, viø7 -0.04, #vi -0.01, viio7/iv -0.03, viio -0.01, viio7 -0.12, viio7/V -0.06, Ger65 -0.06, iv -0.22, iv7 -0.11, IV -0.08, IV7 0.25, VII -0.12, VII7 -0.01, III -0.11, VI 0.32, VImaj7 -0.05
minor imaj7: i -0.19, V -0.17, V7 -0.22, iiø7 -0.08, viio -0.03, viio7 -0.01, iv -0.19, iv7 -0.03, IV -0.04, IV7 -0.04, VI -0.06
minor I: i -0.07, i7 0.43, I -0.04, V7/iv 0.54, v -0.34, V -0.18, V7 -0.07, iio -0.19, iiø7 -0.29, ii -0.22, ii7 -0.13, V/V -0.08, V7/V -0.22, vio -0.04, viø7 -0.03, #vi -0.34, viio/iv -0.03, viio 0.05, viiø7 -0.07, viio7 -0.06, viio/V -0.17, viio7/V -0.05, iv -0.32, iv7 -0.04, IV -0.41, IV7 0.07, VII -0.04, III -0.04, V7/VI -0.11, III+maj7 -0.05, VI -0.02, VImaj7 -0.06, N -0.08
minor V7/iv: i -0.04, I -0.18, V7/iv 0.02, v -0.04, V -0.06, V7 -0.08, iio -0.1, iiø7 -0.44, ii 0.11, V/V 0.04, V7/V -0.04, #vi -0.04, viiø7 -0.15, viio7 -0.04, viio/V -0.13, viio7/V -0.04, It6 -0.05, iv 0.32, iv7 -0.15, IV 0.1, IV7 -0.04, VII -0.04, VII7 -0.03, VI -0.04, VImaj7 -0.04, N -0.07
minor v: i -0.28, i7 -0.17, imaj7 -0.01, I -0.41, V7/iv -0.12, v -0.37, v7 0.02, V -0.12, V7 -0.1, viiø7/VI -0.04, iio 0.17, iiø7 -0.18, ii -0.14, ii7 -0.04, V/V -0.09, V7/V -0.28, vio 0.12, viø7 -0.33, #vi -0.12, viio/iv 0.24, viiø7/iv 0.06, viio 0.51, viiø7 -0.09, viio7 -0.12, viio/V -0.04, viio7/V 0.09, Ger65 -0.04, iv 0.24, iv7 0.2, IV 0.2, IV7 -0.22, VII -0.43, VII7 -0.14, III 0.2, IIImaj7 -0.06, V7/VI -0.24, III+maj7 0.22, VI 0.17, VImaj7 0.06
minor v7: i 0.1, i7 -0.09, I -0.06, V7/iv -0.14, v -0.04, v7 -0.04, V -0.14, V7 -0.01, iio -0.04, ii -0.02, vio -0.04, #vi -0.14, viio7/iv -0.04, viio7 -0.05, iv -0.18, iv7 -0.08, IV -0.2, VII -0.09, vii -0.04, III -0.05, VI -0.04, VImaj7 -0.06
minor V: i 0.08, i7 -0.07, imaj7 -0.07, I -0.04, V7/iv -0.14, v -0.38, V -0.54, V7 0.95, V+ -0.06, viio/VI -0.04, iio -0.11, iiø7 0.13, ii -0.11, ii7 -0.01, V/V -0.06, V7/V -0.09, vio -0.07, viø7 0.05, #vi 0.23, viiø7/iv -0.04, viio -0.18, viio7 0.46, viio/V -0.06, viiø7/V -0.02, viio7/V -0.03, It6 -0.02, iv 0.35, iv7 -0.12, IV 0.08, IV7 -0.14, VII7 -0.04, III -0.06, IIImaj7 -0.14, III+ -0.22, III+maj7 0.15, VI -0.11, VImaj7 -0.47
minor V7: strange -0.04, i 0.8, imaj7 -0.23, I 0.25, V7/iv -0.19, v -0.08, v7 -0.1, V7 0.25, iio -0.01, iiø7 -0.04, ii -0.16, ii7 -0.04, V/V -0.05, vio 0.26, viø7 0.27, #vi -0.27, viio/iv 0.23, viio -0.38, viiø7/V -0.04, viio7/V -0.2, #io -0.03, #io7 -0.06, iv -0.19, iv7 0.09, IV -0.11, IV7 0.09, III -0.14, III+ -0.01, III+maj7 -0.11, VI 0.59, VImaj7 0.16
minor V+: V -0.03
minor viio/VI: i -0.28, I -0.07, V7/iv -0.03, v -0.04, viio/VI -0.03, V/V -0.04, viio/iv -0.04, viio7 -0.25, Ger65 -0.04, iv -0.18, VII7 -0.05, VI -0.2, VImaj7 -0.16
minor viiø7/VI: i -0.26, i7 -0.04, I -0.08, V7/iv -0.18, v -0.02, #vi -0.04, viio7/iv -0.04, viio7/V -0.04, iv -0.01, iv7 -0.02, IV -0.15, vii -0.04, V7/VI -0.04, VI -0.16
minor iio: i 0.41, imaj7 -0.11, I -0.21, v 0.15, v7 -0.07, V 0.06, V7 -0.2, iio -0.2, iiø7 0.17, ii -0.04, V/V 0.41, V7/V -0.26, Fr43 -0.11, viø7 -0.06, viio -0.12, viio7 0.16, viio/V -0.04, viio7/V 0.54, Ger65 -0.08, iv -0.36, iv7 0.14, IV7 -0.13, VII -0.1, VII7 -0.15, III -0.07, IIImaj7 -0.24, V7/VI 0.43, III+ -0.34, III+maj7 -0.08, VI -0.14
minor iiø7: i -0.19, imaj7 -0.04, I -0.16, V7/iv -0.15, v -0.14, v7 -0.05, V 0.81, V7 0.78, viio/VI -0.04, iio -0.06, iiø7 1.22, ii -0.52, ii7 -0.04, V7/V -0.14, Fr43 -0.04, viø7 -0.04, viio7/VII -0.04, viio/iv -0.13, viio -0.41, viiø7 -0.04, viio7 0.22, viio7/V -0.36, It6 -0.11, iv -0.61, iv7 0.04, IV -0.07, IV7 -0.05, VII -0.37, VII7 -0.13, vii -0.04, III -0.17, IIImaj7 -0.06, III+ 0.16, III+maj7 -0.14, VI -0.19, VImaj7 -0.06, bIImaj7 -0.03
minor ii: i -0.49, I 0.28, v -0.17, v7 -0.04, V -0.69, V7 -0.19, iio -0.04, iiø7 0.06, ii 0.19, ii7 -0.14, V/V -0.05, V7/V -0.07, vio -0.25, viø7 0.36, viio7/VII -0.03, #vi -0.05, viio/iv -0.04, viiø7/iv -0.04, viio 0.36, viiø7 0.41, viio7 -0.33, viio/V -0.04, viio7/V -0.11, iv -0.07, IV 0.46, IV7 0.09, III -0.2, V7/VI -0.04, III+ -0.1, VI -0.11
minor ii7: i -0.1, I -0.14, V7/iv -0.04, v -0.02, v7 -0.04, V -0.37, V7 -0.38, viiø7/VI -0.04, iio -0.02, iiø7 -0.06, ii -0.11, ii7 -0.08, V/V -0.04, viio -0.15, viiø7 -0.04, viio7 -0.06, IV -0.03, III -0.22, III+ -0.09, III+maj7 -0.04
minor V/V: i 0.37, imaj7 -0.04, I -0.04, v 0.03, V -0.57, V7 -0.25, iiø7 -0.04, ii -0.07, V/V -0.19, V7/V 0.17, viø7 -0.02, III -0.05, III+ 0.19
minor V7/V: i -0.24, V7/iv -0.1, v -0.06, v7 -0.03, V -0.02, V7 -0.21, V+ -0.07, viiø7/VI -0.11, ii -0.04, V/V -0.19, V7/V -0.04, Fr43 -0.02, viio -0.04, viio/V -0.03, viio7/V -0.06, III -0.1, IIImaj7 -0.04, III+ 0.23, III+maj7 -0.04
minor Fr43: V7/iv -0.06, V -0.19, viø7 -0.04, VI -0.08
minor vio: i -0.44, i7 -0.08, v -0.17, v7 -0.04, V 0.08, V7 -0.23, iio -0.04, iiø7 0.1, ii -0.03, ii7 -0.2, V/V -0.1, V7/V -0.06, vio -0.14, viø7 0.42, viio7/VII -0.04, viio 0.06, viio7 0.19, viio/V -0.11, iv -0.14, IV -0.05, IV7 -0.04, VII 0.22, vii -0.11, III -0.3, III+maj7 -0.07
minor viø7: i -0.2, I -0.04, v -0.1, V7 0.37, iiø7 -0.1, ii 0.54, ii7 -0.05, V/V 0.01, V7/V 0.18, Fr43 -0.03, vio -0.04, viø7 -0.04, viio 0.49, viiø7 -0.04, viio7 -0.25, viio7/V -0.07, iv -0.06, iv7 -0.02, IV 0.12, IV7 0.2, VII -0.2, III+maj7 -0.05, VI -0.05
minor viio7/VII: IV -0.03, IV7 -0.04, VII 0.37
minor #vi: i -0.04, I -0.14, v -0.07, V -0.3, iiø7 -0.04, ii -0.14, ii7 -0.13, V/V -0.08, V7/V -0.14, viio -0.08, viiø7 -0.04, viio/V -0.01, viio7/V -0.03, IV 0.13, IV7 -0.04, VII -0.09
minor viio/iv: i -0.04, I -0.07, V7/iv -0.08, V -0.01, ii -0.02, #vi -0.07, viio/iv -0.07, viiø7/iv -0.04, viio7/iv 0.23, viio7 -0.07, iv 0.34, IV -0.34, VII -0.03, bIImaj7 -0.04
minor viiø7/iv: i -0.05, v -0.02, ii -0.04, V/V -0.04, viio/V -0.07, iv 0.36, IV 0.05, III -0.07
minor viio7/iv: I -0.04, V7/iv -0.18, v -0.02, viio/iv -0.02, viio7/iv 0.44, viio7 -0.05, iv 0.33, iv7 -0.13, IV 0.36, VImaj7 -0.03
minor viio: i 0.59, I -0.15, V 0.02, V7 -0.09, iio 0.45, iiø7 -0.12, ii -0.06, vio -0.19, viio -0.41, viiø7 -0.04, viio7 0.24, viio7/V -0.2, It6 -0.04, iv -0.23, IV -0.16, IV7 -0.06, III -0.04, III+maj7 -0.03, VI -0.17
minor viiø7: i -0.05, I 0.12, V -0.15, V7 -0.09, ii7 -0.04, viiø7 -0.02, IV -0.08
minor viio7: i 0.48, imaj7 -0.07, I 0.05, V7/iv 0.37, V 0.2, V7 -0.35, iio -0.09, iiø7 -0.18, ii -0.08, V/V -0.04, V7/V -0.12, viø7 -0.04, viio -0.2, viio7 0.42, viio7/V 0.19, iv -0.05, iv7 -0.14, III -0.12, IIImaj7 -0.03, III+ -0.16, III+maj7 -0.14, VI -0.22, VImaj7 -0.04
minor viio/V: v -0.36, V 0.06, viio/VI -0.07, V7/V -0.04, viio/V -0.04
minor viiø7/V: V -0.06, viio7/V -0.02
minor viio7/V: i 0.21, v 0.05, v7 -0.04, V 0.61, V7 -0.08, iiø7 -0.08, V/V -0.16, V7/V -0.42, viiø7/iv -0.04, viio -0.04, viio/V -0.07, viio7/V 0.3, #io7 -0.04, VII -0.08, vii -0.04
minor It6: I -0.04, v -0.07, V -0.14, V7 -0.05, iv -0.05, III+ -0.03
minor Ger65: i 0.16, i7 -0.08, V7/iv -0.03, v -0.05, V -0.15, V7 -0.06, iiø7 -0.17, iv -0.04, III -0.09, V7/VI -0.04, VI -0.06, N -0.02
minor #io: V/V -0.03
minor #io7: viø7 -0.05, iv -0.07, IV -0.07
minor iv: i 0.67, i7 -0.1, imaj7 -0.04, I -0.18, V7/iv 0.01, v -0.39, v7 0.02, V 0.58, V7 0.04, viio/VI -0.15, viiø7/VI -0.29, iio 0.15, iiø7 0.08, ii -0.13, ii7 -0.2, V/V 0.11, V7/V 0.27, viio/iv -0.36, viiø7/iv -0.04, viio7/iv 0.46, viio -0.01, viiø7 -0.12, viio7 -0.09, viio7/V 0.17, It6 -0.03, Ger65 -0.02, iv -0.05, iv7 0.03, IV 0.07, IV7 -0.06, VII -0.34, VII7 -0.38, vii -0.1, III -0.35, IIImaj7 -0.04, III+ 0.07, III+maj7 -0.08, VI -0.19, VImaj7 -0.04, N -0.07, bIImaj7 -0.12
minor iv7: i -0.57, i7 -0.04, I -0.07, V7/iv -0.03, v -0.38, v7 0.3, V 0.31, V7 0.16, viio/VI -0.04, viiø7/VI -0.04, iio 0.39, iiø7 -0.23, ii -0.06, ii7 -0.13, V/V -0.06, viø7 -0.02, viio7/iv -0.04, viio -0.41, viio7 0.24, viio7/V 0.01, iv -0.07, iv7 0.33, IV7 0.38, VII -0.18, VII7 -0.2, vii -0.01, III -0.24, IIImaj7 -0.07, V7/VI -0.03, III+ -0.1, VI -0.1, N -0.04, bIImaj7 -0.04
minor IV: i -0.13, i7 -0.01, I -0.62, V7/iv -0.24, v -0.29, v7 -0.07, V -0.65, V7 -0.04, viiø7/VI -0.04, iio -0.08, iiø7 -0.33, ii 0.48, ii7 -0.26, V/V 0.1, V7/V -0.01, vio -0.1, viø7 -0.13, #vi -0.09, viio/iv -0.15, viio 0.07, viiø7 0.13, viio7 0.36, viio7/V 0.08, #io7 -0.04, iv -0.36, IV -0.36, IV7 0.13, VII -0.34, vii -0.08, III -0.12, III+ 0.31, III+maj7 -0.04, VI 0.38, VI7 -0.07
minor IV7: i -0.2, V7/iv -0.04, v -0.01, v7 -0.13, V -0.33, V7 -0.01, viiø7/VI -0.04, iio -0.19, iiø7 -0.12, ii 0.02, V/V -0.02, V7/V -0.07, vio -0.07, viio7/iv -0.07, viio 0.2, viio7 0.23, iv 0.34, IV -0.07, IV7 0.3, VII 0.25, VII7 -0.07, vii -0.15, III -0.04, IIImaj7 -0.01, VI -0.03
minor VII: i -0.59, i7 -0.12, I -0.23, V7/iv -0.08, v 0.06, v7 -0.08, V 0.08, V7 -0.15, iio 0.34, iiø7 0.37, ii -0.2, ii7 -0.11, V/V -0.07, V7/V -0.11, vio -0.26, viø7 -0.14, #vi -0.04, viio/iv 0.14, viiø7/iv 0.32, viio7/iv -0.25, viio 0.26, viiø7 -0.06, viio7 0.31, viio/V -0.04, viio7/V -0.18, #io7 -0.01, iv 0.58, IV -0.27, IV7 -0.4, VII -0.21, VII7 0.13, vii -0.02, III 0.15, IIImaj7 0.04, V7/VI -0.12, III+ -0.18, III+maj7 -0.09, VI 0.24, VImaj7 -0.02
minor VII7: i -0.54, I -0.14, V7/iv -0.17, v -0.29, v7 -0.14, V 0.03, V7 -0.01, viio/VI -0.04, iio -0.11, viø7 -0.01, viio/iv -0.2, viio7 -0.27, Ger65 -0.04, iv -0.03, iv7 -0.01, IV7 -0.07, III 0.19, IIImaj7 -0.15, V7/VI -0.08, III+ 0.13, III+maj7 -0.17, VI -0.18, VImaj7 -0.03
minor vii: i -0.16, I -0.13, V7/iv -0.04, V -0.1, viio/VI -0.01, iiø7 -0.08, vio -0.04, viio7/VII -0.02, Ger65 -0.03, iv 0.16, IV -0.04, IV7 -0.07, VII7 -0.09, vii -0.02, III -0.13, VI -0.08
minor III: i -0.52, i7 -0.17, I 0.35, V7/iv 0.06, v 0.37, v7 -0.42, V 0.16, V7 0.18, viiø7/VI -0.07, iio -0.16, iiø7 -0.23, ii 0.23, ii7 -0.04, V/V -0.03, Fr43 -0.08, vio -0.09, viø7 0.07, viio/iv -0.09, viiø7/iv -0.09, viio7/iv 0.04, viio -0.13, viio7 0.23, It6 -0.04, Ger65 -0.16, iv -0.05, iv7 -0.65, IV 0.04, IV7 0.22, VII 0.03, VII7 -0.19, III -0.17, IIImaj7 -0.06, V7/VI -0.23, III+ 0.46, III+maj7 -0.08, VI -0.36, VImaj7 -0.25, bIImaj7 -0.08
minor IIImaj7: i -0.41, v -0.04, V -0.24, V7 0.36, iiø7 0.17, ii -0.04, vio -0.03, viø7 -0.11, viio -0.23, viio7 -0.14, viio7/V -0.07, Ger65 -0.03, iv -0.2, iv7 -0.12, IV 0.2, IV7 -0.08, VII -0.04, III+ -0.04, VI 0.02, VImaj7 0.32
minor V7/VI: i -0.22, i7 -0.01, I 0.3, viio/VI -0.04, iio -0.03, iiø7 -0.01, V7/V -0.11, viio7/iv -0.16, Ger65 -0.04, iv -0.3, iv7 -0.04, VI 0.01, VImaj7 -0.34
minor III+: i -0.05, V 0.04, iiø7 -0.19, viø7 0.24, viio -0.1, viiø7 -0.04, viio7 -0.04, viio7/V 0.02, iv -0.39, iv7 0.17, IV7 0.04, III+ -0.11, III+maj7 0.31, VI 0.29, VImaj7 -0.04
minor III+maj7: i -0.07, I -0.11, V -0.25, V7 -0.16, iiø7 -0.06, viø7 -0.02, viio -0.09, viio7 -0.05, viio7/V -0.01, It6 -0.04, iv 0.42, iv7 -0.06, IV -0.01, III -0.03, III+ -0.04, III+maj7 -0.02, VI -0.33, VImaj7 0.29
minor VI: i -0.3, i7 -0.04, imaj7 -0.04, I 0.28, V7/iv -0.08, v 0.44, v7 -0.07, V -0.01, V7 -0.05, viio/VI -0.13, viiø7/VI -0.04, iio 0.03, iiø7 0.2, V/V 0.31, V7/V -0.01, vio -0.04, viio7/VII -0.1, viio/iv 0.2, viiø7/iv -0.04, viio7/iv -0.07, viio 0.06, viio7 -0.17, viio7/V -0.01, Ger65 -0.04, #io7 -0.04, iv -0.25, iv7 0.25, IV -0.25, IV7 0.48, VII 0.09, VII7 -0.34, vii -0.01, III -0.36, IIImaj7 -0.13, V7/VI -0.16, III+ -0.04, III+maj7 -0.04, VI -0.39, VImaj7 -0.17, VI7 -0.05, N -0.24, bIImaj7 -0.17
minor VImaj7: i 0.18, v7 -0.02, V -0.41, V7 -0.04, iio 0.05, iiø7 0.07, ii -0.04, V7/V 0.2, viio7/iv -0.07, viio -0.04, viio7 -0.13, iv 0.21, iv7 -0.06, IV -0.06, IV7 -0.12, VII -0.14, VII7 -0.05, III -0.11, III+ -0.2, VI -0.11, VImaj7 -0.08, N -0.02
minor VI7: V7 -0.07, viio7/VII -0.16, iv 0.44, IV -0.04
minor N: I -0.04, V7/iv -0.01, V -0.22, viio/VI -0.09, viiø7/VI -0.04, iiø7 -0.04, viio7/iv -0.03, viio7 -0.04, viio7/V 0.04, iv -0.08, iv7 -0.05, IV7 -0.04, III -0.13, V7/VI -0.07, III+ -0.04, VI -0.17
minor bIImaj7: i -0.12, I -0.06, V7 -0.07, iv -0.07, iv7 -0.04, VII -0.04, vii -0.03, III+ -0.04, N -0.04
# progression with inversions
major strangea: Ia -0.21, V7/Va -0.08, via -0.01, viiob -0.03, viio7c -0.04, viiø7/Vc -0.04, IVb -0.04, bVIIc -0.04
major strangeb: Ic -0.04, V7/IVb -0.04, V7a -0.04, V7/iia 0.44, viioc -0.04, viio/Vb -0.04
major strangec: Ib -0.02, Vb -0.04
major stranged: v7d -0.04, IVa -0.03
major Ia: strangeb -0.04, Ia -1.73, Ib 0.87, Ic -0.21, Imaj7a -0.26, Imaj7b -0.04, Imaj7d -0.39, V7/IVa 0.6, V7/IVb -0.17, V7/IVc -0.09, V7/IVd 0.41, ia -0.04, ib -0.03, I+a -0.03, Va 0.42, Vb 0.33, Vc -0.18, V7a -0.21, V7b 0.07, V7c 0.31, V7d -0.34, va -0.1, vb -0.04, vc -0.03, iia 0.03, iib 0.58, iic -0.07, ii7a -0.23, ii7b 0.03, ii7c 0.07, ii7d 0.11, V/Va 0.2, V/Vb -0.08, V/Vc -0.11, V7/Va -0.02, V7/Vb 0.07, V7/Vc 0.2, V7/Vd -0.04, iioa -0.04, iiob -0.01, iiø7a -0.11, iiø7b -0.04, iiø7d -0.06, Fr43a -0.04, Fr43d -0.07, via 0.57, vib -0.22, vic -0.15, vi7a 0.02, vi7b -0.23, vi7d -0.04, V/iia -0.04, V/iib 0.14, V7/iia -0.04, V7/iib 0.02, vioa -0.04, viø7a -0.09, iiia 0.1, iiib 0.06, iiic -0.28, iii7a 0.4, iii7b -0.11, iii7c 0.18, iii7d -0.05, V/vib 0.36, V7/via -0.09, V7/vib -0.11, V7/vic 0.02, viio/IVa -0.04, viiø7/IVa 0.4, viiø7/IVc -0.08, viiø7/IVd -0.06, viioa -0.27, viiob 0.32, viioc 0.19, viiø7a 0.28, viiø7b -0.27, viiø7c -0.08, viiø7d -0.25, V/iiib -0.04, viib -0.25, viio/Va -0.01, viio/Vb 0.25, viio/Vc -0.21, viiø7/Vb -0.24, viiø7/Vc 0.3, viiø7/Vd -0.06, viio7/Va -0.09, viio7/Vc -0.08, viio/iia -0.04, viiø7/iib -0.03, viio7/iia -0.25, viio7/iic -0.03, viio/via -0.04, viio/vib 0.03, viio/vic -0.07, viio7/via 0.06, viio7/vic -0.01, IVa 0.34, IVb 0.27, IVc -0.49, IVmaj7a 0.24, IVmaj7b 0.31, IVmaj7c -0.34, IVmaj7d -0.25, IV7a -0.04, iva -0.1, ivc -0.04, bVIImaj7b -0.04, bVIImaj7c -0.04, Nb -0.04
major Ib: strangea -0.08, Ia 0.16, Ib -1, Ic 0.06, Imaj7b 0.13, Imaj7c -0.04, V7/IVa 0.1, V7/IVb 0.44, V7/IVc -0.07, V7/IVd -0.03, ia -0.03, I+a -0.07, I+b -0.11, Va 0.72, Vb -0.08, Vc -0.58, V7a -0.59, V7b 0.58, V7c 0.09, V7d 0.15, va 0.05, vb -0.01, v7a -0.07, voa -0.05, iia 0.11, iib -0.21, ii7a 0.08, ii7b 0.32, ii7c -0.04, ii7d -0.14, V/Va -0.38, V/Vb -0.33, V7/Va -0.28, V7/Vb -0.54, V7/Vd 0.26, iioa -0.06, iiø7a -0.08, iiø7b -0.02, via 0.24, vib 0.16, vic -0.42, vi7a 0.28, vi7b -0.12, vi7c -0.05, vi7d -0.04, V/iia -0.03, V/iic -0.04, V7/iib -0.05, V7/iic -0.07, V7/iid -0.11, viø7b -0.1, viø7d -0.08, iiia -0.21, iiib 0.21, iii7a -0.22, iii7b -0.07, iii7c -0.1, iii7d -0.2, V/via 0.25, V/vic -0.11, V7/via -0.11, V7/vib -0.04, viio/IVb -0.17, viiø7/IVa -0.08, viioa -0.2, viiob 0.36, viioc -0.07, viiø7b -0.07, viiø7c -0.07, viic -0.07, viio/Va -0.14, viio/Vb -0.04, viio/Vc -0.06, viiø7/Va 0.2, viiø7/Vb -0.09, viiø7/Vc -0.07, viiø7/Vd -0.15, viio7/Va -0.04, viiø7/iib -0.03, viio7/iia -0.06, viio7/iic -0.04, viio7/via -0.04, IVa 0.02, IVb 0.36, IVc -0.12, IVmaj7b -0.19, IVmaj7c -0.11, IVmaj7d 0.37, IV7d -0.25, iva -0.15, bVIIb -0.12, bIIIa -0.11, bVImaj7b -0.03
major Ic: Ia 0.24, Ib 0.04, Imaj7a -0.04, Va 0.13, Vb -0.08, V7a 0.22, V7b -0.13, V7d -0.44, v7a -0.11, iib 0.17, iic -0.08, ii7a -0.09, ii7b 0.44, ii7c -0.03, V/Va -0.04, V/Vb -0.16, V7/Vb 0.45, V7/Vc -0.07, via -0.25, vib -0.04, vi7d -0.11, viiob -0.26, viio/Va -0.04, viio/Vb -0.22, viiø7/Va 0.47, viio7/Va 0.17, viio/vib -0.05, IVa 0.04, IVb -0.61, IVmaj7a -0.21, IVmaj7b 0.33
major Imaj7a: Ia -0.14, Ib -0.12, Va -0.04, Vb -0.32, Vc -0.03, V7b -0.04, iia -0.28, iib 0.33, ii7a -0.1, ii7d 0.45, V/Va -0.02, V/Vc -0.04, V7/Va -0.06, V7/Vd -0.1, via -0.09, vib 0.3, vic -0.21, V7/iib -0.04, V/via -0.07, V/vib -0.04, V/vic -0.01, viioa -0.04, viiob -0.04, viiø7a -0.08, viiø7b -0.04, viia -0.04, viio/Vb -0.04, IVa 0.14, IVb -0.14, IVmaj7a -0.04, IVmaj7d -0.04
major Imaj7b: Ia -0.01, Ib -0.03, Imaj7a 0.39, Va -0.04, Vb -0.07, V7c -0.11, iib -0.03, ii7a -0.04, ii7b -0.07, V/Va -0.01, V7/Vb -0.11, V7/Vd -0.05, via 0.28, vib -0.04, vi7a -0.06, viiø7a -0.04, viio/Vb -0.07, viiø7/Va -0.14, IVa -0.41, IVmaj7d -0.04
major Imaj7c: Ia -0.24, Va -0.03, Vb -0.03, iib -0.04, V7/Vb -0.03, via -0.08, IVa 0.29, IVb -0.05
major Imaj7d: Imaj7a -0.04, Vb -0.04, iia -0.04, iic -0.04, via -0.11, viioa -0.04, viiø7d 0.42, viio/Vb 0.18, IVb -0.15, IVmaj7b -0.14
major V7/IVa: Ia -0.11, V7/IVa -0.1, V7/IVb 0.17, V7/IVc -0.07, V7/IVd -0.04, V7c -0.04, v7d -0.04, iia 0.17, iib -0.13, ii7a -0.08, ii7b 0.15, iiob -0.04, iiø7b -0.04, V/iib -0.18, viiob -0.03, viiø7a -0.18, viiø7c -0.01, viio/Vb -0.04, viio7/iia -0.08, IVa 0.44, IVb -0.06, IVmaj7a -0.3, iva -0.11, bVIIa -0.03, bVIIc -0.17, Nb -0.01
major V7/IVb: va -0.04, vc -0.04, iib -0.04, ii7a -0.04, ii7b -0.11, via -0.08, vi7a 0.25, vi7d -0.04, viø7a -0.07, IVa 0.26, IVb -0.26, IVmaj7a -0.1, iva -0.04
major V7/IVc: Ia -0.04, Ib -0.04, V7/IVa -0.07, V/iia -0.02, V7/iid -0.03, viø7a -0.04, viio/IVb -0.04, IVa 0.21, IVb 0.16, IVmaj7b -0.2, ivb -0.08
major V7/IVd: Ic 0.37, V7/IVc 0.36, va -0.04, ii7c -0.04, V7/Vc -0.04, via -0.49, vi7a -0.17, vi7d -0.08, viio/IVb -0.05, viio/Vb 0.29, IVa -0.34, IVb 0.2, IVmaj7b 0.51, IV7b -0.04
major ia: Ia -0.11, Ic -0.04, ib -0.04, Va -0.27, Vb -0.19, V7a -0.04, iib -0.04, V7/Vb -0.25, iioc -0.04, iiø7b -0.13, viioa -0.03, viio7b -0.04, viio7/Va -0.07, viio7/Vc -0.04, IVa -0.1, IVb -0.01, IV7c -0.04, ivb -0.07, iv7a -0.04, bVIa -0.08, bVIb -0.04
major ib: ic -0.1, Va -0.14, Vb -0.03, V7a -0.04, va -0.04, ii7a -0.02, ii7b -0.01, iiø7b -0.04, viiob -0.08, viio7a -0.04, viio7b -0.04, iva -0.08, iv7a -0.07
major ic: Ia -0.04, Va -0.25, V7a -0.03, V7/Vb -0.04, iioc -0.04, iiø7b -0.04, iiø7c -0.03, ivb -0.08
major I+a: Ia -0.12, Ib -0.04, Va -0.07, via -0.12, V/vic -0.04, viio/Vb -0.03, viio/vib -0.04
major I+b: Imaj7a -0.04, iib -0.07, ii7a -0.07, via -0.11, V7/via -0.04, viia -0.04, viiø7/Va -0.04, viio/via -0.04, IVa -0.19, IVmaj7a -0.04
major I+c: IVb -0.04
major Va: strangeb -0.04, Ia 0.2, Ib -0.25, Ic -0.35, Imaj7a -0.19, Imaj7b 0.07, Imaj7c -0.13, V7/IVc -0.04, V7/IVd 0.04, ia -0.34, I+a -0.04, Va -1.57, Vb 0.33, Vc 0.52, V7a 0.82, V7b -0.54, V7c 0.12, V7d 0.85, va -0.12, V+a -0.04, iia 0.05, iib -0.35, ii7a -0.2, ii7b -0.28, ii7c -0.08, V/Va 0.02, V/Vb -0.33, V7/Va -0.1, V7/Vb 0.3, V7/Vc -0.2, via -0.51, vib -0.32, vic -0.01, vi7a -0.14, vi7b -0.14, vi7c -0.04, vi7d -0.24, V/iia -0.02, V/iib -0.08, V7/iid -0.12, vioa -0.08, viob -0.03, viø7a -0.19, viø7b -0.04, iiia -0.22, iiib -0.02, iii7a 0.16, iii7b -0.04, V/via -0.08, V/vib 0.01, V7/via 0.19, V7/vib -0.08, viio/IVa -0.04, viiø7/IVa -0.04, viiø7/IVb -0.04, viioa -0.03, viiob -0.16, viioc -0.08, viiø7a -0.07, viiø7c -0.06, viiø7d -0.04, V7/iiib -0.04, viia -0.07, viio/Va -0.08, viio/Vb -0.03, Ger65b -0.04, viio/iia -0.03, viio/iib 0.16, viio/iic -0.1, viiø7/iia -0.01, viiø7/iic -0.04, viio7/iia -0.14, viio7/iic 0.21, viio/vib -0.04, viio7/via -0.22, viio7/iiib -0.04, viio7/iiic -0.06, IVa -0.25, IVb 0.54, IVmaj7a -0.04, IVmaj7b -0.35, bVIImaj7b -0.03, bVIImaj7c -0.01, bVIa 0.04, bVImaj7a -0.05, bVImaj7b -0.04
major Vb: strangeb 0.44, Ia -0.07, Ib -0.01, Ic -0.14, Imaj7a -0.1, Imaj7c -0.11, Imaj7d 0.06, V7/IVa -0.14, V7/IVd 0.46, ia 0.04, ic -0.04, I+a -0.06, Va 0.51, Vb -0.64, Vc -0.14, V7a -0.4, V7b 0.27, V7c -0.09, va -0.04, V+a -0.03, iia -0.11, iib -0.04, iic -0.09, ii7c -0.04, ii7d -0.12, V/Va 0.4, V/Vc -0.08, V7/Va -0.1, V7/Vc -0.04, V7/Vd 0.16, via 0.83, vib -0.05, vi7a -0.19, vi7b 0.22, V/iib -0.2, V7/iia -0.08, V7/iib 0.06, vioa -0.04, viø7a -0.07, viø7b -0.04, iiia 0.14, iiib 0.73, iiic -0.1, iii7a -0.12, iii7c -0.16, V/vib -0.08, V/vic -0.04, V7/via -0.02, V7/vic -0.03, V7/vid -0.04, viioa -0.07, viiob 0.27, viio/Vb -0.15, viio/Vc -0.04, viiø7/Vb -0.01, viiø7/Vc -0.07, viio/iia -0.25, viiø7/iia -0.26, viio7/iia 0.56, viio7/iid -0.08, IVa -0.04, IVb 0.33, IVc -0.17, ivc -0.04, bVIImaj7b -0.03, bVII7a -0.16
major Vc: Ia -0.01, Ib -0.03, ia -0.04, Va -0.2, Vb -0.16, V7a -0.1, V7c -0.49, V7d 0.4, iib -0.04, V/Va -0.1, V7/Va -0.2, vib -0.16, vi7b -0.07, V7/iib -0.04, viiob -0.04
major V7a: Ia 0.56, Ib -0.15, Ic -0.74, Imaj7a 0.41, Imaj7c 0.23, V7/IVc -0.02, V7/IVd -0.35, ia 0.25, ic -0.04, I+a -0.04, Va -0.31, Vb -0.04, V7a -0.36, V7b -0.13, V7c -0.09, V7d -0.04, va -0.01, iia -0.21, via 0.49, vib 0.83, vi7a 0.4, V/iia -0.21, vioa -0.03, viob -0.08, viø7d -0.2, iiib -0.04, iii7b -0.07, V/vib -0.14, viio/IVb -0.06, viiø7c -0.07, viiø7/Va 0.27, viiø7/Vc -0.06, viio7/Va -0.25, viio7/Vb -0.04, viio/iia -0.11, viio/iib -0.28, viio7/iib -0.04, viio7/iic -0.04, viio7/via -0.04, IVa -0.14, IVb -0.12, IVmaj7a -0.12, IVmaj7b 0.22, IVmaj7c -0.09, iv7b -0.02, bVIa -0.04
major V7b: Ia 0.94, Ib -0.18, Ic 0.23, Imaj7a -0.2, Imaj7c -0.04, Imaj7d 0.28, V7/IVa -0.04, ia -0.3, Va -0.19, Vb 0.58, Vc -0.04, V7a 0.18, V7b -0.22, v7a -0.03, V+a -0.02, iia -0.04, via -0.12, vib -0.09, vi7a -0.14, vi7b -0.02, vi7c -0.04, V/iib -0.04, V7/iib -0.33, viob -0.04, iiib -0.28, V/vib -0.2, viiø7/Vc -0.03, viio/iia -0.13, IVb -0.39
major V7c: Ia 0.07, Ib -0.05, Ic -0.01, Imaj7a 0.31, Imaj7b 0.41, I+b -0.04, Va 0.36, Vb -0.07, V7a 0.32, V7b -0.19, V7d -0.1, iia -0.07, iib -0.08, ii7d -0.02, via -0.05, vib 0.12, vic -0.14, V/iia -0.14, iiia -0.04, V/vib 0.39, viiob -0.31, IVa -0.04, IVb 0.27, IVc -0.14, IVmaj7a -0.08, IVmaj7c -0.04
major V7d: Ia -0.43, Ib 0.84, Ic -0.19, Imaj7b -0.08, ib -0.11, Va -0.53, Vb -0.13, Vc -0.22, V7a -0.16, V7b -0.14, V7c 0.64, V7d -0.18, va -0.04, iia -0.19, ii7a -0.04, V/Va -0.04, V/Vb -0.04, via -0.25, vib -0.18, vic 0.35, vi7b -0.04, vi7c -0.01, V/iia -0.03, V7/iid -0.03, vioc -0.11, iiia 0.32, iiib -0.07, V/via 0.23, V7/via -0.38, V7/vid -0.01, viio/IVa -0.04, viio/IVb -0.04, viiø7/IVa -0.14, viiob -0.14, viiø7b -0.02, viiø7c -0.04, viio7/Va 0.61, viio/iib -0.02, viiø7/iib -0.04, viio7/iib 0.27, IVa -0.31, IVb -0.04, IVmaj7d -0.04
major va: Ia -0.25, Ib -0.26, Ic -0.08, V7/IVa -0.21, Va -0.19, Vc -0.04, V7d -0.18, vb -0.14, vc -0.04, v7a 0.36, v7d -0.02, iia -0.12, iib -0.04, V/Vb -0.1, via -0.33, vib -0.04, vi7a -0.11, V/iia -0.05, V7/iib -0.04, viiø7/IVb -0.03, viiob -0.04, viio/Vb -0.03, viio7/Va -0.04, IVa -0.09, IVb 0.37, IVmaj7a -0.03, IVmaj7b -0.02, ivb -0.02, bVIIa -0.08, bVIIb -0.02
major vb: Ia -0.04, Ic -0.01, V7/IVa -0.04, V7/IVd -0.13, Vb -0.21, V7b -0.33, va -0.07, vb -0.02, vc -0.04, v7a -0.04, v7b -0.04, via -0.04, viio7/Va -0.04, viio7/Vb -0.03, viio7/iia -0.23, IVa -0.07, IVb 0.17, bVIImaj7a 0.43
major vc: Ib -0.04, V/Va -0.11, viø7c -0.04, viio7/iib -0.04, IVa -0.03
major v7a: Ia -0.17, Ic -0.08, V7/IVa -0.04, V7/IVb -0.03, Va -0.07, V7a -0.08, V7b -0.04, via 0.36, vib -0.04, V/iia -0.04, viio7/iic -0.04, IVb -0.04, bVIIa -0.04
major v7b: Ia -0.29, V7/IVd -0.05, Vb -0.11, v7b -0.03, vib -0.04, viiø7a 0.4
major v7c: Ib -0.03, via -0.02
major v7d: Ib -0.06, iic -0.04, V/Vb -0.04
major V+a: Ia -0.09, Va -0.03, vib -0.02
major V+b: Ia -0.07, V/iib -0.04, iiib -0.04, V/iiia -0.04
major V+c: iiia -0.04
major voa: V7/Va -0.05, IVa -0.04
major vob: V7/IVa -0.28
major vø7a: Ia -0.07, via -0.04
major vø7b: Vb -0.07
major vø7c: V7/IVa -0.19
major iia: Ia -0.78, Ib -0.18, Ic 0.13, Imaj7a -0.01, Imaj7d -0.04, V7/IVa -0.08, V7/IVb -0.08, I+b -0.07, Va -0.03, Vb 0.46, V7a 0.09, V7b -0.01, V7c 0.1, V7d 0.12, va -0.09, vb -0.07, v7a -0.03, v7c -0.05, vø7a -0.07, iia -0.45, iib -0.15, iic -0.09, ii7a -0.67, ii7b -0.21, ii7c -0.04, ii7d -0.55, V/Va -0.03, V7/Vd -0.36, via 0.02, vib -0.16, vic -0.08, vi7a -0.02, vi7c -0.04, V/iia 0.14, V/iib -0.04, V7/iia -0.06, vioa -0.04, iiia 0.43, iiib -0.08, iii7a -0.2, V/via -0.14, V/vib -0.23, V7/via -0.08, V7/vib -0.17, V7/vid -0.04, viio/IVa -0.04, viio/IVb -0.03, viiø7/IVa -0.23, viioa 0.05, viiob 0.78, viioc -0.07, viiø7a -0.05, viiø7b 0.1, viiø7c -0.03, viio7a -0.04, viio7b -0.06, V/iiib -0.03, viio7/iia -0.08, viio/via -0.04, viio/vib -0.04, viio7/via 0.13, viio7/vib -0.04, viio7/vic -0.11, viio7/iiic -0.04, IVa -0.03, IVb -0.32, IVc -0.14, IVmaj7d -0.07, bVIIa -0.14, bVIIb -0.08, bVIImaj7a -0.04, bVIImaj7b -0.03
major iib: Ia -0.26, Ib -0.04, Ic 0.1, I+b -0.03, Va -0.23, Vb -0.04, Vc 0.31, V7a -0.15, V7b -0.04, V7c -0.07, V7d 0.68, va -0.03, vb -0.04, v7a -0.15, V+a -0.02, iia 0.08, iib -0.14, ii7a 0.37, ii7b 0.52, V/Vb 0.05, V7/Vb 0.32, via -0.03, vib -0.07, vic -0.11, vi7c -0.06, V/iia -0.13, V/iib -0.04, V/iic -0.03, V7/iia -0.04, V7/iib -0.15, V7/iic -0.04, iiia 0.17, iiib -0.34, iii7a -0.12, V/via -0.43, V/vib -0.06, V7/via -0.04, viio/IVc -0.01, viiø7/IVa -0.3, viiø7/IVb -0.04, viiø7/IVc -0.03, viioa -0.03, viiob -0.03, viioc -0.02, viiø7a -0.04, viiø7b -0.25, viiø7c 0.24, viiø7d -0.08, viic -0.01, viio/Va -0.04, viiø7/Va -0.06, viio7/Va 0.16, viio/iib -0.12, viiø7/iib -0.02, viio7/iib -0.09, viio7/via -0.08, IVa -0.06, IVb -0.11, IVmaj7a -0.04, IVmaj7b -0.12, IVmaj7d -0.03, bVIIb -0.07, bIIIb -0.04
major iic: Ia -0.04, Ic -0.04, Va -0.13, Vb -0.17, V7a -0.04, V7b -0.15, va -0.07, via -0.04, iiib -0.14, V/vib 0.39, viio/IVb -0.08, viioa 0.3, viio7/iia -0.03, IVmaj7c -0.04
major ii7a: Ia -0.46, Ib -0.65, Ic 0.43, Imaj7a -0.1, V7/IVb 0.2, Va 0.75, Vb -0.16, V7a 0.73, V7b -0.16, V7c -0.42, V7d -0.13, va -0.03, iia -0.18, ii7a -0.04, ii7b -0.12, ii7c -0.08, ii7d -0.02, V/Va -0.04, V7/Vb -0.04, via -0.13, vib -0.06, vic -0.09, iiia -0.41, iiib -0.07, iii7a -0.07, V/via 0.2, V7/vic -0.02, viio/IVa -0.07, viioa -0.04, viiob 0.22, viioc -0.03, viiø7b 0.4, viiø7c -0.02, viiø7/iib -0.01, viio7/iiia 0.42, IVa -0.04, IVc -0.04, IVmaj7a -0.06, bVIIb -0.04
major ii7b: Ia -0.09, Ib -0.2, Ic 0.69, Va 0.32, Vb -0.04, V7a -0.28, V7b -0.08, V7c -0.21, V7d -0.27, va -0.04, iia -0.43, iib -0.17, ii7a 1.35, ii7b -0.23, ii7c -0.04, V/Va -0.04, V/Vb -0.07, V7/Va -0.02, V7/Vb 0.55, iioa -0.13, iiob -0.04, via -0.11, viø7c -0.04, iiia -0.07, iiib 0.33, V/via -0.06, V7/vib -0.04, viio/IVb -0.06, viiø7/IVd -0.04, viioa -0.04, viiob -0.35, viioc -0.1, viiø7b -0.23, viiø7c 0.06, viiø7/Va -0.26, viio7/Va -0.02, IVa -0.19, IVb -0.06, IVmaj7c -0.03, bVIIb -0.03
major ii7c: Ia -0.03, Ib -0.05, Ic 0.24, Va -0.11, Vb -0.27, V7b -0.11, ii7a -0.19, ii7b 0.31, iiia -0.09, V/vib -0.04, viiob -0.04, IVb -0.08
major ii7d: Ia -0.23, Ib -0.04, V7/IVd -0.19, Va -0.24, Vb 0.03, V7b 0.39, vb -0.04, iia -0.04, iib -0.11, ii7a -0.08, ii7c -0.04, via -0.06, vi7a -0.04, V/vib -0.08, viioa 0.34, viiø7a -0.26, viio7/vib -0.01, IVa -0.04, IVb -0.04
major V/Va: Ia -0.08, Ib -0.21, Imaj7b -0.11, Va -0.15, Vb -0.45, V7a -0.06, V7c -0.04, V7d 0.47, va -0.15, V+a -0.04, iia -0.15, iib -0.07, ii7a -0.05, V/Va -0.1, V/Vb -0.18, V7/Va 0.14, V7/Vb -0.1, V7/Vd 0.38, via -0.04, vib -0.09, iiia -0.04, iiib -0.04, viib -0.15, viiø7/iic -0.04, viio/via -0.04, viio/vic -0.03
major V/Vb: Ib -0.07, Va -0.14, Vc -0.03, V7a -0.15, V7d -0.33, iia -0.1, V/Va 0.05, V7/Va -0.11, V7/Vb -0.07, V7/vib -0.31, viia -0.07, viib -0.03, viic -0.07, viio/Vb -0.01, viio/via -0.04, viio7/via -0.01, IVa -0.04
major V/Vc: Va -0.08, Vb -0.03, V7/Vc -0.04, vib -0.01, viø7a -0.04
major V7/Va: Ia -0.04, Ib -0.08, Va -0.15, Vb -0.11, Vc -0.05, V7d -0.09, va -0.04, V+a -0.04, vø7c -0.19, ii7a -0.2, V/Va -0.08, V7/Va -0.04, V7/Vb -0.04, V7/Vd -0.04, iiia -0.15, iii7a 0.32, V/via -0.06, viio/IVb -0.02, viiø7b -0.04, viio7/iiia -0.02
major V7/Vb: Ic -0.02, Va 0.18, Vb -0.03, V7a 0.1, V7d -0.04, va -0.16, v7a -0.04, ii7a -0.13, V7/Va 0.3, V7/Vb -0.04, via -0.02, iiib 0.08, V/vib 0.35, V7/vib 0.08, viiø7/IVb -0.03, viioa -0.04, viiø7/Va -0.08, viio/via -0.34, viio7/via -0.04
major V7/Vc: Ib -0.04, Ic 0.53, Va 0.32, Vb -0.47, V7a -0.07, V/Va -0.08, V7/Va -0.06, via -0.1, iiib -0.11, viia -0.04, viio/Vb -0.13, IVb -0.06
major V7/Vd: Va 0.08, Vb 0.26, V7b -0.03, vb -0.04, V/Va -0.01, V7/Vc -0.06, V7/Vd -0.03, Fr43d -0.01, via -0.15, V/vib -0.09, viioa -0.04, viia -0.11, viio/Vb -0.08, viio7/iia -0.01, viio/vib 0.42, viio7/via -0.04, viio7/vib -0.01
major iioa: Ia -0.04, Va -0.13, V7a -0.07, V7b -0.04, iia -0.05, iioa -0.04, via -0.07, iiia -0.01
major iiob: Va -0.19, V7a 0.2, ii7a -0.04
major iioc: iiob -0.04, bIIIb -0.04
major iiø7a: Ib -0.03, Va -0.08, V7a -0.31, V7b -0.04, V7c -0.04, viioa -0.04, viiob -0.14
major iiø7b: Ia -0.07, Ic -0.02, Va -0.35, V7a -0.06
major iiø7c: Va -0.02, V7a 0.26, iiob -0.05
major iiø7d: V/vib -0.04
major Fr43a: Va -0.14, ii7a -0.04
major Fr43d: Vb -0.01, viio/vib -0.07
major via: Ia -0.58, Ib 0.85, Imaj7a -0.04, Imaj7b -0.11, Imaj7c -0.11, V7/IVa -0.07, V7/IVb 0.1, V7/IVc 0.15, I+a -0.04, Va -0.12, Vb 0.38, Vc -0.21, V7a -0.2, V7c -0.04, V7d 0.03, va -0.1, vb 0.24, V+b -0.08, iia 0.34, iib 0.15, iic -0.3, ii7a 0.11, ii7b 0.33, ii7c -0.26, ii7d -0.04, V/Va -0.42, V/Vb 0.39, V/Vc -0.01, V7/Va 0.08, V7/Vb 0.34, V7/Vc -0.03, V7/Vd -0.22, iiø7a -0.08, Fr43a -0.11, via -0.26, vib 0.1, vic 0.34, vi7a -0.32, vi7d -0.37, V/iia -0.03, V7/iia 0.4, V7/iid -0.26, viø7a -0.03, viø7d -0.04, iiia 0.35, iiib -0.17, iiic -0.03, iii7a -0.27, iii7c -0.06, V/via -0.44, V/vib -0.38, V7/via -0.06, V7/vic -0.11, viio/IVa 0.33, viio/IVb -0.01, viiø7/IVa -0.01, viioa -0.31, viiob 0.21, viioc 0.1, viiø7a -0.46, viiø7b -0.14, viiø7c -0.15, viiø7d -0.25, V/iiia -0.25, V7/iiic -0.04, V7/iiid -0.04, viia -0.01, viio/Va -0.18, viio/Vb 0.31, viiø7/Va 0.12, viiø7/Vb -0.24, viiø7/Vc -0.05, viio7/Va 0.26, It6a -0.02, viio/iib -0.2, viiø7/iib -0.1, viio7/iia -0.04, viio/vib -0.08, viio7/via -0.09, viio7/vib -0.04, viio7/vic -0.05, viio/iiic -0.04, viio7/iiia -0.07, IVa 0.38, IVb 0.15, IVmaj7a 0.15, IVmaj7b -0.07, bVIIa -0.04, bVIIb -0.01, bVIImaj7a -0.02, bVIImaj7b -0.03
major vib: Ia -0.36, Ib -0.31, V7/IVa -0.04, V7/IVb -0.04, V7/IVd -0.04, I+b -0.02, Va 0.13, Vb -0.05, V7a -0.04, V7c -0.05, V7d -0.07, vb -0.03, V+b -0.04, iia -0.39, iib -0.2, ii7a -0.14, ii7b 0.56, ii7d 0.38, V/Va -0.24, V7/Va -0.18, V7/Vb -0.07, V7/Vd -0.25, via 0.04, vib -0.08, vic -0.07, vi7a -0.1, V/iib -0.03, V7/iib -0.1, iiia -0.32, iii7a -0.02, V/via -0.23, V7/via -0.04, V7/vic -0.2, viiø7/IVc -0.03, viioa -0.13, viiob -0.17, viiø7a -0.07, viiø7b 0.39, viiø7d -0.01, viia -0.02, viib -0.2, viio/Vb -0.12, viio/Vc -0.11, viiø7/Vb -0.1, viiø7/Vc 0.37, viio7/iia -0.01, viio/vib -0.1, viio7/via 0.37, viio7/vib -0.09, IVa -0.23, IVb 0.32, IVc -0.07, IVmaj7a -0.04, IVmaj7b -0.28, bVIIa -0.14, bVIIb -0.05, bVIImaj7b -0.08
major vic: Ia -0.02, Ic -0.08, Va -0.1, Vc -0.03, iia -0.57, iib 0.35, ii7a -0.16, ii7b 0.08, via 0.06, viiob -0.02, viio/via -0.03, IVa -0.26
major vi7a: Ia -0.37, Ib -0.04, Ic -0.08, Imaj7c -0.03, V7/IVc -0.09, Va -0.13, Vb 0.08, Vc -0.02, V7a -0.33, V7b -0.16, V7c 0.41, v7a -0.04, iia -0.07, iib -0.04, iic 0.39, ii7a 0.46, ii7b -0.1, V/Vb -0.04, V7/Va -0.16, V7/Vb -0.07, V7/Vc 0.19, iiø7a -0.07, Fr43a -0.04, via -0.21, vib 0.45, vi7a -0.03, vi7d 0.35, viioa 0.18, viiob -0.16, viio/Vb 0.41, viiø7/Vb 0.31, viio7/iiia -0.04, IVa -0.15, IVb -0.31, iva -0.01, bVIIa -0.11, bVIImaj7a -0.04
major vi7b: Ia -0.26, Ib -0.03, V7/IVc -0.04, Va -0.07, Vb -0.07, V7b -0.04, iia 0.14, ii7a -0.07, V/Va -0.26, V7/Va -0.1, via -0.03, vi7b -0.05, viiob 0.28, viioc -0.04, viiø7b -0.02, viib -0.06, viio7/via -0.04, IVa -0.14, IVb -0.04, IVmaj7b -0.04
major vi7c: Va -0.04, Vb -0.04, iia -0.03, ii7a -0.03, vi7a -0.12, iiib -0.01, viio/IVa -0.04, viiob -0.09, viiø7d -0.04, viio/Vb -0.04
major vi7d: Ib -0.06, Ic -0.04, Va -0.3, V7a -0.01, V7d -0.02, iib -0.3, iic -0.04, ii7b -0.16, V/Vb -0.16, V7/Vb 0.13, vib -0.04, viiø7c -0.14, viiø7/Va -0.04, IVa 0.26
major V/iia: Vb -0.03, iia -0.05, V/Va -0.13, V7/Vb -0.01, iioa -0.03, via -0.07, V/iia -0.04, V/iib -0.06, V/iic -0.02, V7/iia -0.03, viiob -0.08, viiø7b -0.02, IVa -0.04, IVb -0.02, IVmaj7a -0.04
major V/iib: iia -0.3, iib -0.04, ii7a -0.1, via -0.08, V/iia 0.27, V/iib -0.03, V7/iib 0.22, iiia -0.32, viiø7a -0.06, V7/iiib -0.01, viio/iiia -0.03
major V/iic: viiob -0.03
major V7/iia: V7c -0.13, iia 0.26, iib -0.04, V7/Va -0.04, iioa -0.03, iiø7c 0.29, via -0.04, V7/iib -0.04, viiob -0.27, It6a -0.04, viio7/vic -0.03, ivb -0.03, bVIIa 0.21, bVIIb -0.04, bVII7a -0.01
major V7/iib: v7c -0.03, iia -0.01, iib -0.04, ii7a -0.21, V/Va -0.11, via -0.01, V7/iia -0.07, viiob -0.04, V7/iiib -0.07, viib -0.03, viio7/vic -0.04, viio7/iiia -0.04, IVmaj7a -0.04
major V7/iic: iia -0.07, iib -0.08, via -0.04
major V7/iid: Va -0.07, Vc -0.04, V7d -0.11, iib -0.12, ii7b -0.12, V/Vb -0.1, V7/Vb -0.04, iii7a -0.04, viiø7c -0.04, IVa -0.09
major vioa: Ia -0.01, ia -0.07, va -0.04, ii7a -0.04, via -0.04
major viob: V/Va -0.04, V7/Vb -0.08
major vioc: ia -0.01, viiob -0.11
major viø7a: Ic -0.04, V7/IVc -0.08, Va -0.12, Vb -0.04, V7b -0.15, ii7a -0.07, V/Va -0.04, V7/Vc -0.05, viioa -0.04, viiø7d -0.03, viib -0.04, viio/Vb -0.11, IVb -0.07
major viø7b: iib -0.04, V/Va -0.04, viioc -0.03, IVa -0.04
major viø7c: iia -0.04, vioc -0.04
major viø7d: Ia -0.04, ia -0.04, Va -0.14, V7a -0.01, viio7/Va -0.14
major iiia: Ia 0.08, Ib 0.02, Ic -0.07, Imaj7a -0.04, V7/IVa -0.03, Va -0.36, Vb 0.1, Vc -0.16, V7a -0.07, V7b 0.02, V7c 0.31, V7d -0.1, iia -0.36, iib -0.23, ii7a -0.07, ii7b -0.06, V/Va 0.32, V/Vb -0.12, V7/Va -0.04, V7/Vc -0.04, V7/Vd -0.03, via -0.23, vib -0.34, vi7a 0.29, vi7b -0.07, vi7c -0.16, V/iia -0.03, viø7a -0.15, iiia -0.21, iiib -0.25, iiic -0.04, iii7a -0.4, iii7d -0.07, V/via -0.04, viio/IVa -0.04, viioa -0.17, viiob 0.38, viioc -0.04, viiø7b -0.05, viiø7c -0.04, V/iiia -0.04, V7/iiia -0.08, viia -0.03, viio/Vb -0.2, viio/Vc -0.04, viiø7/Va -0.05, viiø7/Vb -0.04, viio/iib 0.53, viiø7/iib -0.04, viio7/iiia -0.04, IVa 0.14, IVb 0.27, IVc -0.17, IVmaj7a -0.06, IVmaj7b 0.16, IVmaj7d -0.01, bVIImaj7b -0.04
major iiib: Ia -0.2, Ib -0.03, Ic -0.03, Imaj7a -0.03, Imaj7b -0.03, Va 0.13, Vb -0.11, V7a -0.02, V7b -0.04, V7d -0.18, iia -0.16, iib 0.32, ii7b -0.1, ii7c 0.35, via -0.4, vib 0.31, vi7a -0.04, vi7d -0.21, iiia -0.02, iii7b -0.15, V/vib 0.26, viioc -0.1, viiø7c -0.17, V7/iiia -0.04, viia -0.04, viic -0.04, viiø7/Va -0.01, viiø7/Vb -0.04, IVa -0.62, IVb -0.04, IVmaj7a -0.17, IVmaj7b 0.4
major iiic: Ia -0.08, V7b -0.07, iia -0.03, via -0.03, vib -0.04, viio/Vb -0.04, IVb -0.07, IVmaj7b -0.13
major iii7a: Ia -0.1, Ib -0.19, Vc -0.07, V7a -0.14, V7c -0.09, V7d -0.01, iia -0.03, iib -0.06, ii7b -0.07, V7/Vb -0.07, via -0.06, vic -0.06, vi7a 0.02, V/iia -0.01, viø7a -0.04, V/via -0.03, viiob -0.06, viio/Va 0.34, viio/Vb -0.11, IVa 0.03, IVb -0.32, IVmaj7a -0.05, IVmaj7b -0.03, IVmaj7d -0.11
major iii7b: Ia -0.03, Va -0.07, via -0.04, V/vib -0.04, IVa -0.05, IVb -0.08
major iii7c: Vb -0.04, iia -0.03, vi7a -0.03, viioa -0.07, IVb 0.17, IVmaj7b -0.07
major iii7d: V/Va -0.04, vib -0.03, V/via -0.04, viiø7/Vc -0.03, viio/iib -0.04
major V/via: Ia -0.04, Ic -0.09, via -0.21, vib -0.07, vioa -0.07, iiia -0.08, V/vib -0.11, V7/via 0.03, V7/vic -0.04, V7/vid -0.11, viiø7/Vb -0.1, IVa -0.03, IVb -0.11, IVmaj7a -0.03, IVmaj7b -0.04, IVmaj7d 0.16
major V/vib: V/iia -0.07, V/via 0.17, V/vib -0.14, V7/via 0.72, V7/vib 0.32, viio/Vb -0.04, viiø7/Va -0.17, IVb -0.56
major V/vic: via -0.15, iiib -0.01
major V7/via: Ia -0.04, Ic -0.04, I+b -0.04, iib -0.09, V7/Vc -0.02, via 0.27, vib -0.08, V/iia -0.03, vioa -0.02, V7/vid -0.04, viio/Vb -0.03, IVa -0.19, IVb -0.04, IVmaj7a -0.03, IVmaj7b -0.02
major V7/vib: via 0.35, vi7a -0.08, V7/via -0.13, viioa -0.04, IVa -0.06, IVb -0.13
major V7/vic: Ia -0.07, via -0.1, vib -0.19
major V7/vid: iia -0.03, via -0.04, vib -0.24, viio/Va -0.04
major viio/IVa: Ia -0.04, Ic -0.04, iia -0.03, via -0.11, vi7a -0.1, V/iib -0.04, viio/IVb -0.04, IVa -0.11, IVb -0.06, IVmaj7a 0.31
major viio/IVb: Ia -0.04, V7/IVa -0.31, V7a -0.04, iib -0.11, via -0.16, vi7a -0.04, V7/iia -0.02, V7/iib -0.04, IVa 0.03, IVb 0.54, IVmaj7a -0.08, IVmaj7b -0.04, ivb 0.26
major viio/IVc: V7b -0.03, via -0.01, IVa -0.11, IVb -0.19
major viiø7/IVa: Ib -0.1, V7/IVb -0.04, Va -0.18, V7a -0.04, V7c -0.04, iib -0.07, via -0.11, vic -0.04, vi7a -0.2, vi7c -0.04, V/iia -0.01, viiø7/IVd -0.04, viio/iib -0.04, IVa 0.19, IVb -0.04, IVmaj7a -0.04
major viiø7/IVb: V/Vb -0.04, via -0.02, V/iia -0.04, IVb -0.03, bVIIa -0.03
major viiø7/IVc: V7b -0.01, via -0.1, IVb -0.04, IVmaj7b -0.08
major viiø7/IVd: Ia -0.02, iia -0.08, V/via -0.04, viiø7b -0.04
major viio7/IVa: iva 0.32
major viio7/IVc: ivb -0.05
major viioa: Ia 0.23, Ic -0.17, Imaj7a 0.34, Imaj7b -0.01, V7/IVd 0.26, ia -0.12, I+a -0.04, I+b -0.04, V7a 0.35, V7b 0.07, ii7a -0.04, via -0.38, vib -0.21, V7/iia -0.11, V/vib -0.21, viiø7/IVc -0.04, viiob -0.5, viio7/iid -0.01, viio7/via -0.06, IVb -0.04
major viiob: Ia 0.56, Ib 0.82, Ic -0.32, Imaj7a 0.1, Imaj7b -0.11, ia -0.16, ib -0.03, I+a -0.13, I+b -0.13, Va -0.32, Vb -0.09, V7a -0.19, V7b 0.16, V7c -0.34, V7d 0.14, iia 0.05, iib -0.06, ii7a -0.13, ii7b -0.02, ii7d -0.07, via 0.3, vib 0.46, vic -0.02, vi7a -0.04, V/iia -0.15, iiia 0.15, iii7a -0.09, V/via 0.13, V/vib -0.2, V7/via -0.08, V7/vib -0.11, V7/vic -0.05, V7/vid -0.04, viio/IVa -0.06, viiø7/IVa -0.05, viioa 0.4, viiob -0.04, viioc -0.05, viiø7a -0.04, viiø7b 0.07, viio/iib -0.19, viio/vic -0.04, viio7/vib -0.06, viio7/vid -0.04, viio7/iiia -0.27, IVa -0.04, IVb 0.3, IVc 0.45, IVmaj7a -0.11, iv7c -0.04
major viioc: Ia -0.46, Ib -0.1, ib -0.04, I+b -0.07, Va -0.2, V7a -0.08, V7c -0.07, V7d 0.51, iib -0.04, V/Va -0.04, via -0.08, V7/iid -0.04, iiia -0.03, viiø7/IVa -0.01, viiob -0.1, viiø7a -0.02, IVa -0.03, IVb -0.04
major viiø7a: Ia 0.47, Ib 0.37, Va -0.13, Vb -0.36, Vc -0.25, V7b -0.18, vib -0.12, V7/iia -0.06, iii7a -0.03, iii7c -0.07, viio/Vb -0.03, viio/iia -0.05, viio/vib -0.05, IVb -0.03, IVc -0.14
major viiø7b: Ia -0.15, Ib 0.18, Ic -0.3, I+b -0.04, Va 0.48, V7a -0.14, V7d -0.04, iiia -0.04, iiib -0.08, iii7a -0.04, V/via -0.08, V/vib -0.03, viiø7a -0.08, viio/iib -0.03, IVa -0.04, IVb -0.06
major viiø7c: Ia -0.43, Ib 0.38, Ic -0.15, I+a -0.04, I+b -0.04, Va -0.1, Vb -0.03, V7a -0.06, V7d -0.22, iib -0.07, vib -0.04, iiia -0.06, V/via -0.03, viio/IVb -0.06, viiø7/Va -0.23, IVa -0.03, IVmaj7a -0.04
major viiø7d: Ia -0.03, Ic 0.14, V7/IVd -0.04, iib -0.04, via -0.29, V7/iia -0.11, V/vib -0.09, V7/vib -0.04, viiø7a -0.04, IVb -0.04, IVmaj7a -0.07
major viio7a: Ia 0.07, ia -0.04, Vb -0.08
major viio7b: ib -0.04, Vb -0.06, bVImaj7b -0.04
major viio7c: viiob -0.07
major V/iiia: Ia -0.06, Imaj7a -0.05, Imaj7b -0.07, V/iib -0.23, viia -0.04, viiø7/iia -0.02
major V/iiib: Ib -0.15, Imaj7a -0.04, Imaj7b -0.09, I+b -0.03, V7c -0.04, V+c -0.04, iiia -0.22, V7/iiib -0.02
major V7/iiia: Ia -0.12, iiia -0.04
major V7/iiib: Ib -0.02, iiia -0.14, V7/vid -0.01
major V7/iiic: iiia -0.04
major viia: Ia -0.42, Ib -0.08, Va -0.11, Vb -0.04, V7a 0.43, V/Va -0.04, V/Vc -0.04, via -0.14, vib -0.04, iiia -0.03, V/vib -0.04, viioa -0.01, viiø7/vib -0.04
major viib: Ia -0.11, Ib -0.28, Imaj7a -0.03, Imaj7b -0.13, Va -0.05, Vb -0.04, V/Va -0.04, V7/Va -0.1, iiia -0.02, V7/via -0.08, V/iiib -0.04, V7/iiib -0.03, IVa -0.14
major viic: Imaj7b -0.04, Va -0.07, V7a -0.01, V7/vib -0.03, viio7/via -0.04
major viio/Va: Va -0.05, viio/Vb -0.01, viio/iiia -0.04
major viio/Vb: Ia -0.04, Ib -0.15, Ic -0.26, Va 0.71, Vb -0.67, Vc -0.04, V7b -0.03, va -0.09, V+b -0.14, ii7a -0.03, V/Va -0.1, V7/Va -0.07, V7/Vd -0.04, via -0.08, vib -0.01, iiia -0.04, iiib -0.04, V/via -0.07, V/iiia -0.04, viia -0.04, viio/Va -0.07, viio/Vb -0.14, viio/Vc 0.37, viiø7/Vb -0.02, viio/vib -0.11
major viio/Vc: Va 0.03, Vb 0.18, V7/Vc -0.19, viiø7d -0.01, viio/Vb -0.11
major viiø7/Va: Ic 0.29, Imaj7d -0.04, Va 0.27, V7a -0.08, V/Vb -0.11, V7/Vb -0.1, V7/via -0.11, V7/vib -0.06, viiø7a -0.03, viiø7/Va -0.06, viio/via -0.08, viio7/via -0.03
major viiø7/Vb: Ia -0.09, Ib -0.04, Va -0.11, Vb -0.21, Vc -0.07, V7b -0.07, V7d -0.03, ii7b -0.04, V7/Va -0.07, V/via -0.04, viiø7a -0.08, viia -0.04, viio/vib -0.06
major viiø7/Vc: Ib -0.04, Va 0.64, Vb -0.16, V7d -0.03, va -0.03, ii7b -0.04, V7/Va -0.04, via -0.1, iiib -0.03, V/via -0.05, viiob -0.03, viiø7c -0.03
major viiø7/Vd: Ia -0.03, Vc -0.04, iiia -0.04, viiob -0.08, V7/iiib -0.04
major viio7/Va: Ic -0.02, Va 0.23, V7a -0.06, V7d -0.11, va -0.06, V/Vb -0.02, V7/Vb 0.14, via -0.04
major viio7/Vb: V7b -0.04, V7/Vb -0.03
major viio7/Vc: Va -0.04, va -0.04
major It6a: Va -0.04, V/iiib -0.02
major Ger65b: voa -0.04
major viio/iia: iia -0.28, iioa -0.01, viib -0.04, viio/iib -0.14, bVIImaj7b -0.04
major viio/iib: Va -0.04, V7a -0.04, V7d -0.08, iia 0.25, iib -0.08, ii7a -0.02, iioa -0.02, via -0.11, vi7a -0.09, V/iia -0.04, viiob -0.01, viioc -0.01, IVa -0.04, IVb -0.04
major viio/iic: V7d -0.04, iia -0.01
major viiø7/iia: iia -0.26, IVb -0.02
major viiø7/iib: Ia -0.01, Va -0.02, iia -0.04, V7/iib -0.03, iiia -0.03, IVa -0.14
major viiø7/iic: IVb -0.04
major viiø7/iid: V7b -0.03
major viio7/iia: iia 0.35, iib -0.04, ii7a -0.04, V7/Vd -0.04, vi7a -0.08, V/iia -0.03, V7/iia -0.04, V7/iib -0.11, viiob -0.04
major viio7/iib: iib -0.04, V/iib 0.24, V7/iib -0.09
major viio7/iic: V7/IVa -0.04, va -0.03, iia 0.11, iib -0.02, iic -0.04, V7/iid -0.04, IVa -0.06, ivb -0.03
major viio7/iid: vb -0.04, via -0.04
major viio/via: via -0.36, vi7a -0.03, vioa -0.04, viio/vib -0.04, viio7/via -0.08, IVb -0.04
major viio/vib: iic -0.05, V/Va -0.04, V7/Vc -0.04, via 0.25, vib -0.16, vioa -0.04, V/via -0.03, viio/Vb -0.04, IVc -0.07
major viio/vic: iib -0.07, via -0.03, V/iia -0.04
major viiø7/vib: vib -0.04
major viio7/via: via 0.33, iii7a -0.04, V/via -0.13, V/vib -0.01, V7/vib -0.07, IVb -0.04
major viio7/vib: Ia -0.04, iic -0.02, via -0.08, vib -0.02, V/via -0.01, V/vib -0.04, V7/vib -0.04, viia -0.03, IVb -0.01, IVmaj7b -0.04
major viio7/vic: Ia -0.04, Ib -0.04, via -0.17, V/iia -0.04, iii7a -0.04, viio7/vic -0.04, viio7/iiia -0.04
major viio/iiia: Imaj7b -0.04
major viio/iiic: V/via -0.04
major viio7/iiia: iiia 0.07, V/via -0.03
major viio7/iiib: iiib -0.04
major viio7/iiic: Va -0.02, V/via -0.04
major viio7/iiid: Vb -0.01
major IVa: Ia 0.33, Ib -0.07, Ic -0.2, Imaj7b -0.04, Imaj7c -0.07, V7/IVa -0.03, V7/IVb -0.19, V7/IVc -0.15, ia -0.03, ib -0.07, Va 0.32, Vb 0.49, Vc -0.14, V7a -0.11, V7b -0.24, V7c -0.26, V7d 0.29, va 0.1, vb -0.06, v7a -0.08, v7b -0.08, v7d -0.07, vø7a -0.04, iia 0.2, iib 0.27, iic -0.08, ii7a 0.5, ii7b -0.55, V/Va -0.22, V/Vb 0.09, V7/Va -0.03, V7/Vb 0.16, iiø7a -0.03, iiø7b -0.03, via 0.02, vib -0.14, vic -0.37, vi7a -0.05, vi7b -0.04, vi7c -0.01, vi7d -0.11, V/iib -0.03, V7/iib 0.28, V7/iic -0.07, vioa -0.01, iiia 0.21, iiib -0.2, iii7a -0.05, V/via -0.06, V/vib 0.29, viio/IVb 0.17, viiø7/IVd -0.1, viioa 0.12, viiob 0.21, viioc -0.17, viiø7a 0.36, viiø7b -0.35, viiø7c -0.27, viiø7d -0.07, viio7a -0.08, viib -0.12, viio/Va -0.02, viiø7/Va -0.1, viiø7/Vd -0.04, viio7/Va 0.2, viio/iia 0.3, viio/iib -0.15, viiø7/iic -0.04, viio7/iia 0.2, viio7/iid -0.04, viio7/vib -0.02, viio7/vic -0.07, IVa -0.79, IVb 0.31, IVc -0.09, IVmaj7a -0.38, IVmaj7b 0.42, IVmaj7c -0.04, IVmaj7d -0.19, IV7a -0.08, iv7d -0.03, bVIIa -0.12, bVIIb -0.11, bVIIc -0.03, bVIImaj7c -0.04
major IVb: Ia 0.36, Ib -0.46, Ic 0.34, Imaj7b -0.07, Imaj7d -0.04, V7/IVa -0.11, V7/IVb -0.21, V7/IVc 0.2, V7/IVd -0.04, I+a -0.02, I+c -0.04, Va -0.63, Vb 0.04, V7a 0.04, V7b 0.53, V7d -0.19, va -0.11, vb -0.36, v7a -0.11, v7b 0.27, iia -0.06, iib -0.52, iic -0.18, ii7a -0.2, ii7b 0.12, ii7c -0.19, ii7d -0.04, V/Va -0.08, V/Vb -0.04, V7/Vb -0.15, V7/Vc -0.01, iiø7a -0.08, via 0.1, vi7a -0.12, vi7d 0.11, V7/iia -0.04, V7/iid -0.13, iiia 0.07, iiib 0.02, iiic -0.07, iii7b -0.03, V/vib -0.2, V7/vic -0.04, viio/IVa -0.1, viio/IVb 0.19, viiø7/IVc -0.01, viioa -0.18, viiob 0.08, viioc -0.04, viiø7a 0.58, viiø7c 0.22, viiø7d 0.03, viiø7/Vb -0.04, viio/iib -0.03, viio7/iia 0.29, viio7/iic -0.06, viio/vib -0.04, IVa 0.03, IVb -0.44, IVc 0.32, IVmaj7a 0.43, IVmaj7b -0.44, IVmaj7d -0.04, iva -0.04, ivb 0.12, iv7b -0.04, bVIIa -0.2, bVIIc -0.01, bVIImaj7a -0.09, bVIImaj7c -0.11, bVIa -0.15
major IVc: Ia 0.44, Ib -0.07, Imaj7b -0.04, Va -0.14, Vb -0.16, V7a -0.05, V7b -0.41, iia -0.04, ii7a -0.06, ii7b -0.04, ii7d -0.04, via -0.06, iiia -0.04, V7/via -0.01, viioa 0.1, viiob -0.01, viiø7a -0.29, viio7/iib -0.04, viio7/vib -0.04, IVa -0.05, IVb -0.04
major IVmaj7a: Ia -0.06, Ib -0.15, Ic -0.25, Va 0.31, Vb -0.17, V7a 0.13, V7b -0.04, V7c -0.01, V7d -0.21, va -0.04, iia -0.14, iib 0.26, ii7a -0.03, ii7b -0.17, V/Vb 0.28, V7/Vb -0.16, via -0.08, vib -0.04, vic -0.04, iiia -0.03, V/via -0.03, V7/vib -0.04, viioa -0.07, viiob -0.41, viioc -0.04, viiø7c -0.19, viiø7/Va -0.19, viio/iib -0.03, viio/iic -0.04, IVa -0.08, IVb -0.13, IVmaj7b -0.11, IVmaj7d -0.04, bVIIa -0.03, bVIImaj7a -0.04
major IVmaj7b: Ia -0.16, Ib -0.04, Ic -0.06, V7/IVb -0.03, Va -0.21, Vb -0.17, V7a -0.13, V7b 0.57, V7d -0.11, vb -0.04, iia -0.01, iib 0.31, iic 0.39, ii7a -0.09, ii7b -0.2, V/Vb -0.03, V7/Vb -0.06, via -0.04, vib -0.04, iiia -0.03, iiib -0.07, V/vib -0.03, V7/vic -0.01, viioa 0.43, viiob -0.1, viioc -0.04, viiø7a -0.26, viiø7d 0.14, IVb -0.09, IVmaj7a -0.03, IVmaj7d -0.08, bVIImaj7d -0.04
major IVmaj7c: Ia -0.04, Ib -0.07, Va -0.1, Vb -0.05, V7a -0.08, V7d -0.15, iib -0.04, iiia -0.04, V/via -0.01, viiob -0.04, viiø7a -0.03
major IVmaj7d: Ia -0.1, Ib -0.03, Va -0.03, Vc -0.03, V7c -0.07, iia -0.22, iib -0.06, iic -0.04, ii7b -0.04, V/Va -0.03, V/via -0.06, viiob 0.18, viioc -0.04, viiø7b -0.04, viiø7c -0.04, viio/Va -0.04
major IV7a: V7b -0.04, vb -0.04, V7/Vb -0.08
major IV7b: ic -0.04, V7b -0.04, ivb -0.04
major IV7c: Va -0.04
major IV7d: Ia -0.04, ia -0.12, viob -0.04, viioa -0.12, bVImaj7b -0.03
major iva: Ia -0.11, Ib -0.04, ia -0.04, ic -0.03, Va -0.28, Vb 0.35, V7a -0.11, V7b -0.07, ii7a -0.27, iiø7a -0.11, viio7/IVc -0.05, viiob -0.01, bVIc -0.03
major ivb: Ic 0.2, ic -0.11, Vb -0.03, V7a -0.03, iiø7b -0.04, V7/iia 0.21, viio7/Va -0.04, iva -0.16
major ivc: Ia -0.04, Va -0.04, V7b -0.06
major iv7a: Ic -0.03, ib -0.01, Va -0.15
major iv7b: ic -0.04, V7a -0.02
major iv7c: ib -0.04
major iv7d: Ic -0.03
major bVIIa: Ia -0.27, V7/IVd -0.33, Va 0.42, Vb 0.21, V7b -0.2, vb -0.08, iia 0.45, iic -0.11, via -0.01, viio/IVb -0.13, viio/IVc -0.04, viiø7/IVa -0.13, viio7/IVa -0.04, viioa -0.04, viio7a 0.17, IVa -0.02, IVb -0.05, bVIImaj7a -0.06
major bVIIb: Ia -0.13, Ib -0.11, V7/IVa -0.04, Va -0.11, Vb -0.04, iia -0.06, iib -0.08, ii7d -0.03, vib -0.03, viioc -0.07, viiø7b -0.04, IVa -0.31, IVb -0.04, bVIImaj7c -0.03
major bVIIc: Ib -0.03, V/Vb -0.14, via -0.01, IVa -0.04
major bVIImaj7a: Ia -0.08, Vb -0.22, V7b -0.05, iic -0.04, via -0.04, viiø7a 0.43, viio7/Vc -0.04
major bVIImaj7b: Ia -0.04, Ib -0.05, Imaj7b -0.03, V7/IVb -0.03, V7b -0.04, iib -0.03, viiø7b -0.04, viiø7c -0.02, IVa -0.04
major bVIImaj7c: Ib -0.04, V/Vb -0.04, via -0.11, iii7a -0.01
major bVIImaj7d: V/vib -0.04
major bVII7a: Ia -0.05, V7b -0.01, V7/iia -0.16
major bVII7c: Va -0.03
major bVII7d: Va -0.04
major bIIIa: vc -0.07, viø7d -0.04, viio7/IVa 0.41, IVa -0.04, iva -0.04
major bIIIb: V7d -0.03, iiø7b -0.04, viø7a -0.04
major bIIIc: Vb -0.07, bVImaj7d -0.04
major bVIa: ic -0.08, V7a -0.04, iiob -0.02, iiø7b -0.11, iiø7c -0.04, iva -0.04, ivb -0.03
major bVIb: bIIIa -0.04, bVIb -0.04
major bVIc: viiob -0.03
major bVImaj7a: Va -0.04, V7a -0.02
major bVImaj7b: ia -0.04, Va -0.03, V7/Vb -0.03, ivc -0.04
major bVImaj7d: iib -0.04
major Nb: viio/IVb -0.04, viio7/Va -0.04, iva -0.01
minor strangea: ia -0.04, ic -0.02, i7a -0.04, Va -0.12, Vb -0.04, vioc -0.04, viø7a -0.03, viiob -0.08, viiø7a -0.01, viio7a -0.04, viio7/Vc 0.43, Ger65c -0.04, IVa -0.04, IVb -0.04, IV7b -0.03, viia -0.04
minor strangeb: vb -0.07, vc -0.04, v7a -0.04, Va -0.04, V7a -0.18, V7d -0.04, iia -0.04, viø7a -0.04, viiob -0.02, viioc -0.03, viiø7d -0.04, IIIa -0.02
minor strangec: Ia -0.04, viiø7/iva -0.04
minor stranged: Vb -0.03, viio/ivb -0.04, viio7/ivb -0.04
minor ia: ia -1.54, ib 0.93, ic -0.35, i7a -0.42, i7b -0.04, i7c -0.16, i7d -0.14, imaj7a -0.14, imaj7b -0.03, imaj7c -0.03, imaj7d -0.07, Ia -0.21, Ib -0.08, Ic -0.07, V7/iva -0.07, V7/ivd -0.22, va 0.27, vb 0.37, vc -0.34, v7a -0.14, v7c -0.09, Va 0.28, Vb 0.04, Vc -0.19, V7a -0.26, V7b 0.29, V7c 0.13, viio/VIa -0.04, viio/VIb -0.04, iioa -0.35, iiob 0.49, iioc -0.05, iiø7a -0.2, iiø7b 0.65, iiø7c -0.05, iiø7d 0.19, iia 0.13, iib -0.11, iic -0.04, ii7a -0.16, ii7b -0.04, ii7d -0.15, V/Va 0.11, V/Vb 0.09, V7/Va -0.33, V7/Vb 0.22, V7/Vc 0.33, V7/Vd -0.16, Fr43a -0.11, Fr43c -0.04, vioa -0.04, viob 0.27, viø7a -0.06, viø7b 0.43, viø7c -0.08, viø7d -0.04, viio7/VIIa -0.1, viio/ivb -0.01, viio7/ivc -0.07, viioa 0.24, viiob 0.47, viio7a 0.1, viio7b -0.12, viio7c -0.11, viio7d -0.11, viio/Vb -0.17, viio/Vc 0.44, viio7/Va 0.02, viio7/Vc 0.36, It6a -0.03, It6b -0.04, Ger65a -0.07, Ger65b 0.19, Ger65c -0.08, #io7a -0.03, iva -0.25, ivb 0.47, ivc -0.23, iv7a 0.71, iv7b -0.06, iv7c -0.16, iv7d -0.04, IVa 0.06, IVb 0.4, IVc -0.04, IV7a 0.06, IV7b 0.05, IV7c -0.18, IV7d 0.19, VIIa 0.09, VIIb 0.28, VIIc -0.04, VII7a -0.16, VII7b 0.25, VII7d 0.16, viia -0.09, viib -0.09, IIIa 0.38, IIIb -0.15, IIIc -0.13, IIImaj7a -0.04, V7/VIa -0.02, III+a -0.07, III+maj7a -0.21, III+maj7d -0.07, VIa 0.2, VIb -0.07, VIc -0.04, VImaj7a 0.4, VImaj7b -0.14, VImaj7d -0.04, VI7a 0.19, Na -0.13, Nb 0.28, Nc -0.03, bIImaj7b -0.08, bIImaj7c -0.03
minor ib: strangea -0.04, ia 0.46, ib -0.25, ic 0.11, i7a 0.12, imaj7a -0.12, imaj7b -0.04, Ia -0.1, Ib 0.36, Ic -0.05, V7/ivb 0.27, va 0.7, vb -0.08, vc -0.13, v7a -0.08, v7d -0.08, Va 0.43, Vb 0.08, Vc -0.22, V7a 0.11, V7b -0.04, V7c -0.02, V7d -0.44, V+a -0.01, viio/VIa -0.04, viiø7/VIa -0.01, viiø7/VIc -0.08, iioa -0.2, iiob 0.11, iioc -0.03, iiø7a -0.22, iiø7b 0.81, iiø7c -0.36, iiø7d -0.24, iia 0.29, iib -0.18, ii7a -0.1, V/Vb -0.04, vioa -0.11, viob 0.21, vioc 0.17, viø7b -0.14, viø7c -0.1, viio7/iva 0.3, viioa -0.36, viiob 0.37, viioc -0.12, viio7a -0.11, viio7b -0.07, viio7c -0.01, viio7d -0.04, viio/Va -0.04, viio/Vc -0.14, viio7/Va -0.07, viio7/Vb -0.04, viio7/Vc 0.03, viio7/Vd -0.23, Ger65b -0.04, Ger65c -0.02, Ger65d -0.04, iva 0.04, ivb 0.35, ivc -0.04, iv7a -0.11, iv7b -0.36, iv7d -0.02, IVa -0.38, IVb 0.21, IV7a -0.39, IV7b -0.04, IV7d 0.16, VIIa -0.11, VIIb 0.2, VII7b -0.04, viib -0.06, IIIa -0.07, IIIb -0.18, IIImaj7a -0.03, IIImaj7c -0.04, V7/VId -0.04, III+b -0.1, III+maj7a -0.04, III+maj7b -0.02, III+maj7d -0.05, VIa 0.42, VIb -0.42, VImaj7a -0.19, VImaj7d -0.04, Na -0.08, Nc -0.04
minor ic: ia -0.03, ib 0.1, ic -0.06, Ia -0.07, V7/ivd -0.06, va -0.15, Va 0.5, Vb -0.01, V7a 0.49, V7b -0.04, V7d -0.04, viiø7/VId -0.01, iiob -0.04, iioc -0.19, iiø7a -0.19, iiø7b -0.33, iiø7c 0.4, ii7b -0.02, V/Vb -0.04, V7/Vb 0.17, viio7a -0.23, viio7b -0.04, viio7c 0.59, viio/Va -0.03, viio7/Va 0.1, iva -0.13, ivb -0.1, iv7a 0.31, iv7b -0.22, IVb -0.01, IV7b -0.17, IV7d -0.04, VIIc -0.03, VII7d -0.04, VIa -0.15, VImaj7c -0.04
minor i7a: ia -0.2, iioa -0.04, iiob 0.17, iiø7b -0.1, iiø7d -0.14, V/Va -0.04, V/Vb -0.04, viø7c -0.04, viio7a -0.08, viio7/Va -0.06, Ger65c -0.06, iva 0.22, ivb -0.03, IVa -0.01, VIIa -0.06, VIa -0.01, VIb 0.64
minor i7b: ia -0.08, ib -0.03, v7d -0.04, Va -0.08, Vb -0.03, V7b -0.07, V7c -0.04, V7d -0.15, iiob -0.04, viio7/iva -0.03, viiob -0.01, viio7a -0.05, iva -0.04, IVb -0.04, VIIa -0.03, IIIa -0.04, VImaj7a -0.01
minor i7c: iiob -0.17, iiø7b -0.04, iiø7c -0.04, #via -0.01, ivb -0.03, iv7a -0.04, iv7b -0.08, IIIa -0.04, VIa -0.04
minor i7d: V7b -0.05, viio/VIa -0.04, viiø7/VIa -0.04, ii7b -0.04, ivb -0.4, IVb -0.03, IV7b 0.25, VIIa -0.03, VII7d -0.01, IIIb -0.04, VIa -0.32, VImaj7a -0.04
minor imaj7a: ia -0.08, ib -0.04, Va -0.03, Vb -0.04, V7b -0.04, ivb -0.15, VIa -0.02
minor imaj7b: ia -0.07, V7c -0.08, viiob -0.03, ivb -0.01, IVb -0.04
minor imaj7c: Va -0.1, V7a -0.09, V7b -0.04, iiø7b -0.04, viio7c -0.01, ivb -0.04, iv7a -0.03, IV7b -0.04, VIa -0.04
minor imaj7d: ia -0.03, iiø7d -0.04
minor Ia: ia -0.27, ic -0.04, i7a 0.44, Ia -0.19, Ib -0.2, Ic 0.29, V7/iva 0.23, V7/ivb -0.04, V7/ivd -0.01, va -0.17, vb -0.07, Va -0.49, Vb -0.45, Vc -0.03, V7a -0.11, V7b -0.04, V7c -0.13, V7d -0.01, iiob -0.15, iiø7a -0.06, iiø7b -0.14, iib -0.13, ii7b -0.22, ii7c -0.04, ii7d 0.31, V/Va -0.08, V7/Vc -0.04, V7/Vd -0.04, vioa -0.04, #via -0.17, #vib -0.04, viiob 0.23, iva -0.42, ivb -0.35, IVa -0.53, IVb -0.23, IVc -0.04, IV7a -0.03, VIIa -0.04, III+maj7b -0.04, III+maj7c -0.01, VIa -0.02, VImaj7a -0.06, Nb -0.03
minor Ib: ia -0.07, ib 0.28, i7a -0.01, Ia 0.3, Ib -0.07, Ic -0.12, V7/iva -0.2, V7/ivb 0.6, va -0.16, Va 0.11, Vb 0.44, Vc -0.01, V7a -0.07, V7b -0.07, V7d -0.11, iiob -0.06, iiø7a -0.06, iiø7b -0.07, iia -0.09, iib -0.04, ii7a -0.09, ii7b -0.2, V7/Vb -0.09, viø7b -0.03, #via -0.13, #vib -0.04, #vic -0.03, viiob -0.21, viiø7b -0.07, viio7c -0.04, viio/Va -0.17, viio7/Va -0.05, iva -0.06, iv7a -0.04, IVa 0.15, IVb -0.07, IV7b -0.04, IV7d 0.13, IIIa -0.04, V7/VIa -0.11, Nb -0.05
minor Ic: ic -0.04, Ia -0.06, Ib -0.04, V7/ivc -0.06, Va 0.14, V7a -0.2, V7d 0.44, ii7b -0.06, V7/Vb -0.08, viio/ivb -0.03, viio7c -0.02, iva -0.08, ivb 0.28, IVb -0.21
minor V7/iva: Va -0.03, iiob -0.08, iiø7b -0.25, iia 0.25, iib -0.11, V/Va -0.09, viiø7a -0.11, iva -0.38, ivb -0.08, ivc 0.29, IVa -0.1, VIIa -0.04, Na -0.03
minor V7/ivb: Ib -0.04, V7/iva -0.33, va -0.04, iiø7b -0.04, iib -0.11, V/Vb 0.12, viiø7c -0.04, viio7c -0.01, viio/Va -0.12, viio7/Va -0.04, iva 0.37, ivc -0.01, iv7a -0.15, IVa 0.09, Nb -0.04
minor V7/ivc: ia -0.04, iiø7b -0.23, V7/Vc -0.04, #via -0.04, iva 0.2, ivb -0.07, IVa -0.04, IVb 0.4, VII7d -0.03
minor V7/ivd: Ia -0.04, Ic -0.12, V7/ivc 0.44, Va -0.04, V7a -0.08, iioc -0.03, viio7a -0.03, viio/Vb -0.01, It6b -0.05, iva -0.01, ivb 0.07, IVb -0.17, IV7b -0.04, VIa -0.04, VImaj7a -0.04
minor va: ia -0.2, ic -0.35, i7a -0.08, imaj7b -0.01, Ia -0.26, Ib -0.12, V7/iva -0.11, V7/ivb -0.33, V7/ivc -0.08, V7/ivd 0.49, va -0.65, vb 0.21, vc -0.04, v7a -0.23, v7b -0.02, v7d 0.27, Va -0.42, Vc 0.38, V7a -0.13, V7b -0.04, V7d -0.23, viiø7/VId -0.04, iioa -0.04, iiob 0.2, iia -0.04, iib -0.1, V/Va -0.11, V/Vb 0.19, V7/Va -0.14, V7/Vb -0.08, V7/Vc -0.04, vioa -0.04, viob 0.24, viø7a -0.19, viø7b -0.24, viø7c -0.06, viø7d -0.07, #via -0.12, viio/iva -0.04, viio/ivb 0.27, viiø7/iva -0.1, viiø7/ivb -0.08, viioa -0.03, viiob 0.52, viiø7b -0.07, viiø7c -0.03, viio7a 0.34, viio7b -0.05, viio7d 0.03, viio7/Va -0.29, viio7/Vb -0.06, viio7/Vc -0.07, Ger65b -0.04, iva 0.02, ivb 0.26, iv7a -0.15, iv7b -0.03, iv7d -0.04, IVa -0.06, IVb 0.31, IV7a -0.11, IV7b -0.01, IV7c -0.08, VIIa -0.34, VIIb -0.07, VIIc -0.01, VII7b -0.04, VII7c -0.07, IIIa -0.07, IIIb 0.31, IIImaj7a -0.03, IIImaj7b -0.03, V7/VIa -0.24, III+maj7a 0.22, VIa 0.3, VIb -0.29, VIc -0.13, VImaj7a 0.1, VImaj7b -0.04, VImaj7c -0.03, VImaj7d 0.24
minor vb: ia 0.28, ib -0.04, ic -0.17, i7c -0.03, i7d -0.07, Ia -0.11, V7/iva -0.03, V7/ivd -0.09, va -0.1, Va -0.04, Vb 0.03, V7b -0.19, iiø7a -0.04, iiø7c -0.1, ii7d -0.04, V/Va -0.16, V/Vb -0.07, V7/Va -0.08, viob -0.13, viø7a 0.12, viø7b -0.04, viiø7/ivc 0.18, viio7a -0.36, viio7d -0.08, viio/Vb -0.04, viio7/Vb 0.4, iva -0.05, ivb 0.19, ivc -0.04, iv7a -0.04, iv7b 0.44, IVa -0.13, IVb -0.07, IV7b -0.04, VIIa -0.04, VII7d -0.04, IIIa 0.37, IIIb -0.03, IIIc -0.04, VIa 0.16, VIb -0.1, VImaj7a -0.28, VImaj7b -0.04
minor vc: ia -0.29, ib -0.06, V7/iva -0.03, V7c -0.01, V7d 0.32, iiø7a -0.04, iiø7d -0.04, V7/Va -0.03, viø7b -0.08, iva -0.04, ivc -0.04, IVa -0.04, VIIb -0.03, IIIa -0.27, VIb -0.13
minor v7a: ia 0.2, ib -0.14, i7a -0.02, i7c -0.04, iiob -0.04, viob -0.04, #via -0.14, viio7a -0.01, ivb -0.03, iv7b -0.08, IVb -0.04, VIIc -0.04, viia -0.04, VIa 0.03, VIb -0.08, VImaj7a -0.06
minor v7b: ia -0.16, Ia -0.03, v7a -0.04, Vb -0.07, V7b -0.01, viio7/iva -0.04, viio7a -0.04, iva -0.08, VIb -0.04
minor v7c: ia -0.18, ib -0.02, i7a -0.03, iib -0.02, ivc -0.05, VIIb -0.06, IIIa -0.03, VIb -0.01
minor v7d: ib 0.2, Ib -0.04, V7/ivb -0.14, va -0.04, Vc -0.08, iva -0.04, IVa -0.17, IIIa -0.02, VIc -0.03
minor Va: ia 0.23, ib -0.64, ic -0.58, i7b -0.01, Ia -0.13, Ib -0.04, Ic -0.21, V7/iva -0.03, V7/ivb -0.01, va -0.37, Va -0.88, Vb 0.17, Vc -0.06, V7a 0.86, V7b -0.08, V7c -0.44, V7d 0.62, V+a -0.06, viio/VIb -0.04, iiob -0.09, iiø7b 0.17, iiø7c -0.04, iib -0.04, V/Vb -0.06, V7/Vb -0.01, V7/Vc -0.04, viob -0.07, viø7a 0.02, viø7b 0.26, viø7d -0.16, #via 0.36, viiø7/ivb -0.04, viioa -0.04, viio7c 0.56, viio7d -0.1, viio/Vb -0.06, viiø7/Vb -0.02, viio7/Vb -0.03, It6b -0.02, iva -0.04, ivb 0.45, ivc -0.11, iv7a -0.04, iv7b -0.05, iv7d -0.04, IVa -0.04, IVb 0.24, IVc -0.04, IV7a -0.03, IV7b -0.07, IV7c -0.04, IIIa -0.06, IIImaj7a -0.11, III+b -0.17, III+maj7a 0.26, III+maj7b -0.13, VIa -0.49, VImaj7a -0.34, VImaj7b -0.04, VImaj7d -0.08
minor Vb: ia 0.19, ib -0.07, ic -0.07, i7a -0.07, imaj7a -0.07, Ia 0.11, V7/iva -0.06, V7/ivd -0.05, va -0.01, Va 0.24, Vb -0.33, V7a -0.05, V7b 0.45, V7c -0.06, iioc -0.02, iia -0.07, ii7c -0.01, V7/Va -0.03, viø7a 0.01, viø7b -0.1, #via -0.11, viioa -0.09, viiob -0.07, viio7d -0.07, IVb -0.11, VII7d -0.04, IIImaj7b -0.04, III+b -0.07, VIb 0.36, VImaj7b -0.08
minor Vc: ia 0.41, ib -0.36, Ia -0.05, Ib -0.03, Va -0.06, Vb -0.04, V7b -0.1, V7c -0.29, V7/Vd -0.01, IVc -0.04, VImaj7c -0.04
minor V7a: strangeb -0.04, ia 0.46, ib -0.06, ic 0.1, imaj7a -0.04, Ia 0.54, Ib -0.01, Ic -0.19, V7/iva 0.17, V7/ivd -0.03, Va -0.29, Vb -0.15, V7a -0.25, V7c 0.25, V7d -0.34, iiø7a -0.04, vioa 0.37, viob -0.22, viø7a 0.12, viø7b -0.1, viø7c -0.01, #via -0.1, #vib -0.13, viioa -0.03, viiø7/Vc -0.04, viio7/Vb 0.01, iva -0.04, ivb -0.15, iv7b 0.17, iv7c -0.07, IVb -0.11, IV7b 0.13, IV7c -0.04, IIIa -0.08, III+b -0.29, VIa 0.87, VIb -0.33, VImaj7a 0.26, VImaj7c -0.04
minor V7b: ia 0.3, ib -0.03, ic -0.13, imaj7a -0.03, imaj7c -0.08, Ia -0.47, V7/iva -0.14, V7/ivd -0.22, vb -0.04, v7a -0.03, Va -0.2, Vb 0.15, V7a 0.02, V7b -0.38, V7c 0.49, iia -0.12, viob 0.09, viø7b -0.08, #vib -0.04, viio/ivc 0.23, #ioa -0.03, #io7d -0.06, III+b 0.28, VIa -0.04, VIb 0.21, VImaj7b -0.04
minor V7c: ia 0.15, ib 0.45, ic -0.04, Ia -0.06, Ib -0.13, v7c -0.04, Va -0.14, Vb 0.57, V7a 0.1, V7b -0.21, V7d -0.22, iia -0.04, viob -0.03, vioc -0.04, viiob -0.05, ivc -0.01, IIIa -0.04, VIb -0.08
minor V7d: ia 0.01, ib 0.39, ic -0.02, imaj7b -0.12, Ia -0.19, Ib 0.14, V7/ivc -0.03, va -0.04, v7d -0.04, Va -0.08, Vc -0.22, V7a -0.13, V7b -0.06, V7c 0.88, V7d -0.22, iioa -0.01, ii7a -0.04, V/Va -0.04, V/Vb -0.01, vioc 0.11, viø7b -0.07, viø7c 0.37, #vic -0.03, viiob -0.33, viio7/Va -0.2, IV7d -0.03, IIIa -0.03, III+maj7a -0.11, VIa -0.44, VImaj7c -0.04
minor V+a: Va -0.03
minor viio/VIa: ia -0.04, va -0.04, viio/VIb -0.03, viio/ivb -0.04, Ger65b -0.04, VIa -0.04, VImaj7a -0.04
minor viio/VIb: ia -0.22, Ia -0.07, V7/iva -0.03, V/Va -0.04, viio7a -0.25, iva -0.03, ivb -0.16, VII7d -0.05, VIa -0.17, VImaj7a -0.13
minor viio/VIc: ia -0.04
minor viiø7/VIa: ia -0.14, i7a -0.04, Ia -0.04, #via -0.04, iv7b -0.02, IVb -0.04, VIa -0.16
minor viiø7/VIb: ia -0.04, va -0.02, V7/VIa -0.04
minor viiø7/VIc: ia -0.12, Ia -0.04, V7/iva -0.11, viio7/Vc -0.04, viib -0.04
minor viiø7/VId: V7/ivb -0.08, viio7/iva -0.04, iva -0.01, IVa -0.12
minor iioa: ia 0.17, ib -0.29, va -0.07, Vb 0.24, V7b -0.29, iiob 0.19, iioc -0.04, iiø7a -0.08, iiø7b -0.04, Fr43b -0.04, viio7a -0.27, iv7a -0.04, iv7c -0.04, VII7b -0.04, IIIa -0.1
minor iiob: ia -0.06, ib -0.22, ic 0.69, imaj7c -0.09, Ia -0.12, Ib -0.11, va 0.21, v7a -0.07, Va 0.24, Vb 0.04, V7a -0.17, V7b -0.3, V7c -0.1, V7d 0.4, iioa -0.06, iiob -0.18, iioc -0.15, iiø7b 0.29, iiø7c -0.11, iia -0.04, V/Vb 0.41, V7/Vb -0.26, Fr43b -0.07, viø7c -0.02, viiob -0.05, viioc -0.07, viio7b 0.26, viio7c -0.16, viio7d -0.09, viio/Va -0.04, viio7/Va 0.54, Ger65b -0.08, iva -0.1, ivb -0.27, iv7a 0.25, IV7a -0.13, VIIa -0.1, VII7a -0.09, VII7d -0.04, IIIa -0.12, IIIb 0.19, IIImaj7a -0.24, V7/VIa 0.43, III+a -0.04, III+b -0.2, III+maj7a -0.3, III+maj7b 0.23, VIa -0.11, VIb -0.04, VIc -0.03
minor iioc: ia -0.04, ib -0.06, ic 0.45, imaj7c -0.03, Va -0.56, Vb -0.01, V7a -0.04, V7b -0.08, iiob -0.17, iiø7b -0.03, iiø7c -0.04, viø7c -0.03, viio7d 0.38, ivb -0.04, iv7b -0.04, IIIa -0.04, IIIb -0.17, III+b -0.18, III+maj7b -0.04
minor iiø7a: ia -0.26, ib -0.36, Ic -0.04, va -0.11, vc -0.04, v7a -0.04, Va 1.03, Vb -0.28, V7a 0.3, V7b -0.14, V7c 0.34, iiø7a -0.08, iiø7b -0.25, iiø7d -0.11, viø7c -0.03, viioa -0.06, viiob -0.03, viio7a -0.15, viio7b 0.68, iva -0.04, ivc -0.06, IVa -0.04, IVc -0.04, VIIb -0.34, VII7b -0.06, IIIa -0.21, IIImaj7a -0.02, IIImaj7d -0.04, VIb -0.07
minor iiø7b: ia -0.11, ib -0.34, ic 0.48, Ia -0.1, va 0.06, vb -0.04, v7a -0.01, Va 0.19, Vb -0.21, Vc -0.06, V7a 0.47, V7b 0.28, V7c -0.27, V7d 0.17, viio/VIa -0.04, iioa -0.1, iiob -0.35, iiø7a 1.33, iiø7b -0.16, iiø7c 0.29, iia -0.43, iib -0.11, ii7a -0.04, V7/Vb -0.14, Fr43b -0.04, viio/ivb -0.04, viiob -0.37, viioc -0.24, viiø7c -0.04, viio7b -0.03, viio7c 0.1, viio7/Va -0.36, It6b -0.07, iva -0.25, ivb -0.21, iv7a 0.2, IV7a -0.01, VIIa -0.04, VII7a -0.04, viib -0.04, IIIb -0.06, IIIc -0.04, III+a -0.04, III+b 0.06, III+maj7a -0.08, III+maj7b -0.03, VImaj7a -0.06, bIImaj7a -0.03
minor iiø7c: ib -0.21, ic 0.17, imaj7c -0.04, Ia -0.03, va -0.17, Va 0.13, V7a -0.32, V7b -0.01, iiob 0.35, iiø7a -0.04, iiø7b 0.3, iiø7c -0.04, iib -0.06, viø7c -0.01, viio7/VIIa -0.04, viio/ivb -0.09, viio7d -0.2, It6b -0.04, ivb -0.21, iv7a -0.17, IV7a -0.04, VII7c -0.04, IIIa -0.06, IIIb 0.08, III+b 0.22, III+maj7b -0.04, VIa -0.14
minor iiø7d: ia -0.07, V7/iva -0.15, vb 0.09, Vb 0.37, V7b 0.55, V7c -0.15, iiø7a -0.02, iiø7c -0.11, viiob -0.04, viio7a -0.15, viio7b -0.03, ivb -0.06, III+a -0.04, III+b -0.04
minor iia: ia -0.17, ib -0.2, Ia -0.07, Ib -0.18, Ic -0.04, va -0.1, Va -0.33, Vb -0.35, V7a -0.46, V7b 0.14, V7c -0.08, V7d -0.1, iiob -0.04, iiø7d 0.07, iia -0.09, iib 0.36, ii7a -0.01, ii7d -0.09, V/Va -0.03, V7/Vd -0.04, vioc -0.25, viio7/VIIc -0.03, #via -0.04, #vib -0.01, viiø7/iva -0.04, viiob 0.36, viiø7a 0.36, viio7b -0.24, viio7c 0.13, viio/Va -0.04, ivb -0.03, IVa 0.16, IVb 0.31, IVc -0.02, IV7a -0.14, IV7c -0.01, IV7d 0.27, IIIa -0.1, V7/VIa -0.04, III+b -0.1
minor iib: ia -0.08, ib -0.18, Ia -0.08, Ib -0.04, Ic 0.48, va -0.07, v7a -0.01, v7d -0.03, Va -0.38, V7a 0.12, V7c -0.04, V7d -0.03, iiø7b -0.01, iia -0.09, iib -0.04, ii7b -0.04, V/Vb -0.03, V7/Vb -0.04, viø7c 0.36, viiob -0.03, viiø7c 0.13, viio7b -0.04, viio7/Va -0.11, ivb -0.04, IVa -0.04, IVb 0.42, IV7b -0.04, IIIb -0.11, VIa -0.11
minor iic: vb -0.04, V7b -0.01, viio/ivb -0.04, viio7a -0.2, IV7b -0.03
minor ii7a: ia -0.03, ib -0.04, Ia -0.03, V7/ivc -0.04, Va -0.14, V7a -0.2, viiø7/VIa -0.04, ii7a -0.04, viiob -0.15, viio7b -0.06, IVa -0.03, IIIa -0.2
minor ii7b: Ic -0.04, va -0.02, v7d -0.04, Va -0.57, V7a -0.04, iioa -0.02, iiø7b -0.06, iia -0.07, ii7a -0.04, V/Vb -0.04, IIIa -0.03, III+b -0.09, III+maj7b -0.04
minor ii7c: Ic -0.04, Va -0.01, V7b -0.16
minor ii7d: ib -0.04, Ia -0.04, Va -0.15, Vb 0.36, V7b -0.08, V7d -0.01, iia -0.01, iib -0.04, viiø7a -0.04
minor V/Va: ia -0.05, ic 0.42, Ib -0.04, va 0.13, vb -0.03, Va -0.51, Vb -0.04, V7a -0.04, iia -0.07, V/Va -0.04, V/Vb -0.08, V7/Va -0.17, viø7b -0.02, III+b -0.19
minor V/Vb: ic -0.02, imaj7c -0.04, va -0.03, Va -0.09, Vb -0.04, V7a -0.17, V7d -0.07, iiø7b -0.04, V/Va -0.11, V7/Va -0.06, V7/Vb 0.41, IIIb -0.05, III+b 0.34
minor V7/Va: ib -0.04, V7/ivb -0.1, va -0.26, vb -0.04, vc -0.01, Va -0.19, V7a -0.2, V+a -0.07, viiø7/VIc -0.11, V/Va -0.08, viio/Va -0.03, IIIa -0.03, IIIb -0.04, III+b -0.03, III+maj7b -0.04
minor V7/Vb: ic -0.2, va 0.11, Va 0.22, V7a -0.06, V7d 0.05, V/Vb -0.05, V7/Vb -0.01, Fr43b -0.02, viio7/Va -0.06, IIIb -0.04, III+b 0.24
minor V7/Vc: va 0.35, vb -0.04, v7a -0.03, Va -0.11, Vb -0.04, V/Vb -0.08, IIImaj7b -0.04
minor V7/Vd: vb -0.31, Va -0.08, Vb -0.05, V7c -0.04, iia -0.04, V7/Vc -0.03, viiob -0.04
minor Fr43a: V7/ivb -0.06, Va -0.03
minor Fr43b: Va -0.16
minor Fr43c: viø7d -0.04, VIa -0.08
minor vioa: va -0.03, Vb 0.29, V7b -0.04, iiø7c 0.23, ii7a -0.04, V/Vb -0.04, viob -0.14, ivb -0.07, VIIa -0.04
minor viob: ia -0.11, ib -0.33, ic -0.04, i7b -0.04, i7d -0.04, va -0.14, v7b -0.04, Va -0.12, Vb -0.04, iiø7a -0.02, iiø7d -0.11, iia -0.03, ii7a -0.17, V/Va -0.03, V/Vb -0.04, V7/Va -0.03, V7/Vb -0.04, viø7c 0.42, viio7/VIIc -0.04, viioa -0.24, viiob 0.39, viio7b -0.05, viio/Vc -0.11, iva -0.04, ivb -0.04, IVa -0.01, IVb -0.04, IV7b -0.04, VIIa -0.08, VIIb 0.11, viia -0.11, IIIa -0.3, III+maj7d -0.03
minor vioc: ia -0.04, Va -0.06, V7d -0.2, iioa -0.04, iiø7a -0.02, viiob -0.18, viioc -0.04, viio7a 0.28, viio7c -0.07, VIIb 0.42, III+maj7a -0.04
minor viø7a: Ia -0.04, Vb -0.15, V7a 0.01, V7b 0.16, iiø7c -0.07, iia 0.33, iic -0.01, ii7a -0.03, V/Va -0.03, V7/Va 0.32, V7/Vc -0.08, Fr43a -0.03, viob -0.04, viø7b -0.04, viioa 0.61, viiø7a -0.04, viio7a -0.14, viio7/Vb -0.04, ivc -0.02, IVb 0.12, IV7b 0.28, VIIa -0.15
minor viø7b: ia -0.14, va -0.03, Va 0.35, Vb -0.07, iia -0.04, V/Va 0.04, V7/Va -0.04, viioa -0.04, viiob 0.43, viio7a -0.11, viio7/Vc -0.04, ivb -0.04, IV7b -0.01, VIIb -0.04, VIa -0.04, VIb -0.02
minor viø7c: ia -0.05, vb -0.04, vc -0.03, Va -0.08, V7b -0.01, V7c 0.38, iiø7c -0.04, iia 0.36, ii7b -0.02, V/Va -0.05, viiob -0.17, viio7a -0.04, iv7b -0.02, IV7d -0.08, VIIa -0.02, III+maj7a -0.01, III+maj7d -0.04
minor viø7d: ib -0.04, Va -0.25, V7a -0.04, V7/Vb -0.07, viioc -0.11
minor viio7/VIIa: IVb -0.03, VIIa 0.37
minor viio7/VIIc: IV7a -0.04
minor #via: ia -0.04, Ia -0.01, Ib -0.06, Ic -0.04, vb -0.04, Va -0.14, Vb -0.21, iia -0.07, iib -0.01, ii7b -0.12, V/Va -0.04, V/Vb -0.04, V7/Va -0.08, V7/Vb -0.04, V7/Vc -0.03, viiob -0.05, viio/Vb -0.01, viio7/Va -0.03, IVa 0.28, IVb -0.21, IV7a -0.04, VIIa -0.09
minor #vib: Ia -0.04, vc -0.04, Va -0.06, iiø7b -0.04, iib -0.04, ii7d -0.01, viiø7a -0.04, IVb -0.02
minor #vic: iib -0.03, viiob -0.03
minor viio/iva: V7/ivb -0.04, iib -0.02, #vib -0.04, viio/ivb -0.07, viio7c -0.04, iva 0.27, IVa -0.03
minor viio/ivb: ia -0.04, Ib -0.07, V7/iva -0.04, #via -0.03, viiø7/ivb -0.04, viio7/ivc 0.23, iva 0.23, ivb -0.21, IVa -0.22, IVb -0.07, VIIa -0.03, bIImaj7b -0.04
minor viio/ivc: Vb -0.01, viio7d -0.03, ivb 0.13, IVa -0.18, IVb -0.01
minor viiø7/iva: iva 0.22, IVa -0.21
minor viiø7/ivb: va -0.02, V/Vb -0.04, viio/Vb -0.07, iva -0.04, ivb -0.04, IVb -0.03
minor viiø7/ivc: iva -0.08, ivb 0.3, IVb 0.29, IIIa -0.07
minor viiø7/ivd: ia -0.05, iia -0.04, IVa -0.04
minor viio7/iva: V7/ivb -0.18, va -0.02, viio7/ivb 0.44, iva 0.08, ivb -0.04, ivc -0.02, iv7a -0.07, IVa 0.23
minor viio7/ivb: Ib -0.04, viio/ivb -0.02, iva -0.03, ivb 0.38
minor viio7/ivc: viio7a -0.05, iva 0.09, ivb 0.16, iv7a -0.03, iv7b -0.04, IVb 0.17, VImaj7a -0.03
minor viioa: ia 0.19, ib -0.02, ic -0.18, Ia -0.1, Va -0.08, Vb 0.39, V7a -0.04, V7b -0.14, iia -0.02, viob -0.12, viiob -0.29, viio7a -0.19, viio7d -0.07, ivb -0.04, III+maj7c -0.03, VIa -0.04, VIb -0.07
minor viiob: ia 0.39, ib 0.36, ic -0.13, Ia -0.38, Ib 0.36, Va -0.21, Vb 0.12, V7a -0.15, V7b -0.01, V7c 0.3, V7d -0.07, iiob 0.45, iiø7d -0.12, iia -0.04, viob -0.02, vioc -0.06, viioa 0.06, viiob -0.18, viiø7b -0.04, viio7a 0.2, viio7b 0.28, viio7c -0.17, viio7d 0.12, It6c -0.04, ivc -0.14, IVa -0.1, IVb -0.04, IVc -0.04, IV7c -0.06, IIIa -0.04, VIb -0.04, VIc -0.03
minor viioc: ia 0.37, ib 0.05, Ia -0.07, Ib -0.03, Va -0.25, V7d -0.04, viiob -0.11, viio7/Va -0.2, ivb -0.08, VIa -0.03
minor viiø7a: ia 0.22, Ia 0.18, Va -0.01, Vb -0.03, V7b -0.06, IVc -0.08
minor viiø7b: ia -0.06, ib -0.07, Ia -0.03, Va -0.04, Vb -0.04, V7a -0.04
minor viiø7c: ia -0.05, ib -0.15, Ia -0.05, Va -0.04
minor viiø7d: ii7b -0.04, viiø7a -0.02
minor viio7a: ia 0.46, ib -0.11, ic -0.03, Ia -0.4, V7/ivd 0.37, Va 0.12, Vb -0.06, V7b -0.79, V7c -0.04, iia -0.04, viiob -0.04, viio7a -0.14, viio7d 0.28
minor viio7b: ia -0.08, ib -0.03, Ia 0.45, Va 0.12, Vb 0.57, V7b 0.36, iioa -0.06, iiob -0.04, iiø7a -0.04, iiø7b -0.04, iia -0.04, viioa -0.02, viiob -0.01, viio7a 0.35, viio7d -0.08, iva -0.03, ivc -0.07, IIIa -0.02, IIImaj7d -0.03, III+b -0.06, III+maj7d -0.04, VIb -0.08, VImaj7b -0.04
minor viio7c: ia -0.11, ib 0.62, ic -0.39, imaj7b -0.03, Ia 0.05, Ib -0.16, Va -0.3, Vb -0.14, V7b -0.04, V7c -0.01, V7d -0.01, iiø7b -0.01, iiø7c -0.07, V/Vb -0.04, V7/Vb -0.12, viø7c -0.04, viiob -0.14, viio7a -0.04, viio7b -0.04, viio7/Va 0.23, ivb 0.12, iv7a -0.14, III+maj7a -0.06, III+maj7b -0.04
minor viio7d: ia -0.04, ib -0.04, ic 0.2, imaj7c -0.05, Va -0.07, Vb -0.22, V7a 0.25, iiø7c -0.04, viio7c 0.42, viio7/Va -0.04, ivb -0.11, IIIb -0.1, III+b -0.11, VIa -0.16
minor viio/Va: va -0.18, Va -0.1, viio/Vc -0.04
minor viio/Vb: va -0.23, Va -0.05, Vb -0.12, viio/VIb -0.07, V7/Vb -0.04
minor viio/Vc: Va 0.24
minor viiø7/Va: Va -0.04
minor viiø7/Vb: Vb -0.02, viio7/Va -0.02
minor viio7/Va: ic 0.2, va -0.04, Va 0.34, V7a -0.08, V7d -0.07, V/Vb -0.14, V7/Vb -0.42, viiø7/ivb -0.04, viio7/Va -0.09
minor viio7/Vb: ic 0.12, va 0.42, vb -0.25, Vb 0.2, V7b 0.08, iiø7c -0.04, V/Va -0.02, viioa -0.04, viio7/Va -0.04
minor viio7/Vc: ia -0.05, ib -0.07, va -0.06, vb -0.04, v7b -0.04, Va 0.53, Vb -0.04, iiø7b -0.04, V7/Vb -0.01, viio7/Va -0.04, viio7/Vb 0.43, #io7a -0.04, VIIa -0.05, VIIb -0.04, viia -0.04
minor viio7/Vd: Va -0.18, viio/Vc -0.07
minor It6a: III+b -0.03
minor It6b: Ic -0.04, va -0.04, vb -0.03, Va -0.1, V7a -0.05, ivb -0.05
minor It6c: Vb -0.04
minor Ger65a: ic -0.04, va -0.03, Va -0.04
minor Ger65b: ia -0.07, ic 0.24, i7c -0.04, V7/ivb -0.03, va -0.01, Va -0.08, V7a -0.04, iiø7b -0.14, iiø7c -0.04, iva -0.04, V7/VIb -0.04, VIb -0.02, Na -0.02
minor Ger65c: i7d -0.04, V7c -0.02, IIIa -0.09, VIa -0.04
minor Ger65d: Vc -0.04
minor #ioa: V/Va -0.03
minor #io7b: iva -0.04
minor #io7c: viø7a -0.05, IVb -0.04
minor #io7d: ivb -0.03, IVb -0.04
minor iva: ia 0.09, ib -0.19, ic 0.12, i7b -0.07, i7c -0.04, Ia -0.2, Ib -0.2, V7/ivc -0.09, va -0.36, vb -0.11, v7a -0.17, Va 0.21, Vb 0.35, V7a 0.45, V7b -0.08, V7d -0.11, viio/VIa -0.04, viio/VIb -0.08, viiø7/VIa -0.12, iioa -0.07, iiob -0.04, iiø7a 0.01, iiø7b -0.25, iiø7c -0.03, iia -0.04, iib -0.04, ii7b -0.1, V/Vb 0.11, V7/Vb 0.27, viio/iva -0.04, viio/ivb -0.19, viio7/iva 0.43, viioa -0.13, viiob 0.25, viioc -0.08, viiø7c -0.12, viio7a 0.15, viio7b 0.27, viio7c -0.12, viio7/Va 0.1, Ger65b -0.02, iva -0.43, ivb 0.37, ivc -0.18, iv7a -0.23, iv7b -0.06, iv7c -0.04, iv7d -0.27, IVa -0.08, IVb -0.04, IV7d 0.11, VIIa -0.06, VIIb -0.19, VII7a -0.04, VII7b -0.09, VII7c -0.07, viib -0.06, IIIa 0.03, IIIb -0.16, IIIc -0.04, IIImaj7a -0.04, III+a -0.04, III+b -0.21, III+maj7b -0.04, VIa 0.08, VIb -0.25, VIc -0.08, VImaj7c -0.04, Nb -0.04, bIImaj7a -0.07, bIImaj7b -0.05
minor ivb: ia 0.21, ib 0.19, ic 0.68, imaj7c -0.04, Ia -0.32, Ib -0.07, Ic -0.17, V7/iva -0.04, V7/ivb 0.07, V7/ivc 0.07, V7/ivd -0.04, va -0.01, vb -0.04, v7a 0.17, Va 0.3, Vb 0.47, V7a 0.13, V7b -0.14, V7d -0.04, viio/VIa -0.04, viiø7/VIc -0.04, viiø7/VId -0.16, iioa 0.37, iiob -0.06, iioc 0.1, iiø7a -0.07, iiø7b 0.1, iiø7c 0.29, iib -0.04, ii7b -0.11, viio/iva -0.04, viio/ivb -0.11, viio/ivc -0.04, viiø7/ivb -0.04, viio7/iva 0.15, viio7/ivb -0.06, viioa -0.18, viioc -0.04, viio7a 0.34, viio7b -0.07, viio7c -0.55, viio7d -0.1, viio7/Va 0.14, It6b -0.03, iva -0.15, ivb -0.22, ivc 0.29, iv7a 0.09, iv7b 0.55, iv7d -0.03, IVa -0.13, IVb 0.22, IV7a -0.17, IV7b -0.04, VIIa -0.17, VIIc -0.03, VII7a -0.07, VII7c -0.04, VII7d -0.13, viia -0.04, IIIa -0.07, IIIb -0.36, IIIc -0.01, III+b 0.25, III+maj7b -0.04, VIa -0.09, Nc -0.03
minor ivc: ia -0.06, ib -0.04, Ia 0.49, vb -0.02, Vb -0.21, V7b -0.36, V7c -0.04, iiø7d -0.08, iia -0.02, viioa -0.02, viio7a -0.19, iva -0.06, iv7c -0.05, VII7b -0.04
minor iv7a: ia -0.1, ib -0.16, ic -0.26, Ic -0.07, va -0.36, v7a 0.3, Va 0.44, Vb -0.29, Vc -0.04, V7a 0.19, V7b 0.33, V7c -0.05, V7d -0.34, viio/VIb -0.04, viiø7/VId -0.04, iiob -0.02, iioc -0.04, iiø7a -0.08, iiø7b 0.05, iiø7c -0.21, iia -0.02, iib -0.04, ii7a -0.04, ii7b -0.1, V/Vb -0.06, viø7c -0.02, viio7/ivc -0.04, viio7a -0.33, viio7c -0.1, viio7/Va 0.11, ivb 0.47, iv7a -0.08, iv7c -0.08, IV7b -0.04, VIIa 0.33, VII7a -0.04, VII7c -0.03, IIIa -0.02, IIIb -0.08, IIImaj7a -0.03, V7/VIb -0.03, III+b -0.04, Nb -0.04
minor iv7b: ia -0.03, ib -0.04, ic -0.17, Va 0.24, Vb -0.22, V7a -0.01, V7b 0.18, iiob 0.36, iioc 0.31, iiø7b 0.13, iiø7c -0.3, viioa -0.37, viio7c -0.04, viio7d 0.38, viio7/Va -0.1, iva -0.12, ivb -0.46, iv7a 0.54, IV7a -0.04, IV7b 0.45, VIIa -0.34, VII7a -0.12, VII7d -0.04, viia -0.01, IIIb -0.17, IIImaj7b -0.04, III+b -0.06, bIImaj7b -0.04
minor iv7c: Va -0.03, Vb -0.2, V7b -0.04, V7c -0.04, viio7a -0.02, ivb -0.04, iv7a -0.08, VIa -0.04
minor iv7d: i7a -0.04, V7/ivb -0.03, vc -0.04, Vb -0.13, V7a -0.04, iiob -0.03, iioc -0.08, iiø7a -0.07, iiø7b -0.03, viiob -0.08, viio7b 0.34, viio7c -0.03, iv7a -0.03, VIIb -0.29, VIb -0.07
minor IVa: ia -0.5, ib -0.25, ic -0.09, i7c -0.01, Ia -0.18, Ib -0.35, Ic -0.02, V7/ivc -0.11, va -0.09, vb -0.08, v7a -0.03, Va -0.62, Vb -0.16, V7a -0.28, V7b 0.26, V7c -0.05, V7d -0.25, iiob -0.04, iiø7a -0.27, iiø7c -0.08, iia 0.07, iib 0.37, ii7a -0.12, V/Va -0.04, V/Vb 0.15, vioc -0.02, viø7a -0.04, viø7c -0.07, #via -0.07, viio/ivb -0.08, viioa -0.21, viiob -0.06, viioc 0.59, viiø7b -0.04, viiø7c -0.03, viio7a 0.59, viio7b -0.19, viio7c -0.04, viio7/Va 0.17, iva -0.07, ivb -0.03, IVa 0.28, IVb -0.38, IVc -0.01, IV7a -0.1, IV7b 0.28, IV7d -0.07, VIIa -0.21, VIIb -0.2, IIIb -0.12, III+b 0.31, III+maj7b -0.04, VIa -0.03, VIb -0.03
minor IVb: ia 0.41, ic -0.08, Ia -0.38, Ic -0.11, V7/iva -0.07, V7/ivb -0.06, V7/ivd -0.04, va -0.03, vb -0.13, v7b -0.04, Va -0.25, Vb -0.07, Vc -0.04, V7a -0.11, V7b 0.26, V7d -0.08, viiø7/VIa -0.04, iioa -0.05, iia 0.21, iib -0.06, ii7a -0.08, ii7b -0.06, V7/Vb -0.01, vioa -0.08, #via -0.02, viio/ivb -0.08, viioa -0.13, viiø7a 0.21, viiø7d -0.02, viio7a 0.03, viio7d 0.04, viio7/Vb -0.1, viio7/Vc -0.04, #io7c -0.04, iva -0.14, ivb -0.2, IVa -0.39, IVb -0.17, IV7a -0.05, IV7b 0.1, VIIa -0.08, VIIb -0.06, viia -0.08, VIa 0.42, VI7a -0.07
minor IVc: Ia -0.04, ii7d -0.04, viø7a -0.02, viioa -0.04, viiob -0.01, viiø7a -0.04, IVb -0.04, VIIb -0.04
minor IV7a: va -0.04, vb -0.17, Va -0.29, V7a -0.01, V7b -0.27, iiob -0.16, iiø7a -0.03, iiø7b -0.04, iiø7c -0.07, V/Vb -0.02, V7/Vb -0.04, viiob -0.26, viio7b -0.27, viio7c -0.04, iva 0.43, ivb -0.03, VIIa 0.59, VIIb -0.08, IIImaj7b -0.01
minor IV7b: vb 0.14, v7b -0.13, Vb -0.09, V7b 0.16, iic -0.03, viob -0.04, viioa 0.34, viio7a 0.13, viio7d -0.01, ivb -0.07, IVa -0.04, IVb -0.03, IV7a 0.63, IV7b -0.18, VIIa 0.08, VIIb -0.04, VII7a -0.03, viia -0.07
minor IV7c: ia -0.04, ib -0.04, Va -0.12, Vb -0.09, viioa -0.04, viiob -0.08, IV7d -0.07, VIIa -0.07, VIIb -0.06, IIIa -0.04
minor IV7d: ia -0.14, V7/ivb -0.04, Va -0.04, Vb 0.1, V7c -0.04, V7d -0.03, viiø7/VIc -0.04, iioa -0.04, iia 0.08, iib -0.07, V7/Va -0.03, viob -0.04, viio7/iva -0.07, viioa 0.35, viiob -0.05, viioc -0.05, viio7a -0.2, viio7b 0.52, ivb -0.03, IV7a -0.1, VIIa -0.07, VII7b -0.04, viib -0.08, VIb -0.03
minor VIIa: ia -0.42, ib -0.2, i7a -0.12, Ia -0.04, Ib -0.07, va 0.27, vb -0.13, v7a -0.08, Va -0.13, Vb -0.15, V7a -0.28, V7b 0.05, iioa 0.38, iiob 0.19, iioc -0.08, iiø7a -0.2, iiø7b -0.07, iiø7d -0.04, iia -0.04, iic -0.17, ii7d -0.01, V/Va -0.04, V/Vb -0.03, V7/Vd -0.11, vioa -0.14, viob -0.04, viø7a -0.03, viø7d -0.04, #vib -0.04, viio/iva -0.1, viio/ivb 0.4, viio/ivc -0.15, viiø7/ivb -0.03, viiø7/ivc 0.24, viio7/iva -0.22, viioa 0.33, viiob 0.01, viioc -0.04, viiø7b -0.02, viiø7c -0.04, viio7a 0.42, viio7b -0.09, viio/Vb -0.04, viio7/Va -0.04, viio7/Vb -0.14, #io7c -0.01, iva 0.42, ivb 0.35, ivc -0.04, IVa -0.08, IV7b -0.28, IV7c -0.08, IV7d -0.01, VIIa -0.15, VIIb -0.21, VIIc -0.01, VII7a -0.22, VII7b -0.09, VII7d 0.15, viia -0.02, IIIa -0.29, IIIb -0.33, IIIc -0.04, IIImaj7a 0.33, IIImaj7c -0.08, III+b -0.13, III+maj7a -0.04, VIa -0.04, VIb -0.04
minor VIIb: ia -0.18, ib -0.18, Ib -0.07, V7/ivb -0.08, va -0.14, vb -0.02, vc -0.08, v7c -0.01, Va 0.38, Vb 0.05, V7a -0.17, V7b -0.1, V7c -0.11, V7d 0.14, iioa -0.15, iiob 0.13, iiø7b -0.04, iiø7d 0.64, ii7b -0.03, ii7c -0.08, viob -0.12, viø7b -0.08, viio/iva -0.12, viiø7/iva 0.19, viiø7/ivc -0.03, viiø7/ivd -0.04, viio7/iva -0.04, viiob 0.13, viioc -0.14, viio7a 0.06, viio7b -0.13, viio7c -0.01, iva -0.11, ivb 0.21, ivc 0.08, IVa -0.32, IVb -0.04, IV7d -0.1, VIIa -0.3, VIIb -0.11, VIIc 0.28, VII7b 0.31, IIIa 0.65, IIIb -0.04, IIImaj7a -0.18, IIImaj7d -0.07, V7/VIa -0.1, V7/VId -0.03, III+b -0.07, III+maj7a -0.05, VIb 0.28, VImaj7b -0.02
minor VIIc: Ib -0.08, V7a -0.01, IVa -0.04, IV7a -0.03, IIIa -0.07, IIIb -0.04, IIIc -0.03, IIImaj7a -0.08
minor VII7a: ia -0.27, ib -0.27, Ia -0.1, V7/ivd -0.06, v7b -0.04, Va -0.04, Vb 0.23, Vc -0.02, V7a -0.01, V7b -0.28, iioa -0.04, viø7c -0.01, viio/ivb -0.08, viio7a -0.19, IIIa -0.18, IIIb -0.04, IIImaj7a -0.11, III+maj7a -0.17
minor VII7b: ia -0.04, ib -0.15, V7/ivb -0.12, Vb -0.16, V7b -0.04, viio7a -0.1, iva -0.01, IIIa 0.22, IIImaj7d -0.04, V7/VIa -0.08, III+a -0.04, VIb -0.04, VImaj7b -0.03
minor VII7c: ia -0.04, ib -0.04, Ia -0.04, Va -0.04, V7a -0.14, iv7a -0.01, IIIa -0.09, III+b -0.05
minor VII7d: ia -0.04, ib -0.01, ic -0.08, va -0.29, v7a -0.1, Va -0.11, V7a 0.33, viio/VIb -0.04, iiob -0.08, viio/ivb -0.14, Ger65a -0.04, ivb -0.02, IV7b -0.04, IV7c -0.03, IIIa -0.05, IIIb 0.28, III+b 0.2, VIa -0.14
minor viia: ia -0.04, Ia -0.04, V7/ivb -0.04, Vb -0.1, viio/VIb -0.01, iiø7b -0.08, Ger65b -0.03, iva 0.2, ivb -0.04, IVa -0.04, IIIa -0.06, IIIb -0.01, VIa -0.04, VIb -0.04
minor viib: ia -0.13, Ia -0.1, viob -0.04, viio7/VIIa -0.02, IV7b -0.07, VII7b -0.09, viib -0.02, IIIa -0.07
minor IIIa: ia -0.55, ib -0.08, ic -0.2, i7a -0.04, i7d -0.04, Ia -0.03, Ib 0.39, V7/ivb -0.02, va 0.6, vb -0.08, vc -0.12, v7a -0.03, v7b -0.08, v7c -0.19, v7d -0.18, Va 0.07, Vb 0.1, Vc -0.03, V7a -0.42, V7b 0.67, V7c -0.06, V7d -0.18, viiø7/VIa -0.03, iioa -0.03, iiob 0.19, iiø7a -0.04, iiø7b -0.1, iiø7d 0.07, iia -0.02, iib 0.28, ii7b -0.04, V/Va -0.03, Fr43c -0.04, vioa -0.08, viob 0.01, vioc -0.08, viø7a -0.21, viø7b 0.23, viø7c -0.37, viio/iva -0.06, viio/ivb -0.03, viiø7/ivd -0.09, viio7/iva 0.04, viioa -0.59, viiob 0.34, viioc -0.04, viio7a 0.49, viio7b 0.12, viio7c -0.13, viio7d -0.29, Ger65b -0.04, iva 0.4, ivb -0.17, iv7a -0.05, iv7b -0.26, iv7d -0.11, IVa -0.15, IVb 0.27, IV7a -0.06, IV7b -0.04, IV7c -0.07, IV7d 0.33, VIIa 0.19, VIIb -0.04, VIIc -0.04, VII7b -0.09, IIIa -0.26, IIIb -0.18, IIIc -0.08, IIImaj7a -0.23, IIImaj7d -0.23, V7/VIa -0.13, V7/VIb -0.04, V7/VId -0.04, III+b 0.27, III+maj7a -0.02, III+maj7b -0.03, III+maj7d -0.04, VIa -0.2, VIb -0.08, VImaj7a -0.25, VImaj7b -0.03, VImaj7c -0.08, VImaj7d -0.04, bIImaj7b -0.08
minor IIIb: ia 0.3, ib -0.25, ic -0.04, i7b -0.08, i7c -0.04, Ia -0.04, V7/ivc -0.05, V7/ivd 0.2, va -0.28, vb -0.04, v7a -0.04, v7d -0.08, Va -0.13, Vc 0.25, V7a -0.11, V7b -0.04, V7d -0.11, viiø7/VIa -0.04, iioa -0.04, iiob -0.41, iiø7b -0.19, iiø7c -0.07, Fr43c -0.04, viø7a 0.37, viio/ivc -0.01, viiob -0.07, viioc -0.03, viio7a -0.31, viio7c 0.17, It6b -0.04, Ger65b -0.14, iva -0.45, ivb 0.07, iv7a -0.32, iv7b -0.11, IVa -0.13, IVb -0.12, IV7a -0.04, IV7b 0.3, IV7d -0.02, VIIb -0.16, VII7a -0.04, VII7b -0.04, VII7d -0.04, IIIa 0.32, IIIb -0.07, IIIc -0.09, IIImaj7a 0.32, V7/VIa -0.06, III+a -0.04, III+b 0.31, VIa -0.32, VImaj7a 0.15
minor IIIc: ia -0.04, iioc -0.04, viio7a -0.02, ivb -0.02, iv7b -0.04, IVb 0.23, IV7b -0.24, VIIa -0.04, VIa -0.12, VImaj7a -0.15
minor IIImaj7a: ia -0.15, ib -0.03, ic -0.04, vc -0.04, Va -0.21, Vb -0.01, V7a -0.06, V7b 0.36, V7c 0.33, V7d -0.07, iiø7a 0.24, viioa -0.04, viiob -0.17, Ger65b -0.03, iva -0.1, ivb -0.11, iv7b -0.12, IVa 0.26, IVb -0.03, IV7a -0.04, VIIc -0.04, III+a -0.04, VIa 0.13, VIb -0.04, VImaj7a 0.32
minor IIImaj7b: ia -0.04, V7b -0.04, V7d -0.04, iiø7b -0.04, iia -0.04, viø7a -0.04, viio7/Va -0.03, viio7/Vb -0.04, IV7d -0.04, VImaj7a -0.01
minor IIImaj7c: viø7a -0.08, viio7a -0.04, IVb -0.06
minor IIImaj7d: ia -0.25, Vb -0.04, V7b -0.07, iiø7d -0.06, viob -0.03, viioa -0.04, viio7a -0.1, VIb -0.1
minor V7/VIa: ia -0.02, Ib 0.32, iiob -0.03, iiø7b -0.01, V7/Va -0.11, viio7/iva -0.16, iva -0.19, ivb -0.14, iv7a -0.04, VIa 0.3, VIb -0.04, VImaj7a -0.34
minor V7/VIb: Ib -0.04, VIa -0.23
minor V7/VIc: VIb -0.02
minor V7/VId: ia -0.2, i7a -0.01, viio/VIc -0.04, Ger65b -0.04, VIb -0.12
minor III+a: ia -0.11, Va -0.04, Vb -0.04, V7c -0.04, iv7b -0.04, III+b -0.11, VIa -0.04
minor III+b: ia -0.37, ib 0.51, ic -0.27, Va -0.05, Vb 0.25, V7a 0.25, V7b -0.07, V7c -0.1, V7d -0.11, iiø7b -0.16, iiø7c -0.04, viø7a 0.34, viø7d -0.14, viioc -0.1, viiø7a -0.04, viio7c -0.04, viio7/Va 0.15, viio7/Vb -0.11, ivb -0.39, iv7a -0.07, iv7b 0.27, IV7b 0.04, III+maj7a 0.31, VIa 0.31, VImaj7a -0.04
minor III+maj7a: ia -0.19, ib -0.04, ic -0.07, Ib -0.07, Va -0.03, V7a -0.13, V7b -0.04, viø7c -0.02, viiob -0.09, viio7c -0.05, viio7/Va -0.01, It6b -0.04, ivb 0.48, iv7b -0.06, III+a -0.04, III+maj7b -0.02, VIa -0.23, VIb -0.08, VImaj7a 0.33
minor III+maj7b: ia -0.11, ib 0.34, Ia -0.04, Va -0.18, iiø7b -0.06, ivb -0.1, IIIa -0.03, VImaj7a -0.07
minor III+maj7c: IVb -0.01, VIb -0.03
minor III+maj7d: ia -0.04, ib -0.11, Vb -0.05, ivc -0.01, VIb -0.04
minor VIa: ia -0.34, ib 0.33, ic -0.04, i7c -0.04, imaj7c -0.04, Ia -0.07, Ib -0.07, Ic 0.38, V7/ivb -0.08, va -0.28, vb 0.53, v7a -0.04, v7d -0.04, Va 0.17, Vb -0.27, V7a 0.24, V7d -0.03, viiø7/VIb -0.04, iioa -0.17, iiob 0.22, iioc -0.37, iiø7a -0.38, iiø7b 0.54, iiø7c -0.28, V/Vb 0.31, V7/Vb -0.01, vioa -0.04, viio7/VIIa -0.1, viio/iva 0.36, viio/ivb -0.14, viio7/iva -0.21, viio7/ivb -0.04, viio7a -0.01, viio7b -0.08, viio7c -0.19, viio7/Va -0.01, Ger65b -0.04, #io7b -0.04, iva 0.26, ivb -0.35, ivc -0.04, iv7a 0.27, iv7b -0.29, iv7d -0.07, IVb -0.25, IV7b 0.49, VIIa -0.18, VIIb -0.25, VII7a -0.04, VII7b -0.1, VII7d -0.19, viia -0.01, IIIa -0.01, IIIb -0.06, IIImaj7a -0.04, V7/VIc -0.02, III+b -0.04, III+maj7b -0.04, VIa -0.14, VIb -0.13, VImaj7a 0.2, VImaj7b -0.04, VImaj7d -0.37, VI7a -0.05, Na -0.07, Nb -0.16, bIImaj7b -0.08, bIImaj7c -0.07
minor VIb: ia -0.37, ib -0.22, Ia -0.01, va -0.04, vb 0.33, vc -0.06, Va -0.09, Vb 0.05, V7b -0.09, V7c -0.18, viio/VIa -0.03, viio/VIb -0.1, iioa 0.09, iiob -0.06, iiø7a -0.08, iiø7b -0.04, iiø7c -0.03, iiø7d 0.18, viio/ivc -0.07, viiø7/ivc -0.04, viio7/ivc 0.2, viioa -0.04, viiob 0.1, viio7a -0.19, viio7b 0.19, iva -0.04, ivb -0.26, ivc -0.15, iv7a -0.04, iv7b 0.35, IV7b -0.04, VIIb 0.42, VII7b -0.04, IIIa -0.37, IIIb -0.07, IIImaj7a -0.07, IIImaj7d -0.03, V7/VIb -0.09, V7/VId -0.06, VIa -0.17, VIc -0.03, VImaj7a -0.02, VImaj7b -0.04, bIImaj7d -0.03
minor VIc: ia -0.03, va -0.06, iioa -0.13, iiø7a -0.04, iv7a -0.03, VII7b -0.04
minor VImaj7a: ia -0.06, ib -0.04, ic 0.45, v7b -0.02, Va -0.3, V7a -0.04, iioa -0.04, iiob -0.25, iioc -0.08, iiø7b -0.19, iiø7c 0.4, V7/Vb 0.2, viio7b -0.04, viio7c -0.03, iva 0.31, ivb 0.16, iv7a -0.32, iv7b 0.32, iv7d -0.03, IVb -0.06, IV7b -0.06, VIIa -0.04, VII7a -0.04, VII7b -0.01, IIIb -0.11, III+a -0.04, III+b -0.17, VIa -0.07, VImaj7d -0.01
minor VImaj7b: ia -0.17, ib -0.04, ic -0.05, Vb -0.07, iioa 0.25, iiø7a -0.02, iiø7d -0.17, ivb -0.05, ivc -0.11, IV7b -0.07, VIIb -0.04, VImaj7a -0.04
minor VImaj7c: ia -0.04, Va -0.04, viio7/iva -0.04, viio7/ivc -0.04, viioa -0.04, iv7a -0.02, VIIa -0.04, VIIb -0.03, VIa -0.04, VImaj7a -0.03
minor VImaj7d: Va -0.06, iiob 0.17, iiø7b -0.09, iiø7c -0.04, iib -0.04, viio7b -0.02, viio7c -0.04, iva -0.12, ivb -0.14, iv7a -0.04, Nb -0.02
minor VI7a: V7a -0.07, viio7/VIIa -0.16, ivb 0.44, IVb -0.04
minor Na: Vb -0.22, viio/VIb -0.06, viiø7/VIc -0.04, viio7a -0.04, iv7c -0.05, V7/VId -0.07, VIa -0.06, VIb -0.04
minor Nb: V7/ivb -0.01, viio/VIa -0.04, viio7/Va 0.04, iva -0.06, ivb -0.02, IV7a -0.04, IIIa -0.04, IIIb -0.11, III+b -0.04, VIa -0.09
minor Nc: Ic -0.04, iiø7b -0.04, viio7/ivb -0.03
minor bIImaj7a: ia -0.04, Ia -0.06, viib -0.03
minor bIImaj7b: ia -0.08, ib -0.01, V7a -0.04, iva -0.04, VIIb -0.04, III+b -0.04
minor bIImaj7c: ivb -0.03, iv7a -0.04, Nc -0.04
minor bIImaj7d: V7b -0.03
# root to root
major -5: -1 -0.01, 4 -0.04, 6 -0.04
major -4: -4 -0.04, -3 -0.04, -1 -0.11, 0 -0.12, 1 -0.12, 2 -0.18, 5 -0.07
major -3: -4 -0.04, -1 -0.11, 1 -0.16, 2 -0.11, 3 -0.08, 4 0.41, 5 -0.07
major -2: -2 -0.09, -1 -0.42, 0 -0.76, 1 -0.02, 2 0.18, 3 -0.31, 4 -0.33, 5 0.39, 6 -0.04
major -1: -4 -0.2, -2 -0.59, -1 -0.19, 0 0.12, 1 0.16, 2 0.05, 3 -0.18, 4 -0.12, 5 0.19, 6 -0.14, 7 0.31, 8 -0.15
major 0: -5 -0.04, -4 -0.17, -3 -0.18, -2 -0.34, -1 0.25, 0 0.07, 1 0.4, 2 0.12, 3 0.13, 4 0.2, 5 0.15, 6 0.33, 7 -0.44, 8 -0.08
major 1: -4 -0.1, -2 0.14, -1 0.2, 0 0.45, 1 0.41, 2 -0.6, 3 0.18, 4 0.01, 5 -0.28, 6 0.04, 7 -0.11, 8 0.18, 9 -0.09, 10 -0.04
major 2: -3 -0.08, -2 -0.34, -1 -0.82, 0 -0.48, 1 0.31, 2 0.08, 3 -0.59, 4 -0.48, 5 0.58, 6 -0.41, 7 -0.32, 8 -0.07, 9 0.38
major 3: -2 -0.21, -1 0.11, 0 -0.1, 1 -0.13, 2 0.2, 3 -0.1, 4 -0.57, 5 -0.59, 6 0.52, 7 -0.31, 8 -0.07, 9 -0.19
major 4: -2 -0.07, -1 -0.13, 0 -0.59, 1 -0.3, 2 -0.19, 3 -0.42, 4 0.1, 5 -0.2, 6 -0.29, 7 0.47, 9 -0.04
major 5: -4 -0.04, -1 0.2, 0 0.67, 1 -0.25, 2 -0.36, 3 -0.15, 4 -0.65, 5 -0.28, 6 -0.25, 7 -0.24, 8 -0.28, 9 -0.27
major 6: 0 -0.25, 1 0.48, 2 -0.39, 3 -0.21, 4 -0.37, 5 -0.31, 6 0.03, 8 -0.24, 9 -0.04
major 7: -2 -0.04, -1 -0.32, 0 -0.05, 1 -0.27, 2 0.11, 3 -0.26, 4 -0.03, 5 -0.1, 6 -0.04, 7 -0.14
major 8: -1 -0.18, 0 -0.13, 2 -0.2, 3 0.15, 4 -0.34, 5 -0.03, 6 -0.04, 8 -0.15, 9 -0.04
major 9: 0 -0.08, 1 -0.1
minor -5: -5 -0.04, -4 -0.17, -3 -0.25, -2 -0.07, -1 -0.24, 0 -0.22, 1 -0.36, 2 -0.04, 4 -0.03, 5 -0.04, 6 0.04
minor -4: -5 -0.37, -4 -0.55, -3 -0.6, -2 -0.21, -1 0.16, 0 -0.1, 2 0.26, 3 -0.26, 4 0.05, 5 -0.21, 6 -0.03, 7 -0.04
minor -3: -5 -0.08, -4 -0.32, -3 -0.01, -2 -0.12, -1 -0.19, 0 -0.47, 1 0.12, 2 -0.28, 3 0.06, 4 -0.15, 5 -0.2, 6 -0.29
minor -2: -4 0.09, -3 0.03, -2 -0.24, -1 0.05, 0 -1.13, 1 -0.24, 2 0.25, 3 -0.44, 4 0.07, 5 0.22, 6 0.12, 7 -0.01
minor -1: -5 -0.23, -4 -0.06, -3 -0.41, -2 -0.46, -1 0.11, 0 -0.03, 1 -0.05, 2 0.08, 3 -0.34, 4 -0.07, 5 0.35, 6 0.2, 7 -0.04
minor 0: -5 -0.07, -4 0.28, -3 -0.32, -2 0.22, -1 0.12, 0 -0.11, 1 0.42, 2 0.03, 3 0.19, 4 0.12, 5 0.41, 6 0.11, 7 -0.03
minor 1: -4 0.23, -3 -0.1, -2 -0.61, -1 0.1, 0 0.28, 1 0.32, 2 -0.53, 3 0.07, 4 0.27, 5 0.06, 6 -0.23, 7 -0.09
minor 2: -5 -0.03, -4 -0.39, -3 -0.35, -2 -0.6, -1 -0.06, 0 -0.1, 1 0.14, 2 0.48, 3 -0.05, 4 -0.2, 5 0.11, 6 0.1
minor 3: -4 -0.05, -3 -0.37, -2 0.17, -1 0.14, 0 -0.69, 1 -0.06, 2 -0.03, 3 0.2, 5 0.39, 6 -0.2
minor 4: -5 -0.04, -4 -0.03, -3 -0.07, -2 -0.03, -1 0.47, 0 -0.39, 1 -0.08, 2 -0.09, 3 -0.11, 4 0.49, 5 -0.11, 6 -0.07
minor 5: -4 -0.37, -3 -0.41, -1 -0.54, 0 0.72, 1 -0.18, 2 -0.07, 3 -0.22, 5 0.19, 6 0.04
minor 6: -5 -0.02, -4 -0.06, -3 -0.15, -2 -0.12, -1 -0.09, 0 0.2, 1 0.3, 2 -0.66, 4 -0.04, 5 -0.04, 6 0.23, 7 -0.04
minor 7: -1 -0.13, 1 -0.04, 2 -0.03, 3 -0.05, 5 -0.02
# bass to bass
major -5: 0 -0.19
major -4: -4 -0.07, -1 -0.37, 1 0.02, 3 0.21, 5 -0.03, 6 -0.04
major -3: -3 -0.04, -1 -0.27, 0 -0.21, 1 -0.33, 2 -0.35, 4 0.41, 5 -0.18
major -2: -4 -0.05, -2 -0.19, -1 -0.47, 0 -0.77, 1 0.49, 2 0.43, 3 0.13, 4 -0.16, 5 -0.02, 6 -0.04, 7 -0.23
major -1: -3 -0.36, -2 -0.39, -1 -0.26, 0 -0.48, 1 -0.02, 2 0.38, 3 -0.04, 4 0.2, 5 0.16, 6 0.6, 7 0.39, 8 0.08
major 0: -4 -0.18, -3 -0.15, -2 0.22, -1 0.47, 0 -0.86, 1 0.19, 2 -0.28, 3 0.36, 4 0.56, 5 -0.02, 6 -0.24, 7 -0.24, 8 0.35, 9 -0.04
major 1: -4 -0.04, -2 -0.37, -1 0.04, 0 0.43, 1 -0.23, 2 -0.13, 3 0.15, 4 -0.4, 5 -0.22, 6 0.22, 7 -0.35, 8 -0.15, 9 -0.04
major 2: -5 -0.19, -3 -0.11, -2 -0.23, -1 -0.34, 0 0.07, 1 0.36, 2 -0.18, 4 -0.14, 5 0.07, 6 -0.33, 7 -0.15, 8 -0.15, 9 0.05
major 3: -4 0.18, -2 -0.07, -1 0.64, 0 0.08, 1 0.07, 2 -0.09, 3 -0.39, 4 0.36, 5 0.28, 6 0.37, 7 0.15, 8 -0.33, 9 -0.1
major 4: -3 -0.34, -2 -0.04, -1 -0.07, 0 0.02, 1 0.14, 2 -0.21, 3 0.02, 4 -0.56, 5 0.09, 6 -0.51, 8 -0.23, 9 -0.08
major 5: -2 0.62, -1 -0.08, 0 0.38, 1 0.56, 2 -0.28, 3 0.19, 4 -0.01, 5 -0.1, 7 -0.32, 8 -0.51
major 6: -1 -0.44, 1 0.23, 2 0.11, 3 -0.07, 4 -0.24, 5 -0.19, 6 -0.13, 8 -0.2, 9 -0.06
major 7: -1 -0.15, 0 -0.08, 2 -0.4, 3 -0.03, 4 -0.4, 5 -0.06, 7 0.14, 9 -0.14
major 8: -1 -0.06, 3 -0.06, 4 0.61, 5 -0.08, 6 -0.17, 8 0.18
major 9: 0 -0.04, 2 -0.05, 4 -0.36, 9 -0.06
minor -6: 1 -0.18, 4 -0.04
minor -5: -5 -0.21, -4 -0.09, -3 -0.09, -2 -0.06, 0 -0.73, 2 -0.09, 3 -0.09, 5 -0.25
minor -4: -5 -0.13, -4 -0.25, -3 -0.08, -2 -0.25, -1 0.43, 0 -0.29, 1 0.56, 2 -0.54, 3 0.26, 4 0.1, 5 -0.23, 6 0.31
minor -3: -5 -0.33, -4 -0.3, -3 -0.6, -2 -0.17, -1 -0.22, 0 -0.22, 1 0.42, 2 0.18, 3 -0.1, 4 0.65, 5 0.57, 6 -0.15
minor -2: -4 -0.07, -3 -0.36, -2 -0.3, -1 0.12, 0 -0.68, 1 -0.21, 2 -0.43, 3 -0.02, 4 -0.39, 5 -0.07, 6 -0.13
minor -1: -5 -0.17, -4 -0.22, -2 0.02, -1 -0.37, 0 -0.64, 1 0.12, 2 0.3, 3 0.02, 4 -0.22, 5 0.13, 6 0.57
minor 0: -5 -0.26, -4 0.29, -3 0.57, -2 -0.22, -1 0.1, 0 -0.52, 1 0.03, 2 0.29, 3 0.2, 4 -0.25, 5 0.03, 6 0.16, 7 -0.07
minor 1: -4 0.34, -3 -0.02, -2 0.18, -1 -0.2, 0 0.31, 1 -0.1, 2 -0.02, 3 0.47, 4 -0.56, 5 -0.12, 6 -0.03
minor 2: -5 -0.14, -4 0.16, -2 -0.42, -1 0.09, 0 -0.08, 1 -0.2, 2 -0.03, 3 0.17, 4 0.04, 5 0.55, 6 -0.17
minor 3: -4 0.15, -2 -0.15, -1 0.16, 0 -0.07, 1 -0.2, 2 0.2, 3 -0.22, 4 -0.12, 5 0.54, 6 -0.28
minor 4: -4 -0.04, -3 0.26, -1 0.15, 0 -0.2, 1 0.14, 2 -0.39, 3 -0.25, 4 0.42, 5 0.38, 6 -0.23
minor 5: -4 0.03, -3 -0.21, -2 0.25, 0 0.53, 1 -0.02, 2 -0.06, 3 -0.17, 5 -0.31, 7 -0.03
minor 6: -1 -0.1, 0 -0.04, 1 0.28, 2 -0.16, 5 -0.04, 6 -0.08
minor 7: 2 -0.07
# progression into a phrase
major strange: I -0.07, ii -0.02
major I: I 0.73, Imaj7 -0.07, V7/IV 0.11, I+ -0.01, V 0.65, V7 -0.34, v -0.02, ii -0.21, ii7 0.26, V/V 0.28, V7/V 0.53, vi 0.31, vi7 0.44, V/ii 0.31, iii -0.34, V/vi 0.08, viio -0.14, viiø7 -0.1, viio/V -0.04, viiø7/V -0.05, viio7/V -0.33, viio7/ii -0.04, IV 0.48, IVmaj7 -0.17, IV7 -0.03
major V7/IV: ii -0.11, V7/V -0.06, IV 0.1
major i: I -0.05, i -0.04, v -0.07, iv -0.04
major I+: I -0.04, IV -0.02
major V: I 0.24, Imaj7 -0.29, V7/IV 0.09, i -0.05, V -0.01, V7 -0.17, v -0.2, vo -0.28, ii 0.31, ii7 -0.04, V/V -0.1, V7/V 0.32, vi 0.37, vi7 -0.07, V7/ii 0.07, iii -0.42, V/vi 0.24, V7/vi -0.07, viio/IV 0.15, viiø7/IV -0.07, viio -0.01, viiø7 -0.08, viio/V -0.04, viiø7/V -0.04, viio/ii -0.17, viiø7/ii -0.03, viio7/ii -0.03, IV 0.08, IVmaj7 -0.1, N -0.04
major V7: I 0.47, vi -0.04, IV -0.04
major v: I -0.35, V -0.45, v -0.08, ii 0.62, vi -0.11, IV 0.19, bIII -0.03
major v7: ii -0.04
major V+: vi -0.08
major ii: I -0.17, V 0.32, V7 0.12, v -0.04, ii -0.1, ii7 -0.06, V/V 0.34, V7/V -0.04, vi 0.12, iii -0.04, V/vi -0.04, viio -0.1, IV 0.11, IVmaj7 -0.11, bVIImaj7 -0.05
major ii7: I -0.07, V -0.04, v7 -0.04, vi -0.03
major V/V: I -0.39, V -0.2, V7 0.2, v 0.37, ii -0.24, ii7 -0.05, V/V 0.19, iio 0.3, vi 0.15, V/ii -0.03, iii -0.04, V/vi -0.11, V/iii -0.08, vii -0.03, IV -0.5
major V7/V: V -0.04, V7/V -0.04
major iio: V/ii -0.03
major vi: I -0.01, Imaj7 -0.04, V7/IV 0.29, V 0.49, v -0.08, v7 -0.04, ii 0.48, ii7 -0.03, V/V 0.22, V7/V -0.13, vi7 -0.04, V/ii -0.05, iii -0.23, V/vi -0.18, viio/IV -0.29, viio -0.12, V/iii -0.3, viio/V -0.03, viiø7/V -0.01, viio7/ii -0.04, IV 0.24, IVmaj7 -0.12, bVII -0.23
major vi7: V7/IV -0.04, V -0.04
major V/ii: I 0.64, V7/IV -0.31, V -0.06, ii 0.08, V/V -0.03, V7/V -0.03, iio -0.07, vi -0.14, V/ii -0.04, iii -0.04, V/vi -0.17, viio/IV -0.03, viio 0.09, viiø7 -0.04, viio/V -0.03, viio7/vi -0.03, IV -0.07, IVmaj7 -0.06
major V7/ii: V -0.04
major vio: I -0.02, V -0.04, vi -0.11
major viø7: I -0.04
major iii: I -0.36, Imaj7 -0.08, V -0.19, V7 -0.21, ii -0.06, V/V -0.24, vi -0.15, iii -0.33, viio 0.43, viio/V 0.14, IV 0.6
major iii7: V -0.03, V7 -0.04
major V/vi: I -0.13, V -0.19, V7 0.31, ii -0.11, ii7 -0.05, V/V -0.09, vi -0.28, V/ii -0.02, V7/ii -0.04, iii -0.29, V/vi -0.31, viio/V -0.08, viio/ii -0.02, IV 0.36, IVmaj7 -0.07
major V7/vi: vi -0.26
major viio/IV: vi -0.03, IV -0.08
major viio: I 0.29, V 0.42, V7 -0.08, ii -0.03, vi7 -0.04
major viiø7: vi7 -0.05
major V/iii: I -0.04, iii -0.05, vii -0.04
major V7/iii: iii -0.04, V/iii -0.01
major viio/V: V/V -0.13, V7/V -0.04, vi -0.04, iii -0.04
major viiø7/V: I -0.02
major viiø7/ii: V -0.04
major viiø7/vi: V -0.04
major viio7/vi: I -0.07
major viio/iii: V/iii -0.03
major IV: I -0.5, i -0.09, V 0.54, V7 -0.18, ii 0.16, ii7 -0.2, iiø7 -0.07, vi 0.39, vi7 -0.03, V/ii -0.06, V/vi -0.01, viio -0.72, viio7 -0.04, viio7/V -0.11, viio/ii -0.09, IV -0.02, iv -0.04
major IVmaj7: viio/V -0.04, IV -0.04
major iv: I -0.16, Ger65 -0.04, iv -0.04
major bVII: I -0.65, V 0.06, v7 -0.04, ii -0.04, viio -0.04, IV -0.23, IVmaj7 -0.03, iv -0.03, bIII -0.04
major bVIImaj7: V -0.09, V/ii -0.04
major bIII: I -0.19, viio -0.04
major bVI: V -0.04, viio7/ii -0.08
minor strange: i -0.07, V -0.07, viio/VI -0.03, ii -0.13, V/V -0.04, #vi -0.12, viio7/iv 0.11, viio -0.01, IV -0.1, IV7 -0.03, III -0.04
minor i: i 0.63, I -0.51, V7/iv -0.37, v 0.13, V 0.4, V7 -0.04, iio -0.18, ii 0.38, V/V 0.16, viio/iv -0.03, iv 0.24, IV -0.36, IV7 -0.17, VII -0.29, III 0.19, V7/VI -0.1, VI 0.36, N -0.07
minor I: i 0.29, I 0.31, V7/iv -0.04, v -0.14, V 0.11, iio -0.16, V7/V 0.13, vio -0.07, viio7/VII -0.04, #vi -0.04, viio7 -0.07, iv -0.66, IV -0.43, IV7 -0.06, VII -0.16, VI -0.1
minor V7/iv: IV -0.04
minor v: i -0.26, i7 -0.03, I -0.07, v -0.41, v7 -0.04, V 0.35, V7 0.1, ii -0.41, V/V -0.04, vio -0.04, viio/iv -0.04, viio 0.41, iv -0.07, IV -0.04, VII -0.06, III -0.35, VI -0.4
minor v7: iv7 -0.04
minor V: i 0.43, I -0.06, V7/iv -0.12, v 0.38, V 0.61, V7 -0.05, ii -0.03, V/V -0.08, viø7 0.25, viio/iv 0.1, viio -0.07, viio7/V -0.04, It6 -0.04, Ger65 -0.04, iv -0.21, iv7 -0.07, IV -0.21, III -0.42, IIImaj7 -0.04, VI 0.38, VImaj7 -0.12, N 0.04
minor V7: i 0.38, I -0.04, V -0.01, V7 -0.01, IV -0.2
minor V+: i -0.04
minor iiø7: i -0.05
minor ii: imaj7 -0.04, I -0.03, v -0.02, V -0.13, V7 -0.12, ii -0.04, V/V -0.01, viio 0.08, IIImaj7 -0.04, III+ 0.25
minor ii7: i -0.04
minor V/V: i -0.08, I 0.4, v 0.08, V -0.2, V7 -0.14, ii -0.08, viio -0.17
minor V7/V: i -0.03
minor vio: V7/iv -0.03
minor #vi: V -0.08, #vi -0.01, viio/iv -0.04, IV -0.04
minor viiø7/iv: iv -0.04
minor viio: V 0.02, IV -0.04
minor viio7: i 0.34
minor It6: VII7 -0.04
minor iv: i -0.33, I -0.11, v -0.26, V 0.19, iiø7 -0.13, ii7 -0.04, iv 0.16, IV -0.04, IV7 -0.08, VII -0.32, VII7 -0.05, III 0.38, VI -0.05, N -0.07
minor IV: i -0.19, I -0.09, v -0.07, V -0.09, V7 0.3, ii -0.35, V/V -0.27, viio -0.03, viio7/V 0.18, iv 0.21, IV 0.3, VII -0.25, VII7 -0.02, III -0.04, VI -0.17, VImaj7 -0.03
minor IV7: i -0.09, V -0.04
minor VII: i -0.37, i7 -0.13, I -0.04, V7/iv -0.04, v -0.08, V -0.23, viiø7/VI -0.02, ii -0.08, vio -0.15, viø7 -0.06, viio/iv -0.15, viio7 -0.05, iv 0.13, IV 0.33, VII -0.29, VII7 -0.07, III -0.45, IIImaj7 -0.04, V7/VI -0.04
minor vii: v -0.04, iv -0.08
minor III: i 0.14, i7 -0.1, I -0.13, v -0.08, V -0.06, V7 -0.05, ii -0.03, vio -0.06, viio7/VII 0.38, viio -0.11, viio7/V -0.09, Ger65 -0.01, iv -0.07, IV -0.04, IV7 -0.24, VII -0.2, III -0.4, III+ -0.04, VI -0.14, VImaj7 -0.04
minor V7/VI: It6 -0.03, VI -0.07
minor III+maj7: V -0.04
minor VI: i -0.36, V7/iv -0.03, V 0.07, iiø7 -0.04, viio/iv 0.27, Ger65 -0.06, iv 0.53, iv7 -0.04, VII -0.02, VII7 -0.04, III -0.07, VI -0.23
minor VImaj7: N -0.04
minor N: iv7 -0.01, VI -0.04
# cadence
major strange: I -0.04
major I: I -0.83, V7/IV -0.06, I+ -0.03, V 0.33, V7 -0.27, ii -0.21, ii7 -0.07, vi -0.1, V7/ii -0.07, iii -0.12, viiø7/V -0.04, IV -0.18, IVmaj7 -0.03, iv -0.08
major Imaj7: I -0.34, V -0.04, V/vi -0.04, IV 0.34
major V7/IV: I -0.04, V7/IV -0.13, ii -0.16, ii7 -0.04, V7/V -0.04, vi -0.04, V/ii -0.02, viio/V 0.34, IV 0.23
major i: I -0.02, V -0.11
major I+: vi -0.14
major V: strange -0.04, I 0.34, Imaj7 -0.07, i 0.15, I+ -0.04, V -0.62, V7 0.07, vi 0.53, viø7 -0.04, iii7 -0.03, Ger65 -0.04, bVI 0.04
major V7: I 0.6, Imaj7 -0.11, i -0.18, I+ -0.04, V -0.03, V7 -0.07, vi 0.2, V/ii -0.31, V7/ii -0.03, V/vi -0.08, viiø7/V -0.06, IVmaj7 -0.08
major v: I -0.02, vi -0.04, V/ii -0.01
major v7: I -0.27, ii -0.04
major V+: I -0.07
major ii: I -0.1, V -0.24, V7 -0.07, ii -0.07, vi 0.13, vi7 -0.03, V/ii 0.11, V7/ii -0.04, vio -0.04, iii 0.33, V/vi -0.03, V7/vi -0.03, viio -0.07, viiø7 -0.04, IV -0.04, IVmaj7 -0.04
major ii7: I -0.26, V7/IV -0.04, V -0.01, vi -0.08, V/vi 0.29, viio/IV -0.04
major V/V: V -0.19, V+ -0.04, iii -0.04, viiø7/ii -0.04
major V7/V: V -0.01, v -0.1, V+ -0.04, V/vi -0.03
major iio: V -0.02
major iiø7: I -0.07
major Fr43: V -0.14
major vi: I -0.25, V -0.29, v -0.03, vi 0.28, V/ii -0.03, iii -0.12, V/vi -0.29, viiø7 -0.04
major vi7: I -0.04, V -0.09, ii -0.03, vi -0.04, vi7 -0.05
major V/ii: ii -0.07, V/V -0.13, iio -0.03, V/ii -0.01, viio -0.03, V7/iii -0.01, viio/iii -0.03
major V7/ii: ii -0.24, vi -0.05
major vio: i -0.07, V7/V -0.04
major viø7: I -0.04, V -0.05
major iii: I -0.2, ii -0.08, vi -0.04
major iii7: V -0.04, IV -0.01
major V/vi: vi -0.05, V/ii -0.03, vio -0.07, IV -0.07
major V7/vi: vi -0.5, V/ii -0.03, viio/V -0.03, IV -0.05
major viio/IV: vi -0.01, IV -0.08
major viiø7/IV: vi -0.03, viiø7 -0.04, IV -0.08
major viio: I 0.05, i -0.04, V -0.15, vi -0.19, V/ii -0.15, V7/ii -0.04, iii -0.03, V/vi -0.37, V7/vi -0.11
major viiø7: I 0.19, V -0.04, iii -0.03, V/vi -0.03
major V/iii: iii -0.02
major V7/iii: I -0.1, iii -0.11
major vii: V -0.05
major viio/V: V 0.19, v -0.05, V/iii -0.04
major viiø7/V: V 0.39, vi -0.1, V/vi -0.06
major viio7/V: V -0.1
major It6: V -0.04
major viio/ii: ii -0.1
major viio7/ii: ii -0.08
major viio/vi: vi -0.16, V/ii -0.04, vio -0.04, IV -0.04
major viio7/vi: vi -0.26, V/ii -0.04
major viio/iii: Imaj7 -0.04, V/vi -0.04
major viio7/iii: iii 0.36, V/vi -0.04
major IV: I 0.19, V7/IV 0.32, V 0.28, V7 0.6, ii -0.04, ii7 -0.05, iiø7 -0.03, V/vi -0.09, viio/IV -0.04, viio 0.42, IV -0.06
major IVmaj7: I -0.09, V -0.12, V7 -0.04, ii -0.04, vi -0.04, iii -0.07, V/vi -0.06, V7/vi -0.04, viio/ii -0.03
major IV7: viio -0.05
major iv: I -0.11, V -0.06
major bVII: I -0.04, ii -0.04, vi -0.01, IV -0.21, bVIImaj7 -0.03
major bVIImaj7: vi -0.14, V/vi -0.04, IV -0.04
major bVII7: I -0.04
major bVImaj7: V -0.04
minor strange: V -0.04
minor i: i -0.41, I -0.1, v 0.31, V 0.03, V7 0.1, iiø7 -0.04, ii -0.04, ii7 -0.04, V/V -0.04, V7/V -0.21, Fr43 -0.02, vio -0.04, viø7 -0.12, viio -0.09, viio7/V -0.07, iv -0.04, iv7 -0.04, IV7 -0.03, III -0.13, VI -0.15
minor i7: iv -0.04
minor imaj7: i -0.04, V -0.03
minor I: i -0.04, I -0.21, V7/iv 0.19, V -0.07, iiø7 -0.04, ii7 -0.04, iv -0.11, IV -0.07
minor V7/iv: V7/iv -0.33, iiø7 -0.2, V/V -0.03, iv 0.43, IV -0.09
minor v: i -0.13, I -0.01, V7/iv 0.07, V -0.21, V7 -0.1, viio/iv -0.04, iv -0.08, IV -0.15
minor v7: i -0.35, I -0.03, V7/iv -0.07
minor V: i 0.33, I 0.09, V7/iv -0.03, v -0.07, V -0.44, V7 0.03, V+ -0.04, vio -0.03, viø7 -0.15, viio -0.04, viio7 0.34, IV 0.4, IV7 -0.04, III+maj7 -0.03, VI -0.04
minor V7: i 0.36, imaj7 -0.04, I 0.52, V7/iv 0.17, V -0.11, V7 0.15, vio -0.18, viø7 -0.09, #vi -0.1, viio -0.05, viiø7/V -0.04, iv7 -0.04, IV7 -0.04, VI 0.07
minor V+: V -0.03
minor viio/VI: i -0.09, I -0.07
minor viiø7/VI: i -0.04, I -0.04
minor iio: i -0.28, I -0.12, v -0.11, v7 -0.04, V 0.06, V7 -0.2, III -0.07, III+maj7 -0.11
minor iiø7: i 0.27, I -0.13, V 0.14, V7 -0.18, iv -0.25
minor ii: i -0.04, I -0.04, V -0.05, V7 0.37
minor ii7: I -0.04, V7 -0.04, IV -0.03
minor V/V: v 0.1, V -0.34, V7 -0.04, V/V -0.04
minor V7/V: v 0.16, V -0.24, V7 -0.2, V+ -0.07, III+ -0.03, III+maj7 -0.04
minor Fr43: V -0.03
minor vio: i -0.04, v -0.17, V7 -0.2, iiø7 -0.02, V7/V -0.04, viio -0.04, VII -0.04
minor viø7: i -0.09, V -0.37
minor #vi: iiø7 -0.04
minor viio/iv: #vi -0.04, iv 0.26
minor viiø7/iv: IV -0.17
minor viio7/iv: I -0.04, iv -0.07
minor viio: i -0.06, I -0.22, V -0.03, V7 -0.04
minor viiø7: i -0.07, I 0.27
minor viio7: i -0.11, I 0.16, V -0.09, V7 -0.04, viio7 -0.04
minor viio/V: v -0.04, V 0.22
minor viio7/V: v -0.28, V 0.66, V7/V -0.01
minor It6: V -0.03
minor Ger65: v -0.03, V7 -0.02, III -0.03
minor iv: i 0.15, I 0.02, V7/iv 0.37, v -0.12, V 0.56, V7 0.05, iiø7 -0.05, viio/iv -0.04, iv 0.43, IV -0.02, III -0.04, VI -0.02
minor iv7: i -0.07, V 0.68, V7 0.4
minor IV: i -0.04, I -0.2, V -0.16, V7 0.2, viio -0.15, iv -0.07, IV -0.07, VII -0.04
minor IV7: i -0.04, V -0.14, V7/V -0.03, viio -0.2, IV -0.04, VII -0.08
minor VII: i -0.04, V -0.06, V7 0.01, IV -0.17, VII -0.04, III -0.42, IIImaj7 -0.11
minor VII7: i -0.04, I -0.06, V -0.09, V7 -0.17, III -0.16
minor vii: i -0.06, I -0.13
minor III: i -0.02, V7/iv -0.05, V -0.04, III -0.04, VI -0.15
minor IIImaj7: V -0.07, V7 -0.07, ii -0.04, viio -0.1, Ger65 -0.03, VI -0.04
minor V7/VI: VI -0.19
minor III+: i -0.21, V -0.03
minor III+maj7: i -0.18, I -0.04, V -0.07, It6 -0.04, VI -0.05
minor VI: v -0.03, V -0.33, V7 -0.18, V/V 0.31, viio 0.28, iv -0.04, III -0.24, V7/VI -0.09, VI -0.03
minor VImaj7: i -0.04, V -0.28, VI -0.04
minor N: V7/iv -0.01, V -0.22
minor bIImaj7: i -0.11, I -0.06
# relation
same: 1 -2.16, 2 -2.23, 3 -1.27, 4 -1.78
turned: 1 1.74, 2 1.22, 3 0.11, 4 0.08
seventh_added: 1 1.48, 2 0.75, 3 0.17
seventh_dropped: 1 -0.98, 2 -0.23, 3 0.17, 4 -0.25
quality_changed: 1 -0.49, 2 0.01, 3 -0.31, 4 -0.59
third_apart: 1 -0.66, 2 -0.13, 3 -0.53, 4 0.08
fifth_up: 1 -1.07, 2 0.04, 3 0.26, 4 0.1
fifth_down: 1 -0.57, 2 0.25, 3 0.42, 4 0.37
step_up: 1 -0.5, 2 0.04, 3 0.66, 4 0.3
step_down: 1 -0.79, 2 -0.34, 3 -0.35, 4 0.1
tritone: 1 0.02, 2 -0.05, 3 -0.29, 4 0.14
# key change
phrase_start major major: -4 -0.14, -3 -0.39, -2 -0.59, -1 0.43, 1 0.07, 2 -0.53, 3 -0.24
phrase_start major minor: -2 -0.03, -1 -0.4, 0 -0.09, 1 0.15, 2 -0.12, 3 -0.22, 4 -0.02
phrase_start minor major: -5 -0.07, -4 0.05, -3 0.22, -2 0.32, -1 0.07, 0 -0.08, 1 -0.28, 2 -0.09
phrase_start minor minor: -4 -0.14, -3 -0.19, -2 -0.29, -1 0.06, 1 -0.1, 2 -0.23, 3 -0.5, 4 -0.16, 5 -0.01
within major major: -4 -0.01, -3 0.39, -2 -0.54, -1 -0.38, 1 -0.31, 2 -0.07, 3 -0.54, 4 -0.12
within major minor: -1 -0.23, 0 -0.87, 1 -0.64, 2 -0.38, 3 0.04, 4 -0.65, 5 -0.09
within minor major: -5 -0.24, -4 -0.65, -3 -0.06, -2 0.06, -1 -0.71, 0 -0.82, 1 -0.51, 2 -0.04
within minor minor: -4 -0.11, -3 -0.42, -2 -0.12, -1 -0.26, 1 -0.29, 2 -0.28, 3 -0.24, 4 -0.04
goal major major: -2 -0.14, -1 -0.47, 1 -0.38, 2 -0.15, 3 -0.14
goal major minor: -1 -0.02, 0 -0.08, 1 -0.1, 2 -0.33, 3 0.27, 4 -0.05
goal minor major: -4 -0.14, -3 -0.3, -2 -0.4, -1 -0.32, 0 -0.55, 1 -0.04
goal minor minor: -2 -0.21, -1 -0.47, 1 -0.66, 2 -0.04, 3 -0.03
# key entered with
major: I -0.29, Imaj7 -0.1, V7/IV -0.19, i -0.18, V -0.46, V7 -0.03, v -0.05, v7 -0.18, V+ -0.06, vo -0.28, vø7 -0.04, ii 0.2, ii7 -0.77, V/V 0.21, V7/V -0.14, iio 0.08, iiø7 -0.24, vi -0.01, vi7 -0.11, V/ii -0.19, V7/ii -0.28, viø7 -0.15, iii -0.65, iii7 -0.3, V/vi 0.11, V7/vi -0.13, viio/IV -0.33, viiø7/IV -0.09, viio7/IV 0.38, viio 0.19, viiø7 0.1, viio7 -0.26, V/iii -0.33, V7/iii -0.09, vii -0.16, viio/V -0.28, viiø7/V -0.23, viio7/V -0.26, Ger65 -0.04, viio/ii -0.17, viiø7/ii -0.13, viio7/ii -0.18, viio/vi -0.14, viio7/vi -0.21, IV -0.13, IVmaj7 0.19, iv -0.26, bVII -0.26, bVIImaj7 -0.16, bIII -0.04, bVI -0.1, bVImaj7 -0.06, N -0.04
minor: i -0.35, i7 0.28, imaj7 -0.04, I -0.29, V7/iv -0.27, v -0.61, v7 -0.49, V -0.42, V7 -0.36, V+ -0.08, viio/VI -0.26, viiø7/VI -0.12, iio 0.14, iiø7 -0.11, ii -0.45, ii7 -0.26, V/V -0.24, V7/V -0.1, Fr43 -0.08, vio -0.17, viø7 -0.32, viio7/VII 0.34, #vi -0.19, viio/iv 0.28, viiø7/iv 0.32, viio7/iv 0.01, viio 0.04, viiø7 -0.14, viio7 0.01, viio/V -0.04, viio7/V -0.21, It6 -0.04, Ger65 -0.21, iv -0.07, iv7 0.07, IV 0.15, IV7 0.13, VII -0.73, VII7 -0.38, vii -0.1, III -0.76, IIImaj7 -0.39, V7/VI -0.19, III+ 0.17, III+maj7 -0.26, VI -0.41, VImaj7 -0.09, VI7 -0.07, N -0.09, bIImaj7 -0.07
# key prepared by
major: strange -0.53, I -0.4, Imaj7 -0.22, V7/IV -0.58, i -0.41, I+ -0.04, V -0.15, V7 -0.47, v -0.3, v7 -0.41, vo -0.04, vø7 -0.07, ii 0.34, ii7 0.07, V/V -0.5, V7/V -0.83, iio -0.23, iiø7 -0.3, vi 0.18, vi7 -0.14, V/ii -0.16, V7/ii -0.46, viø7 -0.15, iii 0.16, iii7 -0.13, V/vi -0.35, V7/vi -0.18, viio/IV -0.09, viiø7/IV -0.27, viio7/IV -0.04, viio 0.2, viiø7 -0.75, viio7 -0.07, V/iii -0.27, V7/iii -0.1, vii -0.18, viio/V -0.24, viiø7/V -0.48, viio7/V -0.28, viio/ii -0.08, viiø7/ii -0.03, viio7/ii -0.08, viio/vi -0.11, viiø7/vi -0.04, viio7/vi -0.22, viio7/iii -0.01, IV 0.21, IVmaj7 -0.33, IV7 -0.15, iv -0.4, iv7 -0.09, bVII -0.43, bVIImaj7 -0.29, bVII7 -0.12, bIII 0.08, bVI -0.13
minor: strange -0.44, i 0.17, i7 -0.04, I 0.03, V7/iv -0.51, v 0.16, v7 -0.07, V -0.35, V7 -0.83, viio/VI -0.51, viiø7/VI -0.23, iio -0.32, iiø7 -0.34, ii -0.1, ii7 -0.33, V/V -0.55, V7/V -0.62, vio 0.1, viø7 -0.21, #vi -0.49, viio/iv -0.34, viiø7/iv -0.21, viio -0.35, viiø7 -0.31, viio7 -0.38, viio/V -0.13, viiø7/V -0.06, viio7/V -0.24, #io7 -0.04, iv 0.07, iv7 -0.09, IV -0.42, IV7 -0.5, VII -0.11, VII7 -0.35, vii -0.01, III -0.02, IIImaj7 0.19, V7/VI -0.1, VI -0.35, VImaj7 -0.13, N -0.34, bIImaj7 -0.04
# key left for
major: strange -0.65, I -0.52, Imaj7 -0.38, V7/IV -0.3, i -0.14, I+ 0.22, V -0.7, V7 -0.33, v -0.05, v7 0.02, V+ -0.11, vo -0.04, ii -0.18, ii7 -0.03, V/V -0.29, V7/V 0.06, iio -0.08, iiø7 -0.03, vi -0.47, vi7 -0.04, V/ii 0.22, V7/ii -0.33, vio -0.34, viø7 -0.26, iii 0.22, iii7 -0.39, V/vi -0.19, V7/vi 0.13, viio/IV -0.06, viiø7/IV 0.02, viio 0.1, viiø7 -0.09, viio7 -0.04, V/iii -0.52, V7/iii -0.23, vii -0.04, viio/V 0.18, viiø7/V -0.29, viio7/V 0.01, viio/ii -0.35, viiø7/ii 0.19, viio7/ii 0.17, viio/vi 0.39, viiø7/vi -0.06, viio7/vi 0.14, viio/iii -0.21, viio7/iii -0.16, IV -0.55, IVmaj7 -0.05, IV7 -0.16, iv -0.4, bVII -0.05, bVIImaj7 0.16, bVII7 0.44, bIII 0.27, bVI -0.17, bVImaj7 -0.04
minor: strange -0.62, i -0.41, i7 -0.36, I -0.45, V7/iv -0.37, v -0.08, v7 -0.32, V -0.67, V7 -0.61, viio/VI -0.28, viiø7/VI 0.25, iio 0.32, iiø7 0.13, ii -0.23, ii7 -0.13, V/V -0.28, V7/V -0.35, vio -0.35, viø7 -0.29, viio7/VII -0.35, #vi -0.16, viio/iv 0.33, viiø7/iv -0.15, viio7/iv -0.01, viio -0.09, viiø7 -0.04, viio7 -0.12, viio/V -0.15, viio7/V -0.06, #io7 -0.37, iv -0.17, iv7 -0.53, IV 0.11, IV7 -0.06, VII -0.21, VII7 0.1, vii 0.06, III 0.05, IIImaj7 -0.35, V7/VI 0.09, VI -0.58, VImaj7 0.22, VI7 -0.04, N 0.27, bIImaj7 0.3
# key left
phrase_start 1 nothing: narrow -0.78, broad -0.11
phrase_start 2 nothing: narrow -0.32, broad -0.43
phrase_start 2 dominant_to_tonic: narrow -0.81
phrase_start 3 nothing: narrow -0.03, broad -0.64
phrase_start 3 dominant_to_tonic: narrow -0.64, broad 0.24
phrase_start 4 nothing: narrow -0.11, broad -0.07
phrase_start 4 dominant_to_tonic: narrow 0.45, broad 0.17
phrase_start more nothing: broad -0.46
phrase_start more dominant_to_tonic: narrow -0.4, broad 0.53
phrase_start more phrase_end: narrow -0.24, broad 0.33
within 1 nothing: narrow -0.52, broad -0.83
within 2 nothing: narrow -0.93, broad -0.72
within 2 dominant_to_tonic: narrow -1.05
within 2 phrase_end: narrow -0.29, broad -0.28
within 3 nothing: narrow -0.38, broad -0.54
within 3 dominant_to_tonic: narrow -0.43, broad -0.44
within 3 phrase_end: narrow -0.19, broad -0.12
within 4 nothing: narrow 0.15, broad -0.44
within 4 dominant_to_tonic: narrow 0.01, broad -0.1
within 4 phrase_end: narrow -0.34, broad -0.02
within more nothing: narrow -0.03, broad -0.29
within more dominant_to_tonic: narrow -0.21, broad 0.3
within more phrase_end: narrow 0.02, broad 0.33
goal 1 nothing: narrow -0.22, broad -0.18
goal 2 nothing: narrow -0.22, broad -0.3
goal 2 dominant_to_tonic: narrow -0.31
goal 3 nothing: broad -0.54
goal 3 dominant_to_tonic: narrow -0.34, broad -0.38
goal 4 nothing: broad -0.48
goal 4 dominant_to_tonic: narrow -0.12, broad -0.14
goal more nothing: broad -0.02
goal more dominant_to_tonic: narrow -0.28, broad -0.46
goal more phrase_end: narrow -0.04, broad 0.06
# key change by metre
: 1 -1.05, 2 -0.75, 3 -0.84, 4 -0.79
# key change by crotchets into the phrase
: 0 -0.39, 1 -0.58, 2 -0.59, 3 -0.49, 4 -0.45, 5 -0.58, 6 -0.7, 7 -0.8, 8 -0.95, 9 -0.72
# key change by crotchets left of the phrase
: 1 -0.38, 2 -0.89, 3 -0.58, 4 -0.53, 5 -0.52, 6 -0.52, 7 -0.58, 8 -0.69, 9 -0.58
# key change by need
phrase_start never: never 0.02, later 0.1, at_once -0.55
phrase_start later: never -0.09, later -0.35, at_once -0.69
phrase_start at_once: never 0.4, later -0.18, at_once -0.17
within never: never -0.3, later -0.9, at_once -0.74
within later: never -0.46, later -0.74, at_once -1.01
within at_once: never -0.08, later -0.46, at_once -0.63
goal never: never -0.82, later -0.16, at_once -0.4
goal later: never -0.35, later -0.05, at_once -0.04
goal at_once: never -0.54, later -0.04, at_once -0.48
# signature
major: -3 -0.43, -2 -0.37, -1 -0.14, 0 0.33, 1 -0.03, 2 -0.58, 3 -0.74, 4 -0.57, 5 -0.32
minor: -5 -0.04, -4 -0.55, -3 -0.49, -2 -0.37, -1 0.03, 0 0.28, 1 -0.16, 2 -0.23, 3 -0.05
# stated mode
major: major 0.08, minor -0.18
minor: major -0.08, minor 0.18
# first chord
major: I 1.12, Imaj7 -0.04, i -0.1, I+ -0.06, V -0.44, V7 0.73, v 0.32, V+ -0.03, ii -0.57, ii7 -0.02, V/V -0.12, vi -1.36, vi7 -0.18, V/ii -0.15, iii -0.18, V/vi -0.44, V7/vi -0.16, viio -0.01, viiø7 -0.04, vii -0.05, IV -1.12, IVmaj7 -0.17, iv -0.11, bVII -0.02, bVIImaj7 -0.02
minor: i 1.74, imaj7 -0.02, I -0.24, V7/iv 0.13, v 0.18, V 0.3, V7 0.09, iiø7 -0.02, V/V 0.19, V7/V -0.29, viio -0.07, iv -0.6, IV -0.2, VII -0.14, III -0.35, III+ -0.04, VI -0.2, bIImaj7 -0.04
# last chord
major: I -0.2, Imaj7 -0.04, i -0.05, I+ -0.04, V 0.09, ii -0.04, vi -0.11, vi7 -0.04, iii -0.11, viiø7/V -0.04, IV -0.34, IVmaj7 -0.04
minor: i -0.96, imaj7 -0.03, I 0.96, V7/iv -0.18, v -0.04, v7 -0.02, V 0.48, V7 -0.04, V+ -0.07, #vi -0.06, iv -0.11, IV -0.04, III -0.04, III+maj7 -0.08, VI -0.04
# last key
major: -2 0.02, -1 -0.12, 0 0.6, 1 -0.33, 2 -0.48, 3 -0.61, 4 -0.14, 5 -0.26
minor: -3 -0.19, -2 -0.18, -1 -0.06, 0 1.13, 1 -0.33, 2 -0.11
# last chord of a phrase
major: strange -0.04, I 0.59, Imaj7 -0.07, V7/IV 0.01, i -0.07, I+ -0.12, V -0.02, V7 0.38, v -0.17, V+ -0.08, ii -0.62, ii7 -0.1, V/V -0.13, V7/V -0.08, iio -0.03, vi -0.59, vi7 -0.12, V/ii -0.31, V7/ii -0.04, vio -0.16, viø7 -0.04, iii 0.28, iii7 -0.06, V/vi -0.43, V7/vi -0.17, viio/IV -0.1, viio 0.34, viiø7 -0.05, V/iii -0.04, V7/iii -0.01, viio/V 0.31, viiø7/V -0.1, Ger65 -0.04, viiø7/ii -0.04, viio/iii -0.03, IV -0.18, IVmaj7 -0.11, iv -0.08, bVII -0.04, bVIImaj7 -0.06, bVI 0.04
minor: i 0.24, imaj7 -0.03, I 0.29, V7/iv -0.32, v 0.1, v7 -0.07, V 0.49, V7 0.26, V+ -0.1, iiø7 -0.05, ii -0.04, ii7 -0.04, V/V 0.24, V7/V -0.26, Fr43 -0.02, vio -0.2, #vi -0.1, viio -0.06, viio7 0.34, viiø7/V -0.04, viio7/V -0.07, It6 -0.04, Ger65 -0.03, iv -0.17, iv7 -0.08, IV 0.18, IV7 -0.08, VII -0.21, III -0.68, V7/VI -0.09, III+maj7 -0.14, VI -0.37, bIImaj7 -0.04
# note in key
major: -5 -0.11, -4 -0.25, -3 -0.91, -2 -1.43, -1 0.15, 0 0.36, 1 0.18, 2 0.15, 3 -0.23, 4 -0.03, 5 0.06, 6 -1, 7 -1, 8 -0.77, 9 -0.71
minor: -6 -0.2, -5 -0.57, -4 -0.25, -3 0.03, -2 -0.57, -1 -0.22, 0 0.3, 1 0.22, 2 0.09, 3 -0.49, 4 -0.1, 5 0.48, 6 -0.04, 7 -0.22, 8 -0.04
# note in phrase
major: -6 -0.01, -5 -0.43, -4 -0.7, -3 -1.15, -2 -0.86, -1 -0.01, 0 0.2, 1 0.1, 2 0.07, 3 -0.14, 4 0.24, 6 -1.02, 7 -0.33, 8 -0.15, 9 -0.81, 10 0.29
minor: -7 0.11, -6 -0.3, -5 -0.4, -4 -0.07, -3 0.26, -2 -0.36, -1 -0.13, 0 0.17, 1 0.16, 2 0.13, 3 -0.6, 4 -0.42, 5 0.39, 6 -0.43, 7 -0.19, 8 -0.16, 10 -0.01
# last bass of a phrase
major: -5 -0.46, -4 0.48, -2 0.19, -1 -0.05, 0 0.21, 1 0.08, 2 -0.44, 3 -0.12, 4 -0.05, 5 -0.07, 6 -0.37, 8 0.08, 9 -0.25
minor: -7 0.11, -5 -0.19, -4 0.09, -3 -0.19, -2 -0.21, -1 -0.08, 0 0.22, 1 0.09, 2 -0.28, 3 0.14, 4 -0.03, 5 0.11, 6 -0.08, 7 -0.05
# last melody note of a phrase
major: -3 0.33, -2 -0.24, -1 0.04, 0 0.19, 1 -0.14, 2 0.06, 3 0.02, 4 0.05, 5 -0.1, 6 0.1, 7 -0.16, 8 -0.33, 9 -0.1
minor: -4 0.19, -3 -0.22, -2 -0.3, -1 -0.07, 0 0.22, 1 -0.07, 2 -0.1, 3 -0.2, 4 -0.4, 5 0.63, 6 -0.07
# last bass of all
major: -3 -0.23, -2 -0.41, -1 -0.13, 0 0.17, 1 -0.25, 2 -0.04, 3 0.01, 4 -0.12, 5 -0.06, 6 -0.07
minor: -5 -0.05, -4 -0.02, -3 -0.18, -2 -0.05, -1 -0.05, 0 0.22, 1 -0.1, 2 -0.24, 3 -0.3, 4 -0.31
`;
