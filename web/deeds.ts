/** Deeds that reach beyond the state: files, sound, paper, focus. */
import { type Taken, takeBytes } from './files/open.ts';
import type { Deeds } from './panels/context.ts';
import type { Stave } from './panels/stave.ts';
import type { Actions } from './state/actions.ts';
import type { PageState } from './state/page.ts';
import type { Shelf } from './state/shelf.ts';
import type { Store } from './state/store.ts';
import { createHearing } from './sound/following.ts';

export interface AllDeeds extends Deeds {
  /** Puts what was read on the shelf and opens it, or says why not. */
  readonly take: (taken: Taken) => Promise<void>;
}

export function createDeeds(
  store: Store<PageState>,
  actions: Actions,
  shelf: Shelf,
): { readonly deeds: AllDeeds; readonly attachStave: (stave: Stave) => void } {
  let stave: Stave | undefined;
  const hearing = createHearing(store, actions, () => stave);

  const take = async (taken: Taken): Promise<void> => {
    if (!taken.ok) {
      actions.say(taken.message, 'failed');
      return;
    }
    await shelf.add(taken.work);
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

  const deeds: AllDeeds = {
    take,
    openFiles(files) {
      void (async () => {
        for (const file of files) await take(takeBytes(new Uint8Array(await file.arrayBuffer()), file.name));
      })();
    },
    newExercise() {},
    save() {},
    print() {
      stave?.engraving.complete();
      print();
    },
    playOrStop: hearing.playOrStop,
    playVoices: hearing.playVoices,
    scrollToFinding(id) {
      stave?.engraving.scrollTo({ finding: id }, true);
    },
    openFindingAtCaret() {
      const { caret, reviewed } = store.get();
      const here = reviewed?.review.findings.find(
        (f) => f.voices.includes(caret.voice) && f.from <= caret.at && caret.at < Math.max(f.until, f.from + 1),
      );
      if (here === undefined) {
        actions.say('There is no finding at the caret.');
        return;
      }
      actions.choose(here.id);
      requestAnimationFrame(() =>
        requestAnimationFrame(() =>
          document.querySelector<HTMLElement>(`[data-finding="${CSS.escape(here.id)}"]`)?.focus(),
        ),
      );
    },
    describeCaret() {},
    letGo() {
      actions.choose(undefined);
      actions.setStretch(undefined);
    },
    connectKeyboard() {},
    focusStave: () => stave?.focus(),
  };
  return {
    deeds,
    attachStave(attached) {
      stave = attached;
    },
  };
}
