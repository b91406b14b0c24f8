/** Giving the work out: files, a link, paper, and a stack for what comes back. */
import { zipSync } from 'fflate';
import { html, nothing, type TemplateResult } from 'lit';
import { type Brief, printBrief } from '../../../src/brief/brief.ts';
import { writeMusicXml } from '../../../src/musicxml/index.ts';
import { printNotation } from '../../../src/notation/index.ts';
import { linkTo } from '../../../src/set/link.ts';
import { hasWords } from '../../../src/set/words.ts';
import { fileName, saveFile } from '../../files/save.ts';

/** What giving out asks of the desk. */
export interface Desk {
  /** Undefined where there is no desk to make a stack on. */
  readonly makeStack: ((settings: { readonly name: string; readonly brief: string }) => void) | undefined;
}

export interface GivingOut {
  readonly briefs: readonly Brief[];
  /** What all of them are called together. */
  readonly title: string;
  /** The address at which pupils open the page. */
  readonly page: string;
  readonly setPage: (page: string) => void;
  readonly desk: Desk;
}

const TYPES = {
  text: 'text/plain',
  musicxml: 'application/vnd.recordare.musicxml+xml',
  zip: 'application/zip',
};

export function giveOut(work: GivingOut): TemplateResult {
  const { briefs, desk } = work;
  const [only] = briefs;
  if (only === undefined) return html``;
  const save = (kind: Kind) => () => saveAs(work, kind);
  return html`<section class="give-out no-print" aria-labelledby="give-out">
    <h2 id="give-out">Give it out</h2>
    <p class="row">
      <button type="button" class="main" @click=${() => window.print()}>Print the worksheet</button>
      <button type="button" @click=${save('musicxml')}>Pupils’ file, MusicXML</button>
      <button type="button" @click=${save('text')}>Pupils’ file, text</button>
      <button type="button" @click=${save('brief')}>Your brief, to mark by</button>
    </p>
    ${linkView(work)}
    ${
      desk.makeStack === undefined
        ? nothing
        : html`<p class="row">
            ${briefs.map(
              (brief) => html`<button
                type="button"
                @click=${() => desk.makeStack?.({ name: brief.score.title || 'Exercise', brief: printBrief(brief) })}
              >
                Make a stack for ${briefs.length === 1 ? 'what comes back' : brief.score.title}
              </button>`,
            )}
          </p>`
    }
  </section>`;
}

type Kind = 'musicxml' | 'text' | 'brief';

/** One exercise is one file; several come in an archive. */
function saveAs({ briefs, title }: GivingOut, kind: Kind): void {
  const ending = { musicxml: 'musicxml', text: 'txt', brief: 'brief.txt' }[kind];
  const content = (brief: Brief): string =>
    kind === 'musicxml'
      ? writeMusicXml(brief.score)
      : kind === 'text'
        ? printNotation(brief.score, { whole: true })
        : printBrief(brief);
  const [only] = briefs;
  if (briefs.length === 1 && only !== undefined) {
    saveFile(
      fileName(only.score.title, ending),
      content(only),
      kind === 'musicxml' ? TYPES.musicxml : TYPES.text,
    );
    return;
  }
  const encode = new TextEncoder();
  const files = Object.fromEntries(
    briefs.map((brief, i) => [
      `${i + 1}-${fileName(brief.score.title, ending)}`,
      encode.encode(content(brief)),
    ]),
  );
  saveFile(fileName(`${title} ${kind}`, 'zip'), new Uint8Array(zipSync(files)), TYPES.zip);
}

function linkView({ briefs, page, setPage }: GivingOut): TemplateResult {
  const link = linkTo(briefs);
  if (!link.ok) return html`<p>${link.message}</p>`;
  const address = `${page}#${link.hash}`;
  const words = briefs.some(({ score }) => hasWords(score));
  return html`<div class="link">
    <label
      >Link that opens the pupils’ page with it
      <input
        class="address"
        readonly
        .value=${address}
        @focus=${(event: Event) => (event.target as HTMLInputElement).select()}
    /></label>
    <button type="button" @click=${(event: Event) => void copied(event, address)}>Copy the link</button>
    <label
      >Where your pupils open the page
      <input .value=${page} @change=${(event: Event) => setPage((event.target as HTMLInputElement).value.trim())}
    /></label>
    <p class="aside">
      The exercise stands in the address itself, after the #: no server is told of it.
      ${/^https?:\/\/(127\.|localhost|\[::1\])/.test(page) ? 'This address works on your own machine only; put in the one your pupils use.' : nothing}
      ${words ? 'The words under the tune are in the MusicXML file and on the worksheet alone: link and text have no place for them.' : nothing}
    </p>
  </div>`;
}

async function copied(event: Event, address: string): Promise<void> {
  const button = event.currentTarget as HTMLButtonElement;
  const field = button.parentElement?.querySelector<HTMLInputElement>('.address');
  try {
    await navigator.clipboard.writeText(address);
    button.textContent = 'Copied';
  } catch {
    // Without leave to use the clipboard the address is chosen, to be copied by hand.
    field?.focus();
    field?.select();
  }
}
