/** The exercise as a file, in each form it can be handed on. */
import { WHO_DECIDES } from '../../src/brief/last-check.ts';
import {
  type Assignment,
  markedScore,
  markMusicXml,
  readMusicXml,
  type VoiceAssignment,
  type WriteOptions,
  writeMidi,
  writeMusicXml,
} from '../../src/musicxml/index.ts';
import { printNotation } from '../../src/notation/index.ts';
import { annotationsOf } from '../../src/report/annotations.ts';
import { checkItems } from '../panels/check.ts';
import type { Commands } from '../panels/context.ts';
import { sitting } from '../state/brief.ts';
import type { PageState } from '../state/page.ts';
import { chosenProfile } from '../state/profiles.ts';
import type { Shelf } from '../state/shelf.ts';
import { titleOf } from '../state/work.ts';
import { fileName, saveFile } from './save.ts';

const MUSICXML = 'application/vnd.recordare.musicxml+xml';

export async function save(
  what: Parameters<Commands['save']>[0],
  state: PageState,
  shelf: Shelf,
): Promise<void> {
  const { score, text } = state.history.now;
  const title = titleOf(score);
  // Only what was begun under its brief can say so: a brief laid beside it later proves nothing.
  const handedIn = (state.exercise.begunFromBrief && sitting(state)) || undefined;
  switch (what) {
    case 'text':
      return saveFile(
        fileName(title, 'txt'),
        `${handedIn === undefined ? '' : `# ${handedIn}\n`}${text}`,
        'text/plain',
      );
    case 'musicxml':
      return saveFile(
        fileName(title, 'musicxml'),
        writeMusicXml(score, { ...layoutOf(state), ...(handedIn && { note: handedIn }) }),
        MUSICXML,
      );
    case 'annotated':
      return saveFile(fileName(`${title} marked`, 'musicxml'), await markedMusicXml(state), MUSICXML);
    case 'midi':
      return saveFile(fileName(title, 'mid'), new Uint8Array(writeMidi(score)), 'audio/midi');
    case 'brief':
      return saveFile(fileName(title, 'brief.txt'), state.exercise.brief, 'text/plain');
    case 'report':
      return saveFile(fileName(`${title} last check`, 'txt'), reportText(state), 'text/plain');
    case 'everything':
      return saveFile('partwise-exercises.json', await shelf.everything(), 'application/json');
  }
}

/** Chords, cadences and numbered marks put into the file the exercise came in, or where that has changed, a new one. */
async function markedMusicXml(state: PageState): Promise<Uint8Array<ArrayBuffer>> {
  const { score, text } = state.history.now;
  const { reviewScore } = await import('../../src/review/review.ts');
  const annotations = annotationsOf(reviewScore(score, chosenProfile(state.settings)), state.settings.labels);
  const { source } = state.exercise;
  if (source !== undefined) {
    const voices = voicesOf(source.assignment);
    const read = readMusicXml(source.bytes, { voices });
    if (read.ok && printNotation({ ...read.score, title: score.title }) === text)
      return new Uint8Array(markMusicXml(source.bytes, annotations, { voices, form: 'musicxml' }));
  }
  return new Uint8Array(markedScore(score, annotations, layoutOf(state)));
}

function voicesOf({ lines }: Assignment): VoiceAssignment {
  return Object.fromEntries(lines.flatMap(({ given, id }) => (given === undefined ? [] : [[given, id]])));
}

/** A score that came on two staves is handed back on two. */
function layoutOf({ exercise }: PageState): Pick<WriteOptions, 'layout'> {
  return exercise.source === undefined ? {} : { layout: exercise.source.assignment.layout };
}

/** The last check as plain text. */
function reportText(state: PageState): string {
  const items = checkItems({ state }) ?? [];
  const set = sitting(state);
  const lines = items.flatMap((item) => [
    `${item.verdict.toUpperCase()}: ${item.title}`,
    `  ${item.sentence}`,
    ...item.details.map((detail) => `  - ${detail.text}`),
    '',
  ]);
  return `Last check: ${titleOf(state.history.now.score)}\n${set === '' ? '' : `${set}\n`}\n${lines.join('\n')}\n${WHO_DECIDES}\n`;
}
