import { peakTorque_Nm } from "../../../shared/job/peakTorque.ts";
import { message, quantity as q } from "../../../shared/quantity/message.ts";
import { CLOSE_frac } from "../currents/preCharge.ts";
import { regenLimits } from "./controllerDrive.ts";
import { IN_JOB, type Setting, type SettingsBasis, USUAL, whyNoRegen } from "./setting.ts";

/** With the foot off: this share of the limit, the rest with the pedal. Common practice, no source. */
const LIFT_OFF_frac = 0.5;
/** Where the job names no torque: this share of the driving cap. Common practice, no source: 20 to 30 %. */
const GENTLE_frac = 0.25;

/** Braking by the motor, and pre-charge. */
export function controllerRegen({ job, currents, model }: SettingsBasis): Setting[] {
  const { controller, motor } = job;
  const { regen } = controller;
  const off = whyNoRegen(job);
  const cap_Nm = Math.min(controller.torqueCap_Nm ?? Number.POSITIVE_INFINITY, peakTorque_Nm(motor.envelope));
  const limit_Nm = regen.torque_Nm ?? GENTLE_frac * cap_Nm;
  const from =
    regen.torque_Nm === undefined
      ? message`a quarter of the driving cap: ${USUAL}`
      : message`half of the job's limit: ${USUAL}`;
  const lamps = message`Brake lamps by the local rule: UN R13-H has them lit above 1.3 m/s2 (from memory). On one axle, in the wet, it can slide: begin gently.`;
  const braking: Setting[] = off
    ? [{ key: "regenLiftOff", name: "Regen", value: message`off`, from: off }]
    : [
        {
          key: "regenLiftOff",
          name: "Regen with the foot off",
          value: message`${q("torque", LIFT_OFF_frac * limit_Nm)}`,
          from,
          caution: lamps,
        },
        {
          key: "regenBrake",
          name: "Regen with the brake pedal",
          value: message`${q("torque", limit_Nm)} in all; the prediction used ${regenLimits(controller)}`,
          from: regen.torque_Nm === undefined ? from : IN_JOB,
          caution: message`The friction brakes must stop the car alone at any time.`,
        },
        {
          key: "regenFade",
          name: "Regen at low speed",
          value: message`none at ${q("speed", regen.fadeNone_kmh)} and below, in full from ${q("speed", regen.fadeFull_kmh)}`,
          from: IN_JOB,
        },
      ];
  return [...braking, preCharging(currents, model.max_V)];
}

function preCharging({ preCharge }: SettingsBasis["currents"], full_V: number): Setting {
  const { chosen, timeout_s, load_W, isFitted } = preCharge;
  const base = { key: "preCharge", name: "Pre-charge" };
  const closes = message`close at ${q("fraction", CLOSE_frac)} of the pack, ${q("voltage", CLOSE_frac * full_V)} when full`;
  if (!chosen || timeout_s === undefined)
    return {
      ...base,
      value: message`${closes}: not reached as it is wired`,
      from: message`95 %: ${USUAL}; see the currents`,
      caution: message`With ${q("accessoryPower", load_W)} drawn behind it the contactor would close on half-empty capacitors and weld: wire that load before the contactor, or let it wake later.`,
    };
  return {
    ...base,
    value: message`${q("resistor", chosen.resistance_ohm)}; ${closes}, or lock out after ${timeout_s.toPrecision(2)} s`,
    from: message`${isFitted ? "as fitted" : "from the shelf"}; 95 %, three times as long: ${USUAL}`,
  };
}
