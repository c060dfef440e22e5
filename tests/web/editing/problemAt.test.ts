import { expect, it } from "vitest";
import { problemAt } from "../../../web/editing/problemAt.ts";

const problem = (where: string, message: string) => ({ code: "x", where, message });

it("says a field's own problems first", () => {
  const problems = [problem("vehicle.load_kg", "other"), problem("vehicle.kerb_kg", "own")];
  expect(problemAt("vehicle.kerb_kg", problems)).toBe("own");
});

it("says what its value broke elsewhere with the label of that place, never with a key of the file", () => {
  const words = problemAt("vehicle.kerb_kg", [problem("controller.max_V", "found 50 V, above min_V (60 V) wanted")]);
  expect(words).toMatch(/^[^_]+: found 50 V, above “[^_]+” \(60 V\) wanted$/);
});
