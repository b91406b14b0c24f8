/** What a clipboard holds, as text to read or as files to open. */

/**
 * A word processor lays a picture of the words beside them: there the words are meant. A file that was copied brings
 * its name as text; there the file is.
 */
export function pasted(clipboard: Pick<DataTransfer, 'files' | 'getData'>): {
  readonly text: string | undefined;
  readonly files: readonly File[];
} {
  const text = clipboard.getData('text/plain');
  const files = [...clipboard.files].filter(({ type }) => !type.startsWith('image/'));
  return { text: text.trim() === '' || files.length > 0 ? undefined : text, files };
}

/** What word processors make of plain signs, and what was typed. */
const AS_TYPED: readonly (readonly [RegExp, string])[] = [
  [/\r\n?|[\v\f\u0085\u2028\u2029]/g, '\n'],
  [/[\u00a0\u2000-\u200a\u202f\u205f\u3000]/g, ' '],
  [/[\u200b-\u200f\u2060\ufeff\u00ad]/g, ''],
  [/[\u2018\u2019\u201a\u201b]/g, "'"],
  [/[\u201c\u201d\u201e]/g, '"'],
  [/\u266f/g, '#'],
  [/\u266d/g, 'b'],
  [/\u266e/g, ''],
  [/[\u00d7\u2217]/g, '*'],
  [/[\u2223\u01c0]/g, '|'],
  [/\u2016/g, '||'],
  // A repeat sign that was taken for a face, and fractions set as one sign.
  [/[\u{1f610}\u{1f611}]\ufe0f?/gu, ':|'],
  [/(?<!\d)\u00bc/g, '1/4'],
  [/(?<!\d)\u00bd/g, '1/2'],
  [/(?<!\d)\u00be/g, '3/4'],
  // A sentence seems to end with a fermata or a beat to write, so that the rest after it becomes a capital.
  [/([!?]) R(?![\w#])/g, '$1 r'],
  [/\uff1a/g, ':'],
];

/** A text as it was typed, before a word processor improved it. Only for our notation: XML is left alone. */
export function asTyped(text: string): string {
  return AS_TYPED.reduce((typed, [improved, plain]) => typed.replaceAll(improved, plain), text);
}
