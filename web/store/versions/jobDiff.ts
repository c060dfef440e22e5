import { sameDocument } from "../database/sameDocument.ts";

/** One difference between two job documents. */
export interface Difference {
  readonly kind: "changed" | "added" | "removed";
  /** By keys and indexes of the newer document, such as `packs.0.floor_frac`; of the older one for what was removed. */
  readonly path: string;
  /** The same place in words where lists hold named things: `packs › Small › floor_frac`. */
  readonly place: string;
  readonly before?: unknown;
  readonly after?: unknown;
}

interface Place {
  readonly path: readonly (string | number)[];
  readonly words: readonly string[];
}

/**
 * All differences between two documents, by path, in the order of the document. Things in lists are matched by `id` or
 * `name` where each has one of its own (a pack taken out from the front is one difference, not all the packs behind
 * it), else by their place; a renamed thing is matched by its place among those left. A list of plain values is one
 * value: a recorded road differs once, not a thousand times.
 */
export function jobDiff(before: unknown, after: unknown): Difference[] {
  const found: Difference[] = [];
  compare(before, after, { path: [], words: [] }, found);
  return found;
}

function compare(before: unknown, after: unknown, place: Place, found: Difference[]): void {
  if (Object.is(before, after)) return;
  if (isThings(before) && isThings(after)) {
    compareThings(before, after, place, found);
    return;
  }
  if (isGroup(before) && isGroup(after)) {
    for (const key of new Set([...Object.keys(before), ...Object.keys(after)])) {
      compare(before[key], after[key], step(place, key, key), found);
    }
    return;
  }
  if (Array.isArray(before) && Array.isArray(after) && sameDocument(before, after)) return;
  const at = { path: place.path.join("."), place: place.words.join(" › ") };
  if (before === undefined) found.push({ kind: "added", ...at, after });
  else if (after === undefined) found.push({ kind: "removed", ...at, before });
  else found.push({ kind: "changed", ...at, before, after });
}

function compareThings(before: readonly object[], after: readonly object[], place: Place, found: Difference[]): void {
  const partner = partners(before, after);
  after.forEach((thing, i) => {
    const j = partner[i];
    compare(j === undefined ? undefined : before[j], thing, step(place, i, label(thing, i)), found);
  });
  before.forEach((thing, j) => {
    if (!partner.includes(j)) compare(thing, undefined, step(place, j, label(thing, j)), found);
  });
}

/** For each thing after, the index of its like before. */
function partners(before: readonly object[], after: readonly object[]): (number | undefined)[] {
  const key = (["id", "name"] as const).find((each) => haveOwn(before, each) && haveOwn(after, each));
  if (!key) return after.map((_, i) => (i < before.length ? i : undefined));
  const names = before.map((thing) => (thing as Record<string, unknown>)[key]);
  const matched = after.map((thing) => {
    const j = names.indexOf((thing as Record<string, unknown>)[key]);
    return j < 0 ? undefined : j;
  });
  return matched.map((j, i) => j ?? (i < before.length && !matched.includes(i) ? i : undefined));
}

/** Whether every thing has a text under `key`, no two the same. */
function haveOwn(things: readonly object[], key: string): boolean {
  const values = things.map((thing) => (thing as Record<string, unknown>)[key]);
  return values.every((value) => typeof value === "string") && new Set(values).size === values.length;
}

function label(thing: object, i: number): string {
  const { name, title, id } = thing as { name?: unknown; title?: unknown; id?: unknown };
  const word = [name, title, id].find((each) => typeof each === "string");
  return typeof word === "string" ? word : String(i + 1);
}

function step({ path, words }: Place, key: string | number, word: string): Place {
  return { path: [...path, key], words: [...words, word] };
}

function isGroup(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isThings(value: unknown): value is object[] {
  return Array.isArray(value) && value.every(isGroup);
}
