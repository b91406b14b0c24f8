/** One system on the page: its notes, its marks, and what is laid over or behind them. */
import type { Ticks } from '../../src/score/time.ts';
import { LOWEST_LINE } from './bars.ts';
import { type DrawnSystem, drawSystem } from './draw.ts';
import { STAFF_HEIGHT } from './extents.ts';
import { type HeadBox, type SystemGeometry, xAt } from './geometry.ts';
import { inkMarks } from './ink.ts';
import type { Caret, Ghost, Stretch } from './input.ts';
import { type MarkSettings, type PlacedMarks, placeMarks } from './placing.ts';
import { addTo } from './svg.ts';
import type { SystemPlan } from './systems.ts';

/** A system not drawn yet is taken to be this tall, in drawing units. */
export const GUESSED_HEIGHT = 240;
/** Between the marks of one system and the edge of its picture. */
const MARGIN = 6;

export interface DrawingWay {
  readonly scale: number;
  /** Bars stay in the room they have while that will do. */
  readonly hold: boolean;
}

export class Slot {
  readonly element = document.createElement('div');
  private drawn: DrawnSystem | undefined;
  private placed: PlacedMarks | undefined;
  private drawnFrom = '';
  private markedFrom = '';
  private marksGroup: SVGGElement | undefined;
  private behind: SVGGElement | undefined;
  private over: SVGGElement | undefined;

  constructor(public plan: SystemPlan) {
    this.element.className = 'pw-system';
  }

  get geometry(): SystemGeometry | undefined {
    return this.drawn?.geometry;
  }

  get tags(): PlacedMarks['tags'] {
    return this.placed?.tags ?? [];
  }

  get from(): Ticks {
    return this.plan.bars[0]?.at ?? 0;
  }

  get until(): Ticks {
    const last = this.plan.bars.at(-1);
    return last ? last.at + last.duration : 0;
  }

  reserve(scale: number): void {
    if (!this.drawn) this.element.style.minHeight = `${GUESSED_HEIGHT * scale}px`;
  }

  /**
   * True where what is shown is not what the plan and the marks say. Without a key the marks are still to come; with
   * `hold` bars may stay in the room they have.
   */
  isStale(markKey: string | undefined, hold: boolean): boolean {
    return this.needsNotes(hold) || this.needsMarks(markKey);
  }

  private needsNotes(hold: boolean): boolean {
    return this.drawnFrom !== planKey(this.plan) || (!hold && this.drawn?.held === true);
  }

  private needsMarks(markKey: string | undefined): boolean {
    return markKey === undefined ? this.placed === undefined : this.markedFrom !== markKey;
  }

  /**
   * Draws what is stale: notes with marks, or the marks alone. While other marks are still to come, those that are there
   * stay where they are: they are placed once, when they have come.
   */
  draw(settings: MarkSettings, markKey: string | undefined, { scale, hold }: DrawingWay): void {
    if (this.needsNotes(hold)) {
      this.drawn = drawSystem(this.plan, this.drawn, hold);
      this.drawnFrom = planKey(this.plan);
      this.markedFrom = '';
      if (this.behind === undefined) {
        this.behind = document.createElementNS('http://www.w3.org/2000/svg', 'g');
        this.behind.setAttribute('class', 'pw-behind');
        this.drawn.svg.prepend(this.behind);
        this.element.replaceChildren(this.drawn.svg);
        this.element.style.minHeight = '';
      }
    }
    if (!this.drawn || !this.needsMarks(markKey)) return;
    const { svg, geometry } = this.drawn;
    this.placed = placeMarks(this.plan.bars, geometry, settings);
    this.marksGroup?.remove();
    this.marksGroup = inkMarks(svg, this.placed);
    this.over?.remove();
    this.over = addTo(svg, 'g', { class: 'pw-over' });
    this.markedFrom = markKey ?? '';
    const top = this.placed.highest - MARGIN;
    const height = this.placed.lowest + MARGIN - top;
    svg.setAttribute('viewBox', `0 ${top} ${geometry.width} ${height}`);
    svg.setAttribute('width', String(Math.round(geometry.width * scale * 100) / 100));
    svg.setAttribute('height', String(Math.round(height * scale * 100) / 100));
    // What is out of sight is laid out no more than this; see engrave.css.
    this.element.style.containIntrinsicHeight = `auto ${Math.round(height * scale)}px`;
  }

  /** Shows the chosen finding, the highlighted tones and the chosen stretch; cheap, nothing is placed anew. */
  showChoice(finding: string | undefined, tones: ReadonlySet<string>, stretch: Stretch | undefined): void {
    const { drawn, behind, marksGroup } = this;
    if (!drawn || !behind) return;
    behind.replaceChildren();
    if (stretch && stretch.from < this.until && stretch.until > this.from) this.drawStretch(behind, stretch);
    const chosen = this.tags.filter((tag) => tag.finding === finding);
    for (const tag of chosen) for (const head of tag.heads) this.wash(behind, head, 'pw-wash');
    for (const head of drawn.geometry.heads) {
      const inside = stretch !== undefined && head.at >= stretch.from && head.at < stretch.until;
      if (inside && head.tone !== undefined && stretch.voices?.includes(head.voice))
        this.wash(behind, head, 'pw-ring');
      if (head.tone !== undefined && tones.has(head.tone)) this.wash(behind, head, 'pw-ring');
    }
    const concerned = new Set(chosen.flatMap((tag) => tag.heads.map((head) => head.tone)));
    for (const sign of drawn.svg.querySelectorAll<SVGGElement>('.vf-sign')) {
      const tone = sign.dataset.tone ?? '';
      sign.classList.toggle('pw-concerned', concerned.has(tone) && tone !== '');
      sign.classList.toggle('pw-chosen', tones.has(tone));
    }
    marksGroup?.classList.toggle('pw-has-chosen', finding !== undefined);
    for (const mark of marksGroup?.querySelectorAll<SVGGElement>('.pw-finding') ?? []) {
      mark.classList.toggle('pw-chosen', mark.dataset.finding === finding);
    }
  }

  private wash(parent: SVGGElement, head: HeadBox, name: string): void {
    addTo(parent, 'ellipse', {
      cx: head.x + head.width / 2,
      cy: head.y + head.height / 2,
      rx: head.width / 2 + 5,
      ry: head.height / 2 + 5,
      class: name,
    });
  }

  private drawStretch(parent: SVGGElement, stretch: Stretch): void {
    const geometry = this.drawn!.geometry;
    const x = stretch.from <= this.from ? geometry.left : xAt(geometry, stretch.from) - 5;
    const bar = geometry.bars.find((each) => each.until === stretch.until);
    const inside = bar ? bar.x + bar.width : xAt(geometry, stretch.until) - 6;
    const end = stretch.until >= this.until ? geometry.right : inside;
    const height = geometry.top.bass + STAFF_HEIGHT + 16;
    addTo(parent, 'rect', { x, y: -8, width: Math.max(4, end - x), height, rx: 4, class: 'pw-stretch' });
  }

  /** Caret, ghost and playing cursor, over everything. */
  showCarets(caret: Caret | undefined, cursor: Ticks | undefined, ghost: Ghost | undefined): void {
    const { over, drawn } = this;
    if (!over || !drawn) return;
    over.replaceChildren();
    const { geometry } = drawn;
    if (cursor !== undefined && this.holds(cursor)) {
      const x = xAt(geometry, cursor) + 6;
      const height = geometry.top.bass + STAFF_HEIGHT + 16;
      addTo(over, 'rect', { x: x - 1, y: -8, width: 2, height, class: 'pw-cursor' });
    }
    if (caret && this.holds(caret.at)) drawCaret(over, geometry, caret);
    if (ghost && this.holds(ghost.at)) drawGhost(over, geometry, ghost);
  }

  holds(at: Ticks): boolean {
    return at >= this.from && at < this.until;
  }
}

/** A bracketed line through the voice's half of its staff. */
function drawCaret(over: SVGGElement, geometry: SystemGeometry, caret: Caret): void {
  const staff = caret.voice === 'S' || caret.voice === 'A' ? 'treble' : 'bass';
  const upper = caret.voice === 'S' || caret.voice === 'T';
  const x = xAt(geometry, caret.at) - 4;
  const top = geometry.top[staff] + (upper ? -10 : 20);
  const bottom = geometry.top[staff] + (upper ? 20 : STAFF_HEIGHT + 10);
  const d = `M${x - 3} ${top}h6M${x} ${top}V${bottom}M${x - 3} ${bottom}h6`;
  addTo(over, 'path', { d, class: 'pw-caret' });
}

/** A pale head with its ledger lines. */
function drawGhost(over: SVGGElement, geometry: SystemGeometry, ghost: Ghost): void {
  const staff = ghost.voice === 'S' || ghost.voice === 'A' ? 'treble' : 'bass';
  const lowest = LOWEST_LINE[staff];
  const x = xAt(geometry, ghost.at) + 6;
  const y = (place: number) => geometry.top[staff] + STAFF_HEIGHT - (place - lowest) * 5;
  for (let line = lowest - 2; line >= ghost.place; line -= 2)
    addTo(over, 'path', { d: `M${x - 10} ${y(line)}h20`, class: 'pw-ghost-line' });
  for (let line = lowest + 10; line <= ghost.place; line += 2)
    addTo(over, 'path', { d: `M${x - 10} ${y(line)}h20`, class: 'pw-ghost-line' });
  addTo(over, 'ellipse', { cx: x, cy: y(ghost.place), rx: 6.4, ry: 4.6, class: 'pw-ghost' });
}

const keys = new WeakMap<SystemPlan, string>();

/** A plan as text: equal for equal drawings. */
function planKey(plan: SystemPlan): string {
  let text = keys.get(plan);
  if (text === undefined) {
    text = JSON.stringify(plan);
    keys.set(plan, text);
  }
  return text;
}
