/** Commands that reach beyond the state: files, sound, paper, focus. Made in parts, by what they reach; joined here. */

import { printPassage } from '../files/passage-text.ts';
import type { Commands } from '../panels/context.ts';
import type { Stave } from '../panels/stave.ts';
import { createPlayback } from '../sound/following.ts';
import { listenToKeyboards } from '../sound/midi-in.ts';
import type { Actions } from '../state/actions.ts';
import type { PageState } from '../state/page.ts';
import type { Shelf } from '../state/shelf.ts';
import type { Store } from '../state/store.ts';
import type { Reviewing } from '../worker/following.ts';
import { createFileCommands } from './files.ts';
import { createSightCommands } from './sight.ts';

/** What the commands act on. */
export interface Reached {
  readonly store: Store<PageState>;
  readonly actions: Actions;
  readonly shelf: Shelf;
  readonly reviewing: Reviewing;
  /** The stave needs the commands to be made, so it comes later. */
  readonly stave: () => Stave | undefined;
  /** Speaks to those who don't see the stave. */
  readonly sayAloud: (text: string) => void;
}

export function createCommands(reached: Reached): Commands {
  const { store, actions, stave, sayAloud, reviewing } = reached;
  const { playOrStop, playVoices, giveNotes } = createPlayback(store, actions, stave);
  const sight = createSightCommands(store, actions, stave, sayAloud);
  return {
    ...createFileCommands(reached, sight.focusStave),
    ...sight,
    playOrStop,
    playVoices,
    giveNotes,
    findWaysOut: reviewing.findWaysOut,
    findRoom: reviewing.findRoom,
    copyChosen() {
      actions.copy();
      const { copied } = store.get();
      // Without leave to use the clipboard the page still has its own copy.
      if (copied) void navigator.clipboard?.writeText(printPassage(copied)).catch(() => undefined);
    },
    connectKeyboard() {
      void connectKeyboards(actions);
    },
  };
}

async function connectKeyboards(actions: Actions): Promise<void> {
  const state = await listenToKeyboards((midi) => actions.writeKey(midi));
  if (!state.ok) actions.say(state.why, 'refused');
  else if (state.names.length === 0)
    actions.say('No MIDI keyboard is plugged in; one plugged in now will be heard.', 'refused');
  else actions.say(`Listening to ${state.names.join(', ')}: what you play is written at the caret.`, 'shown');
}
