import { readFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";
import { expect, it } from "vitest";
import { unitSuffixes } from "../../../../shared/units.ts";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";
import { runCommand } from "../../../support/runCommand.ts";

type Row = Record<string, string>;

async function channels(changes: Readonly<Record<string, unknown>>, ...words: readonly string[]) {
  const path = join(emptyFolder(), "channels.csv");
  const { code, out, err } = await runCommand(
    "drive",
    changedDemoFile({ origins: {}, ...changes }), // the verdict is not looked at, so nothing unknown is driven many times
    "--json",
    "--channels",
    path,
    ...words,
  );
  expect({ code, err }).toEqual({ code: 0, err: `written: ${path}` });
  const text = readFileSync(path, "utf8");
  const { data, meta, errors } = Papa.parse<Row>(text.replace(/^\uFEFF/, ""), { header: true, skipEmptyLines: true });
  expect(errors).toEqual([]);
  return { text, rows: data, fields: meta.fields ?? [], report: JSON.parse(out) };
}

it("has one row a sample a pack, the pack first, and a unit behind each quantity", async () => {
  const { text, rows, fields } = await channels({});
  expect(fields[0]).toBe("pack");
  for (const field of fields.slice(1)) {
    const unit = field.split("_")[1];
    if (!["gear", "limit"].includes(field)) expect(unitSuffixes, field).toContain(unit);
  }
  expect(rows).toHaveLength(5 * 1370);
  expect(new Set(rows.map((row) => row["pack"])).size).toBe(5);
  expect(text.endsWith("\n")).toBe(true);
  expect(text).not.toContain("NaN");
  expect(new Set(rows.map((row) => row["limit"]))).toEqual(new Set(["none", "controller", "pack"]));
});

it("speaks of the same drive as the totals", async () => {
  const { rows, report } = await channels({}, "--trace", "harbour");
  for (const candidate of report.candidates) {
    const own = rows.filter((row) => row["pack"] === candidate.name);
    const at = (row: Row | undefined, name: string) => Number(row?.[name]);
    const last = own.at(-1);
    expect(at(last, "soc_frac")).toBeCloseTo(candidate.soc.end_frac, 9);
    expect(at(last, "distance_m")).toBeCloseTo(1000 * candidate.distance_km, 4);
    // The peak is that at a step's end, the channel the mean of a step: below it, by half of what one step gains.
    const fastest_rpm = Math.max(...own.map((row) => at(row, "motor_rpm")));
    expect(fastest_rpm).toBeLessThan(candidate.peak.motor_rpm + 1e-5); // ten digits are written
    expect(fastest_rpm).toBeGreaterThan(0.98 * candidate.peak.motor_rpm);
    expect(Math.max(...own.map((row) => at(row, "battery_A")))).toBeCloseTo(candidate.peak.battery_A, 4);
    expect(Math.min(...own.map((row) => at(row, "battery_V")))).toBeCloseTo(candidate.peak.min_V, 4);
    // Positive tractive force times the way it was passed on, step by step [GTR15, Annex 7, para 5].
    const wheelPositive_J = own.slice(1).reduce((sum_J, row, i) => {
      const way_m = at(row, "distance_m") - at(own[i], "distance_m");
      return sum_J + Math.max(at(row, "wheelForce_N"), 0) * way_m;
    }, 0);
    const distance_km = candidate.distance_km;
    expect(wheelPositive_J / 3600 / distance_km).toBeCloseTo(candidate.wheelPositive_Whpkm, 4);
  }
});

it("names the gear as the job does, and none at the start", async () => {
  const { rows } = await channels({});
  expect(rows[0]).toMatchObject({ time_s: "0", gear: "", soc_frac: "0.95" });
  expect(new Set(rows.slice(1, 1370).map((row) => row["gear"]))).toEqual(new Set(["second", "third"]));
});

it("ends with the row in which the pack was empty", async () => {
  const { rows } = await channels({ "packs.0.floor_frac": 0.9 });
  const own = rows.filter((row) => row["pack"] === "8 kWh");
  expect(own.length).toBeLessThan(1370);
  expect(Number(own.at(-1)?.["soc_frac"])).toBeCloseTo(0.9, 9);
});

it("keeps a pack's name out of a spreadsheet's formulas, and marks letters beyond the plain ones", async () => {
  const plain = await channels({ "packs.0.name": '=1+2, "big"' });
  expect(plain.rows[0]?.["pack"]).toBe(`'=1+2, "big"`);
  expect(plain.text.startsWith("pack,")).toBe(true);
  const marked = await channels({ "packs.0.name": "groß" });
  expect(marked.text.startsWith("\uFEFFpack,")).toBe(true);
  expect(marked.rows[0]?.["pack"]).toBe("groß");
});
