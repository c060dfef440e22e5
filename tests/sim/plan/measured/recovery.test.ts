import { describe, expect, it } from "vitest";
import { mixedDrive, shortDrive } from "../../../logs/builtCar.ts";
import { behind_s, coverageOf, jobWithDatasheet, recover } from "../../../logs/recoverBuilt.ts";

// Synthetic truth: cars built otherwise than their job, driven by the project's own stepper at 0.2 s, logged at 1 Hz with noise, and
// recovered. What is hidden is drawn anew for each; tests/bench/measureCoverage.ts does the same over 200.
const job = jobWithDatasheet();

describe("twenty cars built otherwise than their job", () => {
  const recoveries = Array.from({ length: 20 }, (_, k) => recover(job, shortDrive(), k + 1));
  const found = coverageOf(recoveries);

  it("are recovered within bands that hold the truth about nine times of ten", () => {
    const bands = found.reduce((sum, { count }) => sum + count, 0);
    const held = found.reduce((sum, { count, held_frac }) => sum + count * held_frac, 0) / bands;
    expect(bands).toBeGreaterThanOrEqual(60);
    // 0.9 of 60 to 80 bands: three standard deviations of the binomial law are 0.11; the four bands of one car hang together.
    expect(held).toBeGreaterThan(0.79);
  });

  it("have the clock of their amps found to half a second and their sign for certain", () => {
    for (const [k, { linedUp }] of recoveries.entries()) {
      expect(Math.abs(linedUp.offset_s - behind_s)).toBeLessThan(0.5);
      expect(linedUp.sign).toBe((k + 1) % 2 === 0 ? 1 : -1);
    }
  });

  it("have bands that are worth something: errors are of their size, not a fraction of it", () => {
    for (const { half, error } of found) expect(error).toBeGreaterThan(half / 8);
  });
});

it("leaves rolling and drag each within 8 % and accessories within 25 W on forty mixed minutes, what is not fitted apart", () => {
  const { fit } = recover(job, mixedDrive(), 77);
  const half = (id: string) => {
    const fitted = fit.fitted.find((each) => each.id === id);
    return fitted ? fitted.ownHalf / (id === "accessories" ? 1 : fitted.value) : Number.NaN;
  };
  expect(half("rolling")).toBeLessThan(0.08);
  expect(half("drag")).toBeLessThan(0.08);
  expect(half("accessories")).toBeLessThan(25);
  expect(fit.left).toContain("gain");
});
