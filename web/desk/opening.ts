/** Opening the desk: who sits at it, and what the address asks for. */
import { initialsSchema, ROUTES } from '../../src/desk/wire.ts';
import type { Handle } from './handle.ts';
import { ask, useInitials, useToken } from './service.ts';
import { asksNothing, type Place, placeOf } from './state.ts';

/** Where this browser keeps whose window it is. */
const INITIALS = 'desk-initials';

export function createOpening(desk: Handle) {
  const { get, set, attempt } = desk;

  /** Shows what the address asks for. */
  async function load(): Promise<void> {
    const place = placeOf(location.hash);
    set({ place, notice: undefined, writing: undefined, marking: undefined, editing: undefined });
    await attempt(() => fetched(desk, place));
  }

  function setInitials(text: string): void {
    const read = initialsSchema.safeParse(text);
    const initials = read.success ? read.data : '';
    useInitials(initials);
    set({ initials });
    keep(initials);
    if (!read.success && text.trim() !== '')
      set({ notice: { text: read.error.issues[0]!.message, wrong: true } });
  }

  return {
    load,
    setInitials: async (text: string): Promise<void> => {
      setInitials(text);
      if (get().place.view === 'script') await load();
    },
    start: async (): Promise<void> => {
      set({ place: placeOf(location.hash) });
      setInitials(kept());
      await attempt(async () => {
        const { passphraseNeeded, signedIn, token } = await ask(ROUTES.session, {});
        useToken(token);
        set({ signedIn: signedIn || !passphraseNeeded });
        if (signedIn) await load();
      });
      // Where there is no desk, work can be set all the same.
      if (asksNothing(get().place) && get().signedIn === undefined) set({ notice: undefined });
    },
    signIn: (passphrase: string): Promise<void> =>
      attempt(async () => {
        const answer = await ask(ROUTES.signIn, { body: { passphrase } });
        useToken(answer.token);
        set({ signedIn: true, notice: undefined });
        await load();
      }),
  };
}

/** Fetches what a place shows. @throws {Refused} */
async function fetched({ get, set, loading }: Handle, place: Place): Promise<void> {
  if (place.view === 'set') return;
  if (asksNothing(place)) return;
  if (place.view === 'stacks') return set({ stacks: (await ask(ROUTES.stacks, {})).stacks });
  if (place.view === 'script') return loading.loadScript(place.script);
  if (place.view === 'queue') return loading.loadStack(place.stack, place.after);
  await loading.loadStack(place.stack, 0, 1);
  const { stack } = get();
  switch (place.view) {
    case 'class':
      return set({ classView: await ask(ROUTES.class, { params: { id: place.stack } }) });
    case 'likeness':
      return loading.loadLikeness(place);
    case 'settings':
      return stack === undefined ? undefined : set({ editing: { base: stack, now: stack } });
    case 'moderation':
      return loading.loadModeration(place);
    case 'differences':
      return loading.loadDifferences(place);
    case 'sheets':
      return loading.loadSheets(place);
  }
}

/** A browser may refuse to keep anything: then it is asked again another day. */
function kept(): string {
  try {
    return localStorage.getItem(INITIALS) ?? '';
  } catch {
    return '';
  }
}

function keep(initials: string): void {
  try {
    localStorage.setItem(INITIALS, initials);
  } catch {
    // Known for as long as the page is open.
  }
}
