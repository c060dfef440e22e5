import { expect, it } from "vitest";
import { prepareRoadLoad } from "../../../sim/vehicle/prepareRoadLoad.ts";
import { demoJob } from "../../support/demoJob.ts";

it("of one drag area is that of a drag coefficient and a frontal area whose product it is", () => {
  const job = demoJob();
  const withLoad = (roadLoad: typeof job.vehicle.roadLoad) =>
    prepareRoadLoad({ ...job, vehicle: { ...job.vehicle, roadLoad } }, 1000, 3);
  const both = withLoad({ kind: "physical", drag_coeff: 0.45, frontalArea_m2: 1.75, wheelDrag_Nm: 0 });
  const one = withLoad({ kind: "dragArea", dragArea_m2: 0.45 * 1.75, wheelDrag_Nm: 0 });
  expect(one).toEqual(both);
  expect(both.drag_Npmps2).toBeGreaterThan(0);
});
