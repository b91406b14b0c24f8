/** The stacks on the desk, and a form for a new one. */
import { html, type TemplateResult } from 'lit';
import type { SettingTexts } from '../../../src/desk/wire.ts';
import { PROFILES } from '../../../src/profiles/list.ts';
import type { Actions } from '../actions.ts';
import { type DeskState, hashOf } from '../state.ts';

export function stacksPage({ stacks }: DeskState, actions: Actions): TemplateResult {
  return html`
    <section>
      <h1>Stacks</h1>
      ${
        stacks.length === 0
          ? html`<p class="empty">No stack yet. Make one below, then drop a class’s files on it.</p>`
          : html`<ul class="stacks">
              ${stacks.map(
                ({ id, name, scripts, done, unreadable }) => html`<li>
                  <a href=${hashOf({ view: 'queue', stack: id, after: 0 })}>${name}</a>
                  <span>${scripts} scripts, ${done} done${unreadable > 0 ? `, ${unreadable} could not be read` : ''}</span>
                </li>`,
              )}
            </ul>`
      }
    </section>
    <section>
      <h2>A new stack</h2>
      <form class="new-stack" @submit=${(event: SubmitEvent) => void submit(event, actions)}>
        <label>Name <input name="name" required maxlength="200" placeholder="Year 12, chorale 3" /></label>
        <label>
          House profile
          <select name="profile">
            <option value="">as the brief says, else chorale</option>
            ${PROFILES.map(({ name, statement }) => html`<option value=${name} title=${statement}>${name}</option>`)}
          </select>
        </label>
        <label>A profile of your own (JSON) <input type="file" name="ownProfile" accept=".json" /></label>
        <label>Brief: the exercise as set <input type="file" name="brief" accept=".txt,text/plain" /></label>
        <label>Mark scheme (JSON) <input type="file" name="scheme" accept=".json" /></label>
        <label>
          A harmonisation to compare with, as text <input type="file" name="reference" accept=".txt,.musicxml,.xml" />
        </label>
        <label>
          How files are named
          <input name="pattern" placeholder="{candidate}-draft{draft}" aria-describedby="pattern-help" />
        </label>
        <p id="pattern-help" class="aside">
          Left empty, the first number of two digits or more is the candidate’s, and the number after “draft” the
          draft’s. No names are needed.
        </p>
        <button>Make the stack</button>
      </form>
    </section>
  `;
}

async function submit(event: SubmitEvent, actions: Actions): Promise<void> {
  event.preventDefault();
  const data = new FormData(event.target as HTMLFormElement);
  const text = (name: string): string => String(data.get(name) ?? '').trim();
  const file = async (name: string): Promise<string> => {
    const entry = data.get(name);
    return entry instanceof File && entry.size > 0 ? await entry.text() : '';
  };
  const own = await file('ownProfile');
  const settings: Record<string, string> = {
    name: text('name'),
    profile: own === '' ? text('profile') : own,
    brief: await file('brief'),
    scheme: await file('scheme'),
    reference: await file('reference'),
    pattern: text('pattern'),
  };
  const given = Object.fromEntries(Object.entries(settings).filter(([, value]) => value !== ''));
  await actions.makeStack({ name: settings.name!, ...given } satisfies SettingTexts);
}
