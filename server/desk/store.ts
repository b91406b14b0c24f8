/** The desk: stacks, scripts, decisions and marks, each stored as it is made. All times are ISO 8601 in UTC. */
import { randomUUID } from 'node:crypto';
import * as z from 'zod';
import {
  type BankedRemark,
  bankedRemarkSchema,
  type Decision,
  decisionSchema,
  type Mark,
  rememberRemark,
  settledMarks,
} from '../../src/desk/index.ts';
import type { Database } from './database.ts';
import { keepFigures } from './kept.ts';
import { marksGiven } from './marks-given.ts';
import {
  entryOf,
  missing,
  type NewScript,
  outdated,
  type Proposed,
  type Row,
  type Script,
  type ScriptEntry,
  type Stack,
  type StackSettings,
  scriptOf,
  stackOf,
  type TakenBack,
} from './records.ts';
import { forgetTallies, keepTally } from './tallies.ts';

export class Desk {
  constructor(
    readonly db: Database,
    readonly now: () => Date = () => new Date(),
  ) {}

  close(): void {
    this.db.close();
  }

  // Stacks

  addStack(settings: StackSettings): Stack {
    const { lastInsertRowid } = this.db
      .prepare(
        'INSERT INTO stacks (name, created, brief, profile, scheme, pattern, reference, second, voices) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)',
      )
      .run(
        settings.name,
        this.now().toISOString(),
        settings.brief ?? null,
        JSON.stringify(settings.profile),
        JSON.stringify(settings.scheme),
        settings.pattern ?? null,
        settings.reference ?? null,
        settings.second ?? null,
        settings.voices ?? null,
      );
    return this.stack(Number(lastInsertRowid));
  }

  /**
   * Puts new settings in the old ones' place. With another profile or brief, or other voices, its scripts are to be reviewed again.
   * @throws {Refused}
   */
  changeStack(id: number, seen: number, settings: StackSettings): Stack {
    const known = this.stack(id);
    const reviewsHold =
      known.brief === settings.brief &&
      known.voices === settings.voices &&
      JSON.stringify(known.profile) === JSON.stringify(settings.profile);
    this.db
      .transaction(() => {
        this.#raiseStack(id, seen);
        if (!reviewsHold) this.db.prepare('UPDATE scripts SET again = 1 WHERE stack = ?').run(id);
        this.db
          .prepare(
            'UPDATE stacks SET name = ?, brief = ?, profile = ?, scheme = ?, pattern = ?, reference = ?, second = ?, voices = ? WHERE id = ?',
          )
          .run(
            settings.name,
            settings.brief ?? null,
            JSON.stringify(settings.profile),
            JSON.stringify(settings.scheme),
            settings.pattern ?? null,
            settings.reference ?? null,
            settings.second ?? null,
            settings.voices ?? null,
            id,
          );
      })
      .immediate();
    return this.stack(id);
  }

  stacks(): Stack[] {
    return this.db
      .prepare('SELECT * FROM stacks ORDER BY id')
      .all()
      .map((row) => stackOf(row as Row));
  }

  /** @throws {Refused} */
  stack(id: number): Stack {
    const row = this.db.prepare('SELECT * FROM stacks WHERE id = ?').get(id);
    if (row === undefined) throw missing(`There is no stack ${id} on this desk.`);
    return stackOf(row as Row);
  }

  stackNamed(name: string): Stack | undefined {
    const row = this.db.prepare('SELECT * FROM stacks WHERE name = ? ORDER BY id').get(name);
    return row === undefined ? undefined : stackOf(row as Row);
  }

  // Scripts

  /** True where this very file is on the stack already, so that a run that was stopped goes on where it was. */
  has(stack: number, file: string, sum: string): boolean {
    return (
      this.db
        .prepare('SELECT 1 FROM scripts WHERE stack = ? AND file = ? AND sum = ? AND NOT again')
        .get(stack, file, sum) !== undefined
    );
  }

  /** Stores a reviewed script; one that is there already stays as it is, unless it is to be tried again. Gives its id. */
  addScript(stack: number, script: NewScript): number {
    let id = 0;
    this.db
      .transaction(() => {
        id = this.#addScript(stack, script);
      })
      .immediate();
    return id;
  }

  #addScript(stack: number, script: NewScript): number {
    const findings = script.facts?.findings ?? [];
    const number = (severity: string) => findings.filter((finding) => finding.severity === severity).length;
    this.db
      .prepare(
        `INSERT INTO scripts (stack, file, sum, candidate, draft, received, content, facts, error, again, given, faults, queries, remarks, title)
         VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
         ON CONFLICT (stack, file, sum) DO UPDATE SET candidate = coalesce(scripts.candidate, excluded.candidate),
           draft = CASE WHEN scripts.candidate IS NULL THEN excluded.draft ELSE scripts.draft END,
           facts = excluded.facts, error = excluded.error, again = excluded.again, given = excluded.given,
           faults = excluded.faults, queries = excluded.queries, remarks = excluded.remarks, title = excluded.title
         WHERE scripts.again`,
      )
      .run(
        stack,
        script.file,
        script.sum,
        script.candidate ?? null,
        script.draft,
        this.now().toISOString(),
        Buffer.from(script.content),
        script.facts === undefined ? null : JSON.stringify(script.facts),
        script.error === undefined ? null : JSON.stringify(script.error),
        script.again === true ? 1 : 0,
        script.given === undefined ? null : JSON.stringify(script.given),
        number('fault'),
        number('query'),
        number('remark'),
        script.facts?.title ?? '',
      );
    const id = this.db
      .prepare('SELECT id FROM scripts WHERE stack = ? AND file = ? AND sum = ?')
      .pluck()
      .get(stack, script.file, script.sum) as number;
    keepTally(this.db, id, this.decisions(stack, id), keepFigures(this.db, id, script.facts));
    return id;
  }

  /** Scripts in the order in which they are marked: by candidate, then draft; those without a number last. */
  entries(stack: number, most = 1_000, after = 0): ScriptEntry[] {
    return this.db
      .prepare(
        `SELECT id, stack, file, candidate, draft, received, error, faults, queries, remarks, voices, done, revision FROM scripts
         WHERE stack = ? ORDER BY candidate IS NULL, candidate, draft, id LIMIT ? OFFSET ?`,
      )
      .all(stack, most, after)
      .map((row) => entryOf(row as Row));
  }

  count(stack: number): { readonly scripts: number; readonly unreadable: number; readonly done: number } {
    return this.db
      .prepare(
        `SELECT count(*) AS scripts, count(error) AS unreadable, coalesce(sum(done), 0) AS done FROM scripts WHERE stack = ?`,
      )
      .get(stack) as { scripts: number; unreadable: number; done: number };
  }

  /** @throws {Refused} */
  script(id: number): Script {
    const row = this.db.prepare('SELECT * FROM scripts WHERE id = ?').get(id);
    if (row === undefined) throw missing(`There is no script ${id} on this desk.`);
    return scriptOf(row as Row);
  }

  /** The file as it was handed in. @throws {Refused} */
  content(id: number): Uint8Array {
    const bytes = this.db.prepare('SELECT content FROM scripts WHERE id = ?').pluck().get(id);
    if (!(bytes instanceof Uint8Array)) throw missing(`There is no script ${id} on this desk.`);
    return bytes;
  }

  /** The draft before this one by the same candidate. */
  draftBefore(script: ScriptEntry): Script | undefined {
    if (script.candidate === undefined) return undefined;
    const row = this.db
      .prepare(
        `SELECT * FROM scripts WHERE stack = ? AND candidate = ? AND draft < ? AND facts IS NOT NULL
         ORDER BY draft DESC, id DESC`,
      )
      .get(script.stack, script.candidate, script.draft);
    return row === undefined ? undefined : scriptOf(row as Row);
  }

  /** Sets whose script it is, or that the teacher has finished with it. @throws {Refused} */
  changeScript(
    id: number,
    seen: number,
    change: {
      readonly candidate?: string;
      readonly draft?: number;
      readonly done?: boolean;
      /** With other voices it is to be reviewed again; an empty text leaves them to the file. */
      readonly voices?: string;
    },
  ): ScriptEntry {
    this.db
      .transaction(() => {
        this.#raiseScript(id, seen);
        const { candidate, draft, done, voices } = change;
        if (candidate !== undefined) this.#set('candidate', candidate === '' ? null : candidate, id);
        if (draft !== undefined) this.#set('draft', draft, id);
        if (candidate !== undefined || draft !== undefined) this.#set('by_hand', 1, id);
        if (done !== undefined) this.#set('done', done ? 1 : 0, id);
        if (voices !== undefined) {
          this.#set('voices', voices === '' ? null : voices, id);
          this.#set('again', 1, id);
        }
      })
      .immediate();
    return this.script(id);
  }

  #set(
    column: 'candidate' | 'draft' | 'by_hand' | 'done' | 'voices' | 'again',
    value: string | number | null,
    id: number,
  ): void {
    this.db.prepare(`UPDATE scripts SET ${column} = ? WHERE id = ?`).run(value, id);
  }

  // Decisions

  /** A stack's decisions in the order in which they were made; with `script`, those that bear on that script. */
  decisions(stack: number, script?: number): Decision[] {
    const rows =
      script === undefined
        ? this.db.prepare('SELECT decision FROM decisions WHERE stack = ? ORDER BY number').pluck().all(stack)
        : this.db
            .prepare(
              'SELECT decision FROM decisions WHERE stack = ? AND (script = ? OR script IS NULL) ORDER BY number',
            )
            .pluck()
            .all(stack, script);
    return rows.map((row) => decisionSchema.parse(JSON.parse(String(row))));
  }

  /**
   * Stores a decision. `seen` is the revision of what it is about (a script, or for a decision about the whole class
   * the stack) that the person had before them; `beside` the rule whose finding a remark was written beside. @throws {Refused}
   */
  decide(
    stack: number,
    script: number | undefined,
    seen: number,
    proposed: Proposed,
    beside?: string,
  ): Decision {
    const decision = decisionSchema.parse({ ...proposed, id: randomUUID(), at: this.now().toISOString() });
    this.db
      .transaction(() => {
        if (script === undefined) this.#raiseStack(stack, seen);
        else this.#raiseScript(script, seen);
        this.#store(decision, stack, script);
        if (decision.kind === 'remark') this.#remember(decision.text, beside);
        if (script !== undefined) keepTally(this.db, script, this.decisions(stack, script));
        else forgetTallies(this.db, stack, decision.kind === 'overrule for all' ? decision.rule : undefined);
      })
      .immediate();
    return decision;
  }

  /** Stores decisions carried over from the draft before, all or none. Whoever had the script before them is told. */
  carry(stack: number, script: number, carried: readonly Proposed[]): void {
    this.db
      .transaction(() => {
        this.db.prepare('UPDATE scripts SET revision = revision + 1 WHERE id = ?').run(script);
        for (const proposed of carried) {
          const made = { ...proposed, id: randomUUID(), at: this.now().toISOString() };
          this.#store(decisionSchema.parse(made), stack, script);
        }
        keepTally(this.db, script, this.decisions(stack, script));
      })
      .immediate();
  }

  #store(decision: Decision, stack: number, script: number | undefined): void {
    this.db
      .prepare('INSERT INTO decisions (id, stack, script, decision) VALUES (?, ?, ?, ?)')
      .run(decision.id, stack, script ?? null, JSON.stringify(decision));
  }

  /** What a decision was about: needed to undo it. @throws {Refused} */
  whereDecided(id: string): { readonly stack: number; readonly script?: number } {
    const row = this.db.prepare('SELECT stack, script FROM decisions WHERE id = ?').get(id) as
      | { stack: number; script: number | null }
      | undefined;
    if (row === undefined) throw missing('There is no such decision on this desk.');
    return row.script === null ? { stack: row.stack } : { stack: row.stack, script: row.script };
  }

  // Remarks that come again

  #remember(text: string, rule: string | undefined): void {
    const bank = rememberRemark(this.bank(), text, this.now().toISOString(), rule);
    this.set('bank', JSON.stringify(bank));
  }

  /** The remarks made so far, for `rankRemarks`. */
  bank(): readonly BankedRemark[] {
    return z.array(bankedRemarkSchema).parse(JSON.parse(this.setting('bank') ?? '[]'));
  }

  // Marks

  /** Stores a mark, or takes the one that somebody gave at a criterion back. @throws {Refused} */
  mark(script: number, seen: number, mark: Mark | TakenBack): void {
    const taken = 'takeBack' in mark;
    this.db
      .transaction(() => {
        this.#raiseScript(script, seen);
        this.db
          .prepare('INSERT INTO marks (script, criterion, mark, marker, agreed) VALUES (?, ?, ?, ?, ?)')
          .run(
            script,
            taken ? mark.takeBack : mark.criterion,
            taken ? null : JSON.stringify(mark),
            mark.by ?? null,
            mark.agreed ? 1 : 0,
          );
      })
      .immediate();
  }

  /** The marks that sheets and the mark book tell: see `settledMarks`. */
  marks(script: number): Mark[] {
    const { given, second } = marksGiven(this.db, script);
    return settledMarks(given, second);
  }

  // Settings of the desk

  setting(name: string): string | undefined {
    return this.db.prepare('SELECT value FROM settings WHERE name = ?').pluck().get(name) as
      | string
      | undefined;
  }

  set(name: string, value: string): void {
    this.db
      .prepare(
        'INSERT INTO settings (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value',
      )
      .run(name, value);
  }

  // Revisions

  #raiseScript(id: number, seen: number): void {
    const raised = this.db
      .prepare('UPDATE scripts SET revision = revision + 1 WHERE id = ? AND revision = ?')
      .run(id, seen);
    if (raised.changes === 0) throw outdated(this.script(id).revision);
  }

  #raiseStack(id: number, seen: number): void {
    const raised = this.db
      .prepare('UPDATE stacks SET revision = revision + 1 WHERE id = ? AND revision = ?')
      .run(id, seen);
    if (raised.changes === 0) throw outdated(this.stack(id).revision);
  }
}
