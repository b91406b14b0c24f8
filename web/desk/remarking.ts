/** The teacher's own remarks as they are written. */
import { ROUTES } from '../../src/desk/wire.ts';
import { afterDrawing, keepPlace } from './focus.ts';
import type { Handle } from './handle.ts';
import type { ScriptWork } from './script-work.ts';
import { ask } from './service.ts';
import type { Writing } from './state.ts';
import { chosenFinding } from './steps.ts';

/** Where a remark is to stand: at a place, beside a finding, or, with neither, about the whole script. */
export type RemarkAt = Pick<Writing, 'from' | 'until' | 'finding' | 'beside'>;

export function createRemarking(desk: Handle, { decide }: ScriptWork) {
  const { get, set } = desk;
  let back: () => void = () => {};

  /** Times are in crotchets. */
  async function beginRemark(at: RemarkAt): Promise<void> {
    if (get().writing === undefined) back = keepPlace();
    set({ writing: { ...at, text: '', offered: [] }, marking: undefined, sheetOpen: true });
    await typeRemark('');
  }

  async function typeRemark(text: string): Promise<void> {
    const { writing } = get();
    if (writing === undefined) return;
    set({ writing: { ...writing, text } });
    await desk.attempt(async () => {
      const { remarks } = await ask(ROUTES.remarks, { query: { typed: text, rule: writing.beside } });
      const now = get().writing;
      if (now !== undefined && now.text === text) set({ writing: { ...now, offered: remarks } });
    });
  }

  function closeRemark(): void {
    set({ writing: undefined });
    afterDrawing(back);
  }

  async function saveRemark(text: string): Promise<void> {
    const { writing } = get();
    if (writing === undefined || text.trim() === '') return;
    const { from, until, beside } = writing;
    closeRemark();
    const place = {
      ...(from === undefined ? {} : { from }),
      ...(until === undefined ? {} : { until }),
    };
    await decide({ kind: 'remark', ...place, text }, 'Remark kept.', beside);
    // What was refused is not lost: it can be kept again.
    if (get().notice?.wrong) set({ writing: { ...writing, text } });
  }

  return {
    beginRemark,
    typeRemark,
    saveRemark,
    closeRemark,
    /** At the place of the finding under hand, or at the beginning. */
    remarkHere: (): Promise<void> => {
      const finding = chosenFinding(get());
      if (finding === undefined) return beginRemark({ from: 0 });
      const { id, from, until, rule } = finding;
      return beginRemark({ from, until, finding: id, beside: rule });
    },
    /** About the whole script. */
    comment: (): Promise<void> => beginRemark({}),
  };
}
