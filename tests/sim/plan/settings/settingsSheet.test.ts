import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { chargePlan } from "../../../../sim/plan/charging/chargePlan.ts";
import { currentsPlan } from "../../../../sim/plan/currents/currentsPlan.ts";
import { driveCandidate } from "../../../../sim/plan/drive/driveCandidate.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { settingsSheet } from "../../../../sim/plan/settings/settingsSheet.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { demoJob } from "../../../support/demoJob.ts";

const demo = demoJob();

const trace = roadTrace(demo.roads[0], cycleTexts);

function sheetOf(job: Job, index = 1) {
  const candidates = job.packs.map((pack) => driveCandidate(job, pack, trace, false));
  const sheet = settingsSheet(job, index, currentsPlan(job, index, trace), chargePlan(job, candidates));
  const rows = sheet.groups.flatMap(({ settings }) => settings);
  const row = (key: string) => {
    const found = rows.find((each) => each.key === key);
    if (!found) throw new Error(`no setting ${key}`);
    const { value, from, caution } = found;
    return [value, from, caution ?? []].map((each) => messageIn(each, "metric"));
  };
  return { sheet, rows, row };
}

const { sheet, rows, row } = sheetOf(demo);

describe("the settings of a job", () => {
  it("are all that the trade writes down at commissioning", () => {
    // The list of settings of a commissioning sheet: common practice, no source.
    const wanted = {
      Controller: [
        "lowestVolts",
        "torqueRollBack",
        "highestVolts",
        "regenRollBack",
        "batteryDrive",
        "batteryRegen",
        "controllerTemperature",
        "torqueCap",
        "motorCurrent",
        "torqueRamp",
        "reverse",
        "motorSpeed",
        "roadSpeed",
        "throttle",
        "creep",
        "motorTemperature",
        "interlocks",
        "regenLiftOff",
        "regenBrake",
        "regenFade",
        "preCharge",
      ],
      Charger: [
        "chargerCells",
        "bulkVolts",
        "chargeCurrent",
        "taperEnd",
        "mains1",
        "mains2",
        "chargeTimeout",
        "chargeCold",
        "driveOff",
      ],
      "Battery management": [
        "cells",
        "cellCuts",
        "cellWarnings",
        "balance",
        "cellTemperatures",
        "currentSensor",
        "capacity",
        "socReset",
      ],
      "DC-DC converter": ["converterVolts", "converterCut", "converterEnabled"],
      "Used by the prediction": ["usedTorque", "usedRegen", "usedSpeed", "usedWindow", "usedLoad"],
    };
    expect(
      Object.fromEntries(sheet.groups.map(({ where, settings }) => [where, settings.map(({ key }) => key)])),
    ).toEqual(wanted);
    for (const { value, from } of rows)
      expect([messageIn(value, "metric"), messageIn(from, "metric")]).not.toContain("");
  });

  it("follow from pack, controller and gearbox, by hand", () => {
    // 5 modules of 6 cells: 30 × 2.8 = 84 V, 30 × 4.2 = 126 V; 84 + 0.1 × 42 = 88.2 V; 0.97 × 126 = 122.2 V.
    expect(row("lowestVolts")[0]).toBe("84 V");
    expect(row("highestVolts")[0]).toBe("126 V");
    expect(row("torqueRollBack")[0]).toBe("88.2 V, none at 84 V");
    expect(row("regenRollBack")[0]).toBe("122 V, none at 126 V");
    // Three strings of 76 and 150 A; the controller's 420 A is less than 450 A.
    expect(row("batteryDrive")).toEqual(["420 A for 10 s, 228 A for hours", "in the job; the pack gives 450 A", ""]);
    // 480 A at 120 Nm are 440 A at 110 Nm.
    expect(row("motorCurrent")[0]).toBe("440 A, root mean square");
    // 8000 rpm · 2π/60 · 0.285 m / (1.4 · 4.1111) = 41.5 m/s with this car's tyre.
    const radius_m = demo.vehicle.tyres.loadedRadius_mm / 1000;
    const top_kmh = (3.6 * ((8000 * 2 * Math.PI) / 60) * radius_m) / (1.4 * 4.1111);
    expect(row("roadSpeed")[0]).toBe(`${Math.round(top_kmh)} km/h; below ${Math.round(0.9 * top_kmh)} km/h for hours`);
    // 38 Ah × 3, a twentieth of that.
    expect(row("capacity")[0]).toBe("114 Ah");
    expect(row("taperEnd")[0]).toBe("5.7 A");
    expect(row("regenLiftOff")[0]).toBe("17.5 Nm");
    expect(row("preCharge")[0]).toMatch(/^100 Ω; close at 95 % of the pack, 120 V when full, or lock out after 3\.0 s/);
  });

  it("never go beyond what cells, controller and gearbox stand", () => {
    const greedy = sheetOf({
      ...demo,
      controller: { ...demo.controller, current_A: 900, torqueCap_Nm: 118, rollBackAbove_V: 120 },
    });
    expect(greedy.row("batteryDrive")[0]).toBe("450 A for 10 s, 228 A for hours");
    expect(greedy.row("batteryDrive")[2]).toMatch(/own 900 A is more than the cells stand/);
    expect(greedy.row("torqueCap")[2]).toMatch(/More than the gearbox's input limit of 115 Nm: lower it/);
    expect(greedy.row("regenRollBack").slice(0, 2)).toEqual(["120 V, none at 126 V", "in the job"]);
  });

  it("say what is not known, and where nothing is set what is usual", () => {
    const {
      torqueCap_Nm: _cap,
      rollBackBelow_V: _b,
      rollBackAbove_V: _a,
      current_A: _c,
      ...controller
    } = demo.controller;
    const { fullCurrent_A: _f, heat: _h, ...motor } = demo.motor;
    const { gearboxInput_Nm: _g, ...limits } = demo.driveline.limits;
    const bare = sheetOf({
      ...demo,
      controller: { ...controller, ramp_s: 0, regen: { ...controller.regen, isOn: false } },
      motor,
      driveline: { ...demo.driveline, limits },
      supplies: [],
    });
    expect(bare.row("torqueCap")).toEqual([
      "120 Nm",
      "the motor's peak",
      "Nobody has said what the gearbox takes: the old engine's peak is where to begin.",
    ]);
    expect(bare.row("motorCurrent")[1]).toBe("not in the job: by the maker's sheet");
    expect(bare.row("torqueRamp")[1]).toMatch(/half a second to one, common practice, no source/);
    expect(bare.row("regenLiftOff")[0]).toBe("off");
    expect(bare.row("mains")[0]).toBe("10 A at a household socket");
    expect(bare.row("motorTemperature")[0]).toBe("by its sheet");
    for (const { value, from } of bare.rows)
      expect(messageIn([...value, " ", ...from], "metric")).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  it("warn of a pre-charge that never gets there, where it is set and where its cause is enabled", () => {
    const stuck = sheetOf({ ...demo, wiring: { capacitance_uF: 3300, prechargeLoad_W: 200 } });
    expect(stuck.row("preCharge")[0]).toMatch(/not reached as it is wired/);
    expect(stuck.row("preCharge")[2]).toMatch(/200 W drawn behind it .* weld: wire that load before the contactor/);
    expect(stuck.row("converterEnabled")[2]).toMatch(/keeps the capacitors from charging/);
    expect(row("converterEnabled")[2]).toBe("");
  });
});
