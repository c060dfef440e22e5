import { inputError } from "../../../shared/problems.ts";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import { characteristics } from "../../trace/characteristics.ts";
import { type CyclePhase, type StandardCycle, standardCycles } from "../../trace/standardCycles.ts";
import type { Trace } from "../../trace/trace.ts";
import { hasOption } from "../arguments/optionValue.ts";
import type { Command } from "../command.ts";
import { cycleById } from "../cycleFiles.ts";
import { jsonText } from "../printing/json.ts";
import { textTable } from "../printing/table.ts";

export const cycles: Command = {
  name: "cycles",
  usage: "[--json]",
  summary: "the standard cycles on board, with their phases and sources",
  options: { json: { type: "boolean", help: "for a program: a list, units in the keys" } },
  run(args, print) {
    if (args.positionals.length > 0)
      throw inputError(
        "argument-extra",
        args.positionals[0],
        "found an argument, cycles takes none; trace ID shows one cycle",
      );
    const rows = standardCycles.map(describe);
    if (hasOption(args, "json")) print(jsonText(rows));
    else print(tableOf(rows));
  },
};

function describe(cycle: StandardCycle) {
  const trace = cycleById(cycle.id);
  return {
    id: cycle.id,
    title: cycle.title,
    source: cycle.source,
    samples: trace.time_s.length,
    ...totalsOf(trace),
    phases: cycle.phases.map((phase) => describePhase(cycle, phase)),
  };
}

function describePhase(cycle: StandardCycle, { id, title, from_s, to_s }: CyclePhase) {
  return { id, title, from_s, to_s, ...totalsOf(cycleById(`${cycle.id}:${id}`)) };
}

function totalsOf(trace: Trace) {
  const { duration_s, distance_m, max_mps, mean_mps } = characteristics(trace);
  return {
    duration_s,
    distance_km: distance_m / M_PER_KM,
    max_kmh: max_mps / MPS_PER_KMH,
    mean_kmh: mean_mps / MPS_PER_KMH,
  };
}

function tableOf(rows: readonly ReturnType<typeof describe>[]): string {
  const figures = (totals: ReturnType<typeof totalsOf>) => [
    String(totals.duration_s),
    formatNumber(totals.distance_km),
    formatNumber(totals.max_kmh),
    formatNumber(totals.mean_kmh),
  ];
  return textTable(
    [
      { heading: "id" },
      { heading: "time (s)", isNumber: true },
      { heading: "distance (km)", isNumber: true },
      { heading: "top (km/h)", isNumber: true },
      { heading: "mean (km/h)", isNumber: true },
      { heading: "what it is, and where it is published" },
    ],
    rows.flatMap((cycle) => [
      [cycle.id, ...figures(cycle), `${cycle.title}; ${cycle.source}`],
      ...cycle.phases.map((phase) => [`${cycle.id}:${phase.id}`, ...figures(phase), `phase: ${phase.title}`]),
    ]),
  );
}
