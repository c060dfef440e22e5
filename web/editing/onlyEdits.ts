import type { Problem } from "../../shared/problems.ts";
import type { JobEditor } from "./jobEditor.ts";

const readOnly: Problem = {
  code: "readOnly",
  where: "job",
  message: "found a page that was sent to be looked at; only what stands beside the answer can be tried out in it",
};

/** The editor of a job that is sent to be looked at: what a few paths hold may be tried out, nothing else changes. */
export function onlyEdits(jobEditor: JobEditor, paths: readonly string[]): JobEditor {
  const may = (path: string) => paths.includes(path);
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
    change: () => [readOnly],
  };
}
