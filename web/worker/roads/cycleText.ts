import { fetchPart } from "../fetchPart.ts";

// Each table is a file of its own in the built page and fetched when a road first needs it.
const tables = import.meta.glob<string>("../../../cycles/*.csv", { query: "?raw", import: "default" });

/** The table of a standard cycle (or of the cycle a phase belongs to), by its id; nothing for an unknown id. */
export async function cycleText(cycle: string): Promise<Record<string, string>> {
  const id = cycle.split(":")[0];
  const load = tables[`../../cycles/${id}.csv`];
  return load ? { [id]: await fetchPart(load) } : {};
}
