/**
 * `next`, with every part that equals its counterpart in `before` replaced by that very part, so that whoever compares
 * by identity sees only what changed. Parts are those of plain objects and lists; anything else (a column of samples, a map) is
 * the same only where it is the very same.
 */
export function keepShared<T>(before: unknown, next: T): T {
  if (Object.is(before, next) || !isGroup(before) || !isGroup(next)) return next;
  if (Array.isArray(before) !== Array.isArray(next)) return next;
  // The samples of a road, or of a charge, are told apart one by one, not gathered by their hundred thousand names.
  if (Array.isArray(before) && Array.isArray(next) && next.length > 0 && !isGroup(next[0])) {
    return (next.length === before.length && next.every((each, i) => Object.is(each, before[i])) ? before : next) as T;
  }
  const keys = Object.keys(next);
  let isSame = keys.length === Object.keys(before).length;
  const parts = keys.map((key) => {
    const part = keepShared(before[key], next[key]);
    if (!Object.is(part, before[key])) isSame = false;
    return part;
  });
  if (isSame) return before as T;
  return (Array.isArray(next) ? parts : Object.fromEntries(keys.map((key, i) => [key, parts[i]]))) as T;
}

function isGroup(value: unknown): value is Readonly<Record<string, unknown>> {
  if (typeof value !== "object" || value === null) return false;
  return Array.isArray(value) || Object.getPrototypeOf(value) === Object.prototype;
}
