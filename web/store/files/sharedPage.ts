import type { Job } from "../../../shared/job/job.ts";
import { readJobText } from "../../../shared/job/readJob.ts";

/** The element that a shared page carries its job in. */
const ID = "shared-job";

/**
 * The page in one file with a job inside, for the client: opened from a mail it shows this job, to be looked at. What the
 * workshop hides from the client's view has its notes left out; positions are in no job. `html` is the page without a job.
 */
export function sharedPage(html: string, job: Job): string {
  const notes = job.notes.filter(({ after }) => !job.hiddenSections.includes(after));
  // A data block is no script, so the page's policy has no say in it; no text in the job may end the block.
  const text = JSON.stringify({ ...job, notes }).replaceAll("<", "\\u003c");
  const end = html.lastIndexOf("</body>");
  if (end < 0) throw new Error("the page to share has no end of its body");
  return `${html.slice(0, end)}<script id="${ID}" type="application/json">${text}</script>\n${html.slice(end)}`;
}

/** The job that a page carries, nothing where it is the notebook itself. Throws InputError where it is no job. */
export function jobInPage(page: Document): Job | undefined {
  const text = page.querySelector(`script#${ID}`)?.textContent;
  return text ? readJobText(text, "this page") : undefined;
}
