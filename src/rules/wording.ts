/** How rules put notes and voices into sentences. */
import { printPitch } from '../score/pitch.ts';
import { VOICE_WORDS, VOICES, type VoiceName } from '../score/score.ts';
import type { Tone } from '../score/texture.ts';
import { beatLength, gcd, type Metre, type Ticks } from '../score/time.ts';

/** `a`, `a and b`, `a, b and c`; another word may stand for `and`. */
export function inWords(items: readonly string[], last = 'and'): string {
  if (items.length < 2) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}

/** The voices that these tones belong to, each once, from the top. */
export function voicesOf(tones: readonly Tone[]): VoiceName[] {
  return VOICES.filter((voice) => tones.some((tone) => tone.voice === voice));
}

/** `alto, tenor and bass`. */
export function voiceList(voices: readonly VoiceName[]): string {
  return inWords(voices.map((voice) => VOICE_WORDS[voice]));
}

/** `alto F#4`: a tone by its voice and pitch. */
export function named(tone: Tone): string {
  return `${VOICE_WORDS[tone.voice]} ${printPitch(tone.pitch)}`;
}

/** `F#4 in the alto`. */
export function inVoice(tone: Tone): string {
  return `${printPitch(tone.pitch)} in the ${VOICE_WORDS[tone.voice]}`;
}

/** The text with its first letter made a capital, as at the beginning of a sentence. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Tones by voice from the top and then in time, each once: the order an occurrence gives them in. */
export function inOrder(tones: readonly Tone[]): Tone[] {
  return [...new Set(tones)].sort((a, b) => VOICES.indexOf(a.voice) - VOICES.indexOf(b.voice) || a.at - b.at);
}

const PARTS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/3': '⅓',
  '2/3': '⅔',
};

/** A length in beats of the metre: `1 beat`, `3½ beats`, `2 1/6 beats`. */
export function beats(length: Ticks, metre: Metre): string {
  const unit = beatLength(metre);
  const whole = Math.floor(length / unit);
  const rest = length % unit;
  if (rest === 0) return whole === 1 ? '1 beat' : `${whole} beats`;
  const divisor = gcd(rest, unit);
  const fraction = `${rest / divisor}/${unit / divisor}`;
  const sign = PARTS[fraction];
  if (whole === 0) return sign === undefined ? `${fraction} of a beat` : `${sign} beat`;
  return sign === undefined ? `${whole} ${fraction} beats` : `${whole}${sign} beats`;
}

/** `a tenth`, `an octave`, `an augmented second`. */
export function withArticle(words: string): string {
  return `${/^[aeioué]/i.test(words) ? 'an' : 'a'} ${words}`;
}
