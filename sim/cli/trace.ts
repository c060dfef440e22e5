import { inputError } from "../../shared/problems.ts";
import { formatNumber } from "../../shared/quantity/formatNumber.ts";
import { M_PER_KM, MPS_PER_KMH } from "../../shared/units.ts";
import { type Characteristics, characteristics } from "../trace/characteristics.ts";
import { totalCharacteristics } from "../trace/totalCharacteristics.ts";
import type { Trace } from "../trace/trace.ts";
import { writeTraceCsv } from "../trace/writeTraceCsv.ts";
import type { Command } from "./command.ts";
import { isSameFile, writeText } from "./files.ts";
import { jsonText } from "./json.ts";
import { hasOption, textOption } from "./optionValue.ts";
import { isFileName, readTraceArgument } from "./readTraceArgument.ts";
import { textTable } from "./table.ts";

export const trace: Command = {
  name: "trace",
  usage: "ID|FILE... [--json] [--out FILE.csv]",
  summary: "what kind of driving a cycle or a speed trace asks for",
  options: {
    json: { type: "boolean", help: "for a program: files, trips and their total, units in the keys" },
    out: { type: "string", value: "FILE.csv", help: "write the trace as it was read, time_s and speed_kmh" },
  },
  run(args, print, warn) {
    const { positionals } = args;
    if (positionals.length === 0)
      throw inputError("argument-missing", "trace", "found no cycle and no file, at least one is wanted: trace udds");
    const trips = positionals.map(readTraceArgument);
    const out = textOption(args, "out");
    if (out !== undefined) {
      writeTrace(out, trips, positionals);
      warn(`written: ${out}`);
    }
    const found = trips.map(characteristics);
    const total = totalCharacteristics(found);
    if (!hasOption(args, "json")) {
      print(tableOf(trips, found, total));
      return;
    }
    print(
      jsonText({
        files: trips.map(({ id, time_s }, k) => ({
          file: positionals[k],
          kind: isFileName(positionals[k]) ? "trace" : "cycle",
          trace: id,
          samples: time_s.length,
        })),
        trips: trips.map(({ id, title }, k) => ({ id, title, ...figuresOf(found[k]) })),
        total: figuresOf(total),
      }),
    );
  },
};

function writeTrace(out: string, trips: readonly Trace[], sources: readonly string[]): void {
  if (trips.length !== 1)
    throw inputError("out-many", "--out", `found ${trips.length} traces, one at a time can be written`);
  if (sources.some((source) => isFileName(source) && isSameFile(source, out)))
    throw inputError("out-source", out, "found the file that is read, it is left as it is; choose another name");
  writeText(out, writeTraceCsv(trips[0]));
}

/** Characteristics in the units of a table for people and of `--json`. */
function figuresOf(found: Characteristics) {
  const { climb_m, descent_m } = found;
  return {
    duration_s: found.duration_s,
    distance_km: found.distance_m / M_PER_KM,
    mean_kmh: found.mean_mps / MPS_PER_KMH,
    moving_kmh: found.moving_mps / MPS_PER_KMH,
    max_kmh: found.max_mps / MPS_PER_KMH,
    stop_s: found.stop_s,
    stops: found.stops,
    relativePositiveAcceleration_mps2: found.relativePositiveAcceleration_mps2,
    maxAcceleration_mps2: found.maxAcceleration_mps2,
    maxDeceleration_mps2: found.maxDeceleration_mps2,
    ...(climb_m === undefined ? {} : { climb_m, descent_m }),
  };
}

/** One column a trace, since there are more characteristics than traces; a last column for all of several. */
function tableOf(trips: readonly Trace[], found: readonly Characteristics[], total: Characteristics): string {
  const columns = found.length > 1 ? [...found, total] : found;
  const headings = trips.map(({ id }) => id).concat(found.length > 1 ? ["all of them"] : []);
  const row = (name: string, figure: (of: ReturnType<typeof figuresOf>) => number | undefined) => [
    name,
    ...columns.map((of) => {
      const value = figure(figuresOf(of));
      return value === undefined ? "not known" : formatNumber(value);
    }),
  ];
  const hasHeights = found.some(({ climb_m }) => climb_m !== undefined);
  const exactRow = (name: string, figure: (of: Characteristics) => number) => [
    name,
    ...columns.map((of) => formatNumber(figure(of), 12)),
  ];
  return textTable(
    [{ heading: "" }, ...headings.map((heading) => ({ heading, isNumber: true }))],
    [
      exactRow("time (s)", (of) => of.duration_s),
      row("distance (km)", (of) => of.distance_km),
      row("mean speed (km/h)", (of) => of.mean_kmh),
      row("mean speed while moving (km/h)", (of) => of.moving_kmh),
      row("top speed (km/h)", (of) => of.max_kmh),
      exactRow("standing (s)", (of) => of.stop_s),
      exactRow("stops on the way", (of) => of.stops),
      row("relative positive acceleration (m/s2)", (of) => of.relativePositiveAcceleration_mps2),
      row("hardest acceleration (m/s2)", (of) => of.maxAcceleration_mps2),
      row("hardest braking (m/s2)", (of) => of.maxDeceleration_mps2),
      ...(hasHeights ? [row("climb (m)", (of) => of.climb_m), row("descent (m)", (of) => of.descent_m)] : []),
    ],
  );
}
