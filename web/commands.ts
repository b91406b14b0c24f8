/** Commands that reach beyond the state: files, sound, paper, focus. */
import { printBrief } from '../src/brief/brief.ts';
import { looksLikeEverything } from './files/everything.ts';
import { beginNew, briefFromForm } from './files/forms.ts';
import { type Taken, takeBytes, withVoices } from './files/open.ts';
import { takeProfile } from './files/profile.ts';
import { fileName, saveFile } from './files/save.ts';
import { save } from './files/save-as.ts';
import type { Commands } from './panels/context.ts';
import type { Stave } from './panels/stave.ts';
import { createPlayback } from './sound/following.ts';
import { listenToKeyboards } from './sound/midi-in.ts';
import type { Actions } from './state/actions.ts';
import type { PageState } from './state/page.ts';
import type { Shelf } from './state/shelf.ts';
import type { Store } from './state/store.ts';
import type { Reviewing } from './worker/following.ts';

/** Nothing larger is read into memory; “Save everything” makes some kilobytes an exercise. */
const MOST_BYTES = 32 * 1024 * 1024;

export interface AllCommands extends Commands {
  /** Puts what was read on the shelf and opens it, or says why not. */
  readonly take: (taken: Taken) => Promise<void>;
}

export function createCommands(
  store: Store<PageState>,
  actions: Actions,
  shelf: Shelf,
): {
  readonly commands: AllCommands;
  readonly attachStave: (stave: Stave) => void;
  readonly attachReviewing: (reviewing: Reviewing) => void;
} {
  let stave: Stave | undefined;
  let reviewing: Reviewing | undefined;
  const playback = createPlayback(store, actions, () => stave);

  const take = async (taken: Taken): Promise<void> => {
    if (!taken.ok) {
      actions.say(taken.message, 'failed');
      return;
    }
    await shelf.add(taken.work, taken.particulars);
    const { problems } = taken.work;
    actions.show('write');
    if (location.hash !== '') location.hash = '#write';
    if (problems.length > 0) actions.setSide('text');
    else if (store.get().side === 'text') actions.setSide('marks');
    actions.say(
      problems.length === 0
        ? 'Opened.'
        : `Opened; ${problems.length === 1 ? 'one thing' : `${problems.length} things`} could not be read.`,
    );
  };

  const bringIn = async (bytes: Uint8Array, name: string): Promise<void> => {
    const count = await shelf.bringIn(new TextDecoder().decode(bytes));
    if (count === undefined)
      actions.say(`${name} is not a file that “Save everything” made, or it is damaged.`, 'failed');
    else {
      location.hash = '#shelf';
      actions.say(`${count} ${count === 1 ? 'exercise' : 'exercises'} brought in.`);
    }
  };

  const commands: AllCommands = {
    take,
    openFiles(files) {
      void (async () => {
        for (const file of files) {
          if (file.size > MOST_BYTES) {
            actions.say(
              `${file.name} has ${Math.round(file.size / 1e6)} MB; an exercise has far less than one.`,
              'failed',
            );
            continue;
          }
          const bytes = new Uint8Array(await file.arrayBuffer());
          if (looksLikeEverything(new TextDecoder().decode(bytes.subarray(0, 64))))
            await bringIn(bytes, file.name);
          else await take(takeBytes(bytes, file.name));
        }
      })();
    },
    newExercise(form) {
      void beginNew(form, take);
    },
    save(what) {
      save(what, store.get(), shelf).catch(() => actions.say('The file could not be made.', 'failed'));
    },
    print() {
      stave?.engraving.complete();
      print();
    },
    makeBrief(form) {
      const made = briefFromForm(form, store.get());
      if (typeof made === 'string') actions.say(made, 'refused');
      else saveFile(fileName(made.score.title, 'brief.txt'), printBrief(made), 'text/plain');
    },
    showPlace(at) {
      // The desk is drawn first, where another view was open.
      requestAnimationFrame(() => requestAnimationFrame(() => stave?.engraving.scrollTo({ at }, true)));
    },
    playOrStop: playback.playOrStop,
    playVoices: playback.playVoices,
    scrollToFinding(id) {
      stave?.engraving.scrollTo({ finding: id }, true);
    },
    openFindingAtCaret() {
      const { caret, reviewed } = store.get();
      const here = reviewed?.review.findings.find(
        (f) =>
          f.voices.includes(caret.voice) && f.from <= caret.at && caret.at < Math.max(f.until, f.from + 1),
      );
      if (here === undefined) {
        actions.say('There is no finding at the caret.');
        return;
      }
      actions.choose(here.id);
      requestAnimationFrame(() =>
        requestAnimationFrame(() =>
          document.querySelector<HTMLElement>(`button[data-finding="${CSS.escape(here.id)}"]`)?.focus(),
        ),
      );
    },
    describeCaret() {},
    letGo() {
      actions.choose(undefined);
      actions.setStretch(undefined);
    },
    connectKeyboard() {
      void listenToKeyboards((midi) => actions.writeKey(midi)).then((state) => {
        if (!state.ok) actions.say(state.why, 'refused');
        else if (state.names.length === 0)
          actions.say('No MIDI keyboard is plugged in; one plugged in now will be heard.', 'refused');
        else
          actions.say(
            `Listening to ${state.names.join(', ')}: what you play is written at the caret.`,
            'refused',
          );
      });
    },
    giveVoices(voices) {
      const { source } = store.get().exercise;
      if (source === undefined) return;
      const taken = withVoices(source, voices);
      if (taken.ok) actions.giveVoices(taken.work, taken.source);
      else actions.say(taken.message, 'failed');
    },
    findWaysOut(finding) {
      reviewing?.findWaysOut(finding);
    },
    openProfile(file) {
      void takeProfile(file, store.get().settings).then((taken) => {
        if (typeof taken === 'string') actions.say(taken, 'failed');
        else {
          actions.set(taken);
          actions.say(`The profile “${taken.profile}” is in use.`);
        }
      });
    },
    focusStave: () => stave?.focus(),
  };
  return {
    commands,
    attachStave(attached) {
      stave = attached;
    },
    attachReviewing(attached) {
      reviewing = attached;
    },
  };
}
