import { describe, expect, it } from "vitest";
import { motors } from "../../../../shared/parts/motors.ts";
import { practice } from "../../../../shared/parts/origin.ts";
import type { Part } from "../../../../shared/parts/part.ts";
import { partRows } from "../../../../web/forms/parts/partRows.ts";
import { groups, partOf } from "./partsByPlace.ts";

describe("what a part brings, in words", () => {
  it.each(groups.flatMap(([path, parts]) => parts.map((part) => [part.title, path, part] as const)))(
    "of %s has a name, a value and an origin in each row",
    (_, path, part) => {
      const rows = partRows(part, path, "metric");
      expect(rows.length).toBeGreaterThan(1);
      for (const row of rows) {
        expect(Object.values(row).join(" ")).not.toMatch(/NaN|undefined|\[object/);
        expect(row.what).not.toBe("");
        expect(row.value).not.toBe("");
        expect(row.origin).toMatch(
          /^(published law \(|common practice, no source|invented|derived from published figures \()/,
        );
      }
    },
  );

  it("writes the unit of a band once", () => {
    const rows = partRows(partOf(motors, "series-brushed-25-kw"), "motor", "metric");
    expect(rows.find(({ what }) => what === "Mass of the motor")).toEqual({
      what: "Mass of the motor",
      value: "62 kg",
      band: "52 to 75 kg",
      origin: "invented",
    });
  });

  it("writes them in the reader's units", () => {
    const rows = partRows(partOf(motors, "series-brushed-25-kw"), "motor", "american");
    // 62, 52 and 75 kg of 2.20462 lb each, to three figures.
    expect(rows.find(({ what }) => what === "Mass of the motor")).toMatchObject({
      value: "137 lb",
      band: "115 to 165 lb",
    });
  });

  it("counts the values of a curve, gives its band in percent, and leaves out what no field shows", () => {
    const part: Part<unknown> = {
      id: "curve",
      title: "A curve",
      data: {
        envelope: { kind: "points", speed_rpm: [0, 3000, 6000], torque_Nm: [100, 100, 50] },
        mass_kg: 40,
        strange: 1,
      },
      origins: {
        envelope: { origin: "invented", plusMinus_frac: 0.15 },
        mass_kg: { origin: "invented" },
        strange: practice(0, 2),
      },
    };
    expect(partRows(part, "motor", "metric").map(({ what, value, band }) => [what, value, band])).toEqual([
      ["Peak torque over speed", "3 values", "± 15 %"],
      ["Mass of the motor", "40 kg", "as described"],
    ]);
  });
});
