import { describe, expect, it } from "vitest";
import { shaftTorques } from "../../../../sim/plan/torqueLimit/shaftTorques.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { box } from "./boxesByHand.ts";

const transferBox = {
  high_ratio: 1,
  highEfficiency_frac: 1,
  low_ratio: 2.4,
  lowEfficiency_frac: 0.94,
  range: "high",
  isFrontEngaged: false,
  hubs: "free",
} as const;

describe("the shafts behind the gearbox", () => {
  it("carry the input less its drag, times the ratios and efficiencies up to them, each half-shaft half of it", () => {
    const [low, high] = shaftTorques(bareJob({ driveline: box }), 100);
    expect(low.propellerShaft_Nm).toBeCloseTo(98 * 3.5 * 0.95, 9);
    expect(low.halfShaft_Nm).toBeCloseTo((98 * 3.5 * 0.95 * 4.7 * 0.92) / 2, 9);
    expect(high.propellerShaft_Nm).toBeCloseTo(98 * 1.5 * 0.96, 9);
    expect(low).not.toHaveProperty("inputAtLimit_Nm");
  });

  it("carry so much more in low range, and half of it where both axles drive", () => {
    const job = bareJob({ driveline: { ...box, transferBox } });
    const rows = shaftTorques(job, 100);
    expect(rows.map(({ range }) => range)).toEqual(["high", "high", "low", "low"]);
    expect(rows[2].propellerShaft_Nm).toBeCloseTo(98 * 3.5 * 0.95 * 2.4 * 0.94, 9);
    const engaged = bareJob({
      driveline: { ...box, transferBox: { ...transferBox, isFrontEngaged: true, hubs: "locked" } },
    });
    expect(shaftTorques(engaged, 100)[2].halfShaft_Nm).toBeCloseTo(rows[2].halfShaft_Nm / 2, 9);
  });

  it("have their limit at the input that the step's own driveline limit is", () => {
    const job = bareJob({ driveline: { ...box, limits: { propellerShaft_Nm: 300, halfShaft_Nm: 500 } } });
    const [, high] = shaftTorques(job, 0);
    expect(high.inputAtLimit_Nm).toBeCloseTo(prepare(job, job.packs[0]).gears[0].drive_Nm, 9);
    expect(high).toMatchObject({ weakest: "half-shaft", propellerShaft_Nm: 0 });
    expect(shaftTorques(job, high.inputAtLimit_Nm ?? 0)[1].halfShaft_Nm).toBeCloseTo(500, 9);
  });
});
