import { describe, expect, it } from "vitest";
import { controllerRegen } from "../../../../sim/plan/settings/controllerRegen.ts";
import { type BasisChanges, basisOf, rowOf } from "./basisByHand.ts";

const row = (key: string, changes: BasisChanges = {}) => rowOf(controllerRegen(basisOf(changes)), key);
const { regen } = basisOf().job.controller;
const { torque_Nm: _, ...unlimited } = regen;
const keys = (changes: BasisChanges) => controllerRegen(basisOf(changes)).map(({ key }) => key);

describe("braking by the motor", () => {
  it("is half of the job's limit with the foot off, and all of it with the pedal", () => {
    expect(row("regenLiftOff").slice(0, 2)).toEqual(["20 Nm", "half of the job's limit: common practice, no source"]);
    expect(row("regenBrake").slice(0, 2)).toEqual([
      "40 Nm in all; the prediction used 40 Nm at the motor",
      "in the job",
    ]);
  });
  it("begins at a quarter of the driving cap where the job has no limit of torque: the lower of its cap and the motor's peak", () => {
    const quarter = (torqueCap_Nm?: number) =>
      row("regenBrake", {
        controller: { regen: unlimited, ...(torqueCap_Nm !== undefined && { torqueCap_Nm }) },
      });
    expect(quarter(80).slice(0, 2)).toEqual([
      "20 Nm in all; the prediction used no limit but motor and pack",
      "a quarter of the driving cap: common practice, no source",
    ]);
    expect(quarter()[0]).toMatch(/^30 Nm in all/);
    expect(quarter(200)[0]).toMatch(/^30 Nm in all/);
  });
  it("fades between the two speeds of the job", () => {
    expect(row("regenFade", { controller: { regen: { ...regen, fadeNone_kmh: 4, fadeFull_kmh: 12 } } })[0]).toBe(
      "none at 4 km/h and below, in full from 12 km/h",
    );
  });
  it("is off in one line where the job has it off, or the motor cannot", () => {
    const off: BasisChanges = { controller: { regen: { ...regen, isOn: false } } };
    expect(keys(off)).toEqual(["regenLiftOff", "preCharge"]);
    expect(row("regenLiftOff", off).slice(0, 2)).toEqual(["off", "in the job"]);
    expect(row("regenLiftOff", { motor: { canRegenerate: false } }).slice(0, 2)).toEqual(["off", "this motor cannot"]);
    expect(keys({})).toEqual(["regenLiftOff", "regenBrake", "regenFade", "preCharge"]);
  });
});

describe("pre-charge", () => {
  it("is the resistor, the share at which it closes, and when to give up: three times as long", () => {
    // 150 ohm and 2000 uF: 0.3 s times ln 20 is 0.899 s; three times that 2.7 s; 95 % of 116.8 V is 111 V.
    expect(row("preCharge")).toEqual([
      "150 Ω; close at 95 % of the pack, 111 V when full, or lock out after 2.7 s",
      "from the shelf; 95 %, three times as long: common practice, no source",
      "",
    ]);
    expect(row("preCharge", { fitted_ohm: 220 }).slice(0, 2)).toEqual([
      "220 Ω; close at 95 % of the pack, 111 V when full, or lock out after 4.0 s",
      "as fitted; 95 %, three times as long: common practice, no source",
    ]);
  });
  it("says where it never gets there, fitted or from the shelf", () => {
    const never = [
      "close at 95 % of the pack, 111 V when full: not reached as it is wired",
      "95 %: common practice, no source; see the currents",
      "With 300 W drawn behind it the contactor would close on half-empty capacitors and weld: wire that load before the contactor, or let it wake later.",
    ];
    expect(row("preCharge", { load_W: 300 })).toEqual(never);
    expect(row("preCharge", { load_W: 300, fitted_ohm: 100 })).toEqual(never);
  });
});
