import { describe, expect, it } from "vitest";
import { demos } from "../../../shared/demos/index.ts";
import type { Job } from "../../../shared/job/job.ts";
import { readJob } from "../../../shared/job/readJob.ts";
import { knownEngine } from "../../../sim/index.ts";
import { readMap } from "../../../web/forms/motor/bringMap.ts";
import motor from "../../../web/sections/motor.ts";
import type { Values } from "../../../web/sections/parts/values.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const demo = demoJob();
const brought = await readMap("map.csv", "rpm,20,60,100\n1000,78,76,70\n3000,86,89,87\n6000,84,90,\n");

function read(job: Job, changes: Partial<Values> = {}) {
  const result = motor.compute(sectionValues(job, changes));
  const figures = [...motor.plot(result, drawing(640))].filter((each) => "chart" in each);
  return { figures, sentence: motor.sentence(result), attention: motor.attention?.(result) ?? [] };
}

describe("the section of the motor", () => {
  it("draws the old engine beside the motor and says what either gave", () => {
    const { figures, sentence } = read(demo);
    expect(sentence).toContain("the motor gives 120 Nm");
    expect(sentence).toContain("The old engine gave 115 Nm at 2500 rpm and 44 kW at 4700 rpm.");
    expect(figures).toHaveLength(1);
    expect(figures[0].chart.alt).toContain("old engine gives at most 115 Nm, from 2500 rpm, and 44 kW at 4700 rpm");
  });

  it("completes the old engine by the same rule as its pace, and says what is about", () => {
    const { ratedTorque_Nm, ratedPower_kW } = demo.engine ?? {};
    const { figures, sentence } = read({ ...demo, engine: { ratedTorque_Nm, ratedPower_kW } });
    // 44 kW / (0.8 x 115 Nm) = 478 rad/s, 4567 rpm; 0.55 of that are 2512 rpm.
    expect(sentence).toContain(
      "The old engine gave 115 Nm at about 2500 rpm and 44 kW at about 4600 rpm (about: assumed from the rest, common practice, no source).",
    );
    expect(figures[0].chart.alt).toContain("old engine gives at most 115 Nm");
    expect(knownEngine({ ratedTorque_Nm, ratedPower_kW }).engine).toBeDefined();
  });

  it("goes without the old engine's curve while too little is known, and says what is missing", () => {
    const { figures, sentence } = read({ ...demo, engine: { ratedTorque_Nm: 115 } });
    expect(sentence).toContain("The old engine gave 115 Nm; its curve needs its rated power too.");
    expect(figures[0].chart.alt).not.toContain("old engine");
    expect(read({ ...demo, engine: {} }).sentence).toContain("What the old engine gave is not known.");
  });

  it("draws the old engine's curve as it was typed, with no rating beside it", () => {
    const curve = { speed_rpm: [900, 2200, 3600, 4800], torque_Nm: [88, 112, 101, 82] };
    const { figures, sentence } = read({ ...demo, engine: { curve } });
    // 82 Nm at 4800 rpm are 41.2 kW.
    expect(sentence).toContain("The old engine gave 112 Nm at 2200 rpm and 41.2 kW at 4800 rpm, its curve as typed.");
    const rows = figures[0].chart.table.rows.filter(([name]) => name === "old engine");
    expect(rows.map(([, ...point]) => point)).toEqual(curve.speed_rpm.map((speed, i) => [speed, curve.torque_Nm[i]]));
  });

  it.each(demos.map(({ id, document }) => [id, readJob(document)] as const))("speaks of %s in numbers", (_, job) => {
    const { figures, sentence } = read(job);
    expect(`${sentence} ${figures[0].chart.alt}`).not.toMatch(/NaN|undefined|Infinity/);
    expect(sentence).toMatch(/gives \d+ Nm from rest up to \d+ rpm/);
  });

  it("asks for a torque cap where the motor is stronger than the gearbox", () => {
    const { torqueCap_Nm: _cap, ...controller } = demo.controller;
    expect(read(demo).attention).toEqual([]); // capped at 110 Nm, the box stands 115 Nm
    expect(read({ ...demo, controller }).attention).toEqual([
      "The motor may put 120 Nm into a gearbox that stands 115 Nm: set the controller's torque cap to that or less.",
    ]);
  });

  it("sees torque and speed changed over", () => {
    const envelope = { kind: "peak" as const, torque_Nm: 8000, power_kW: 38 };
    const { attention } = read({ ...demo, motor: { ...demo.motor, envelope, maxSpeed_rpm: 120, rollBack_rpm: 1 } });
    expect(attention[0]).toContain("likely changed over");
  });

  it("draws a map that was brought and is not taken, and then the one in the job", () => {
    if (!("map" in brought)) throw new Error("map not read");
    const lying = read(demo, { broughtMap: brought });
    expect(lying.figures.map(({ caption }) => caption)[1]).toBe(
      "What would the motor lose by map.csv? A map not taken into the job yet",
    );
    const taken = read({ ...demo, motor: { ...demo.motor, loss: brought.loss } });
    expect(taken.figures.map(({ caption }) => caption)[1]).toContain("by the map in the job");
  });

  it("draws nothing of a file that was refused", () => {
    expect(read(demo, { broughtMap: { name: "bad.csv", problems: ["bad.csv: found no line"] } }).figures).toHaveLength(
      1,
    );
  });
});
