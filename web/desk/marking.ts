/** Marks by the scheme: given one after the other without leaving the keyboard, and agreed on where two people mark. */
import { total } from '../../src/desk/index.ts';
import { ROUTES } from '../../src/desk/wire.ts';
import { afterDrawing, keepPlace } from './focus.ts';
import type { Handle } from './handle.ts';
import type { ScriptWork } from './script-work.ts';
import { ask } from './service.ts';
import { criterionBeside, criterionToMark } from './steps.ts';

export function createMarking(desk: Handle, { toScript }: ScriptWork) {
  const { get, set, told } = desk;
  let back: () => void = () => {};

  /** Opens a criterion with its field ready for digits. */
  function openMark(criterion: string | undefined): void {
    if (criterion === undefined) {
      closeMarks();
      return;
    }
    if (get().marking === undefined) back = keepPlace();
    set({ marking: criterion, writing: undefined, sheetOpen: true });
    afterDrawing(() => {
      const field = document.querySelector<HTMLInputElement>(`[data-criterion="${criterion}"] [name=marks]`);
      field?.focus();
      field?.select();
    });
  }

  function closeMarks(): void {
    if (get().marking === undefined) return;
    set({ marking: undefined });
    afterDrawing(back);
  }

  const giveMark = (criterion: string, marks: number | null): Promise<void> =>
    toScript(async ({ script: { id, revision } }) => {
      await ask(ROUTES.mark, { params: { id, criterion }, body: { revision, marks } });
      return marks === null ? 'Mark taken back.' : `${marks} marks.`;
    });

  return {
    openMarks: (): void => openMark(criterionToMark(get())),
    closeMarks,
    giveMark,
    /** Gives the mark and goes on to the next criterion; after the last one back to where marking was begun. */
    giveMarkAndGoOn: async (criterion: string, marks: number | null): Promise<void> => {
      const going = get().marking === criterion;
      await giveMark(criterion, marks);
      const { notice, stack, script } = get();
      if (!going || notice?.wrong || get().marking !== criterion) return;
      const next = criterionBeside(get(), criterion, 1);
      openMark(next);
      if (next === undefined && stack !== undefined && script !== undefined)
        told(total(stack.scheme, script.marks).sentence);
    },
    /** The mark that two markers settle on, from the list of their differences. */
    agreeOn: (script: { readonly id: number; readonly revision: number }, criterion: string, marks: number) =>
      desk.inTurn(async () => {
        const { id, revision } = script;
        await ask(ROUTES.mark, { params: { id, criterion }, body: { revision, marks, agreed: true } });
        const { place } = get();
        if (place.view === 'differences') await desk.loading.loadDifferences(place);
        told(`${marks} marks, agreed.`);
      }),
  };
}
