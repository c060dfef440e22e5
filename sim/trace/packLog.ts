/** What a logger wrote of the pack, on its own clock, times rising. NaN stands where a row has no value. */
export interface PackLog {
  readonly file: string;
  readonly time_s: Float64Array;
  readonly voltage_V: Float64Array;
  readonly current_A: Float64Array;
  readonly motor_radps?: Float64Array;
  readonly temperature_K?: Float64Array;
  readonly soc_frac?: Float64Array;
  /** -1 where the reader turned the amps of the file round, so that positive ones leave the pack. */
  readonly fileSign: 1 | -1;
  /** How its clock and the motion's go together: one file; both with a date; or one counts from its own start. */
  readonly clock: "same" | "dated" | "free";
  /** Several rows share a time of its clock, so that it is known only roughly when they were written. */
  readonly isClockCoarse?: boolean;
  /** What had to be done to read it, each a sentence: times spread, a reset. */
  readonly remarks: readonly string[];
}
