import type { Job, Origin } from "../../shared/job/job.ts";
import type { FittedMotor } from "../../sim/index.ts";
import type { Sheet } from "../notebook/desk.ts";
import { withGroup } from "../notebook/groupEdits.ts";
import type { BroughtMap } from "./bench.ts";

/** The sheet with a brought map as the motor's losses. */
export function takeMap(sheet: Sheet, { name, map, loss }: Extract<BroughtMap, { map: unknown }>): Sheet {
  const note = `from ${name}, ${map.givenCount} values given and ${map.filledCount} filled`.slice(0, 500);
  const taken = withGroup(sheet, "motor.loss", loss, { "": { from: "handbook", note } });
  return withOriginLine(taken, `losses from ${name}; the rest: ${sheet.job.motor.origin}`);
}

/** The sheet with a datasheet's figures as the motor's, and the law fitted to them as its losses. */
export function takeDatasheet(sheet: Sheet, fitted: FittedMotor, typed: Readonly<Record<string, string>>): Sheet {
  const { law, envelope, reference_V, maxSpeed_rpm, residuals } = fitted;
  const from = (key: string): Origin => ({
    from: "handbook",
    ...(typed[key]?.trim() && { typed: typed[key].slice(0, 200) }),
    note: "datasheet",
  });
  const count = residuals.length;
  const points =
    count === 0 ? "no efficiency point" : count === 1 ? "one efficiency point" : `${count} efficiency points`;
  const lossOrigin: Origin = {
    from: count === 0 ? "usual" : "handbook",
    note: count === 0 ? "a usual split of losses; the datasheet had no efficiency" : `a law fitted to ${points}`,
  };
  const steps: readonly [string, unknown, Readonly<Record<string, Origin>>][] = [
    ["motor.envelope", envelope, { torque_Nm: from("peakTorque_Nm"), power_kW: from("peakPower_kW") }],
    ["motor.reference_V", reference_V, { "": from("rated_V") }],
    ["motor.maxSpeed_rpm", maxSpeed_rpm, { "": from("topSpeed_rpm") }],
    ["motor.loss", { kind: "fourTerm", ...law }, { "": lossOrigin }],
  ];
  const taken = steps.reduce((at, [path, value, origins]) => withGroup(at, path, value, origins), sheet);
  return withOriginLine(taken, `its datasheet; losses by a law fitted to ${points}`);
}

function withOriginLine(sheet: Sheet, origin: string): Sheet {
  const motor: Job["motor"] = { ...sheet.job.motor, origin: origin.slice(0, 200).trim() };
  return { ...sheet, job: { ...sheet.job, motor } };
}
