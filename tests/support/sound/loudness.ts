/**
 * How loud what is heard is. The weighting is A of IEC 61672-1, whose poles (20.6 Hz and 12,194 Hz twice, 107.7 and
 * 737.9 Hz once) are taken from memory and held in the test against the standard's printed table; it follows the ear at
 * the level at which a laptop plays, where low notes need most.
 */
import type { Samples } from './render.ts';

const POLES_BELOW = [20.598997, 20.598997, 107.65265, 737.86223];
const POLES_ABOVE = [12_194.217, 12_194.217];

/** Brings 1 kHz to 0 dB. */
const AT_1_KHZ = 10 ** (2 / 20);

/** A-weighted samples; right to 0.3 dB up to 4 kHz, above which the instrument has nothing. */
export function weighted(samples: Samples, rate: number): Samples {
  const out = samples.map((sample) => sample * AT_1_KHZ);
  for (const pole of POLES_BELOW) highPass(out, pole, rate);
  for (const pole of POLES_ABOVE) lowPass(out, pole, rate);
  return out;
}

/** One pole each, by the bilinear transform. */
function highPass(samples: Samples, pole: number, rate: number): void {
  const k = Math.tan((Math.PI * pole) / rate);
  const [gain, back] = [1 / (1 + k), (1 - k) / (1 + k)];
  let [before, out] = [0, 0];
  for (const [i, sample] of samples.entries()) {
    out = gain * (sample - before) + back * out;
    before = sample;
    samples[i] = out;
  }
}

function lowPass(samples: Samples, pole: number, rate: number): void {
  const k = Math.tan((Math.PI * pole) / rate);
  const [gain, back] = [k / (1 + k), (1 - k) / (1 + k)];
  let [before, out] = [0, 0];
  for (const [i, sample] of samples.entries()) {
    out = gain * (sample + before) + back * out;
    before = sample;
    samples[i] = out;
  }
}

/** Decibels below full scale, window by window; a window of silence is -120. */
export function windows(samples: Samples, rate: number, seconds = 0.05): number[] {
  const length = Math.round(rate * seconds);
  return Array.from({ length: Math.floor(samples.length / length) }, (_, w) =>
    decibels(samples.subarray(w * length, (w + 1) * length)),
  );
}

/** The loudness of the whole: mean power of the windows that are not silent. */
export function level(samples: Samples, rate: number): number {
  const sounding = windows(samples, rate).filter((one) => one > -60);
  const power = sounding.reduce((sum, one) => sum + 10 ** (one / 10), 0) / Math.max(1, sounding.length);
  return 10 * Math.log10(power + 1e-12);
}

function decibels(samples: Samples): number {
  const power = samples.reduce((sum, sample) => sum + sample * sample, 0) / samples.length;
  return 10 * Math.log10(power + 1e-12);
}

/** Seconds from the beginning until the sound is within 1 dB of what it is between 0.25 and 0.4 s, in 5 ms windows. */
export function attack(samples: Samples, rate: number): number {
  const short = windows(samples, rate, 0.005);
  const steady = Math.max(...short.slice(50, 80));
  return short.findIndex((one) => one > steady - 1) * 0.005;
}

/**
 * The sharpest bend between one sample and the next but one, near these moments (seconds) over that anywhere else: 1 is
 * no sharper than the tone itself, a step is many times that.
 */
export function sharpest(samples: Samples, rate: number, moments: readonly number[]): number {
  const reach = 0.03;
  const near = new Uint8Array(samples.length);
  for (const at of moments) {
    const from = Math.max(0, Math.round((at - reach) * rate));
    near.fill(1, from, Math.round((at + reach) * rate));
  }
  let [inside, outside] = [0, 0];
  for (let i = 1; i < samples.length - 1; i++) {
    const bend = Math.abs(samples[i - 1]! - 2 * samples[i]! + samples[i + 1]!);
    if (near[i]) inside = Math.max(inside, bend);
    else outside = Math.max(outside, bend);
  }
  return inside / outside;
}
