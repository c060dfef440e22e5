import { expect, it } from "vitest";
import { standardCycles } from "../../../../sim/trace/standardCycles.ts";
import { runCommand } from "../../../support/runCommand.ts";

it("lists every cycle as JSON under the agreed keys", async () => {
  const { code, out, err } = await runCommand("cycles", "--json");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  const list = JSON.parse(out);
  expect(list.map((cycle: { id: string }) => cycle.id)).toEqual(standardCycles.map(({ id }) => id));
  for (const cycle of list) {
    expect(Object.keys(cycle)).toEqual([
      "id",
      "title",
      "source",
      "samples",
      "duration_s",
      "distance_km",
      "max_kmh",
      "mean_kmh",
      "phases",
    ]);
  }
  expect(list.find((cycle: { id: string }) => cycle.id === "wltc-class-3b")).toMatchObject({
    samples: 1801,
    duration_s: 1800,
    distance_km: 23.2662777778, // 83 758.6 / 3600
    max_kmh: 131.3,
    mean_kmh: 46.5325555556,
    phases: [
      { id: "low", from_s: 0, to_s: 589, duration_s: 589 },
      { id: "medium", from_s: 589, to_s: 1022, duration_s: 433 },
      { id: "high", from_s: 1022, to_s: 1477, duration_s: 455 },
      { id: "extra-high", from_s: 1477, to_s: 1800, duration_s: 323 },
    ],
  });
});

it("gives a person a line for every cycle and every phase, with units in the heading", async () => {
  const { code, out } = await runCommand("cycles");
  expect(code).toBe(0);
  const [heading, ...lines] = out.split("\n");
  expect(heading).toContain("distance (km)");
  expect(lines).toHaveLength(standardCycles.reduce((sum, { phases }) => sum + 1 + phases.length, 0));
  expect(lines.find((line) => line.startsWith("wltc-class-3b:low "))).toMatch(/ 589 +3\.09 +56\.5 +18\.9 +phase: low$/);
});

it("wants no argument", async () => {
  const { code, err } = await runCommand("cycles", "udds");
  expect(code).toBe(2);
  expect(err).toContain("udds: found an argument, cycles takes none");
});
