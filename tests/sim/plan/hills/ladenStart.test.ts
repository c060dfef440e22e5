import { expect, it } from "vitest";
import { Weights } from "../../../../shared/job/schema/weights.ts";
import { ladenStart } from "../../../../sim/plan/hills/ladenStart.ts";
import { bareJob } from "../../../support/bareCar.ts";

/** 1399 kg of car, 1 kg of pack, and 300 kg to be carried. */
const weights = Weights.parse({
  wheelbase_mm: 2400,
  weighed: { front_kg: 700, rear_kg: 699 },
  load: [{ name: "load", mass_kg: 300, place_mm: 2000 }],
  boxes: [{ name: "box", place_mm: 2400, share_frac: 1 }],
});
const job = { ...bareJob({ motor: { envelope: { kind: "peak", torque_Nm: 100, power_kW: 2000 } } }), weights };
const GRADE_ratio = 0.1;
const sine = GRADE_ratio / Math.sqrt(1 + GRADE_ratio ** 2);

it("needs what the fully laden car weighs on the slope, in each gear", () => {
  const found = ladenStart(job, 0, GRADE_ratio, 1400);
  expect(found?.mass_kg).toBeCloseTo(1700, 6);
  const [row, ...others] = found?.rows ?? [];
  expect(others).toEqual([]);
  // 20 N of force a newton metre; beginning to roll asks for a ten-thousandth of one beside that.
  const needed_Nm = (1700 * 9.81 * sine) / 20;
  expect(row.needed_Nm).toBeCloseTo(needed_Nm, 3);
  expect(row.spare_frac).toBeCloseTo(100 / needed_Nm - 1, 4);
});

it("is no other car where the list is hardly heavier than what is driven, or where there is no list", () => {
  expect(ladenStart(job, 0, GRADE_ratio, 1681)).toBeUndefined();
  expect(ladenStart(job, 0, GRADE_ratio, 1679)?.mass_kg).toBeCloseTo(1700, 6);
  expect(ladenStart(bareJob(), 0, GRADE_ratio, 1400)).toBeUndefined();
});
