import { signal } from "@preact/signals-core";
import type { JobsPlace } from "../../web/notebook/jobs/jobsPlace.ts";
import type { JobHead } from "../../web/store/database/jobRecord.ts";
import type { Reminder } from "../../web/store/files/fileReminder.ts";
import type { LinkState } from "../../web/store/files/linkedFile.ts";
import type { Jobs } from "../../web/store/jobsDoor.ts";
import type { Conflict } from "../../web/store/openJob.ts";
import type { Place, SaveStatus } from "../../web/store/saveStatus.ts";

/** What a test says of the stored jobs, without the signals around it. */
interface Stored {
  readonly list?: readonly JobHead[];
  readonly current?: { readonly id: string };
  readonly status?: SaveStatus;
  readonly place?: Place;
  readonly conflict?: Pick<Conflict, "kind">;
  readonly reminder?: Reminder;
  readonly fileLink?: LinkState;
  readonly news?: string;
  readonly canLinkFile?: boolean;
}

/** 25 November 2026, 13:40, by the clock of this machine. */
export const MOMENT_ms = new Date(2026, 10, 25, 13, 40).getTime();

/** A stored job as the list knows it. */
export function jobHead(changes: Partial<JobHead> = {}): JobHead {
  const version = { number: 1, startedAt_ms: MOMENT_ms, endedAt_ms: MOMENT_ms, reason: "made", edits: 0 };
  return {
    id: "a",
    revision: 1,
    title: "Saloon",
    line: "usual day 38 km",
    shelf: "open",
    madeAt_ms: MOMENT_ms,
    changedAt_ms: MOMENT_ms,
    writer: "test",
    writerStep: 1,
    editCount: 0,
    version,
    ...changes,
  };
}

/** The corner of the page that has the jobs. Nothing is done there; what it asks for is written down in `asked`, in its order. */
export function jobsPlace(stored: Stored = {}, changes: Partial<JobsPlace> = {}) {
  const asked: unknown[][] = [];
  const ask =
    (...what: unknown[]) =>
    (...how: unknown[]) => {
      asked.push([...what, ...how]);
      return Promise.resolve();
    };
  const known: Record<string | symbol, unknown> = {
    list: signal(stored.list ?? []),
    current: signal(stored.current),
    status: signal(stored.status ?? { kind: "idle" }),
    place: signal(stored.place ?? { kind: "database", unreadable: 0 }),
    conflict: signal(stored.conflict),
    reminder: signal(stored.reminder),
    fileLink: signal(stored.fileLink ?? { kind: "none" }),
    news: signal(stored.news),
    canLinkFile: stored.canLinkFile ?? false,
  };
  const jobs = new Proxy<Jobs>(Object.create(null), { get: (_, name) => known[name] ?? ask(name) });
  const here: JobsPlace = {
    jobs,
    demos: [],
    askDemos: ask("askDemos"),
    versions: undefined,
    askVersions: ask("askVersions"),
    lookAt: ask("lookAt"),
    isLooking: false,
    attempt: (work) => void work(),
    removedLast: undefined,
    compared: undefined,
    compare: ask("compare"),
    units: "metric",
    remove: ask("remove"),
    open: ask("open"),
    unopened: undefined,
    ...changes,
  };
  return { here, asked };
}
