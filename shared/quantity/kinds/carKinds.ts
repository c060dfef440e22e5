import {
  KG_PER_LB,
  L_PER_GALLON_IMPERIAL,
  L_PER_GALLON_US,
  M_PER_FT,
  M_PER_IN,
  N_PER_LBF,
  NM_PER_LBFT,
  RADPS_PER_RPM,
  S_PER_MIN,
  STANDARD_GRAVITY_mps2,
} from "../../units.ts";
import { kind, type QuantityKindInfo } from "./defineKind.ts";
import { scaled } from "./unitRule.ts";
import { MPG_IMPERIAL, MPG_US, masses, metres, pascals, watts } from "./unitSizes.ts";

/** What is weighed, measured and turned on a car: masses, lengths, forces, ratios, tyres, fuel. */
export const carKinds = {
  mass: {
    ...kind("a mass", "kg", "kg", 0.001, 40_000, [5, 4000], ["kg", "t", "lb", "cwt", "st"]),
    units: masses,
    slips: ["lb", "cwt", "t"],
  },
  length: {
    ...kind("a length", "mm", "mm", -20_000, 30_000, [1, 6000], ["mm", "cm", "m", "in", "ft"]),
    units: scaled(metres, 1e-3),
    slips: ["in", "cm", "m"],
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
  pressure: {
    ...kind("a tyre pressure", "bar", "bar", 0.3, 10, [0.8, 5], ["bar", "psi", "kPa", "kgf/cm²"]),
    units: scaled(pascals, 1e5),
    slips: ["psi", "kpa", "bar"],
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
} as const satisfies Record<string, QuantityKindInfo>;
