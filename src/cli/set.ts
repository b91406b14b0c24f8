/** `partwise set`: from a piece to the brief, the pupil’s files and the link. */
import { parseDuration, printBrief } from '../brief/brief.ts';
import { HELPS, type Help, isHelp, sittingInWords } from '../brief/helps.ts';
import { capitalised, listed } from '../english/words.ts';
import type { VoiceAssignment } from '../musicxml/index.ts';
import { writeMusicXml } from '../musicxml/index.ts';
import { printNotation } from '../notation/index.ts';
import { profileNamed } from '../profiles/list.ts';
import { Refused } from '../refusal/refusal.ts';
import { WIDTH, wrap } from '../report/wrap.ts';
import { choiceInWords, parseChoice } from '../set/choice.ts';
import { linkTo } from '../set/link.ts';
import { type Setting, setWork } from '../set/set-work.ts';
import { openSource } from '../set/source.ts';
import { hasWords } from '../set/words.ts';
import { EXIT } from './exit.ts';
import { readInput } from './input.ts';
import { printFailure } from './paper.ts';
import { loadProfile } from './profile.ts';
import { printedWorksheet } from './worksheet.ts';
import { writeAll } from './write-all.ts';

export interface SetOptions {
  readonly give?: string;
  readonly output: string;
  readonly title?: string;
  readonly task?: string;
  readonly profile?: string;
  readonly leastLength?: string;
  readonly leastTogether?: string;
  readonly without?: string;
  readonly controlled?: true;
  readonly page: string;
  readonly voices?: VoiceAssignment;
  readonly force?: true;
}

export async function setCommand(file: string, options: SetOptions): Promise<number> {
  const input = await readInput(file);
  const opened = input.ok ? openSource(input.bytes, options.voices) : input;
  if (!opened.ok) {
    process.stderr.write(printFailure(file, opened));
    return EXIT.unreadable;
  }
  const { score, brief: before } = opened.source;
  const read = parseChoice(options.give ?? (before === undefined ? 'tune' : 'all'));
  if (!read.ok) throw new Refused(read.message);
  const own = options.profile === undefined ? undefined : await loadProfile(options.profile);
  const builtIn = own === undefined ? undefined : profileNamed(own.name) === own;
  const profile = (builtIn ? own?.name : undefined) ?? before?.profile ?? 'chorale';
  const set = setWork(score, read.choice, {
    profile,
    without: helpsWithheld(options) ?? before?.without ?? [],
    ...(before?.leastSeconds === undefined ? {} : { leastSeconds: before.leastSeconds }),
    ...(before?.leastTogetherSeconds === undefined
      ? {}
      : { leastTogetherSeconds: before.leastTogetherSeconds }),
    ...lengths(options),
    ...(options.title === undefined ? {} : { title: options.title }),
    ...(options.task === undefined ? {} : { task: options.task }),
  });
  if (!set.ok) throw new Refused(`${file}: ${set.message}`);
  const { brief } = set;
  const link = linkTo([brief]);
  const worksheet = link.ok ? await printedWorksheet(link.hash, options.page) : { files: {}, lines: [] };
  await writeAll(options, {
    'brief.txt': printBrief(brief),
    'exercise.musicxml': writeMusicXml(brief.score),
    'exercise.txt': printNotation(brief.score, { whole: true }),
    ...(builtIn === false ? { 'profile.json': `${JSON.stringify(own, null, 2)}\n` } : {}),
    ...worksheet.files,
  });
  const lines = [
    `${brief.score.title === '' ? file : brief.score.title}: ${brief.task}.`,
    `Given: ${choiceInWords(read.choice)}.`,
    ...[sittingInWords(brief)].filter((words) => words !== ''),
    `Written into ${options.output}: brief.txt (for you, and to mark by), exercise.musicxml and exercise.txt (for the pupils).`,
    ...(builtIn === false ? [ownProfileInWords(options.output, profile)] : []),
    ...(hasWords(brief.score) ? [WORDS_LOST] : []),
  ].flatMap((line) => wrap(line, WIDTH));
  const address = link.ok
    ? ['The link, which opens the pupils’ page with the exercise in it:', `${options.page}#${link.hash}`]
    : wrap(link.message, WIDTH);
  process.stdout.write(`${[...lines, ...worksheet.lines, ...address].join('\n')}\n`);
  return EXIT.fine;
}

/** A brief names a profile that every page knows; one's own has to go to whoever checks by it. */
function ownProfileInWords(folder: string, page: string): string {
  return `Your profile is profile.json beside them: mark with --profile ${folder}/profile.json. A brief and a link can only name a profile that is built in, so the pupils’ page checks by “${page}” until the file is opened there.`;
}

const WORDS_LOST =
  'The words under the tune are in exercise.musicxml alone: the text, the link and the worksheet have no place for them.';

function helpsWithheld({ without, controlled }: SetOptions): readonly Help[] | undefined {
  if (controlled) return HELPS;
  if (without === undefined) return undefined;
  const names = without.split(',').map((name) => name.trim().toLowerCase());
  const unknown = names.find((name) => !isHelp(name));
  if (unknown !== undefined)
    throw new Refused(`“${unknown}” is no help that can be withheld; ${listed(HELPS, 'or')} was expected.`);
  return HELPS.filter((help) => names.includes(help));
}

function lengths({ leastLength, leastTogether }: SetOptions): Partial<Setting> {
  const seconds = (name: string, text: string): number => {
    const read = parseDuration(text);
    if (read !== undefined) return read;
    throw new Refused(
      `${capitalised(name)} is written as minutes and seconds, such as 0:45; “${text}” was found.`,
    );
  };
  return {
    ...(leastLength === undefined ? {} : { leastSeconds: seconds('the least length', leastLength) }),
    ...(leastTogether === undefined
      ? {}
      : { leastTogetherSeconds: seconds('the least length together', leastTogether) }),
  };
}
