import { effect } from "@preact/signals-core";
import type { Jobs } from "../../store/jobsDoor.ts";

/** Where a tab keeps which job it has open, so that a reload shows the same one. An id says nothing of a job. */
const KEY = "openJob";

/** The job that this tab had open before it was loaded anew, if any. */
export function lastOpen(): string | undefined {
  try {
    return sessionStorage.getItem(KEY) ?? undefined;
  } catch {
    return undefined; // a browser that keeps nothing for this page
  }
}

/** Keeps which job is open, from now on. */
export function keepLastOpen(jobs: Pick<Jobs, "current">): void {
  effect(() => {
    const id = jobs.current.value?.id;
    try {
      if (id !== undefined) sessionStorage.setItem(KEY, id);
    } catch {
      // As above: the job changed last is then the one that opens.
    }
  });
}
