/** Where the person's eyes and keys are. */

/** Runs when what was changed in the state just now has been drawn. */
export function afterDrawing(run: () => void): void {
  queueMicrotask(() => queueMicrotask(run));
}

const SCROLLED = ['.paper', '.margin'] as const;

/** Notes what is in view and in hand; the answer brings it back. */
export function keepPlace(): () => void {
  const heights = SCROLLED.map((part) => document.querySelector(part)?.scrollTop ?? 0);
  const down = window.scrollY;
  return () => {
    document.querySelector<HTMLElement>('.finding.chosen .finding-head')?.focus({ preventScroll: true });
    for (const [i, part] of SCROLLED.entries()) document.querySelector(part)?.scrollTo({ top: heights[i]! });
    window.scrollTo({ top: down });
  };
}

/** Brings the chosen finding into view, in the score and in the list, each in its own part of the window. */
export function showChosen(): void {
  for (const [part, chosen] of [
    ['.paper', '.pw-chosen'],
    ['.margin', '.finding.chosen'],
  ] as const) {
    const room = document.querySelector(part);
    const found = room?.querySelector(chosen);
    if (!room || !found) continue;
    const [inRoom, at] = [room.getBoundingClientRect(), found.getBoundingClientRect()];
    room.scrollBy({ top: at.top - inRoom.top - Math.max(60, (inRoom.height - at.height) / 2) });
  }
}
