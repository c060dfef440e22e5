import { expect, it } from "vitest";
import { PartOrigin } from "../../../shared/parts/partOrigin.ts";

const messages = (origin: object) => PartOrigin.safeParse(origin).error?.issues.map(({ message }) => message) ?? [];
const practice = "common practice, no source";

it("asks a published figure for its source", () => {
  expect(messages({ origin: "published law" })).toEqual(["a published figure needs its source"]);
  expect(messages({ origin: "published law", citation: "[Key, p. 1]" })).toEqual([]);
  expect(messages({ origin: practice })).toEqual([]);
});

it("has both ends of a band or none, in order", () => {
  expect(messages({ origin: practice, low: 1 })).toEqual(["found one end of a band, both wanted"]);
  expect(messages({ origin: practice, low: 2, high: 1 })).toEqual(["found 2, at most 1 allowed"]);
  expect(messages({ origin: practice, low: 1, high: 2 })).toEqual([]);
});
