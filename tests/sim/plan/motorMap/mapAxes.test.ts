import { describe, expect, it } from "vitest";
import { longColumns, namedAxes } from "../../../../sim/plan/motorMap/mapAxes.ts";

const downIs = (corner: string, beside = "", above = "", head = "") => namedAxes(corner, beside, above, head).downIs;

describe("what runs down a map", () => {
  it.each([
    ["rpm \\ Nm", "speed"],
    ["Nm / rpm", "torque"],
    ["torque | speed", "torque"],
    ["1/min \\ N.m", "speed"],
    ["lb ft / rad/s", "torque"],
    ["rev/min / ft lb", "speed"],
    ["min-1 / Nm", "speed"],
    ["rpm", "speed"],
    ["Torque (N m)", "torque"],
    ["map", undefined],
    ["speed and torque", undefined],
    ["", undefined],
  ] as const)("is read of a corner %j as %s", (corner, axis) => expect(downIs(corner)).toBe(axis));

  it("is read of a column of words beside it before the corner's", () => {
    expect(namedAxes("rpm", "Torque (Nm)", "", "")).toMatchObject({ downIs: "torque", down: " Torque (Nm)" });
  });
  it("is read of a remark above, such as rpm goes down", () => {
    expect(downIs("", "", "efficiency: rpm down")).toBe("speed");
    expect(downIs("", "", "torque goes down")).toBe("torque");
    expect(downIs("", "", "Nm (going down)")).toBe("torque");
  });
  it("is the other one where only the words across say what they are, in their own line or above", () => {
    expect(downIs("", "", "", "torque 10 20")).toBe("speed");
    expect(downIs("", "", "Speed (rpm)")).toBe("torque");
    expect(namedAxes("", "", "Speed (rpm)", "torque").across).toBe("torque");
  });
  it("is read of a corner's two words only where both name an axis", () => {
    expect(namedAxes("rpm/Nm", "", "", "")).toMatchObject({ down: "rpm", across: "Nm" });
    expect(namedAxes("rpm / eff", "", "", "")).toMatchObject({ downIs: "speed", down: "rpm / eff", across: "" });
    expect(downIs("eff / rpm")).toBe("speed");
    expect(downIs("rpm / Nm / eff")).toBeUndefined();
  });
});

describe("the columns of a long table", () => {
  it("are found by their words, in any order", () => {
    expect(longColumns(["rpm", "Nm", "efficiency"])).toEqual({ speed: 0, torque: 1, value: 2 });
    expect(longColumns(["loss (W)", "no.", "torque", "speed"])).toEqual({ speed: 3, torque: 2, value: 0 });
    expect(longColumns(["Nm", "1/min", "η"])).toEqual({ speed: 1, torque: 0, value: 2 });
  });
  it("are none where one is missing, or a number stands among them", () => {
    for (const texts of [
      ["rpm", "Nm"],
      ["rpm", "eff", "loss"],
      ["Nm", "eff"],
      ["rpm", "Nm", "eff", "5"],
      ["rpm", "Nm", "name"],
    ])
      expect(longColumns(texts), texts.join()).toBeUndefined();
  });
  it("are not the same twice: an efficiency of the torque's own column is none", () => {
    expect(longColumns(["speed loss", "torque %", "name"])).toBeUndefined();
  });
});
