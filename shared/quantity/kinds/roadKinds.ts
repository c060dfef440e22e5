import { M_PER_FT, MPS_PER_KNOT, N_PER_LBF, S_PER_H } from "../../units.ts";
import { kind, type QuantityKindInfo } from "./defineKind.ts";
import { scaled } from "./unitRule.ts";
import { KM_PER_MILE, KMH_PER_MPS, metres, pascals, roads, seconds } from "./unitSizes.ts";

/** What a road, its weather and a drive along it are written in. */
export const roadKinds = {
  speed: {
    ...kind("a speed", "kmh", "km/h", 0, 300, [3, 200], ["km/h", "mph", "m/s", "knots"]),
    units: {
      "km/h": 1,
      kmh: 1,
      kph: 1,
      "km/hr": 1,
      mph: KM_PER_MILE,
      "mile/h": KM_PER_MILE,
      "mi/h": KM_PER_MILE,
      "miles/hour": KM_PER_MILE,
      "m/s": KMH_PER_MPS,
      mps: KMH_PER_MPS,
      "ft/s": M_PER_FT * KMH_PER_MPS,
      kn: MPS_PER_KNOT * KMH_PER_MPS,
      kt: MPS_PER_KNOT * KMH_PER_MPS,
      knot: MPS_PER_KNOT * KMH_PER_MPS,
    },
    slips: ["mph"],
  },
  distance: {
    ...kind("a distance", "km", "km", 0, 100_000, [0.1, 1000], ["km", "m", "miles"]),
    units: scaled({ ...metres, ...roads }, 1000),
    slips: ["m"],
  },
  elevation: {
    ...kind("a height above the sea", "m", "m", -500, 9000, [-10, 3000], ["m", "ft"]),
    units: metres,
    slips: ["ft"],
  },
  gradient: {
    ...kind("a gradient", "ratio", "rise over run", -1, 1, [-0.35, 0.35], ["14 %", "1 in 7", "8 deg"]),
    units: {},
  },
  airPressure: {
    ...kind("an air pressure", "kPa", "kPa", 40, 110, [60, 105], ["kPa", "mbar", "hPa", "bar", "mmHg", "inHg"]),
    units: scaled(pascals, 1000),
    slips: ["mbar", "bar", "inhg", "mmhg"],
  },
  duration: { ...kind("a time", "s", "s", 0, 31_622_400, [0.01, 86_400], ["s", "min", "h", "days"]), units: seconds },
  hours: {
    ...kind("a time", "h", "h", 0, 8784, [0.05, 48], ["h", "min", "s"]),
    units: scaled(seconds, S_PER_H),
    slips: ["min"],
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
      "n/km/h2": 1,
      "n/kmh2": 1,
      "n/m/s2": 1 / KMH_PER_MPS ** 2,
      "ns2/m2": 1 / KMH_PER_MPS ** 2,
      "n/mph2": 1 / KM_PER_MILE ** 2,
      "lbf/mph2": N_PER_LBF / KM_PER_MILE ** 2,
    },
  },
} as const satisfies Record<string, QuantityKindInfo>;
