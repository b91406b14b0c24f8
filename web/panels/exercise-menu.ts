/** What stands above the music, and its bars. */

import { html, nothing, type TemplateResult } from 'lit';
import { capitalised } from '../../src/english/words.ts';
import { parseKeySignature, parseMetre, printKeySignature } from '../../src/notation/index.ts';
import { beatsAMinute, countedBeat, printTempo, withSigns } from '../../src/report/sentences.ts';
import { barAt, firstMetre, printBar } from '../../src/score/place.ts';
import { type Bar, endOf, type Score } from '../../src/score/score.ts';
import { tempoWithin } from '../../src/score/tempo.ts';
import { type Metre, printMetre } from '../../src/score/time.ts';
import {
  addBars,
  insertBar,
  removeBar,
  withHeading,
  withKey,
  withMetre,
  withTempo,
} from '../../src/writing/bars.ts';
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
        ${tempoField(score.tempo, metre, 'Tempo at the beginning')}
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

function tempoField(tempo: number | undefined, metre: Metre, name: string): TemplateResult {
  const shown = tempo === undefined ? '' : String(beatsAMinute(tempo, metre));
  return html`<label>${name}, ${countedBeat(metre).name}s a minute <input name="tempo" type="number" min="5" max="400" step="any" .value=${shown} /></label>`;
}

/**
 * Crotchets a minute of what a tempo field holds: as before where it was left alone, undefined where it is empty or
 * can't be a tempo.
 */
function tempoIn(form: FormData, before: number | undefined, metre: Metre): number | undefined {
  const typed = Number(form.get('tempo'));
  if (before !== undefined && typed === beatsAMinute(before, metre)) return before;
  return tempoWithin(typed * countedBeat(metre).crotchets);
}

/** Key, metre and tempo from the caret's bar on. */
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
      ${tempoField(bar.tempo, bar.metre, 'Tempo')}
    </fieldset>
    <button type="submit">Change from ${printBar(bar.number)} on</button>
  </form>`;
}

function changeFrom(form: FormData, bar: Bar, { state, actions }: Panel): void {
  const made = changedFrom(form, bar, state.history.now.score);
  if (typeof made === 'string') actions.say(made, 'refused');
  else actions.rewrite(() => made.score, made.said);
}

/** The score with the key, metre and tempo of the form from the bar on, or a sentence saying what is wrong with the form. */
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
  const tempo = tempoIn(form, bar.tempo, bar.metre);
  if (tempo === undefined && form.get('tempo') !== '')
    return `The tempo was not understood; ${countedBeat(bar.metre).name}s a minute, such as 72, were expected.`;
  const keyed = withKey(barred, bar.index, key);
  const said = [
    printKeySignature(key),
    printMetre(metre),
    ...(tempo === undefined ? [] : [printTempo(tempo, metre)]),
  ];
  return {
    score: tempo === undefined || tempo === bar.tempo ? keyed : withTempo(keyed, bar.index, tempo),
    said: withSigns(`From ${printBar(bar.number)} on: ${said.join(', ')}.`),
  };
}

function changeHeading(form: FormData, { actions, state }: Panel): void {
  const { score } = state.history.now;
  const heading = {
    title: String(form.get('title') ?? '').trim(),
    tempo: tempoIn(form, score.tempo, firstMetre(score)),
  };
  actions.rewrite((score) => withHeading(score, heading), 'The heading was changed.');
}
