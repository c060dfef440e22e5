import { describe, expect, it } from "vitest";
import { cutTrackEnds } from "../../../../../web/charts/parts/track/cutTrackEnds.ts";
import { onPlane, type Track } from "../../../../../web/charts/parts/track/trackOnPlane.ts";
import { routeMap } from "../../../../../web/charts/routeMap.ts";
import { drawing } from "../../../../support/drawing.ts";

/** Straight north at 10 m a second from the equator; `parts` of the given lengths in seconds, each 2 km east of the last. */
function north(...parts: readonly number[]): Track {
  const n = parts.reduce((sum, part) => sum + part, 0);
  const track = { time_s: new Float64Array(n), longitude_deg: new Float64Array(n), latitude_deg: new Float64Array(n) };
  let at = 0;
  const partRows: number[] = [];
  parts.forEach((seconds, part) => {
    if (part > 0) partRows.push(at);
    for (let i = 0; i < seconds; i++, at++) {
      track.time_s[at] = at;
      track.latitude_deg[at] = (10 * i) / 111_195;
      track.longitude_deg[at] = 0.018 * part;
    }
  });
  return { ...track, speed_mps: new Float64Array(n).fill(10), isRepaired: new Uint8Array(n), partRows };
}

describe("a track for a map", () => {
  it("loses 300 m at both ends of every part", () => {
    const track = north(101, 201);
    const cut = cutTrackEnds(track, 300);
    const whole = onPlane(track);
    const left = onPlane(cut);
    expect(cut.partRows?.[0]).toBe(0);
    const second = cut.partRows?.[1] ?? 0;
    expect(second).toBe(41); // 1000 m less 600 m, a sample every 10 m
    expect(cut.time_s).toHaveLength(41 + 141);
    expect(left.north_m[second - 1] - left.north_m[0]).toBeCloseTo(400, 0);
    expect(left.length_m).toBeLessThan(whole.length_m);
    expect(cut.time_s[0]).toBe(30);
    expect(cut.time_s[second]).toBe(101 + 30);
  });

  it("loses parts that are all ends", () => {
    expect(cutTrackEnds(north(50), 300).time_s).toHaveLength(0);
    const mixed = cutTrackEnds(north(50, 101), 300);
    expect(mixed.partRows).toEqual([0]);
    expect(mixed.time_s).toHaveLength(41);
  });

  it("leaves out samples without a position", () => {
    const track = north(101);
    track.latitude_deg.fill(Number.NaN, 40, 60);
    const cut = cutTrackEnds(track, 0);
    expect(cut.time_s).toHaveLength(81);
    expect(cut.latitude_deg.every(Number.isFinite)).toBe(true);
    track.latitude_deg.fill(Number.NaN);
    expect(cutTrackEnds(track, 300).time_s).toHaveLength(0);
  });

  it("has no line from one part to the next", () => {
    // The dark rim under the colours is one stroke a part.
    const strokes = (track: Track) =>
      routeMap(track, drawing(640)).svg.querySelectorAll('[stroke-width="4.6"] path').length;
    expect(strokes({ ...north(101, 101), partRows: [] })).toBe(1);
    expect(strokes(north(101, 101))).toBe(2);
  });
});
