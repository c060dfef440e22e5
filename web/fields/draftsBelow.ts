import { isAtOrBelow } from "../../shared/job/path.ts";
import type { Form } from "./fieldContext.ts";

/** Paths at or below one of the job where a text waits to be mended, save those whose fields stand elsewhere. */
export function draftsBelow(form: Form, path: string, elsewhere: readonly string[]): string[] {
  return Object.keys(form.jobEditor.drafts.value).filter((key) => isAtOrBelow(key, path) && !elsewhere.includes(key));
}
