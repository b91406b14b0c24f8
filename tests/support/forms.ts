/**
 * One exercise in the many forms in which notation programs save it. This writer shares no code with `src/musicxml`: it is
 * kept crude on purpose and says just what each form needs.
 */
import { type Score, VOICES, type VoiceEvent, type VoiceName } from '../../src/score/score.ts';

export interface Form {
  /** Which staves there are; each entry is a part, each inner one a staff with its voices from the top. */
  readonly parts: readonly (readonly (readonly VoiceName[])[])[];
  readonly names?: readonly string[];
  /** The voice number for a voice on its staff in a bar; undefined leaves the element out. */
  readonly number?: (voice: VoiceName, bar: number) => string | undefined;
  readonly stems?: boolean;
  /** Both voices of a staff as chords where they move together. */
  readonly chords?: boolean;
  readonly timewise?: boolean;
  /** `implicit` and number of the upbeat, or a first bar filled up with rests. */
  readonly upbeat?: 'implicit 0' | 'plain 0' | 'implicit 1' | 'filled';
  /** How a gap looks. */
  readonly gaps?: 'whole-bar rests' | 'rests' | 'nothing' | 'forward' | 'hidden rests';
  /** Written this many semitones and steps away from the sound, with a transpose element to match. */
  readonly transpose?: { readonly voice: VoiceName; readonly steps: number; readonly semitones: number };
  readonly divisions?: number;
  /** XML of further parts: name and a measure's content, by bar. */
  readonly extra?: readonly {
    readonly name: string;
    readonly measure: (bar: number, full: number) => string;
  }[];
  /** Put before or after the notes of a bar in the first part. */
  readonly before?: (bar: number) => string;
  readonly after?: (bar: number) => string;
  readonly fermatas?: 'notes' | 'inverted' | 'barline';
  readonly version?: string;
  /** Half a bar in a measure of its own. */
  readonly head?: string;
}

const STEPS = ['C', 'D', 'E', 'F', 'G', 'A', 'B'];
const NATURAL = [0, 2, 4, 5, 7, 9, 11];
const CROTCHET = 10_080;

function pitchXml(event: Extract<VoiceEvent, { kind: 'note' }>, form: Form, voice: VoiceName): string {
  let { step, alteration, octave } = event.pitch;
  if (form.transpose?.voice === voice) {
    // Written = sounding moved the other way.
    const place = octave * 7 + STEPS.indexOf(step) - form.transpose.steps;
    const sound = octave * 12 + NATURAL[STEPS.indexOf(step)]! + alteration - form.transpose.semitones;
    octave = Math.floor(place / 7);
    step = STEPS[place - 7 * octave] as typeof step;
    alteration = sound - octave * 12 - NATURAL[place - 7 * octave]!;
  }
  return `<pitch><step>${step}</step>${alteration ? `<alter>${alteration}</alter>` : ''}<octave>${octave}</octave></pitch>`;
}

/** The score as a MusicXML document of the form. Only scores without tuplets that need finer divisions than given. */
export function inForm(score: Score, form: Form): string {
  const divisions = form.divisions ?? 4;
  const ticks = (n: number) => `<duration>${(n * divisions) / CROTCHET}</duration>`;
  const full = (bar: number) => (score.bars[bar]!.metre.beats * 4 * divisions) / score.bars[bar]!.metre.unit;

  const noteXml = (
    event: VoiceEvent,
    voice: VoiceName,
    bar: number,
    staff: number | undefined,
    where: { chord?: boolean; stem?: boolean },
  ): string => {
    const number = form.number ? form.number(voice, bar) : '1';
    const tail =
      `${number === undefined ? '' : `<voice>${number}</voice>`}` +
      `${where.stem && event.kind === 'note' ? `<stem>${voice === 'S' || voice === 'T' ? 'up' : 'down'}</stem>` : ''}` +
      `${staff === undefined ? '' : `<staff>${staff}</staff>`}`;
    if (event.kind === 'rest') return `<note><rest/>${ticks(event.duration)}${tail}</note>`;
    if (event.kind === 'gap') {
      switch (form.gaps ?? 'rests') {
        case 'nothing':
        case 'forward':
          return `<forward>${ticks(event.duration)}</forward>`;
        case 'hidden rests':
          return `<note print-object="no"><rest/>${ticks(event.duration)}${tail}</note>`;
        case 'whole-bar rests':
          return `<note><rest${event.duration === score.bars[bar]!.duration ? ' measure="yes"' : ''}/>${ticks(event.duration)}${tail}</note>`;
        default:
          return `<note><rest/>${ticks(event.duration)}${tail}</note>`;
      }
    }
    const all = score.voices[voice];
    const before = all[all.indexOf(event) - 1];
    const stops = before?.kind === 'note' && before.tied === true;
    const ties = `${stops ? '<tie type="stop"/>' : ''}${event.tied ? '<tie type="start"/>' : ''}`;
    const marks =
      event.fermata && form.fermatas !== 'barline'
        ? `<notations><fermata type="${form.fermatas === 'inverted' ? 'inverted' : 'upright'}"/></notations>`
        : '';
    return `<note>${where.chord ? '<chord/>' : ''}${pitchXml(event, form, voice)}${ticks(event.duration)}${ties}${tail}${marks}</note>`;
  };

  const eventsIn = (voice: VoiceName, bar: number) => {
    const { at, duration } = score.bars[bar]!;
    return score.voices[voice].filter((event) => event.at >= at && event.at < at + duration);
  };

  const staffXml = (voices: readonly VoiceName[], bar: number, staff: number | undefined): string => {
    const bars = score.bars[bar]!;
    const filled = bar === 0 && form.upbeat === 'filled' ? bars.offset : 0;
    const lead = (voice: VoiceName) => {
      const number = form.number ? form.number(voice, bar) : '1';
      return filled === 0
        ? ''
        : `<note><rest/>${ticks(filled)}${number === undefined ? '' : `<voice>${number}</voice>`}${staff === undefined ? '' : `<staff>${staff}</staff>`}</note>`;
    };
    const back = `<backup>${ticks(bars.duration + filled)}</backup>`;
    if (form.chords && voices.length === 2) {
      const [upper, lower] = voices.map((voice) => eventsIn(voice, bar));
      const together =
        upper!.length === lower!.length &&
        upper!.every((event, i) => event.duration === lower![i]!.duration && event.kind === lower![i]!.kind);
      if (together) {
        return (
          lead(voices[0]!) +
          upper!
            .map((event, i) =>
              event.kind === 'note'
                ? noteXml(event, voices[0]!, bar, staff, {}) +
                  noteXml(lower![i]!, voices[1]!, bar, staff, { chord: true })
                : noteXml(event, voices[0]!, bar, staff, {}),
            )
            .join('')
        );
      }
    }
    return voices
      .map(
        (voice) =>
          lead(voice) +
          eventsIn(voice, bar)
            .map((event) => noteXml(event, voice, bar, staff, { stem: form.stems === true }))
            .join(''),
      )
      .join(back);
  };

  const attributes = (part: number, bar: number): string => {
    const { key, metre } = score.bars[bar]!;
    const before = score.bars[bar - 1];
    const staves = form.parts[part]!;
    const keyChange = before === undefined || before.key.fifths !== key.fifths;
    const metreChange =
      before === undefined || before.metre.beats !== metre.beats || before.metre.unit !== metre.unit;
    if (!keyChange && !metreChange) return '';
    const moved =
      form.transpose !== undefined && staves.flat().includes(form.transpose.voice)
        ? form.transpose
        : undefined;
    // Only whole octaves are used where a key is to be kept.
    const mode = key.mode ? `<mode>${key.mode}</mode>` : '';
    return `<attributes>${bar === 0 ? `<divisions>${divisions}</divisions>` : ''}${keyChange ? `<key><fifths>${key.fifths + (moved ? writtenShift(moved) : 0)}</fifths>${mode}</key>` : ''}${metreChange ? `<time><beats>${metre.beats}</beats><beat-type>${metre.unit}</beat-type></time>` : ''}${bar === 0 && staves.length > 1 ? `<staves>${staves.length}</staves>` : ''}${bar === 0 && moved ? `<transpose><diatonic>${moved.steps % 7}</diatonic><chromatic>${moved.semitones % 12}</chromatic><octave-change>${Math.trunc(moved.semitones / 12)}</octave-change></transpose>` : ''}</attributes>`;
  };

  const measureXml = (part: number, bar: number): string => {
    const staves = form.parts[part]!;
    const bars = score.bars[bar]!;
    const filled = bar === 0 && form.upbeat === 'filled' ? bars.offset : 0;
    const back = `<backup>${ticks(bars.duration + filled)}</backup>`;
    const fermata = VOICES.some((voice) => {
      const last = eventsIn(voice, bar).at(-1);
      return last?.kind === 'note' && last.fermata;
    });
    return (
      attributes(part, bar) +
      (part === 0 ? (form.before?.(bar) ?? '') : '') +
      staves.map((voices, i) => staffXml(voices, bar, staves.length > 1 ? i + 1 : undefined)).join(back) +
      (part === 0 ? (form.after?.(bar) ?? '') : '') +
      (form.fermatas === 'barline' && fermata
        ? '<barline location="right"><fermata/><fermata type="inverted"/></barline>'
        : '')
    );
  };

  const numbering = (bar: number): string => {
    const { number, offset } = score.bars[bar]!;
    if (bar > 0) return `number="${number}"${offset > 0 ? ' implicit="yes"' : ''}`;
    switch (form.upbeat) {
      case 'plain 0':
        return 'number="0"';
      case 'implicit 1':
        return 'number="1" implicit="yes"';
      case 'filled':
        return 'number="0"';
      default:
        return `number="${number}"${offset > 0 ? ' implicit="yes"' : ''}`;
    }
  };

  const ids = [...form.parts.keys(), ...(form.extra ?? []).keys()].map((_, i) => `P${i + 1}`);
  const content = (part: number, bar: number) =>
    part < form.parts.length
      ? measureXml(part, bar)
      : `${bar === 0 ? `<attributes><divisions>${divisions}</divisions></attributes>` : ''}${form.extra![part - form.parts.length]!.measure(bar, full(bar))}`;
  const bars = [...score.bars.keys()];
  const body = form.timewise
    ? bars
        .map(
          (bar) =>
            `<measure ${numbering(bar)}>${ids.map((id, part) => `<part id="${id}">${content(part, bar)}</part>`).join('')}</measure>`,
        )
        .join('\n')
    : ids
        .map(
          (id, part) =>
            `<part id="${id}">${bars.map((bar) => `<measure ${numbering(bar)}>${content(part, bar)}</measure>`).join('\n')}</part>`,
        )
        .join('\n');
  const names = [...(form.names ?? form.parts.map(() => '')), ...(form.extra ?? []).map((one) => one.name)];
  const list = ids
    .map((id, i) => `<score-part id="${id}"><part-name>${names[i]}</part-name></score-part>`)
    .join('');
  const root = form.timewise ? 'score-timewise' : 'score-partwise';
  return `${form.head ?? '<?xml version="1.0" encoding="UTF-8"?>'}
<${root}${form.version ? ` version="${form.version}"` : ''}><work><work-title>${score.title}</work-title></work><part-list>${list}</part-list>${body}</${root}>`;
}

/** How many sharps more are written for an instrument that sounds so much away. */
function writtenShift(by: { steps: number; semitones: number }): number {
  const fifths = [0, 2, 4, -1, 1, 3, 5];
  const step = ((by.steps % 7) + 7) % 7;
  const natural = NATURAL[step]! + 12 * Math.floor(by.steps / 7);
  return -(fifths[step]! + 7 * (by.semitones - natural));
}
