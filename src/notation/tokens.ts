/** Cuts one line of voice text into tokens, each with its column, so that every complaint can point. */

export interface Token {
  readonly text: string;
  /** 1-based. */
  readonly column: number;
}

const BARLINES = ['|:', ':|', '||', '|'] as const;
export type BarlineText = (typeof BARLINES)[number];

/** Tokens end at white space, at barlines and at brackets; a bracket and its contents are one token. */
export function tokensOf(line: string, start: number): Token[] {
  const tokens: Token[] = [];
  let i = start;
  while (i < line.length) {
    if (/\s/.test(line[i]!)) {
      i++;
      continue;
    }
    const barline = barlineAt(line, i);
    const end =
      barline !== undefined ? i + barline.length : line[i] === '(' ? endOfGroup(line, i) : endOfWord(line, i);
    tokens.push({ text: line.slice(i, end), column: i + 1 });
    i = end;
  }
  return tokens;
}

export function isBarline(text: string): text is BarlineText {
  return (BARLINES as readonly string[]).includes(text);
}

function barlineAt(line: string, at: number): BarlineText | undefined {
  return BARLINES.find((barline) => line.startsWith(barline, at));
}

function endOfWord(line: string, from: number): number {
  let i = from;
  while (i < line.length && !/[\s(]/.test(line[i]!) && barlineAt(line, i) === undefined) i++;
  return Math.max(i, from + 1);
}

/** A group ends after its closing bracket and what hangs on it (`*2`); one left open ends before the next barline. */
function endOfGroup(line: string, from: number): number {
  let i = from + 1;
  while (i < line.length && line[i] !== ')' && barlineAt(line, i) === undefined) i++;
  return line[i] === ')' ? (i + 1 < line.length ? endOfSuffix(line, i + 1) : i + 1) : i;
}

function endOfSuffix(line: string, from: number): number {
  return /[\s(]/.test(line[from]!) || barlineAt(line, from) !== undefined ? from : endOfWord(line, from);
}
