import { expect, it } from "vitest";
import { writeAtPath, writeField } from "../../../../web/editing/fieldTable/writeAtPath.ts";

it("writes a number with the unit of its field in the reader's units, bare where there is no field", () => {
  expect(writeAtPath("vehicle.kerb_kg", 1000, "metric")).toBe("1000 kg");
  expect(writeAtPath("vehicle.kerb_kg", 1000, "british")).toMatch(/ lb$/);
  expect(writeAtPath("no.such", 1234.5, "metric")).toBe("1230");
});

it("writes words as they are, and says what is not known", () => {
  expect(writeField("driveline.drivenAxle", "rear", "metric")).toBe("rear");
  expect(writeField("vehicle.kerb_kg", undefined, "metric")).toBe("not known");
});
