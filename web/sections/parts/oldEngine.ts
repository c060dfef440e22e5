import { engineTorque_Nm } from "../../../shared/job/engineTorque.ts";
import type { Job } from "../../../shared/job/job.ts";
import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { engineFigures, knownEngine } from "../../../sim/index.ts";
import type { TorqueLine } from "../../charts/parts/motorGround/torqueLine.ts";

/** Digits of a figure that was not typed. */
const ASSUMED_DIGITS = 2;

/** The full-throttle torque of the engine that came out, to be drawn; undefined where too little is known of it. */
export function oldEngineLine({ engine }: Job): TorqueLine | undefined {
  const curve = knownEngine(engine).engine?.curve;
  return curve?.speed_rpm.map((speed_rpm, i) => ({ speed_rpm, torque_Nm: curve.torque_Nm[i] }));
}

/** What the engine that came out gave, in a sentence: its best torque and power, as typed or by the rule that completes them. */
export function oldEngineWords(job: Job, units: UnitHabit): string {
  const { engine, assumed, missing } = knownEngine(job.engine);
  if (!engine) {
    const torque_Nm = engineTorque_Nm(job);
    if (torque_Nm === undefined) return "What the old engine gave is not known.";
    return `The old engine gave ${writeQuantity("torque", torque_Nm, units)}; its curve needs ${engineFigures(missing)} too.`;
  }
  const { rating, isTyped } = engine;
  const figure = (kind: "torque" | "power" | "rotation", key: keyof typeof rating) => {
    const value = rating[key] ?? 0;
    return assumed.includes(key)
      ? `about ${writeQuantity(kind, value, units, ASSUMED_DIGITS)}`
      : writeQuantity(kind, value, units);
  };
  const torque = `${figure("torque", "ratedTorque_Nm")} at ${figure("rotation", "torque_rpm")}`;
  const power = `${figure("power", "ratedPower_kW")} at ${figure("rotation", "power_rpm")}`;
  const how = isTyped
    ? ", its curve as typed"
    : assumed.length > 0
      ? " (about: assumed from the rest, common practice, no source)"
      : "";
  return `The old engine gave ${torque} and ${power}${how}.`;
}
