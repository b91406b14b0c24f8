/// <reference path="./abcjs.d.ts" />
/** From the parsed voices of a tune in ABC to what it says, in the shape in which a MusicXML file's content comes. */
import type { AbcElement, AbcKey, AbcMetre, AbcPitch, AbcTempo, AbcTune } from 'abcjs/src/parse/abc_parse.js';
import type { SourceBar, SourceNote, SourcePart, SourceScore } from '../musicxml/index.ts';
import { LIMITS } from '../musicxml/index.ts';
import { Refused } from '../refusal/refusal.ts';
import { type Pitch, STEPS } from '../score/pitch.ts';
import type { KeySignature } from '../score/score.ts';
import { tempoWithin } from '../score/tempo.ts';
import { barLength, CROTCHET, isBeatUnit, type Metre } from '../score/time.ts';

/** Where nothing in the file is pointed at. */
const NOWHERE = { inside: 0, until: 0 };

/** How far an accidental reaches within its bar: ABC 2.1, section 11.3, `%%propagate-accidentals`. */
export type Reach = 'not' | 'octave' | 'pitch';

/** A voice, parsed, with what its part is called. */
export interface ParsedVoice {
  readonly name: string;
  readonly tune: AbcTune;
  readonly reach: Reach;
  /** The line in the file of a place in the text. */
  readonly lineAt: (at: number) => number;
}

/** @throws {Refused} for a metre or key that can't be read, and too much of anything */
export function sourceOf(voices: readonly ParsedVoice[]): SourceScore {
  const [first] = voices;
  const title = first?.tune.metaText.title;
  return {
    title: typeof title === 'string' ? title.slice(0, LIMITS.nameLength) : '',
    explicitSilence: false,
    parts: voices.map((voice, i) => partOf(voice, i)),
    remarks: [],
  };
}

function partOf(voice: ParsedVoice, index: number): SourcePart {
  const reader = new VoiceReader(voice);
  if (voice.tune.metaText.tempo !== undefined) reader.readTempo(voice.tune.metaText.tempo);
  for (const { staff } of voice.tune.lines) {
    const [own] = staff ?? [];
    if (own === undefined) continue;
    reader.begin(own.key, own.meter, own.clef?.type ?? '');
    for (const element of own.voices[0] ?? []) reader.read(element);
  }
  const clef = reader.clef;
  return {
    id: `P${index + 1}`,
    name: voice.name.slice(0, LIMITS.nameLength),
    staves: 1,
    unpitched: new Map(),
    clefs: new Map([[1, { sign: clef.startsWith('bass') ? 'F' : 'G', octaves: Math.sign(octaveOf(clef)) }]]),
    bars: reader.finish(),
  };
}

type Open<T> = { -readonly [K in keyof T]: T[K] extends readonly (infer E)[] ? E[] : T[K] };

/** Goes through a voice from left to right and lays its bars out. */
class VoiceReader {
  clef = '';
  private readonly bars: Open<SourceBar>[] = [];
  private bar = emptyBar();
  /** Alterations by letter, as the signature has them. */
  private signature = new Map<string, number>();
  private key = '';
  private metre: Metre | 'free' = { beats: 4, unit: 4 };
  private metreText = '';
  /** Accidentals in force in this bar. */
  private inForce = new Map<string, number>();
  private tuplet = 1;
  /** A note that is tied to the next, by its place on the staff. */
  private readonly tied = new Map<number, number>();
  private ending: string | undefined;

  constructor(private readonly voice: ParsedVoice) {}

  /** A new line of music. */
  begin(key: AbcKey | undefined, metre: AbcMetre | undefined, clef: string): void {
    if (this.clef === '') this.clef = clef;
    if (key !== undefined) this.readKey(key);
    if (metre !== undefined) this.readMetre(metre);
  }

  read(element: AbcElement): void {
    switch (element.el_type) {
      case 'note':
        if (element.rest?.type === 'multimeasure') this.restFor(element);
        else this.readNote(element);
        break;
      case 'bar':
        this.readBarline(element);
        break;
      case 'key':
        this.readKey(element);
        break;
      case 'meter':
        this.readMetre(element);
        break;
      case 'tempo':
        this.readTempo(element);
        break;
    }
  }

  /** So many of a length, or of several together, a minute. */
  readTempo({ bpm = 0, duration = [] }: AbcTempo): void {
    const beat = typeof duration === 'number' ? duration : duration.reduce((sum, one) => sum + one, 0);
    const tempo = tempoWithin(bpm * beat * 4);
    if (tempo !== undefined) this.bar.tempos.push({ at: this.bar.length, tempo });
  }

  finish(): SourceBar[] {
    if (this.bar.length > 0) this.closeBar();
    return this.bars.map((bar, i) => ({
      ...bar,
      number: String(i + (isShort(this.bars[0]) ? 0 : 1)),
      implicit: i === 0 && isShort(bar),
    }));
  }

  private closeBar(): void {
    if (this.bar.length === 0) return;
    if (this.bars.length >= LIMITS.bars) throw tooMuch(`${LIMITS.bars} bars`);
    if (this.bar.notes.length > LIMITS.notesInBar) throw tooMuch(`${LIMITS.notesInBar} notes in a bar`);
    this.bars.push(this.ending === undefined ? this.bar : { ...this.bar, ending: this.ending });
    this.bar = emptyBar();
    this.inForce = new Map();
  }

  private readNote(element: AbcElement): void {
    const { pitches, rest } = element;
    const duration = typeof element.duration === 'number' ? element.duration : 0;
    if (element.startTriplet !== undefined) this.tuplet = element.tripletMultiplier ?? 1;
    const length = duration * this.tuplet * 4 * CROTCHET;
    if (element.endTriplet) this.tuplet = 1;
    if (length <= 0 || (pitches === undefined && rest === undefined)) return;
    if (length > LIMITS.crotchets * CROTCHET) throw tooMuch(`${LIMITS.crotchets} crotchets in a bar`);
    const at = this.bar.length;
    const ticks = Math.round(length);
    const exact = Math.abs(length - ticks) < 1e-6;
    this.bar.length = at + ticks;
    const place = {
      at,
      duration: ticks,
      staff: 1,
      voice: '1',
      line: this.voice.lineAt(element.startChar ?? 0),
      span: NOWHERE,
      ...(exact ? {} : { inexact: true as const }),
      ...(element.decoration?.some((one) => one.endsWith('fermata')) ? { fermata: true as const } : {}),
    };
    if (pitches === undefined) {
      const kind = rest!.type === 'invisible' || rest!.type === 'spacer' ? 'hidden' : 'rest';
      this.bar.notes.push({ kind, ...place, ...(rest!.type === 'whole' ? { wholeBar: true as const } : {}) });
      return;
    }
    const grace = (element.gracenotes ?? []).map((one) => this.pitchOf(one).pitch);
    const lyrics = lyricsOf(element);
    // The highest of a chord comes first, as the note the rest belong to.
    for (const [i, written] of [...pitches].sort((a, b) => b.pitch - a.pitch).entries()) {
      const { pitch, odd } = this.pitchOf(written);
      this.bar.notes.push({
        kind: 'note',
        ...place,
        pitch,
        ...(odd === undefined ? {} : { oddPitch: odd }),
        ...(i === 0 ? {} : { chord: true }),
        ...(written.startTie === undefined ? {} : { tieStart: true }),
        ...(written.endTie ? { tieStop: true } : {}),
        ...(i === 0 && grace.length > 0 ? { grace } : {}),
        ...(i === 0 && lyrics.length > 0 ? { lyrics } : {}),
      });
    }
  }

  /** A rest of so many bars, written as one. */
  private restFor(element: AbcElement): void {
    const bars = Number(element.rest?.text ?? 1);
    const length = this.metre === 'free' ? 4 * CROTCHET : barLength(this.metre);
    const line = this.voice.lineAt(element.startChar ?? 0);
    for (let i = 0; i < Math.min(bars, LIMITS.bars + 1); i++) {
      const at = this.bar.length;
      const rest = { kind: 'rest', at, duration: length, staff: 1, voice: '1', line, span: NOWHERE } as const;
      this.bar.notes.push({ ...rest, wholeBar: true });
      this.bar.length = at + length;
      if (i < bars - 1) this.closeBar();
    }
  }

  /** As it sounds: with what the signature, the bar so far and a tie do to it. */
  private pitchOf(written: AbcPitch): { readonly pitch: Pitch; readonly odd?: string } {
    const place = written.pitch;
    const step = STEPS[((place % 7) + 7) % 7]!;
    const held = written.endTie && written.accidental === undefined ? this.tied.get(place) : undefined;
    const { reach } = this.voice;
    const known = reach === 'octave' ? String(place) : step;
    const said = written.accidental === undefined ? undefined : ACCIDENTALS[written.accidental];
    if (said !== undefined && reach !== 'not') this.inForce.set(known, said);
    const alteration = said ?? held ?? this.inForce.get(known) ?? this.signature.get(step) ?? 0;
    if (written.startTie === undefined) this.tied.delete(place);
    else this.tied.set(place, alteration);
    const octave = 4 + Math.floor(place / 7) + octaveOf(this.clef);
    const odd =
      written.accidental !== undefined && said === undefined ? 'altered by a quarter tone' : undefined;
    return { pitch: { step, alteration, octave }, ...(odd === undefined ? {} : { odd }) };
  }

  private readKey(key: AbcKey): void {
    const text = JSON.stringify([key.root, key.mode, key.accidentals]);
    if (text === this.key) return;
    this.key = text;
    const accidentals = (key.accidentals ?? []).map(({ acc, note }) => ({
      step: note.toUpperCase(),
      alteration: ACCIDENTALS[acc] ?? 0,
    }));
    this.signature = new Map(accidentals.map(({ step, alteration }) => [step, alteration]));
    this.limitChanges(this.bar.keys.length);
    this.bar.keys.push({ at: this.bar.length, staff: 0, key: signatureOf(key, this.signature) });
  }

  private readMetre(metre: AbcMetre): void {
    const text = JSON.stringify([metre.type, metre.value]);
    if (text === this.metreText) return;
    this.metreText = text;
    this.metre = metreOf(metre);
    this.limitChanges(this.bar.metres.length);
    this.bar.metres.push({ at: this.bar.length, metre: this.metre });
  }

  private limitChanges(count: number): void {
    if (count >= LIMITS.changesInBar)
      throw tooMuch(`${LIMITS.changesInBar} changes of key or metre in a bar`);
  }

  private readBarline(element: AbcElement): void {
    const { type = '', startEnding } = element;
    const at = this.bar.length;
    const back = type === 'bar_right_repeat' || type === 'bar_dbl_repeat';
    const forward = type === 'bar_left_repeat' || type === 'bar_dbl_repeat';
    if (element.decoration?.some((one) => one.endsWith('fermata'))) this.bar.fermatas.push(at);
    if (back && at > 0) this.bar.repeats.push({ at, direction: 'backward' });
    if (type !== 'bar_invisible') this.closeBar();
    if (element.endEnding) this.ending = undefined;
    if (startEnding !== undefined) this.ending = startEnding.trim().slice(0, 20) || undefined;
    if (forward) this.bar.repeats.push({ at: this.bar.length, direction: 'forward' });
  }
}

function emptyBar(): Open<SourceBar> {
  return {
    number: '',
    implicit: false,
    length: 0,
    notes: [] as SourceNote[],
    keys: [],
    metres: [],
    tempos: [],
    figures: [],
    repeats: [],
    fermatas: [],
  };
}

/** An upbeat: a first bar that is not as long as its metre says. */
function isShort(bar: Open<SourceBar> | undefined): boolean {
  const metre = bar?.metres[0]?.metre;
  return bar !== undefined && metre !== undefined && metre !== 'free' && bar.length < barLength(metre);
}

const ACCIDENTALS: Readonly<Record<string, number>> = {
  natural: 0,
  sharp: 1,
  flat: -1,
  dblsharp: 2,
  dblflat: -2,
};

/** Octaves that a clef with an 8 moves what is written under it. */
function octaveOf(clef: string): number {
  return clef.endsWith('-8') ? -1 : clef.endsWith('+8') ? 1 : 0;
}

const SHARPS = ['F', 'C', 'G', 'D', 'A', 'E', 'B'];

/** The signature, and the mode where it is major or minor; none of the usual ones is read as without accidentals. */
function signatureOf(key: AbcKey, signature: ReadonlyMap<string, number>): KeySignature {
  const altered = [...signature].filter(([, alteration]) => alteration !== 0);
  const sharps = altered.every(
    ([step, alteration]) => alteration === 1 && SHARPS.indexOf(step) < altered.length,
  );
  const flats = altered.every(
    ([step, alteration]) => alteration === -1 && SHARPS.indexOf(step) >= 7 - altered.length,
  );
  const fifths = sharps ? altered.length : flats ? -altered.length : 0;
  const mode = key.root === 'none' ? undefined : MODES[key.mode ?? ''];
  return { fifths, ...(mode === undefined || !(sharps || flats) ? {} : { mode }) };
}

const MODES: Readonly<Record<string, 'major' | 'minor'>> = { '': 'major', m: 'minor' };

/** @throws {Refused} */
function metreOf({ type, value = [] }: AbcMetre): Metre | 'free' {
  if (type === 'common_time') return { beats: 4, unit: 4 };
  if (type === 'cut_time') return { beats: 2, unit: 2 };
  const [figures] = value;
  if (type !== 'specified' || figures === undefined) return 'free';
  const beats = figures.num.split('+').reduce((sum, one) => sum + Number(one), 0);
  const unit = Number(figures.den ?? Number.NaN);
  if (!Number.isInteger(beats) || beats < 1 || beats > LIMITS.beats || !isBeatUnit(unit)) {
    throw new Refused(
      `The metre M:${figures.num}/${figures.den ?? ''} can't be read; it should be two figures, as in M:4/4.`,
      { kind: 'unreadable' },
    );
  }
  return { beats, unit };
}

/** The syllables under a note, verse by verse; a hyphen at the end says that the word goes on. */
function lyricsOf({ lyric = [] }: AbcElement): string[] {
  const verses = lyric.slice(0, LIMITS.verses).map(({ syllable, divider }) => {
    const text = syllable.trim().slice(0, LIMITS.nameLength);
    return text !== '' && divider === '-' ? `${text}-` : text;
  });
  return verses.every((text) => text === '') ? [] : verses;
}

function tooMuch(what: string): Refused {
  return new Refused(`The tune has more than ${what}, too much for one exercise.`, { kind: 'unreadable' });
}
