/** The settings of a stack: everything that was given when it was made can be changed. */
import { html, type TemplateResult } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { PROFILES, profileNamed } from '../../../src/profiles/list.ts';
import type { Actions } from '../actions.ts';
import { type StackTexts, textsOf } from '../settings.ts';
import type { DeskState } from '../state.ts';

export function settingsPage({ editing }: DeskState, actions: Actions): TemplateResult {
  if (editing === undefined) return html`<p class="empty">Fetching the settings…</p>`;
  const { base } = editing;
  const texts = textsOf(base);
  const own = profileNamed(base.profile.name) === undefined;
  // Filled anew when they were kept, and never while somebody is writing.
  return html`${keyed(
    base,
    html`<h1>Settings</h1>
      <form class="new-stack settings" @submit=${(event: SubmitEvent) => void submit(event, texts, actions)}>
        <label>Name <input name="name" required maxlength="200" .value=${texts.name} /></label>
        <label>
          House profile
          <select name="profile">
            ${own ? html`<option value=${texts.profile} selected>${texts.profile} (your own)</option>` : ''}
            ${PROFILES.map(
              ({ name, statement }) =>
                html`<option value=${name} title=${statement} ?selected=${name === texts.profile}>${name}</option>`,
            )}
          </select>
        </label>
        <label>A profile of your own (JSON) <input type="file" name="ownProfile" accept=".json" /></label>
        ${textField('brief', 'Brief: the exercise as set', texts.brief, '.txt,text/plain', 8)}
        ${textField('scheme', 'Mark scheme (JSON)', texts.scheme, '.json', 10)}
        ${textField('reference', 'A harmonisation to compare with, as text', texts.reference, '.txt', 6)}
        <label>
          How files are named
          <input name="pattern" placeholder="{candidate}-draft{draft}" .value=${texts.pattern} />
        </label>
        ${secondField(texts.second)}
        <label>
          Which lines of the files sing which voices, where their names don’t say
          <input name="voices" placeholder="S=1, A=2, T=3, B=4" maxlength="100" .value=${texts.voices} />
        </label>
        <p class="aside">
          With another profile or brief, or other voices, every script is reviewed again; what you decided about a finding holds where it
          is found again. Marks that were given stay as they are.
        </p>
        <button>Keep</button>
      </form>`,
  )}`;
}

const SECOND = [
  ['', 'one person'],
  ['open', 'two, the second seeing the first one’s marks'],
  ['blind', 'two, neither seeing the other’s marks before giving their own'],
] as const;

function secondField(second: StackTexts['second']): TemplateResult {
  return html`<label>
    Who marks
    <select name="second">
      ${SECOND.map(([value, words]) => html`<option value=${value} ?selected=${value === second}>${words}</option>`)}
    </select>
  </label>`;
}

function textField(
  name: keyof StackTexts,
  words: string,
  value: string,
  accept: string,
  rows: number,
): TemplateResult {
  return html`<div class="text-field">
    <label>${words} <textarea name=${name} rows=${rows} spellcheck="false" .value=${value}></textarea></label>
    <label class="from-file">
      from a file
      <input
        type="file"
        accept=${accept}
        @change=${async (event: Event) => {
          const input = event.target as HTMLInputElement;
          const [file] = input.files ?? [];
          const field = input.form?.elements.namedItem(name);
          if (file !== undefined && field instanceof HTMLTextAreaElement) field.value = await file.text();
        }}
      />
    </label>
  </div>`;
}

async function submit(event: SubmitEvent, before: StackTexts, actions: Actions): Promise<void> {
  event.preventDefault();
  const data = new FormData(event.target as HTMLFormElement);
  // A form hands line ends over as CR and LF.
  const text = (name: keyof StackTexts): string => {
    const written = String(data.get(name) ?? '').replaceAll('\r\n', '\n');
    return written.trim() === before[name].trim() ? before[name] : written.trim();
  };
  const own = data.get('ownProfile');
  await actions.changeSettings({
    name: text('name'),
    profile: own instanceof File && own.size > 0 ? await own.text() : text('profile'),
    brief: text('brief'),
    scheme: text('scheme') === '' ? before.scheme : text('scheme'),
    pattern: text('pattern'),
    reference: text('reference'),
    second: SECOND.find(([value]) => value === data.get('second'))?.[0] ?? before.second,
    voices: text('voices'),
  });
}
