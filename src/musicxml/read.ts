/** Any MusicXML file's bytes → {@link Score}, or the sentence that says why not. */
import { type Refusal, Refused, refusalOf, refuse } from '../refusal/refusal.ts';
import type { Score } from '../score/score.ts';
import { isArchive, unpackScore } from './archive.ts';
import { type Assembled, assemble } from './assemble.ts';
import { decodeXml } from './decode.ts';
import { type FoundLine, VoicesUntold } from './found-line.ts';
import { LIMITS } from './limits.ts';
import { holdsMarks, withoutMarks } from './marks/ours.ts';
import { parseMusicXml } from './parse.ts';
import type { SourceScore } from './source.ts';
import { type Assignment, assignVoices, type VoiceAssignment } from './voices.ts';
import { isWebPage, wrongMarkup } from './wrong-files.ts';

export interface ReadOptions {
  /** Which line sings which voice, where a person has changed it; ids are those of {@link Assignment}. */
  readonly voices?: VoiceAssignment;
}

/** Lines and columns of a refusal are those of the unpacked XML. */
export type MusicXmlReading =
  | {
      readonly ok: true;
      readonly score: Score;
      readonly assignment: Assignment;
      /** The file has marks that were put in by an earlier review; they are passed over. */
      readonly marked?: true;
    }
  | ({
      readonly ok: false;
      /** Where only the voices could not be told: the lines to choose them from. */
      readonly lines?: readonly FoundLine[];
    } & Refusal);

/** Reads a four-part score from MusicXML (`.musicxml`, `.xml`) or compressed MusicXML (`.mxl`). Never throws. */
export function readMusicXml(bytes: Uint8Array, options: ReadOptions = {}): MusicXmlReading {
  return told(() => {
    if (bytes.length === 0) throw new Refused('The file is empty.');
    if (bytes.length > LIMITS.fileBytes) {
      throw new Refused(
        `The file is larger than ${LIMITS.fileBytes / 1024 / 1024} MB; an exercise takes less than 1 MB.`,
      );
    }
    const { text } = decodeXml(isArchive(bytes) ? unpackScore(bytes) : bytes);
    if (isWebPage(text)) throw new Refused(wrongMarkup('html')!);
    const { score, assignment } = readScore(withoutMarks(text), options);
    return { ok: true, score, assignment, ...(holdsMarks(text) ? { marked: true } : {}) };
  });
}

/** The same from what another reader found in another kind of file. Never throws. */
export function readSource(source: SourceScore, options: ReadOptions = {}): MusicXmlReading {
  return told(() => {
    const { score, assignment } = scoreFrom(source, options);
    return { ok: true, score, assignment };
  });
}

/** Where a file is refused, the refusal as a value. */
function told(read: () => MusicXmlReading): MusicXmlReading {
  try {
    return read();
  } catch (error) {
    if (error instanceof VoicesUntold) return { ok: false, ...refusalOf(error), lines: error.lines };
    if (error instanceof Refused) return { ok: false, ...refusalOf(error) };
    // A mistake of ours, not of the file; the door stays shut all the same, and the fuzzer looks for this sentence.
    return refuse(
      `The file could not be read because of a mistake in Partwise itself (${error instanceof Error ? error.message : String(error)}). Please report it.`,
    );
  }
}

/** A score and where in the text each of its notes stands. */
export interface ScoreInText extends Assembled {
  readonly source: SourceScore;
  readonly assignment: Assignment;
}

/** Reads a decoded text that has no marks of ours in it. @throws {Refused} */
export function readScore(xml: string, options: ReadOptions): ScoreInText {
  return scoreFrom(parseMusicXml(xml), options);
}

function scoreFrom(source: SourceScore, options: ReadOptions): ScoreInText {
  const { lines, assignment, remarks } = assignVoices(source, options.voices);
  return { ...assemble(source, lines, [...remarks, ...source.remarks]), source, assignment };
}
