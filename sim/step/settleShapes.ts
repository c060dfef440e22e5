import { type PackModel, packWith } from "../battery/packModel.ts";
import { prepareHeat } from "../math/heatLump.ts";
import { uniformTable } from "../math/uniformTable.ts";
import { controllerWith } from "../motor/motorModel.ts";
import { prepareCabin } from "../vehicle/cabin.ts";
import { type Gear, gearWith } from "../vehicle/gear.ts";
import { roadWith } from "../vehicle/roadLoad.ts";
import { type Model, modelWith } from "./model.ts";
import { createRunContext, type RunContext } from "./runContext.ts";

/** Kept for good: an engine forgets a shape that no object has any more. */
let settled: RunContext | undefined;

/**
 * Makes one car that has no whole number in it, and keeps it. To the engines that run this, an object with 900 in a field is of another
 * shape than one with 900.5, and what was compiled for the one is compiled anew for the other. With such a car made before any other, all
 * are of its shape from the start, whatever is typed into a job later: the first studies of a page take half of the processor.
 */
export function settleShapes(): void {
  if (settled) return;
  const heat = { capacity_kJpK: 0.5, cooling_WpK: 0.5, derateFrom_degC: 0.5, derateTo_degC: 0.75 };
  const table = uniformTable([0, 1], [0.5, 0.5], 1);
  const current = { continuous_A: 0.5, peak_A: 0.75, budget_A2s: 0.5 };
  const car = halves<Model>({
    road: roadWith(halves({}), {}),
    gears: [gearWith(halves<Gear>({ name: "a gear" }), {})],
    gearUp_mps: new Float64Array(1),
    grip: undefined,
    controller: controllerWith(halves({}), {}),
    pack: packWith(
      halves<PackModel>({
        openCircuit_V: table,
        resistance_ohm: table,
        resistance_ratio: table,
        discharge: current,
        charge: current,
        heat: prepareHeat(heat, 1),
      }),
      {},
    ),
    cabin: prepareCabin({
      kind: "thermostat",
      power_kW: 0.5,
      cabin_degC: 0.5,
      isPreheated: false,
      trip_km: 0.5,
      capacity_kJpK: 0.5,
      loss_WpK: 0.5,
    }),
    hasWindHome: false,
  });
  const context = createRunContext(modelWith(car, {}), 0.5);
  settled = context;
  context.ramp_frac = 0.5;
  context.start.heater_W = 0.5;
  context.state.trip_m = 0.5;
  context.state.elevation_m = 0.5;
}

/** An object with some fields; whatever else is asked of it is one half. */
function halves<T extends object>(fields: Partial<T>): T {
  return new Proxy(fields, { get: (_, key) => (key in fields ? fields[key as keyof T] : 0.5) }) as T;
}
