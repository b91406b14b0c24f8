/** When things are done that nobody needs to see at once: what a person has just done is painted first. */

/** No frame on a slow machine takes longer, in milliseconds; a page that has gone out of sight has none at all. */
const WITHOUT_FRAME = 1000;

/** Calls back when the frame that shows the present change has been made. */
export function afterPaint(act: () => void): void {
  let done = false;
  const once = (): void => {
    if (done) return;
    done = true;
    clearTimeout(late);
    act();
  };
  const hasFrames = typeof requestAnimationFrame === 'function' && !document.hidden;
  const late = setTimeout(once, hasFrames ? WITHOUT_FRAME : 0);
  if (!hasFrames) return;
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
