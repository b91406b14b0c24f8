/** What stands in a file beside the four voices, and what a person should be told about the reading. */
import { capitalised, listed } from '../english/words.ts';
import { samePitch } from '../score/pitch.ts';
import type { ReaderRemark, VoiceName } from '../score/score.ts';
import { partName } from './describe.ts';
import type { Line, Staff } from './lines.ts';
import { readName } from './names.ts';
import type { SourceScore } from './source.ts';

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
