import { effect } from "@preact/signals-core";
import type { Draft, Drafts } from "../../../shared/job/draft.ts";
import type { Job } from "../../../shared/job/job.ts";
import type { JobEditor } from "../../editing/jobEditor.ts";
import { keepShared } from "../../editing/keepShared.ts";
import type { CurrentJob } from "../../store/openJob.ts";

/** What this needs of the jobs in the browser. */
export interface Keeper {
  readonly current: { readonly value: CurrentJob | undefined };
  saveDraft(path: string, draft: Draft): void;
  dropDraft(path: string): void;
  commit(job: Job, reason: string, settled?: readonly string[]): void;
}

/**
 * Keeps what is on the jobEditor and what the browser stores the same: a job that arrives from the store goes into the editor,
 * and every change on the jobEditor, down to the letters of a half-typed word, goes into the store.
 */
export function keepJobs(jobEditor: JobEditor, jobs: Keeper): () => void {
  let shown: { readonly id: string; readonly arrival: number } | undefined;
  let kept: { readonly job: Job; readonly drafts: Drafts } | undefined;
  const stopArriving = effect(() => {
    const { current } = jobs;
    const arrived = current.value;
    if (!arrived || arrived.arrival === shown?.arrival) return;
    const isSame = arrived.id === shown?.id;
    shown = arrived;
    // As it was kept, to the letter: nothing is read again against neighbours that may have changed.
    const state = { job: arrived.job, drafts: arrived.drafts };
    kept = state;
    if (isSame && arrived.asEdit !== undefined) jobEditor.replace(state, arrived.asEdit);
    else if (isSame) jobEditor.refresh(state);
    else jobEditor.open(state);
  });
  const stopKeeping = effect(() => {
    const { job, drafts } = jobEditor.kept.value;
    if (!kept) return;
    const before = kept;
    kept = { job, drafts };
    for (const [path, draft] of Object.entries(drafts)) {
      if (keepShared(before.drafts[path], draft) !== before.drafts[path]) jobs.saveDraft(path, draft);
    }
    const gone = Object.keys(before.drafts).filter((path) => !(path in drafts));
    if (job !== before.job) jobs.commit(job, jobEditor.latest.peek(), gone);
    else for (const path of gone) jobs.dropDraft(path);
  });
  return () => {
    stopArriving();
    stopKeeping();
  };
}
