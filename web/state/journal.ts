/**
 * The last keystrokes that the database has not confirmed yet, written at once and in place: a tab that is closed or
 * crashes in those milliseconds loses nothing. Text only; whatever can't be kept here is in the database a moment later.
 */
const PREFIX = 'partwise-unsaved:';

export interface Unsaved {
  readonly text: string;
  /** Milliseconds since 1970. */
  readonly when: number;
}

export function noteUnsaved(exercise: string, unsaved: Unsaved): void {
  try {
    localStorage.setItem(PREFIX + exercise, JSON.stringify(unsaved));
  } catch {
    // No room, or no leave to keep anything: the database is the better keeper anyway.
  }
}

export function forgetUnsaved(exercise: string): void {
  try {
    localStorage.removeItem(PREFIX + exercise);
  } catch {
    // What could not be written need not be removed.
  }
}

export function unsavedOf(exercise: string): Unsaved | undefined {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(PREFIX + exercise) ?? 'null');
    return isUnsaved(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

function isUnsaved(kept: unknown): kept is Unsaved {
  return (
    typeof kept === 'object' &&
    kept !== null &&
    'text' in kept &&
    typeof kept.text === 'string' &&
    'when' in kept &&
    typeof kept.when === 'number'
  );
}
