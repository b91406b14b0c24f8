import { describe, expect, it } from 'vitest';
import type { Judged, ScriptView } from '../../src/desk/wire-shapes.ts';
import { KEYS } from '../../web/desk/keys.ts';
import { type DeskState, EMPTY_DESK } from '../../web/desk/state.ts';
import { lastMade, nextOpen, placeBeside, stepped, withMade } from '../../web/desk/steps.ts';

function finding(id: string, standing: Judged['standing'], severity: Judged['severity'] = 'fault'): Judged {
  return { id, standing, severity } as Judged;
}

function at(findings: readonly Judged[], state: Partial<DeskState> = {}): DeskState {
  const script = { script: { id: 7 }, place: { at: 201, of: 300, next: 8 }, findings };
  return {
    ...EMPTY_DESK,
    stack: { id: 3 } as DeskState['stack'],
    script: script as unknown as ScriptView,
    ...state,
  };
}

describe('going through a script', () => {
  const findings = [finding('a', 'agreed'), finding('b', 'open'), finding('c', 'open', 'remark')];

  it('steps from finding to finding and stays at the ends', () => {
    expect(stepped(at(findings), 1)).toBe('a');
    expect(stepped(at(findings, { chosen: 'a' }), 1)).toBe('b');
    expect(stepped(at(findings, { chosen: 'c' }), 1)).toBe('c');
    expect(stepped(at([]), 1)).toBeUndefined();
  });

  it('goes on to what is open, also round the end; remarks are not asked for', () => {
    const c = findings[2]!;
    expect(nextOpen(at(findings, { chosen: 'c' }), c)).toBe('b');
    expect(nextOpen(at([findings[0]!], { chosen: 'a' }), findings[0]!)).toBeUndefined();
  });

  it('does not move whoever has gone on by hand, writes, or was refused', () => {
    const a = findings[0]!;
    expect(nextOpen(at(findings, { chosen: 'c' }), a)).toBeUndefined();
    expect(nextOpen(at(findings, { chosen: 'a', notice: { text: 'No.', wrong: true } }), a)).toBeUndefined();
    const writing = { from: 0, text: '', offered: [] };
    expect(nextOpen(at(findings, { chosen: 'a', writing }), a)).toBeUndefined();
  });

  it('goes to the next script, and from the last one to its part of the queue', () => {
    expect(placeBeside(at(findings), 'next')).toEqual({ view: 'script', script: 8 });
    expect(placeBeside(at(findings), 'before')).toEqual({ view: 'queue', stack: 3, after: 200 });
  });

  it('takes back what was decided here or for all, not on another script', () => {
    const made = [
      { id: '1', what: 'here', forAll: false, script: 7 },
      { id: '2', what: 'for all', forAll: true, script: 6 },
      { id: '3', what: 'elsewhere', forAll: false, script: 6 },
    ];
    expect(lastMade(at(findings, { made }))?.id).toBe('2');
    expect(withMade(Array(200).fill(made[0]), made[1]!)).toHaveLength(200);
  });
});

describe('the keys of the desk', () => {
  it('have one meaning each, and help for all', () => {
    const keys = KEYS.flatMap(({ commands }) => commands.map(({ key }) => key));
    expect(new Set(keys).size).toBe(keys.length);
    for (const { help, shown, commands } of KEYS) {
      expect(help).not.toBe('');
      expect(shown.replace('Shift ', '').split(' ').length).toBeGreaterThanOrEqual(
        commands.length > 1 ? 2 : 1,
      );
    }
  });
});
