/** Colours of figures beyond the packs' own; those of packs, ink and paper are the page's (web/look/tokens.ts). */

/** From little to much, evenly darker, so that a grey print keeps the order. */
export const ramp: readonly string[] = ["#dfd3b4", "#b3c6a4", "#7fb09d", "#478b99", "#2b628b", "#1d3a66"];

/** Shade of bands behind a line. */
export const shade = "#efe8d8";

/** Parts of the energy in stacking order, dark to light; the gaps of paper between them part neighbours. */
export const ledgerFills = {
  aero: "#5d5850",
  rolling: "#716a60",
  climb: "#9a9284",
  speed: "#a8a092",
  driveline: "#b5ad9f",
  motor: "#c2baad",
  accessories: "#cfc8bb",
  frictionBrake: "#dcd6ca",
} as const;

/** Ink or paper, whichever reads on `fill`: at least 4.5 to 1 on every fill above. */
export function inkOn(fill: string, ink: string, paper: string): string {
  return luminance(fill) > 0.22 ? ink : paper;
}

/** Relative luminance of a #rrggbb colour, 0 to 1, as WCAG 2.2 defines it. */
export function luminance(hex: string): number {
  const part = (at: number) => {
    const c = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * part(1) + 0.7152 * part(3) + 0.0722 * part(5);
}

/** Laid on once for every contour passed, so that the ground darkens towards the greater loss. */
export const contourFill = "#b39a6b";
