/** `--voices`: which line of a file is which voice. */
import { Option } from 'commander';
import { type FoundLine, readVoiceText, type VoiceAssignment } from '../musicxml/index.ts';
import { Refused } from '../refusal/refusal.ts';

export function voicesOption(): Option {
  return new Option(
    '--voices <lines>',
    'which line of the file sings which voice, S=1,A=2,T=3,B=4: parts by their number, or 1.2.1 for the first line of the second staff of the first part',
  ).argParser(readVoices);
}

/** @throws {Refused} for anything but voices with lines */
function readVoices(text: string): VoiceAssignment {
  const read = readVoiceText(text);
  if (!read.ok) throw new Refused(`--voices ${text}: ${read.message}`, { kind: 'unclear' });
  return read.voices;
}

/** What to choose from, for a file whose voices can't be told. */
export function linesToChoose(lines: readonly FoundLine[]): string {
  const told = lines.filter(({ notes }) => notes > 0).map(lineToChoose);
  return `Its lines are ${told.join('; ')}. Say which sing with --voices S=…,A=…,T=…,B=….`;
}

function lineToChoose({ id, name, notes, lowest, highest }: FoundLine): string {
  const range = lowest === undefined ? '' : `, ${lowest} to ${highest}`;
  return `${id.replace(/(\.1){1,2}$/, '')} ${name} (${notes} ${notes === 1 ? 'note' : 'notes'}${range})`;
}
