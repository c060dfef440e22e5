import { expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { changing, changingWords } from "../../../../sim/plan/gears/changing.ts";
import { gearTable } from "../../../../sim/plan/gears/gearTable.ts";
import { bareJob, driven, traceOf } from "../../../support/bareCar.ts";

const road = traceOf([
  [0, 0],
  [20, 60],
  [200, 60],
  [220, 0],
]);
const gears = [
  { name: "low", gear_ratio: 3, efficiency_frac: 0.95 },
  { name: "high", gear_ratio: 1, efficiency_frac: 0.98 },
];
const jobOf = (shifting: object) =>
  bareJob({
    driveline: { gears, shifting: shifting as { kind: "fixed"; gear: string } },
    motor: { envelope: { kind: "peak", torque_Nm: 150, power_kW: 60 } },
    vehicle: { roadLoad: { kind: "physical", drag_coeff: 0.5, frontalArea_m2: 2 } },
  });
const both = jobOf({ kind: "bySpeed", gears: ["low", "high"], up_kmh: [30] });

it("is what a run with the gears changed takes, and nothing where the car is left in one", () => {
  const changed = changing(both, 0, road);
  const { totals } = driven(both, road);
  expect(changed?.battery_Whpkm).toBeCloseTo(totals.terminal_J / 3.6 / totals.distance_m, 6);
  expect(changed).toMatchObject({ gears: ["low", "high"], missed_frac: expect.closeTo(0, 9) });
  expect(changing(jobOf({ kind: "fixed", gear: "high" }), 0, road)).toBeUndefined();
});

it("is held against the one gear recommended, with less, more or the same energy", () => {
  const [, high] = gearTable(both, 0, road, { top_kmh: 60 });
  const words = (battery_Whpkm: number, to50kmh_s?: number) => {
    const changed = { gears: ["low", "high"], battery_Whpkm, missed_frac: 0, ...(to50kmh_s && { to50kmh_s }) };
    const said = changingWords(changed, { ...high, battery_Whpkm: 100, to50kmh_s: 9 });
    return said && messageIn(said, "metric");
  };
  expect(words(90, 7)).toBe(
    "Against high alone, changing between low and high takes 10 % less energy on this road and 7.0 s instead of 9.0 s to 50 km/h.",
  );
  expect(words(125)).toMatch(/takes 25 % more energy on this road\.$/);
  expect(words(100.5)).toMatch(/takes the same energy on this road\.$/);
  expect(changingWords({ gears: ["low", "high"], battery_Whpkm: 90, missed_frac: 0 }, undefined)).toBeUndefined();
});
