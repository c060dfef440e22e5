import type { Job } from "../../../shared/job/job.ts";
import { RADPS_PER_RPM } from "../../../shared/units.ts";
import { straightAt } from "../../math/straightAt.ts";
import { prepareDriveline } from "../../vehicle/driveline.ts";
import { type Gear, wheelForce_N } from "../../vehicle/gear.ts";
import { type Grip, gripForce_N, prepareGrip } from "../../vehicle/grip.ts";
import { inertia_kg } from "../../vehicle/masses.ts";
import { prepareRoadLoad } from "../../vehicle/prepareRoadLoad.ts";
import { drag_N, type RoadLoad, rolling_N } from "../../vehicle/roadLoad.ts";
import type { OldEngine } from "./knownEngine.ts";
import type { StandingStart } from "./standingStart.ts";

/** A gear change with the old clutch leaves the wheels without drive for so long. Common practice, no source. */
export const CLUTCHED_s = 0.8;
/** The clutch is taken up over so long. Common practice, no source. */
const TAKEN_UP_s = 0.5;
/** Flywheel, clutch and crank of an engine of 100 Nm; of others in proportion to their best torque. Common practice, no source. */
const FLYWHEEL_kgm2 = 0.1;
const FLYWHEEL_AT_Nm = 100;
/** This near its limit the driver changes up. Assumed. */
const AT_LIMIT_frac = 0.99;

/** The car as it arrived, with its engine, its people and its load. */
export interface EngineCar {
  readonly mass_kg: number;
  /** All gears of the box, the lowest first; what they say of the motor and of limits is not meant. */
  readonly gears: readonly Gear[];
  readonly inertia_kg: number;
  readonly road: RoadLoad;
  readonly grip: Grip | undefined;
  readonly noLoadDrag_Nm: number;
  readonly flywheel_kgm2: number;
  readonly speed_radps: readonly number[];
  readonly torque_Nm: readonly number[];
  /** Speed at which the clutch slips while the car is too slow for it: that of best torque. */
  readonly slip_radps: number;
}

/** The car that came in, ready for a start. Its mass is that as it arrived with the load; its body, tyres and day are the job's. */
export function engineCar(job: Job, { rating, curve }: OldEngine): EngineCar {
  const { vehicle, driveline } = job;
  const mass_kg = vehicle.kerb_kg + vehicle.load_kg + (vehicle.roof?.mass_kg ?? 0);
  const gears = [...driveline.gears].sort((a, b) => b.gear_ratio - a.gear_ratio).map(({ name }) => name);
  const prepared = prepareDriveline({
    ...job,
    driveline: { ...driveline, limits: {}, shifting: { kind: "bySpeed", gears, up_kmh: gears.map(() => 0) } },
  });
  const road = prepareRoadLoad(job, mass_kg, prepared.frontShaftDrag_Nm);
  return {
    mass_kg,
    gears: prepared.gears,
    inertia_kg: inertia_kg(vehicle, road.mass_kg),
    road,
    grip: prepareGrip(job, mass_kg, prepared.drivenAxle),
    noLoadDrag_Nm: driveline.noLoadDrag_Nm,
    // With one factor on the mass, what turns is in that factor.
    flywheel_kgm2: vehicle.inertia.kind === "parts" ? (FLYWHEEL_kgm2 * rating.ratedTorque_Nm) / FLYWHEEL_AT_Nm : 0,
    speed_radps: curve.speed_rpm.map((speed_rpm) => speed_rpm * RADPS_PER_RPM),
    torque_Nm: curve.torque_Nm,
    slip_radps: rating.torque_rpm * RADPS_PER_RPM,
  };
}

/** Force at the tyres at full throttle in one gear, in N; nothing where the engine would turn faster than its limit. */
export function engineForce_N(car: EngineCar, gear: Gear, speed_mps: number): number | undefined {
  const limit_radps = car.speed_radps[car.speed_radps.length - 1];
  const turned_radps = speed_mps * gear.motor_radpm;
  if (turned_radps > limit_radps * (1 + 1e-12)) return undefined;
  // The clutch slips in the lowest gear alone; in any other the engine turns with the car.
  const slip_radps = gear === car.gears[0] ? car.slip_radps : 0;
  const torque_Nm = straightAt(car.speed_radps, car.torque_Nm, Math.max(turned_radps, slip_radps));
  return wheelForce_N(gear, torque_Nm - car.noLoadDrag_Nm);
}

/** What resists at a speed on the level, in N. */
export function resistance_N({ road }: EngineCar, speed_mps: number): number {
  return rolling_N(road, speed_mps, 1) + drag_N(road, speed_mps) + road.wheelDrag_N;
}

/**
 * The old car from rest at full throttle on the level, one row a step:
 *
 *   dv/dt = (F - resistance) / (m + wheels + J η (G/r)²)        [Gillespie1992, ch. 2]
 *
 * by the midpoint method. It begins in the lowest gear with the clutch slipping at the speed of best torque until the car has caught
 * up, and changes up where the next gear pulls more, or at the engine's limit, the wheels meanwhile without drive for `change_s`.
 */
export function engineStart(car: EngineCar, duration_s: number, step_s: number, change_s = CLUTCHED_s): StandingStart {
  const steps = Math.round(duration_s / step_s);
  const time_s = new Float64Array(steps + 1);
  const speed_mps = new Float64Array(steps + 1);
  const distance_m = new Float64Array(steps + 1);
  const gears = new Uint8Array(steps + 1);
  let gear = 0;
  let idleUntil_s = 0;
  let accel_mps2 = 0;
  for (let i = 1; i <= steps; i++) {
    const from_s = (i - 1) * step_s;
    const before_mps = speed_mps[i - 1];
    if (from_s >= idleUntil_s && changesUp(car, gear, before_mps)) {
      gear++;
      idleUntil_s = from_s + change_s;
    }
    const isIdle = from_s < idleUntil_s - 1e-9;
    const taken_frac = isIdle ? 0 : Math.min(1, (from_s + 0.5 * step_s) / TAKEN_UP_s);
    const first_mps2 = acceleration_mps2(car, car.gears[gear], before_mps, taken_frac, accel_mps2);
    const middle_mps = Math.max(0, before_mps + 0.5 * step_s * first_mps2);
    accel_mps2 = acceleration_mps2(car, car.gears[gear], middle_mps, taken_frac, first_mps2);
    gears[i] = gear;
    time_s[i] = i * step_s;
    speed_mps[i] = Math.max(0, before_mps + step_s * accel_mps2);
    distance_m[i] = distance_m[i - 1] + 0.5 * step_s * (before_mps + speed_mps[i]);
  }
  return { time_s, speed_mps, distance_m, gear: gears };
}

function changesUp(car: EngineCar, gear: number, speed_mps: number): boolean {
  const next = car.gears[gear + 1];
  if (next === undefined) return false;
  const limit_radps = car.speed_radps[car.speed_radps.length - 1];
  const isAtLimit = speed_mps * car.gears[gear].motor_radpm >= AT_LIMIT_frac * limit_radps;
  const now_N = isAtLimit ? 0 : (engineForce_N(car, car.gears[gear], speed_mps) ?? 0);
  // A gear in which the engine would turn below its idle is too high, however it pulls.
  return speed_mps * next.motor_radpm >= car.speed_radps[0] && (engineForce_N(car, next, speed_mps) ?? 0) > now_N;
}

function acceleration_mps2(
  car: EngineCar,
  gear: Gear,
  speed_mps: number,
  taken_frac: number,
  last_mps2: number,
): number {
  const resisting_N = speed_mps > 0 || taken_frac > 0 ? resistance_N(car, speed_mps) : 0;
  const grip_N = car.grip === undefined ? Number.POSITIVE_INFINITY : gripForce_N(car.grip, last_mps2, 0, 1);
  const drive_N = Math.min((engineForce_N(car, gear, speed_mps) ?? 0) * taken_frac, grip_N);
  const isSlipping = gear === car.gears[0] && speed_mps * gear.motor_radpm < car.slip_radps;
  const turning_kg =
    isSlipping || taken_frac === 0 ? 0 : car.flywheel_kgm2 * gear.efficiency_frac * gear.motor_radpm ** 2;
  const net_mps2 = (drive_N - resisting_N) / (car.inertia_kg + turning_kg);
  return speed_mps === 0 ? Math.max(0, net_mps2) : net_mps2;
}
