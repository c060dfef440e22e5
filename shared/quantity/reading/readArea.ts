import { answer, refuse, showBand, type Written } from "./answers.ts";
import type { QuantityReading, Understood } from "./reading.ts";
import { readNumber } from "./readNumber.ts";
import { readUnit } from "./readUnit.ts";

const M2_PER_MM2 = 1e-6;
/** From the front of a microcar to that of a box van: only used to tell which unit bare numbers have. Assumed. */
const front_m2 = [0.8, 7] as const;
const sideUnits = ["m", "cm", "mm", "inches", "feet"];

/**
 * An area as a product: width, height and perhaps the share of the rectangle that is filled, `78 in x 90 in x 0.82`; or an
 * area times a number, `1.75 m2 x 0.42`. Undefined where the text is none. Sides without a unit have that of the other
 * side, or else the one unit in which they make the front of a car. The share may be a band. `read` reads one factor.
 */
export function readArea(written: Written, read: (factor: Written) => QuantityReading): QuantityReading | undefined {
  const factors = written.text.split(/ ?(?:x|\*|\bby\b|\btimes\b) ?/i);
  if (written.kind !== "area" || factors.length < 2 || factors.length > 3) return undefined;
  const scaled = areaTimesNumber(written, factors, read);
  if (scaled) return scaled;
  const [width = "", height = "", share] = factors;
  const filled = share === undefined ? undefined : readFactor(written, "fraction", share, read);
  if (share !== undefined && !filled) {
    const wanted = "wanted as the third the share that the car fills, such as 0.82";
    return refuse(written, "quantity-range", `found ${share}, ${wanted}`);
  }
  const units = [height, width].map((side) => readNumber(side)?.rest.trim() ?? "");
  const known = units.find((unit) => unit !== "");
  const share_frac = filled?.value ?? 1;
  const candidates = known === undefined ? sideUnits : [known];
  const found = candidates
    .map((unit) => ({ unit, area_m2: readSides(written, withUnit(width, unit), withUnit(height, unit), read) }))
    .filter(({ area_m2 }) => area_m2 !== undefined)
    .map(({ unit, area_m2 = 0 }) => ({ unit, value: area_m2 * share_frac }));
  const likely =
    known === undefined ? found.filter(({ value }) => value >= front_m2[0] && value <= front_m2[1]) : found;
  const [only, other] = likely;
  if (only === undefined) return undefined;
  if (other !== undefined) {
    const texts = likely.map(({ unit }) =>
      [withUnit(width, unit), withUnit(height, unit), share ?? []].flat().join(" x "),
    );
    return refuse(written, "quantity-ambiguous", `found ${written.typed}, wanted with its unit`, undefined, {
      id: "side",
      text: `in what are the sides of ${written.typed}?`,
      choices: texts.map((text) => ({ label: text, text })),
    });
  }
  const notes = [
    ...(known === undefined ? [`sides read in ${only.unit}`] : []),
    ...(share === undefined ? ["the whole rectangle; a car fills 0.80 to 0.85 of it"] : []),
  ];
  const plusMinus = filled?.plusMinus === undefined ? undefined : (only.value * filled.plusMinus) / filled.value;
  if (plusMinus === undefined) return answer(written, only.value, { notes });
  return answer(written, only.value, {
    notes,
    plusMinus,
    shown: showBand("area", only.value, plusMinus, 4, written.options.units),
  });
}

/** `1.75 m2 x 0.42`, either way round. */
function areaTimesNumber(
  written: Written,
  factors: readonly string[],
  read: (factor: Written) => QuantityReading,
): QuantityReading | undefined {
  if (factors.length !== 2) return undefined;
  const isArea = (text: string) => {
    const unit = readNumber(text)?.rest.trim() ?? "";
    return unit !== "" && readUnit("area", unit, {}) !== undefined;
  };
  const area = factors.find(isArea);
  const number = factors.find((text) => text !== area);
  if (area === undefined || number === undefined) return undefined;
  const [size, times] = [readFactor(written, "area", area, read), readFactor(written, "coefficient", number, read)];
  return size && times ? answer(written, size.value * times.value) : undefined;
}

function readSides(
  written: Written,
  width: string,
  height: string,
  read: (factor: Written) => QuantityReading,
): number | undefined {
  const sides = [width, height].map((side) => readFactor(written, "length", side, read)?.value ?? 0);
  const [width_mm = 0, height_mm = 0] = sides;
  return width_mm > 0 && height_mm > 0 ? width_mm * height_mm * M2_PER_MM2 : undefined;
}

function readFactor(
  { options }: Written,
  kind: Written["kind"],
  text: string,
  read: (factor: Written) => QuantityReading,
): Understood | undefined {
  const { cwt: _cwt, bareUnit: _unit, min: _min, max: _max, ...others } = options;
  const bounds = kind === "fraction" ? { min: 0.3, max: 1 } : {};
  const reading = read({ kind, text, typed: text, options: { ...others, ...bounds } });
  return reading.ok && !reading.unknown ? reading : undefined;
}

function withUnit(side: string, unit: string): string {
  return readNumber(side)?.rest.trim() === "" ? `${side} ${unit}` : side;
}
