import type { Engraving, EngravingEvents } from './input.ts';

/** Makes an engraving in a container. */
export function createEngraving(container: HTMLElement, _events: EngravingEvents = {}): Engraving {
  return {
    update() {},
    drawn: Promise.resolve(),
    select() {},
    highlight() {},
    setCaret() {},
    setStretch() {},
    setCursor() {},
    hitTest: () => undefined,
    boxesOf: () => [],
    scrollTo() {},
    complete() {},
    destroy() {
      container.replaceChildren();
    },
  };
}
