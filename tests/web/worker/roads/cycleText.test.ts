import { expect, it } from "vitest";
import { standardCycles } from "../../../../sim/index.ts";
import { cycleText } from "../../../../web/worker/roads/cycleText.ts";

it("has the table of every cycle of the catalogue, and of a phase that of its cycle", async () => {
  for (const { id } of standardCycles) expect((await cycleText(id))[id]).toMatch(/^time_s,speed_/m);
  expect(Object.keys(await cycleText("wltc-class-2:low"))).toEqual(["wltc-class-2"]);
});

it("has nothing for a name that is no cycle", async () => {
  expect(await cycleText("nowhere")).toEqual({});
});
