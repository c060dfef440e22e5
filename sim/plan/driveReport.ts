import type { Message } from "../../shared/quantity/message.ts";
import type { Band } from "../../shared/spread.ts";
import type { Channels } from "../step/channels.ts";
import type { Limit } from "../step/limits.ts";
import type { ConditionDrives } from "./conditions/driveConditions.ts";

/** Every joule drawn from the cells, where it went, in watt-hours. */
export interface LedgerWh {
  readonly aero: number;
  readonly rolling: number;
  readonly climb: number;
  readonly speed: number;
  readonly driveline: number;
  readonly motor: number;
  readonly packHeat: number;
  readonly accessories: number;
  readonly frictionBrake: number;
  /** Net energy drawn from the cells; the sum of the others to 1e-9 of their absolute sum. */
  readonly total: number;
}

/** A thing a person should know, said in a sentence; `kind` is stable and what tests check. */
export interface Finding {
  readonly kind: string;
  readonly weight: "note" | "warning";
  readonly sentence: Message;
}

/** Where a car stands although the road goes on, and why: what it needs at the motor shaft there, and what it has. */
export interface Stands {
  /** From the start of the road; 0 where it never moves. */
  readonly distance_km: number;
  readonly grade_ratio: number;
  readonly gear: string;
  readonly needed_Nm: number;
  readonly available_Nm: number;
  readonly limit: Limit;
}

/** Braking by the motor that the pack did not take on one pass. */
export interface RefusedBraking {
  readonly energy_Wh: number;
  /** Length of the road on which it took less than nine tenths of it. */
  readonly distance_km: number;
  /** Charge to begin with from which it takes all of it. */
  readonly start_frac?: number;
}

/** One candidate pack driven over the road. */
export interface Candidate {
  readonly name: string;
  readonly pack: {
    readonly seriesModules: number;
    readonly parallelModules: number;
    readonly nominal_kWh: number;
    /** Open-circuit energy from ceiling to floor at 25 degC. */
    readonly usable_kWh: number;
    /** Modules with boxes, bars and lid. */
    readonly mass_kg: number;
    readonly nominal_V: number;
    readonly min_V: number;
    readonly max_V: number;
  };
  readonly testMass_kg: number;
  readonly wheelPositive_Whpkm: number;
  readonly battery_Whpkm: number;
  readonly wall_Whpkm: number;
  readonly range_km: number;
  /**
   * Why driving on ended; "time" (24 h) makes the range an "at least", "endless" means that the road draws nothing from the pack, so
   * that there is no range and `range_km` is 0.
   */
  readonly rangeEnd: "floor" | "stuck" | "time" | "endless";
  /** For its range the road is driven there and back, since it does not end at the height it began at. */
  readonly isThereAndBack: boolean;
  /** Energy at the wheel over that of the road as driven, 10 to 90 %, where a log left it open. */
  readonly roadEnergy_ratio?: Band;
  /** Absent where the car gets to the end of the road. */
  readonly stands?: Stands;
  /** Braking that a full pack, or a cold one, refused on one pass; absent where it took all. */
  readonly refused: { readonly full?: RefusedBraking; readonly cold?: RefusedBraking };
  readonly soc: { readonly start_frac: number; readonly end_frac: number; readonly min_frac: number };
  readonly distance_km: number;
  readonly regen_Wh: number;
  readonly frictionBrake_Wh: number;
  readonly ledger_Wh: LedgerWh;
  readonly peak: {
    readonly battery_A: number;
    readonly charge_A: number;
    readonly motor_Nm: number;
    readonly motor_kW: number;
    readonly motor_rpm: number;
    readonly min_V: number;
    readonly motor_degC: number;
    readonly pack_degC: number;
  };
  readonly rmsBattery_A: number;
  readonly missed_km: number;
  /** Seconds in which the car was more than 2 km/h below the trace. */
  readonly behind_s: number;
  readonly reachedFloor: boolean;
  readonly shed_Wh: number;
  readonly limited_s: Readonly<Record<Exclude<Limit, "none">, number>>;
  readonly findings: readonly Finding[];
  readonly channels?: Channels;
  /** Driven in the conditions of the job; absent where they were not. */
  readonly conditions?: ConditionDrives;
}

/** What `drive` prints with --json and the page draws from. */
export interface DriveReport {
  readonly job: string;
  readonly trace: {
    readonly id: string;
    readonly title: string;
    readonly duration_s: number;
    readonly distance_km: number;
    readonly mean_kmh: number;
    readonly max_kmh: number;
    readonly climb_m: number;
    readonly descent_m: number;
  };
  readonly candidates: readonly Candidate[];
  /** False where packs missed distances that differ by more than 1 %: their Wh/km then mean different drives. */
  readonly isComparable: boolean;
  readonly enough: Enough;
}

/** Which pack is enough for the usual day, and why; also when none is. */
export interface Enough {
  /** Name of the smallest pack that is enough, or none. */
  readonly pack: string | undefined;
  /** Range that the usual day asks for today, winter and age allowed for as they are for the pack spoken of. */
  readonly needed_km: number;
  /** Plain sentences that hold for the numbers in the report. */
  readonly sentences: readonly Message[];
  readonly packs: readonly {
    readonly name: string;
    readonly isEnough: boolean;
    /** What decided it: range enough or short of what is asked, behind its trace, or not to be used at all. */
    readonly because: "enough" | "short" | "behind" | "unusable";
    /** Share of the usable window used by the usual day; absent where the car does not move. */
    readonly dayUse_frac?: number;
    /** Left of the range after the usual day: today, in winter, and in winter at ten years; absent for a pack that may not be used. */
    readonly spare_km?: number;
    readonly winterSpare_km?: number;
    readonly agedSpare_km?: number;
    readonly why: Message;
  }[];
}

/** One row of the steady-speed table of one pack. */
export interface SteadyRow {
  readonly speed_kmh: number;
  /** What road and air ask at this speed, held or not. */
  readonly rolling_N: number;
  readonly aero_N: number;
  readonly drag_N: number;
  readonly battery_Whpkm: number;
  /** Whether the car holds this speed from a charged pack to an empty one. */
  readonly isHeld: boolean;
  /** At this speed; absent where it is not held. "At least" after 24 h. */
  readonly range_km?: number;
  readonly isAtLeast?: boolean;
  /** Where it is not held: for how long it is, and the highest whole km/h that is held until the pack is empty (0 where none is). */
  readonly heldFor_s?: number;
  readonly heldAlways_kmh?: number;
  readonly motor_rpm: number;
  readonly motor_Nm: number;
  readonly efficiency_frac: number;
  readonly limit: Limit;
}

/** The motor's loss over speed and torque, and its limits, for drawing. */
export interface MotorSurface {
  readonly speed_rpm: Float64Array;
  readonly torque_Nm: Float64Array;
  /** Row-major, rows by torque, columns by speed: loss in watts and efficiency, NaN-free; beyond the envelope marked by `isInside`. */
  readonly loss_W: Float64Array;
  readonly efficiency_frac: Float64Array;
  readonly isInside: Uint8Array;
  /** The envelope at nominal pack voltage, and the torque allowed after every fixed limit in the town gear. */
  readonly envelope: readonly { readonly speed_rpm: number; readonly torque_Nm: number }[];
  readonly limits: readonly {
    readonly name: string;
    readonly points: readonly { readonly speed_rpm: number; readonly torque_Nm: number }[];
  }[];
  readonly maxSpeed_rpm: number;
}
