import { drivenRoad } from "../../../shared/job/drivenRoad.ts";
import type { Road } from "../../../shared/job/schema/road.ts";
import { inputError } from "../../../shared/problems.ts";
import {
  type BuiltCarLogs,
  type DriveParts,
  frozenOn,
  type LogFile,
  type Measuring,
  type Routes,
  type Steps,
  type Trace,
} from "../../../sim/index.ts";
import type { MeasuredOutcome, MeasuredRequest } from "./measuredApi.ts";
import { weekTraces } from "./weekTraces.ts";

/** What the logs of a built car were read into, kept while the same files are compared with something else. */
interface Kept {
  readonly key: string;
  readonly logs: BuiltCarLogs;
  readonly drive?: DriveParts;
}

/** What holding a log asks of the session around it. */
export interface MeasuredWork {
  readonly read: (file: File) => Promise<LogFile>;
  readonly clean: <T>(steps: Steps<T>) => Promise<T>;
  readonly comparing: () => void;
  readonly roadTrace: (road: Road) => Promise<Trace>;
}

/** Compares the logs of built cars with jobs, reading the same files once. */
export function createMeasuredSession() {
  let kept: Kept | undefined;

  async function readAll(
    routes: Routes,
    measuring: Measuring,
    files: readonly File[],
    work: MeasuredWork,
  ): Promise<Kept> {
    const key = files.map(({ name, size, lastModified }) => `${name} ${size} ${lastModified}`).join("|");
    if (kept?.key === key) return kept;
    const read: LogFile[] = [];
    for (const file of files) read.push(await work.read(file));
    const open = read.flatMap(({ file, questions }) =>
      questions
        .filter(({ decided, option }) => !decided && option !== "")
        .map(({ name, evidence }) => ({ file, name, evidence })),
    );
    const [first] = open;
    if (first)
      throw inputError(
        "log-question",
        first.file,
        `found ${first.evidence}: what its ${questionWords[first.name] ?? first.name} is must stand in the file or its headings`,
      );
    const logs = measuring.builtCarLogs(read);
    if (logs.motion.length === 0) {
      kept = { key, logs };
      return kept;
    }
    const cleaned = await work.clean(routes.cleanLogInSteps(routes.joinLogs(logs.motion), {}));
    kept = { key, logs, drive: measuring.drivePartsOf(cleaned) };
    return kept;
  }

  return {
    forget: () => {
      kept = undefined;
    },
    async hold(
      routes: Routes,
      measuring: Measuring,
      files: readonly File[],
      request: MeasuredRequest,
      work: MeasuredWork,
    ): Promise<MeasuredOutcome> {
      const { logs, drive } = await readAll(routes, measuring, files, work);
      const { job, packIndex, prediction: which, offset_s, socket_kWh, years } = request;
      const isCharge = drive === undefined || measuring.isCharging(logs.pack);
      if (isCharge && socket_kWh !== undefined) {
        const { sentence } = measuring.chargerFromLog(logs.pack, socket_kWh, job.charger.efficiency_frac);
        return { kind: "charge", sentence };
      }
      if (drive === undefined) {
        const found = measuring.isCharging(logs.pack) ? "a log of charging" : "volts and amps and no motion";
        const wanted =
          "give the log with the car's speed or positions too, or the socket meter's reading with a log of charging";
        throw inputError("no-motion", logs.pack.file, `found ${found}; ${wanted}`);
      }
      work.comparing();
      const prediction = which === undefined ? undefined : job.predictions[which];
      const promised = { ...job, ...prediction?.state };
      const as = prediction ? `predicted on ${frozenOn(prediction.at)}` : "predicted by the job as it is";
      const found = measuring.measure(promised, packIndex, { ...drive, log: logs.pack, offset_s }, as);
      const { start_s, distance_km } = found;
      const day = start_s > 1e8 ? new Date(1000 * start_s).toISOString().slice(0, 10) : undefined;
      const note = `corrected from a drive of ${distance_km.toFixed(1)} km${day === undefined ? "" : ` on ${day}`}`;
      const corrected = measuring.correctedJob(promised, packIndex, found.fit, note);
      const road = await work.roadTrace(drivenRoad(job));
      const { pack, verdict, doings, sentences, notTold, remarks, lines, linedUp } = found;
      return {
        kind: "drive",
        pack,
        verdict,
        doings,
        sentences,
        notTold,
        remarks,
        lines,
        day,
        distance_km,
        offset_s: linedUp.offset_s,
        rows: found.quantities.map(({ id, ...row }) => {
          const [words, kind] = measuring.quantityWords[id];
          return { ...row, words, kind };
        }),
        packSentences: [
          ...measuring.packWords(found.packFound, job.allowance.aged_frac),
          ...(years === undefined
            ? []
            : measuring.serviceWords(found.packFound, measuring.agedByLaws(promised, packIndex, road, years))),
        ],
        correctedCount: found.isDoubted ? 0 : found.fit.fitted.length,
        corrected: {
          vehicle: corrected.vehicle,
          accessories: corrected.accessories,
          controller: corrected.controller,
          motor: corrected.motor,
          origins: corrected.origins,
        },
        outlook: found.isDoubted
          ? []
          : measuring.outlookRows(
              measuring.bothLines(promised, corrected, packIndex, road, await weekTraces(promised, work.roadTrace)),
            ),
      };
    },
  };
}

const questionWords: Readonly<Record<string, string>> = {
  speedUnit: "unit of speed",
  hemisphere: "side of the globe",
  interval: "time between rows",
  date: "date",
  vehicle: "car",
};
