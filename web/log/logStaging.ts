import { type ReadonlySignal, type Signal, signal } from "@preact/signals-core";
import { failureWords, isForReader } from "../../shared/failureWords.ts";
import { PARKED_s, type ReadLogOptions } from "../../sim/index.ts";
import type { StagedTexts } from "../editing/stagedTexts.ts";
import type {
  Answer,
  Brought,
  Drive,
  LogSetting,
  MadeRoad,
  Piece,
  PieceView,
  RoadsApi,
} from "../worker/roads/roadsApi.ts";
import { firstPiece, isPieceOf } from "./logPieces.ts";
import { problemWords } from "./logText.ts";
import { openQuestions } from "./openQuestions.ts";

/** Positions of the road in view, as far as this browser keeps them. */
export interface KeptTrack {
  readonly roadId: string;
  /** Absent where the road came from a log and its positions are not in this browser. */
  readonly track?: {
    readonly latitude_deg: Float64Array;
    readonly longitude_deg: Float64Array;
    readonly tripRows: readonly number[];
  };
}

/** A log that is staged: read and cleaned in a worker, looked at here, and not in the job until it is taken. */
export interface LogStaging {
  readonly roads: RoadsApi;
  /** What is being done, while it is done. */
  readonly work: ReadonlySignal<{ readonly words: string; readonly share_frac: number } | undefined>;
  /** Why the last thing asked for was not done. */
  readonly refused: Signal<readonly string[]>;
  readonly brought: ReadonlySignal<Brought | undefined>;
  readonly setting: ReadonlySignal<LogSetting>;
  readonly piece: ReadonlySignal<Piece>;
  readonly view: ReadonlySignal<PieceView | undefined>;
  /** Names given to places, by their number. */
  readonly labels: Signal<Readonly<Record<number, string>>>;
  /** Whether maps leave out the first and last `CUT_m` of every trip. */
  readonly cutsEnds: Signal<boolean>;
  /** Texts in fields that are no part of the job, by field. */
  readonly texts: StagedTexts;
  /** The last thing done, in a sentence. */
  readonly done: Signal<string>;
  readonly kept: Signal<KeptTrack | undefined>;
  /** Keeps positions of a road in the browser's database; set by whoever has the store. */
  readonly keep: { track: (roadId: string, track: KeptTrack["track"]) => Promise<void> };
  bring(files: readonly File[]): Promise<void>;
  /** Works the log again under another setting; what was there stays until that is done. */
  change(change: Partial<LogSetting>): Promise<void>;
  /** What the person says of one file. */
  answer(file: number, options: ReadLogOptions): Promise<void>;
  cancel(): void;
  choose(piece: Piece): Promise<void>;
  putBack(): void;
  /** Another job is open: whatever is still being done here is given up, and nothing more is said or taken. */
  end(): void;
  /** A road asked for, or nothing, with the reasons in `refused`. */
  make(ask: (roads: RoadsApi) => Promise<Answer<MadeRoad>>): Promise<MadeRoad | undefined>;
}

/** What maps leave out at both ends of a trip, in metres, so that they show nobody's door. */
export const CUT_m = 300;

const untouched: LogSetting = { answers: [], off: [], parkedLonger_s: PARKED_s };

/**
 * `roads` is asked for what takes long; `texts` are kept with the job. `onDrive` hears, once for what was brought, of a drive that
 * leaves nothing to be asked.
 */
export function createLogStaging(
  roads: RoadsApi,
  texts: StagedTexts,
  onDrive: (log: LogStaging, drive: Drive) => Promise<void> = async () => {},
): LogStaging {
  const work = signal<{ words: string; share_frac: number } | undefined>(undefined);
  const refused = signal<readonly string[]>([]);
  const brought = signal<Brought | undefined>(undefined);
  const setting = signal(untouched);
  const piece = signal("whole");
  const view = signal<PieceView | undefined>(undefined);
  const labels = signal<Readonly<Record<number, string>>>({});
  const done = signal("");
  let settled = untouched; // the setting that `brought` was worked under
  let wish = 0;
  let isEnded = false;
  let isDriven = false;
  let queue = Promise.resolve();

  const onProgress = (words: string, share_frac: number) => {
    if (work.value) work.value = { words, share_frac };
  };

  /** Puts a question after those that are being worked on, which are given up: only the newest wish counts. */
  const ask = (wanted: LogSetting, how: () => Promise<Answer<Brought>>, isNew: boolean): Promise<void> => {
    if (isEnded) return Promise.resolve();
    const mine = ++wish;
    if (work.value) void roads.cancel();
    work.value = { words: "Starting", share_frac: 0 };
    refused.value = [];
    done.value = "";
    setting.value = wanted;
    queue = queue.then(async () => {
      if (mine !== wish) return;
      const answer = await answered(how);
      if (mine !== wish) return;
      work.value = undefined;
      if (answer.kind === "done") {
        settled = wanted;
        if (isNew) labels.value = {};
        brought.value = answer.value;
        await choose(!isNew && isPieceOf(answer.value, piece.value) ? piece.value : firstPiece(answer.value));
        if (isNew) isDriven = false;
        const { outcome, files } = answer.value;
        const isAsking = files.some((file) => openQuestions(file).length > 0);
        if (isDriven || isEnded || isAsking || outcome.kind !== "drive" || outcome.trips.length === 0) return;
        isDriven = true;
        await onDrive(staging, outcome);
        return;
      }
      setting.value = settled;
      if (answer.kind === "refused") refused.value = answer.problems.map(problemWords);
      else done.value = "Given up. What was here before is as it was.";
    });
    return queue;
  };

  async function choose(which: Piece): Promise<void> {
    piece.value = which;
    const hasTrips = brought.value?.outcome.kind === "drive" && brought.value.outcome.trips.length > 0;
    const answer = hasTrips ? await answered(() => roads.view(which)) : undefined;
    if (piece.value === which && !isEnded) view.value = answer?.kind === "done" ? answer.value : undefined;
  }

  const change = (part: Partial<LogSetting>) => {
    const wanted = { ...setting.value, ...part };
    return ask(wanted, () => roads.again(wanted, onProgress), false);
  };

  const staging: LogStaging = {
    roads,
    work,
    refused,
    brought,
    setting,
    piece,
    view,
    labels,
    done,
    choose,
    change,
    cutsEnds: signal(true),
    texts,
    kept: signal(undefined),
    keep: { track: async () => {} },
    bring(files) {
      const wanted = { ...untouched, parkedLonger_s: setting.value.parkedLonger_s };
      return ask(wanted, () => roads.bring(files, wanted, onProgress), true);
    },
    answer(file, options) {
      const { answers } = setting.value;
      const long = Array.from({ length: Math.max(answers.length, file + 1) }, (_, i) => answers[i] ?? {});
      return change({ answers: long.with(file, { ...long[file], ...options }) });
    },
    cancel() {
      void roads.cancel();
    },
    putBack() {
      // What is still being done would bring it back.
      wish += 1;
      if (work.peek()) void roads.cancel();
      work.value = undefined;
      brought.value = undefined;
      view.value = undefined;
      refused.value = [];
      done.value = "";
    },
    end() {
      isEnded = true;
      wish += 1;
      if (brought.peek() || work.peek()) void roads.discard();
    },
    async make(how) {
      const answer = await answered(() => how(roads));
      if (isEnded) return undefined;
      refused.value = answer.kind === "refused" ? answer.problems.map(problemWords) : [];
      return answer.kind === "done" ? answer.value : undefined;
    },
  };
  return staging;
}

/** A fault of our own is a refusal too: the page goes on. */
async function answered<T>(how: () => Promise<Answer<T>>): Promise<Answer<T>> {
  try {
    return await how();
  } catch (error) {
    if (!isForReader(error)) globalThis.reportError?.(error);
    const message = failureWords(error).replace(/\.$/, "");
    return { kind: "refused", problems: [{ code: "fault", where: "the log", message }] };
  }
}
