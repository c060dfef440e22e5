import { expect, it } from "vitest";
import { cleanLog } from "../../../sim/route/cleanLog.ts";
import { geodesicLeg } from "../../../sim/route/geodesicLeg.ts";
import { mapTrack } from "../../../sim/route/mapTrack.ts";
import { madeLog, steadyRows } from "../../support/madeFixes.ts";

const cleaned = cleanLog(madeLog(steadyRows(1714723200, 400, 15).filter((_, i) => i < 200 || i >= 231)));

it("draws the track where the car was, mended stretches marked", () => {
  const track = mapTrack(cleaned);
  expect(track?.lat_deg.length).toBe(400);
  expect(track?.starts).toEqual([0]);
  expect(geodesicLeg(track?.lat_deg[100] ?? 0, track?.lon_deg[100] ?? 0, 50 + 1500 / 111229, 8).length_m).toBeLessThan(
    5,
  );
  expect(track?.isMended[215]).toBe(1);
  expect(track?.isMended[100]).toBe(0);
});

it("leaves out the first and the last 300 m on request", () => {
  const track = mapTrack(cleaned, { cutEnds_m: 300 });
  const [first, last] = [track?.lat_deg[0] ?? 0, track?.lat_deg[track.lat_deg.length - 1] ?? 0];
  expect(geodesicLeg(50, 8, first, 8).length_m).toBeGreaterThan(295);
  expect(geodesicLeg(last, 8, 50 + (399 * 15) / 111229, 8).length_m).toBeGreaterThan(285);
});

it("thins a long track", () => {
  expect(mapTrack(cleaned, { mostPoints: 50 })?.lat_deg.length).toBeLessThanOrEqual(51);
});

it("has nothing to draw for a log of speeds alone", () => {
  const rows = Array.from({ length: 100 }, (_, i) => ({ time_s: i, speed_mps: 10 }));
  expect(mapTrack(cleanLog(madeLog(rows)))).toBeUndefined();
});
