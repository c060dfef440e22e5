import { InputError, type Problem } from "../../../shared/problems.ts";
import { tidyText } from "../../../shared/quantity/tidyText.ts";
import { MPS_PER_KMH, MPS_PER_MPH } from "../../../shared/units.ts";
import type { CoastBand } from "../../vehicle/coastDown/evaluateCoastDown.ts";

const UNITS: Readonly<Record<string, number>> = {
  mph: MPS_PER_MPH,
  "km/h": MPS_PER_KMH,
  kmh: MPS_PER_KMH,
  kph: MPS_PER_KMH,
  "m/s": 1,
};
const NUMBER = String.raw`\d{1,4}(?:[.,]\d{1,4})?`;
const BAND = new RegExp(
  `^(${NUMBER}) ?(mph|km/h|kmh|kph|m/s)? ?(?:-|to|down to) ?(${NUMBER}) ?(mph|km/h|kmh|kph|m/s)?(?: in)?:? +(.+)$`,
  "i",
);
const LONGEST_s = 600;
const MOST_BANDS = 60;

/**
 * Timed bands as a workshop writes them: `60-50 mph 9.6 s; 30-20 mph 19.8 s`. Several runs of a band with spaces between, the other
 * direction behind a slash: `60-50 mph 9.6 9.8 / 10.1 s`. A unit holds for the bands behind it too.
 *
 * Throws InputError with every fault: a band that is not understood, has no unit, rises, has a time of nothing, or overlaps another.
 */
export function readBands(text: string, where: string): CoastBand[] {
  const problems: Problem[] = [];
  const bands: (CoastBand & { readonly written: string })[] = [];
  let unit: string | undefined;
  const pieces = tidyText(text)
    .split(/[;\n]/)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== "");
  const fault = (code: string, message: string) => problems.push({ code, where, message });
  if (pieces.length === 0)
    fault("bands-empty", 'found no band, "60-50 mph 9.6 s; 30-20 mph 19.8 s" is how they are written');
  if (pieces.length > MOST_BANDS) fault("bands-many", `found ${pieces.length} bands, at most ${MOST_BANDS} are read`);
  for (const piece of pieces.slice(0, MOST_BANDS)) {
    const shown = piece.length > 60 ? `${piece.slice(0, 60)}…` : piece;
    const match = piece.length > 400 ? null : BAND.exec(piece);
    if (!match) {
      fault("band-unreadable", `found "${shown}", a band is written "60-50 mph 9.6 s"`);
      continue;
    }
    const [, high, firstUnit, low, secondUnit, times] = match;
    unit = (secondUnit ?? firstUnit ?? unit)?.toLowerCase();
    const size = UNITS[unit ?? ""];
    if (size === undefined) {
      fault("band-unit", `found "${shown}" without a unit of speed: mph or km/h?`);
      continue;
    }
    const there_s = readTimes(times.split("/")[0]);
    const back_s = times.includes("/") ? readTimes(times.slice(times.indexOf("/") + 1)) : [];
    const high_mps = number(high) * size;
    const low_mps = number(low) * size;
    if (!(high_mps > low_mps))
      fault("band-rises", `found "${shown}", a band goes from the higher speed to the lower one`);
    if (there_s === undefined || back_s === undefined)
      fault("band-time", `found "${shown}", times above 0 and up to ${LONGEST_s} s are wanted behind the speeds`);
    else if (high_mps > low_mps) bands.push({ high_mps, low_mps, there_s, back_s, written: shown });
  }
  bands.sort((a, b) => b.high_mps - a.high_mps);
  bands.forEach(({ low_mps, written }, i) => {
    const next = bands[i + 1];
    if (next && next.high_mps > low_mps * (1 + 1e-9))
      fault(
        "bands-overlap",
        `found "${written}" and "${next.written}", which overlap: the same seconds would count twice`,
      );
  });
  if (problems.length > 0) throw new InputError(problems);
  return bands.map(({ written: _, ...band }) => band);
}

/** Times of one direction; nothing where one of them is no time. */
function readTimes(text: string): number[] | undefined {
  const words = text
    .replace(/\b(s|secs?|seconds?)\b\.?/gi, " ")
    .replace(/, /g, " ")
    .split(" ")
    .filter((word) => word !== "");
  const times = words.map((word) => (new RegExp(`^${NUMBER}$`).test(word) ? number(word) : Number.NaN));
  return times.length > 0 && times.every((time_s) => time_s > 0 && time_s <= LONGEST_s) ? times : undefined;
}

function number(text: string): number {
  return Number(text.replace(",", "."));
}
