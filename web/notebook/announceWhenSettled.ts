import { effect, type ReadonlySignal } from "@preact/signals-core";

/** Longer than between two keys, so that nobody hears every answer on the way to the one meant. */
const SETTLED_ms = 1500;

/** Tells those who do not see it that the answer has become another one, once it has settled. */
export function announceWhenSettled(answer: ReadonlySignal<string>, announce: (words: string) => void): void {
  let announced: string | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  effect(() => {
    const words = answer.value;
    clearTimeout(waiting);
    if (words === "") return;
    if (announced === undefined) announced = words; // as the page opened
    waiting = setTimeout(() => {
      if (words !== announced) announce(words);
      announced = words;
    }, SETTLED_ms);
  });
}
