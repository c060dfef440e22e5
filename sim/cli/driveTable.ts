import { formatNumber as n } from "../../shared/quantity/formatNumber.ts";
import { saidIn } from "../../shared/quantity/said.ts";
import type { Candidate, DriveReport, Finding } from "../plan/driveReport.ts";
import { isCannot } from "../plan/drivingFindings.ts";
import { textTable } from "./table.ts";
import { wrapText } from "./wrapText.ts";

/** A drive for people: the road, a row a pack, which pack is enough, and what else they should know. */
export function driveTable(report: DriveReport, usualDay_km: number): string {
  return [
    `${report.job}\n${wrapText(roadLine(report.trace))}`,
    findingLines(report.candidates, ({ kind }) => isCannot(kind)).join("\n"),
    packTable(report, usualDay_km),
    verdictLines(report)
      .map((sentence) => wrapText(sentence))
      .join("\n"),
    findingLines(report.candidates, ({ kind }) => !isCannot(kind)).join("\n"),
  ]
    .filter((part) => part !== "")
    .join("\n\n");
}

function roadLine(road: DriveReport["trace"]): string {
  const { title, id, distance_km, duration_s, mean_kmh, max_kmh, climb_m, descent_m } = road;
  const name = title === id ? id : `${title} (${id})`;
  const minutes = duration_s < 120 ? `${n(duration_s)} s` : `${n(duration_s / 60)} min`;
  const isLevel = climb_m === 0 && descent_m === 0;
  const hills = isLevel ? "level" : `${n(climb_m)} m up and ${n(descent_m)} m down`;
  return `${name}: ${n(distance_km)} km in ${minutes}, mean ${n(mean_kmh)} km/h, top ${n(max_kmh)} km/h, ${hills}`;
}

function packTable({ candidates, enough }: DriveReport, usualDay_km: number): string {
  return textTable(
    [
      { heading: "\n\npack" },
      { heading: "\ncar\n(kg)", isNumber: true },
      { heading: "from\npack\n(Wh/km)", isNumber: true },
      { heading: "at the\nsocket\n(Wh/km)", isNumber: true },
      { heading: "\nrange\n(km)", isNumber: true },
      { heading: `left\nafter ${n(usualDay_km)}\n(km)`, isNumber: true },
      { heading: "\npeak\n(A)", isNumber: true },
      { heading: "\npeak\n(kW)", isNumber: true },
      { heading: "\nmin\n(V)", isNumber: true },
      { heading: "\n\nenough" },
    ],
    candidates.map((one, k) => [
      one.name,
      n(one.testMass_kg),
      one.distance_km > 0 ? n(one.battery_Whpkm) : "-",
      one.distance_km > 0 ? n(one.wall_Whpkm) : "-",
      rangeText(one),
      one.rangeEnd === "endless" ? "-" : n(one.range_km - usualDay_km),
      n(one.peak.battery_A),
      n(one.peak.motor_kW),
      n(one.peak.min_V),
      enough.packs[k].isEnough ? "yes" : "no",
    ]),
  );
}

function rangeText({ rangeEnd, range_km }: Candidate): string {
  if (rangeEnd === "endless") return "none";
  return `${rangeEnd === "time" ? "over " : ""}${n(range_km)}`;
}

function verdictLines({ enough, candidates, isComparable }: DriveReport): string[] {
  const why = enough.packs
    // The rest stands among the findings.
    .filter(({ because }, k) => because === "short" || (because === "behind" && !candidates[k].stands))
    .map(({ name, why }) => `${name} is not enough: ${saidIn(why, "metric")}`);
  const lines = [...enough.sentences.map((sentence) => saidIn(sentence, "metric")), ...why];
  if (isComparable) return lines;
  const driven_km = candidates.map(({ distance_km }) => distance_km);
  const span = `${n(Math.min(...driven_km))} to ${n(Math.max(...driven_km))} km`;
  return [...lines, `The packs drove different distances (${span}), so their Wh/km are not comparable.`];
}

/** Each finding once, with the packs it holds for; warnings first, those of one kind together. */
function findingLines(candidates: readonly Candidate[], isShown: (finding: Finding) => boolean): string[] {
  const packsBySentence = new Map<string, { readonly finding: Finding; readonly packs: string[] }>();
  for (const { name, findings } of candidates) {
    for (const finding of findings.filter(isShown)) {
      const sentence = saidIn(finding.sentence, "metric");
      const known = packsBySentence.get(sentence);
      if (known) known.packs.push(name);
      else packsBySentence.set(sentence, { finding, packs: [name] });
    }
  }
  const found = [...packsBySentence].map(([sentence, said]) => ({ sentence, ...said }));
  const kinds = found.map(({ finding }) => finding.kind);
  const rank = ({ finding }: (typeof found)[number]) =>
    (finding.weight === "warning" ? 0 : kinds.length) + kinds.indexOf(finding.kind);
  found.sort((a, b) => rank(a) - rank(b));
  return found.map(({ sentence, finding, packs }) => {
    const whose = packs.length === candidates.length ? "" : `${packs.join("; ")}: `;
    return wrapText(`${whose}${sentence}`, finding.weight === "warning" ? "! " : "- ");
  });
}
