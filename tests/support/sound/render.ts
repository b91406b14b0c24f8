/** What the page's instrument plays, as samples, by way of an OfflineAudioContext in Chromium. */
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import type { Browser } from 'playwright-core';
import type { Score, VoiceName } from '../../../src/score/score.ts';
import type {} from './instrument.ts';

/** Samples a second. */
export const RATE = 48_000;

export type Samples = Float32Array<ArrayBuffer>;

/** Each of these ways of listening to a score, from its first note into the echo: voices alone, or all (`[]`). */
export async function renderScore(
  browser: Browser,
  score: Score,
  tempo: number,
  ways: readonly (readonly VoiceName[])[],
): Promise<Samples[]> {
  const instrument = fileURLToPath(new URL('./instrument.ts', import.meta.url));
  const bundle = await build({ entryPoints: [instrument], bundle: true, write: false, format: 'iife' });
  const page = await browser.newPage();
  try {
    await page.addScriptTag({ content: bundle.outputFiles[0]!.text });
    const heard: Samples[] = [];
    for (const alone of ways) {
      const text = await page.evaluate(
        ([played, pace, rate, only]) => window.renderVoices(played, pace, rate, only),
        [score, tempo, RATE, alone] as const,
      );
      heard.push(new Float32Array(Uint8Array.from(Buffer.from(text, 'base64')).buffer));
    }
    return heard;
  } finally {
    await page.close();
  }
}

/** A mono WAV file of 16-bit samples, to be listened to. */
export function wavOf(samples: Samples): Buffer {
  const data = Buffer.alloc(samples.length * 2);
  samples.forEach((sample, i) => {
    data.writeInt16LE(Math.round(Math.max(-1, Math.min(1, sample)) * 32_767), i * 2);
  });
  const head = Buffer.alloc(44);
  head.write('RIFF', 0);
  head.writeUInt32LE(36 + data.length, 4);
  head.write('WAVEfmt ', 8);
  head.writeUInt32LE(16, 16);
  head.writeUInt16LE(1, 20);
  head.writeUInt16LE(1, 22);
  head.writeUInt32LE(RATE, 24);
  head.writeUInt32LE(RATE * 2, 28);
  head.writeUInt16LE(2, 32);
  head.writeUInt16LE(16, 34);
  head.write('data', 36);
  head.writeUInt32LE(data.length, 40);
  return Buffer.concat([head, data]);
}
