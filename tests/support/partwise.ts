/** Small MusicXML files, written note by note. */

const DURATIONS: Record<string, number> = { e: 2, q: 4, 'q.': 6, h: 8, 'h.': 12, w: 16 };

/** `q:C4`, `h:F#4~!` (tied, fermata), `q:r`; divisions are 4 to the crotchet. */
export function note(text: string, voice = '1', more = ''): string {
  const [, value = 'q', what = 'r', marks = ''] = /^(.+?):(r|[A-G][#b]*\d)([~!]*)$/.exec(text) ?? [];
  const [, step, sign = '', octave] = /^([A-G])([#b]*)(\d)$/.exec(what) ?? [];
  const alter = sign === '' ? '' : `<alter>${sign.startsWith('#') ? sign.length : -sign.length}</alter>`;
  const pitch =
    what === 'r' ? '<rest/>' : `<pitch><step>${step}</step>${alter}<octave>${octave}</octave></pitch>`;
  const tie = marks.includes('~') ? '<tie type="start"/>' : '';
  const fermata = marks.includes('!') ? '<notations><fermata/></notations>' : '';
  return `<note>${pitch}<duration>${DURATIONS[value]}</duration>${tie}<voice>${voice}</voice>${more}${fermata}</note>`;
}

export const notes = (text: string, voice?: string) =>
  text
    .split(' ')
    .map((one) => note(one, voice))
    .join('');

export const START =
  '<attributes><divisions>4</divisions><key><fifths>0</fifths></key><time><beats>4</beats><beat-type>4</beat-type></time></attributes>';

/** Parts by name, each a list of measures: `<measure>` content with its attributes, or just content. */
export function partwise(
  parts: Record<string, readonly string[]>,
  attributes: readonly string[] = [],
): string {
  const names = Object.keys(parts);
  return `<score-partwise><part-list>${names.map((name, i) => `<score-part id="P${i}"><part-name>${name}</part-name></score-part>`).join('')}</part-list>${names
    .map(
      (name, i) =>
        `<part id="P${i}">${parts[name]!.map(
          (content, bar) =>
            `<measure ${attributes[bar] ?? `number="${bar + 1}"`}>${bar === 0 && !content.includes('<divisions>') ? START : ''}${content}</measure>`,
        ).join('')}</part>`,
    )
    .join('')}</score-partwise>`;
}
