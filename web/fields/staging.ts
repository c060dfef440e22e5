import { type Signal, signal } from "@preact/signals-core";
import type { MotorLoss } from "../../shared/job/schema/motor.ts";
import type { MotorMap } from "../../sim/index.ts";
import type { JobEditor } from "../editing/jobEditor.ts";
import { type StagedTexts, stagedTexts } from "../editing/stagedTexts.ts";
import { driveLog } from "../log/driveLog.ts";
import { createLogStaging, type LogStaging } from "../log/logStaging.ts";
import { createMeasuredStaging, type MeasuredStaging } from "../log/measuredStaging.ts";
import type { RoadsApi } from "../worker/roads/roadsApi.ts";

/** A motor map as it was brought: read, with the form that a job keeps it in, or why it could not be. */
export type BroughtMap =
  | { readonly name: string; readonly map: MotorMap; readonly loss: MotorLoss }
  | { readonly name: string; readonly problems: readonly string[] };

/** What is staged and is not in the job yet: a part picked up, a map brought, a datasheet half copied. */
export interface Staging {
  /** The part chosen in each picker, by the picker's id. */
  readonly chosen: Signal<Readonly<Record<string, string>>>;
  /** Why the job refused a change, by the place on the page where it was asked for. */
  readonly refused: Signal<Readonly<Record<string, string>>>;
  /** How a text was understood, by its field. */
  readonly understood: Signal<Readonly<Record<string, string>>>;
  readonly map: Signal<BroughtMap | undefined>;
  /** Texts in the datasheet's fields, by field. */
  readonly datasheet: StagedTexts;
  /** Texts of a coast-down that is not taken yet, by field. */
  readonly coastDown: StagedTexts;
  /** The client's own log. */
  readonly log: LogStaging;
  /** The built car's log. */
  readonly measured: MeasuredStaging;
}

/** Where the texts of the datasheet's fields are kept. */
export const DATASHEET = "datasheet";
/** Where those of a coast-down are. */
export const COASTDOWN = "coastdown";

/** The staging of the job that is open: another job has another one, and `log.end()` is called for this. */
export function createStaging(jobEditor: JobEditor, roads: RoadsApi): Staging {
  return {
    chosen: signal({}),
    refused: signal({}),
    understood: signal({}),
    map: signal(undefined),
    datasheet: stagedTexts(jobEditor, DATASHEET, "figures of a datasheet"),
    coastDown: stagedTexts(jobEditor, COASTDOWN, "times of a coast-down"),
    log: createLogStaging(roads, stagedTexts(jobEditor, "road", "words for a road"), (log, drive) =>
      driveLog(log, drive, jobEditor),
    ),
    measured: createMeasuredStaging(roads),
  };
}
