import { expect, it } from "vitest";
import { message, quantity } from "../../../shared/quantity/message.ts";
import type { Enough } from "../../../sim/index.ts";
import whichIsEnough from "../../../web/sections/whichIsEnough.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const job = demoJob(); // its usual day is 38 km
const { runs } = sectionValues(job);

const short: Enough["packs"][number] = {
  name: "8 kWh",
  isEnough: false,
  because: "short",
  spare_km: 4.2,
  winterSpare_km: -6.4,
  agedSpare_km: -15,
  why: message`${quantity("distance", 15)} short`,
};
const enough: Enough = {
  pack: undefined,
  needed_km: 61,
  sentences: [message`Needs ${quantity("distance", 61)}.`],
  packs: [short],
};

function told(found: Enough, units: "metric" | "british" = "metric") {
  const result = whichIsEnough.compute({ enough: found, runs, use: job, answerIndex: 0, units });
  const [figure, table] = whichIsEnough.plot(result, drawing(640));
  return {
    figure: "chart" in figure ? figure.chart : undefined,
    rows: "rows" in table ? table.rows : [],
    sentence: whichIsEnough.sentence(result),
    summary: whichIsEnough.summary?.(result),
    attention: whichIsEnough.attention?.(result),
    need: result.need,
  };
}

it("says what is left after the day, or by how much a pack falls short of it, in the reader's units", () => {
  expect(told(enough).rows).toEqual([["8 kWh", "not enough", "4.2 km", "6.4 km short", "15 km short", "15 km short"]]);
  // 1 mile = 1.609344 km by definition: 2.61, 3.98 and 9.32 miles.
  expect(told(enough, "british").rows[0].slice(2, 5)).toEqual(["2.61 miles", "3.98 miles short", "9.32 miles short"]);
});

it("has a dash where nothing is left to say, as for a pack that may not be used", () => {
  const { spare_km: _a, winterSpare_km: _b, agedSpare_km: _c, ...unusable } = short;
  const found = { ...enough, packs: [{ ...unusable, because: "unusable" as const }] };
  expect(told(found).rows[0].slice(2, 5)).toEqual(["-", "-", "-"]);
});

it("warns where none is enough, and names the one that is", () => {
  expect(told(enough)).toMatchObject({
    summary: "no pack is enough.",
    attention: ["None of the packs on the table is enough."],
  });
  const named = { ...enough, pack: "8 kWh", packs: [{ ...short, isEnough: true, because: "enough" as const }] };
  expect(told(named)).toMatchObject({ summary: "8 kWh: enough.", attention: [] });
  expect(told(named).rows[0][1]).toBe("enough");
});

it("draws the day and what it asks for in metres, and the longest day only where it is known", () => {
  expect(told(enough).need).toMatchObject({ day_m: 38_000, needed_m: 61_000, longest_m: 74_000 });
  const result = whichIsEnough.compute({
    enough,
    runs,
    use: { ...job, longestDay_km: undefined },
    answerIndex: 0,
    units: "metric",
  });
  expect(result.need).not.toHaveProperty("longest_m");
});
