import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { type Message, messageIn } from "../../../shared/quantity/message.ts";
import { toFigures } from "../../../shared/quantity/toFigures.ts";
import type { Answer } from "../../plan/answer/answer.ts";
import { CONDITIONS } from "../../plan/answer/conditions.ts";
import { leftCell } from "../../plan/answer/leftWords.ts";
import { answerWords, settlementWords } from "../../plan/answer/sentence.ts";
import type { Candidate, DriveReport, Finding } from "../../plan/driveReport.ts";
import { isCannot } from "../../plan/findings/drivingFindings.ts";
import { textTable } from "./table.ts";
import { wrapText } from "./wrapText.ts";

/** A drive for people: the road, the answer, a row a pack, and what else they should know. */
export function driveTable(report: DriveReport, answer: Answer): string {
  return [
    `${report.job}\n${wrapText(roadLine(report.trace))}`,
    // Said first; where it holds for every pack, the answer itself says it.
    answer.cannot ? "" : findingLines(report.candidates, ({ kind }) => isCannot(kind)).join("\n"),
    wrapText(spoken(answer)),
    answerTable(answer),
    packTable(report, answer),
    [...settlingLines(answer), ...comparingLines(report)].map((sentence) => wrapText(sentence)).join("\n"),
    findingLines(report.candidates, ({ kind }) => !isCannot(kind)).join("\n"),
  ]
    .filter((part) => part !== "")
    .join("\n\n");
}

function roadLine(road: DriveReport["trace"]): string {
  const { title, id, distance_km, duration_s, mean_kmh, max_kmh, climb_m, descent_m } = road;
  const name = title === id ? id : `${title} (${id})`;
  const rounded_s = toFigures(duration_s, 3);
  const minutes = rounded_s < 120 ? `${n(rounded_s)} s` : `${n(rounded_s / 60)} min`;
  const isLevel = climb_m === 0 && descent_m === 0;
  const hills = isLevel ? "level" : `${n(climb_m)} m up and ${n(descent_m)} m down`;
  return `${name}: ${n(distance_km)} km in ${minutes}, mean ${n(mean_kmh)} km/h, top ${n(max_kmh)} km/h, ${hills}`;
}

function spoken(answer: Answer): string {
  const { headline, sentences } = answerWords(answer);
  return [headline, ...sentences].map((sentence) => messageIn(sentence, "metric")).join(" ");
}

function answerTable({ packs, day_km }: Answer): string {
  return textTable(
    [
      { heading: "\npack" },
      { heading: "\n(kg)", isNumber: true },
      { heading: `km left after ${n(day_km)}:\nnew`, isNumber: true },
      { heading: "\nwinter", isNumber: true },
      { heading: "ten years,\nwinter", isNumber: true },
      { heading: "\nverdict" },
    ],
    packs.map((pack) => [
      pack.name,
      n(Math.round(pack.mass_kg), 6),
      ...CONDITIONS.map((condition) => (pack.left ? leftCell(pack.left[condition], "metric", pack.isAtLeast) : "-")),
      pack.stop ? "stop" : (pack.verdict ?? "-"),
    ]),
  );
}

function packTable({ candidates }: DriveReport, answer: Answer): string {
  return textTable(
    [
      { heading: "\n\npack" },
      { heading: "\ncar\n(kg)", isNumber: true },
      { heading: "from\npack\n(Wh/km)", isNumber: true },
      { heading: "at the\nsocket\n(Wh/km)", isNumber: true },
      { heading: "\nrange\n(km)", isNumber: true },
      { heading: "\npeak\n(A)", isNumber: true },
      { heading: "\npeak\n(kW)", isNumber: true },
      { heading: "\nmin\n(V)", isNumber: true },
    ],
    candidates.map((one, k) => [
      one.name,
      n(one.testMass_kg),
      one.distance_km > 0 ? n(one.battery_Whpkm) : "-",
      one.distance_km > 0 ? n(one.wall_Whpkm) : "-",
      answer.packs[k].range ? `${one.rangeEnd === "time" ? "over " : ""}${n(one.range_km)}` : "-",
      n(one.peak.battery_A),
      n(one.peak.motor_kW),
      n(one.peak.min_V),
    ]),
  );
}

/** What stops a pack, and what would settle the verdict on the pack spoken of. */
function settlingLines(answer: Answer): string[] {
  const inWords = (sentence: Message) => messageIn(sentence, "metric");
  const stops = answer.packs.flatMap(({ name, stop }) => {
    if (!stop) return [];
    const [first, second] = stop.ways.map(({ words }) => inWords(words));
    return [
      `${name}: stop. ${inWords(stop.sentence)} ${first}, or ${second.charAt(0).toLowerCase()}${second.slice(1)}.`,
    ];
  });
  const { recommended } = answer;
  const settling = recommended === undefined ? [] : settlementWords(answer, recommended);
  return [...stops, ...(settling.length > 0 ? [settling.map(inWords).join(" ")] : [])];
}

function comparingLines({ candidates, isComparable }: DriveReport): string[] {
  if (isComparable) return [];
  const driven_km = candidates.map(({ distance_km }) => distance_km);
  const span = `${n(Math.min(...driven_km))} to ${n(Math.max(...driven_km))} km`;
  return [`The packs drove different distances (${span}), so their Wh/km are not comparable.`];
}

/** Each finding once, with the packs it holds for; warnings first, those of one kind together. */
function findingLines(candidates: readonly Candidate[], isShown: (finding: Finding) => boolean): string[] {
  const packsBySentence = new Map<string, { readonly finding: Finding; readonly packs: string[] }>();
  for (const { name, findings } of candidates) {
    for (const finding of findings.filter(isShown)) {
      const sentence = messageIn(finding.sentence, "metric");
      const known = packsBySentence.get(sentence);
      if (known) known.packs.push(name);
      else packsBySentence.set(sentence, { finding, packs: [name] });
    }
  }
  const found = [...packsBySentence].map(([sentence, packs]) => ({ sentence, ...packs }));
  const kinds = found.map(({ finding }) => finding.kind);
  const rank = ({ finding }: (typeof found)[number]) =>
    (finding.weight === "warning" ? 0 : kinds.length) + kinds.indexOf(finding.kind);
  found.sort((a, b) => rank(a) - rank(b));
  return found.map(({ sentence, finding, packs }) => {
    const whose = packs.length === candidates.length ? "" : `${packs.join("; ")}: `;
    return wrapText(`${whose}${sentence}`, finding.weight === "warning" ? "! " : "- ");
  });
}
