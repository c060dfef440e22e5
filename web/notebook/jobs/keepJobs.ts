import { effect } from "@preact/signals-core";
import type { Job } from "../../../shared/job/job.ts";
import type { JobEditor } from "../../editing/jobEditor.ts";
import type { CurrentJob } from "../../store/openJob.ts";
import { reenter } from "./reenter.ts";

/** What this needs of the jobs in the browser. */
export interface Keeper {
  readonly current: { readonly value: CurrentJob | undefined };
  saveDraft(path: string, text: string): void;
  dropDraft(path: string): void;
  commit(job: Job, reason: string, settled?: readonly string[]): void;
}

/**
 * Keeps what is on the jobEditor and what the browser stores the same: a job that arrives from the store goes into the editor,
 * and every change on the jobEditor, down to the letters of a half-typed word, goes into the store.
 */
export function keepJobs(jobEditor: JobEditor, jobs: Keeper): () => void {
  let shown: { readonly id: string; readonly arrival: number } | undefined;
  let kept: { job: Job; texts: Readonly<Record<string, string>> } | undefined;
  const stopArriving = effect(() => {
    const { current } = jobs;
    const arrived = current.value;
    if (!arrived || arrived.arrival === shown?.arrival) return;
    const isSame = arrived.id === shown?.id;
    shown = arrived;
    kept = { job: arrived.job, texts: arrived.drafts };
    const state = reenter(arrived.job, arrived.drafts);
    if (isSame && arrived.asEdit !== undefined) jobEditor.replace(state, arrived.asEdit);
    else jobEditor.open(state);
  });
  const stopKeeping = effect(() => {
    const { job, drafts } = jobEditor.kept.value;
    const texts = Object.fromEntries(Object.entries(drafts).map(([path, { typed }]) => [path, typed]));
    if (!kept) return;
    const before = kept;
    kept = { job, texts };
    for (const [path, text] of Object.entries(texts)) if (before.texts[path] !== text) jobs.saveDraft(path, text);
    const gone = Object.keys(before.texts).filter((path) => !(path in texts));
    if (job !== before.job) jobs.commit(job, jobEditor.latest.peek(), gone);
    else for (const path of gone) jobs.dropDraft(path);
  });
  return () => {
    stopArriving();
    stopKeeping();
  };
}
