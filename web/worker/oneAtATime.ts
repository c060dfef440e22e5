interface Waiting {
  readonly kind: string;
  readonly start: () => Promise<void>;
}

/**
 * Puts questions one at a time, in the order in which their kinds were first asked. A question that a newer one of its
 * kind overtakes while it waits is never put and never answers.
 */
export function oneAtATime(): <T>(kind: string, ask: () => Promise<T>) => Promise<T> {
  const waiting: Waiting[] = [];
  let isBusy = false;
  const next = () => {
    const first = waiting.shift();
    isBusy = first !== undefined;
    first?.start().finally(next);
  };
  return (kind, ask) =>
    new Promise((resolve, reject) => {
      const question = { kind, start: () => ask().then(resolve, reject) };
      const overtaken = waiting.findIndex((each) => each.kind === kind);
      if (overtaken >= 0) waiting[overtaken] = question;
      else waiting.push(question);
      if (!isBusy) next();
    });
}
