import { describe, expect, it } from 'vitest';
import { printNotation, readNotation } from '../../src/notation/index.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { createActions } from '../../web/state/actions.ts';
import { KEYS, type KeyCommands, obeyKey } from '../../web/state/keys.ts';
import { tapTempo } from '../../web/state/looking.ts';
import { FIRST_MIXER, FIRST_SETTINGS, givenVoices, type PageState } from '../../web/state/page.ts';
import { barPlace, nextPlace, placeBefore } from '../../web/state/places.ts';
import { stepsToKeep } from '../../web/state/steps.ts';
import { createStore } from '../../web/state/store.ts';
import { beginHistory, changed, redone, undone, workFromText } from '../../web/state/work.ts';

function open(text: string, locked: PageState['exercise']['locked'] = []) {
  const store = createStore<PageState>({
    view: 'write',
    rule: undefined,
    side: 'marks',
    sheet: false,
    shelf: [],
    versions: [],
    exercise: { id: 'x', locked, notes: {}, brief: '', otherSeconds: 0 },
    asking: false,
    history: beginHistory(workFromText(text)),
    reviewed: undefined,
    chosen: undefined,
    hints: {},
    caret: { voice: 'S', at: 0 },
    length: { numerator: 1, denominator: 1 },
    dotted: false,
    stretch: undefined,
    copied: undefined,
    settings: FIRST_SETTINGS,
    mixer: FIRST_MIXER,
    taps: [],
    playing: undefined,
    waysOut: undefined,
    precedents: undefined,
    room: undefined,
    measure: undefined,
    notice: undefined,
    kept: 'kept',
  });
  let clock = 0;
  const actions = createActions(store, () => {
    clock += 10_000;
    return clock;
  });
  const commands: KeyCommands = {
    actions,
    playOrStop: () => undefined,
    openFindingAtCaret: () => undefined,
    describeCaret: () => undefined,
  };
  /** Keys as a person presses them: `Shift+ArrowUp`, `g`, `#`. */
  const press = (...keys: string[]): void => {
    for (const chord of keys) {
      const parts = chord === '+' ? ['+'] : chord.split('+');
      const key = parts.at(-1)!;
      const held = (name: string) => parts.slice(0, -1).includes(name);
      obeyKey(
        {
          key,
          ctrlKey: held('Control'),
          metaKey: false,
          altKey: held('Alt'),
          shiftKey: held('Shift'),
        } as KeyboardEvent,
        'stave',
        commands,
      );
    }
  };
  return { store, actions, press, text: () => store.get().history.now.text };
}

const voiceLine = (text: string, voice: string): string =>
  text
    .split('\n')
    .find((line) => line.startsWith(`${voice}:`))
    ?.slice(3) ?? '';

describe('keys on the stave', () => {
  it('write a melody by letters, lengths and signs', () => {
    const { press, text } = open('key: G major\nmetre: 4/4\nS: ?*4 | ?*4 |');
    press('g', 'a', '5', 'b', 'c', '1', 'd', '2', 'f', 'g', 'p');
    expect(voiceLine(text(), 'S')).toBe('G4 A (B C5) D | F#*2 G*2! ||');
  });
  it('change the note just written', () => {
    const { press, text } = open('key: C major\nS: ?*4 |');
    press('c', '#', 'd', '-', 'e', 'ArrowUp', 'Shift+ArrowDown');
    expect(voiceLine(text(), 'S')).toBe('C#5 Db F4 ? ||');
  });
  it('go from voice to voice, and never change a locked one', () => {
    const { press, text, store } = open('S: C5*4 |\nA: ?*4 |', ['S']);
    press('d');
    expect(store.get().notice).toMatchObject({
      kind: 'refused',
      text: 'The soprano is locked. Unlock it to change it.',
    });
    press('ArrowDown', 'e');
    expect(voiceLine(text(), 'S')).toBe('C5*4 ||');
    expect(voiceLine(text(), 'A')).toBe('E4 ?*3 ||');
  });
  it('tie, rest, erase, and undo all of it', () => {
    const { press, text, store, actions } = open('S: ?*4 |');
    const before = store.get().history.now.score;
    press('c', 't');
    expect(voiceLine(text(), 'S')).toBe('C5_ C ?*2 ||');
    press('ArrowRight', 'r', 'Backspace');
    for (let i = 0; i < 10; i++) actions.undo();
    expect(store.get().history.now.score).toEqual(before);
    for (let i = 0; i < 10; i++) actions.redo();
    expect(voiceLine(text(), 'S')).toBe('C5_ C ?*2 ||');
  });
  it('choose a stretch', () => {
    const { press, store } = open('S: C5 D5 E5 F5 | G5*4 |');
    press('ArrowRight', 'Shift+ArrowRight', 'Shift+ArrowRight');
    expect(store.get().stretch).toEqual({ from: CROTCHET, until: 3 * CROTCHET, voices: ['S'] });
    press('Shift+ArrowLeft');
    expect(store.get().stretch).toEqual({ from: CROTCHET, until: 2 * CROTCHET, voices: ['S'] });
  });
  it('say that a phrase ends with a note of a locked melody, and are undone', () => {
    const { press, text } = open('S: C5 D5 E5 F5 | G5*4 |', ['S']);
    press('ArrowRight', "'");
    expect(voiceLine(text(), 'S')).toBe("C5 D' E F | G*4 ||");
  });
  it('count note values instead of beats, where that is set', () => {
    const { press, text, actions } = open('metre: 3/2\nS: ?*3 |');
    actions.set({ digits: 'values' });
    press('4', 'c', 'd', '2', 'e', '8', 'f');
    expect(voiceLine(text(), 'S')).toBe('(C5 D) E F/4 ?*3/4 ||');
  });
  it('move, erase, copy and paste all that is chosen', () => {
    const { press, text, actions, store } = open('S: C5 D5 E5 F5 | ?*4 |\nA: G4 G4 G4 G4 | ?*4 |', ['A']);
    press('Shift+ArrowRight', 'Shift+ArrowRight', 'Shift+Alt+ArrowDown');
    expect(store.get().stretch).toEqual({ from: 0, until: 2 * CROTCHET, voices: ['S', 'A'] });
    actions.copy();
    press('ArrowUp');
    // The alto is locked: it is copied, and not moved.
    expect(voiceLine(text(), 'S')).toBe('D5 E E F | ?*4 ||');
    expect(voiceLine(text(), 'A')).toBe('G4 G G G |');
    press('Control+ArrowRight');
    actions.paste(store.get().copied!);
    expect(voiceLine(text(), 'S')).toBe('D5 E E F | C D ?*2 ||');
    expect(voiceLine(text(), 'A')).toBe('G4 G G G |');
    press('Control+a', 'Delete');
    expect(store.get().history.now.score.voices.S.every((event) => event.kind === 'gap')).toBe(true);
  });
  it('leave to the browser what is not theirs', () => {
    const { store } = open('S: C5*4 |');
    const commands = { actions: createActions(store) } as unknown as KeyCommands;
    const event = (key: string, more = {}) =>
      ({ key, ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, ...more }) as KeyboardEvent;
    expect(
      [event('Tab'), event('c', { ctrlKey: true }), event('F5')].map((e) => obeyKey(e, 'stave', commands)),
    ).toEqual([false, false, false]);
  });
  it('are known by their sign, however it is typed', () => {
    const { text, actions } = open('key: C major\nS: F4*4 |');
    const commands = { actions } as unknown as KeyCommands;
    const held = { ctrlKey: false, metaKey: false, altKey: true, shiftKey: false };
    // Option 3 on a British keyboard of one maker, AltGr on many others.
    expect(obeyKey({ ...held, key: '#' }, 'stave', commands)).toBe(true);
    expect(voiceLine(text(), 'S')).toBe('F#4*4 ||');
    expect(obeyKey({ ...held, key: '-', ctrlKey: true }, 'stave', commands)).toBe(true);
    expect(voiceLine(text(), 'S')).toBe('Fb4*4 ||');
    expect(obeyKey({ ...held, key: 'n' }, 'stave', commands)).toBe(false);
  });
  it('undo and redo from the page, and play from anywhere', () => {
    const { press, text, actions } = open('S: ?*4 |');
    let played = 0;
    const commands = { actions, playOrStop: () => played++ } as unknown as KeyCommands;
    const key = (name: string, shiftKey = false) => ({
      key: name,
      ctrlKey: true,
      metaKey: false,
      altKey: false,
      shiftKey,
    });
    press('c');
    expect(obeyKey(key('z'), 'page', commands)).toBe(true);
    expect(voiceLine(text(), 'S')).toBe('?*4 |');
    expect(obeyKey(key('Z', true), 'page', commands)).toBe(true);
    expect(voiceLine(text(), 'S')).toBe('C5 ?*3 ||');
    expect(obeyKey(key('z'), 'everywhere', commands)).toBe(false);
    expect(obeyKey(key('Enter'), 'everywhere', commands)).toBe(true);
    expect(played).toBe(1);
  });
  it('never mean two things at once', () => {
    const { actions } = open('S: C5*4 |');
    for (const reach of ['stave', 'page', 'everywhere'] as const) {
      const names = KEYS.flatMap(({ rows }) =>
        rows
          .filter(
            (row) =>
              (row.reach ?? 'stave') === reach && row.digits !== 'values' && row.where?.(actions) !== false,
          )
          .flatMap((row) => Object.keys(row.keys)),
      );
      expect(new Set(names).size).toBe(names.length);
    }
  });
  it('are all told in the help', () => {
    const told = KEYS.flatMap(({ rows }) => rows.flatMap((row) => row.shown ?? Object.keys(row.keys))).join(
      ' ',
    );
    for (const key of [
      'A … G',
      '1',
      '5',
      '7',
      '.',
      'L',
      'R',
      'T',
      'P',
      '!',
      '#',
      '-',
      'N',
      'W',
      'Space',
      'Enter',
      'Escape',
    ])
      expect(told).toContain(key);
  });
});

describe('the stave while the text can’t be read', () => {
  it('is not written on, so that nothing of the text is lost', () => {
    const { press, store, actions } = open('S: C5 X5 E5 F5 |');
    press('d');
    expect(store.get().notice).toMatchObject({ kind: 'refused' });
    expect(store.get().notice!.text).toMatch(/line 1, column 7/);
    actions.dropUnread();
    press('ArrowRight', 'd');
    expect(voiceLine(store.get().history.now.text, 'S')).toBe('C5 D E F ||');
  });
});

describe('the caret', () => {
  const { score } = readNotation('upbeat: 1\nS: G4 | (A4 B4) C5*2 D5 | E5*4 |');
  const places = (forward: boolean): number[] => {
    const found = [];
    let at = forward ? 0 : 9 * CROTCHET;
    for (let i = 0; i < 20; i++) {
      found.push(at / CROTCHET);
      const next = forward ? nextPlace(score, { voice: 'S', at }) : placeBefore(score, { voice: 'S', at });
      if (next === at) break;
      at = next;
    }
    return found;
  };
  it('stops at every beat and at every shorter note', () => {
    expect(places(true)).toEqual([0, 1, 1.5, 2, 3, 4, 5, 6, 7, 8, 9]);
    expect(places(false)).toEqual([0, 1, 1.5, 2, 3, 4, 5, 6, 7, 8, 9].reverse());
  });
  it('goes by bars', () => {
    expect(barPlace(score, CROTCHET * 2, 1)).toBe(5 * CROTCHET);
    expect(barPlace(score, CROTCHET * 2, -1)).toBe(CROTCHET);
    expect(barPlace(score, CROTCHET, -1)).toBe(0);
  });
  it('follows the text', () => {
    const { actions, store } = open('title: x\nS: C5 D5 E5 F5 |\nA: ? G4 ?*2 |');
    actions.followText(3, 7);
    expect(store.get().caret).toEqual({ voice: 'A', at: CROTCHET });
  });
});

describe('the given voices', () => {
  it('are the melody as long as nobody has said, and then what was said', () => {
    const { actions, store } = open('S: C5*4 |\nA: G4*4 |');
    store.update((state) => ({ ...state, asking: true }));
    expect(givenVoices(store.get())).toEqual(['S']);
    actions.answerGiven(['S', 'B']);
    expect(givenVoices(store.get())).toEqual(['S', 'B']);
  });
});

describe('the tempo', () => {
  it('follows the taps of a hand, and forgets them after a pause', () => {
    const { store } = open('S: C5*4 |');
    const tap = (when: number) => {
      store.update((state) => tapTempo(state, when));
      return store.get().mixer.tempo;
    };
    expect([tap(0), tap(500), tap(1010)]).toEqual([undefined, 120, 119]);
    expect([tap(9000), tap(10_000)]).toEqual([119, 60]);
  });

  it('is counted by the metre’s beat', () => {
    const { store } = open('metre: 3/2\nS: C5*3 |');
    const tap = (when: number) => store.update((state) => tapTempo(state, when));
    tap(0);
    tap(1000);
    // Sixty minims are a hundred and twenty crotchets.
    expect(store.get().mixer.tempo).toBe(120);
    expect(store.get().notice).toMatchObject({ text: 'minim = 60' });
  });
});

describe('the steps kept for undoing', () => {
  const works = (n: number) => Array.from({ length: n }, (_, i) => workFromText(`S: C${i % 9} |`));
  it('are written once each, whichever way one goes', () => {
    const [a, b, c] = works(3);
    let history = beginHistory(a!);
    const first = stepsToKeep({ exercise: 'x', base: 0, works: [a!] }, history);
    expect([first.present, first.fresh.steps.length]).toEqual([0, 0]);
    history = changed(changed(history, b!, 'stave', 0), c!, 'stave', 0);
    const second = stepsToKeep(first.kept, history);
    expect([second.present, second.fresh.from, second.fresh.steps.map((step) => step.number)]).toEqual([
      2,
      1,
      [1, 2],
    ]);
    const back = stepsToKeep(second.kept, undone(history));
    expect([back.present, back.fresh.steps.length]).toEqual([1, 0]);
    const forked = stepsToKeep(back.kept, changed(undone(history), works(5)[4]!, 'stave', 0));
    expect([forked.present, forked.fresh.from, forked.fresh.steps.length]).toEqual([2, 2, 1]);
  });
  it('drop the oldest, and keep their numbers', () => {
    let history = beginHistory(workFromText('S: C5 |'));
    let kept = stepsToKeep({ exercise: 'x', base: 0, works: [] }, history).kept;
    for (let i = 0; i < 320; i++) {
      history = changed(history, workFromText(`S: C${i % 9} |`), 'stave', 0);
      const next = stepsToKeep(kept, history);
      expect([next.present, next.fresh.steps.length]).toEqual([i + 1, 1]);
      kept = next.kept;
    }
    expect([kept.base, kept.works.length]).toEqual([21, 300]);
  });
});

describe('the store', () => {
  it('tells of changes in the order they were made, also of one made by a listener', () => {
    const store = createStore(0);
    const heard: string[] = [];
    store.subscribe((now) => {
      if (now === 1) store.update(() => 2);
    });
    store.subscribe((now, before) => heard.push(`${before}>${now}`));
    store.update(() => 1);
    store.update(() => 3);
    expect(heard).toEqual(['0>1', '1>2', '2>3']);
  });
});

describe('the history', () => {
  it('goes back and forth without end, and forks where one writes anew', () => {
    let history = beginHistory(workFromText('S: C5 |'));
    for (let i = 0; i < 500; i++)
      history = changed(history, workFromText(`S: C${i % 9} |`), 'stave', i * 1000);
    for (let i = 0; i < 500; i++) history = undone(history);
    expect(history.now.text).toBe('S: C5 |');
    expect(undone(history)).toBe(history);
    for (let i = 0; i < 400; i++) history = redone(history);
    expect(history.future.length).toBe(100);
    history = changed(history, workFromText('S: D5 |'), 'stave', 1e6);
    expect([history.future.length, history.past.length]).toEqual([0, 401]);
  });
  it('takes a burst of typing as one step', () => {
    let history = beginHistory(workFromText(''));
    for (const [text, when] of [
      ['S', 0],
      ['S:', 100],
      ['S: C5', 300],
      ['S: C5 |', 2000],
    ] as const)
      history = changed(history, workFromText(text), 'text', when);
    expect(undone(history).now.text).toBe('S: C5');
    expect(undone(undone(history)).now.text).toBe('');
  });
  it('holds each note once, however many steps there are', () => {
    const { press, store } = open('S: C5 D5 E5 F5 | G5*4 |\nA: ?*4 | ?*4 |');
    press('PageDown', 'e', 'f', 'g');
    const { past, now } = store.get().history;
    const [before] = past.slice(-1);
    expect(now.score.voices.S.every((event, i) => event === before!.score.voices.S[i])).toBe(true);
    expect(now.score.bars.every((bar, i) => bar === before!.score.bars[i])).toBe(true);
    expect(now.score.voices.A).not.toEqual(before!.score.voices.A);
  });
  it('keeps the text as typed, spaces and remarks and all', () => {
    const typed = '# mine\nS:   C5  D5 E5   F5 |';
    expect(workFromText(typed).text).toBe(typed);
    expect(printNotation(workFromText(typed).score)).not.toBe(typed);
  });
});
