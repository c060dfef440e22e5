import { join } from "node:path";
import { expect, it } from "vitest";
import { runCommand } from "../../../support/runCommand.ts";

const job = join(import.meta.dirname, "../../../../shared/demos/piano-tuner.bellhousing.json");

it("prints a row a setting, which to begin with, and the cautions", async () => {
  const { code, out } = await runCommand("regen", job, "--limits", "0,20,40", "--pack", "13 kWh");
  expect(code).toBe(0);
  expect(out).toMatch(/13 kWh aboard/);
  expect(out).toMatch(/^ +0 +0 /m);
  expect(out).toMatch(/The friction brakes must stop the car alone/);
});

it("has the keys that a program reads", async () => {
  const { out } = await runCommand("regen", job, "--json", "--limits", "0,30");
  const { settings, recommended_Nm, notes, pack } = JSON.parse(out);
  expect(pack).toBe("29 kWh");
  expect(settings.map(({ torque_Nm }: { torque_Nm: number }) => torque_Nm)).toEqual([0, 30]);
  expect(settings[1]).toMatchObject({
    regen_Wh: expect.any(Number),
    slowing_mps2: expect.any(Number),
    lamps: expect.any(String),
  });
  expect([0, 30]).toContain(recommended_Nm);
  expect(notes.length).toBeGreaterThan(1);
});

it.each([["0,-5"], ["20,,40"], ["hard"]])("refuses --limits %s with a sentence", async (limits) => {
  const { code, err } = await runCommand("regen", job, "--limits", limits);
  expect(code).toBe(2);
  expect(err).toMatch(/--limits: found .* wanted/);
});
