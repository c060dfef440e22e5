import type { Job } from "../../shared/job/job.ts";
import { enterQuantity } from "../inputs/enterQuantity.ts";
import { knownField } from "../inputs/fieldAt.ts";
import { createPaper } from "../inputs/form.ts";
import { createDesk, type Sheet } from "./desk.ts";

/**
 * The sheet with texts put into their fields again as if typed just now, so that each has its sentence beside it. A text
 * whose field is gone is left out; one that fits by now is in the job.
 */
export function reenter(job: Job, texts: Readonly<Record<string, string>>): Sheet {
  const desk = createDesk({ job, drafts: {} });
  const paper = createPaper(desk);
  for (const [path, text] of Object.entries(texts)) {
    const field = knownField(path);
    if (field?.type === "quantity") enterQuantity(paper, path, field, text);
    else if (field) desk.editPlain(path, text, field.label);
  }
  return { job: desk.job.peek(), drafts: desk.drafts.peek() };
}
