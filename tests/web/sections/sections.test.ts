import { describe, expect, it } from "vitest";
import type { Job } from "../../../shared/job/job.ts";
import { sections } from "../../../web/sections/index.ts";
import type { AnySection } from "../../../web/sections/parts/section.ts";
import type { Values } from "../../../web/sections/parts/values.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

/** What a reader sees of a section: its finding, what to look at, its tables, and its figures in words. */
function read(section: AnySection, values: Values) {
  const result = section.compute(values as never) as never;
  const worked = [...section.plot(result, drawing(640))];
  return {
    sentence: section.sentence(result),
    attention: section.attention?.(result) ?? [],
    worked,
    text: [
      section.sentence(result),
      ...(section.attention?.(result) ?? []),
      section.inShort?.(result) ?? "",
      ...worked.flatMap((each) =>
        "chart" in each ? [each.caption, each.chart.alt] : [each.caption, each.note ?? "", ...each.rows.flat()],
      ),
    ].join("\n"),
  };
}

const demo = demoJob();
const onePack: Job = { ...demo, packs: [demo.packs[0]] };
const farTooLong: Job = { ...demo, usualDay_km: 900 };
const weakMotor: Job = {
  ...demo,
  motor: {
    ...demo.motor,
    envelope: { kind: "peak", torque_Nm: 30, power_kW: 5 },
    loss: { kind: "flat", efficiency_frac: 0.8 },
  },
};
const highVolts: Job = { ...demo, packs: [{ ...demo.packs[0], seriesModules: 40 }] };
const nearlyEmpty: Job = { ...demo, packs: [{ ...demo.packs[0], ceiling_frac: 0.14, floor_frac: 0.1 }] };
const fixedGear: Job = {
  ...demo,
  driveline: { ...demo.driveline, shifting: { kind: "fixed", gear: "first" } },
};
const situations: Record<string, Values> = {
  "the demo": sectionValues(demo),
  "the demo in British units, by distance": sectionValues(demo, { units: "british", along: "distance" }),
  "the demo in American units": sectionValues(demo, { units: "american" }),
  "a single pack": sectionValues(onePack),
  "a usual day that no pack does": sectionValues(farTooLong),
  "a motor too weak for the road, of one flat efficiency": sectionValues(weakMotor),
  "a pack above the controller's highest voltage": sectionValues(highVolts),
  "a pack empty on the way": sectionValues(nearlyEmpty),
  "first gear only": sectionValues(fixedGear),
};

describe.each(Object.entries(situations))("with %s", (_, values) => {
  it.each(sections.map((section) => [section.name, section] as const))(
    "%s reads as finished sentences and numbers",
    (_name, section) => {
      const { sentence, attention, text } = read(section, values);
      expect(text).not.toMatch(/NaN|undefined|Infinity|null|\[object/);
      expect(sentence).toMatch(/^\S.*[.:]$/s);
      for (const each of attention) expect(each).toMatch(/\.$/);
    },
  );

  it("has as many cells in every row of a table as columns", () => {
    const tables = sections.flatMap((section) =>
      read(section, values).worked.flatMap((each) => ("rows" in each ? [each] : [])),
    );
    expect(tables.length).toBeGreaterThanOrEqual(8);
    for (const { caption, columns, rows } of tables) {
      expect([caption, rows.length > 0]).toEqual([caption, true]);
      for (const row of rows) expect([caption, row.length]).toEqual([caption, columns.length]);
    }
  });
});

const named = (name: string) => sections.find((section) => section.name === name) as AnySection;
const inSituation = (name: string, situation: string) => read(named(name), situations[situation]);

describe("sections", () => {
  it("say at the top which pack is enough", () => {
    const section = named("whichIsEnough");
    const result = section.compute(situations["the demo"] as never) as never;
    expect(section.summary?.(result)).toMatch(/kWh: enough\./);
    expect(section.sentence(result)).toMatch(/kWh: enough\. A usual day of /);
  });

  it("say by how much the best pack falls short where none is enough", () => {
    const { sentence, attention } = inSituation("whichIsEnough", "a usual day that no pack does");
    expect(sentence).toContain("None of these packs is enough");
    expect(attention).toEqual(["None of the packs on the table is enough."]);
  });

  it("say that the car does not keep up, in the road's section", () => {
    const { sentence, attention } = inSituation("theRoad", "a motor too weak for the road, of one flat efficiency");
    expect(sentence).toContain("Not every pack keeps up");
    expect(attention.join()).toContain("Falls behind for");
  });

  it("warn that one flat efficiency flatters town driving", () => {
    const { attention } = inSituation("energyPerKm", "a motor too weak for the road, of one flat efficiency");
    expect(attention.join()).toContain("one efficiency everywhere");
  });

  it("say that the motor is past its top speed, with the road speed where it happens", () => {
    const { attention, text } = inSituation("motorAndGears", "first gear only");
    expect(attention.join()).toMatch(
      /In first gear the motor is at its top speed at 55\.\d km\/h; the road asks for 91\.\d km\/h/,
    );
    expect(text).toContain("too fast");
  });

  it("find a pack above the controller's highest voltage", () => {
    const { attention } = inSituation("packs", "a pack above the controller's highest voltage");
    expect(attention.join()).toMatch(/Full, this pack has \d+ V and the controller takes at most 140 V/);
  });

  it("say that a pack is empty before the road ends", () => {
    expect(inSituation("stateOfCharge", "a pack empty on the way").attention.join()).toContain("before the road ends");
    expect(inSituation("theRoad", "a pack empty on the way").attention.join()).toContain("Empty on the way");
  });

  it("put the rpm of the steady table where the ratios put them", () => {
    // 60 km/h, third gear 1.40, final drive 4.1111, radius 284 mm: 60/3.6/0.284 · 1.40 · 4.1111 · 60/2π = 3225, to three figures.
    const table = inSituation("motorAndGears", "the demo").worked.find((each) =>
      each.caption.startsWith("Motor speed"),
    );
    const rows = table && "rows" in table ? table.rows : [];
    expect(rows[2][5]).toBe("3230");
  });

  it("keep energy over distance and energy of the drive in tables of their own", () => {
    const tables = inSituation("energyPerKm", "the demo").worked.flatMap((each) => ("rows" in each ? [each] : []));
    // Packs of the demo are named by their kWh, so the heads of the rows are left out.
    const cells = tables.map(({ rows }) => rows.flatMap((row) => row.slice(1)).join());
    expect(cells.map((each) => [/Wh\/km/.test(each), /kWh/.test(each)])).toEqual([
      [true, false],
      [false, true],
    ]);
  });

  it("name how the modules are joined where packs first come up", () => {
    expect(inSituation("theCar", "the demo").text).toMatch(/\b\d+s\d+p: \d+ modules in series/);
    expect(inSituation("packs", "the demo").sentence).toMatch(/kWh usable \(.+, \d+s\d+p\)/);
  });

  it("speak in miles where the reader does", () => {
    expect(inSituation("whichIsEnough", "the demo in British units, by distance").text).toContain("miles");
    expect(inSituation("roadLoad", "the demo in British units, by distance").text).toContain("mph");
  });

  it("flag a longest day that is shorter than the usual one", () => {
    const section = named("theJob");
    const result = section.compute({ job: { ...demo, longestDay_km: 10 }, units: "metric" } as never) as never;
    expect(section.attention?.(result)).toHaveLength(1);
  });
});
