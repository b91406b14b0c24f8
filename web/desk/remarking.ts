/** The teacher's own remarks as they are written. */
import { ROUTES } from '../../src/desk/wire.ts';
import type { createDeciding } from './deciding.ts';
import type { Handle } from './handle.ts';
import { ask } from './service.ts';

export function createRemarking(desk: Handle, { decide }: Pick<ReturnType<typeof createDeciding>, 'decide'>) {
  const { get, set } = desk;

  /** `beside` is the rule whose finding it is written beside; times are in crotchets. */
  async function beginRemark(from: number, beside: string | undefined, until?: number): Promise<void> {
    set({
      writing: {
        from,
        ...(until === undefined ? {} : { until }),
        ...(beside === undefined ? {} : { beside }),
        text: '',
        offered: [],
      },
    });
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

  async function saveRemark(text: string, until: number | undefined): Promise<void> {
    const { writing } = get();
    if (writing === undefined || text.trim() === '') return;
    set({ writing: undefined });
    await decide(
      { kind: 'remark', from: writing.from, ...(until === undefined ? {} : { until }), text },
      'Remark kept.',
      writing.beside,
    );
    // What was refused is not lost: it can be kept again.
    if (get().notice?.wrong) set({ writing: { ...writing, text } });
  }

  return { beginRemark, typeRemark, saveRemark, closeRemark: () => set({ writing: undefined }) };
}
