import { describe, expect, it } from "vitest";
import { bringMap, readMap } from "../../../../web/forms/motor/bringMap.ts";

const csv = "rpm,20,60,100\n1000,78,76,70\n3000,86,89,87\n6000,84,90,\n";

/** A file of a size that nobody has to write, which fails where it is read all the same. */
const fileOf = (name: string, size: number, text?: string): File =>
  ({
    name,
    size,
    text: async () => {
      if (text === undefined) throw new Error(`${name} was read`);
      return text;
    },
  }) as File;

describe("a motor map brought from a file", () => {
  it("is read, with how it was understood", async () => {
    const brought = await readMap("map.csv", csv);
    if (!("map" in brought)) throw new Error(brought.problems.join());
    expect(brought.map.notes.join()).toContain("percent");
    expect(brought.map.givenCount).toBe(8);
  });

  it.each([
    ["with one row", "rpm,20,60,100\n1000,78,76,70\n", /a single speed above 0 rpm, at least 2 wanted/],
    ["with an efficiency above 100 %", csv.replace("89", "109"), /map\.csv line 3: found 109 at 3000 rpm, 60 Nm/],
    ["with nothing in it", "", /found no line/],
    ["of words", "good,better\nbest,fair\n", /map\.csv/],
  ])("is refused %s, in words", async (_, text, sentence) => {
    const brought = await readMap("map.csv", text);
    expect("problems" in brought && brought.problems.join()).toMatch(sentence);
  });

  it("is read from the file up to 5 MB, and not even opened beyond", async () => {
    expect(await bringMap(fileOf("map.csv", 5_000_000, csv))).toMatchObject({
      name: "map.csv",
      map: { givenCount: 8 },
    });
    expect(await bringMap(fileOf("film.csv", 12_400_000))).toEqual({
      name: "film.csv",
      problems: ["film.csv: found 12 MB, a motor map has less than 5"],
    });
  });
});
