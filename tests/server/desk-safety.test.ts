/** Nothing that was confirmed is lost, whatever happens: kills, two at once, damage, a backup brought back. */
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { restore } from '../../server/desk/backup.ts';
import { openMarkingDesk } from '../../server/desk/marking-desk.ts';
import { openForReading, openForWriting } from '../../server/desk/open.ts';
import { sqlite } from '../../server/desk/sqlite.ts';
import { Desk } from '../../server/desk/store.ts';
import { EXAMPLE_SCHEME } from '../../src/desk/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';

let folder: string;
let path: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'partwise-safety-'));
  path = join(folder, 'desk.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true }));

/** A desk with one stack and one script on it. */
async function furnished(): Promise<{ desk: Desk; script: number }> {
  const desk = new Desk(await openForWriting(path));
  const stack = desk.addStack({ name: 'Class', profile: CHORALE, scheme: EXAMPLE_SCHEME });
  const script = desk.addScript(stack.id, {
    file: '4012.txt',
    sum: 'x',
    content: new Uint8Array([1]),
    candidate: '4012',
    draft: 1,
  });
  return { desk, script };
}

/** Starts the decider and kills it, without a warning, after it has confirmed a few decisions. */
function decideUntilKilled(script: number, after: number): Promise<string[]> {
  const decider = fileURLToPath(new URL('../support/decide-until-killed.ts', import.meta.url));
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', 'tsx', decider, path, String(script)], {
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let confirmed = '';
    let complaints = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      confirmed += text;
      if (confirmed.split('\n').length > after) child.kill('SIGKILL');
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      complaints += text;
    });
    child.once('error', reject);
    child.once('close', (_status, signal) => {
      if (signal !== 'SIGKILL') reject(new Error(complaints));
      // The last line may be cut off: it was not confirmed.
      else resolve(confirmed.split('\n').slice(0, -1));
    });
  });
}

describe('a kill', () => {
  it('at any moment loses nothing that was confirmed', async () => {
    const { desk, script } = await furnished();
    desk.close();
    const confirmed: string[] = [];
    for (let round = 0; round < 6; round++) {
      confirmed.push(...(await decideUntilKilled(script, 3 + 11 * round)));
      const again = new Desk(await openForWriting(path));
      const kept = again.decisions(1);
      expect(kept.map(({ id }) => id)).toEqual(expect.arrayContaining(confirmed));
      // One at most was stored without having been confirmed in each round, and the count of revisions is right.
      expect(kept.length - confirmed.length).toBeLessThanOrEqual(round + 1);
      expect(again.script(script).revision).toBe(kept.length);
      again.close();
    }
    expect(confirmed.length).toBeGreaterThan(100);
  }, 60_000);
});

describe('two at one desk', () => {
  it('never overwrite each other unknowingly', async () => {
    const { desk, script } = await furnished();
    const other = new Desk(await openForWriting(path));
    const remark = (text: string) => ({ kind: 'remark' as const, script: String(script), from: 0, text });
    desk.decide(1, script, 0, remark('first'));
    expect(() => other.decide(1, script, 0, remark('second'))).toThrow(
      expect.objectContaining({ kind: 'outdated' }),
    );
    expect(() => other.changeScript(script, 0, { done: true })).toThrow(
      expect.objectContaining({ kind: 'outdated' }),
    );
    other.decide(1, script, 1, remark('second, having looked'));
    expect(desk.decisions(1)).toHaveLength(2);
    expect(desk.script(script).done).toBe(false);
    desk.close();
    other.close();
  });

  it('a decision about the class and one about a script do not hinder each other', async () => {
    const { desk, script } = await furnished();
    desk.decide(1, undefined, 0, { kind: 'overrule for all', rule: 'voice-overlap' });
    desk.decide(1, script, 0, { kind: 'remark', script: String(script), from: 0, text: 'x' });
    expect(() => desk.decide(1, undefined, 0, { kind: 'overrule for all', rule: 'wide-leap' })).toThrow(
      expect.objectContaining({ kind: 'outdated' }),
    );
    desk.close();
  });
});

describe('reports', () => {
  it('read through a connection that cannot write', async () => {
    const { desk } = await furnished();
    const reader = await openForReading(path);
    expect(() => reader.prepare('DELETE FROM scripts').run()).toThrow(/readonly/);
    expect(new Desk(reader).stack(1).name).toBe('Class');
    reader.close();
    desk.close();
  });
});

describe('a file that is not well', () => {
  it('damaged: refused with a sentence and a way back, and left as it is', async () => {
    const { desk, script } = await furnished();
    for (let i = 0; i < 300; i++) {
      desk.decide(1, script, i, {
        kind: 'remark',
        script: String(script),
        from: 0,
        text: `Remark ${i}`.repeat(20),
      });
    }
    desk.db.pragma('wal_checkpoint(TRUNCATE)');
    desk.close();
    const bytes = readFileSync(path);
    bytes.fill(0x5a, 8192, 8192 + 4096 * 6);
    writeFileSync(path, bytes);
    await expect(openForWriting(path)).rejects.toThrow(/is damaged.*Nothing was changed.*--restore/s);
    expect(readFileSync(path).equals(bytes)).toBe(true);
  });

  it('no database at all, or another program’s', async () => {
    writeFileSync(path, 'These are lesson notes, not a desk. '.repeat(200));
    await expect(openForWriting(path)).rejects.toThrow(/damaged|not of a marking desk/);
    const other = join(folder, 'other.sqlite');
    const db = (await sqlite())(other, {});
    db.exec('CREATE TABLE recipes (name TEXT)');
    db.close();
    await expect(openForWriting(other)).rejects.toThrow(/not of a marking desk/);
  });

  it('written by a newer version', async () => {
    const { desk } = await furnished();
    desk.db.pragma('user_version = 99');
    desk.close();
    await expect(openForWriting(path)).rejects.toThrow(/newer Partwise/);
  });
});

describe('a desk that is in use', () => {
  it('is not replaced by a backup under whoever serves it, and can be once it is free', async () => {
    const marking = await openMarkingDesk(path, { threads: 1 });
    const backup = await marking.backUp(join(folder, 'copy.sqlite'));
    marking.stackFor({ name: 'Confirmed after the backup' });
    await expect(restore(path, backup, new Date())).rejects.toThrow(/in use.*Nothing was changed/s);
    expect(marking.desk.stackNamed('Confirmed after the backup')).toBeDefined();
    await marking.close();
    expect((await restore(path, backup, new Date())).kept).toBeDefined();
  });

  it('is nobody’s to read but its owner’s, its backups too', async () => {
    const marking = await openMarkingDesk(path, { threads: 1 });
    const backup = await marking.backUp(join(folder, 'copy.sqlite'));
    for (const file of [path, `${path}-wal`, backup]) expect(statSync(file).mode & 0o777).toBe(0o600);
    await marking.close();
  });

  it('says in a sentence where it can’t be kept', async () => {
    writeFileSync(join(folder, 'a file'), '');
    await expect(openForWriting(join(folder, 'a file', 'desk.sqlite'))).rejects.toThrow(
      /could not be opened: the folder must be there/,
    );
  });
});

describe('a backup', () => {
  it('is made while the desk is in use, and brought back; what stood there is kept', async () => {
    const marking = await openMarkingDesk(path, { threads: 1 });
    const stack = marking.stackFor({ name: 'Class' });
    const backup = join(folder, 'copies', 'copy.sqlite');
    await marking.backUp(backup);
    marking.stackFor({ name: 'Made after the backup' });
    await marking.close();
    writeFileSync(path, 'gone');
    const { kept } = await restore(path, backup, new Date());
    expect(readFileSync(kept!, 'utf8')).toBe('gone');
    const again = await openMarkingDesk(path, { threads: 1 });
    expect(again.desk.stacks().map(({ id }) => id)).toEqual([stack]);
    await again.close();
  });

  it('is made by itself each day, beside the desk', async () => {
    const marking = await openMarkingDesk(path, { threads: 1 });
    marking.stackFor({ name: 'Class' });
    await marking.close();
    const day = new Date().toISOString().slice(0, 10);
    const copy = join(folder, 'backups', `desk-${day}.sqlite`);
    expect(existsSync(copy)).toBe(true);
    expect(new Desk(await openForReading(copy)).stacks()).toHaveLength(1);
  });

  it('that is damaged itself is not brought back', async () => {
    const { desk } = await furnished();
    desk.close();
    const backup = join(folder, 'bad.sqlite');
    writeFileSync(backup, 'not a database, but long enough to look at '.repeat(100));
    await expect(restore(path, backup, new Date())).rejects.toThrow(/damaged/);
    expect(new Desk(await openForReading(path)).stacks()).toHaveLength(1);
  });
});
