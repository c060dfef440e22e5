import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { greatestWhere } from "../../../sim/math/halving.ts";
import { balance } from "../../../sim/step/balance.ts";
import { finishInterval } from "../../../sim/step/finishInterval.ts";
import { createInterval } from "../../../sim/step/interval.ts";
import { LIMITS } from "../../../sim/step/limits.ts";
import { prepare } from "../../../sim/step/prepare.ts";
import { beginRoad, createRunContext } from "../../../sim/step/runContext.ts";
import { standStill, step } from "../../../sim/step/step.ts";
import { createTotals } from "../../../sim/step/totals.ts";
import { arbitraryJob, arbitraryTrace } from "../../support/arbitraryJob.ts";
import { bareJob, driven, evenSlope, steadyTrace, traceOf } from "../../support/bareCar.ts";
import { fixedly } from "../../support/fixedly.ts";

const thrust = (newtons: number) => ({ envelope: { kind: "peak" as const, torque_Nm: newtons / 20, power_kW: 2000 } });

describe("a car that its limits hold back", () => {
  it("ends at the speed where the balance holds with the limit just met", () => {
    // 1400 kg, 700 N and nothing that resists: 0.5 m/s each second.
    const { channels } = driven(
      bareJob({ motor: thrust(700) }),
      traceOf([
        [0, 0],
        [1, 36],
        [2, 36],
      ]),
    );
    expect(channels.speed_mps[1]).toBeCloseTo(0.5, 11);
    expect(channels.speed_mps[2]).toBeCloseTo(1, 11);
    expect(channels.wheelForce_N[1]).toBeCloseTo(700, 8);
    expect(LIMITS[channels.limit[1]]).toBe("motor");
  });

  it("does not race to catch up: the target is a speed, and what was missed stays missed", () => {
    const { channels, totals } = driven(
      bareJob({ motor: thrust(700) }),
      traceOf([
        [0, 0],
        [4, 18],
        [20, 18],
      ]),
    );
    for (let i = 1; i < channels.length; i++) expect(channels.speed_mps[i]).toBeLessThanOrEqual(channels.target_mps[i]);
    expect(channels.speed_mps[2]).toBe(5);
    expect(totals.target_m - totals.distance_m).toBeGreaterThan(5);
  });

  it("stops inside the step where even stopping asks too much, and is held there", () => {
    // sin 0.1 on 1400 kg asks 1373.4 N; 700 N are left: it slows by 0.481 m/s², from 0.2 m/s in 0.416 s over 0.0416 m.
    const trace = steadyTrace(0.2, 5, 1, evenSlope(0.1, 1000));
    const { channels, totals } = driven(bareJob({ motor: thrust(700) }), trace);
    const slows_mps2 = (1400 * 9.81 * 0.1 - 700) / 1400;
    expect(channels.speed_mps[1]).toBe(0);
    expect(channels.distance_m[1]).toBeCloseTo((0.2 * 0.2) / (2 * slows_mps2), 9);
    expect(channels.distance_m[5]).toBe(channels.distance_m[1]);
    expect(totals.time_s).toBeCloseTo(5, 12);
    // What stopped it holds it for the rest.
    expect([...channels.limit].map((limit) => LIMITS[limit])).toEqual(["none", ...new Array(5).fill("motor")]);
    expect(totals.limited_s[LIMITS.indexOf("motor")]).toBeCloseTo(5, 12);
  });

  it("does not drive off where the hill asks more than it has, and says what held it", () => {
    const trace = steadyTrace(5, 10, 1, evenSlope(0.1, 1000));
    const at = { ...trace, speed_mps: trace.speed_mps.map((speed, i) => (i === 0 ? 0 : speed)) };
    const { totals } = driven(bareJob({ motor: thrust(700), accessories: { standing_W: 100 } }), at);
    expect(totals.distance_m).toBe(0);
    expect(totals.limited_s[LIMITS.indexOf("motor")]).toBeCloseTo(10, 12);
    expect(totals.ledger.accessories_J).toBeCloseTo(1000, 9);
    expect(totals.ledger.motor_J).toBe(0);
  });

  it("has no torque on the motor while the brakes hold it, neither on a hill nor where its pack cannot feed the idling motor", () => {
    const idling = { kind: "fourTerm" as const, copper_coeff: 0, iron_coeff: 0, windage_coeff: 0, constant_W: 3000 };
    const jobs = [
      bareJob({ motor: thrust(700) }),
      bareJob({
        vehicle: { tyres: { loadedRadius_mm: 300, rolling_coeff: 0.01, followsTemperature: false } },
        motor: { loss: idling },
        module: { discharge: { continuous_A: 2, peak_A: 2, peak_s: 0 } },
      }),
    ];
    const sines = [0.1, 0];
    for (const [i, job] of jobs.entries()) {
      const trace = steadyTrace(5, 3, 1, evenSlope(sines[i], 1000));
      const { channels, totals } = driven(job, { ...trace, speed_mps: Float64Array.of(0, 5, 5, 5) });
      expect([...channels.motorTorque_Nm]).toEqual([0, 0, 0, 0]);
      expect(totals.motorPeak_Nm).toBe(0);
      expect([...channels.distance_m]).toEqual([0, 0, 0, 0]);
    }
  });

  it("is said to be held by what keeps it from creeping, not by what the target would have met first", () => {
    const trace = steadyTrace(25, 10, 1, evenSlope(0.1, 1000));
    const at = { ...trace, speed_mps: trace.speed_mps.map((speed, i) => (i === 0 ? 0 : speed)) };
    // 25 m/s in a second would ask 35 kN, more than the tyres hold; the hill alone is already too much for 700 N.
    const { totals } = driven(
      bareJob({
        motor: thrust(700),
        vehicle: { balance: { wheelbase_mm: 2500, gravityHeight_mm: 500, frontShare_frac: 0.5 } },
        environment: { grip_coeff: 0.8 },
      }),
      at,
    );
    expect(totals.distance_m).toBe(0);
    expect(totals.limited_s[LIMITS.indexOf("motor")]).toBeCloseTo(10, 12);
  });

  it("goes no faster than the motor turns in its gear", () => {
    const { channels } = driven(bareJob({ motor: { maxSpeed_rpm: 3000, rollBack_rpm: 200 } }), steadyTrace(20, 10, 1));
    // 3000 rpm are 314.16 rad/s, at 20 turns a metre 15.708 m/s.
    for (let i = 1; i < channels.length; i++) expect(channels.speed_mps[i]).toBeLessThanOrEqual((Math.PI * 100) / 20);
    expect(LIMITS[channels.limit[5]]).toBe("motor");
  });

  it.each([1, 200])(
    "settles in a roll-back band of %i rpm at its top speed instead of swinging around it",
    (rollBack_rpm) => {
      const resisting = {
        roadLoad: { kind: "coastDown" as const, f0_N: 300, f1_Npkmh: 0, f2_Npkmh2: 0.03, mass_kg: 1400 },
      };
      const { channels } = driven(
        bareJob({ vehicle: resisting, motor: { ...thrust(3000), maxSpeed_rpm: 3000, rollBack_rpm } }),
        steadyTrace(20, 60, 1),
      );
      for (let i = 30; i < 60; i++) expect(channels.speed_mps[i + 1]).toBeCloseTo(channels.speed_mps[i], 6);
      expect(channels.speed_mps[60]).toBeLessThan((Math.PI * 100) / 20);
      // Thrust left over in the band is what the road asks: 3000 N times the share of the band below the top.
      const below = ((Math.PI * 100) / 20 - channels.speed_mps[60]) / ((Math.PI * rollBack_rpm) / 30 / 20);
      expect(3000 * below).toBeCloseTo(channels.wheelForce_N[60], 3);
    },
  );
});

it("is found at the end speed that halving finds between rest and the target, whatever holds the car back", () => {
  let heldBack = 0;
  fc.assert(
    fc.property(arbitraryJob, arbitraryTrace, ({ packs, ...rest }, trace) => {
      const model = prepare({ packs, ...rest }, packs[0]);
      const context = createRunContext(model, model.pack.ceiling_frac);
      const { state, interval } = context;
      beginRoad(context, undefined, 0);
      const totals = createTotals(state);
      for (let i = 1; i < trace.time_s.length && !totals.reachedFloor; i++) {
        const target_mps = trace.speed_mps[i];
        step(context, target_mps, 1);
        const { end_mps, limit, moving_s } = interval;
        if (limit !== 0 && moving_s === 1 && end_mps > 0 && end_mps < target_mps) {
          const reaches = (speed_mps: number) => balance(context, speed_mps, 1) <= 0;
          const top_mps = Math.min(target_mps, model.gears[context.start.gear].top_mps);
          // Rounding of speeds of some ten metres a second, over the sixty halvings.
          expect(Math.abs(greatestWhere(0, top_mps, reaches) - end_mps)).toBeLessThan(2e-12);
          heldBack++;
          step(context, target_mps, 1);
        }
        if (moving_s > 0) finishInterval(context, totals, moving_s);
        if (moving_s < 1) {
          standStill(context);
          finishInterval(context, totals, 1 - moving_s);
        }
      }
    }),
    fixedly(60),
  );
  expect(heldBack).toBeGreaterThan(500);
});

describe("a tie of limits goes to the first of", () => {
  // Every limit at 700 N of thrust: 35 Nm at the motor.
  const all = {
    vehicle: { balance: { wheelbase_mm: 2500, gravityHeight_mm: 50, frontShare_frac: 0.5 } },
    driveline: { limits: { gearboxInput_Nm: 35 } },
    controller: { torqueCap_Nm: 35, regen: { isOn: false } },
    motor: thrust(700),
  };
  const limitOf = (changes: Parameters<typeof bareJob>[0]) =>
    LIMITS[
      driven(
        bareJob(changes),
        traceOf([
          [0, 0],
          [1, 36],
        ]),
      ).channels.limit[1]
    ];

  it("grip before driveline", () => {
    expect(limitOf({ ...all, environment: { grip_coeff: 0.05 } })).toBe("grip");
  });
  it("driveline before motor", () => expect(limitOf(all)).toBe("driveline"));
  it("motor before controller", () => expect(limitOf({ ...all, driveline: {} })).toBe("motor"));
  it("controller last of these", () => expect(limitOf({ ...all, driveline: {}, motor: {} })).toBe("controller"));
});

describe("at rest", () => {
  it("an interval has nothing left of whatever was before it: no speed, no force, no slope, only what the accessories draw", () => {
    const job = bareJob({ accessories: { standing_W: 200 } });
    const context = createRunContext(prepare(job, job.packs[0]), 0.5);
    beginRoad(context, undefined, 0);
    const { interval } = context;
    for (const key of Object.keys(interval)) Object.assign(interval, { [key]: 7 });
    step(context, 0, 1);
    // Not of the interval itself: the tyres' grip, asked only under way, and how much of it was driven, which is settled after it.
    const asked = { grip_N: 0, driven_frac: 0, driven_s: 0, driven_m: 0 };
    const electrical = { terminal_W: 200, current_A: expect.closeTo(0.5, 6), terminal_V: expect.closeTo(400, 6) };
    const fresh = { ...createInterval(), ...electrical, resistance_ohm: expect.closeTo(1e-9, 12) };
    expect({ ...interval, ...asked }).toEqual(fresh);
  });

  it("nothing turns and nothing is lost, the accessories go on", () => {
    const { channels, totals } = driven(
      bareJob({
        motor: { loss: { kind: "fourTerm", copper_coeff: 0.3, iron_coeff: 0.01, windage_coeff: 0, constant_W: 600 } },
        driveline: { noLoadDrag_Nm: 3 },
        accessories: { standing_W: 174, dcdcEfficiency_frac: 0.87 },
      }),
      steadyTrace(0, 10, 1),
    );
    expect(channels.wheelForce_N[5]).toBe(0);
    expect(channels.motorTorque_Nm[5]).toBe(0);
    expect(totals.ledger.motor_J).toBe(0);
    expect(totals.ledger.driveline_J).toBe(0);
    expect(totals.ledger.accessories_J).toBeCloseTo(2000, 9);
  });
});

describe("gears", () => {
  const shifting = {
    gears: [
      { name: "low", gear_ratio: 2, efficiency_frac: 1 },
      { name: "high", gear_ratio: 1, efficiency_frac: 1 },
    ],
    shifting: { kind: "bySpeed" as const, gears: ["low", "high"], up_kmh: [36] },
  };
  it("change by the mean of the speed at the start and the target", () => {
    // Means of 9.5 and 10.5 m/s on either side of 10 m/s.
    const { channels } = driven(
      bareJob({ driveline: shifting }),
      traceOf([
        [0, 9 * 3.6],
        [1, 10 * 3.6],
        [2, 11 * 3.6],
      ]),
    );
    expect([...channels.gear.slice(1, 3)]).toEqual([0, 1]);
    expect(channels.motorSpeed_radps[1]).toBeCloseTo(9.5 * 40, 9);
    expect(channels.motorSpeed_radps[2]).toBeCloseTo(10.5 * 20, 9);
  });
});

it("stays in its gear where the speed dithers round a change within ten seconds", () => {
  const job = bareJob({
    driveline: {
      gears: [
        { name: "low", gear_ratio: 2, efficiency_frac: 1 },
        { name: "high", gear_ratio: 1, efficiency_frac: 1 },
      ],
      shifting: { kind: "bySpeed", gears: ["low", "high"], up_kmh: [36] },
    },
    controller: { regen: { isOn: true } },
  });
  // Means of 10.2 and 9.8 m/s in turn, of which the second would be a change back.
  const kmh = [35, 38.44, 32.12, 38.44].map((speed_kmh, i) => [i, speed_kmh] as const);
  expect([...driven(job, traceOf(kmh), 0.5).channels.gear]).toEqual([0, 1, 1, 1]);
});

describe("torque at the motor", () => {
  const lossy = { gears: [{ name: "only", gear_ratio: 1, efficiency_frac: 0.9 }], noLoadDrag_Nm: 2 };
  const torqueOf = (accel_mps2: number, changes: Parameters<typeof bareJob>[0] = {}) =>
    driven(
      bareJob({
        driveline: lossy,
        controller: { regen: { isOn: true, fadeNone_kmh: 0, fadeFull_kmh: 0 } },
        ...changes,
      }),
      traceOf([
        [0, 36],
        [1, 36 + 3.6 * accel_mps2],
      ]),
      0.5,
    ).channels.motorTorque_Nm[1];

  // T = F r / (G eta) + drag driving, F eta r / G + drag on the overrun; 20 N of force a newton metre.
  it("is force over ratio and efficiency plus the box's drag when driving", () => {
    expect(torqueOf(1)).toBeCloseTo(1400 / 20 / 0.9 + 2, 9);
  });
  it("is force times efficiency over ratio plus the box's drag on the overrun", () => {
    expect(torqueOf(-1)).toBeCloseTo((-1400 / 20) * 0.9 + 2, 9);
  });
  it("speeds the rotor up by the ratio once", () => {
    expect(torqueOf(1, { motor: { rotorInertia_kgm2: 0.1 } })).toBeCloseTo(1400 / 20 / 0.9 + 2 + 0.1 * 20, 9);
  });
  it("leaves the rotor out where one factor stands for all that turns", () => {
    const factor = {
      vehicle: { inertia: { kind: "massFactor" as const, mass_ratio: 1.03 } },
      motor: { rotorInertia_kgm2: 0.1 },
    };
    expect(torqueOf(1, factor)).toBeCloseTo((1.03 * 1400) / 20 / 0.9 + 2, 9);
  });
});
