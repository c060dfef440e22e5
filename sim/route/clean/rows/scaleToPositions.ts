import { formatNumber } from "../../../../shared/quantity/formatNumber.ts";
import { mpsPer } from "../../log/columnUnits.ts";
import { type SpeedUnit, speedUnits } from "../../log/logFile.ts";
import { speedRatio } from "../../log/speedUnit.ts";
import type { RepairList } from "../report/repairList.ts";
import type { RowColumns } from "./rowColumns.ts";

/** Within this of 1 it is a matter of a speedometer's error, which is mended apart. */
const NEAR = Math.log(1.25);
/** So much of the log must agree on the factor, or the speeds have nothing to do with the positions. */
const ALIKE_frac = 0.7;
/** A factor this near to one between two units is that. */
const UNIT = Math.log(1.05);

const unitWords: Readonly<Record<SpeedUnit, string>> = { kmh: "km/h", mph: "mph", mps: "m/s", knots: "knots" };

/**
 * Recorded speeds brought to the positions' scale, in place, where all of them are off by one factor: a column in another unit than its
 * name says, or in tenths. Said as a repair. Nothing is done where the pieces of road do not agree on the factor.
 */
export function scaleToPositions(rows: RowColumns, repairs: RepairList): void {
  const found = repairs.does("speedScale") ? speedRatio(rows) : undefined;
  if (!found || found.alike_frac < ALIKE_frac || Math.abs(Math.log(found.ratio)) < NEAR) return;
  const units = unitsApart(found.ratio);
  const ratio = units?.ratio ?? found.ratio;
  for (let i = 0; i < rows.count; i++) rows.speed_mps[i] /= ratio;
  const asUnit = units ? `, as ${units.words} do` : "";
  const by = `recorded speeds are ${formatNumber(found.ratio)} times those from the positions${asUnit}: divided by ${formatNumber(ratio)}`;
  repairs.add("speedScale", 1, rows.time_s[0], rows.time_s[rows.count - 1], by);
}

/** The two units whose mistaking for one another gives the ratio, with its exact value. */
function unitsApart(ratio: number): { readonly ratio: number; readonly words: string } | undefined {
  for (const written of speedUnits) {
    for (const read of speedUnits) {
      const exact = mpsPer[read] / mpsPer[written];
      if (written !== read && Math.abs(Math.log(exact)) > NEAR && Math.abs(Math.log(ratio / exact)) < UNIT)
        return { ratio: exact, words: `${unitWords[written]} read as ${unitWords[read]}` };
    }
  }
  return undefined;
}
