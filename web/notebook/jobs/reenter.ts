import type { Job } from "../../../shared/job/job.ts";
import { knownField } from "../../editing/fieldTable/fieldAt.ts";
import { createJobEditor, type EditorState } from "../../editing/jobEditor.ts";
import { enterQuantity } from "../../fields/enterQuantity.ts";
import { createFieldContext } from "../../fields/fieldContext.ts";

/**
 * The state with texts put into their fields again as if typed just now, so that each has its sentence beside it. A text
 * whose field is gone is left out; one that fits by now is in the job.
 */
export function reenter(job: Job, texts: Readonly<Record<string, string>>): EditorState {
  const jobEditor = createJobEditor({ job, drafts: {} });
  const context = createFieldContext(jobEditor);
  for (const [path, text] of Object.entries(texts)) {
    const field = knownField(path);
    if (field?.type === "quantity") enterQuantity(context, path, field, text);
    else if (field) jobEditor.editPlain(path, text, field.label);
  }
  return { job: jobEditor.job.peek(), drafts: jobEditor.drafts.peek() };
}
