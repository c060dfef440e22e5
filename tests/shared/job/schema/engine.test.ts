import { describe, expect, it } from "vitest";
import { Engine } from "../../../../shared/job/schema/engine.ts";

const handbook = { ratedTorque_Nm: 115, torque_rpm: 2500, ratedPower_kW: 44, power_rpm: 4700 };

/** What is said against an engine, each with the key it is said at. */
function faultsOf(engine: unknown): string[] {
  const result = Engine.safeParse(engine);
  return result.success ? [] : result.error.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);
}

describe("the old engine's rating", () => {
  it("takes a handbook's four figures, any part of them, and none", () => {
    expect(faultsOf(handbook)).toEqual([]);
    for (const key of Object.keys(handbook)) expect(faultsOf({ ...handbook, [key]: undefined })).toEqual([]);
    expect(faultsOf({})).toEqual([]);
  });

  it("says that speed and torque were changed over, with what was likely meant", () => {
    expect(faultsOf({ ratedTorque_Nm: 2500, torque_rpm: 115 })).toEqual([
      "torque_rpm: found 2500 Nm at 115 rpm, likely changed over: 115 Nm at 2500 rpm",
    ]);
  });

  it("refuses a power that asks for more torque than the rated one", () => {
    // 115 Nm · 4700 rpm · 2π/60 = 56.6 kW
    expect(faultsOf({ ...handbook, ratedPower_kW: 57 }).join()).toContain("at most 56.6 kW wanted");
    expect(faultsOf({ ...handbook, ratedPower_kW: 56.5 })).toEqual([]);
  });

  it("refuses a power below the one that the rated torque is already", () => {
    // 115 Nm · 2500 rpm · 2π/60 = 30.11 kW
    expect(faultsOf({ ...handbook, ratedPower_kW: 30 }).join()).toContain("at least 30.11 kW wanted");
    expect(faultsOf({ ...handbook, ratedPower_kW: 30.2 })).toEqual([]);
  });

  it("wants idle below best torque, best power above it, and the limit from best power on", () => {
    expect(faultsOf({ ...handbook, idle_rpm: 2600 }).join()).toContain("idle_rpm: found 2600 rpm, below 2500 rpm");
    expect(faultsOf({ torque_rpm: 2500, power_rpm: 2400 }).join()).toContain("above the speed of best torque");
    expect(faultsOf({ ...handbook, limit_rpm: 4600 }).join()).toContain("4700 to below 9400 rpm wanted");
    expect(faultsOf({ ...handbook, idle_rpm: 700, limit_rpm: 5500 })).toEqual([]);
  });
});

describe("the old engine's torque curve", () => {
  // Best torque 100 Nm at 2500 rpm, best power 80 Nm at 5000 rpm: 41.89 kW.
  const curve = { speed_rpm: [1000, 2500, 4000, 5000], torque_Nm: [80, 100, 92, 80] };
  const withRow = (row: number, speed_rpm: unknown, torque_Nm: unknown) => ({
    curve: {
      speed_rpm: curve.speed_rpm.with(row, speed_rpm as number),
      torque_Nm: curve.torque_Nm.with(row, torque_Nm as number),
    },
  });

  it("stands alone, and beside ratings that go with it", () => {
    expect(faultsOf({ curve })).toEqual([]);
    const rated = { ratedTorque_Nm: 104, torque_rpm: 2600, ratedPower_kW: 44, power_rpm: 4900 };
    expect(faultsOf({ ...rated, idle_rpm: 700, limit_rpm: 5500, curve })).toEqual([]);
  });

  it("rises in speed, and has a torque for each", () => {
    expect(faultsOf(withRow(2, 2500, 92))).toEqual([
      "curve.speed_rpm.2: found 2500 rpm after 2500 rpm, speeds must rise",
    ]);
    expect(faultsOf({ curve: { ...curve, torque_Nm: [80, 100, 92] } })).toEqual([
      "curve.torque_Nm: found 3 values, 4 wanted: one for each of speed_rpm",
    ]);
  });

  it.each([
    ["no turning", withRow(0, 0, 80), /^curve\.speed_rpm\.0: /],
    ["a speed beyond any engine", withRow(3, 20_001, 80), /^curve\.speed_rpm\.3: /],
    ["a torque below none", withRow(3, 5000, -1), /^curve\.torque_Nm\.3: /],
    ["a torque beyond any engine", withRow(1, 2500, 5001), /^curve\.torque_Nm\.1: /],
    ["a single point", { curve: { speed_rpm: [1000], torque_Nm: [80] } }, /^curve\.speed_rpm: /],
    [
      "no torque at all",
      { curve: { ...curve, torque_Nm: [0, 0, 0, 0] } },
      /^curve\.torque_Nm: found no torque at any speed, some above 0 Nm wanted$/,
    ],
  ])("refuses %s in one sentence", (_, engine, sentence) => {
    const faults = faultsOf(engine);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatch(sentence);
  });

  it("says that its columns were changed over, and nothing else of them", () => {
    expect(faultsOf({ curve: { speed_rpm: curve.torque_Nm, torque_Nm: curve.speed_rpm } })).toEqual([
      "curve.speed_rpm: found 1000 Nm at 80 rpm and so on, likely changed over: speed and torque have taken each other's place",
    ]);
  });

  it("goes with the figures rated: its best is 0.8 to 1.1 of them", () => {
    // 100 Nm / 1.1 = 90.9 Nm, 100 Nm / 0.8 = 125 Nm; 41.89 kW the same: 38.08 to 52.36 kW.
    for (const ratedTorque_Nm of [91, 125]) expect(faultsOf({ ratedTorque_Nm, curve })).toEqual([]);
    for (const ratedTorque_Nm of [90, 126])
      expect(faultsOf({ ratedTorque_Nm, curve })).toEqual([
        `ratedTorque_Nm: found ${ratedTorque_Nm} Nm, 90.91 to 125 Nm wanted: its curve has 100 Nm at its best`,
      ]);
    for (const ratedPower_kW of [38.1, 52.3]) expect(faultsOf({ ratedPower_kW, curve })).toEqual([]);
    for (const ratedPower_kW of [38, 52.4])
      expect(faultsOf({ ratedPower_kW, curve })).toEqual([
        `ratedPower_kW: found ${ratedPower_kW} kW, 38.08 to 52.36 kW wanted: its curve has 41.89 kW at its best`,
      ]);
    // Pound feet taken for newton metres, either way: 100 Nm are 73.76 lb ft.
    expect(faultsOf({ ratedTorque_Nm: 135.6, curve })).toHaveLength(1);
    expect(faultsOf({ ratedTorque_Nm: 73.76, curve })).toHaveLength(1);
  });

  it("has its best near the speeds that are called so", () => {
    // 1500 rpm: 80 + 20/3 = 86.7 Nm, less than 0.9 of 100; 1800 rpm: 90.7 Nm.
    expect(faultsOf({ torque_rpm: 1800, curve })).toEqual([]);
    expect(faultsOf({ torque_rpm: 1500, curve })).toEqual([
      "torque_rpm: found 1500 rpm, where its curve has 86.67 Nm; its best is 100 Nm at 2500 rpm",
    ]);
    // 3500 rpm: 94.67 Nm, 34.7 kW of 41.89.
    expect(faultsOf({ power_rpm: 3500, curve })).toEqual([
      "power_rpm: found 3500 rpm, where its curve has 34.7 kW; its best is 41.89 kW at 5000 rpm",
    ]);
    expect(faultsOf({ power_rpm: 5200, curve })).toEqual([
      "power_rpm: found 5200 rpm, 1000 to 5000 rpm wanted: its curve goes no further",
    ]);
  });

  it("has idle at or below its best torque, and the limit at or above its best power", () => {
    expect(faultsOf({ idle_rpm: 2600, curve })).toEqual([
      "idle_rpm: found 2600 rpm, at most 2500 rpm wanted, where its curve has its best torque",
    ]);
    expect(faultsOf({ limit_rpm: 4900, curve })).toEqual([
      "limit_rpm: found 4900 rpm, at least 5000 rpm wanted, where its curve has its best power",
    ]);
  });
});
