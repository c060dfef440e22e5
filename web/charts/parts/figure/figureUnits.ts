import {
  KG_PER_LB,
  M_PER_FT,
  M_PER_KM,
  M_PER_MILE,
  MPS_PER_KMH,
  MPS_PER_MPH,
  N_PER_LBF,
  NM_PER_LBFT,
  W_PER_BHP,
  W_PER_KW,
  ZERO_CELSIUS_K,
} from "../../../../shared/units.ts";

/** A unit as shown: its sign for people, its suffix for column names, and what one of it is in the base unit. */
export interface FigureUnit {
  readonly sign: string;
  readonly suffix: string;
  readonly perBase: number;
  readonly offset?: number;
}

/** Units a figure is drawn in. Base units: m, m, m/s, Wh/km, Nm, W, N, K, kg. */
export interface FigureUnits {
  readonly distance: FigureUnit;
  readonly height: FigureUnit;
  readonly speed: FigureUnit;
  readonly consumption: FigureUnit;
  readonly torque: FigureUnit;
  /** Of a shaft. */
  readonly power: FigureUnit;
  /** Of pack, controller or charger. */
  readonly electricPower: FigureUnit;
  readonly force: FigureUnit;
  readonly temperature: FigureUnit;
  readonly mass: FigureUnit;
}

export const METRIC: FigureUnits = {
  distance: { sign: "km", suffix: "km", perBase: 1 / M_PER_KM },
  height: { sign: "m", suffix: "m", perBase: 1 },
  speed: { sign: "km/h", suffix: "kmh", perBase: 1 / MPS_PER_KMH },
  consumption: { sign: "Wh/km", suffix: "Whpkm", perBase: 1 },
  torque: { sign: "Nm", suffix: "Nm", perBase: 1 },
  power: { sign: "kW", suffix: "kW", perBase: 1 / W_PER_KW },
  electricPower: { sign: "kW", suffix: "kW", perBase: 1 / W_PER_KW },
  force: { sign: "N", suffix: "N", perBase: 1 },
  temperature: { sign: "°C", suffix: "degC", perBase: 1, offset: -ZERO_CELSIUS_K },
  mass: { sign: "kg", suffix: "kg", perBase: 1 },
};

/** Miles, feet and pounds. Electric power stays in kW, as batteries and chargers are sold by it everywhere. */
export const MILES: FigureUnits = {
  ...METRIC,
  distance: { sign: "miles", suffix: "mi", perBase: 1 / M_PER_MILE },
  height: { sign: "ft", suffix: "ft", perBase: 1 / M_PER_FT },
  speed: { sign: "mph", suffix: "mph", perBase: 1 / MPS_PER_MPH },
  consumption: { sign: "Wh/mile", suffix: "Whpmi", perBase: M_PER_MILE / M_PER_KM },
  torque: { sign: "lb ft", suffix: "lbft", perBase: 1 / NM_PER_LBFT },
  force: { sign: "lbf", suffix: "lbf", perBase: 1 / N_PER_LBF },
  mass: { sign: "lb", suffix: "lb", perBase: 1 / KG_PER_LB },
};

/** As fields and sentences speak to a Briton: newtons stay. */
export const BRITISH: FigureUnits = {
  ...MILES,
  force: METRIC.force,
  power: { sign: "bhp", suffix: "bhp", perBase: 1 / W_PER_BHP },
};

export const AMERICAN: FigureUnits = {
  ...MILES,
  power: { sign: "hp", suffix: "hp", perBase: 1 / W_PER_BHP },
  temperature: { sign: "°F", suffix: "degF", perBase: 9 / 5, offset: 32 - (9 / 5) * ZERO_CELSIUS_K },
};

/** A value given in the base unit, in the unit shown. */
export function inUnit(unit: FigureUnit, base: number): number {
  return base * unit.perBase + (unit.offset ?? 0);
}

/** The base value of one that is shown. */
export function fromUnit(unit: FigureUnit, shown: number): number {
  return (shown - (unit.offset ?? 0)) / unit.perBase;
}
