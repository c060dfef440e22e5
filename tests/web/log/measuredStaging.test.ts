import { expect, it, vi } from "vitest";
import { inputError } from "../../../shared/problems.ts";
import { createMeasuredStaging } from "../../../web/log/measuredStaging.ts";
import type { MeasuredOutcome, MeasuredRequest } from "../../../web/worker/roads/measuredApi.ts";
import type { Answer } from "../../../web/worker/roads/roadsApi.ts";
import { demoJob } from "../../support/demoJob.ts";
import { type Promised, promised } from "../../support/promised.ts";

const request: MeasuredRequest = { job: demoJob(), packIndex: 0 };
const files = [new File(["a"], "a.csv")];
const outcome = (words: string): MeasuredOutcome => ({ kind: "charge", sentence: [words] });
const done = (words: string): Answer<MeasuredOutcome> => ({ kind: "done", value: outcome(words) });

/** A staging over a worker whose answers come when the test gives them, in the order of the questions. */
function staged() {
  const open: Promised<Answer<MeasuredOutcome>>[] = [];
  const measured = vi.fn(() => {
    const asked = promised<Answer<MeasuredOutcome>>();
    open.push(asked);
    return asked.promise;
  });
  const cancel = vi.fn(async () => {});
  return { staging: createMeasuredStaging({ measured, cancel }), measured, cancel, open };
}

it("asks nothing without a file, and compares the files brought before once more", async () => {
  const { staging, measured, open } = staged();
  await staging.hold(request);
  expect(measured).not.toHaveBeenCalled();
  const first = staging.hold(request, files);
  expect(staging.work.value).toEqual({ words: "Starting", share_frac: 0 });
  open[0]?.resolve(done("first"));
  await first;
  expect(staging.work.value).toBeUndefined();
  const again = staging.hold(request);
  open[1]?.resolve(done("again"));
  await again;
  expect(measured).toHaveBeenLastCalledWith(files, request, expect.any(Function));
  expect(staging.outcome.value).toEqual(outcome("again"));
});

it("keeps what was there where the next one is refused, given up or fails", async () => {
  const { staging, open } = staged();
  const next = async (how: (asked: (typeof open)[number]) => void) => {
    const held = staging.hold(request, files);
    const asked = open.at(-1);
    if (asked) how(asked);
    await held;
  };
  await next(({ resolve }) => resolve(done("first")));
  await next(({ resolve }) =>
    resolve({ kind: "refused", problems: [{ code: "x", where: "b.csv", message: "is empty." }] }),
  );
  expect(staging.refused.value).toEqual(["b.csv: is empty"]);
  await next(({ resolve }) => resolve({ kind: "cancelled" }));
  expect(staging.refused.value).toEqual([]);
  expect(staging.done.value).toMatch(/^Given up\./);
  await next(({ reject }) => reject(inputError("gone", "this page", "the calculation stopped twice")));
  expect(staging.refused.value[0]).toContain("the calculation stopped twice");
  expect(staging.outcome.value).toEqual(outcome("first"));
  expect(staging.work.value).toBeUndefined();
});

it("takes only the newest of two answers", async () => {
  const { staging, open } = staged();
  const both = [staging.hold(request, files), staging.hold(request, files)];
  open[1]?.resolve(done("newer"));
  open[0]?.resolve(done("older"));
  await Promise.all(both);
  expect(staging.outcome.value).toEqual(outcome("newer"));
});

it("is empty and at rest once its log is discarded, also while it is being compared", async () => {
  const { staging, open, cancel } = staged();
  const held = staging.hold(request, files);
  staging.putBack();
  open[0]?.resolve(done("late"));
  await held;
  expect(staging.work.value).toBeUndefined();
  expect(staging.outcome.value).toBeUndefined();
  expect(staging.files.value).toEqual([]);
  expect(cancel).toHaveBeenCalledTimes(1);
});
