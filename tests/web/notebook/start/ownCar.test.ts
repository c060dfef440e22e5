import { describe, expect, it } from "vitest";
import { readJob } from "../../../../shared/job/readJob.ts";
import { bodies } from "../../../../shared/parts/bodies.ts";
import { driveJob, roadTrace } from "../../../../sim/index.ts";
import { ownCar, withBody } from "../../../../web/notebook/start/ownCar.ts";
import { usualWeights } from "../../../../web/notebook/start/usualWeights.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";

describe("a car of one's own to begin with", () => {
  it.each(bodies.map((body) => [body.title, body] as const))("is a whole job for %s", (_, body) => {
    const job = ownCar(body);
    expect(readJob(JSON.parse(JSON.stringify(job)))).toEqual(job);
    expect(job.vehicle.roadLoad).toEqual(body.data);
  });

  it("calls nothing measured that nobody has measured", () => {
    const origins = Object.values(ownCar().origins).map(({ from }) => from);
    expect(origins.length).toBeGreaterThan(20);
    expect(origins.filter((from) => from !== "usual" && from !== "guessed")).toEqual([]);
  });

  it("is no invented demo, and says nothing of the demo's owner", () => {
    const job = ownCar();
    expect(job.isInvented).toBe(false);
    expect(job.use).toBe("");
    expect(JSON.stringify(job)).not.toMatch(/piano|tuner|harbour/i);
  });

  it("drives every road it comes with", () => {
    const job = ownCar();
    for (const road of job.roads) {
      const { candidates } = driveJob(job, roadTrace(road, cycleTexts));
      expect(candidates.map(({ range_km }) => range_km > 10)).toEqual(candidates.map(() => true));
    }
  });

  it("takes on another shape with that shape's bands, and leaves the rest", () => {
    const job = withBody(ownCar(), bodies[5]);
    // Box body: drag 0.58, usual 0.45 to 0.65, so it may be off by 0.13 either way.
    const origin = job.origins["vehicle.roadLoad.drag_coeff"];
    expect(origin.from).toBe("usual");
    expect(origin.plusMinus_frac).toBeCloseTo(0.13 / 0.58, 12);
    expect(job.vehicle.tyres).toEqual(ownCar().vehicle.tyres);
  });

  it("weighs what cars of its shape weigh, until somebody says what it weighs", () => {
    const [box] = bodies.filter(({ id }) => id === "box-body");
    const job = withBody(ownCar(), box);
    expect(job.vehicle.kerb_kg).toBe(1600);
    // 1200 to 2200 kg: off by 600 at most.
    expect(job.origins["vehicle.kerb_kg"]).toEqual({ from: "usual", plusMinus_frac: 600 / 1600 });
    const said = ownCar();
    const weighed = { ...said, origins: { ...said.origins, "vehicle.kerb_kg": { from: "measured" as const } } };
    expect(withBody(weighed, box).vehicle.kerb_kg).toBe(850);
    expect(Object.keys(usualWeights).toSorted()).toEqual(bodies.map(({ id }) => id).toSorted());
  });
});
