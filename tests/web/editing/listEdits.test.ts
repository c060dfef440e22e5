import { describe, expect, it } from "vitest";
import type { EditorState } from "../../../web/editing/jobEditor.ts";
import { withEntry, withFirst, withoutEntry } from "../../../web/editing/listEdits.ts";
import { demoJob } from "../../support/demoJob.ts";

function state(): EditorState {
  const job = demoJob();
  return {
    job: {
      ...job,
      origins: {
        "packs.0.boxes_frac": { from: "measured" },
        "packs.1.boxes_frac": { from: "usual" },
        "packs.2.boxes_frac": { from: "guessed" },
        usualDay_km: { from: "guessed" },
      },
    },
    drafts: { "packs.2.seriesModules": { typed: "many", problem: "found no number" } },
  };
}

describe("entries of a list", () => {
  it("moves origins and drafts of later entries up when one is taken out", () => {
    const after = withoutEntry(state(), "packs", 1);
    expect(after.job.packs).toHaveLength(4);
    expect(after.job.origins).toEqual({
      "packs.0.boxes_frac": { from: "measured" },
      "packs.1.boxes_frac": { from: "guessed" },
      usualDay_km: { from: "guessed" },
    });
    expect(Object.keys(after.drafts)).toEqual(["packs.1.seriesModules"]);
  });

  it("drops the drafts of the entry that goes", () => {
    expect(withoutEntry(state(), "packs", 2).drafts).toEqual({});
  });

  it("puts an entry first with its origins and drafts, the others after it in their order", () => {
    const before = state();
    const after = withFirst(before, "packs", 2);
    const names = before.job.packs.map(({ name }) => name);
    expect(after.job.packs.map(({ name }) => name)).toEqual([names[2], names[0], names[1], names[3], names[4]]);
    expect(after.job.origins).toEqual({
      "packs.0.boxes_frac": { from: "guessed" },
      "packs.1.boxes_frac": { from: "measured" },
      "packs.2.boxes_frac": { from: "usual" },
      usualDay_km: { from: "guessed" },
    });
    expect(Object.keys(after.drafts)).toEqual(["packs.0.seriesModules"]);
  });

  it("gives a copy the origins of what it was copied from and moves the rest down", () => {
    const before = state();
    const copy = { ...before.job.packs[0], name: "copy" };
    const after = withEntry(before, "packs", 1, copy, 0);
    expect(after.job.packs.map(({ name }) => name).slice(0, 3)).toEqual([
      before.job.packs[0].name,
      "copy",
      before.job.packs[1].name,
    ]);
    expect(after.job.origins["packs.1.boxes_frac"]).toEqual({ from: "measured" });
    expect(after.job.origins["packs.2.boxes_frac"]).toEqual({ from: "usual" });
    expect(after.job.origins["packs.3.boxes_frac"]).toEqual({ from: "guessed" });
    expect(Object.keys(after.drafts)).toEqual(["packs.3.seriesModules"]);
  });
});
