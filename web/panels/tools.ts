/** The tools over the stave: everything the keys do, for a mouse or a finger. */
import { html, nothing, type TemplateResult } from 'lit';
import { VOICE_WORDS, VOICES } from '../../src/score/score.ts';
import type { BeatLength } from '../state/page.ts';
import type { Panel } from './context.ts';
import { exerciseMenu } from './exercise-menu.ts';
import { filePicker } from './file-picker.ts';
import { FERMATA, LOCK, REDO, TIE, UNDO } from './icons.ts';
import { shownMenu } from './shown.ts';

const LENGTHS: readonly {
  readonly length: BeatLength;
  readonly sign: string;
  readonly name: string;
  readonly key: string;
}[] = [
  { length: { numerator: 1, denominator: 4 }, sign: '¼', name: '¼ beat', key: '6' },
  { length: { numerator: 1, denominator: 2 }, sign: '½', name: '½ beat', key: '5' },
  { length: { numerator: 1, denominator: 1 }, sign: '1', name: '1 beat', key: '1' },
  { length: { numerator: 2, denominator: 1 }, sign: '2', name: '2 beats', key: '2' },
  { length: { numerator: 3, denominator: 1 }, sign: '3', name: '3 beats', key: '3' },
  { length: { numerator: 4, denominator: 1 }, sign: '4', name: '4 beats', key: '4' },
];

export function toolsView(panel: Panel): TemplateResult {
  const { state, actions, commands } = panel;
  return html`<div class="tools" role="group" aria-label="Tools">
    <div class="group" role="group" aria-label="File">
      ${filePicker(panel, 'Open')}
      ${saveMenu(panel)} ${exerciseMenu(panel)} ${shownMenu(panel)}
    </div>
    <div class="strip">
    <div class="group" role="group" aria-label="Back and forth">
      ${tool('Undo', UNDO, 'Ctrl Z', actions.undo, state.history.past.length === 0)}
      ${tool('Redo', REDO, 'Ctrl Y', actions.redo, state.history.future.length === 0)}
    </div>
    <div class="group voices" role="group" aria-label="Voice to write">
      ${VOICES.map(
        (voice) => html`<button
          type="button"
          class="toggle"
          title=${`Write the ${VOICE_WORDS[voice]}`}
          aria-label=${`${voice}, ${VOICE_WORDS[voice]}${state.exercise.locked.includes(voice) ? ', locked' : ''}`}
          aria-pressed=${state.caret.voice === voice}
          @click=${() => keepFocus(commands.focusStave, () => actions.setCaret(voice, state.caret.at))}
        >
          ${voice}${state.exercise.locked.includes(voice) ? LOCK : nothing}
        </button>`,
      )}
      <button
        type="button"
        class="toggle wide"
        aria-pressed=${state.exercise.locked.includes(state.caret.voice)}
        title="A locked voice can't be changed by accident"
        @click=${() => actions.toggleLock(state.caret.voice)}
      >
        Lock <span class="which">${VOICE_WORDS[state.caret.voice]}</span>
      </button>
    </div>
    <div class="group" role="group" aria-label="Length in beats">
      ${LENGTHS.map(({ length, sign, name, key }) => {
        const chosen =
          state.length.numerator === length.numerator && state.length.denominator === length.denominator;
        return html`<button
          type="button"
          class="toggle"
          aria-label=${name}
          aria-pressed=${chosen}
          title=${`${name} (key ${key})`}
          @click=${() => keepFocus(commands.focusStave, () => actions.setLength(length))}
        >
          ${sign}
        </button>`;
      })}
      <button
        type="button"
        class="toggle"
        aria-label="1· dotted"
        aria-pressed=${state.dotted}
        title="Dotted: half as long again (key .)"
        @click=${() => keepFocus(commands.focusStave, actions.toggleDotted)}
      >
        1·
      </button>
    </div>
    <div class="group" role="group" aria-label="The note at the caret">
      ${tool('Sharp', '♯', '#', () => keepFocus(commands.focusStave, () => actions.accidental(1)))}
      ${tool('Flat', '♭', '-', () => keepFocus(commands.focusStave, () => actions.accidental(-1)))}
      ${tool('Natural', '♮', 'N', () => keepFocus(commands.focusStave, () => actions.accidental(0)))}
      ${tool('Tie', TIE, 'T', () => keepFocus(commands.focusStave, actions.tie))}
      ${tool('Pause sign (fermata)', FERMATA, 'P', () => keepFocus(commands.focusStave, actions.fermata))}
      ${tool('Rest', 'Rest', 'R', () => keepFocus(commands.focusStave, actions.writeRest))}
      ${tool('Erase', 'Erase', 'Delete', () => keepFocus(commands.focusStave, actions.erase))}
    </div>
    </div>
  </div>`;
}

function tool(
  name: string,
  sign: string | TemplateResult,
  key: string,
  act: () => void,
  off = false,
): TemplateResult {
  return html`<button type="button" aria-label=${name} title=${`${name} (${key})`} ?disabled=${off} @click=${act}>
    ${sign}
  </button>`;
}

/** After a tool the stave has the focus again, so that writing goes on. */
function keepFocus(focusStave: () => void, act: () => void): void {
  act();
  focusStave();
}

function saveMenu({ commands }: Panel): TemplateResult {
  const item = (what: Parameters<typeof commands.save>[0], words: string) =>
    html`<li><button type="button" @click=${(event: Event) => closing(event, () => commands.save(what))}>${words}</button></li>`;
  return html`<details class="menu">
    <summary class="button">Save</summary>
    <ul>
      ${item('text', 'As text')}
      ${item('musicxml', 'As MusicXML')}
      ${item('annotated', 'As MusicXML with the marks')}
      ${item('midi', 'As MIDI')}
      <li><button type="button" @click=${(event: Event) => closing(event, () => commands.print())}>Print, or save as PDF</button></li>
    </ul>
  </details>`;
}

function closing(event: Event, act: () => void): void {
  (event.target as HTMLElement).closest('details')?.removeAttribute('open');
  act();
}
