import { expose, transfer } from "comlink";
import { type DriveReport, driveJob, motorSurface, roadTrace, steadyTable, unknownsByEffect } from "../../sim/index.ts";
import type { SimulationApi } from "./api.ts";
import { cycleText } from "./cycleText.ts";

/** The worker's side: the same simulation as the command line, and nothing of its own. */
const api: SimulationApi = {
  async road(job, roadId) {
    const road = job.roads.find(({ id }) => id === roadId) ?? job.roads[0];
    return roadTrace(road, road.kind === "cycle" ? await cycleText(road.cycle) : {});
  },
  async drive(job, trace) {
    const report = driveJob(job, trace, { channels: true });
    return transfer(report, columnsOf(report));
  },
  steady: async (job, speeds_kmh) => job.packs.map((_, packIndex) => steadyTable(job, packIndex, speeds_kmh)),
  motorSurface: async (job, packIndex) => motorSurface(job, packIndex),
  unknowns: async (job, packIndex, trace) => unknownsByEffect(job, packIndex, trace),
};

/** The memory of all columns, which is handed over instead of copied. */
function columnsOf(report: DriveReport): ArrayBuffer[] {
  const buffers = new Set<ArrayBuffer>();
  for (const { channels } of report.candidates) {
    for (const column of Object.values(channels ?? {})) {
      if (ArrayBuffer.isView(column) && column.buffer instanceof ArrayBuffer) buffers.add(column.buffer);
    }
  }
  return [...buffers];
}

expose(api);
