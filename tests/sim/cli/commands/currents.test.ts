import { join } from "node:path";
import { expect, it } from "vitest";
import { runCommand } from "../../../support/runCommand.ts";

const demo = (name: string) => join(import.meta.dirname, `../../../../shared/demos/${name}.bellhousing.json`);

it("prints the currents by duration, where to begin, the shelf, and what can hurt", async () => {
  const { code, out } = await runCommand("currents", demo("bakery-van"));
  expect(code).toBe(0);
  expect(out).toMatch(/^10 min +\d/m);
  expect(out).toMatch(/^- Fuse: \d+ A, for direct current of 144 V or more/m);
  expect(out).toMatch(/settles\s+at 93 %, below 95 %, and never gets there/);
  expect(out).toMatch(/^ *10 +92\.\d +never/m);
  expect(out).toMatch(/^! 144 V of direct current can kill/m);
  for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(84);
});

it("gives programs every number under its unit, and the pack that is named", async () => {
  const json = async (...words: string[]) =>
    JSON.parse((await runCommand("currents", demo("piano-tuner"), "--json", ...words)).out);
  const plan = await json("--pack", "17 kWh");
  expect(plan.pack).toBe("17 kWh");
  expect(plan.road.durations.map((each: { duration_s: number }) => each.duration_s)).toEqual([0, 2, 10, 60, 600]);
  expect(plan.road.durations[0].motor_A).toBeGreaterThan(300);
  expect(plan.fuse.rating_A).toBeGreaterThanOrEqual(plan.greatest[4].battery_A / 0.75);
  expect(plan.preCharge.chosen.time_s).toBeGreaterThan(0.5);
  // What is recommended on this road, as the page has it.
  expect((await json()).pack).toBe("13 kWh");
});

it.each([
  [["--pack", "99 kWh"], /found no pack "99 kWh"/],
  [["--trace", "nowhere"], /nowhere/],
])("says what is wrong with %s", async (words, message) => {
  const { code, err } = await runCommand("currents", demo("piano-tuner"), ...words);
  expect(code).toBe(2);
  expect(err).toMatch(message);
});
