/** What stands in a file beside the four voices, and what a person should be told about the reading. */
import { capitalised, listed } from '../english/words.ts';
import { printPitch, samePitch } from '../score/pitch.ts';
import { type ReaderRemark, VOICES, type VoiceName } from '../score/score.ts';
import { barLength, beatLength, type Ticks } from '../score/time.ts';
import { partName, staffName } from './describe.ts';
import type { Line, Staff } from './lines.ts';
import { readName } from './names.ts';
import type { SourcePart, SourceScore } from './source.ts';

/** What may be left out beside four voices: an accompaniment, a copy of what they sing, an empty or unpitched staff. */
export function mayStandAside(source: SourceScore, staff: Staff, voices: readonly Line[]): boolean {
  if (staff.kind !== 'notes' || staff.most === 0) return true;
  if (readName(source.parts[staff.part]!.name).accompaniment) return true;
  return staff.lines.every((line) => doubles(line, voices));
}

/** At least four fifths of a line's notes are also in the voices, at the same moment. */
export function doubles(line: Line, voices: readonly Line[]): boolean {
  let same = 0;
  for (const [index, bar] of line.bars.entries()) {
    for (const note of bar) {
      const { pitch } = note;
      if (pitch === undefined) continue;
      const doubled = voices.some((voice) =>
        (voice.bars[index] ?? []).some(
          (other) =>
            other.pitch !== undefined &&
            samePitch(other.pitch, pitch) &&
            other.at <= note.at &&
            other.at + other.duration > note.at,
        ),
      );
      if (doubled) same++;
    }
  }
  return same >= 0.8 * line.notes;
}

/** What was set aside, part by part, and notes that found no voice. */
export function asideRemarks(
  source: SourceScore,
  staves: readonly Staff[],
  chosen: ReadonlyMap<string, VoiceName>,
): ReaderRemark[] {
  const remarks: ReaderRemark[] = [];
  const aside = staves.filter((staff) => !staff.lines.some((line) => chosen.has(line.id)));
  for (const part of new Set(aside.map((staff) => staff.part))) {
    const own = aside.filter((staff) => staff.part === part);
    const whole = own.length === source.parts[part]!.staves;
    const what = whole
      ? partName(source, part)
      : `${own.length === 1 ? `staff ${own[0]!.staff}` : `staves ${listed(own.map((staff) => String(staff.staff)))}`} of ${partName(source, part)}`;
    const empty = own.every((staff) => staff.most === 0);
    remarks.push({
      message: `${capitalised(what)} was set aside${empty ? ': it is empty' : ''}; only the four voices are judged.`,
      about: 'voices',
    });
  }
  return remarks;
}

/** More slips than this are not told one by one. */
const MOST_TOLD = 12;

/** Notes too many for the voices of their staff: the outer ones were taken. */
export function slipRemarks(
  source: SourceScore,
  staves: readonly Staff[],
  lines: Readonly<Partial<Record<VoiceName, Line>>>,
): ReaderRemark[] {
  const slips = VOICES.flatMap((voice) => {
    const line = lines[voice];
    const staff = staves.find((one) => line !== undefined && one.lines.includes(line));
    if (line === undefined || staff === undefined || staff.lines[0] !== line) return [];
    return staff.setAside.map(({ bar, note }) => ({ staff, bar, note }));
  });
  const told = slips.slice(0, MOST_TOLD).map(({ staff, bar, note }): ReaderRemark => {
    const { number } = source.parts[staff.part]!.bars[bar]!;
    return {
      message: `Beat ${beatOf(source.parts[staff.part]!, bar, note.at)}: more notes sound at once in ${staffName(source, staff.part, staff.staff)} than it has voices; ${note.pitch ? printPitch(note.pitch) : 'one'} was left out.`,
      ...(number === '' ? {} : { bar: number }),
      line: note.line,
    };
  });
  const more = slips.length - told.length;
  return more <= 0
    ? told
    : [...told, { message: `${more} more ${more === 1 ? 'note was' : 'notes were'} left out likewise.` }];
}

/** The beat as printed; a bar that is short because it opens the piece ends with its last beat. */
function beatOf(part: SourcePart, index: number, at: Ticks): string {
  const metre = part.bars
    .slice(0, index + 1)
    .flatMap((bar) => bar.metres.flatMap((one) => (one.metre === 'free' ? [] : [one.metre])))
    .at(-1) ?? { beats: 4, unit: 4 };
  const bar = part.bars[index]!;
  const offset = index === 0 || bar.implicit ? Math.max(0, barLength(metre) - bar.length) : 0;
  const beat = (at + offset) / beatLength(metre) + 1;
  return Number.isInteger(beat) ? String(beat) : beat.toFixed(2).replace('.50', '½').replace(/0$/, '');
}

/** Fewer notes than this tell nothing. */
const ENOUGH_NOTES = 8;

/**
 * A tenor in a treble clef without the 8 that lies above the alto was probably meant to sound an octave lower; the file
 * says otherwise, so a person must decide.
 */
export function tenorRemarks(
  source: SourceScore,
  lines: Readonly<Partial<Record<VoiceName, Line>>>,
): ReaderRemark[] {
  const { T: tenor, A: alto } = lines;
  if (tenor === undefined || alto === undefined || tenor.notes < ENOUGH_NOTES || alto.notes < ENOUGH_NOTES)
    return [];
  const clef = source.parts[tenor.part]!.clefs.get(tenor.staff);
  if (clef?.sign !== 'G' || clef.octaves !== 0 || tenor.height <= alto.height) return [];
  return [
    {
      message:
        'The tenor is written in a treble clef without the 8 below it and so lies above the alto. If it is meant to sound an octave lower, give it the clef with the 8, or write it an octave lower.',
      voice: 'T',
    },
  ];
}
