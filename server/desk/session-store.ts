/** Sessions kept in the desk's own file, so that a restart signs nobody out and nothing else has to run. */
import type { SessionData } from 'express-session';
import session from 'express-session';
import type { Desk } from './store.ts';

/** A session ends after so long without a request. */
export const SESSION_MILLISECONDS = 8 * 60 * 60 * 1000;

type Done<T> = (error: unknown, value?: T) => void;

export class SessionStore extends session.Store {
  readonly #desk: Desk;

  constructor(desk: Desk) {
    super();
    this.#desk = desk;
  }

  override get(id: string, done: Done<SessionData | null>): void {
    attempt(done, () => {
      const text = this.#desk.db
        .prepare('SELECT session FROM sessions WHERE id = ? AND expires > ?')
        .pluck()
        .get(id, this.#desk.now().getTime());
      return text === undefined ? null : (JSON.parse(String(text)) as SessionData);
    });
  }

  override set(id: string, data: SessionData, done: Done<void> = () => {}): void {
    attempt(done, () => {
      const now = this.#desk.now().getTime();
      this.#desk.db.prepare('DELETE FROM sessions WHERE expires <= ?').run(now);
      this.#desk.db
        .prepare(
          `INSERT INTO sessions (id, expires, session) VALUES (?, ?, ?)
           ON CONFLICT (id) DO UPDATE SET expires = excluded.expires, session = excluded.session`,
        )
        .run(id, now + SESSION_MILLISECONDS, JSON.stringify(data));
    });
  }

  override destroy(id: string, done: Done<void> = () => {}): void {
    attempt(done, () => {
      this.#desk.db.prepare('DELETE FROM sessions WHERE id = ?').run(id);
    });
  }

  override touch(id: string, _data: SessionData, done: () => void = () => {}): void {
    attempt(done, () => {
      this.#desk.db
        .prepare('UPDATE sessions SET expires = ? WHERE id = ?')
        .run(this.#desk.now().getTime() + SESSION_MILLISECONDS, id);
    });
  }
}

function attempt<T>(done: Done<T>, run: () => T): void {
  let value: T;
  try {
    value = run();
  } catch (error) {
    done(error);
    return;
  }
  done(null, value);
}
