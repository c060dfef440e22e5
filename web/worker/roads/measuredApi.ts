import type { Job } from "../../../shared/job/job.ts";
import type { QuantityKind } from "../../../shared/quantity/kinds/kinds.ts";
import type { Message } from "../../../shared/quantity/message.ts";
import type { Measured, OutlookRow } from "../../../sim/index.ts";

/** What a built car's log is compared with. */
export interface MeasuredRequest {
  readonly job: Job;
  readonly packIndex: number;
  /** Place among the job's frozen predictions; the job as it is where there is none. */
  readonly prediction?: number | undefined;
  /** Added to the clock of volts and amps; found where not given. */
  readonly offset_s?: number | undefined;
  /** What a meter at the socket counted, for a log of charging. */
  readonly socket_kWh?: number | undefined;
  /** Years since the build, for what ageing leaves of the pack. */
  readonly years?: number | undefined;
}

/** One figure of the table. */
export interface MeasuredRow {
  readonly words: string;
  readonly kind: QuantityKind;
  readonly measured: number;
  readonly predicted: { readonly value: number; readonly low: number; readonly high: number };
  readonly corrected: number;
  readonly isInside: boolean;
}

/** A logged drive against what was predicted of it, as the page shows it. Neither positions nor clocks are in it, but for the day. */
export interface MeasuredDrive
  extends Pick<Measured, "pack" | "verdict" | "doings" | "sentences" | "notTold" | "remarks" | "lines"> {
  readonly kind: "drive";
  readonly day?: string | undefined;
  readonly distance_km: number;
  readonly offset_s: number;
  readonly rows: readonly MeasuredRow[];
  readonly packSentences: readonly Message[];
  /** How many values the log corrects; none where it can hardly be of this car. */
  readonly correctedCount: number;
  /** The job as the log corrects it: a second line beside the prediction. */
  readonly corrected: Pick<Job, "vehicle" | "accessories" | "controller" | "motor" | "origins">;
  /** Range, year and week by either line; none where the log can hardly be of this car. */
  readonly outlook: readonly OutlookRow[];
}

/** A logged charge against a socket's meter. */
export interface MeasuredCharge {
  readonly kind: "charge";
  readonly sentence: Message;
}

export type MeasuredOutcome = MeasuredDrive | MeasuredCharge;
