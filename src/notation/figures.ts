/** Figures under the bass in the notation: `figures: 1:2 6, 1:3 6/5, 2:1+1/2 #`, each at its bar and beat. */
import { placeAt } from '../score/place.ts';
import type { Score, WrittenFigure } from '../score/score.ts';
import { beatLength, scaleTicks, type Ticks } from '../score/time.ts';

/** A figure with its place as written: bar 2, half-way through its first beat. */
export interface PlacedFigure {
  readonly bar: string;
  /** From 1, as beats are counted: an upbeat of one beat in 4/4 is beat 4. */
  readonly beat: number;
  readonly numerator: number;
  readonly denominator: number;
  readonly figures: readonly string[];
}

/** Figures on one line of text. */
const FIGURES_A_LINE = 12;
/** So many a chord has at most, as in MusicXML. */
const MOST_FIGURES = 8;

/** Reads `1:2 6, 2:1+1/2 #`; undefined for anything else. */
export function parseFigures(text: string): PlacedFigure[] | undefined {
  const placed: PlacedFigure[] = [];
  for (const item of text.split(',')) {
    const match = /^([0-9A-Za-z.-]{1,12}):(\d{1,2})(?:\+(\d{1,5})\/(\d{1,5}))? +(\S{1,40})$/.exec(
      item.trim(),
    );
    if (match === null) return undefined;
    const figures = match[5]!.split('/');
    const [numerator, denominator] = match[3] === undefined ? [0, 1] : [Number(match[3]), Number(match[4])];
    const known = figures.every((figure) => /^(##|bb|[#bn])?\d{0,2}$/.test(figure) && figure !== '');
    if (!known || figures.length > MOST_FIGURES || numerator >= denominator) return undefined;
    placed.push({ bar: match[1]!, beat: Number(match[2]), numerator, denominator, figures });
  }
  return placed;
}

/** The moment a figure stands at; undefined where the piece has no such bar or beat. */
export function momentOf({ bars }: Pick<Score, 'bars'>, figure: PlacedFigure): Ticks | undefined {
  for (const bar of bars) {
    if (bar.number !== figure.bar) continue;
    const beat = beatLength(bar.metre);
    const part = scaleTicks(beat, figure.numerator, figure.denominator);
    if (part === undefined) continue;
    const into = (figure.beat - 1) * beat + part - bar.offset;
    if (into >= 0 && into < bar.duration) return bar.at + into;
  }
  return undefined;
}

/** The score's figures as header lines; {@link parseFigures} reads what follows the colon. */
export function printFigures(score: Score): string[] {
  const items = (score.figures ?? []).flatMap((written): string[] => {
    const { bar, beat, numerator, denominator } = placeAt(score, written.at);
    const place: PlacedFigure = { bar: bar.number, beat, numerator, denominator, figures: written.figures };
    const part = numerator === 0 ? '' : `+${numerator}/${denominator}`;
    // Where two bars have one number, only the first can be spoken of.
    return momentOf(score, place) === written.at
      ? [`${bar.number}:${beat}${part} ${written.figures.join('/')}`]
      : [];
  });
  const lines: string[] = [];
  for (let i = 0; i < items.length; i += FIGURES_A_LINE)
    lines.push(`figures: ${items.slice(i, i + FIGURES_A_LINE).join(', ')}`);
  return lines;
}

/** Figures in the order of time, one at each moment: the last said holds. */
export function inOrder(figures: readonly WrittenFigure[]): WrittenFigure[] {
  return [...new Map(figures.map((figure) => [figure.at, figure])).values()].sort((a, b) => a.at - b.at);
}
