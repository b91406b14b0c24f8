/** The tools over the stave: everything the keys do, for a mouse or a finger. */
import { html, nothing, type TemplateResult } from 'lit';
import { VOICE_WORDS, VOICES } from '../../src/score/score.ts';
import { withholds } from '../state/brief.ts';
import type { BeatLength, PageState } from '../state/page.ts';
import { endsPhrase } from '../state/writing.ts';
import type { Panel } from './context.ts';
import { exerciseMenu } from './exercise-menu.ts';
import { filePicker } from './file-picker.ts';
import { FERMATA, LOCK, PLAY, REDO, STOP, TIE, UNDO } from './icons.ts';
import { shownMenu } from './shown.ts';

interface LengthTool {
  readonly length: BeatLength;
  readonly sign: string;
  readonly name: string;
  readonly key: string;
}

const beats = (sign: string, numerator: number, denominator: number, key: string): LengthTool => ({
  length: { numerator, denominator },
  sign,
  name: `${sign} ${numerator > 1 ? 'beats' : 'beat'}`,
  key,
});
const value = (name: string, denominator: number, key: string): LengthTool => ({
  length: { numerator: 1, denominator, of: 'semibreve' },
  sign: `1/${denominator}`,
  name,
  key,
});

/** The lengths on offer, counted as the digits are set to count. */
const LENGTHS: Readonly<Record<PageState['settings']['digits'], readonly LengthTool[]>> = {
  beats: [
    beats('¼', 1, 4, '6'),
    beats('½', 1, 2, '5'),
    beats('1', 1, 1, '1'),
    beats('2', 2, 1, '2'),
    beats('3', 3, 1, '3'),
    beats('4', 4, 1, '4'),
  ],
  values: [
    value('semiquaver', 16, '6'),
    value('quaver', 8, '8'),
    value('crotchet', 4, '4'),
    value('minim', 2, '2'),
    value('semibreve', 1, '1'),
  ],
};

const sameLength = (a: BeatLength, b: BeatLength): boolean =>
  a.numerator === b.numerator && a.denominator === b.denominator && a.of === b.of;

/**
 * The tools. `data-thumb` gives those that writing needs their place at the lower edge of a phone, in two rows of
 * eight; the others are in the Edit menu there.
 */
export function toolsView(panel: Panel): TemplateResult {
  const { state, actions, commands } = panel;
  const stave = (act: () => void) => () => {
    act();
    // The stave has the focus again, so that writing goes on.
    commands.focusStave();
  };
  return html`<div class="tools" role="group" aria-label="Tools">
    <div class="group files" role="group" aria-label="File">
      ${filePicker(panel, 'Open')} ${saveMenu(panel)} ${exerciseMenu(panel)} ${editMenu(panel)} ${shownMenu(panel)}
    </div>
    <div class="strip">
      <div class="group" role="group" aria-label="Back and forth">
        ${tool({ name: 'Undo', sign: UNDO, key: 'Ctrl Z', act: stave(actions.undo), off: state.history.past.length === 0, thumb: 15 })}
        ${tool({ name: 'Redo', sign: REDO, key: 'Ctrl Y', act: stave(actions.redo), off: state.history.future.length === 0 })}
      </div>
      ${voiceTools(panel)} ${lengthTools(panel)}
      <div class="group" role="group" aria-label="The note at the caret">
        ${tool({ name: 'Flat', sign: '♭', key: '-', act: stave(() => actions.accidental(-1)), thumb: 6 })}
        ${tool({ name: 'Natural', sign: '♮', key: 'N', act: stave(() => actions.accidental(0)), thumb: 7 })}
        ${tool({ name: 'Sharp', sign: '♯', key: '#', act: stave(() => actions.accidental(1)), thumb: 8 })}
        ${tool({ name: 'Tie', sign: TIE, key: 'T', act: stave(actions.tie) })}
        ${tool({ name: 'Pause sign (fermata)', sign: FERMATA, key: 'P', act: stave(actions.fermata) })}
        ${tool({ name: 'Rest', sign: 'Rest', key: 'R', act: stave(actions.writeRest) })}
        ${tool({ name: 'Erase', sign: html`<span class="long">Erase</span><span class="short">⌫</span>`, key: 'Delete', act: stave(actions.erase), thumb: 13 })}
      </div>
      <div class="group thumbs-only" role="group" aria-label="Up and down">
        ${tool({ name: 'A step up', sign: '↑', key: '↑', act: stave(() => actions.step(1)), thumb: 9 })}
        ${tool({ name: 'A step down', sign: '↓', key: '↓', act: stave(() => actions.step(-1)), thumb: 10 })}
        ${tool({ name: '8↑, an octave up', sign: '8↑', key: 'Shift ↑', act: stave(() => actions.octave(1)), thumb: 11 })}
        ${tool({ name: '8↓, an octave down', sign: '8↓', key: 'Shift ↓', act: stave(() => actions.octave(-1)), thumb: 12 })}
        ${withholds(state, 'playback') ? nothing : tool({ name: state.playing ? 'Stop' : 'Play', sign: state.playing ? STOP : PLAY, key: 'Space', act: commands.playOrStop, thumb: 16 })}
      </div>
    </div>
  </div>`;
}

function voiceTools({ state, actions, commands }: Panel): TemplateResult {
  const { locked } = state.exercise;
  return html`<div class="group voices" role="group" aria-label="Voice to write">
    ${VOICES.map(
      (voice, i) => html`<button
        type="button"
        class="toggle"
        data-thumb=${i + 1}
        title=${`Write the ${VOICE_WORDS[voice]}`}
        aria-label=${`${voice}, ${VOICE_WORDS[voice]}${locked.includes(voice) ? ', locked' : ''}`}
        aria-pressed=${state.caret.voice === voice}
        @click=${() => {
          actions.setCaret(voice, state.caret.at);
          commands.focusStave();
        }}
      >
        ${voice}${locked.includes(voice) ? LOCK : nothing}
      </button>`,
    )}
    <button
      type="button"
      class="toggle wide"
      data-thumb="14"
      aria-pressed=${locked.includes(state.caret.voice)}
      title="A locked voice can't be changed by accident"
      @click=${() => actions.toggleLock(state.caret.voice)}
    >
      Lock <span class="which">${VOICE_WORDS[state.caret.voice]}</span>
    </button>
  </div>`;
}

function lengthTools({ state, actions, commands }: Panel): TemplateResult {
  const tools = LENGTHS[state.settings.digits];
  const choose = (length: BeatLength, dotted: boolean): void => {
    actions.setLength(length);
    if (dotted) actions.toggleDotted();
    commands.focusStave();
  };
  return html`<div class="group" role="group" aria-label="Length in beats">
    ${tools.map(
      ({ length, sign, name, key }) => html`<button
        type="button"
        class="toggle"
        aria-label=${name}
        aria-pressed=${sameLength(state.length, length)}
        title=${`${name} (key ${key})`}
        @click=${() => choose(length, false)}
      >
        ${sign}
      </button>`,
    )}
    <button
      type="button"
      class="toggle"
      aria-label="1· dotted"
      aria-pressed=${state.dotted}
      title="Dotted: half as long again (key .)"
      @click=${() => {
        actions.toggleDotted();
        commands.focusStave();
      }}
    >
      1·
    </button>
    <select
      class="thumbs-only"
      data-thumb="5"
      aria-label="Length of the next note"
      @change=${(event: Event) => {
        const [index, dotted] = (event.target as HTMLSelectElement).value.split(' ');
        choose(tools[Number(index)]!.length, dotted === 'dotted');
      }}
    >
      ${tools.flatMap(({ length, sign }, i) =>
        [false, true].map(
          (dotted) => html`<option
            value=${`${i}${dotted ? ' dotted' : ''}`}
            .selected=${sameLength(state.length, length) && state.dotted === dotted}
          >
            ${sign}${dotted ? '·' : ''}
          </option>`,
        ),
      )}
    </select>
  </div>`;
}

interface Tool {
  readonly name: string;
  readonly sign: string | TemplateResult;
  readonly key: string;
  readonly act: () => void;
  readonly off?: boolean;
  /** Its place at the lower edge of a phone, 1 to 16. */
  readonly thumb?: number;
}

function tool({ name, sign, key, act, off = false, thumb }: Tool): TemplateResult {
  return html`<button
    type="button"
    aria-label=${name}
    title=${`${name} (${key})`}
    data-thumb=${thumb ?? nothing}
    ?disabled=${off}
    @click=${act}
  >
    ${sign}
  </button>`;
}

/** What is done with all that is chosen; and what a phone has no room for at its edge. */
function editMenu({ state, actions, commands }: Panel): TemplateResult {
  const item = (words: string, act: () => void, off = false) =>
    html`<li><button type="button" ?disabled=${off} @click=${(event: Event) =>
      closing(event, () => {
        act();
        commands.focusStave();
      })}>${words}</button></li>`;
  const none = state.stretch === undefined;
  return html`<details class="menu">
    <summary class="button">Edit</summary>
    <ul>
      ${item('Copy', commands.copyChosen, none)}
      ${item(
        'Cut',
        () => {
          commands.copyChosen();
          actions.erase();
        },
        none,
      )}
      ${item('Paste notes at the caret', () => state.copied && actions.paste(state.copied), state.copied === undefined)}
      ${item('Choose everything', actions.chooseAll)}
      ${item('Let go', actions.letGo, none && state.chosen === undefined)}
      ${item('Rest here', actions.writeRest)}
      ${item('Tie to the next note', actions.tie)}
      ${item('Fermata here', actions.fermata)}
      ${item(endsPhrase(state) ? 'No phrase ends here' : 'A phrase ends here', actions.togglePhraseEnd)}
      ${item('Redo what was undone', actions.redo, state.history.future.length === 0)}
    </ul>
  </details>`;
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
