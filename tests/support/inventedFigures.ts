import type { HeatLine } from "../../sim/index.ts";
import { anyChannel } from "../../web/charts/anyChannel.ts";
import { chargeTimes } from "../../web/charts/chargeTimes.ts";
import { dayByHour } from "../../web/charts/dayByHour.ts";
import { daysDistribution } from "../../web/charts/daysDistribution.ts";
import { energyLedger } from "../../web/charts/energyLedger.ts";
import { gearSpeeds } from "../../web/charts/gearSpeeds.ts";
import { heatAlong, ratedAlong } from "../../web/charts/heatAlong.ts";
import { operatingPoints } from "../../web/charts/operatingPoints.ts";
import type { Chart, Drawing } from "../../web/charts/parts/figure/chart.ts";
import { rangeAgainstNeed } from "../../web/charts/rangeAgainstNeed.ts";
import { rankedUnknowns } from "../../web/charts/rankedUnknowns.ts";
import { rawAgainstCleaned } from "../../web/charts/rawAgainstCleaned.ts";
import { roadLoad } from "../../web/charts/roadLoad.ts";
import { routeMap } from "../../web/charts/routeMap.ts";
import { smallMultiples } from "../../web/charts/smallMultiples.ts";
import { speedTrace } from "../../web/charts/speedTrace.ts";
import { steadySpeed } from "../../web/charts/steadySpeed.ts";
import { torqueCurve } from "../../web/charts/torqueCurve.ts";
import { weekCharge } from "../../web/charts/weekCharge.ts";
import {
  inventedDayLines,
  inventedDays_m,
  inventedEngine,
  inventedGears,
  inventedLedgers,
  inventedMotorMap,
  inventedPacks,
  inventedRoadLoad,
  inventedSteady,
} from "../logs/inventedDrive.ts";
import { inventedLog, inventedTrack } from "../logs/inventedLog.ts";
import { inventedWeek } from "../logs/inventedWeek.ts";

const [weak, middle] = inventedPacks as [(typeof inventedPacks)[0], (typeof inventedPacks)[0]];
const gear = { name: "third gear", speedPerRpm_mps: 0.3 / ((4.1 * 1.4 * 60) / (2 * Math.PI)) };

/** Every chart, drawn from the invented drive: for snapshots, and for what must hold of all of them. */
export const figures: Readonly<Record<string, (drawing: Drawing) => Chart>> = {
  energyLedger: (drawing) => energyLedger(inventedLedgers, { ...drawing, chosen: 1 }),
  dayByHour: (drawing) => dayByHour(inventedDayLines, { ...drawing, chosen: 1 }),
  speedTrace: (drawing) => speedTrace({ ...weak, along: "time" }, drawing),
  operatingPoints: (drawing) => operatingPoints({ ...middle, map: inventedMotorMap, contours: "loss", gear }, drawing),
  operatingPointsEfficiency: (drawing) =>
    operatingPoints({ ...middle, map: inventedMotorMap, contours: "efficiency" }, drawing),
  torqueCurve: (drawing) =>
    torqueCurve(
      {
        motor: inventedMotorMap.envelope,
        asSet: inventedMotorMap.envelope.map((each) => ({ ...each, torque_Nm: Math.min(each.torque_Nm, 70) })),
        gearboxInput_Nm: 75,
        engine: inventedEngine,
      },
      drawing,
    ),
  steadySpeed: (drawing) =>
    steadySpeed(
      inventedPacks.map(({ name, index }) => ({ name, index, rows: inventedSteady(4 + 6 * index, 1 + index / 40) })),
      drawing,
    ),
  chargeTimes: (drawing) =>
    chargeTimes(
      [
        {
          name: "Garage, household socket",
          usualDay_h: 3.1,
          winterDay_h: 4.2,
          emptyToFull_h: 5.8,
          night: { hours_h: 8, isCheap: true },
        },
        { name: "Wall unit, 16 A", usualDay_h: 1.9, winterDay_h: 2.5, emptyToFull_h: 3.6 },
      ],
      drawing,
    ),
  heatAlong: (drawing) =>
    heatAlong([inventedHeat("road", 3000, 30), inventedHeat("hill", 1800, 70)], { motor_K: 413, pack_K: 328 }, drawing),
  ratedAlong: (drawing) => ratedAlong([inventedHeat("road", 3000, 30), inventedHeat("hill", 1800, 70)], drawing),
  weekCharge: (drawing) =>
    weekCharge(
      "13 kWh",
      [
        { condition: "new", floor_frac: 0.1, ...inventedWeek(0.12) },
        { condition: "ten years, winter", floor_frac: 0.14, ...inventedWeek(0.19) },
      ],
      drawing,
    ),
  rankedUnknowns: (drawing) =>
    rankedUnknowns(
      {
        range_m: 70_000,
        unknowns: [
          { label: "Rolling resistance coefficient", atLow_m: 74_000, atHigh_m: 66_500 },
          { label: "Losses of motor and controller", atLow_m: 72_500, atHigh_m: 67_800 },
          { label: "Capacity of a module", atLow_m: 68_200, atHigh_m: 71_800 },
        ],
      },
      drawing,
    ),
  roadLoad: (drawing) => roadLoad(inventedRoadLoad, drawing),
  gearSpeeds: (drawing) => gearSpeeds({ gears: inventedGears, maxSpeed_rpm: 8000, roadTop_mps: 22 }, drawing),
  daysDistribution: (drawing) =>
    daysDistribution(
      {
        days_m: inventedDays_m,
        usual_m: 34_000,
        longest_m: 96_000,
        packs: inventedPacks.map(({ name, index }) => ({ name, index, range_m: 21_000 + 40_000 * index })),
      },
      drawing,
    ),
  rangeAgainstNeed: (drawing) =>
    rangeAgainstNeed(
      {
        packs: inventedPacks.map(({ name, index }) => ({
          name,
          index,
          range_m: 21_000 + 40_000 * index,
          isAtLeast: false,
          because: (["short", "enough", "unusable"] as const)[index % 3] ?? "behind",
        })),
        day_m: 34_000,
        needed_m: 58_000,
        longest_m: 96_000,
      },
      drawing,
    ),
  smallMultiples: (drawing) =>
    smallMultiples({ packs: inventedPacks, channel: "batteryCurrent", along: "distance" }, drawing),
  anyChannel: (drawing) =>
    anyChannel({ packs: inventedPacks.slice(0, 2), x: "speed", y: "batteryPower", colour: "gradient" }, drawing),
  chargeAlongRoad: (drawing) => anyChannel({ packs: inventedPacks, x: "distance", y: "soc" }, drawing),
  anyChannelAlong: (drawing) => anyChannel({ packs: inventedPacks, x: "time", y: "packTemperature" }, drawing),
  rawAgainstCleaned: (drawing) => rawAgainstCleaned(inventedLog, drawing),
  routeMap: (drawing) => routeMap(inventedTrack, drawing),
};

/** A course that warms motor and pack towards so many degrees more, as one lump does. */
function inventedHeat(name: "road" | "hill", end_s: number, more_K: number): HeatLine {
  const time_s = Array.from({ length: 61 }, (_, k) => (k * end_s) / 60);
  const towards = (most_K: number, constant_s: number) =>
    time_s.map((at_s) => 308.15 + most_K * (1 - Math.exp(-at_s / constant_s)));
  const rated_frac = time_s.map((at_s) => (more_K / 50) * Math.min(1, at_s / 1800));
  return {
    name,
    times: 2,
    isEmpty: false,
    time_s,
    motor_K: towards(more_K, 900),
    pack_K: towards(0.2 * more_K, 4000),
    rated_frac,
  };
}
