import type { ReadonlySignal } from "@preact/signals-core";
import type { Job } from "../../../shared/job/job.ts";
import type { OwnChart } from "../../../shared/job/schema/chart.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import type {
  Answer,
  Candidate,
  ChargePlan,
  CostPlan,
  CurrentsPlan,
  DaysFailed,
  DriveReport,
  Enough,
  GearboxStudy,
  HeatLine,
  InConditions,
  MotorSurface,
  PackLife,
  PackStudy,
  SampledRange,
  SteadyRow,
  Trace,
  Unknown,
  VariedPack,
  WeekReport,
  YearReport,
} from "../../../sim/index.ts";
import type { Along } from "../../charts/parts/axes/roadAxis.ts";
import type { BroughtMap } from "../../fields/staging.ts";
import type { LogInView } from "../../log/logInView.ts";
import type { KeptTrack, LogStaging } from "../../log/logStaging.ts";
import type { MeasuredStaging } from "../../log/measuredStaging.ts";
import type { MeasuredOutcome } from "../../worker/roads/measuredApi.ts";

/** Every value that a section may ask for, by its name. */
export interface Values {
  readonly job: Job;
  /** The job's car, drive and packs; a change of words or roads leaves it the same. */
  readonly machine: Job;
  /** `machine`, with the days that the packs are judged by. */
  readonly use: Job;
  readonly units: UnitHabit;
  /** Which road is driven. */
  readonly roadId: string;
  readonly road: Trace;
  /** Every pack over the road. What is enough is not in it: see `enough`, which follows the day without driving figures anew. */
  readonly runs: Omit<DriveReport, "enough">;
  /** Every pack in the job's conditions, with today's range of the drives that they go with. */
  readonly inConditions: InConditions;
  /** The packs of `runs`, each with its conditions. */
  readonly judged: readonly Candidate[];
  /** Every evening of a year with each pack, new and at ten years. */
  readonly year: YearReport;
  /** The job's week: the recommended pack, and all of them while its working is open; nothing where no trip is in it. */
  readonly week: WeekReport | undefined;
  readonly enough: Enough;
  /** The answer with its bands: from `use`, `runs` and `packUnknowns`. */
  readonly answer: Answer;
  /** Packs whose verdict hangs on what is not known. */
  readonly packsInQuestion: readonly number[];
  /** Values that nobody measured, by what they do to the range of each pack. */
  readonly packUnknowns: readonly (readonly Unknown[])[];
  /** Ranges over many variants, of the packs whose verdict hangs on them; none until they are driven. */
  readonly sampled: readonly (SampledRange | undefined)[] | undefined;
  /** Every pack at every supply: hours, energy, cost. */
  readonly chargePlan: ChargePlan;
  /** Price, running costs and payback of every pack; nothing for a job without costs. */
  readonly costPlan: CostPlan | undefined;
  /** Whether figures along the road go by time or by distance. */
  readonly along: Along;
  /** The pack that single-pack figures show. */
  readonly packIndex: number;
  /** Steady speeds, pack by pack. */
  readonly steady: readonly (readonly SteadyRow[])[];
  readonly motorSurface: MotorSurface;
  /** Gears, torque caps, hill and regen, with the pack in view. */
  readonly gearbox: GearboxStudy;
  /** Motor and pack along the hot day while that working is open, nothing else. */
  readonly heatLines: readonly HeatLine[];
  /** Currents of that pack over the road and the long hill. */
  readonly currentsPlan: CurrentsPlan;
  readonly charts: readonly OwnChart[];
  /** A motor map from a file that is staged and is not in the job. */
  readonly broughtMap?: BroughtMap | undefined;
  /** The client's log staged, and the part of it that is looked at. */
  readonly logInView?: LogInView | undefined;
  /** A built car's log as it was compared with the job. */
  readonly measuredOutcome?: MeasuredOutcome | undefined;
  /** Positions of the road in view, where it came from a log. */
  readonly keptTrack?: KeptTrack | undefined;
  /** Every layout of the module, and the smallest pack that will do. */
  readonly packStudy: PackStudy;
  /** The days that each pack beside the smallest fails in the year, in their order; absent while that working is closed. */
  readonly besideDays: readonly DaysFailed[] | undefined;
  /** How long the pack looked at does the usual day in winter; absent while its working is closed, and for a car without a range. */
  readonly packLife: PackLife | undefined;
  /** The recommended pack in many variants of what is not known; absent while its working is closed. */
  readonly varied: VariedPack | undefined;
  /** The pack that is recommended, or else the first. */
  readonly answerIndex: number;
  /** Values that nobody measured, by what they do to the range of that pack. */
  readonly unknowns: readonly Unknown[];
}

/** What the person looks at; not part of the job. */
export interface View {
  readonly units: ReadonlySignal<UnitHabit>;
  readonly roadId: ReadonlySignal<string>;
  readonly along: ReadonlySignal<Along>;
  /** Nothing chosen: the pack that is enough. */
  readonly packIndex: ReadonlySignal<number | undefined>;
  readonly charts: ReadonlySignal<readonly OwnChart[]>;
  /** Workings that stand open: some studies are asked for only then. */
  readonly openWorkings: ReadonlySignal<ReadonlySet<string>>;
  readonly staging: {
    readonly map: ReadonlySignal<BroughtMap | undefined>;
    readonly measured: Pick<MeasuredStaging, "outcome">;
    readonly log: Pick<LogStaging, "brought" | "view" | "labels" | "cutsEnds" | "kept">;
  };
}
