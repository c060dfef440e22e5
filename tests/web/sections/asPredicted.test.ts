import { expect, it } from "vitest";
import type { Job } from "../../../shared/job/job.ts";
import { freeze, withPrediction } from "../../../sim/index.ts";
import asPredicted from "../../../web/sections/asPredicted.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const job = demoJob();
const { runs, answer, answerIndex } = sectionValues(job);
const freezeOn = (of: Job, at: string, note?: string) => withPrediction(of, freeze(of, { runs, answer }, at, note));
const frozen = freezeOn(job, "2026-03-03T09:30:00.000Z", "the quote");

function told(of: Job) {
  const result = asPredicted.compute({ job: of, runs, answer, answerIndex, units: "metric" });
  return {
    captions: [...asPredicted.plot(result, drawing())].map(({ caption }) => caption),
    sentence: asPredicted.sentence(result),
    summary: asPredicted.summary?.(result),
    attention: asPredicted.attention?.(result),
  };
}

it("says how one is frozen where none is, with nothing drawn", () => {
  const { sentence, summary, captions, attention } = told(job);
  expect(sentence).toMatch(/^No prediction is frozen in this job yet: /);
  expect([summary, captions, attention]).toEqual(["nothing frozen yet", [], []]);
});

it("has the packs beside what the job says now, and what has changed only where something has", () => {
  const same = told(frozen);
  expect(same.summary).toBe("frozen on 3 March 2026; nothing has changed since");
  expect(same.captions).toEqual([expect.stringMatching(/^As predicted on 3 March 2026/)]);
  expect(same.attention).toEqual([]);
  const heavier = told({ ...frozen, vehicle: { ...frozen.vehicle, load_kg: frozen.vehicle.load_kg + 50 } });
  expect(heavier.summary).toBe("frozen on 3 March 2026; changed since");
  expect(heavier.captions.at(-1)).toBe("Changed since");
});

it("tells of the last one, and names those before it with what they were for", () => {
  const later = freezeOn(frozen, "2026-05-20T09:30:00.000Z");
  const { sentence, summary } = told(later);
  expect(summary).toMatch(/^frozen on 20 May 2026; /);
  expect(sentence).toMatch(/ Earlier ones: 3 March 2026 \(the quote\)\.$/);
});

it("warns of a prediction that was written over, and of one by a newer program", () => {
  const [prediction] = frozen.predictions;
  const over = told({ ...frozen, predictions: [{ ...prediction, digest: "0".repeat(prediction.digest.length) }] });
  expect(over.attention?.length).toBeGreaterThan(0);
  const newer = told({ ...frozen, predictions: [{ ...prediction, program: "999.0.0" }] });
  expect(newer.attention?.length).toBeGreaterThan(0);
});

it("compares with no drives of another number of packs", () => {
  const { sentence } = told({ ...frozen, packs: frozen.packs.slice(0, 2) });
  expect(sentence).not.toMatch(/was predicted to take/);
  expect(told(frozen).sentence).toMatch(/ was predicted to take [\d.]+ Wh\/km; now [\d.]+ Wh\/km\./);
});
