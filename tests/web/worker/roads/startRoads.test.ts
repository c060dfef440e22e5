import { expect, it, vi } from "vitest";
import type { LivingWorker } from "../../../../web/worker/livingWorker.ts";
import type { LogSetting } from "../../../../web/worker/roads/roadsApi.ts";
import { startRoads } from "../../../../web/worker/roads/startRoads.ts";
import type { WorkerApi } from "../../../../web/worker/workerApi.ts";

const setting: LogSetting = { answers: [], off: [], parkedLonger_s: 180 };
const files = [new File(["a"], "a.gpx")];
const quiet = () => {};

/** Workers that note what they are asked, one life after the other; each answers as it is told to. */
function workers(answers: Readonly<Record<string, unknown>> = {}) {
  const asked: string[] = [];
  let lives = 0;
  const begin = () => {
    lives += 1;
    const mine = lives;
    const api = new Proxy(
      {},
      {
        get: (_, name: string) => async () => {
          asked.push(`${mine} ${name}`);
          return answers[name] ?? { kind: "done", value: name };
        },
      },
    );
    return { api };
  };
  let life = begin();
  const renew = vi.fn(() => {
    life = begin();
  });
  const worker = { ask: (question: (of: unknown) => unknown) => question(life), renew, isFree: () => true };
  return { roads: startRoads(worker as unknown as LivingWorker<WorkerApi>), asked, renew };
}

it("gives the logs to a worker that does not hold them before it asks about them, and only once", async () => {
  const { roads, asked, renew } = workers();
  await roads.bring(files, setting, quiet);
  await roads.view("whole");
  expect(asked).toEqual(["1 bring", "1 view"]);
  renew();
  await roads.view("whole");
  await roads.roadOf("whole", "A road");
  expect(asked.slice(2)).toEqual(["2 bring", "2 view", "2 roadOf"]);
});

it("gives a new worker no logs that were refused, nor those that were discarded", async () => {
  const refused = workers({ bring: { kind: "refused", problems: [] } });
  await refused.roads.bring(files, setting, quiet);
  refused.renew();
  await refused.roads.view("whole");
  expect(refused.asked).toEqual(["1 bring", "2 view"]);
  const discarded = workers();
  await discarded.roads.bring(files, setting, quiet);
  await discarded.roads.discard();
  discarded.renew();
  await discarded.roads.view("whole");
  expect(discarded.asked).toEqual(["1 bring", "1 discard", "2 view"]);
});

it("asks for a road that needs no log without giving any", async () => {
  const { roads, asked, renew } = workers();
  await roads.bring(files, setting, quiet);
  renew();
  await roads.cycleRoad({ cycle: "udds", title: "A cycle" });
  expect(asked).toEqual(["1 bring", "2 cycleRoad"]);
});

it("takes another worker where one could not fetch a part, since it never can, and for no other refusal", async () => {
  const problem = (code: string) => ({ view: { kind: "refused", problems: [{ code, where: "", message: "" }] } });
  const lacking = workers(problem("notFetched"));
  await lacking.roads.view("whole");
  expect(lacking.renew).toHaveBeenCalledTimes(1);
  const refusing = workers(problem("noTrips"));
  await refusing.roads.view("whole");
  expect(refusing.renew).not.toHaveBeenCalled();
});
