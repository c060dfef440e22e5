import { expect, it } from "vitest";
import type { Driveline } from "../../../shared/job/schema/driveline.ts";
import { transferBox_ratio } from "../../../shared/job/transferBoxRatio.ts";

it("is that of the range chosen, and 1 without a box", () => {
  const ratio = (range: "low" | "high") => {
    const box = { range, high_ratio: 1.15, low_ratio: 2.35 };
    return transferBox_ratio({ transferBox: box as Driveline["transferBox"] });
  };
  expect([ratio("high"), ratio("low"), transferBox_ratio({})]).toEqual([1.15, 2.35, 1]);
});
