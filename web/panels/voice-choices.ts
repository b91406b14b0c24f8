/** For each voice, the line of a file that sings it: to choose from, on the page and at the desk. */
import { html, type TemplateResult } from 'lit';
import { counted } from '../../src/english/words.ts';
import { VOICE_WORDS, VOICES, type VoiceName } from '../../src/score/score.ts';

/** A line of a file, as the reader found it or the desk tells it. */
interface Line {
  readonly id: string;
  readonly name: string;
  readonly notes: number;
  readonly lowest?: string | undefined;
  readonly highest?: string | undefined;
  readonly given?: VoiceName | undefined;
}

/** Lines worth a choice: those that hold notes, and whatever has been given out already. */
export function linesToChoose<L extends Pick<Line, 'notes' | 'given'>>(lines: readonly L[]): L[] {
  return lines.filter((line) => line.notes > 0 || line.given !== undefined);
}

/** A menu for each voice, called by the voice's letter; `changed` is told of each choice. */
export function voiceChoices(lines: readonly Line[], changed?: (event: Event) => void): TemplateResult[] {
  return VOICES.map(
    (voice) => html`<label
      ><span class="voice-word">${VOICE_WORDS[voice]}</span>
      <select name=${voice} @change=${changed}>
        <option value="" ?selected=${!lines.some((line) => line.given === voice)}>not written yet</option>
        ${lines.map(
          (line) =>
            html`<option value=${line.id} ?selected=${line.given === voice}>${lineWords(line)}</option>`,
        )}
      </select></label
    >`,
  );
}

function lineWords({ name, notes, lowest, highest }: Line): string {
  const range = lowest === undefined ? '' : `, ${lowest} to ${highest}`;
  return `${name} (${counted(notes, 'note')}${range})`;
}
