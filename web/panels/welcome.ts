/** The first ten seconds: what this is, in a sentence, and the ways in. Stands over the demonstration until closed. */
import { html, nothing, type TemplateResult } from 'lit';
import { TUNES } from '../state/tunes.ts';
import type { Panel } from './context.ts';
import { filePicker } from './file-picker.ts';

export function welcomeView(panel: Panel): TemplateResult | typeof nothing {
  const { state, actions } = panel;
  if (state.exercise.demonstration !== true || state.settings.welcomed) return nothing;
  return html`<section class="welcome" aria-labelledby="what-this-is">
    <p id="what-this-is" class="what-this-is">
      Partwise reads your four-part chorale harmonisation, finished or half finished, and shows on the stave what is
      wrong, where and why.
    </p>
    <div class="ways-in">
      <details class="way-in" name="way-in">
        <summary class="button main-action">Paste an exercise</summary>
        ${pasteForm(panel)}
      </details>
      ${filePicker(panel, 'Open a file', 'main-action')}
      <details class="way-in" name="way-in">
        <summary class="button main-action">Write on a given tune</summary>
        ${tuneList(panel)}
      </details>
      <button
        type="button"
        class="quiet"
        @click=${() => {
          actions.set({ welcomed: true });
          panel.commands.focusStave();
        }}
      >
        Try the demonstration below
      </button>
    </div>
  </section>`;
}

/** A box to paste into, for a finger that has no Ctrl V; on a keyboard the keys do it from anywhere. */
function pasteForm({ commands }: Panel): TemplateResult {
  return html`<form
    class="paste-form"
    @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      commands.takeText(String(new FormData(event.target as HTMLFormElement).get('pasted') ?? ''));
    }}
  >
    <label for="pasted">
      Text, or MusicXML. With a keyboard just press <kbd>Ctrl V</kbd> anywhere on this page.
    </label>
    <textarea id="pasted" name="pasted" rows="5" spellcheck="false" autocapitalize="off" placeholder=${PLACEHOLDER}></textarea>
    <button type="submit">Open it</button>
  </form>`;
}

const PLACEHOLDER = `key: G major
S: G4 | B A G D5 | …
A: D4 | D D B3 D4 | …`;

function tuneList({ commands }: Panel): TemplateResult {
  return html`<div class="tune-list">
    <p>The tune stands in the soprano, locked. Alto, tenor and bass are yours.</p>
    <ul>
      ${TUNES.map(
        (tune) => html`<li>
          <button type="button" @click=${() => commands.beginTune(tune)}>${tune.title}</button>
          <span class="aside">${tune.about}</span>
        </li>`,
      )}
      <li><a class="button" href="#shelf">An empty stave</a> <span class="aside">to write your own tune in</span></li>
    </ul>
  </div>`;
}
