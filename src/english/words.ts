/** English, whatever it is about: lists, capitals, articles, counts, fractions. */

/**
 * `a`, `a and b`, `a, b and c`; `or` may stand for `and`. By hand: the first `Intl.ListFormat` of a page or a
 * process takes some 20 ms to make, while everybody waits.
 */
export function listed(items: readonly string[], last: 'and' | 'or' = 'and'): string {
  if (items.length < 2) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}

/** The text with its first letter made a capital, as at the beginning of a sentence. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** `a tenth`, `an octave`, `an augmented second`. */
export function withArticle(words: string): string {
  return `${/^[aeioué]/i.test(words) ? 'an' : 'a'} ${words}`;
}

/** `1 bar`, `8 bars`; the plural where it is not made with an s: `3 queries`. */
export function counted(number: number, noun: string, plural = `${noun}s`): string {
  return `${number} ${number === 1 ? noun : plural}`;
}

const FRACTION_SIGNS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/3': '⅓',
  '2/3': '⅔',
};

/**
 * A whole number and a reduced part of one: `2`, `2½`, `3 1/6`, `½`, `1/6`.
 *
 * @param numerator less than `denominator`; 0 for none
 */
export function mixedNumber(whole: number, numerator: number, denominator: number): string {
  if (numerator === 0) return String(whole);
  const fraction = `${numerator}/${denominator}`;
  const sign = FRACTION_SIGNS[fraction];
  if (whole === 0) return sign ?? fraction;
  return sign === undefined ? `${whole} ${fraction}` : `${whole}${sign}`;
}

/**
 * Text of a stranger made fit to be shown anywhere: control characters, which move a terminal's caret, and signs that
 * turn the direction of what follows become a sign that can be seen.
 */
export function harmless(text: string): string {
  return text.replace(/[\p{Cc}\u061c\u200e\u200f\u202a-\u202e\u2028\u2029\u2066-\u2069]/gu, '\ufffd');
}
