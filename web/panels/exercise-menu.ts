/** What stands above the music, and its bars. */
import { html, type TemplateResult } from 'lit';
import { parseKeySignature, printKeySignature } from '../../src/notation/index.ts';
import { barAt } from '../../src/score/place.ts';
import { endOf } from '../../src/score/score.ts';
import { addBars, insertBar, removeBar, withHeading } from '../../src/writing/bars.ts';
import type { Panel } from './context.ts';

export function exerciseMenu(panel: Panel): TemplateResult {
  const { state, actions, commands } = panel;
  const { score } = state.history.now;
  const at = Math.min(state.caret.at, Math.max(0, endOf(score) - 1));
  const bar = score.bars.length > 0 ? barAt(score, at) : undefined;
  const act = (change: () => void) => (event: Event) => {
    (event.target as HTMLElement).closest('details')?.removeAttribute('open');
    change();
    commands.focusStave();
  };
  return html`<details class="menu exercise-menu">
    <summary class="button">Exercise</summary>
    <div class="menu-body">
      <form
        class="check-form"
        @submit=${(event: SubmitEvent) => {
          event.preventDefault();
          changeHeading(new FormData(event.target as HTMLFormElement), panel);
          (event.target as HTMLElement).closest('details')?.removeAttribute('open');
        }}
      >
        <label>Title <input name="title" maxlength="80" .value=${score.title} /></label>
        <label>Key, such as G major or F# minor <input name="key" .value=${bar ? printKeySignature(score.bars[0]!.key) : 'C major'} /></label>
        <label>Tempo, crotchets a minute <input name="tempo" type="number" min="10" max="400" .value=${String(score.tempo ?? '')} /></label>
        <button type="submit">Change</button>
      </form>
      <p class="menu-commands">
        <button type="button" @click=${act(() => actions.rewrite((s) => addBars(s, 1), 'A bar was added at the end.'))}>
          Add a bar at the end
        </button>
        <button
          type="button"
          ?disabled=${bar === undefined}
          @click=${act(() => bar && actions.rewrite((s) => insertBar(s, bar.index), `A bar was put in before bar ${bar.number}.`))}
        >
          Put a bar in before bar ${bar?.number ?? ''}
        </button>
        <button
          type="button"
          ?disabled=${score.bars.length < 2}
          @click=${act(() => bar && actions.rewrite((s) => removeBar(s, bar.index), `Bar ${bar.number} was taken away; undo brings it back.`))}
        >
          Take bar ${bar?.number ?? ''} away
        </button>
      </p>
      <p class="aside">The metre is changed in the text.</p>
    </div>
  </details>`;
}

function changeHeading(form: FormData, { actions }: Panel): void {
  const key = parseKeySignature(String(form.get('key')).trim());
  if (key === undefined) {
    actions.say(
      'The key was not understood; a key such as G major, F# minor or 2 flats was expected.',
      'refused',
    );
    return;
  }
  const tempo = Number(form.get('tempo'));
  const heading = {
    title: String(form.get('title') ?? '').trim(),
    tempo: tempo >= 10 && tempo <= 400 ? tempo : undefined,
    key,
  };
  actions.rewrite((score) => withHeading(score, heading), 'The heading was changed.');
}
