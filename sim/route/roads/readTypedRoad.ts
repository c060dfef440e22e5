import { InputError, type Problem } from "../../../shared/problems.ts";
import { readQuantity } from "../../../shared/quantity.ts";
import { M_PER_KM, M_PER_MILE, MPS_PER_KMH, MPS_PER_MPH } from "../../../shared/units.ts";

/** One piece of a road told from memory. */
export interface TypedLeg {
  readonly distance_m: number;
  readonly speed_mps: number;
  readonly stopsPerKm: number;
  /** Rise over run, uphill positive; level where not given. */
  readonly gradient_ratio?: number;
}

const steepest_ratio = 0.4; // what the hills of a job's road may be, with room for rounding

const example = '"3 km at 50 km/h, 2 stops a km" or "80 m at 20 km/h, 1 in 7"';
const number = "(\\d+(?:[.,]\\d+)?)";
const distance = new RegExp(`^${number}\\s*(km|kilometres?|m|metres?|mi|miles?|yd|yards?|ft|feet)(?![a-z/])`, "i");
const speed = new RegExp(`^(?:(?:at|with|@)\\s*)?${number}\\s*(km/h|kmh|kph|mph|m/s|mps)(?![a-z])`, "i");
const stops = new RegExp(`^(?:with\\s+)?${number}\\s*stops?(?:\\s*(?:(?:a|per|/)\\s*(km|mile)))?(?![a-z])`, "i");
const hill =
  /^(?:at\s+|of\s+)?((?:(?:up|down|uphill|downhill)\s+(?:a\s+)?)?(?:\d+\s*(?:in|:)\s*\d+(?:[.,]\d+)?|\d+(?:[.,]\d+)?\s*(?:%|deg|°))(?:\s+(?:up|down|uphill|downhill)(?![a-z]))?)/i;
const between = /^(?:[\s,]+|and\s|(?:up|on)?\s*a?\s*hill\s(?:of\s)?)/i;

/**
 * Legs of a road typed as `3 km at 50 km/h, 2 stops a km, then 80 m at 20 km/h, 1 in 7`. Legs are parted by "then", a
 * semicolon or a line's end; `4 stops` without "a km" are those of the whole leg; a leg without a speed goes on at that of
 * the one before. Throws `InputError` with every leg that cannot be read.
 */
export function readTypedRoad(text: string): readonly TypedLeg[] {
  const legs: TypedLeg[] = [];
  const problems: Problem[] = [];
  const pieces = text
    .split(/[,\s]*\bthen\b\s*|;|\n/i)
    .map((piece) => piece.trim().replace(/[,.]+$/, ""))
    .filter((piece) => piece !== "");
  pieces.forEach((piece, i) => {
    const leg = readLeg(piece, legs.at(-1)?.speed_mps);
    if (typeof leg === "string") {
      problems.push({ code: "badLeg", where: `leg ${i + 1}`, message: leg });
      return;
    }
    for (const message of wrongIn(leg)) problems.push({ code: "badLeg", where: `leg ${i + 1}`, message });
    legs.push(leg);
  });
  if (pieces.length === 0) {
    problems.push({ code: "noLegs", where: "road", message: `found no leg, wanted one like ${example}` });
  }
  if (problems.length > 0) throw new InputError(problems);
  return legs;
}

/** A leg, or what is wrong with its words. */
function readLeg(piece: string, speedBefore_mps: number | undefined): TypedLeg | string {
  const unread = `found "${piece.slice(0, 60)}", wanted one like ${example}`;
  const start = distance.exec(piece);
  if (!start) return unread;
  const distance_m = metresOf(start);
  let [speed_mps, stopsPerKm, gradient_ratio] = [speedBefore_mps, 0, 0];
  let rest = piece.slice(start[0].length);
  while (rest !== "") {
    const skipped = between.exec(rest);
    const [atSpeed, withStops, onHill] = [speed.exec(rest), stops.exec(rest), hill.exec(rest)];
    const found = atSpeed ?? withStops ?? onHill ?? skipped;
    if (!found) return unread;
    if (atSpeed) speed_mps = speedOf(atSpeed);
    else if (withStops) stopsPerKm = stopsOf(withStops, distance_m);
    else if (onHill) {
      const reading = readQuantity("gradient", onHill[1], { min: -steepest_ratio, max: steepest_ratio });
      if (!reading.ok || reading.unknown) return reading.ok ? unread : reading.problem.message;
      gradient_ratio = reading.value;
    }
    rest = rest.slice(found[0].length);
  }
  if (speed_mps === undefined) return `found "${piece.slice(0, 60)}" without a speed, wanted one like ${example}`;
  return { distance_m, speed_mps, stopsPerKm, ...(gradient_ratio !== 0 && { gradient_ratio }) };
}

function wrongIn({ distance_m, speed_mps, stopsPerKm }: TypedLeg): string[] {
  const wrong: string[] = [];
  if (!(distance_m >= 10 && distance_m <= 2e6)) wrong.push(`found ${distance_m} m, allowed are 10 m to 2000 km`);
  if (!(speed_mps >= 1 && speed_mps <= 70)) {
    wrong.push(`found ${(speed_mps / MPS_PER_KMH).toFixed(1)} km/h, allowed are 3.6 to 252 km/h`);
  }
  if (!(stopsPerKm <= 20)) wrong.push(`found ${stopsPerKm.toFixed(0)} stops a km, allowed are 0 to 20`);
  return wrong;
}

function metresOf([, size, unit]: RegExpExecArray): number {
  const reading = readQuantity("distance", `${size} ${unit}`);
  return reading.ok && !reading.unknown ? reading.value * M_PER_KM : Number.NaN;
}

function speedOf([, size, unit]: RegExpExecArray): number {
  const perUnit_mps = /mph/i.test(unit) ? MPS_PER_MPH : /^k/i.test(unit) ? MPS_PER_KMH : 1;
  return numberOf(size) * perUnit_mps;
}

function stopsOf([, count, per]: RegExpExecArray, distance_m: number): number {
  const each_m = per === undefined ? distance_m : /mile/i.test(per) ? M_PER_MILE : M_PER_KM;
  return numberOf(count) * (M_PER_KM / each_m);
}

function numberOf(digits: string): number {
  return Number(digits.replace(",", "."));
}
