import { expect, it } from "vitest";
import type { Weights } from "../../../shared/job/schema/weights.ts";
import { weighedAxles } from "../../../shared/job/weighedAxles.ts";

it("are the axles as weighed, or the sum of their two corners", () => {
  const weighed = (loads: Weights["weighed"]) => weighedAxles({ weighed: loads } as Weights);
  expect(weighed({ front_kg: 500, rear_kg: 450 })).toEqual({ front_kg: 500, rear_kg: 450 });
  const corners = { frontLeft_kg: 255, frontRight_kg: 245, rearLeft_kg: 220, rearRight_kg: 230 };
  expect(weighed(corners)).toEqual({ front_kg: 500, rear_kg: 450 });
});
