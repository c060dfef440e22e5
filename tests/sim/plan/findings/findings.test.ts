import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { driveJob } from "../../../../sim/plan/drive/driveJob.ts";
import { resample } from "../../../../sim/trace/resample.ts";
import { bareJob, type Changes, traceOf } from "../../../support/bareCar.ts";

const there = resample(
  traceOf([
    [0, 0],
    [20, 36],
    [40, 36],
    [60, 0],
  ]),
  1,
);
/** 100 cells: 400 V resting, 50 to 500 V allowed; 2 kWh, which are soon driven. */
const carWith = (changes: Changes) => bareJob({ ...changes, module: { capacity_Ah: 5, ...changes.module } });
const told = (changes: Changes, trace = there) => driveJob(carWith(changes), trace).candidates[0].findings;
const kinds = (changes: Changes, trace = there) => told(changes, trace).map(({ kind }) => kind);
const window = (min_V: number, max_V: number): Changes => ({ controller: { min_V, max_V, regen: { isOn: false } } });

it("has nothing but the high voltage of a car that lacks nothing", () => {
  const law = { kind: "fourTerm" as const, copper_coeff: 0.1, iron_coeff: 0, windage_coeff: 0, constant_W: 0 };
  expect(kinds({ motor: { loss: law } })).toEqual(["highVoltage"]);
});

describe("a pack outside its controller's window", () => {
  it("above it, full", () => expect(kinds(window(0, 450))).toContain("packAboveController"));
  it("not at exactly its highest", () => expect(kinds(window(0, 500))).not.toContain("packAboveController"));
  it("below it, even full", () => expect(kinds(window(501, 900))).toContain("packBelowController"));
  it("cut off by it before the cells are empty", () =>
    expect(kinds(window(300, 900))).toContain("controllerCutsFirst"));
});

it("a pack that the charger does not fill", () => {
  expect(kinds({ charger: { max_V: 480 } })).toContain("packAboveCharger");
  expect(kinds({ charger: { max_V: 500 } })).not.toContain("packAboveCharger");
});

it("a road faster than the motor turns, with the speed where it ends", () => {
  const found = told({ motor: { maxSpeed_rpm: 1200 } }).find(({ kind }) => kind === "motorPastTopSpeed");
  // 1200 rpm over 20 turns of radians a metre: 22.6 km/h.
  expect(messageIn(found?.sentence ?? [], "metric")).toMatch(/22\.6 km\/h.* 36 km\/h/);
});

it("a car that does not follow, with how long and what held it", () => {
  const found = told({ motor: { envelope: { kind: "peak", torque_Nm: 20, power_kW: 2000 } } });
  const sentence = found.find(({ kind }) => kind === "traceNotFollowed")?.sentence;
  expect(messageIn(sentence ?? [], "metric")).toMatch(/^Falls behind for \d+ s .* the motor for/);
});

it("limits that were met for a moment without falling behind", () => {
  const brief = { motor: { envelope: { kind: "peak" as const, torque_Nm: 34, power_kW: 2000 } } };
  const found = kinds(
    brief,
    traceOf([
      [0, 0],
      [1, 1.8],
      [2, 3.4],
      [10, 3.4],
    ]),
  );
  expect(found).toContain("touchedLimit");
  expect(found).not.toContain("traceNotFollowed");
});

describe("a car that does not start", () => {
  const hill = { distance_m: Float64Array.of(0, 1000), elevation_m: Float64Array.of(0, 100) };
  const metric = (found: ReturnType<typeof told>) => found.map(({ sentence }) => messageIn(sentence, "metric"));

  it("is told first that it does not, then what it needs in which gear, what it has, and the limit", () => {
    // 13734 N at 1 in 10 of the road's length, over 20 turns of radians a metre: 68.7 Nm, and the controller lets 30 pass.
    const capped: Changes = { controller: { min_V: 0, max_V: 450, torqueCap_Nm: 30, regen: { isOn: false } } };
    const found = told(capped, { ...there, profile: hill });
    expect(found[0].kind).toBe("doesNotStart");
    expect(metric(found)[0]).toBe(
      "The car does not start on this road on a gradient of 10 %: it needs 69 Nm at the motor in only gear and has 30 Nm, limited by the controller.",
    );
    expect(found.map(({ kind }) => kind)).not.toContain("traceNotFollowed");
    expect(found.map(({ kind }) => kind)).not.toContain("stuck");
  });

  it("on the level too, where the controller is below its lowest voltage", () => {
    const rolling = { loadedRadius_mm: 300, rolling_coeff: 0.02, followsTemperature: false };
    const found = told({
      ...window(501, 900),
      vehicle: { kerb_kg: 1399, tyres: rolling },
    });
    expect(metric(found)[0]).toMatch(/^The car does not start on this road: it needs 14 Nm .* and has 0 Nm/);
  });

  it("after a stop on a hill, with how far it got", () => {
    const later = { distance_m: Float64Array.of(0, 100, 1000), elevation_m: Float64Array.of(0, 0, 180) };
    const weak: Changes = { motor: { envelope: { kind: "peak", torque_Nm: 40, power_kW: 2000 } } };
    const [first] = metric(told(weak, { ...there, profile: later }));
    expect(first).toMatch(
      /^The car stops after 1\d\d m on a gradient of 20 % and does not start again: it needs 137 Nm/,
    );
  });
});

it("a road on which the car covers less than half, told without speaking of an empty pack", () => {
  const weak: Changes = { motor: { envelope: { kind: "peak", torque_Nm: 8, power_kW: 2000 } } };
  const found = told(weak).find(({ kind }) => kind === "stuck");
  expect(messageIn(found?.sentence ?? [], "metric")).toMatch(
    /^Too slow for this road: in the time it allows, the car covers/,
  );
});

describe("braking that the pack refuses", () => {
  /** Down 40 m at once, then a level road. */
  const downhill = {
    ...resample(
      traceOf([
        [0, 0],
        [20, 36],
        [290, 36],
        [310, 0],
      ]),
      1,
    ),
    profile: { distance_m: Float64Array.of(0, 1000, 3000), elevation_m: Float64Array.of(40, 0, 0) },
  };
  const braking: Changes = {
    vehicle: { roadLoad: { kind: "coastDown", f0_N: 100, f1_Npkmh: 0, f2_Npkmh2: 0, mass_kg: 1400 } },
    controller: { min_V: 0, max_V: 1500, regen: { isOn: true, fadeNone_kmh: 0, fadeFull_kmh: 0 } },
    module: { capacity_Ah: 20 },
  };
  const refusals = (changes: Changes) =>
    told({ ...braking, ...changes }, downhill).filter(({ kind }) => kind.startsWith("regenRefused"));

  it("being full: where, how much, and the charge from which it takes all of it", () => {
    const [found] = refusals({ pack: { ceiling_frac: 1 } });
    expect(found.kind).toBe("regenRefusedFull");
    expect(found.weight).toBe("warning");
    // On the hill 549 N less 100 N push the car 1 km, less the 70 kJ that go into its motion: 379 kJ or 105 Wh, 1.3 % of 8 kWh.
    expect(messageIn(found.sentence, "metric")).toMatch(
      /^Charged to 100 %, the pack refuses braking by the motor on 8\d\d m of this road: .* 0\.11 kWh are not regained. Charged to 98 %, it takes all of it\.$/,
    );
  });

  it("is none where the charger stops lower than braking may go on", () => {
    expect(refusals({ pack: { ceiling_frac: 0.95, regenTo_frac: 1 } })).toEqual([]);
    expect(refusals({ pack: { ceiling_frac: 0.95 } }).length).toBe(1);
  });

  it("is none of a car that does not brake by its motor", () => {
    expect(
      refusals({ controller: { min_V: 0, max_V: 1500, regen: { isOn: false } }, pack: { ceiling_frac: 1 } }),
    ).toEqual([]);
  });

  it("being cold", () => {
    const [found] = refusals({
      pack: { ceiling_frac: 0.8, regenTo_frac: 1 },
      module: { ...braking.module, coldCharge: { none_degC: 0, full_degC: 10 } },
      environment: { temperature_degC: -5 },
    });
    expect(found.kind).toBe("regenRefusedCold");
    expect(messageIn(found.sentence, "metric")).toMatch(/^At -5 °C the cells take little charge or none/);
  });
});

it("a road that is driven there and back for its range", () => {
  const up = { distance_m: Float64Array.of(0, 400), elevation_m: Float64Array.of(0, 12) };
  const found = told({}, { ...there, profile: up }).find(({ kind }) => kind === "thereAndBack");
  expect(messageIn(found?.sentence ?? [], "metric")).toBe(
    "This road ends 12 m above its start, so for the range it is driven there and back.",
  );
  expect(kinds({})).not.toContain("thereAndBack");
});

it("a road that draws nothing from the pack", () => {
  const pushed: Changes = {
    vehicle: { roadLoad: { kind: "physical", drag_coeff: 1, frontalArea_m2: 10 } },
    environment: { headWind_kmh: -100 },
  };
  expect(kinds(pushed)).toContain("noRange");
});

it("a pack that is empty on the way", () => {
  const dragging = {
    vehicle: { roadLoad: { kind: "coastDown" as const, f0_N: 900, f1_Npkmh: 0, f2_Npkmh2: 0, mass_kg: 1400 } },
  };
  expect(kinds({ ...dragging, module: { capacity_Ah: 0.2 } })).toContain("reachedFloor");
});

it("a car above its plate, and not one exactly on it", () => {
  const plate = (gross_kg: number): Changes => ({
    vehicle: { kerb_kg: 1399, gross_kg },
  });
  expect(kinds(plate(1399))).toContain("aboveGross");
  expect(kinds(plate(1400))).not.toContain("aboveGross");
});

it("accessories that were shed", () => {
  const starved: Changes = {
    module: { discharge: { continuous_A: 1, peak_A: 1, peak_s: 0 } },
    accessories: { standing_W: 1000 },
  };
  expect(kinds(starved)).toContain("shedAccessories");
});

it("one efficiency for everything", () => {
  expect(kinds({ motor: { loss: { kind: "flat", efficiency_frac: 0.85 } } })).toContain("flatEfficiency");
});

describe("gears in which the motor is at its top speed too early", () => {
  const gears = [
    { name: "low", gear_ratio: 2, efficiency_frac: 1 },
    { name: "high", gear_ratio: 1, efficiency_frac: 1 },
  ];
  const words = (up_kmh: number, maxSpeed_rpm: number) =>
    told({
      motor: { maxSpeed_rpm },
      driveline: { gears, shifting: { kind: "bySpeed", gears: ["low", "high"], up_kmh: [up_kmh] } },
    })
      .filter(({ kind }) => kind === "motorPastTopSpeed")
      .map(({ sentence }) => messageIn(sentence, "metric"));

  it("are told with the speed at which the next one follows, or the road's own", () => {
    // 40 and 20 turns of radians a metre: 1200 rpm end at 11.3 and 22.6 km/h, of 36 km/h on the road.
    expect(words(20, 1200)).toEqual([
      "In low gear the motor is at its top speed at 11.3 km/h; high gear follows at 20 km/h.",
      "In high gear the motor is at its top speed at 22.6 km/h; the road asks for 36 km/h.",
    ]);
  });
  it("are none where the next one follows in time, or the road is no faster", () => {
    expect(words(11, 1200)).toHaveLength(1);
    expect(words(30, 4000)).toEqual([]);
    expect(words(90, 4000)).toEqual([]);
  });
});

it("a front axle that is engaged with its hubs free", () => {
  const transferBox = {
    high_ratio: 1,
    highEfficiency_frac: 1,
    low_ratio: 2,
    lowEfficiency_frac: 1,
    range: "high" as const,
    isFrontEngaged: true,
    hubs: "free" as const,
    frontShaftDrag_Nm: 0,
    frontEfficiency_frac: 1,
  };
  expect(kinds({ driveline: { transferBox } })).toContain("hubsFree");
  expect(kinds({ driveline: { transferBox: { ...transferBox, hubs: "locked" } } })).not.toContain("hubsFree");
  expect(kinds({ driveline: { transferBox: { ...transferBox, isFrontEngaged: false } } })).not.toContain("hubsFree");
});

it("what the client asks beside the day's distance", () => {
  const job = { ...carWith({}), requirement: { topSpeed_kmh: 100 } };
  expect(driveJob(job, there).candidates[0].findings.map(({ kind }) => kind)).toContain("topSpeedHeld");
});

it("a voltage above 60 V as deadly, and not at it", () => {
  const cells = (seriesCells: number) => kinds({ module: { seriesCells } });
  expect(cells(12)).not.toContain("highVoltage");
  expect(cells(13)).toContain("highVoltage");
});

it("warnings before notes", () => {
  const weights = told(window(0, 450)).map(({ weight }) => weight);
  expect(weights).toEqual([...weights].sort().reverse());
  expect(weights.length).toBeGreaterThan(1);
});
