import type { Job } from "../../shared/job/job.ts";
import { transferBox_ratio } from "../../shared/job/transferBoxRatio.ts";
import { MM_PER_M, MPS_PER_KMH, RADPS_PER_RPM } from "../../shared/units.ts";
import type { Gear } from "./gear.ts";

/** The gears a job's car uses, the speeds at which it changes, which axles drive, and the drag of front shafts that turn. */
interface PreparedDriveline {
  readonly gears: readonly Gear[];
  readonly gearUp_mps: Float64Array;
  readonly drivenAxle: "front" | "rear" | "both";
  readonly frontShaftDrag_Nm: number;
}

/**
 * The driveline of a job, ready for stepping.
 *
 *   motor speed over road speed = gear x transfer x final drive / r;  efficiency = product of the meshes passed
 *
 * Limits of the old parts are brought to the gearbox input by the ratios in between, counting what is lost on the way: a propeller
 * shaft carries (input - no-load drag) x gear x efficiency when driving, (input + drag) x gear / efficiency on the overrun, where both
 * slow the car, and a half-shaft takes its share of the axle. With both axles engaged the torque is taken to split evenly
 * (assumed: a locked transfer box shares by slip, which is not known).
 *
 * Front shafts cost their drag while they turn, driven or not: always but with the hubs free and the front axle disengaged.
 */
export function prepareDriveline(job: Job): PreparedDriveline {
  const { driveline, vehicle, motor, controller } = job;
  const { transferBox, limits } = driveline;
  const radius_m = vehicle.tyres.loadedRadius_mm / MM_PER_M;
  const isLow = transferBox?.range === "low";
  const transfer_ratio = transferBox_ratio(driveline);
  const transfer_frac = transferBox ? (isLow ? transferBox.lowEfficiency_frac : transferBox.highEfficiency_frac) : 1;
  // Engaged with its hubs free, the front axle turns its shafts and drives nothing.
  const drivesFront = transferBox?.isFrontEngaged === true && transferBox.hubs !== "free";
  const turnsFront = transferBox !== undefined && (transferBox.isFrontEngaged || transferBox.hubs !== "free");
  const front_frac = drivesFront ? (1 + transferBox.frontEfficiency_frac) / 2 : 1;
  const drivenAxle = drivesFront ? "both" : driveline.drivenAxle;
  const axles = drivenAxle === "both" ? 2 : 1;

  const { shifting } = driveline;
  const drag_Nm = driveline.noLoadDrag_Nm;
  const used =
    shifting.kind === "fixed"
      ? driveline.gears.filter((gear) => gear.name === shifting.gear)
      : shifting.gears.flatMap((name) => driveline.gears.filter((gear) => gear.name === name));
  const gears = used.map((gear): Gear => {
    const toShaft_ratio = gear.gear_ratio * transfer_ratio;
    const overall_ratio = toShaft_ratio * driveline.finalDrive_ratio;
    const whole_frac = driveline.wholeEfficiency_frac;
    // Of one efficiency for all, half the loss is taken to lie before the propeller shaft (assumed).
    const shaft_frac = whole_frac === undefined ? gear.efficiency_frac * transfer_frac : Math.sqrt(whole_frac);
    const efficiency_frac = whole_frac ?? shaft_frac * driveline.finalDriveEfficiency_frac * front_frac;
    const input_Nm = limits.gearboxInput_Nm ?? Number.POSITIVE_INFINITY;
    const propeller_Nm = (axles * (limits.propellerShaft_Nm ?? Number.POSITIVE_INFINITY)) / toShaft_ratio;
    const halves_Nm = (2 * axles * (limits.halfShaft_Nm ?? Number.POSITIVE_INFINITY)) / overall_ratio;
    const asked_N = controller.regen.wheelForce_N ?? Number.POSITIVE_INFINITY;
    const motor_radpm = overall_ratio / radius_m;
    return {
      name: gear.name,
      motor_radpm,
      efficiency_frac,
      drive_Nm: Math.min(input_Nm, propeller_Nm / shaft_frac + drag_Nm, halves_Nm / efficiency_frac + drag_Nm),
      overrun_Nm: Math.min(input_Nm, propeller_Nm * shaft_frac - drag_Nm, halves_Nm * efficiency_frac - drag_Nm),
      regen_Nm: (asked_N * efficiency_frac) / motor_radpm,
      top_mps: (motor.maxSpeed_rpm * RADPS_PER_RPM) / motor_radpm,
    };
  });
  return {
    gears,
    gearUp_mps: Float64Array.from(
      shifting.kind === "fixed" ? [] : shifting.up_kmh,
      (speed_kmh) => speed_kmh * MPS_PER_KMH,
    ),
    drivenAxle,
    frontShaftDrag_Nm: turnsFront ? transferBox.frontShaftDrag_Nm : 0,
  };
}
