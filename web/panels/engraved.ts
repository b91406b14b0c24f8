/** A small score drawn within a panel: an example, the page to print. Never edited, never pointed at. */
import { html, type TemplateResult } from 'lit';
import { AsyncDirective } from 'lit/async-directive.js';
import { directive, type ElementPart } from 'lit/directive.js';
import { createEngraving, type Engraving, type EngravingInput } from '../engrave/index.ts';

export type Drawn = Omit<EngravingInput, 'width'>;

class EngravedDirective extends AsyncDirective {
  private engraving: Engraving | undefined;
  private observer: ResizeObserver | undefined;
  private drawn: Drawn | undefined;
  private element: HTMLElement | undefined;

  render(_drawn: Drawn): undefined {
    return undefined;
  }

  override update(part: ElementPart, [drawn]: [Drawn]): undefined {
    if (this.element !== part.element) {
      this.element = part.element as HTMLElement;
      this.engraving = createEngraving(this.element);
      this.observer = new ResizeObserver(() => this.draw());
      this.observer.observe(this.element);
    }
    if (this.drawn !== drawn) {
      this.drawn = drawn;
      this.draw();
    }
    return undefined;
  }

  private draw(): void {
    const width = this.element?.clientWidth ?? 0;
    if (width > 0 && this.drawn) this.engraving?.update({ ...this.drawn, width });
  }

  protected override disconnected(): void {
    this.observer?.disconnect();
    this.engraving?.destroy();
    this.element = undefined;
  }
}

const engrave = directive(EngravedDirective);

/** `words` stand for the drawing to those who don't see it. */
export function engraved(drawn: Drawn, words: string): TemplateResult {
  return html`<div class="engraved" role="img" aria-label=${words} ${engrave(drawn)}></div>`;
}
