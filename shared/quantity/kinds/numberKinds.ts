import { kind, type QuantityKindInfo } from "./defineKind.ts";
import { degrees } from "./unitSizes.ts";

/** Kinds that are a number with hardly a unit. */
export const numberKinds = {
  angle: { ...kind("an angle", "deg", "deg", -360, 360, [-360, 360], ["deg", "rad"]), units: degrees },
  fraction: { ...kind("a share", "frac", "%", 0, 1, [0, 1], ["%"]), units: {} },
  coefficient: {
    ...kind("a coefficient", "coeff", "", 0, 3, [0.004, 1.2], ["%", "kg/t", "N/kN"]),
    units: { "%": 0.01, "‰": 1e-3, "kg/t": 1e-3, "n/kn": 1e-3 },
    slips: ["%", "n/kn"],
  },
  count: { ...kind("a count", "", "", 0, 100_000, [1, 1000], []), units: { off: 1, x: 1, piece: 1, pc: 1, no: 1 } },
} as const satisfies Record<string, QuantityKindInfo>;
