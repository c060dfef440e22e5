import { expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { answerFor } from "../../../../sim/plan/answer/answer.ts";
import { measurementOf } from "../../../../sim/plan/answer/measurements.ts";
import { settlementWords } from "../../../../sim/plan/answer/sentence.ts";
import { inventedCandidate, inventedUnknown, inventedUse } from "../../../support/inventedCandidate.ts";

// 4.4 kWh: 44 km today, 11 km at ten years in winter, so 1 km left of 10. A kilometre of today's range is a quarter there.
const use = inventedUse();
const candidate = inventedCandidate(4.4);
const rolling = inventedUnknown(44, 8, 8);
const weight = inventedUnknown(44, 2, 2, { path: "vehicle.removed_kg" });
const answered = (...unknowns: (typeof rolling)[]) => answerFor(use, [candidate], [unknowns]);

it("names the measurement of what may cost most, and from which value on the verdict is decided", () => {
  const [settlement] = answered(weight, rolling).settlements;
  expect(settlement).toMatchObject({ measurement: { id: "coastDown" }, path: "vehicle.tyres.rolling_coeff", value: 1 });
  // The weight alone leaves 0.5 to 1.5 km. Rolling resistance moves 2 km over its tenth: half a kilometre is spare at 1.025,
  // nothing at 1.05.
  expect(settlement?.rest).toEqual({ value: 1, low: 0.5, high: 1.5 });
  expect(settlement?.enough?.side).toBe("below");
  expect(settlement?.enough?.value).toBeCloseTo(1.025, 12);
  expect(settlement?.notEnough?.side).toBe("above");
  expect(settlement?.notEnough?.value).toBeCloseTo(1.05, 12);
  expect(settlement?.next).toBeUndefined();
});

it("takes together what one measurement makes known", () => {
  // Three effects of the weight, 6 km each, are 10.4 km together and cost more than the rolling resistance.
  const parts = ["removed_kg", "added_kg", "load_kg"].map((key) =>
    inventedUnknown(44, 6, 6, { path: `vehicle.${key}` }),
  );
  expect(answered(rolling, ...parts).settlements[0]?.measurement.id).toBe("weighing");
});

it("names the next one where the first alone leaves the band below home", () => {
  const [settlement] = answered(rolling, { ...weight, atHigh_km: 38 }).settlements;
  expect(settlement?.rest.low).toBe(-0.5);
  expect(settlement?.next?.id).toBe("weighing");
});

it("names the value that may cost most of those that one measurement makes known", () => {
  const keys = ["removed", "added", "load"];
  const parts = [2, 5, 3].map((km, i) => inventedUnknown(44, km, km, { path: `vehicle.${keys[i]}_kg` }));
  const [settlement] = answered(...parts).settlements;
  expect(settlement).toMatchObject({ path: "vehicle.added_kg", value: 1 });
  // All three are the weight: 1.25 km of 5, 0.75 of 3 and half of 2.
  expect(settlement?.worth.low).toBeCloseTo(1 - Math.hypot(1.25, 0.75, 0.5), 12);
  expect(settlement?.rest).toEqual({ value: 1, low: 1, high: 1 });
});

it("decides nothing by a value from which on the car may not drive the road, nor beyond a band", () => {
  const grip = inventedUnknown(44, 0, 8, { path: "environment.grip_coeff", failsAtLow: true });
  const [failing] = answered(grip).settlements;
  expect(failing).not.toHaveProperty("enough");
  expect(failing).not.toHaveProperty("notEnough");
  // Rolling resistance may cost 1.5 km and bring 0.25; the weight costs 1.475, which no rolling resistance makes up for.
  const small = inventedUnknown(44, 1, 6);
  const heavy = inventedUnknown(44, 0, 5.9, { path: "vehicle.kerb_kg" });
  const [open] = answered(small, heavy).settlements;
  expect(open?.path).toBe("vehicle.tyres.rolling_coeff");
  expect(open).not.toHaveProperty("enough");
  expect(open?.notEnough?.value).toBeCloseTo(1 + 0.1 * (1 / 1.5), 12);
});

it("decides to the other side of a value that helps the more of it there is", () => {
  const [settlement] = answered({ ...rolling, atLow_km: 36, atHigh_km: 52 }).settlements;
  expect(settlement?.enough?.side).toBe("above");
  expect(settlement?.notEnough?.side).toBe("below");
  expect(settlement?.notEnough?.value).toBeCloseTo(0.95, 12);
});

it("has nothing to measure that costs nothing", () => {
  const harmless = inventedUnknown(44, 8, 0, { path: "accessories.standing_W" });
  const first = answered(rolling, harmless).measureFirst;
  expect(first.map(({ measurement, cost_km }) => [measurement.id, cost_km])).toEqual([["coastDown", 2]]);
});

it("counts all that one measurement makes known as what may fail, where any of it may", () => {
  const grip = inventedUnknown(44, 0, 4, { path: "environment.grip_coeff", failsAtHigh: true });
  const place = inventedUnknown(44, 0, 4, { path: "vehicle.balance.gravityHeight_mm" });
  const costs = answered(rolling, place, grip).measureFirst.map(({ measurement, cost_km }) => [
    measurement.id,
    cost_km,
  ]);
  expect(costs).toEqual([
    ["grip", Number.POSITIVE_INFINITY],
    ["coastDown", 2],
  ]);
});

it("puts before all others what may keep the car from driving the road", () => {
  const grip = inventedUnknown(44, 0, 40, { path: "environment.grip_coeff", failsAtHigh: true });
  const answer = answered(rolling, grip);
  expect(answer.settlements[0]?.measurement.id).toBe("grip");
  expect(settlementWords(answer, 0).map((words) => messageIn(words, "metric"))[1]).toBe(
    "It shows whether the car drives this road.",
  );
});

it("says that the car may not drive for want of one measurement, though others may keep it from driving too", () => {
  const grip = inventedUnknown(44, 0, 40, { path: "environment.grip_coeff", failsAtHigh: true });
  const weak = inventedUnknown(44, 0, 4, { path: "vehicle.kerb_kg", failsAtHigh: true });
  const said = settlementWords(answered(grip, weak), 0).map((words) => messageIn(words, "metric"));
  expect(said[0]).toBe("Measure first: a climb of the steepest piece, wet.");
  expect(said[1]).toBe("It shows whether the car drives this road.");
});

it("says what the first measurement may cost, and what then, only where it may not settle it", () => {
  const said = (...unknowns: (typeof rolling)[]) =>
    settlementWords(answered(...unknowns), 0).map((words) => messageIn(words, "metric"));
  expect(said(weight, rolling)).toEqual(["Measure first: a coast-down.", "Rolling resistance and drag may cost 2 km."]);
  const heavier = { ...weight, atHigh_km: 38 };
  expect(said(rolling, heavier)[2]).toMatch(/^Then, as that may not settle it: weighing the car/);
});

it("has nothing to settle where the verdict is decided", () => {
  expect(answered(weight).settlements).toEqual([undefined]);
});

it("knows something that a workshop can measure for every path", () => {
  expect(measurementOf("vehicle.roadLoad.drag_coeff").id).toBe("coastDown");
  expect(measurementOf("module.capacity_Ah").id).toBe("capacity");
  expect(measurementOf("accessories.items.0.power_W").id).toBe("clamp");
  expect(measurementOf("motor.rotorInertia_kgm2").id).toBe("drive");
});

it("keeps in what remains what the log behind the road leaves open: no measurement of the car makes it known", () => {
  // A road whose energy may be 10 % more costs a kilometre of the 11: with the weight's half they are 1.12 km.
  const open = { ...candidate, roadEnergy_ratio: { low: 1, high: 1.1 } };
  const [settlement] = answerFor(use, [open], [[weight, rolling]]).settlements;
  expect(settlement?.rest.low).toBeCloseTo(1 - Math.hypot(0.5, 1), 12);
  expect(settlement?.rest.high).toBeCloseTo(1.5, 12);
});
