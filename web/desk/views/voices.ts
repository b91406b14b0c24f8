/** Which lines of a script's file were read as which voices, said where that was a guess; and saying otherwise. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Line, ScriptView } from '../../../src/desk/wire-shapes.ts';
import { VOICES } from '../../../src/score/score.ts';
import { linesToChoose, voiceChoices } from '../../panels/voice-choices.ts';
import type { Actions } from '../actions.ts';

export function voicesPart(view: ScriptView, actions: Actions): TemplateResult | typeof nothing {
  const told = (view.score?.remarks ?? []).filter(({ about }) => about === 'voices');
  const lines = linesToChoose(view.lines);
  if (told.length === 0 && lines.length === 0) return nothing;
  return html`<section class="voices-read" aria-label="Voices">
    ${told.map(({ message }) => html`<p><strong>Voices.</strong> ${message}</p>`)}
    ${lines.length === 0 ? nothing : linesForm(view, lines, actions)}
  </section>`;
}

function linesForm({ script, score }: ScriptView, lines: readonly Line[], actions: Actions): TemplateResult {
  return html`<details ?open=${score === undefined}>
    <summary>Which line sings which voice?</summary>
    <form
      @submit=${(event: SubmitEvent) => {
        event.preventDefault();
        const data = new FormData(event.target as HTMLFormElement);
        const chosen = VOICES.flatMap((voice) => (data.get(voice) ? [`${voice}=${data.get(voice)}`] : []));
        const forAll = (event.submitter as HTMLButtonElement | null)?.value === 'all';
        void actions.giveVoices(chosen.join(','), forAll);
      }}
    >
      ${voiceChoices(lines)}
      <button>Read this script so</button>
      <button value="all">Read the whole stack so</button>
      ${
        script.voices === undefined
          ? nothing
          : html`<button type="button" class="quiet" @click=${() => void actions.giveVoices('', false)}>
              Leave it to the file
            </button>`
      }
    </form>
  </details>`;
}
