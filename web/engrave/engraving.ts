/** Keeps a container's drawing in step with what it is given: draws what changed, what is in view first. */
import type { Score } from '../../src/score/score.ts';
import { type DrawnSystem, drawSystem } from './draw.ts';
import { loadMusicFont } from './font.ts';
import type { Engraving, EngravingEvents, EngravingInput } from './input.ts';
import { type PlannedBar, planBars } from './plan.ts';
import { arrangeSystems, type SystemPlan } from './systems.ts';

/** Below this width in CSS pixels the music is drawn smaller unless a scale is given. */
const PHONE_WIDTH = 600;
const PHONE_SCALE = 0.78;
/** A system not drawn yet is taken to be this tall, in drawing units. */
const GUESSED_HEIGHT = 240;

/** One system's place in the container. */
interface Slot {
  readonly element: HTMLElement;
  plan: SystemPlan;
  /** What the notes shown were drawn from. */
  drawnFrom?: string;
  drawn?: DrawnSystem;
}

/** Makes an engraving in a container; its children belong to the engraver from then on. */
export function createEngraving(container: HTMLElement, events: EngravingEvents = {}): Engraving {
  return new Sheet(container, events);
}

class Sheet implements Engraving {
  drawn: Promise<void> = Promise.resolve();
  private readonly root: HTMLElement;
  private readonly slots: Slot[] = [];
  private input: EngravingInput | undefined;
  private scale = 1;
  private planned: { score: Score; bars: PlannedBar[] } | undefined;
  private fontReady = false;
  private waiting = 0;
  private settle: (() => void) | undefined;
  private began = 0;

  constructor(
    private readonly container: HTMLElement,
    private readonly events: EngravingEvents,
  ) {
    this.root = document.createElement('div');
    this.root.className = 'pw-sheet';
    this.root.setAttribute('aria-hidden', 'true');
    this.container.replaceChildren(this.root);
  }

  update(input: EngravingInput): void {
    this.began = performance.now();
    this.input = input;
    this.scale = input.scale ?? (input.width < PHONE_WIDTH ? PHONE_SCALE : 1);
    if (this.planned?.score !== input.score) {
      this.planned = { score: input.score, bars: planBars(input.score) };
    }
    const lyrics = input.layers.lyrics ? 1 : 0;
    const plans = arrangeSystems(this.planned.bars, {
      width: input.width / this.scale,
      labels: new Map(),
      lyrics,
    });
    this.reconcile(plans);
    this.settle ??= this.promise();
    if (this.fontReady) this.drawVisible();
    else {
      void loadMusicFont().then(() => {
        this.fontReady = true;
        this.drawVisible();
      });
    }
  }

  private promise(): () => void {
    let settle = () => {};
    this.drawn = new Promise((resolve) => {
      settle = resolve;
    });
    return settle;
  }

  private reconcile(plans: readonly SystemPlan[]): void {
    for (const [i, plan] of plans.entries()) {
      const slot = this.slots[i];
      if (slot) slot.plan = plan;
      else {
        const element = document.createElement('div');
        element.className = 'pw-system';
        element.style.minHeight = `${GUESSED_HEIGHT * this.scale}px`;
        this.root.append(element);
        this.slots.push({ element, plan });
      }
    }
    for (const slot of this.slots.splice(plans.length)) slot.element.remove();
  }

  /** Draws the stale systems in view now, and the others one by one when the page is idle. */
  private drawVisible(): void {
    cancelIdle(this.waiting);
    let above = true;
    for (const slot of this.slots) {
      const { top, bottom } = slot.element.getBoundingClientRect();
      const seen = bottom > 0 && top < window.innerHeight;
      if (seen || (above && slot === this.slots[0])) this.drawSlot(slot);
      above = false;
    }
    this.drawRest();
  }

  private drawRest(): void {
    const stale = this.slots.find((slot) => slot.drawnFrom !== key(slot.plan));
    if (!stale) {
      this.settle?.();
      this.settle = undefined;
      this.events.onDrawn?.(performance.now() - this.began);
      return;
    }
    this.waiting = whenIdle(() => {
      this.drawSlot(stale);
      this.drawRest();
    });
  }

  private drawSlot(slot: Slot): void {
    const from = key(slot.plan);
    if (slot.drawnFrom !== from) {
      slot.drawn = drawSystem(slot.plan);
      slot.drawnFrom = from;
      const { svg, geometry } = slot.drawn;
      const height = geometry.lowest - geometry.highest + 10;
      svg.setAttribute('viewBox', `0 ${geometry.highest - 5} ${geometry.width} ${height}`);
      svg.setAttribute('width', String(geometry.width * this.scale));
      svg.setAttribute('height', String(height * this.scale));
      slot.element.replaceChildren(svg);
      slot.element.style.minHeight = '';
    }
  }

  select(): void {}
  highlight(): void {}
  setCaret(): void {}
  setStretch(): void {}
  setCursor(): void {}
  hitTest(): undefined {
    return undefined;
  }
  boxesOf(): [] {
    return [];
  }
  scrollTo(): void {}
  complete(): void {
    cancelIdle(this.waiting);
    for (const slot of this.slots) this.drawSlot(slot);
    this.drawRest();
  }
  destroy(): void {
    cancelIdle(this.waiting);
    this.root.remove();
  }
}

const keys = new WeakMap<SystemPlan, string>();
function key(plan: SystemPlan): string {
  let text = keys.get(plan);
  if (text === undefined) {
    text = JSON.stringify(plan);
    keys.set(plan, text);
  }
  return text;
}

function whenIdle(work: () => void): number {
  return typeof requestIdleCallback === 'function'
    ? requestIdleCallback(work, { timeout: 200 })
    : window.setTimeout(work, 16);
}

function cancelIdle(id: number): void {
  if (typeof cancelIdleCallback === 'function') cancelIdleCallback(id);
  else clearTimeout(id);
}
