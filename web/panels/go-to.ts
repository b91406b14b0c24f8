/** A button that goes to a moment of the music. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Ticks } from '../../src/score/time.ts';
import type { Panel } from './context.ts';

export function goTo(
  { actions, commands, state }: Panel,
  at: Ticks | undefined,
  words = 'Show',
): TemplateResult | typeof nothing {
  if (at === undefined) return nothing;
  return html`<button
    type="button"
    class="place-link"
    @click=${() => {
      actions.setCaret(state.caret.voice, at);
      commands.showPlace(at);
    }}
  >
    ${words}
  </button>`;
}
