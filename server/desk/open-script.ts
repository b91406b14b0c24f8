/** Opens a script's file with its voices as somebody said they are: for this script, or for its whole stack. */
import { readAbc } from '../../src/abc/read.ts';
import { readVoiceText, type VoiceAssignment } from '../../src/musicxml/index.ts';
import { type Opened, openScore, readAbcBy } from '../../src/open/open.ts';

// Whatever is on the desk is opened without waiting for anything.
readAbcBy(readAbc);

export interface SaidVoices {
  /** For this script: they hold, whatever comes of it. */
  readonly own?: VoiceAssignment;
  /** For all scripts of the stack: they hold for those that have such lines. */
  readonly usual?: VoiceAssignment;
}

/** As they are kept on the desk: what was said of the stack, and of the script. */
export function saidVoices(stack: string | undefined, script: string | undefined): SaidVoices {
  const [forScript, forAll] = [script, stack].map(voicesOf);
  return {
    ...(forScript === undefined ? {} : { own: forScript }),
    ...(forAll === undefined ? {} : { usual: forAll }),
  };
}

function voicesOf(text: string | undefined): VoiceAssignment | undefined {
  const read = text === undefined ? undefined : readVoiceText(text);
  return read?.ok ? read.voices : undefined;
}

const DO_NOT_FIT =
  'The lines that were chosen for the whole stack are not all in this file, so its voices were told as if none had been chosen.';

export type OpenedScript = Opened & { /** By which it was opened. */ readonly voices?: VoiceAssignment };

/** Never throws: what can't be read is told. */
export function openScript(content: Uint8Array, { own, usual }: SaidVoices): OpenedScript {
  const voices = own ?? usual;
  if (voices === undefined) return openScore(content);
  const opened = openScore(content, undefined, voices);
  if (opened.ok || opened.lines === undefined || own !== undefined) return { ...opened, voices };
  const alone = openScore(content);
  if (!alone.ok) return alone;
  const remarks = [{ message: DO_NOT_FIT, about: 'voices' as const }, ...alone.score.remarks];
  return { ...alone, score: { ...alone.score, remarks } };
}
