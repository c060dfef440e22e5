/** Of one kind: what is being answered, and the newest that waits for that. */
interface Kind {
  isBusy: boolean;
  waiting?: () => Promise<void>;
}

/**
 * Puts one question of each kind at a time, in the order in which they were asked. A question that a newer one of its kind
 * overtakes while it waits is never put and never answers. Those of other kinds are put without waiting for an answer, so
 * that whoever answers need not wait for the next. With `rest_ms` none is put before that long went by without a new one.
 */
export function oneOfAKind(rest_ms = 0): <T>(kind: string, ask: () => Promise<T>) => Promise<T> {
  const kinds = new Map<string, Kind>();
  let resting: ReturnType<typeof setTimeout> | undefined;
  const put = (kind: Kind) => {
    const { waiting } = kind;
    if (kind.isBusy || resting !== undefined || !waiting) return;
    kind.isBusy = true;
    delete kind.waiting;
    waiting().finally(() => {
      kind.isBusy = false;
      put(kind);
    });
  };
  const rest = () => {
    clearTimeout(resting);
    resting = setTimeout(() => {
      resting = undefined;
      for (const kind of kinds.values()) put(kind);
    }, rest_ms);
  };
  return (name, ask) =>
    new Promise((resolve, reject) => {
      const kind = kinds.get(name) ?? { isBusy: false };
      kinds.set(name, kind);
      kind.waiting = () => ask().then(resolve, reject);
      if (rest_ms > 0) rest();
      else put(kind);
    });
}
