import { expect, it } from "vitest";
import * as z from "zod";
import { boundsAt, isInSchema, keysAt, unwrap } from "../../../shared/job/schemaAt.ts";

const schema = z.object({
  load_kg: z.number().min(0).max(10).default(1),
  kerb_kg: z.number().gt(0).max(20).optional(),
  free: z.number(),
  list: z.array(z.object({ name: z.string() })),
  loss: z.discriminatedUnion("kind", [
    z.object({ kind: z.literal("flat"), efficiency_frac: z.number().min(0.2).max(1) }),
    z.object({ kind: z.literal("table"), rows: z.array(z.number()) }),
  ]),
  byPath: z.record(z.string(), z.object({ from: z.string() })),
});

it("knows both bounds of a number, with its unit", () => {
  expect(boundsAt(schema, ["load_kg"])).toBe("0 to 10 kg");
  expect(boundsAt(schema, ["kerb_kg"])).toBe("above 0 and at most 20 kg");
  expect(boundsAt(schema, ["loss", "efficiency_frac"])).toBe("0.2 to 1");
  expect(boundsAt(schema, ["free"])).toBeUndefined();
  expect(boundsAt(schema, ["list"])).toBeUndefined();
});

it("has a place for what any kind of a document may hold, and for nothing else", () => {
  for (const path of [["list", "0", "name"], ["loss", "rows", "3"], ["byPath", "anything", "from"], []])
    expect(isInSchema(schema, path)).toBe(true);
  for (const path of [["list", "first"], ["loss", "colour"], ["nothing"]]) expect(isInSchema(schema, path)).toBe(false);
});

it("lists the keys at a path, of every kind", () => {
  expect(keysAt(schema, ["loss"])).toEqual(["kind", "efficiency_frac", "kind", "rows"]);
  expect(keysAt(schema, ["list", "0"])).toEqual(["name"]);
});

it("looks under what is optional or has a default", () => {
  expect(unwrap(z.number().optional().default(1))).toBeInstanceOf(z.ZodNumber);
});
