/** The one question that opening a file asks: which voices are given. */
import { html, nothing, type TemplateResult } from 'lit';
import { VOICE_WORDS, VOICES } from '../../src/score/score.ts';
import type { Panel } from './context.ts';

export function givenQuestion({ state, actions, commands }: Panel): TemplateResult | typeof nothing {
  if (!state.asking) return nothing;
  const { voices } = state.history.now.score;
  const written = VOICES.filter((voice) => voices[voice].some((event) => event.kind === 'note'));
  return html`<form
    class="given-question"
    @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      const form = new FormData(event.target as HTMLFormElement);
      // The stave first: while it has the focus it follows the caret.
      commands.focusStave();
      actions.answerGiven(VOICES.filter((voice) => form.getAll('given').includes(voice)));
    }}
  >
    <fieldset>
      <legend>Which voices were given to you?</legend>
      ${written.map(
        (voice) => html`<label class="check"
          ><input type="checkbox" name="given" value=${voice} ?checked=${voice === 'S'} />
          <span class="voice-word">${VOICE_WORDS[voice]}</span></label
        >`,
      )}
    </fieldset>
    <button type="submit" class="main-action">Start</button>
    <p class="aside">Given notes are locked, so that they can’t be changed by accident. Lock opens them again.</p>
  </form>`;
}
