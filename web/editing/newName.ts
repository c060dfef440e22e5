/** A name that none of those taken has: `wanted` itself, or with the first number behind it that makes it one. */
export function newName(wanted: string, taken: readonly string[], between = " "): string {
  if (!taken.includes(wanted)) return wanted;
  let number = 2;
  while (taken.includes(`${wanted}${between}${number}`)) number += 1;
  return `${wanted}${between}${number}`;
}
