import { computed, effect, type ReadonlySignal, type Signal, signal } from "@preact/signals-core";
import type { Job } from "../../../shared/job/job.ts";
import type { JobEditor } from "../../editing/jobEditor.ts";
import type { JobVersion } from "../../store/jobsDoor.ts";
import type { CurrentJob } from "../../store/openJob.ts";

/** What this needs of the jobs in the browser. */
interface Past {
  readonly current: { readonly value: CurrentJob | undefined; peek(): CurrentJob | undefined };
  flush(): Promise<void>;
  readVersion(id: string, number: number): Promise<Job>;
  restore(id: string, number: number): Promise<void>;
}

/** An earlier version of the open job, shown on the page in place of the job. */
export interface Looked {
  readonly version: JobVersion;
  /** The job itself became another one meanwhile, in another tab. */
  readonly isPassed: boolean;
}

/** Looking at earlier versions of the open job. What is looked at is in this page only: nothing of it is stored. */
export interface EarlierLook {
  readonly looked: ReadonlySignal<Looked | undefined>;
  /** Throws InputError where the state cannot be read; what was shown then stays. */
  open(version: JobVersion): Promise<void>;
  back(): void;
  /** Makes the state that is looked at the job, as an edit that can be taken back. */
  takeUp(): Promise<void>;
}

/** `packIndex` is the pack chosen on the page, which an earlier version need not have. */
export function earlierLook(jobEditor: JobEditor, packIndex: Signal<number | undefined>, jobs: Past): EarlierLook {
  const at = signal<
    | {
        readonly jobId: string;
        readonly arrival: number;
        readonly version: JobVersion;
        readonly pack: number | undefined;
      }
    | undefined
  >(undefined);

  const back = () => {
    const before = at.peek();
    if (!before) return;
    at.value = undefined;
    packIndex.value = before.pack;
    jobEditor.look(undefined);
  };

  // Another job on the page, or none any more: its earlier versions are no business of this page's.
  effect(() => {
    const id = jobs.current.value?.id;
    if (at.value !== undefined && at.value.jobId !== id) back();
  });
  // The jobEditor ends the look by itself where a state is made the job.
  effect(() => {
    if (!jobEditor.isLooking.value) at.value = undefined;
  });

  return {
    looked: computed(() => {
      const now = at.value;
      return now && { version: now.version, isPassed: jobs.current.value?.arrival !== now.arrival };
    }),
    async open(version) {
      const current = jobs.current.peek();
      if (!current) return;
      await jobs.flush(); // what is half typed is stored before it leaves the page
      const job = await jobs.readVersion(current.id, version.number);
      const now = jobs.current.peek();
      if (now?.id !== current.id) return;
      const before = at.peek();
      const pack = before ? before.pack : packIndex.peek();
      packIndex.value = undefined;
      jobEditor.look(job);
      at.value = { jobId: now.id, arrival: before?.arrival ?? now.arrival, version, pack };
    },
    back,
    async takeUp() {
      const now = at.peek();
      if (now) await jobs.restore(now.jobId, now.version.number);
    },
  };
}
