import { expect, it } from "vitest";
import { labelLine, originGroups } from "../../../web/sheet/originGroups.ts";

it("groups values by who vouches for them, each label once", () => {
  const groups = originGroups({
    origins: {
      "vehicle.kerb_kg": { from: "measured" },
      "packs.0.floor_frac": { from: "usual" },
      "packs.1.floor_frac": { from: "guessed" },
      "motor.mass_kg": { from: "handbook" },
      "no.such": { from: "typed" },
    },
  });
  expect(groups.measured).toHaveLength(1);
  expect(groups.handbook).toHaveLength(1);
  expect(groups.open).toHaveLength(1);
});

it("counts the labels that a line has no room for", () => {
  expect(labelLine(["a", "b"], 2)).toBe("a, b");
  expect(labelLine(["a", "b", "c", "d"], 2)).toBe("a, b and 2 more");
});
