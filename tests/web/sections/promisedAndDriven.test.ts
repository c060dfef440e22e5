import { beforeAll, describe, expect, it } from "vitest";
import { openMeasuring, openRoutes } from "../../../sim/index.ts";
import type { Table } from "../../../web/sections/parts/section.ts";
import promisedAndDriven from "../../../web/sections/promisedAndDriven.ts";
import { createLogSession } from "../../../web/worker/roads/logSession.ts";
import type { MeasuredOutcome } from "../../../web/worker/roads/measuredApi.ts";
import { drivenAndLogged, motionCsv, packCsv, shortDrive } from "../../logs/builtCar.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";

const job = demoJob();
const session = createLogSession(openRoutes, async (cycle) => ({ [cycle]: cycleTexts[cycle] }), openMeasuring);
const quiet = () => undefined;
let files: File[];
let outcome: MeasuredOutcome;

beforeAll(async () => {
  const change = { rolling_ratio: 1.2, accessories_W: 120, regen_ratio: 0.5 };
  const log = drivenAndLogged(job, 2, shortDrive(), { seed: 5, change, sign: -1, behind_s: 7 }, 1_777_793_000);
  files = [new File([motionCsv(log)], "motion.csv"), new File([packCsv(log)], "pack.csv")];
  const answer = await session.measured(files, { job, packIndex: 2 }, quiet);
  if (answer.kind !== "done") throw new Error(JSON.stringify(answer));
  outcome = answer.value;
});

const found = (units: "metric" | "british" = "metric") =>
  promisedAndDriven.compute({ measuredOutcome: outcome, units });

describe("a built car's log on the page", () => {
  it("has the verdict in its summary and in its sentence, in the reader's units", () => {
    expect(promisedAndDriven.summary?.(found())).toMatch(
      /^\d+\.?\d* km: logged \d+ Wh\/km, predicted by the job as it is \d+ Wh\/km: \d+ % more/,
    );
    expect(promisedAndDriven.summary?.(found("british"))).toMatch(/ miles: logged \d+ Wh\/mile/);
    expect(promisedAndDriven.sentence(found())).toMatch(/against 259 W in the job: what stays on\?/);
  });

  it("draws all three lines and sets out the quantities and what the car was doing", () => {
    const [figure, whole, doings] = [...promisedAndDriven.plot(found(), drawing())] as [
      { chart: { alt: string } },
      Table,
      Table,
    ];
    expect(figure.chart.alt).toMatch(/kWh logged, .* kWh predicted, .* kWh as corrected/);
    expect(whole.rows.map(([words]) => words)).toContain("Drawn while standing");
    expect(doings.rows.map(([words]) => words)).toEqual([
      "standing",
      "pulling away",
      "cruising",
      "climbing",
      "braking",
    ]);
  });

  it("has range and year by either line, the corrected one lower for a car that takes more", () => {
    const outlook = [...promisedAndDriven.plot(found(), drawing())][3] as Table;
    expect(outlook.columns.map(({ title }) => title)).toEqual(["What", "As predicted", "As corrected on 2026-05-03"]);
    const [range, ...year] = outlook.rows;
    const [predicted_km, corrected_km] = range.slice(1).map((cell) => Number.parseFloat(cell));
    expect(corrected_km).toBeLessThan(predicted_km);
    for (const [, before, after] of year)
      expect(Number.parseInt(after, 10)).toBeGreaterThanOrEqual(Number.parseInt(before, 10));
    expect(year.map(([words]) => words)).toContain("Days of the year not home, at 10 years");
  });

  it("corrects the standing draw by what was hidden and dates it", () => {
    if (outcome.kind !== "drive") throw new Error("no drive");
    const added_W =
      (outcome.corrected.accessories.standing_W - job.accessories.standing_W) / job.accessories.dcdcEfficiency_frac;
    expect(Math.abs(added_W - 120)).toBeLessThan(25);
    expect(outcome.corrected.origins["accessories.standing_W"]?.note).toMatch(/on 2026-05-03/);
  });

  it("says that nothing has been driven before there is a log", () => {
    const none = promisedAndDriven.compute({ measuredOutcome: undefined, units: "metric" });
    expect(promisedAndDriven.summary?.(none)).toBe("no log of the built car yet");
    expect([...promisedAndDriven.plot(none, drawing())]).toEqual([]);
  });
});

it("refuses what is no log of a built car with the reason", async () => {
  const [motion] = files;
  const answer = await session.measured(motion ? [motion] : [], { job, packIndex: 2 }, quiet);
  expect(answer).toMatchObject({ kind: "refused", problems: [{ code: "no-pack" }] });
});
