/** Handing in: the brief, the last check, and the report of it. */
import { html, nothing, type TemplateResult } from 'lit';
import { printDuration, readBrief } from '../../src/brief/brief.ts';
import { HELP_WORDS, HELPS } from '../../src/brief/helps.ts';
import {
  type CheckDetail,
  type CheckItem,
  lastCheck,
  type Verdict,
  WHO_DECIDES,
} from '../../src/brief/last-check.ts';
import { compareWithGiven } from '../../src/desk/given.ts';
import { VOICE_WORDS, VOICES } from '../../src/score/score.ts';
import { USUAL_TEMPO } from '../sound/timeline.ts';
import { isSitting, sitting } from '../state/brief.ts';
import { titleOf } from '../state/work.ts';
import type { Panel } from './context.ts';

/** Six minutes for both compositions together is a common requirement; common practice, no source. */
const USUAL_TOGETHER = 360;

const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  done: 'done',
  'not yet': 'not yet',
  look: 'look again',
};

export function checkView(panel: Panel): TemplateResult {
  const { state } = panel;
  const items = checkItems(panel);
  return html`<div class="view check">
    <section class="report" aria-labelledby="last-check">
      <h1 id="last-check">Last check</h1>
      <p class="statement report-title">${titleOf(state.history.now.score)}</p>
      ${sitting(state) === '' ? nothing : html`<p class="sitting">${sitting(state)}</p>`}
      ${
        items === undefined
          ? html`<p class="empty">Reading the harmony…</p>`
          : html`<ol class="check-items">
              ${items.map((item) => itemView(panel, item))}
            </ol>`
      }
      <p class="who-decides">${WHO_DECIDES}</p>
      <div class="check-commands">
        <button type="button" class="main-action" @click=${() => panel.commands.print()}>Print this report</button>
        <button type="button" @click=${() => panel.commands.save('report')}>Save it as text</button>
      </div>
    </section>
    <section class="brief-side" aria-labelledby="brief-head">
      <h2 id="brief-head">The brief</h2>
      ${briefState(panel)} ${otherForm(panel)} ${briefForm(panel)}
    </section>
  </div>`;
}

/** The points of the check; undefined while no review is there yet. */
export function checkItems({ state }: Pick<Panel, 'state'>): CheckItem[] | undefined {
  if (state.reviewed === undefined) return undefined;
  const { brief: text, notes, otherSeconds } = state.exercise;
  const brief = text === '' ? undefined : readBrief(text).brief;
  return lastCheck({
    review: state.reviewed.review,
    ...(brief && { brief, given: compareWithGiven(brief.score, state.reviewed.review.score) }),
    notes,
    usualTempo: USUAL_TEMPO,
    otherSeconds,
    leastTogetherSeconds: USUAL_TOGETHER,
  });
}

function itemView(panel: Panel, item: CheckItem): TemplateResult {
  return html`<li class="check-item ${item.verdict.replace(' ', '-')}">
    <h2>${item.title} <span class="verdict-word">${VERDICT_WORDS[item.verdict]}</span></h2>
    <p>${item.sentence}</p>
    ${
      item.details.length === 0
        ? nothing
        : html`<ul class="details">
            ${item.details.map((detail) => detailView(panel, detail))}
          </ul>`
    }
  </li>`;
}

function detailView({ actions, commands, state }: Panel, detail: CheckDetail): TemplateResult {
  const { at, finding } = detail;
  return html`<li>
    ${detail.text}
    ${
      at === undefined
        ? nothing
        : html`<button
            type="button"
            class="place-link"
            @click=${() => {
              location.hash = '#write';
              if (finding === undefined) actions.setCaret(state.caret.voice, at);
              else actions.choose(finding);
              commands.showPlace(at);
            }}
          >
            Show
          </button>`
    }
  </li>`;
}

function briefState({ state, actions, commands }: Panel): TemplateResult {
  const { brief } = state.exercise;
  if (brief === '')
    return html`<p>
        No brief is laid beside this exercise, so nobody can tell whether what was given is unchanged. Open the file
        your teacher gave you:
      </p>
      <label class="button file"
        >Lay a brief beside it<input
          class="visually-hidden"
          type="file"
          accept=".txt,.brief,text/plain"
          @change=${async (event: Event) => {
            const file = (event.target as HTMLInputElement).files?.[0];
            if (file === undefined) return;
            const text = await file.text();
            const { problems } = readBrief(text);
            const [first] = problems;
            if (first === undefined) actions.setBrief(text);
            else
              actions.say(
                `${file.name}, line ${first.line}, column ${first.column}: ${first.message}`,
                'failed',
              );
          }}
      /></label>`;
  const { brief: read } = readBrief(brief);
  return html`<p>
      Set as: ${titleOf(read.score)}. ${read.task === '' ? '' : `Asked for: ${read.task}.`}
      ${read.leastSeconds === undefined ? '' : `At least ${printDuration(read.leastSeconds)} long.`}
    </p>
    <p>
      ${isSitting(state) ? nothing : html`<button type="button" @click=${() => actions.setBrief('')}>Take the brief away</button>`}
      <button type="button" @click=${() => commands.save('brief')}>Save it</button>
    </p>`;
}

function otherForm({ state, actions }: Panel): TemplateResult {
  const { otherSeconds } = state.exercise;
  const take = (event: Event): void => {
    const form = (event.target as HTMLElement).closest('fieldset')!;
    const [minutes, seconds] = [...form.querySelectorAll('input')].map((input) => Number(input.value) || 0);
    actions.setOtherSeconds(Math.max(0, Math.min(7200, minutes! * 60 + seconds!)));
  };
  return html`<fieldset class="duration">
    <legend>Is it handed in with another composition? How long does that one last?</legend>
    <label>Minutes <input type="number" min="0" max="60" .value=${String(Math.floor(otherSeconds / 60))} @change=${take} /></label>
    <label>Seconds <input type="number" min="0" max="59" .value=${String(otherSeconds % 60)} @change=${take} /></label>
  </fieldset>`;
}

/** A teacher makes a brief of the exercise that is open: which voices are given, what is asked for. */
function briefForm({ commands }: Panel): TemplateResult {
  return html`<details class="make-brief">
    <summary>Make a brief of the open exercise (for teachers)</summary>
    <form
      class="check-form"
      @submit=${(event: SubmitEvent) => {
        event.preventDefault();
        commands.makeBrief(new FormData(event.target as HTMLFormElement));
      }}
    >
      <fieldset>
        <legend>What is given?</legend>
        ${VOICES.map(
          (voice) => html`<label
            >${VOICE_WORDS[voice]}
            <select name="given-${voice}">
              <option value="all" ?selected=${voice === 'S'}>all of it</option>
              <option value="none" ?selected=${voice !== 'S'}>nothing</option>
              <option value="caret">up to the caret</option>
            </select></label
          >`,
        )}
      </fieldset>
      <label>What is asked for <input name="task" maxlength="200" value="Add alto, tenor and bass" /></label>
      <label>Least length (min:sec) <input name="least" pattern="[0-9]{1,3}:[0-5][0-9]" placeholder="0:45" /></label>
      <label
        >Least length with the other composition
        <input name="together" pattern="[0-9]{1,3}:[0-5][0-9]" value=${printDuration(USUAL_TOGETHER)}
      /></label>
      <fieldset>
        <legend>Set it without</legend>
        ${HELPS.map((help) => html`<label><input type="checkbox" name="without" value=${help} /> ${HELP_WORDS[help]}</label>`)}
      </fieldset>
      <button type="submit">Save the brief</button>
      ${location.protocol === 'file:' ? nothing : html`<button type="button" @click=${commands.setAtDesk}>Set it at the desk</button>`}
    </form>
  </details>`;
}
