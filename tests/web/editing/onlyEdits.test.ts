import { expect, it } from "vitest";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { onlyEdits } from "../../../web/editing/onlyEdits.ts";
import { demoJob } from "../../support/demoJob.ts";

it("lets a page that was sent try out a few values and change nothing else", () => {
  const whole = createJobEditor({ job: demoJob(), drafts: {} });
  const sent = onlyEdits(whole, ["usualDay_km", "packs.*.ceiling_frac"]);
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

it("takes a change of several values where each of them may be tried out, and of no other", () => {
  const whole = createJobEditor({ job: demoJob(), drafts: {} });
  const sent = onlyEdits(whole, ["packs.*.ceiling_frac"]);
  const charge = (ceiling_frac: number, floor_frac?: number) =>
    sent.change("Charge to", (state) => {
      const packs = state.job.packs.map((pack) => ({
        ...pack,
        ceiling_frac,
        ...(floor_frac !== undefined && { floor_frac }),
      }));
      return { ...state, job: { ...state.job, packs } };
    });
  expect(charge(0.85)).toEqual([]);
  expect(sent.job.value.packs.map(({ ceiling_frac }) => ceiling_frac)).toEqual(demoJob().packs.map(() => 0.85));
  expect(charge(0.8, 0.2)).toHaveLength(1);
  expect(
    sent.change("a pack less", (state) => ({ ...state, job: { ...state.job, packs: state.job.packs.slice(1) } })),
  ).toHaveLength(1);
  expect(sent.job.value.packs).toHaveLength(demoJob().packs.length);
  expect(sent.job.value.packs[0].ceiling_frac).toBe(0.85);
});
