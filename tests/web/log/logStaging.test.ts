import { expect, it, vi } from "vitest";
import { inputError } from "../../../shared/problems.ts";
import { createLogStaging } from "../../../web/log/logStaging.ts";
import type { Answer, Brought, RoadsApi } from "../../../web/worker/roads/roadsApi.ts";
import { noRoads } from "../../support/noRoads.ts";
import { type Promised, promised } from "../../support/promised.ts";

/** A log of one trip, in which something is asked or nothing is. */
function logOf(file: string, isAsking = false): Brought {
  const questions = [{ name: "speedUnit", decided: !isAsking, guess: "kmh" }];
  const outcome = { kind: "drive", days: [], trips: [{ date: "2024-05-01", clock: "08:00", distance_m: 1000 }] };
  return { files: [{ file, questions }], leftOut: [], outcome } as unknown as Brought;
}
const done = (value: Brought): Answer<Brought> => ({ kind: "done", value });
const file = (name: string) => new File([""], name);

/** A staging over a worker whose answers come when the test gives them, in the order of the questions. */
function staged() {
  const open: Promised<Answer<Brought>>[] = [];
  const ask = vi.fn(() => {
    const asked = promised<Answer<Brought>>();
    open.push(asked);
    return asked.promise;
  });
  const cancel = vi.fn(async () => {});
  const discard = vi.fn(async () => {});
  const view = async () => ({ kind: "refused", problems: [] });
  const roads: RoadsApi = Object.assign(Object.create(noRoads), { bring: ask, again: ask, cancel, discard, view });
  const onDrive = vi.fn(async () => {});
  const log = createLogStaging(roads, { value: {} }, onDrive);
  /** Waits for the question of this number to be put, and answers it. */
  const answer = async (which: number, given: Answer<Brought>) => {
    await vi.waitUntil(() => open.length > which);
    open[which]?.resolve(given);
  };
  return { log, ask, cancel, discard, onDrive, answer };
}

it("works only on the newest wish: those between are never put, and the one under way is given up", async () => {
  const { log, ask, cancel, answer } = staged();
  const wishes = [log.bring([file("a")]), log.bring([file("b")]), log.bring([file("c")])];
  expect(cancel).toHaveBeenCalledTimes(2);
  await answer(0, done(logOf("c")));
  await Promise.all(wishes);
  expect(ask).toHaveBeenCalledTimes(1);
  expect(log.brought.value?.files[0]?.file).toBe("c");
  expect(log.work.value).toBeUndefined();
});

it("goes back to the setting that the log was worked under where another one is refused or given up", async () => {
  const { log, answer } = staged();
  const brought = log.bring([file("a")]);
  await answer(0, done(logOf("a")));
  await brought;
  const { parkedLonger_s } = log.setting.value;
  const refused = log.change({ parkedLonger_s: 5 });
  expect(log.setting.value.parkedLonger_s).toBe(5);
  await answer(1, { kind: "refused", problems: [{ code: "x", where: "a", message: "has no trip." }] });
  await refused;
  expect(log.setting.value.parkedLonger_s).toBe(parkedLonger_s);
  expect(log.refused.value).toEqual(["a: has no trip"]);
  const given = log.change({ parkedLonger_s: 5 });
  await answer(2, { kind: "cancelled" });
  await given;
  expect(log.setting.value.parkedLonger_s).toBe(parkedLonger_s);
  expect(log.done.value).toMatch(/^Given up\./);
  expect(log.brought.value?.files[0]?.file).toBe("a");
});

it("hands a drive on once for what was brought, when nothing is left to be asked", async () => {
  const { log, onDrive, answer } = staged();
  const brought = log.bring([file("a"), file("b")]);
  await answer(0, done(logOf("b", true)));
  await brought;
  expect(onDrive).not.toHaveBeenCalled();
  const answered = log.answer(1, { speedUnit: "kmh" });
  expect(log.setting.value.answers).toEqual([{}, { speedUnit: "kmh" }]);
  await answer(1, done(logOf("b")));
  await answered;
  expect(onDrive).toHaveBeenCalledTimes(1);
  const changed = log.change({ parkedLonger_s: 600 });
  await answer(2, done(logOf("b")));
  await changed;
  expect(onDrive).toHaveBeenCalledTimes(1);
});

it("stays empty once its log is discarded, also while that is being worked again", async () => {
  const { log, ask, cancel, answer } = staged();
  const brought = log.bring([file("a")]);
  await answer(0, done(logOf("a")));
  await brought;
  const changed = log.change({ parkedLonger_s: 600 });
  await vi.waitUntil(() => ask.mock.calls.length === 2);
  log.putBack();
  await answer(1, done(logOf("a")));
  await changed;
  expect(log.brought.value).toBeUndefined();
  expect(log.work.value).toBeUndefined();
  expect(cancel).toHaveBeenCalledTimes(1);
});

it("takes nothing more once another job is open, and lets the worker forget what it has", async () => {
  const { log, discard, ask, answer } = staged();
  const brought = log.bring([file("a")]);
  await vi.waitUntil(() => ask.mock.calls.length === 1);
  log.end();
  expect(discard).toHaveBeenCalledTimes(1);
  await answer(0, done(logOf("a")));
  await brought;
  expect(log.brought.value).toBeUndefined();
  await log.bring([file("b")]);
  expect(ask).toHaveBeenCalledTimes(1);
  expect(await log.make(async () => ({ kind: "refused", problems: [] }))).toBeUndefined();
});

it("makes no road where it is refused or fails, and says why", async () => {
  const { log } = staged();
  const made = await log.make(async () => {
    throw inputError("typed", "words", "found no distance");
  });
  expect(made).toBeUndefined();
  expect(log.refused.value).toHaveLength(1);
  expect(log.refused.value[0]).toContain("found no distance");
});
