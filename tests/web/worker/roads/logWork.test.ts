import { afterAll, expect, it } from "vitest";
import { logWork } from "../../../../web/worker/roads/logWork.ts";
import { makeLog, makeTruth, openSky } from "../../../logs/logMaker.ts";
import { writeGpx } from "../../../logs/logWriter.ts";

// Two minutes at 15 m/s: 1800 m.
const rows = makeLog(makeTruth(new Array(120).fill(15), 1), { ...openSky, seed: 2, elevation_m: undefined });
const setting = { answers: [], off: [], parkedLonger_s: 180, utcOffset_s: 0 };

// The session is the worker's own, and other tests ask it too.
afterAll(() => logWork.discard());

it("hands over whole columns of what was brought, once for every look at it", async () => {
  const log = new File([writeGpx(rows) as BlobPart], "a.gpx");
  expect((await logWork.bring([log], setting, () => {})).kind).toBe("done");
  const views = [await logWork.view("whole"), await logWork.view("whole")];
  const columns = views.map((view) => (view.kind === "done" ? view.value.cleaned.speed_mps : undefined));
  expect(columns[0]?.length).toBeGreaterThan(100);
  // A column that is handed over is gone: two looks must not share one.
  expect(columns[1]?.buffer).not.toBe(columns[0]?.buffer);
  expect(columns[1]).toEqual(columns[0]);
});

it("passes a refusal on as it is", async () => {
  const refused = await logWork.view("trip:99");
  expect(refused.kind === "refused" && refused.problems.map(({ code }) => code)).toEqual(["noTrips"]);
});
