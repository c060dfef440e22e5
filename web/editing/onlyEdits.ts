import { isAtOrBelow } from "../../shared/job/path.ts";
import type { Problem } from "../../shared/problems.ts";
import type { JobEditor } from "./jobEditor.ts";

const readOnly: Problem = {
  code: "readOnly",
  where: "job",
  message: "found a page that was sent to be looked at; only what stands beside the answer can be tried out in it",
};

/** Paths at which two documents differ; a key with dots in it, as in `origins`, stands as it is. */
function differences(before: unknown, after: unknown, path = ""): string[] {
  if (Object.is(before, after)) return [];
  if (!isGroup(before) || !isGroup(after)) return [path];
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...keys].flatMap((key) => differences(before[key], after[key], path === "" ? key : `${path}.${key}`));
}

function isGroup(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}

/** The editor of a job that is sent to be looked at: what a few paths hold may be tried out, nothing else changes. */
export function onlyEdits(jobEditor: JobEditor, paths: readonly string[]): JobEditor {
  const may = (path: string) => paths.includes(path);
  // Of a list, every entry: `packs.*.ceiling_frac`. Where a value comes from goes with the value.
  const mayDiffer = (path: string) => {
    const about = path.replace(/^origins\./, "");
    return paths.some((each) => isAtOrBelow(about.replace(/\.\d+(?=\.)/g, ".*"), each) || isAtOrBelow(about, each));
  };
  return {
    ...jobEditor,
    edit(path, ...rest) {
      if (may(path)) jobEditor.edit(path, ...rest);
    },
    editPlain(path, ...rest) {
      if (may(path)) jobEditor.editPlain(path, ...rest);
    },
    keepDraft(path, ...rest) {
      if (may(path)) jobEditor.keepDraft(path, ...rest);
    },
    stage: () => {},
    change(what, how, checked) {
      const before = jobEditor.kept.peek();
      const isTriedOut = differences(before.job, how(before).job).every(mayDiffer);
      return isTriedOut ? jobEditor.change(what, how, checked) : [readOnly];
    },
  };
}
