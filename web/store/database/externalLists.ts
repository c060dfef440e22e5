import type { ExternalisedJob } from "./jobRecord.ts";

/** Shorter lists stay in the document: a record of their own would cost more than it saves. */
const LEAST_LENGTH = 256;

/** Marks the place of a list. No job document has such a key, since its schema knows every key. */
const MARK = "\u0000list";

/** Lists met before with what became of them. Job documents are never changed in place, so a list seen is a list known. */
export type KnownLists = WeakMap<readonly unknown[], { readonly key: string; readonly list: Float64Array }>;

/**
 * A document with its long lists of numbers taken out, each under a key made from its content: a road recorded once is
 * then stored once, however many versions of the job hold it, and an edit elsewhere does not write it again. With the
 * same `known` from call to call, a list that is the very same one is not gone through again.
 */
export function externaliseLists(document: unknown, known: KnownLists = new WeakMap()): ExternalisedJob {
  const lists = new Map<string, Float64Array>();
  const externalise = (value: unknown): unknown => {
    if (Array.isArray(value)) {
      const seen = known.get(value);
      if (!seen && (value.length < LEAST_LENGTH || !value.every(Number.isFinite))) return value.map(externalise);
      const { key, list } = seen ?? keyed(Float64Array.from(value));
      known.set(value, { key, list });
      lists.set(key, list);
      return { [MARK]: key };
    }
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, externalise(inner)]));
  };
  return { frame: externalise(document), lists };
}

/** The whole document again. Throws where a list is missing, naming its key. */
export function inlineLists({ frame, lists }: ExternalisedJob): unknown {
  const inline = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(inline);
    if (typeof value !== "object" || value === null) return value;
    const key = markedKey(value);
    if (key === undefined) {
      return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, inline(inner)]));
    }
    const list = lists.get(key);
    if (!list) throw new Error(`the stored list ${key} is missing`);
    return Array.from(list);
  };
  return inline(frame);
}

/** The keys of all lists a frame refers to. */
export function listKeys(frame: unknown): Set<string> {
  const keys = new Set<string>();
  const walk = (value: unknown): void => {
    if (typeof value !== "object" || value === null) return;
    const key = markedKey(value);
    if (key !== undefined) keys.add(key);
    else for (const inner of Object.values(value)) walk(inner);
  };
  walk(frame);
  return keys;
}

function markedKey(value: object): string | undefined {
  const key = (value as Record<string, unknown>)[MARK];
  return typeof key === "string" ? key : undefined;
}

function keyed(list: Float64Array): { readonly key: string; readonly list: Float64Array } {
  return { key: contentKey(list), list };
}

/**
 * Two mixes of 53 bits over the numbers' own bits, and the length: two different lists of one job will not meet. Each
 * step multiplies by a large odd constant and rotates (the multiply-and-rotate scheme of general-purpose hashes).
 */
function contentKey(list: Float64Array): string {
  const words = new Uint32Array(list.buffer, list.byteOffset, 2 * list.length);
  return `${list.length}-${mix(words, 0x9e3779b9)}-${mix(words, 0x7f4a7c15)}`;
}

function mix(words: Uint32Array, seed: number): string {
  let low = seed ^ 0xdeadbeef;
  let high = seed ^ 0x41c6ce57;
  for (let i = 0; i < words.length; i++) {
    const word = words[i] ?? 0;
    low = Math.imul(rotate(low ^ word), 2654435761);
    high = Math.imul(rotate(high ^ word), 1597334677);
  }
  low = Math.imul(low ^ (low >>> 16), 2246822507) ^ Math.imul(high ^ (high >>> 13), 3266489909);
  high = Math.imul(high ^ (high >>> 16), 2246822507) ^ Math.imul(low ^ (low >>> 13), 3266489909);
  return (4294967296 * (2097151 & high) + (low >>> 0)).toString(36);
}

function rotate(word: number): number {
  return (word << 15) | (word >>> 17);
}
