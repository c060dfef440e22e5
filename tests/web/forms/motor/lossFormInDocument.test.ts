import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { fourTermLoss_W } from "../../../../sim/motor/loss.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const { lossForm } = await import("../../../../web/forms/motor/lossForm.ts");

const kind = "#kind-motor-loss";
const page = (change: Partial<Job["motor"]>) => {
  const job = demoJob();
  return formPage({ ...job, motor: { ...job.motor, ...change } }, lossForm);
};
const flat = { kind: "flat" as const, efficiency_frac: 0.85 };

it("shows the figures of the way that the losses are known in, and no others", () => {
  const { choose, texts, has } = page({});
  expect(texts(".fields .field")).toHaveLength(4);
  choose(kind, "flat");
  expect(texts(".fields .field")).toHaveLength(1);
  expect(has("#field-motor-loss-efficiency_frac")).toBe(true);
});

it("makes a law of the motor's own size: the same motor twice as strong loses about twice as much at its full torque", () => {
  const lawOf = (torque_Nm: number, power_kW: number) => {
    const { choose, job } = page({ loss: flat, envelope: { kind: "peak", torque_Nm, power_kW } });
    choose(kind, "fourTerm");
    const { loss } = job().motor;
    if (loss.kind !== "fourTerm") throw new Error(loss.kind);
    return loss;
  };
  const speed_radps = 200;
  const small_W = fourTermLoss_W(lawOf(60, 19), 60, speed_radps);
  const large_W = fourTermLoss_W(lawOf(120, 38), 120, speed_radps);
  // Efficiency of small motors is a little less: common practice, no source.
  expect(large_W / small_W).toBeGreaterThan(1.6);
  expect(large_W / small_W).toBeLessThan(2.2);
  // Motor and controller together are 75 to 97 % efficient at half torque: common practice, no source.
  const half_W = fourTermLoss_W(lawOf(120, 38), 60, speed_radps);
  const efficiency_frac = (60 * speed_radps) / (60 * speed_radps + half_W);
  expect(efficiency_frac).toBeGreaterThan(0.75);
  expect(efficiency_frac).toBeLessThan(0.97);
});

it("says how large a map the job holds, and offers one only as what is there", () => {
  const map = {
    kind: "lossTable" as const,
    speed_rpm: [0, 3000, 6000.4],
    torque_Nm: [0, 99.6],
    loss_W: [
      [0, 100],
      [100, 900],
      [200, 2000],
    ],
  };
  const { said, at } = page({ loss: map });
  expect(said("p.aside")).toBe("The job holds a map of 3 speeds by 2 torques, up to 6000 rpm and 100 Nm.");
  expect([at("[value=lossTable]").disabled, at("[value=efficiencyMap]").disabled]).toEqual([false, true]);
});
