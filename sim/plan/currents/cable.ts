import { copper_ohmpm, STRANDED_ratio } from "./copper.ts";

/** A flexible copper cable in free air, one alone, and what it carries for hours. */
interface CableSize {
  readonly section_mm2: number;
  readonly carries_A: number;
  /** Usual stud of the lug at that section. */
  readonly stud: string;
}

/** From memory, common practice, no source: less in a conduit or beside another, and less where it is hot. */
export const CABLES: readonly CableSize[] = [
  { section_mm2: 16, carries_A: 100, stud: "M8" },
  { section_mm2: 25, carries_A: 130, stud: "M8" },
  { section_mm2: 35, carries_A: 160, stud: "M8" },
  { section_mm2: 50, carries_A: 200, stud: "M8" },
  { section_mm2: 70, carries_A: 250, stud: "M10" },
  { section_mm2: 95, carries_A: 300, stud: "M10" },
];

/** What one run of traction cable does at a current. */
export interface Cable extends CableSize {
  /** So many side by side, where the largest alone does not carry it. */
  readonly parallel: number;
  /** Of one metre, all that lie side by side together. */
  readonly resistance_ohmpm: number;
  /** Over there and back, at the current that heats it for hours and at the peak. */
  readonly drop_V: number;
  readonly peakDrop_V: number;
  /** Given off by each metre of one pole at the current that heats it. */
  readonly heat_Wpm: number;
}

/** What is asked of a cable. */
export interface CableTask {
  /** The most that it must carry for hours: what its fuse lets through. */
  readonly carries_A: number;
  /** What it does carry in the long run, and at most. */
  readonly steady_A: number;
  readonly peak_A: number;
  /** There and back. */
  readonly length_m: number;
  readonly conductor_degC: number;
  /** As fitted; else the smallest that carries what is asked. */
  readonly fitted_mm2?: number | undefined;
}

/** The cable for a task, or the one that is fitted: U = I R' l and P' = I² R' (Ohm and Joule), R' at the conductor's temperature. */
export function cableFor({ carries_A, steady_A, peak_A, length_m, conductor_degC, fitted_mm2 }: CableTask): Cable {
  const size = fitted_mm2 === undefined ? proposed(carries_A) : { ...fittedSize(fitted_mm2), parallel: 1 };
  const resistance_ohmpm = (STRANDED_ratio * copper_ohmpm(size.section_mm2, conductor_degC)) / size.parallel;
  return {
    ...size,
    resistance_ohmpm,
    drop_V: steady_A * resistance_ohmpm * length_m,
    peakDrop_V: peak_A * resistance_ohmpm * length_m,
    heat_Wpm: steady_A * steady_A * resistance_ohmpm,
  };
}

function proposed(carries_A: number): CableSize & { readonly parallel: number } {
  for (let parallel = 1; ; parallel++) {
    const size = CABLES.find((each) => parallel * each.carries_A >= carries_A);
    if (size) return { ...size, parallel };
  }
}

/** A section that is not in the list carries what its neighbours' currents, as a power of the section, say. */
function fittedSize(section_mm2: number): CableSize {
  const above = Math.max(
    1,
    CABLES.findIndex((each) => each.section_mm2 >= section_mm2),
  );
  const last = CABLES.length - 1;
  const high = section_mm2 > CABLES[last].section_mm2 ? last : above;
  const [a, b] = [CABLES[high - 1], CABLES[high]];
  const power = Math.log(b.carries_A / a.carries_A) / Math.log(b.section_mm2 / a.section_mm2);
  const carries_A = a.carries_A * (section_mm2 / a.section_mm2) ** power;
  return { section_mm2, carries_A, stud: section_mm2 > 50 ? "M10" : "M8" };
}
