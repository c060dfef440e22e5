import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { demos } from "../../shared/demos/index.ts";
import { emptyFolder } from "./emptyFolder.ts";

/** A demo's document with values put at paths such as `packs.0.name`; `undefined` takes one out. */
export function changedDemo(changes: Readonly<Record<string, unknown>>, id = "piano-tuner"): Record<string, unknown> {
  const document = structuredClone(demos.find((demo) => demo.id === id)?.document) as Record<string, unknown>;
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split(".");
    const last = keys.pop() ?? "";
    const group = keys.reduce<Record<string, unknown>>((at, key) => at[key] as Record<string, unknown>, document);
    if (value === undefined) delete group[last];
    else group[last] = value;
  }
  return document;
}

/** The path of a file, in a folder of the test's own, that holds such a document. */
export function changedDemoFile(changes: Readonly<Record<string, unknown>> = {}, id?: string): string {
  const path = join(emptyFolder(), "job.json");
  writeFileSync(path, JSON.stringify(changedDemo(changes, id)));
  return path;
}
