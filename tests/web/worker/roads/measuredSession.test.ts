import { expect, it, vi } from "vitest";
import type { LogFile, Measuring, Routes } from "../../../../sim/index.ts";
import type { MeasuredRequest } from "../../../../web/worker/roads/measuredApi.ts";
import { createMeasuredSession, type MeasuredWork } from "../../../../web/worker/roads/measuredSession.ts";
import { demoJob } from "../../../support/demoJob.ts";

type Question = { name: string; decided: boolean; option: string; evidence: string };

/** A session over logs of a pack alone, charging or not, in whose files these questions are. */
function session(isCharging: boolean, questions: readonly Question[] = []) {
  const read = vi.fn(async ({ name }: File) => ({ file: name, questions }) as unknown as LogFile);
  const measuring = {
    builtCarLogs: () => ({ motion: [], pack: { file: "pack.csv" } }),
    isCharging: () => isCharging,
    chargerFromLog: (_: unknown, socket_kWh: number) => ({ sentence: [`${socket_kWh} kWh from the socket`] }),
  } as unknown as Measuring;
  const work = { read } as unknown as MeasuredWork;
  const { hold, forget } = createMeasuredSession();
  const file = (name: string) => new File(["a"], name, { lastModified: 1 });
  const ask = (changes: Partial<MeasuredRequest> = {}, name = "pack.csv") =>
    hold({} as Routes, measuring, [file(name)], { job: demoJob(), packIndex: 0, ...changes }, work);
  return { ask, forget, read };
}

it("finds the charger from a log of charging and what a meter at the socket counted", async () => {
  const { ask } = session(true);
  expect(await ask({ socket_kWh: 12 })).toEqual({ kind: "charge", sentence: ["12 kWh from the socket"] });
});

it("refuses a log without motion with what it found and what would do", async () => {
  await expect(session(true).ask()).rejects.toThrow(/found a log of charging; give .* the socket meter's reading/);
  await expect(session(false).ask()).rejects.toThrow(/found volts and amps and no motion; give/);
});

it("reads the same files once, until they are forgotten or others come", async () => {
  const { ask, forget, read } = session(true);
  await ask({ socket_kWh: 12 });
  await ask({ socket_kWh: 13 });
  expect(read).toHaveBeenCalledTimes(1);
  await ask({ socket_kWh: 13 }, "other.csv");
  expect(read).toHaveBeenCalledTimes(2);
  forget();
  await ask({ socket_kWh: 13 }, "other.csv");
  expect(read).toHaveBeenCalledTimes(3);
});

it("refuses a file that leaves open what would change its figures, and asks for it in words", async () => {
  const open = { name: "speedUnit", decided: false, option: "--speed-unit", evidence: "speeds up to 60" };
  await expect(session(true, [open]).ask({ socket_kWh: 12 })).rejects.toThrow(
    "found speeds up to 60: what its unit of speed is must stand in the file or its headings",
  );
  const settled = session(true, [
    { ...open, decided: true },
    { ...open, option: "" },
  ]);
  expect((await settled.ask({ socket_kWh: 12 })).kind).toBe("charge");
});
