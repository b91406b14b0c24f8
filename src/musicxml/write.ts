/** Score → MusicXML 4.0, partwise. */
import { strToU8 } from 'fflate';
import { capitalised } from '../english/words.ts';
import { type Bar, type Score, VOICE_WORDS, VOICES, type VoiceName } from '../score/score.ts';
import { sameSignature } from '../score/signature.ts';
import { barLength, CROTCHET, gcd, printMetre, type Ticks } from '../score/time.ts';
import { packScore } from './archive.ts';
import { element, textElement } from './markup.ts';
import { SOFTWARE } from './software.ts';
import { type BarContext, backup, type StaffPlan, staffBar } from './write-bar.ts';

export interface WriteOptions {
  /** A staff for each voice (the default), or soprano and alto on one staff, tenor and bass on another. */
  readonly layout?: 'four staves' | 'closed score';
  /** A sentence printed above the music, such as how the work was set. */
  readonly note?: string;
}

interface PartPlan {
  readonly id: string;
  readonly name: string;
  readonly short: string;
  readonly staves: readonly StaffPlan[];
}

const TREBLE = { sign: 'G', line: 2, octaves: 0 } as const;
const BASS = { sign: 'F', line: 4, octaves: 0 } as const;
const CLEFS: Readonly<Record<VoiceName, StaffPlan['clef']>> = {
  S: TREBLE,
  A: TREBLE,
  T: { sign: 'G', line: 2, octaves: -1 },
  B: BASS,
};

/** The score as MusicXML 4.0; the same score always gives the same text. */
export function writeMusicXml(score: Score, options: WriteOptions = {}): string {
  const parts = options.layout === 'closed score' ? CLOSED_SCORE : FOUR_STAVES;
  const context: BarContext = { score, tick: tickOf(score) };
  return `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" "http://www.musicxml.org/dtds/partwise.dtd">
<score-partwise version="4.0">
${[
  score.title === '' ? '' : element('work', {}, textElement('work-title', score.title)),
  element('identification', {}, element('encoding', {}, textElement('software', SOFTWARE))),
  options.note === undefined ? '' : element('credit', { page: 1 }, textElement('credit-words', options.note)),
  partList(parts),
  ...parts.map((part, index) => partOf(context, part, index === 0)),
]
  .filter((line) => line !== '')
  .join('\n')}
</score-partwise>
`;
}

/** The score as compressed MusicXML (`.mxl`). */
export function writeMxl(score: Score, options: WriteOptions = {}): Uint8Array {
  return packScore(strToU8(writeMusicXml(score, options)));
}

const FOUR_STAVES: readonly PartPlan[] = VOICES.map((voice, i) => ({
  id: `P${i + 1}`,
  name: capitalised(VOICE_WORDS[voice]),
  short: voice,
  staves: [{ voices: [voice], clef: CLEFS[voice] }],
}));
const CLOSED_SCORE: readonly PartPlan[] = [
  {
    id: 'P1',
    name: 'Voices',
    short: '',
    staves: [
      { voices: ['S', 'A'], clef: TREBLE, staff: 1 },
      { voices: ['T', 'B'], clef: BASS, staff: 2 },
    ],
  },
];

/** The longest unit of time in which everything written is a whole number. */
function tickOf(score: Score): Ticks {
  let unit = CROTCHET;
  for (const voice of VOICES) {
    for (const event of score.voices[voice]) {
      unit = gcd(unit, event.duration);
      const spare = event.kind === 'note' ? (event.beside ?? []) : [];
      for (const { into, duration } of spare) unit = gcd(gcd(unit, into), duration);
    }
  }
  for (const bar of score.bars) {
    unit = gcd(unit, bar.duration);
    for (const { written, expected } of bar.misfits) unit = gcd(gcd(unit, written), expected);
  }
  for (const { at } of score.figures ?? []) unit = gcd(unit, at);
  return unit;
}

function partList(parts: readonly PartPlan[]): string {
  const list = parts.map((part) =>
    element(
      'score-part',
      { id: part.id },
      textElement('part-name', part.name),
      part.short === '' ? '' : textElement('part-abbreviation', part.short),
    ),
  );
  if (list.length === 1) return element('part-list', {}, ...list);
  return element(
    'part-list',
    {},
    element(
      'part-group',
      { type: 'start', number: 1 },
      textElement('group-symbol', 'bracket'),
      textElement('group-barline', 'yes'),
    ),
    ...list,
    element('part-group', { type: 'stop', number: 1 }),
  );
}

function partOf(context: BarContext, part: PartPlan, leads: boolean): string {
  const { bars } = context.score;
  const measures = bars.map((bar, index) => {
    const before = bars[index - 1];
    const content = [
      attributesOf(context, part, bar, before),
      leftBarline(bar, before),
      leads && bar.tempo !== undefined && bar.tempo !== before?.tempo ? tempoOf(bar.tempo) : '',
    ];
    for (const [i, staff] of part.staves.entries()) {
      if (i > 0) content.push(backup(context, bar.duration));
      const firstVoice = part.staves.slice(0, i).reduce((sum, one) => sum + one.voices.length, 1);
      content.push(...staffBar(context, staff, bar, firstVoice));
    }
    content.push(rightBarline(bar, bars[index + 1], index === bars.length - 1));
    return `  ${element(
      'measure',
      { number: bar.number, implicit: isImplicit(context.score, index) ? 'yes' : undefined },
      ...content.filter((line) => line !== '').map((line) => `\n    ${line}`),
      '\n  ',
    )}`;
  });
  return `<part id="${part.id}">\n${measures.join('\n')}\n</part>`;
}

/** A bar that is short on purpose and not counted: an upbeat, the second half of a split bar. */
function isImplicit(score: Score, index: number): boolean {
  const bar = score.bars[index]!;
  const full = barLength(bar.metre);
  if (bar.offset > 0) return true;
  if (bar.duration >= full) return false;
  // Too short by a slip, or meant to be short although some voice slipped in it.
  const [misfit] = bar.misfits;
  if (misfit !== undefined) return misfit.expected === bar.duration;
  const next = score.bars[index + 1];
  const first = score.bars[0]!;
  const opensSplit = next !== undefined && next.offset === bar.duration;
  const givesBack = next === undefined && first.offset > 0 && first.duration + bar.duration === full;
  return !opensSplit && !givesBack;
}

function attributesOf(context: BarContext, part: PartPlan, bar: Bar, before: Bar | undefined): string {
  const several = part.staves.length > 1;
  const content = [
    before === undefined ? textElement('divisions', CROTCHET / context.tick) : '',
    before === undefined || !sameSignature(before.key, bar.key)
      ? element(
          'key',
          {},
          textElement('fifths', bar.key.fifths),
          bar.key.mode === undefined ? '' : textElement('mode', bar.key.mode),
        )
      : '',
    before === undefined || printMetre(before.metre) !== printMetre(bar.metre)
      ? element('time', {}, textElement('beats', bar.metre.beats), textElement('beat-type', bar.metre.unit))
      : '',
    before === undefined && several ? textElement('staves', part.staves.length) : '',
    ...(before === undefined
      ? part.staves.map((staff) =>
          element(
            'clef',
            { number: several ? staff.staff : undefined },
            textElement('sign', staff.clef.sign),
            textElement('line', staff.clef.line),
            staff.clef.octaves === 0 ? '' : textElement('clef-octave-change', staff.clef.octaves),
          ),
        )
      : []),
  ].filter((line) => line !== '');
  return content.length === 0 ? '' : element('attributes', {}, ...content);
}

function tempoOf(crotchets: number): string {
  const tempo = String(crotchets);
  return element(
    'direction',
    { placement: 'above' },
    element(
      'direction-type',
      {},
      element('metronome', {}, textElement('beat-unit', 'quarter'), textElement('per-minute', tempo)),
    ),
    element('sound', { tempo }),
  );
}

function leftBarline(bar: Bar, before: Bar | undefined): string {
  const ending =
    bar.ending !== undefined && bar.ending !== before?.ending ? endingOf(bar.ending, 'start') : '';
  const repeat = bar.repeatStart ? element('repeat', { direction: 'forward' }) : '';
  if (ending === '' && repeat === '') return '';
  const style = repeat === '' ? '' : textElement('bar-style', 'heavy-light');
  return element('barline', { location: 'left' }, style, ending, repeat);
}

function rightBarline(bar: Bar, next: Bar | undefined, last: boolean): string {
  const ending = bar.ending !== undefined && bar.ending !== next?.ending ? endingOf(bar.ending, 'stop') : '';
  const repeat = bar.repeatEnd ? element('repeat', { direction: 'backward' }) : '';
  if (ending === '' && repeat === '' && !last) return '';
  const style = repeat !== '' || last ? textElement('bar-style', 'light-heavy') : '';
  return element('barline', { location: 'right' }, style, ending, repeat);
}

/** The schema wants numbers here; an ending that is printed otherwise keeps its text beside. */
function endingOf(ending: string, type: 'start' | 'stop'): string {
  const numbers = ending.match(/[1-9]\d*/g)?.join(', ');
  const number = /^([1-9]\d*)(, ?[1-9]\d*)*$/.test(ending) ? ending : (numbers ?? ' ');
  return element('ending', { number, type });
}
