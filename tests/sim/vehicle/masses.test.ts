import { expect, it } from "vitest";
import { testMass_kg } from "../../../sim/vehicle/masses.ts";
import { inventedJob } from "../../support/inventedJob.ts";

const job = inventedJob();

it("of the car is what arrived, less what came out, plus what went in, the pack, the load and the roof", () => {
  const vehicle = { ...job.vehicle, kerb_kg: 900, removed_kg: 200, added_kg: 90, load_kg: 150 };
  expect(testMass_kg(vehicle, 180)).toBe(1120);
  expect(testMass_kg({ ...vehicle, roof: { mass_kg: 40, dragArea_m2: 0.2 } }, 180)).toBe(1160);
});

it("of a car weighed as converted is that weight, the pack and the load, whatever it weighed before", () => {
  const vehicle = { ...job.vehicle, kerb_kg: 900, removed_kg: 200, added_kg: 90, load_kg: 150, converted_kg: 810 };
  expect(testMass_kg(vehicle, 180)).toBe(1140);
});

it("leaves a trailer to itself", () => {
  const vehicle = { ...job.vehicle, trailer: { mass_kg: 500, dragArea_m2: 1, rolling_coeff: 0.01 } };
  expect(testMass_kg(vehicle, 0)).toBe(testMass_kg(job.vehicle, 0));
});
