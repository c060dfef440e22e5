import { join } from "node:path";
import { expect, it } from "vitest";
import { readJobFile } from "../../../../sim/cli/files/jobFile.ts";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";

it("reads a job", () => {
  expect(readJobFile(changedDemoFile({ title: "My car" })).title).toBe("My car");
});

it("puts the file's name before the path of each fault", () => {
  const path = changedDemoFile({ usualDay_km: -1, title: 7 });
  expect(() => readJobFile(path)).toThrow(`${path} usualDay_km`);
  expect(() => readJobFile(path)).toThrow(`${path} title`);
});

it("knows which cycles there are", () => {
  const path = changedDemoFile({ roads: [{ kind: "cycle", id: "town", title: "Town", cycle: "uds" }] });
  expect(() => readJobFile(path)).toThrow(/roads\.0\.cycle: found "uds", no .*did you mean udds/);
});

it("says of a demo's name how to get a file of it", () => {
  const path = join(emptyFolder(), "piano-tuner");
  expect(() => readJobFile(path)).toThrow(
    "found no file of this name, but a demo; bellhousing new my.bellhousing.json --from piano-tuner writes one",
  );
});
