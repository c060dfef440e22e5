import type { Job } from "../../../shared/job/job.ts";
import { peakTorque_Nm } from "../../../shared/job/peakTorque.ts";
import { transferBox_ratio } from "../../../shared/job/transferBoxRatio.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { MM_PER_M, MPS_PER_KMH, RADPS_PER_RPM } from "../../../shared/units.ts";
import { EASY_frac } from "../gears/gearTable.ts";
import { BY_SHEET, IN_JOB, type Setting, type SettingsBasis, USUAL } from "./setting.ts";

/** Where the job has no ramp: gears break on shock. Common practice, no source: half a second to one. */
const RAMP_s = 0.7;
/** Turned backwards by the motor the car goes no faster than this share of its top speed. Common practice, no source. */
const BACKWARDS_frac = 0.1;

/** Torque, speed and pedal of the controller. */
export function controllerDrive({ job }: SettingsBasis): Setting[] {
  const { controller, motor, driveline } = job;
  const peak_Nm = peakTorque_Nm(motor.envelope);
  const box_Nm = driveline.limits.gearboxInput_Nm;
  const cap_Nm = Math.min(controller.torqueCap_Nm ?? box_Nm ?? peak_Nm, peak_Nm);
  const { ramp_s } = controller;
  const { gear, top_kmh } = fastestGear(job);
  const { maxSpeed_rpm, rollBack_rpm, fullCurrent_A, heat } = motor;
  return [
    {
      key: "torqueCap",
      name: "Torque cap",
      value: message`${q("torque", cap_Nm)}`,
      from:
        controller.torqueCap_Nm !== undefined && controller.torqueCap_Nm <= peak_Nm
          ? message`in the job${box_Nm === undefined ? "" : message`; the gearbox takes ${q("torque", box_Nm)}`}`
          : box_Nm !== undefined && box_Nm <= peak_Nm
            ? message`no cap is in the job: the gearbox's input limit`
            : message`the motor's peak`,
      ...(box_Nm !== undefined && cap_Nm > box_Nm
        ? { caution: message`More than the gearbox's input limit of ${q("torque", box_Nm)}: lower it.` }
        : box_Nm === undefined
          ? { caution: message`Nobody has said what the gearbox takes: the old engine's peak is where to begin.` }
          : {}),
    },
    {
      key: "motorCurrent",
      name: "Motor current at most",
      value:
        fullCurrent_A === undefined
          ? message`by the sheet, for ${q("torque", cap_Nm)}`
          : message`${q("current", (fullCurrent_A * cap_Nm) / peak_Nm)}, root mean square`,
      from:
        fullCurrent_A === undefined
          ? BY_SHEET
          : message`${q("current", fullCurrent_A)} at the motor's ${q("torque", peak_Nm)}, in proportion to the cap (assumed)`,
    },
    {
      key: "torqueRamp",
      name: "Torque ramp, none to full",
      value: message`${ramp_s > 0 ? ramp_s : RAMP_s} s`,
      from: ramp_s > 0 ? IN_JOB : message`none is in the job: half a second to one, ${USUAL}`,
    },
    {
      key: "reverse",
      name: "Reverse",
      value: message`by the gearbox, ${q("torque", 0.5 * cap_Nm)} at most; the motor backwards only without a reverse gear, to ${q("rotation", BACKWARDS_frac * maxSpeed_rpm)}`,
      from: message`half of the cap, a tenth of the motor's speed: ${USUAL}`,
      caution: message`Never both by accident: an interlock, and the reversing lamp with either.`,
    },
    {
      key: "motorSpeed",
      name: "Motor speed limit",
      value: message`${q("rotation", maxSpeed_rpm)}, torque falling from ${q("rotation", maxSpeed_rpm - rollBack_rpm)}`,
      from: IN_JOB,
    },
    {
      key: "roadSpeed",
      name: `Speed that is, in ${gear}`,
      value: message`${q("speed", top_kmh)}; below ${q("speed", EASY_frac * top_kmh)} for hours`,
      from: message`that limit through the gears used; nine tenths for hours: ${USUAL}`,
    },
    {
      key: "throttle",
      name: "Throttle",
      value: message`5 % dead at either end, rising gently at first; no start with the pedal down`,
      from: USUAL,
      caution: message`Two tracks that disagree must mean no torque.`,
    },
    { key: "creep", name: "Creep", value: message`off`, from: USUAL },
    {
      key: "motorTemperature",
      name: "Motor temperature roll-back",
      value: heat
        ? message`from ${q("temperature", heat.derateFrom_degC)}, none at ${q("temperature", heat.derateTo_degC)}`
        : message`by its sheet`,
      from: heat ? IN_JOB : BY_SHEET,
    },
    {
      key: "interlocks",
      name: "Interlocks",
      value: message`charging lead in: no drive; inertia switch, service disconnect and battery management each open the contactors`,
      from: USUAL,
      caution: message`Try each of them on stands, wheels clear of the ground.`,
    },
  ];
}

/** The highest of the gears used, and the speed of the car at the motor's top speed in it. */
function fastestGear(job: Job): { readonly gear: string; readonly top_kmh: number } {
  const { gears, finalDrive_ratio, shifting } = job.driveline;
  const used = shifting.kind === "fixed" ? [shifting.gear] : shifting.gears;
  const highest = gears
    .filter(({ name }) => used.includes(name))
    .reduce((a, b) => (b.gear_ratio < a.gear_ratio ? b : a));
  const overall_ratio = highest.gear_ratio * transferBox_ratio(job.driveline) * finalDrive_ratio;
  const radius_m = job.vehicle.tyres.loadedRadius_mm / MM_PER_M;
  const top_kmh = (job.motor.maxSpeed_rpm * RADPS_PER_RPM * radius_m) / overall_ratio / MPS_PER_KMH;
  return { gear: highest.name, top_kmh };
}

/** The limits that braking by the motor has, all that hold, in words. */
export function regenLimits({ regen }: Pick<Job["controller"], "regen">): Message {
  const parts = [
    ...(regen.torque_Nm === undefined ? [] : [message`${q("torque", regen.torque_Nm)} at the motor`]),
    ...(regen.power_kW === undefined ? [] : [message`${q("electricPower", regen.power_kW)} at the controller`]),
    ...(regen.current_A === undefined ? [] : [message`${q("current", regen.current_A)} at the controller`]),
    ...(regen.wheelForce_N === undefined ? [] : [message`${q("force", regen.wheelForce_N)} at the tyres`]),
  ];
  if (parts.length === 0) return message`no limit but motor and pack`;
  return parts.flatMap((part, i) => (i === 0 ? part : [", ", ...part]));
}
