import type { Job } from "../../../shared/job/job.ts";
import { prepare } from "../../step/prepare.ts";
import { CLUTCHED_s, type EngineCar, engineCar, engineStart } from "./engineStart.ts";
import { type KnownEngine, knownEngine } from "./knownEngine.ts";
import { type StandingStart, standingStart } from "./standingStart.ts";
import { engineTopSpeed, motorTopSpeed, type TopSpeed } from "./topSpeed.ts";

/** One car's start from rest and its top speed. */
export interface CarPace {
  readonly mass_kg: number;
  readonly start: StandingStart;
  readonly top: TopSpeed;
}

/** How the car goes with its motor, beside how it went with its engine. */
export interface Pace {
  readonly motor: CarPace;
  /** Absent where too little is known of the old engine. */
  readonly engine?: CarPace;
  readonly known: KnownEngine;
  /** How long a change of gear leaves the wheels without drive with the motor; absent where the car is left in one gear. */
  readonly change?: {
    readonly change_s: number;
    readonly isAssumed: boolean;
    readonly coupling: "clutch" | "direct";
    readonly changes: readonly GearChange[];
  };
}

/** A change of gear under way: what the motor's rotor must lose. */
export interface GearChange {
  readonly from: string;
  readonly to: string;
  readonly speed_mps: number;
  readonly from_radps: number;
  readonly to_radps: number;
  /** Turning energy that has to leave the rotor. */
  readonly rotor_J: number;
  /** Torque at the gearbox input that takes it in the time of the change. */
  readonly synchro_Nm: number;
}

/** Without a clutch the rotor has to come to the speed of the next gear by itself. Common practice, no source. */
const DIRECT_s = 2.5;
const START_s = 120;
const START_STEP_s = 0.05;

/** Standing starts and top speeds, charged and cool, with everybody aboard, on the level in the job's own weather. */
export function paceOf(job: Job, packIndex: number): Pace {
  const { shifting, coupling, change_s } = job.driveline;
  const model = prepare(job, job.packs[packIndex]);
  const taken_s = change_s ?? (coupling === "direct" ? DIRECT_s : CLUTCHED_s);
  const known = knownEngine(job.engine);
  const old = known.engine && engineCar(job, known.engine);
  const start = standingStart(model, START_s, START_STEP_s, job.controller.ramp_s, model.pack.ceiling_frac, taken_s);
  const rotor_kgm2 = job.motor.rotorInertia_kgm2;
  return {
    motor: {
      mass_kg: model.testMass_kg,
      start,
      top: motorTopSpeed(model, start),
    },
    ...(old && { engine: enginePace(old) }),
    known,
    ...(shifting.kind === "bySpeed" &&
      model.gears.length > 1 && {
        change: {
          change_s: taken_s,
          isAssumed: change_s === undefined,
          coupling: coupling ?? "clutch",
          changes: Array.from(model.gearUp_mps, (speed_mps, i): GearChange => {
            const [from, to] = [model.gears[i], model.gears[i + 1]];
            const from_radps = speed_mps * from.motor_radpm;
            const to_radps = speed_mps * to.motor_radpm;
            return {
              from: from.name,
              to: to.name,
              speed_mps,
              from_radps,
              to_radps,
              rotor_J: 0.5 * rotor_kgm2 * (from_radps ** 2 - to_radps ** 2),
              synchro_Nm: taken_s > 0 ? (rotor_kgm2 * (from_radps - to_radps)) / taken_s : 0,
            };
          }),
        },
      }),
  };
}

function enginePace(car: EngineCar): CarPace {
  return { mass_kg: car.mass_kg, start: engineStart(car, START_s, START_STEP_s), top: engineTopSpeed(car) };
}
