import { expect, it } from "vitest";
import { gearChoices, gearName, inOneGear } from "../../../../sim/plan/gears/oneGear.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob } from "../../../support/bareCar.ts";

const gears = [
  { name: "low", gear_ratio: 2, efficiency_frac: 1 },
  { name: "high", gear_ratio: 1, efficiency_frac: 1 },
];
const shifting = { kind: "bySpeed" as const, gears: ["low", "high"], up_kmh: [30] };
const transferBox = {
  high_ratio: 1,
  highEfficiency_frac: 0.98,
  low_ratio: 2.5,
  lowEfficiency_frac: 0.95,
  range: "high" as const,
  isFrontEngaged: false,
  hubs: "free" as const,
  frontShaftDrag_Nm: 0,
  frontEfficiency_frac: 0.9,
};
const plain = bareJob({ driveline: { gears, shifting } });
const boxed = bareJob({ driveline: { gears, shifting, transferBox } });

it("is each gear of the box, in both ranges where there is a transfer box, the high one first", () => {
  expect(gearChoices(plain)).toEqual([{ gear: "low" }, { gear: "high" }]);
  expect(gearChoices(boxed).map(gearName)).toEqual(["low", "high", "low, low range", "high, low range"]);
});

it("leaves the car in that gear and range", () => {
  const ratioOf = (job: typeof plain) => prepare(job, job.packs[0]).gears.map((gear) => gear.motor_radpm);
  // 6 in the axle over wheels of 0.3 m.
  expect(ratioOf(inOneGear(plain, { gear: "low" }))).toEqual([expect.closeTo(40, 9)]);
  expect(ratioOf(inOneGear(boxed, { gear: "high", range: "low" }))).toEqual([expect.closeTo(50, 9)]);
  expect(ratioOf(inOneGear(boxed, { gear: "high", range: "high" }))).toEqual([expect.closeTo(20, 9)]);
  expect(inOneGear(plain, { gear: "low", range: "low" }).driveline.transferBox).toBeUndefined();
});
