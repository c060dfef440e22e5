import { join } from "node:path";
import { expect, it } from "vitest";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { runCommand } from "../../../support/runCommand.ts";

const demo = (name: string) => join(import.meta.dirname, `../../../../shared/demos/${name}.bellhousing.json`);

it("prints every setting with where it comes from, after what can hurt", async () => {
  const { code, out } = await runCommand("settings", demo("vineyard-pickup"));
  expect(code).toBe(0);
  expect(out.indexOf("can kill")).toBeLessThan(out.indexOf("Controller"));
  expect(out).toMatch(/Torque cap: 165 Nm\n +\(in the job; the gearbox takes 169 Nm\)/);
  for (const group of ["Charger", "Battery management", "DC-DC converter", "Used by the prediction"])
    expect(out).toMatch(new RegExp(`^${group}$`, "m"));
});

it("gives programs each value in words and as numbers with units, the currents inside", async () => {
  const { out } = await runCommand("settings", demo("piano-tuner"), "--json", "--pack", "17 kWh");
  const sheet = JSON.parse(out);
  expect(sheet).toMatchObject({ pack: "17 kWh", stop: null, currents: { pack: "17 kWh" } });
  const [controller] = sheet.groups;
  const cap = controller.settings.find(({ key }: { key: string }) => key === "torqueCap");
  expect(cap).toMatchObject({ value: "110 Nm", quantities: [{ value: 110, unit: "Nm" }], caution: null });
});

it("says first where the pack may not be used at all, and names the packs there are", async () => {
  const file = changedDemoFile({ "controller.max_V": 110, "controller.rollBackAbove_V": 105 });
  const { code, out } = await runCommand("settings", file, "--pack", "13 kWh");
  expect(code).toBe(0);
  const whole = out.replace(/\s+/g, " ");
  expect(whole).toMatch(/! Stop\. Full, this pack has 126 V\. The controller takes 110 V at most/);
  expect(whole).toMatch(/! This pack destroys the controller when full: do not connect it/);
  const { err, code: wrong } = await runCommand("settings", demo("bakery-van"), "--pack", "none");
  expect(wrong).toBe(2);
  expect(err).toMatch(/found no pack "none"; the packs are 14 kWh, 17 kWh, 28 kWh, 33 kWh/);
});
