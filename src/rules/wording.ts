/** How rules put notes and voices into sentences. */
import { listed, mixedNumber } from '../english/words.ts';
import { printPitch } from '../score/pitch.ts';
import { VOICE_WORDS, VOICES, type VoiceName } from '../score/score.ts';
import { type Tone, writtenPitch } from '../score/texture.ts';
import { beatLength, gcd, type Metre, type Ticks } from '../score/time.ts';

/** The voices that these tones belong to, each once, from the top. */
export function voicesOf(tones: readonly Tone[]): VoiceName[] {
  return VOICES.filter((voice) => tones.some((tone) => tone.voice === voice));
}

/** `alto, tenor and bass`. */
export function voiceList(voices: readonly VoiceName[]): string {
  return listed(voices.map((voice) => VOICE_WORDS[voice]));
}

/** `alto F#4`: a tone by its voice and pitch. */
export function named(tone: Tone): string {
  return `${VOICE_WORDS[tone.voice]} ${printPitch(writtenPitch(tone))}`;
}

/** `F#4 in the alto`. */
export function inVoice(tone: Tone): string {
  return `${printPitch(writtenPitch(tone))} in the ${VOICE_WORDS[tone.voice]}`;
}

/** Tones by voice from the top and then in time, each once: the order an occurrence gives them in. */
export function inOrder(tones: readonly Tone[]): Tone[] {
  return [...new Set(tones)].sort((a, b) => VOICES.indexOf(a.voice) - VOICES.indexOf(b.voice) || a.at - b.at);
}

/** A length in beats of the metre: `1 beat`, `3½ beats`, `2 1/6 beats`. */
export function beats(length: Ticks, metre: Metre): string {
  const unit = beatLength(metre);
  const whole = Math.floor(length / unit);
  const rest = length % unit;
  if (rest === 0) return whole === 1 ? '1 beat' : `${whole} beats`;
  const divisor = gcd(rest, unit);
  const written = mixedNumber(whole, rest / divisor, unit / divisor);
  if (whole > 0) return `${written} beats`;
  return written.includes('/') ? `${written} of a beat` : `${written} beat`;
}
