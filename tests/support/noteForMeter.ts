import { appendFileSync } from "node:fs";
import { join } from "node:path";

/** One comparison with a figure from outside, as the meter reads it. */
export interface MeterNote {
  /** What is compared, with its unit in brackets: `distance (mi)`. The meter puts equal ones together. */
  readonly quantity: string;
  readonly error: number;
  readonly tolerance: number;
}

/** Leaves a note for `npm run meter`, which runs the reference tests and names a folder for them; without it, does nothing. */
export function noteForMeter(note: MeterNote): void {
  const folder = process.env["METER_FOLDER"];
  if (folder) appendFileSync(join(folder, `${process.pid}.jsonl`), `${JSON.stringify(note)}\n`);
}
