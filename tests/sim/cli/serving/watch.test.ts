import { expect, it } from "vitest";
import { watchOn } from "../../../../sim/cli/serving/watch.ts";

function watching(isTTY: boolean) {
  const warned: string[] = [];
  const written: string[] = [];
  const watch = watchOn((text) => warned.push(text), { isTTY, write: (text: string) => written.push(text) });
  return { watch, warned, written };
}
const wipe = "\r\u001B[K";

it("shows each percentage once on one line of a terminal, and wipes it", () => {
  const { watch, warned, written } = watching(true);
  const result = watch("reading a.gpx", true, (progress) => {
    for (const fraction_frac of [0.101, 0.105, 0.5, 1]) progress(fraction_frac);
    return 7;
  });
  expect(result).toBe(7);
  expect(warned).toEqual([]);
  const shown = ["10 %", "50 %", "100 %"].map((percentage) => `${wipe}reading a.gpx: ${percentage}`);
  expect(written).toEqual([...shown, wipe]);
});

it("wipes the line when the work fails too, so that the message stands alone", () => {
  const { watch, written } = watching(true);
  const fail = () =>
    watch("reading a.gpx", true, (progress) => {
      progress(0.3);
      throw new Error("broken");
    });
  expect(fail).toThrow("broken");
  expect(written.at(-1)).toBe(wipe);
});

it("gives a pipe one line of words, and nothing of work that is short", () => {
  const pipe = watching(false);
  pipe.watch("reading a.gpx", true, (progress) => progress(0.5));
  pipe.watch("reading b.gpx", false, (progress) => progress(0.5));
  expect(pipe).toMatchObject({ warned: ["reading a.gpx, this takes a while"], written: [] });
  const terminal = watching(true);
  terminal.watch("reading b.gpx", false, (progress) => progress(0.5));
  expect(terminal).toMatchObject({ warned: [], written: [] });
});
