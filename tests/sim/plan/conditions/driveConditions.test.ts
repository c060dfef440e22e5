import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import type { CabinHeat, Weather } from "../../../../shared/job/schema/conditions.ts";
import { fuelPerHour_l } from "../../../../sim/plan/conditions/condition.ts";
import { driveCondition } from "../../../../sim/plan/conditions/driveConditions.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { rangeOn } from "../../../../sim/plan/going/range.ts";
import { prepare, prepareIn } from "../../../../sim/step/prepare.ts";
import { run } from "../../../../sim/step/run.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const job = inventedJob();

const [pack] = job.packs;

const trace = roadTrace({ kind: "cycle", id: "udds", title: "urban", cycle: "udds" }, cycleTexts);

const { temperature_degC } = job.environment;

/** The job's own weather as a condition, with what is to be other. */
const weather = (changes: Partial<Weather> = {}): Weather => ({
  temperature_degC,
  heat: { kind: "none" },
  isDark: false,
  drag_ratio: 1,
  rolling_ratio: 1,
  usable_frac: 1,
  resistance_ratio: 1,
  wind_kmh: 0,
  ...(job.environment.pack_degC !== undefined && { pack_degC: job.environment.pack_degC }),
  ...changes,
});

const driven = (changes: Partial<Weather> = {}, of: Job = job) =>
  driveCondition(of, pack, trace, { name: "tried", weather: weather(changes) });

const once = run(prepare(job, pack), trace).totals;

const hours = once.time_s / 3600;

const today_km = rangeOn(prepare(job, pack), trace).distance_m / 1000;

describe("a condition", () => {
  it("is today's drive where nothing is other in it", () => {
    expect(driven().range_km).toBe(today_km);
    expect(driven().missed_frac).toBe(0);
    expect(driven().perMetre_J).toBeCloseTo(once.ledger.total_J / once.distance_m, 9);
  });

  it("has no heater and burns no fuel where it has no weather of its own", () => {
    expect(driveCondition(job, pack, trace, { name: "ten years" })).toMatchObject({ heater_kW: 0, fuel_l100km: 0 });
  });

  // Worked by hand: a heater of P kilowatts takes P times the hours of the drive at the terminals, on top of the drive's own energy,
  // and beside that only what the larger current heats in the pack.
  it.each([1.2, 3])("with a heater of %f kW by the hour takes that much at the terminals", (power_kW) => {
    const km = once.distance_m / 1000;
    const byHand_Whpkm = (once.terminal_J / 3600 + 1000 * power_kW * hours) / km;
    expect(driven({ heat: { kind: "byHour", power_kW } }).battery_Whpkm).toBeCloseTo(byHand_Whpkm, 6);
  });

  it.each([1.2, 3])(
    "with a heater of %f kW and a thermostat takes full power until it is warm, then what is lost",
    (power_kW) => {
      const heat: CabinHeat = {
        kind: "thermostat",
        cabin_degC: temperature_degC + 16,
        capacity_kJpK: 50,
        loss_WpK: 65,
        isPreheated: false,
        power_kW,
      };
      const hold_W = 65 * 16;
      const warm_s = Math.min(once.time_s, (-50_000 / 65) * Math.log(Math.max(1e-9, 1 - hold_W / (1000 * power_kW))));
      const mean_kW = (power_kW * warm_s + (hold_W / 1000) * (once.time_s - warm_s)) / once.time_s;
      // Steps of a second under way, up to a minute at rest.
      expect(Math.abs(driven({ heat }).heater_kW - mean_kW)).toBeLessThan(0.003);
    },
  );

  it("costs more heat with trips after which the cabin is cold, and less where the socket warmed it", () => {
    const heat: Extract<CabinHeat, { kind: "thermostat" }> = {
      kind: "thermostat",
      cabin_degC: temperature_degC + 16,
      capacity_kJpK: 50,
      loss_WpK: 65,
      power_kW: 3,
      isPreheated: false,
    };
    const one = driven({ heat }).heater_kW;
    expect(driven({ heat: { ...heat, trip_km: 3 } }).heater_kW).toBeGreaterThan(one * 1.1);
    // While it warms from cold, the heater gives its 3 kW in place of what is lost: in closed form so many seconds of the difference.
    const hold_W = 65 * 16;
    const saved_kWh = ((3000 - hold_W) * (-50_000 / 65) * Math.log(1 - hold_W / 3000)) / 3.6e6;
    const preheated = driven({ heat: { ...heat, isPreheated: true } }).heater_kW;
    expect((one - preheated) * hours).toBeCloseTo(saved_kWh, 3);
  });

  it("burns the heater's litres: 2 kW of heat from diesel of 10 kWh a litre at 80 % are a quarter of a litre an hour", () => {
    const heat: CabinHeat = { kind: "fuel", power_kW: 2, fan_W: 0, fuel: "diesel", efficiency_frac: 0.8 };
    expect(fuelPerHour_l({ heat })).toBeCloseTo(0.25, 12);
    const { range_km, fuel_l100km } = driven({ heat });
    expect(range_km).toBe(today_km);
    expect(fuel_l100km).toBeCloseTo((0.25 * hours * 100) / (once.distance_m / 1000), 9);
  });

  it("multiplies drag and rolling resistance, and leaves less of the window", () => {
    const model = (changes: Partial<Weather>) => prepareIn(job, pack, { weather: weather(changes) });
    const plain = model({});
    expect(model({ drag_ratio: 1.25 }).road.drag_Npmps2).toBeCloseTo(1.25 * plain.road.drag_Npmps2, 12);
    expect(model({ rolling_ratio: 1.1 }).road.rollingWeight_N).toBeCloseTo(1.1 * plain.road.rollingWeight_N, 9);
    const { ceiling_frac, floor_frac } = plain.pack;
    expect(model({ usable_frac: 0.9 }).pack.floor_frac).toBeCloseTo(
      ceiling_frac - 0.9 * (ceiling_frac - floor_frac),
      12,
    );
  });

  it("with a wind drives there and back, the wind against the car one way and with it the other", () => {
    const calm = driven();
    const windy = driven({ wind_kmh: 20 });
    expect(rangeOn(prepareIn(job, pack, { weather: weather({ wind_kmh: 20 }) }), trace).isThereAndBack).toBe(true);
    // (v + w)|v + w| and (v - w)|v - w| average to v² + w² where v > w: more than calm, less than head wind all the way.
    expect(windy.range_km).toBeLessThan(calm.range_km);
    const against = { ...job, environment: { ...job.environment, headWind_kmh: 20 } };
    expect(windy.range_km).toBeGreaterThan(rangeOn(prepare(against, pack), trace).distance_m / 1000);
  });

  it("takes lights and wipers by their share for winter where it is dark", () => {
    const items = [{ name: "lights", power_W: 100, duty_frac: 0.25, winterDuty_frac: 0.75, supply: "12V" as const }];
    const lit = { ...job, accessories: { ...job.accessories, items } };
    const at = (isDark: boolean) => prepareIn(lit, pack, { weather: weather({ isDark }) }).accessories_W;
    expect(at(true) - at(false)).toBeCloseTo(50 / job.accessories.dcdcEfficiency_frac, 9);
    expect(at(false)).toBe(prepare(lit, pack).accessories_W);
  });
});

describe("age", () => {
  it("takes charge and adds resistance, leads apart", () => {
    const fresh = prepare(job, pack).pack;
    const old = prepareIn(job, pack, { age: { capacity_frac: 0.75, resistance_ratio: 1.4 } }).pack;
    expect(old.capacity_C).toBeCloseTo(0.75 * fresh.capacity_C, 6);
    expect(old.resistance_ohm.values[100]).toBeCloseTo(1.4 * fresh.resistance_ohm.values[100], 12);
    expect(old.leads_ohm).toBe(fresh.leads_ohm);
  });
});

describe("a condition in which the car does not move, or hardly", () => {
  const standing = {
    id: "standing",
    title: "standing",
    time_s: Float64Array.of(0, 10),
    speed_mps: Float64Array.of(0, 0),
  };
  it("has no energy for a kilometre and misses nothing where nothing was asked", () => {
    const found = driveCondition(job, pack, standing, { name: "tried", weather: weather() });
    expect(found).toMatchObject({ range_km: 0, rangeEnd: "stuck", battery_Whpkm: 0, perMetre_J: 0, missed_frac: 0 });
    expect(found.fuel_l100km).toBe(0);
  });
  it("has no heat of a heater without a thermostat", () => {
    expect(driven({ heat: { kind: "byHour", power_kW: 2 } }).heater_kW).toBe(0);
  });
  it("is stuck where it does not get half-way along its road, and not where it stands later in the day", () => {
    // A hill on the way that the weak car does not climb: at 400 m of 1000, or at 600.
    const weak = { ...job, motor: { ...job.motor, envelope: { kind: "peak" as const, torque_Nm: 12, power_kW: 45 } } };
    const until = (wall_m: number) => {
      const road = {
        id: "wall",
        title: "wall",
        time_s: Float64Array.of(0, 20, 220, 240),
        speed_mps: Float64Array.of(0, 5, 5, 0),
        profile: { distance_m: Float64Array.of(0, wall_m, 2000), elevation_m: Float64Array.of(0, 0, 600) },
      };
      return driveCondition(weak, pack, road, { name: "tried", weather: weather() });
    };
    expect(until(400)).toMatchObject({ isStuck: true, rangeEnd: "stuck" });
    expect(until(400).missed_frac).toBeGreaterThan(0.5);
  });
});
