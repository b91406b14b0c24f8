/** What must hold for any file whatever: no door throws, and a score that comes out is whole. */
import { readMusicXml, writeMusicXml } from '../../src/musicxml/index.ts';
import { printNotation, readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { endOf, type Score, VOICES, type VoiceName } from '../../src/score/score.ts';
import { barLength } from '../../src/score/time.ts';
import type { Seedling } from './mutate.ts';

export type Fate = 'refused' | 'reviewed';

/** Sends a file through the doors. @throws {Error} where something does not hold. */
export function survive(file: Seedling): Fate {
  return file.kind === 'text'
    ? surviveText(new TextDecoder().decode(file.bytes))
    : surviveMusicXml(file.bytes);
}

function surviveText(text: string): Fate {
  const { score, problems } = readNotation(text);
  wholeScore(score);
  reviewScore(score, CHORALE);
  if (problems.length > 0) {
    for (const { message, line, column } of problems) {
      if (message === '' || !(line >= 1) || !(column >= 1))
        throw new Error(`A problem without a place: ${message}`);
    }
    return 'refused';
  }
  printNotation(score);
  handedBack(score);
  return 'reviewed';
}

function surviveMusicXml(bytes: Uint8Array): Fate {
  const reading = readMusicXml(bytes);
  if (!reading.ok) {
    if (/mistake in Partwise/.test(reading.message)) throw new Error(reading.message);
    if (!/^[A-Z].*[.?]$/s.test(reading.message)) throw new Error(`No sentence: ${reading.message}`);
    return 'refused';
  }
  wholeScore(reading.score);
  reviewScore(reading.score, CHORALE);
  handedBack(reading.score);
  return 'reviewed';
}

/** Bars follow on from each other, and every voice fills them from beginning to end. */
function wholeScore(score: Score): void {
  let at = 0;
  for (const bar of score.bars) {
    if (bar.at !== at || !(bar.duration > 0) || !Number.isInteger(bar.duration)) {
      throw new Error(`Bar ${bar.number} at ${bar.at} lasts ${bar.duration}, after an end at ${at}`);
    }
    at += bar.duration;
  }
  for (const voice of VOICES) {
    let end = 0;
    for (const event of score.voices[voice]) {
      if (event.at !== end || !(event.duration > 0) || !Number.isInteger(event.duration)) {
        throw new Error(
          `${voice}: ${event.kind} at ${event.at} lasts ${event.duration}, after an end at ${end}`,
        );
      }
      end += event.duration;
    }
    if (end !== endOf(score)) throw new Error(`${voice} ends at ${end}, the score at ${endOf(score)}`);
  }
}

/**
 * Three slips can't be kept in MusicXML: a bar meant to be shorter than it came out, a miscount by a voice that wrote
 * nothing but gaps, and a bar that all voices cut short but only some of them closed with a barline.
 */
export function isExpressible(score: Score): boolean {
  return score.bars.every((bar) => {
    const full = barLength(bar.metre);
    const wrote = (voice: VoiceName) =>
      score.voices[voice].some(
        (event) => event.kind !== 'gap' && event.at >= bar.at && event.at < bar.at + bar.duration,
      );
    const cutShort = bar.duration < full && bar.misfits.some(({ expected }) => expected === full);
    if (cutShort && VOICES.some((one) => wrote(one) && !bar.misfits.some(({ voice }) => voice === one)))
      return false;
    return bar.misfits.every(
      ({ voice, expected }) =>
        (expected === full || (expected === bar.duration && bar.index > 0)) && wrote(voice),
    );
  });
}

/**
 * Which of two notes in one voice is taken goes by the staff: the outer one on a staff for two voices, the higher one on
 * a voice's own. So a divided voice may come back with the two exchanged, and from a closed score as the other voice's.
 */
function isDivided(score: Score): boolean {
  return VOICES.some((voice) =>
    score.voices[voice].some((event) => event.kind === 'note' && event.beside !== undefined),
  );
}

/** What is handed back reads as the same score. */
function handedBack(score: Score): void {
  if (VOICES.every((voice) => score.voices[voice].every((event) => event.kind !== 'note'))) return;
  if (!isExpressible(score)) return;
  for (const layout of ['four staves', 'closed score'] as const) {
    const again = readMusicXml(new TextEncoder().encode(writeMusicXml(score, { layout })));
    if (!again.ok) throw new Error(`Handed back on ${layout}, refused: ${again.message}`);
    // XML holds no control characters, and white space in a title is one space.
    const titled = (title: string) =>
      title
        .replace(/\p{Cc}/gu, '')
        .replace(/\s+/g, ' ')
        .trim();
    const music = (one: Score) => JSON.stringify({ ...one, title: titled(one.title), remarks: [] });
    if (isDivided(score)) continue;
    if (music(again.score) !== music(score)) {
      throw new Error(`Handed back on ${layout}, another score:\n${difference(score, again.score)}`);
    }
  }
}

function difference(a: Score, b: Score): string {
  const lines = (score: Score) => [
    JSON.stringify({ title: score.title, tempo: score.tempo }),
    ...score.bars.map((bar) => JSON.stringify(bar)),
    ...VOICES.flatMap((voice) => score.voices[voice].map((event) => voice + JSON.stringify(event))),
    JSON.stringify(score.figures),
  ];
  const before = lines(a);
  const after = lines(b);
  const first = before.findIndex((line, i) => line !== after[i]);
  return `${before[first]}\n${after[first]}`;
}
