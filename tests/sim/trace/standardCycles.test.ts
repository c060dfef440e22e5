import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { InputError } from "../../../shared/problems.ts";
import { cycleFromCsv, cycleIds, cycleTrace, findCycle, standardCycles } from "../../../sim/trace/standardCycles.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";

it("lists every table in cycles/ and no other", () => {
  const tables = readdirSync("cycles").filter((name) => name.endsWith(".csv"));
  expect(standardCycles.map(({ id }) => `${id}.csv`).sort()).toEqual(tables.sort());
});

describe("phases", () => {
  const withPhases = standardCycles.filter(({ phases }) => phases.length > 0);

  it.each(withPhases)("of $id follow one another from its start to its end", ({ id, phases }) => {
    const ends_s = phases.map(({ to_s }) => to_s);
    expect(phases.map(({ from_s }) => from_s)).toEqual([0, ...ends_s.slice(0, -1)]);
    expect(ends_s.at(-1)).toBe(cycleTrace(id, cycleTexts).time_s.at(-1));
  });

  it.each(withPhases)("of $id each start and end at rest", ({ id, phases }) => {
    for (const phase of phases) {
      const { speed_mps } = cycleTrace(`${id}:${phase.id}`, cycleTexts);
      expect([speed_mps[0], speed_mps.at(-1)]).toEqual([0, 0]);
    }
  });
});

it("gives a trace the id that was asked for and a title for a person", () => {
  expect(cycleTrace("wltc-class-3b:extra-high", cycleTexts)).toMatchObject({
    id: "wltc-class-3b:extra-high",
    title: "WLTC class 3b, extra high",
  });
  expect(cycleFromCsv("udds", cycleTexts["udds"] ?? "")).toMatchObject({
    id: "udds",
    title: "US urban schedule (UDDS)",
  });
});

it("takes each of its ids", () => {
  expect(cycleIds).toContain("wltc-class-3b:low");
  for (const id of cycleIds) expect(cycleTrace(id, cycleTexts).id).toBe(id);
});

it.each([
  ["uds", "udds"],
  ["WLTC-class-3b", "wltc-class-3b"],
  ["wltc-class-3", "wltc-class-3b"],
  ["wltc-class-3b:lo", "wltc-class-3b:low"],
  ["wltc-class-3b:extrahigh", "wltc-class-3b:extra-high"],
  ["nedc:urban:urban", "nedc:urban"],
  ["ece15", "ece-15"],
])("proposes for %s a known id, %s", (typed, near) => {
  expect(() => findCycle(typed)).toThrow(InputError);
  expect(() => findCycle(typed)).toThrow(`did you mean ${near}`);
});

it("lists what there is where nothing comes near", () => {
  expect(() => findCycle("the way to the harbour")).toThrow("known are udds, hwfet");
  expect(() => findCycle("")).toThrow("known are udds, hwfet");
  expect(() => findCycle("nedc:7")).toThrow("known are nedc:urban, nedc:extra-urban");
  expect(() => findCycle("hwfet:low")).toThrow("hwfet has no phases");
});

it("blames the caller for a table that was not brought along", () => {
  expect(() => cycleTrace("udds", {})).toThrow("was not brought along");
});
