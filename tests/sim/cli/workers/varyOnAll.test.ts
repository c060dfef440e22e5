import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { expect, it } from "vitest";
import { varyOnAll } from "../../../../sim/cli/workers/varyOnAll.ts";
import { resultOf } from "../../../../sim/math/resultOf.ts";
import { varyPack } from "../../../../sim/plan/vary/varyPack.ts";
import { traceOf } from "../../../support/bareCar.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { runCommand } from "../../../support/runCommand.ts";

const root = join(import.meta.dirname, "../../../..");
const road = traceOf([
  [0, 0],
  [15, 50],
  [200, 50],
  [215, 0],
]);

it("puts parts together to what one run of all of them comes to, and tells how far it is", async () => {
  const work = { job: demoJob(0), trace: road, draw: { variants: 30, seed: 5 } };
  const told: [number, number][] = [];
  const found = await varyOnAll(work, [1, 0], (...each) => void told.push(each));
  expect(found).toEqual([1, 0].map((packIndex) => resultOf(varyPack(work.job, packIndex, road, work.draw))));
  expect(told.filter(([pack]) => pack === 1).map(([, share]) => share)).toEqual([0.5, 1]);
});

it("comes to the same on all processors as on one, to the last digit", async () => {
  const words = [
    ...["vary", join(root, "shared/demos/piano-tuner.bellhousing.json"), "--json", "--pack", "8 kWh"],
    ...["--variants", "400", "--trace", "udds"],
  ];
  const program = ["node_modules/tsx/dist/cli.mjs", "sim/cli/main.ts"].map((path) => join(root, path));
  const out = execFileSync(process.execPath, [...program, ...words], { encoding: "utf8", stdio: "pipe" });
  expect(JSON.parse(out)).toEqual(JSON.parse((await runCommand(...words)).out));
});
