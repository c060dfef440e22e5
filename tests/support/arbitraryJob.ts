import fc from "fast-check";
import type * as z from "zod";
import type { Job } from "../../shared/job/job.ts";
import { readJob } from "../../shared/job/readJob.ts";
import { MPS_PER_KMH } from "../../shared/units.ts";
import type { Profile, Trace } from "../../sim/trace/trace.ts";

type Written = z.input<typeof Job>;

/** A number between two bounds, one in ten of them a bound itself: with more, hardly any car would be able to drive off. */
function real(min: number, max: number) {
  const within = fc.noBias(fc.integer({ min: 1, max: 99_999 })).map((k) => min + ((max - min) * k) / 100_000);
  return fc.oneof({ arbitrary: within, weight: 9 }, { arbitrary: fc.constantFrom(min, max), weight: 1 });
}

/** A key with a value, or no key: a file either gives a limit or does not have it. */
function perhaps<K extends string, V>(key: K, value: fc.Arbitrary<V>): fc.Arbitrary<{ [k in K]?: V }> {
  return fc
    .option(value, { nil: undefined, freq: 2 })
    .map((found) => (found === undefined ? {} : { [key]: found })) as fc.Arbitrary<{
    [k in K]?: V;
  }>;
}

function both<A, B>(a: fc.Arbitrary<A>, b: fc.Arbitrary<B>): fc.Arbitrary<A & B> {
  return fc.tuple(a, b).map(([left, right]) => ({ ...left, ...right }));
}

const tyres = fc.record({
  loadedRadius_mm: real(220, 420),
  rolling_coeff: real(0.006, 0.03),
  rollingRise_coeff: real(0, 0.004),
  followsTemperature: fc.boolean(),
  wheelsInertia_kgm2: real(0, 8),
});

const roadLoad = fc.oneof(
  fc.record({
    kind: fc.constant("physical" as const),
    drag_coeff: real(0.2, 0.9),
    frontalArea_m2: real(1.2, 4),
    wheelDrag_Nm: real(0, 15),
  }),
  fc.record({
    kind: fc.constant("coastDown" as const),
    f0_N: real(40, 500),
    f1_Npkmh: real(-0.5, 3),
    f2_Npkmh2: real(0.01, 0.12),
    mass_kg: real(600, 2500),
  }),
);

const vehicle: fc.Arbitrary<Written["vehicle"]> = fc
  .tuple(
    fc.record({
      name: fc.constant("Any car"),
      kerb_kg: real(500, 2000),
      removed_kg: real(0, 300),
      added_kg: real(0, 300),
      load_kg: real(0, 500),
      tyres,
      roadLoad,
      inertia: fc.oneof(
        fc.constant({ kind: "parts" as const }),
        fc.record({ kind: fc.constant("massFactor" as const), mass_ratio: real(1, 1.3) }),
      ),
    }),
    perhaps(
      "balance",
      fc.record({
        wheelbase_mm: real(1800, 3600),
        gravityHeight_mm: real(350, 900),
        frontShare_frac: real(0.35, 0.65),
      }),
    ),
    perhaps("roof", fc.record({ mass_kg: real(0, 120), dragArea_m2: real(0, 0.6) })),
    perhaps(
      "trailer",
      fc.record({ mass_kg: real(100, 900), dragArea_m2: real(0, 2), rolling_coeff: real(0.008, 0.03) }),
    ),
  )
  .map((parts) => Object.assign({}, ...parts));

const gears = [
  { name: "first", gear_ratio: 3.6, efficiency_frac: 0.95 },
  { name: "second", gear_ratio: 2.2, efficiency_frac: 0.955 },
  { name: "third", gear_ratio: 1.4, efficiency_frac: 0.96 },
  { name: "fourth", gear_ratio: 1, efficiency_frac: 0.975 },
];

const shifting = fc.oneof(
  fc.constantFrom("first", "second", "third", "fourth").map((gear) => ({ kind: "fixed" as const, gear })),
  fc.tuple(real(10, 40), real(5, 40)).map(([first_kmh, more_kmh]) => ({
    kind: "bySpeed" as const,
    gears: ["second", "third", "fourth"],
    up_kmh: [first_kmh, first_kmh + more_kmh],
  })),
);

const transferBox = fc.record({
  high_ratio: real(1, 1.3),
  highEfficiency_frac: real(0.9, 1),
  low_ratio: real(1.8, 3.5),
  lowEfficiency_frac: real(0.85, 1),
  range: fc.constantFrom("high" as const, "low" as const),
  isFrontEngaged: fc.boolean(),
  hubs: fc.constantFrom("free" as const, "locked" as const, "none" as const),
  frontShaftDrag_Nm: real(0, 20),
  frontEfficiency_frac: real(0.85, 1),
});

const driveline: fc.Arbitrary<Written["driveline"]> = fc
  .tuple(
    fc.record({
      gears: fc.constant(gears),
      finalDrive_ratio: real(3, 6),
      finalDriveEfficiency_frac: real(0.85, 1),
      shifting,
      noLoadDrag_Nm: real(0, 5),
      limits: fc
        .tuple(
          perhaps("gearboxInput_Nm", real(50, 300)),
          perhaps("propellerShaft_Nm", real(150, 1200)),
          perhaps("halfShaft_Nm", real(400, 2500)),
        )
        .map((parts) => Object.assign({}, ...parts)),
    }),
    fc.oneof(
      fc.constantFrom("front" as const, "rear" as const, "both" as const).map((drivenAxle) => ({ drivenAxle })),
      transferBox.map((box) => ({ drivenAxle: "rear" as const, transferBox: box })),
    ),
  )
  .map(([rest, axle]) => ({ ...rest, ...axle }));

/** Losses that grow with torque and speed as a machine's do; a table of them has some noise. */
const loss: fc.Arbitrary<Written["motor"]["loss"]> = fc.oneof(
  fc.record({
    kind: fc.constant("fourTerm" as const),
    copper_coeff: real(0, 1),
    iron_coeff: real(0, 1.5),
    windage_coeff: real(0, 2e-5),
    constant_W: real(0, 700),
  }),
  fc.record({ kind: fc.constant("flat" as const), efficiency_frac: real(0.5, 1) }),
  fc
    .record({ full_Nm: real(60, 300), copper: real(0.05, 1), iron: real(0.1, 2), isMirrored: fc.boolean() })
    .map(({ full_Nm, copper, iron, isMirrored }) => {
      const torque_Nm = (isMirrored ? [0, 0.1, 0.3, 0.6, 1] : [-1, -0.5, -0.1, 0, 0.2, 1]).map(
        (part) => part * full_Nm,
      );
      const speed_rpm = [0, 500, 1500, 4000, 9000];
      return {
        kind: "lossTable" as const,
        torque_Nm,
        speed_rpm,
        loss_W: speed_rpm.map((rpm) => torque_Nm.map((torque) => copper * torque * torque + iron * 0.1 * rpm + 20)),
      };
    }),
  fc
    .record({ full_Nm: real(60, 300), best: real(0.8, 0.96), worst: real(0.3, 0.7) })
    .map(({ full_Nm, best, worst }) => {
      const torque_Nm = [0, 0.1, 0.3, 0.6, 1].map((part) => part * full_Nm);
      const speed_rpm = [0, 500, 2000, 5000, 9000];
      return {
        kind: "efficiencyMap" as const,
        torque_Nm,
        speed_rpm,
        efficiency_frac: speed_rpm.map((_rpm, i) =>
          torque_Nm.map(
            (_torque, j) =>
              worst + (best - worst) * Math.sin(0.6 * Math.min(i, 2.5)) * Math.sin(0.7 * Math.min(j, 2.2)),
          ),
        ),
      };
    }),
);

const heat = (from_degC: number, to_degC: number, capacity: [number, number]) =>
  fc.record({
    capacity_kJpK: real(...capacity),
    cooling_WpK: real(0, 40),
    derateFrom_degC: fc.constant(from_degC),
    derateTo_degC: fc.constant(to_degC),
  });

/** From a fork-lift's motor that hardly moves the car to more than any old axle stands. */
const envelope: fc.Arbitrary<Written["motor"]["envelope"]> = fc.oneof(
  fc.record({ kind: fc.constant("peak" as const), torque_Nm: real(20, 400), power_kW: real(4, 150) }),
  real(15, 400).map((full_Nm) => ({
    kind: "points" as const,
    speed_rpm: [0, 1500, 2500, 4000, 7000],
    torque_Nm: [1, 1, 0.7, 0.4, 0.15].map((part) => part * full_Nm),
  })),
);

const motor: fc.Arbitrary<Omit<Written["motor"], "reference_V">> = both(
  fc.record({
    name: fc.constant("Any motor"),
    kind: fc.constantFrom("induction" as const, "surfaceMagnet" as const, "seriesBrushed" as const),
    origin: fc.constant("invented"),
    mass_kg: real(10, 120),
    envelope,
    maxSpeed_rpm: real(3000, 12_000),
    rollBack_rpm: real(1, 600),
    rotorInertia_kgm2: real(0, 0.15),
    canRegenerate: fc.boolean(),
    loss,
  }),
  // A small heat capacity, so that some of the cars run hot on a short trace.
  perhaps("heat", heat(60, 110, [2, 30])),
);

const regen: fc.Arbitrary<Written["controller"]["regen"]> = fc
  .tuple(
    fc.record({ isOn: fc.constantFrom(true, true, true, false) }),
    perhaps("wheelForce_N", real(0, 6000)),
    perhaps("torque_Nm", real(0, 150)),
    perhaps("power_kW", real(0, 60)),
    perhaps("current_A", real(0, 300)),
    fc.tuple(real(0, 10), real(0, 20)).map(([none_kmh, more_kmh]) => ({
      fadeNone_kmh: none_kmh,
      fadeFull_kmh: none_kmh + more_kmh,
    })),
  )
  .map((parts) => Object.assign({}, ...parts));

/** A controller for a pack of some nominal voltage; one in eight does not suit it. */
function controllerFor(nominal_V: number): fc.Arbitrary<Written["controller"]> {
  const suits = fc.record({ low: real(0, 0.85), high: real(1.1, 1.6) });
  const suitsNot = fc.record({ low: real(0.9, 1.3), high: real(1.31, 2) });
  const window = fc.oneof({ arbitrary: suits, weight: 7 }, { arbitrary: suitsNot, weight: 1 });
  return fc
    .tuple(
      fc.record({ name: fc.constant("Any controller"), regen }),
      window.map(({ low, high }) => ({ min_V: low * nominal_V, max_V: high * nominal_V })),
      perhaps("rollBackBelow", real(0.01, 0.3)),
      perhaps("rollBackAbove", real(0.01, 0.3)),
      perhaps("torqueCap_Nm", real(10, 300)),
      perhaps("power_kW", real(3, 120)),
      perhaps("current_A", real(30, 700)),
    )
    .map(([rest, { min_V, max_V }, { rollBackBelow }, { rollBackAbove }, ...limits]) =>
      Object.assign(
        { ...rest, min_V, max_V },
        rollBackBelow === undefined ? {} : { rollBackBelow_V: min_V + rollBackBelow * (max_V - min_V) },
        rollBackAbove === undefined ? {} : { rollBackAbove_V: max_V - rollBackAbove * (max_V - min_V) },
        ...limits,
      ),
    );
}

const currentLimit = (low_A: number, high_A: number) =>
  fc
    .record({ continuous_A: real(low_A, high_A), more: real(1, 3), peak_s: real(0, 60) })
    .map(({ continuous_A, more, peak_s }) => ({
      continuous_A,
      peak_A: more * continuous_A,
      peak_s,
    }));

const openCircuits: readonly Written["module"]["openCircuit"][] = [
  { soc_frac: [0, 0.1, 0.3, 0.8, 0.95, 1], cell_V: [2.6, 3.2, 3.25, 3.33, 3.34, 3.4] },
  { soc_frac: [0, 0.05, 0.2, 0.5, 0.8, 1], cell_V: [2.5, 3.1, 3.45, 3.7, 4.02, 4.19] },
  { soc_frac: [0, 1], cell_V: [3, 3.6] },
];

const module: fc.Arbitrary<Written["module"]> = fc
  .tuple(
    fc.record({
      name: fc.constant("Any module"),
      chemistry: fc.constantFrom("nickel" as const, "ironPhosphate" as const),
      condition: fc.constantFrom("new" as const, "reclaimed" as const),
      origin: fc.constant("invented"),
      seriesCells: fc.constantFrom(4, 6, 8),
      parallelCells: fc.constantFrom(1, 2),
      capacity_Ah: real(10, 200),
      openCircuit: fc.constantFrom(...openCircuits),
      resistance: real(0.5, 40).map((module_mohm) => ({
        soc_frac: [0, 0.2, 0.6, 1],
        module_mohm: [2 * module_mohm, 1.1 * module_mohm, module_mohm, 1.05 * module_mohm],
      })),
      resistanceByTemperature: fc.constant<Written["module"]["resistanceByTemperature"]>({
        temperature_degC: [-20, 0, 25, 60],
        resistance_ratio: [6, 2.5, 1, 0.35],
      }),
      charging_ratio: real(0.8, 2),
      discharge: currentLimit(30, 400),
      charge: currentLimit(5, 200),
      cellMin_V: fc.constantFrom(2.5, 2.8, 3),
      cellMax_V: fc.constantFrom(3.65, 4.2),
      mass_kg: real(2, 16),
      length_mm: fc.constant(300),
      width_mm: fc.constant(200),
      height_mm: fc.constant(150),
    }),
    perhaps("coldCharge", fc.constant({ none_degC: 0, full_degC: 12 })),
    perhaps("heat", heat(35, 60, [0.5, 10])),
  )
  .map((parts) => Object.assign({}, ...parts));

/** From one string of a few small modules to more than the car would carry. */
const pack: fc.Arbitrary<Written["packs"][number]> = fc
  .record({
    seriesModules: fc.integer({ min: 2, max: 14 }),
    parallelModules: fc.integer({ min: 1, max: 4 }),
    floor_frac: real(0, 0.4),
    window: real(0.1, 0.55),
    boxes_frac: real(0, 0.5),
    leads_mohm: real(0, 20),
  })
  .map(({ window, ...rest }) => ({ name: "any", ...rest, ceiling_frac: Math.min(1, rest.floor_frac + window) }));

const accessories: fc.Arbitrary<Written["accessories"]> = fc.record({
  standing_W: real(0, 400),
  dcdcEfficiency_frac: real(0.6, 1),
  items: fc.array(
    fc.record({
      name: fc.constant("any"),
      power_W: real(0, 3000),
      duty_frac: real(0, 1),
      supply: fc.constantFrom("12V" as const, "pack" as const),
    }),
    { maxLength: 3 },
  ),
});

const environment: fc.Arbitrary<NonNullable<Written["environment"]>> = fc
  .tuple(
    fc.record({
      temperature_degC: real(-25, 45),
      headWind_kmh: fc.oneof(fc.constant(0), real(-60, 60)),
      grip_coeff: real(0.25, 1),
    }),
    fc.oneof(fc.constant({}), fc.record({ altitude_m: real(0, 2500) }), fc.record({ pressure_kPa: real(70, 104) })),
    perhaps("pack_degC", real(-20, 50)),
  )
  .map((parts) => Object.assign({}, ...parts));

/**
 * A valid job of a car that could stand in some workshop: every kind of loss and envelope, transfer box, heat, cold, head wind,
 * tiny and huge packs, motors too weak for the car. Read by the job's own reader, which refuses what is not valid.
 */
export const arbitraryJob: fc.Arbitrary<Job> = fc
  .tuple(module, pack)
  .chain(([oneModule, onePack]) => {
    const nominal_V = 3.5 * oneModule.seriesCells * onePack.seriesModules;
    return fc.record({
      vehicle,
      driveline,
      motor: fc.tuple(motor, real(0.7, 1.3)).map(([rest, part]) => ({ ...rest, reference_V: part * nominal_V })),
      controller: controllerFor(nominal_V),
      module: fc.constant(oneModule),
      packs: fc.constant([onePack]),
      accessories,
      environment,
    });
  })
  .map((parts) =>
    readJob({
      format: "bellhousing-job",
      version: 1,
      title: "Any job",
      isInvented: true,
      usualDay_km: 40,
      charger: { name: "Any charger", efficiency_frac: 0.9 },
      roads: [{ kind: "cycle", id: "town", title: "Town", cycle: "ece-15" }],
      ...parts,
    }),
  );

/** One speed after another, each held for a while: reached as gently as an old van does, or harder than any car. */
const legs = fc
  .array(
    fc.record({
      speed_kmh: fc.constantFrom(0, 15, 30, 30, 50, 50, 70, 90, 120),
      accel_mps2: fc.constantFrom(0.3, 0.6, 0.6, 1, 1, 2, 4),
      holds_s: fc.integer({ min: 0, max: 25 }),
    }),
    { minLength: 2, maxLength: 5 },
  )
  .map((some) => [{ speed_kmh: 0, accel_mps2: 1, holds_s: 3 }, ...some, { speed_kmh: 0, accel_mps2: 1, holds_s: 5 }]);

const hills = fc.option(
  fc.array(fc.tuple(real(20, 400), real(-0.12, 0.12)), { minLength: 1, maxLength: 6 }).map((legs): Profile => {
    const distance_m = [0];
    const elevation_m = [100];
    for (const [length_m, slope] of legs) {
      distance_m.push(distance_m[distance_m.length - 1] + length_m);
      elevation_m.push(elevation_m[elevation_m.length - 1] + slope * length_m);
    }
    return { distance_m: Float64Array.from(distance_m), elevation_m: Float64Array.from(elevation_m) };
  }),
  { nil: undefined },
);

/** A road as a reader would hand it on: sampled at 0.5, 1 or 5 s, with or without hills up to 1 in 8. */
export const arbitraryTrace: fc.Arbitrary<Trace> = fc
  .record({ legs, step_s: fc.constantFrom(0.5, 1, 1, 5), profile: hills })
  .map(({ legs, step_s, profile }) => {
    const speed_mps: number[] = [0];
    for (const { speed_kmh, accel_mps2, holds_s } of legs) {
      const from_mps = speed_mps[speed_mps.length - 1];
      const to_mps = speed_kmh * MPS_PER_KMH;
      const steps = Math.max(1, Math.ceil(Math.abs(to_mps - from_mps) / accel_mps2 / step_s));
      for (let k = 1; k <= steps; k++) speed_mps.push((from_mps * (steps - k) + to_mps * k) / steps);
      for (let k = 1; k <= holds_s / step_s; k++) speed_mps.push(to_mps);
    }
    return {
      id: "any",
      title: "any",
      time_s: Float64Array.from(speed_mps, (_, i) => i * step_s),
      speed_mps: Float64Array.from(speed_mps),
      ...(profile ? { profile } : {}),
    };
  });

/** The same trace without its hills. */
export function levelled({ id, title, time_s, speed_mps }: Trace): Trace {
  return { id, title, time_s, speed_mps };
}
