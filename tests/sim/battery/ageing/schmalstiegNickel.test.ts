import { expect, it } from "vitest";
import { schmalstieg } from "../../../../sim/battery/ageing/schmalstiegNickel.ts";

const ROOM_K = 298.15;
/** Half of the last digit of a percentage with so many decimals. */
const percent = (loss_frac: number, expected: number, digits: number) =>
  expect(100 * loss_frac).toBeCloseTo(expected, digits);

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
