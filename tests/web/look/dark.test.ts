import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contourFill, inkOn, ledgerFills, luminance, ramp, shade } from "../../../web/charts/parts/figure/inks.ts";
import * as tokens from "../../../web/look/tokens.ts";
import { root } from "../../support/sourceFiles.ts";

const css = (name: string) => readFileSync(join(root, "web/look", name), "utf8");
const [light = "", dark = ""] = css("tokens.css").split("(prefers-color-scheme: dark)");
const valuesIn = (text: string) =>
  new Map([...text.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, k = "", v = ""]) => [k, v]));
const [byDay, byNight] = [valuesIn(light), valuesIn(dark)];
const contrast = (a: string, b: string) => {
  const [low, high] = [luminance(a), luminance(b)].toSorted((p, q) => p - q) as [number, number];
  return (high + 0.05) / (low + 0.05);
};
/** By the property that takes the place of an ink in a figure. */
const inNight = new Map(
  [...css("figureInks.css").matchAll(/\[(fill|stroke)="(#\w+)"\] \{\s*\1: var\(--([\w-]+)\)/g)].map(
    ([, kind, ink, name = ""]) => [`${kind} ${ink}`, name],
  ),
);
const drawn = [
  ...Object.values(tokens)
    .flat()
    .filter((each) => each.startsWith("#")),
  ...ramp,
  ...Object.values(ledgerFills),
  shade,
  contourFill,
];

describe("the dark page", () => {
  it("has its own value of every colour of the light one", () => {
    expect(byDay.size).toBeGreaterThan(25);
    expect([...byNight.keys()]).toEqual([...byDay.keys()]);
  });

  it("has every ink of the figures give way to the property of the same colour, lines and fills alike", () => {
    for (const ink of drawn) {
      for (const kind of ["fill", "stroke"]) {
        const name = inNight.get(`${kind} ${ink}`);
        expect(byDay.get(name ?? ""), `${kind} ${ink}`).toBe(ink);
      }
    }
    expect(inNight.size).toBe(2 * new Set(drawn).size);
  });

  it.each([
    ["light", byDay],
    ["dark", byNight],
  ])("has contrast of 4.5 for words and 3 for marks and edges where it is %s", (_, colours) => {
    const of = (name: string) => colours.get(name) ?? "";
    for (const ground of ["paper", "paper-shade"]) {
      for (const words of ["ink", "ink-soft", "ink-faint", "accent", "mend", "heed"])
        expect(contrast(of(words), of(ground)), `${words} on ${ground}`).toBeGreaterThanOrEqual(4.5);
    }
    for (const mark of ["edge", "day-winter", "day-other", "pinned", "grey-1", "grey-2", "grey-3"])
      expect(contrast(of(mark), of("paper")), mark).toBeGreaterThanOrEqual(3);
  });

  it("keeps words on the parts of a bar readable: 4.5 to 1 by night too", () => {
    const night = (ink: string) => byNight.get(inNight.get(`fill ${ink}`) ?? "") ?? "";
    for (const fill of [...Object.values(ledgerFills), tokens.highlight]) {
      const words = night(inkOn(fill, tokens.ink, tokens.paper));
      expect(contrast(words, night(fill)), fill).toBeGreaterThanOrEqual(4.5);
    }
    const lightness = ramp.map((each) => luminance(night(each)));
    expect(lightness).toEqual(lightness.toSorted((a, b) => a - b));
  });
});
