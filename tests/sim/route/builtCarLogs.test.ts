import { describe, expect, it } from "vitest";
import { builtCarLogs } from "../../../sim/route/builtCarLogs.ts";
import { readLog } from "../../../sim/route/readLog.ts";

const log = (name: string, header: string, row: (i: number) => string) => {
  const rows = Array.from({ length: 20 }, (_, i) => `${i},${row(i)}`);
  return readLog(name, new TextEncoder().encode([`time_s,${header}`, ...rows, ""].join("\n")), { isPackWanted: true });
};
const receiver = log("drive.csv", "speed_kmh", (i) => `${30 + i}`);
const battery = log("pack.csv", "Pack voltage (V),Pack current (A)", (i) => `108,${10 + i}`);
const both = log("both.csv", "speed_kmh,Pack voltage (V),Pack current (A)", (i) => `${30 + i},108,${10 + i}`);

describe("the logs of a built car", () => {
  it("are told apart: the receiver's has the motion, the battery's the pack", () => {
    const { motion, pack } = builtCarLogs([battery, receiver]);
    expect(motion.map(({ file }) => file)).toEqual(["drive.csv"]);
    expect(pack.current_A[0]).toBe(10);
  });
  it("have motion of the pack's own where there is no other, and of another where there is", () => {
    expect(builtCarLogs([both]).motion.map(({ file }) => file)).toEqual(["both.csv"]);
    expect(builtCarLogs([both, receiver]).motion.map(({ file }) => file)).toEqual(["drive.csv"]);
  });
  it("may have no motion at all, as while charging", () => {
    expect(builtCarLogs([battery]).motion).toEqual([]);
  });
});

it("says what of the pack is missing", () => {
  expect(() => builtCarLogs([receiver])).toThrow(/^drive\.csv: found no volts and no amps of the pack in it/);
  const volts = log("volts.csv", "speed_kmh,Pack voltage (V)", (i) => `${30 + i},108`);
  expect(() => builtCarLogs([receiver, volts])).toThrow(/^volts\.csv: found volts and no amps/);
});
