/** The pages for setting work, whose code is loaded when they are first shown. */
import { html, type TemplateResult } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { ref } from 'lit/directives/ref.js';
import type { Actions } from '../actions.ts';
import type { Desk } from '../set/give-out.ts';
import type { DeskState, Place } from '../state.ts';

export function setPage(
  { signedIn }: DeskState,
  { link }: Extract<Place, { view: 'set' }>,
  actions: Actions,
): TemplateResult {
  const desk: Desk = { makeStack: signedIn ? (settings) => void actions.makeStack(settings) : undefined };
  return shown(`set ${link} ${signedIn === true}`, async (element) =>
    (await import('../set/set-page.ts')).showSetting(element, link, desk),
  );
}

export function practicePage(
  { signedIn }: DeskState,
  { rules }: Extract<Place, { view: 'practice' }>,
  actions: Actions,
): TemplateResult {
  const desk: Desk = { makeStack: signedIn ? (settings) => void actions.makeStack(settings) : undefined };
  return shown(`practice ${rules} ${signedIn === true}`, async (element) =>
    (await import('../set/practice-page.ts')).showPractice(element, rules, desk),
  );
}

/** An element of its own, filled once for each key. */
function shown(key: string, fill: (element: HTMLElement) => Promise<void>): TemplateResult {
  const begin = (element: Element | undefined): void => {
    if (!(element instanceof HTMLElement) || element.dataset.begun !== undefined) return;
    element.dataset.begun = '';
    void fill(element);
  };
  return html`${keyed(key, html`<div class="setting" ${ref(begin)}></div>`)}`;
}
