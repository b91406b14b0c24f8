/** `partwise annotate`: the exercise with its numerals and findings put into it, in a file that opens again. */
import { readFile, realpath, rename, rm, writeFile } from 'node:fs/promises';
import type { LabelStyle } from '../harmony/words/labels.ts';
import { type VoiceAssignment, writeMidi } from '../musicxml/index.ts';
import { printNotation } from '../notation/index.ts';
import { markedFile } from '../open/marked.ts';
import { type OpenedScore, openScore } from '../open/open.ts';
import { Refused } from '../refusal/refusal.ts';
import { annotationsOf } from '../report/annotations.ts';
import { type Review, reviewScore } from '../review/review.ts';
import { EXIT } from './exit.ts';
import { readInput, reason } from './input.ts';
import { loadProfile } from './profile.ts';
import { linesToChoose } from './voices.ts';

export interface AnnotateOptions {
  readonly output: string;
  readonly profile: string;
  readonly labels: LabelStyle;
  readonly force?: true;
  readonly voices?: VoiceAssignment;
}

interface Subject {
  readonly bytes: Uint8Array;
  readonly opened: OpenedScore;
  readonly review: Review;
  readonly labels: LabelStyle;
  readonly voices?: VoiceAssignment;
}

/** What each ending of the file to write means. Only MusicXML carries the notes on the score. */
const WRITERS: Readonly<Record<string, (subject: Subject) => string | Uint8Array>> = {
  musicxml: (subject) => marked(subject, 'musicxml'),
  xml: (subject) => marked(subject, 'musicxml'),
  mxl: (subject) => marked(subject, 'mxl'),
  mid: ({ review }) => writeMidi(review.score),
  txt: ({ review }) => printNotation(review.score),
};

function marked({ bytes, opened, review, labels, voices }: Subject, form: 'musicxml' | 'mxl'): Uint8Array {
  const options = { form, ...(voices === undefined ? {} : { voices }) };
  return markedFile(bytes, opened, annotationsOf(review, labels), options);
}

export async function annotateCommand(file: string, options: AnnotateOptions): Promise<number> {
  const { output } = options;
  const ending = /\.([a-z]+)$/i.exec(output)?.[1]?.toLowerCase() ?? '';
  const write = Object.hasOwn(WRITERS, ending) ? WRITERS[ending] : undefined;
  if (write === undefined) {
    throw new Refused(
      `What to write is told by the ending, and “${output}” has none that is known. Use one of: ${Object.keys(
        WRITERS,
      )
        .map((e) => `.${e}`)
        .join(', ')}.`,
    );
  }
  if (options.force === undefined) await refuseOverwriting(file, output);
  const profile = await loadProfile(options.profile);
  const input = await readInput(file);
  if (!input.ok) throw new Refused(`${file}: ${input.message}`);
  const opened = openScore(input.bytes, undefined, options.voices);
  if (!opened.ok) {
    const { message, line, lines } = opened;
    const choose = lines === undefined ? '' : ` ${linesToChoose(lines)}`;
    throw new Refused(`${file}: ${line === undefined ? '' : `line ${line}: `}${message}${choose}`);
  }
  const review = reviewScore(opened.score, profile);
  await replaceFile(output, write({ ...options, bytes: input.bytes, opened, review }));
  return EXIT.fine;
}

/** A file that stands there is replaced unasked only where it is an earlier marked copy. */
async function refuseOverwriting(file: string, output: string): Promise<void> {
  const [from, to] = await Promise.all([file, output].map((path) => realpath(path).catch(() => undefined)));
  if (to === undefined) return;
  if (from === to) {
    throw new Refused(
      `${output} is the exercise itself. Name another file to write, or add --force to put the marks into this one.`,
    );
  }
  const there = await readFile(to).catch(() => new Uint8Array());
  const opened = openScore(there);
  if (opened.ok && opened.marked) return;
  throw new Refused(`${output} is there already. Name another file to write, or add --force to replace it.`);
}

/** Written beside its place and then put there, so that a run that is stopped leaves the old file whole. */
async function replaceFile(output: string, content: string | Uint8Array): Promise<void> {
  const beside = `${output}.${process.pid}.part`;
  try {
    await writeFile(beside, content);
    await rename(beside, output);
  } catch (error) {
    await rm(beside, { force: true });
    throw new Refused(`${output}: ${reason(error)}`);
  }
}
