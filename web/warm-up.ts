/**
 * The first key of a visit finds the way it goes already trodden: while nobody does anything, a note is written, planned
 * and drawn that nobody sees. A browser compiles what it runs when it first runs it.
 */
import { readNotation } from '../src/notation/index.ts';
import { createEngraving, type EngravingInput, NO_MARKS } from './engrave/index.ts';
import type { PageState } from './state/page.ts';
import { writeLetter } from './state/writing.ts';

/** One bar, and a note of it to be written over. */
const BAR =
  'key: D major\nmetre: 4/4\nS: D5 (C#5 D5) A4*2 |\nA: A4*2 E4*2_ |\nT: F#4 E4 C#4*2 |\nB: D3 A3 A2*2! |\n';

/** Goes the way of a key in pieces, each when the page is idle. */
export function warmUp(state: PageState): void {
  const { score } = readNotation(BAR);
  const container = document.createElement('div');
  const engraving = createEngraving(container);
  const input: EngravingInput = { score, marks: NO_MARKS, width: 900, layers: state.settings.shown };
  const open = { ...state.exercise, locked: [] };
  const written = () => writeLetter({ ...state, exercise: open, caret: { voice: 'S', at: 0 } }, 'C');
  const pieces = [
    () => void written(),
    () => engraving.update(input),
    () =>
      engraving.update({
        ...input,
        score: readNotation(BAR.replace('D5', 'F#5')).score,
        hold: true,
        marksToCome: true,
      }),
    () => engraving.destroy(),
  ];
  const next = (): void => {
    pieces.shift()?.();
    if (pieces.length > 0) requestIdleCallback(next);
  };
  if (typeof requestIdleCallback === 'function') requestIdleCallback(next);
}
