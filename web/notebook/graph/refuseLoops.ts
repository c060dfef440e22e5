import { inputError } from "../../../shared/problems.ts";

/** Throws InputError where a value depends on itself, naming the values in the loop in their order. */
export function refuseLoops(inputsOf: ReadonlyMap<string, readonly string[]>): void {
  const settled = new Set<string>();
  const visit = (name: string, trail: readonly string[]): void => {
    if (settled.has(name)) return;
    const start = trail.indexOf(name);
    if (start >= 0) {
      const loop = [...trail.slice(start), name].join(", which needs ");
      throw inputError("loop", name, `found a loop: ${loop}`);
    }
    for (const input of inputsOf.get(name) ?? []) visit(input, [...trail, name]);
    settled.add(name);
  };
  for (const name of inputsOf.keys()) visit(name, []);
}
