import { computed, type ReadonlySignal, signal } from "@preact/signals-core";
import type { Job } from "../../../shared/job/job.ts";
import type { Road } from "../../../shared/job/schema/road.ts";
import {
  answerFor,
  chargePlan,
  chargesFromEmpty,
  costPlan,
  enoughFor,
  type FromEmptyJob,
  packsInQuestion,
  roadsOfWeek,
  scaledConditions,
  type YearRanges,
  yearOf,
} from "../../../sim/index.ts";
import { EmptyFields } from "../../editing/emptied.ts";
import { keepShared } from "../../editing/keepShared.ts";
import { logInView } from "../../log/logInView.ts";
import { steadySpeeds_kmh } from "../../sections/parts/steadySpeeds.ts";
import type { Values, View } from "../../sections/parts/values.ts";
import type { SimulationApi } from "../../worker/api.ts";
import type { Definition } from "./graph.ts";

/** The values below the sections. Only these start a simulation. What depends on a field emptied by hand waits for it. */
export function defineValues(
  job: ReadonlySignal<Job>,
  view: View,
  simulation: SimulationApi,
  emptied: ReadonlySignal<readonly string[]> = signal([]),
): Definition[] {
  const sameMachine = remembering((whole: Job) => machineOf(whole));
  const sameClimate = remembering((whole: Job) => ({ ...machineOf(whole), ...climateOf(whole) }));
  const sameYear = remembering((whole: Job) => ({
    ...machineOf(whole),
    ...climateOf(whole),
    allowance: whole.allowance,
    ...(whole.year && { year: climateOfYear(whole.year) }),
  }));
  const sameWeek = remembering((whole: Job) => weekOf(whole));
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
  const sameWithEngine = remembering(({ job: { engine }, machine }: Values) => ({
    ...machine,
    ...(engine && { engine }),
  }));
  const sameSupplies = remembering(({ supplies, units }: Job) => ({ supplies, units }));
  const sameCharging = remembering(
    ({ module, charger, accessories, environment, packs, supplies, units }: FromEmptyJob): FromEmptyJob => ({
      ...{ module, charger, accessories, environment, packs, supplies, units },
    }),
  );
  const fromEmpty = lastOf(chargesFromEmpty);
  const sameWiring = remembering(({ wiring }: Job) => ({ wiring }));
  const sameMoney = remembering(({ packs, costs, currency, usualDay_km, allowance, origins }: Job) => ({
    ...{ packs, costs, currency, usualDay_km, allowance, origins },
  }));
  const sameSized = remembering((sized: Job) => sized);
  const sameRoads = remembering((whole: Job) => whole.roads);
  return [
    { name: "job", from: job },
    { name: "units", from: view.units },
    { name: "roadId", from: view.roadId },
    { name: "along", from: view.along },
    { name: "charts", from: view.charts },
    { name: "chosenPack", from: view.packIndex },
    { name: "broughtMap", from: computed(() => view.staging.map.value) },
    { name: "logInView", from: logInView(() => view.staging.log) },
    { name: "measuredOutcome", from: computed(() => view.staging.measured.outcome.value) },
    { name: "areUnknownsOpen", from: computed(() => view.openWorkings.value.has("whatIsOpen")) },
    { name: "isHeatOpen", from: computed(() => view.openWorkings.value.has("heat")) },
    { name: "isSizingOpen", from: computed(() => view.openWorkings.value.has("smallestPack")) },
    { name: "isWeekOpen", from: computed(() => view.openWorkings.value.has("theWeek")) },
    { name: "keptTrack", from: computed(() => view.staging.log.kept.value) },
    {
      name: "packIndex",
      inputs: ["runs", "answerIndex", "chosenPack"],
      waitsFor: ["runs", "answerIndex"],
      compute: ({ runs, answerIndex, chosenPack }: Values & { chosenPack: number | undefined }) =>
        Math.min(chosenPack ?? answerIndex, runs.candidates.length - 1),
    },
    {
      name: "answerIndex",
      inputs: ["use", "judged"],
      waitsFor: ["judged"],
      compute: ({ use, judged }: Values) => answerFor(use, judged, undefined).recommended ?? 0,
    },
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
    {
      name: "packsInQuestion",
      inputs: ["use", "runs"],
      waitsFor: ["runs"],
      compute: ({ use, runs }: Values) => packsInQuestion(use, runs.candidates),
    },
    {
      name: "packUnknowns",
      inputs: ["doubts", "packsInQuestion", "road"],
      ask: (values: Values & { doubts: Job }) =>
        simulation.unknowns(values.doubts, values.packsInQuestion, values.road),
    },
    {
      name: "sized",
      inputs: ["job", "use", "doubts"],
      compute: ({ job: whole, use, doubts }: Values & { doubts: Job }) =>
        sameSized({
          ...use,
          ...(whole.conditions && { conditions: whole.conditions }),
          accessories: whole.accessories,
          allowance: whole.allowance,
          origins: doubts.origins,
          sizing: whole.sizing,
          supplies: whole.supplies,
          ...moneyOf(whole),
        }),
    },
    {
      // After the band of the answer, for which the same worker is wanted first.
      name: "packStudy",
      inputs: ["sized", "road", "packUnknowns"],
      waitsFor: ["packUnknowns"],
      ask: ({ sized, road }: Values & { sized: Job }) => simulation.packStudy(sized, road),
    },
    {
      name: "besideDays",
      inputs: ["sized", "road", "packStudy", "isSizingOpen"],
      ask: async ({ sized, road, packStudy, isSizingOpen }: Values & { sized: Job; isSizingOpen: boolean }) =>
        isSizingOpen
          ? simulation.daysFailed({ ...sized, packs: packStudy.beside.map(({ pack }) => pack) }, road)
          : undefined,
    },
    {
      // The longest of the studies, and nothing outside its working shows it.
      name: "varied",
      inputs: ["sized", "answerIndex", "road", "packUnknowns", "areUnknownsOpen"],
      waitsFor: ["packUnknowns"],
      ask: async ({ sized, answerIndex, road, areUnknownsOpen }: Values & { sized: Job; areUnknownsOpen: boolean }) =>
        areUnknownsOpen
          ? simulation.vary(sized, packIn(sized, answerIndex), road, { variants: 128, seed: 1 })
          : undefined,
    },
    {
      name: "unknowns",
      inputs: ["packUnknowns", "answerIndex"],
      compute: ({ packUnknowns, answerIndex }: Values) => packUnknowns[answerIndex] ?? [],
    },
    {
      name: "answer",
      inputs: ["use", "judged", "packUnknowns"],
      waitsFor: ["judged"],
      compute: ({ use, judged, packUnknowns }: Values) => answerFor(use, judged, packUnknowns),
    },
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
    { name: "roads", inputs: ["job"], compute: (values: Values) => sameRoads(values.job) },
    {
      name: "roadInJob",
      inputs: ["roads", "roadId"],
      compute: ({ roads, roadId }: Values & { roads: Job["roads"] }) =>
        roads.find(({ id }) => id === roadId) ?? roads[0],
    },
    {
      name: "road",
      inputs: ["roadInJob"],
      ask: ({ roadInJob }: Values & { roadInJob: Road }) => simulation.road(roadInJob),
    },
    {
      name: "runs",
      inputs: ["machine", "road"],
      ask: (values: Values) => simulation.drive(values.machine, values.road),
    },
    {
      name: "enough",
      inputs: ["use", "judged"],
      waitsFor: ["judged"],
      compute: ({ use, judged }: Values) => enoughFor(use, judged),
    },
    {
      name: "climate",
      inputs: ["job", "emptied"],
      compute: ({ job: whole, emptied: empty }: Values & { emptied: string }) => {
        refuseEmpty(empty, (path) => !/^(usualDay_km|longestDay_km|engine|notes)/.test(path));
        return sameClimate(whole);
      },
    },
    {
      name: "inConditions",
      inputs: ["climate", "road", "runs"],
      waitsFor: ["runs"],
      ask: async ({ climate, road, runs }: Values & { climate: Job }) => {
        const today = runs.candidates.map(({ range_km }) => ({ range_km }));
        const none = climate.packs.map(() => ({ others: [] }));
        return { today, drives: climate.conditions ? await simulation.conditions(climate, road) : none };
      },
    },
    {
      name: "yearClimate",
      inputs: ["job", "emptied"],
      compute: ({ job: whole, emptied: empty }: Values & { emptied: string }) => {
        refuseEmpty(empty, (path) => !/^(usualDay_km|longestDay_km|engine|notes)/.test(path));
        return sameYear(whole);
      },
    },
    {
      name: "yearRanges",
      inputs: ["yearClimate", "road"],
      ask: ({ yearClimate, road }: Values & { yearClimate: Job }) => simulation.yearRanges(yearClimate, road),
    },
    {
      name: "year",
      inputs: ["use", "yearRanges"],
      waitsFor: ["yearRanges"],
      compute: ({ use, yearRanges }: Values & { yearRanges: YearRanges }) => yearOf(use, yearRanges),
    },
    {
      name: "weekJob",
      inputs: ["job", "emptied"],
      compute: ({ job: whole, emptied: empty }: Values & { emptied: string }) => {
        if (whole.week === undefined) return undefined;
        refuseEmpty(empty, (path) => !/^(usualDay_km|longestDay_km|engine|notes|wiring|costs)/.test(path));
        return sameWeek(whole);
      },
    },
    {
      // A few drives for the one pack that is recommended; those of all packs are in its working alone.
      name: "week",
      inputs: ["weekJob", "answerIndex", "isWeekOpen"],
      ask: async ({ weekJob, answerIndex, isWeekOpen }: Values & { weekJob: Job | undefined; isWeekOpen: boolean }) =>
        weekJob &&
        simulation.weeks(weekJob, isWeekOpen ? weekJob.packs.map((_, i) => i) : [packIn(weekJob, answerIndex)]),
    },
    {
      name: "judged",
      inputs: ["runs", "inConditions"],
      compute: ({ runs, inConditions: { today, drives } }: Values) => scaledConditions(drives, today, runs.candidates),
    },
    {
      name: "steady",
      inputs: ["machine", "units"],
      ask: (values: Values) => simulation.steady(values.machine, steadySpeeds_kmh(values.units)),
    },
    { name: "withEngine", inputs: ["job", "machine"], compute: (values: Values) => sameWithEngine(values) },
    {
      name: "gearbox",
      inputs: ["withEngine", "packIndex", "road"],
      ask: (values: Values & { withEngine: Job }) =>
        simulation.gearbox(values.withEngine, packIn(values.withEngine, values.packIndex), values.road),
    },
    {
      name: "heatLines",
      inputs: ["withEngine", "packIndex", "road", "gearbox", "isHeatOpen"],
      waitsFor: ["gearbox"],
      ask: async (values: Values & { withEngine: Job; isHeatOpen: boolean }) =>
        values.isHeatOpen
          ? simulation.heatLines(
              values.withEngine,
              packIn(values.withEngine, values.packIndex),
              values.road,
              values.gearbox.heat.study.hill,
            )
          : [],
    },
    {
      name: "motorSurface",
      inputs: ["drivetrain", "packIndex"],
      ask: (values: Values & { drivetrain: Job }) =>
        simulation.motorSurface(values.drivetrain, packIn(values.drivetrain, values.packIndex)),
    },
    { name: "wiring", inputs: ["job"], compute: (values: Values) => sameWiring(values.job) },
    {
      name: "currentsPlan",
      inputs: ["machine", "wiring", "packIndex", "road"],
      ask: ({ machine, wiring, packIndex, road }: Values & { wiring: Pick<Job, "wiring"> }) =>
        simulation.currents({ ...machine, ...wiring }, packIn(machine, packIndex), road),
    },
  ];
}

function refuseEmpty(emptied: string, isNeeded: (path: string) => boolean): void {
  const needed = emptied.split("|").filter((path) => path !== "" && isNeeded(path));
  if (needed.length > 0) throw new EmptyFields(needed);
}

/** The pack at an index of the last runs, in a job that may have fewer by now. */
function packIn(job: Job, packIndex: number): number {
  return Math.min(packIndex, job.packs.length - 1);
}

/** The job with all that does not move the car set to nothing, so that a change there is none to the simulation. */
function machineOf(job: Job): Job {
  const { longestDay_km: _day, longestDaysAYear: _times, engine: _engine, drivenRoad: _road, ...rest } = job;
  const {
    pinned: _pinned,
    currency: _currency,
    costs: _costs,
    wiring: _wiring,
    conditions: _conditions,
    year: _year,
    week: _week,
    ...others
  } = rest;
  const roads: Job["roads"] = [{ kind: "trace", id: "none", title: "none", time_s: [0, 1], speed_kmh: [0, 0] }];
  const nothing = {
    predictions: [],
    title: "job",
    use: "",
    notes: [],
    hiddenSections: [],
    charts: [],
    supplies: [],
    sizing: { day: "usual", condition: "tenYearsWinter", sure: "asTaken" } as const,
    origins: {},
  };
  return {
    ...others,
    ...nothing,
    packs: others.packs.map(({ cellPrice: _price, isAskedFor: _asked, ...pack }) => pack),
    accessories: { ...others.accessories, items: others.accessories.items.map(asToday) },
    units: "metric",
    usualDay_km: 1,
    allowance: { winter_ratio: 1, aged_frac: 1 },
    roads,
  };
}

/** What the week hangs on: the car, its conditions, where it is charged, and the roads of its trips. */
function weekOf(job: Job): Job {
  const { week, supplies, allowance, roads } = job;
  const ids = roadsOfWeek(job);
  const own = roads.filter(({ id }) => ids.includes(id));
  const machine = machineOf(job);
  return {
    ...machine,
    ...climateOf(job),
    ...{ week, supplies, allowance },
    roads: own.length > 0 ? own : machine.roads,
  };
}

/** What the job says of winter, age and other conditions: today's drives know nothing of it. */
function climateOf({ conditions, allowance, accessories }: Job): Partial<Job> {
  if (conditions === undefined) return {};
  return { conditions, accessories, allowance: { winter_ratio: 1, aged_frac: allowance.aged_frac } };
}

/** A year without its list of days, which no drive hangs on. */
function climateOfYear({ daysDriven_km: _days, ...year }: NonNullable<Job["year"]>): NonNullable<Job["year"]> {
  return year;
}

function asToday({ winterDuty_frac: _winter, ...item }: Job["accessories"]["items"][number]) {
  return item;
}

/** What cells cost, and in what. */
function moneyOf({ costs, currency }: Job): Partial<Pick<Job, "costs" | "currency">> {
  return { ...(costs && { costs }), ...(currency !== undefined && { currency }) };
}

/** Origins of what moves the car and was not measured, without the words around them; what is allowed where that is in doubt. */
function doubtsOf({ origins, allowance }: Job): Pick<Job, "origins"> & Partial<Pick<Job, "allowance">> {
  const doubts: Record<string, Job["origins"][string]> = {};
  for (const [path, { from, plusMinus_frac }] of Object.entries(origins)) {
    if (/^(usualDay|longestDay|engine|roads|costs)/.test(path) || from === "measured" || from === "handbook") continue;
    if (from === "typed" && plusMinus_frac === undefined) continue;
    doubts[path] = { from, ...(plusMinus_frac !== undefined && { plusMinus_frac }) };
  }
  const isAllowanceOpen = Object.keys(doubts).some((path) => path.startsWith("allowance."));
  return { origins: doubts, ...(isAllowanceOpen && { allowance }) };
}

/** `work` with every part of its answer that came out the same being the same object as the last time. */
function remembering<In, Out>(work: (input: In) => Out): (input: In) => Out {
  let last: Out | undefined;
  return (input) => {
    last = keepShared(last, work(input));
    return last;
  };
}

/** `work`, done again only where its input is another object than the last time. */
function lastOf<In extends object, Out>(work: (input: In) => Out): (input: In) => Out {
  let last: { readonly input: In; readonly output: Out } | undefined;
  return (input) => {
    if (last?.input !== input) last = { input, output: work(input) };
    return last.output;
  };
}

/** The object of the last time for as long as all the parts named are the very ones of that. */
function sameWhile<T extends object>(parts: readonly (keyof T)[]): (next: T) => T {
  let last: T | undefined;
  return (next) => {
    const before = last;
    if (before === undefined || parts.some((part) => before[part] !== next[part])) last = next;
    return last ?? next;
  };
}
