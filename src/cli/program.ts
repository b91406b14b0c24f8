/** The command line. Each command's code is loaded when it is asked for, so that `review` starts quickly. */
import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import { Refused } from '../refusal/refusal.ts';
import { EXIT } from './exit.ts';
import { labelOption } from './labels.ts';
import { plain } from './plain.ts';
import { voicesOption } from './voices.ts';

/** Runs `partwise ARGS`, as typed, and tells the exit status. Prints to the process's own streams; never throws. */
export async function runPartwise(args: readonly string[]): Promise<number> {
  let status: number = EXIT.fine;
  const program = partwise((ended) => {
    status = ended;
  });
  try {
    await program.parseAsync(args, { from: 'user' });
    return status;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.fine : EXIT.unreadable;
    if (error instanceof Refused) process.stderr.write(`${plain(error.message)}\n`);
    else process.stderr.write(`partwise met something it was not built for: ${describe(error)}\n`);
    return EXIT.unreadable;
  }
}

/** Told the status a command ended with. */
type Ended = (status: number) => void;

function partwise(ended: Ended): Command {
  const program = new Command('partwise')
    .description('Looks through four-part chorale harmonisations. It advises; teacher and examiner decide.')
    .version('0.1.0')
    .exitOverride()
    .showSuggestionAfterError();
  addReading(program, ended);
  addStyle(program, ended);
  addSetting(program, ended);
  addMarking(program, ended);
  addServing(program, ended);
  return program;
}

/** What looks at exercises, and the rules they are looked at by. */
function addReading(program: Command, ended: Ended): void {
  program
    .command('review')
    .summary('look through exercises and say what was found')
    .description(
      'Looks through exercises: MusicXML (.musicxml, .xml, .mxl), ABC or our text notation, told by their content.\n' +
        'Exit status: 0 nothing at fault, 1 faults found, 2 input that could not be read or bad usage.',
    )
    .argument('<file...>', 'files to look through; - for standard input')
    .option('--json', 'one JSON review a line a file')
    .addOption(profileOption())
    .addOption(labelOption())
    .addOption(voicesOption())
    .action(async (files, options) => {
      const { reviewCommand } = await import('./review.ts');
      ended(await reviewCommand(files, options));
    });

  program
    .command('rules')
    .summary('list every rule')
    .option('--json', 'as JSON')
    .action(async (options) => {
      const { rulesCommand } = await import('./rules.ts');
      ended(rulesCommand(options));
    });

  program
    .command('explain')
    .summary('print the page of a rule, with a right and a wrong example')
    .argument('<rule>', 'the rule, as `partwise rules` lists it')
    .action(async (rule) => {
      const { explainCommand } = await import('./rules.ts');
      ended(explainCommand(rule));
    });

  program
    .command('annotate')
    .summary('put numerals and findings into a copy of the exercise, which stays as it is otherwise')
    .argument('<file>', 'the exercise; - for standard input')
    .requiredOption(
      '-o, --output <out>',
      'file to write: .musicxml or .mxl with marks in the score, .mid to hear, .txt for our text notation',
    )
    .option('--force', 'replace a file that is there already, the exercise itself too')
    .addOption(profileOption())
    .addOption(labelOption())
    .addOption(voicesOption())
    .action(async (file, options) => {
      const { annotateCommand } = await import('./annotate.ts');
      ended(await annotateCommand(file, options));
    });
}

/** How like the model. */
function addStyle(program: Command, ended: Ended): void {
  program
    .command('style')
    .summary('measure how like the model’s chorales an exercise is')
    .argument('<file>', 'the exercise; - for standard input')
    .option('--json', 'as JSON')
    .action(async (file, options) => {
      const { styleCommand } = await import('./style.ts');
      ended(await styleCommand(file, options));
    });

  program
    .command('precedents')
    .summary('show how the model closed where the tune’s phrases end alike, with places to look up')
    .argument('<file>', 'the exercise, or its tune alone; - for standard input')
    .option('--json', 'as JSON')
    .action(async (file, options) => {
      const { precedentsCommand } = await import('./style.ts');
      ended(await precedentsCommand(file, options));
    });
}

/** What is given out to a class. */
function addSetting(program: Command, ended: Ended): void {
  program
    .command('set')
    .summary('set an exercise: say what of a piece is given, and give the rest out empty')
    .description(
      'Makes of a piece, a tune or a brief what a class needs: the brief, the pupils’ file with empty bars (MusicXML and\n' +
        'text), the worksheet as PDF where Chromium is installed, and a link that opens the pupils’ page with the exercise in it.',
    )
    .argument('<file>', 'the piece, tune or brief: MusicXML, MXL, ABC or text; - for standard input')
    .option(
      '--give <what>',
      'what is given, in any number: tune, bass, figures, closes (their bass notes), opening=2 (chords), bars=3+5-6, all that is written; else the tune, and of a brief all',
    )
    .requiredOption('-o, --output <folder>', 'folder to write into')
    .option('--title <text>', 'another title')
    .option('--task <text>', 'what is asked for; else told from what is empty')
    .option(
      '--without <helps>',
      'helps that the page keeps back: marks, hints, ways out, numerals, style, room, playback',
    )
    .option('--controlled', 'a controlled sitting: no help at all, and the page and what is handed in say so')
    .option('--least-length <min:sec>', 'how long it must last')
    .option('--least-together <min:sec>', 'how long it must last with another composition')
    .option(
      '--profile <name>',
      'house profile: first-steps, chorale or strict, or the file of your own, such as ours.json',
    )
    .option('--page <address>', 'where your pupils open the page', 'http://127.0.0.1:4100/')
    .option('--force', 'replace files that are there already')
    .addOption(voicesOption())
    .action(async (file, options) => {
      const { setCommand } = await import('./set.ts');
      ended(await setCommand(file, options));
    });

  program
    .command('practice')
    .summary('make short exercises for what went wrong')
    .description(
      'Makes exercises of two to four bars for what went wrong most: a tune with its first chord, in a key of up to four\n' +
        'sharps or flats. Each is proved solvable: at least twenty answers without fault or query are found, and none shown.',
    )
    .option(
      '--for <what>',
      'close, seventh, six-four, consecutives, minor, leaps, or rules as `partwise rules` lists them; several by commas',
    )
    .option('--desk <file>', 'instead of --for: a marking desk’s file, for what went wrong in most scripts')
    .option('--stack <name>', 'which of the desk’s stacks, where there are several')
    .option('--number <n>', 'one to six exercises', '3')
    .option('--seed <n>', 'a seed that was printed before, to have the same exercises again')
    .requiredOption('-o, --output <folder>', 'folder to write into')
    .option('--page <address>', 'where your pupils open the page', 'http://127.0.0.1:4100/')
    .option('--force', 'replace files that are there already')
    .action(async (options) => {
      const { practiceCommand } = await import('./practice.ts');
      ended(await practiceCommand(options));
    });
}

/** The teacher's desk. */
function addMarking(program: Command, ended: Ended): void {
  program
    .command('mark')
    .summary('take a folder of scripts onto the marking desk')
    .description(
      'Reviews every script in a folder or zip and keeps it, with its draft and whatever is decided about it, in one\n' +
        'file: FOLDER/desk/desk.sqlite. What is there already is passed over, so a run that was stopped goes on.',
    )
    .argument('<folder>', 'folder or zip with the scripts: MusicXML, MXL, ABC or text, mixed')
    .option('--open', 'then open the desk in a browser')
    .option('--serve', 'then serve the desk without opening a browser')
    .option('--watch', 'go on taking in what is put into the folder')
    .option('--stack <name>', 'name of the stack', 'Scripts')
    .option(
      '--brief <file>',
      'the exercise as it was set, to check the given notes against: text, or MusicXML with the given notes',
    )
    .option('--scheme <file>', 'mark scheme, a JSON file')
    .option('--pattern <text>', 'how files are named, for example {candidate}-draft{draft}')
    .option(
      '--reference <file>',
      'a harmonisation to compare the scripts with, in our text notation or MusicXML',
    )
    .option('--profile <name>', 'house profile, as for review; else the brief’s, else chorale')
    .addOption(voicesOption())
    .option('--csv <out>', 'write the mark book as CSV')
    .option('--json <out>', 'write everything as JSON')
    .option('--desk <file>', 'keep the desk in this file')
    .option('--backup <out>', 'copy the desk, while it is in use too')
    .option('--restore <file>', 'put a backup in the desk’s place; what stood there is kept beside it')
    .option('--port <number>', 'port for the page; 0 for any free one', portNumber, 4100)
    .option('--host <address>', 'address to serve at; anything but 127.0.0.1 needs a passphrase', '127.0.0.1')
    .option('--passphrase-file <file>', 'file whose first line is the passphrase of the desk')
    .action(async (folder, options) => {
      const { markCommand } = await import('./mark.ts');
      ended(await markCommand(folder, options));
    });
}

/** The page. */
function addServing(program: Command, ended: Ended): void {
  program
    .command('serve')
    .summary('open the page')
    .option('--port <number>', 'port to listen on; 0 for any free one', portNumber, 4100)
    .option('--host <address>', 'address to listen on; only this machine can reach 127.0.0.1', '127.0.0.1')
    .option('--open', 'open the page in a browser')
    .option('--build', 'build the page first, where it is older than its sources')
    .action(async (options) => {
      const { serveCommand } = await import('./serve.ts');
      ended(await serveCommand(options));
    });
}

const profileOption = () =>
  new Option(
    '--profile <name>',
    'house profile: first-steps, chorale, strict, or a JSON file of your own',
  ).default('chorale');

function portNumber(text: string): number {
  const port = Number(text);
  if (!/^\d{1,5}$/.test(text) || port > 65535) {
    throw new InvalidArgumentError('A port is a whole number from 0 to 65535.');
  }
  return port;
}

function describe(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}
