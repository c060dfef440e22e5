import { expect, it } from "vitest";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { onlyEdits } from "../../../web/editing/onlyEdits.ts";
import { demoJob } from "../../support/demoJob.ts";

it("lets a page that was sent try out a few values and change nothing else", () => {
  const whole = createJobEditor({ job: demoJob(), drafts: {} });
  const sent = onlyEdits(whole, ["usualDay_km"]);
  sent.edit("usualDay_km", "50 km", 50, { what: "Usual day" });
  expect(sent.job.value.usualDay_km).toBe(50);
  const { kept } = whole;
  const before = kept.value;
  sent.edit("vehicle.load_kg", "9 kg", 9, { what: "Load" });
  sent.editPlain("title", "Mine", "Title");
  sent.keepDraft("vehicle.load_kg", "x", "no number", "Load");
  sent.stage("staged.road.", { title: "x" }, "Road");
  expect(sent.change("all of it", (state) => ({ ...state, job: { ...state.job, title: "Mine" } }))).toHaveLength(1);
  expect(kept.value).toBe(before);
  sent.undo();
  expect(sent.job.value.usualDay_km).toBe(demoJob().usualDay_km);
});
