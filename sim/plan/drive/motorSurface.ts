import type { Job } from "../../../shared/job/job.ts";
import { RADPS_PER_RPM, W_PER_KW } from "../../../shared/units.ts";
import { greatestWhere } from "../../math/halving.ts";
import { share } from "../../math/share.ts";
import { envelopeTorque_Nm } from "../../motor/envelope.ts";
import { motorLoss_W } from "../../motor/loss.ts";
import type { Model } from "../../step/model.ts";
import { prepare } from "../../step/prepare.ts";
import type { MotorSurface } from "../driveReport.ts";
import { hotDay_degC } from "../heat/hotDay.ts";
import { packFigures } from "./packFigures.ts";

const COLUMNS = 81;
const ROWS = 81;

/**
 * Loss and efficiency of motor and controller over speed and torque, with the envelope at the pack's nominal voltage and what the
 * controller and the old driveline let through, for drawing. Torques run from full braking to full driving.
 */
export function motorSurface(job: Job, packIndex: number): MotorSurface {
  const pack = job.packs[packIndex];
  const model = prepare(job, pack);
  const nominal_V = packFigures(pack, job.module, model.pack).nominal_V;
  const { motor } = model;
  const peak_Nm = motor.envelope.peakTorque_Nm;
  const speed_radps = Float64Array.from({ length: COLUMNS }, (_, i) => (motor.max_radps * i) / (COLUMNS - 1));
  const torque_Nm = Float64Array.from({ length: ROWS }, (_, j) => peak_Nm * ((2 * j) / (ROWS - 1) - 1));
  const loss_W = new Float64Array(COLUMNS * ROWS);
  const efficiency_frac = new Float64Array(COLUMNS * ROWS);
  const isInside = new Uint8Array(COLUMNS * ROWS);
  for (let j = 0; j < ROWS; j++) {
    for (let i = 0; i < COLUMNS; i++) {
      const at = j * COLUMNS + i;
      const lost_W = speed_radps[i] > 0 ? motorLoss_W(motor.loss, torque_Nm[j], speed_radps[i]) : 0;
      const shaft_W = torque_Nm[j] * speed_radps[i];
      loss_W[at] = lost_W;
      efficiency_frac[at] =
        shaft_W > 0 ? shaft_W / (shaft_W + lost_W) : shaft_W < 0 ? Math.max(0, (shaft_W + lost_W) / shaft_W) : 0;
      isInside[at] = Math.abs(torque_Nm[j]) <= envelope_Nm(model, speed_radps[i], nominal_V) ? 1 : 0;
    }
  }
  return {
    speed_rpm: speed_radps.map((speed) => speed / RADPS_PER_RPM),
    torque_Nm,
    loss_W,
    efficiency_frac,
    isInside,
    envelope: Array.from(speed_radps, (speed) => ({
      speed_rpm: speed / RADPS_PER_RPM,
      torque_Nm: envelope_Nm(model, speed, nominal_V),
    })),
    limits: [...limitCurves(model, speed_radps, nominal_V), ...continuousCurves(job, model, speed_radps, nominal_V)],
    maxSpeed_rpm: motor.max_radps / RADPS_PER_RPM,
  };
}

function envelope_Nm(model: Model, speed_radps: number, dc_V: number): number {
  const { motor } = model;
  return (
    envelopeTorque_Nm(motor.envelope, speed_radps, dc_V) * share(motor.max_radps - speed_radps, 0, motor.rollBack_radps)
  );
}

/** The finite limits as curves of motor torque: the controller's torque, power and current, and the driveline's in each gear. */
function limitCurves(model: Model, speed_radps: Float64Array, nominal_V: number): MotorSurface["limits"] {
  const { controller, motor } = model;
  const curve = (name: string, limit_Nm: (speed: number) => number) => ({
    name,
    points: Array.from(speed_radps, (speed) => ({
      speed_rpm: speed / RADPS_PER_RPM,
      torque_Nm: limit_Nm(speed),
    })).filter(({ torque_Nm }) => Number.isFinite(torque_Nm) && torque_Nm <= motor.envelope.peakTorque_Nm),
  });
  const power_W = Math.min(controller.power_W, controller.current_A * nominal_V);
  const curves = [
    curve("controller's torque", () => controller.torque_Nm),
    curve("controller's power or current", (speed) => torqueForPower_Nm(model, speed, power_W)),
    ...model.gears.map((gear) => curve(`driveline in ${gear.name}`, () => gear.drive_Nm)),
  ];
  return curves.filter(({ points }) => points.length > 1);
}

/**
 * What the motor gives continuously, within its envelope: the maker's continuous power, and the torque at which what motor and
 * controller lose is what leaves a motor that is as hot as it may be without giving less, on a hot day:
 *
 *   loss(T, ω) = cooling (T_derate - T_day)
 */
function continuousCurves(
  job: Job,
  model: Model,
  speed_radps: Float64Array,
  nominal_V: number,
): MotorSurface["limits"] {
  const { rating, heat } = job.motor;
  const { loss, envelope } = model.motor;
  const curve = (name: string, torque_Nm: (speed: number) => number) => ({
    name,
    points: Array.from(speed_radps, (speed) => ({
      speed_rpm: speed / RADPS_PER_RPM,
      torque_Nm: Math.min(torque_Nm(speed), envelope_Nm(model, speed, nominal_V)),
    })),
  });
  const power_W = (rating?.continuous_kW ?? 0) * W_PER_KW;
  const leaves_W = heat && heat.cooling_WpK * (heat.derateFrom_degC - hotDay_degC(job));
  const cool_Nm = (speed: number) =>
    greatestWhere(0, envelope.peakTorque_Nm, (torque_Nm) => motorLoss_W(loss, torque_Nm, speed) <= (leaves_W ?? 0));
  return [
    ...(rating ? [curve("continuous by its maker", (speed) => (speed > 0 ? power_W / speed : Infinity))] : []),
    ...(leaves_W !== undefined && leaves_W > 0 ? [curve("continuous on a hot day", cool_Nm)] : []),
  ];
}

/** Driving torque at which controller power reaches a limit: by halving, since loss may be any table. */
function torqueForPower_Nm(model: Model, speed_radps: number, power_W: number): number {
  const { motor } = model;
  if (speed_radps === 0) return Number.POSITIVE_INFINITY;
  const demand_W = (torque_Nm: number) => torque_Nm * speed_radps + motorLoss_W(motor.loss, torque_Nm, speed_radps);
  let low_Nm = 0;
  let high_Nm = motor.envelope.peakTorque_Nm;
  if (demand_W(high_Nm) <= power_W) return Number.POSITIVE_INFINITY;
  for (let k = 0; k < 40; k++) {
    const middle_Nm = 0.5 * (low_Nm + high_Nm);
    if (demand_W(middle_Nm) > power_W) high_Nm = middle_Nm;
    else low_Nm = middle_Nm;
  }
  return low_Nm;
}
