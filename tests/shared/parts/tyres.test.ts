import { describe, expect, it } from "vitest";
import { tyres } from "../../../shared/parts/tyres.ts";

const byId = (id: string) => {
  const part = tyres.find((tyre) => tyre.id === id);
  if (!part) throw new Error(`no tyre ${id}`);
  return part;
};

// Rolling coefficients on good tarmac. Tyres of the classic era were 0.010 to 0.020 on a drum, replacement tyres of the
// early 2000s 0.007 to 0.017 [TRB286, ch. 3]; the two off-road bands are common practice, no source.
const bands: [string, number, number][] = [
  ["modern-radial", 0.007, 0.017],
  ["period-radial", 0.01, 0.02],
  ["period-cross-ply", 0.01, 0.02],
  ["all-terrain", 0.012, 0.018],
  ["mud", 0.015, 0.025],
];

it.each(bands)("%s rolls within %f to %f, ends and all", (id, low, high) => {
  const { rolling_coeff } = byId(id).origins;
  expect(rolling_coeff.low).toBeGreaterThanOrEqual(low);
  expect(rolling_coeff.high).toBeLessThanOrEqual(high);
});

describe("the period tyres follow the rig's law with speed", () => {
  // 0.0136 + 0.40e-7 v^2 radial, 0.0169 + 0.19e-6 v^2 bias-ply, v in km/h [Wong2008, ch. 1], from memory. Values of the
  // law to its printed digits: half of the last one is allowed.
  it.each([
    ["period-radial", 80, 0.013856],
    ["period-radial", 120, 0.014176],
    ["period-cross-ply", 80, 0.018116],
    ["period-cross-ply", 120, 0.019636],
  ])("%s at %f km/h: %f", (id, speed_kmh, expected_coeff) => {
    const { rolling_coeff, rollingRise_coeff } = byId(id).data;
    const coeff = rolling_coeff + rollingRise_coeff * (speed_kmh / 100) ** 2;
    expect(Math.abs(coeff - expected_coeff)).toBeLessThan(5e-7 + 1e-12);
  });
});

it("rank as they do on the road: radial of today, radial of the period, all-terrain, cross-ply, mud", () => {
  const order = ["modern-radial", "period-radial", "all-terrain", "period-cross-ply", "mud"];
  const coeffs = order.map((id) => byId(id).data.rolling_coeff);
  expect(coeffs).toEqual([...coeffs].sort((a, b) => a - b));
});
