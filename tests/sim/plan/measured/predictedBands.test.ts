import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { predictedBands } from "../../../../sim/plan/measured/predictedBands.ts";
import { bareJob, steadyTrace } from "../../../support/bareCar.ts";
import { samplesOf, times } from "./logsByHand.ts";

// 1400 kg on tyres of 0.01 roll at 20 m/s for a minute, a sample a second: 137.34 N, 2746.8 W but for what a test adds.
const rolling_W = 0.01 * 1400 * 9.81 * 20;
const tyres = { loadedRadius_mm: 300, rolling_coeff: 0.01, followsTemperature: false };
const base = bareJob({ vehicle: { tyres } });
const parts = [{ start_s: 0, trace: steadyTrace(20, 60, 1) }];
const samples = samplesOf(times(59, 400), times(59, 10));

/** Net energy over what rolling alone takes: as taken, at the low end and at the high end. */
function netOf(origins: Job["origins"], job: Job = base): number[] {
  const { value, low, high } = predictedBands({ ...job, origins }, 0, parts, samples, 0.9).net_kWh;
  return [value, low, high].map((each_kWh) => (each_kWh * 3.6e6) / (59 * rolling_W));
}
const near = (...of: readonly number[]) => of.map((each) => expect.closeTo(each, 6));
const guessed = (plusMinus_frac?: number): Job["origins"][string] => ({
  from: "guessed",
  ...(plusMinus_frac !== undefined && { plusMinus_frac }),
});

describe("what a job promises of a drive, with the band that its inputs leave open", () => {
  it("is a point where everything is known", () => {
    expect(netOf({})).toEqual(near(1, 1, 1));
    expect(netOf({ "vehicle.tyres.rolling_coeff": { from: "measured" } })).toEqual(near(1, 1, 1));
  });
  it("goes with a value to either end of its band, a measured one's too, a tenth where a guess has none", () => {
    expect(netOf({ "vehicle.tyres.rolling_coeff": guessed(0.2) })).toEqual(near(1, 0.8, 1.2));
    expect(netOf({ "vehicle.tyres.rolling_coeff": { from: "measured", plusMinus_frac: 0.05 } })).toEqual(
      near(1, 0.95, 1.05),
    );
    expect(netOf({ "vehicle.tyres.rolling_coeff": guessed() })).toEqual(near(1, 0.9, 1.1));
  });
  it("adds the effects of several as squares do", () => {
    const { value, low } = predictedBands(
      {
        ...base,
        origins: { "vehicle.tyres.rolling_coeff": guessed(0.03), "environment.gravity_mps2": guessed(0.04) },
      },
      ...([0, parts, samples, 0.9] as const),
    ).net_kWh;
    expect(1 - low / value).toBeCloseTo(0.05, 6);
  });
  it("takes a temperature that is guessed to 3 K either way, at nought too", () => {
    // Drag alone, with air as dense as one over its temperature in kelvin.
    const sharesAt = (temperature_degC: number) => {
      const job = bareJob({
        vehicle: { roadLoad: { kind: "dragArea", dragArea_m2: 1 } },
        environment: { temperature_degC },
      });
      const origins = { "environment.temperature_degC": guessed() };
      const { value, low, high } = predictedBands({ ...job, origins }, 0, parts, samples, 0.9).net_kWh;
      return [low / value, high / value];
    };
    expect(sharesAt(20)).toEqual(near(293.15 / 296.15, 293.15 / 290.15));
    expect(sharesAt(0)).toEqual(near(273.15 / 276.15, 273.15 / 270.15));
  });
  it("has nothing of what no energy hangs on, of what is no number, and of nought", () => {
    const origins = {
      "charger.efficiency_frac": guessed(0.3),
      usualDay_km: guessed(0.3),
      "allowance.winter_ratio": guessed(0.3),
      "vehicle.name": guessed(0.3),
      "accessories.standing_W": guessed(0.3),
    };
    expect(netOf(origins)).toEqual(near(1, 1, 1));
  });
});

describe("what is a list in the job is scaled as a whole", () => {
  it("losses of the motor: a quarter of the shaft's power, to a tenth of that", () => {
    const lossy = bareJob({ vehicle: { tyres }, motor: { loss: { kind: "flat", efficiency_frac: 0.8 } } });
    expect(netOf({ "motor.loss": guessed(0.1) }, lossy)).toEqual(near(1.25, 1.225, 1.275));
  });
  it("what draws beside the standing load: 200 W of it, to a half", () => {
    const items = [{ name: "fan", power_W: 180, duty_frac: 1, supply: "12V" as const }];
    const job = bareJob({ vehicle: { tyres }, accessories: { standing_W: 90, dcdcEfficiency_frac: 0.9, items } });
    const at = (drawn_W: number) => 1 + drawn_W / rolling_W;
    expect(netOf({ "accessories.items": guessed(0.5) }, job)).toEqual(near(at(300), at(200), at(400)));
  });
});
