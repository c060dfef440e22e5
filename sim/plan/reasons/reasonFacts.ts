import type { Job } from "../../../shared/job/job.ts";
import type { QuantityKind } from "../../../shared/quantity/kinds/kinds.ts";
import type { Candidate, SteadyRow } from "../driveReport.ts";
import type { Unknown } from "../unknowns.ts";

/** What is known of one pack when its numbers are explained; what is not worked out yet is left out. */
export interface ReasonFacts {
  readonly job: Job;
  readonly run: Candidate;
  readonly packIndex: number;
  readonly needed_km: number;
  /** A steady speed that the car holds. */
  readonly steady?: SteadyRow | undefined;
  /** Peak torque over speed at the pack's nominal voltage. */
  readonly envelope?: readonly { readonly speed_rpm: number; readonly torque_Nm: number }[] | undefined;
  /** What each open value does to the range. */
  readonly unknowns?: readonly Unknown[] | undefined;
}

/** A result, and how it comes about with the numbers put in: each line says what a pocket calculator says. */
export interface WorkedReason {
  readonly value: string;
  readonly lines: readonly string[];
  /** The same for every pack. */
  readonly isOfEveryPack?: boolean;
}

/** Writes a quantity in the reader's units. */
export type Format = (kind: QuantityKind, value: number, digits?: number) => string;
