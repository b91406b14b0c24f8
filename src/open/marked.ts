/** A file handed back with what a review says put into it. */
import { markedScore, markMusicXml, type ScoreAnnotations, type VoiceAssignment } from '../musicxml/index.ts';
import type { OpenedScore } from './open.ts';

export interface MarkedOptions {
  /** As it came where nothing is said; for a text, MusicXML. */
  readonly form?: 'musicxml' | 'mxl';
  /** Those the file was opened with. */
  readonly voices?: VoiceAssignment;
}

/**
 * The file itself with the annotations put into it; for a text (our notation, ABC), which has no room for them,
 * a new one.
 */
export function markedFile(
  bytes: Uint8Array,
  opened: OpenedScore,
  annotations: ScoreAnnotations,
  options: MarkedOptions = {},
): Uint8Array {
  if (opened.kind === 'musicxml' || opened.kind === 'mxl') return markMusicXml(bytes, annotations, options);
  return markedScore(opened.score, annotations, options.form === undefined ? {} : { form: options.form });
}
