/** What the file commands do. It brings the readers and writers of every form with it. */
import { printBrief } from '../../src/brief/brief.ts';
import { decodeText } from '../../src/musicxml/index.ts';
import { profileNamed } from '../../src/profiles/list.ts';
import { looksLikeEverything } from '../files/everything.ts';
import { beginNew, briefFromForm } from '../files/forms.ts';
import { type Taken, takeBytes, takeFile, takeText, withVoices } from '../files/open.ts';
import { takeProfile } from '../files/profile.ts';
import { fileName, saveFile } from '../files/save.ts';
import { save } from '../files/save-as.ts';
import type { Commands } from '../panels/context.ts';
import type { Actions } from '../state/actions.ts';
import { withholds } from '../state/brief.ts';
import type { PageState } from '../state/page.ts';
import type { Shelf } from '../state/shelf.ts';
import type { Store } from '../state/store.ts';
import { workFromText } from '../state/work.ts';

/** Nothing larger is read into memory; “Save everything” makes some kilobytes an exercise. */
const MOST_BYTES = 32 * 1024 * 1024;

export type FileCommands = Pick<
  Commands,
  | 'openFiles'
  | 'openLink'
  | 'takeText'
  | 'beginTune'
  | 'newExercise'
  | 'save'
  | 'makeBrief'
  | 'setAtDesk'
  | 'giveVoices'
  | 'openProfile'
>;

/** What the file commands act on. */
export interface Filed {
  readonly store: Store<PageState>;
  readonly actions: Actions;
  readonly shelf: Shelf;
}

export function createFiling(reached: Filed, focusStave: () => void): FileCommands {
  const { store, actions, shelf } = reached;
  return {
    openFiles(files) {
      void openEach(files, reached);
    },
    openLink(hash) {
      return openLink(hash, reached, focusStave);
    },
    takeText(text) {
      void takeText(text).then((taken) => takeUp(taken, reached, true));
    },
    beginTune({ text }) {
      const taken: Taken = { ok: true, work: workFromText(text), particulars: { locked: ['S'] } };
      void takeUp(taken, reached).then(() => {
        focusStave();
        actions.startWriting();
      });
    },
    newExercise(form) {
      void beginNew(form, (taken) => takeUp(taken, reached));
    },
    save(what) {
      const why = whyWithheld(what, store.get());
      if (why !== undefined) {
        actions.say(why, 'refused');
        return;
      }
      save(what, store.get(), shelf).catch(() => actions.say('The file could not be made.', 'failed'));
    },
    makeBrief(form) {
      const made = briefFromForm(form, store.get());
      if (typeof made === 'string') actions.say(made, 'refused');
      else saveFile(fileName(made.score.title, 'brief.txt'), printBrief(made), 'text/plain');
    },
    setAtDesk() {
      void setAtDesk(store.get(), actions);
    },
    giveVoices(voices) {
      const { source } = store.get().exercise;
      if (source === undefined) return;
      const taken = withVoices(source, voices);
      if (taken.ok) actions.giveVoices(taken.work, taken.source);
      else actions.say(taken.message, 'failed');
    },
    openProfile(file) {
      void takeProfile(file, store.get().settings).then((taken) => {
        if (typeof taken === 'string') {
          actions.say(taken, 'failed');
          return;
        }
        actions.set(taken);
        actions.say(`The profile “${taken.profile}” is in use.`);
      });
    },
  };
}

/** Files that would give what the brief keeps back. */
function whyWithheld(what: Parameters<Commands['save']>[0], state: PageState): string | undefined {
  if (what === 'annotated' && (withholds(state, 'marks') || withholds(state, 'numerals')))
    return 'This exercise is set without marks or numerals, so the marked score is not made.';
  if (what === 'midi' && withholds(state, 'playback'))
    return 'This exercise is set without playback, so there is no file to hear.';
  return undefined;
}

/** The exercise goes to the desk's page in the address, as it would to a pupil. */
async function setAtDesk({ history, settings }: PageState, actions: Actions): Promise<void> {
  const { linkTo } = await import('../../src/set/link.ts');
  const made = linkTo([
    {
      score: history.now.score,
      task: '',
      profile: profileNamed(settings.profile)?.name ?? 'chorale',
      without: [],
    },
  ]);
  if (made.ok) open(`desk/#/${made.hash}`, '_blank');
  else
    actions.say(
      'This is too long to go to the desk by itself: save it as MusicXML or text, and open it there under “Set the work”.',
      'refused',
    );
}

/** Opens what a link holds: exercises that are here already as they were left, others as they are set. */
async function openLink(hash: string, reached: Filed, focusStave: () => void): Promise<void> {
  const { actions, shelf } = reached;
  const { readLink } = await import('../../src/set/link.ts');
  const read = readLink(hash);
  if (!read.ok) {
    actions.say(read.message, 'failed');
    return;
  }
  // The first of several is opened last, so that it is the one on the stave.
  for (const { text } of [...read.exercises].reverse()) {
    const known = await shelf.begunFrom(text);
    if (known === undefined) await takeUp(takeBytes(new TextEncoder().encode(text), 'The link'), reached);
    else await shelf.open(known);
  }
  const number = read.exercises.length;
  actions.show('write');
  focusStave();
  actions.startWriting();
  actions.say(
    number === 1
      ? 'The exercise was opened.'
      : `${number} exercises were opened; the others are under Exercises.`,
    number === 1 ? 'said' : 'shown',
  );
}

/** Puts what was read on the shelf and opens it, or says why not. `ask` asks which voices were given. */
async function takeUp(taken: Taken, { store, actions, shelf }: Filed, ask = false): Promise<void> {
  if (!taken.ok) {
    actions.say(taken.message, 'failed');
    return;
  }
  const mended = store.get().history.now.problems.length > 0;
  await shelf.add(taken.work, taken.particulars);
  const { problems } = taken.work;
  // What a brief gives is locked already, and a text with mistakes is mended first.
  if (ask && problems.length === 0 && taken.particulars?.locked === undefined) actions.askGiven();
  actions.show('write');
  if (location.hash !== '') location.hash = '#write';
  if (problems.length > 0) actions.setSide('text');
  // The text was shown for its mistakes; where somebody has opened it meanwhile, it stays.
  else if (mended && store.get().side === 'text') actions.setSide('marks');
  actions.say(
    problems.length === 0
      ? 'Opened.'
      : `Opened; ${problems.length === 1 ? 'one thing' : `${problems.length} things`} could not be read.`,
  );
}

async function openEach(files: readonly File[], reached: Filed): Promise<void> {
  for (const file of files) {
    if (file.size > MOST_BYTES) {
      const size = Math.round(file.size / 1e6);
      reached.actions.say(`${file.name} has ${size} MB; an exercise has far less than one.`, 'failed');
      continue;
    }
    const bytes = new Uint8Array(await file.arrayBuffer());
    const begins = decodeText(bytes.subarray(0, 64)) ?? '';
    if (looksLikeEverything(begins)) await bringIn(bytes, file.name, reached);
    else await takeUp(await takeFile(bytes, file.name), reached, true);
  }
}

async function bringIn(bytes: Uint8Array, name: string, { actions, shelf }: Filed): Promise<void> {
  const count = await shelf.bringIn(decodeText(bytes) ?? '');
  if (count === undefined) {
    actions.say(`${name} is not a file that “Save everything” made, or it is damaged.`, 'failed');
    return;
  }
  location.hash = '#shelf';
  actions.say(`${count} ${count === 1 ? 'exercise' : 'exercises'} brought in.`);
}
