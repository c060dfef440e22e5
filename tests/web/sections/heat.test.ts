import { describe, expect, it } from "vitest";
import heat from "../../../web/sections/heat.ts";
import type { Figure, Worked } from "../../../web/sections/parts/section.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const isFigure = (worked: Worked): worked is Figure => "chart" in worked;
const figuresOf = (values: Parameters<typeof heat.compute>[0]) =>
  [...heat.plot(heat.compute(values), drawing())].filter(isFigure);

describe("motor and pack on a hot day", () => {
  it("has one figure of temperatures: four lines named, both limits written, and each read by its name", () => {
    const [figure, ...others] = figuresOf(sectionValues(demoJob()));
    expect(others).toEqual([]);
    expect(figure?.caption).toMatch(/^How warm do motor and pack get, .* on a day of \d+ °C\?$/);
    const text = figure?.chart.svg.textContent ?? "";
    for (const words of ["motor, this road", "motor, long hill", "pack, this road", "pack, long hill"])
      expect(figure?.chart.alt).toContain(words);
    expect(text).toMatch(/motor gives less from \d+ °C/);
    expect(text).toMatch(/pack gives less from \d+ °C/);
    const read = figure?.chart.read(60);
    expect(read?.values.map(({ label }) => label)).toHaveLength(4);
    expect(read?.values.every(({ text }) => /^(\d+ °C|ended)$/.test(text))).toBe(true);
  });

  it("has the share of the maker's rating where that is all that is known of the motor", () => {
    const { heat: _motor, ...motor } = demoJob().motor;
    const { heat: _pack, ...module } = demoJob().module;
    const job = { ...demoJob(), motor: { ...motor, rating: { continuous_kW: 12 } }, module };
    const [figure, ...others] = figuresOf(sectionValues(job));
    expect(others).toEqual([]);
    expect(figure?.caption).toMatch(/maker’s continuous power/);
    expect(figure?.chart.alt).toMatch(/this road: up to \d+ %; long hill: up to \d+ %; continuous rating: 100 %/);
  });

  it("has no figure while it is folded, and the same finding but for what the figure adds", () => {
    const values = sectionValues(demoJob());
    expect(figuresOf({ ...values, heatLines: [], job: values.job, gearbox: values.gearbox, units: "metric" })).toEqual(
      [],
    );
    const folded = heat.sentence(
      heat.compute({ job: values.job, gearbox: values.gearbox, units: "metric", heatLines: [] }),
    );
    expect(heat.sentence(heat.compute(values)).startsWith(folded)).toBe(true);
  });
});
