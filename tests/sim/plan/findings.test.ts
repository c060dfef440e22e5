import { describe, expect, it } from "vitest";
import { saidIn } from "../../../shared/quantity/said.ts";
import { driveJob } from "../../../sim/plan/driveJob.ts";
import { bareJob, type Changes, traceOf } from "../../support/bareCar.ts";

const there = traceOf([
  [0, 0],
  [20, 36],
  [40, 36],
  [60, 0],
]);
/** 100 cells: 400 V resting, 50 to 500 V allowed. */
const told = (changes: Changes, trace = there) => driveJob(bareJob(changes), trace).candidates[0].findings;
const kinds = (changes: Changes, trace = there) => told(changes, trace).map(({ kind }) => kind);
const window = (min_V: number, max_V: number): Changes => ({ controller: { min_V, max_V, regen: { isOn: false } } });

it("says nothing but the high voltage of a car that lacks nothing", () => {
  const law = { kind: "fourTerm" as const, copper_coeff: 0.1, iron_coeff: 0, windage_coeff: 0, constant_W: 0 };
  expect(kinds({ motor: { loss: law } })).toEqual(["highVoltage"]);
});

describe("a pack outside its controller's window", () => {
  it("above it, full", () => expect(kinds(window(0, 450))).toContain("packAboveController"));
  it("not at exactly its highest", () => expect(kinds(window(0, 500))).not.toContain("packAboveController"));
  it("below it, even full", () => expect(kinds(window(501, 900))).toContain("packBelowController"));
  it("cut off by it before the cells are empty", () =>
    expect(kinds(window(300, 900))).toContain("controllerCutsFirst"));
});

it("a pack that the charger does not fill", () => {
  expect(kinds({ charger: { max_V: 480 } })).toContain("packAboveCharger");
  expect(kinds({ charger: { max_V: 500 } })).not.toContain("packAboveCharger");
});

it("a road faster than the motor turns, with the speed where it ends", () => {
  const found = told({ motor: { maxSpeed_rpm: 1200 } }).find(({ kind }) => kind === "motorPastTopSpeed");
  // 1200 rpm over 20 turns of radians a metre: 22.6 km/h.
  expect(saidIn(found?.sentence ?? [], "metric")).toMatch(/22\.6 km\/h.* 36 km\/h/);
});

it("a car that does not follow, with how long and what held it", () => {
  const found = told({ motor: { envelope: { kind: "peak", torque_Nm: 20, power_kW: 2000 } } });
  const sentence = found.find(({ kind }) => kind === "traceNotFollowed")?.sentence;
  expect(saidIn(sentence ?? [], "metric")).toMatch(/not followed for \d+ s .* the motor for/);
});

it("limits that were met for a moment without falling behind", () => {
  const brief = { motor: { envelope: { kind: "peak" as const, torque_Nm: 34, power_kW: 2000 } } };
  const found = kinds(
    brief,
    traceOf([
      [0, 0],
      [1, 1.8],
      [2, 3.4],
      [10, 3.4],
    ]),
  );
  expect(found).toContain("touchedLimit");
  expect(found).not.toContain("traceNotFollowed");
});

it("a pack that is empty on the way", () => {
  const dragging = {
    vehicle: { roadLoad: { kind: "coastDown" as const, f0_N: 900, f1_Npkmh: 0, f2_Npkmh2: 0, mass_kg: 1400 } },
  };
  expect(kinds({ ...dragging, module: { capacity_Ah: 0.2 } })).toContain("reachedFloor");
});

it("a car above its plate, and not one exactly on it", () => {
  const plate = (gross_kg: number): Changes => ({
    vehicle: { arriving_kg: 1399, gross_kg },
  });
  expect(kinds(plate(1399))).toContain("aboveGross");
  expect(kinds(plate(1400))).not.toContain("aboveGross");
});

it("accessories that were shed", () => {
  const starved: Changes = {
    module: { discharge: { continuous_A: 1, peak_A: 1, peak_s: 0 } },
    accessories: { standing_W: 1000 },
  };
  expect(kinds(starved)).toContain("shedAccessories");
});

it("one efficiency for everything", () => {
  expect(kinds({ motor: { loss: { kind: "flat", efficiency_frac: 0.85 } } })).toContain("flatEfficiency");
});

it("warnings before notes", () => {
  const weights = told(window(0, 450)).map(({ weight }) => weight);
  expect(weights).toEqual([...weights].sort().reverse());
  expect(weights.length).toBeGreaterThan(1);
});
