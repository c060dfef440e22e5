import { expect, it } from "vitest";
import { circuit_A, pilotDuty_frac } from "../../../../sim/plan/charging/pilot.ts";

it("is high for a sixtieth of the time for each ampere up to 51 A, then for less", () => {
  // As the duty cycles of [IEC61851-1, Annex A]: 10 % for 6 A, 53.3 % for 32 A, 85 % for 51 A, 96 % for 80 A.
  expect([6, 32, 51, 80].map(pilotDuty_frac)).toEqual([
    expect.closeTo(0.1, 12),
    expect.closeTo(0.533, 3),
    expect.closeTo(0.85, 12),
    expect.closeTo(0.96, 12),
  ]);
  expect(pilotDuty_frac(60)).toBeCloseTo(0.88, 12);
});

it("tells no current below 6 A and above 80 A", () => {
  expect([5.9, 80.1].map(pilotDuty_frac)).toEqual([undefined, undefined]);
});

it("has a circuit of 125 % behind a load of hours: 40 A for 32 A", () => expect(circuit_A(32)).toBe(40));
