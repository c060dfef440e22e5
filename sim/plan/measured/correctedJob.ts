import type { Job, Origin } from "../../../shared/job/job.ts";
import { withPath } from "../../../shared/job/path.ts";
import { prepare } from "../../step/prepare.ts";
import type { CarFit, Fitted } from "./describeFit.ts";

/**
 * The job with what a log corrected: a second, dated line that stands beside the prediction and never takes its place. Each corrected value
 * says in its origin which log it is from. Losses are changed only where the job has them as a law of four terms.
 */
export function correctedJob(job: Job, packIndex: number, { fitted }: CarFit, note: string): Job {
  const { testMass_kg } = prepare(job, job.packs[packIndex]);
  return fitted.reduce((changed, one) => {
    const paths = pathsOf(changed, one, testMass_kg);
    return paths.reduce((next, [path, value]) => {
      const origin: Origin = { from: "measured", plusMinus_frac: bandOf(one), note };
      return { ...withPath(next, path, value), origins: { ...next.origins, [path]: origin } };
    }, changed);
  }, job);
}

function bandOf({ value, low, high, id }: Fitted): number {
  const size = id === "accessories" ? Number.POSITIVE_INFINITY : Math.abs(value);
  return Math.min(2, Number.isFinite(size) ? (high - low) / 2 / size : 0.05);
}

/** Which values of a job a fitted one changes, and to what. */
function pathsOf(job: Job, { id, value }: Fitted, testMass_kg: number): (readonly [string, number])[] {
  const { vehicle, accessories, controller, motor } = job;
  const { tyres, roadLoad } = vehicle;
  const scaled = (path: string, from: number | undefined, by = value): (readonly [string, number])[] =>
    from === undefined ? [] : [[path, from * by]];
  switch (id) {
    case "rolling":
      return roadLoad.kind === "coastDown"
        ? [...scaled("vehicle.roadLoad.f0_N", roadLoad.f0_N), ...scaled("vehicle.roadLoad.f1_Npkmh", roadLoad.f1_Npkmh)]
        : [
            ...scaled("vehicle.tyres.rolling_coeff", tyres.rolling_coeff),
            ...scaled("vehicle.tyres.rollingRise_coeff", tyres.rollingRise_coeff),
          ];
    case "drag":
      if (roadLoad.kind === "coastDown") return scaled("vehicle.roadLoad.f2_Npkmh2", roadLoad.f2_Npkmh2);
      return roadLoad.kind === "dragArea"
        ? scaled("vehicle.roadLoad.dragArea_m2", roadLoad.dragArea_m2)
        : scaled("vehicle.roadLoad.drag_coeff", roadLoad.drag_coeff);
    case "accessories":
      // Added at the pack; the job has it at 12 V.
      return [
        ["accessories.standing_W", Math.max(0, accessories.standing_W + value * accessories.dcdcEfficiency_frac)],
      ];
    case "regen":
      return [
        ...scaled("controller.regen.torque_Nm", controller.regen.torque_Nm),
        ...scaled("controller.regen.power_kW", controller.regen.power_kW),
        ...scaled("controller.regen.current_A", controller.regen.current_A),
        ...scaled("controller.regen.wheelForce_N", controller.regen.wheelForce_N),
      ];
    case "motorLoss":
      return motor.loss.kind === "fourTerm"
        ? [
            ...scaled("motor.loss.copper_coeff", motor.loss.copper_coeff),
            ...scaled("motor.loss.iron_coeff", motor.loss.iron_coeff),
            ...scaled("motor.loss.windage_coeff", motor.loss.windage_coeff),
            ...scaled("motor.loss.constant_W", motor.loss.constant_W),
          ]
        : [];
    case "mass": {
      // All of the difference lies in the car itself: packs and load were weighed by themselves.
      const key = vehicle.converted_kg === undefined ? "kerb_kg" : "converted_kg";
      return [[`vehicle.${key}`, (vehicle[key] ?? 0) + (value - 1) * testMass_kg]];
    }
    case "meshLoss":
    case "gain":
    case "zero":
      return [];
  }
}
