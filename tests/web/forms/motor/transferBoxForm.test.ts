import { describe, expect, it } from "vitest";
import { withGroup } from "../../../../web/editing/groupEdits.ts";
import { transferStart } from "../../../../web/forms/motor/transferBoxForm.ts";
import { page } from "../../fields/slipPage.ts";

describe("freewheeling hubs", () => {
  const box = "driveline.transferBox";

  it("are refused on a car whose front wheels drive", () => {
    const { jobEditor } = page();
    jobEditor.editPlain("driveline.drivenAxle", "front", "Driven wheels");
    expect(jobEditor.job.value.driveline.drivenAxle).toBe("front");
    const problems = jobEditor.change("box", (state) => withGroup(state, box, transferStart()));
    expect(problems.map(({ where }) => where)).toEqual(["driveline.drivenAxle"]);
    expect(jobEditor.job.value.driveline.transferBox).toBeUndefined();
  });

  it("keep the front axle from being the driven one, with a sentence at that field", () => {
    const { jobEditor } = page();
    expect(jobEditor.change("box", (state) => withGroup(state, box, transferStart()))).toEqual([]);
    jobEditor.editPlain("driveline.drivenAxle", "front", "Driven wheels");
    expect(jobEditor.drafts.value["driveline.drivenAxle"].problem).toContain("the front axle is engaged there");
  });

  it("leave no tyre driven to be chosen", () => {
    const { jobEditor } = page();
    jobEditor.editPlain("driveline.drivenAxle", "none", "Driven wheels");
    expect(jobEditor.drafts.value["driveline.drivenAxle"].problem).toMatch(/"none".*"front".*"rear".*"both"/);
  });
});
