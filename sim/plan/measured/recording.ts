import type { Trace } from "../../trace/trace.ts";

/** A piece of a recorded drive without a break, at one row a second: speed, and height where it was recorded. */
export interface DrivePart {
  /** On the clock of the file with the motion. */
  readonly start_s: number;
  readonly trace: Trace;
}
