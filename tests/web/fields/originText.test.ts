import { expect, it } from "vitest";
import { originInWords } from "../../../web/fields/originText.ts";

it("says where a value comes from, with its source and what was noted", () => {
  expect(originInWords({ origin: "invented" })).toBe("invented");
  expect(originInWords({ origin: "published law", citation: "[Wong2008, ch. 1]", note: "from memory" })).toBe(
    "published law (Wong2008, ch. 1): from memory",
  );
});
