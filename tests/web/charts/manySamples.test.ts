import { describe, expect, it } from "vitest";
import { createChannels } from "../../../sim/index.ts";
import { anyChannel } from "../../../web/charts/anyChannel.ts";
import { heightProfile } from "../../../web/charts/heightProfile.ts";
import { operatingPoints } from "../../../web/charts/operatingPoints.ts";
import type { Chart } from "../../../web/charts/parts/figure/chart.ts";
import { rawAgainstCleaned } from "../../../web/charts/rawAgainstCleaned.ts";
import { smallMultiples } from "../../../web/charts/smallMultiples.ts";
import { speedTrace } from "../../../web/charts/speedTrace.ts";
import { highlight } from "../../../web/look/tokens.ts";
import { inventedMotorMap } from "../../logs/inventedDrive.ts";
import { seeded } from "../../logs/logMaker.ts";
import { drawing } from "../../support/drawing.ts";

const SAMPLES = 300_000;
/** A dense cloud of dots on an A4 page comes to this; a line of four points a pixel to an eighth of it. */
const MOST_LETTERS = 500_000;

/** A drive in which every sample differs from its neighbours, with one spike of one sample. */
const chance = seeded(7);
const channels = createChannels(SAMPLES);
const spike = 123_456;
for (let i = 0; i < SAMPLES; i++) {
  const speed_mps = i === spike ? 40 : 10 + 5 * Math.sin(i / 900) + chance();
  Object.entries({
    time_s: i,
    distance_m: 10 * i,
    speed_mps,
    target_mps: speed_mps + (i % 7 === 0 ? 3 : 0),
    grade_ratio: 0.1 * (chance() - 0.5),
    elevation_m: 100 + 50 * Math.sin(i / 5000) + chance(),
    motorSpeed_radps: 20 * speed_mps,
    motorTorque_Nm: 80 * (chance() - 0.5),
    battery_A: 200 * (chance() - 0.3),
    battery_V: 110 + chance(),
    battery_W: 20_000 * (chance() - 0.3),
    soc_frac: 0.95 - (0.8 * i) / SAMPLES,
  }).forEach(([key, value]) => {
    (channels as unknown as Record<string, Float64Array>)[key]?.fill(value, i, i + 1);
  });
}
channels.length = SAMPLES;
const pack = { name: "12 kWh", index: 0, channels, floor_frac: 0.1, ceiling_frac: 0.95 };
const { time_s, distance_m, speed_mps, elevation_m } = channels;
const isRepaired = Uint8Array.from(time_s, (_, i) => (i % 3 === 0 ? 1 : 0));
const map = inventedMotorMap;
const on = drawing(680);
// Maps are not among them: no position is printed.
const figures: Readonly<Record<string, () => Chart>> = {
  speedTrace: () => speedTrace({ name: pack.name, channels, along: "time" }, on),
  heightProfile: () =>
    heightProfile(
      {
        title: "Coast",
        profile: { distance_m, elevation_m },
        length_m: 10 * SAMPLES,
        pitch: { from_m: 1e6, to_m: 2e6, words: "1 in 9" },
      },
      on,
    ),
  smallMultiples: () =>
    smallMultiples({ packs: [pack, { ...pack, index: 1 }], channel: "batteryPower", along: "time" }, on),
  lines: () => anyChannel({ packs: [pack], x: "time", y: "batteryCurrent" }, on),
  dots: () => anyChannel({ packs: [pack], x: "motorSpeed", y: "motorTorque", colour: "batteryPower" }, on),
  operatingPoints: () => operatingPoints({ ...pack, map, contours: "loss" }, on),
  rawAgainstCleaned: () =>
    rawAgainstCleaned(
      { raw: { time_s, speed_mps, elevation_m }, cleaned: { time_s, speed_mps, elevation_m, isRepaired } },
      on,
    ),
};

describe("a drive of 300,000 samples", () => {
  it.each(Object.entries(figures))("is drawn by %s in as few points as a page can show", (_, draw) => {
    expect(draw().svg.outerHTML.length).toBeLessThan(MOST_LETTERS);
  });

  it("keeps the lowest and the highest value of every pixel's width: a spike of one sample is drawn", () => {
    const { svg, position } = figures["speedTrace"]?.() ?? {};
    const driven = svg?.querySelector(`path[stroke="${highlight}"]`)?.getAttribute("d") ?? "";
    const points = [...driven.matchAll(/([\d.]+),([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
    const top = points.reduce((a, b) => (b[1] < a[1] ? b : a));
    expect(Math.abs(top[0] - (position?.toPixel(spike) ?? 0))).toBeLessThan(1);
    // The band of noise, 1 m/s of 40, is as high in every tenth of the figure.
    const span = (from: number) => {
      const near = points.filter(([x]) => x >= from && x < from + 3).map(([, y]) => y);
      return Math.max(...near) - Math.min(...near);
    };
    for (let from = 100; from < 600; from += 60) expect(span(from)).toBeGreaterThan(3);
  });
});
