import { describe, expect, it } from "vitest";
import { EmptyFields } from "../../../../web/editing/emptied.ts";
import { standingOf } from "../../../../web/notebook/workings/standing.ts";
import type { AnySection } from "../../../../web/sections/parts/section.ts";

const section: AnySection = {
  name: "theCar",
  title: "The car",
  question: "What does it weigh?",
  fields: ["vehicle.load_kg", "accessories"],
  inputs: ["job"],
  compute: () => 0,
  plot: () => [],
  sentence: () => "It weighs something.",
  attention: (result: number) => (result > 1000 ? ["Too heavy."] : []),
};
const ready = (value: number) => ({ state: "ready" as const, value, isLate: false });
const draft = { typed: "heavy", problem: "found no number" };

describe("how a section stands", () => {
  it("says nothing where nothing is amiss", () => {
    expect(standingOf(section, ready(900), {})).toEqual({ words: "", needsAttention: false });
  });

  it("counts the findings to check", () => {
    expect(standingOf(section, ready(1200), {})).toEqual({ words: "1 to check.", needsAttention: true });
  });

  it("counts values beyond their soft limits with the findings, its own only", () => {
    const unusual = [
      { path: "vehicle.load_kg", label: "Load", message: "unusual" },
      { path: "motor.mass_kg", label: "Mass", message: "unusual" },
    ];
    expect(standingOf(section, ready(1200), {}, unusual).words).toBe("2 to check.");
  });

  it("waits for an empty field of another section", () => {
    const error = new EmptyFields(["vehicle.tyres.loadedRadius_mm"]);
    const failed = { state: "failed" as const, message: error.message, where: "machine", error };
    expect(standingOf(section, failed, {}).words).toBe("Waiting for an empty field.");
  });

  it("puts wrong fields first, its own only, those below a path too", () => {
    const drafts = { "accessories.items.0.power_W": draft, "vehicle.load_kg": draft, "motor.name": draft };
    expect(standingOf(section, ready(1200), drafts)).toEqual({ words: "2 wrong.", needsAttention: true });
  });

  it("does not take a path that only begins alike for its own", () => {
    expect(standingOf(section, ready(900), { "vehicle.load_kgs": draft }).words).toBe("");
  });

  it("says that it cannot be calculated, and that it is being calculated", () => {
    const failed = { state: "failed" as const, message: "no road", where: "road", error: undefined };
    expect(standingOf(section, failed, {})).toEqual({ words: "Cannot be calculated.", needsAttention: true });
    expect(standingOf(section, { state: "waiting" }, {})).toEqual({ words: "calculating …", needsAttention: false });
  });
});
