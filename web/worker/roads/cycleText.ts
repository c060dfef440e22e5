import { fetchPart } from "../fetchPart.ts";

// Each table is a file of its own in the built page and fetched when a road first needs it.
const files = import.meta.glob<string>("../../../cycles/*.csv", { query: "?raw", import: "default" });
const tables = new Map(Object.entries(files).map(([path, load]) => [/([^/]+)\.csv$/.exec(path)?.[1], load]));

/** The table of a standard cycle (or of the cycle a phase belongs to), by its id; nothing for an unknown id. */
export async function cycleText(cycle: string): Promise<Record<string, string>> {
  const id = cycle.split(":")[0];
  const load = tables.get(id);
  return load ? { [id]: await fetchPart(load) } : {};
}
