import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { hoodStates, hoodWords } from "../../../../sim/plan/gears/hoodStates.ts";
import { bareJob, type Changes, steadyTrace } from "../../../support/bareCar.ts";

const road = steadyTrace(20, 60, 1);
/** 0.5 · 1.189 · 1 m² · 400 m²/s² = 237.8 N of drag at 20 m/s, and nothing else that takes energy. */
const DRAG_N = 0.5 * 1.189 * 400;
const jobOf = (
  isDown: boolean,
  roadLoad: NonNullable<NonNullable<Changes["vehicle"]>["roadLoad"]>,
  downDrag_ratio = 1.25,
) =>
  bareJob({
    vehicle: { roadLoad, hood: { isDown, downDrag_ratio } },
    environment: { temperature_degC: 20, pressure_kPa: 100 },
  });
const one_m2 = { kind: "dragArea", dragArea_m2: 1 } as const;
const use = (job: ReturnType<typeof jobOf>) => hoodStates(job, 0, road).map(({ battery_Whpkm = 0 }) => battery_Whpkm);

describe("an open car", () => {
  it.each([
    ["one drag area", one_m2],
    ["body and tyres", { kind: "physical", drag_coeff: 0.5, frontalArea_m2: 2 } as const],
    [
      "a coast-down",
      { kind: "coastDown", f0_N: 0, f1_Npkmh: 0, f2_Npkmh2: (0.5 * 1.189) / 3.6 ** 2, mass_kg: 1400 } as const,
    ],
  ])("pays a quarter more of its drag with the hood down, by %s", (_, roadLoad) => {
    // F over a metre is F joules; Wh/km is F / 3.6. Density of the air to its printed digits.
    const [up, down] = use(jobOf(false, roadLoad));
    expect(up / (DRAG_N / 3.6)).toBeCloseTo(1, 3);
    expect(down / up).toBeCloseTo(1.25, 6);
    const [lower, asSet] = use(jobOf(true, roadLoad));
    expect(asSet / (DRAG_N / 3.6)).toBeCloseTo(1, 3);
    expect(asSet / lower).toBeCloseTo(1.25, 6);
  });

  it("says what the hood costs, in energy and as a share, which way round it may be", () => {
    const words = (ratio: number) => {
      const found = hoodWords(hoodStates(jobOf(false, one_m2, ratio), 0, road));
      return found && messageIn(found, "metric");
    };
    // A quarter of 66.06 Wh/km.
    expect(words(1.25)).toBe(
      "With the hood down the car takes 17 Wh/km (25 %) more on this road than with it up; the faster the road, the more that is.",
    );
    expect(words(0.9)).toMatch(/takes 6\.6 Wh\/km \(10 %\) less on this road/);
    expect(words(1)).toMatch(/makes no difference that is felt\.$/);
  });

  it("is none where no hood is known", () => {
    expect(hoodStates(bareJob(), 0, road)).toEqual([]);
    expect(hoodWords([])).toBeUndefined();
  });
});
