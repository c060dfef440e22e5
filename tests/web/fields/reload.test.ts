import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { jobText } from "../../../shared/job/jobText.ts";
import type { OwnChart } from "../../../shared/job/schema/chart.ts";
import { fieldAt } from "../../../web/editing/fieldTable/fieldAt.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { withEntry, withoutEntry } from "../../../web/editing/listEdits.ts";
import { enterQuantity } from "../../../web/fields/enterQuantity.ts";
import { createFieldContext } from "../../../web/fields/fieldContext.ts";
import { keepJobs } from "../../../web/notebook/jobs/keepJobs.ts";
import { openJobs } from "../../../web/store/jobs.ts";
import { demoJob } from "../../support/demoJob.ts";
import { inventedBrowser } from "../../support/inventedWorld.ts";
import { noRoads } from "../../support/noRoads.ts";

/** Fields that hang on each other: a load against the gross mass, shares against shares, a day against the longest one. */
const paths = [
  "vehicle.load_kg",
  "vehicle.kerb_kg",
  "vehicle.gross_kg",
  "usualDay_km",
  "longestDay_km",
  "packs.0.floor_frac",
  "packs.0.ceiling_frac",
  "driveline.finalDrive_ratio",
  "vehicle.tyres.loadedRadius_mm",
];

const texts = [
  "",
  "5",
  "50",
  "95",
  "0.5",
  "1200",
  "1e99",
  "14 1/4 cwt",
  "9/41",
  "a quarter of a t",
  "-3",
  "unknown",
  "20 %",
];

type Edit =
  | { readonly kind: "type"; readonly path: string; readonly text: string; readonly leaves: boolean }
  | { readonly kind: "words"; readonly path: string; readonly text: string }
  | { readonly kind: "datasheet" | "road"; readonly field: string; readonly text: string }
  | { readonly kind: "undo" | "redo" | "packMore" | "packLess" | "chartMore" }
  | { readonly kind: "wait"; readonly time_ms: number };

const edits: fc.Arbitrary<Edit> = fc.oneof(
  fc.record({
    kind: fc.constant("type" as const),
    path: fc.constantFrom(...paths),
    text: fc.constantFrom(...texts),
    leaves: fc.boolean(),
  }),
  fc.record({
    kind: fc.constant("words" as const),
    path: fc.constantFrom("title", "use", "vehicle.name", "charts.0.caption"),
    text: fc.string({ maxLength: 220 }),
  }),
  fc.record({
    kind: fc.constant("datasheet" as const),
    field: fc.constantFrom("rated_V", "maxSpeed"),
    text: fc.string(),
  }),
  fc.record({
    kind: fc.constant("road" as const),
    field: fc.constantFrom("title", "typed-road", "cycle-heights"),
    text: fc.string(),
  }),
  fc.record({ kind: fc.constantFrom(...(["undo", "redo", "packMore", "packLess", "chartMore"] as const)) }),
  fc.record({ kind: fc.constant("wait" as const), time_ms: fc.integer({ min: 0, max: 200_000 }) }),
);

/** A page of the browser with a job on it, as main puts one together. */
async function page(browser: ReturnType<typeof inventedBrowser>, id?: string) {
  const own = browser.page();
  const jobs = await openJobs(own.world);
  if (id === undefined) await jobs.create(demoJob(), "the demo");
  else await jobs.open(id);
  const jobEditor = createJobEditor({ job: jobs.current.peek()?.job ?? demoJob(), drafts: {} });
  const stop = keepJobs(jobEditor, jobs);
  const context = createFieldContext(jobEditor, noRoads);
  const end = () => {
    stop();
    own.die();
    jobs.close();
  };
  return { jobs, jobEditor, context, end };
}

type OpenPage = Awaited<ReturnType<typeof page>>;

function make({ jobEditor, context }: OpenPage, edit: Edit): void {
  const { packs, charts } = jobEditor.job.value;
  switch (edit.kind) {
    case "type": {
      const field = fieldAt(edit.path);
      if (field.type !== "quantity") throw new Error(`${edit.path} is no quantity`);
      enterQuantity(context, edit.path, field, edit.text);
      if (edit.leaves) jobEditor.settle();
      return;
    }
    case "words":
      if (!edit.path.startsWith("charts") || charts.length > 0) jobEditor.editPlain(edit.path, edit.text, edit.path);
      return;
    case "datasheet":
    case "road": {
      const { datasheet, log } = context.view.staging;
      const texts = edit.kind === "road" ? log.texts : datasheet;
      texts.value = { ...texts.value, [edit.field]: edit.text };
      return;
    }
    case "chartMore": {
      const chart: OwnChart = { x: "time", y: "soc", packs: [], caption: "" };
      jobEditor.change("a chart more", ({ job, drafts }) => ({ job: { ...job, charts: [...charts, chart] }, drafts }));
      return;
    }
    case "undo":
    case "redo":
      jobEditor[edit.kind]();
      return;
    case "packMore":
      jobEditor.change("a pack more", (state) =>
        withEntry(state, "packs", 0, { ...packs[0], name: `n${packs.length}` }),
      );
      return;
    case "packLess":
      if (packs.length > 1) jobEditor.change("a pack less", (state) => withoutEntry(state, "packs", 0));
  }
}

const asBytes = ({ jobEditor }: OpenPage) => {
  const { job, drafts } = jobEditor.kept.value;
  return { job: jobText(job), drafts };
};

describe("a reload", () => {
  it("shows the same bytes after any walk of edits, writes nothing, and is no version", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(edits, { maxLength: 40 }), async (walk) => {
        const browser = inventedBrowser();
        const before = await page(browser);
        for (const edit of walk) {
          if (edit.kind === "wait") await browser.pass(edit.time_ms);
          else make(before, edit);
        }
        const left = asBytes(before);
        before.end(); // with whatever was not saved yet
        const [id = ""] = browser.shelves.jobs.keys();

        const after = await page(browser, id);
        expect(asBytes(after)).toEqual(left);
        const { revision, version } = after.jobs.list.value[0]!;
        await browser.pass(10_000);
        expect(after.jobs.list.value[0]).toMatchObject({ revision, version });
        after.end();

        const again = await page(browser, id);
        expect(asBytes(again)).toEqual(left);
        expect([...browser.shelves.jobs.keys()]).toEqual([id]);
        again.end();
      }),
      { numRuns: 60 },
    );
  });
});
