/** Whether two documents hold the same values: objects whatever the order of their keys, numbers bit for bit. */
export function sameDocument(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (a instanceof Float64Array || b instanceof Float64Array) {
    if (!(a instanceof Float64Array && b instanceof Float64Array) || a.length !== b.length) return false;
    return a.every((value, i) => Object.is(value, b[i]));
  }
  if (Array.isArray(a) || Array.isArray(b)) {
    if (!Array.isArray(a) || !Array.isArray(b) || a.length !== b.length) return false;
    return a.every((value, i) => sameDocument(value, b[i]));
  }
  const ours = Object.keys(a);
  if (ours.length !== Object.keys(b).length) return false;
  return ours.every(
    (key) =>
      Object.hasOwn(b, key) && sameDocument((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]),
  );
}
