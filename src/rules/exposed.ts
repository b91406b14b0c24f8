/** What the two rules about exposed intervals share. */
import { withArticle } from '../english/words.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { consecutivesIn } from '../harmony/questions/consecutives.ts';
import { sameHarmony } from '../harmony/questions/functions.ts';
import { chordAt } from '../harmony/questions/moments.ts';
import { intervalName } from '../score/interval.ts';
import { crossesFermata, motionOf, type PerfectInterval, perfectInterval } from '../score/motion.ts';
import { printPitch } from '../score/pitch.ts';
import { sliceAt, writtenPitch } from '../score/texture.ts';
import type { Occurrence } from './rule.ts';
import { inOrder } from './wording.ts';

/** Soprano and bass move the same way into a fifth or octave, the soprano by leap. */
export function exposed(analysis: Analysis, target: 'fifth' | 'octave'): Occurrence[] {
  const occurrences: Occurrence[] = [];
  const parallels = consecutivesIn(analysis).filter(
    ({ interval, motion }) => family(interval) === target && motion === 'similar',
  );
  for (const transition of analysis.texture.transitions) {
    const { S: soprano, B: bass } = transition.moves;
    if (!soprano || !bass || motionOf(soprano, bass) !== 'similar') continue;
    if (Math.abs(soprano.interval.steps) < 2) continue;
    const reached = family(perfectInterval(soprano.to, bass.to));
    // From one fifth to another they are parallel fifths, and named so.
    if (reached !== target || family(perfectInterval(soprano.from, bass.from)) === target) continue;
    const before = chordAt(analysis, transition.from.at);
    const after = chordAt(analysis, transition.to.at);
    const broken = before !== undefined && after !== undefined && sameHarmony(before, after);
    // The same chord again, in another position, as a new phrase begins: nothing is approached.
    if (broken && crossesFermata(transition)) continue;
    const offBeat = (sliceAt(analysis.texture, soprano.from.at)?.strength ?? 0) < 2;
    const parallel = parallels.some(({ second: [s, b] }) => s === soprano.to && b === bass.to);
    const light = broken || offBeat || parallel || crossesFermata(transition);
    occurrences.push({
      // Inside one chord the leap only breaks it up; from a note off the beat it only decorates; what is
      // parallel if the decoration is taken away is told as that; a new phrase begins afresh.
      ...(light ? { severity: 'remark' as const } : {}),
      voices: ['S', 'B'],
      from: Math.max(soprano.from.at, bass.from.at),
      until: Math.min(soprano.to.until, bass.to.until),
      tones: inOrder([soprano.from, soprano.to, bass.from, bass.to]),
      message: `Soprano and bass both move ${soprano.direction} into ${target === 'fifth' ? 'a fifth' : 'an octave'}, and the soprano leaps: ${printPitch(writtenPitch(soprano.from))}–${printPitch(writtenPitch(bass.from))} to ${printPitch(writtenPitch(soprano.to))}–${printPitch(writtenPitch(bass.to))} (soprano ${soprano.direction} ${withArticle(intervalName(soprano.interval))}).`,
    });
  }
  return occurrences;
}

function family(interval: PerfectInterval | undefined): PerfectInterval | undefined {
  return interval === 'unison' ? 'octave' : interval;
}
