/** Sine of a slope's angle from its grade, rise over run. */
export function sineOf(grade_ratio: number): number {
  return grade_ratio / Math.sqrt(1 + grade_ratio * grade_ratio);
}

/** Grade, rise over run, from the sine of a slope's angle, which is below 1. */
export function gradeOf_ratio(sinSlope: number): number {
  return sinSlope / Math.sqrt(1 - sinSlope * sinSlope);
}
