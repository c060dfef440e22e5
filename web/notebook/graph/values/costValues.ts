import type { Job } from "../../../../shared/job/job.ts";
import { chargePlan, chargesFromEmpty, costPlan, type FromEmptyJob } from "../../../../sim/index.ts";
import type { Values } from "../../../sections/parts/values.ts";
import type { Definition } from "../graph.ts";
import { refuseEmpty } from "../refuseEmpty.ts";
import { lastOf, remembering } from "../remembering.ts";

/** What charging and the work cost. */
export function costValues(): Definition[] {
  const sameSupplies = remembering(({ supplies, units }: Job) => ({ supplies, units }));
  const sameCharging = remembering(
    ({ module, charger, accessories, environment, packs, supplies, units }: FromEmptyJob): FromEmptyJob => ({
      module,
      charger,
      accessories,
      environment,
      packs,
      supplies,
      units,
    }),
  );
  const fromEmpty = lastOf(chargesFromEmpty);
  const sameMoney = remembering(({ packs, costs, currency, usualDay_km, allowance, origins }: Job) => ({
    packs,
    costs,
    currency,
    usualDay_km,
    allowance,
    origins,
  }));
  return [
    { name: "places", inputs: ["job"], compute: (values: Values) => sameSupplies(values.job) },
    {
      name: "chargePlan",
      inputs: ["use", "judged", "places"],
      waitsFor: ["judged"],
      compute: ({ use, judged, places }: Values & { places: Pick<Job, "supplies" | "units"> }) => {
        const charged = { ...use, ...places };
        return chargePlan(charged, judged, fromEmpty(sameCharging(charged)));
      },
    },
    { name: "priced", inputs: ["job"], compute: (values: Values) => sameMoney(values.job) },
    {
      name: "costPlan",
      inputs: ["priced", "judged", "chargePlan", "emptied"],
      waitsFor: ["judged"],
      compute: ({
        priced,
        judged,
        chargePlan: charging,
        emptied: empty,
      }: Values & { priced: Parameters<typeof costPlan>[0]; emptied: string }) => {
        refuseEmpty(empty, (path) => /^(costs|packs\.\d+\.cellPrice)/.test(path));
        return costPlan(priced, judged, charging);
      },
    },
  ];
}
