import { isAtOrBelow } from "../notebook/groupEdits.ts";
import type { Form } from "./form.ts";

/** Paths at or below one of the job where a text waits to be mended, save those whose fields stand elsewhere. */
export function draftsBelow(form: Form, path: string, elsewhere: readonly string[]): string[] {
  return Object.keys(form.desk.drafts.value).filter((key) => isAtOrBelow(key, path) && !elsewhere.includes(key));
}
