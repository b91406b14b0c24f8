/** What the notation has no place for in a rule's example is put into the score that was read from its text. */
import { byVoice, type Score, type VoiceEvent, type VoiceName } from '../score/score.ts';
import type { Example } from './rule.ts';

export function completed(score: Score, { figures, beside = [] }: Example): Score {
  const withSpare = (voice: VoiceName, event: VoiceEvent, index: number): VoiceEvent => {
    const spare = beside.filter((one) => one.voice === voice && one.note === index);
    if (event.kind !== 'note' || spare.length === 0) return event;
    return { ...event, beside: spare.map(({ pitch }) => ({ pitch, into: 0, duration: event.duration })) };
  };
  return {
    ...score,
    ...(figures === undefined ? {} : { figures }),
    voices: byVoice((voice) => score.voices[voice].map((event, i) => withSpare(voice, event, i))),
  };
}
