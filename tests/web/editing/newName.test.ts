import { expect, it } from "vitest";
import { newName } from "../../../web/editing/newName.ts";

it("is the name wanted, or with the first number that makes it one", () => {
  expect(newName("Pack", ["Other"])).toBe("Pack");
  expect(newName("Pack", ["Pack", "Pack 2"])).toBe("Pack 3");
  expect(newName("road", ["road"], "-")).toBe("road-2");
});
