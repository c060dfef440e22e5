import { expect, it } from "vitest";
import { inPresentNames, presentPath } from "../../../shared/job/formerNames.ts";

it("calls a value by its name of today, and its origin too", () => {
  const document = { vehicle: { arriving_kg: 900, load_kg: 1 }, origins: { "vehicle.arriving_kg": { from: "typed" } } };
  expect(inPresentNames(document)).toEqual({
    vehicle: { kerb_kg: 900, load_kg: 1 },
    origins: { "vehicle.kerb_kg": { from: "typed" } },
  });
  expect(presentPath("vehicle.arriving_kg")).toBe("vehicle.kerb_kg");
  expect(presentPath("vehicle.load_kg")).toBe("vehicle.load_kg");
});

it("leaves both where a document has the old name and the new", () => {
  const document = { vehicle: { arriving_kg: 900, kerb_kg: 950 } };
  expect(inPresentNames(document)).toEqual(document);
});

it("leaves what is no group as it is", () => {
  for (const document of [null, [1], "x", { vehicle: 3 }]) expect(inPresentNames(document)).toEqual(document);
});
