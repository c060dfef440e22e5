import { signal } from "@preact/signals-core";
import { expect, it } from "vitest";
import { chapters } from "../../../../web/chapters/index.ts";
import { defineValues } from "../../../../web/notebook/graph/defineValues.ts";
import { sections } from "../../../../web/sections/index.ts";
import type { View } from "../../../../web/sections/parts/values.ts";
import type { SimulationApi } from "../../../../web/worker/api.ts";
import { demoJob } from "../../../support/demoJob.ts";

it("has no value, working and chapter of one name: they stand in one graph, and none of them would come", () => {
  const view = { staging: { log: {}, map: signal(undefined) } } as unknown as View;
  const values = defineValues(signal(demoJob()), view, {} as SimulationApi).map(({ name }) => name);
  const names = [...values, ...[...sections, ...chapters].map(({ name }) => name)];
  expect(names.length).toBeGreaterThan(40);
  expect(names.filter((name, i) => names.indexOf(name) < i)).toEqual([]);
});
