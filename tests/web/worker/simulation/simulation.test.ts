import { afterAll, expect, it } from "vitest";
import { simulation } from "../../../../web/worker/simulation/simulation.ts";
import { bareJob, steadyTrace } from "../../../support/bareCar.ts";

const job = bareJob();
const [slow, fast] = [steadyTrace(10, 100, 1), steadyTrace(20, 100, 1)];

afterAll(() => Promise.all([1, 2, 4].map((id) => simulation.dropTrace(id))));

it("drives a road that was sent to it, each by its number", async () => {
  await simulation.keepTrace(1, slow);
  await simulation.keepTrace(2, fast);
  const driven = async (id: number) => (await simulation.drive(job, [0], id))[0]?.distance_km;
  // 100 s at 10 m/s and at 20 m/s.
  expect(await driven(1)).toBeCloseTo(1, 6);
  expect(await driven(2)).toBeCloseTo(2, 6);
});

it("drives nothing that was not sent to it or was dropped, and says which", async () => {
  await expect(simulation.drive(job, [0], 77)).rejects.toThrow("trace 77 was not sent to this worker");
  await simulation.keepTrace(3, slow);
  await simulation.dropTrace(3);
  await expect(simulation.gearbox(job, 0, 3)).rejects.toThrow("trace 3 was not sent to this worker");
});

it("drives the packs asked for and no others, and works steady speeds for all of them", async () => {
  const [pack] = job.packs;
  const three = { ...job, packs: [pack, { ...pack, name: "second" }, { ...pack, name: "third" }] };
  await simulation.keepTrace(4, slow);
  const driven = await simulation.drive(three, [2], 4);
  expect(driven.map(({ name }) => name)).toEqual(["third"]);
  const steady = await simulation.steady(three, [30, 50]);
  expect(steady.map((rows) => rows.map(({ speed_kmh }) => speed_kmh))).toEqual([
    [30, 50],
    [30, 50],
    [30, 50],
  ]);
});
