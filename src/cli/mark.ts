/** `partwise mark`: a folder of scripts onto the marking desk. */
import { existsSync, watch } from 'node:fs';
import { readFile, stat, writeFile } from 'node:fs/promises';
import { dirname, join, relative, resolve, sep } from 'node:path';
import type { MarkingDesk } from '../../server/main.ts';
import { printBrief } from '../brief/brief.ts';
import { openBrief } from '../brief/open-brief.ts';
import { intakeDoubts, intakeSentence } from '../desk/index.ts';
import { printVoiceText, type VoiceAssignment } from '../musicxml/index.ts';
import { kindOf } from '../open/open.ts';
import { Refused } from '../refusal/refusal.ts';
import { askYesNo } from './ask.ts';
import { EXIT } from './exit.ts';
import { readInput, reason } from './input.ts';
import { briefIn, countFiles, filesIn } from './mark-files.ts';
import { openPage } from './open-page.ts';
import { plain } from './plain.ts';
import { loadProfile } from './profile.ts';
import { createProgress } from './progress.ts';
import { listen, untilStopped } from './serve.ts';

export interface MarkOptions {
  readonly desk?: string;
  readonly stack?: string;
  readonly brief?: string;
  readonly scheme?: string;
  readonly reference?: string;
  readonly pattern?: string;
  readonly voices?: VoiceAssignment;
  readonly profile?: string;
  readonly watch?: true;
  readonly serve?: true;
  readonly open?: true;
  readonly port: number;
  readonly host: string;
  readonly passphraseFile?: string;
  readonly csv?: string;
  readonly json?: string;
  readonly backup?: string;
  readonly restore?: string;
}

/** Takes in what is new in the folder, then does what else is asked for. */
export async function markCommand(folder: string, options: MarkOptions): Promise<number> {
  const place = resolve(folder);
  if (!existsSync(place)) throw new Refused(`There is no folder ${folder}.`);
  const path =
    options.desk ??
    join((await stat(place)).isDirectory() ? place : join(place, '..'), 'desk', 'desk.sqlite');
  const service = await import('../../server/main.ts');
  if (options.restore !== undefined) {
    const { kept } = await service.restoreDesk(path, options.restore);
    say(
      `The desk is as it was in ${options.restore}.${kept === undefined ? '' : ` What stood there before is kept as ${kept}.`}`,
    );
    return EXIT.fine;
  }
  const desk = await service.openDesk(path);
  try {
    return await work(desk, place, path, options);
  } finally {
    await desk.close();
  }
}

async function work(desk: MarkingDesk, place: string, path: string, options: MarkOptions): Promise<number> {
  // Nor are these, where they lie in the folder, anybody's script.
  const brief = options.brief ?? (await briefIn(place));
  const { scheme, reference, csv, json, passphraseFile } = options;
  const notScripts = new Set(
    [brief, scheme, reference, csv, json, passphraseFile].flatMap((file) =>
      file === undefined ? [] : resolve(file),
    ),
  );
  notScripts.add(dirname(path));
  const stack = await stackToFill(desk, brief, options);
  const first = takeFolder(desk, stack, place, notScripts);
  // Watched from the first look on, so that what comes while it lasts is not missed.
  const watcher = options.watch ? watchFolder(desk, stack, place, notScripts, first) : undefined;
  const unreadable = await first.catch(async (error: unknown) => {
    await watcher?.close();
    throw error;
  });
  await giveOut(desk, stack, options);
  if (options.serve || options.open) await serveDesk(desk, options);
  else if (watcher !== undefined) {
    say('Watching the folder. Stop with Ctrl-C.');
    await untilStopped();
  } else say(`Mark them with: partwise mark ${relative('', place) || '.'} --open`);
  await watcher?.close();
  return unreadable > 0 ? EXIT.unreadable : EXIT.fine;
}

/** The stack as it is asked for, what is there already reviewed again where that changed. */
async function stackToFill(
  desk: MarkingDesk,
  brief: string | undefined,
  options: MarkOptions,
): Promise<number> {
  const stack = desk.stackFor({
    name: options.stack ?? 'Scripts',
    ...(options.profile === undefined ? {} : { profile: await loadProfile(options.profile) }),
    ...(await briefToSet(desk, brief, options)),
    ...(await textOption('scheme', options.scheme)),
    ...(await textOption('reference', options.reference)),
    ...(options.pattern === undefined ? {} : { pattern: options.pattern }),
    ...(options.voices === undefined ? {} : { voices: printVoiceText(options.voices) }),
  });
  const reviewing = createProgress('reviewed again', desk.reviewing(stack).left);
  const again = await desk.reviewAgain(stack, reviewing.at);
  reviewing.end();
  if (again > 0) say(`${again} reviewed again, since the profile or brief has changed.`);
  return stack;
}

/** Writes what is asked for beside the desk. */
async function giveOut(desk: MarkingDesk, stack: number, options: MarkOptions): Promise<void> {
  if (options.csv !== undefined) await writeOut(options.csv, desk.csv(stack));
  if (options.json !== undefined) await writeOut(options.json, desk.json(stack));
  if (options.backup !== undefined) say(`Backed up to ${await desk.backUp(options.backup)}.`);
}

/** Serves the desk until it is told to stop. */
async function serveDesk(desk: MarkingDesk, options: MarkOptions): Promise<void> {
  const page = await listen({
    port: options.port,
    host: options.host,
    desk,
    ...(await passphraseOption(options.passphraseFile)),
  });
  const address = `${page.address}desk/`;
  say(`The desk is at ${address}\nStop with Ctrl-C.`);
  if (options.open && !(await openPage(address))) say('Open the address above in a browser.');
  await untilStopped();
  await page.close();
}

/** The folder's brief; one set at the desk stands until it is changed by name, or by whoever is asked here. */
async function briefToSet(
  desk: MarkingDesk,
  file: string | undefined,
  options: MarkOptions,
): Promise<{ brief?: string }> {
  const given = await briefOption(file);
  const kept = desk.desk.stackNamed(options.stack ?? 'Scripts')?.brief;
  if (options.brief !== undefined || kept === undefined || given.brief === undefined || given.brief === kept)
    return given;
  const differs = `${file} differs from the brief set at the desk.`;
  const replace = await askYesNo(`${differs} Put it in its place, and review every script again?`);
  if (replace === undefined) say(`${differs} That one stands. To put this one in its place: --brief ${file}`);
  return replace === true ? given : {};
}

/** Gives the number of files that could not be read. */
async function takeFolder(
  desk: MarkingDesk,
  stack: number,
  place: string,
  notScripts: ReadonlySet<string>,
): Promise<number> {
  const counts = { new: 0, known: 0, unreadable: 0, 'no script': 0 };
  const started = performance.now();
  const progress = createProgress('files', await countFiles(place, notScripts));
  for await (const taken of desk.takeAll(stack, filesIn(place, notScripts, tell))) {
    counts[taken.outcome]++;
    if (taken.outcome === 'unreadable') tell(`${taken.file}: ${taken.message}`);
    progress.at(Object.values(counts).reduce((sum, n) => sum + n, 0));
  }
  progress.end();
  const intake = desk.settle(stack);
  const seconds = (performance.now() - started) / 1000;
  say(
    `${counts.new} new, ${counts.known} known already, ${counts.unreadable} could not be read (${seconds.toFixed(1)} s). Kept in ${desk.path}`,
  );
  for (const doubt of intakeDoubts(intake)) say(doubt);
  say(intakeSentence(intake));
  return counts.unreadable;
}

function watchFolder(
  desk: MarkingDesk,
  stack: number,
  place: string,
  notScripts: ReadonlySet<string>,
  first: Promise<unknown>,
): { close(): Promise<void> } {
  let timer: NodeJS.Timeout | undefined;
  // One after the other: what two took in at once would be told twice.
  let running: Promise<unknown> = first.catch(() => {});
  const watcher = watch(place, { recursive: true }, (_event, name) => {
    const changed = name === null ? place : resolve(place, name);
    if ([...notScripts].some((own) => changed === own || changed.startsWith(own + sep))) return;
    clearTimeout(timer);
    // A file that is being copied changes many times: wait until it rests.
    timer = setTimeout(() => {
      running = running
        .then(() => takeFolder(desk, stack, place, notScripts))
        .catch((error) => tell(reason(error)));
    }, 700);
  });
  return {
    close: async () => {
      clearTimeout(timer);
      watcher.close();
      await running;
    },
  };
}

async function textOption(name: string, file: string | undefined): Promise<Record<string, string>> {
  if (file === undefined) return {};
  try {
    return { [name]: await readFile(file, 'utf8') };
  } catch (error) {
    throw new Refused(`--${name} ${file}: ${reason(error)}`);
  }
}

/** As text, whatever the file is. */
async function briefOption(file: string | undefined): Promise<{ brief?: string }> {
  if (file === undefined) return {};
  const input = await readInput(file);
  if (!input.ok) throw new Refused(`--brief ${file}: ${input.message}`);
  // A text goes on as it is, with its own lines for its own mistakes.
  if (kindOf(input.bytes) === 'text') return textOption('brief', file);
  const opened = openBrief(input.bytes);
  if (!opened.ok) throw new Refused(`--brief ${file}: ${opened.message}`);
  return { brief: printBrief(opened.brief) };
}

/** The first line of the file. */
async function passphraseOption(file: string | undefined): Promise<{ passphrase?: string }> {
  const { passphrase } = (await textOption('passphrase', file)) as { passphrase?: string };
  return passphrase === undefined ? {} : { passphrase: passphrase.split(/\r?\n/)[0]! };
}

async function writeOut(file: string, chunks: Iterable<string>): Promise<void> {
  try {
    await writeFile(file, chunks);
  } catch (error) {
    throw new Refused(`${file}: ${reason(error)}`);
  }
}

function say(text: string): void {
  process.stdout.write(`${plain(text)}\n`);
}

function tell(text: string): void {
  process.stderr.write(`${plain(text)}\n`);
}
