import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { measuredForm } from "../../../../web/forms/road/measuredForm.ts";
import type { MeasuredDrive, MeasuredRequest } from "../../../../web/worker/roads/measuredApi.ts";
import { answered, answeringRoads } from "../../../support/broughtLog.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

/** Of a frozen prediction what this form looks at. */
const prediction = (at: string, recommended: string) => ({ at, recommended }) as Job["predictions"][number];

function page(predictions: Job["predictions"] = [], correctedCount = 0) {
  const asked: MeasuredRequest[] = [];
  const outcome = { kind: "drive", correctedCount, corrected: {} } as MeasuredDrive;
  const measured = async (_files: readonly File[], request: MeasuredRequest) => {
    asked.push(request);
    return { kind: "done" as const, value: outcome };
  };
  const shown = formPage({ ...demoJob(), predictions }, measuredForm, answeringRoads({ measured }));
  const bring = async () => {
    Object.defineProperty(shown.at("#measured-log"), "files", {
      value: [new File(["x"], "a.csv")],
      configurable: true,
    });
    shown.fire("#measured-log", "change");
    await answered();
    return asked.at(-1);
  };
  return { ...shown, bring };
}

it("compares with the job as it is and the middle pack where nothing was predicted", async () => {
  const { bring, texts } = page();
  expect(texts("#measured-against option")).toEqual(["the job as it is"]);
  // The third of five packs.
  expect(await bring()).toMatchObject({ packIndex: 2, prediction: undefined, offset_s: undefined, years: undefined });
});

it("compares with the newest prediction and the pack that it spoke for, until another is chosen", async () => {
  const { bring, choose, texts } = page([
    prediction("2024-03-01T08:00", "8 kWh"),
    prediction("2024-05-03T08:00", "21 kWh"),
  ]);
  expect(texts("#measured-against option")).toEqual([
    "the prediction of 2024-03-01",
    "the prediction of 2024-05-03",
    "the job as it is",
  ]);
  expect(await bring()).toMatchObject({ packIndex: 3, prediction: 1 });
  choose("#measured-against", "0");
  choose("#measured-pack", "1");
  expect(await bring()).toMatchObject({ packIndex: 1, prediction: 0 });
  choose("#measured-against", "job");
  expect((await bring())?.prediction).toBeUndefined();
});

it("adds to the clock of volts and amps what it is behind, and takes off what it is ahead", async () => {
  const { bring, type, choose } = page();
  type("#measured-offset", "7 s");
  type("#measured-socket", "12 kWh");
  type("#measured-years", "2");
  expect(await bring()).toMatchObject({ offset_s: 7, socket_kWh: 12, years: 2 });
  choose("#measured-way", "ahead");
  expect((await bring())?.offset_s).toBe(-7);
});

it("offers to take what the log corrects only where it corrects something, and only beside a frozen prediction", async () => {
  const none = page();
  await none.bring();
  expect(none.buttons()).toEqual(["Compare with the job again", "Discard the built car’s log"]);
  const { bring, press, said, job } = page([], 2);
  await bring();
  press(/^Take the corrected values/);
  expect(said("[role=status]")).toContain("The job holds no frozen prediction yet");
  expect(job()).toEqual(demoJob());
  press(/^Discard/);
  expect(said("[role=status]")).toBe("");
});
