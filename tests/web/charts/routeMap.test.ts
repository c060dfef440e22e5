import { describe, expect, it } from "vitest";
import { onPlane } from "../../../web/charts/parts/track/trackOnPlane.ts";
import { routeMap } from "../../../web/charts/routeMap.ts";
import { inventedTrack } from "../../logs/inventedLog.ts";
import { drawing } from "../../support/drawing.ts";

const columns = (lon: number[], lat: number[]) => ({
  longitude_deg: Float64Array.from(lon),
  latitude_deg: Float64Array.from(lat),
});

describe("onPlane", () => {
  // One degree on a sphere of 6 371 009 m: pi R / 180 = 111 195.1 m, by the cosine of the latitude eastward.
  it("makes a degree of latitude 111.2 km and one of longitude that by the cosine", () => {
    const { north_m, east_m } = onPlane(columns([10, 10, 11], [59.5, 60.5, 60]));
    expect((north_m[1] as number) - (north_m[0] as number)).toBeCloseTo(111_195.1, 0);
    expect((east_m[2] as number) - (east_m[0] as number)).toBeCloseTo(111_195.1 / 2, 0);
  });

  it("keeps a track across the date line whole", () => {
    const { length_m } = onPlane(columns([179.999, -179.999], [0, 0]));
    expect(length_m).toBeCloseTo(0.002 * 111_195.1, 0);
  });
});

describe("routeMap", () => {
  it("finds the sample nearest to the pointer", () => {
    const { position } = routeMap(inventedTrack, drawing());
    if (!position?.toPoint) throw new Error("a track has points");
    const [x, y] = position.toPoint(400);
    // Points drawn stand a pixel and a half apart, a few seconds of driving.
    expect(Math.abs(position.fromPixel(x, y) - 400)).toBeLessThan(5);
  });

  it("keeps one scale in both directions", () => {
    const { position } = routeMap(inventedTrack, drawing());
    const plane = onPlane(inventedTrack);
    const [a, b] = [position?.toPoint?.(0), position?.toPoint?.(450)] as [[number, number], [number, number]];
    const eastScale = (b[0] - a[0]) / ((plane.east_m[450] as number) - (plane.east_m[0] as number));
    const northScale = -(b[1] - a[1]) / ((plane.north_m[450] as number) - (plane.north_m[0] as number));
    expect(eastScale / northScale).toBeCloseTo(1, 6);
  });
});
