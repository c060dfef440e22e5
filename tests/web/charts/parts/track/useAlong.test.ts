import { expect, it } from "vitest";
import { createChannels } from "../../../../../sim/index.ts";
import { cutTrackEnds } from "../../../../../web/charts/parts/track/cutTrackEnds.ts";
import { behindAlong, useAlong } from "../../../../../web/charts/parts/track/useAlong.ts";
import { routeMap } from "../../../../../web/charts/routeMap.ts";
import { drawing } from "../../../../support/drawing.ts";

/** 200 s at 10 m/s, 10 A at 100 V, and from 1000 m to 1500 m twice that and 5 m/s wanted in vain. */
function run() {
  const n = 201;
  const channels = createChannels(n);
  channels.length = n;
  for (let i = 0; i < n; i++) {
    const isHill = i > 100 && i <= 150;
    channels.time_s[i] = i;
    channels.distance_m[i] = 10 * i;
    channels.speed_mps[i] = 10;
    channels.target_mps[i] = isHill ? 15 : 10;
    channels.battery_A[i] = isHill ? 20 : 10;
    channels.battery_V[i] = 100;
  }
  return channels;
}
const places_m = Float64Array.from({ length: 101 }, (_, i) => 20 * i);

it("the energy at a place is the mean over 150 m before and after it", () => {
  const uses = useAlong(run(), places_m);
  // 1000 W at 10 m/s: 100 J for each metre, 27.78 Wh/km; twice that on the hill; half of each where it begins.
  expect(uses[20]).toBeCloseTo(27.778, 2);
  expect(uses[60]).toBeCloseTo(55.556, 2);
  expect(uses[50]).toBeCloseTo(41.667, 2);
  expect(uses[0]).toBeCloseTo(27.778, 2);
});

it("the places where the car falls behind are those of the hill", () => {
  const behind = behindAlong(run(), places_m);
  expect(behind.indexOf(1)).toBe(50);
  expect(behind.lastIndexOf(1)).toBe(75);
});

it("a map coloured by energy marks where the car fell behind, and keeps both when its ends are cut", () => {
  const n = places_m.length;
  const track = {
    time_s: Float64Array.from({ length: n }, (_, i) => 2 * i),
    longitude_deg: new Float64Array(n).fill(7),
    latitude_deg: places_m.map((along_m) => 50 + along_m / 111_195),
    speed_mps: new Float64Array(n).fill(10),
    use_Whpkm: useAlong(run(), places_m),
    isBehind: behindAlong(run(), places_m),
  };
  const whole = routeMap(track, drawing());
  expect(whole.svg.textContent).toContain("fell behind here");
  expect(whole.svg.textContent).toContain("Energy from the pack (Wh/km)");
  expect(whole.table.rows[60]?.[4]).toBeCloseTo(55.556, 2);
  const cut = cutTrackEnds(track, 300);
  expect(cut.use_Whpkm?.length).toBe(cut.time_s.length);
  expect(routeMap(cut, drawing()).svg.textContent).toContain("fell behind here");
  const kept = routeMap({ ...track, isBehind: new Uint8Array(n) }, drawing());
  expect(kept.svg.textContent).not.toContain("fell behind");
});
