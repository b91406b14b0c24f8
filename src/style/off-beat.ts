/** Notes that begin off the beat, for each beat: counted alike for the tenor and the bass. */
import type { VoiceName } from '../score/score.ts';
import type { Count, Music } from './measure.ts';
import { offBeatTones } from './music.ts';
import { perOne } from './share.ts';

export function offBeatNotes(music: Music, voice: VoiceName): Count {
  const where = offBeatTones(music, voice).map(({ at, until }) => ({ from: at, until }));
  return { value: perOne(where.length, music.beats.length), where };
}
