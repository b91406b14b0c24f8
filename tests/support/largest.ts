/** Files as large as the reader's limits admit, each heavy in its own way. Music by arithmetic, always the same. */
import { LIMITS } from '../../src/musicxml/index.ts';

const NAMES = ['Soprano', 'Alto', 'Tenor', 'Bass'];
const OCTAVES = [5, 4, 4, 3];
const STEPS = 'CDEFGAB';

interface Plan {
  readonly bars: number;
  readonly notesInBar: number;
  /** Parts beside the voices, each with as many notes in a bar. */
  readonly others?: number;
}

function scoreOf({ bars, notesInBar, others = 0 }: Plan): string {
  const names = [...NAMES, ...Array.from({ length: others }, (_, i) => `Viola ${i + 1}`)];
  const list = names.map((name, i) => `<score-part id="P${i}"><part-name>${name}</part-name></score-part>`);
  const parts = names.map((_, part) => {
    const measures = Array.from({ length: bars }, (_, bar) => measureOf(part, bar, notesInBar));
    return `<part id="P${part}">${measures.join('')}</part>`;
  });
  return `<score-partwise><part-list>${list.join('')}</part-list>${parts.join('')}</score-partwise>`;
}

function measureOf(part: number, bar: number, notes: number): string {
  const attributes =
    bar > 0
      ? ''
      : `<attributes><divisions>${notes}</divisions><key><fifths>0</fifths></key><time><beats>4</beats><beat-type>4</beat-type></time></attributes>`;
  const content = Array.from({ length: notes }, (_, i) => {
    // Steps that wander, so that chords change and lines cross now and then.
    const step = STEPS[(bar * 5 + i * 3 + part * 2 + ((bar * i) % 7)) % 7]!;
    return `<note><pitch><step>${step}</step><octave>${OCTAVES[part % 4]}</octave></pitch><duration>4</duration><voice>1</voice></note>`;
  });
  return `<measure number="${bar + 1}">${attributes}${content.join('')}</measure>`;
}

const perVoice = LIMITS.voiceNotes / 4;

export const LARGEST: readonly { readonly name: string; readonly xml: () => string }[] = [
  { name: 'crotchets', xml: () => scoreOf({ bars: Math.floor(perVoice / 4), notesInBar: 4 }) },
  { name: 'semiquavers', xml: () => scoreOf({ bars: Math.floor(perVoice / 16), notesInBar: 16 }) },
  { name: 'long notes', xml: () => scoreOf({ bars: Math.min(LIMITS.bars, perVoice), notesInBar: 1 }) },
  {
    name: 'crotchets beside an orchestra',
    xml: () =>
      scoreOf({
        bars: Math.floor(perVoice / 4),
        notesInBar: 4,
        others: Math.floor(LIMITS.notes / perVoice) - 5,
      }),
  },
  { name: 'few long bars', xml: () => scoreOf({ bars: Math.floor(perVoice / 240), notesInBar: 240 }) },
];
