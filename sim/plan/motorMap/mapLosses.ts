import { inputError, type Problem } from "../../../shared/problems.ts";
import { RADPS_PER_RPM, W_PER_KW } from "../../../shared/units.ts";
import type { MapCell, MapCells, MapValues } from "./mapCells.ts";

/** No percentage is larger, however carelessly 100 was drawn over; losses are, on most of a map. Assumed. */
const LARGEST_PERCENT = 150;

/** Less is a slip of the pen: the loss would be a hundred times what reaches the shaft. Zero counts as a gap. Assumed. */
const LEAST_SHARE = 0.01;

/** What the values are, by the words beside them or, without words, by their size. */
export function valueScale(
  name: string,
  { cells, values }: MapCells,
): { isLoss: boolean; scale: number; says: string } {
  const inside = cells.filter((cell) => cell.speed_rpm > 0 && cell.torque_Nm !== 0).map((cell) => cell.value);
  const most = inside.reduce((a, b) => Math.max(a, b), 0);
  if (values === "W" || values === "kW")
    return { isLoss: true, scale: values === "kW" ? W_PER_KW : 1, says: `losses read in ${values}` };
  // by more than a quarter of the values, as below: a single slip of the pen makes no efficiencies watts
  const large = inside.filter((value) => value > LARGEST_PERCENT).length;
  if (values === undefined && large > inside.length / 4)
    return {
      isLoss: true,
      scale: 1,
      says: "losses read in W: too large for percentages, and no word says what they are",
    };
  const isPercent = values === "percent" ? most > 1 : most > 2;
  if (isPercent) {
    const shares = inside.filter((value) => value > 0 && value < 1).length;
    if (shares > inside.length / 4) {
      throw inputError(
        "map-mixed",
        name,
        `found ${shares} of ${inside.length} values below 1 and others up to ${most}, wanted all as shares or all in percent`,
      );
    }
  }
  return {
    isLoss: false,
    scale: isPercent ? 0.01 : 1,
    says: `efficiencies read ${isPercent ? "in percent" : `as shares of 1${quiet(values)}`}`,
  };
}

function quiet(values: MapValues): string {
  return values === "percent" ? ", though a word says percent" : "";
}

/** Loss in watts of an entry that is an efficiency; nothing where it says nothing or is impossible, which is put to the problems. */
export function lossOfEfficiency(where: string, cell: MapCell, scale: number, problems: Problem[]): number | undefined {
  const { speed_rpm, torque_Nm } = cell;
  const share = cell.value * scale;
  const isTiny = share > 0 && share < LEAST_SHARE && speed_rpm > 0 && torque_Nm !== 0;
  if (share > 1 || share < 0 || isTiny) {
    const at = `${speed_rpm} rpm, ${torque_Nm} Nm`;
    problems.push({
      code: "map-efficiency",
      where,
      message: `found ${cell.value} at ${at}, an efficiency is ${isTiny ? `at least ${LEAST_SHARE / scale} or empty` : `0 to ${1 / scale}`}`,
    });
    return undefined;
  }
  // nothing is said by an efficiency of nothing, at standstill or without torque
  if (speed_rpm <= 0 || torque_Nm === 0 || share === 0) return undefined;
  const shaft_W = Math.abs(torque_Nm) * speed_rpm * RADPS_PER_RPM;
  return torque_Nm > 0 ? shaft_W * (1 / share - 1) : shaft_W * (1 - share);
}

/** Loss in watts of an entry that is one; nothing where it is impossible, which is put to the problems. */
export function lossGiven(where: string, cell: MapCell, scale: number, problems: Problem[]): number | undefined {
  const loss_W = cell.value * scale;
  if (loss_W < 0 || loss_W > 1e6) {
    problems.push({ code: "map-loss", where, message: `found ${cell.value}, a loss is 0 to ${1e6 / scale}` });
    return undefined;
  }
  return loss_W;
}
