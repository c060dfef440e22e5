import type { Changes } from "../../../support/bareCar.ts";

export const box = {
  gears: [
    { name: "low", gear_ratio: 3.5, efficiency_frac: 0.95 },
    { name: "high", gear_ratio: 1.5, efficiency_frac: 0.96 },
  ],
  finalDrive_ratio: 4.7,
  finalDriveEfficiency_frac: 0.92,
  noLoadDrag_Nm: 2,
  shifting: { kind: "fixed", gear: "high" },
} as const satisfies Changes["driveline"];

export const motor = { envelope: { kind: "peak", torque_Nm: 200, power_kW: 60 } } as const;
