import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { M_PER_KM, M_PER_MILE, MPS_PER_KMH, MPS_PER_MPH } from "../../shared/units.ts";
import { characteristics } from "../../sim/trace/characteristics.ts";
import { readTraceCsv } from "../../sim/trace/readTraceCsv.ts";
import { cycleTrace, standardCycles } from "../../sim/trace/standardCycles.ts";
import { comparedWith } from "../support/comparedWith.ts";
import { cycleTexts } from "../support/cycleTexts.ts";

interface Total {
  readonly cycle: string;
  readonly source: string;
  readonly within_frac?: number;
  readonly why?: string;
  readonly [quantity: string]: string | number | undefined;
}
interface OperationsEntry {
  readonly operations?: readonly (readonly [number, number])[];
  readonly distance_m: number;
  readonly mean_kmh: number;
  readonly stop_s: number;
  readonly acceleration_mps2: number;
  readonly deceleration_mps2: number;
  readonly relativePositive_mps2: number;
}
interface Published {
  readonly totals: readonly Total[];
  readonly speedSums: { readonly sums: readonly { cycle: string; first_s: number; last_s: number; sum_kmh: number }[] };
  readonly europeanOperations: Readonly<Record<"ece-15" | "eudc" | "nedc", OperationsEntry>>;
  readonly uddsSpots: { readonly spots: readonly (readonly [number, number])[] };
}

const published: Published = JSON.parse(readFileSync(join(import.meta.dirname, "data/cycleTotals.json"), "utf8"));

/** Half of the last printed digit: 0.005 for "7.45". A whole number of seconds or stops is exact. */
function halfDigit(printed: string): number {
  return 0.5 * 10 ** -(printed.split(".")[1]?.length ?? 0);
}

/** Each total of a cycle in the unit in which it is printed. */
function totalsOf(id: string): Readonly<Record<string, number>> {
  const found = characteristics(cycleTrace(id, cycleTexts));
  return {
    duration_s: found.duration_s,
    distance_mi: found.distance_m / M_PER_MILE,
    distance_km: found.distance_m / M_PER_KM,
    max_mph: found.max_mps / MPS_PER_MPH,
    max_kmh: found.max_mps / MPS_PER_KMH,
    mean_mph: found.mean_mps / MPS_PER_MPH,
    mean_kmh: found.mean_mps / MPS_PER_KMH,
    stops: found.stops,
  };
}

describe("a total of a cycle is the printed one, to half of its last digit", () => {
  const rows = published.totals.flatMap(({ cycle, source, within_frac, why, ...printed }) =>
    Object.entries(printed).map(([quantity, text]) => ({ cycle, quantity, printed: String(text), within_frac })),
  );

  it("is compared for every cycle on board but class 1 as a whole, which is held by its phases, 59 figures in all", () => {
    expect(rows).toHaveLength(59);
    const compared = new Set(rows.map((row) => row.cycle.split(":")[0]));
    expect([...compared].sort()).toEqual(standardCycles.map((cycle) => cycle.id).sort());
  });

  it.each(rows)("$cycle $quantity: $printed", ({ cycle, quantity, printed, within_frac }) => {
    const name = `cycle ${quantity.replace("_", " (")})`.replace("stops)", "stops");
    const tolerance = within_frac === undefined ? { within: halfDigit(printed) } : { withinShare_frac: within_frac };
    comparedWith(name, totalsOf(cycle)[quantity], Number(printed), tolerance);
  });

  it("is 48.4 mph for US06 over the 596 s before its closing rest", () => {
    const { distance_m } = characteristics(cycleTrace("us06", cycleTexts));
    comparedWith("cycle mean (mph)", distance_m / 596 / MPS_PER_MPH, 48.4, { within: 0.05 });
  });
});

describe("the speeds of a WLTC phase add up to the printed sum", () => {
  it("is compared for the eleven phases and the three wholes", () => {
    expect(published.speedSums.sums).toHaveLength(14);
  });

  // The sums are printed to one decimal and the speeds too: anything above rounding would be another table.
  it.each(published.speedSums.sums)(
    "$cycle, $first_s to $last_s s: $sum_kmh",
    ({ cycle, first_s, last_s, sum_kmh }) => {
      const { speed_mps } = cycleTrace(cycle, cycleTexts);
      const sum_mps = speed_mps.slice(first_s, last_s + 1).reduce((sum, speed) => sum + speed, 0);
      comparedWith("sum of WLTC speeds (km/h)", sum_mps / MPS_PER_KMH, sum_kmh, { within: 0.05 });
    },
  );

  it("makes each phase on board as long as its sum over 3.6", () => {
    for (const [phase, sum_kmh] of [
      ["wltc-class-1:low", 11988.4],
      ["wltc-class-1:medium", 17162.8],
      ["wltc-class-1:low-again", 11988.4],
      ["wltc-class-2:high", 24450.6],
      ["wltc-class-3b:extra-high", 29714.9],
    ] as const) {
      expect(characteristics(cycleTrace(phase, cycleTexts)).distance_m).toBeCloseTo(sum_kmh / 3.6, 6);
    }
  });
});

describe("the European cycles follow the regulation's operations", () => {
  const { "ece-15": urban, eudc: extraUrban, nedc: whole } = published.europeanOperations;
  const urbanOperations = urban.operations ?? [];
  const extraUrbanOperations = extraUrban.operations ?? [];
  const cycles = [
    { id: "ece-15", operations: urbanOperations, expected: urban },
    { id: "eudc", operations: extraUrbanOperations, expected: extraUrban },
    {
      id: "nedc",
      operations: [urbanOperations, urbanOperations, urbanOperations, urbanOperations, extraUrbanOperations].flat(),
      expected: whole,
    },
  ];

  it.each(cycles)(
    "$id: straight lines between its break points have the characteristics worked out from them",
    (row) => {
      const found = characteristics(readTraceCsv(row.id, breakPoints(row.operations)));
      const { expected } = row;
      // Half of the last digit of what was worked out.
      comparedWith("European cycle by operations, distance (m)", found.distance_m, expected.distance_m, {
        within: 0.0005,
      });
      comparedWith("European cycle by operations, mean (km/h)", found.mean_mps / MPS_PER_KMH, expected.mean_kmh, {
        within: 0.0005,
      });
      expect(found.stop_s).toBe(expected.stop_s);
      const accelerations = [
        [found.relativePositiveAcceleration_mps2, expected.relativePositive_mps2],
        [found.maxAcceleration_mps2, expected.acceleration_mps2],
        [found.maxDeceleration_mps2, expected.deceleration_mps2],
      ] as const;
      for (const [ours_mps2, expected_mps2] of accelerations)
        comparedWith("European cycle by operations, acceleration (m/s2)", ours_mps2, expected_mps2, {
          within: 0.000005,
        });
    },
  );

  it.each(cycles)("$id: its table keeps the relative positive acceleration to 1e-4 and the standing time", (row) => {
    const found = characteristics(cycleTrace(row.id, cycleTexts));
    comparedWith(
      "relative positive acceleration by the table (m/s2)",
      found.relativePositiveAcceleration_mps2,
      row.expected.relativePositive_mps2,
      { within: 1e-4 },
    );
    expect(found.stop_s).toBe(row.expected.stop_s);
  });
});

it("has the speeds of the Code's own table at fourteen seconds of UDDS", () => {
  const { speed_mps } = cycleTrace("udds", cycleTexts);
  const { spots } = published.uddsSpots;
  expect(spots).toHaveLength(14);
  for (const [second, speed_mph] of spots)
    comparedWith("UDDS at a second (mph)", speed_mps[second] / MPS_PER_MPH, speed_mph, { within: 1e-9 });
});

describe("each figure of the table in cycles/PROVENANCE.md is that of the file", () => {
  const page = readFileSync(join(import.meta.dirname, "../../cycles/PROVENANCE.md"), "utf8");
  const rows = [
    ...page.matchAll(/^\| `([a-z0-9-]+)\.csv` \|[^|]*\| (\d+) \| (\d+) s \| ([^|]+) \| ([^|]+) \| ([^|]+) \|$/gm),
  ];

  it("names every cycle on board", () => {
    expect(rows.map((row) => row[1])).toEqual(standardCycles.map((cycle) => cycle.id));
  });

  it.each(rows.map((row) => row.slice(1)))("%s", (id, samples, duration, distance, top, mean) => {
    const trace = cycleTrace(id, cycleTexts);
    const totals: Readonly<Record<string, number>> = {
      ...totalsOf(id),
      distance_m: characteristics(trace).distance_m,
    };
    expect(trace.time_s).toHaveLength(Number(samples));
    expect(totals["duration_s"]).toBe(Number(duration));
    const units = { mi: "distance_mi", m: "distance_m" };
    for (const figure of distance.split(", ")) expectPrinted(figure, totals, units);
    expectPrinted(top, totals, { mph: "max_mph", "km/h": "max_kmh" });
    expectPrinted(mean, totals, { mph: "mean_mph", "km/h": "mean_kmh" });
  });
});

function expectPrinted(
  figure: string,
  totals: Readonly<Record<string, number>>,
  quantityByUnit: Readonly<Record<string, string>>,
): void {
  const printed = /^([\d. ]+) (\S+)$/.exec(figure.trim());
  const number = printed?.[1].replaceAll(" ", "") ?? "";
  const found = totals[quantityByUnit[printed?.[2] ?? ""]];
  comparedWith(`cycle table as described (${printed?.[2]})`, found, Number(number), { within: halfDigit(number) });
}

function breakPoints(operations: readonly (readonly [number, number])[]): string {
  let end_s = 0;
  const rows = operations.map(([end_kmh, lasts_s]) => {
    end_s += lasts_s;
    return `${end_s},${end_kmh}`;
  });
  return ["time_s,speed_kmh", "0,0", ...rows].join("\n");
}
