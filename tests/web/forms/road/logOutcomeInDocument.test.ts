import { describe, expect, it } from "vitest";
import type { Repair, RepairKind } from "../../../../sim/index.ts";
import { logOutcome } from "../../../../web/forms/road/logOutcome.ts";
import type { Brought } from "../../../../web/worker/roads/roadsApi.ts";
import { answered, answeringRoads, broughtLog, logDrive, logTrip } from "../../../support/broughtLog.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const page = (outcome: Brought["outcome"], off: RepairKind[][] = []) => {
  const again = async (setting: { readonly off: readonly RepairKind[] }) => {
    off.push([...setting.off]);
    return { kind: "done" as const, value: broughtLog({ outcome: logDrive({ trips: [] }) }) };
  };
  return formPage(demoJob(), (form) => logOutcome(form, broughtLog({ outcome })), answeringRoads({ again }));
};

it("says why no drive could be made of it", () => {
  const problems = [{ code: "x", where: "a.csv", message: "found no time that rises" }];
  const { texts, said } = page({ kind: "unclean", problems });
  expect(said(".to-mend")).toContain("the job is as it was");
  expect(texts("li")).toEqual(["a.csv: found no time that rises."]);
});

it("says how long a planned route is, and how far it climbs where it has heights", () => {
  expect(page({ kind: "route", distance_m: 12_000 }).said("p")).toContain("12 km, without heights");
  expect(page({ kind: "route", distance_m: 12_000, climb_m: 340 }).said("p")).toContain("12 km, with 340 m of climb");
});

describe("the verdict on a drive", () => {
  it.each([
    ["recorded", true, "as recorded, weighed against positions"],
    ["recorded", false, "as recorded, no positions"],
    ["partly", true, "partly as recorded, partly from positions"],
    ["positions", true, "from positions"],
  ] as const)("says of speeds %s and positions %s where they are from", (speedSource, hasPositions, words) => {
    const { said } = page(logDrive({ hasPositions }, { speedSource }));
    expect(said("p")).toContain(`speed ${words}, height as recorded.`);
  });

  it("counts the trips and how far they go together", () => {
    expect(page(logDrive()).said("p")).toContain("1 trip, 10 km in all");
    const two = logDrive({ trips: [logTrip(3000), logTrip(4500)] }, { heightSource: "none" });
    expect(page(two).said("p")).toMatch(/2 trips, 7\.5 km in all; .* no heights: the road counts as flat\.$/);
  });

  it("says why there is no road to make of a log without trips", () => {
    const none = { trips: [] };
    expect(page(logDrive({ ...none, isStill: true })).said(".to-mend")).toContain("The log goes nowhere");
    expect(page(logDrive(none)).said(".to-mend")).toContain("No drive of 50 m or more is in the log.");
    expect(page(logDrive(none, { noDrive: "fixes lie too far apart" })).said(".to-mend")).toBe(
      "No road can be made of this log: fixes lie too far apart.",
    );
  });
});

describe("the repairs of a drive", () => {
  const repair = (kind: RepairKind, events = 0): Repair => ({
    kind,
    count: events,
    detail: "two of them, 40 m",
    from_s: 0,
    to_s: 60,
    events: Array.from({ length: events }, (_, i) => ({ from_s: i, to_s: i + 1, detail: `one at ${i}` })),
  });

  it("are none where nothing had to be done", () => {
    expect(page(logDrive()).said()).toContain("Nothing had to be repaired.");
  });

  it("can be left out one by one, save those without which there is no drive", async () => {
    const off: RepairKind[][] = [];
    const { has, at, fire } = page(logDrive({ repairs: [repair("duplicate"), repair("signalLoss")], trips: [] }), off);
    expect(has("#log-repair-duplicate")).toBe(false);
    at("#log-repair-signalLoss").checked = false;
    fire("#log-repair-signalLoss", "change");
    await answered();
    at("#log-repair-signalLoss").checked = true;
    fire("#log-repair-signalLoss", "change");
    await answered();
    expect(off).toEqual([["signalLoss"], []]);
  });

  it("list their events where there are more than the sentence can hold", () => {
    const few = page(logDrive({ repairs: [repair("signalLoss", 3)] }));
    expect(few.texts("summary")).not.toContain("The 3 largest");
    expect(page(logDrive({ repairs: [repair("signalLoss", 4)] })).texts("summary")).toContain("The 4 largest");
  });

  it("say what they had moved once they are left out", async () => {
    const shown = page(logDrive({ moved: { signalLoss: "40 m" }, trips: [] }));
    await shown.context.view.staging.log.change({ off: ["signalLoss"] });
    expect(shown.said(".detail")).toBe("Left as it was; the repair had moved 40 m.");
    expect(shown.texts("summary")[0]).toBe("Repaired: nothing, as asked");
  });
});
