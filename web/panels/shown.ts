/** What is shown on the stave, and how. */
import { html, type TemplateResult } from 'lit';
import { capitalised } from '../../src/english/words.ts';
import { LABEL_STYLES, type LabelStyle } from '../../src/harmony/words/labels.ts';
import { FAMILIES, type Family } from '../../src/rules/rule.ts';
import type { Settings, Shown } from '../state/page.ts';
import { profilesOnOffer } from '../state/profiles.ts';
import type { Panel } from './context.ts';

const LAYER_WORDS: Readonly<Record<Exclude<keyof Shown, 'findings' | 'remarks'>, string>> = {
  numerals: 'Chord labels',
  figuredBass: 'Figured bass',
  keys: 'Keys',
  ornaments: 'Non-harmony notes',
  cadences: 'Cadences',
  lyrics: 'Words',
};
const LAYERS = Object.keys(LAYER_WORDS) as (keyof typeof LAYER_WORDS)[];

const LABEL_WORDS: Readonly<Record<LabelStyle, string>> = {
  figures: 'V65, ii6: figured numerals',
  letters: 'V7b, iib: inversion letters',
  'capital letters': 'V7b, IImb: letters, all capitals',
  'figured bass': '65, 6: figures alone',
};

export function shownMenu(panel: Panel): TemplateResult {
  const { state, actions } = panel;
  const { settings } = state;
  const { shown } = settings;
  const families = shown.findings === 'all' ? FAMILIES : shown.findings;
  const toggleFamily = (family: Family): void => {
    const next = families.includes(family) ? families.filter((f) => f !== family) : [...families, family];
    actions.setShown({ findings: next.length === FAMILIES.length ? 'all' : next });
  };
  return html`<details class="menu shown">
    <summary class="button">Show</summary>
    <div class="menu-body">
      <fieldset>
        <legend>On the stave</legend>
        ${LAYERS.map((name) => check(LAYER_WORDS[name], shown[name], () => actions.setShown({ [name]: !shown[name] })))}
      </fieldset>
      <fieldset>
        <legend>Marks</legend>
        ${check('Remarks as well as faults and queries', shown.remarks, () => actions.setShown({ remarks: !shown.remarks }))}
        ${FAMILIES.map((family) => check(sentenceCase(family), families.includes(family), () => toggleFamily(family)))}
      </fieldset>
      <fieldset>
        <legend>Chords are written</legend>
        ${LABEL_STYLES.map((style) =>
          radio('labels', LABEL_WORDS[style], settings.labels === style, () =>
            actions.set({ labels: style }),
          ),
        )}
      </fieldset>
      ${profileChoice(panel)} ${pageChoice(panel)}
    </div>
  </details>`;
}

function profileChoice({ state: { settings }, actions, commands }: Panel): TemplateResult {
  return html`<fieldset>
        <legend>House profile</legend>
        ${profilesOnOffer(settings).map((profile) =>
          radio(
            'profile',
            html`<strong>${profile.name}</strong> ${profile.statement}`,
            settings.profile === profile.name,
            () => actions.set({ profile: profile.name }),
          ),
        )}
        <label class="button file"
          >Open a profile of your own<input
            class="visually-hidden"
            type="file"
            accept=".json,application/json"
            @change=${(event: Event) => {
              const input = event.target as HTMLInputElement;
              const file = input.files?.[0];
              if (file) commands.openProfile(file);
              input.value = '';
            }}
        /></label>
      </fieldset>`;
}

function pageChoice({ state: { settings }, actions }: Panel): TemplateResult {
  return html`<fieldset>
        <legend>Page</legend>
        ${(['system', 'light', 'dark'] as const).map((theme) =>
          radio('theme', THEME_WORDS[theme], settings.theme === theme, () => actions.set({ theme })),
        )}
        <label class="scale"
          >Size of the music
          <input
            type="range"
            min="0.6"
            max="2"
            step="0.1"
            .value=${String(settings.scale)}
            @input=${(event: Event) => actions.set({ scale: Number((event.target as HTMLInputElement).value) })}
        /></label>
        ${check('Sound the notes as I write', settings.soundNotes, () => actions.set({ soundNotes: !settings.soundNotes }))}
        ${check('I am the teacher: show ways out', settings.teacher, () => actions.set({ teacher: !settings.teacher }))}
      </fieldset>`;
}

const THEME_WORDS: Readonly<Record<Settings['theme'], string>> = {
  system: 'Light or dark as the machine is',
  light: 'Paper and ink',
  dark: 'Chalk on slate',
};

function check(words: string, on: boolean, toggle: () => void): TemplateResult {
  return html`<label class="check"><input type="checkbox" .checked=${on} @change=${toggle} /> ${words}</label>`;
}

function radio(
  group: string,
  words: string | TemplateResult,
  on: boolean,
  choose: () => void,
): TemplateResult {
  return html`<label class="check"
    ><input type="radio" name=${group} .checked=${on} @change=${choose} /> <span>${words}</span></label
  >`;
}

function sentenceCase(words: string): string {
  return capitalised(words);
}
