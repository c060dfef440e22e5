import type { Job } from "../../shared/job/job.ts";
import type {
  Candidate,
  ConditionDrives,
  CurrentsPlan,
  DaysFailed,
  Draw,
  GearboxStudy,
  HeatLine,
  LongHill,
  PackLife,
  PackStudy,
  SampledRange,
  Trace,
  Unknown,
  VariedPack,
  YearRanges,
} from "../../sim/index.ts";
import type { SimulationApi } from "./api.ts";
import type { Watchable } from "./livingWorker.ts";
import type { RoadsApi } from "./roads/roadsApi.ts";

/** What the simulation answers inside a worker: traces stay there under an id, and are not sent again at every change. */
export interface SimulationInside
  extends Omit<
    SimulationApi,
    | "drive"
    | "conditions"
    | "currents"
    | "daysFailed"
    | "gearbox"
    | "heatLines"
    | "packLife"
    | "packStudy"
    | "sampleRanges"
    | "vary"
    | "unknowns"
    | "yearRanges"
  > {
  keepTrace(id: number, trace: Trace): Promise<void>;
  dropTrace(id: number): Promise<void>;
  /** These packs over a road, with channels. */
  drive(job: Job, packIndexes: readonly number[], traceId: number): Promise<readonly Candidate[]>;
  conditions(job: Job, packIndexes: readonly number[], traceId: number): Promise<readonly ConditionDrives[]>;
  gearbox(job: Job, packIndex: number, traceId: number): Promise<GearboxStudy>;
  heatLines(job: Job, packIndex: number, traceId: number, hill: LongHill): Promise<readonly HeatLine[]>;
  currents(job: Job, packIndex: number, traceId: number): Promise<CurrentsPlan>;
  packStudy(job: Job, traceId: number): Promise<PackStudy>;
  daysFailed(job: Job, traceId: number): Promise<readonly DaysFailed[]>;
  packLife(job: Job, packIndex: number, traceId: number): Promise<PackLife | undefined>;
  sampleRanges(
    job: Job,
    packIndexes: readonly number[],
    traceId: number,
  ): Promise<readonly (SampledRange | undefined)[] | undefined>;
  vary(job: Job, packIndex: number, traceId: number, draw: Draw): Promise<VariedPack | undefined>;
  yearRanges(job: Job, traceId: number): Promise<YearRanges>;
  unknowns(job: Job, packIndexes: readonly number[], traceId: number): Promise<readonly (readonly Unknown[])[]>;
}

export type WorkerApi = SimulationInside & RoadsApi & Watchable;
