import { describe, expect, it } from "vitest";
import { type Channels, createChannels, type MotorSurface } from "../../../sim/index.ts";
import { anyChannel } from "../../../web/charts/anyChannel.ts";
import { daysDistribution } from "../../../web/charts/daysDistribution.ts";
import { energyLedger } from "../../../web/charts/energyLedger.ts";
import { gearSpeeds } from "../../../web/charts/gearSpeeds.ts";
import { operatingPoints } from "../../../web/charts/operatingPoints.ts";
import type { Chart, Drawing } from "../../../web/charts/parts/figure/chart.ts";
import { rawAgainstCleaned } from "../../../web/charts/rawAgainstCleaned.ts";
import { roadLoad } from "../../../web/charts/roadLoad.ts";
import { routeMap } from "../../../web/charts/routeMap.ts";
import { smallMultiples } from "../../../web/charts/smallMultiples.ts";
import { speedTrace } from "../../../web/charts/speedTrace.ts";
import { steadySpeed } from "../../../web/charts/steadySpeed.ts";
import { torqueCurve } from "../../../web/charts/torqueCurve.ts";
import { inventedMotorMap } from "../../logs/inventedDrive.ts";
import { drawing } from "../../support/drawing.ts";

/** A run of `rows` samples with each column filled by `fill(row)`; time and distance rise by one. */
function run(rows: number, fill: (row: number) => number): Channels {
  const channels = createChannels(rows);
  channels.length = rows;
  for (const column of Object.values(channels)) {
    if (typeof column === "number") continue;
    for (let i = 0; i < rows; i++) column[i] = fill(i);
  }
  for (let i = 0; i < rows; i++) {
    channels.time_s[i] = i;
    channels.distance_m[i] = i;
  }
  return channels;
}

const ledgerOf = (value: number) => ({
  aero: value,
  rolling: value,
  climb: -value,
  speed: value,
  driveline: value,
  motor: value,
  packHeat: value,
  accessories: value,
  frictionBrake: value,
  total: 7 * value,
});

/** Every figure that is drawn from runs. */
function ofRuns(
  packs: { name: string; index: number; channels: Channels }[],
  map: MotorSurface,
): Record<string, (drawing: Drawing) => Chart> {
  const one = packs[0] ?? { name: "none", index: 0, channels: createChannels(0) };
  return {
    speedTrace: (on) => speedTrace({ ...one, along: "time" }, on),
    operatingPoints: (on) => operatingPoints({ ...one, map, contours: "efficiency" }, on),
    smallMultiples: (on) => smallMultiples({ packs, channel: "motorLoss", along: "distance" }, on),
    anyChannel: (on) => anyChannel({ packs, x: "motorSpeed", y: "motorTorque", colour: "soc" }, on),
    anyChannelAlong: (on) => anyChannel({ packs, x: "distance", y: "elevation" }, on),
  };
}

const onePack = (channels: Channels) => [{ name: "Pack", index: 0, channels }];
const flatMap: MotorSurface = {
  ...inventedMotorMap,
  loss_W: inventedMotorMap.loss_W.map(() => 0),
  efficiency_frac: inventedMotorMap.efficiency_frac.map(() => 0),
  limits: [],
};
const track = (rows: number, spread_deg: number) => {
  const column = (value: (row: number) => number) => Float64Array.from({ length: rows }, (_, i) => value(i));
  return {
    time_s: column((i) => i),
    longitude_deg: column((i) => (179.99 + spread_deg * Math.sin(i / 900) > 180 ? -180 : 179.99)),
    latitude_deg: column((i) => spread_deg * Math.cos(i / 700)),
    speed_mps: column(() => 0),
  };
};
const log = (rows: number, speed_mps: number) => ({
  time_s: Float64Array.from({ length: rows }, (_, i) => i),
  speed_mps: new Float64Array(rows).fill(speed_mps),
  isRepaired: new Uint8Array(rows).fill(1),
});
const steady = (value: number) => ({
  speed_kmh: value,
  rolling_N: 0,
  aero_N: 0,
  drag_N: 0,
  isHeld: false,
  battery_Whpkm: value,
  range_km: value,
  motor_rpm: value,
  motor_Nm: value,
  efficiency_frac: 0,
  limit: "pack" as const,
});

const cases: Record<string, Record<string, (drawing: Drawing) => Chart>> = {
  "nothing at all": {
    ...ofRuns([], inventedMotorMap),
    energyLedger: (on) => energyLedger([], on),
    torqueCurve: (on) => torqueCurve({ motor: [], asSet: [] }, on),
    steadySpeed: (on) => steadySpeed([], on),
    roadLoad: (on) => roadLoad([], on),
    gearSpeeds: (on) => gearSpeeds({ gears: [], maxSpeed_rpm: 0, roadTop_mps: 0 }, on),
    daysDistribution: (on) => daysDistribution({ days_m: [], usual_m: 0, longest_m: 0, packs: [] }, on),
    rawAgainstCleaned: (on) => rawAgainstCleaned({ raw: log(0, 0), cleaned: log(0, 0) }, on),
    routeMap: (on) => routeMap(track(0, 0), on),
  },
  "one sample": {
    ...ofRuns(onePack(run(1, () => 0.5)), flatMap),
    torqueCurve: (on) =>
      torqueCurve({ motor: [{ speed_rpm: 0, torque_Nm: 100 }], asSet: [{ speed_rpm: 0, torque_Nm: 100 }] }, on),
    steadySpeed: (on) => steadySpeed([{ name: "Pack", index: 0, rows: [steady(50)] }], on),
    roadLoad: (on) => roadLoad([{ speed_mps: 10, rolling_N: 100, aero_N: 50 }], on),
    daysDistribution: (on) => daysDistribution({ days_m: [20_000], usual_m: 20_000, longest_m: 20_000, packs: [] }, on),
    rawAgainstCleaned: (on) => rawAgainstCleaned({ raw: log(1, 5), cleaned: log(1, 5) }, on),
    routeMap: (on) => routeMap(track(1, 0), on),
  },
  "nothing but noughts": {
    ...ofRuns(onePack(run(50, () => 0)), flatMap),
    energyLedger: (on) => energyLedger([{ name: "Pack", distance_km: 1, ledger_Wh: ledgerOf(0) }], on),
    torqueCurve: (on) =>
      torqueCurve({ motor: [{ speed_rpm: 0, torque_Nm: 0 }], asSet: [{ speed_rpm: 0, torque_Nm: 0 }] }, on),
    steadySpeed: (on) => steadySpeed([{ name: "Pack", index: 0, rows: [steady(0), steady(0)] }], on),
    roadLoad: (on) => roadLoad([{ speed_mps: 0, rolling_N: 0, aero_N: 0 }], on),
    gearSpeeds: (on) =>
      gearSpeeds(
        { gears: [{ name: "top", speedPerRpm_mps: 0, isUsed: true }], maxSpeed_rpm: 6000, roadTop_mps: 0 },
        on,
      ),
    daysDistribution: (on) =>
      daysDistribution(
        { days_m: [0, 0], usual_m: 0, longest_m: 0, packs: [{ name: "Pack", index: 0, range_m: 0 }] },
        on,
      ),
    rawAgainstCleaned: (on) => rawAgainstCleaned({ raw: log(9, Number.NaN), cleaned: log(9, 0) }, on),
    routeMap: (on) => routeMap(track(9, 0), on),
  },
  "numbers beyond all measure": {
    ...ofRuns(onePack(run(400_000, (i) => 1e7 * Math.sin(i / 9))), inventedMotorMap),
    energyLedger: (on) => energyLedger([{ name: "P".repeat(200), distance_km: 1e-6, ledger_Wh: ledgerOf(1e9) }], on),
    torqueCurve: (on) =>
      torqueCurve(
        {
          motor: [
            { speed_rpm: 0, torque_Nm: 1e9 },
            { speed_rpm: 1e9, torque_Nm: -1e9 },
          ],
          asSet: [
            { speed_rpm: 0, torque_Nm: 1e8 },
            { speed_rpm: 1e9, torque_Nm: -1e9 },
          ],
          gearboxInput_Nm: 1e12,
        },
        on,
      ),
    steadySpeed: (on) => steadySpeed([{ name: "word ".repeat(60), index: 11, rows: [steady(1e-9), steady(1e9)] }], on),
    roadLoad: (on) =>
      roadLoad(
        [
          { speed_mps: 0, rolling_N: 1e9, aero_N: 0, climb_N: -1e9 },
          { speed_mps: 1e6, rolling_N: 1e9, aero_N: 1e12, climb_N: -1e9 },
        ],
        on,
      ),
    gearSpeeds: (on) =>
      gearSpeeds(
        {
          gears: Array.from({ length: 20 }, (_, i) => ({
            name: `gear ${i} `.repeat(9),
            speedPerRpm_mps: i,
            isUsed: i > 9,
          })),
          maxSpeed_rpm: 1e6,
          roadTop_mps: 1e7,
        },
        on,
      ),
    daysDistribution: (on) =>
      daysDistribution(
        {
          days_m: Array.from({ length: 5000 }, (_, i) => i * 1e5),
          usual_m: 1,
          longest_m: 1e9,
          packs: Array.from({ length: 12 }, (_, index) => ({ name: `Pack ${index}`, index, range_m: 1e8 * index })),
        },
        on,
      ),
    rawAgainstCleaned: (on) => rawAgainstCleaned({ raw: log(400_000, 1e6), cleaned: log(400_000, 0) }, on),
    routeMap: (on) => routeMap(track(400_000, 80), on),
  },
};

describe.each(Object.entries(cases))("from %s", (_, charts) => {
  it.each(Object.entries(charts))("%s is drawn without a word or number gone wrong", (__, draw) => {
    for (const width of [320, 720]) {
      const chart = draw(drawing(width));
      const told = `${chart.svg.outerHTML}${JSON.stringify(chart.table)}${JSON.stringify(chart.read(chart.position?.last ?? 0))}`;
      expect(told).not.toMatch(/NaN|Infinity|undefined|\bnull\b|e\+\d/);
      expect(chart.alt).not.toBe("");
      expect(chart.svg.getAttribute("role")).toBe("img");
    }
  });
});

describe("a run of 400,000 rows", () => {
  it("is drawn with a few points a pixel at most", () => {
    const packs = onePack(run(400_000, (i) => Math.sin(i / 9)));
    const { table, svg } = smallMultiples({ packs, channel: "soc", along: "time" }, drawing(720));
    expect(table.rows.length).toBeLessThan(4 * 720);
    expect(svg.outerHTML.length).toBeLessThan(200_000);
  });
});
