import { expect, it } from "vitest";
import { answerTable } from "../../../web/answer/answerTable.ts";
import { answered } from "./answeredByHand.ts";

it("makes the cells of the table from the same answer", () => {
  const answer = answered([3, 4.4, 6]);
  expect(answerTable(answer, [1, 2], "metric").rows).toEqual([
    {
      index: 1,
      name: "4.4 kWh",
      weight: "44 kg",
      left: ["29 to 38", "9 to 14", "1 short to 2"],
      pinned: "–",
      refill: "–",
      price: "–",
      verdict: "only just",
    },
    {
      index: 2,
      name: "6 kWh",
      weight: "60 kg",
      left: ["44 to 56", "17 to 23", "3 to 6"],
      pinned: "–",
      refill: "–",
      price: "–",
      verdict: "enough",
    },
  ]);
});

it("says of a refill that it begins at empty where the day takes more than the pack holds", () => {
  const none: number[] = [];
  const course = { time_s: none, soc_frac: none, wall_J: none, current_A: none };
  const refill = (isMoreThanPack: boolean) => {
    const figures = { time_h: 3.25, taper_h: 0.5, wall_kWh: 3, stored_kWh: 2.6, course, from_frac: 0.2 };
    return [{ supply: "Shed", pack: "", usualDay: { ...figures, isMoreThanPack } }];
  };
  const plan = {
    isAssumed: false,
    notes: [],
    cautions: [],
    supplies: [{ name: "Shed", wall_kW: 2.3, given_kW: 2 }],
    rows: [refill(true), refill(false)],
  };
  const { rows, refillAt } = answerTable(answered([3, 6]), [0, 1], "metric", undefined, plan);
  expect(rows.map((row) => row.refill)).toEqual(["3¼ h from empty", "3¼ h"]);
  expect(refillAt).toEqual({ power: "2.3 kW", place: "Shed" });
});
