/** Words under the notes, which MusicXML carries and the text notation does not. */
import { type Score, VOICES } from '../score/score.ts';

export function hasWords({ voices }: Score): boolean {
  return VOICES.some((voice) =>
    voices[voice].some((event) => event.kind === 'note' && (event.lyrics?.length ?? 0) > 0),
  );
}
