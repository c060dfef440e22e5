import { transfer } from "comlink";
import {
  type Candidate,
  driveConditions,
  drivePacks,
  openCurrents,
  openGearbox,
  openHeat,
  openOtherDrives,
  openPackStudies,
  openWeek,
  roadTrace,
  type Trace,
  unknownsOfPacks,
  yearRanges,
} from "../../../sim/index.ts";
import { fetchPart } from "../fetchPart.ts";
import { cycleText } from "../roads/cycleText.ts";
import { weekTraces } from "../roads/weekTraces.ts";
import { stepped } from "../stepped.ts";
import type { SimulationInside } from "../workerApi.ts";

/** The latest draw of variants asked for: an older one is given up at its next slice. */
let latest = 0;
/** The same of the ranges that decide verdicts. */
let latestSample = 0;

const traces = new Map<number, Trace>();

/** The same simulation as the command line, and nothing of its own. */
export const simulation: SimulationInside = {
  async road(road) {
    return roadTrace(road, road.kind === "cycle" ? await cycleText(road.cycle) : {});
  },
  async keepTrace(id, trace) {
    traces.set(id, trace);
  },
  async dropTrace(id) {
    traces.delete(id);
  },
  async drive(job, packIndexes, traceId) {
    const candidates = drivePacks(job, packIndexes, kept(traceId));
    return transfer(candidates, columnsOf(candidates));
  },
  conditions: async (job, packIndexes, traceId) => driveConditions(job, kept(traceId), packIndexes),
  // Not fetched apart: the answer's picture has the year, which would then wait for the studies asked for meanwhile.
  yearRanges: async (job, traceId) => yearRanges(job, kept(traceId)),
  async weeks(job, packIndexes) {
    const { driveWeeks } = await fetchPart(openWeek);
    return driveWeeks(job, await weekTraces(job, simulation.road), packIndexes);
  },
  async steady(job, speeds_kmh) {
    const { steadyTable } = await fetchPart(openOtherDrives);
    return job.packs.map((_, packIndex) => steadyTable(job, packIndex, speeds_kmh));
  },
  motorSurface: async (job, packIndex) => (await fetchPart(openOtherDrives)).motorSurface(job, packIndex),
  async gearbox(job, packIndex, traceId) {
    const trace = kept(traceId);
    return (await fetchPart(openGearbox)).gearboxStudy(job, packIndex, trace);
  },
  async heatLines(job, packIndex, traceId, hill) {
    const trace = kept(traceId);
    return (await fetchPart(openHeat)).heatLines(job, packIndex, trace, hill);
  },
  async currents(job, packIndex, traceId) {
    const trace = kept(traceId);
    return (await fetchPart(openCurrents)).currentsPlan(job, packIndex, trace);
  },
  async packStudy(job, traceId) {
    const trace = kept(traceId);
    return (await fetchPart(openPackStudies)).packStudy(job, trace);
  },
  async daysFailed(job, traceId) {
    const trace = kept(traceId);
    return (await fetchPart(openPackStudies)).daysFailed(job, trace);
  },
  async packLife(job, packIndex, traceId) {
    const trace = kept(traceId);
    return (await fetchPart(openPackStudies)).packLife(job, packIndex, trace);
  },
  async sampleRanges(job, packIndexes, traceId) {
    const trace = kept(traceId);
    const { sampleRanges } = await fetchPart(openPackStudies);
    latestSample += 1;
    const asked = latestSample;
    const done = await stepped(
      sampleRanges(job, packIndexes, trace),
      () => {},
      () => asked !== latestSample,
    );
    return done?.value;
  },
  async vary(job, packIndex, traceId, draw) {
    const trace = kept(traceId);
    const { varyPack } = await fetchPart(openPackStudies);
    latest += 1;
    const asked = latest;
    const done = await stepped(
      varyPack(job, packIndex, trace, draw),
      () => {},
      () => asked !== latest,
    );
    return done?.value;
  },
  unknowns: async (job, packIndexes, traceId) => unknownsOfPacks(job, packIndexes, kept(traceId)),
};

function kept(traceId: number): Trace {
  const trace = traces.get(traceId);
  if (!trace) throw new Error(`trace ${traceId} was not sent to this worker`);
  return trace;
}

/** The memory of all columns, which is handed over instead of copied. */
function columnsOf(candidates: readonly Candidate[]): ArrayBuffer[] {
  const buffers = new Set<ArrayBuffer>();
  for (const { channels } of candidates) {
    for (const column of Object.values(channels ?? {})) {
      if (ArrayBuffer.isView(column) && column.buffer instanceof ArrayBuffer) buffers.add(column.buffer);
    }
  }
  return [...buffers];
}
