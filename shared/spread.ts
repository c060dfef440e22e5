/** The range within which eight of ten draws lie. */
export interface Band {
  readonly low: number;
  readonly high: number;
}

/** How far what a log cannot show leaves its drive open: 10 to 90 % of the drives that fit it. */
export interface Spread {
  /** Positive energy at the wheel over that of the drive taken. */
  readonly energy_ratio: Band;
  readonly distance_ratio: Band;
  readonly climb_m: Band;
}
