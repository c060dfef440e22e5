import type { Job } from "../../../shared/job/job.ts";
import type { Road } from "../../../shared/job/schema/road.ts";
import type { Problem } from "../../../shared/problems.ts";
import type { LogFile, Quality, ReadLogOptions, Repair, RepairKind, TypedDriving } from "../../../sim/index.ts";

import type { MeasuredOutcome, MeasuredRequest } from "./measuredApi.ts";

/** How logs are read, cleaned and split; every part of it can be changed after they were brought. */
export interface LogSetting {
  /** What the person said of each file, in the order of the files read. */
  readonly answers: readonly ReadLogOptions[];
  /** Classes of repair that are left undone. */
  readonly off: readonly RepairKind[];
  /** Local time less UTC; nothing said: as the file has it, else a guess. */
  readonly utcOffset_s?: number | undefined;
  /** A stand at least this long ends a trip. */
  readonly parkedLonger_s: number;
}

/** A file as it was read, without its fixes, which stay in the worker. */
export type FileReading = Omit<LogFile, "fixes"> & { readonly count: number; readonly hasSpeeds: boolean };

export interface TripRow {
  /** Local day and clock: `2024-05-03`, `08:12`. */
  readonly date: string;
  readonly clock: string;
  readonly distance_m: number;
  readonly duration_s: number;
  readonly mean_mps: number;
  readonly max_mps: number;
  readonly climb_m?: number;
  readonly stops: number;
  /** The standard cycle it resembles most, and how it differs. */
  readonly like: string;
  readonly difference: string;
  readonly bridged_frac: number;
}

export interface DayRow {
  readonly date: string;
  readonly trips: number;
  readonly distance_m: number;
  readonly driving_s: number;
  readonly climb_m: number;
  /** The longest time parked that begins on this day; `place` counts in `places`. */
  readonly parked?: { readonly from: string; readonly long_s: number; readonly place?: number };
}

/** A cleaned log. Positions are not in it: they come with a piece only, for its map. */
export interface Drive {
  readonly kind: "drive";
  readonly problems: readonly Problem[];
  readonly repairs: readonly Repair[];
  /** What a repair that is left out had moved, in words; of those only that were left out one at a time. */
  readonly moved?: Readonly<Partial<Record<RepairKind, string>>>;
  readonly quality: Quality;
  readonly isStill: boolean;
  readonly hasPositions: boolean;
  readonly hasHeights: boolean;
  readonly utcOffset_s: number;
  readonly offsetFrom: string;
  readonly trips: readonly TripRow[];
  readonly days: readonly DayRow[];
  /** Where it parked, under the names guessed. */
  readonly places: readonly { readonly label: string; readonly parked_s: number; readonly times: number }[];
}

/** Positions without times. */
export interface PlannedRoute {
  readonly kind: "route";
  readonly distance_m: number;
  readonly climb_m?: number;
}

export interface Brought {
  readonly files: readonly FileReading[];
  /** Files among those brought that are no logs and were left out. */
  readonly leftOut: readonly Problem[];
  /** `unclean`: the files could be read, but not made into a drive as they were understood. */
  readonly outcome: Drive | PlannedRoute | { readonly kind: "unclean"; readonly problems: readonly Problem[] };
}

/** `whole`, `day:2024-05-03`, or `trip:2` counted from 0. */
export type Piece = string;

/** Trips of a piece laid end to end at a row a second, as they are in the road made of it. */
export interface PieceView {
  readonly piece: Piece;
  readonly raw: {
    readonly time_s: Float64Array;
    readonly speed_mps: Float64Array;
    readonly elevation_m?: Float64Array;
  };
  readonly cleaned: {
    readonly time_s: Float64Array;
    readonly speed_mps: Float64Array;
    readonly elevation_m?: Float64Array;
    readonly isRepaired: Uint8Array;
  };
  /** Rows at which a trip begins. */
  readonly tripRows: readonly number[];
  readonly track?: { readonly latitude_deg: Float64Array; readonly longitude_deg: Float64Array };
}

/** A road as the job takes it, without an id yet. */
export type NewRoad = (Omit<Extract<Road, { kind: "trace" }>, "id"> | Omit<Extract<Road, { kind: "cycle" }>, "id">) & {
  readonly id?: never;
};

export interface MadeRoad {
  readonly road: NewRoad;
  readonly distance_m: number;
  readonly duration_s: number;
}

export interface CycleRequest {
  readonly cycle: string;
  readonly title: string;
  /** Repeated until this distance; once where there is none. */
  readonly distance_km?: number;
  readonly hills?: Road["hills"];
}

/** Every answer: done, refused with reasons, or given up because somebody asked to. */
export type Answer<T> =
  | { readonly kind: "done"; readonly value: T }
  | { readonly kind: "refused"; readonly problems: readonly Problem[] }
  | { readonly kind: "cancelled" };

/** Told while it works: what is being done, and the share done. */
export type Progress = (words: string, share_frac: number) => void;

/** What the page may ask of the room for logs. A refused or cancelled question leaves what was brought before. */
export interface RoadsApi {
  bring(files: readonly File[], setting: LogSetting, onProgress: Progress): Promise<Answer<Brought>>;
  again(setting: LogSetting, onProgress: Progress): Promise<Answer<Brought>>;
  cancel(): Promise<void>;
  /** Forgets what was brought: it belongs to a job that is no longer the open one. */
  discard(): Promise<void>;
  view(piece: Piece): Promise<Answer<PieceView>>;
  roadOf(piece: Piece, title: string): Promise<Answer<MadeRoad>>;
  routeRoad(speed_kmh: number, stopsPerKm: number, driving: TypedDriving, title: string): Promise<Answer<MadeRoad>>;
  typedRoad(text: string, driving: TypedDriving, title: string): Promise<Answer<MadeRoad>>;
  cycleRoad(request: CycleRequest): Promise<Answer<MadeRoad>>;
  /** The logs of a built car compared with a job; read once for the same files. */
  measured(files: readonly File[], request: MeasuredRequest, onProgress: Progress): Promise<Answer<MeasuredOutcome>>;
  /** The job in a file too large to be read on the page's thread. */
  job(file: File): Promise<Answer<Job>>;
}
