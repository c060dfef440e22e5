import { describe, expect, it } from "vitest";
import { readDatasheet } from "../../../../web/forms/motor/datasheet.ts";
import { figures, point } from "./datasheetByHand.ts";

describe("a datasheet as typed", () => {
  it("is fitted once all five figures are there, in whatever units", () => {
    const { fitted, missing } = readDatasheet(
      { ...figures, peakTorque_Nm: "88.5 lb ft", peakPower_kW: "51 bhp" },
      "metric",
      "induction",
    );
    expect(missing).toEqual([]);
    // 88.5 · 1.3558179 Nm and 51 · 0.74569987 kW
    expect(fitted?.envelope.torque_Nm).toBeCloseTo(119.99, 2);
    expect(fitted?.envelope.power_kW).toBeCloseTo(38.03, 2);
  });

  it("names what is still missing, of a point begun as well", () => {
    const { missing, fitted } = readDatasheet(
      { peakTorque_Nm: "120", "points.0.speed_rpm": "3000" },
      "metric",
      "induction",
    );
    expect(fitted).toBeUndefined();
    expect(missing).toEqual([
      "peak power",
      "continuous power",
      "top speed",
      "rated voltage",
      "the rest of efficiency point 1",
    ]);
  });

  it("reads an efficiency in percent and as a share alike", () => {
    const percent = readDatasheet({ ...figures, ...point(0, "3000", "60", "89") }, "metric", "induction").fitted;
    const share = readDatasheet({ ...figures, ...point(0, "3000", "60", "0.89") }, "metric", "induction").fitted;
    expect(percent?.residuals).toHaveLength(1);
    expect(share).toEqual(percent);
  });

  it.each([
    ["an efficiency above 1", point(0, "3000", "60", "1.1"), "points.0.efficiency_frac", /1\.1/],
    ["an efficiency above 100 %", point(0, "3000", "60", "104 %"), "points.0.efficiency_frac", /104 %/],
    [
      "rpm and torque changed over",
      point(0, "60", "3000", "89"),
      "points.0.torque_Nm",
      /likely changed over: 3000 rpm and 60 Nm/,
    ],
    ["the same in the row it stands in", point(2, "60", "3000", "89"), "points.2.torque_Nm", /likely changed over/],
    ["a torque above the peak", point(0, "3000", "130", "89"), "points.0.torque_Nm", /130 Nm/],
    ["continuous above peak power", { continuousPower_kW: "39" }, "continuousPower_kW", /at most the peak power/],
    ["more power than torque and speed make", { peakPower_kW: "380" }, "peakPower_kW", /only 101 kW/],
    ["a word", { rated_V: "many" }, "rated_V", /many/],
  ])("refuses %s at its field", (_, texts, key, sentence) => {
    const { problems, fitted } = readDatasheet({ ...figures, ...texts }, "metric", "induction");
    expect(fitted).toBeUndefined();
    expect(Object.keys(problems)).toEqual([key]);
    expect(problems[key]).toMatch(sentence);
  });
});
