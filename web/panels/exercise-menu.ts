/** What stands above the music, and its bars. */

import { html, nothing, type TemplateResult } from 'lit';
import { capitalised } from '../../src/english/words.ts';
import { parseKeySignature, parseMetre, printKeySignature } from '../../src/notation/index.ts';
import { beatsAMinute, countedBeat, withSigns } from '../../src/report/sentences.ts';
import { barAt, firstMetre, printBar } from '../../src/score/place.ts';
import { type Bar, endOf, type Score } from '../../src/score/score.ts';
import { printMetre } from '../../src/score/time.ts';
import { addBars, insertBar, removeBar, withHeading, withKey, withMetre } from '../../src/writing/bars.ts';
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
  const metre = firstMetre(score);
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
        <label>Tempo, ${countedBeat(metre).name}s a minute <input name="tempo" type="number" min="5" max="400" step="any" .value=${score.tempo === undefined ? '' : String(beatsAMinute(score.tempo, metre))} /></label>
        <button type="submit">Change</button>
      </form>
      ${bar === undefined ? nothing : fromBarForm(panel, bar)}
      <p class="menu-commands">
        <button type="button" @click=${act(() => actions.rewrite((s) => addBars(s, 1), 'A bar was added at the end.'))}>
          Add a bar at the end
        </button>
        <button
          type="button"
          ?disabled=${bar === undefined}
          @click=${act(() => bar && actions.rewrite((s) => insertBar(s, bar.index), `A bar was put in before ${printBar(bar.number)}.`))}
        >
          Put a bar in before ${bar === undefined ? 'this one' : printBar(bar.number)}
        </button>
        <button
          type="button"
          ?disabled=${score.bars.length < 2}
          @click=${act(() => bar && actions.rewrite((s) => removeBar(s, bar.index), `${capitalised(printBar(bar.number))} was taken away; undo brings it back.`))}
        >
          Take ${bar === undefined ? 'this bar' : printBar(bar.number)} away
        </button>
      </p>
    </div>
  </details>`;
}

/** Key and metre from the caret's bar on. */
function fromBarForm(panel: Panel, bar: Bar): TemplateResult {
  return html`<form
    class="check-form"
    @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      changeFrom(new FormData(event.target as HTMLFormElement), bar, panel);
      (event.target as HTMLElement).closest('details')?.removeAttribute('open');
    }}
  >
    <fieldset>
      <legend>From ${printBar(bar.number)} on</legend>
      <label>Key, such as G major or B♭ minor (B♭ may be typed Bb) <input name="key" .value=${printKeySignature(bar.key)} /></label>
      <label>Metre, such as 4/4 <input name="metre" .value=${printMetre(bar.metre)} /></label>
    </fieldset>
    <button type="submit">Change from ${printBar(bar.number)} on</button>
  </form>`;
}

function changeFrom(form: FormData, bar: Bar, { state, actions }: Panel): void {
  const made = changedFrom(form, bar, state.history.now.score);
  if (typeof made === 'string') actions.say(made, 'refused');
  else actions.rewrite(() => made.score, made.said);
}

/** The score with the key and metre of the form from the bar on, or a sentence saying what is wrong with the form. */
function changedFrom(form: FormData, bar: Bar, score: Score): { score: Score; said: string } | string {
  const key = parseKeySignature(String(form.get('key')).trim());
  const metre = parseMetre(String(form.get('metre')).trim());
  if (key === undefined)
    return 'The key was not understood; a key such as G major, F# minor or 2 flats was expected.';
  if (metre === undefined)
    return 'The metre was not understood; two figures such as 4/4, 3/2 or 6/8 were expected.';
  const sameMetre = metre.beats === bar.metre.beats && metre.unit === bar.metre.unit;
  const barred = sameMetre ? score : withMetre(score, bar.index, metre);
  if (typeof barred === 'string') return barred;
  const said = withSigns(`From ${printBar(bar.number)} on: ${printKeySignature(key)}, ${printMetre(metre)}.`);
  return { score: withKey(barred, bar.index, key), said };
}

function changeHeading(form: FormData, { actions, state }: Panel): void {
  const metre = firstMetre(state.history.now.score);
  const tempo = Number(form.get('tempo')) * countedBeat(metre).crotchets;
  const heading = {
    title: String(form.get('title') ?? '').trim(),
    tempo: tempo >= 10 && tempo <= 400 ? tempo : undefined,
  };
  actions.rewrite((score) => withHeading(score, heading), 'The heading was changed.');
}
