/** Holds one value and tells who asked when it has become another. */
export interface Store<T> {
  get(): T;
  /** Takes the present value to the next; listeners hear of it once, in the same turn. */
  update(change: (value: T) => T): void;
  /** Returns the way to stop listening. */
  subscribe(listener: (value: T, before: T) => void): () => void;
}

export function createStore<T>(initial: T): Store<T> {
  let value = initial;
  const listeners = new Set<(value: T, before: T) => void>();
  return {
    get: () => value,
    update(change) {
      const before = value;
      value = change(before);
      if (value !== before) for (const listener of listeners) listener(value, before);
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
