import { computed, type ReadonlySignal } from "@preact/signals-core";
import type { Job } from "../../../../shared/job/job.ts";
import type { Values } from "../../../sections/parts/values.ts";
import type { Definition } from "../graph.ts";
import { climateOf, doubtsOf, machineOf } from "../partsOfJob.ts";
import { refuseEmpty } from "../refuseEmpty.ts";
import { remembering, sameWhile } from "../remembering.ts";

/** The job, and of it what a study hangs on: each is another object only where something in it is another. */
export function jobValues(job: ReadonlySignal<Job>, emptied: ReadonlySignal<readonly string[]>): Definition[] {
  const sameMachine = remembering((whole: Job) => machineOf(whole));
  const sameUse = remembering((whole: Job) => {
    const machine = machineOf(whole);
    return {
      ...machine,
      ...climateOf(whole),
      packs: machine.packs.map((pack, i) => ({ ...pack, ...(whole.packs[i].isAskedFor && { isAskedFor: true }) })),
      usualDay_km: whole.usualDay_km,
      ...(whole.year && { year: whole.year }),
      allowance: whole.allowance,
      ...(whole.weights && { weights: whole.weights }),
      ...(whole.longestDay_km !== undefined && { longestDay_km: whole.longestDay_km }),
      ...(whole.longestDaysAYear !== undefined && { longestDaysAYear: whole.longestDaysAYear }),
    };
  });
  const sameDrivetrain = sameWhile<Job>(["motor", "controller", "module", "packs", "driveline"]);
  const sameDoubts = remembering((whole: Job) => ({ ...machineOf(whole), ...climateOf(whole), ...doubtsOf(whole) }));
  return [
    { name: "job", from: job },
    { name: "emptied", from: computed(() => emptied.value.join("|")) },
    {
      name: "machine",
      inputs: ["job", "emptied"],
      compute: ({ job: whole, emptied: empty }: Values & { emptied: string }) => {
        refuseEmpty(
          empty,
          (path) =>
            !/^(usualDay_km|longestDay_km|allowance|conditions|engine|notes|wiring|costs|packs\.\d+\.cellPrice)|winterDuty_frac$/.test(
              path,
            ),
        );
        return sameMachine(whole);
      },
    },
    {
      name: "use",
      inputs: ["job", "emptied"],
      compute: ({ job: whole, emptied: empty }: Values & { emptied: string }) => {
        refuseEmpty(empty, (path) => !/^(engine|notes|wiring|costs|packs\.\d+\.cellPrice)/.test(path));
        return sameUse(whole);
      },
    },
    { name: "drivetrain", inputs: ["machine"], compute: (values: Values) => sameDrivetrain(values.machine) },
    { name: "doubts", inputs: ["job"], compute: (values: Values) => sameDoubts(values.job) },
  ];
}
