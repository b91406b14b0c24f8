/** Keeps a container's drawing in step with what it is given: draws what changed, what is in view first. */
import { VOICES } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import type { PlannedBar } from './bars.ts';
import { loadMusicFont } from './font.ts';
import type {
  Caret,
  ClientBox,
  Engraving,
  EngravingEvents,
  EngravingInput,
  Ghost,
  Hit,
  Stretch,
} from './input.ts';
import { NO_MARKS } from './input.ts';
import { createMarking, type Marking } from './marking.ts';
import { type Planned, planScore } from './plan.ts';
import { hitIn } from './pointing.ts';
import { GUESSED_HEIGHT, Slot } from './slot.ts';
import { arrangeSystems, type SystemPlan } from './systems.ts';
import { canvasMeasure } from './words.ts';

/** Below this width in CSS pixels the music is drawn smaller unless a scale is given. */
const PHONE_WIDTH = 600;
const PHONE_SCALE = 0.78;

/** Makes an engraving in a container; its children belong to the engraver from then on. */
export function createEngraving(container: HTMLElement, events: EngravingEvents = {}): Engraving {
  return new Sheet(container, events);
}

class Sheet implements Engraving {
  drawn: Promise<void> = Promise.resolve();
  private readonly root: HTMLElement;
  private slots: Slot[] = [];
  private input: EngravingInput | undefined;
  private marking: Marking | undefined;
  private arranged: readonly SystemPlan[] = [];
  private arrangedWithMarks = false;
  private readonly measure = canvasMeasure();
  private scale = 1;
  private readonly inView = new WeakMap<Element, boolean>();
  private readonly observer = new IntersectionObserver((entries) => {
    for (const { target, isIntersecting } of entries) this.inView.set(target, isIntersecting);
  });
  private planned: Planned | undefined;
  private fontReady = false;
  private waiting = 0;
  private waitingTask = 0;
  private settle: (() => void) | undefined;
  private began = 0;
  private chosen: string | undefined;
  private tones: ReadonlySet<string> = new Set();
  private stretch: Stretch | undefined;
  private caret: Caret | undefined;
  private cursor: Ticks | undefined;
  private ghost: Ghost | undefined;

  constructor(
    private readonly container: HTMLElement,
    private readonly events: EngravingEvents,
  ) {
    this.root = document.createElement('div');
    this.root.className = 'pw-sheet';
    this.root.setAttribute('aria-hidden', 'true');
    this.root.addEventListener('click', this.onClick);
    this.container.replaceChildren(this.root);
  }

  update(input: EngravingInput): void {
    this.began = performance.now();
    this.input = input;
    this.settle ??= this.promise();
    if (this.fontReady) this.refresh();
    else {
      loadMusicFont().then(
        () => {
          this.fontReady = true;
          this.refresh();
        },
        () =>
          this.root.replaceChildren(
            'The music font could not be loaded, so nothing can be drawn. Reload the page.',
          ),
      );
    }
  }

  /** Plans what is new (plain data) and draws what differs from what is shown. */
  private refresh(): void {
    const { input } = this;
    if (!input) return;
    if (input.width <= 0) {
      // A hidden container has no width: what was drawn stays until it is shown again.
      this.finish();
      return;
    }
    this.scale = input.scale ?? (input.width < PHONE_WIDTH ? PHONE_SCALE : 1);
    if (this.planned?.score !== input.score) this.planned = planScore(input.score, this.planned);
    if (!this.marking?.isOf(input)) this.marking = createMarking(input, this.measure);
    const { bars } = this.planned;
    const { rooms, letters } = this.marking;
    const lyrics = input.layers.lyrics ? versesOf(bars) : 0;
    const width = input.width / this.scale;
    const arrangement = {
      ...{ width, labels: rooms, lyrics, letters },
      // Before there were marks nobody could tell how much room they want.
      settled: this.arrangedWithMarks,
      hold: input.hold === true,
    };
    this.arranged = arrangeSystems(bars, arrangement, this.arranged);
    this.arrangedWithMarks = input.marks !== NO_MARKS;
    this.reconcile(this.arranged);
    this.drawVisible();
  }

  private promise(): () => void {
    let settle = () => {};
    this.drawn = new Promise((resolve) => {
      settle = resolve;
    });
    return settle;
  }

  /** Gives every planned system a slot: the one that shows the same already, or the one in its place. */
  private reconcile(plans: readonly SystemPlan[]): void {
    this.slots = plans.map((plan, i) => {
      const slot = this.slots[i];
      if (slot) {
        slot.plan = plan;
        return slot;
      }
      const fresh = new Slot(plan);
      fresh.reserve(this.scale);
      this.observer.observe(fresh.element);
      return fresh;
    });
    const elements = new Set<Element>(this.slots.map(({ element }) => element));
    for (const child of [...this.root.children]) {
      if (elements.has(child)) continue;
      this.observer.unobserve(child);
      child.remove();
    }
    for (const element of elements) if (element.parentElement !== this.root) this.root.append(element);
  }

  /**
   * Draws what is stale of the systems in view now: all that were there before, but of those that are new only the
   * first, and the others one after another, so that whoever presses a key meanwhile is heard. The rest comes when the
   * page is idle.
   */
  private drawVisible(): void {
    this.stopWaiting();
    const seen = this.slots.filter((slot, i) => i === 0 || this.isSeen(slot, i));
    const fresh = seen.filter(({ geometry }) => geometry === undefined);
    for (const slot of seen) if (slot.geometry !== undefined || slot === fresh[0]) this.drawSlot(slot);
    this.drawNext(fresh.slice(1));
  }

  private drawNext(fresh: readonly Slot[]): void {
    const [next, ...others] = fresh;
    if (next === undefined) {
      this.drawRest();
      return;
    }
    this.waitingTask = window.setTimeout(() => {
      this.drawSlot(next);
      this.drawNext(others);
    });
  }

  private stopWaiting(): void {
    cancelIdle(this.waiting);
    clearTimeout(this.waitingTask);
  }

  /**
   * Asking the browser where an element stands makes it lay the page out on the spot; so the observer keeps account of
   * what is in view. Where a system stands that it has not told of yet is guessed: from the top of the page on.
   */
  private isSeen(slot: Slot, i: number): boolean {
    return this.inView.get(slot.element) ?? i * GUESSED_HEIGHT * this.scale < window.innerHeight;
  }

  private drawRest(): void {
    const hold = this.input?.hold === true;
    const stale = this.slots.find((slot) => slot.isStale(this.markKey(slot), hold));
    if (!stale) {
      this.finish();
      return;
    }
    this.waiting = whenIdle(() => {
      this.drawSlot(stale);
      this.drawRest();
    });
  }

  private finish(): void {
    this.settle?.();
    this.settle = undefined;
    this.events.onDrawn?.(performance.now() - this.began);
  }

  private drawSlot(slot: Slot): void {
    if (!this.marking) return;
    const key = this.markKey(slot);
    const hold = this.input?.hold === true;
    if (!slot.isStale(key, hold)) return;
    slot.draw(this.marking.settings, key, { scale: this.scale, hold });
    slot.showChoice(this.chosen, this.tones, this.stretch);
    slot.showCarets(this.caret, this.cursor, this.ghost);
  }

  /** What a system's marks are made from; undefined while they are to come. */
  private markKey({ plan }: Slot): string | undefined {
    if (!this.marking || this.input?.marksToCome) return undefined;
    return `${this.scale} ${this.marking.keyOf(plan)}`;
  }

  select(id: string | undefined): void {
    if (id === this.chosen) return;
    this.chosen = id;
    this.showChoices();
  }

  highlight(tones: readonly string[]): void {
    this.tones = new Set(tones);
    this.showChoices();
  }

  setStretch(stretch: Stretch | undefined): void {
    if (stretch === this.stretch) return;
    this.stretch = stretch;
    this.showChoices();
  }

  private showChoices(): void {
    for (const slot of this.slots) slot.showChoice(this.chosen, this.tones, this.stretch);
  }

  setCaret(caret: Caret | undefined): void {
    if (caret === this.caret) return;
    const touched = this.slots.filter(
      (slot) => slot.holds(this.caret?.at ?? -1) || slot.holds(caret?.at ?? -1),
    );
    this.caret = caret;
    for (const slot of touched) slot.showCarets(this.caret, this.cursor, this.ghost);
  }

  setCursor(at: Ticks | undefined): void {
    const touched = this.slots.filter((slot) => slot.holds(this.cursor ?? -1) || slot.holds(at ?? -1));
    this.cursor = at;
    for (const slot of touched) slot.showCarets(this.caret, this.cursor, this.ghost);
  }

  setGhost(ghost: Ghost | undefined): void {
    const touched = this.slots.filter(
      (slot) => slot.holds(this.ghost?.at ?? -1) || slot.holds(ghost?.at ?? -1),
    );
    this.ghost = ghost;
    for (const slot of touched) slot.showCarets(this.caret, this.cursor, this.ghost);
  }

  hitTest(clientX: number, clientY: number): Hit | undefined {
    for (const slot of this.slots) {
      const box = slot.element.getBoundingClientRect();
      const { geometry } = slot;
      if (!geometry || clientY < box.top || clientY > box.bottom) continue;
      const point = this.toDrawing(slot, clientX, clientY);
      return point && hitIn(geometry, slot.tags, point.x, point.y);
    }
    return undefined;
  }

  private toDrawing(slot: Slot, clientX: number, clientY: number): DOMPoint | undefined {
    const matrix = slot.element.querySelector('svg')?.getScreenCTM();
    return matrix ? new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse()) : undefined;
  }

  boxesOf(tone: string): readonly ClientBox[] {
    return this.slots.flatMap((slot) => {
      const matrix = slot.element.querySelector('svg')?.getScreenCTM();
      const heads = slot.geometry?.heads.filter((head) => head.tone === tone) ?? [];
      if (!matrix) return [];
      return heads.map((head): ClientBox => {
        const from = new DOMPoint(head.x, head.y).matrixTransform(matrix);
        const to = new DOMPoint(head.x + head.width, head.y + head.height).matrixTransform(matrix);
        return { left: from.x, top: from.y, width: to.x - from.x, height: to.y - from.y };
      });
    });
  }

  scrollTo(target: { readonly at: Ticks } | { readonly finding: string }, smooth = true): void {
    const slot =
      'at' in target
        ? this.slots.find((each) => each.holds(target.at))
        : this.slots.find((each) => each.holds(this.findingStart(target.finding)));
    if (!slot) return;
    this.drawSlot(slot);
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
    slot.element.scrollIntoView({ block: 'nearest', behavior: smooth && !still ? 'smooth' : 'auto' });
  }

  private findingStart(id: string): Ticks {
    const finding = this.input?.marks.findings.find((each) => each.id === id);
    return finding?.tones[0]?.at ?? finding?.from ?? -1;
  }

  complete(): void {
    if (this.input?.hold) this.update({ ...this.input, hold: false });
    this.stopWaiting();
    for (const slot of this.slots) this.drawSlot(slot);
    this.drawRest();
  }

  destroy(): void {
    this.stopWaiting();
    this.observer.disconnect();
    this.root.remove();
  }

  // Not as soon as a finger comes down: it may have come to scroll, and what opens must not lie under it when it leaves.
  private readonly onClick = (event: MouseEvent): void => {
    if (!this.events.onSelectFinding && !this.events.onPoint) return;
    const hit = this.hitTest(event.clientX, event.clientY);
    if (!hit) return;
    if (hit.finding !== undefined) {
      const id = hit.finding === this.chosen ? undefined : hit.finding;
      this.select(id);
      this.events.onSelectFinding?.(id);
    } else this.events.onPoint?.(hit);
  };
}

/** The greatest number of verses under any note. */
function versesOf(bars: readonly PlannedBar[]): number {
  let verses = 0;
  for (const bar of bars) {
    for (const voice of VOICES) {
      for (const { lyrics } of bar.signs[voice]) if (lyrics) verses = Math.max(verses, lyrics.length);
    }
  }
  return verses;
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
