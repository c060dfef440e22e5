import { expect, it } from "vitest";
import { createChannels, LIMITS } from "../../../sim/index.ts";
import { BRITISH } from "../../../web/charts/parts/figure/figureUnits.ts";
import { speedTrace } from "../../../web/charts/speedTrace.ts";
import { drawing } from "../../support/drawing.ts";

/** 100 s and 2 km at 20 m/s (72 km/h) where that is wanted; these speeds driven by the second tens of seconds. */
function run(changes: { readonly slow_mps?: number; readonly climb_m?: number } = {}) {
  const channels = createChannels(11);
  channels.length = 11;
  for (let i = 0; i < 11; i++) {
    channels.time_s[i] = 10 * i;
    channels.distance_m[i] = 200 * i;
    channels.target_mps[i] = 20;
    channels.speed_mps[i] = i === 4 || i === 5 ? (changes.slow_mps ?? 20) : 20;
    channels.elevation_m[i] = ((changes.climb_m ?? 0) * i) / 10;
    if (i === 4 || i === 5) channels.limit[i] = LIMITS.indexOf("pack");
  }
  return { name: "Six modules", channels, along: "time" as const };
}

it("says where the car falls behind, for how long and what holds it back", () => {
  // 15 m/s for the rows that end at 40 s and 50 s: 20 s from 30 s on.
  const { alt, svg } = speedTrace(run({ slow_mps: 15 }), drawing());
  expect(alt).toContain("up to 72 km/h driven of 72 km/h wanted, over 100 s.");
  expect(alt).toContain("Falls behind by more than 2 km/h for 20 s in all, first at 30 s (pack limit).");
  expect(svg.textContent).toContain("20 s behind: pack limit");
});

it("takes less than 2 km/h for no falling behind", () => {
  // 0.5 m/s are 1.8 km/h, 0.6 m/s are 2.16 km/h.
  expect(speedTrace(run({ slow_mps: 19.5 }), drawing()).alt).toContain("keeps the wanted speed throughout");
  expect(speedTrace(run({ slow_mps: 19.4 }), drawing()).alt).toContain("Falls behind");
});

it("has the height beneath only where the road rises by more than half a metre", () => {
  const hilly = speedTrace(run({ climb_m: 50 }), drawing());
  const flat = speedTrace(run({ climb_m: 0.4 }), drawing());
  expect(hilly.svg.textContent).toContain("Height (m)");
  expect(hilly.alt).toContain("The road lies between 0 m and 50 m.");
  expect(hilly.read(50).values.at(-1)).toEqual({ label: "height", text: "25 m" });
  expect(flat.svg.textContent).not.toContain("Height");
  expect(flat.read(50).values.map(({ label }) => label)).toEqual(["driven", "wanted"]);
});

it("reads in the reader's units along the distance", () => {
  // 2 km are 1.24 miles, 20 m/s are 44.7 mph.
  const { read } = speedTrace({ ...run(), along: "distance" }, { ...drawing(), units: BRITISH });
  expect(read(2000)).toEqual({
    where: "1.24 miles",
    values: [
      { label: "driven", text: "44.7 mph" },
      { label: "wanted", text: "44.7 mph" },
    ],
  });
});
