import type { Job } from "../../shared/job/job.ts";
import type { Road } from "../../shared/job/schema/road.ts";
import type {
  ConditionDrives,
  CurrentsPlan,
  DaysFailed,
  Draw,
  DriveReport,
  GearboxStudy,
  HeatLine,
  LongHill,
  MotorSurface,
  PackLife,
  PackStudy,
  SampledRange,
  SteadyRow,
  Trace,
  Unknown,
  VariedPack,
  WeekReport,
  YearRanges,
} from "../../sim/index.ts";

/** What the page may ask of the simulation, which runs off the page's thread. */
export interface SimulationApi {
  /** The road as a trace, standard cycles read from their tables. */
  road(road: Road): Promise<Trace>;
  /** Every candidate pack over a road, with channels. */
  drive(job: Job, trace: Trace): Promise<DriveReport>;
  /** Every candidate pack over a road in each of the job's conditions, totals only. */
  conditions(job: Job, trace: Trace): Promise<readonly ConditionDrives[]>;
  /** How far each pack goes over the temperatures of a year, new and at ten years: some hundred drives. */
  yearRanges(job: Job, trace: Trace): Promise<YearRanges>;
  /** These packs through the job's week, over roads of the job itself; nothing where no trip is in it. */
  weeks(job: Job, packIndexes: readonly number[]): Promise<WeekReport | undefined>;
  /** Every pack at steady speeds on a level road. */
  steady(job: Job, speeds_kmh: readonly number[]): Promise<readonly (readonly SteadyRow[])[]>;
  motorSurface(job: Job, packIndex: number): Promise<MotorSurface>;
  /** Gears, torque caps, hill and regen with one pack over a road: some dozens of drives. */
  gearbox(job: Job, packIndex: number, trace: Trace): Promise<GearboxStudy>;
  /** How warm motor and pack get, over a road and that hill again and again on the hot day: ten drives. */
  heatLines(job: Job, packIndex: number, trace: Trace, hill: LongHill): Promise<readonly HeatLine[]>;
  /** Currents of one pack over a road and the long hill, and what they mean for what carries them. */
  currents(job: Job, packIndex: number, trace: Trace): Promise<CurrentsPlan>;
  /** Every layout of the module and the smallest pack that will do: some dozens of drives. */
  packStudy(job: Job, trace: Trace): Promise<PackStudy>;
  /** The days of the job's year that each of these packs fails: some dozens of drives. */
  daysFailed(job: Job, trace: Trace): Promise<readonly DaysFailed[]>;
  /** How long one pack does the usual day in winter: a dozen drives; nothing for a car without a range. */
  packLife(job: Job, packIndex: number, trace: Trace): Promise<PackLife | undefined>;
  /** The ranges that decide these packs' verdicts, in many variants of what is not known, nothing for the others; nothing at all where newer ones were asked for meanwhile. */
  sampleRanges(
    job: Job,
    packIndexes: readonly number[],
    trace: Trace,
  ): Promise<readonly (SampledRange | undefined)[] | undefined>;
  /** One pack in many variants of what is not known; nothing where newer ones were asked for meanwhile. */
  vary(job: Job, packIndex: number, trace: Trace, draw: Draw): Promise<VariedPack | undefined>;
  /** What the values that nobody measured do to the range of these packs, nothing for the others: some dozens of drives each. */
  unknowns(job: Job, packIndexes: readonly number[], trace: Trace): Promise<readonly (readonly Unknown[])[]>;
}
