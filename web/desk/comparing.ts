/** Laying the bars of two like scripts side by side. */
import { ROUTES } from '../../src/desk/wire.ts';
import type { LikePairView } from '../../src/desk/wire-shapes.ts';
import { openScore } from '../../src/open/open.ts';
import type { Score } from '../../src/score/score.ts';
import type { Handle } from './handle.ts';
import { ask } from './service.ts';

/** What a pair is known by. */
export function pairKey({ first, second }: Pick<LikePairView, 'first' | 'second'>): string {
  return `${first.script} ${second === 'reference' ? second : second.script}`;
}

export function createComparing(desk: Handle) {
  const { get, set, attempt } = desk;

  async function scoreOf(who: LikePairView['second']): Promise<Score | undefined> {
    if (who !== 'reference') return (await ask(ROUTES.script, { params: { id: who.script } })).score;
    const opened = openScore(new TextEncoder().encode(get().stack?.reference ?? ''));
    return opened.ok ? opened.score : undefined;
  }

  return {
    /** Fetches the two scores of a pair; asked again, takes them away. */
    showPair: (pair: LikePairView): Promise<void> =>
      attempt(async () => {
        const key = pairKey(pair);
        const { [key]: shown, ...others } = get().pairs;
        if (shown !== undefined) return set({ pairs: others });
        const [first, second] = [await scoreOf(pair.first), await scoreOf(pair.second)];
        if (first !== undefined && second !== undefined)
          set({ pairs: { ...get().pairs, [key]: { first, second } } });
      }),
  };
}
