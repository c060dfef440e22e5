import { describe, expect, it } from "vitest";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { driveLog } from "../../../web/log/driveLog.ts";
import { createLogStaging } from "../../../web/log/logStaging.ts";
import type { Answer, Brought, DayRow, Drive, MadeRoad, RoadsApi } from "../../../web/worker/roads/roadsApi.ts";
import { demoJob } from "../../support/demoJob.ts";
import { noRoads } from "../../support/noRoads.ts";

const day = (date: string, km: number): DayRow => ({
  date,
  trips: 1,
  distance_m: 1000 * km,
  driving_s: 3600,
  climb_m: 10,
});

/** A log of so many days, each a trip of so many kilometres. */
function logOf(days_km: readonly number[], isAsking = false): Brought {
  const days = days_km.map((km, i) => day(`2024-05-0${i + 1}`, km));
  const drive = {
    kind: "drive",
    problems: [],
    repairs: [],
    isStill: false,
    hasPositions: false,
    hasHeights: false,
    utcOffset_s: 0,
    offsetFrom: "",
    days,
    places: [],
    quality: { verdict: "good", bridged_frac: 0 },
    trips: days.map(({ date, distance_m }) => ({ date, clock: "08:00", distance_m })),
  } as unknown as Drive;
  const questions = [{ name: "speedUnit", decided: !isAsking, guess: "kmh" }];
  const file = { file: "a.csv", questions } as unknown as Brought["files"][number];
  return { files: [file], leftOut: [], outcome: drive };
}

const road: MadeRoad = {
  road: { kind: "trace", title: "Client's own day", time_s: [0, 10, 20], speed_kmh: [0, 30, 0] },
  distance_m: 83,
  duration_s: 20,
};

/** A staged log over a worker that answers with what it is given, one after the other. */
function staged(...answers: readonly Brought[]) {
  const jobEditor = createJobEditor({ job: demoJob(), drafts: {} });
  const asked: string[] = [];
  let next = 0;
  const bring = async (): Promise<Answer<Brought>> => ({ kind: "done", value: answers[next++] ?? answers[0]! });
  const roads: RoadsApi = Object.assign(Object.create(noRoads), {
    bring,
    again: bring,
    discard: async () => {},
    cancel: async () => {},
    view: async () => ({ kind: "refused", problems: [] }),
    roadOf: async (piece: string) => {
      asked.push(piece);
      return { kind: "done", value: road };
    },
  });
  const log = createLogStaging(roads, { value: {} }, (own, drive) => driveLog(own, drive, jobEditor));
  return { jobEditor, log, asked };
}

describe("a log that is dropped", () => {
  it("is driven at once by its usual day, with its days in the job, and undone by one step", async () => {
    const { jobEditor, log, asked } = staged(logOf([30, 12, 95]));
    const before = jobEditor.kept.value;
    await log.bring([]);
    expect(asked).toEqual(["day:2024-05-01"]);
    const { job } = jobEditor.kept.value;
    expect(job.drivenRoad).toBe("log-1");
    expect([job.usualDay_km, job.longestDay_km]).toEqual([30, Math.max(95, before.job.longestDay_km ?? 0)]);
    expect(job.origins["usualDay_km"]?.from).toBe("measured");
    expect(log.done.value).toMatch(/is driven now, and the usual day is 30 km/);
    jobEditor.undo();
    expect(jobEditor.kept.value).toBe(before);
  });

  it("of one day is driven, and leaves the usual day to the client", async () => {
    const { jobEditor, log } = staged(logOf([7]));
    await log.bring([]);
    expect(jobEditor.job.value.drivenRoad).toBe("log-1");
    expect(jobEditor.job.value.usualDay_km).toBe(demoJob().usualDay_km);
  });

  it("that leaves something to be asked is driven once it is answered, and not again at every change", async () => {
    const { jobEditor, log, asked } = staged(logOf([30, 12], true), logOf([30, 12]), logOf([30, 12]));
    await log.bring([]);
    expect(asked).toEqual([]);
    await log.answer(0, {});
    expect(asked).toHaveLength(1);
    await log.change({ parkedLonger_s: 60 });
    expect(asked).toHaveLength(1);
    expect(jobEditor.job.value.roads).toHaveLength(demoJob().roads.length + 1);
  });

  it("in a job that is left meanwhile is taken into no other", async () => {
    const { jobEditor, log } = staged(logOf([30, 12, 95]));
    const brought = log.bring([]);
    log.end();
    const other = { job: { ...demoJob(), title: "Another" }, drafts: {} };
    jobEditor.open(other);
    await brought;
    expect(jobEditor.kept.value).toBe(other);
    expect(log.brought.value).toBeUndefined();
  });
});
