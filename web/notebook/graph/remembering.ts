import { keepShared } from "../../editing/keepShared.ts";

/** `work` with every part of its answer that came out the same being the same object as the last time. */
export function remembering<In, Out>(work: (input: In) => Out): (input: In) => Out {
  let last: Out | undefined;
  return (input) => {
    last = keepShared(last, work(input));
    return last;
  };
}

/** `work`, done again only where its input is another object than the last time. */
export function lastOf<In extends object, Out>(work: (input: In) => Out): (input: In) => Out {
  let last: { readonly input: In; readonly output: Out } | undefined;
  return (input) => {
    if (last?.input !== input) last = { input, output: work(input) };
    return last.output;
  };
}

/** The object of the last time for as long as all the parts named are the very ones of that. */
export function sameWhile<T extends object>(parts: readonly (keyof T)[]): (next: T) => T {
  let last: T | undefined;
  return (next) => {
    const before = last;
    if (before === undefined || parts.some((part) => before[part] !== next[part])) last = next;
    return last ?? next;
  };
}
