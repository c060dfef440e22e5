import type { Job, Origin } from "../../../shared/job/job.ts";
import type { FittedMotor } from "../../../sim/index.ts";
import { withGroup } from "../../editing/groupEdits.ts";
import type { EditorState } from "../../editing/jobEditor.ts";
import type { BroughtMap } from "../../fields/staging.ts";

/** The state with a brought map as the motor's losses. */
export function takeMap(state: EditorState, { name, map, loss }: Extract<BroughtMap, { map: unknown }>): EditorState {
  const note = `from ${name}, ${map.givenCount} values given and ${map.filledCount} filled`.slice(0, 500);
  const taken = withGroup(state, "motor.loss", loss, { "": { from: "handbook", note } });
  return withOriginLine(taken, `losses from ${name}; the rest: ${state.job.motor.origin}`);
}

/** The state with a datadatasheet's figures as the motor's, and the law fitted to them as its losses. */
export function takeDatasheet(
  state: EditorState,
  fitted: FittedMotor,
  typed: Readonly<Record<string, string>>,
): EditorState {
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
  const taken = steps.reduce((at, [path, value, origins]) => withGroup(at, path, value, origins), state);
  return withOriginLine(taken, `its datasheet; losses by a law fitted to ${points}`);
}

function withOriginLine(state: EditorState, origin: string): EditorState {
  const motor: Job["motor"] = { ...state.job.motor, origin: origin.slice(0, 200).trim() };
  return { ...state, job: { ...state.job, motor } };
}
