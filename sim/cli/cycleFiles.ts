import { join } from "node:path";
import { cycleTrace, findCycle } from "../trace/standardCycles.ts";
import type { Trace } from "../trace/trace.ts";
import { readText } from "./files/files.ts";

// The folder lies as far above sim/cli as above dist/cli, so one path serves the checkout and the built command.
const folder = join(import.meta.dirname, "../../cycles");

/** Where the table of a cycle, or of the cycle that a phase is of, lies. Throws InputError for an unknown id. */
export function cycleFile(id: string): string {
  return join(folder, `${findCycle(id).cycle.id}.csv`);
}

/** The table that an id needs, by the cycle's id, as `cycleTrace` takes it. Throws InputError for an unknown id. */
export function cycleTextsFor(id: string): Readonly<Record<string, string>> {
  return { [findCycle(id).cycle.id]: readText(cycleFile(id)) };
}

/** A standard cycle, or a phase of one, by its id. Throws InputError, with the nearest id, for an unknown one. */
export function cycleById(id: string): Trace {
  return cycleTrace(id, cycleTextsFor(id));
}
