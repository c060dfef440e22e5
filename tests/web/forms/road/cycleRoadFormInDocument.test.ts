import { expect, it } from "vitest";
import { cycleRoadForm } from "../../../../web/forms/road/cycleRoadForm.ts";
import type { CycleRequest } from "../../../../web/worker/roads/roadsApi.ts";
import { answered, answeringRoads } from "../../../support/broughtLog.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

function page() {
  const asked: CycleRequest[] = [];
  const cycleRoad = async (request: CycleRequest) => {
    asked.push(request);
    const road = { kind: "cycle" as const, title: request.title, cycle: "udds" };
    return { kind: "done" as const, value: { road, distance_m: 12_000, duration_s: 1369 } };
  };
  return { ...formPage(demoJob(), cycleRoadForm, answeringRoads({ cycleRoad })), asked };
}

it("calls the road by what is chosen until other words are typed", () => {
  const { at, choose, type, texts } = page();
  const [first] = texts("#cycle-id option");
  expect(at("#cycle-title").value).toBe(first);
  type("#cycle-distance", "40 km");
  choose("#cycle-hills", "typed");
  expect(at("#cycle-title").value).toBe(`${first}, repeated to 40 km, with hills`);
  type("#cycle-title", "The round");
  choose("#cycle-hills", "level");
  expect(at("#cycle-title").value).toBe("The round");
});

it("asks for a level cycle once where nothing more is said, as a guess in the place of the client's road", async () => {
  const { press, asked, job, at } = page();
  press(/^Use this road$/);
  await answered();
  expect(asked).toEqual([{ cycle: at("#cycle-id").value, title: at("#cycle-title").value }]);
  expect(job().drivenRoad).toBe("cycle-1");
  expect(job().origins[`roads.${job().roads.length - 1}`]?.from).toBe("guessed");
});

it("offers the hills of the roads that have some, and lays them under", async () => {
  const { texts, choose, press, asked } = page();
  // Of the demo's four roads only the harbour round has hills.
  expect(texts("#cycle-hills option")).toHaveLength(3);
  choose("#cycle-hills", "harbour");
  press(/^Use this road$/);
  await answered();
  expect(asked[0].hills).toEqual(demoJob().roads.find(({ id }) => id === "harbour")?.hills);
});

it("says how typed hills were understood, and makes no road of those that cannot be read", async () => {
  const { choose, type, said, press, asked, job } = page();
  choose("#cycle-hills", "typed");
  expect(said("#cycle-heights-says")).toBe("");
  type("#cycle-heights", "0 km 120 m; 2.5 km 180 m; 4 km 95 m");
  expect(said("#cycle-heights-says")).toBe("3 heights over 4 km, from 95 m to 180 m");
  type("#cycle-heights", "0 km high; 4 km low");
  expect(said("#cycle-heights-says")).toMatch(/^Wrong: /);
  press(/^Use this road$/);
  await answered();
  expect(asked).toEqual([]);
  expect(said(".refused")).toMatch(/^Not done: /);
  expect(job()).toEqual(demoJob());
});
