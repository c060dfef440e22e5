import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import type { UnitHabit } from "../../../../shared/quantity/writeQuantity.ts";
import { toldGroups } from "../../../../web/notebook/reasons/toldGroups.ts";
import { demoJob } from "../../../support/demoJob.ts";

const job = demoJob(); // 5s2p first, modules of 6 × 1 cells
const told = (path: string, changes: Partial<Job> = {}, packIndex = 0, units: UnitHabit = "metric") =>
  toldGroups[path]?.format({ ...job, ...changes }, units, packIndex);

it("tells a pack's voltage by its cells in series: those of a module times the modules", () => {
  const openCircuit = { soc_frac: [0, 0.5, 1], cell_V: [3, 3.6, 4.1] };
  // 6 cells × 5 modules = 30 cells: 90 V to 123 V.
  expect(told("module.openCircuit", { module: { ...job.module, openCircuit } })).toBe(
    "from 90 V empty to 123 V full, 30 cells of 3 V to 4.1 V in series",
  );
  expect(told("pack.layout", {}, 1)).toBe("5s3p, of 6 × 1 cells each");
});

it("tells each kind of losses and of envelope in its own figures", () => {
  const loss = (each: Job["motor"]["loss"]) => told("motor.loss", { motor: { ...job.motor, loss: each } });
  expect(loss({ kind: "flat", efficiency_frac: 0.87 })).toBe("one efficiency, 0.87, everywhere");
  expect(loss({ kind: "fourTerm", copper_coeff: 0.5, iron_coeff: 0.97, windage_coeff: 2e-6, constant_W: 201 })).toBe(
    "copper 0.5, iron 0.97, windage 0.000002, and 201 W",
  );
  const envelope = (each: Job["motor"]["envelope"], units: UnitHabit = "metric") =>
    told("motor.envelope", { motor: { ...job.motor, envelope: each } }, 0, units);
  expect(envelope({ kind: "peak", torque_Nm: 120, power_kW: 38 })).toBe("120 Nm and 38 kW");
  // 1 lb ft = 1.355818 Nm: 88.5 lb ft.
  expect(envelope({ kind: "peak", torque_Nm: 120, power_kW: 38 }, "american")).toMatch(/^88\.5 lb ft and /);
});

it("leaves out what is not switched on, and says where nothing is", () => {
  const item = (name: string, power_W: number, duty_frac: number) => ({
    name,
    power_W,
    duty_frac,
    supply: "12V" as const,
  });
  const accessories = (...items: readonly ReturnType<typeof item>[]) =>
    told("accessories.items", { accessories: { ...job.accessories, items: [...items] } });
  expect(accessories(item("lights", 120, 0.3), item("heater", 0, 1), item("wipers", 60, 0))).toBe(
    "lights 120 W for 30 % of the drive",
  );
  expect(accessories(item("wipers", 60, 0))).toBe("nothing");
});

it("tells resistances from the least to the greatest, in the reader's temperature", () => {
  const resistance = { soc_frac: [0, 0.5, 1], module_mohm: [18, 9.6, 10.2] };
  expect(told("module.resistance", { module: { ...job.module, resistance } })).toMatch(/^9\.6 .* to 18 .* at 25 °C$/);
  // 25 °C × 9/5 + 32 = 77 °F.
  expect(told("module.resistance", { module: { ...job.module, resistance } }, 0, "american")).toMatch(/ at 77 °F$/);
  const resistanceByTemperature = { temperature_degC: [-20, 25, 60], resistance_ratio: [6, 1, 0.35] };
  expect(told("module.resistanceByTemperature", { module: { ...job.module, resistanceByTemperature } })).toBe(
    "6 times at -20 °C to 0.35 times at 60 °C",
  );
});
