import { describe, expect, it } from "vitest";
import * as z from "zod";
import { numbersIn } from "../../../shared/job/path.ts";
import { invented, inventedCurve, published } from "../../../shared/parts/origin.ts";
import { partOf } from "../../../shared/parts/part.ts";
import { PartOrigin } from "../../../shared/parts/partOrigin.ts";

const Spring = partOf(z.strictObject({ name: z.string(), rate: z.number(), table: z.array(z.number()) }));

const spring = {
  id: "leaf",
  title: "Leaf spring",
  data: { name: "leaf", rate: 20, table: [1, 2, 3] },
  origins: { rate: invented(15, 25), table: inventedCurve(0.2) },
};

/** The messages of every fault of a document that is not a part. */
function faults(document: unknown): string[] {
  const result = Spring.safeParse(document);
  return result.success ? [] : result.error.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);
}

describe("a part", () => {
  it("is good when every number has an origin that holds it", () => {
    expect(faults(spring)).toEqual([]);
  });

  it("names each number that has no origin", () => {
    expect(faults({ ...spring, origins: { rate: invented(15, 25) } })).toEqual([
      "data.table.0: found a value without an origin",
      "data.table.1: found a value without an origin",
      "data.table.2: found a value without an origin",
    ]);
  });

  it("refuses a band that leaves out its own value", () => {
    const origins = { ...spring.origins, rate: invented(21, 25) };
    expect(faults({ ...spring, origins })).toEqual([
      "origins.rate: found a band from 21 to 25 that leaves out the value 20",
    ]);
  });

  it("refuses the origin of a value that is not there", () => {
    const origins = { ...spring.origins, length_mm: invented(1, 2) };
    expect(faults({ ...spring, origins })).toEqual(["origins.length_mm: found an origin of a value that is not there"]);
  });

  it("asks for a share where a table is given the band of a single value, and the other way round", () => {
    const origins = { rate: inventedCurve(0.1), table: invented(0, 9) };
    expect(faults({ ...spring, origins })).toEqual([
      "origins.rate: found plusMinus_frac for a single value, low and high wanted",
      "origins.table: found a band for a table, plusMinus_frac wanted",
    ]);
  });
});

describe("an origin", () => {
  const isGood = (origin: unknown) => PartOrigin.safeParse(origin).success;

  it("of a published law names its source", () => {
    expect(isGood(published("[Gillespie1992, ch. 4]", 1, 2))).toBe(true);
    expect(isGood({ origin: "published law", low: 1, high: 2 })).toBe(false);
  });

  it("has both ends of a band or none, and the lower one below", () => {
    expect(isGood({ origin: "invented" })).toBe(true);
    expect(isGood({ origin: "invented", low: 1 })).toBe(false);
    expect(isGood({ origin: "invented", low: 3, high: 2 })).toBe(false);
  });
});

it("finds every number in a value with its path", () => {
  expect(numbersIn({ a: 1, b: { c: [2, 3] }, d: "4" })).toEqual([
    { path: "a", value: 1 },
    { path: "b.c.0", value: 2 },
    { path: "b.c.1", value: 3 },
  ]);
});
