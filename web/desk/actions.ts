/** What can be done at the desk. Each thing is stored by the service before the page shows it as done. */
import type { Severity } from '../../src/rules/rule.ts';
import type { Store } from '../state/store.ts';
import {
  classAnswer,
  decisionAnswer,
  type Judged,
  likenessAnswer,
  madeAnswer,
  nothingInParticular,
  remarksAnswer,
  sessionAnswer,
  stacksAnswer,
} from './answers.ts';
import { createLoading, isOpen, SHOWN_AT_ONCE } from './loading.ts';
import { ask, Refused, useToken } from './service.ts';
import { type StackTexts, saveSettings } from './settings.ts';
import { type DeskState, hashOf, type Made, type Place, placeOf, type Writing } from './state.ts';
import { takeFiles } from './taking.ts';

export type Actions = ReturnType<typeof createActions>;

/** The settings of a new stack, as texts. */
export type NewStack = Pick<StackTexts, 'name'> & Partial<StackTexts>;

export function createActions(store: Store<DeskState>, say: (text: string) => void) {
  const set = (change: Partial<DeskState>): void => store.update((state) => ({ ...state, ...change }));

  /** Runs something that may be refused, and shows the sentence where it is. */
  async function attempt(run: () => Promise<void>): Promise<void> {
    try {
      await run();
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      set({ notice: { text: error.message, wrong: true } });
      if (error.status === 401) set({ signedIn: false });
      // Somebody decided in another window: show what stands now, so that the person can decide again.
      const { place } = store.get();
      if (error.status === 409 && place.view === 'script') await loadScript(place.script);
    }
  }

  /**
   * Whoever works from the keyboard is quicker than the service: what changes something waits for what was asked for
   * before it, so that it knows the revision that stands then.
   */
  let before: Promise<void> = Promise.resolve();
  function inTurn(run: () => Promise<void>): Promise<void> {
    before = before.then(() => attempt(run));
    return before;
  }

  const { loadStack, loadScript, loadModeration, loadSheets } = createLoading(store);

  const told = (text: string): void => {
    set({ notice: { text, wrong: false } });
    say(text);
  };

  function go(place: Place): void {
    location.hash = hashOf(place);
  }

  async function start(): Promise<void> {
    await attempt(async () => {
      const { passphraseNeeded, signedIn, token } = await ask(sessionAnswer, '/session');
      useToken(token);
      set({ signedIn: signedIn || !passphraseNeeded });
      if (signedIn) await load();
    });
  }

  async function signIn(passphrase: string): Promise<void> {
    await attempt(async () => {
      const answer = await ask(sessionAnswer.partial(), '/session', { method: 'POST', body: { passphrase } });
      useToken(answer.token);
      set({ signedIn: true, notice: undefined });
      await load();
    });
  }

  /** Fetches what the address asks for. */
  async function load(): Promise<void> {
    const place = placeOf(location.hash);
    set({ place, notice: undefined, writing: undefined, editing: undefined });
    await attempt(async () => {
      if (place.view === 'stacks') set({ stacks: (await ask(stacksAnswer, '/stacks')).stacks });
      else if (place.view === 'script') await loadScript(place.script);
      else if (place.view === 'queue') await loadStack(place.stack, place.after);
      else await loadStack(place.stack, 0, 1);
      if (place.view === 'class') set({ classView: await ask(classAnswer, `/stacks/${place.stack}/class`) });
      if (place.view === 'likeness') {
        set({ likeness: await ask(likenessAnswer, `/stacks/${place.stack}/likeness`) });
      }
      const { stack } = store.get();
      if (place.view === 'settings' && stack !== undefined) set({ editing: { base: stack, now: stack } });
      if (place.view === 'moderation') await loadModeration(place);
      if (place.view === 'sheets') await loadSheets(place);
    });
  }

  async function makeStack(settings: NewStack): Promise<void> {
    await attempt(async () => {
      const { stack } = await ask(madeAnswer, '/stacks', { method: 'POST', body: settings });
      go({ view: 'queue', stack: stack.id, after: 0 });
    });
  }

  async function changeSettings(texts: StackTexts): Promise<void> {
    await inTurn(async () => {
      told('Keeping the settings, and reviewing again where they call for it…');
      const kept = await saveSettings(store, texts);
      told(kept ? 'The settings are kept.' : 'Nothing was changed.');
    });
  }

  async function take(files: readonly File[]): Promise<void> {
    const { stack, queue } = store.get();
    if (stack === undefined) return;
    await attempt(async () => {
      const { taken, messages } = await takeFiles(stack.id, files, (done, of) =>
        set({ taking: { done, of, messages: [] } }),
      );
      set({ taking: messages.length > 0 ? { done: taken, of: taken, messages } : undefined });
      await loadStack(stack.id, queue?.after);
      told(`${taken} ${taken === 1 ? 'file' : 'files'} taken in.`);
    });
    if (store.get().notice?.wrong) set({ taking: undefined });
  }

  function choose(finding: string | undefined): void {
    set({ chosen: finding, writing: undefined });
  }

  /** Chooses the finding so many places further on. */
  function step(by: number): void {
    const { script, chosen } = store.get();
    if (script === undefined || script.findings.length === 0) return;
    const at = script.findings.findIndex(({ id }) => id === chosen);
    const next = at < 0 ? 0 : Math.min(script.findings.length - 1, Math.max(0, at + by));
    choose(script.findings[next]!.id);
  }

  function chosenFinding(): Judged | undefined {
    const { script, chosen } = store.get();
    return script?.findings.find(({ id }) => id === chosen);
  }

  /** Stores a decision about this script, then shows how it stands. */
  async function decide(decision: object, what: string, beside?: string): Promise<void> {
    const id = store.get().script?.script.id;
    await inTurn(async () => {
      const { script } = store.get();
      if (id === undefined || script?.script.id !== id) return;
      const { revision } = script.script;
      const answer = await ask(decisionAnswer, `/scripts/${id}/decisions`, {
        method: 'POST',
        body: { revision, decision, ...(beside === undefined ? {} : { beside }) },
      });
      remember({ id: answer.decision.id, what, forAll: false, script: id });
      await loadScript(id);
      told(what);
    });
  }

  function remember(made: Made): void {
    store.update((state) => ({ ...state, made: [...state.made, made].slice(-200) }));
  }

  async function agree(): Promise<void> {
    const finding = chosenFinding();
    if (finding === undefined) return;
    await decide({ kind: 'agree', finding: finding.id }, `Agreed: ${finding.name}, bar ${finding.bar}.`);
    nextOpen(finding);
  }

  async function overrule(reason: string | undefined): Promise<void> {
    const finding = chosenFinding();
    if (finding === undefined) return;
    await decide(
      { kind: 'overrule', finding: finding.id, ...(reason ? { reason } : {}) },
      `Overruled: ${finding.name}, bar ${finding.bar}.`,
    );
    nextOpen(finding);
  }

  /** For the whole class: this kind of place, or the rule wherever it speaks. */
  async function overruleForAll(reach: 'place' | 'rule', reason: string | undefined): Promise<void> {
    const finding = chosenFinding();
    const { script } = store.get();
    if (finding === undefined || script === undefined) return;
    const what = `Overruled for the whole class: ${finding.name}${reach === 'place' ? ', at places like this' : ''}.`;
    await inTurn(async () => {
      const answer = await ask(decisionAnswer, `/stacks/${script.script.stack}/decisions`, {
        method: 'POST',
        body: {
          revision: store.get().script?.stackRevision ?? script.stackRevision,
          decision: {
            kind: 'overrule for all',
            rule: finding.rule,
            ...(reach === 'place' ? { context: finding.context } : {}),
            ...(reason ? { reason } : {}),
          },
        },
      });
      remember({ id: answer.decision.id, what, forAll: true, script: script.script.id });
      await loadScript(script.script.id);
      told(what);
    });
    nextOpen(finding);
  }

  async function setSeverity(severity: Severity): Promise<void> {
    const finding = chosenFinding();
    if (finding === undefined) return;
    await decide(
      { kind: 'severity', finding: finding.id, severity },
      `${finding.name} counts as a ${severity}.`,
    );
  }

  /** A decision about the draft before: it holds here too, or is left. */
  async function carry(from: string, keep: boolean, what: string): Promise<void> {
    await inTurn(async () => {
      const { script } = store.get();
      if (script === undefined) return;
      const { id, revision } = script.script;
      const answer = await ask(decisionAnswer, `/scripts/${id}/carried`, {
        method: 'POST',
        body: { revision, from, keep },
      });
      remember({ id: answer.decision.id, what, forAll: false, script: id });
      await loadScript(id);
      told(what);
    });
  }

  /** Takes back what was decided last in this window. */
  async function undo(): Promise<void> {
    await before;
    const { made, script } = store.get();
    const last = made.findLast((one) => one.forAll || one.script === script?.script.id);
    if (last === undefined) return told('Nothing to take back.');
    await takeBack(last.id, last.forAll, `Taken back: ${last.what}`);
  }

  /** Takes back any decision, also one of another day. */
  async function takeBack(decision: string, forAll: boolean, what: string): Promise<void> {
    await inTurn(async () => {
      const { script } = store.get();
      if (script === undefined) return;
      await ask(decisionAnswer, `/decisions/${decision}/undo`, {
        method: 'POST',
        body: { revision: forAll ? script.stackRevision : script.script.revision },
      });
      set({ made: store.get().made.filter(({ id }) => id !== decision) });
      await loadScript(script.script.id);
      told(what);
    });
  }

  /** After a decision: the next finding that nobody has decided about. */
  function nextOpen(after: Judged): void {
    const { script, notice, writing, chosen } = store.get();
    // Whoever has gone on by hand, or begun to write, is not moved.
    if (script === undefined || notice?.wrong || writing !== undefined || chosen !== after.id) return;
    const at = script.findings.findIndex(({ id }) => id === after.id);
    const next = script.findings.slice(at + 1).find(isOpen) ?? script.findings.find(isOpen);
    if (next !== undefined) choose(next.id);
  }

  async function beginRemark(from: number, beside: string | undefined, until?: number): Promise<void> {
    const writing: Writing = {
      from,
      ...(until === undefined ? {} : { until }),
      ...(beside === undefined ? {} : { beside }),
      text: '',
      offered: [],
    };
    set({ writing });
    await typeRemark('');
  }

  async function typeRemark(text: string): Promise<void> {
    const { writing } = store.get();
    if (writing === undefined) return;
    set({ writing: { ...writing, text } });
    await attempt(async () => {
      const query = new URLSearchParams({
        typed: text,
        ...(writing.beside === undefined ? {} : { rule: writing.beside }),
      });
      const { remarks } = await ask(remarksAnswer, `/remarks?${query}`);
      const now = store.get().writing;
      if (now !== undefined && now.text === text) set({ writing: { ...now, offered: remarks } });
    });
  }

  async function saveRemark(text: string, until: number | undefined): Promise<void> {
    const { writing } = store.get();
    if (writing === undefined || text.trim() === '') return;
    set({ writing: undefined });
    await decide(
      { kind: 'remark', from: writing.from, ...(until === undefined ? {} : { until }), text },
      'Remark kept.',
      writing.beside,
    );
    // What was refused is not lost: it can be kept again.
    if (store.get().notice?.wrong) set({ writing: { ...writing, text } });
  }

  async function giveMark(criterion: string, marks: number | null): Promise<void> {
    await inTurn(async () => {
      const { script } = store.get();
      if (script === undefined) return;
      const { id, revision } = script.script;
      await ask(nothingInParticular, `/scripts/${id}/marks/${criterion}`, {
        method: 'PUT',
        body: { revision, marks },
      });
      await loadScript(id);
      told(marks === null ? 'Mark taken back.' : `${marks} marks.`);
    });
  }

  async function change(details: { candidate?: string; draft?: number; done?: boolean }): Promise<void> {
    await inTurn(async () => {
      const { script } = store.get();
      if (script === undefined) return;
      const { id, revision } = script.script;
      await ask(nothingInParticular, `/scripts/${id}`, { method: 'PATCH', body: { revision, ...details } });
      await loadScript(id);
    });
  }

  /** Finished with this script: on to the next. */
  async function finish(): Promise<void> {
    await change({ done: true });
    if (!store.get().notice?.wrong) goTo('next');
  }

  /** The script before or after this one in the queue; after the last one the queue itself. */
  function goTo(which: 'before' | 'next' | 'queue'): void {
    const { script, stack } = store.get();
    const to = which === 'queue' ? undefined : script?.place[which];
    if (to !== undefined) go({ view: 'script', script: to });
    else if (stack !== undefined) {
      const at = Math.max(0, (script?.place.at ?? 1) - 1);
      go({ view: 'queue', stack: stack.id, after: at - (at % SHOWN_AT_ONCE.queue) });
    }
  }

  return {
    agree,
    beginRemark,
    carry,
    change,
    changeSettings,
    choose,
    chosenFinding,
    closeRemark: () => set({ writing: undefined }),
    dismiss: () => set({ notice: undefined, taking: undefined }),
    finish,
    giveMark,
    go,
    goTo,
    load,
    makeStack,
    overrule,
    overruleForAll,
    saveRemark,
    setSeverity,
    signIn,
    start,
    step,
    take,
    takeBack,
    typeRemark,
    undo,
  };
}
