/** A button that opens files. */
import { html, type TemplateResult } from 'lit';
import type { Panel } from './context.ts';

const KINDS =
  '.txt,.partwise,.brief,.musicxml,.xml,.mxl,text/plain,application/vnd.recordare.musicxml+xml,application/vnd.recordare.musicxml';

export function filePicker({ commands }: Panel, words: string, look = ''): TemplateResult {
  return html`<label class="button file ${look}"
    >${words}<input
      class="visually-hidden"
      type="file"
      multiple
      aria-label="Open a file: text or MusicXML"
      accept=${KINDS}
      @change=${(event: Event) => {
        const input = event.target as HTMLInputElement;
        commands.openFiles([...(input.files ?? [])]);
        input.value = '';
      }}
  /></label>`;
}
