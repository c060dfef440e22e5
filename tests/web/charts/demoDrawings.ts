import { demos } from "../../../shared/demos/index.ts";
import { readJob } from "../../../shared/job/readJob.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import { chargePlan, driveJob, roadTrace, usualDays } from "../../../sim/index.ts";
import { motorSurface } from "../../../sim/plan/drive/motorSurface.ts";
import { steadyTable } from "../../../sim/plan/going/steadyTable.ts";
import { anyChannel } from "../../../web/charts/anyChannel.ts";
import { dayByHour } from "../../../web/charts/dayByHour.ts";
import { daysDistribution } from "../../../web/charts/daysDistribution.ts";
import { energyLedger } from "../../../web/charts/energyLedger.ts";
import { operatingPoints } from "../../../web/charts/operatingPoints.ts";
import type { Chart, Drawing } from "../../../web/charts/parts/figure/chart.ts";
import { rangeAgainstNeed } from "../../../web/charts/rangeAgainstNeed.ts";
import { smallMultiples } from "../../../web/charts/smallMultiples.ts";
import { speedTrace } from "../../../web/charts/speedTrace.ts";
import { steadySpeed } from "../../../web/charts/steadySpeed.ts";
import { torqueCurve } from "../../../web/charts/torqueCurve.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";

/** The figures of a demo job as the notebook draws them: the job's own packs, its first road, the real simulation. */
export function demoFigures(id: string): Record<string, (drawing: Drawing) => Chart> {
  const job = readJob(demos.find((demo) => demo.id === id)?.document, id);
  const [road] = job.roads;
  if (!road) throw new Error(`the demo ${id} has no road`);
  const report = driveJob(job, roadTrace(road, cycleTexts), { channels: true });
  const packs = report.candidates.flatMap(({ name, channels }, index) => {
    const pack = job.packs[index];
    if (!channels || !pack) throw new Error(`${name} was driven without its channels`);
    return [{ name, index, channels, floor_frac: pack.floor_frac, ceiling_frac: pack.ceiling_frac }];
  });
  const days = usualDays(job, chargePlan(job, report.candidates), report.trace);
  const lines = packs.flatMap((pack) => {
    const day = days[pack.index];
    return day ? [{ ...pack, day }] : [];
  });
  const map = motorSurface(job, 0);
  const first = packs[0] as (typeof packs)[0];
  const last = packs.at(-1) as (typeof packs)[0];
  const steady = packs.map(({ name, index }) => ({
    name,
    index,
    rows: steadyTable(job, index, [30, 40, 50, 60, 70, 80, 90, 100]),
  }));
  return {
    energyLedger: (on) => energyLedger(report.candidates, on),
    dayByHour: (on) => dayByHour(lines, on),
    speedTrace: (on) => speedTrace({ ...first, along: "time" }, on),
    operatingPoints: (on) => operatingPoints({ ...last, map, contours: "loss" }, on),
    operatingPointsEfficiency: (on) => operatingPoints({ ...first, map, contours: "efficiency" }, on),
    torqueCurve: (on) =>
      torqueCurve(
        {
          motor: map.envelope.filter((point) => point.torque_Nm >= 0),
          asSet: map.envelope.filter((point) => point.torque_Nm >= 0),
        },
        on,
      ),
    steadySpeed: (on) => steadySpeed(steady, on),
    smallMultiples: (on) => smallMultiples({ packs, channel: "batteryCurrent", along: "time" }, on),
    anyChannel: (on) => anyChannel({ packs: [first, last], x: "speed", y: "batteryPower", colour: "gradient" }, on),
    rangeAgainstNeed: (on) =>
      rangeAgainstNeed(
        {
          packs: report.enough.packs.map(({ name, because }, index) => {
            const { range_km = 0, rangeEnd } = report.candidates[index] ?? {};
            return { name, index, range_m: range_km * M_PER_KM, isAtLeast: rangeEnd === "time", because };
          }),
          day_m: job.usualDay_km * M_PER_KM,
          needed_m: report.enough.needed_km * M_PER_KM,
          longest_m: (job.longestDay_km ?? job.usualDay_km) * M_PER_KM,
        },
        on,
      ),
    daysDistribution: (on) =>
      daysDistribution(
        {
          days_m: [job.usualDay_km * M_PER_KM],
          usual_m: job.usualDay_km * M_PER_KM,
          longest_m: (job.longestDay_km ?? job.usualDay_km) * M_PER_KM,
          packs: report.candidates.map(({ name, range_km }, index) => ({ name, index, range_m: range_km * M_PER_KM })),
        },
        on,
      ),
  };
}
