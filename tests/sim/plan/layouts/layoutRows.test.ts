import { describe, expect, it } from "vitest";
import { message, messageIn } from "../../../../shared/quantity/message.ts";
import { layoutName } from "../../../../sim/battery/layoutName.ts";
import { layoutRows } from "../../../../sim/plan/layouts/layoutRows.ts";
import type { Layout } from "../../../../sim/plan/layouts/layoutsOf.ts";
import type { Fault } from "../../../../sim/plan/layouts/ruledOut.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const [like] = inventedJob().packs;
const figures: Layout["figures"] = {
  full_V: 1,
  nominal_V: 1,
  loaded_V: 1,
  flat_V: 1,
  nominal_kWh: 1,
  usable_kWh: 1,
  mass_kg: 1,
  string_A: { rms: 1, tenSeconds: 1, peak: 1 },
};

/** A layout that fits, or is ruled out by a fault whose reason is its name. */
function layout(series: number, parallel: number, fault?: Fault): Layout {
  const name = layoutName(series, parallel);
  const pack = { ...like, name, seriesModules: series, parallelModules: parallel };
  return { pack, figures, ...(fault && { out: { fault, reason: message`${name}` } }) };
}
const rows = (all: readonly Layout[]) =>
  layoutRows(all).map(({ name, out }) => (out ? `${name} (${messageIn(out.reason, "metric")})` : name));

describe("layouts as a list", () => {
  it("have a line each where they fit, however many follow one another", () => {
    expect(rows([layout(4, 1), layout(4, 2), layout(5, 1)])).toEqual(["4s1p", "4s2p", "5s1p"]);
    expect(layoutRows([layout(4, 1)])[0].layout?.pack.name).toBe("4s1p");
  });
  it("have one line for those too low in volts, nearest to fitting the most in series", () => {
    const low = [layout(1, 1, "belowController"), layout(1, 2, "belowController"), layout(2, 1, "belowController")];
    expect(rows(low)).toEqual(["1s to 2s (2s1p)"]);
    expect(layoutRows(low)[0]).not.toHaveProperty("layout");
  });
  it("have one line for those too high in volts, nearest to fitting the fewest in series", () => {
    expect(rows([layout(6, 1, "aboveCharger"), layout(6, 2, "aboveCharger"), layout(7, 1, "aboveCharger")])).toEqual([
      "6s to 7s (6s1p)",
    ]);
  });
  it("name a single number in series once", () => {
    expect(rows([layout(6, 1, "aboveConverter"), layout(6, 2, "aboveConverter")])).toEqual(["6s (6s1p)"]);
  });
  it("join what is ruled out by current or mass only at the same number in series", () => {
    expect(
      rows([
        layout(4, 1, "peakCurrent"),
        layout(4, 2, "peakCurrent"),
        layout(5, 1, "peakCurrent"),
        layout(5, 2),
        layout(5, 3, "aboveGross"),
        layout(5, 4, "aboveGross"),
      ]),
    ).toEqual(["4s1p to 4s2p (4s2p)", "5s1p (5s1p)", "5s2p", "5s3p to 5s4p (5s3p)"]);
  });
  it("have the reason of most strings where currents rule out, and of fewest where mass does", () => {
    const nearest = (fault: Fault) => rows([layout(4, 1, fault), layout(4, 2, fault)]);
    for (const fault of ["peakCurrent", "continuousCurrent", "sagsBelowController"] as const)
      expect(nearest(fault)).toEqual(["4s1p to 4s2p (4s2p)"]);
    for (const fault of ["untested", "tooHeavy", "aboveGross", "axleAbovePlate"] as const)
      expect(nearest(fault)).toEqual(["4s1p to 4s2p (4s1p)"]);
  });
  it("are cut where the fault is another, or one between them fits", () => {
    expect(
      rows([layout(1, 1, "belowController"), layout(2, 1, "belowCharger"), layout(3, 1), layout(4, 1, "belowCharger")]),
    ).toEqual(["1s1p (1s1p)", "2s1p (2s1p)", "3s1p", "4s1p (4s1p)"]);
  });
});
