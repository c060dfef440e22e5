import type { Demo } from "../../../shared/demos/firstDemo.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import type { Comparable, Jobs, JobVersion } from "../../store/jobsDoor.ts";
import type { Difference } from "../../store/versions/jobDiff.ts";

/** A state beside the job as it is, and what it is called. */
export interface Compared {
  readonly title: string;
  readonly differences: readonly Difference[];
}

/** What the corner of the page that lists the jobs shows, and what can be asked for there. */
export interface JobsPlace {
  readonly jobs: Jobs;
  /** Examples to begin from, once they were asked for. */
  readonly demos: readonly Demo[];
  askDemos(): void;
  /** Past states of the open job, once they were asked for. */
  readonly versions: readonly JobVersion[] | undefined;
  askVersions(): void;
  /** Shows a past state on the page in place of the job. */
  lookAt(version: JobVersion): void;
  /** One is looked at now: news of the job waits until it is back on the page. */
  readonly isLooking: boolean;
  /** Does something that may fail; what failed is said on the page. */
  attempt(work: () => Promise<unknown>): void;
  readonly removedLast: string | undefined;
  /** Two states of jobs side by side, once that was asked for. */
  readonly compared: Compared | undefined;
  compare(title: string, before: Comparable): void;
  readonly units: UnitHabit;
  remove(id: string): void;
  open(id: string): void;
  /** The text of a stored job that could not be opened. */
  readonly unopened: { readonly id: string; readonly text: string } | undefined;
}
