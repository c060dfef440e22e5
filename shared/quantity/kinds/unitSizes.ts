import {
  J_PER_KWH,
  J_PER_WH,
  KG_PER_CWT,
  KG_PER_CWT_SHORT,
  KG_PER_LB,
  L_PER_GALLON_IMPERIAL,
  L_PER_GALLON_US,
  M_PER_FT,
  M_PER_IN,
  M_PER_MILE,
  M_PER_YARD,
  MPS_PER_KMH,
  PA_PER_ATM,
  PA_PER_INHG,
  PA_PER_MMHG,
  PA_PER_PSI,
  S_PER_H,
  S_PER_MIN,
  STANDARD_GRAVITY_mps2,
  W_PER_BHP,
  W_PER_PS,
} from "../../units.ts";

export const J_PER_KJ = 1000;
export const J_PER_MJ = 1e6;
export const KMH_PER_MPS = 1 / MPS_PER_KMH;
const KG_PER_STONE = 14 * KG_PER_LB;

// Spellings understood, tidied as `tidyUnit` does, and what one of each is in the unit that the list is named after.

/** In kilograms. */
export const masses = {
  ...{ kg: 1, kilo: 1, kilogram: 1, kilogramme: 1, g: 1e-3, gram: 1e-3, t: 1000, tonne: 1000, metricton: 1000 },
  ...{ lb: KG_PER_LB, pound: KG_PER_LB, oz: KG_PER_LB / 16, st: KG_PER_STONE, stone: KG_PER_STONE },
  ...{ cwt: KG_PER_CWT, hundredweight: KG_PER_CWT, longcwt: KG_PER_CWT, cwt112lb: KG_PER_CWT, cwtof112lb: KG_PER_CWT },
  ...{ shortcwt: KG_PER_CWT_SHORT, cwt100lb: KG_PER_CWT_SHORT, cwtof100lb: KG_PER_CWT_SHORT, uscwt: KG_PER_CWT_SHORT },
  ...{ qr: KG_PER_CWT / 4, qtr: KG_PER_CWT / 4, quarter: KG_PER_CWT / 4 },
  ...{ ton: 20 * KG_PER_CWT, longton: 20 * KG_PER_CWT, shortton: 20 * KG_PER_CWT_SHORT },
};
export const metres = {
  ...{ m: 1, metre: 1, meter: 1, cm: 0.01, mm: 1e-3, millimetre: 1e-3, centimetre: 0.01, km: 1000 },
  ...{ in: M_PER_IN, inch: M_PER_IN, inches: M_PER_IN, '"': M_PER_IN },
  ...{ ft: M_PER_FT, foot: M_PER_FT, feet: M_PER_FT, "'": M_PER_FT, yd: M_PER_YARD, yard: M_PER_YARD },
};
export const roads = { kilometre: 1000, kilometer: 1000, mi: M_PER_MILE, mile: M_PER_MILE };
export const watts = {
  ...{ w: 1, watt: 1, kw: 1000, kilowatt: 1000, mw: 1e6, va: 1, kva: 1000 },
  ...{ bhp: W_PER_BHP, hp: W_PER_BHP, horsepower: W_PER_BHP, brakehorsepower: W_PER_BHP, shp: W_PER_BHP },
  ...{ ps: W_PER_PS, cv: W_PER_PS, ch: W_PER_PS, pk: W_PER_PS, metrichp: W_PER_PS, hpmetric: W_PER_PS },
};
export const pascals = {
  ...{
    pa: 1,
    hpa: 100,
    mbar: 100,
    kpa: 1000,
    mpa: 1e6,
    bar: 1e5,
    atm: PA_PER_ATM,
    mmhg: PA_PER_MMHG,
    inhg: PA_PER_INHG,
  },
  ...{ psi: PA_PER_PSI, "lb/in2": PA_PER_PSI, "lbf/in2": PA_PER_PSI, "lb/sqin": PA_PER_PSI, "lbs/sqin": PA_PER_PSI },
  ...{ lb: PA_PER_PSI, "kg/cm2": STANDARD_GRAVITY_mps2 * 1e4, "kgf/cm2": STANDARD_GRAVITY_mps2 * 1e4 },
};
export const seconds = {
  ...{ s: 1, sec: 1, second: 1, ms: 1e-3, min: S_PER_MIN, minute: S_PER_MIN, h: S_PER_H, hr: S_PER_H, hour: S_PER_H },
  ...{ d: 24 * S_PER_H, day: 24 * S_PER_H },
};
export const joules = {
  j: 1,
  kj: J_PER_KJ,
  mj: J_PER_MJ,
  wh: J_PER_WH,
  kwh: J_PER_KWH,
  kilowatthour: J_PER_KWH,
  watthour: J_PER_WH,
};
export const degrees = {
  ...{ deg: 1, degree: 1, rad: 180 / Math.PI, radian: 180 / Math.PI },
  ...{ "'": 1 / 60, '"': 1 / 3600 },
};
export const KM_PER_MILE = M_PER_MILE / 1000;
export const MPG_IMPERIAL = (100 * L_PER_GALLON_IMPERIAL) / KM_PER_MILE; // 282.481 over mpg is l/100 km
export const MPG_US = (100 * L_PER_GALLON_US) / KM_PER_MILE; // 235.215
