import { expect, it } from "vitest";
import * as z from "zod";
import { toProblems } from "../../../shared/job/toProblems.ts";

const schema = z.strictObject({
  load_kg: z.number().min(0).max(10),
  name: z.string().min(1),
  packs: z.array(z.number()).min(1),
  kind: z.enum(["a", "b", "c"]),
});
const right = { load_kg: 1, name: "x", packs: [1], kind: "a" };

const said = (changes: Readonly<Record<string, unknown>>) => {
  const json = { ...right, ...changes };
  const { error } = schema.safeParse(json);
  return (error?.issues ?? []).flatMap((issue) => toProblems(issue, json, schema));
};

it.each<[Record<string, unknown>, string, string]>([
  [{ load_kg: -5 }, "outOfRange", "found -5 kg, 0 to 10 kg allowed"],
  [{ load_kg: "heavy" }, "wrongType", 'found "heavy", a number from 0 to 10 kg wanted'],
  [{ name: "" }, "outOfRange", "found an empty text, at least one letter wanted"],
  [{ packs: [] }, "outOfRange", "found 0 entries, at least 1 wanted"],
  [{ packs: 3 }, "wrongType", "found 3, a list wanted"],
  [{ kind: "d" }, "notAllowed", 'found "d", one of "a", "b", "c" wanted'],
])("says of %j what was found and what is allowed", (changes, code, message) => {
  expect(said(changes)).toEqual([{ code, where: Object.keys(changes)[0], message }]);
});

it("says which key a misspelt one may have meant", () => {
  expect(said({ lod_kg: 3 })).toEqual([
    {
      code: "unknownKey",
      where: "lod_kg",
      message: "found a key this program does not know, perhaps load_kg is meant",
    },
  ]);
});
