import { expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { requirementFindings } from "../../../../sim/plan/findings/requirementFindings.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob } from "../../../support/bareCar.ts";

/** 18 N at the tyres a newton metre; 1400 kg, 13734 N: 1 in 10 asks 1366.6 N and rolling 136.7 N, 83.5 Nm at the shaft. */
const job = (torque_Nm: number) =>
  bareJob({
    vehicle: {
      kerb_kg: 1399,
      tyres: { loadedRadius_mm: 300, rolling_coeff: 0.01, followsTemperature: false },
      roadLoad: { kind: "physical", drag_coeff: 0.5, frontalArea_m2: 2, wheelDrag_Nm: 0 },
    },
    driveline: { gears: [{ name: "only", gear_ratio: 1, efficiency_frac: 0.9 }], noLoadDrag_Nm: 0 },
    motor: { envelope: { kind: "peak", torque_Nm, power_kW: 60 }, maxSpeed_rpm: 6000 },
  });

function found(torque_Nm: number, requirement: { startHill_ratio?: number; topSpeed_kmh?: number }) {
  const car = job(torque_Nm);
  const findings = requirementFindings({ requirement }, prepare(car, car.packs[0]));
  return findings.map(({ kind, sentence }) => [kind, messageIn(sentence, "metric")]);
}

it("says nothing of what nobody asks", () => {
  expect(found(120, {})).toEqual([]);
});

it("says whether the car starts on the hill, with what is needed and what there is", () => {
  const hill = { startHill_ratio: 0.1 };
  expect(found(80, hill)).toEqual([
    ["hillTooSteep", "The car does not start on 10 % in only: needs 83.5 Nm, has 80 Nm."],
  ]);
  expect(found(95, hill)[0][0]).toBe("hillOnlyJust");
  // A fifth more than 83.5 Nm is 100.2.
  expect(found(100, hill)[0][0]).toBe("hillOnlyJust");
  expect(found(100.5, hill)).toEqual([["hillStarts", "The car starts on 10 % in only: needs 83.5 Nm, has 101 Nm."]]);
});

it("speaks of the gear in which the start is easiest, whichever of them that is", () => {
  const gears = [
    { name: "first", gear_ratio: 2, efficiency_frac: 0.9 },
    { name: "second", gear_ratio: 1, efficiency_frac: 0.9 },
  ];
  for (const order of [gears, gears.toReversed()]) {
    const names = order.map(({ name }) => name);
    const shifting = { kind: "bySpeed" as const, gears: names, up_kmh: [20] };
    const car = { ...job(60), driveline: { ...job(60).driveline, gears: order, shifting } };
    const [{ kind, sentence }] = requirementFindings(
      { requirement: { startHill_ratio: 0.1 } },
      prepare(car, car.packs[0]),
    );
    // Twice the ratio: half of 83.5 Nm.
    expect([kind, messageIn(sentence, "metric")]).toEqual([
      "hillStarts",
      "The car starts on 10 % in first: needs 41.8 Nm, has 60 Nm.",
    ]);
  }
});

it("asks the top speed of the fastest gear, whichever of them that is", () => {
  const gears = [
    { name: "first", gear_ratio: 2, efficiency_frac: 0.9 },
    { name: "second", gear_ratio: 1, efficiency_frac: 0.9 },
  ];
  for (const order of [gears, gears.toReversed()]) {
    const shifting = { kind: "bySpeed" as const, gears: order.map(({ name }) => name), up_kmh: [20] };
    const car = { ...job(60), driveline: { ...job(60).driveline, gears: order, shifting } };
    const [{ sentence }] = requirementFindings({ requirement: { topSpeed_kmh: 120 } }, prepare(car, car.packs[0]));
    expect(messageIn(sentence, "metric")).toContain("in second the motor turns no faster at 113 km/h");
  }
});

it("says for how many whole minutes a top speed is held that is not held for good", () => {
  // 33.1 Nm at 566 rad/s lose a tenth of what is taken in, 2.08 kW: 100 K of 12 kJ/K in 9.6 minutes.
  const heat = { capacity_kJpK: 12, cooling_WpK: 0, derateFrom_degC: 119, derateTo_degC: 120 };
  const car = job(40);
  const hot = { ...car, motor: { ...car.motor, heat, loss: { kind: "flat" as const, efficiency_frac: 0.9 } } };
  const [{ kind, sentence }] = requirementFindings({ requirement: { topSpeed_kmh: 100 } }, prepare(hot, hot.packs[0]));
  expect(kind).toBe("tooSlow");
  expect(messageIn(sentence, "metric")).toBe("The car holds 100 km/h on the level for 9 minutes, not longer.");
});

it("says whether the top speed is reached, and what ends it", () => {
  // 6000 rpm are 628.3 rad/s, at 20 rad a metre 31.4 m/s or 113 km/h.
  expect(found(120, { topSpeed_kmh: 120 })).toEqual([
    ["tooSlow", "The car does not reach 120 km/h: in only the motor turns no faster at 113 km/h."],
  ]);
  // 100 km/h ask 137 N of rolling and 459 N of drag (1 m2, 1.189 kg/m3): 33.1 Nm at the shaft.
  expect(found(30, { topSpeed_kmh: 100 })[0]).toEqual(["tooSlow", "The car does not hold 100 km/h on the level."]);
  expect(found(120, { topSpeed_kmh: 100 })).toEqual([["topSpeedHeld", "The car holds 100 km/h on the level."]]);
});
