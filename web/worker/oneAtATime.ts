interface Waiting {
  readonly kind: string;
  readonly start: () => Promise<void>;
}

/**
 * Puts questions one at a time, in the order in which their kinds were first asked. A question that a newer one of its
 * kind overtakes while it waits is never put and never answers. With `rest_ms` none is put before that long went by
 * without a new one.
 */
export function oneAtATime(rest_ms = 0): <T>(kind: string, ask: () => Promise<T>) => Promise<T> {
  const waiting: Waiting[] = [];
  let isBusy = false;
  let resting: ReturnType<typeof setTimeout> | undefined;
  const next = () => {
    if (isBusy || resting !== undefined) return;
    const first = waiting.shift();
    if (!first) return;
    isBusy = true;
    first.start().finally(() => {
      isBusy = false;
      next();
    });
  };
  const rest = () => {
    clearTimeout(resting);
    resting = setTimeout(() => {
      resting = undefined;
      next();
    }, rest_ms);
  };
  return (kind, ask) =>
    new Promise((resolve, reject) => {
      const question = { kind, start: () => ask().then(resolve, reject) };
      const overtaken = waiting.findIndex((each) => each.kind === kind);
      if (overtaken >= 0) waiting[overtaken] = question;
      else waiting.push(question);
      if (rest_ms > 0) rest();
      else next();
    });
}
