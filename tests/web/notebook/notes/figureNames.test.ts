import { describe, expect, it } from "vitest";
import {
  namedFigures,
  notePieces,
  numberedFigures,
  withNames,
  withNumbers,
} from "../../../../web/notebook/notes/figureNames.ts";

const roadLoad = namedFigures("roadLoad", [
  { name: "forces", caption: "What holds the car back" },
  { name: "steady", caption: "Energy and range" },
]);
const energy = namedFigures("energyPerKm", [{ caption: "Where it goes" }]);
const shown = (isRoadLoadHidden = false) =>
  numberedFigures([
    { figures: roadLoad, isHidden: isRoadLoadHidden },
    { figures: energy, isHidden: false },
  ]);
const withAnotherAbove = numberedFigures([
  { figures: namedFigures("theCar", [{ caption: "Balance" }]), isHidden: false },
  { figures: roadLoad, isHidden: false },
  { figures: energy, isHidden: false },
]);

describe("figures by name", () => {
  it("have the section's name where it has one figure, and each its own where there are more", () => {
    expect(shown().map(({ id, number }) => [number, id])).toEqual([
      [1, "roadLoad.forces"],
      [2, "roadLoad.steady"],
      [3, "energyPerKm"],
    ]);
  });

  it("are told apart where two have one name", () => {
    const two = [
      { name: "a", caption: "" },
      { name: "a", caption: "" },
    ];
    expect(namedFigures("ownCharts", two).map(({ id }) => id)).toEqual(["ownCharts.a", "ownCharts.a.2"]);
  });
});

describe("a note that names a figure", () => {
  const typed = "See Figure 3, and figure 1 beside it.";
  const kept = "See {Figure energyPerKm}, and {figure roadLoad.forces} beside it.";

  it("is kept with the figure's name and shown with its number", () => {
    expect(withNames(typed, shown())).toBe(kept);
    expect(withNumbers(kept, shown())).toBe(typed);
  });

  it("follows its figure when others come above it", () => {
    expect(withNumbers(kept, withAnotherAbove)).toBe("See Figure 4, and figure 2 beside it.");
  });

  it("says that a figure is hidden from the client, or not on the page, and keeps its name for the writer", () => {
    expect(notePieces("See {Figure roadLoad.steady}.", shown(true))).toEqual([
      "See ",
      { words: "Figure 2 (hidden from client)", number: 2 },
      ".",
    ]);
    const gone = "See {Figure theRoad.log}.";
    expect(notePieces(gone, shown())).toEqual([
      "See ",
      { words: "a figure that is not on the page now (theRoad.log)" },
      ".",
    ]);
    expect(withNumbers(gone, shown())).toBe(gone);
    expect(withNames(gone, shown())).toBe(gone);
  });

  it("leaves a number that no figure has, words like it, and code as they were typed", () => {
    for (const text of [
      "Figure 40",
      "figures 3 to 5",
      "Disfigure 3",
      "`Figure 3`",
      "``Figure 3 ` ``",
      "Figure three",
    ]) {
      expect(withNames(text, shown())).toBe(text);
    }
    expect(withNumbers("`{figure energyPerKm}`", shown())).toBe("`{figure energyPerKm}`");
  });

  it("links a number typed before names were kept to the figure that has it now", () => {
    expect(notePieces("Figure 3", shown())).toEqual([{ words: "Figure 3", number: 3 }]);
  });

  it("is the same again after any number of turns to and fro", () => {
    let text = typed;
    for (let i = 0; i < 3; i++) text = withNumbers(withNames(text, shown()), shown());
    expect(text).toBe(typed);
  });
});
