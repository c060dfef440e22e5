/**
 * How a number in some unit becomes one in the kind's own: times a factor; or first shifted, then times a factor
 * (temperatures); or as a divisor (miles to the gallon).
 */
export type UnitRule = number | { readonly shift: number; readonly factor: number } | { readonly over: number };

/** A number in the kind's own unit. Infinite where a divisor is nought; the caller refuses that. */
export function applyUnit(rule: UnitRule, number: number): number {
  if (typeof rule === "number") return number * rule;
  return "over" in rule ? rule.over / number : (number + rule.shift) * rule.factor;
}

/** The number that a value in the kind's own unit has in another: the inverse of `applyUnit`. */
export function unapplyUnit(rule: UnitRule, value: number): number {
  if (typeof rule === "number") return value / rule;
  return "over" in rule ? rule.over / value : value / rule.factor - rule.shift;
}

/** The same spellings for a kind whose own unit is `size` of theirs. */
export function scaled<Name extends string>(units: Readonly<Record<Name, number>>, size: number): Record<Name, number> {
  const entries = Object.entries<number>(units).map(([name, factor]) => [name, factor / size]);
  return Object.fromEntries(entries);
}
