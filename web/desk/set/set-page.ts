/** Set the work: from a piece to what pupils get. Everything happens in the page; the service is not asked. */
import './set.css';
import { html, nothing, render, type TemplateResult } from 'lit';
import { type Brief, parseDuration, printDuration } from '../../../src/brief/brief.ts';
import { HELP_WORDS, HELPS, type Help, isControlled } from '../../../src/brief/helps.ts';
import { counted } from '../../../src/english/words.ts';
import { kindOf, readyFor } from '../../../src/open/open.ts';
import { PROFILES } from '../../../src/profiles/list.ts';
import {
  ALL_OF_IT,
  type Choice,
  choiceInWords,
  GIVE_WORDS,
  GIVES,
  MOST_OPENING,
  THE_TUNE,
} from '../../../src/set/choice.ts';
import { type LinkedExercise, readLink } from '../../../src/set/link.ts';
import { setWork } from '../../../src/set/set-work.ts';
import { openSource, type Source } from '../../../src/set/source.ts';
import { type Desk, giveOut } from './give-out.ts';
import { worksheet } from './worksheet.ts';

interface Setting {
  readonly source: Source | undefined;
  /** Why a piece could not be opened. */
  readonly trouble: string | undefined;
  readonly choice: Choice;
  readonly title: string;
  /** Empty: told from what is to be written. */
  readonly task: string;
  readonly profile: string;
  /** Minutes and seconds, as typed. */
  readonly least: string;
  readonly without: readonly Help[];
  readonly page: string;
}

/** Shows the page in an element; `link` is an exercise to begin from, packed as in a pupil's link, or empty. */
export function showSetting(element: HTMLElement, link: string, desk: Desk): void {
  let setting: Setting = {
    source: undefined,
    trouble: undefined,
    choice: THE_TUNE,
    title: '',
    task: '',
    profile: 'chorale',
    least: '',
    without: [],
    page: pupilsPage(),
  };
  const change = (part: Partial<Setting>): void => {
    setting = { ...setting, ...part };
    render(pageOf(setting, change, desk), element);
  };
  if (link === '') change({});
  else {
    const read = readLink(`set/${link}`);
    const [first, ...others] = read.ok ? read.exercises : [];
    if (read.ok && others.length > 0) {
      showSeveral(element, read.exercises, desk);
      return;
    }
    change(
      first === undefined
        ? { trouble: read.ok ? '' : read.message }
        : // What asks for nothing is a piece that comes from the pupils' page, and no brief yet.
          opened({ score: first.brief.score, ...(first.brief.task !== '' && { brief: first.brief }) }),
    );
  }
}

/** Several exercises, as practice comes in a link: they are as they are, to be given out. */
function showSeveral(element: HTMLElement, exercises: readonly LinkedExercise[], desk: Desk): void {
  const briefs = exercises.map(({ brief }) => brief);
  const shown = (page: string): void => {
    render(
      html`<h1 class="no-print">${counted(briefs.length, 'exercise')}</h1>
        ${giveOut({ briefs, title: 'Exercises', page, setPage: shown, desk })} ${worksheet(briefs, '')}`,
      element,
    );
  };
  shown(pupilsPage());
}

/** Where this page's own pupils' page is. */
function pupilsPage(): string {
  return new URL('../', location.href.replace(/#.*/, '')).href;
}

type Change = (part: Partial<Setting>) => void;

/** A piece taken up: a brief gives what it gave, and says what it said. */
function opened(source: Source): Partial<Setting> {
  const { brief, score } = source;
  return {
    source,
    trouble: undefined,
    title: score.title,
    choice: brief === undefined ? THE_TUNE : ALL_OF_IT,
    ...(brief === undefined
      ? {}
      : {
          profile: brief.profile,
          without: brief.without,
          least: brief.leastSeconds === undefined ? '' : printDuration(brief.leastSeconds),
        }),
  };
}

function pageOf(setting: Setting, change: Change, desk: Desk): TemplateResult {
  const { source, trouble, choice } = setting;
  const made = source === undefined ? undefined : makeBrief(source, setting);
  const given = choice.gives.includes('all') ? '' : `Given: ${choiceInWords(choice)}.`;
  return html`
    <div class="no-print">
      <h1>Set the work</h1>
      ${pieceView(setting, change)}
      ${trouble === undefined || trouble === '' ? nothing : html`<p class="wrong" role="alert">${trouble}</p>`}
      ${source === undefined ? nothing : html`<form class="set-form" @submit=${(event: Event) => event.preventDefault()}>${givenView(setting, change)} ${helpsView(setting, change)} ${particularsView(setting, change, made)}</form>`}
    </div>
    ${
      made === undefined
        ? nothing
        : typeof made === 'string'
          ? html`<p class="wrong no-print" role="alert">${made}</p>`
          : html`${giveOut({ briefs: [made], title: made.score.title, page: setting.page, setPage: (page) => change({ page }), desk })}
            ${worksheet([made], given)}`
    }
  `;
}

/** The brief, or a sentence saying why there is none. */
function makeBrief({ score, brief }: Source, setting: Setting): Brief | string {
  const least = setting.least.trim() === '' ? undefined : parseDuration(setting.least);
  if (least === undefined && setting.least.trim() !== '')
    return 'The least length is written as minutes and seconds, such as 0:45.';
  const { choice, title, task, profile, without } = setting;
  const together = brief?.leastTogetherSeconds;
  const set = setWork(score, choice, {
    profile,
    without,
    title,
    task,
    ...(least === undefined ? {} : { leastSeconds: least }),
    ...(together === undefined ? {} : { leastTogetherSeconds: together }),
  });
  return set.ok ? set.brief : set.message;
}

function pieceView({ source }: Setting, change: Change): TemplateResult {
  const take = async (event: Event): Promise<void> => {
    const field = event.target as HTMLInputElement;
    const file = field.files?.[0];
    if (file === undefined) return;
    const bytes = new Uint8Array(await file.arrayBuffer());
    await readyFor(kindOf(bytes));
    const read = openSource(bytes);
    field.value = '';
    if (read.ok) change(opened(read.source));
    else
      change({
        source: undefined,
        trouble: `${file.name}${read.line === undefined ? '' : `, line ${read.line}`}: ${read.message}`,
      });
  };
  return html`<section>
    <p class="row">
      <label class="button"
        >${source === undefined ? 'Open a piece, a tune or a brief' : 'Open another'}<input
          class="visually-hidden"
          type="file"
          accept=".musicxml,.xml,.mxl,.abc,.txt,text/plain"
          @change=${take}
      /></label>
      ${source === undefined ? nothing : html`<span>${source.score.title || 'Untitled'}, ${counted(source.score.bars.length, 'bar')}</span>`}
    </p>
    <p class="aside">
      MusicXML, MXL, ABC or text, with one voice or four. To write a tune of your own, use
      <a href="../#write">the pupils’ page</a>, and there, under <em>Hand in</em>, “Set it at the desk”.
    </p>
  </section>`;
}

function givenView({ choice }: Setting, change: Change): TemplateResult {
  const set = (part: Partial<Choice>): void => change({ choice: { ...choice, ...part } });
  return html`<fieldset>
    <legend>What is given?</legend>
    ${GIVES.map(
      (give) => html`<label class="check"
        ><input
          type="checkbox"
          name="give"
          value=${give}
          .checked=${choice.gives.includes(give)}
          @change=${(event: Event) =>
            set({
              gives: GIVES.filter((each) => (each === give ? isOn(event) : choice.gives.includes(each))),
            })}
        />
        ${GIVE_WORDS[give]}</label
      >`,
    )}
    <label
      >Opening chords <input
        type="number"
        name="opening"
        min="0"
        max=${MOST_OPENING}
        .value=${String(choice.opening)}
        @change=${(event: Event) => set({ opening: Math.max(0, Math.min(MOST_OPENING, Math.trunc(Number(textOf(event))) || 0)) })}
    /></label>
    <label
      >Whole bars, such as 3, 5-6 <input name="bars" .value=${choice.bars} @change=${(event: Event) => set({ bars: textOf(event) })}
    /></label>
    <p class="aside">Everything else is emptied.</p>
  </fieldset>`;
}

function helpsView({ without }: Setting, change: Change): TemplateResult {
  const controlled = isControlled({ without });
  return html`<fieldset>
    <legend>Which helps may they use?</legend>
    ${HELPS.map(
      (help) => html`<label class="check"
        ><input
          type="checkbox"
          name="help"
          value=${help}
          .checked=${!without.includes(help)}
          @change=${(event: Event) =>
            change({
              without: HELPS.filter((each) => (each === help ? !isOn(event) : without.includes(each))),
            })}
        />
        ${HELP_WORDS[help]}</label
      >`,
    )}
    <label class="check"
      ><input
        type="checkbox"
        name="controlled"
        .checked=${controlled}
        @change=${(event: Event) => change({ without: isOn(event) ? HELPS : [] })}
      />
      <span><strong>Controlled sitting:</strong> none of them, and the page and what is handed in say so</span></label
    >
  </fieldset>`;
}

function particularsView(setting: Setting, change: Change, made: Brief | string | undefined): TemplateResult {
  const told = made === undefined || typeof made === 'string' ? '' : made.task;
  return html`<fieldset>
    <legend>What does it say?</legend>
    <label>Title <input name="title" maxlength="80" .value=${setting.title} @change=${(event: Event) => change({ title: textOf(event) })} /></label>
    <label
      >What is asked for <input
        name="task"
        maxlength="200"
        placeholder=${told}
        .value=${setting.task}
        @change=${(event: Event) => change({ task: textOf(event) })}
    /></label>
    <label
      >Least length, min:sec <input name="least" placeholder="0:45" .value=${setting.least} @change=${(event: Event) => change({ least: textOf(event) })}
    /></label>
    <label
      >House profile
      <select name="profile" @change=${(event: Event) => change({ profile: (event.target as HTMLSelectElement).value })}>
        ${PROFILES.map(({ name, statement }) => html`<option value=${name} title=${statement} ?selected=${name === setting.profile}>${name}</option>`)}
      </select></label
    >
  </fieldset>`;
}

function isOn(event: Event): boolean {
  return (event.target as HTMLInputElement).checked;
}

function textOf(event: Event): string {
  return (event.target as HTMLInputElement).value;
}
