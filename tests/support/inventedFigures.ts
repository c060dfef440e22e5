import type { Chart, Drawing } from "../../web/charts/chart.ts";
import { energyLedger } from "../../web/charts/energyLedger.ts";
import { operatingPoints } from "../../web/charts/operatingPoints.ts";
import { socAlongRoad } from "../../web/charts/socAlongRoad.ts";
import { speedTrace } from "../../web/charts/speedTrace.ts";
import { inventedLedgers, inventedMotorMap, inventedPacks } from "./inventedDrive.ts";

const [weak, middle] = inventedPacks as [(typeof inventedPacks)[0], (typeof inventedPacks)[0]];
const gear = { name: "third gear", speedPerRpm_mps: 0.3 / ((4.1 * 1.4 * 60) / (2 * Math.PI)) };

/** Every chart, drawn from the invented drive: for snapshots, and for what must hold of all of them. */
export const figures: Readonly<Record<string, (drawing: Drawing) => Chart>> = {
  energyLedger: (drawing) => energyLedger(inventedLedgers, drawing),
  socAlongRoad: (drawing) => socAlongRoad({ packs: inventedPacks, along: "distance" }, drawing),
  speedTrace: (drawing) => speedTrace({ ...weak, along: "time" }, drawing),
  operatingPoints: (drawing) => operatingPoints({ ...middle, map: inventedMotorMap, contours: "loss", gear }, drawing),
  operatingPointsEfficiency: (drawing) =>
    operatingPoints({ ...middle, map: inventedMotorMap, contours: "efficiency" }, drawing),
};
