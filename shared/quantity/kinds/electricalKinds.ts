import { C_PER_AH, J_PER_KWH, J_PER_WH, M_PER_IN } from "../../units.ts";
import { kind, type QuantityKindInfo } from "./defineKind.ts";
import { scaled } from "./unitRule.ts";
import { J_PER_KJ, J_PER_MJ, joules, KM_PER_MILE, metres, watts } from "./unitSizes.ts";

/** What packs, cables and chargers are written in. */
export const electricalKinds = {
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
      "wh/km": 1,
      "wh/mile": 1 / KM_PER_MILE,
      "wh/mi": 1 / KM_PER_MILE,
      "kwh/100km": 10,
      "kwh/km": 1000,
      "kwh/mile": 1000 / KM_PER_MILE,
      "kwh/mi": 1000 / KM_PER_MILE,
      "j/m": J_PER_KJ / J_PER_WH,
      "mj/km": J_PER_MJ / J_PER_WH,
      "km/kwh": { over: 1000 },
      "mi/kwh": { over: 1000 / KM_PER_MILE },
      "mile/kwh": { over: 1000 / KM_PER_MILE },
      "miles/kwh": { over: 1000 / KM_PER_MILE },
    },
    slips: ["kwh/100km", "mi/kwh"],
  },
  /** At a pack, controller or charger: sold and metered in kilowatts everywhere, unlike what a shaft gives. */
  electricPower: {
    ...kind("an electric power", "kW", "kW", 0, 2000, [0.5, 400], ["kW", "W", "bhp"]),
    units: scaled(watts, 1000),
    slips: ["w"],
  },
  accessoryPower: {
    ...kind("an accessory's power", "W", "W", 0, 20_000, [1, 6000], ["W", "kW"]),
    units: watts,
    slips: ["kw"],
  },
  resistance: {
    ...kind("a resistance", "mohm", "mΩ", 0, 1e6, [0.05, 1000], ["mΩ", "Ω", "µΩ"]),
    units: { mohm: 1, milliohm: 1, ohm: 1000, uohm: 1e-3, microohm: 1e-3, kohm: 1e6 },
    slips: ["ohm"],
  },
  /** A part bought by its ohms; what is in the way of a current by chance is written in milliohms. */
  resistor: {
    ...kind("a resistor", "ohm", "Ω", 0, 1e6, [1, 10_000], ["Ω", "kΩ", "mΩ"]),
    units: { ohm: 1, ohms: 1, r: 1, kohm: 1000, mohm: 1e-3 },
  },
  cableLength: {
    ...kind("a cable's length", "m", "m", 0, 1000, [0.5, 60], ["m", "cm", "mm", "ft", "in"]),
    units: metres,
    slips: ["mm", "ft"],
  },
  capacitance: {
    ...kind("a capacitance", "uF", "µF", 0.001, 1e6, [10, 50_000], ["µF", "mF"]),
    units: { uf: 1, mfd: 1, microfarad: 1, mf: 1000, nf: 1e-3, f: 1e6 },
  },
  section: {
    ...kind("a cable's section", "mm2", "mm²", 0.1, 1000, [0.5, 150], ["mm²"]),
    units: { mm2: 1, sqmm: 1, squaremm: 1, in2: (M_PER_IN * 1000) ** 2 },
  },
} as const satisfies Record<string, QuantityKindInfo>;
