/** `partwise annotate`: the exercise with its numerals and findings written into it, in a file that opens again. */
import { writeFile } from 'node:fs/promises';
import type { LabelStyle } from '../harmony/words/labels.ts';
import { type WriteOptions, writeMidi, writeMusicXml, writeMxl } from '../musicxml/index.ts';
import { printNotation } from '../notation/index.ts';
import { type Opened, openScore } from '../open/open.ts';
import { Refused } from '../refusal/refusal.ts';
import { annotationsOf } from '../report/annotations.ts';
import { type Review, reviewScore } from '../review/review.ts';
import { EXIT } from './exit.ts';
import { readInput, reason } from './input.ts';
import { loadProfile } from './profile.ts';

export interface AnnotateOptions {
  readonly output: string;
  readonly profile: string;
  readonly labels: LabelStyle;
}

type Write = (review: Review, labels: LabelStyle, layout: Layout) => string | Uint8Array;
type Layout = Extract<Opened, { ok: true }>['layout'];

/** What each ending of the file to write means. Only MusicXML carries the notes on the score. */
const WRITERS: Readonly<Record<string, Write>> = {
  musicxml: (review, ...how) => writeMusicXml(review.score, marked(review, ...how)),
  xml: (review, ...how) => writeMusicXml(review.score, marked(review, ...how)),
  mxl: (review, ...how) => writeMxl(review.score, marked(review, ...how)),
  mid: (review) => writeMidi(review.score),
  txt: (review) => printNotation(review.score),
};

/** On as many staves as the pupil's own file. */
function marked(review: Review, labels: LabelStyle, layout: Layout): WriteOptions {
  return { annotations: annotationsOf(review, labels), ...(layout === undefined ? {} : { layout }) };
}

export async function annotateCommand(file: string, options: AnnotateOptions): Promise<number> {
  const { output, labels } = options;
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
  const profile = await loadProfile(options.profile);
  const input = await readInput(file);
  if (!input.ok) throw new Refused(`${file}: ${input.message}`);
  const opened = openScore(input.bytes);
  if (!opened.ok) {
    const { message, line } = opened;
    throw new Refused(`${file}: ${line === undefined ? '' : `line ${line}: `}${message}`);
  }
  const written = write(reviewScore(opened.score, profile), labels, opened.layout);
  try {
    await writeFile(output, written);
  } catch (error) {
    throw new Refused(`${output}: ${reason(error)}`);
  }
  return EXIT.fine;
}
