import { signal } from "@preact/signals-core";
import { expect, it } from "vitest";
import type { Graph, Reading } from "../../../../web/notebook/graph/graph.ts";
import { reasonFacts, type Standing, standingIn } from "../../../../web/notebook/reasons/reasonFacts.ts";
import type { Values } from "../../../../web/sections/parts/values.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { sectionValues } from "../../../support/sectionValues.ts";

const { job, runs, enough } = sectionValues(demoJob());
const envelope = [{ speed_rpm: 0, torque_Nm: 120 }];
const unknowns: Values["unknowns"] = [];

/** Facts of a pack where these values stand, beside the job, its drives and its units. */
function factsOf(packIndex: number | undefined, more: Readonly<Record<string, unknown>> = {}) {
  const known: Readonly<Record<string, unknown>> = { job, runs, enough, units: "metric", ...more };
  const standing: Standing = (name) => known[name] as never;
  return reasonFacts(standing, packIndex);
}

it("has a value only while it stands for what is in the job now", () => {
  const readings: Readonly<Record<string, Reading<unknown>>> = {
    units: { state: "ready", value: "british", isLate: false },
    packIndex: { state: "ready", value: 2, isLate: true },
    runs: { state: "waiting" },
    enough: { state: "failed", message: "no", where: "use", error: undefined },
  };
  const read = (name: string) => signal<Reading<unknown>>(readings[name] ?? { state: "waiting" });
  const standing = standingIn({ read } as Pick<Graph, "read"> as Graph);
  expect(["units", "packIndex", "runs", "enough"].map((name) => standing(name as keyof Values))).toEqual([
    "british",
    undefined,
    undefined,
    undefined,
  ]);
});

it("has the drive of the pack that is asked for, and none of a pack that is gone or was not driven", () => {
  expect(factsOf(2)).toMatchObject({ packIndex: 2, run: { name: job.packs[2].name }, needed_km: enough.needed_km });
  expect(factsOf(undefined)).toBeUndefined();
  expect(factsOf(job.packs.length)).toBeUndefined();
  expect(factsOf(2, { job: { ...job, packs: job.packs.slice(0, 2) } })).toBeUndefined();
  expect(factsOf(2, { runs: undefined })).toBeUndefined();
});

it("has the motor's envelope of the pack in view only, and the unknowns of the pack of the answer only", () => {
  const more = { packIndex: 1, answerIndex: 2, motorSurface: { envelope }, unknowns };
  expect(factsOf(1, more)).toMatchObject({ envelope, unknowns: undefined });
  expect(factsOf(2, more)).toMatchObject({ envelope: undefined, unknowns });
});
