import { expect, it } from "vitest";
import { understoodForm } from "../../../../web/forms/road/understoodForm.ts";
import type { FileReading, LogSetting } from "../../../../web/worker/roads/roadsApi.ts";
import {
  answered,
  answeringRoads,
  broughtLog,
  logDrive,
  logQuestion,
  logReading,
} from "../../../support/broughtLog.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

function page(...files: FileReading[]) {
  const asked: LogSetting["answers"][] = [];
  const again = async ({ answers }: LogSetting) => {
    asked.push(answers);
    return { kind: "done" as const, value: broughtLog({ outcome: logDrive({ trips: [] }) }) };
  };
  const brought = broughtLog({ files });
  return { ...formPage(demoJob(), (form) => understoodForm(form, brought), answeringRoads({ again })), asked };
}
const open = logReading({ questions: [logQuestion({ decided: false })] });
const settled = logReading({ questions: [logQuestion({ decided: true })] });
const unit = "#log-0-speedUnit";

it("asks what the log leaves open, the guess pre-set, and waits for a word on it", async () => {
  const { said, at, choose, press, asked } = page(open);
  expect(said(".log-questions")).toContain("The log leaves this open");
  expect(at(unit).value).toBe("kmh");
  expect(said(`${unit}-says`)).toBe("Guessed: at most 96 of them.");
  choose(unit, "mph");
  await answered();
  expect(asked).toEqual([]);
  press(/^That is right/);
  await answered();
  expect(asked).toEqual([[{ speedUnit: "mph" }]]);
});

it("takes a change of what was settled at once, of the file that it is said of", async () => {
  const { has, choose, asked, said } = page(logReading({ file: "a.csv" }), { ...settled, file: "b.csv" });
  expect(has(".log-questions")).toBe(false);
  expect(said("label")).toBe("Unit of the recorded speed in b.csv");
  choose("#log-1-speedUnit", "mph");
  await answered();
  expect(asked).toEqual([[{}, { speedUnit: "mph" }]]);
});

it("says what is wrong with a time between rows, and takes none such", async () => {
  const { at, said, choose, press, asked, main } = page(
    logReading({ questions: [logQuestion({ name: "interval", choices: [], guess: "", decided: false })] }),
  );
  const id = "#log-0-interval";
  expect(main.querySelector("button")?.disabled).toBe(true);
  choose(id, "often");
  expect(said(`${id}-says`)).toMatch(/^Wrong: /);
  expect(at(id).getAttribute("aria-invalid")).toBe("true");
  choose(id, "2");
  expect(said(`${id}-says`)).toMatch(/^Guessed: /);
  press(/^That is right/);
  await answered();
  expect(asked).toEqual([[{ interval_s: 2 }]]);
});

it("gives a column another role, and takes it from the role that it had", async () => {
  const column = { index: 2, header: "v", role: "speed", unit: "km/h", evidence: "its name", sample: "42" } as const;
  const guess = { encoding: "UTF-8", layout: [], columns: [column] };
  const { choose, asked, said } = page(logReading({ guess }));
  const id = "#log-0-column-2";
  expect(said(".log-columns label")).toBe("v, like 42");
  choose(id, "height");
  await answered();
  expect(asked.at(-1)).toEqual([{ columns: { speed: "none", height: 2 } }]);
});

it("shows how the columns of a fixed format were understood without a choice", () => {
  const column = { index: 0, header: "", role: "time", unit: "", evidence: "by the format", sample: "" } as const;
  const guess = { encoding: "UTF-8", layout: [], columns: [column] };
  const { has, said } = page(logReading({ format: "gpx", guess }));
  expect(has(".log-columns select")).toBe(false);
  expect(said(".log-columns li")).toBe("column 1: time; by the format");
});
