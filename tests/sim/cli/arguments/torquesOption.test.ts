import { expect, it } from "vitest";
import { readTorques_Nm } from "../../../../sim/cli/arguments/torquesOption.ts";

it("reads torques with commas between them, bounds included", () => {
  expect(readTorques_Nm("80, 100.5,10000", "--caps", 1)).toEqual([80, 100.5, 10_000]);
});

it.each([
  ["80,,100", "nothing"],
  ["80,half", "half"],
  ["0.5", "0.5"],
  ["10001", "10001"],
])("refuses %s", (typed, found) => {
  expect(() => readTorques_Nm(typed, "--caps", 1)).toThrow(
    `--caps: found ${found}, torques of 1 to 10000 Nm with commas between them wanted`,
  );
});
