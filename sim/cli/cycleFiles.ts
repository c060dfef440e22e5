import { join } from "node:path";
import { cycleTrace, findCycle } from "../trace/standardCycles.ts";
import type { Trace } from "../trace/trace.ts";
import { readText } from "./files.ts";

// The folder lies as far above sim/cli as above dist/cli, so one path serves the checkout and the built command.
const folder = join(import.meta.dirname, "../../cycles");

/** A standard cycle, or a phase of one, by its id. Throws InputError, with the nearest id, for an unknown one. */
export function cycleById(id: string): Trace {
  const { cycle } = findCycle(id);
  return cycleTrace(id, { [cycle.id]: readText(join(folder, `${cycle.id}.csv`)) });
}
