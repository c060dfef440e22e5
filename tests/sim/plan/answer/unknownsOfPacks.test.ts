import { expect, it } from "vitest";
import {
  packsInQuestion,
  scaledConditions,
  scaledUnknowns,
  unknownsOfPacks,
} from "../../../../sim/plan/answer/unknownsOfPacks.ts";
import { bareJob, traceOf } from "../../../support/bareCar.ts";
import { inventedCandidate, inventedUnknown, inventedUse } from "../../../support/inventedCandidate.ts";

it("asks of the packs that may be used and drive the road", () => {
  const above = inventedCandidate(6, { pack: { ...inventedCandidate(6).pack, max_V: 999 } });
  const behind = inventedCandidate(7, { missed_km: 1 });
  const candidates = [inventedCandidate(5), above, behind, inventedCandidate(8)];
  expect(packsInQuestion(inventedUse(), candidates)).toEqual([0, 3]);
});

it("drives what is unknown for those packs alone, in the order of the job", () => {
  const one = bareJob({ vehicle: { roadLoad: { kind: "dragArea", dragArea_m2: 1 } }, module: { capacity_Ah: 1 } });
  const job = {
    ...one,
    packs: [one.packs[0], { ...one.packs[0], name: "other", parallelModules: 2 }],
    origins: { "vehicle.roadLoad.dragArea_m2": { from: "guessed" as const } },
  };
  const road = traceOf([
    [0, 0],
    [10, 60],
    [60, 60],
    [70, 0],
  ]);
  const [first, second] = unknownsOfPacks(job, [1], road);
  expect(first).toEqual([]);
  expect(second).toMatchObject([{ path: "vehicle.roadLoad.dragArea_m2", low: 0.9, high: 1.1 }]);
});

it("scales what was driven before by the range of today, and not where there was none", () => {
  const before = [[inventedUnknown(100, 20, 10)], [{ ...inventedUnknown(0, 5, 0), asTaken_km: 0 }]];
  const [[scaled], [unscaled]] = scaledUnknowns(before, [inventedCandidate(5), inventedCandidate(5)]) ?? [];
  expect([scaled.atLow_km, scaled.atHigh_km, scaled.asTaken_km]).toEqual([60, 45, 100]);
  expect([unscaled.atLow_km, unscaled.atHigh_km]).toEqual([5, 0]);
  expect(scaledUnknowns(before, [inventedCandidate(5)])).toBeUndefined();
  // Half a kilometre is a range.
  const short = [[{ ...inventedUnknown(0.5, 0.1, 0.1), asTaken_km: 0.5 }]];
  expect(scaledUnknowns(short, [inventedCandidate(0.1)])?.[0][0].atLow_km).toBeCloseTo(1.2, 12);
});

it("scales drives in conditions by the range of today, those of packs that were driven", () => {
  const drive = (name: string, range_km: number) => ({
    name,
    range_km,
    rangeEnd: "floor" as const,
    battery_Whpkm: 150,
    perMetre_J: 540,
    heater_kW: 1,
    missed_frac: 0,
    isStuck: false,
    pack_degC: 20,
    fuel_l100km: 0,
  });
  const before = [
    { winter: drive("winter", 40), tenYearsWinter: drive("old", 30), others: [drive("hills", 50)] },
    { others: [] },
  ];
  const now = [inventedCandidate(5), inventedCandidate(6), inventedCandidate(7)];
  // 50 km where 100 were driven before: half of each.
  const [first, second, third] = scaledConditions(before, [{ range_km: 100 }, { range_km: 0 }], now);
  expect(first.conditions).toEqual({
    winter: drive("winter", 20),
    tenYearsWinter: drive("old", 15),
    others: [drive("hills", 25)],
  });
  expect(second).toBe(now[1]);
  expect(third).toBe(now[2]);
  const [onlyOthers] = scaledConditions([{ others: [drive("hills", 50)] }], [{ range_km: 100 }], now);
  expect(onlyOthers.conditions).toEqual({ others: [drive("hills", 25)] });
});
