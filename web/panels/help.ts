/** How the page is used: keys, the text notation, what is checked and what is not. */
import { html, type TemplateResult } from 'lit';
import { KEYS } from '../state/keys.ts';
import type { Settings } from '../state/page.ts';
import type { Panel } from './context.ts';

export function helpView(panel: Panel): TemplateResult {
  const { digits } = panel.state.settings;
  return html`<div class="view help">
    <h1>Help</h1>
    <p class="statement">
      Paste or drop a half-finished harmonisation, or write one on the stave. The marks say what is wrong, where and
      why, and point the way; they never write the answer. They advise: your teacher and the examining body’s own
      criteria decide, and your school’s rules on help with coursework come first.
    </p>
    <h2>Keys on the stave</h2>
    <p>
      Letters name notes and digits count beats, as in the text. They work while the stave has the focus: click on it,
      or press Tab until it has a frame.
    </p>
    ${digitsChoice(panel)} ${keyTables(digits)}
    <p>
      A key writes the key signature’s sharp or flat; an accidental earlier in the bar is not carried on. Dashed boxes
      are beats not written yet: click or tap in one to write the note you point at. Drag a note up or down to move it
      (on a touch screen tap it first). Draw over notes to choose them; with a finger, rest a moment, then draw.
    </p>
    <h2>The text</h2>
    <p>One line for each voice, after a few lines that say what the exercise is:</p>
    <pre class="sample" tabindex="0">${SAMPLE}</pre>
    <dl class="notation-list">
      ${NOTATION.map(
        ([sign, meaning]) => html`<div>
          <dt><code>${sign}</code></dt>
          <dd>${meaning}</dd>
        </div>`,
      )}
    </dl>
    <h2>What is kept, and where</h2>
    <p>
      Everything stays in this browser, as you type. Nothing is sent anywhere. Clearing the browser’s data clears it
      too, so save a file of what matters (Exercises, Save everything).
    </p>
  </div>`;
}

function digitsChoice({ state, actions }: Panel): TemplateResult {
  const { digits } = state.settings;
  return html`<fieldset class="digits">
      <legend>Digits</legend>
      ${(['beats', 'values'] as const).map(
        (mode) => html`<label class="check"
          ><input type="radio" name="digits" .checked=${digits === mode} @change=${() => actions.set({ digits: mode })} />
          <span>${mode === 'beats' ? 'count beats (1 is one beat)' : 'name note values (4 is a crotchet, 8 a quaver)'}</span></label
        >`,
      )}
    </fieldset>`;
}

function keyTables(digits: Settings['digits']): TemplateResult {
  return html`<div class="key-tables">
      ${KEYS.map(
        ({ title, rows }) => html`<table>
          <caption>${title}</caption>
          <tbody>
            ${rows
              .filter((row) => row.digits === undefined || row.digits === digits)
              .map(
                (row) => html`<tr>
                <th scope="row">${(row.shown ?? Object.keys(row.keys)).map((key) => html`<kbd>${key}</kbd> `)}</th>
                <td>${row.does}</td>
              </tr>`,
              )}
          </tbody>
        </table>`,
      )}
    </div>`;
}

const SAMPLE = `title: A tune for practice
key: G major
metre: 4/4
upbeat: 1

S: G4 | G A B D5 | C B4 A*2! |
A: D4 | D D G G  | G G F#*2! |
T: B3 | B A D4 D | ?*4       |
B: G3 | G F# G B | ? ? D3*2! |`;

const NOTATION: readonly (readonly [string, string])[] = [
  ['F#4  Bb3', 'a note with its octave (C4 is middle C); the octave may be left out where it stays the same'],
  ['*2  /2  *3/2', 'longer, shorter, dotted: a note alone is one beat'],
  ['(C5 B4)', 'notes that share one beat'],
  ['=', 'hold the note for one beat more; after a barline it is tied'],
  ['_', 'tie to the next note'],
  ['r', 'a rest'],
  ['?', 'a beat not written yet'],
  ['!', 'a fermata'],
  ['|', 'the end of a bar, which is checked'],
  ['# …', 'a remark of your own, at the start of a line'],
];
