/** Commands that bring files in and hand them out. */
import { printBrief } from '../../src/brief/brief.ts';
import { looksLikeEverything } from '../files/everything.ts';
import { beginNew, briefFromForm } from '../files/forms.ts';
import { type Taken, takeBytes, takeText, withVoices } from '../files/open.ts';
import { takeProfile } from '../files/profile.ts';
import { fileName, saveFile } from '../files/save.ts';
import { save } from '../files/save-as.ts';
import type { Commands } from '../panels/context.ts';
import type { Actions } from '../state/actions.ts';
import type { PageState } from '../state/page.ts';
import type { Shelf } from '../state/shelf.ts';
import type { Store } from '../state/store.ts';
import { workFromText } from '../state/work.ts';

/** Nothing larger is read into memory; “Save everything” makes some kilobytes an exercise. */
const MOST_BYTES = 32 * 1024 * 1024;

export type FileCommands = Pick<
  Commands,
  'openFiles' | 'takeText' | 'beginTune' | 'newExercise' | 'save' | 'makeBrief' | 'giveVoices' | 'openProfile'
>;

interface Reached {
  readonly store: Store<PageState>;
  readonly actions: Actions;
  readonly shelf: Shelf;
}

export function createFileCommands(reached: Reached, focusStave: () => void): FileCommands {
  const { store, actions, shelf } = reached;
  return {
    openFiles(files) {
      void openEach(files, reached);
    },
    takeText(text) {
      void takeUp(takeText(text), reached, true);
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
      save(what, store.get(), shelf).catch(() => actions.say('The file could not be made.', 'failed'));
    },
    makeBrief(form) {
      const made = briefFromForm(form, store.get());
      if (typeof made === 'string') actions.say(made, 'refused');
      else saveFile(fileName(made.score.title, 'brief.txt'), printBrief(made), 'text/plain');
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

/** Puts what was read on the shelf and opens it, or says why not. `ask` asks which voices were given. */
async function takeUp(taken: Taken, { store, actions, shelf }: Reached, ask = false): Promise<void> {
  if (!taken.ok) {
    actions.say(taken.message, 'failed');
    return;
  }
  await shelf.add(taken.work, taken.particulars);
  const { problems } = taken.work;
  // What a brief gives is locked already, and a text with mistakes is mended first.
  if (ask && problems.length === 0 && taken.particulars?.locked === undefined) actions.askGiven();
  actions.show('write');
  if (location.hash !== '') location.hash = '#write';
  if (problems.length > 0) actions.setSide('text');
  else if (store.get().side === 'text') actions.setSide('marks');
  actions.say(
    problems.length === 0
      ? 'Opened.'
      : `Opened; ${problems.length === 1 ? 'one thing' : `${problems.length} things`} could not be read.`,
  );
}

async function openEach(files: readonly File[], reached: Reached): Promise<void> {
  for (const file of files) {
    if (file.size > MOST_BYTES) {
      const size = Math.round(file.size / 1e6);
      reached.actions.say(`${file.name} has ${size} MB; an exercise has far less than one.`, 'failed');
      continue;
    }
    const bytes = new Uint8Array(await file.arrayBuffer());
    const begins = new TextDecoder().decode(bytes.subarray(0, 64));
    if (looksLikeEverything(begins)) await bringIn(bytes, file.name, reached);
    else await takeUp(takeBytes(bytes, file.name), reached, true);
  }
}

async function bringIn(bytes: Uint8Array, name: string, { actions, shelf }: Reached): Promise<void> {
  const count = await shelf.bringIn(new TextDecoder().decode(bytes));
  if (count === undefined) {
    actions.say(`${name} is not a file that “Save everything” made, or it is damaged.`, 'failed');
    return;
  }
  location.hash = '#shelf';
  actions.say(`${count} ${count === 1 ? 'exercise' : 'exercises'} brought in.`);
}
