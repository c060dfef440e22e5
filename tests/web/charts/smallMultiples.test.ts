import { expect, it } from "vitest";
import { createChannels, LIMITS } from "../../../sim/index.ts";
import { smallMultiples } from "../../../web/charts/smallMultiples.ts";
import { drawing } from "../../support/drawing.ts";

/** A run of ten-second rows with these currents, held back by the pack in the rows named. */
function pack(name: string, index: number, battery_A: readonly number[], held: readonly number[] = []) {
  const channels = createChannels(battery_A.length);
  channels.length = battery_A.length;
  channels.time_s.set(battery_A.map((_, i) => 10 * i));
  channels.battery_A.set(battery_A);
  for (const row of held) channels.limit[row] = LIMITS.indexOf("pack");
  return { name, index, channels };
}

const packs = [pack("Small", 0, [0, 100, 200], [2]), pack("Large", 1, [0, 50, 60, 40, 30])];
const drawn = (of = packs) => smallMultiples({ packs: of, channel: "batteryCurrent", along: "time" }, drawing());

it("says how far each pack goes and for how long a limit held it back", () => {
  const { alt, svg } = drawn();
  expect(alt).toBe(
    "Battery current of each pack over 40 s: Small between 0 A and 200 A, held back for 10 s; Large between 0 A and 60 A.",
  );
  expect(svg.textContent).toContain("held back 10 s: pack limit");
});

it("reads the interval that holds a moment, and nothing of a run that ended before", () => {
  const texts = (at_s: number) =>
    drawn()
      .read(at_s)
      .values.map(({ text }) => text);
  // A row is the end of its interval: what is drawn from 10 s to 20 s stands in the third.
  expect(texts(15)).toEqual(["200 A", "60 A"]);
  expect(texts(20)).toEqual(["200 A", "60 A"]);
  expect(texts(30)).toEqual(["ended before", "40 A"]);
});

it("has a strip a pack, all on one scale", () => {
  const one = drawn([packs[1] as (typeof packs)[0]]);
  const both = drawn();
  const high = (chart: typeof one) => Number(chart.svg.getAttribute("height"));
  expect(high(both)).toBeGreaterThan(high(one));
  // On its own scale the large pack's 60 A reach the top of its strip; beside 200 A they stay in the lowest third.
  const reachOf = ({ svg }: typeof one) => {
    const path = [...svg.querySelectorAll("path")]
      .filter((each) => each.getAttribute("fill-opacity") === "0.12")
      .at(-1);
    const heights = [...(path?.getAttribute("d") ?? "").matchAll(/,(-?[\d.]+)/g)].map(([, y]) => Number(y));
    return Math.max(...heights) - Math.min(...heights);
  };
  expect(reachOf(one)).toBeCloseTo(92, 0);
  expect(reachOf(both)).toBeCloseTo(0.3 * 92, 0);
});

it("leaves out packs that were not driven", () => {
  expect(drawn([...packs, pack("None", 2, [])]).alt).not.toContain("None");
  expect(drawn([pack("None", 2, [])]).alt).toMatch(/^No pack has been driven/);
});
