/** Copied notes as text, for the clipboard, and back. */
import { readNotation } from '../../src/notation/index.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { endOf } from '../../src/score/score.ts';
import { CROTCHET, gcd, type Ticks } from '../../src/score/time.ts';
import { copyPassage, type Passage, type Piece } from '../../src/writing/passage.ts';

/** One line as notes alone, several with their voices' letters; lengths in crotchets. */
export function printPassage({ lines }: Passage): string {
  const [only, ...others] = lines;
  if (only !== undefined && others.length === 0) return only.pieces.map(printPiece).join(' ');
  return lines.map(({ voice, pieces }) => `${voice}: ${pieces.map(printPiece).join(' ')}`).join('\n');
}

function printPiece({ content, duration }: Piece): string {
  const sign = content.kind === 'note' ? printPitch(content.pitch) : content.kind === 'rest' ? 'r' : '?';
  return `${sign}${printLength(duration)}${content.kind !== 'gap' && content.fermata ? '!' : ''}`;
}

function printLength(duration: Ticks): string {
  const shared = gcd(duration, CROTCHET);
  const [numerator, denominator] = [duration / shared, CROTCHET / shared];
  if (denominator === 1) return numerator === 1 ? '' : `*${numerator}`;
  return numerator === 1 ? `/${denominator}` : `*${numerator}/${denominator}`;
}

/** Notes without a voice's letter or any heading, such as `G4 A4 B4*2`; undefined where a text is something else. */
export function readPassage(text: string): Passage | undefined {
  const notes = text.replaceAll('|', ' ').trim();
  if (notes === '' || notes.length > 4_000 || notes.includes(':') || notes.includes('\n')) return undefined;
  const { score, problems } = readNotation(`metre: 32/4\nS: ${notes}`);
  const written = score.voices.S.findLast((event) => event.kind !== 'gap');
  if (problems.length > 0 || written === undefined) return undefined;
  const until = Math.min(written.at + written.duration, endOf(score));
  return copyPassage(score, { from: 0, until, voices: ['S'] });
}
