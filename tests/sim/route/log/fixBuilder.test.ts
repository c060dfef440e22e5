import { expect, it } from "vitest";
import { FixBuilder } from "../../../../sim/route/log/fixBuilder.ts";
import { emptyFix } from "../../../../sim/route/log/fixes.ts";

function built(count: number): FixBuilder {
  const builder = new FixBuilder();
  for (let i = 0; i < count; i++) builder.add({ ...emptyFix(i + 1, i % 2), time_s: i, speed_mps: 2 * i });
  return builder;
}

it("keeps every fix however many there are", () => {
  const fixes = built(3000).finish();
  expect(fixes.count).toBe(3000);
  expect([...fixes.time_s]).toEqual(Array.from({ length: 3000 }, (_, i) => i));
  expect([fixes.speed_mps[2999], fixes.line[2999], fixes.segment[2999]]).toEqual([5998, 3000, 1]);
  expect(fixes.latitude_deg[2999]).toBeNaN();
});

it("has a column beside the drive only where some fix had one, and no value where that fix had none", () => {
  const builder = built(1500);
  builder.add({ ...emptyFix(1501, 0), extras: { packVoltage_V: 108 } });
  builder.add(emptyFix(1502, 0));
  const { extras } = builder.finish();
  expect(Object.keys(extras)).toEqual(["packVoltage_V"]);
  expect([...(extras.packVoltage_V ?? [])].slice(1499)).toEqual([Number.NaN, 108, Number.NaN]);
});

it("keeps the fixes that are wanted, in order", () => {
  const builder = built(10);
  builder.keep((i) => i % 3 === 0);
  expect([...builder.finish().time_s]).toEqual([0, 3, 6, 9]);
  builder.add({ ...emptyFix(11, 0), time_s: 20 });
  expect([...builder.finish().time_s]).toEqual([0, 3, 6, 9, 20]);
});
