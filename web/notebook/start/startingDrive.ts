import type { Job } from "../../../shared/job/job.ts";
import { MOST_SCALED_ratio, scaleMotor } from "../../../shared/parts/scaleMotor.ts";

/** Motor power for a car ready to drive, about what small cars of the time had: common practice, no source. */
const POWER_PER_KG = 40;
const SCALED = "; scaled to the car's weight";
/** Of a pack's energy, between ceiling and floor. */
const USABLE_frac = 0.85;
/** What a kilogram more takes, on roads where there is stopping. Common practice, no source. */
const PER_KG_Whpkm = 0.07;
const MIXED_kmh = 35;
const MOST_STRINGS = 30;

/** The motor with its controller and an old gearbox's limits, in the size that a car of this weight asks for. */
export function driveFor(start: Job, kerb_kg: number): Pick<Job, "motor" | "controller" | "driveline"> {
  const { motor, controller, driveline } = start;
  if (motor.envelope.kind !== "peak") return { motor, controller, driveline };
  const drawn_kW = motor.envelope.power_kW;
  const least_kW = Math.ceil(drawn_kW / MOST_SCALED_ratio);
  const most_kW = Math.floor(drawn_kW * MOST_SCALED_ratio);
  const power_kW = Math.min(most_kW, Math.max(least_kW, Math.round((POWER_PER_KG * kerb_kg) / 1000)));
  const size_ratio = power_kW / drawn_kW;
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
 * Packs about the one that the usual day asks for in winter with old cells, and that gives the motor its power: one size below it and one or
 * two above. Driving the road then judges them.
 */
export function packsFor(start: Job): Job["packs"] {
  const { usualDay_km, allowance, module } = start;
  const string_kWh = start.packs[0].seriesModules * moduleEnergy_kWh(module);
  const string_kg = start.packs[0].seriesModules * module.mass_kg * (1 + start.packs[0].boxes_frac);
  const usable_frac = USABLE_frac * allowance.aged_frac * (start.conditions?.winter?.usable_frac ?? 1);
  // Each string carries its own weight too.
  const string_km = (1000 * string_kWh * usable_frac) / usualDay_km - PER_KG_Whpkm * string_kg;
  const byDay = string_km > 0 ? winterUse_Whpkm(start) / string_km : MOST_STRINGS;
  const wanted = Math.min(MOST_STRINGS, Math.max(1, Math.floor(byDay), stringsForPower(start)));
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
  return 30 + PER_KG_Whpkm * (kerb_kg + load_kg) + 50 * dragArea_m2;
}

/** The same on a winter's day, at the pace of a mixed road: a tenth for cold air and tyres, and what the heater draws. Common practice, no source. */
function winterUse_Whpkm(start: Job): number {
  const winter = start.conditions?.winter;
  if (!winter) return firstUse_Whpkm(start) * start.allowance.winter_ratio;
  const { heat, temperature_degC } = winter;
  const heater_W =
    heat.kind === "thermostat"
      ? Math.min(1000 * heat.power_kW, heat.loss_WpK * Math.max(0, heat.cabin_degC - temperature_degC))
      : heat.kind === "byHour"
        ? 1000 * heat.power_kW
        : 0;
  return 1.1 * firstUse_Whpkm(start) + heater_W / MIXED_kmh;
}

/** Strings that together give the motor its power, cold and half empty: a quarter less than their highest current at mean volts. Assumed. */
function stringsForPower({ motor, module, packs: [pack] }: Job): number {
  const mean_V = (1000 * pack.seriesModules * moduleEnergy_kWh(module)) / module.capacity_Ah;
  const string_kW = (0.75 * mean_V * module.discharge.peak_A) / 1000;
  return motor.envelope.kind === "peak" ? Math.ceil(motor.envelope.power_kW / string_kW) : 1;
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
