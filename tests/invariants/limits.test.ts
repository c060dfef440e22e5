import fc from "fast-check";
import { expect, it } from "vitest";
import type { Job } from "../../shared/job/job.ts";
import { envelopeTorque_Nm } from "../../sim/motor/envelope.ts";
import { type Channels, createChannels } from "../../sim/step/channels.ts";
import type { Model } from "../../sim/step/model.ts";
import { prepare } from "../../sim/step/prepare.ts";
import { run } from "../../sim/step/run.ts";
import { resample } from "../../sim/trace/resample.ts";
import type { Trace } from "../../sim/trace/trace.ts";
import { gripForce_N } from "../../sim/vehicle/grip.ts";
import { arbitraryJob, arbitraryTrace } from "../support/arbitraryJob.ts";
import { fixedly } from "../support/fixedly.ts";

/** What one interval of a recorded run did, from its row and the one before. */
interface Row {
  readonly i: number;
  readonly dt_s: number;
  readonly before_mps: number;
  readonly after_mps: number;
  readonly mean_mps: number;
  readonly moved_m: number;
}

/** A search ends on the side that keeps the limit, so what is left is rounding: of a power, in watts, some 1e-10 of it. */
const ROUNDING = 1e-9;

/** Looks at every interval in which the car moved from the first moment to the last; returns how many there were. */
function everyRow(
  job: Job,
  road: Trace,
  look: (row: Row, channels: Channels, model: Model) => readonly (readonly [string, number, number])[],
): number {
  const model = prepare(job, job.packs[0]);
  // A row is one interval only where its samples are at most a second apart.
  const trace = road.time_s[1] > 1 ? resample(road, 1) : road;
  const channels = createChannels(trace.time_s.length);
  const { totals } = run(model, trace, channels);
  const last = totals.reachedFloor ? channels.length - 2 : channels.length - 1;
  let rows = 0;
  for (let i = 1; i <= last; i++) {
    const dt_s = trace.time_s[i] - trace.time_s[i - 1];
    const before_mps = channels.speed_mps[i - 1];
    const after_mps = channels.speed_mps[i];
    const mean_mps = 0.5 * (before_mps + after_mps);
    const moved_m = channels.distance_m[i] - channels.distance_m[i - 1];
    // Where the car stopped inside the interval, its row holds what was while it moved and its time is not known.
    if (mean_mps === 0 || moved_m < mean_mps * dt_s * (1 - 1e-6)) continue;
    rows++;
    for (const [what, found, limit] of look({ i, dt_s, before_mps, after_mps, mean_mps, moved_m }, channels, model)) {
      const allowed = limit + ROUNDING * Math.max(1, Math.abs(limit));
      if (!(found <= allowed)) throw new Error(`row ${i}: ${what} ${found}, ${limit} allowed`);
    }
  }
  return rows;
}

/** Drives any jobs over any roads; the looks must have had rows to look at. */
function holdsEverywhere(look: Parameters<typeof everyRow>[2], numRuns = 150): void {
  let rows = 0;
  fc.assert(
    fc.property(arbitraryJob, arbitraryTrace, (job, trace) => {
      rows += everyRow(job, trace, look);
    }),
    fixedly(numRuns),
  );
  expect(rows).toBeGreaterThan(10 * numRuns);
}

const clamped = (part: number) => Math.min(1, Math.max(0, part));

const fadeAt = ({ controller }: Model, mean_mps: number) =>
  Math.min(
    1,
    Math.max(
      0,
      controller.fadeFull_mps > controller.fadeNone_mps
        ? (mean_mps - controller.fadeNone_mps) / (controller.fadeFull_mps - controller.fadeNone_mps)
        : mean_mps > controller.fadeNone_mps
          ? 1
          : 0,
    ),
  );

it("never goes faster than asked, never backwards, never past the motor's top speed", () => {
  holdsEverywhere(({ after_mps }, _channels, model) => [
    ["speed below none", -after_mps, 0],
    ["motor speed", after_mps * Math.min(...model.gears.map((gear) => gear.motor_radpm)), model.motor.max_radps],
  ]);
  fc.assert(
    fc.property(arbitraryJob, arbitraryTrace, (job, trace) => {
      const channels = createChannels(trace.time_s.length);
      const { totals } = run(prepare(job, job.packs[0]), trace, channels);
      for (let i = 1; i < channels.length; i++) {
        expect(channels.speed_mps[i]).toBeLessThanOrEqual(channels.target_mps[i]);
        expect(channels.distance_m[i]).toBeGreaterThanOrEqual(channels.distance_m[i - 1]);
      }
      expect(totals.distance_m).toBeLessThanOrEqual(totals.target_m * (1 + 1e-12));
    }),
    fixedly(100),
  );
});

it("never asks more of the pack than its peak current, its lowest and its highest voltage", () => {
  let hot = 0;
  holdsEverywhere(({ i }, { battery_A, battery_V, pack_K }, { pack }) => {
    const { derateFrom_K, derateTo_K } = pack.heat;
    const cool_frac =
      derateTo_K < Number.POSITIVE_INFINITY ? clamped((derateTo_K - pack_K[i - 1]) / (derateTo_K - derateFrom_K)) : 1;
    if (cool_frac < 1) hot++;
    return [
      ["current drawn", battery_A[i], cool_frac * pack.discharge.peak_A * (1 + 1e-6) + 1e-6],
      ["current put back", -battery_A[i], cool_frac * pack.charge.peak_A * (1 + 1e-6) + 1e-6],
      // 1e-6 A: below what a difference of states of charge can tell from none.
      ["lowest voltage, delivering", battery_A[i] > 1e-6 ? -battery_V[i] : -pack.min_V, -pack.min_V],
      ["highest voltage, charging", battery_A[i] < -1e-6 ? battery_V[i] : pack.max_V, pack.max_V],
    ];
  });
  expect(hot).toBeGreaterThan(100);
});

it("never spends more of a peak current than its seconds allow", () => {
  let spent = 0;
  fc.assert(
    fc.property(arbitraryJob, arbitraryTrace, (job, trace) => {
      const model = prepare(job, job.packs[0]);
      const channels = createChannels(trace.time_s.length);
      const { totals } = run(model, trace, channels);
      const { continuous_A, budget_A2s } = model.pack.discharge;
      let used_A2s = 0;
      for (let i = 1; i < channels.length - (totals.reachedFloor ? 1 : 0); i++) {
        const drawn_A = Math.max(0, channels.battery_A[i]);
        const dt_s = trace.time_s[i] - trace.time_s[i - 1];
        used_A2s = Math.max(0, used_A2s + (drawn_A * drawn_A - continuous_A * continuous_A) * dt_s);
        expect(used_A2s).toBeLessThanOrEqual(budget_A2s + 1e-6 * (budget_A2s + continuous_A * continuous_A));
        if (used_A2s > 0.5 * budget_A2s && budget_A2s > 0) spent++;
      }
    }),
    fixedly(150),
  );
  expect(spent).toBeGreaterThan(50);
});

it("never fills the pack past its ceiling nor drains it past its floor", () => {
  fc.assert(
    fc.property(arbitraryJob, arbitraryTrace, fc.integer({ min: 0, max: 20 }), (job, trace, below) => {
      const model = prepare(job, job.packs[0]);
      const { ceiling_frac, floor_frac } = model.pack;
      const start_frac = ceiling_frac - (ceiling_frac - floor_frac) * 1e-3 * below;
      const channels = createChannels(trace.time_s.length);
      run(model, trace, channels, start_frac);
      for (let i = 0; i < channels.length; i++) {
        expect(channels.soc_frac[i]).toBeLessThanOrEqual(ceiling_frac + 1e-14);
        expect(channels.soc_frac[i]).toBeGreaterThanOrEqual(floor_frac);
      }
    }),
    fixedly(150),
  );
});

it("never asks more torque than the envelope at the row's own voltage, warm as the motor is, nor more than the controller lets through", () => {
  holdsEverywhere(({ i, mean_mps }, channels, model) => {
    const { motor, controller } = model;
    const torque_Nm = channels.motorTorque_Nm[i];
    const speed_radps = channels.motorSpeed_radps[i];
    const cool_frac =
      1 -
      Math.min(
        1,
        Math.max(
          0,
          (channels.motor_K[i - 1] - motor.heat.derateFrom_K) / (motor.heat.derateTo_K - motor.heat.derateFrom_K),
        ) || 0,
      );
    const envelope_Nm = envelopeTorque_Nm(motor.envelope, speed_radps, channels.battery_V[i]) * cool_frac;
    const fade_frac = fadeAt(model, mean_mps);
    const controller_W = channels.controller_W[i];
    const faded = (limit: number) => (fade_frac > 0 ? fade_frac * limit : 0);
    return [
      ["driving torque over the envelope", torque_Nm, envelope_Nm],
      ["driving torque over the controller", torque_Nm, controller.torque_Nm],
      ["braking torque over the envelope", -torque_Nm, fade_frac * envelope_Nm],
      ["braking torque over the regen limit", -torque_Nm, faded(Math.min(controller.regen_Nm, controller.torque_Nm))],
      ["controller's power", torque_Nm > 0 ? controller_W : 0, controller.power_W],
      ["controller's current", torque_Nm > 0 ? controller_W / channels.battery_V[i] : 0, controller.current_A],
      ["regen power", torque_Nm < 0 ? -controller_W : 0, faded(controller.regen_W)],
      ["regen current", torque_Nm < 0 ? -controller_W / channels.battery_V[i] : 0, faded(controller.regen_A)],
    ];
  });
});

it("never asks more of the old driveline than it stands, at the gearbox input, either way", () => {
  holdsEverywhere(({ i, dt_s, before_mps, after_mps }, channels, model) => {
    const gear = model.gears[channels.gear[i]];
    const rotor_Nm = model.motor.rotorInertia_kgm2 * gear.motor_radpm * ((after_mps - before_mps) / dt_s);
    const input_Nm = channels.motorTorque_Nm[i] - rotor_Nm;
    const isDriving = channels.motorTorque_Nm[i] > 0;
    return [
      ["driving", isDriving ? input_Nm : 0, gear.drive_Nm],
      ["overrun", channels.motorTorque_Nm[i] < 0 ? -input_Nm : 0, Math.max(0, gear.overrun_Nm)],
    ];
  });
});

it("never asks more of the driven tyres than they hold, driving or braking by the motor", () => {
  let held = 0;
  holdsEverywhere(({ i, dt_s, before_mps, after_mps }, channels, { grip }) => {
    if (grip === undefined) return [];
    held++;
    const grade = channels.grade_ratio[i];
    const cos = 1 / Math.sqrt(1 + grade * grade);
    const most_N = gripForce_N(grip, (after_mps - before_mps) / dt_s, grade * cos, cos);
    const driven_N = channels.wheelForce_N[i] - channels.brakeForce_N[i];
    const byMotor = channels.motorTorque_Nm[i];
    return [
      ["driving", byMotor > 0 ? driven_N : 0, most_N],
      ["braking", byMotor < 0 ? -driven_N : 0, most_N],
    ];
  });
  expect(held).toBeGreaterThan(1000);
});

it("brakes by friction only, and never by the motor below the speed where regen fades to none", () => {
  let slow = 0;
  holdsEverywhere(({ i, mean_mps }, channels, model) => {
    if (mean_mps <= model.controller.fadeNone_mps) slow++;
    return [
      ["friction that pushes", channels.brakeForce_N[i], 0],
      ["regen below its speed", mean_mps <= model.controller.fadeNone_mps ? -channels.motorTorque_Nm[i] : 0, 0],
    ];
  });
  expect(slow).toBeGreaterThan(50);
});
