/** The whole page: a heading, where one is, and the view. */
import { html, nothing, type TemplateResult } from 'lit';
import { USUAL_SHEETS } from '../../../src/desk/sheet-options.ts';
import { counted } from '../../../src/english/words.ts';
import type { Actions } from '../actions.ts';
import { asksNothing, type DeskState, hashOf, type Place } from '../state.ts';
import { classPage } from './class.ts';
import { differencesPage } from './differences.ts';
import { keysDialog } from './keys-help.ts';
import { likenessPage } from './likeness.ts';
import { moderationPage } from './moderation.ts';
import { queuePage } from './queue.ts';
import { scriptPage } from './script.ts';
import { practicePage, setPage } from './set.ts';
import { settingsPage } from './settings.ts';
import { sheetsPage } from './sheets.ts';
import { stacksPage } from './stacks.ts';

export function writeView(state: DeskState, actions: Actions): TemplateResult {
  const free = asksNothing(state.place);
  if (state.signedIn === undefined && !free) return html`<p class="empty">Opening the desk…</p>`;
  if (!state.signedIn && !free) return signInPage(state, actions);
  return html`
    <a class="skip" href="#main" @click=${skip}>To the work</a>
    <header class="top">
      <a class="home" href="#/">Marking desk</a>
      <a href=${hashOf({ view: 'set', link: '' })} aria-current=${state.place.view === 'set' ? 'page' : nothing}>Set the work</a>
      <a href=${hashOf({ view: 'practice', rules: '' })} aria-current=${state.place.view === 'practice' ? 'page' : nothing}>Practice</a>
      ${state.stack === undefined || state.place.view === 'stacks' || free ? nothing : stackLinks(state.stack, state.place)}
      ${initialsField(state, actions)}
    </header>
    ${noticeOf(state, actions)} ${reviewingLine(state, actions)}
    <main id="main" tabindex="-1" class=${`view-${state.place.view}`}>${viewOf(state, actions)}</main>
    ${state.help ? keysDialog(actions) : nothing}
  `;
}

function skip(event: Event): void {
  event.preventDefault();
  document.querySelector<HTMLElement>('#main')?.focus();
}

function viewOf(state: DeskState, actions: Actions): TemplateResult {
  switch (state.place.view) {
    case 'stacks':
      return stacksPage(state, actions);
    case 'set':
      return setPage(state, state.place, actions);
    case 'practice':
      return practicePage(state, state.place, actions);
    case 'queue':
      return queuePage(state, state.place, actions);
    case 'script':
      return scriptPage(state, actions);
    case 'class':
      return classPage(state);
    case 'moderation':
      return moderationPage(state, state.place, actions);
    case 'differences':
      return differencesPage(state, state.place, actions);
    case 'likeness':
      return likenessPage(state, state.place, actions);
    case 'sheets':
      return sheetsPage(state, state.place, actions);
    case 'settings':
      return settingsPage(state, actions);
  }
}

function stackLinks(stack: NonNullable<DeskState['stack']>, here: Place): TemplateResult {
  const link = (place: Place, name: string): TemplateResult => {
    const current = here.view === place.view || (here.view === 'script' && place.view === 'queue');
    return html`<a href=${hashOf(place)} aria-current=${current ? 'page' : nothing}>${name}</a>`;
  };
  return html`<nav aria-label=${stack.name}>
    <span class="stack-name">${stack.name}</span>
    ${link({ view: 'queue', stack: stack.id, after: 0 }, 'Queue')}
    ${link({ view: 'moderation', stack: stack.id, criterion: '', after: 0 }, 'Side by side')}
    ${stack.second === undefined ? nothing : link({ view: 'differences', stack: stack.id, after: 0 }, 'Two markers')}
    ${link({ view: 'class', stack: stack.id }, 'Class')} ${link({ view: 'likeness', stack: stack.id, after: 0 }, 'Likeness')}
    ${link({ view: 'sheets', stack: stack.id, after: 0, options: USUAL_SHEETS }, 'Sheets')} ${link({ view: 'settings', stack: stack.id }, 'Settings')}
  </nav>`;
}

/** A stack being reviewed again: how far it is. Whoever waits may go elsewhere. */
function reviewingLine({ reviewing, stack }: DeskState, actions: Actions): TemplateResult | typeof nothing {
  if (reviewing === undefined || reviewing.stack !== stack?.id) return nothing;
  const { left, of, going, timeLeft } = reviewing;
  if (!going)
    return html`<p class="reviewing no-print">
      ${counted(left, 'script')} to be reviewed again, since settings or program have changed.
      <button type="button" @click=${() => void actions.reviewAgain(stack.id)}>Review them</button>
    </p>`;
  return html`<p class="reviewing no-print" role="status">
    <progress max=${of} value=${of - left} aria-label="Reviewed again"></progress>
    Reviewing again: ${of - left} of ${of}${timeLeft === '' ? '' : `, ${timeLeft}`}. You can go on meanwhile, or leave.
  </p>`;
}

/** Decisions carry them, so that two people at one desk know whose is whose. */
function initialsField({ initials, stack }: DeskState, actions: Actions): TemplateResult {
  return html`<label class=${`initials ${stack?.second !== undefined && initials === '' ? 'wanted' : ''}`}>
    Your initials
    <input
      size="4"
      maxlength="12"
      autocomplete="off"
      .value=${initials}
      @change=${(event: Event) => void actions.setInitials((event.target as HTMLInputElement).value)}
    />
  </label>`;
}

function noticeOf({ notice }: DeskState, actions: Actions): TemplateResult | typeof nothing {
  if (notice === undefined) return nothing;
  return html`<p class=${notice.wrong ? 'notice wrong' : 'notice'} role=${notice.wrong ? 'alert' : nothing}>
    ${notice.text}
    <button type="button" class="quiet" aria-label="Close this message" @click=${actions.dismiss}>×</button>
  </p>`;
}

function signInPage(state: DeskState, actions: Actions): TemplateResult {
  return html`<main class="sign-in">
    <h1>Marking desk</h1>
    ${noticeOf(state, actions)}
    <form
      @submit=${(event: SubmitEvent) => {
        event.preventDefault();
        const field = (event.target as HTMLFormElement).elements.namedItem('passphrase') as HTMLInputElement;
        void actions.signIn(field.value);
      }}
    >
      <label>Passphrase of this desk <input name="passphrase" type="password" autocomplete="current-password" required /></label>
      <button>Sign in</button>
    </form>
  </main>`;
}
