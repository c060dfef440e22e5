import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
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
    expect(JSON.stringify(job)).not.toMatch(/piano|tuner|harbour|garage/i);
    expect(job.supplies).toEqual([]);
    for (const key of ["currency", "costs", "weights", "wiring", "year", "engine", "longestDay_km"])
      expect(job).not.toHaveProperty(key);
    expect(job.requirement).toEqual({});
    expect(job.predictions).toEqual([]);
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

  it("begins on country lanes, not on a motorway", () => {
    const [first] = ownCar().roads;
    const { speed_mps } = roadTrace(first, cycleTexts);
    // The national limit for a light van on a single carriageway is 50 mph, 80 km/h.
    expect(Math.max(...speed_mps)).toBeLessThan(80 / 3.6);
  });

  it.each([
    ["microcar", 10, 20],
    ["saloon", 30, 40],
    ["light-van", 35, 50],
  ])("has a motor and packs that suit a %s", (id, least_kW, most_kW) => {
    const [body] = bodies.filter((each) => each.id === id);
    const job = ownCar(body);
    const { envelope } = job.motor;
    const power_kW = envelope.kind === "peak" ? envelope.power_kW : Number.NaN;
    expect(power_kW).toBeGreaterThan(least_kW);
    expect(power_kW).toBeLessThan(most_kW);
    const { candidates } = driveJob(job, roadTrace(job.roads[0], cycleTexts));
    // A pack is less than three tenths of the car that came (common practice, no source), and the packs span what the day asks for.
    for (const { pack } of candidates) expect(pack.mass_kg).toBeLessThan(0.3 * job.vehicle.kerb_kg);
    const asked_km = (job.usualDay_km * job.allowance.winter_ratio) / job.allowance.aged_frac;
    expect(candidates[0].range_km).toBeLessThan(asked_km);
    expect(candidates.at(-1)?.range_km).toBeGreaterThan(asked_km);
  });

  it.each(bodies.map(({ id }) => id))(
    "has a pack among its first that does a day of 20 to 80 km in a %s, old and in winter",
    (id) => {
      const [body] = bodies.filter((each) => each.id === id);
      for (const usualDay_km of [20, 40, 80]) {
        const job = withBody({ ...ownCar(body), usualDay_km }, body);
        for (const road of job.roads.slice(0, 3)) {
          const { candidates } = driveJob({ ...job, roads: [road] }, roadTrace(road, cycleTexts));
          const doing = candidates.filter(
            ({ conditions }) => (conditions?.tenYearsWinter?.range_km ?? 0) >= usualDay_km,
          );
          expect([usualDay_km, road.id, doing.length > 0]).toEqual([usualDay_km, road.id, true]);
        }
      }
    },
  );

  it("takes on another shape's motor and packs, unless somebody has chosen some", () => {
    const [microcar] = bodies.filter(({ id }) => id === "microcar");
    expect(withBody(ownCar(), microcar).packs).toEqual(ownCar(microcar).packs);
    const packs = ownCar().packs.map((pack) => ({ ...pack, boxes_frac: 0.4 }));
    const chosen = { ...ownCar(), packs };
    const job = withBody(chosen, microcar);
    expect([job.packs, job.motor]).toEqual([chosen.packs, chosen.motor]);
  });

  it("sizes packs by the day that was said before the shape, and spares a gearbox whose limit was said", () => {
    const [van] = bodies.filter(({ id }) => id === "light-van");
    const largest = (job: Job) => Math.max(...job.packs.map(({ parallelModules }) => parallelModules));
    expect(largest(withBody({ ...ownCar(), usualDay_km: 80 }, van))).toBeGreaterThan(1.5 * largest(ownCar(van)));
    const { driveline, origins, ...rest } = ownCar();
    const said = {
      ...rest,
      driveline: { ...driveline, limits: { ...driveline.limits, gearboxInput_Nm: 70 } },
      origins: { ...origins, "driveline.limits.gearboxInput_Nm": { from: "handbook" as const } },
    };
    const job = withBody(said, van);
    expect([job.driveline.limits?.gearboxInput_Nm, job.controller.torqueCap_Nm]).toEqual([70, 70]);
  });
});
