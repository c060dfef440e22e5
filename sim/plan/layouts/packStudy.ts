import type { Job } from "../../../shared/job/job.ts";
import type { Pack } from "../../../shared/job/schema/battery.ts";
import type { Message } from "../../../shared/quantity/message.ts";
import type { Trace } from "../../trace/trace.ts";
import { type LayoutRow, layoutRows } from "./layoutRows.ts";
import { packChoice } from "./packChoice.ts";
import { packRows } from "./packRows.ts";
import { type PackBeside, packsBeside } from "./packsBeside.ts";

/** What a page shows of the choice: the list of layouts, the outcome in sentences, and the packs that can be made candidates. */
export interface PackStudy {
  readonly rows: readonly LayoutRow[];
  readonly sentences: readonly Message[];
  /** By layout, where one will do. */
  readonly smallest?: string;
  /** The packs asked for beside the smallest and its neighbours. */
  readonly beside: readonly PackBeside[];
  /** Packs that fit, the smallest first. */
  readonly fitting: readonly { readonly pack: Pack; readonly nominal_kWh: number }[];
}

/** Every layout of a job's module and the smallest that will do, for a page. */
export function packStudy(job: Job, trace: Trace): PackStudy {
  const { layouts, found, sentences } = packChoice(job, trace);
  const fitting = packRows(job, layouts.all).flat();
  return {
    rows: layoutRows(layouts.all),
    sentences,
    beside: packsBeside(job, trace, found),
    ...(found.smallest && { smallest: found.smallest.pack.name }),
    fitting: fitting.sort((a, b) => a.nominal_kWh - b.nominal_kWh),
  };
}
