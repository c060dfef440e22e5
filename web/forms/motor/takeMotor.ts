import type { Job, Origin } from "../../../shared/job/job.ts";
import { continuousHeat, type FittedMotor } from "../../../sim/index.ts";
import { withGroup } from "../../editing/groupEdits.ts";
import type { EditorState } from "../../editing/jobEditor.ts";
import type { BroughtMap } from "../../fields/staging.ts";

/** The state with a brought map as the motor's losses. */
export function takeMap(state: EditorState, { name, map, loss }: Extract<BroughtMap, { map: unknown }>): EditorState {
  const note = `from ${name}, ${map.givenCount} values given and ${map.filledCount} filled`.slice(0, 500);
  const taken = withGroup(state, "motor.loss", loss, { "": { from: "handbook", note } });
  return withOriginLine(taken, `losses from ${name}; the rest: ${state.job.motor.origin}`);
}

/** The state with a datasheet's figures as the motor's, the law fitted to them as its losses, and its continuous power as the heat limit. */
export function takeDatasheet(
  state: EditorState,
  fitted: FittedMotor,
  typed: Readonly<Record<string, string>>,
): EditorState {
  const { law, envelope, reference_V, maxSpeed_rpm, continuousPower_kW, continuousLoss_W, residuals } = fitted;
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
  const { heat, mass_kg } = state.job.motor;
  const held = continuousHeat(continuousLoss_W, mass_kg, heat);
  const heldOrigin: Origin = {
    from: "handbook",
    note: `datasheet: ${continuousPower_kW} kW continuous, at base speed and 40 degC`,
  };
  const usual: Origin = { from: "usual", note: "of a motor of this mass" };
  const steps: readonly [string, unknown, Readonly<Record<string, Origin>>][] = [
    ["motor.envelope", envelope, { torque_Nm: from("peakTorque_Nm"), power_kW: from("peakPower_kW") }],
    ["motor.reference_V", reference_V, { "": from("rated_V") }],
    ["motor.maxSpeed_rpm", maxSpeed_rpm, { "": from("topSpeed_rpm") }],
    ["motor.loss", { kind: "fourTerm", ...law }, { "": lossOrigin }],
    heat
      ? ["motor.heat.cooling_WpK", held.cooling_WpK, { "": heldOrigin }]
      : ["motor.heat", held, { "": usual, cooling_WpK: heldOrigin }],
  ];
  const taken = steps.reduce((at, [path, value, origins]) => withGroup(at, path, value, origins), state);
  return withOriginLine(taken, `its datasheet; losses by a law fitted to ${points}`);
}

function withOriginLine(state: EditorState, origin: string): EditorState {
  const motor: Job["motor"] = { ...state.job.motor, origin: origin.slice(0, 200).trim() };
  return { ...state, job: { ...state.job, motor } };
}
