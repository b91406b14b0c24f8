/** MusicXML and MXL, both ways. What is not named here is this folder's own business. */
export type { Label, NoteheadMark, NumberMark, ScoreAnnotations } from './annotations.ts';
export { joinedBytes } from './bytes.ts';
export { decodeText } from './decode.ts';
export type { FoundLine } from './found-line.ts';
export { LIMITS } from './limits.ts';
export { type MarkOptions, markedScore, markMusicXml } from './marks/mark.ts';
export { type MidiOptions, writeMidi } from './midi.ts';
export { type MusicXmlReading, type ReadOptions, readMusicXml, readSource } from './read.ts';
export type { SourceBar, SourceNote, SourcePart, SourceScore } from './source.ts';
export { printVoiceText, readVoiceText } from './voice-text.ts';
export type { Assignment, VoiceAssignment } from './voices.ts';
export { type WriteOptions, writeMusicXml, writeMxl } from './write.ts';
export { wrongFile } from './wrong-files.ts';
