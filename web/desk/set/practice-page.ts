/** Practice: short exercises for what went wrong, made in the page by chance from a seed, each proved solvable. */
import './set.css';
import { html, nothing, render, type TemplateResult } from 'lit';
import { counted, listed } from '../../../src/english/words.ts';
import { AIMS, type Aim, aimsFor } from '../../../src/practice/aims.ts';
import {
  MOST_EXERCISES,
  MOST_SEED,
  oneByOne,
  type PracticeExercise,
  proofInWords,
} from '../../../src/practice/practice.ts';
import { RULES } from '../../../src/rules/list.ts';
import { type Desk, giveOut } from './give-out.ts';
import { worksheet } from './worksheet.ts';

interface Practice {
  readonly aims: readonly Aim[];
  /** Names of rules that went wrong and have no short exercises. */
  readonly without: readonly string[];
  readonly number: number;
  readonly seed: number;
  readonly exercises: readonly PracticeExercise[];
  /** So many are being made. */
  readonly making: number | undefined;
  readonly trouble: string | undefined;
  readonly page: string;
}

type Change = (part: Partial<Practice>) => void;

/** Shows the page in an element; `rules` are ids with commas between, of what went wrong most first. */
export function showPractice(element: HTMLElement, rules: string, desk: Desk): void {
  const wrong = rules.split(',').flatMap((id) => RULES.find((rule) => rule.id === id) ?? []);
  const asked = wrong.map((rule) => ({
    name: rule.name,
    aims: aimsFor([{ rule: rule.id, family: rule.family }]),
  }));
  const aims = [...new Set(asked.flatMap((rule) => rule.aims))];
  let practice: Practice = {
    aims,
    without: asked.filter((rule) => rule.aims.length === 0).map(({ name }) => name.toLowerCase()),
    number: Math.min(MOST_EXERCISES, Math.max(3, aims.length)),
    seed: freshSeed(),
    exercises: [],
    making: undefined,
    trouble: undefined,
    page: new URL('../', location.href.replace(/#.*/, '')).href,
  };
  const change: Change = (part) => {
    practice = { ...practice, ...part };
    render(
      pageOf(practice, change, () => void make(), desk),
      element,
    );
  };
  const make = async (): Promise<void> => {
    const { aims: chosen, number, seed, making } = practice;
    if (making !== undefined) return;
    change({ exercises: [], making: number, trouble: undefined });
    await drawn();
    const made: PracticeExercise[] = [];
    for (const next of oneByOne({ aims: chosen, number, seed })) {
      if (!next.ok) {
        change({ trouble: next.message });
        break;
      }
      made.push(next.exercise);
      change({ exercises: [...made] });
      await drawn();
    }
    change({ making: undefined });
  };
  change({});
}

/** The browser draws between one exercise and the next. */
function drawn(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}

function freshSeed(): number {
  return 1 + (crypto.getRandomValues(new Uint32Array(1))[0]! % MOST_SEED);
}

function pageOf(practice: Practice, change: Change, make: () => void, desk: Desk): TemplateResult {
  const { exercises, making, trouble, page } = practice;
  const briefs = exercises.map(({ brief }) => brief);
  return html`
    <div class="no-print">
      <h1>Practice</h1>
      <p>
        Two to four bars each: a tune with its first chord, in a key of up to four sharps or flats. Each is proved
        solvable; no answer is shown.
      </p>
      ${orderForm(practice, change, make)}
      <p role="status">${making === undefined ? (exercises.length === 0 ? '' : `${counted(exercises.length, 'exercise')} made.`) : `Making ${exercises.length + 1} of ${making}…`}</p>
      ${trouble === undefined ? nothing : html`<p class="wrong" role="alert">${trouble}</p>`}
      <ol class="proofs">
        ${exercises.map(({ aim, proof }) => html`<li>For ${aim.name}. ${proofInWords(proof)}</li>`)}
      </ol>
    </div>
    ${
      briefs.length === 0 || making !== undefined
        ? nothing
        : html`${giveOut({ briefs, title: `Practice ${practice.seed}`, page, setPage: (next) => change({ page: next }), desk })}
            ${worksheet(briefs, '')}`
    }
  `;
}

function orderForm(practice: Practice, change: Change, make: () => void): TemplateResult {
  const { aims, without, number, seed, making } = practice;
  return html`<form
    class="practice-form"
    @submit=${(event: Event) => {
      event.preventDefault();
      make();
    }}
  >
    <fieldset>
      <legend>For what?</legend>
      ${AIMS.map(
        (aim) => html`<label class="check"
          ><input
            type="checkbox"
            name="aim"
            value=${aim.id}
            .checked=${aims.includes(aim)}
            @change=${(event: Event) => {
              const on = (event.target as HTMLInputElement).checked;
              change({ aims: on ? [...aims, aim] : aims.filter((each) => each !== aim) });
            }}
          />
          <span>${aim.name}</span></label
        >`,
      )}
      ${
        without.length === 0
          ? nothing
          : html`<p class="aside">
              There are no short exercises for ${listed(without, 'or')}: those are better practised in longer work.
            </p>`
      }
    </fieldset>
    <p class="row">
      <label
        >Exercises <input
          type="number"
          name="number"
          min="1"
          max=${MOST_EXERCISES}
          .value=${String(number)}
          @change=${(event: Event) => change({ number: wholeFrom(event, MOST_EXERCISES) })}
      /></label>
      <label
        >Seed <input
          type="number"
          name="seed"
          min="1"
          max=${MOST_SEED}
          .value=${String(seed)}
          @change=${(event: Event) => change({ seed: wholeFrom(event, MOST_SEED) })}
      /></label>
      <button type="button" @click=${() => change({ seed: freshSeed() })}>Another seed</button>
      <button class="main" ?disabled=${aims.length === 0 || making !== undefined}>Make them</button>
    </p>
    <p class="aside">The same seed makes the same exercises again; it stands in their titles.</p>
  </form>`;
}

function wholeFrom(event: Event, most: number): number {
  const number = Math.trunc(Number((event.target as HTMLInputElement).value)) || 1;
  return Math.max(1, Math.min(most, number));
}
