import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { runCommand } from "../../../support/runCommand.ts";

const demo = (name: string) => join(import.meta.dirname, `../../../../shared/demos/${name}.bellhousing.json`);
const job = demo("piano-tuner");

it("prints a row a cap, the shafts by gear, and which cap to set", async () => {
  const { code, out } = await runCommand("torque", job, "--hill", "1 in 6");
  expect(code).toBe(0);
  expect(out).toMatch(/hill 16\.7 %; ramp 0\.8 s; old engine's peak 115 Nm/);
  expect(out).toMatch(/^ {1}110 +8\.7 /m);
  // 115 Nm less 1.2 of drag, 3.75, 0.955; then 4.1111, 0.92 over two.
  expect(out).toMatch(/^first +408 \/ 771 +390 \/ 737 /m);
  expect(out.split("\n").filter((line) => line.length > 100)).toEqual([]);
});

it("marks what is over a limit, and says in which gear", async () => {
  const { out } = await runCommand("torque", demo("vineyard-pickup"));
  expect(out).toMatch(/^first, low range .*!/m);
  expect(out.replaceAll("\n", " ")).toMatch(
    /In first, low range that puts \d+ Nm on each half-shaft, which takes 1400 Nm/,
  );
});

it("has the keys that a program reads", async () => {
  const found = JSON.parse((await runCommand("torque", job, "--caps", "80,110", "--json")).out);
  expect(found).toMatchObject({ engine_Nm: 115, ramp_s: 0.8, hill_ratio: 0.125, recommended_Nm: 115 });
  expect(found.caps.map(({ torque_Nm }: { torque_Nm: number }) => torque_Nm)).toEqual([80, 110]);
  expect(found.caps[0].gears).toHaveLength(4);
  expect(found.caps[0].to50kmh_s).toBeGreaterThan(found.caps[1].to50kmh_s);
});

describe("bad input ends in 2 with a sentence", () => {
  it.each([
    ["a torque that is none", ["--caps", "80,,90"], /^--caps: found nothing, torques of 1 to 10000 Nm/],
    ["no torque at all", ["--caps", "0"], /^--caps: found 0, torques of 1 to 10000 Nm/],
    ["a hill that is none", ["--hill", "1 in 0"], /^--hill: found 1 in 0/],
  ])("%s", async (_, words, message) => {
    const { code, err } = await runCommand("torque", job, ...words);
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });
});
