/** The exercises on this machine: begin, open, go back to an earlier version, take away, save and bring in. */
import { html, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { ShelfEntry, Version } from '../state/page.ts';
import type { Panel } from './context.ts';

const KEYS = [
  'C major',
  'G major',
  'D major',
  'A major',
  'E major',
  'B major',
  'F major',
  'Bb major',
  'Eb major',
  'Ab major',
  'A minor',
  'E minor',
  'B minor',
  'F# minor',
  'C# minor',
  'D minor',
  'G minor',
  'C minor',
  'F minor',
  'Bb minor',
] as const;
const METRES = ['4/4', '3/4', '2/4', '3/2', '2/2', '4/2', '6/8', '6/4'] as const;

export function shelfView(panel: Panel): TemplateResult {
  return html`<div class="view shelf">
    <h1>Exercises</h1>
    <div class="shelf-columns">
      <section aria-labelledby="kept-here">
        <h2 id="kept-here">Kept in this browser</h2>
        <ul class="shelf-list">
          ${repeat(
            panel.state.shelf,
            (entry) => entry.id,
            (entry) => entryView(panel, entry),
          )}
        </ul>
        <p class="shelf-commands">
          <button type="button" @click=${() => panel.commands.save('everything')}>Save everything as one file</button>
        </p>
        <p class="aside">Bring files in with Open on the Write page, by dropping them, or by pasting their text.</p>
      </section>
      ${newForm(panel)} ${versionsView(panel)}
    </div>
  </div>`;
}

function entryView({ state, shelf, actions }: Panel, entry: ShelfEntry): TemplateResult {
  const here = entry.id === state.exercise.id;
  return html`<li class=${here ? 'here' : ''}>
    <button
      type="button"
      class="entry"
      aria-current=${here ? 'true' : nothing}
      @click=${async () => {
        await shelf.open(entry.id);
        location.hash = '#write';
      }}
    >
      <span class="entry-title">${entry.title}</span>
      <span class="aside">${timeWords(entry.changed)}${here ? ' · open now' : ''}</span>
    </button>
    <button
      type="button"
      class="quiet"
      aria-label="Take away ${entry.title}"
      @click=${async () => {
        if (
          !confirm(
            `Take “${entry.title}” and its earlier versions away from this browser? This can't be undone.`,
          )
        )
          return;
        await shelf.remove(entry.id);
        actions.say(`“${entry.title}” was taken away.`);
      }}
    >
      Take away
    </button>
  </li>`;
}

function newForm({ commands }: Panel): TemplateResult {
  return html`<section aria-labelledby="begin">
    <h2 id="begin">Begin a new one</h2>
    <form
      class="new-exercise"
      @submit=${(event: SubmitEvent) => {
        event.preventDefault();
        commands.newExercise(new FormData(event.target as HTMLFormElement));
      }}
    >
      <label>Title <input name="title" maxlength="80" autocomplete="off" /></label>
      <label>Key <select name="key">${KEYS.map((key) => html`<option>${key}</option>`)}</select></label>
      <label>Metre <select name="metre">${METRES.map((metre) => html`<option>${metre}</option>`)}</select></label>
      <label>Upbeat, in beats <input name="upbeat" type="number" min="0" max="5" step="0.5" value="0" /></label>
      <label>Bars <input name="bars" type="number" min="1" max="200" value="8" /></label>
      <label>Tempo, beats a minute <input name="tempo" type="number" min="30" max="240" value="72" /></label>
      <button type="submit" class="main-action">Begin</button>
    </form>
  </section>`;
}

function versionsView(panel: Panel): TemplateResult {
  const { shelf, actions } = panel;
  const { versions } = panel.state;
  return html`<section aria-labelledby="earlier">
    <h2 id="earlier">Earlier versions of the one open now</h2>
    <form
      class="keep-version"
      @submit=${async (event: SubmitEvent) => {
        event.preventDefault();
        const form = event.target as HTMLFormElement;
        const label = String(new FormData(form).get('label') ?? '').trim();
        await shelf.keepVersion(label === '' ? 'kept by hand' : label);
        form.reset();
        actions.say('This version is kept.');
      }}
    >
      <label>Keep it as it is now, under the name <input name="label" maxlength="60" autocomplete="off" /></label>
      <button type="submit">Keep</button>
    </form>
    ${
      versions.length === 0
        ? html`<p class="aside">None yet. One is kept by itself every ten minutes of work.</p>`
        : html`<ul class="shelf-list">
            ${repeat(
              versions,
              (version) => version.key,
              (version) => versionRow(panel, version),
            )}
          </ul>`
    }
  </section>`;
}

function versionRow({ shelf, actions }: Panel, version: Version): TemplateResult {
  return html`<li>
    <span class="entry">
      <span class="entry-title">${version.label}</span>
      <span class="aside">${timeWords(version.when)}</span>
    </span>
    <button
      type="button"
      class="quiet"
      @click=${async () => {
        await shelf.goBackTo(version);
        location.hash = '#write';
        actions.say('The earlier version is open; undo takes you back.');
      }}
    >
      Go back to it
    </button>
  </li>`;
}

const DAY_AND_TIME = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

function timeWords(when: number): string {
  return DAY_AND_TIME.format(when);
}
