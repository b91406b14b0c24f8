/** When things are done that nobody needs to see at once: what a person has just done is painted first. */

/** A page out of sight has no frames; what waits for one is done after this many milliseconds. */
const WITHOUT_FRAME = 250;

/** Calls back when the frame that shows the present change has been made. */
export function afterPaint(act: () => void): void {
  let done = false;
  const once = (): void => {
    if (done) return;
    done = true;
    clearTimeout(late);
    act();
  };
  const late = setTimeout(once, WITHOUT_FRAME);
  if (typeof requestAnimationFrame !== 'function') return;
  requestAnimationFrame(() => {
    // A message comes behind the frame that is being made; a timer might come four milliseconds later.
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = once;
    port2.postMessage(undefined);
  });
}

/** Puts off what is asked for again and again: it is done once, with the newest, when the frame has been made. */
export function onceAfterPaint<T>(act: (newest: T) => void): (newest: T) => void {
  let waiting: { newest: T } | undefined;
  return (newest) => {
    if (waiting !== undefined) {
      waiting.newest = newest;
      return;
    }
    waiting = { newest };
    afterPaint(() => {
      const { newest } = waiting!;
      waiting = undefined;
      act(newest);
    });
  };
}
