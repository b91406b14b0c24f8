/** Following a stack that is reviewed again: it goes on in the service, and whoever waits may go elsewhere. */
import { ROUTES } from '../../src/desk/wire.ts';
import { timeLeft } from '../../src/english/time-left.ts';
import type { Handle } from './handle.ts';
import { ask } from './service.ts';

const EVERY_MILLISECONDS = 1_000;

export function createReviewing(desk: Handle) {
  const { get, set, told } = desk;
  /** When it was first looked at, and how many were left then, by stack. */
  let begun: { readonly stack: number; readonly at: number; readonly left: number } | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  async function look(): Promise<void> {
    timer = undefined;
    const before = get().reviewing;
    if (before === undefined) return;
    const { stack } = before;
    const { again } = await ask(ROUTES.stack, { params: { id: stack }, query: { most: 1 } });
    if (!again.going) {
      begun = undefined;
      set({ reviewing: again.left === 0 ? undefined : { stack, ...again, timeLeft: '' } });
      if (again.left === 0) {
        await refresh();
        told('All scripts are reviewed again.');
      }
      return;
    }
    if (begun?.stack !== stack) begun = { stack, at: Date.now(), left: again.left };
    const words = timeLeft(begun.left - again.left, again.left, Date.now() - begun.at);
    set({ reviewing: { stack, ...again, timeLeft: words } });
    follow();
  }

  /** What was shown may have changed. */
  async function refresh(): Promise<void> {
    const { place } = get();
    if (place.view === 'queue') await desk.loading.loadStack(place.stack, place.after);
    if (place.view === 'script') await desk.loading.loadScript(place.script);
  }

  /** Looks from time to time for as long as there is something to wait for. */
  function follow(): void {
    if (timer !== undefined || get().reviewing?.going !== true) return;
    timer = setTimeout(() => void desk.attempt(look), EVERY_MILLISECONDS);
  }

  desk.store.subscribe(follow);
  return {
    reviewAgain: (stack: number): Promise<void> =>
      desk.attempt(async () => {
        await ask(ROUTES.reviewAgain, { params: { id: stack } });
        await look();
      }),
  };
}
