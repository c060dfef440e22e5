import { describe, expect, it } from "vitest";
import {
  naumannCalendarLoss_frac,
  naumannCycleLoss_frac,
} from "../../../../sim/battery/ageing/naumannIronPhosphate.ts";
import { schmalstieg } from "../../../../sim/battery/ageing/schmalstiegNickel.ts";
import { wangCycleLoss_frac } from "../../../../sim/battery/ageing/wangIronPhosphate.ts";
import { chargeStress, depthStress, temperatureStress, xuLoss_frac } from "../../../../sim/battery/ageing/xuStress.ts";

const YEAR_s = 365 * 86_400;
const ROOM_K = 298.15;
/** Half of the last digit of a percentage with so many decimals. */
const percent = (loss_frac: number, expected: number, digits: number) =>
  expect(Math.abs(100 * loss_frac - expected)).toBeLessThan(0.5001 * 10 ** -digits);

describe("cycling iron phosphate, Wang et al. 2011", () => {
  // The formula with the tabulated factors, computed apart with R = 8.314; tolerance: half of the last digit.
  it.each([
    [0.5, 288.15, 2.7734],
    [0.5, 298.15, 4.3115],
    [0.5, 318.15, 9.588],
    [0.5, 333.15, 16.3947],
    [2, 288.15, 2.3971],
    [2, 298.15, 3.6976],
    [2, 318.15, 8.1079],
    [2, 333.15, 13.7333],
  ])("at %f C and %f K loses %f %% in 1000 Ah", (rate, temperature_K, loss) => {
    percent(wangCycleLoss_frac(rate, temperature_K, 1000), loss, 4);
  });

  // From the same formula at 25 degC: the other tabulated rates, factors half-way between two, and the end ones beyond.
  it.each([
    [6, 4.0095],
    [10, 8.7404],
    [1.25, 4.0642],
    [4, 3.9796],
    [0.25, 4.1535],
    [12, 11.7839],
  ])("at %f C loses %f %% in 1000 Ah", (rate, loss) => {
    percent(wangCycleLoss_frac(rate, ROOM_K, 1000), loss, 4);
  });

  it("has lost a fifth at C/2 and 25 degC after 16 116 Ah", () => {
    expect(wangCycleLoss_frac(0.5, ROOM_K, 16_116)).toBeCloseTo(0.2, 5);
  });
});

describe("iron phosphate, Naumann et al. 2018 and 2020", () => {
  it("loses by standing at 25 degC half full 4.252 % in a year and 13.445 % in ten, at 40 degC full 9.430 % in one", () => {
    percent(naumannCalendarLoss_frac(0.5, ROOM_K, YEAR_s), 4.252, 2);
    percent(naumannCalendarLoss_frac(0.5, ROOM_K, 10 * YEAR_s), 13.445, 2);
    percent(naumannCalendarLoss_frac(1, 313.15, YEAR_s), 9.43, 2);
  });

  it("loses by 1000 full cycles in cycles of 80 % at 1 C 5.69 %", () => {
    percent(naumannCycleLoss_frac(1, 0.8, 1000), 5.69, 2);
  });

  it("loses by as many in cycles of half its charge at 2 C 7.68 %, by hand", () => {
    // (0.0630 x 2 + 0.0971)(4.0253 x -0.001 + 1.0923) x 31.623.
    percent(naumannCycleLoss_frac(2, 0.5, 1000), 7.6778, 3);
  });
});

describe("nickel, Schmalstieg et al. 2014", () => {
  const standing = { time_days: 365, mean_V: 3.667, depth_frac: 0, throughput_Ah: 0 };
  it.each([
    [3.7, 298.15, 365, 2.3948, 4],
    [3.7, 298.15, 3650, 13.467, 3],
    [3.7, 308.15, 365, 5.117, 3],
    [4.0, 298.15, 365, 3.698, 3],
  ])("loses by standing at %f V and %f K for %i days %f %%", (standing_V, temperature_K, time_days, loss, digits) => {
    percent(1 - schmalstieg({ ...standing, standing_V, temperature_K, time_days }).capacity_frac, loss, digits);
  });

  it("loses by cycling half deep about 3.667 V in 1000 Ah 8.856 %", () => {
    const cycled = { standing_V: 3.149, temperature_K: ROOM_K, time_days: 0, mean_V: 3.667, depth_frac: 0.5 };
    percent(1 - schmalstieg({ ...cycled, throughput_Ah: 1000 }).capacity_frac, 8.856, 3);
  });

  it("resists 5.065 % more after a year at 3.7 V, and 12.541 % more after 1000 Ah half deep, by hand from the law", () => {
    // (5.270·3.7 − 16.32)·10⁵·exp(−5986/298.15) = 6.0659e-4, times 365^0.75 = 83.506; (2.153e-4·0.058² − 1.521e-5 + 1.399e-4)·1000.
    const stood = schmalstieg({ ...standing, standing_V: 3.7, temperature_K: ROOM_K });
    percent(stood.resistance_ratio - 1, 5.0654, 3);
    const cycled = { standing_V: 3, temperature_K: ROOM_K, time_days: 0, mean_V: 3.667, depth_frac: 0.5 };
    percent(schmalstieg({ ...cycled, throughput_Ah: 1000 }).resistance_ratio - 1, 12.5414, 3);
  });

  it("loses and resists more where it is cycled away from 3.667 and 3.725 V, by hand", () => {
    // (7.348e-3·0.333² + 7.60e-4 + 4.081e-3·0.2)·√1000; (2.153e-4·0.275² − 1.521e-5 + 2.798e-4·0.2)·1000.
    const cycled = { standing_V: 3, temperature_K: ROOM_K, time_days: 0, mean_V: 4, depth_frac: 0.2 };
    const { capacity_frac, resistance_ratio } = schmalstieg({ ...cycled, throughput_Ah: 1000 });
    percent(1 - capacity_frac, 7.561, 3);
    percent(resistance_ratio - 1, 5.7032, 3);
  });

  it("grows no younger however low it stands", () => {
    const low = schmalstieg({ ...standing, standing_V: 3, temperature_K: ROOM_K });
    expect(low.capacity_frac).toBe(1);
    expect(low.resistance_ratio).toBe(1);
  });
});

describe("stresses, Xu et al. 2018", () => {
  it("are those printed for depth, temperature and charge", () => {
    expect(depthStress(1)).toBeCloseTo(5.88235e-5, 10);
    expect(depthStress(0.8)).toBeCloseTo(2.97977e-5, 10);
    expect(depthStress(0)).toBe(0);
    expect(depthStress(-0.1)).toBe(0);
    expect(temperatureStress(308.15)).toBeCloseTo(1.95524, 5);
    expect(chargeStress(0.9)).toBeCloseTo(1.51589, 5);
  });

  it("lose by standing half full at 25 degC 5.7879 % in a year and 17.2858 % in ten", () => {
    const standing = { soc_frac: 0.5, temperature_K: ROOM_K, depth_frac: 0, cycles: 0 };
    percent(xuLoss_frac({ ...standing, time_s: YEAR_s }), 5.7879, 3);
    percent(xuLoss_frac({ ...standing, time_s: 10 * YEAR_s }), 17.2858, 3);
  });

  it("lose by a year at 35 degC and nine tenths with 300 cycles of 80 % 11.696 %, by hand", () => {
    // f = (4.14e-10·31 536 000 + 300·2.97977e-5)·1.51589·1.95524 = 0.0651919.
    const use = { soc_frac: 0.9, temperature_K: 308.15, depth_frac: 0.8, cycles: 300, time_s: YEAR_s };
    percent(xuLoss_frac(use), 11.6962, 3);
  });
});
