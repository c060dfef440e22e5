import { expect, it } from "vitest";
import { createChannels } from "../../../sim/index.ts";
import { anyChannel } from "../../../web/charts/anyChannel.ts";
import { drawing } from "../../support/drawing.ts";

/** A run of three seconds at these speeds, with these currents and states of charge. */
function pack(name: string, index: number, speed_mps: number[], battery_A: number[], soc_frac: number[]) {
  const channels = createChannels(speed_mps.length);
  channels.length = speed_mps.length;
  channels.time_s.set(speed_mps.map((_, i) => i));
  channels.speed_mps.set(speed_mps);
  channels.battery_A.set(battery_A);
  channels.soc_frac.set(soc_frac);
  return { name, index, channels };
}

// 10 m/s are 36 km/h, 20 m/s are 72 km/h.
const small = pack("Small", 0, [10, 10, 20], [50, 80, 100], [0.9, 0.8, 0.7]);
const large = pack("Large", 1, [20, 20, 20], [60, 60, 60], [0.9, 0.9, 0.9]);
/** Dots over the plane, and lines through all three samples. */
const dots = (svg: SVGSVGElement) => svg.querySelectorAll('[fill-opacity="0.85"]').length;
const lines = (svg: SVGSVGElement) =>
  [...svg.querySelectorAll("path")].filter((path) => /^M[^ML]+L[^ML]+L[^ML]+$/.test(path.getAttribute("d") ?? ""))
    .length;

it("draws lines along a run, and dots against anything else or where a third channel takes the colour", () => {
  const kinds = (chart: { svg: SVGSVGElement }) => [dots(chart.svg), lines(chart.svg)];
  const packs = [small, large];
  expect(kinds(anyChannel({ packs, x: "time", y: "batteryCurrent" }, drawing()))).toEqual([0, 2]);
  expect(kinds(anyChannel({ packs, x: "speed", y: "batteryCurrent" }, drawing()))).toEqual([2, 0]);
  expect(kinds(anyChannel({ packs, x: "time", y: "batteryCurrent", colour: "soc" }, drawing()))).toEqual([2, 0]);
});

it("reads what lies near a place for each pack, by the unit that other figures share", () => {
  const { read, position } = anyChannel({ packs: [small, large], x: "speed", y: "batteryCurrent" }, drawing());
  expect(position?.quantity).toBe("speed_mps");
  expect(read(10)).toEqual({
    where: "36 km/h",
    values: [
      { label: "Small", text: "50 to 80 A" },
      { label: "Large", text: "nothing near" },
    ],
  });
  expect(read(20).values.map(({ text }) => text)).toEqual(["100 A", "60 A"]);
});

it("has every sample in its table, with the channel of the colour", () => {
  const { table } = anyChannel({ packs: [small], x: "speed", y: "batteryCurrent", colour: "soc" }, drawing());
  expect(table.columns.map(({ name }) => name)).toEqual(["pack", "speed_kmh", "batteryCurrent_A", "soc_percent"]);
  expect(table.rows.map(([name, ...values]) => [name, ...values.map((value) => Math.round(Number(value)))])).toEqual([
    ["Small", 36, 50, 90],
    ["Small", 36, 80, 80],
    ["Small", 72, 100, 70],
  ]);
});

it("says in words how far each pack goes on both channels, one number where it is one", () => {
  const { alt } = anyChannel({ packs: [small, large], x: "speed", y: "batteryCurrent", colour: "soc" }, drawing());
  expect(alt).toBe(
    "Battery current against speed, coloured by state of charge (70 to 90 %): Small 50 to 100 A over 36 to 72 km/h; Large 60 A over 72 km/h.",
  );
});
