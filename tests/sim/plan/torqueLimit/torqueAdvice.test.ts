import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import type { RecommendedLimit } from "../../../../sim/plan/torqueLimit/recommendLimit.ts";
import { torqueAdvice } from "../../../../sim/plan/torqueLimit/torqueAdvice.ts";
import type { TorqueRow } from "../../../../sim/plan/torqueLimit/torqueSweep.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";

const motor = { envelope: { kind: "peak", torque_Nm: 200, power_kW: 60 } } as const;
const jobOf = (changes: Changes = {}): Job =>
  bareJob({ motor, controller: { torqueCap_Nm: 100, ramp_s: 1, ...changes.controller }, ...changes });
const to100: RecommendedLimit = { torque_Nm: 100, because: "gearbox" };
const row = (torque_Nm: number, changes: Partial<TorqueRow> = {}): TorqueRow => ({
  torque_Nm,
  gears: [],
  to50kmh_s: 6,
  to100kmh_s: 20,
  behind_s: 0,
  steepestStart_ratio: 0.3,
  ...changes,
});
const said = (job: Job, rows: readonly TorqueRow[] = [], limit: RecommendedLimit | undefined = to100) =>
  torqueAdvice(job, rows, limit).map((each) => messageIn(each, "metric"));

describe("the limit to set", () => {
  const first = (limit: RecommendedLimit) => said(jobOf(), [], limit)[0];
  it("says what set it", () => {
    expect(first(to100)).toBe("Set the torque cap to 100 Nm at the motor shaft: the gearbox input limit.");
    expect(first({ torque_Nm: 100, because: "engine" })).toMatch(
      /: what the old engine gave, as the gearbox input limit is not known\.$/,
    );
    expect(first({ torque_Nm: 100, because: "strong" })).toMatch(
      /: 20 % above what the old engine gave, which a strong gearbox takes; its own limit is higher\.$/,
    );
    expect(first({ torque_Nm: 200, because: "motor" })).toBe(
      "No cap is needed: the motor's own peak, 200 Nm, is within the limits.",
    );
    expect(first({ torque_Nm: 100, because: "half-shaft", gear: { gear: "2", range: "low" } })).toMatch(
      /: more would put the half-shaft over its limit in 2, low range\.$/,
    );
    expect(first({ torque_Nm: 100, because: "propeller shaft" })).toMatch(
      /: more would put the propeller shaft over its limit in the gear in use\.$/,
    );
  });
  it("says where nothing is known to set it by", () => {
    expect(torqueAdvice(jobOf(), [], undefined).map((each) => messageIn(each, "metric"))).toEqual([
      "No limit can be recommended: neither the old engine's torque nor what gearbox or shafts stand has been entered.",
    ]);
  });
});

describe("the cap as it is set now", () => {
  const now = (torqueCap_Nm?: number) => {
    const controller = { ramp_s: 1, ...(torqueCap_Nm !== undefined && { torqueCap_Nm }) };
    return said(bareJob({ motor, controller })).slice(1);
  };
  it("is said where it is more than a newton metre away from that", () => {
    expect(now(101)).toEqual([]);
    expect(now(99)).toEqual([]);
    expect(now(102)).toEqual(["It is not so now: the motor may give 102 Nm, which is more."]);
    expect(now(98)).toEqual(["It is set to 98 Nm now, which is within that."]);
  });
  it("is the motor's peak where there is none, or one above it", () => {
    expect(now()).toEqual(["It is not so now: the motor may give 200 Nm, which is more."]);
    expect(now(300)).toEqual(["It is not so now: the motor may give 200 Nm, which is more."]);
  });
});

describe("what a limit takes from the driver", () => {
  const cost = (limited: Partial<TorqueRow>, free: Partial<TorqueRow> = {}) =>
    said(jobOf(), [row(100, limited), row(200, free)])[1];
  it("is nothing that is felt below a tenth of a second, a second behind and a fiftieth of a hill", () => {
    expect(cost({})).toBe("Against the motor's 200 Nm that costs the driver nothing that is felt.");
    expect(cost({ to50kmh_s: 6.09, to100kmh_s: 20.09, behind_s: 0.9, steepestStart_ratio: 0.295 })).toMatch(
      /nothing that is felt\.$/,
    );
  });
  it("is each that is felt, in one sentence", () => {
    expect(cost({ to50kmh_s: 6.2, to100kmh_s: 24, behind_s: 3, steepestStart_ratio: 0.25 }, { behind_s: 1 })).toBe(
      "Against the motor's 200 Nm that costs the driver 6.2 s instead of 6.0 s to 50 km/h, 24.0 s instead of 20.0 s to 100 km/h, 2 s more behind on this road, a start on 25 % instead of 30 % at most.",
    );
    expect(cost({ behind_s: 1 })).toMatch(/driver 1 s more behind on this road\.$/);
    // Nearly a twentieth less, and both are 10 % as written.
    expect(cost({ steepestStart_ratio: 0.1 }, { steepestStart_ratio: 0.1049 })).not.toMatch(/a start on/);
    expect(cost({ steepestStart_ratio: 0.293 })).toMatch(/driver a start on 29 % instead of 30 % at most\.$/);
  });
  it("is a speed that is no longer reached, and nothing of one that is not reached at all", () => {
    const { to100kmh_s: _, ...short } = row(100);
    const { to100kmh_s: __, ...free } = row(200);
    expect(said(jobOf(), [short, row(200)])[1]).toMatch(/costs the driver 100 km\/h is no longer reached\.$/);
    expect(said(jobOf(), [short, free])[1]).toMatch(/nothing that is felt\.$/);
  });
  it("is not said where the motor gives no more, or the limit was not tried", () => {
    expect(said(jobOf(), [row(50), row(100)])).toHaveLength(1);
    expect(said(jobOf(), [row(120), row(200)])).toHaveLength(1);
  });
});

it("says what the old engine gave, which it gave at its best speed alone", () => {
  const known = { ...jobOf(), engine: { ratedTorque_Nm: 115 } };
  expect(said(known)[1]).toBe(
    "The old engine gave 115 Nm at its best speed; the motor gives its torque from rest, so the gears see it at every start.",
  );
});

describe("gears in which the shafts take less", () => {
  const driveline = (limits: object): Changes => ({
    driveline: {
      gears: [
        { name: "low", gear_ratio: 4, efficiency_frac: 1 },
        { name: "high", gear_ratio: 1, efficiency_frac: 1 },
      ],
      finalDrive_ratio: 4,
      limits,
      shifting: { kind: "fixed", gear: "high" },
    },
  });
  it("are named with what they see and stand, those in use first", () => {
    // At 100 Nm the propeller shaft sees 400 and 100 Nm; of 80 Nm it takes 20 and 80 at the input.
    expect(said(jobOf(driveline({ propellerShaft_Nm: 80 }))).slice(1)).toEqual([
      "In high that puts 100 Nm on the propeller shaft, which takes 80 Nm: there the motor may give 80 Nm at most.",
      "In low that puts 400 Nm on the propeller shaft, which takes 80 Nm: there the motor may give 20 Nm at most.",
    ]);
  });
  it("name each half-shaft, half of what the axle turns", () => {
    // 100 Nm times 16 is 1600 at the axle in low, 800 on each; 600 Nm are 75 at the input.
    expect(said(jobOf(driveline({ halfShaft_Nm: 600, propellerShaft_Nm: 900 }))).slice(1)).toEqual([
      "In low that puts 800 Nm on each half-shaft, which takes 600 Nm: there the motor may give 75 Nm at most.",
    ]);
  });
  it("are none where they take the limit itself", () => {
    expect(said(jobOf(driveline({ propellerShaft_Nm: 400 })))).toHaveLength(1);
    expect(said(jobOf(driveline({ propellerShaft_Nm: 399 })))).toHaveLength(2);
  });
});

it("asks for a ramp of half a second at least", () => {
  const ramp = (ramp_s: number) => said(bareJob({ motor, controller: { torqueCap_Nm: 100, ramp_s } })).slice(1);
  expect(ramp(0.5)).toEqual([]);
  expect(ramp(0.4)).toEqual([
    "Let full torque come in over 0.5 s to 1 s, now 0.4 s: gears break on shock, not on steady torque.",
  ]);
});
