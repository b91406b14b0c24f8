/** Runs in the browser: the page's own instrument plays an excerpt into memory instead of a loudspeaker. */
import * as tone from 'tone';
import type { Score, VoiceName } from '../../../src/score/score.ts';
import { endOf } from '../../../src/score/score.ts';
import { buildOrgan, setLevels } from '../../../web/sound/organ.ts';
import { schedule } from '../../../web/sound/player.ts';
import { loudness, timelineOf } from '../../../web/sound/timeline.ts';

/** As the mixer stands on a first visit. */
const VOLUME = { S: 0.8, A: 0.8, T: 0.8, B: 0.8 };

/** Seconds left for the echo after the last note. */
const ECHO = 0.5;

/** A score from its beginning, both channels' mean, as base64 of 32-bit floats; all voices where none is named. */
async function render(score: Score, tempo: number, sampleRate: number, alone: readonly VoiceName[]) {
  const until = endOf(score);
  const seconds = timelineOf(score, tempo).secondsAt(until);
  const buffer = await tone.Offline(
    () => {
      const organ = buildOrgan(tone);
      setLevels(organ, loudness(VOLUME, alone));
      const order = { score, from: 0, until, tempo, countIn: false, metronome: false, loop: false };
      schedule(organ, order, () => undefined);
      tone.getTransport().start(0);
    },
    seconds + ECHO,
    2,
    sampleRate,
  );
  const [left, right] = [buffer.getChannelData(0), buffer.getChannelData(1)];
  const bytes = new Uint8Array(left.map((sample, i) => (sample + right[i]!) / 2).buffer);
  let text = '';
  for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return btoa(text);
}

declare global {
  interface Window {
    renderVoices: typeof render;
  }
}
window.renderVoices = render;
