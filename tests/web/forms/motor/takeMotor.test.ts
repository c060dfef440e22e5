import { describe, expect, it } from "vitest";
import { fourTermLoss_W } from "../../../../sim/motor/loss.ts";
import { createJobEditor } from "../../../../web/editing/jobEditor.ts";
import { readMap } from "../../../../web/forms/motor/bringMap.ts";
import { readDatasheet } from "../../../../web/forms/motor/datasheet.ts";
import { takeDatasheet, takeMap } from "../../../../web/forms/motor/takeMotor.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { figures, point } from "./datasheetByHand.ts";

const csv = "rpm,20,60,100\n1000,78,76,70\n3000,86,89,87\n6000,84,90,\n";

describe("a datasheet taken into the job", () => {
  it("becomes the job's motor in one step, with what was typed", () => {
    const texts = { ...figures, ...point(0, "3000", "60", "89") };
    const { fitted } = readDatasheet(texts, "metric", "induction");
    if (!fitted) throw new Error("not fitted");
    const jobEditor = createJobEditor({ job: demoJob(), drafts: {} });
    expect(jobEditor.change("datasheet", (state) => takeDatasheet(state, fitted, texts))).toEqual([]);
    const { motor, origins } = jobEditor.job.value;
    expect(motor.envelope).toEqual({ kind: "peak", torque_Nm: 120, power_kW: 38 });
    expect(motor.loss).toEqual({ kind: "fourTerm", ...fitted.law });
    expect(motor.origin).toBe("its datasheet; losses by a law fitted to one efficiency point");
    expect(origins["motor.envelope.torque_Nm"]).toMatchObject({ from: "handbook", typed: "120" });
    expect(origins["motor.loss"].from).toBe("handbook");
    expect(origins["motor.heat.cooling_WpK"]).toMatchObject({
      from: "handbook",
      note: expect.stringContaining("16 kW"),
    });
    jobEditor.undo();
    expect(jobEditor.job.value).toEqual(demoJob());
  });

  it.each([
    ["with a heat limit", true],
    ["without one", false],
  ] as const)("holds the continuous power for as long as asked at 40 degC and no more, in a motor %s", (_, hasHeat) => {
    const { fitted } = readDatasheet(figures, "metric", "induction");
    if (!fitted) throw new Error("not fitted");
    const job = demoJob();
    const { heat: _heat, ...cold } = job.motor;
    const jobEditor = createJobEditor({ job: hasHeat ? job : { ...job, motor: cold }, drafts: {} });
    expect(jobEditor.change("datasheet", (state) => takeDatasheet(state, fitted, figures))).toEqual([]);
    const { heat } = jobEditor.job.value.motor;
    if (!heat) throw new Error("the continuous power was lost");
    // 16 kW at the base speed of 38 kW / 120 Nm: its loss by the law, carried off at the temperature where derating begins.
    const speed_radps = 38_000 / 120;
    const torque_Nm = 16_000 / speed_radps;
    const loss_W = fourTermLoss_W(fitted.law, torque_Nm, speed_radps);
    // Cooling is rounded to three digits.
    expect(Math.abs((heat.cooling_WpK * (heat.derateFrom_degC - 40)) / loss_W - 1)).toBeLessThan(0.005);
    expect(heat.derateFrom_degC).toBe(130);
  });

  it("says that its losses are usual ones where it had no efficiency", () => {
    const { fitted } = readDatasheet(figures, "metric", "induction");
    if (!fitted) throw new Error("not fitted");
    const { origins, motor } = takeDatasheet({ job: demoJob(), drafts: {} }, fitted, figures).job;
    expect(origins["motor.loss"]).toMatchObject({ from: "usual", note: expect.stringContaining("no efficiency") });
    expect(motor.origin).toBe("its datasheet; losses by a law fitted to no efficiency point");
  });
});

describe("a motor map taken into the job", () => {
  it("becomes the motor's loss table in one step", async () => {
    const brought = await readMap("map.csv", csv);
    if (!("map" in brought)) throw new Error(brought.problems.join());
    const jobEditor = createJobEditor({ job: demoJob(), drafts: {} });
    expect(jobEditor.change("map", (state) => takeMap(state, brought))).toEqual([]);
    const { loss } = jobEditor.job.value.motor;
    if (loss.kind !== "lossTable") throw new Error(loss.kind);
    // 3000 rpm, 60 Nm at 89 %: 60 · 314.159 · (1/0.89 − 1) = 2329.7 W
    const [i, j] = [loss.speed_rpm.indexOf(3000), loss.torque_Nm.indexOf(60)];
    expect(loss.loss_W[i][j]).toBeCloseTo(60 * 100 * Math.PI * (1 / 0.89 - 1), 6);
    expect(jobEditor.job.value.origins["motor.loss"].note).toContain("map.csv, 8 values given");
    expect(jobEditor.undo()).toBe("map");
    expect(jobEditor.job.value.motor.loss.kind).toBe("fourTerm");
  });
});
