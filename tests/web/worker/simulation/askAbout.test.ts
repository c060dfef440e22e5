import { expect, it } from "vitest";
import type { Trace } from "../../../../sim/index.ts";
import { askAbout } from "../../../../web/worker/simulation/askAbout.ts";

const trace = (title: string): Trace => ({
  id: title,
  title,
  time_s: Float64Array.of(0, 1),
  speed_mps: Float64Array.of(0, 0),
});

/** A worker that notes what it keeps. */
function worker() {
  const kept = new Map<number, Trace>();
  let sends = 0;
  const api = {
    keepTrace: async (id: number, sent: Trace) => {
      sends += 1;
      kept.set(id, sent);
    },
    dropTrace: async (id: number) => void kept.delete(id),
  };
  return { life: { api, sent: new Set<number>() }, kept, sends: () => sends };
}

/** The id that a question about a trace is put with. */
const asked = (life: ReturnType<typeof worker>["life"], road: Trace) => askAbout(life, road, async (id) => id);

it("puts a question at once where the trace is there already", async () => {
  const { life } = worker();
  const road = trace("road");
  await asked(life, road);
  const put: number[] = [];
  askAbout(life, road, async (id) => put.push(id));
  expect(put).toHaveLength(1);
});

it("sends a trace once to a worker, however often it is driven, and to every worker by itself", async () => {
  const [first, second] = [worker(), worker()];
  const road = trace("road");
  const id = await asked(first.life, road);
  expect(await asked(first.life, road)).toBe(id);
  expect(await asked(second.life, road)).toBe(id);
  expect([first.sends(), second.sends()]).toEqual([1, 1]);
  expect(first.kept.get(id)).toBe(road);
});

it("lets a worker keep the four used last", async () => {
  const { life, kept, sends } = worker();
  const roads = ["a", "b", "c", "d"].map(trace);
  for (const road of roads) await asked(life, road);
  await asked(life, roads[0]!);
  const id = await asked(life, trace("e"));
  expect([...kept.values()].map(({ title }) => title)).toEqual(["a", "c", "d", "e"]);
  expect(kept.has(id)).toBe(true);
  await asked(life, roads[1]!);
  expect(sends()).toBe(6);
});
