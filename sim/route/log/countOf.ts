/** A count and its noun: `1 fix`, `3 fixes`. The plural is the noun and an s unless it is given. */
export function countOf(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
