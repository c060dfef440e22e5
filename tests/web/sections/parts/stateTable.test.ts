import { expect, it } from "vitest";
import type { GearboxStudy } from "../../../../sim/index.ts";
import { hoodTable, stateTable } from "../../../../web/sections/parts/stateTable.ts";

const study = {
  pack: "A",
  driveStates: [
    { name: "free", isAsSet: true, drivenAxle: "rear", shaftDrag_Nm: 0, battery_Whpkm: 150 },
    { name: "engaged", isAsSet: false, drivenAxle: "both", shaftDrag_Nm: 5 },
  ],
  hoodStates: [{ name: "down", isAsSet: false, battery_Whpkm: 160 }],
} as unknown as GearboxStudy;

it("has each state of hubs and axle, and which is set", () => {
  expect(stateTable(study, "metric").rows).toEqual([
    ["free, as set", "rear axle", "none", "150 Wh/km"],
    ["engaged", "both axles", "5 Nm", "does not move"],
  ]);
});

it("has the hood up and down", () => {
  expect(hoodTable(study, "metric").rows).toEqual([["down", "160 Wh/km"]]);
});
