import { readFileSync } from "node:fs";
import { join } from "node:path";
import { standardCycles } from "../../sim/trace/standardCycles.ts";

const folder = join(import.meta.dirname, "../../cycles");

/** The tables of all standard cycles by id, as they lie in cycles/. */
export const cycleTexts: Readonly<Record<string, string>> = Object.fromEntries(
  standardCycles.map(({ id }) => [id, readFileSync(join(folder, `${id}.csv`), "utf8")]),
);
