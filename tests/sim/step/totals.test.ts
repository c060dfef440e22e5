import { expect, it } from "vitest";
import { checkLedger } from "../../../sim/step/totals.ts";

const nothing = {
  aero_J: 0,
  rolling_J: 0,
  climb_J: 0,
  speed_J: 0,
  driveline_J: 0,
  motor_J: 0,
  packHeat_J: 0,
  accessories_J: 0,
  frictionBrake_J: 0,
  total_J: 0,
};

it("lets a ledger be off by a billionth of all that passed, whichever way it went", () => {
  // 2e9 J passed, of which none is left: 2 J are the bound.
  const passed = { ...nothing, climb_J: -1e9, aero_J: 1e9 };
  for (const sign of [-1, 1]) {
    expect(() => checkLedger({ ...passed, total_J: sign * 1.9 })).not.toThrow();
    expect(() => checkLedger({ ...passed, total_J: sign * 2.1 })).toThrow(/does not close/);
  }
});

it("lets a ledger be off by a billionth of a joule where less than a joule passed", () => {
  expect(() => checkLedger({ ...nothing, total_J: 0.9e-9 })).not.toThrow();
  const half = { ...nothing, climb_J: -0.25, aero_J: 0.25 };
  for (const ledger of [nothing, half])
    expect(() => checkLedger({ ...ledger, total_J: 1.1e-9 })).toThrow(/does not close/);
});
