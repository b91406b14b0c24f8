/** What was found, slip by slip, and what can be decided about each finding. */
import { html, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { type FindingGroup, groupsOf, numbersOf } from '../../../src/desk/index.ts';
import type { Judged } from '../../../src/desk/wire-shapes.ts';
import { printVoices } from '../../../src/report/sentences.ts';
import type { Actions } from '../actions.ts';
import { wordsFor } from '../deciding.ts';
import { reasonTyped } from '../keys.ts';
import { barInWords, beatInWords } from '../places.ts';
import type { DeskState } from '../state.ts';
import { writingForm } from './remarks.ts';

export function findingsPart(state: DeskState, actions: Actions): TemplateResult {
  const findings = state.script?.findings ?? [];
  const numbers = numbersOf(findings);
  const groups = groupsOf(findings);
  const item = (finding: Judged): TemplateResult =>
    findingView(finding, numbers.get(finding.id)!, state, actions);
  return html`${findings.length === 0 ? html`<p class="empty">Nothing was found.</p>` : nothing}
    <ol class="findings">
      ${repeat(
        groups,
        ({ findings: [first] }) => first!.id,
        (group) =>
          group.findings.length === 1 ? item(group.findings[0]!) : groupView(group, state, actions, item),
      )}
    </ol>`;
}

/** Several findings of one slip, or the slip made again: folded until one of them is under hand. */
function groupView(
  group: FindingGroup<Judged>,
  { chosen }: DeskState,
  actions: Actions,
  item: (finding: Judged) => TemplateResult,
): TemplateResult {
  const { findings, name } = group;
  const unfolded = findings.some(({ id }) => id === chosen);
  const open = findings.filter(
    ({ standing, severity }) => standing === 'open' && severity !== 'remark',
  ).length;
  return html`<li class=${`finding-group ${unfolded ? 'unfolded' : ''}`}>
    <div class="group-head">
      <button
        type="button"
        class="group-fold"
        aria-expanded=${unfolded}
        @click=${() => actions.choose(unfolded ? undefined : findings[0]!.id)}
      >
        <span class="group-name">${name} <small>${groupWords(group)}</small></span>
        <span class="standing">${open === 0 ? 'decided' : `${open} to decide`}</span>
      </button>
      ${
        unfolded && open > 1
          ? html`<button type="button" @click=${() => void actions.agreeWithGroup()}>
              Agree with all <kbd>Shift A</kbd>
            </button>`
          : nothing
      }
    </div>
    <ol class="grouped" ?hidden=${!unfolded}>
      ${repeat(findings, ({ id }) => id, item)}
    </ol>
  </li>`;
}

/** `4 places, and 2 that follow from them` */
function groupWords({ findings, slips }: Pick<FindingGroup<Judged>, 'findings' | 'slips'>): string {
  const follow = findings.length - slips;
  const follows = follow === 0 ? '' : `${follow} that ${follow === 1 ? 'follows' : 'follow'}`;
  if (slips === 1) return `and ${follows} from it`;
  return `${slips} places${follow === 0 ? '' : `, and ${follows} from them`}`;
}

function findingView(finding: Judged, number: number, state: DeskState, actions: Actions): TemplateResult {
  const open = state.chosen === finding.id;
  const since = state.script?.since;
  const news = since?.fresh.includes(finding.id)
    ? 'new'
    : since?.stillThere.includes(finding.id)
      ? 'still there'
      : '';
  return html`<li class=${`finding ${finding.severity} ${finding.standing} ${open ? 'chosen' : ''}`}>
    <button
      type="button"
      class="finding-head"
      aria-expanded=${open}
      data-finding=${finding.id}
      @click=${() => actions.choose(open ? undefined : finding.id)}
    >
      <span class=${`tag ${finding.severity}`}>${number}</span>
      <span class="finding-name">
        ${finding.name}
        <small>
          ${barInWords(finding.bar)}, beat ${beatInWords(finding.beat)}${finding.voices.length > 0 ? `, ${printVoices(finding.voices)}` : ''}${news === '' ? '' : ` · ${news}`}
        </small>
      </span>
      <span class="standing">${standingWords(finding)}</span>
    </button>
    ${open ? openFinding(finding, state, actions) : nothing}
  </li>`;
}

function standingWords(finding: Judged): string {
  const { standing, severity, foundAs, forAll, by } = finding;
  const who = by === undefined ? '' : ` (${by})`;
  if (standing === 'overruled') return `${forAll ? 'overruled for all' : 'overruled'}${who}`;
  const weight = severity === foundAs ? severity : `${severity}, was ${foundAs}`;
  return standing === 'agreed' ? `agreed: ${weight}${who}` : weight;
}

function openFinding(finding: Judged, state: DeskState, actions: Actions): TemplateResult {
  const { writing } = state;
  return html`<div class="finding-body">
    <p>${finding.message}</p>
    <p class="aside">${finding.why}</p>
    ${finding.reason === undefined ? nothing : html`<p class="aside">Overruled because: ${finding.reason}</p>`}
    <div class="decide">
      <button type="button" @click=${() => void actions.agree()}>Agree <kbd>A</kbd></button>
      <button type="button" @click=${() => void actions.overrule(reasonTyped())}>Overrule <kbd>O</kbd></button>
      <input class="reason" aria-label="Reason for overruling, if you like" placeholder="reason, if you like" maxlength="500" />
    </div>
    <div class="decide">
      ${forAllMenu(actions)} ${severityButtons(finding, actions)}
      <button type="button" @click=${() => void actions.remarkHere()}>Remark <kbd>R</kbd></button>
      ${takeBackButton(finding, actions)}
    </div>
    ${writing?.finding === finding.id ? writingForm(writing, state.script!, actions) : nothing}
  </div>`;
}

function forAllMenu(actions: Actions): TemplateResult {
  return html`<details class="for-all">
    <summary>Overrule for the whole class…</summary>
    <button type="button" @click=${() => void actions.overruleForAll('place', reasonTyped())}>
      at places like this
    </button>
    <button type="button" @click=${() => void actions.overruleForAll('rule', reasonTyped())}>
      wherever this rule speaks
    </button>
  </details>`;
}

function severityButtons(finding: Judged, actions: Actions): TemplateResult {
  return html`<fieldset class="severities">
    <legend class="visually-hidden">Counts as</legend>
    ${(['fault', 'query', 'remark'] as const).map(
      (severity, i) =>
        html`<button
          type="button"
          aria-pressed=${finding.severity === severity}
          @click=${() => void actions.setSeverity(severity)}
        >
          ${severity} <kbd>${i + 1}</kbd>
        </button>`,
    )}
  </fieldset>`;
}

function takeBackButton(finding: Judged, actions: Actions): TemplateResult | typeof nothing {
  const { decision, forAll } = finding;
  if (decision === undefined) return nothing;
  const take = (): void => void actions.takeBack(decision, forAll === true, wordsFor('Taken back', finding));
  return html`<button type="button" class="quiet" @click=${take}>Take the decision back</button>`;
}
