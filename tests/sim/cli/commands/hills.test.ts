import { join } from "node:path";
import { expect, it } from "vitest";
import { runCommand } from "../../../support/runCommand.ts";

const demo = (name: string) => join(import.meta.dirname, `../../../../shared/demos/${name}.bellhousing.json`);

it("prints a row a gear, a row an axle, and what it means", async () => {
  const { code, out } = await runCommand("hills", demo("piano-tuner"), "--hill", "1 in 6", "--length", "400 m");
  expect(code).toBe(0);
  expect(out).toMatch(/400 m at 16\.7 %/);
  expect(out).toMatch(/^(first|second|third|fourth) /m);
  expect(out).toMatch(/^rear +0\.\d\d/m);
  expect(out).toMatch(/It does not start in third and fourth/);
});

it("takes the steepest hill of the road where none is named, and more aboard", async () => {
  const json = async (...words: string[]) =>
    JSON.parse((await runCommand("hills", demo("vineyard-pickup"), "--json", ...words)).out);
  const usual = await json();
  const laden = await json("--load", "600 kg");
  expect(usual.hill.grade_ratio).toBeGreaterThan(0.1);
  expect(laden.mass_kg).toBeGreaterThan(usual.mass_kg);
  // All of it but the drag of shafts and gearbox grows with the mass.
  const more_ratio = laden.gears[0].needed_Nm / usual.gears[0].needed_Nm;
  expect(more_ratio).toBeLessThan(laden.mass_kg / usual.mass_kg);
  expect(more_ratio).toBeGreaterThan(0.98 * (laden.mass_kg / usual.mass_kg));
});

it.each([
  ["1 in 0", /^--hill: found 1 in 0/],
  ["140 %", /--hill: 140 % is not possible/],
])("refuses a hill of %s with a sentence", async (hill, message) => {
  const { code, err } = await runCommand("hills", demo("piano-tuner"), "--hill", hill);
  expect(code).toBe(2);
  expect(err).toMatch(message);
});

it("says what to name where the road is level", async () => {
  const { code, err } = await runCommand("hills", demo("bakery-van"), "--trace", "udds");
  expect(code).toBe(2);
  expect(err).toMatch(/found no hill: the road is level; name one/);
});
