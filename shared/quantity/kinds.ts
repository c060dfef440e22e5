import {
  C_PER_AH,
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
  MPS_PER_KNOT,
  N_PER_LBF,
  NM_PER_LBFT,
  PA_PER_ATM,
  PA_PER_INHG,
  PA_PER_MMHG,
  PA_PER_PSI,
  RADPS_PER_RPM,
  S_PER_H,
  S_PER_MIN,
  STANDARD_GRAVITY_mps2,
  W_PER_BHP,
  W_PER_PS,
  ZERO_CELSIUS_K,
} from "../units.ts";

/**
 * How a number in some unit becomes one in the kind's own: times a factor; or first shifted, then times a factor
 * (temperatures); or as a divisor (miles to the gallon).
 */
export type UnitRule = number | { readonly shift: number; readonly factor: number } | { readonly over: number };

/** One kind of quantity: the unit its key has in the job file, what is possible, and how the trade spells it. */
export interface QuantityKindInfo {
  /** For a sentence: `a gear ratio`. */
  readonly name: string;
  /** Suffix of the key in the job file; empty for a count. */
  readonly suffix: string;
  /** The same unit as people read it. */
  readonly unit: string;
  /** Beyond these it is refused: wide enough for an odd but real vehicle. Assumed, common practice, no source. */
  readonly min: number;
  readonly max: number;
  /** Where nearly all of them lie: used only to guess what was meant. Assumed, common practice, no source. */
  readonly usual: readonly [number, number];
  /** How the units are usually written, for people. */
  readonly spellings: readonly string[];
  /** Spellings understood, tidied as `tidyUnit` does. */
  readonly units: Readonly<Record<string, UnitRule>>;
  /** Units that get mistaken for one another in this kind: `psi` for `bar`. */
  readonly slips?: readonly string[];
}

const J_PER_KJ = 1000;
const J_PER_MJ = 1e6;
const KMH_PER_MPS = 1 / MPS_PER_KMH;
const KG_PER_STONE = 14 * KG_PER_LB;
const masses = {
  ...{ kg: 1, kilo: 1, kilogram: 1, kilogramme: 1, g: 1e-3, gram: 1e-3, t: 1000, tonne: 1000, metricton: 1000 },
  ...{ lb: KG_PER_LB, pound: KG_PER_LB, oz: KG_PER_LB / 16, st: KG_PER_STONE, stone: KG_PER_STONE },
  ...{ cwt: KG_PER_CWT, hundredweight: KG_PER_CWT, longcwt: KG_PER_CWT, cwt112lb: KG_PER_CWT, cwtof112lb: KG_PER_CWT },
  ...{ shortcwt: KG_PER_CWT_SHORT, cwt100lb: KG_PER_CWT_SHORT, cwtof100lb: KG_PER_CWT_SHORT, uscwt: KG_PER_CWT_SHORT },
  ...{ qr: KG_PER_CWT / 4, qtr: KG_PER_CWT / 4, quarter: KG_PER_CWT / 4 },
  ...{ ton: 20 * KG_PER_CWT, longton: 20 * KG_PER_CWT, shortton: 20 * KG_PER_CWT_SHORT },
};
const metres = {
  ...{ m: 1, metre: 1, meter: 1, cm: 0.01, mm: 1e-3, millimetre: 1e-3, centimetre: 0.01, km: 1000 },
  ...{ in: M_PER_IN, inch: M_PER_IN, inches: M_PER_IN, '"': M_PER_IN },
  ...{ ft: M_PER_FT, foot: M_PER_FT, feet: M_PER_FT, "'": M_PER_FT, yd: M_PER_YARD, yard: M_PER_YARD },
};
const roads = { kilometre: 1000, kilometer: 1000, mi: M_PER_MILE, mile: M_PER_MILE };
const watts = {
  ...{ w: 1, watt: 1, kw: 1000, kilowatt: 1000, mw: 1e6, va: 1, kva: 1000 },
  ...{ bhp: W_PER_BHP, hp: W_PER_BHP, horsepower: W_PER_BHP, brakehorsepower: W_PER_BHP, shp: W_PER_BHP },
  ...{ ps: W_PER_PS, cv: W_PER_PS, ch: W_PER_PS, pk: W_PER_PS, metrichp: W_PER_PS, hpmetric: W_PER_PS },
};
const pascals = {
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
const seconds = {
  ...{ s: 1, sec: 1, second: 1, ms: 1e-3, min: S_PER_MIN, minute: S_PER_MIN, h: S_PER_H, hr: S_PER_H, hour: S_PER_H },
  ...{ d: 24 * S_PER_H, day: 24 * S_PER_H },
};
const joules = {
  j: 1,
  kj: J_PER_KJ,
  mj: J_PER_MJ,
  wh: J_PER_WH,
  kwh: J_PER_KWH,
  kilowatthour: J_PER_KWH,
  watthour: J_PER_WH,
};
const degrees = {
  ...{ deg: 1, degree: 1, rad: 180 / Math.PI, radian: 180 / Math.PI },
  ...{ "'": 1 / 60, '"': 1 / 3600 },
};
const KM_PER_MILE = M_PER_MILE / 1000;
const MPG_IMPERIAL = (100 * L_PER_GALLON_IMPERIAL) / KM_PER_MILE; // 282.481 over mpg is l/100 km
const MPG_US = (100 * L_PER_GALLON_US) / KM_PER_MILE; // 235.215

/** Every kind there is. The bounds are the program's own; a field with better ones gives them. */
export const quantityKinds = {
  mass: {
    ...kind("a mass", "kg", "kg", 0.001, 40_000, [5, 4000], ["kg", "t", "lb", "cwt", "st"]),
    units: masses,
    slips: ["lb", "cwt", "t"],
  },
  speed: {
    ...kind("a speed", "kmh", "km/h", 0, 300, [3, 200], ["km/h", "mph", "m/s", "knots"]),
    units: {
      ...{ "km/h": 1, kmh: 1, kph: 1, "km/hr": 1, mph: KM_PER_MILE, "mile/h": KM_PER_MILE, "mi/h": KM_PER_MILE },
      ...{ "miles/hour": KM_PER_MILE, "m/s": KMH_PER_MPS, mps: KMH_PER_MPS, "ft/s": M_PER_FT * KMH_PER_MPS },
      ...{ kn: MPS_PER_KNOT * KMH_PER_MPS, kt: MPS_PER_KNOT * KMH_PER_MPS, knot: MPS_PER_KNOT * KMH_PER_MPS },
    },
    slips: ["mph"],
  },
  length: {
    ...kind("a length", "mm", "mm", -20_000, 30_000, [1, 6000], ["mm", "cm", "m", "in", "ft"]),
    units: scaled(metres, 1e-3),
    slips: ["in", "cm", "m"],
  },
  elevation: {
    ...kind("a height above the sea", "m", "m", -500, 9000, [-10, 3000], ["m", "ft"]),
    units: metres,
    slips: ["ft"],
  },
  distance: {
    ...kind("a distance", "km", "km", 0, 100_000, [0.1, 1000], ["km", "m", "miles"]),
    units: scaled({ ...metres, ...roads }, 1000),
    slips: ["m"],
  },
  area: {
    ...kind("an area", "m2", "m²", 0.001, 50, [0.2, 6], ["m²", "cm²", "ft²", "in²"]),
    units: {
      ...{ m2: 1, sqm: 1, squaremetre: 1, cm2: 1e-4, dm2: 0.01, mm2: 1e-6 },
      ...{
        ft2: M_PER_FT ** 2,
        sqft: M_PER_FT ** 2,
        squarefeet: M_PER_FT ** 2,
        in2: M_PER_IN ** 2,
        sqin: M_PER_IN ** 2,
      },
    },
    slips: ["ft2"],
  },
  force: {
    ...kind("a force", "N", "N", -100_000, 200_000, [5, 20_000], ["N", "kN", "lbf", "kgf"]),
    units: {
      ...{ n: 1, newton: 1, kn: 1000, dan: 10, lbf: N_PER_LBF, lb: N_PER_LBF },
      ...{ kgf: STANDARD_GRAVITY_mps2, kp: STANDARD_GRAVITY_mps2, kg: STANDARD_GRAVITY_mps2 },
    },
  },
  torque: {
    ...kind("a torque", "Nm", "Nm", 0, 20_000, [1, 2000], ["Nm", "lb ft", "kgf m", "lb in"]),
    units: {
      ...{ nm: 1, newtonmetre: 1, newtonmeter: 1, dannm: 10, danm: 10, knm: 1000 },
      ...{ lbft: NM_PER_LBFT, lbfft: NM_PER_LBFT, ftlb: NM_PER_LBFT, ftlbf: NM_PER_LBFT, lbsft: NM_PER_LBFT },
      ...{ poundfeet: NM_PER_LBFT, poundfoot: NM_PER_LBFT, footpound: NM_PER_LBFT, "lb/ft": NM_PER_LBFT },
      ...{ "ft/lb": NM_PER_LBFT, lbin: NM_PER_LBFT / 12, lbfin: NM_PER_LBFT / 12, inlb: NM_PER_LBFT / 12 },
      ...{
        kgm: STANDARD_GRAVITY_mps2,
        kgfm: STANDARD_GRAVITY_mps2,
        mkg: STANDARD_GRAVITY_mps2,
        mkp: STANDARD_GRAVITY_mps2,
      },
    },
    slips: ["lbin"],
  },
  power: {
    ...kind("a power", "kW", "kW", 0, 2000, [0.5, 400], ["kW", "W", "bhp", "PS"]),
    units: scaled(watts, 1000),
    slips: ["w"],
  },
  accessoryPower: {
    ...kind("an accessory's power", "W", "W", 0, 20_000, [1, 6000], ["W", "kW"]),
    units: watts,
    slips: ["kw"],
  },
  energy: {
    ...kind("an energy", "kWh", "kWh", 0, 1000, [0.1, 150], ["kWh", "Wh", "MJ"]),
    units: scaled(joules, J_PER_KWH),
    slips: ["wh"],
  },
  energyUse: {
    ...kind(
      "an energy over distance",
      "Whpkm",
      "Wh/km",
      5,
      3000,
      [50, 600],
      ["Wh/km", "Wh/mile", "kWh/100 km", "mi/kWh", "km/kWh"],
    ),
    units: {
      ...{ "wh/km": 1, "wh/mile": 1 / KM_PER_MILE, "wh/mi": 1 / KM_PER_MILE, "kwh/100km": 10, "kwh/km": 1000 },
      ...{
        "kwh/mile": 1000 / KM_PER_MILE,
        "kwh/mi": 1000 / KM_PER_MILE,
        "j/m": J_PER_KJ / J_PER_WH,
        "mj/km": J_PER_MJ / J_PER_WH,
      },
      ...{ "km/kwh": { over: 1000 }, "mi/kwh": { over: 1000 / KM_PER_MILE }, "mile/kwh": { over: 1000 / KM_PER_MILE } },
      "miles/kwh": { over: 1000 / KM_PER_MILE },
    },
    slips: ["kwh/100km", "mi/kwh"],
  },
  pressure: {
    ...kind("a tyre pressure", "bar", "bar", 0.3, 10, [0.8, 5], ["bar", "psi", "kPa", "kgf/cm²"]),
    units: scaled(pascals, 1e5),
    slips: ["psi", "kpa", "bar"],
  },
  airPressure: {
    ...kind("an air pressure", "kPa", "kPa", 40, 110, [60, 105], ["kPa", "mbar", "hPa", "bar", "mmHg", "inHg"]),
    units: scaled(pascals, 1000),
    slips: ["mbar", "bar", "inhg", "mmhg"],
  },
  gradient: {
    ...kind("a gradient", "ratio", "rise over run", -1, 1, [-0.35, 0.35], ["14 %", "1 in 7", "8 deg"]),
    units: {},
  },
  gearRatio: {
    ...kind("a gear ratio", "ratio", ": 1", 0.4, 12, [0.6, 7], ["3.42", "3.42 : 1"]),
    units: { ":1": 1, to1: 1 },
  },
  finalDrive: {
    ...kind("a final drive", "ratio", ": 1", 1, 20, [2.5, 8], ["4.56", "41/9"]),
    units: { ":1": 1, to1: 1 },
  },
  wheelRadius: {
    ...kind("a loaded wheel radius", "mm", "mm", 150, 700, [220, 450], ["mm", "cm", "m", "in"]),
    units: scaled(metres, 1e-3),
    slips: ["in", "cm", "m"],
  },
  circumference: {
    ...kind("a rolling circumference", "mm", "mm", 950, 4400, [1400, 2800], ["mm", "cm", "m", "in", "ft"]),
    units: scaled(metres, 1e-3),
    slips: ["m", "in", "cm", "ft"],
  },
  fuelUse: {
    ...kind(
      "a fuel consumption",
      "l100km",
      "l/100 km",
      1,
      60,
      [3, 35],
      ["l/100 km", "mpg", "mpg imp", "mpg US", "km/l"],
    ),
    units: {
      ...{
        "l/100km": 1,
        "l/100": 1,
        "litre/100km": 1,
        "litres/100km": 1,
        "liters/100km": 1,
        lper100km: 1,
        "l/km": 100,
      },
      ...{ mpg: { over: MPG_IMPERIAL }, mpgimp: { over: MPG_IMPERIAL }, mpgimperial: { over: MPG_IMPERIAL } },
      ...{ impmpg: { over: MPG_IMPERIAL }, imperialmpg: { over: MPG_IMPERIAL }, mpguk: { over: MPG_IMPERIAL } },
      ...{
        ukmpg: { over: MPG_IMPERIAL },
        mpgus: { over: MPG_US },
        usmpg: { over: MPG_US },
        "miles/gallon": { over: MPG_IMPERIAL },
      },
      ...{ "km/l": { over: 100 }, kmpl: { over: 100 }, "mile/gallon": { over: MPG_IMPERIAL } },
    },
  },
  volume: {
    ...kind("a volume", "l", "l", 0.01, 3000, [1, 200], ["l", "gallons", "pints"]),
    units: {
      ...{ l: 1, litre: 1, liter: 1, ml: 1e-3, cc: 1e-3, cm3: 1e-3, m3: 1000, dm3: 1 },
      ...{ impgal: L_PER_GALLON_IMPERIAL, usgal: L_PER_GALLON_US, pint: L_PER_GALLON_IMPERIAL / 8 },
      ...{ gal: L_PER_GALLON_IMPERIAL, gallon: L_PER_GALLON_IMPERIAL, gallons: L_PER_GALLON_IMPERIAL },
      ...{ galimp: L_PER_GALLON_IMPERIAL, galus: L_PER_GALLON_US, gallonus: L_PER_GALLON_US },
    },
  },
  temperature: {
    ...kind("a temperature", "degC", "°C", -60, 200, [-40, 140], ["°C", "°F", "K"]),
    units: {
      ...{ c: 1, degc: 1, deg: 1, degree: 1, celsius: 1, degcelsius: 1, centigrade: 1 },
      ...{
        f: { shift: -32, factor: 5 / 9 },
        degf: { shift: -32, factor: 5 / 9 },
        fahrenheit: { shift: -32, factor: 5 / 9 },
      },
      ...{ k: { shift: -ZERO_CELSIUS_K, factor: 1 }, kelvin: { shift: -ZERO_CELSIUS_K, factor: 1 } },
    },
    slips: ["k", "f"],
  },
  voltage: {
    ...kind("a voltage", "V", "V", 0, 1500, [2, 800], ["V", "mV"]),
    units: { v: 1, volt: 1, mv: 1e-3, kv: 1000, vdc: 1, vac: 1 },
    slips: ["mv"],
  },
  current: {
    ...kind("a current", "A", "A", -3000, 3000, [0.5, 1000], ["A", "mA"]),
    units: { a: 1, amp: 1, ampere: 1, ma: 1e-3, ka: 1000 },
    slips: ["ma"],
  },
  charge: {
    ...kind("a charge", "Ah", "Ah", 0.1, 3000, [1, 400], ["Ah", "mAh"]),
    units: { ah: 1, amphour: 1, amperehour: 1, mah: 1e-3, kah: 1000, coulomb: 1 / C_PER_AH },
    slips: ["mah"],
  },
  resistance: {
    ...kind("a resistance", "mohm", "mΩ", 0, 1e6, [0.05, 1000], ["mΩ", "Ω", "µΩ"]),
    units: { mohm: 1, milliohm: 1, ohm: 1000, uohm: 1e-3, microohm: 1e-3, kohm: 1e6 },
    slips: ["ohm"],
  },
  duration: { ...kind("a time", "s", "s", 0, 31_622_400, [0.01, 86_400], ["s", "min", "h", "days"]), units: seconds },
  hours: {
    ...kind("a time", "h", "h", 0, 8784, [0.05, 48], ["h", "min", "s"]),
    units: scaled(seconds, S_PER_H),
    slips: ["min"],
  },
  angle: { ...kind("an angle", "deg", "deg", -360, 360, [-360, 360], ["deg", "rad"]), units: degrees },
  fraction: { ...kind("a share", "frac", "%", 0, 1, [0, 1], ["%"]), units: {} },
  coefficient: {
    ...kind("a coefficient", "coeff", "", 0, 3, [0.004, 1.2], ["%", "kg/t", "N/kN"]),
    units: { "%": 0.01, "‰": 1e-3, "kg/t": 1e-3, "n/kn": 1e-3 },
    slips: ["%", "n/kn"],
  },
  count: { ...kind("a count", "", "", 0, 100_000, [1, 1000], []), units: { off: 1, x: 1, piece: 1, pc: 1, no: 1 } },
  inertia: {
    ...kind("a moment of inertia", "kgm2", "kg m²", 0, 100, [0.001, 10], ["kg m²", "kg cm²", "lb ft²"]),
    units: {
      kgm2: 1,
      kgcm2: 1e-4,
      gm2: 1e-3,
      gcm2: 1e-7,
      kgmm2: 1e-6,
      lbft2: KG_PER_LB * M_PER_FT ** 2,
      lbin2: KG_PER_LB * M_PER_IN ** 2,
    },
    slips: ["kgcm2"],
  },
  rotation: {
    ...kind("a speed of rotation", "rpm", "rpm", 0, 60_000, [300, 20_000], ["rpm", "rad/s"]),
    units: {
      rpm: 1,
      "rev/min": 1,
      "revs/min": 1,
      "1/min": 1,
      "r/min": 1,
      "rad/s": 1 / RADPS_PER_RPM,
      "rev/s": S_PER_MIN,
      hz: S_PER_MIN,
    },
  },
  capacitance: {
    ...kind("a capacitance", "uF", "µF", 0.001, 1e6, [10, 50_000], ["µF", "mF"]),
    units: { uf: 1, mfd: 1, microfarad: 1, mf: 1000, nf: 1e-3, f: 1e6 },
  },
  section: {
    ...kind("a cable's section", "mm2", "mm²", 0.1, 1000, [0.5, 150], ["mm²"]),
    units: { mm2: 1, sqmm: 1, squaremm: 1, in2: (M_PER_IN * 1000) ** 2 },
  },
  dragLinear: {
    ...kind("a road-load term", "Npkmh", "N/(km/h)", -100, 100, [-5, 20], ["N/(km/h)", "N/mph", "N/(m/s)"]),
    units: {
      "n/km/h": 1,
      "n/kmh": 1,
      "n/mph": 1 / KM_PER_MILE,
      "n/m/s": 1 / KMH_PER_MPS,
      "ns/m": 1 / KMH_PER_MPS,
      "lbf/mph": N_PER_LBF / KM_PER_MILE,
    },
  },
  dragSquare: {
    ...kind("a road-load term", "Npkmh2", "N/(km/h)²", -1, 2, [0, 0.3], ["N/(km/h)²", "N/mph²", "N/(m/s)²"]),
    units: {
      ...{
        "n/km/h2": 1,
        "n/kmh2": 1,
        "n/m/s2": 1 / KMH_PER_MPS ** 2,
        "ns2/m2": 1 / KMH_PER_MPS ** 2,
        "n/mph2": 1 / KM_PER_MILE ** 2,
      },
      "lbf/mph2": N_PER_LBF / KM_PER_MILE ** 2,
    },
  },
  heatCapacity: {
    ...kind("a heat capacity", "kJpK", "kJ/K", 0.01, 5000, [1, 500], ["kJ/K", "J/K", "Wh/K"]),
    units: { "kj/k": 1, "j/k": 1e-3, "wh/k": J_PER_WH / J_PER_KJ, "kj/degc": 1 },
  },
  heatLoss: {
    ...kind("a heat loss", "WpK", "W/K", 0, 1000, [0.1, 100], ["W/K"]),
    units: { "w/k": 1, "w/degc": 1, "kw/k": 1000 },
  },
} as const satisfies Record<string, QuantityKindInfo>;

/** Name of a kind: `mass`, `finalDrive`. */
export type QuantityKind = keyof typeof quantityKinds;

/** The entry of a kind, with the general type. */
export function kindInfo(kind: QuantityKind): QuantityKindInfo {
  return quantityKinds[kind];
}

/** A number in the kind's own unit. Infinite where a divisor is nought; the caller refuses that. */
export function applyUnit(rule: UnitRule, number: number): number {
  if (typeof rule === "number") return number * rule;
  return "over" in rule ? rule.over / number : (number + rule.shift) * rule.factor;
}

/** The number that a value in the kind's own unit has in another: the inverse of `applyUnit`. */
export function unapplyUnit(rule: UnitRule, value: number): number {
  if (typeof rule === "number") return value / rule;
  return "over" in rule ? rule.over / value : value / rule.factor - rule.shift;
}

function kind(
  name: string,
  suffix: string,
  unit: string,
  min: number,
  max: number,
  usual: readonly [number, number],
  spellings: readonly string[],
) {
  return { name, suffix, unit, min, max, usual, spellings };
}

/** The same spellings for a kind whose own unit is `size` of theirs. */
function scaled<Name extends string>(units: Readonly<Record<Name, number>>, size: number): Record<Name, number> {
  const entries = Object.entries<number>(units).map(([name, factor]) => [name, factor / size]);
  return Object.fromEntries(entries);
}
