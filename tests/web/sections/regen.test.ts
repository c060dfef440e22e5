import { expect, it } from "vitest";
import type { GearboxStudy } from "../../../sim/index.ts";
import regen from "../../../web/sections/regen.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";

const row = (torque_Nm: number, returned_frac: number): GearboxStudy["regen"][number] => ({
  torque_Nm,
  returned_frac,
  battery_Whpkm: 130,
  regen_Wh: 100,
  range_km: 61.4,
  charge_A: 90,
  chargeLimit_A: 120,
  slowing_mps2: 0.84,
  fullPack_mps2: 0,
  coldPack_mps2: 0.31,
  lamps: "may light",
});
const job = demoJob();

/** The working where braking is off or on up to so much, and this study of limits was made. */
function told(isOn: boolean, torque_Nm: number | undefined, rows: GearboxStudy["regen"], regenBegin_Nm?: number) {
  const controller = { ...job.controller, regen: { ...job.controller.regen, isOn, torque_Nm } };
  const study = { pack: "13 kWh", regen: rows, regenWords: [], ...(regenBegin_Nm !== undefined && { regenBegin_Nm }) };
  const gearbox = study as Pick<GearboxStudy, "pack" | "regen" | "regenWords" | "regenBegin_Nm"> as GearboxStudy;
  const result = regen.compute({ job: { ...job, controller }, gearbox, units: "metric" });
  const [table] = regen.plot(result, drawing());
  return { summary: regen.summary?.(result), table: "rows" in table ? table : undefined };
}

it("says in one line what is set, and what the setting to begin with returns", () => {
  const rows = [row(0, 0), row(20, 0.11), row(35, 0.163)];
  expect(told(true, 35, rows, 20).summary).toBe("limit 35 Nm; begin with 20 Nm, which returns 11 %");
  expect(told(true, undefined, rows, 35).summary).toBe("on, no torque limit; begin with 35 Nm, which returns 16 %");
  expect(told(false, 35, rows).summary).toBe("off");
});

it("names no setting to begin with that was not driven", () => {
  expect(told(true, 35, [row(0, 0)], 20).summary).toBe("limit 35 Nm");
});

it("marks off and the setting to begin with among the limits", () => {
  const { table } = told(true, 35, [row(0, 0), row(20, 0.11)], 20);
  expect(table?.rows.map(([name]) => name)).toEqual(["off", "20 Nm, to begin with"]);
  // 61.4 km in whole ones, two figures at most.
  expect(table?.rows[1].slice(1, 4)).toEqual(["11 %", "130 Wh/km", "61 km"]);
});

it("has what the driven axle needs of grip only where somebody knows where the weight sits", () => {
  const without = told(true, 35, [row(20, 0.11)]).table;
  expect(without?.columns.map(({ title }) => title)).not.toContain("Driven axle needs");
  const known = told(true, 35, [row(0, 0), { ...row(20, 0.11), neededGrip_coeff: 0.173 }]).table;
  const at = known?.columns.findIndex(({ title }) => title === "Driven axle needs") ?? -1;
  expect(known?.rows.map((cells) => cells[at])).toEqual(["-", "0.17 of grip"]);
  expect(known?.rows.map(({ length }) => length)).toEqual([known?.columns.length, known?.columns.length]);
});
