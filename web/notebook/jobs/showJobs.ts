import { effect, type ReadonlySignal, signal } from "@preact/signals-core";
import { render } from "lit-html";
import type { Demo } from "../../../shared/demos/firstDemo.ts";
import { InputError } from "../../../shared/problems.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import type { Comparable, Jobs, JobVersion } from "../../store/jobsDoor.ts";
import { fetchPart } from "../../worker/fetchPart.ts";
import type { Complaint } from "./complaintView.ts";
import { complaintOf } from "./complaintView.ts";
import type { EarlierLook } from "./earlierLook.ts";
import type { Compared, JobsPlace } from "./jobsPlace.ts";
import { jobsView } from "./jobsView.ts";
import { keepingView } from "./keepingView.ts";

export interface JobsCorner {
  readonly keeping: HTMLElement;
  readonly jobs: HTMLElement;
}

/**
 * Keeps the corner of the page that tells of saving and lists the jobs true to the store. `complain` hears what
 * is wrong, such as with a file that was opened, and an empty list where that is past.
 */
export function showJobs(
  jobs: Jobs,
  units: ReadonlySignal<UnitHabit>,
  corner: JobsCorner,
  look: EarlierLook,
  complain: (complaint: Complaint) => void,
): JobsPlace["attempt"] {
  const versions = signal<readonly JobVersion[] | undefined>(undefined);
  const removedLast = signal<string | undefined>(undefined);
  const compared = signal<Compared | undefined>(undefined);
  const unopened = signal<JobsPlace["unopened"]>(undefined);
  let started = 0;
  let failed = 0;
  const attempt = (work: () => Promise<unknown>) => {
    started += 1;
    const number = started;
    work().then(
      () => {
        // What ends well clears the complaint about something before it, never about something after.
        if (number > failed) complain([]);
      },
      (error: unknown) => {
        failed = number;
        complain(complaintOf(error));
      },
    );
  };
  // What the list fetches for itself as it is opened says what went wrong, and clears no complaint about what a person did.
  const ask = (work: () => Promise<unknown>) => {
    work().catch((error: unknown) => complain(complaintOf(error)));
  };
  const demos = signal<readonly Demo[]>([]);
  const askDemos = () => {
    if (demos.peek().length > 0) return;
    ask(async () => {
      const loaded = await fetchPart(() => import("../../../shared/demos/index.ts"));
      demos.value = loaded.demos;
    });
  };
  const askVersions = () =>
    ask(async () => {
      const id = jobs.current.peek()?.id;
      versions.value = id === undefined ? [] : await jobs.versions(id);
    });
  const lookAt = (version: JobVersion) => attempt(() => look.open(version));
  // States once asked for follow the job: another one opened, or this one saved.
  effect(() => {
    const id = jobs.current.value?.id;
    if (jobs.status.value.kind === "saving" || versions.peek() === undefined || id === undefined) return;
    jobs.versions(id).then(
      (found) => {
        if (jobs.current.peek()?.id === id) versions.value = found;
      },
      () => {}, // asking for them by hand says why
    );
  });
  const open = (id: string) =>
    attempt(async () => {
      unopened.value = undefined;
      try {
        await jobs.open(id);
      } catch (error) {
        // Edits that must be saved first are no fault of the job that was to be opened.
        const isItsFault = !(error instanceof InputError) || error.problems.every(({ code }) => code !== "unsaved");
        if (isItsFault) unopened.value = { id, text: await jobs.readText(id) };
        throw error;
      }
    });
  // What was compared was compared with the job that was open.
  let comparedId: string | undefined;
  effect(() => {
    const id = jobs.current.value?.id;
    if (id !== comparedId) compared.value = undefined;
    comparedId = id;
  });
  const remove = (id: string) =>
    attempt(async () => {
      await jobs.remove(id);
      removedLast.value = id;
      const next = jobs.list.peek().find(({ shelf }) => shelf === "open");
      if (jobs.current.peek() === undefined && next) await jobs.open(next.id);
    });
  const compare = (title: string, before: Comparable) =>
    attempt(async () => {
      const id = jobs.current.peek()?.id;
      if (id !== undefined)
        compared.value = { title, differences: await fetchPart(() => jobs.compare(before, { id })) };
    });
  effect(() => {
    const isBack = jobs.list.value.some(({ id, shelf }) => id === removedLast.value && shelf !== "removed");
    const here: JobsPlace = {
      demos: demos.value,
      jobs,
      askDemos,
      askVersions,
      lookAt,
      attempt,
      open,
      remove,
      compare,
      isLooking: look.looked.value !== undefined,
      compared: compared.value,
      unopened: unopened.value,
      units: units.value,
      versions: versions.value,
      removedLast: isBack ? undefined : removedLast.value,
    };
    render(keepingView(here), corner.keeping);
    render(jobsView(here), corner.jobs);
  });
  return attempt;
}
