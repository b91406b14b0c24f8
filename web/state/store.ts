/** Holds one value and tells who asked when it has become another. */
export interface Store<T> {
  get(): T;
  /** Takes the present value to the next; listeners hear of each change once, in the order the changes were made. */
  update(change: (value: T) => T): void;
  /** Returns the way to stop listening. */
  subscribe(listener: (value: T, before: T) => void): () => void;
}

export function createStore<T>(initial: T): Store<T> {
  let value = initial;
  const listeners = new Set<(value: T, before: T) => void>();
  /** A listener may make a change itself: the others hear of the one before it first. */
  const untold: (readonly [T, T])[] = [];
  const tell = (): void => {
    while (untold.length > 0) {
      const [now, before] = untold[0]!;
      for (const listener of listeners) listener(now, before);
      untold.shift();
    }
  };
  return {
    get: () => value,
    update(change) {
      const before = value;
      value = change(before);
      if (value === before) return;
      untold.push([value, before]);
      if (untold.length === 1) tell();
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
