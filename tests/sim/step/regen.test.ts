import { describe, expect, it } from "vitest";
import { bareJob, type Changes, driven, traceOf } from "../../support/bareCar.ts";

const on = { isOn: true, fadeNone_kmh: 0, fadeFull_kmh: 0 };

/** One second of braking at 1 m/s² from 10.5 to 9.5 m/s: 1400 N at the tyres, 70 Nm at 200 rad/s. */
function braked(regen: Record<string, unknown>, changes: Changes = {}, startSoc_frac = 0.5) {
  const { channels, totals } = driven(
    bareJob({ ...changes, controller: { regen: { ...on, ...regen }, ...changes.controller } }),
    traceOf([
      [0, 10.5 * 3.6],
      [1, 9.5 * 3.6],
    ]),
    startSoc_frac,
  );
  return {
    motor_Nm: channels.motorTorque_Nm[1],
    brake_N: channels.brakeForce_N[1],
    wheel_N: channels.wheelForce_N[1],
    controller_W: channels.controller_W[1],
    battery_A: channels.battery_A[1],
    battery_V: channels.battery_V[1],
    regen_J: totals.regen_J,
    endSpeed_mps: channels.speed_mps[1],
  };
}

it("does it all by the motor where nothing limits it", () => {
  const { motor_Nm, brake_N, regen_J } = braked({});
  expect(motor_Nm).toBeCloseTo(-70, 9);
  expect(brake_N).toBe(0);
  expect(regen_J).toBeCloseTo(14_000, 6);
});

it("leaves all to the friction brakes where it is off, or the motor cannot", () => {
  for (const found of [braked({ isOn: false }), braked({}, { motor: { canRegenerate: false } })]) {
    expect(found.motor_Nm).toBeCloseTo(0, 12);
    expect(found.brake_N).toBeCloseTo(-1400, 9);
    expect(found.regen_J).toBe(0);
  }
});

describe("holds each limit that is given, friction taking the rest", () => {
  it("in newtons at the tyres", () => expect(braked({ wheelForce_N: 600 }).brake_N).toBeCloseTo(-800, 8));
  it("in newton metres at the shaft", () => expect(braked({ torque_Nm: 25 }).motor_Nm).toBeCloseTo(-25, 9));
  it("in kilowatts at the controller's DC side", () =>
    expect(braked({ power_kW: 5 }).controller_W).toBeCloseTo(-5000, 5));
  it("in amperes at the controller's DC side", () => {
    const { controller_W, battery_V } = braked({ current_A: 10 });
    expect(controller_W / battery_V).toBeCloseTo(-10, 7);
  });
  it("by the controller's torque cap", () =>
    expect(braked({}, { controller: { torqueCap_Nm: 30, regen: on } }).motor_Nm).toBeCloseTo(-30, 9));
  it("by the pack's charging current", () =>
    expect(braked({}, { module: { charge: { continuous_A: 20, peak_A: 20, peak_s: 0 } } }).battery_A).toBeCloseTo(
      -20,
      6,
    ));
  it("by the pack's highest voltage", () => {
    const found = braked(
      {},
      { module: { resistance: { soc_frac: [0, 1], module_mohm: [1000, 1000] }, cellMax_V: 4.1 } },
    );
    expect(found.battery_V).toBeCloseTo(410, 6);
    expect(found.brake_N).toBeLessThan(-100);
  });
  it("by what the old gearbox stands on the overrun", () =>
    expect(braked({}, { driveline: { limits: { gearboxInput_Nm: 40 } } }).motor_Nm).toBeCloseTo(-40, 9));
  it("by the grip of the driven axle", () => {
    const found = braked(
      {},
      {
        vehicle: { balance: { wheelbase_mm: 2500, gravityHeight_mm: 500, frontShare_frac: 0.5 } },
        environment: { grip_coeff: 0.15 },
      },
    );
    expect(found.wheel_N - found.brake_N).toBeCloseTo(-0.15 * 1400 * (9.81 * 0.5 - 0.2 * 1), 7);
  });
});

it("fades every limit linearly between two speeds, and there is none at and below the lower", () => {
  // Mean speed 36 km/h, half way between 26 and 46.
  expect(braked({ torque_Nm: 40, fadeNone_kmh: 26, fadeFull_kmh: 46 }).motor_Nm).toBeCloseTo(-20, 9);
  expect(braked({ power_kW: 8, fadeNone_kmh: 26, fadeFull_kmh: 46 }).controller_W).toBeCloseTo(-4000, 5);
  expect(braked({ torque_Nm: 40, fadeNone_kmh: 36, fadeFull_kmh: 46 }).motor_Nm).toBeCloseTo(0, 12);
});

it("fades the motor's own envelope as well", () => {
  // 8 kW at 200 rad/s are 40 Nm; half way in the fade 20.
  const envelope = { kind: "peak" as const, torque_Nm: 300, power_kW: 8 };
  expect(braked({}, { motor: { envelope } }).motor_Nm).toBeCloseTo(-40, 7);
  expect(braked({ fadeNone_kmh: 26, fadeFull_kmh: 46 }, { motor: { envelope } }).motor_Nm).toBeCloseTo(-20, 7);
});

it("lets the old gearbox's input pass motor torque less the rotor's inertia, whatever the box itself drags", () => {
  const found = braked(
    {},
    { driveline: { noLoadDrag_Nm: 2, limits: { gearboxInput_Nm: 40 } }, motor: { rotorInertia_kgm2: 0.2 } },
  );
  // The rotor slows by 20 rad/s² and pushes with 4 Nm.
  expect(found.motor_Nm + 4).toBeCloseTo(-40, 9);
});

it("gives no torque where the box's own drag is more than the old shaft behind it carries", () => {
  expect(braked({}, { driveline: { noLoadDrag_Nm: 10, limits: { propellerShaft_Nm: 3 } } }).motor_Nm).toBe(0);
});

it("lets the propeller shaft behind the box carry the box's drag as well", () => {
  const found = braked(
    {},
    { driveline: { noLoadDrag_Nm: 2, limits: { propellerShaft_Nm: 40 } }, motor: { rotorInertia_kgm2: 0.2 } },
  );
  expect(found.motor_Nm + 4 - 2).toBeCloseTo(-40, 9);
});

it("puts nothing into a pack at its ceiling, but may feed the accessories", () => {
  const full = braked({}, { accessories: { standing_W: 1000 }, pack: { ceiling_frac: 0.9 } }, 0.9);
  expect(full.controller_W).toBeCloseTo(-1000, 5);
  expect(full.battery_A).toBeCloseTo(0, 8);
});

it("fills the pack to its ceiling and no further inside one interval", () => {
  const { battery_A } = braked({}, { module: { capacity_Ah: 10 }, pack: { ceiling_frac: 0.9 } }, 0.9 - 1e-4);
  // 1e-4 of 36 000 C in one second.
  expect(battery_A).toBeCloseTo(-3.6, 6);
});

it("puts nothing into cells colder than they may be charged, and half in the middle of the band", () => {
  const cold = (pack_degC: number) =>
    braked(
      {},
      {
        module: { coldCharge: { none_degC: 0, full_degC: 10 }, charge: { continuous_A: 20, peak_A: 20, peak_s: 0 } },
        environment: { pack_degC },
      },
    ).battery_A;
  expect(cold(-5)).toBeCloseTo(0, 8);
  expect(cold(5)).toBeCloseTo(-10, 6);
  expect(cold(15)).toBeCloseTo(-20, 6);
});

it("switches the controller off where the pack cannot feed its idle losses, and still brakes to the target", () => {
  const { motor_Nm, controller_W, endSpeed_mps, battery_A } = braked(
    { isOn: false },
    {
      motor: { loss: { kind: "fourTerm", copper_coeff: 0.1, iron_coeff: 0, windage_coeff: 0, constant_W: 3000 } },
      module: { discharge: { continuous_A: 2, peak_A: 2, peak_s: 0 } },
      accessories: { standing_W: 400 },
    },
  );
  expect(motor_Nm).toBe(0);
  expect(controller_W).toBe(0);
  expect(battery_A).toBeCloseTo(1, 6);
  expect(endSpeed_mps).toBeCloseTo(9.5, 12);
});

it("builds braking up from nothing to the first limit, though a stronger one would burn more and give the pack as little", () => {
  // 200 T - 3 T² watts come back: 1 kW at (200 - √28 000)/6 = 5.44 Nm and again at 61.2 Nm; the envelope ends at 13 kW/200 = 65 Nm.
  const loss = { kind: "fourTerm" as const, copper_coeff: 3, iron_coeff: 0, windage_coeff: 0, constant_W: 0 };
  const envelope = { kind: "peak" as const, torque_Nm: 100, power_kW: 13 };
  const { motor_Nm, brake_N } = braked({ power_kW: 1 }, { motor: { loss, envelope } });
  expect(motor_Nm).toBeCloseTo(-(200 - Math.sqrt(28_000)) / 6, 8);
  expect(brake_N).toBeCloseTo(-1400 + (20 * (200 - Math.sqrt(28_000))) / 6, 6);
});

it("takes a torque that breaks nothing as it is asked", () => {
  // The same motor asked for 70 Nm, at which it burns more than the shaft brings: the pack gives 700 W to its own braking.
  const loss = { kind: "fourTerm" as const, copper_coeff: 3, iron_coeff: 0, windage_coeff: 0, constant_W: 0 };
  const { motor_Nm, controller_W } = braked({ power_kW: 1 }, { motor: { loss } });
  expect(motor_Nm).toBeCloseTo(-70, 9);
  expect(controller_W).toBeCloseTo(700, 6);
});

it("holds a limit that is broken by little as well as one that is broken by much", () => {
  expect(braked({ power_kW: 13.9 }).controller_W).toBeCloseTo(-13_900, 5);
});

it("fades the controller's amperes as well as its watts and newton metres", () => {
  const { controller_W, battery_V } = braked({ current_A: 20, fadeNone_kmh: 26, fadeFull_kmh: 46 });
  expect(controller_W / battery_V).toBeCloseTo(-10, 7);
});

it("lets heat take torque off the motor when it brakes as when it drives", () => {
  const heat = { capacity_kJpK: 2000, cooling_WpK: 0, derateFrom_degC: 20, derateTo_degC: 60 };
  const motor = { envelope: { kind: "peak" as const, torque_Nm: 100, power_kW: 2000 }, heat };
  // 40 degC, half way.
  expect(braked({}, { motor, environment: { temperature_degC: 40 } }).motor_Nm).toBeCloseTo(-50, 7);
});

describe("with the voltage rising towards the controller's highest", () => {
  const stiff = (limits: Record<string, number>, motor: Changes["motor"] = {}) =>
    braked({}, { motor, controller: { ...limits, regen: on } }).motor_Nm;

  it("takes a share of its torque by how far the voltage lies in the band below", () => {
    // 400 V: three quarters of the way from 250 to 450.
    expect(stiff({ rollBackAbove_V: 250, max_V: 450, torqueCap_Nm: 80 })).toBeCloseTo(-20, 3);
  });
  it("takes a share of the motor's peak torque where that is less", () => {
    const envelope = { kind: "peak" as const, torque_Nm: 100, power_kW: 2000 };
    expect(stiff({ rollBackAbove_V: 250, max_V: 450 }, { envelope })).toBeCloseTo(-25, 3);
  });
  it("takes all at the highest voltage and nothing above it where there is no band", () => {
    expect(stiff({ max_V: 401 })).toBeCloseTo(-70, 9);
    expect(stiff({ max_V: 399 })).toBeCloseTo(0, 3);
  });
});

describe("beside the motor", () => {
  const driveline = { gears: [{ name: "only", gear_ratio: 1, efficiency_frac: 0.8 }], noLoadDrag_Nm: 2 };

  it("drag in the box brakes first, so that the motor does the less", () => {
    // 1400 N at the tyres are 1400 x 0.8 / 20 = 56 Nm at the input, of which the box takes 2.
    const { motor_Nm, brake_N } = braked({}, { driveline });
    expect(motor_Nm).toBeCloseTo(-54, 9);
    expect(brake_N).toBe(0);
  });
  it("friction has nothing to do, to the last digit, where the motor does it all", () => {
    for (let efficiency_frac = 0.81; efficiency_frac < 0.99; efficiency_frac += 0.013) {
      const gears = [{ name: "only", gear_ratio: 1.37, efficiency_frac }];
      const { brake_N } = braked({}, { driveline: { gears, noLoadDrag_Nm: 1.7 } });
      expect(brake_N).toBe(0);
    }
  });
  it("friction takes what motor, box and meshes leave", () => {
    // 25 and 2 Nm at the input slow the car with 27 x 20 / 0.8 = 675 N.
    const { motor_Nm, brake_N } = braked({ torque_Nm: 25 }, { driveline });
    expect(motor_Nm).toBeCloseTo(-25, 9);
    expect(brake_N).toBeCloseTo(-725, 9);
  });
  it("the rotor gives its own momentum back, which the motor takes as well", () => {
    // 20 rad/s² on 0.3 kg m² push with 6 Nm.
    const found = braked({ torque_Nm: 25 }, { motor: { rotorInertia_kgm2: 0.3 } });
    expect(found.motor_Nm).toBeCloseTo(-25, 9);
    expect(found.brake_N).toBeCloseTo(-1400 + (25 - 6) * 20, 8);
  });
  it("the driven tyres pass no more than their grip to motor and box together", () => {
    const { motor_Nm } = braked(
      {},
      {
        vehicle: { balance: { wheelbase_mm: 2500, gravityHeight_mm: 500, frontShare_frac: 0.5 } },
        environment: { grip_coeff: 0.15 },
        driveline,
        motor: { rotorInertia_kgm2: 0.3 },
      },
    );
    const grip_N = 0.15 * 1400 * (9.81 * 0.5 - 0.2 * 1);
    // The box's 2 Nm help, the rotor's 6 Nm push.
    expect(motor_Nm).toBeCloseTo(-((grip_N * 0.8) / 20 - 2 + 6), 8);
  });
});

it("names no limit for what the motor may not brake: friction is always there", () => {
  const { channels } = driven(
    bareJob({ controller: { regen: { ...on, torque_Nm: 5 } } }),
    traceOf([
      [0, 36],
      [1, 30],
    ]),
    0.5,
  );
  expect(channels.limit[1]).toBe(0);
});

it("ends its search on the side that keeps the limit, to the last digit", () => {
  for (let power_kW = 1; power_kW < 13; power_kW += 0.7) {
    const { controller_W } = braked({ power_kW });
    expect(controller_W).toBeGreaterThanOrEqual(-1000 * power_kW);
    expect(controller_W).toBeLessThan(-1000 * power_kW + 1e-5);
  }
});
