import { M_PER_IN, MM_PER_M } from "../../units.ts";

const MM_PER_IN = M_PER_IN * MM_PER_M;

/** What a tyre's marking says, and what a rule of thumb makes of it. */
export interface TyreMarking {
  readonly marking: string;
  readonly sectionWidth_mm: number;
  readonly rim_mm: number;
  /** Height of the section over its width. */
  readonly aspect_ratio: number;
  /** Unladen. */
  readonly freeDiameter_mm: number;
  /** Of the car rolling: one turn covers 2 pi times it. */
  readonly loadedRadius_mm: number;
  /** How far the loaded radius may be out, as a share of it. */
  readonly band_frac: number;
  readonly rule: string;
}

/** A tyre rolls this much under its unladen radius: 2 to 4 % by common practice, no source; the middle. */
const loaded_frac = 0.97;
const markedBand_frac = 0.01;
const assumedBand_frac = 0.03;

const tail = "(?: ?(?:C|LT|XL|TL|TT|\\d{1,2} ?PR|\\d{2,3}(?:\\/\\d{2,3})? ?[A-Z]|[A-Z]{1,2}))*";
const joint = " ?(?:-|X|\\/|[A-Z]?R|[SHVT])? ?-? ?";
const withAspect = new RegExp(`^P?(\\d{3}) ?\\/ ?(\\d{2,3})${joint}(\\d{2}(?:\\.5)?|[3-5]\\d{2})${tail}$`);
const metric = new RegExp(`^(\\d{3}) ?(?:-|X|[A-Z]?R|[SHVT]) ?-? ?(\\d{2}(?:\\.5)?|[3-5]\\d{2})${tail}$`);
const inches = new RegExp(`^(\\d{1,2}[.,]\\d{1,2}) ?(-|X|\\/|[A-Z]?R|[SHVL]) ?-? ?(\\d{2}(?:\\.5)?)${tail}$`);
const overall = new RegExp(
  `^(\\d{2}(?:\\.\\d+)?) ?X ?(\\d{1,2}(?:\\.\\d+)?) ?(?:-|[A-Z]?R) ?(\\d{2}(?:\\.5)?)${tail}$`,
);

/**
 * The sizes behind a marking such as `5.20-13`, `165 R 15`, `175/70 R13`, `165 R 400` or `31x10.50 R15`; undefined where it
 * is none. Text as `tidyText` leaves it.
 *
 *   free diameter = rim + 2 · aspect · width;   loaded radius = 0.97 · free diameter / 2
 *
 * Where the marking gives no aspect, it is that of the tyre's family: a radial or cross-ply in millimetres 0.82; in
 * inches 0.95 (widths such as 5.20 or 6.40), 1.00 (whole, half and quarter inches on rims of 15 inches and
 * more), 0.88 (the same on smaller rims), 0.82 (widths such as 6.95). Common practice, no source: within 3 %; with
 * a marked aspect within 1 %. A tape measure round the loaded wheel is better than either.
 */
export function tyreMarking(text: string): TyreMarking | undefined {
  const words = text.toUpperCase();
  const marked = withAspect.exec(words);
  if (marked) return fromSection(text, Number(marked[1]), rim(marked[3]), Number(marked[2]) / 100, markedBand_frac);
  const plain = metric.exec(words);
  if (plain) return fromSection(text, Number(plain[1]), rim(plain[2]), 0.82, assumedBand_frac);
  const inch = inches.exec(words);
  if (inch) {
    const width_in = Number((inch[1] ?? "").replace(",", "."));
    return fromSection(
      text,
      width_in * MM_PER_IN,
      rim(inch[3]),
      inchAspect(width_in, Number(inch[3])),
      assumedBand_frac,
    );
  }
  const flotation = overall.exec(words);
  if (!flotation) return undefined;
  const [diameter_mm, width_mm] = [Number(flotation[1]) * MM_PER_IN, Number(flotation[2]) * MM_PER_IN];
  const rim_mm = rim(flotation[3]);
  return fromSection(text, width_mm, rim_mm, (diameter_mm - rim_mm) / (2 * width_mm), markedBand_frac);
}

function fromSection(
  marking: string,
  sectionWidth_mm: number,
  rim_mm: number,
  aspect_ratio: number,
  band_frac: number,
): TyreMarking | undefined {
  const isTyre =
    sectionWidth_mm >= 75 &&
    sectionWidth_mm <= 400 &&
    rim_mm >= 200 &&
    rim_mm <= 620 &&
    aspect_ratio >= 0.25 &&
    aspect_ratio <= 1.1;
  if (!isTyre) return undefined;
  const freeDiameter_mm = rim_mm + 2 * aspect_ratio * sectionWidth_mm;
  const loadedRadius_mm = (loaded_frac * freeDiameter_mm) / 2;
  const height = `section height ${Math.round(100 * aspect_ratio)} % of its width${band_frac === markedBand_frac ? "" : ", assumed for this family"}`;
  const rule = `by rule of thumb from the marking (${height}; loaded 3 % under the free radius): common practice, no source; measure a turn of the loaded wheel if you can`;
  return { marking, sectionWidth_mm, rim_mm, aspect_ratio, freeDiameter_mm, loadedRadius_mm, band_frac, rule };
}

/** Rims are in inches, save the few of three figures, which are in millimetres. */
function rim(text: string | undefined): number {
  const size = Number(text);
  return size >= 100 ? size : size * MM_PER_IN;
}

function inchAspect(width_in: number, rim_in: number): number {
  const hundredths = Math.round(100 * width_in) % 100;
  if (hundredths % 25 === 0) return rim_in >= 15 ? 1 : 0.88;
  return hundredths % 10 === 5 ? 0.82 : 0.95;
}
