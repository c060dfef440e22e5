import { describe, expect, it } from "vitest";
import { message, messageIn } from "../../../../shared/quantity/message.ts";
import type { PackBeside } from "../../../../sim/plan/layouts/packsBeside.ts";
import { packsBesideWords } from "../../../../sim/plan/layouts/packsBesideWords.ts";
import { demoJob } from "../../../support/demoJob.ts";

const [like] = demoJob(0).packs;
const packOf = (name: string, more: Partial<PackBeside>): PackBeside => ({
  ...{
    roles: [],
    pack: { ...like, name },
    nominal_kWh: 12,
    mass_kg: 120,
    range_km: 70,
    meets: true,
    why: message`It ends short.`,
  },
  ...more,
});
const small = packOf("5s3p", { roles: ["smallest"], nominal_kWh: 12.6, cost: { value: 1500, low: 1400, high: 1600 } });
const large = packOf("29 kWh", {
  ...{ roles: ["asked for"], nominal_kWh: 29.5, mass_kg: 296, range_km: 151 },
  cost: { value: 3600, low: 3200, high: 4000 },
});
const said = (...args: Parameters<typeof packsBesideWords>) =>
  packsBesideWords(...args).map((each) => messageIn(each, "metric"));
const days = (fresh: number, tenYears: number) => ({ new: fresh, tenYears, driven: 240 });

describe("what was asked for beside the smallest", () => {
  it("is told by mass, range, days of the year at ten years and price: 296 less 120 kg, 151 less 70 km, 3200 less 1400", () => {
    expect(said([small, large], [days(2, 5), days(0, 1)], "GBP")).toEqual([
      "Beside 5s3p (12.6 kWh), 29 kWh, as asked for, weighs 176 kg more and goes 81 km further when new. At ten years it fails on one day of 240 in the year, the smallest on 5 days. Its cells cost 1800 to 2400\u00a0GBP more.",
    ]);
  });

  it("says where no day of the year asks for it, and where both fail alike", () => {
    expect(said([small, large], [days(0, 0), days(0, 0)])[0]).toMatch(/Both get home on every driving day of the year/);
    expect(said([small, large], [days(0, 3), days(0, 3)])[0]).toMatch(/At ten years both fail on 3 days of 240/);
  });

  it("leaves out the year until it is driven and the price where there is none", () => {
    const { cost: _cost, ...unpriced } = large;
    expect(said([small, unpriced], undefined)).toEqual([
      "Beside 5s3p (12.6 kWh), 29 kWh, as asked for, weighs 176 kg more and goes 81 km further when new.",
    ]);
  });

  it("says less where it is lighter, goes less far and costs less, and that prices are open where they overlap", () => {
    const light = { ...large, mass_kg: 100, range_km: 60, cost: { value: 1000, low: 900, high: 1100 } };
    expect(said([small, light], undefined, "£")[0]).toMatch(
      /weighs 20 kg less and goes 10 km less far when new\. Its cells cost £500 less\./,
    );
    const open = { ...large, cost: { value: 1500, low: 1000, high: 2000 } };
    expect(said([small, open], undefined)[0]).toMatch(/Which cells cost more is open\.$/);
  });

  it("says that it is the smallest, or that it does not do it and why; nothing of packs nobody asked for", () => {
    expect(said([{ ...small, roles: ["smallest", "asked for"] }], undefined)).toEqual([
      "5s3p, as asked for, is the smallest that will do.",
    ]);
    expect(said([{ ...large, meets: false }, small], undefined)).toEqual([
      "29 kWh, as asked for, does not do it: it ends short.",
    ]);
    expect(said([small], undefined)).toEqual([]);
  });
});
