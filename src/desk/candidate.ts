/** Whose script a file is, and which draft: read from its name, or from the title in it. */

export interface Identity {
  /** The candidate number as written; undefined where none was found and a person must say. */
  readonly candidate?: string;
  /** 1 unless the name says otherwise. */
  readonly draft: number;
}

/** How the name of a file is built, where it follows a pattern: `{candidate}-draft{draft}`. */
export interface Pattern {
  readonly text: string;
  readonly read: (name: string) => Identity | undefined;
}

/** Names are cut before they are looked at; nobody's file name is longer. */
const MOST_NAME = 200;

/**
 * A pattern as a teacher writes it: `{candidate}` stands for letters and digits, `{draft}` for a number, `*` for
 * anything, all else for itself (capitals or not). It is matched against the file's name without its ending.
 *
 * @throws {RangeError} where `{candidate}` is missing or stands twice.
 * @example pattern('{candidate}-d{draft}').read('4012-d2') is { candidate: '4012', draft: 2 }
 */
export function pattern(text: string): Pattern {
  if (text.split('{candidate}').length !== 2 || text.split('{draft}').length > 2) {
    throw new RangeError(
      `The pattern “${text}” should hold {candidate} once, and may hold {draft} once: for example {candidate}-draft{draft}.`,
    );
  }
  const source = text
    .split(/(\{candidate\}|\{draft\}|\*)/)
    .map((part) => {
      if (part === '{candidate}') return '(?<candidate>[\\p{L}\\p{N}]{1,20})';
      if (part === '{draft}') return '(?<draft>\\d{1,2})';
      return part === '*' ? '.{0,200}?' : part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
    })
    .join('');
  const expression = new RegExp(`^${source}$`, 'iu');
  return {
    text,
    read: (name) => {
      const groups = expression.exec(stem(name))?.groups;
      if (groups?.candidate === undefined) return undefined;
      return { candidate: groups.candidate, draft: Number(groups.draft ?? 1) || 1 };
    },
  };
}

/**
 * Reads a file's name, then the title in the file. Without a pattern the candidate number is the first run of two
 * to ten digits (a letter or two may stand before or after it), the draft what follows `draft`, `d` or `v`.
 */
export function identify(fileName: string, title: string, by?: Pattern): Identity {
  if (by !== undefined) return by.read(fileName) ?? { draft: 1 };
  const name = stem(fileName);
  const draft = /(?:^|[^a-z])(?:draft|d|v)[\s_-]*(\d{1,2})(?!\d)/i.exec(name);
  const rest = draft === null ? name : name.replace(draft[0], ' ');
  const number = candidateIn(rest) ?? candidateIn(/candidate\D{0,12}(\w{2,12})/i.exec(title)?.[1] ?? '');
  return {
    ...(number === undefined ? {} : { candidate: number }),
    draft: draft === null ? 1 : Math.max(1, Number(draft[1])),
  };
}

function candidateIn(text: string): string | undefined {
  return /(?<![\p{L}\p{N}])[\p{L}]{0,2}\d{2,10}[\p{L}]{0,2}(?![\p{L}\p{N}])/u.exec(text)?.[0];
}

/** The last part of a path, without its ending, cut to a sensible length. */
function stem(fileName: string): string {
  const base = fileName.split(/[/\\]/).at(-1) ?? '';
  return base.replace(/\.[a-z]{2,8}$/i, '').slice(0, MOST_NAME);
}
