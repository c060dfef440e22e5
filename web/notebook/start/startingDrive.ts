import type { Job } from "../../../shared/job/job.ts";
import { scaleMotor } from "../../../shared/parts/scaleMotor.ts";

/** Motor power for a car ready to drive, about what small cars of the time had: common practice, no source. */
const POWER_PER_KG = 40;
const SCALED = "; scaled to the car's weight";
/** Of a pack's energy, between ceiling and floor. */
const USABLE_frac = 0.85;

/** The motor with its controller and an old gearbox's limits, in the size that a car of this weight asks for. */
export function driveFor(start: Job, kerb_kg: number): Pick<Job, "motor" | "controller" | "driveline"> {
  const { motor, controller, driveline } = start;
  if (motor.envelope.kind !== "peak") return { motor, controller, driveline };
  const power_kW = Math.round((POWER_PER_KG * kerb_kg) / 1000);
  const size_ratio = power_kW / motor.envelope.power_kW;
  const scaled = (value: number) => Math.round(size_ratio * value);
  const { regen, torqueCap_Nm, current_A } = controller;
  const { gearboxInput_Nm, propellerShaft_Nm } = driveline.limits ?? {};
  return {
    motor: {
      ...rounded(scaleMotor(motor, size_ratio)),
      name: `Low-voltage induction, ${power_kW} kW`,
      origin: `${motor.origin ?? "invented"}${SCALED}`,
    },
    controller: {
      ...controller,
      ...(torqueCap_Nm !== undefined && { torqueCap_Nm: scaled(torqueCap_Nm) }),
      ...(current_A !== undefined && { current_A: scaled(current_A) }),
      regen: {
        ...regen,
        ...(regen.torque_Nm !== undefined && { torque_Nm: scaled(regen.torque_Nm) }),
        ...(regen.current_A !== undefined && { current_A: scaled(regen.current_A) }),
      },
    },
    driveline: {
      ...driveline,
      limits: {
        ...driveline.limits,
        ...(gearboxInput_Nm !== undefined && { gearboxInput_Nm: scaled(gearboxInput_Nm) }),
        ...(propellerShaft_Nm !== undefined && { propellerShaft_Nm: scaled(propellerShaft_Nm) }),
      },
    },
  };
}

/** A motor of `driveFor`, chosen by nobody. */
export function isScaled({ origin }: Job["motor"]): boolean {
  return origin?.endsWith(SCALED) ?? false;
}

/**
 * Packs about the one that the usual day asks for in winter with old cells, one size below it and one or two above.
 * Driving the road then judges them.
 */
export function packsFor(start: Job): Job["packs"] {
  const { usualDay_km, allowance, module } = start;
  const asked_kWh =
    (firstUse_Whpkm(start) * usualDay_km * allowance.winter_ratio) / allowance.aged_frac / USABLE_frac / 1000;
  const string_kWh = start.packs[0].seriesModules * moduleEnergy_kWh(module);
  const wanted = Math.min(20, Math.max(1, Math.round(asked_kWh / string_kWh)));
  const sizes = [...new Set([wanted - 1, wanted, wanted + 1, Math.round(1.5 * wanted)])].filter((size) => size > 0);
  return sizes
    .toSorted((a, b) => a - b)
    .map((parallelModules) => ({
      ...start.packs[0],
      name: `${Math.round(parallelModules * string_kWh)} kWh`,
      parallelModules,
    }));
}

/** Energy per km by weight and drag area, before anything is driven; good to a fifth. Common practice, no source. */
export function firstUse_Whpkm({ vehicle: { roadLoad, kerb_kg, load_kg } }: Job): number {
  const dragArea_m2 = roadLoad.kind === "physical" ? roadLoad.drag_coeff * roadLoad.frontalArea_m2 : 1;
  return 30 + 0.07 * (kerb_kg + load_kg) + 50 * dragArea_m2;
}

/** Between full and empty, by the trapezoid rule over the open-circuit curve. */
function moduleEnergy_kWh({ openCircuit: { soc_frac, cell_V }, seriesCells, capacity_Ah }: Job["module"]): number {
  const steps_V = soc_frac.slice(1).map((soc, i) => 0.5 * (cell_V[i] + cell_V[i + 1]) * (soc - soc_frac[i]));
  return (steps_V.reduce((sum, step) => sum + step, 0) * seriesCells * capacity_Ah) / 1000;
}

/** Three digits are all that a scaled motor is good for. */
function rounded(motor: Job["motor"]): Job["motor"] {
  return JSON.parse(
    JSON.stringify(motor, (_, value) => (typeof value === "number" ? Number(value.toPrecision(3)) : value)),
  );
}
