import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { readDatasheet } from "../../../../web/forms/motor/datasheet.ts";
import { lossForm } from "../../../../web/forms/motor/lossForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

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

const law = (change: Partial<Job["motor"]>) => {
  const { choose, job } = page({ loss: flat, ...change });
  choose(kind, "fourTerm");
  return job().motor.loss;
};

it("makes the law of a datasheet without an efficiency, its continuous power half of the peak", () => {
  const { fitted } = readDatasheet(
    { peakTorque_Nm: "120", peakPower_kW: "38", continuousPower_kW: "19", topSpeed_rpm: "8000", rated_V: "108" },
    "metric",
    "induction",
  );
  if (!fitted) throw new Error("not fitted");
  const made = Object.entries(law({})).filter(([key]) => key !== "kind");
  expect(made).toHaveLength(4);
  // Four figures are kept of each: half of the last one is 0.05 % at most.
  const wanted = new Map(Object.entries(fitted.law));
  for (const [key, value] of made) expect(Math.abs(Number(value) / (wanted.get(key) ?? 0) - 1)).toBeLessThan(0.0005);
});

it("makes the same law of a motor that is known by points with the same greatest torque and power", () => {
  // 120 Nm at 3000 rpm, which is 314.16 rad/s: 37.699 kW.
  const points = { kind: "points" as const, speed_rpm: [0, 3000, 8000], torque_Nm: [120, 120, 40] };
  const peak = { kind: "peak" as const, torque_Nm: 120, power_kW: (120 * 3000 * 2 * Math.PI) / 60_000 };
  expect(law({ envelope: points })).toEqual(law({ envelope: peak }));
});

it("counts no more power than torque and top speed make", () => {
  // 120 Nm at 3000 rpm are 37.7 kW, whatever the envelope says.
  const all = { kind: "peak" as const, torque_Nm: 120, power_kW: (120 * 3000 * 2 * Math.PI) / 60_000 };
  const more = { ...all, power_kW: 60 };
  expect(law({ envelope: more, maxSpeed_rpm: 3000 })).toEqual(law({ envelope: all, maxSpeed_rpm: 3000 }));
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
